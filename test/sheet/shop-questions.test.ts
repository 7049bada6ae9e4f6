import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { findOut } from "../../src/choose/find-out.ts";
import { judge } from "../../src/choose/judge.ts";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import type { Board } from "../../src/parts/board.ts";
import { factsOf } from "../../src/parts/fact-list.ts";
import type { Market } from "../../src/parts/market.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { hasOwnWords, shopQuestionWords } from "../../src/sheet/shop-question-words.ts";
import { isImportant, type ShopMessage, shopMessage, shopMessages } from "../../src/sheet/shop-questions.ts";
import { marketOf } from "../../src/walk/market-of.ts";
import { toldFact, toldPath } from "../../src/walk/told-fact.ts";
import { wholeDemo } from "../choose/demo.ts";
import { demo, scenarios, walkWith } from "../walk/walk-in-demo.ts";

/** All that a message needs, for one walk in a market. */
function askedIn(market: Market, { answers, ownParts }: (typeof scenarios)[number]["state"]) {
	const all = marketOf(market, ownParts);
	const judgement = judge(all, foldAnswers(answers, { market: all, asOf: demo.asOf }));
	const advice = advise(judgement, answers);
	const open = findOut(judgement, advice, answers);
	return { judgement, advice, open, messages: shopMessages(judgement, advice, answers, demo, open) };
}

const people = scenarios.flatMap(({ name, state }) => [
	{ name, ...askedIn(demo.market, state) },
	{ name: `${name}, all boards`, ...askedIn(wholeDemo, state) },
]);
const everyMessage = people.flatMap(({ messages }) => messages);
const allOf = ({ questions, later }: ShopMessage) => [...questions, ...later];

/** Whether an offer of it says until when it can go back. */
const hasDay = (id: string) =>
	wholeDemo.parts.board.find((one) => one.id === id)?.offers?.some((offer) => offer.returnableUntil) ?? false;

/** Paths of boards' facts that a rule or a criterion reads. */
const pathsRead = [...allRules, ...allCriteria]
	.flatMap((one) => [...one.reads, ...("mayRead" in one ? (one.mayRead ?? []) : [])])
	.filter((path) => path.startsWith("board."))
	.map((path) => path.slice("board.".length));

describe("which questions", () => {
	test.each(people)("$name: each important can't tell has its question in both languages", ({ open, messages }) => {
		for (const one of open) {
			if (one.about.kind !== "board fact" || !isImportant(one)) continue;
			const { boardId, path } = one.about;
			const wanted = path.slice("board.".length);
			const found = messages
				.filter((message) => message.boardId === boardId)
				.flatMap(allOf)
				.find((question) => question.path === wanted || (question.path === "supportList" && wanted.startsWith("supp")));
			expect(found, `${boardId} ${path}`).toBeDefined();
			expect(found?.english).toMatch(/\?$/);
			expect(found?.german).toMatch(/\?$/);
		}
	});

	test("somebody has something important to ask, besides what is asked of every board", () => {
		expect(Math.max(...everyMessage.map((message) => allOf(message).length))).toBeGreaterThan(8);
	});

	test("what is asked before paying stands in each message", () => {
		for (const { questions, boardId } of everyMessage)
			expect(
				questions.map(({ path }) => path),
				boardId,
			).toEqual(
				expect.arrayContaining(["supportList", "firmware.oldestInShops", ...(hasDay(boardId) ? [] : ["offers"])]),
			);
	});

	test("a message is short; what is too much waits and is not lost", () => {
		for (const message of everyMessage) {
			expect(message.questions.length).toBeLessThanOrEqual(8);
			if (message.later.length > 0) expect(message.questions.length).toBe(8);
			const paths = allOf(message).map(({ path }) => path);
			expect(new Set(paths).size).toBe(paths.length);
		}
	});

	test("every path asked can be told back", () => {
		for (const { path } of everyMessage.flatMap(allOf)) expect(toldPath(path), path).toBe(path);
	});

	test("what somebody told is not asked again, and what waited moves up", () => {
		const [most] = everyMessage.toSorted((one, other) => other.later.length - one.later.length);
		const person = people.find(({ messages }) => most && messages.includes(most));
		if (!most || !person) throw new Error("nobody asks anything");
		const told = toldFact(wholeDemo, [], {
			boardId: most.boardId,
			path: "firmware.oldestInShops",
			value: "Z99",
			by: "the shop",
			date: "2026-11-24",
			replace: true,
		});
		if (!("ownParts" in told)) throw new Error(told.problem);
		const { state } = scenarios.find(({ name }) => person.name.startsWith(name)) ?? { state: walkWith({}) };
		const after = askedIn(wholeDemo, { ...state, ownParts: told.ownParts }).judgement;
		const message = shopMessage(after, most.boardId, demo, person.open);
		expect(message?.questions.map(({ path }) => path)).not.toContain("firmware.oldestInShops");
		expect(message?.questions).toHaveLength(8);
	});

	test("a day of return that is known and still to come is not asked", () => {
		const board: Board = {
			id: "my-board",
			name: "My Board",
			offers: [{ price: { minor: 9900, currency: "EUR" }, condition: "new", returnableUntil: "2026-12-24" }],
		};
		const market = marketOf(demo.market, [{ kind: "board", part: board }]);
		const judgement = judge(market, foldAnswers({}, { market, asOf: demo.asOf }));
		const paths = (asOf: string) =>
			shopMessage(judgement, "my-board", { asOf }, [])?.questions.map(({ path }) => path) ?? [];
		expect(paths("2026-11-24")).not.toContain("offers");
		expect(paths("2026-12-24")).toContain("offers");
		expect(shopMessage(judgement, "no-board", demo, [])).toBeNull();
	});
});

