import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type PictureSocket, pictureSockets } from "../../src/parts/vocabulary.ts";
import { pictureWay } from "../../src/reference/picture-adapters.ts";
import { screensOnSockets } from "../../src/rules/screens-on-sockets.ts";

const socketsOf = (screens: readonly PictureSocket[], sockets: readonly PictureSocket[]) =>
	screensOnSockets(screens, sockets).map(({ socket }) => socket);

describe("which socket feeds which screen", () => {
	test("its own kind first", () => {
		expect(socketsOf(["HDMI", "DisplayPort"], ["DisplayPort", "HDMI"])).toEqual(["HDMI", "DisplayPort"]);
	});

	test("a screen leaves its own socket to one that nothing else can feed", () => {
		// DVI feeds the HDMI screen; a DisplayPort screen cannot hang on DVI.
		expect(socketsOf(["HDMI", "DisplayPort"], ["HDMI", "DVI"])).toEqual(["DVI", "HDMI"]);
	});

	test("a plain adapter before an active one", () => {
		expect(screensOnSockets(["VGA", "HDMI"], ["HDMI", "DisplayPort"])).toEqual([
			{ screen: "VGA", socket: "DisplayPort", way: "active" },
			{ screen: "HDMI", socket: "HDMI", way: "direct" },
		]);
	});

	test("what nothing can feed stays dark, and so does what comes when all are taken", () => {
		expect(socketsOf(["USB-C"], ["HDMI"])).toEqual([null]);
		expect(socketsOf(["HDMI", "HDMI"], ["HDMI"]).filter((socket) => socket === null)).toHaveLength(1);
		expect(socketsOf([], ["HDMI"])).toEqual([]);
		expect(socketsOf(["HDMI"], [])).toEqual([null]);
	});
});

const someSockets = fc.array(fc.constantFrom(...pictureSockets), { maxLength: 4 });

/** Every way to give each screen a socket of its own or none, told by how many screens stay dark. */
function fewestDark(screens: readonly PictureSocket[], sockets: readonly PictureSocket[]): number {
	const [screen, ...others] = screens;
	if (screen === undefined) return 0;
	const tries = sockets.flatMap((socket, index) =>
		pictureWay(socket, screen) ? [fewestDark(others, sockets.toSpliced(index, 1))] : [],
	);
	return Math.min(1 + fewestDark(others, sockets), ...tries);
}

test("no other way feeds more screens, no socket is given twice, and each can feed its screen", () => {
	fc.assert(
		fc.property(someSockets, someSockets, (screens, sockets) => {
			const fed = screensOnSockets(screens, sockets);
			expect(fed.map(({ screen }) => screen)).toEqual(screens);
			expect(fed.filter(({ socket }) => socket === null)).toHaveLength(fewestDark(screens, sockets));
			const left = [...sockets];
			for (const { screen, socket, way } of fed) {
				if (socket === null) continue;
				expect(left).toContain(socket);
				left.splice(left.indexOf(socket), 1);
				expect(way).toBe(pictureWay(socket, screen));
			}
		}),
	);
});
