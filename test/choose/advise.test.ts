import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Advice, advise, criterionWords, type ShortlistEntry } from "../../src/choose/advise.ts";
import { judge } from "../../src/choose/judge.ts";
import type { Board } from "../../src/parts/board.ts";
import { type ImportanceTier, importanceTiers } from "../../src/parts/build.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { holesOfForm } from "../../src/reference/board-holes.ts";
import type { GivenBuild } from "../rules/rule-subject.ts";
import { demo, scenarios } from "../walk/walk-in-demo.ts";
import { notSure, wholeDemo } from "./demo.ts";
import { buildOf, countingOnly, goodBoard, goodBuild, smallMarket } from "./small-market.ts";

/** Stages known to stay cool in any room and case, so that the rule of power and heat has nothing left to ask. */
const coolStages: Partial<Board> = {
	powerDelivery: { coreStages: 10, stageKind: "integrated", stageRatingA: 60, thermalResistanceKPerW: 1 },
};

/** A board that scores by its aids alone: 0 is worth nothing, 1 60, 2 90, 3 100 points. */
const withAids = (aids: 0 | 1 | 2 | 3, minor: number | null, facts: Partial<Board> = {}): Partial<Board> => {
	const { price: _, ...unpriced } = goodBoard;
	return {
		...unpriced,
		...coolStages,
		...(minor === null ? {} : { price: { minor, currency: "EUR" } }),
		recovery: {
			flashWithoutProcessor: aids >= 1,
			faultDisplay: aids >= 2 ? "digits" : "none",
			resetAtBack: aids >= 3,
			backPlateFixed: false,
			secondFirmware: false,
		},
		m2WithoutTools: 0,
		...facts,
	};
};
const aidsOnly: GivenBuild["importance"] = { ...countingOnly("rescue"), rescue: "a-lot" };
const { priceCap: _, ...uncapped } = goodBuild;
const build: GivenBuild = { ...uncapped, importance: aidsOnly };

/** A board with all three aids, and so many sockets at the back for five things to plug in. */
const withSockets = (count: number, minor: number, facts: Partial<Board> = {}) =>
	withAids(3, minor, { rearUsb: [{ plug: "A", count }], ...facts });
/** Of two criteria the first weighs 3/4, the other 1/4: 9 sockets make 100 points, 8 98.75, 7 97.5, 5 87.5. */
const aidsThenSockets: GivenBuild = {
	...uncapped,
	rearDevices: 5,
	routerGbps: 0,
	importance: { ...countingOnly("rescue", "connections"), rescue: "a-lot", connections: "a-little" },
};
/** The last of four criteria weighs 3/48. What weighs more is worth all here: 8 sockets make 99.6875, 7 99.375. */
const socketsLast: GivenBuild = {
	...uncapped,
	rearDevices: 5,
	routerGbps: 0,
	yearsKept: 5,
	importance: {
		...countingOnly("rescue", "quiet", "backing", "connections"),
		rescue: "a-lot",
		quiet: "somewhat",
		backing: "somewhat",
		connections: "a-little",
	},
};
const bestElsewhere: Partial<Board> = {
	chipsetFan: false,
	headers: { fans: [{ name: "FAN_1", use: "case", control: ["4-pin PWM", "3-pin voltage"] }] },
	warrantyYears: 5,
	listsPublished: { processors: true, memory: true },
};

const adviceFor = (boards: readonly Partial<Board>[], given: Parameters<typeof buildOf> = [build]): Advice =>
	advise(judge(smallMarket(boards), buildOf(...given)), {});
const roles = ({ shortlist }: Advice) => shortlist.map(({ boardId, role }) => [boardId, role]);
const order = ({ ranking }: Advice) => ranking.map(({ boardId }) => boardId);

