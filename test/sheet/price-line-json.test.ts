import { expect, test } from "vitest";
import { priceLineJson } from "../../src/sheet/price-line-json.ts";
import { priceLineWords } from "../../src/sheet/price-line-words.ts";
import { lineOf } from "../choose/made-up-lines.ts";

test("the same as plain JSON: boards by id, exact scores, whole points and sums in cents", () => {
	const line = lineOf([
		{ name: "Cheap", euros: 100, points: [40, 41] },
		{ name: "Dear", euros: 200, points: 80 },
		{ name: "Poor", euros: 180, points: 30 },
		{ name: "Silent", points: 50 },
	]);
	const json = priceLineJson(line);
	expect(JSON.parse(JSON.stringify(json))).toEqual(json);
	expect(json).toMatchObject({
		schema: "boardwalk/price-line@1",
		currency: "EUR",
		line: ["cheap", "dear"],
		below: [],
		beaten: [{ boardId: "poor", by: "cheap", how: "no-dearer", isCertain: true }],
		noPrice: ["silent"],
		steps: [{ from: "cheap", to: "dear", moreMinor: 10_000, morePoints: 39, minorPerPoint: 10_000 / 39 }],
	});
	expect(json).toHaveProperty("boards.0", {
		boardId: "cheap",
		name: "Cheap",
		priceMinor: 10_000,
		boardPriceMinor: 10_000,
		condition: "new",
		forces: { priced: [], unpriced: [], perhaps: [] },
		besides: [],
		fits: "fits",
		score: { low: 40, mid: 40.5, high: 41 },
		points: 41,
	});
	expect(json).toHaveProperty("words", priceLineWords(line));
});
