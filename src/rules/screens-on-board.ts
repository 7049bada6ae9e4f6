import type { FactsUnder } from "../parts/fact-path.ts";
import type { PictureSocket } from "../parts/vocabulary.ts";
import { boardPictureSockets } from "./board-picture-sockets.ts";
import { type FedScreen, screensOnSockets } from "./screens-on-sockets.ts";

type ScreenFacts = FactsUnder<
	never,
	"graphicsCard" | "processor.graphics" | "board.pictureSockets" | "board.rearUsb" | "screens"
>;

/**
 * How the board's own picture sockets feed the screens. Null where a graphics card does that or may, where there is no
 * picture from the processor for certain, and where more screens than sockets are left to speak of.
 */
export function screensOnBoard(facts: ScreenFacts): readonly FedScreen[] | null {
	if (facts.graphicsCard !== "none" || !facts["processor.graphics"]) return null;
	const sockets = boardPictureSockets(facts["board.pictureSockets"], facts["board.rearUsb"]);
	const { screens = [] } = facts;
	return screens.length > sockets.length ? null : screensOnSockets(screens, sockets);
}

/** A screen that gets its picture through an adapter. */
export interface AdaptedScreen {
	readonly socket: PictureSocket;
	readonly screen: PictureSocket;
	readonly isActive: boolean;
}

/** Screens that want an adapter; those that none helps are left out. */
export function adaptedScreens(fed: readonly FedScreen[]): readonly AdaptedScreen[] {
	return fed.flatMap(({ screen, socket, way }) =>
		socket === null || way === null || way === "direct" ? [] : [{ socket, screen, isActive: way === "active" }],
	);
}

/** Each text once, such as "2 x HDMI to DVI" where it is there twice; `single` goes before one that is there once. */
export function countedOnce(texts: readonly string[], single = ""): readonly string[] {
	return [...new Set(texts)].map((text) => {
		const count = texts.filter((one) => one === text).length;
		return count > 1 ? `${count} x ${text}` : `${single}${text}`;
	});
}
