import { describe, expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import type { AnswerChange, Repair, RepairedWayOut } from "../../src/choose/repaired-answers.ts";
import type { Answers } from "../../src/parts/answers-file.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { conflictWords, counted, demandWords, limitWords } from "../../src/sheet/demand-words.ts";
import { actionWords, changeWords, repairedWayWords, repairWords } from "../../src/sheet/ways-out-words.ts";
import { demo, demoContext, scenarios } from "../choose/demo.ts";
import { buildFacts } from "../rules/rule-subject.ts";

const eur = (units: number) => ({ minor: units * 100, currency: "EUR" });
const handedDown: Answers = scenarios.find(({ name }) => name === "handed-down.json")?.file.answers ?? {};
const judgement = judge(demo, foldAnswers(handedDown, demoContext));

const change = (questionId: string, from: AnswerChange["from"], to: AnswerChange["to"], ...partIds: string[]) => ({
	questionId,
	from,
	to,
	partIds,
});
const said = (one: AnswerChange) => changeWords(one, judgement, demoContext);
const done = (one: AnswerChange) => actionWords(one, demoContext);

describe("one change in words", () => {
	test("the limit for the board, and the money in all, with what more it is", () => {
		const board = change("about/budget", eur(210), eur(225));
		expect(said(board)).toBe("EUR 15.00 more for the board: EUR 225.00 instead of EUR 210.00");
		expect(done(board)).toBe("let the board cost EUR 225.00");
		const all = change("about/money-in-all", eur(900), eur(915));
		expect(said(all)).toBe("EUR 15.00 more in all: EUR 915.00 instead of EUR 900.00");
		expect(done(all)).toBe("put in EUR 915.00 in all");
	});

	test("fewer drives, with those that are left out", () => {
		const ids = demo.parts.drive.slice(0, 3).map(({ id }) => id);
		const [one, two, three] = demo.parts.drive.map(({ name }) => name);
		const fewer = change("fit/drives", ids, ids.slice(0, 2));
		expect(said(fewer)).toBe(`two drives instead of three, without the ${three}`);
		expect(done(fewer)).toBe(`leave out the ${three}`);
		expect(said(change("fit/drives", ids, ids.slice(2)))).toBe(
			`one drive instead of three, without the ${one} and the ${two}`,
		);
		const twice = [ids[0], ids[0]] as string[];
		expect(said(change("fit/drives", twice, []))).toBe(`no drives instead of two, without the ${one} (2)`);
	});

	test("a wish, a count, a help", () => {
		expect(said(change("features/rear-usb-c", "must", "would-like"))).toMatch(/^USB-C.*: ".+" instead of ".+"$/);
		expect(said(change("fit/memory-size", 256, 128))).toBe("memory in the end: 128 GB instead of 256 GB");
		expect(said(change("features/rescue-musts", ["fault-display", "reset-at-back"], ["fault-display"]))).toMatch(
			/^one help instead of two, without ".+"$/,
		);
	});

	test("another part: the one given up, and parts of the list that would do unless it is bought for good", () => {
		expect(said(change("fit/memory", { part: "tabbywren-slippers" }, null, "tabbywren-scarf"))).toBe(
			"other memory instead of the Tabbywren Slippers",
		);
		const planned = judge(
			demo,
			foldAnswers(
				{ ...handedDown, "fit/memory": { status: "answered", value: { part: "tabbywren-slippers" } } },
				demoContext,
			),
		);
		const other = change("fit/memory", { part: "tabbywren-slippers" }, null, "tabbywren-scarf", "tabbywren-mittens");
		expect(planned.build.facts.memory).toMatchObject({ state: "have" });
		expect(
			changeWords(
				other,
				{
					...planned,
					build: {
						...planned.build,
						facts: { ...planned.build.facts, memory: { ...planned.build.facts.memory, ownership: "planned" } as never },
					},
				},
				demoContext,
			),
		).toBe("other memory instead of the Tabbywren Slippers, such as the Tabbywren Scarf or the Tabbywren Mittens");
		expect(done(other)).toBe("choose other memory");
		expect(said(change("fit/graphics-card", "none", "open"))).toBe("a graphics card after all");
	});
});

describe("a way out in sentences", () => {
	const repair: Repair = {
		changes: [change("about/budget", eur(210), eur(225)), change("fit/case", { part: "larkspur-hatbox" }, null)],
		fits: ["oddment-button"],
		cannotTell: ["oddment-thimble", "pennywhistle-jig"],
		leavesNothing: [],
		firmness: "bought",
	};

	test("what fits and what nobody can tell of stand apart", () => {
		expect(repairWords(repair, judgement, demoContext)).toBe(
			"EUR 15.00 more for the board: EUR 225.00 instead of EUR 210.00. And another case instead of the Larkspur Hatbox. Then 1 board fits: Oddment Button. For 2 boards we can't tell yet: Oddment Thimble and Pennywhistle Jig. Your case is bought for good.",
		);
	});

	test("more money that leaves nothing for what a board makes one buy besides says so", () => {
		const extras = ["an adapter for wireless", "a hub for USB inside"];
		const one = { boardId: "oddment-button", extras };
		const words = (leavesNothing: Repair["leavesNothing"]) =>
			repairWords({ ...repair, leavesNothing }, judgement, demoContext);
		const said =
			"Too little is left then for what Oddment Button makes you buy besides. That is: an adapter for wireless and a hub for USB inside.";
		expect(words([one])).toContain(`${said} Your case`);
		expect(words([one, { ...one, boardId: "oddment-thimble" }])).toContain(`${said} So it is with 1 board more.`);
	});

	test("boards that nobody can tell of are never said to fit", () => {
		const words = repairWords({ ...repair, fits: [] }, judgement, demoContext);
		expect(words).not.toMatch(/\bfits?\b/);
	});

	test("nothing is promised where nothing is known to do it", () => {
		const way: RepairedWayOut = {
			giveUp: ["fit/board-form"],
			boardIds: ["oddment-button"],
			firmness: "bought",
			repairs: [],
		};
		const words = repairedWayWords(way, judgement, demoContext);
		expect(words).toContain("another case");
		expect(words).toContain("Oddment Button");
		expect(words).toContain("No single answer here does that yet.");
		expect(words).not.toMatch(/\bfits?\b/);
	});
});

describe("conflicts in words", () => {
	test("demands are named from the build, not by ids", () => {
		expect(conflictWords(["fit/price-cap", "fit/board-form"], judgement)).toBe(
			"These cannot go together on any board here: your case (Larkspur Hatbox) and your price limit of EUR 90.00.",
		);
	});

	test("two rules about one part name it once", () => {
		expect(conflictWords(["fit/socket", "fit/memory-of-processor"], judgement)).toBe(
			"No board here goes with this: your processor (Tallowfinch Bosun).",
		);
	});

	test("of two limits the one that binds is named", () => {
		const limit = (given: Parameters<typeof buildFacts>[0]) => limitWords(buildFacts(given));
		expect(limit({ priceCap: eur(210) })).toBe("your price limit of EUR 210.00");
		expect(limit({ priceCap: eur(210), moneyInAll: eur(900), moneySpent: eur(720) })).toBe(
			"the EUR 180.00 left of your money",
		);
		expect(limit({ priceCap: eur(210), moneyInAll: eur(900), moneySpent: eur(600) })).toBe(
			"your price limit of EUR 210.00",
		);
		expect(limit({})).toBeNull();
	});

	test("drives are counted", () => {
		const stick = { id: "stick", name: "Stick", shape: "M.2" as const };
		const facts = buildFacts({ drives: [stick, stick, { ...stick, shape: "2.5 inch" }] } as never);
		expect(demandWords("fit/m2-drives", { facts })).toBe("two M.2 drives");
		expect(counted(1, "M.2 drive")).toBe("one M.2 drive");
		expect(counted(12, "M.2 drive")).toBe("12 M.2 drives");
	});

	test("a rule without a part is named by its label", () => {
		expect(demandWords("features/rear-usb-c", judgement.build)).toBe("USB-C at the back");
	});
});
