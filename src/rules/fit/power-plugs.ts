import type { FactsUnder } from "../../parts/fact-path.ts";
import type { ProcessorPlug } from "../../parts/vocabulary.ts";
import type { LoadFacts } from "../../power/load-facts.ts";
import { atProcessorPlugs, mainPlugs, processorPlugsCarry } from "../../reference/power-plugs.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type MessageData, type Outcome, pass, planAround } from "../outcome.ts";

/** Load and limits of one plug or several, in W. */
interface Carried extends MessageData {
	/** What the processor draws there at its highest, losses of the board included. */
	readonly loadW: number;
	readonly budgetW: number;
	readonly mostW: number;
}
const eightPinAdvice =
	"A supply with an 8-pin (4+4) processor plug is better. Two 4-pin plugs go in side by side only if they are marked as the halves of one. Never force a plug, and never use a graphics cable or an adapter.";
const halfAndLoad = (carried: Carried) =>
	`A 4-pin plug feeds half of the board's 8-pin socket: ${carry(carried)}. ${draws(carried)}`;
const firstAndLoad = (carried: Carried) =>
	`The second processor plug stays empty; the first alone carries ${carry(carried)}. ${draws(carried)}`;
const allAndLoad = (carried: Carried) => `The board's processor plugs carry ${carry(carried)}. ${draws(carried)}`;
const draws = ({ loadW }: Carried) => `The processor can draw ${loadW} W there, with what the board loses.`;
const carry = ({ budgetW, mostW }: Carried) => `${budgetW} W with ease, ${mostW} W at the most`;

const reads = ["board.power.processorPlugs", "supply.processorPlugs"] as const;
const mayRead = ["board.power.mainPlug", "supply.mainPlug", "load.peak"] as const;
type Facts = FactsUnder<(typeof reads)[number], (typeof mayRead)[number]>;

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
	reads,
	mayRead,
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
		shortMain: ({ supplyLines, boardLines }: { supplyLines: number; boardLines: number }) =>
			`The supply's 20-pin main plug leaves four contacts of the board's 24-pin one empty. That is ${supplyLines} contact for 12 V instead of ${boardLines}.`,
		firstUnfed: ({ plug }: { plug: string }) =>
			`The board's processor plug (${plug}) stays unfed: the supply has no plug of this kind.`,
		halfTooWeak: halfAndLoad,
		halfTight: halfAndLoad,
		plugsWeak: allAndLoad,
		plugsBusy: allAndLoad,
		halfFed: ({ budgetW }: { budgetW: number }) =>
			`The supply's 4-pin plug feeds half of the board's 8-pin socket, ${budgetW} W.`,
		secondUnfed: ({ budgetW }: { budgetW: number }) =>
			`The second processor plug stays empty; the first alone carries ${budgetW} W, enough for this processor.`,
		secondHelps: firstAndLoad,
		secondNeeded: firstAndLoad,
		secondPeakUnknown: ({ budgetW }: { budgetW: number }) =>
			`The second processor plug stays empty; the first alone carries ${budgetW} W. The processor's highest watts are not known.`,
		needAny: () => "A 4-pin or an 8-pin processor plug: your supply's 8-pin feeds either, if it splits into 4+4.",
		needEightPin: ({ loadW, budgetW }: { loadW: number; budgetW: number }) =>
			`At least one 8-pin processor plug: a 4-pin carries ${budgetW} W, and your processor can draw ${loadW} W there.`,
		needOpenSupply: () => "An 8-pin or a 4-pin processor plug: take a supply that has the same ones.",
		needLikelyEightPin: ({ loadW, budgetW }: { loadW: number; budgetW: number }) =>
			`An 8-pin processor plug is the safe choice. A 4-pin carries ${budgetW} W, and your processor may draw up to ${loadW} W there: its highest watts are not known.`,
		needFourPin: () =>
			"A 4-pin processor plug, since your supply has no 8-pin. For a board with an 8-pin, plan another supply.",
	},
	advice: {
		shortMain: () =>
			"It starts, but only for a light load: add no card that draws from its slot, or the contact gets hot. A 24-pin supply is better; an adapter adds no wire. The plug goes in at one end of the socket, where shapes and clip meet: never force it.",
		secondUnfed: () =>
			"Leave it empty: a graphics plug looks alike, but its wires lie in other places. To raise the clock, take a supply that feeds both.",
		halfFed: () => eightPinAdvice,
		halfTight: () => eightPinAdvice,
		plugsBusy: () => "It runs so: 6 to 8 A on each pin are normal. Push the plugs in until they click.",
		plugsWeak: () => "Take a board with more or larger processor plugs for this processor.",
		secondHelps: () => "It runs on the first alone. If your supply has a second processor plug, use it.",
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
		const outcome = ofProcessorPlugs(facts);
		// Numbers of contacts: see reference/power-plugs. What the processor plugs lack is told first.
		const isShort = supplyMain === "20-pin" && boardMain !== "20-pin";
		const isLesser = outcome.kind === "pass" || (outcome.kind === "caution" && outcome.severity === "good-to-know");
		return isShort && isLesser
			? planAround("shortMain", {
					supplyLines: mainPlugs["20-pin"].contactsAt12V,
					boardLines: mainPlugs["24-pin"].contactsAt12V,
				})
			: outcome;
	},
	needs({ "supply.processorPlugs": plugs, "load.peak": peak }) {
		const { budgetW } = processorPlugsCarry(["4-pin"]);
		const loadW = atProcessorPlugs(statedPeak(peak) ?? 0);
		if (loadW > budgetW) return { messageId: "needEightPin", data: { loadW, budgetW } };
		const guessedW = atProcessorPlugs(peak?.guessed ? peak.high : 0);
		const likely = guessedW > budgetW ? { messageId: "needLikelyEightPin", data: { loadW: guessedW, budgetW } } : null;
		if (!plugs)
			return {
				...(likely ?? { messageId: "needOpenSupply", data: {} }),
				standsFor: ["needAny", "needFourPin", "needLikelyEightPin"],
			};
		if (plugs.length === 0) return null;
		if (!plugs.includes("8-pin")) return { messageId: "needFourPin", data: {} };
		return likely ?? { messageId: "needAny", data: {} };
	},
});

