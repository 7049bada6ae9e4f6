import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass } from "../outcome.ts";

/** Without a graphics card the picture comes from the processor, through a socket at the back of the board. */
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
	mayRead: ["processor.graphics", "board.pictureSockets"],
	messages: {
		card: () => "The graphics card gives the picture.",
		socket: ({ sockets }: { sockets: readonly string[] }) =>
			`The processor gives the picture, through the board's ${sockets.join(" or ")}.`,
		noSocket: () => "Without a card the picture must come from the board, and this one has no picture socket.",
		notTheBoard: () => "No picture either way; that is for another processor or a card to cure, not for a board.",
		unknown: () => "Whether a picture comes without a card is not known.",
		need: () => "A picture socket at the back (HDMI or DisplayPort), because you have no graphics card.",
	},
	check(facts): Outcome {
		const card = facts.graphicsCard;
		if (card === "have" || card === "open") return pass("card");
		const [graphics, sockets] = [facts["processor.graphics"], facts["board.pictureSockets"]];
		if (graphics && sockets && sockets.length > 0) return pass("socket", { sockets: [...new Set(sockets)] });
		if (card === "unknown") return cannotTell(["graphicsCard"], "unknown");
		if (graphics === false) return pass("notTheBoard");
		if (graphics && sockets?.length === 0) return fail("noSocket");
		return cannotTell(
			[...(graphics === undefined ? ["processor.graphics"] : []), ...(sockets ? [] : ["board.pictureSockets"])],
			"unknown",
		);
	},
	needs: ({ graphicsCard, "processor.graphics": graphics }) =>
		graphicsCard === "none" && graphics !== false ? { messageId: "need", data: {} } : null,
});
