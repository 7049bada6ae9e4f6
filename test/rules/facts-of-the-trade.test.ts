import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { boardSubjects } from "../../src/choose/findings-of-market.ts";
import { type BoardJudgement, judge } from "../../src/choose/judge.ts";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import { rescue } from "../../src/criteria/rescue.ts";
import { steadyPower as coolPower } from "../../src/criteria/steady-power.ts";
import { valueOverInterval } from "../../src/maths/piecewise-linear.ts";
import type { Board } from "../../src/parts/board.ts";
import { checkParts } from "../../src/parts/check-parts.ts";
import type { Platform } from "../../src/parts/platform.ts";
import type { Processor } from "../../src/parts/processor.ts";
import type { HoleLetter } from "../../src/parts/vocabulary.ts";
import { planFactsOf } from "../../src/plan/plan-facts.ts";
import { holesOfForm } from "../../src/reference/board-holes.ts";
import * as cautions from "../../src/reference/cautions.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { clockLocked } from "../../src/rules/build/clock-locked.ts";
import { graphicsLanes } from "../../src/rules/features/graphics-lanes.ts";
import { memoryLater } from "../../src/rules/features/memory-later.ts";
import { raiseClock } from "../../src/rules/features/raise-clock.ts";
import { rescueMusts } from "../../src/rules/features/rescue-musts.ts";
import { boardForm } from "../../src/rules/fit/board-form.ts";
import { cardSlots } from "../../src/rules/fit/card-slots.ts";
import { generation } from "../../src/rules/fit/generation.ts";
import { memoryModules } from "../../src/rules/fit/memory-modules.ts";
import { socket } from "../../src/rules/fit/socket.ts";
import { standoffs } from "../../src/rules/fit/standoffs.ts";
import { perChannelOf } from "../../src/rules/memory-tables.ts";
import { steadyPower } from "../../src/rules/quality/steady-power.ts";
import { tested } from "../../src/rules/quality/tested.ts";
import { runRule } from "../../src/rules/run-rule.ts";
import { wholeDemo } from "../choose/demo.ts";
import { buildOf, goodBoard, goodBuild, smallMarket } from "../choose/small-market.ts";
import { m2, slot, stick } from "../plan/made-up-problem.ts";
import { buildFacts, type GivenSubject, partNames, subjectOf } from "./rule-subject.ts";

// Facts of the trade that the rules, the plan, the power estimate and the invented market are held to. All of them are
// common practice, no source. Where a fact is about what is usual, the invented market has to look so.

const boards = wholeDemo.parts.board;
const find = (rule: Parameters<typeof runRule>[0], subject: GivenSubject) => runRule(rule, subjectOf(subject));
const share = <T>(list: readonly T[], holds: (one: T) => boolean) => list.filter(holds).length / list.length;
const mean = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
const ofForm = (form: Board["form"]) => boards.filter((board) => board.form === form);
const told = <K extends keyof Board>(list: readonly Board[], key: K) =>
	list.filter((board) => board[key] !== undefined);

