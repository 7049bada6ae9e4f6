import { type Advice, advise } from "../choose/advise.ts";
import { type Judgement, judge } from "../choose/judge.ts";
import { once } from "../maths/once.ts";
import type { Answers, OwnPart } from "../parts/answers-file.ts";
import type { Build } from "../parts/build.ts";
import type { Market } from "../parts/market.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { withInchesInside } from "../sheet/inches.ts";
import { makeSheet } from "../sheet/make-sheet.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { marketOf } from "../walk/market-of.ts";
import type { WalkContext, WalkState } from "../walk/walk-state.ts";

/** What screens show, computed from a state once and only when asked for. */
export interface WalkView {
	readonly context: QuestionContext;
	readonly state: WalkState;
	readonly market: Market;
	/** What the answers come to; no board is looked at for it, so that the first screen need not wait. */
	build(): Build;
	judgement(): Judgement;
	/** The judgement before the last answer, or null. */
	judgementBefore(): Judgement | null;
	/** The judgement if one more answer were given. */
	judgementWith(answers: Answers): Judgement;
	advice(): Advice;
	sheet(): Sheet;
}

/** Looks at a walk. Each result is worked out at most once. */
export function viewWalk(walk: WalkContext, state: WalkState): WalkView {
	const market = marketOf(walk.market, state.ownParts);
	const context: QuestionContext = { market, asOf: walk.asOf };
	const build = once(() => foldAnswers(state.answers, context));
	const judged = (answers: Answers) =>
		remembered(walk, state, answers, () =>
			judge(market, answers === state.answers ? build() : foldAnswers(answers, context)),
		);
	const judgement = once(() => judged(state.answers));
	const advice = once(() => advise(judgement(), state.answers));
	return {
		context,
		state,
		market,
		build,
		judgement,
		judgementBefore: once(() => (state.answersBefore ? judged(state.answersBefore) : null)),
		judgementWith: judged,
		advice,
		sheet: once(() => {
			const sheet = makeSheet(judgement(), advice(), state.answers, context, state);
			return state.settings.lengths === "with-inches" ? withInchesInside(sheet) : sheet;
		}),
	};
}

/**
 * Judgements by market and date, own parts and answers, none of which ever changes: what a screen before has worked out is not
 * worked out again, such as the judgement before the last answer. Nothing is kept longer than the answers themselves.
 */
const known = new WeakMap<WalkContext, WeakMap<readonly OwnPart[], WeakMap<Answers, Judgement>>>();

function remembered(walk: WalkContext, { ownParts }: WalkState, answers: Answers, work: () => Judgement): Judgement {
	const byParts = entryOf(known, walk, () => new WeakMap<readonly OwnPart[], WeakMap<Answers, Judgement>>());
	const byAnswers = entryOf(byParts, ownParts, () => new WeakMap<Answers, Judgement>());
	return entryOf(byAnswers, answers, work);
}

function entryOf<K extends object, V>(map: WeakMap<K, V>, key: K, make: () => V): V {
	const value = map.get(key) ?? make();
	map.set(key, value);
	return value;
}
