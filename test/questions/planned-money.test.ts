import { describe, expect, test } from "vitest";
import type { Answers } from "../../src/parts/answers-file.ts";
import { withPlannedMoney } from "../../src/questions/planned-money.ts";
import { buildFacts, type GivenBuild } from "../rules/rule-subject.ts";

const eur = (minor: number) => ({ minor, currency: "EUR" });
const parts: GivenBuild = {
	moneyInAll: eur(90_000),
	processor: { price: eur(20_000) },
	case: { price: eur(8000) },
	memory: {},
	drives: [{ id: "stick", name: "Stick", price: eur(5000) }],
	addInCards: [{ id: "fiddle", name: "Fiddle", price: eur(1000) }],
};
const planned = (more: GivenBuild = {}, answers: Answers = {}) =>
	withPlannedMoney(buildFacts({ ...parts, ...more }), answers).moneyPlanned;
const told: Answers = { "fit/bought": { status: "answered", value: [] } };

describe("what the parts that were picked still cost", () => {
	test("is the sum of the known prices", () => {
		expect(planned()).toEqual(eur(34_000));
	});

	test("leaves out lists that are paid for", () => {
		expect(planned({ boughtLists: ["drives"] }, told)).toEqual(eur(29_000));
		expect(planned({ boughtLists: ["drives", "addInCards"] }, told)).toEqual(eur(28_000));
	});

	test("leaves out parts that are bought, for good or not", () => {
		const facts = buildFacts(parts);
		for (const ownership of ["bought", "returnable"] as const) {
			const owned = { ...facts, processor: { ...facts.processor, ownership } as typeof facts.processor };
			expect(withPlannedMoney(owned, told).moneyPlanned).toEqual(eur(14_000));
		}
	});

	test("counts only the currency of the money there is", () => {
		expect(planned({ processor: { price: { minor: 20_000, currency: "USD" } } })).toEqual(eur(14_000));
	});

	test("is unknown where nobody has said how much there is, or where it comes to nothing", () => {
		const { moneyInAll: _, ...without } = parts;
		expect(withPlannedMoney(buildFacts(without), {}).moneyPlanned).toBeNull();
		expect(withPlannedMoney(buildFacts({ moneyInAll: eur(90_000) }), {}).moneyPlanned).toBeNull();
	});

	test("is not counted where something is spent and nobody has said on what: it could count twice", () => {
		expect(planned({ moneySpent: eur(20_000) })).toBeNull();
		expect(planned({ moneySpent: eur(20_000) }, { "fit/bought": { status: "not-sure" } })).toBeNull();
		expect(planned({ moneySpent: eur(20_000) }, told)).toEqual(eur(34_000));
		expect(planned({ moneySpent: eur(0) })).toEqual(eur(34_000));
	});
});