describe("sizes", () => {
	const bySize = ["Mini-ITX", "microATX", "ATX"] as const;

	test("a small board goes into a case for larger ones; a large board never into a case for smaller ones", () => {
		for (const [at, form] of bySize.entries())
			for (const [most, largest] of bySize.entries()) {
				const { verdict } = find(boardForm, { board: { form }, case: { boardForms: [largest] } });
				expect([form, largest, verdict]).toEqual([form, largest, at <= most ? "fits" : "does-not-fit"]);
			}
	});

	test("a small board in a large case only looks sparse: nothing about its size is held against it", () => {
		const { boards: judged } = judge(
			smallMarket(bySize.map((form) => ({ ...goodBoard, form }))),
			buildOf({ ...goodBuild, case: { boardForms: ["ATX"] } }),
		);
		const sizes = judged.map(({ verdict, findings }) => [
			verdict,
			findings.find(({ ruleId }) => ruleId === "fit/board-form")?.severity,
		]);
		expect(sizes).toEqual([
			["fits", null],
			["fits", null],
			["fits", null],
		]);
		expect(boardForm.why).toContain("sparse");
	});

	test("the smallest form has one card slot: a graphics card fills it, and nothing is left for another card", () => {
		const small = told(ofForm("Mini-ITX"), "cardSlots");
		expect(small.length).toBeGreaterThan(5);
		for (const { cardSlots: slots = [] } of small) expect(slots).toHaveLength(1);
		for (const board of [small[0], small.at(-1)] as Board[]) {
			const cards = { graphicsCard: { lanes: 16, thicknessMm: 40 }, addInCards: [{ id: "fiddle", name: "Fiddle" }] };
			const alone = find(cardSlots, { board, graphicsCard: cards.graphicsCard });
			expect(alone.verdict).toBe("fits");
			const both = find(cardSlots, { board, ...cards });
			expect([both.severity, both.messageId]).not.toEqual([null, alone.messageId]);
			expect(planOf(board, cards).things.filter(({ hasPlace }) => hasPlace === "no")).toHaveLength(1);
		}
	});

	test("a second row of cards on the smallest form is a slip of whoever typed it in", () => {
		const faultsWith = (row: number) =>
			checkParts({
				schema: "boardwalk/parts@1",
				boards: [{ id: "a-board", name: "A board", form: "Mini-ITX", cardSlots: [{ name: "SLOT", row }] }],
			});
		expect(faultsWith(1).value).not.toBeNull();
		expect(faultsWith(2).value).toBeNull();
	});

	test("the middle form mostly has one or two slots beside the one for the graphics card, the large form more", () => {
		const besides = (form: Board["form"]) =>
			told(ofForm(form), "cardSlots").map((board) => (board.cardSlots?.length ?? 0) - 1);
		const [middle, large] = [besides("microATX"), besides("ATX")];
		expect(middle.length).toBeGreaterThan(10);
		expect(share(middle, (count) => count === 1 || count === 2)).toBeGreaterThan(0.9);
		expect(mean(large)).toBeGreaterThan(mean(middle));
	});

	test("nearly every case for the large form has the posts of the middle one, so its silence is no objection", () => {
		const holes = holesOfForm("microATX")?.letters.filter((letter) => letter !== "S") ?? [];
		const looked = wholeDemo.parts.case.filter(
			({ boardForms, standoffs: posts }) => boardForms?.includes("ATX") && posts,
		);
		expect(looked.length).toBeGreaterThan(5);
		expect(share(looked, ({ standoffs: posts }) => holes.every((hole) => posts?.includes(hole)))).toBeGreaterThan(0.9);
		const board = { form: "microATX" } as const;
		const silent = { board, case: { boardForms: ["ATX"] } } as const satisfies GivenSubject;
		expect(find(boardForm, silent).verdict).toBe("fits");
		expect(find(standoffs, silent)).toMatchObject({ verdict: "fits", severity: null });
		// Who looked, and found only the posts of the large form, is told which holes have none.
		const found = (posts: readonly HoleLetter[]) =>
			find(standoffs, { board, case: { boardForms: ["ATX"], standoffs: [...posts] } }).messageId;
		expect(found(holesOfForm("ATX")?.letters ?? [])).toBe("bareHoles");
		expect(found(holes)).toBe("held");
	});
});

/** Two chipsets on one socket: the newer serves the old generation too, and the new one after an update. */
const oldChipset: Platform = {
	id: "kettle-ladle",
	name: "Ladle 3 on Kettle 7",
	socket: "Kettle 7",
	chipset: "Ladle 3",
	generations: [
		{ generation: "Dinghy", served: "yes" },
		{ generation: "Schooner", served: "no" },
	],
};
const newerChipset: Platform = {
	...oldChipset,
	id: "kettle-saucer",
	chipset: "Saucer 8",
	generations: [
		{ generation: "Dinghy", served: "yes" },
		{ generation: "Schooner", served: "from firmware", startsFrom: "F9" },
	],
};
const schooner = { socket: "Kettle 7", generation: "Schooner" } as const;
const dinghy = { socket: "Kettle 7", generation: "Dinghy" } as const;

