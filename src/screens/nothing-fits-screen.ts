import { conflictsOf } from "../choose/conflicts.ts";
import { type Repair, type RepairedWayOut, repairedWays } from "../choose/repaired-answers.ts";
import type { WayOut } from "../choose/ways-out.ts";
import { conflictWords } from "../sheet/demand-words.ts";
import { capital } from "../sheet/listed.ts";
import { actionWords, broughtBackWords, repairedWayWords } from "../sheet/ways-out-words.ts";
import { type Block, type Choice, heading, list, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** What the shortlist shows where nothing fits: what cannot go together, and what to change. */
interface NothingFits {
	readonly blocks: readonly Block[];
	/** A line for each way out that can be taken here. */
	readonly choices: readonly Choice[];
}

export function nothingFits(view: WalkView, ways: readonly WayOut[]): NothingFits {
	const judgement = view.judgement();
	const repaired = repairedOf(view, ways);
	// Two rules about one part make two conflicts that read alike.
	const conflicts = [...new Set(conflictsOf(ways).map((ids) => conflictWords(ids, judgement)))];
	const more = ways.length - repaired.length;
	return {
		blocks: [
			text("That is no dead end. Each line below says what to change, and which boards come back then."),
			list(repaired.map((way) => repairedWayWords(way, judgement, view.context))),
			...(more > 0 ? [text(`There are ${more} more ways, which ask for more.`)] : []),
			...(conflicts.length > 0 ? [heading("What cannot go together"), list(conflicts)] : []),
		],
		choices: repaired.flatMap(({ repairs }) => repairs.map((repair) => choiceOf(repair, view))),
	};
}

function choiceOf(repair: Repair, view: WalkView): Choice {
	const actions = repair.changes.map((change) => actionWords(change, view.context)).join(", and ");
	return {
		label: capital(actions),
		detail: broughtBackWords(repair, view.judgement()),
		event: {
			type: "way-out",
			changes: repair.changes.map(({ questionId, from, to }) => ({ questionId, from, to })),
		},
	};
}

/** Worked out once for a judgement: a screen is made anew at every key. */
const known = new WeakMap<object, readonly RepairedWayOut[]>();

function repairedOf(view: WalkView, ways: readonly WayOut[]): readonly RepairedWayOut[] {
	const judgement = view.judgement();
	const made = known.get(judgement) ?? repairedWays(judgement, view.state.answers, ways);
	known.set(judgement, made);
	return made;
}
