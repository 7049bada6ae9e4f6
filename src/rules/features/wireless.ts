import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

/** Wireless built in is comfortable; an adapter does the same, so it never costs a good board its place. */
export const wireless = defineRule({
	id: "features/wireless",
	scope: "board",
	label: "Wireless (Wi-Fi)",
	wayOut: "an adapter for wireless",
	asks: "Can this computer go online without a cable?",
	why: "Where no cable reaches, the board needs wireless built in, or you need an adapter.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead: [
		"wish.features/wireless",
		"board.wireless.builtIn",
		"board.wireless.standard",
		"board.wireless.moduleSocket",
	],
	messages: {
		notAsked: () => "You have not asked for wireless.",
		has: ({ standard }: { standard: string }) => `Wireless is built in${standard ? ` (${standard})` : ""}.`,
		module: () => "No wireless built in, but a socket for a wireless module.",
		adapter: () => "No wireless built in: you would need an adapter, in a USB socket or a card slot.",
		wouldLike: () => "No wireless built in, which you would like.",
		need: ({ must }: { must: boolean }) =>
			must
				? "Wireless (Wi-Fi) built in; else count the price of an adapter."
				: "Wireless (Wi-Fi) built in, if it costs little.",
	},
	advice: {
		module: () =>
			"Ask which modules it takes; some work with one processor family only. Two aerials and their leads come extra.",
		adapter: () => "Add the price of an adapter before you compare.",
	},
	check(facts): Outcome {
		const wish = facts["wish.features/wireless"];
		if (!wish || wish === "dont-mind") return pass("notAsked");
		const builtIn = facts["board.wireless.builtIn"];
		if (builtIn === undefined) return cannotTell(["board.wireless"]);
		if (builtIn) return pass("has", { standard: facts["board.wireless.standard"] ?? "" });
		if (wish === "would-like") return goodToKnow("wouldLike");
		return facts["board.wireless.moduleSocket"] === "ordinary" ? planAround("module") : planAround("adapter");
	},
	needs: ({ "wish.features/wireless": wish }) =>
		wish && wish !== "dont-mind" ? { messageId: "need", data: { must: wish === "must" } } : null,
});
