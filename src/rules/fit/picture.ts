import type { PictureSocket } from "../../parts/vocabulary.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass, planAround } from "../outcome.ts";

/**
 * Without a graphics card the picture comes from the processor, through a socket at the back of the board; each screen
 * wants one of its own, of its shape or through an adapter.
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
	mayRead: ["processor.graphics", "board.pictureSockets", "screens"],
	messages: {
		card: () => "The graphics card gives the picture.",
		socket: ({ sockets }: { sockets: readonly string[] }) =>
			`The processor gives the picture, through the board's ${sockets.join(" or ")}.`,
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
		const [graphics, sockets] = [facts["processor.graphics"], facts["board.pictureSockets"]];
		if (graphics && sockets && sockets.length > 0) {
			const plain = pass("socket", { sockets: [...new Set(sockets)] });
			return card === "none" ? (screensOut(facts.screens ?? [], sockets) ?? plain) : plain;
		}
		if (card === "unknown") return cannotTell(["graphicsCard"], "unknown");
		if (graphics === false) return pass("notTheBoard");
		if (graphics && sockets?.length === 0) return fail("noSocket");
		return cannotTell(
			[...(graphics === undefined ? ["processor.graphics"] : []), ...(sockets ? [] : ["board.pictureSockets"])],
			"unknown",
		);
	},
	needs({ graphicsCard, "processor.graphics": graphics, screens = [] }) {
		if (graphicsCard !== "none" || graphics === false) return null;
		return screens.length > 0 ? { messageId: "needScreens", data: { screens } } : { messageId: "need", data: {} };
	},
});

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
