import { pictureOverUsbC } from "../board-picture-sockets.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass } from "../outcome.ts";

/** With a card in the build the processor's own picture is the spare one, if the board has a socket for it. */
export const sparePicture = defineRule({
	id: "features/spare-picture",
	scope: "board",
	label: "Picture without the card",
	wayOut: "no picture without the card",
	asks: "Is there a picture when the graphics card fails?",
	why: "A processor with graphics shows a picture through the board while the card is away, and shows which of the two fails.",
	source: "common-practice",
	severity: "good-to-know",
	reads: [],
	mayRead: ["graphicsCard", "processor", "processor.graphics", "board.pictureSockets", "board.rearUsb"],
	messages: {
		notAsked: () => "A spare picture does not matter here: there is no card, or the processor has no graphics.",
		spare: () => "For the day the graphics card fails, the board has a picture socket for a processor with graphics.",
		spareOfYours: () =>
			"For the day the graphics card fails, your processor has graphics and the board has a picture socket.",
		noSocket: () =>
			"Your processor has graphics, and the board has no picture socket: when the card fails, the screen stays dark.",
		unsure: () => "Whether the board gives a picture when the graphics card fails is not known.",
	},
	advice: {
		noSocket: () => "It works with the card. Keep an old card at hand for the day this one fails, if you can.",
	},
	check(facts): Outcome {
		const { graphicsCard: card, processor, "processor.graphics": graphics } = facts;
		const hasCard = card === "have" || card === "open";
		if (!hasCard || graphics === false || processor === "open" || processor === "none") return pass("notAsked");
		const sockets = facts["board.pictureSockets"];
		const overUsbC = pictureOverUsbC(facts["board.rearUsb"]);
		if ((sockets && sockets.length > 0) || overUsbC.sockets > 0) return pass(graphics ? "spareOfYours" : "spare");
		if (graphics && sockets && !overUsbC.mayBeMore) return goodToKnow("noSocket");
		return cannotTell(
			[
				...(graphics === undefined ? [processor === "have" ? "processor.graphics" : "processor"] : []),
				...(sockets ? [] : ["board.pictureSockets"]),
				...(sockets && overUsbC.mayBeMore ? ["board.rearUsb"] : []),
			],
			"unsure",
		);
	},
});