/** The first processor plug fed, all of them, or some. */
function ofProcessorPlugs(facts: Facts): Outcome {
	const sockets = facts["board.power.processorPlugs"];
	const [first] = sockets;
	if (!first) return pass("noPlug");
	const plugs = facts["supply.processorPlugs"];
	if (plugs.length === 0) return fail("firstUnfed", { plug: first });
	const peakW = statedPeak(facts["load.peak"]);
	const eightPins = plugs.filter((plug) => plug === "8-pin").length;
	if (first === "8-pin" && eightPins === 0) return halfFed(peakW);
	const eightPinSockets = sockets.filter((plug) => plug === "8-pin").length;
	if (plugs.length >= sockets.length && eightPins >= eightPinSockets) return allFed(sockets, peakW);
	const one = processorPlugsCarry([first]);
	if (peakW === undefined) return goodToKnow("secondPeakUnknown", { budgetW: one.budgetW });
	const carried = { loadW: atProcessorPlugs(peakW), ...one };
	// Told at the bench with all that is as it should be: for most it is no drawback.
	if (carried.loadW <= one.budgetW) return pass("secondUnfed", { budgetW: one.budgetW });
	return carried.loadW <= one.mostW ? goodToKnow("secondHelps", carried) : planAround("secondNeeded", carried);
}

/** The most the processor takes, where a page gives it: a guess from the label is no ground for other plugs. */
function statedPeak(peak: LoadFacts["peak"]): number | undefined {
	return peak && !peak.guessed ? peak.high : undefined;
}

/** A 4-pin plug in the board's 8-pin socket: it starts, and how much it carries is half as much. */
function halfFed(peakW: number | undefined): Outcome {
	const half = processorPlugsCarry(["4-pin"]);
	const { budgetW } = half;
	if (peakW === undefined) return cannotTell(["processor.peakW"], "halfFed", { budgetW });
	const carried = { loadW: atProcessorPlugs(peakW), ...half };
	if (carried.loadW > half.mostW) return fail("halfTooWeak", carried);
	return carried.loadW > budgetW ? planAround("halfTight", carried) : planAround("halfFed", { budgetW });
}

/** All plugs fed is not yet enough: they must carry the processor's highest watts. */
function allFed(sockets: readonly ProcessorPlug[], peakW: number | undefined): Outcome {
	const all = processorPlugsCarry(sockets);
	const carried = { loadW: atProcessorPlugs(peakW ?? 0), ...all };
	if (carried.loadW <= all.budgetW) return pass("fed", { count: sockets.length });
	return carried.loadW <= all.mostW ? goodToKnow("plugsBusy", carried) : planAround("plugsWeak", carried);
}
