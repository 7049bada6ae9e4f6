import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { judge } from "../../src/choose/judge.ts";
import { repairedWays } from "../../src/choose/repaired-answers.ts";
import { mostAsked } from "../../src/choose/when-to-stop.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { tierNames } from "../../src/questions/define-question.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { ruleById } from "../../src/rules/all-rules.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { repairedWayWords } from "../../src/sheet/ways-out-words.ts";
import { type Place, startWalk, type WalkState } from "../../src/walk/walk-state.ts";
import {
	demo,
	emptyMarket,
	notAskedOfQuiet,
	quietAnswers,
	scenarios,
	walkDone,
	walkThrough,
	walkWith,
} from "../walk/walk-in-demo.ts";
import { blockTexts, listsOf, screenAt } from "./screen-words.ts";

const quiet = walkWith(quietAnswers);
const handedDown = scenarios.find(({ name }) => name === "handed-down")?.state ?? startWalk();
const judged = ({ answers }: WalkState) => judge(demo.market, foldAnswers(answers, demo));
const wordsAt = (state: WalkState, place: Place, context = demo) =>
	screenAt(context, state, place).body.flatMap(blockTexts).join("\n");
const labelsAt = (state: WalkState, place: Place, context = demo) =>
	screenAt(context, state, place).choices.map(({ label }) => label);

test("a walk that was left has no screen", () => {
	expect(screenOf(demo, walkThrough([{ type: "leave" }]).state)).toBeNull();
});

describe("the start", () => {
	const start: Place = { at: "start" };

	test("says how many questions, what to have at hand, and that not sure is fine", () => {
		const words = wordsAt(startWalk(), start);
		expect(words).toContain(`at most ${mostAsked} questions on the short walk, ${allQuestions.length} on the long one`);
		expect(words).toContain("the name of your processor");
		expect(words).toContain('"Not sure" is always a fine answer.');
		expect(screenAt(demo, startWalk(), start).enter?.event).toEqual({ type: "next" });
	});

	test("says of invented boards that they are", () => {
		expect(wordsAt(startWalk(), start)).toContain(`The ${demo.market.parts.board.length} boards here are invented`);
		expect(wordsAt(startWalk(), start, emptyMarket)).not.toContain("invented");
	});

	test("says that without boards the sheet says what to look for", () => {
		expect(wordsAt(startWalk(), start, emptyMarket)).toContain("The sheet will say what to look for.");
		expect(wordsAt(startWalk(), start)).not.toContain("what to look for");
	});

	test("says how far a walk has come, and offers its answers", () => {
		const state = walkDone(quietAnswers, "quality/rescue");
		const count = allQuestions.length - notAskedOfQuiet.length;
		expect(wordsAt(state, start)).toContain(`${count - 1} of ${count} questions are answered already.`);
		expect(labelsAt(state, start).slice(0, 2)).toEqual(["Go on", "All my answers"]);
		expect(labelsAt(startWalk(), start)[0]).toBe("Start");
	});

	test("offers walks kept earlier, the newest by its words", () => {
		const saved = [
			{ file: "/kept/b.json", words: "7 of 12 answered, next comes Fit, yesterday" },
			{ file: "/kept/a.json", words: "2 of 12 answered, next comes Fit, 3 days ago" },
		];
		const screen = screenAt(demo, { ...startWalk(), saved }, start);
		expect(screen.choices[0]).toMatchObject({
			label: expect.stringContaining(saved[0]?.words ?? "-"),
			event: { type: "open", file: "/kept/b.json" },
		});
		// With a walk to go on with, Enter alone must not begin another.
		expect(screen.enter).toBeNull();
		expect(screen.choices.map(({ event }) => event.type)).toContain("saved-walks");
		const list = screenAt(demo, { ...startWalk(), saved }, { at: "saved-walks" });
		expect(list.choices.slice(0, 2).map(({ label, event }) => [label, event])).toEqual(
			saved.map(({ file, words }) => [words, { type: "kept-walk", file }]),
		);
	});
});