describe("roles", () => {
	test("best match, lowest price, then the next best", () => {
		const advice = adviceFor([withAids(1, 9000), withAids(3, 20_000), withAids(2, 15_000), withAids(0, 12_000)]);
		expect(roles(advice)).toEqual([
			["board-2", "best-match"],
			["board-1", "lowest-price"],
			["board-3", "step-between"],
		]);
	});

	test("the step between is the one worth most beside the line from the cheapest to the best", () => {
		// 0 points for 90, 60 for 130, 90 for 140, 100 for 200: from 90 to 200 the line gives 36 and 45 there.
		const steps = [withAids(0, 9000), withAids(1, 13_000), withAids(2, 14_000), withAids(3, 20_000)];
		expect(roles(adviceFor(steps))).toEqual([
			["board-4", "best-match"],
			["board-1", "lowest-price"],
			["board-3", "step-between"],
			["board-2", "also-good"],
		]);
	});

	test("the board with more places left than the others is named for it, or it is said of the one named already", () => {
		const places = (count: number): Partial<Board> => ({
			cardSlots: [],
			drivePorts: [],
			m2Sockets: Array.from({ length: count }, (_, index) => ({ name: `M2_${index + 1}`, lengthsMm: [80] })),
		});
		const [roomy, sparse] = [places(4), places(1)];
		const boards = [withAids(3, 20_000, sparse), withAids(1, 9000, sparse), withAids(2, 15_000, sparse)];
		expect(roles(adviceFor([...boards, withAids(2, 19_000, roomy)]))).toContainEqual(["board-4", "most-room"]);
		const [best] = adviceFor([withAids(3, 20_000, roomy), ...boards.slice(1)]).shortlist;
		expect(best).toMatchObject({ boardId: "board-1", role: "best-match", also: ["most-room"] });
		// Where most have as many there is nothing to name one for.
		const alike = adviceFor(boards).shortlist.flatMap(({ role, also }) => [role, ...also]);
		expect(alike).not.toContain("most-room");
	});

	test("a best match that costs least is said to", () => {
		const [best] = adviceFor([withAids(3, 9000), withAids(2, 20_000)]).shortlist;
		expect(best).toMatchObject({ role: "best-match", also: ["lowest-price"] });
	});

	test("one that costs more and is worth less stands nowhere", () => {
		const advice = adviceFor([withAids(3, 9000), withAids(1, 20_000)]);
		expect(roles(advice)).toEqual([["board-1", "best-match"]]);
		expect(order(advice)).toEqual(["board-1", "board-2"]);
	});

	test("a best match that is the cheapest too stands there once", () => {
		expect(roles(adviceFor([withAids(2, 9000), withAids(3, 20_000), withAids(3, 9000)]))).toEqual([
			["board-3", "best-match"],
			["board-2", "also-good"],
		]);
	});

	test("one that would be better, if what is not known turns out well, is to be checked first", () => {
		const { supportList: __, ...unlisted } = withAids(3, 9000) as Board;
		const advice = adviceFor([unlisted, withAids(1, 12_000), withAids(2, 15_000)]);
		expect(roles(advice)).toEqual([
			["board-3", "best-match"],
			["board-2", "lowest-price"],
			["board-1", "check-first"],
		]);
		expect(advice.shortlist[2]).toMatchObject({ verdict: "cannot-tell", ways: { fit: 1, all: 1 } });
	});

	test("one of which it is not known whether it fits fills a short list, last", () => {
		const { supportList: __, ...unlisted } = withAids(1, 9000) as Board;
		expect(roles(adviceFor([unlisted, withAids(2, 15_000)]))).toEqual([
			["board-2", "best-match"],
			["board-1", "check-first"],
		]);
	});

	test("where none is known to fit, all that are left are compared", () => {
		const unlisted = ([1, 3] as const).map((aids) => {
			const { supportList: __, ...rest } = withAids(aids, 10_000 * aids) as Board;
			return rest;
		});
		expect(roles(adviceFor(unlisted))).toEqual([
			["board-2", "best-match"],
			["board-1", "lowest-price"],
		]);
	});

	test("where none is known to fit, those lead that only the person's own answers decide", () => {
		const { supportList: __, ...unlisted } = withAids(3, 9000, { form: "Mini-ITX" }) as Board;
		const open = { ...build, case: "unknown" as const };
		const ways = {
			small: { case: { boardForms: ["Mini-ITX" as const], frontPlugs: [] } },
			large: { case: { boardForms: ["ATX" as const], frontPlugs: [] } },
		};
		const advice = adviceFor([unlisted, withAids(2, 15_000)], [open, ways]);
		expect(advice.counts).toMatchObject({ fits: 0, cannotTell: 2 });
		expect(order(advice)).toEqual(["board-1", "board-2"]);
		expect(roles(advice)).toEqual([
			["board-2", "best-match"],
			["board-1", "check-first"],
		]);
	});

	test("a part nobody has settled is missing for every board alike, and keeps none from the lead", () => {
		const { supportList: __, ...unlisted } = withAids(3, 9000) as Board;
		const advice = adviceFor([unlisted, withAids(2, 15_000)], [{ ...build, cooler: "unknown" }]);
		expect(advice.counts).toMatchObject({ fits: 0, cannotTell: 2 });
		expect(roles(advice)).toEqual([
			["board-2", "best-match"],
			["board-1", "check-first"],
		]);
	});

	test("at most five", () => {
		const many = Array.from({ length: 9 }, (_, index) => withAids(2, 10_000 + index));
		const advice = adviceFor(many);
		expect(advice.shortlist).toHaveLength(5);
		expect(advice.ranking).toHaveLength(9);
		expect(advice.shortlist.map(({ boardId }) => boardId)).toEqual(order(advice).slice(0, 5));
	});

	test("nothing left", () => {
		const advice = adviceFor([withAids(3, 9000, { socket: "Harbour 2" })]);
		expect(advice).toMatchObject({
			shortlist: [],
			ranking: [],
			waysOut: [{ giveUp: ["fit/socket"], boardIds: ["board-1"] }],
		});
	});

	test("the lowest price is found though the best match has none", () => {
		expect(roles(adviceFor([withAids(3, null), withAids(1, 9000), withAids(2, 15_000)]))).toEqual([
			["board-1", "best-match"],
			["board-2", "lowest-price"],
			["board-3", "also-good"],
		]);
	});

	test("prices in another currency are not compared", () => {
		const dear = withAids(3, 15_000);
		for (const minor of [9000, 20_000])
			expect(roles(adviceFor([withAids(2, null, { price: { minor, currency: "JPY" } }), dear]))).toEqual([
				["board-2", "best-match"],
				["board-1", "also-good"],
			]);
	});
});

