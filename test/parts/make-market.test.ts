import { expect, test } from "vitest";
import { makeMarket } from "../../src/parts/make-market.ts";
import { findPart, type PartsFile } from "../../src/parts/market.ts";
import { partKindNames } from "../../src/parts/part-kinds.ts";

const file = (lists: Partial<PartsFile>): PartsFile => ({ schema: "boardwalk/parts@1", ...lists });

test("parts of several files in the order given; an id used again is left out and told", () => {
	const { market, clashes } = makeMarket("two files", [
		file({
			boards: [
				{ id: "b", name: "B" },
				{ id: "a", name: "A" },
			],
		}),
		file({
			boards: [
				{ id: "a", name: "Another" },
				{ id: "c", name: "C" },
			],
			processors: [{ id: "a", name: "P" }],
		}),
	]);
	expect(market.version).toBe("two files");
	expect(market.parts.board.map(({ name }) => name)).toEqual(["B", "A", "C"]);
	expect(market.parts.processor.map(({ name }) => name)).toEqual(["P"]);
	expect(clashes).toEqual([{ kind: "board", id: "a" }]);
	expect(findPart(market, "board", "a")?.name).toBe("A");
	expect(findPart(market, "processor", "c")).toBeUndefined();
});

test("no file gives a market with every kind of part and none of any", () => {
	const { market, clashes } = makeMarket("nothing", []);
	expect(Object.keys(market.parts).sort()).toEqual([...partKindNames].sort());
	expect(Object.values(market.parts).flat()).toEqual([]);
	expect(clashes).toEqual([]);
});

test("the fingerprint follows the parts, not the name or the files they came in", () => {
	const board = { id: "a", name: "A" };
	const other = { id: "b", name: "B" };
	const print = (...files: PartsFile[]) => makeMarket("", files).market.fingerprint;
	expect(print(file({ boards: [board, other] }))).toBe(print(file({ boards: [board] }), file({ boards: [other] })));
	expect(makeMarket("one", [file({})]).market.fingerprint).toBe(
		makeMarket("two", [file({ note: "x" })]).market.fingerprint,
	);
	expect(print(file({ boards: [board] }))).not.toBe(print(file({ boards: [{ ...board, socket: "Kettle 7" }] })));
});
