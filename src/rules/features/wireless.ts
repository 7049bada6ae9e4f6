import type { ConnectorEnd } from "../../plan/plan.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

/** Standards that name the 6 GHz band besides 2.4 and 5 GHz: from memory. */
const withThirdBand: readonly string[] = ["Wi-Fi 6E", "Wi-Fi 7", "Wi-Fi 8"];

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
		"board.cardSlots",
		"addInCards",
		"case.cardSlots",
		"plan.ends",
	],
	messages: {
		notAsked: () => "You have not asked for wireless.",
		has: ({ standard }: { standard: string }) => `Wireless is built in${standard ? ` (${standard})` : ""}.`,
		thirdBand: ({ standard }: { standard: string }) => `Wireless is built in (${standard}).`,
		ownCard: ({ card }: { card: string }) => `The ${card} that you plan brings wireless, so the board needs none.`,
		module: () => "No wireless built in, but a socket for a wireless module.",
		familyModule: () =>
			"No wireless built in. The socket for a wireless module takes those that work with one family of processors only.",
		adapter: () => "No wireless built in: you would need an adapter, in a USB socket or a card slot.",
		usbAdapter: () => "No wireless built in, and no card slot is left over: an adapter in a USB socket remains.",
		wouldLike: () => "You would like wireless; this board has none built in.",
		need: ({ must }: { must: boolean }) =>
			must
				? "Wireless (Wi-Fi) built in; else count the price of an adapter."
				: "Wireless (Wi-Fi) built in, if it costs little.",
	},
	advice: {
		thirdBand: ({ standard }: { standard: string }) =>
			`The 6 GHz band of ${standard} works only where router, system and country allow it. Find that out before you pay more for it.`,
		module: () =>
			"Ask which modules it takes; some work with one processor family only. Two aerials and their leads come extra.",
		// That the other half sits in processor or chipset is from memory.
		familyModule: () =>
			"Such a module is half a radio; the other half is in the processor or chipset. Ask the board's maker which one works with yours before you buy it. An adapter in a USB socket works with any.",
		adapter: () => "Add the price of an adapter before you compare.",
		usbAdapter: () =>
			"Add the price of an adapter before you compare. One on a short lead, away from the metal of the case, hears better.",
	},
	check(facts): Outcome {
		const wish = facts["wish.features/wireless"];
		if (!wish || wish === "dont-mind") return pass("notAsked");
		const [builtIn, standard] = [facts["board.wireless.builtIn"], facts["board.wireless.standard"] ?? ""];
		if (builtIn) return pass(withThirdBand.includes(standard) ? "thirdBand" : "has", { standard });
		const own = facts.addInCards?.find(({ use }) => use === "wireless network");
		if (own) return pass("ownCard", { card: own.name });
		if (builtIn === undefined) return cannotTell(["board.wireless"]);
		if (wish === "would-like") return goodToKnow("wouldLike");
		const module = facts["board.wireless.moduleSocket"];
		if (module === "ordinary") return planAround("module");
		if (module === "one-family-only") return planAround("familyModule");
		const isNoSlotLeft = facts["board.cardSlots"] && !facts["plan.ends"]?.some(isLeft(facts["case.cardSlots"]));
		return planAround(isNoSlotLeft ? "usbAdapter" : "adapter");
	},
	needs: ({ "wish.features/wireless": wish, addInCards = [] }) =>
		wish && wish !== "dont-mind" && !addInCards.some(({ use }) => use === "wireless network")
			? { messageId: "need", data: { must: wish === "must" } }
			: null,
});

/** A PCI Express slot that nothing of the plan takes, covers or turns off, and that has an opening in the case. */
function isLeft(caseSlots: number | undefined): (end: ConnectorEnd) => boolean {
	return ({ connector, state }) =>
		connector.kind === "card slot" &&
		connector.bus === "PCI Express" &&
		(state === "free" || state === "narrows") &&
		(caseSlots === undefined || connector.row === null || connector.row <= caseSlots);
}