describe("how sure", () => {
	test("shares sum to 1 among the boards compared; one that never leads says so", () => {
		const { shortlist, lead } = adviceFor([withAids(3, 20_000), withAids(1, 9000), withAids(2, 15_000)]);
		expect(shortlist.map(({ firstShare, canLead }) => [firstShare, canLead])).toEqual([
			[1, true],
			[0, false],
			[0, false],
		]);
		expect(lead).toMatchObject({
			boardId: "board-1",
			anyOf: [],
			nearest: { sureness: "clearly", ahead: { share: 1 } },
		});
	});

	test("a board of which it is not known whether it fits is not compared", () => {
		const { supportList: __, ...unlisted } = withAids(3, 9000) as Board;
		const entries = adviceFor([unlisted, withAids(2, 15_000)]).shortlist;
		expect(entries.find(({ role }) => role === "check-first")).toMatchObject({ firstShare: null, canLead: null });
	});

	test("an unknown fact leaves a share to the board that lacks it", () => {
		const { recovery: __, ...silent } = withAids(0, 9000) as Board;
		// Anything from nothing to 100 points, against 90: ahead in one of ten on a scale without corners; here in fewer.
		const { shortlist } = adviceFor([silent, withAids(2, 15_000)]);
		const share = (id: string) => shortlist.find(({ boardId }) => boardId === id)?.firstShare ?? 0;
		expect(share("board-1")).toBeGreaterThan(0);
		expect(share("board-1")).toBeLessThan(0.2);
		expect(share("board-1") + share("board-2")).toBeCloseTo(1, 9);
	});

	test("nothing left, nothing that leads", () => {
		expect(adviceFor([withAids(3, 9000, { socket: "Harbour 2" })]).lead).toBeNull();
	});
});