describe("the end of a tier", () => {
	test.each(["fit", "features", "quality"] as const)("%s: says what is left, and what of it is still open", (tier) => {
		const state = walkWith({ "fit/processor": { part: "tallowfinch-deckhand" } });
		const screen = screenAt(demo, state, { at: "tier-end", tier });
		const { all, doesNotFit } = judged(state).counts;
		expect(screen.body.flatMap(blockTexts)[0]).toContain(`${all - doesNotFit} of ${all} boards left`);
		// One settles the next: with the processor known, nobody asks for candidates.
		const needless = [
			...notAskedOfQuiet,
			"fit/processor",
			"features/full-speed",
			"features/spare-sockets",
			"features/wishes",
		];
		const open = allQuestions.filter((asked) => asked.tier === tier && !needless.includes(asked.id));
		expect(listsOf(screen.body).at(-1)).toEqual(open.map(({ label, howToFindOut }) => `${label}. ${howToFindOut}`));
		expect(screen.place).toBe(tierNames[tier]);
		expect(screen.enter?.event).toEqual({ type: "next" });
	});

	test("says what fell out, by rule, with each board in one line", () => {
		const { boards } = judged(quiet);
		const told = wordsAt(quiet, { at: "tier-end", tier: "fit" });
		const first = boards.flatMap(({ verdict, failedRuleIds: [id = ""] }) => (verdict === "does-not-fit" ? [id] : []));
		expect(first.length).toBeGreaterThan(0);
		for (const id of new Set(first)) expect(told).toContain(`\n${ruleById(id)?.label}: `);
	});

	test("is no dead end when no board is left", () => {
		const screen = screenAt(demo, handedDown, { at: "tier-end", tier: "fit" });
		expect(screen.title).toBe("No board is left so far");
		expect(screen.body.flatMap(blockTexts).join(" ")).toContain("which answers to change");
	});
});

describe("parts that disagree", () => {
	const place: Place = { at: "parts-disagree" };

	test("are told with figures, and with what to do", () => {
		const words = wordsAt(handedDown, place);
		expect(words).toContain("The card is 340 mm long, 40 mm more than the 300 mm the case has room for.");
		expect(words).toContain("Change the card or the case.");
		expect(words).not.toContain("It may be");
	});

	test("are told as a may-be where an open answer decides", () => {
		const { "fit/graphics-card": _card, ...others } = quietAnswers;
		const state = walkWith({ ...others, "fit/processor": { part: "tallowfinch-bosun" } });
		expect(wordsAt(state, place)).toMatch(/One way it can turn out: The Tallowfinch Bosun has no graphics of its own/);
	});
});

describe("the shortlist", () => {
	const place: Place = { at: "shortlist" };

	test("shows each board that is advised: fit, price, score, and why", () => {
		const { shortlist } = advise(judged(quiet), quiet.answers);
		const screen = screenAt(demo, quiet, place);
		const names = shortlist.map(({ boardId }) => demo.market.parts.board.find(({ id }) => id === boardId)?.name ?? "?");
		expect(screen.title).toBe("Your shortlist");
		const heads = screen.body.flatMap((block) => (block.kind === "heading" ? [block.text] : []));
		expect(heads.map((head) => head.replace(/^.*: /, ""))).toEqual([
			...names.map((name) => `${name} (invented)`),
			"True of all of these",
		]);
		const rows = screen.body.flatMap((block) => (block.kind === "pairs" ? [block.pairs.map(([label]) => label)] : []));
		expect(rows[0]).toEqual(["How sure"]);
		for (const labels of rows.slice(1, -1)) expect(labels.slice(0, 4)).toEqual(["Fit", "Price", "Score", "Points"]);
		expect(screen.choices.flatMap(({ event }) => (event.type === "board" ? [event.boardId] : []))).toEqual(
			shortlist.map(({ boardId }) => boardId),
		);
		expect(screen.enter?.event).toEqual({ type: "go-on" });
		expect(screenAt(demo, walkDone(quietAnswers), place).enter?.event).toEqual({ type: "sheet" });
	});

	test("names, when nothing fits, the answers to change and the boards that would fit then", () => {
		const screen = screenAt(demo, handedDown, place);
		const { waysOut } = advise(judged(handedDown), handedDown.answers);
		expect(screen.title).toBe("Nothing fits all your answers");
		expect(waysOut.length).toBeGreaterThan(0);
		const [lines = []] = listsOf(screen.body);
		const ways = repairedWays(judged(handedDown), handedDown.answers, waysOut);
		expect(lines).toEqual(ways.map((way) => repairedWayWords(way, judged(handedDown), demo)));
		ways.forEach(({ repairs, boardIds }, index) => {
			const [{ fits = [], cannotTell = [] } = {}] = repairs;
			const back = repairs.length > 0 ? [...fits, ...cannotTell] : boardIds;
			expect(lines[index]).toMatch(/\d+ boards?\b/);
			expect(lines[index]).toContain(demo.market.parts.board.find(({ id }) => id === back[0])?.name);
		});
		expect(screen.choices.map(({ event }) => event.type)).toEqual(
			expect.arrayContaining(["review", "describe-board", "fell-out", "sheet", "leave"]),
		);
	});

	test("keeps its promise: with what it names changed, boards fit", () => {
		const { waysOut } = advise(judged(handedDown), handedDown.answers);
		const way = waysOut.find(({ giveUp }) => giveUp.join() === "fit/memory-modules,fit/price-cap");
		const { state } = walkThrough(
			[
				{ type: "change", questionId: "fit/memory" },
				{ type: "answer", value: "open" },
				{ type: "change", questionId: "about/budget" },
				{ type: "answer", value: "no-limit" },
			],
			{ ...handedDown, place },
		);
		const left = judged(state).boards.filter(({ verdict }) => verdict !== "does-not-fit");
		expect(left.map(({ board: { id } }) => id)).toEqual(way?.boardIds);
	});

	test("says of parts that disagree that they do", () => {
		expect(wordsAt(handedDown, place)).toMatch(/^Your parts disagree: The card is 340 mm long/m);
		expect(wordsAt(quiet, place)).not.toContain("disagree");
	});

	test("without boards says what will come instead", () => {
		const screen = screenAt(emptyMarket, quiet, place);
		expect(screen.title).toBe("What to look for");
		expect(screen.body.flatMap(blockTexts)).toEqual(["No boards to choose from; the sheet will say what to look for."]);
	});
});

