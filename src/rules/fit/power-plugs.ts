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
			count === 1 ? "Its processor plug is fed." : `All ${count} processor plugs are fed.`,
		noPlug: () => "The board has no processor plug of its own; the main plug feeds it.",
		otherMain: ({ board, supply }: { board: string; supply: string }) =>
			`The board's main plug is ${board}; the supply's is ${supply}.`,
		firstUnfed: ({ plug }: { plug: string }) =>
			`The board's processor plug (${plug}) stays unfed: the supply has no plug of this kind.`,
		halfTooWeak: ({ peakW, budgetW }: { peakW: number; budgetW: number }) =>
			`A 4-pin plug feeds half of the board's 8-pin: ${budgetW} W, and the processor takes up to ${peakW} W.`,
		halfFed: ({ budgetW }: { budgetW: number }) =>
			`The supply's 4-pin plug feeds half of the board's 8-pin socket, ${budgetW} W.`,
		secondUnfed: ({ budgetW }: { budgetW: number }) =>
			`The second processor plug stays empty; the first alone carries ${budgetW} W, enough for this processor.`,
		secondNeeded: ({ peakW, budgetW }: { peakW: number; budgetW: number }) =>
			`The second processor plug stays empty; the first alone carries ${budgetW} W, and the processor takes up to ${peakW} W.`,
		secondPeakUnknown: ({ budgetW }: { budgetW: number }) =>
			`The second processor plug stays empty; the first alone carries ${budgetW} W. The processor's highest watts are not known.`,
		need: ({ plugs }: { plugs: readonly string[] }) =>
			`Its first processor plug must be one your supply has: ${plugs.join(", ")}.`,
	},
	advice: {
		halfFed: () => "Better is a supply with an 8-pin (4+4) processor plug. Never use a graphics cable or an adapter.",
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
		if (plugs.length >= sockets.length && eightPins >= eightPinSockets) return pass("fed", { count: sockets.length });
		const budgetW = first === "8-pin" ? oneProcessorPlugBudgetW : fourPinProcessorPlugBudgetW;
		if (peakW === undefined) return goodToKnow("secondPeakUnknown", { budgetW });
		return peakW > budgetW ? planAround("secondNeeded", { peakW, budgetW }) : goodToKnow("secondUnfed", { budgetW });
	},
	needs: ({ "supply.processorPlugs": plugs }) =>
		plugs && plugs.length > 0 ? { messageId: "need", data: { plugs: [...new Set(plugs)] } } : null,
});