describe("boards of one score", () => {
	test("the cheaper comes first, one without a price last", () => {
		expect(order(adviceFor([withAids(2, 15_000), withAids(2, null), withAids(2, 14_999)]))).toEqual([
			"board-3",
			"board-1",
			"board-2",
		]);
	});

	test("of one price: by name", () => {
		const named = (name: string) => withAids(2, 15_000, { name });
		expect(order(adviceFor([named("Polka"), named("Jig"), named("Mazurka")]))).toEqual([
			"board-2",
			"board-3",
			"board-1",
		]);
	});

	test("of one name too: by id, never by the order given", () => {
		const twins = ["twin-b", "twin-a"].map((id) => withAids(2, 15_000, { id, name: "Twin" }));
		expect(order(adviceFor(twins))).toEqual(["twin-a", "twin-b"]);
		expect(order(adviceFor(twins.reverse()))).toEqual(["twin-a", "twin-b"]);
	});

	test("a score is compared in whole points: a third of a point is not worth money", () => {
		const board = (count: number, minor: number) => withSockets(count, minor, bestElsewhere);
		const exact = adviceFor([board(9, 9000), board(8, 9000), board(7, 9000)], [socketsLast]).ranking;
		for (const [at, points] of [100, 99.6875, 99.375].entries()) expect(exact[at]?.score.mid).toBeCloseTo(points, 9);
		// 99 points against 100, though 0.3125 apart.
		expect(order(adviceFor([board(7, 9000), board(8, 20_000)], [socketsLast]))).toEqual(["board-2", "board-1"]);
		// 100 against 100, though 0.3125 apart.
		expect(order(adviceFor([board(9, 20_000), board(8, 19_999)], [socketsLast]))).toEqual(["board-2", "board-1"]);
		// As good as each other.
		expect(order(adviceFor([board(10, 20_000), board(9, 19_999)], [socketsLast]))).toEqual(["board-2", "board-1"]);
	});

	test("within two points the cheapest is the best match, though the ranking goes by points", () => {
		// 100 and 98.75 points.
		const advice = adviceFor([withSockets(9, 20_000), withSockets(8, 15_000)], [aidsThenSockets]);
		expect(order(advice)).toEqual(["board-1", "board-2"]);
		expect(roles(advice)).toEqual([
			["board-2", "best-match"],
			["board-1", "also-good"],
		]);
	});

	test("of two that cost the same the one that can go back longer", () => {
		const offered = (returnableUntil: string): Partial<Board> => ({
			offers: [{ price: { minor: 15_000, currency: "EUR" }, seenOn: "2026-11-20", condition: "new", returnableUntil }],
		});
		const boards = [withAids(2, 15_000, offered("2026-12-01")), withAids(2, 15_000, offered("2027-01-31"))];
		expect(order(adviceFor(boards))).toEqual(["board-2", "board-1"]);
	});

	test("too close to call: each says any of which", () => {
		const { shortlist, lead } = adviceFor([withSockets(9, 20_000), withSockets(8, 15_000)], [aidsThenSockets]);
		expect(shortlist.map(({ anyOf }) => anyOf)).toEqual([
			["board-2", "board-1"],
			["board-2", "board-1"],
		]);
		expect(lead).toMatchObject({ boardId: "board-2", anyOf: ["board-2", "board-1"] });
	});

	test("beyond two points it is not", () => {
		// 100 and 97.5 points.
		expect(roles(adviceFor([withSockets(9, 20_000), withSockets(7, 15_000)], [aidsThenSockets]))).toEqual([
			["board-1", "best-match"],
			["board-2", "lowest-price"],
		]);
	});

	test("one without a price is beaten by none", () => {
		expect(roles(adviceFor([withAids(3, 9000), withAids(1, null)]))).toEqual([
			["board-1", "best-match"],
			["board-2", "also-good"],
		]);
	});
});

