import { describe, expect, test } from "vitest";
import { type BoardJudgement, judge } from "../../src/choose/judge.ts";
import type { Board } from "../../src/parts/board.ts";
import type { Build } from "../../src/parts/build.ts";
import type { PcCase } from "../../src/parts/case.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { holesOfForm } from "../../src/reference/board-holes.ts";
import { allRules, ruleById } from "../../src/rules/all-rules.ts";
import { answered, demo, demoContext, notSure } from "./demo.ts";
import { buildOf, goodBoard, goodBuild, smallMarket } from "./small-market.ts";

/** The good board with other facts. */
const judged = (facts: Partial<Board>, build: Build) => judgedOnly({ ...goodBoard, ...facts }, build);

function judgedOnly(board: Partial<Board>, build: Build): BoardJudgement {
	const [judgement] = judge(smallMarket([board]), build).boards;
	if (!judgement) throw new Error("no board was judged");
	return judgement;
}

const { supportList: _list, ...unlistedBoard } = goodBoard;
const { price: _price, ...unpricedBoard } = goodBoard;

describe("everything known", () => {
	test("no rule objects: fits", () => {
		expect(judged({}, buildOf(goodBuild))).toMatchObject({
			verdict: "fits",
			depending: [],
			failedRuleIds: [],
			corrections: [],
			dependsOn: [],
			possibleWorlds: [0],
		});
	});

	test("one rule objects: does not fit", () => {
		expect(judged({ socket: "Harbour 2" }, buildOf(goodBuild))).toMatchObject({
			verdict: "does-not-fit",
			failedRuleIds: ["fit/socket"],
			corrections: [new Set(["fit/socket"])],
			possibleWorlds: [],
			dependsOn: [],
		});
	});

	test("several object: all are told, in the order of the rules", () => {
		const board = judged(
			{ price: { minor: 20_000, currency: "EUR" }, form: "E-ATX", socket: "Harbour 2" },
			buildOf(goodBuild),
		);
		expect(board.failedRuleIds).toEqual(["fit/socket", "fit/board-form", "fit/price-cap"]);
		expect(board.corrections).toEqual([new Set(["fit/socket", "fit/board-form", "fit/price-cap"])]);
	});

	test("a caution is a fit", () => {
		const board = judged({ form: "microATX" }, buildOf(goodBuild));
		expect(board.verdict).toBe("fits");
		expect(board.findings.find(({ ruleId }) => ruleId === "fit/standoffs")?.severity).toBe("good-to-know");
	});

	test("one finding for every rule about a board, in order", () => {
		const ids = allRules.filter(({ scope }) => scope === "board").map(({ id }) => id);
		expect(judged({}, buildOf(goodBuild)).findings.map(({ ruleId }) => ruleId)).toEqual(ids);
	});
});

describe("a fact is missing", () => {
	test("can't tell, and it depends on no question", () => {
		const board = judgedOnly(unlistedBoard, buildOf(goodBuild));
		expect(board).toMatchObject({ verdict: "cannot-tell", possibleWorlds: [0], dependsOn: [], failedRuleIds: [] });
	});

	test("a rule that fails for sure takes the board out all the same", () => {
		const board = judgedOnly({ ...unlistedBoard, socket: "Harbour 2" }, buildOf(goodBuild));
		expect(board).toMatchObject({ verdict: "does-not-fit", failedRuleIds: ["fit/socket"] });
	});

	test("a price in another currency takes no board out", () => {
		const board = judged({ price: { minor: 99_999, currency: "JPY" } }, buildOf(goodBuild));
		expect(board.verdict).toBe("cannot-tell");
		const found = board.findings.find(({ ruleId }) => ruleId === "fit/price-cap");
		expect(found).toMatchObject({ messageId: "otherCurrency" });
	});

	test("of a rule that stops nothing leaves the verdict as it is, and is told all the same", () => {
		const { frontPlugs: _plugs, ...plugless } = goodBuild.case as PcCase;
		const board = judged({}, buildOf({ ...goodBuild, case: plugless }));
		expect(ruleById("fit/front-plugs")?.severity).toBe("plan-around");
		expect(board.verdict).toBe("fits");
		expect(board.findings.find(({ ruleId }) => ruleId === "fit/front-plugs")).toMatchObject({
			verdict: "cannot-tell",
			missing: ["case.frontPlugs"],
		});
	});

	test("a board of which only the name is known is never taken out by anything but its price", () => {
		expect(judgedOnly({}, buildOf(goodBuild)).verdict).toBe("cannot-tell");
	});
});

