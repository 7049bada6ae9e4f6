import fc from "fast-check";
import { expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import { checkParts } from "../../src/parts/check-parts.ts";
import { cleanJson } from "../../src/parts/clean-text.ts";
import { partsFileSchemaName } from "../../src/parts/market.ts";
import { partKindNames, partKinds } from "../../src/parts/part-kinds.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { anyAnswersIn, asOf } from "./any-answers.ts";
import { anyMarket, plainParts } from "./any-market.ts";
import { anyPart, atTheLimits, full, sparse } from "./any-part.ts";

test.each(partKindNames)("any %s drawn is one that a file may hold, as it was read from one", (kind) => {
	for (const fullness of [sparse, full])
		fc.assert(
			fc.property(anyPart(kind, fullness), (part) => {
				const file = { schema: partsFileSchemaName, [partKinds[kind].list]: [part] };
				expect(cleanJson(JSON.parse(JSON.stringify(file)))).toEqual(file);
				expect(checkParts(file).faults).toEqual([]);
			}),
			{ numRuns: 20 },
		);
});

test("the plain parts beside the drawn ones are sound too", () => {
	expect(checkParts(plainParts).faults).toEqual([]);
});

test("drawn boards give every fact now and then, and lists at their limits", () => {
	const given = new Set(
		fc.sample(anyPart("board", full), { numRuns: 60, seed: 3 }).flatMap((board) => Object.keys(board)),
	);
	expect([...given].sort()).toEqual(Object.keys(partKinds.board.schema.shape).sort());
	const [most] = fc.sample(anyPart("board", atTheLimits), { numRuns: 1, seed: 3 });
	expect([most?.cardSlots?.length, most?.headers?.fans?.length, most?.conditions?.length]).toEqual([12, 16, 60]);
});

test("drawn markets and answers leave boards of every verdict, in one world and in many", () => {
	const seen = { fits: 0, "cannot-tell": 0, "does-not-fit": 0 };
	const worlds = new Set<number>();
	for (const { market, answers } of fc.sample(anyAnswersIn(anyMarket()), { numRuns: 60, seed: 7 })) {
		const build = foldAnswers(answers, { market, asOf });
		worlds.add(build.worlds.length);
		for (const { verdict } of judge(market, build).boards) seen[verdict]++;
	}
	expect(Math.min(...Object.values(seen))).toBeGreaterThan(5);
	expect(worlds.size).toBeGreaterThan(3);
});