describe("a board that fits only if an open answer turns out well", () => {
	const ways = {
		small: { case: { boardForms: ["Mini-ITX" as const], frontPlugs: [] } },
		large: { case: { boardForms: ["ATX" as const], frontPlugs: [] } },
	};
	const open = { ...build, case: "unknown" as const };

	test("counts with what to expect: nothing where it does not fit", () => {
		// 100 points in one way of two are 50; 60 points in both are 60.
		const advice = adviceFor([withAids(3, 9000), withAids(1, 15_000, { form: "Mini-ITX" })], [open, ways]);
		expect(order(advice)).toEqual(["board-2", "board-1"]);
		expect(advice.ranking.map(({ score }) => Math.round(score.mid))).toEqual([60, 100]);
	});

	test("says in how many ways, on which question it hangs, and which answers suit it", () => {
		const [entry] = adviceFor([withAids(3, 9000)], [open, ways]).shortlist;
		expect(entry).toMatchObject({
			verdict: "cannot-tell",
			ways: { fit: 1, all: 2 },
			dependsOn: ["question/1"],
			unknown: [{ kind: "depends", depending: { ruleId: "fit/board-form", fitsWith: ["large"], notWith: ["small"] } }],
		});
	});
});

const noAids: NonNullable<Board["recovery"]> = {
	flashWithoutProcessor: false,
	faultDisplay: "none",
	resetAtBack: false,
	backPlateFixed: false,
	secondFirmware: false,
};