describe("processors and firmware", () => {
	test("one socket does not make two boards alike: of two the processor goes into, one never runs it", () => {
		const { supportList: _, ...noList } = goodBoard;
		const market = smallMarket(
			[
				{ ...noList, chipset: "Ladle 3" },
				{ ...noList, chipset: "Saucer 8" },
			],
			[oldChipset, newerChipset],
		);
		const build = buildOf({ ...goodBuild, processor: { ...(goodBuild.processor as object), ...schooner } });
		const { boards: judged } = judge(market, build);
		expect(judged.map(({ verdict }) => verdict)).toEqual(["does-not-fit", "fits"]);
		expect(judged[0]?.failedRuleIds).toEqual(["fit/generation"]);
		expect(judged.map((one) => findingOf(one, socket.id)?.verdict)).toEqual(["fits", "fits"]);
	});

	test("a chipset can serve several generations, the newer one only after an update", () => {
		const board = { chipset: "Saucer 8", firmware: { oldestInShops: "F5" } };
		expect(find(generation, { board, platform: newerChipset, processor: dinghy })).toMatchObject({
			verdict: "fits",
			severity: null,
		});
		expect(find(generation, { board, platform: newerChipset, processor: schooner })).toMatchObject({
			verdict: "fits",
			severity: "plan-around",
			messageId: "needsUpdate",
		});
		expect(find(generation, { board, platform: oldChipset, processor: schooner }).verdict).toBe("does-not-fit");
		const updated = wholeDemo.parts.platform.filter(
			({ generations: rows }) =>
				rows.some(({ served }) => served === "from firmware") &&
				rows.filter(({ served }) => served !== "no").length > 1,
		);
		expect(updated.length).toBeGreaterThan(3);
	});

	test("the maker's list for this very board has the last word, for a processor and against it", () => {
		const named = { rows: [{ processor: partNames.processor }] };
		const others = { rows: [{ processor: "Somebody else's" }] };
		const onList = (supportList: Board["supportList"], platform: Platform) =>
			find(generation, { board: { chipset: platform.chipset, supportList }, platform, processor: schooner }).verdict;
		expect(onList(named, oldChipset)).toBe("fits");
		expect(onList(others, newerChipset)).toBe("does-not-fit");
		// A list noted in part leaves it to the table.
		expect(onList({ ...others, partial: true }, newerChipset)).toBe("fits");
		expect(onList({ ...others, partial: true }, oldChipset)).toBe("does-not-fit");
	});

	test("a board older than the processor may stay dark until it is updated; one with newer firmware may not", () => {
		const withStock = (oldestInShops?: string) =>
			find(generation, {
				board: { chipset: "Saucer 8", firmware: { ...(oldestInShops ? { oldestInShops } : {}) } },
				platform: newerChipset,
				processor: schooner,
			});
		expect(withStock("F8").messageId).toBe("needsUpdate");
		expect(withStock().messageId).toBe("needsUpdate");
		expect(withStock("F9")).toMatchObject({ messageId: "newEnough", severity: null });
	});

	test("an update without processor and memory solves it: nothing has to be borrowed and no shop asked", () => {
		const [alone, not] = [true, false].map((flashWithoutProcessor) => {
			const board = { chipset: "Saucer 8", firmware: { oldestInShops: "F8" }, recovery: { flashWithoutProcessor } };
			const { messageId, data, verdict } = find(generation, { board, platform: newerChipset, processor: schooner });
			return { verdict, messageId, advice: generation.advice?.[messageId]?.(data) ?? "" };
		});
		expect(alone).toMatchObject({ verdict: "fits", messageId: "updatesAlone" });
		expect(alone?.advice).not.toMatch(/borrow|shop/);
		expect(not?.advice).toMatch(/shop.*borrow/);
		expect(not?.advice).toContain("update without a processor");
	});
});