describe("all boards", () => {
	const place: Place = { at: "fell-out" };

	test("can each be opened, those left first, with what each fell out for", () => {
		const { boards } = judged(quiet);
		const { choices } = screenAt(demo, quiet, place);
		const of = (fallen: boolean) => boards.filter(({ verdict }) => (verdict === "does-not-fit") === fallen);
		expect(choices.map(({ event }) => (event.type === "board" ? event.boardId : event.type))).toEqual(
			[...of(false), ...of(true)].map(({ board }) => board.id),
		);
		for (const { board, failedRuleIds } of of(true)) {
			const detail = choices.find(({ label }) => label === board.name)?.detail;
			for (const id of failedRuleIds) expect(detail).toContain(ruleById(id)?.label);
		}
	});

	test("are none in an empty market, and one goes back", () => {
		const screen = screenAt(emptyMarket, quiet, place);
		expect(screen.choices.filter(({ event }) => event.type === "board")).toEqual([]);
		expect(screen.enter?.event).toEqual({ type: "back" });
	});
});

describe("one board", () => {
	const at = (boardId: string): Place => ({ at: "board", boardId });

	test("says of every rule that binds what was found, with what stops it first", () => {
		const found = judged(quiet).boards.find(({ board: { id } }) => id === "oddment-button");
		const screen = screenAt(demo, quiet, at("oddment-button"));
		const [checked = []] = listsOf(screen.body);
		const bound = (found?.findings ?? []).filter(
			({ ruleId, messageId }) => messageId !== "notAsked" && !(ruleById(ruleId)?.saysNothing ?? []).includes(messageId),
		);
		expect(bound.length).toBeGreaterThan(8);
		expect(checked).toHaveLength(bound.length);
		for (const { ruleId } of bound)
			expect(checked.some((line) => line.includes(` - ${ruleById(ruleId)?.label}: `))).toBe(true);
		const stops = checked.map((line) => line.startsWith("Stops it - "));
		expect(stops.filter(Boolean)).toHaveLength(found?.failedRuleIds.length ?? -1);
		expect(stops).toEqual([...stops].sort((one, other) => Number(other) - Number(one)));
		expect(wordsAt(quiet, at("oddment-button"))).toContain("It does not fit your answers.");
	});

	test("lists what is not known of it, and where to find it", () => {
		const screen = screenAt(demo, quiet, at("fernquill-riddle"));
		const [, missing = []] = listsOf(screen.body);
		expect(missing.length).toBeGreaterThan(0);
		for (const line of missing) expect(line).toMatch(/^\S.*: .*\.$/);
	});

	test("shows its facts by their names with units, and old prices as such", () => {
		const screen = screenAt(demo, quiet, { at: "board", boardId: "pennywhistle-polka", page: "facts" });
		const facts = new Map(screen.body.flatMap((block) => (block.kind === "pairs" ? block.pairs : [])));
		expect(facts.get("Socket")).toBe("Harbour 2");
		expect([...facts.values()].filter((value) => /^\d+(\.\d+)? mm$/.test(value)).length).toBeGreaterThan(1);
		const old = demo.market.parts.board.find(({ checkedOn }) => checkedOn === "2026-03-02");
		expect(wordsAt(quiet, at(old?.id ?? ""))).toContain("(seen 267 days ago: look again)");
	});

	test("that is not in the market says so, and leads back", () => {
		const screen = screenAt(demo, quiet, at("no-board"));
		expect(screen.title).toMatch(/not in the market/);
		expect(screen.enter?.event).toEqual({ type: "back" });
	});
});

