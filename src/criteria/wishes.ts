import { colourKind } from "../reference/colour-words.ts";
import { defineCriterion, type Measure } from "./define-criterion.ts";

/** One wish: whether the board meets it, undefined where its page is silent, and the fact that tells. */
interface Wish {
	readonly path: string;
	readonly met: boolean | undefined;
}

/** How many of the smaller wishes a board meets: those that cost no board its place. */
export const wishes = defineCriterion({
	id: "wishes",
	name: "meeting your small wishes",
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
	grounds: "The first wishes met please most; the last one is often forgotten.",
	reads: [
		"wish.features/wireless",
		"board.wireless.builtIn",
		"routerGbps",
		"board.wiredGbps",
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
		const wished: Wish[] = [];
		const add = (asked: boolean, path: string, met: boolean | undefined) => {
			if (asked) wished.push({ path, met });
		};
		const isWished = (strength: string | undefined) => strength === "would-like" || strength === "must";
		const { routerGbps, soundUses = [], colourTaste } = facts;
		const wired = facts["board.wiredGbps"];
		const rearSockets = facts["board.sound.rearSockets"];
		const colour = facts["board.colour"];
		add(isWished(facts["wish.features/wireless"]), "board.wireless.builtIn", facts["board.wireless.builtIn"]);
		add(routerGbps !== undefined, "board.wiredGbps", wired && Math.max(0, ...wired) >= (routerGbps ?? 0));
		add(soundUses.includes("optical"), "board.sound.optical", facts["board.sound.optical"]);
		add(
			soundUses.includes("surround"),
			"board.sound.rearSockets",
			rearSockets === undefined ? undefined : rearSockets >= 5,
		);
		add(
			colourTaste === "dark" || colourTaste === "light",
			"board.colour",
			colour === undefined ? undefined : colourKind(colour) === colourTaste,
		);
		// Where processor or memory cannot, no board can: it is then no board's to meet.
		const kit = facts["memory.errorCorrection"];
		const canCorrect = facts["processor.memory.errorCorrection"] !== false && kit !== "none" && kit !== "on-chip";
		add(
			isWished(facts["wish.features/error-correction"]) && canCorrect,
			"board.memory.errorCorrection",
			facts["board.memory.errorCorrection"],
		);
		add(facts.clockPlan === "maybe", "board.raises.processorClock", facts["board.raises.processorClock"]);
		if (wished.length === 0) return null;
		const met = wished.filter((wish) => wish.met === true).length;
		const open = wished.filter((wish) => wish.met === undefined);
		return {
			low: met / wished.length,
			high: (met + open.length) / wished.length,
			missing: open.map(({ path }) => path),
		};
	},
	says: ({ low, high }) => {
		if (low !== high) return "whether it meets all your small wishes is not known";
		if (low === 1) return "it meets all your small wishes";
		if (low === 0) return "it meets none of your small wishes";
		return `it meets ${Math.round(low * 100)} percent of your small wishes`;
	},
});
