import { describe, expect, test } from "vitest";
import { informationGain, worthOfAsking, worthOfKnowingAll } from "../../src/maths/information-value.ts";

// Formulas: expected value of (perfect) information, Raiffa, "Decision Analysis", 1968; information gain, Quinlan,
// "Induction of decision trees", 1986 (both from memory). Sources of the examples stand beside them.

describe("which of two criteria matters more, for (1, 0), (0, 1) and (.6, .6) under all weights (worked out exactly)", () => {
	// The first weight is even on [0, 1]. The first leads from .6 on, the second up to .4, the third between. The answer
	// tells on which half the weight lies; over that half it averages .25 or .75.
	const values = [
		[0.75, 0.25, 0.6],
		[0.25, 0.75, 0.6],
	];
	const leads = [
		[0.4, 0, 0.1],
		[0, 0.4, 0.1],
	];

	test("the answer tells 0.8 bits; 0.6 where one in four is not sure", () => {
		expect(informationGain(leads)).toBeCloseTo(0.8, 9);
		expect(informationGain(leads, 0.75)).toBeCloseTo(0.6, 9);
	});

	test("it is worth 0.15; 0.1125 where one in four is not sure", () => {
		const asked = worthOfAsking([0.5, 0.5], values);
		expect(asked.leader).toBe(2);
		expect(asked.leaderAfter).toEqual([0, 1]);
		expect(asked.worth).toBeCloseTo(0.15, 9);
		expect(worthOfAsking([0.5, 0.5], values, 0.75).worth).toBeCloseTo(0.1125, 9);
	});

	test("knowing the weight is worth 0.16, of which the question gets 94 of 100", () => {
		const steps = 10_000;
		const samples = Array.from({ length: steps }, (_, step) => {
			const weight = (step + 0.5) / steps;
			return [weight, 1 - weight, 0.6];
		});
		// The greatest of the three is straight between the turns at .4 and .6, where slices end, so the sum is exact.
		expect(worthOfKnowingAll(samples)).toBeCloseTo(0.16, 9);
		expect(Math.round((100 * worthOfAsking([0.5, 0.5], values).worth) / worthOfKnowingAll(samples))).toBe(94);
	});
});

test("entropy chases what is worth little: (.50, .52) and (.52, .50), 1 bit, worth 0.005 (worked out exactly)", () => {
	// With weight w of the first criterion: .52 - .02 w and .50 + .02 w; over the halves w averages .25 and .75.
	const values = [0.25, 0.75].map((weight) => [0.52 - 0.02 * weight, 0.5 + 0.02 * weight]);
	expect(worthOfAsking([0.5, 0.5], values).worth).toBeCloseTo(0.005, 9);
	expect(
		informationGain([
			[0.5, 0],
			[0, 0.5],
		]),
	).toBeCloseTo(1, 9);
});

test("a question that parts {1, 2} from {3, 4} with chances .4, .3, .2, .1: 0.88129 bits, 0.61690 with .3 not sure (worked out)", () => {
	const table = [
		[0.4, 0.3, 0, 0],
		[0, 0, 0.2, 0.1],
	];
	expect(informationGain(table)).toBeCloseTo(0.88129, 5);
	expect(informationGain(table, 0.7)).toBeCloseTo(0.6169, 5);
});

// The table of Quinlan, "Induction of decision trees", Machine Learning 1, 1986, as printed in course notes on decision
// trees (University of Vermont, CS 2510), read in the document; gains as printed elsewhere for the same table.
describe("weather of fourteen days (Quinlan 1986; table and gains read in secondary texts)", () => {
	const days = [
		["sunny", "hot", "high", "weak", "no"],
		["sunny", "hot", "high", "strong", "no"],
		["overcast", "hot", "high", "weak", "yes"],
		["rain", "mild", "high", "weak", "yes"],
		["rain", "cool", "normal", "weak", "yes"],
		["rain", "cool", "normal", "strong", "no"],
		["overcast", "cool", "normal", "strong", "yes"],
		["sunny", "mild", "high", "weak", "no"],
		["sunny", "cool", "normal", "weak", "yes"],
		["rain", "mild", "normal", "weak", "yes"],
		["sunny", "mild", "normal", "strong", "yes"],
		["overcast", "mild", "high", "strong", "yes"],
		["overcast", "hot", "normal", "weak", "yes"],
		["rain", "mild", "high", "strong", "no"],
	] as const;

	function tableOf(keys: readonly string[]): number[][] {
		return [...new Set(keys)].map((key) =>
			["yes", "no"].map((outcome) => days.filter((day, index) => keys[index] === key && day[4] === outcome).length),
		);
	}

	test.each<[string, 0 | 1 | 2 | 3, number]>([
		["outlook", 0, 0.2467],
		["temperature", 1, 0.0292],
		["humidity", 2, 0.1518],
		["wind", 3, 0.0481],
	])("%s", (_, column, printed) => {
		expect(Math.abs(informationGain(tableOf(days.map((day) => day[column]))) - printed)).toBeLessThan(0.00005);
	});

	test("to know the day itself tells all there is, 0.940", () => {
		expect(informationGain(tableOf(days.map((_, index) => String(index))))).toBeCloseTo(0.940286, 6);
	});
});

describe("three options in three states (expected value of perfect information, example of a textbook; read in the document)", () => {
	const states = [
		[1500, 900, 500],
		[300, 600, 500],
		[-800, -200, 500],
	];

	test("680 without, 1030 with perfect information: 350", () => {
		const asked = worthOfAsking([0.5, 0.3, 0.2], states);
		expect(asked.leader).toBe(0);
		expect(asked.leaderAfter).toEqual([0, 1, 2]);
		expect(asked.worth).toBeCloseTo(350, 9);
	});
});

test("salads: supply of 40, 50, 60 or 70 against demand .1, .2, .4, .3 (Kaplan, maximax, maximin and minimax regret; inputs read in the document, result worked out): 118 - 90 = 28", () => {
	const byDemand = [
		[80, 0, -80, -160],
		[80, 100, 20, -60],
		[80, 100, 120, 40],
		[80, 100, 120, 140],
	];
	const asked = worthOfAsking([0.1, 0.2, 0.4, 0.3], byDemand);
	expect(asked.leader).toBe(1);
	expect(asked.worth).toBeCloseTo(28, 9);
	// The same chances as ten days that are as likely.
	const days = [0, 1, 1, 2, 2, 2, 2, 3, 3, 3].map((demand) => byDemand[demand] as number[]);
	expect(worthOfKnowingAll(days)).toBeCloseTo(28, 9);
});
