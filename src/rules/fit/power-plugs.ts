import type { ProcessorPlug } from "../../parts/vocabulary.ts";
import { fourPinProcessorPlugBudgetW, oneProcessorPlugBudgetW } from "../../reference/power-plugs.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

/**
 * The board's main plug and its 12 V processor plugs against the supply's. The first processor plug unfed stops it; a
 * second one unfed matters only above what one plug carries.
 */
export const powerPlugs = defineRule({
	id: "fit/power-plugs",
	scope: "board",
	label: "Power plugs",
	wayOut: "another power supply",
	asks: "Does your supply have the plugs this board needs?",
	why: "Without its processor plug a board does not start. Graphics plugs look alike, but their wires lie in other places.",
	source: "atx-3.0-guide-2.01",
	severity: "stops",
	reads: ["board.power.processorPlugs", "supply.processorPlugs"],
	mayRead: ["board.power.mainPlug", "supply.mainPlug", "processor.peakW"],
	messages: {
		fed: ({ count }: { count: number }) =>
			count === 1
				? "Its processor plug is fed."
				: count === 2
					? "Both processor plugs are fed."
					: `All ${count} processor plugs are fed.`,
		noPlug: () => "The board has no processor plug of its own; the main plug feeds it.",
		otherMain: ({ board, supply }: { board: string; supply: string }) =>
			`The board's main plug is ${board}; the supply's is ${supply}.`,
		firstUnfed: ({ plug }: { plug: string }) =>
			`The board's processor plug (${plug}) stays unfed: the supply has no plug of this kind.`,
		halfTooWeak: ({ peakW, budgetW }: { peakW: number; budgetW: number }) =>
			`A 4-pin plug feeds half of the board's 8-pin: ${budgetW} W, and the processor takes up to ${peakW} W.`,
		plugsWeak: ({ peakW, budgetW }: { peakW: number; budgetW: number }) =>
			`The board's processor plugs carry ${budgetW} W, and the processor takes up to ${peakW} W.`,
		halfFed: ({ budgetW }: { budgetW: number }) =>
			`The supply's 4-pin plug feeds half of the board's 8-pin socket, ${budgetW} W.`,
		secondUnfed: ({ budgetW }: { budgetW: number }) =>
			`The second processor plug stays empty; the first alone carries ${budgetW} W, enough for this processor.`,
		secondNeeded: ({ peakW, budgetW }: { peakW: number; budgetW: number }) =>
			`The second processor plug stays empty; the first alone carries ${budgetW} W, and the processor takes up to ${peakW} W.`,
		secondPeakUnknown: ({ budgetW }: { budgetW: number }) =>
			`The second processor plug stays empty; the first alone carries ${budgetW} W. The processor's highest watts are not known.`,
		needAny: () => "A 4-pin or an 8-pin processor plug: your supply's 8-pin feeds either, if it splits into 4+4.",
		needEightPin: ({ peakW }: { peakW: number }) =>
			`At least one 8-pin processor plug: a 4-pin carries ${fourPinProcessorPlugBudgetW} W, and your processor takes up to ${peakW} W.`,
		needFourPin: () =>
			"A 4-pin processor plug: your supply has no 8-pin. For a board with an 8-pin plan another supply.",
	},
	advice: {
		halfFed: () =>
			"Better is a supply with an 8-pin (4+4) processor plug. Two 4-pin plugs go in side by side only if they are marked as the halves of one. Never force a plug, and never use a graphics cable or an adapter.",
		plugsWeak: () => "Take a board with more or larger processor plugs for this processor.",
		secondNeeded: () =>
			"A supply with two processor plugs is the clean way; no adapters, and only that supply's own cables.",
		secondPeakUnknown: () => "Look for the processor's maximum power on its maker's page.",
	},
	check(facts): Outcome {
		const [boardMain, supplyMain] = [facts["board.power.mainPlug"], facts["supply.mainPlug"]];
		if (boardMain && supplyMain && (boardMain === "10-pin 12 V only") !== (supplyMain === "10-pin 12 V only"))
			return fail("otherMain", { board: boardMain, supply: supplyMain });
		// Most supplies have a 24-pin plug, so a supply of which nothing is said counts as one; not for a 10-pin board.
		if (boardMain === "10-pin 12 V only" && !supplyMain) return cannotTell(["supply.mainPlug"]);
		const sockets = facts["board.power.processorPlugs"];
		const [first] = sockets;
		if (!first) return pass("noPlug");
		const plugs = facts["supply.processorPlugs"];
		if (plugs.length === 0) return fail("firstUnfed", { plug: first });
		const peakW = facts["processor.peakW"];
		const eightPins = plugs.filter((plug) => plug === "8-pin").length;
		if (first === "8-pin" && eightPins === 0) {
			const budgetW = fourPinProcessorPlugBudgetW;
			if (peakW === undefined) return cannotTell(["processor.peakW"], "halfFed", { budgetW });
			return peakW > budgetW ? fail("halfTooWeak", { peakW, budgetW }) : planAround("halfFed", { budgetW });
		}
		const eightPinSockets = sockets.filter((plug) => plug === "8-pin").length;
		if (plugs.length >= sockets.length && eightPins >= eightPinSockets) return allFed(sockets, peakW);
		const budgetW = first === "8-pin" ? oneProcessorPlugBudgetW : fourPinProcessorPlugBudgetW;
		if (peakW === undefined) return goodToKnow("secondPeakUnknown", { budgetW });
		return peakW > budgetW ? planAround("secondNeeded", { peakW, budgetW }) : pass("secondUnfed", { budgetW });
	},
	needs({ "supply.processorPlugs": plugs, "processor.peakW": peakW }) {
		if (peakW !== undefined && peakW > fourPinProcessorPlugBudgetW)
			return { messageId: "needEightPin", data: { peakW } };
		if (!plugs || plugs.length === 0) return null;
		return { messageId: plugs.includes("8-pin") ? "needAny" : "needFourPin", data: {} };
	},
});

/** All plugs fed is not yet enough: they must carry the processor's highest watts. */
function allFed(sockets: readonly ProcessorPlug[], peakW: number | undefined): Outcome {
	const budgetW = sockets.reduce(
		(sum, plug) => sum + (plug === "8-pin" ? oneProcessorPlugBudgetW : fourPinProcessorPlugBudgetW),
		0,
	);
	if (peakW === undefined || peakW <= budgetW) return pass("fed", { count: sockets.length });
	return planAround("plugsWeak", { peakW, budgetW });
}