describe("reasons", () => {
	const entry = (facts: Partial<Board>, given = build): ShortlistEntry => {
		const [first] = adviceFor([withAids(3, 9000, facts)], [given]).shortlist;
		if (!first) throw new Error("the board does not fit");
		return first;
	};
	const kinds = (reasons: ShortlistEntry["for"]) =>
		reasons.map((reason) =>
			reason.kind === "criterion"
				? reason.part.criterionId
				: reason.kind === "finding"
					? reason.finding.messageId
					: reason.kind,
		);

	test("what is good speaks for it, what is weak against it, what lies between is not said", () => {
		const all = {
			...build,
			rearDevices: 5,
			routerGbps: 0,
			yearsKept: 5,
			importance: {
				...countingOnly("backing", "connections", "rescue"),
				backing: "a-lot",
				connections: "somewhat",
				rescue: "a-little",
			} as const,
		};
		// A warranty for all five years is worth 1, 7 sockets for 5 things 0.9, no aid nothing.
		const strong = entry(
			{
				warrantyYears: 5,
				listsPublished: { processors: true, memory: true },
				rearUsb: [{ plug: "A", count: 7 }],
				recovery: noAids,
			},
			all,
		);
		expect(kinds(strong.for)).toEqual(["backing", "connections"]);
		expect(kinds(strong.against)).toEqual(["rescue"]);
		expect(strong.unknown).toEqual([]);
		// Three years of warranty and both lists are worth 0.76, 6 sockets for 5 things 0.7.
		const middling = entry({ warrantyYears: 3, listsPublished: { processors: true, memory: true } }, all);
		expect(kinds(middling.for)).toEqual(["rescue"]);
		expect(kinds(middling.against)).toEqual([]);
	});

	test("cautions speak against it, before what is weak", () => {
		const cautioned = entry({
			form: "microATX",
			recovery: noAids,
		});
		expect(kinds(cautioned.against)).toEqual(["bareHoles", "rescue"]);
	});

	test("a caution that holds only if an open answer turns out so is not held against it", () => {
		const inCase = (form: "ATX" | "microATX") => ({
			case: { boardForms: [form], standoffs: [...(holesOfForm(form)?.letters ?? [])], frontPlugs: [] },
		});
		const board = withAids(3, 9000, { form: "microATX" });
		const open = { ...build, case: "unknown" as const };
		const [fitsAnyway] = adviceFor([board], [open, { large: inCase("ATX"), small: inCase("microATX") }]).shortlist;
		expect(fitsAnyway).toMatchObject({ verdict: "fits", against: [] });
		expect(fitsAnyway?.unknown).toMatchObject([
			{ kind: "finding", finding: { messageId: "bareHoles" }, certain: false },
		]);
		const [always] = adviceFor([board], [open, { large: inCase("ATX") }]).shortlist;
		expect(always?.against).toMatchObject([{ kind: "finding", finding: { messageId: "bareHoles" }, certain: true }]);
		expect(always?.unknown).toEqual([]);
	});

	test("what is good on a guess about the board is not said in its favour", () => {
		// Boards have 4 to 10 sockets; with nothing to plug in any number is worth all.
		const { rearUsb: __, ...silent } = withAids(0, 9000) as Board;
		const sockets = {
			...build,
			rearDevices: 0,
			routerGbps: 0,
			importance: { ...aidsOnly, connections: "a-lot" as const },
		};
		const [guessed] = adviceFor([silent], [sockets]).shortlist;
		expect(guessed?.score.parts.find(({ criterionId }) => criterionId === "connections")?.value.low).toBe(1);
		expect(kinds(guessed?.for ?? [])).not.toContain("connections");
		expect(kinds(entry({ recovery: {} }, sockets).for)).toEqual(["connections"]);
	});

	test("what is not known and could change its place", () => {
		const unsure = entry({ recovery: {} });
		expect(kinds(unsure.for)).toEqual([]);
		expect(kinds(unsure.against)).toEqual([]);
		expect(kinds(unsure.unknown)).toEqual(["rescue"]);
		expect(unsure.score).toMatchObject({ low: 0, mid: 50, high: 100 });
	});

	test("what nothing published tells of the stages speaks neither for a board nor against it", () => {
		const heatOnly: GivenBuild = {
			...build,
			importance: { ...countingOnly("steady-power"), "steady-power": "a-lot" },
		};
		const unsure = entry({ powerDelivery: {} }, heatOnly);
		expect(kinds(unsure.for)).toEqual([]);
		expect(kinds(unsure.against)).toEqual([]);
		// The rule on power and heat lacks the same facts, and is not named beside it.
		expect(kinds(unsure.unknown)).toEqual(["steady-power"]);
		expect(unsure.score).toMatchObject({ low: 0, mid: 50, high: 100 });
	});

	test("facts that a rule needs which can stop the board stand alone, those of all others on one line", () => {
		const { supportList: __, rearUsb: ___, headers: ____, ...silent } = withAids(3, 9000) as Board;
		const asked: GivenBuild = {
			...build,
			caseFans: 3,
			lights: ["5 V three-pin"],
			wishes: { ...build.wishes, "features/rear-usb-c": "must" },
		};
		const [unsure] = adviceFor([silent], [asked]).shortlist;
		expect(unsure?.verdict).toBe("cannot-tell");
		expect(unsure?.unknown).toMatchObject([
			{ kind: "finding", finding: { ruleId: "fit/generation", verdict: "cannot-tell" }, certain: true },
			{ kind: "finding", finding: { ruleId: "features/rear-usb-c", verdict: "cannot-tell" }, certain: true },
			{
				kind: "also-unknown",
				ruleIds: ["fit/cooler-headers", "features/case-fans", "features/fan-control", "features/lighting"],
			},
		]);
	});

	test("a criterion in words", () => {
		const [reason] = entry({}).for;
		expect(reason?.kind === "criterion" && criterionWords(reason.part)).toBe(
			"it has all 3 aids for a first start that goes wrong",
		);
		expect(reason?.kind === "criterion" && criterionWords({ ...reason.part, criterionId: "gone" })).toBe("gone");
	});
});