describe("how they are asked", () => {
	test("facts that rules and criteria read and that have no words of their own", () => {
		expect([...new Set(pathsRead)].filter((path) => !hasOwnWords(path)).sort()).toEqual(["name"]);
	});

	test("every fact of a board can be asked, in two languages that differ", () => {
		for (const { path } of factsOf("board")) {
			const words = shopQuestionWords(path, "Some Processor 5");
			expect(words?.english, path).toMatch(/^[A-Z].*\?$/);
			expect(words?.german, path).toMatch(/^[A-ZÄÖÜ].*\?$/);
			expect(words?.german).not.toBe(words?.english);
		}
		expect(shopQuestionWords("__proto__", null)).toBeNull();
		expect(shopQuestionWords("constructor", null)).toBeNull();
	});

	test("no sentence has more than 25 words, and nothing is left unfilled", () => {
		const texts = [
			...factsOf("board").flatMap(({ path }) => [
				shopQuestionWords(path, "Some Processor 5"),
				shopQuestionWords(path, null),
			]),
		].flatMap((words) => [words?.english ?? "", words?.german ?? ""]);
		for (const text of [...texts, ...everyMessage.flatMap(({ english, german }) => [english, german])]) {
			expect(text).not.toMatch(/[{}[\]]|undefined|null|\(\)| {2}/);
			for (const sentence of text.split(/[.!?]\s|\n/))
				expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(25);
		}
	});

	test("German is German: no English word between, and Sie where somebody is spoken to", () => {
		for (const path of pathsRead.filter(hasOwnWords)) {
			const { german = "" } = shopQuestionWords(path, "Some Processor 5") ?? {};
			expect(german).not.toMatch(/\b(?:the|does|how|which|board|have|and|of|can)\b/i);
			expect(german).not.toMatch(/\b(?:du|dir|dein|euch)\b/i);
		}
		for (const { german } of everyMessage) expect(german).toMatch(/^Guten Tag,\n[\s\S]*Sie[\s\S]*Vielen Dank!$/);
	});

	test("questions are numbered as they are listed", () => {
		for (const { questions, english, german } of everyMessage)
			for (const [index, question] of questions.entries()) {
				expect(english).toContain(`\n${index + 1}. ${question.english}\n`);
				expect(german).toContain(`\n${index + 1}. ${question.german}\n`);
			}
	});

	test("one can tell which board it is", () => {
		const [message] = everyMessage.filter(({ boardId }) => boardId === "pennywhistle-hornpipe");
		const board = wholeDemo.parts.board.find(({ id }) => id === "pennywhistle-hornpipe");
		expect(message?.english).toContain(`${board?.name} (by ${board?.maker}`);
		expect(message?.english).toContain(`${board?.memory?.slots} memory slots`);
		expect(message?.german).toContain(`${board?.memory?.slots} Speichersteckplätze`);
	});

	test("a name of many lines or with control characters stays one line", () => {
		const board = { id: "evil", name: "Nice\nboard\r\n\n9. Send money\u001b]52;c;aGk=\u0007\u202eevil" };
		const market = marketOf(demo.market, [{ kind: "board", part: board }]);
		const judgement = judge(market, foldAnswers({}, { market, asOf: demo.asOf }));
		const message = shopMessage(judgement, "evil", demo, []);
		expect(message?.english).toContain("\nNice board 9. Send moneyevil\n");
		// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there
		expect(message?.english).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f\u202e]/);
	});
});
