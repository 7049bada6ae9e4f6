import { expect, test } from "vitest";
import { partPrice } from "../../src/parts/part-price.ts";

const eur = (minor: number) => ({ minor, currency: "EUR" });

test("a price that is noted counts, whatever is offered", () => {
	expect(partPrice({ price: eur(100), offers: [{ price: eur(50), condition: "new" }] })).toEqual({
		price: eur(100),
		condition: "new",
	});
	expect(partPrice({ price: eur(0) })).toEqual({ price: eur(0), condition: "new" });
});

test("of the new offers the cheapest counts, though a used one is cheaper", () => {
	const offers = [
		{ price: eur(50), condition: "used" as const },
		{ price: eur(90), condition: "new" as const },
		{ price: eur(80), condition: "new" as const },
	];
	expect(partPrice({ offers })).toEqual({ price: eur(80), condition: "new" });
});

test("where nothing new is offered, the cheapest used or opened one counts, and says so", () => {
	const offers = [
		{ price: eur(70), condition: "opened" as const },
		{ price: eur(60), condition: "used" as const },
		{ price: { minor: 1, currency: "GBP" }, condition: "used" as const },
	];
	expect(partPrice({ offers })).toEqual({ price: eur(60), condition: "used" });
	expect(partPrice({ offers: offers.slice(0, 1) })?.condition).toBe("opened");
});

test("no price, no offers: nothing is known", () => {
	expect(partPrice({})).toBeNull();
	expect(partPrice({ offers: [] })).toBeNull();
});