describe("raising the clock", () => {
	const raising = (board: boolean, processor: boolean): readonly string[] => {
		const given = {
			board: { raises: { processorClock: board } },
			processor: { unlocked: processor },
			clockPlan: "done-before",
		} as const satisfies GivenSubject;
		return [raiseClock, clockLocked].filter((rule) => find(rule, given).severity !== null).map(({ id }) => id);
	};

	test("takes a board that allows it and a processor that lets it: one of both is not enough", () => {
		expect(raising(true, true)).toEqual([]);
		expect(raising(false, true)).toEqual(["features/raise-clock"]);
		expect(raising(true, false)).toEqual(["build/clock-locked"]);
		expect(raising(false, false)).toEqual(["build/clock-locked"]);
	});

	test("goes by what the chipset allows, not by its rank: a middle one that allows it is as good as the top", () => {
		const fitting = (allows: readonly boolean[]) =>
			judge(
				smallMarket(allows.map((processorClock) => ({ ...goodBoard, raises: { processorClock } }))),
				buildOf({
					...goodBuild,
					processor: { ...(goodBuild.processor as Processor), unlocked: true },
					clockPlan: "done-before",
				}),
			).boards.map(({ verdict }) => verdict);
		// Lowest, middle, top chipset: on one platform from the middle on, on another the top only.
		expect(fitting([false, true, true])).toEqual(["does-not-fit", "fits", "fits"]);
		expect(fitting([false, false, true])).toEqual(["does-not-fit", "does-not-fit", "fits"]);
	});

	test("on every invented socket some processors and chipsets allow it and some chipsets do not", () => {
		for (const name of new Set(wholeDemo.parts.platform.map((row) => row.socket))) {
			const rows = wholeDemo.parts.platform.filter((row) => row.socket === name);
			const processors = wholeDemo.parts.processor.filter((one) => one.socket === name);
			expect(processors.some(({ unlocked }) => unlocked)).toBe(true);
			expect(rows.some(({ raises }) => raises?.processorClock)).toBe(true);
			expect(rows.some(({ raises }) => raises?.processorClock === false)).toBe(true);
		}
	});

	test("who will not do it saves on the board: one that allows it gains nothing, and the cheaper one is as good", () => {
		const priced = (minor: number, processorClock: boolean): Partial<Board> => ({
			...goodBoard,
			price: { minor, currency: "EUR" },
			raises: { processorClock },
		});
		const market = smallMarket([priced(15_000, true), priced(9000, false)]);
		const adviceFor = (clockPlan: "no" | "done-before") => {
			const processor = { ...(goodBuild.processor as Processor), unlocked: true };
			const judgement = judge(market, buildOf({ ...goodBuild, processor, clockPlan }));
			return { verdicts: judgement.boards.map(({ verdict }) => verdict), ...advise(judgement, {}) };
		};
		const content = adviceFor("no");
		expect(content.verdicts).toEqual(["fits", "fits"]);
		expect(content.shortlist[0]?.boardId).toBe("board-2");
		expect(new Set(content.shortlist.map(({ score }) => score.mid)).size).toBe(1);
		expect(adviceFor("done-before").verdicts).toEqual(["fits", "does-not-fit"]);
	});

	test("who will not do it saves on the processor: a locked one is then no matter", () => {
		const planned = (clockPlan: "no" | "done-before") =>
			find(clockLocked, { processor: { unlocked: false }, clockPlan }).severity;
		expect(planned("no")).toBeNull();
		expect(planned("done-before")).toBe("plan-around");
	});
});

/** A board with one long slot and one M.2 socket of a generation. */
const linked = (of: number): Partial<Board> => ({
	cardSlots: [slot("X16", 1, 16, { generation: of, from: "processor" })],
	m2Sockets: [m2("M2_1", { generation: of, wiredLanes: 4, from: "processor" })],
	sharing: [],
	conditions: [],
});

