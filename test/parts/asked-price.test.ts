import { expect, test } from "vitest";
import { withAskedPrice } from "../../src/parts/asked-price.ts";
import type { Board } from "../../src/parts/board.ts";

const offer = (minor: number, condition: "new" | "opened" | "used" = "new", currency = "EUR", seenOn?: string) => ({
	price: { minor, currency },
	condition,
	...(seenOn ? { seenOn } : {}),
});
const board = (facts: Partial<Board>): Board => ({ id: "a", name: "A", ...facts });

test.each<[string, Partial<Board>, Partial<Board>]>([
	["the price noted goes before offers", { price: { minor: 300, currency: "EUR" }, offers: [offer(200)] }, {}],
	["no offer", { offers: [] }, {}],
	["nothing at all", {}, {}],
	["used ones are no price for a new board", { offers: [offer(100, "used"), offer(150, "opened")] }, {}],
	[
		"the cheapest new one",
		{ offers: [offer(300), offer(100, "used"), offer(200), offer(250)] },
		{ price: { minor: 200, currency: "EUR" } },
	],
	[
		"in the first one's currency",
		{ offers: [offer(300), offer(20, "new", "JPY")] },
		{ price: { minor: 300, currency: "EUR" } },
	],
	[
		"with the day it was seen",
		{ offers: [offer(200, "new", "EUR", "2026-11-20")] },
		{ price: { minor: 200, currency: "EUR" }, checkedOn: "2026-11-20" },
	],
	[
		"a day noted stays",
		{ checkedOn: "2026-11-01", offers: [offer(200, "new", "EUR", "2026-11-20")] },
		{ price: { minor: 200, currency: "EUR" } },
	],
])("%s", (_, facts, added) => {
	expect(withAskedPrice(board(facts))).toEqual({ ...board(facts), ...added });
});