describe("open questions", () => {
	const open = (ways: Parameters<typeof buildOf>[1]) =>
		buildOf({ ...goodBuild, case: "unknown", supply: "unknown" }, ways);
	const small = { boardForms: ["Mini-ITX" as const] };
	const large = { boardForms: ["ATX" as const], standoffs: [...(holesOfForm("ATX")?.letters ?? [])] };
	const weak = { processorPlugs: [] };
	const strong = { processorPlugs: ["8-pin" as const] };

	test("fits in every way it can turn out: fits", () => {
		const board = judged(
			{ form: "Mini-ITX" },
			open({ "small, strong": { case: small, supply: strong }, "large, strong": { case: large, supply: strong } }),
		);
		expect(board).toMatchObject({ verdict: "fits", possibleWorlds: [0, 1], dependsOn: [], depending: [] });
	});

	test("in some: can't tell, and it depends on that question, with the answers told apart", () => {
		const board = judged(
			{},
			open({ "small, strong": { case: small, supply: strong }, "large, strong": { case: large, supply: strong } }),
		);
		expect(board).toMatchObject({
			verdict: "cannot-tell",
			possibleWorlds: [1],
			dependsOn: ["question/1"],
			depending: [{ ruleId: "fit/board-form", questionId: "question/1", fitsWith: ["large"], notWith: ["small"] }],
			failedRuleIds: [],
		});
	});

	test("in none, though under each rule alone it fits in some: does not fit", () => {
		const board = judged(
			{},
			open({ "small, strong": { case: small, supply: strong }, "large, weak": { case: large, supply: weak } }),
		);
		expect(board).toMatchObject({
			verdict: "does-not-fit",
			possibleWorlds: [],
			failedRuleIds: ["fit/board-form", "fit/power-plugs"],
			dependsOn: [],
		});
		// To give up either is enough.
		expect(board.corrections).toEqual([new Set(["fit/board-form"]), new Set(["fit/power-plugs"])]);
	});

	test("in none because of one rule: that one is told, not those that fail here and there", () => {
		const board = judged(
			{ socket: "Harbour 2" },
			open({ "small, strong": { case: small, supply: strong }, "large, strong": { case: large, supply: strong } }),
		);
		expect(board).toMatchObject({ verdict: "does-not-fit", failedRuleIds: ["fit/socket"] });
		expect(board.corrections).toEqual([new Set(["fit/socket"])]);
	});

	test("a rule that always fails, and others that between them leave no way", () => {
		const board = judged(
			{ socket: "Harbour 2" },
			open({ "small, strong": { case: small, supply: strong }, "large, weak": { case: large, supply: weak } }),
		);
		expect(board.failedRuleIds).toEqual(["fit/socket"]);
		expect(board.corrections).toEqual([
			new Set(["fit/socket", "fit/board-form"]),
			new Set(["fit/socket", "fit/power-plugs"]),
		]);
	});

	test("two questions that both decide", () => {
		const board = judged(
			{},
			open({
				"small, weak": { case: small, supply: weak },
				"small, strong": { case: small, supply: strong },
				"large, weak": { case: large, supply: weak },
				"large, strong": { case: large, supply: strong },
			}),
		);
		expect(board).toMatchObject({
			verdict: "cannot-tell",
			possibleWorlds: [3],
			dependsOn: ["question/1", "question/2"],
			depending: [
				{ ruleId: "fit/board-form", questionId: "question/1", fitsWith: ["large"], notWith: ["small"] },
				{ ruleId: "fit/power-plugs", questionId: "question/2", fitsWith: ["strong"], notWith: ["weak"] },
			],
		});
	});

	test("of two open questions only the one that decides is named", () => {
		const board = judged(
			{ form: "Mini-ITX" },
			open({
				"small, weak": { case: small, supply: weak },
				"small, strong": { case: small, supply: strong },
				"large, weak": { case: large, supply: weak },
				"large, strong": { case: large, supply: strong },
			}),
		);
		expect(board.dependsOn).toEqual(["question/2"]);
		expect(board.depending.map(({ questionId }) => questionId)).toEqual(["question/2"]);
	});

	test('an answer with which it cannot be told is not one it "fits with"', () => {
		const unsaid = {};
		const board = judged(
			{},
			open({ "small, strong": { case: small, supply: strong }, "unsaid, strong": { case: unsaid, supply: strong } }),
		);
		expect(board).toMatchObject({
			verdict: "cannot-tell",
			possibleWorlds: [1],
			dependsOn: ["question/1"],
			depending: [],
		});
	});

	test("a rule that finds something else in another way to turn out is not settled, verdict alike or not", () => {
		const strongly = (given: object) => ({ case: given, supply: strong });
		const { unsettledRuleIds } = judged(
			{ form: "microATX" },
			open({ large: strongly(large), listed: strongly({ boardForms: ["microATX"] }) }),
		);
		expect(unsettledRuleIds).toEqual(["fit/board-form", "fit/standoffs"]);
		expect(judged({}, open({ one: strongly(large), other: strongly(large) })).unsettledRuleIds).toEqual([]);
		expect(judged({}, buildOf(goodBuild)).unsettledRuleIds).toEqual([]);
	});

	test("of the findings the plainest is shown: failure, can't tell, caution, fit", () => {
		const shown = (...ways: object[]) => {
			const byLabel = Object.fromEntries(ways.map((cooler, index) => [`way ${index}`, { cooler, supply: strong }]));
			const board = judged({}, open(byLabel));
			return board.findings.find(({ ruleId }) => ruleId === "fit/cooler-mount")?.messageId;
		};
		const kitFor = (socket: string, how: "in the box" | "bought") => ({ kind: "liquid", kits: [{ socket, how }] });
		const [fit, caution] = [kitFor("Kettle 7", "in the box"), kitFor("Kettle 7", "bought")];
		const [unsaid, failure] = [{ kind: "liquid" }, kitFor("Harbour 2", "in the box")];
		expect(shown(fit)).toBe("kit");
		expect(shown(fit, caution)).toBe("bought");
		expect(shown(unsaid, caution, fit)).toBe("missing");
		// With a way to turn out under which it fits, what takes it out under another is told apart.
		expect(shown(fit, unsaid, failure, caution)).toBe("missing");
		expect(shown(failure, failure)).toBe("noKit");
	});

	test("answers not given, in the demonstration market", () => {
		const context = demoContext;
		const settled = {
			"fit/processor": answered({ part: "tallowfinch-deckhand" }),
			"fit/graphics-card": answered("open"),
			"fit/memory": answered("open"),
			"fit/cooler": answered("open"),
			"fit/supply": answered("open"),
		};
		const { boards } = judge(demo, foldAnswers({ ...settled, "fit/case": notSure }, context));
		const of = (id: string) => boards.find(({ board }) => board.id === id);
		expect(of("brindlecroft-snowdrop")).toMatchObject({ verdict: "fits", depending: [] });
		expect(of("pennywhistle-mazurka")?.depending).toEqual([
			{
				ruleId: "fit/board-form",
				questionId: "fit/case",
				fitsWith: ["a case for ATX and smaller", "a case for E-ATX and smaller"],
				notWith: ["a case for Mini-ITX only", "a case for microATX and smaller"],
			},
		]);
		expect(of("fernquill-lighthouse")?.depending).toMatchObject([
			{
				fitsWith: ["a case for E-ATX and smaller"],
				notWith: ["a case for Mini-ITX only", "a case for microATX and smaller", "a case for ATX and smaller"],
			},
		]);
		expect(of("oddment-button")).toMatchObject({
			verdict: "does-not-fit",
			failedRuleIds: ["fit/socket", "fit/memory-of-processor"],
		});
	});
});