describe("links and chipsets", () => {
	test("a faster generation works only where board and processor both have it", () => {
		const generationOf = (board: number, processor: number) => {
			const { things } = planOf(linked(board), {
				processor: { lanes: { generation: processor } },
				graphicsCard: { lanes: 16, generation: 5, thicknessMm: 40 },
				drives: [{ ...stick("Pebble"), generation: 5, lanes: 4 }],
			});
			return things.map(({ best }) => best?.link.generation);
		};
		expect(generationOf(5, 5)).toEqual([5, 5]);
		expect(generationOf(5, 4)).toEqual([4, 4]);
		expect(generationOf(4, 5)).toEqual([4, 4]);
		expect(generationOf(4, 4)).toEqual([4, 4]);
	});

	test("what is lost by the older of the two is told, and nothing where both are new", () => {
		const said = (board: number, processor: number) =>
			find(graphicsLanes, {
				board: linked(board),
				processor: { lanes: { generation: processor } },
				graphicsCard: { lanes: 16, generation: 5, thicknessMm: 40 },
			}).messageId;
		expect([said(5, 5), said(5, 4), said(4, 5)]).toEqual(["full", "narrow", "narrow"]);
	});

	/** Chipsets of the sockets for everyday computers, the one whose boards cost least first. */
	const chipsetsBySocket = ["Harbour 2", "Kettle 7", "Orchard 5"].map((name) => {
		const on = boards.filter((board) => board.socket === name && board.chipset && board.price && board.cardSlots);
		const names = [...new Set(on.map((board) => board.chipset))];
		const groups = names.map((chipset) => on.filter((board) => board.chipset === chipset));
		return groups.sort((one, other) => mean(one.map(costOf)) - mean(other.map(costOf)));
	});

	test("boards with the lowest chipset have fewer USB sockets and fewer places for drives", () => {
		for (const groups of chipsetsBySocket) {
			const [lowest, top] = [groups[0] ?? [], groups.at(-1) ?? []];
			expect(lowest.length).toBeGreaterThan(2);
			for (const count of [usbSockets, placesForDrives])
				expect(mean(lowest.map(count))).toBeLessThan(mean(top.map(count)));
		}
	});

	test("none with the lowest chipset has a second slot for a heavy card; some with the top one have or may have", () => {
		const second = (board: Board) => planOf(board, { wishes: { "features/second-card": "must" } }).secondSlot.has;
		for (const groups of chipsetsBySocket) {
			expect(new Set(groups[0]?.map(second))).toEqual(new Set(["no"]));
			expect(chipsetsBySocket.flatMap((all) => all.at(-1) ?? []).map(second)).toContain("yes");
		}
	});
});

describe("memory slots", () => {
	const kit = (modules: number) => ({ type: "DDR5", modules, gbPerModule: 16 }) as const;
	const withSlots = (slots: number) => ({ memory: { type: "DDR5", slots, channels: 2 } }) as const;

	test("two do for two channels: a pair goes in, one module a channel, and nothing is held against it", () => {
		const pair = { board: withSlots(2), memory: kit(2) };
		expect(find(memoryModules, pair).verdict).toBe("fits");
		expect(find(memoryLater, pair)).toMatchObject({ verdict: "fits", severity: null });
		expect(perChannelOf({ "memory.modules": 2, "board.memory.channels": 2 })).toBe(1);
		expect(find(memoryModules, { board: withSlots(1), memory: kit(2) }).verdict).toBe("does-not-fit");
	});

	test("two are short only for whoever wants the same again later", () => {
		const later = (slots: number) =>
			find(memoryLater, { board: withSlots(slots), memory: kit(2), laterThings: ["memory"] });
		expect(later(2).messageId).toBe("noSlot");
		expect(later(4).messageId).not.toBe("noSlot");
	});

	test("the two larger forms mostly have four; the smallest has two", () => {
		const slotsOf = (form: Board["form"]) => ofForm(form).flatMap(({ memory }) => memory?.slots ?? []);
		for (const form of ["ATX", "microATX"] as const)
			expect(share(slotsOf(form), (slots) => slots >= 4)).toBeGreaterThan(0.5);
		expect(new Set(slotsOf("Mini-ITX"))).toEqual(new Set([2]));
	});
});

describe("the day it does not start", () => {
	const aidedBy = (recovery: Board["recovery"]) => {
		const { board } = subjectOf({ board: { recovery: { ...noAids, ...recovery } } });
		const facts = Object.entries(board?.recovery ?? {}).map(([key, value]) => [`board.recovery.${key}`, value]);
		const measure = rescue.measure(Object.fromEntries(facts));
		return measure ? valueOverInterval(rescue.scale, measure).low : Number.NaN;
	};
	const noAids = { flashWithoutProcessor: false, faultDisplay: "none", resetAtBack: false } as const;

	test("a reset at the back saves opening the case, and counts for a board", () => {
		expect(rescue.why).toMatch(/reset button saves opening the case/);
		expect(aidedBy({ resetAtBack: true })).toBeGreaterThan(aidedBy({}));
	});

	test("a display of faults helps when nothing starts, lights as well as digits", () => {
		expect(aidedBy({ faultDisplay: "lights" })).toBeGreaterThan(aidedBy({}));
		expect(aidedBy({ faultDisplay: "digits" })).toBe(aidedBy({ faultDisplay: "lights" }));
		const must = (faultDisplay: "none" | "lights") =>
			find(rescueMusts, { board: { recovery: { faultDisplay } }, rescueMusts: ["fault-display"] }).verdict;
		expect([must("lights"), must("none")]).toEqual(["fits", "does-not-fit"]);
	});

	// The program says what a reset at the back saves, but nowhere what is left without one.
	test("a board without it can still be reset, as the last resort with a jumper inside", () => {
		const advice = allRules.flatMap((rule) => Object.values(rule.advice ?? {}).map((words) => words.toString()));
		const messages = allRules.flatMap((rule) => Object.values(rule.messages).map((words) => words.toString()));
		const told = [...advice, ...messages, ...allCriteria.map(({ why }) => why), JSON.stringify(cautions)].join(" ");
		expect(told).toMatch(/jumper/i);
	});
});

