import { describe, expect, test } from "vitest";
import { whatIf } from "../../src/choose/what-if.ts";
import type { Answer, Answers, AnswerValue } from "../../src/parts/answers-file.ts";
import { moneyText } from "../../src/parts/money.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { whatIfWords } from "../../src/sheet/what-if-words.ts";
import { answered, demo, demoContext, scenarios, valuesFor, wholeDemo } from "../choose/demo.ts";

const quiet = scenarios.find(({ name }) => name === "quiet-desk.json")?.file.answers ?? {};
const euros = (sum: number) => ({ minor: sum * 100, currency: "EUR" });

function tried(questionId: string, answer: Answer | AnswerValue, answers: Answers = quiet, market = demo) {
	const given = typeof answer === "object" && "status" in answer ? answer : answered(answer);
	const result = whatIf(market, answers, { questionId, answer: given }, demoContext.asOf);
	const sections = whatIfWords(result, { ...demoContext, market });
	const under = (wanted: string) => sections.find(({ heading }) => heading === wanted)?.lines ?? [];
	return { result, sections, under };
}
const nameOf = (id: string | undefined) => wholeDemo.parts.board.find((board) => board.id === id)?.name;

describe("one other answer in words", () => {
	test("says the answers, the boards left and who leads, each in a sentence", () => {
		const leader = tried("about/budget", euros(200), quiet, wholeDemo).result.leader.before;
		const less = (leader?.price?.minor ?? 0) / 100 - 1;
		const { result, under } = tried("about/budget", euros(less), quiet, wholeDemo);
		const { left } = result;
		expect(under("In short")).toEqual([
			`Most the board may cost: "${moneyText(euros(less))}" instead of "EUR 200.00".`,
			`${left.after} of ${left.all} boards would be left instead of ${left.before}.`,
			`${nameOf(result.leader.after?.boardId)} would lead your shortlist in place of ${nameOf(leader?.boardId)}.`,
		]);
		expect(under("What would change on the shortlist")).toContain(
			`Gone: ${nameOf(leader?.boardId)}; it would be taken out by "Price".`,
		);
		expect(under("What would be taken out, and why")[0]).toMatch(/^Price: .+\.$/);
	});

	test("both shortlists stand one after the other, each line with role, points and price", () => {
		const { result, under } = tried("about/budget", euros(120), quiet, wholeDemo);
		for (const [heading, list] of [
			["Your shortlist now", result.shortlists.before],
			["With the other answer", result.shortlists.after],
		] as const) {
			const lines = under(heading);
			expect(lines.length).toBe(list.length);
			for (const [index, { boardId, points, price }] of list.entries()) {
				expect(lines[index]).toContain(`${index + 1}. ${nameOf(boardId)}: `);
				expect(lines[index]).toContain(`, ${points} point`);
				expect(lines[index]).toContain(`, ${price ? moneyText(price) : "price not known"}.`);
			}
		}
	});

	test("says plainly that nothing changes, with one list", () => {
		const { sections } = tried("about/budget", euros(200));
		expect(sections.map(({ heading }) => heading)).toEqual(["In short", "Your shortlist, with either answer"]);
		expect(sections[0]?.lines).toEqual([
			'Most the board may cost: "EUR 200.00", which is your answer now.',
			"Nothing changes: the same boards are left, and your shortlist stays as it is.",
		]);
	});

	test("says where the answer counts for nothing", () => {
		const { under } = tried("fit/candidates", ["tallowfinch-deckhand", "tallowfinch-helmswoman"]);
		expect(under("In short")).toContain("With your other answers this is not asked, so it counts for nothing.");
	});

	test("says what comes back, and what kept it out", () => {
		const { under } = tried("about/budget", "no-limit", { ...quiet, "about/budget": answered(euros(130)) });
		expect(under("What would come back").join()).toContain('now taken out by "Price".');
	});

	test("says when no board would be left, and when none is now", () => {
		const none = tried("about/budget", euros(20));
		expect(none.under("In short")).toContain("No board would be left, so none would lead.");
		expect(none.under("With the other answer")).toEqual(["No board is left."]);
		const back = tried("about/budget", euros(200), { ...quiet, "about/budget": answered(euros(20)) });
		expect(back.under("In short").at(-1)).toMatch(/ would lead your shortlist; now no board is left\.$/);
		const still = tried("about/budget", euros(30), { ...quiet, "about/budget": answered(euros(20)) });
		expect(still.under("In short").at(-1)).toBe("Nothing changes: no board is left either way.");
	});

	test("says which questions go and which come", () => {
		expect(tried("fit/bought", []).under("The questions")[0]).toMatch(
			/^No longer asked, so no longer counted: .+ and .+\.$/,
		);
		expect(tried("fit/processor", { status: "not-sure" }).under("The questions").join()).toMatch(
			/Asked as well, and still open: /,
		);
	});

	test("says of which boards it would be less sure that they fit", () => {
		const { under, result } = tried("fit/case", { status: "not-sure" });
		const doubted = result.outcomes.after.judgement.boards.filter(({ verdict }) => verdict === "cannot-tell");
		expect(doubted.length).toBeGreaterThan(0);
		expect(
			under("What would change on the shortlist").filter((line) => line.includes("would no longer surely fit.")).length,
		).toBe(
			doubted.filter(
				({ board }) =>
					result.outcomes.before.judgement.boards.find((one) => one.board.id === board.id)?.verdict === "fits",
			).length,
		);
	});
});

test("every sentence that is ours is short, and no board is called the best", () => {
	for (const question of allQuestions)
		for (const value of [...valuesFor(question).slice(0, 2).map(answered), { status: "not-sure" } as const]) {
			const { sections, result } = tried(question.id, value);
			const first = sections[0]?.lines[0] ?? "";
			expect(first).not.toBe("");
			for (const line of sections.flatMap(({ lines }) => lines).filter((one) => one !== first)) {
				for (const sentence of line.split(/(?<=[.!?]) /))
					expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(25);
				expect(line).not.toMatch(/undefined|NaN|null|best board|%/);
			}
			if (result.isSame) expect(sections.length).toBeLessThanOrEqual(3);
		}
});