describe("what is taken in before the rules see a board", () => {
	test("facts that follow from its form are filled in and marked, the board itself stays as given", () => {
		const given = { ...goodBoard, form: "Mini-ITX" as const };
		const board = judged(given, buildOf(goodBuild));
		expect(board.board).not.toHaveProperty("depthMm");
		expect(board.subject.board).toMatchObject({ depthMm: 170, widthMm: 170, holes: ["C", "F", "H", "J"] });
		const facts = board.findings.flatMap((finding) => finding.facts);
		const assumed = facts.filter(({ standing }) => standing === "assumed").map(({ path }) => path);
		expect([...new Set(assumed)].sort()).toEqual([
			"board.depthMm",
			"board.holes",
			"board.power.mainPlug",
			"board.widthMm",
		]);
	});

	test("the cheapest new offer is its price where none is noted", () => {
		const offers = [
			{ price: { minor: 19_000, currency: "EUR" }, condition: "new" as const },
			{ price: { minor: 18_001, currency: "EUR" }, condition: "new" as const },
			{ price: { minor: 100, currency: "EUR" }, condition: "used" as const },
		];
		const board = judgedOnly({ ...unpricedBoard, offers }, buildOf(goodBuild));
		expect(board).toMatchObject({ verdict: "does-not-fit", failedRuleIds: ["fit/price-cap"] });
		expect(board.subject.board?.price).toEqual({ minor: 18_001, currency: "EUR" });
	});

	test("its row in the table of chipsets, whatever the spelling", () => {
		const row = (chipset: string, served: "yes" | "no") => ({
			id: chipset.toLowerCase().replace(/ /g, "-"),
			name: "A row",
			socket: "Socket KETTLE-7",
			chipset,
			generations: [{ generation: "Dinghy", served }],
		});
		const build = buildOf({
			...goodBuild,
			processor: { socket: "Kettle 7", generation: "Dinghy", graphics: true, memory: { types: ["DDR5"] } },
		});
		const verdictWith = (chipset: string) =>
			judge(smallMarket([{ ...unlistedBoard, chipset }], [row("Ladle 3", "yes"), row("Saucer 8", "no")]), build)
				.boards[0]?.verdict;
		expect(verdictWith("ladle3")).toBe("fits");
		expect(verdictWith("SAUCER 8")).toBe("does-not-fit");
		expect(verdictWith("Quay 20")).toBe("cannot-tell");
	});

	test("what the row of its chipset lets be raised counts where the board's own page is silent, and is marked", () => {
		const row = {
			id: "ladle-3",
			name: "A row",
			socket: "Kettle 7",
			chipset: "Ladle 3",
			generations: [{ generation: "Dinghy", served: "yes" as const }],
			raises: { processorClock: false, memoryRate: true },
		};
		const unlocked = { ...(goodBuild.processor as object), unlocked: true };
		const build = buildOf({ ...goodBuild, processor: unlocked, clockPlan: "done-before" });
		const found = (facts: Partial<Board>) => {
			const [board] = judge(smallMarket([{ ...goodBoard, chipset: "Ladle 3", ...facts }], [row]), build).boards;
			return board?.findings.find(({ ruleId }) => ruleId === "features/raise-clock");
		};
		expect(found({})).toMatchObject({ verdict: "does-not-fit" });
		expect(found({})?.facts).toContainEqual({
			path: "board.raises.processorClock",
			value: false,
			standing: "assumed",
			source: "common-practice",
			because: "a board with chipset Ladle 3",
		});
		expect(found({ raises: { processorClock: true } })?.verdict).not.toBe("does-not-fit");
	});
});

