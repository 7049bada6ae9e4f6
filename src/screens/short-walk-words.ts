import { mostAsked, type WhyStopped } from "../choose/when-to-stop.ts";
import { askedQuestions } from "../questions/is-asked.ts";
import { type ShortWalk, shortWalkOf } from "../walk/short-walk.ts";
import type { WalkView } from "./walk-view.ts";

const reasons: Readonly<Record<WhyStopped, string>> = {
	"nothing-changes-the-lead": "None of the questions left could change which board leads.",
	"little-to-gain":
		"The questions left could still change which board leads, but for little. Each is worth less than half a point of 100 on average.",
	"enough-asked": `The short walk ends after ${mostAsked} questions. Some of those left could still change which board leads.`,
};

/** The short walk that is being made; null on the long one. */
export function shortWalkIn({ context, state, judgement }: WalkView): ShortWalk | null {
	return shortWalkOf(context, state.answers, judgement().build);
}

/** Why a short walk ends, how many questions it did not ask, and how to be asked them; empty while it goes on. */
export function shortWalkEndWords(walk: ShortWalk, boardsLeft: number): readonly string[] {
	if (walk.why === null) return [];
	const count = walk.open.length;
	// Without a board there is none to lead: all that the short walk has was asked.
	const reason = boardsLeft > 0 ? reasons[walk.why] : "All questions of the short walk are asked.";
	return count === 0
		? ["All questions are asked."]
		: [reason, `${count === 1 ? "1 question was" : `${count} questions were`} not asked. The long walk asks them.`];
}

/** The way on to questions that are still to come, in words; null where there are none. */
export function goOnWords(view: WalkView): string | null {
	const short = shortWalkIn(view);
	if (short) return short.next ? "Go on with the questions" : null;
	const unasked = askedQuestions(view.build()).filter(({ id }) => !view.state.answers[id]).length;
	return unasked > 0 ? `Go on with the questions: ${unasked} left` : null;
}
