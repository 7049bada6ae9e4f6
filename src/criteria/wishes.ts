import { colourKind } from "../reference/colour-words.ts";
import { defineCriterion, type Measure } from "./define-criterion.ts";

/** One wish: whether the board meets it, undefined where its page is silent, and the fact that tells. */
interface Wish {
	readonly path: string;
	readonly met: boolean | undefined;
	/** Named in a sentence: "wireless". */
	readonly words: string;
	readonly weight: number;
}

/** A must that no rule makes a condition counts as two of what one would like (own convention). */
const weights = { must: 2, "would-like": 1 } as const;

/**
 * How many of the smaller wishes a board meets, by their strength: those that cost no board its place. Looks live here.
 * A wired network has its place in connections; error correction that must be is a rule's.
 */
export const wishes = defineCriterion({
	id: "wishes",
	name: "your small wishes",
	asks: "How much would giving up your small wishes bother you?",
	why: "Wishes that are no must still make one board nicer to have than another.",
	ends: { worst: "none of your small wishes is met", best: "all your small wishes are met" },
	unit: "share of wishes met",
	scale: [
		[0, 0],
		[0.5, 0.6],
		[1, 1],
	],
	source: "own-convention",
	grounds:
		"The first wishes met mean most; the last one is often forgotten. A must counts as two; one that takes boards out is not counted.",
	reads: [
		"wish.features/wireless",
		"board.wireless.builtIn",
		"addInCards",
		"soundUses",
		"board.sound.optical",
		"board.sound.rearSockets",
		"colourTaste",
		"board.colour",
		"wish.features/error-correction",
		"board.memory.errorCorrection",
		"memory.errorCorrection",
		"processor.memory.errorCorrection",
		"clockPlan",
		"board.raises.processorClock",
	],
	measure(facts): Measure | null {
		const { soundUses = [], colourTaste, addInCards = [] } = facts;
		const wished: Wish[] = [];
		const add = (strength: keyof typeof weights | null, path: string, words: string, met: boolean | undefined) => {
			if (strength) wished.push({ path, met, words, weight: weights[strength] });
		};
		const wireless = facts["wish.features/wireless"];
		// Who has a card for it needs none on the board.
		const hasCard = addInCards.some(({ use }) => use === "wireless network");
		const rearSockets = facts["board.sound.rearSockets"];
		const colour = facts["board.colour"];
		const builtIn = facts["board.wireless.builtIn"];
		add(
			(wireless === "must" || wireless === "would-like") && !hasCard ? wireless : null,
			"board.wireless.builtIn",
			"wireless",
			builtIn,
		);
		add(
			soundUses.includes("optical") ? "would-like" : null,
			"board.sound.optical",
			"the optical cable for sound",
			facts["board.sound.optical"],
		);
		add(
			soundUses.includes("surround") ? "would-like" : null,
			"board.sound.rearSockets",
			"five speakers",
			rearSockets === undefined ? undefined : rearSockets >= 5,
		);
		add(
			colourTaste === "dark" || colourTaste === "light" ? "would-like" : null,
			"board.colour",
			"the colour",
			colour === undefined ? undefined : colourKind(colour) === colourTaste,
		);
		// Where processor or memory cannot, no board can: it is then no board's to meet.
		const kit = facts["memory.errorCorrection"];
		const canCorrect = facts["processor.memory.errorCorrection"] !== false && kit !== "none" && kit !== "on-chip";
		add(
			facts["wish.features/error-correction"] === "would-like" && canCorrect ? "would-like" : null,
			"board.memory.errorCorrection",
			"error-correcting memory",
			facts["board.memory.errorCorrection"],
		);
		add(
			facts.clockPlan === "maybe" ? "would-like" : null,
			"board.raises.processorClock",
			"raising the processor's clock",
			facts["board.raises.processorClock"],
		);
		if (wished.length === 0) return null;
		const weightOf = (some: readonly Wish[]) => some.reduce((sum, { weight }) => sum + weight, 0);
		const all = weightOf(wished);
		const met = wished.filter((wish) => wish.met === true);
		const open = wished.filter((wish) => wish.met === undefined);
		const unmet = wished.filter((wish) => wish.met === false).map(({ words }) => words);
		const isSome = unmet.length > 0 && unmet.length < wished.length;
		return {
			low: weightOf(met) / all,
			high: weightOf([...met, ...open]) / all,
			missing: open.map(({ path }) => path),
			...(isSome ? { note: `of your small wishes it does not meet ${listed(unmet)}` } : {}),
		};
	},
	says: ({ low, high, note }) => {
		if (low === 1) return "it meets all your small wishes";
		if (high === 0) return "it meets none of your small wishes";
		if (note) return note;
		return low < high ? "whether it meets all your small wishes is not known" : "it meets some of your small wishes";
	},
});

/** "wireless", "wireless and the colour". */
function listed(words: readonly string[]): string {
	return words.length > 1 ? `${words.slice(0, -1).join(", ")} and ${words.at(-1)}` : (words[0] ?? "");
}