test("counts, findings about the build and the next question come along", () => {
	const judgement = judge(
		smallMarket([goodBoard]),
		buildOf({ ...goodBuild, graphicsCard: { lengthMm: 400 }, case: { boardForms: ["ATX"], cardMaxLengthMm: 300 } }),
	);
	const advice = advise(judgement, { "about/walk-length": notSure });
	expect(advice.counts).toBe(judgement.counts);
	expect(advice.buildFindings).toBe(judgement.buildFindings);
	expect(advice.buildFindings).toHaveLength(1);
	expect(advice.nextQuestion).toBe(allQuestions[1]?.id);
	expect(advice.waysOut).toEqual([]);
});

test("a board that is no better in anything and no cheaper never comes before the other", () => {
	const quality = fc.record({
		stages: fc.integer({ min: 2, max: 20 }),
		warranty: fc.integer({ min: 0, max: 6 }),
		sockets: fc.integer({ min: 0, max: 12 }),
		aids: fc.constantFrom(0 as const, 1 as const, 2 as const, 3 as const),
		minor: fc.integer({ min: 5000, max: 30_000 }),
	});
	const drops = {
		stages: fc.nat({ max: 3 }),
		warranty: fc.nat({ max: 3 }),
		sockets: fc.nat({ max: 3 }),
		aids: fc.nat({ max: 3 }),
		minor: fc.constantFrom(0, 0, 1, 4000),
	};
	const tier = fc.constantFrom<ImportanceTier>(...importanceTiers);
	const differIn = ["steady-power", "connections", "rescue", "backing"] as const;
	const importance = fc.record(
		{ "steady-power": tier, connections: tier, rescue: tier, backing: tier },
		{ requiredKeys: [] },
	);
	const of = ({ stages, warranty, sockets, aids, minor }: Readonly<Record<keyof typeof drops, number>>, name: string) =>
		withAids(aids as 0, minor, {
			name,
			powerDelivery: { coreStages: stages },
			warrantyYears: warranty,
			rearUsb: [{ plug: "A", count: sockets }],
		});
	fc.assert(
		fc.property(quality, fc.record(drops), importance, fc.boolean(), (better, less, tiers, isFirst) => {
			const worse = {
				stages: Math.max(1, better.stages - less.stages),
				warranty: Math.max(0, better.warranty - less.warranty),
				sockets: Math.max(0, better.sockets - less.sockets),
				aids: Math.max(0, better.aids - less.aids),
				minor: better.minor + less.minor,
			};
			// The name is the last to decide: it speaks for the worse one.
			const boards = [of(better, "Z"), of(worse, "A")];
			const given = {
				...build,
				processor: { ...(uncapped.processor as object), sustainedW: 150 },
				rearDevices: 5,
				yearsKept: 5,
				importance: { ...countingOnly(...differIn), ...tiers },
			};
			const { ranking, shortlist } = adviceFor(isFirst ? boards : boards.reverse(), [given]);
			const scores = ranking.map(({ score }) => score.mid);
			const isTied = scores[0] === scores[1] && less.minor === 0;
			const betterId = isFirst ? "board-1" : "board-2";
			for (const first of [ranking[0], shortlist[0]]) expect(first?.boardId === betterId || isTied).toBe(true);
		}),
		{ numRuns: 300 },
	);
});

test("full speed is told as a plus only where nothing runs slower, however little", () => {
	const entries = scenarios.flatMap(({ state }) => {
		const judgement = judge(wholeDemo, foldAnswers(state.answers, { market: wholeDemo, asOf: demo.asOf }));
		return advise(judgement, state.answers).shortlist;
	});
	const isOfSpeed = ({ criterionId }: { criterionId: string }) => criterionId === "full-speed";
	const nearly = entries.filter(({ score }) =>
		score.parts.some((part) => isOfSpeed(part) && part.value.low >= 0.9 && part.value.low < 1 - 1e-6),
	);
	expect(nearly.length).toBeGreaterThan(0);
	for (const { for: plus } of nearly)
		expect(plus.filter((reason) => reason.kind === "criterion" && isOfSpeed(reason.part))).toEqual([]);
});