describe("power and heat", () => {
	const processorOf = (id: string) => wholeDemo.parts.processor.find((one) => one.id === id) as Processor;
	const [light, heaviest] = [processorOf("tallowfinch-nightwatch"), processorOf("tallowfinch-figurehead")];
	const onSocket = (name = "") => boardSubjects(wholeDemo).filter(({ board }) => board.socket === name);
	const around = { cooler: { kind: "air" }, case: { frontOpen: "mesh" }, summerRoom: "warm" } as const;
	const barest = onSocket(heaviest.socket).filter(
		({ board: { powerDelivery } }) => powerDelivery?.heatSink === "none" && (powerDelivery.coreStages ?? 9) <= 6,
	);
	const forHours = (processor: Processor, sessionLength: "minutes" | "all-day" = "all-day") =>
		buildFacts({ ...around, processor, clockPlan: "no", activities: ["building"], sessionLength });

	test("an entry board under the heaviest processor starts, and holds it back in hours of full load, nothing raised", () => {
		expect(barest.length).toBeGreaterThan(3);
		for (const subject of barest) {
			const heavy = runRule(steadyPower, { ...subject, facts: forHours(heaviest) });
			expect(heavy).toMatchObject({ verdict: "fits", severity: "plan-around", messageId: "tooHot" });
			expect(runRule(steadyPower, { ...subject, facts: forHours(light) }).messageId).not.toBe("tooHot");
		}
		// Some of them last for minutes.
		const short = barest.map((subject) => runRule(steadyPower, { ...subject, facts: forHours(heaviest, "minutes") }));
		expect(short.map(({ messageId }) => messageId)).toContain("tight");
	});

	test("a middling board at about half of a premium one's price has what most need and stands a raised clock", () => {
		const raised: Readonly<Record<string, string>> = {
			"Harbour 2": "tallowfinch-quartermaster",
			"Kettle 7": "mumblethwaite-treacle-tin",
			"Orchard 5": "wimblecombe-grafter",
		};
		for (const [name, id] of Object.entries(raised)) {
			const priced = onSocket(name).filter(({ board }) => board.price);
			const byPrice = [...priced].sort((one, other) => costOf(one.board) - costOf(other.board));
			const tenth = Math.max(2, Math.floor(byPrice.length / 10));
			const premium = mean(byPrice.slice(-tenth).map(({ board }) => costOf(board)));
			const doesAll = ({ board, ...subject }: (typeof priced)[number]) => {
				const facts = buildFacts({
					...around,
					processor: processorOf(id),
					clockPlan: "done-before",
					activities: ["games"],
					sessionLength: "an-hour",
				});
				const { severity, verdict } = runRule(steadyPower, { ...subject, board, facts });
				const stands = board.raises?.processorClock && verdict === "fits" && severity !== "plan-around";
				return stands && (board.m2Sockets?.length ?? 0) >= 2 && usbSockets(board) >= 6;
			};
			expect(byPrice.filter((one) => doesAll(one) && costOf(one.board) <= 0.6 * premium).length).toBeGreaterThan(0);
			expect(byPrice.slice(0, tenth).filter(doesAll)).toEqual([]);
		}
	});

	const built = (coreStages: number): Partial<Board> => ({
		powerDelivery: {
			coreStages,
			stageKind: "integrated",
			stageRatingA: 60,
			efficiencyPercent: 90,
			switchingKhz: 500,
			heatSink: "both sides",
			layers: 6,
		},
	});
	const worked = { ...around, processor: { sustainedW: 90, baseW: 65, peakW: 95, limitPolicy: "fixed" } } as const;
	const steadyOf = (board: Partial<Board>) => {
		const subject = subjectOf({ board, ...worked });
		return subject.measures?.power?.(subject.facts).steady;
	};

	test("more stages than needed are no harm: the board runs cooler, and nothing is said against it", () => {
		const ladder = [4, 6, 8, 12, 16, 24].map((stages) => ({
			hottestC: steadyOf(built(stages))?.hotSpotC.high ?? Number.NaN,
			said: find(steadyPower, { board: built(stages), ...worked }),
		}));
		for (const [at, { hottestC }] of ladder.entries())
			if (at > 0) expect(hottestC).toBeLessThan(ladder[at - 1]?.hottestC ?? 0);
		for (const { said } of ladder.slice(2)) expect(said).toMatchObject({ messageId: "ample", severity: null });
	});

	test("heat costs years even within the limit, so a cooler board counts for more among those that stay within it", () => {
		expect(coolPower.why).toMatch(/hot for years wear out/);
		const worth = (spareK: number) => valueOverInterval(coolPower.scale, { low: spareK, high: spareK }).low;
		expect(worth(20)).toBeGreaterThan(worth(5));
		const [few, many] = [6, 16].map((stages) => coolPower.measure({ "power.steady": steadyOf(built(stages)) }));
		expect(few?.low).toBeGreaterThan(0);
		expect(many?.low).toBeGreaterThan(few?.low ?? 0);
	});

	test("a spec page does not tell how well it is built: the phases it boasts of settle nothing, a test does", () => {
		const heavy = { ...around, processor: { sustainedW: 200, baseW: 165, peakW: 220, limitPolicy: "fixed" } } as const;
		const boasting = (advertised: string): Partial<Board> => ({ powerDelivery: { advertised } });
		for (const phases of ["8+1 phases", "16+2 phases", "24+2+1 phases"])
			expect(find(steadyPower, { board: boasting(phases), ...heavy }).verdict).toBe("cannot-tell");
		const wished = { wishes: { "quality/tested": "must" } } as const;
		expect(find(tested, { board: boasting("24+2+1 phases"), ...wished }).messageId).toBe("lacks");
		const seen: Partial<Board> = {
			powerDelivery: {
				...built(16).powerDelivery,
				measurements: [{ loadW: 220, airC: 25, stageC: 62, where: "front" }],
			},
		};
		expect(find(steadyPower, { board: seen, ...heavy }).verdict).toBe("fits");
		expect(find(tested, { board: seen, ...wished })).toMatchObject({ messageId: "measured", severity: null });
	});

	test("what fits is not what feeds: a heavy processor on the barest board passes every rule of fit, and is told of", () => {
		const powerDelivery = barest[0]?.board.powerDelivery ?? {};
		const bare = smallMarket([
			{ ...goodBoard, powerDelivery },
			{ ...goodBoard, ...built(20) },
		]);
		const heavy = {
			...(goodBuild.processor as Processor),
			sustainedW: 214,
			baseW: 165,
			peakW: 220,
			limitPolicy: "fixed",
		} as const;
		const build = buildOf({
			...goodBuild,
			...around,
			case: { ...(goodBuild.case as object), frontOpen: "mesh" },
			cooler: "none",
			processor: heavy,
		});
		const [barely, well] = judge(bare, build).boards as [BoardJudgement, BoardJudgement];
		expect([barely.verdict, well.verdict]).toEqual(["fits", "fits"]);
		expect([barely, well].map((one) => findingOf(one, steadyPower.id)?.severity)).toEqual(["plan-around", null]);
		const { ranking } = advise(judge(bare, build), {});
		expect(ranking[0]?.boardId).toBe("board-2");
	});
});

function costOf({ price }: Board): number {
	return price?.minor ?? Number.NaN;
}

function usbSockets({ rearUsb = [] }: Board): number {
	return rearUsb.reduce((sum, { count }) => sum + count, 0);
}

function placesForDrives({ m2Sockets = [], drivePorts = [] }: Board): number {
	return m2Sockets.length + drivePorts.length;
}

function findingOf({ findings }: BoardJudgement, ruleId: string) {
	return findings.find((finding) => finding.ruleId === ruleId);
}

function planOf(board: Partial<Board>, build: Parameters<typeof buildFacts>[0]) {
	return planFactsOf({ id: "a-board", name: "A board", ...board }, buildFacts(build));
}