describe("the sheet's screen", () => {
	test("shows what the board must have, and writes the sheet where asked", () => {
		const screen = screenAt(demo, quiet, { at: "sheet" });
		const [needs = []] = listsOf(screen.body);
		expect(needs).toContainEqual(expect.stringMatching(/^Memory: DDR5, with at least 2 memory slots\b/));
		expect(needs).toContain("USB-C at the back: At least one USB-C socket at the back.");
		const written = screen.choices.flatMap(({ event }) => (event.type === "write-sheet" ? [event.to] : []));
		expect(written).toEqual(["board-sheet.html", "board-sheet.md", "board.svg", "board-sheet.txt"]);
		expect(screen.typing).toMatchObject({ kind: "free" });
	});
});

describe("the review", () => {
	test("has every question that makes sense with its answer in words, and leads to each", () => {
		const { choices } = screenAt(demo, quiet, { at: "review" });
		expect(choices.map(({ event }) => event)).toEqual(
			allQuestions
				.filter(({ id }) => !notAskedOfQuiet.includes(id))
				.map(({ id }) => ({ type: "change", questionId: id })),
		);
		expect(choices.map(({ label }) => label)).toEqual(
			expect.arrayContaining([
				"Most the board may cost: EUR 200.00",
				"Case: Larkspur Wardrobe",
				"USB things at the back: 5",
				"Help at the first start matters: A lot",
			]),
		);
	});

	test("has of a short walk what that asks, and what else was answered before", () => {
		const state = walkWith({ ...quietAnswers, "about/walk-length": "short", "quality/warranty": "would-like" });
		const { choices } = screenAt(demo, state, { at: "review" });
		const ids = choices.flatMap(({ event }) => (event.type === "change" ? [event.questionId] : []));
		expect(ids).toEqual(
			allQuestions
				.filter(({ id, short }) => (short || id === "quality/warranty") && !notAskedOfQuiet.includes(id))
				.map(({ id }) => id),
		);
	});

	test("tells what is not sure from what was not asked", () => {
		const state = walkThrough([{ type: "not-sure" }], {
			...startWalk(),
			place: { at: "question", id: "fit/case" },
		}).state;
		const labels = labelsAt(state, { at: "review" });
		expect(labels).toContain("Case: not sure");
		expect(labels).toContain("Memory: not answered yet");
	});

	test("says of an answer that is not possible here that it counts as not sure", () => {
		expect(labelsAt(quiet, { at: "review" }, emptyMarket)).toContain("Case: no longer possible here, so not sure");
	});
});

describe("menu and settings", () => {
	test("the menu leads to everything", () => {
		const types = screenAt(demo, quiet, { at: "menu" }).choices.map(({ event }) => event.type);
		expect(types).toEqual(
			expect.arrayContaining(["back", "review", "fell-out", "shortlist", "sheet", "settings", "leave"]),
		);
	});

	test("each setting turns over and back, and its line says how it stands", () => {
		const place: Place = { at: "settings" };
		const before = { ...quiet, place };
		const lines = screenAt(demo, before).choices.filter(({ event }) => event.type === "set");
		expect(lines.length).toBe(Object.keys(before.settings).length);
		lines.forEach(({ label, event }, index) => {
			const turned = walkThrough([event], before).state;
			const again = screenAt(demo, turned).choices[index];
			expect(again?.label).not.toBe(label);
			expect(again && walkThrough([again.event], turned).state.settings).toEqual(before.settings);
		});
	});
});

test("what holds only if an open answer turns out so is told as perhaps, with what that means", () => {
	const { "fit/supply": _supply, ...others } = quietAnswers;
	const open = walkWith(others);
	const judged = viewWalk(demo, open)
		.judgement()
		.boards.find(
			({ verdict, unsettledRuleIds, findings }) =>
				verdict !== "does-not-fit" &&
				findings.some(({ ruleId, severity }) => severity === "plan-around" && unsettledRuleIds.includes(ruleId)),
		);
	if (!judged) throw new Error("no board hangs on the supply");
	const said = screenAt(demo, open, { at: "board", boardId: judged.board.id }).body.flatMap(blockTexts);
	expect(said).toContain('"Perhaps" depends on an answer that is still open.');
	expect(said.filter((line) => line.startsWith("Perhaps - ")).length).toBeGreaterThan(0);
	const settled = screenAt(demo, walkWith(quietAnswers), { at: "board", boardId: judged.board.id }).body.flatMap(
		blockTexts,
	);
	expect(said.filter((line) => line.startsWith("Perhaps - ")).length).toBeGreaterThan(
		settled.filter((line) => line.startsWith("Perhaps - ")).length,
	);
});
