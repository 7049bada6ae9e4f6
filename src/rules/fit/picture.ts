import type { FactsUnder } from "../../parts/fact-path.ts";
import type { PictureSocket } from "../../parts/vocabulary.ts";
import { boardPictureSockets, pictureOverUsbC } from "../board-picture-sockets.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass, planAround } from "../outcome.ts";
import { type AdaptedScreen, adaptedScreens, countedOnce, screensOnBoard } from "../screens-on-board.ts";

const reads = ["graphicsCard"] as const;
const mayRead = ["processor.graphics", "board.pictureSockets", "board.rearUsb", "screens"] as const;
/** `notSure`: whether there will be a graphics card is open. */
interface Wants {
	readonly notSure?: true;
}
const noCard = ({ notSure }: Wants) => `${notSure ? "in case" : "because"} you have no graphics card`;
type Facts = FactsUnder<(typeof reads)[number], (typeof mayRead)[number]>;

/**
 * Without a graphics card the picture comes from the processor, through a socket at the back of the board; each screen
 * wants one of its own, of its shape or through an adapter. A USB-C socket that names a picture among its modes is one too.
 */
export const picture = defineRule({
	id: "fit/picture",
	scope: "board",
	label: "Picture socket",
	wayOut: "a graphics card",
	asks: "Will there be a picture on the screen?",
	why: "Without a graphics card the picture comes from the processor, and needs a socket at the back of the board.",
	source: "common-practice",
	severity: "stops",
	reads,
	mayRead,
	saysNothing: ["notTheBoard"],
	messages: {
		card: () => "The graphics card gives the picture.",
		socket: ({ sockets }: { sockets: readonly string[] }) =>
			`The processor gives the picture, through the board's ${sockets.join(" or ")}.`,
		usbC: () => "The picture comes through a USB-C socket at the back; no HDMI or DisplayPort socket is named.",
		tooFewSockets: ({ screens, sockets }: { screens: number; sockets: number }) =>
			`You have ${screens} screens; the board has ${sockets} picture ${sockets === 1 ? "socket" : "sockets"}.`,
		otherShape: ({ adapters }: { adapters: readonly string[] }) =>
			`Not every screen finds a socket of its shape on the board. Adapters help: ${adapters.join(", ")}.`,
		vga: ({ socket }: { socket: string }) =>
			`Your VGA screen has no socket of its shape; the board's ${socket} can feed it.`,
		noWay: ({ screens }: { screens: readonly string[] }) =>
			`No free socket of the board can feed a screen whose plug is ${screens.join(" or ")}.`,
		noSocket: () => "Without a card the picture must come from the board, and this one has no picture socket.",
		notTheBoard: () =>
			"No board gives a picture with this processor: that takes another processor, or a graphics card.",
		unknown: () => "Whether a picture comes without a card is not known.",
		need: (wants: Wants) => `A picture socket at the back (HDMI or DisplayPort), ${noCard(wants)}.`,
		needScreens: ({ screens, ...wants }: Wants & { screens: readonly string[] }) =>
			`${screens.length === 1 ? "A picture socket" : `${screens.length} picture sockets`} at the back, ${noCard(wants)}. Your screens have: ${screens.join(", ")}. A socket of another shape needs an adapter.`,
	},
	advice: {
		usbC: () =>
			"Buy a cable from USB-C to the plug of your screen, made for a picture; most are made for charging only. To VGA it must be an active adapter.",
		tooFewSockets: () => "A graphics card brings more sockets; some screens pass the picture on to the next one.",
		otherShape: ({ active = [] }: { active?: readonly string[] }) =>
			`Adapters work one way only: the first name is the board's end, the second the screen's.${
				active.length === 0 ? "" : ` Buy one with a chip inside ("active") for: ${active.join(", ")}.`
			}`,
		noWay: () => "Look at the back of the screen: many have a second kind of socket. Else a graphics card helps.",
		vga: () => "A plain cable does not do: buy an active adapter to VGA, which turns the picture into the old form.",
	},
	check(facts): Outcome {
		const card = facts.graphicsCard;
		if (card === "have" || card === "open") return pass("card");
		const [graphics, listed] = [facts["processor.graphics"], facts["board.pictureSockets"]];
		const overUsbC = pictureOverUsbC(facts["board.rearUsb"]);
		const sockets = boardPictureSockets(listed, facts["board.rearUsb"]);
		if (graphics && sockets.length > 0) {
			const plain = pass("socket", { sockets: [...new Set(sockets)] });
			return card === "none" ? (wayToScreens(facts, sockets) ?? plain) : plain;
		}
		if (card === "unknown") return cannotTell(["graphicsCard"], "unknown");
		if (graphics === false) return pass("notTheBoard");
		// A list without any socket may still leave out what USB-C can do.
		const mayHaveUsbC = sockets.length === 0 && overUsbC.mayBeMore;
		if (graphics && listed && !mayHaveUsbC) return fail("noSocket");
		return cannotTell(
			[
				...(graphics === undefined ? ["processor.graphics"] : []),
				...(listed || sockets.length > 0 ? [] : ["board.pictureSockets"]),
				...(listed && mayHaveUsbC ? ["board.rearUsb"] : []),
			],
			"unknown",
		);
	},
	needs({ graphicsCard, "processor.graphics": graphics, screens = [] }) {
		const notSure = graphicsCard === "unknown";
		if ((graphicsCard !== "none" && !notSure) || graphics === false) return null;
		const wants: Wants = notSure ? { notSure } : {};
		const need =
			screens.length > 0
				? { messageId: "needScreens", data: { ...wants, screens } }
				: { messageId: "need", data: { ...wants } };
		return notSure ? { ...need, standsFor: ["need", "needScreens"] } : need;
	},
});

/** What to plan for on the way from the board's sockets to the screens, or null. */
function wayToScreens(facts: Facts, sockets: readonly PictureSocket[]): Outcome | null {
	const screens = facts.screens ?? [];
	const out = screensOut(facts, sockets);
	const isUsbCOnly = sockets.every((socket) => socket === "USB-C");
	// Where the other sockets are not known, what the screens lack would be a guess; that there is a picture is none.
	return isUsbCOnly && (screens.length === 0 || (out && !facts["board.pictureSockets"])) ? planAround("usbC") : out;
}

/** What to plan for where not every screen finds a socket of its shape, or null. */
function screensOut(facts: Facts, sockets: readonly PictureSocket[]): Outcome | null {
	const fed = screensOnBoard(facts);
	if (!fed) return planAround("tooFewSockets", { screens: facts.screens?.length ?? 0, sockets: sockets.length });
	const dark = fed.filter(({ way }) => way === null);
	if (dark.length > 0) return planAround("noWay", { screens: [...new Set(dark.map(({ screen }) => screen))] });
	const adapted = adaptedScreens(fed);
	const [first] = adapted;
	if (!first) return null;
	if (adapted.length === 1 && first.screen === "VGA") return planAround("vga", { socket: first.socket });
	const namesOf = (some: readonly AdaptedScreen[]) =>
		countedOnce(some.map(({ socket, screen }) => `${socket} to ${screen}`));
	const active = namesOf(adapted.filter(({ isActive }) => isActive));
	return planAround("otherShape", { adapters: namesOf(adapted), ...(active.length > 0 ? { active } : {}) });
}
