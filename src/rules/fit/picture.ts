import type { Board } from "../../parts/board.ts";
import type { PictureSocket } from "../../parts/vocabulary.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass, planAround } from "../outcome.ts";

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
	reads: ["graphicsCard"],
	mayRead: ["processor.graphics", "board.pictureSockets", "board.rearUsb", "screens"],
	saysNothing: ["notTheBoard"],
	messages: {
		card: () => "The graphics card gives the picture.",
		socket: ({ sockets }: { sockets: readonly string[] }) =>
			`The processor gives the picture, through the board's ${sockets.join(" or ")}.`,
		usbC: () => "The picture comes through a USB-C socket at the back; no HDMI or DisplayPort socket is named.",
		tooFewSockets: ({ screens, sockets }: { screens: number; sockets: number }) =>
			`You have ${screens} screens; the board has ${sockets} picture ${sockets === 1 ? "socket" : "sockets"}.`,
		otherShape: ({ screens, sockets }: { screens: readonly string[]; sockets: readonly string[] }) =>
			`No socket of its shape for your ${screens.length === 1 ? "screen" : "screens"} with ${screens.join(", ")}. Free on the board: ${sockets.join(", ")}.`,
		vga: ({ sockets }: { sockets: readonly string[] }) =>
			`Your VGA screen has no socket of its shape. Free on the board: ${sockets.join(", ")}.`,
		noSocket: () => "Without a card the picture must come from the board, and this one has no picture socket.",
		notTheBoard: () => "No picture either way; that is for another processor or a card to cure, not for a board.",
		unknown: () => "Whether a picture comes without a card is not known.",
		need: () => "A picture socket at the back (HDMI or DisplayPort), because you have no graphics card.",
		needScreens: ({ screens }: { screens: readonly string[] }) =>
			`Picture sockets at the back for your screens (${screens.join(", ")}), because you have no graphics card.`,
	},
	advice: {
		usbC: () =>
			"Buy a cable from USB-C to the plug of your screen, made for a picture; most are made for charging only. To VGA it must be an active adapter.",
		tooFewSockets: () => "A graphics card brings more sockets; some screens pass the picture on to the next one.",
		otherShape: ({ screens }: { screens: readonly string[] }) =>
			`An adapter helps. Adapters work one way only: buy one from the board's socket to the screen's plug.${
				screens.includes("VGA") ? " To VGA it must be an active one." : ""
			}`,
		vga: () => "A plain cable does not do: buy an active adapter to VGA, which turns the picture into the old form.",
	},
	check(facts): Outcome {
		const card = facts.graphicsCard;
		if (card === "have" || card === "open") return pass("card");
		const [graphics, listed] = [facts["processor.graphics"], facts["board.pictureSockets"]];
		const overUsbC = pictureOverUsbC(facts["board.rearUsb"]);
		const sockets = withUsbC(listed ?? [], overUsbC.sockets);
		if (graphics && sockets.length > 0) {
			const plain = pass("socket", { sockets: [...new Set(sockets)] });
			return card === "none" ? (wayToScreens(facts.screens ?? [], sockets, listed !== undefined) ?? plain) : plain;
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
		if (graphicsCard !== "none" || graphics === false) return null;
		return screens.length > 0 ? { messageId: "needScreens", data: { screens } } : { messageId: "need", data: {} };
	},
});

/** Words of a page for a USB-C socket that carries a picture ("picture", "DisplayPort", "DP Alt Mode"). */
const pictureWords = /picture|display|\bdp(\b|\d)/i;
const notWords = /\b(no|not|without)\b/i;

/** How many USB-C sockets at the back are known to give a picture, and whether there may be more than known. */
export function pictureOverUsbC(rearUsb: Board["rearUsb"]): { readonly sockets: number; readonly mayBeMore: boolean } {
	const oval = (rearUsb ?? []).filter(({ plug }) => plug === "C");
	const giving = oval.filter(({ modes = [] }) => modes.some((one) => pictureWords.test(one) && !notWords.test(one)));
	return {
		sockets: giving.reduce((sum, { count }) => sum + count, 0),
		mayBeMore: !rearUsb || oval.some(({ modes }) => modes === undefined),
	};
}

/** Pages list such a socket among the picture sockets, among the USB sockets, or in both places: it counts once. */
function withUsbC(listed: readonly PictureSocket[], overUsbC: number): readonly PictureSocket[] {
	const missing = overUsbC - listed.filter((socket) => socket === "USB-C").length;
	return [...listed, ...Array.from({ length: Math.max(0, missing) }, () => "USB-C" as const)];
}

/** What to plan for on the way from the board's sockets to the screens, or null. */
function wayToScreens(
	screens: readonly PictureSocket[],
	sockets: readonly PictureSocket[],
	isWhole: boolean,
): Outcome | null {
	const out = screensOut(screens, sockets);
	const isUsbCOnly = sockets.every((socket) => socket === "USB-C");
	// Where the other sockets are not known, what the screens lack would be a guess; that there is a picture is none.
	return isUsbCOnly && (screens.length === 0 || (out && !isWhole)) ? planAround("usbC") : out;
}

/** What to plan for where not every screen finds a socket of its shape, or null. */
function screensOut(screens: readonly PictureSocket[], sockets: readonly PictureSocket[]): Outcome | null {
	if (screens.length > sockets.length)
		return planAround("tooFewSockets", { screens: screens.length, sockets: sockets.length });
	const free = [...sockets];
	const without = screens.filter((plug) => {
		const at = free.indexOf(plug);
		if (at >= 0) free.splice(at, 1);
		return at < 0;
	});
	if (without.length === 0) return null;
	return without.length === 1 && without[0] === "VGA"
		? planAround("vga", { sockets: free })
		: planAround("otherShape", { screens: without, sockets: free });
}
