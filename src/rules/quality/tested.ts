import { defineRule } from "../define-rule.ts";
import { goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

/**
 * The wish for a board whose power stages somebody counted or measured. That no such facts are there is just what is
 * judged, so this can always tell; and since a test may be found any day, it costs no board its place.
 */
export const tested = defineRule({
	id: "quality/tested",
	scope: "board",
	label: "Tested by somebody",
	wayOut: "a board nobody has tested",
	asks: "Has somebody counted or measured its power stages?",
	why: "The maker's figures can count pairs twice. Only a look at the bare board, or a test, tells how it holds up.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead: ["wish.quality/tested", "board.powerDelivery.coreStages", "board.powerDelivery.measurements"],
	messages: {
		notAsked: () => "You have not asked for a board that was tested.",
		measured: ({ tests }: { tests: number }) =>
			`Its power stages were measured in ${tests === 1 ? "a test" : `${tests} tests`}.`,
		counted: ({ stages }: { stages: number }) =>
			`Its power stages were counted: ${stages} for the cores. Nobody measured how hot they get.`,
		lacks: () => "No count and no test of its power stages is noted; you would not buy without.",
		wouldLike: () => "No count and no test of its power stages is noted, which you would like.",
		need: ({ must }: { must: boolean }) =>
			must
				? "A published test that counts or measures its power stages."
				: "A published test that counts or measures its power stages, if there is one.",
	},
	advice: {
		lacks: () => "Look for a published test before you pay. Where there is none, count the coils beside the socket.",
		wouldLike: () =>
			"Look for a published test before you pay. Where there is none, count the coils beside the socket.",
	},
	check(facts): Outcome {
		const wish = facts["wish.quality/tested"];
		if (!wish || wish === "dont-mind") return pass("notAsked");
		const [tests, stages] = [
			facts["board.powerDelivery.measurements"]?.length ?? 0,
			facts["board.powerDelivery.coreStages"],
		];
		if (tests > 0) return pass("measured", { tests });
		if (stages !== undefined) return wish === "must" ? goodToKnow("counted", { stages }) : pass("counted", { stages });
		return wish === "must" ? planAround("lacks") : goodToKnow("wouldLike");
	},
	needs: ({ "wish.quality/tested": wish }) =>
		wish && wish !== "dont-mind" ? { messageId: "need", data: { must: wish === "must" } } : null,
});
