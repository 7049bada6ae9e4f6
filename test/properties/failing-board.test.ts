import fc from "fast-check";
import { expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import { placesLeft } from "../../src/choose/places-left.ts";
import type { Answers } from "../../src/parts/answers-file.ts";
import type { Market } from "../../src/parts/market.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { answered, anyAnswersIn, asOf } from "./any-answers.ts";
import { anyBoard, anyMarket, withBoards } from "./any-market.ts";
import { runs } from "./runs.ts";
import { viewOf, walkIn } from "./whole-way.ts";

const wishIds = allQuestions.filter(({ isWish }) => isWish).map(({ id }) => id);

/** A market, answers with a must or two, a board that fails with them, and where it is to stand. */
const anyCase = fc
	.tuple(
		anyAnswersIn(anyMarket()),
		fc.subarray(wishIds, { minLength: 1, maxLength: 2 }),
		fc.array(anyBoard, { minLength: 3, maxLength: 3 }),
		fc.nat(),
	)
	.map(([{ market, answers }, musts, boards, place]) => {
		const asked: Answers = { ...answers, ...Object.fromEntries(musts.map((id) => [id, answered("must")])) };
		const taken = new Set(market.parts.board.map(({ id }) => id));
		const added = boards
			.map((board, index) => ({ ...board, id: `added-${index}` }))
			.filter((board) => !taken.has(board.id) && verdictOf(market, asked, board) === "does-not-fit");
		const at = place % (market.parts.board.length + 1);
		const more = market.parts.board.toSpliced(at, 0, ...added);
		return { market, answers: asked, added, more: withBoards(market, more) };
	})
	.filter(({ added }) => added.length > 0);

function verdictOf(market: Market, answers: Answers, board: Market["parts"]["board"][number]) {
	return judge(withBoards(market, [board]), foldAnswers(answers, { market, asOf })).boards[0]?.verdict;
}

/**
 * What may change with a board that is out: how many boards there are and fell out, ways out of nothing (one more board
 * can be brought back), which sources the rules of any board name, and that a board of nearly the same name is another:
 * the shop may hand over the one that is out.
 */
const mayChange = new Set(["inShort", "nothingFits", "sources"]);

test("boards that fail change no verdict, score, share, role, order, comparison or word of the others", () => {
	let [withBoard, left] = [0, 0];
	fc.assert(
		fc.property(anyCase, ({ market, answers, added, more }) => {
			const [before, after] = [market, more].map((one) => viewOf(walkIn(one, answers)));
			if (!before || !after) throw new Error("unreachable");
			const [was, is] = [before.judgement(), after.judgement()];
			expect(is.counts).toEqual({
				...was.counts,
				all: was.counts.all + added.length,
				doesNotFit: was.counts.doesNotFit + added.length,
			});
			const others = is.boards.filter(({ board }) => !added.some(({ id }) => id === board.id));
			expect(others.map(({ board, verdict, possibleWorlds }) => [board.id, verdict, possibleWorlds])).toEqual(
				was.boards.map(({ board, verdict, possibleWorlds }) => [board.id, verdict, possibleWorlds]),
			);
			expect(others.map(placesLeft)).toEqual(was.boards.map(placesLeft));
			const { counts: _, waysOut: __, ...advice } = before.advice();
			const { counts: ___, waysOut: ____, ...adviceAfter } = after.advice();
			expect(adviceAfter).toEqual(advice);
			if (was.counts.all > 0) {
				// With no board at all the sheet says what to look for, and it has none to speak of.
				const sheet = (view: typeof before) => {
					const { beforeYouPay, ...rest } = view.sheet();
					return {
						...Object.fromEntries(Object.entries(rest).filter(([name]) => !mayChange.has(name))),
						beforeYouPay: beforeYouPay.filter((words) => !/ is not .+: compare memory type/.test(words)),
					};
				};
				expect(sheet(after)).toEqual(sheet(before));
			}
			withBoard++;
			if (was.counts.doesNotFit < was.counts.all) left++;
		}),
		runs(18),
	);
	// Of markets that have boards left.
	expect(left).toBeGreaterThan(withBoard / 5);
});