describe("parts that disagree with each other", () => {
	const long = { lengthMm: 301 };
	const short = { cardMaxLengthMm: 300, boardForms: ["ATX" as const] };

	test("are told, and take no board out", () => {
		const { buildFindings, boards } = judge(
			smallMarket([
				{ ...goodBoard, cardSlots: [{ name: "SLOT_1", bus: "PCI Express", lengthLanes: 16, wiredLanes: 16 }] },
			]),
			buildOf({ ...goodBuild, graphicsCard: long, case: short }),
		);
		expect(buildFindings).toMatchObject([
			{ finding: { ruleId: "build/card-in-case", verdict: "does-not-fit", messageId: "tooLong" }, certain: true },
		]);
		expect(boards.map(({ verdict }) => verdict)).toEqual(["fits"]);
		expect(boards[0]?.findings.map(({ ruleId }) => ruleId)).not.toContain("build/card-in-case");
	});

	test("are not certain where an open answer may cure it", () => {
		const build = buildOf(
			{ ...goodBuild, processor: { socket: "Kettle 7", graphics: false }, graphicsCard: "unknown" },
			{ "with a card": { graphicsCard: "open" }, "without a card": { graphicsCard: "none" } },
		);
		expect(judge(smallMarket([]), build).buildFindings).toMatchObject([
			{ finding: { ruleId: "build/picture-at-all", messageId: "none" }, certain: false },
		]);
	});

	test("nothing is said where they agree, or where it is not known", () => {
		expect(judge(smallMarket([]), buildOf(goodBuild)).buildFindings).toEqual([]);
		expect(judge(smallMarket([]), buildOf({})).buildFindings).toEqual([]);
	});
});

test("the counts, and the boards in the order given", () => {
	const market = smallMarket([{ ...goodBoard, socket: "Harbour 2" }, goodBoard, {}, { ...goodBoard, form: "E-ATX" }]);
	const { boards, counts } = judge(market, buildOf(goodBuild));
	expect(boards.map(({ board, verdict }) => [board.id, verdict])).toEqual([
		["board-1", "does-not-fit"],
		["board-2", "fits"],
		["board-3", "cannot-tell"],
		["board-4", "does-not-fit"],
	]);
	expect(counts).toEqual({ all: 4, fits: 1, cannotTell: 1, doesNotFit: 2 });
});

test("no boards at all", () => {
	expect(judge(smallMarket([]), buildOf(goodBuild))).toMatchObject({
		boards: [],
		counts: { all: 0, fits: 0, cannotTell: 0, doesNotFit: 0 },
		buildFindings: [],
	});
});
