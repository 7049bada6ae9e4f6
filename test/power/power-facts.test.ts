import { describe, expect, test } from "vitest";
import { type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
import { powerFactsAround, powerFactsOf, powerOfBuild } from "../../src/power/power-facts.ts";
import { steadyPowerOf } from "../../src/power/steady-power.ts";
import { factsThatNarrow } from "../../src/power/what-narrows.ts";

const processor = {
	state: "have",
	ownership: "planned",
	part: { id: "a-processor", name: "A processor", baseW: 65, peakW: 120, limitPolicy: "timed-boost" },
} as const satisfies BuildFacts["processor"];
const pcCase = {
	state: "have",
	ownership: "bought",
	part: { id: "a-case", name: "A case", frontOpen: "mesh" },
} as const satisfies BuildFacts["case"];
const cooler = (kind: "air" | "liquid") =>
	({ state: "have", ownership: "bought", part: { id: "a-cooler", name: "A cooler", kind } }) as const;

describe("what power sees of a build", () => {
	test("is nothing where nothing is known", () => {
		const { use, air } = powerOfBuild(emptyBuildFacts);
		for (const value of Object.values({ ...use, raisesClock: undefined, ...air })) expect(value).toBeUndefined();
		expect(use.raisesClock).toBe(false);
	});

	test("is the processor, its use, the room, the case and what moves the air", () => {
		const facts: BuildFacts = {
			...emptyBuildFacts,
			processor,
			case: pcCase,
			cooler: cooler("liquid"),
			summerRoom: "fan-on",
			caseFans: 3,
			activities: ["games"],
			sessionLength: "an-hour",
		};
		expect(powerOfBuild(facts)).toEqual({
			use: {
				baseW: 65,
				peakW: 120,
				limitPolicy: "timed-boost",
				sustainedW: undefined,
				averagingS: undefined,
				activities: ["games"],
				sessionLength: "an-hour",
				raisesClock: false,
			},
			air: { summerRoom: "fan-on", frontOpen: "mesh", coolerKind: "liquid", caseFans: 3 },
		});
	});

	test.each<[BuildFacts["cooler"], "air" | "liquid" | undefined]>([
		[cooler("air"), "air"],
		[cooler("liquid"), "liquid"],
		// None of one's own: the cooler that comes with the processor has a fan.
		[{ state: "none" }, "air"],
		[{ state: "open" }, undefined],
		[{ state: "unknown" }, undefined],
	])("cooler %o blows as %s", (state, coolerKind) => {
		expect(powerOfBuild({ ...emptyBuildFacts, cooler: state }).air.coolerKind).toBe(coolerKind);
	});

	test("a case that is still open tells nothing of its front; no fan is a fact, not silence", () => {
		expect(powerOfBuild({ ...emptyBuildFacts, case: { state: "open" } }).air.frontOpen).toBeUndefined();
		expect(powerOfBuild({ ...emptyBuildFacts, caseFans: 0 }).air.caseFans).toBe(0);
	});
});

describe("power facts", () => {
	const facts = { ...emptyBuildFacts, processor };
	const board = { id: "a-board", name: "A board", powerDelivery: { coreStages: 8, heatSink: "one side" } } as const;

	test("are none where nothing is known of the watts, whatever the board", () => {
		expect(powerFactsOf(board, emptyBuildFacts)).toEqual({ steady: undefined, narrowing: [] });
	});

	test("are those of the board in the build, with what would narrow them", () => {
		const { steady, narrowing } = powerFactsOf(board, facts);
		const inputs = { delivery: board.powerDelivery, ...powerOfBuild(facts) };
		const expected = steadyPowerOf(inputs);
		if (!expected) throw new Error("The watts of the processor are known here.");
		expect(steady?.hotSpotC).toEqual(expected.hotSpotC);
		expect(narrowing).toEqual(factsThatNarrow(inputs, expected));
		expect(narrowing?.length).toBeGreaterThan(2);
	});

	test("are told of a board that tells nothing of its stages, as wide as can be", () => {
		const silent = powerFactsOf({ id: "a-board", name: "A board" }, facts);
		expect(silent.steady?.hotSpotC).toEqual(powerFactsAround({}, powerOfBuild(facts)).steady?.hotSpotC);
		const told = powerFactsOf(board, facts);
		expect(silent.steady?.hotSpotC.low).toBeLessThan(told.steady?.hotSpotC.low ?? 0);
	});

	test("are worked out once and kept", () => {
		const power = powerFactsOf(board, facts);
		expect(power.narrowing).toBe(power.narrowing);
		expect(power.steady).toBe(power.steady);
	});
});
