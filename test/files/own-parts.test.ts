import { describe, expect, test } from "vitest";
import {
	addPart,
	addParts,
	copyPart,
	noParts,
	partsIn,
	partsWithId,
	removePart,
	replacePart,
	withFactsOf,
	withOffer,
} from "../../src/files/own-parts.ts";
import type { OwnPart } from "../../src/parts/answers-file.ts";
import { checkParts } from "../../src/parts/check-parts.ts";
import type { PartsFile } from "../../src/parts/market.ts";

const own = (kind: OwnPart["kind"], id: string, facts: object = {}) =>
	({ kind, part: { id, name: `Part ${id}`, ...facts } }) as OwnPart;
const fileOf = (...parts: readonly OwnPart[]) => parts.reduce((file, part) => addPart(file, part).file, noParts);
const idsIn = (file: PartsFile) => partsIn(file).map(({ kind, part }) => `${kind} ${part.id}`);

describe("adding", () => {
	test("puts a part at the end of its kind", () => {
		expect(idsIn(fileOf(own("board", "b"), own("case", "c"), own("board", "a")))).toEqual([
			"board b",
			"board a",
			"case c",
		]);
	});

	test("numbers an id that is taken, by a part of any kind or by others", () => {
		const file = fileOf(own("board", "a"), own("case", "a"), own("board", "a"));
		expect(idsIn(file)).toEqual(["board a", "board a-3", "case a-2"]);
		expect(addPart(file, own("drive", "z"), new Set(["z", "z-2"])).added.part.id).toBe("z-3");
		const long = "x".repeat(80);
		const { file: longer } = addPart(fileOf(own("board", long)), own("board", long));
		expect(idsIn(longer)[1]).toBe(`board ${"x".repeat(74)}-2`);
		expect(checkParts(longer).faults).toEqual([]);
	});

	test("never marks a part as invented", () => {
		expect(addPart(noParts, own("board", "a", { invented: true })).added.part).toEqual({ id: "a", name: "Part a" });
		const file = fileOf(own("board", "a"));
		expect(replacePart(file, own("board", "a", { invented: true, widthMm: 244 }))?.boards).toEqual([
			{ id: "a", name: "Part a", widthMm: 244 },
		]);
	});
});

test("many parts are added as one by one, and those of a kind and id that are there give way as asked", () => {
	const file = fileOf(own("board", "a"), own("board", "b"));
	const more = [own("case", "a"), own("board", "b", { name: "New" }), own("board", "c", { invented: true })];
	const all = addParts(file, more, (before, one) => withFactsOf(before, one));
	expect(idsIn(all)).toEqual(["board a", "board b", "board c", "case a-2"]);
	expect(all.boards?.map(({ name }) => name)).toEqual(["Part a", "New", "Part c"]);
	expect(checkParts(all).faults).toEqual([]);
	expect(all.boards?.[2]).not.toHaveProperty("invented");
});

test("replacing keeps the place, and needs a part of the kind and id", () => {
	const file = fileOf(own("board", "a"), own("board", "b"));
	expect(replacePart(file, own("board", "a", { name: "New" }))?.boards?.map(({ name }) => name)).toEqual([
		"New",
		"Part b",
	]);
	expect(replacePart(file, own("case", "a"))).toBeNull();
});

test("a copy has an id and a name of its own, and stays a sound part", () => {
	const { file, added } = copyPart(fileOf(own("board", "a")), own("board", "a", { name: "n".repeat(120) }));
	expect(added.part.id).toBe("a-2");
	expect(added.part.name).toBe(`${"n".repeat(113)} (copy)`);
	expect(checkParts(file).faults).toEqual([]);
});

test("removing takes one part of one kind, and an empty list goes", () => {
	const file = { ...noParts, boards: [own("board", "a").part], cases: [own("case", "a").part] } as PartsFile;
	expect(partsWithId(file, "a")).toHaveLength(2);
	expect(removePart(file, own("board", "a"))).toEqual({ ...noParts, cases: [{ id: "a", name: "Part a" }] });
});

test("an offer takes the place of one by the same seller in the same condition only", () => {
	const price = (minor: number) => ({ minor, currency: "EUR" });
	const offers = (part: OwnPart) => (part.part as { offers?: { price: { minor: number } }[] }).offers;
	let part = own("board", "a");
	for (const [minor, condition, seller] of [
		[1, "new", "A"],
		[2, "used", "A"],
		[3, "new", "A"],
		[4, "new", undefined],
		[5, "new", undefined],
	] as const)
		part = withOffer(part, { price: price(minor), condition, ...(seller ? { seller } : {}) });
	expect(offers(part)?.map((one) => one.price.minor)).toEqual([2, 3, 4, 5]);
	expect(checkParts(fileOf(part)).faults).toEqual([]);
});

test("facts of a newer table go in place of the old ones, and all others stay", () => {
	const before = own("board", "a", {
		widthMm: 244,
		memory: { type: "DDR4", slots: 4 },
		m2Sockets: [{ name: "M2_1" }],
		price: { minor: 100, currency: "EUR" },
		checkedOn: "2026-01-01",
	});
	const after = withFactsOf(
		before,
		own("board", "a", { memory: { type: "DDR5" }, price: { minor: 9, currency: "USD" } }),
	);
	expect(after.part).toEqual({
		id: "a",
		name: "Part a",
		widthMm: 244,
		memory: { type: "DDR5", slots: 4 },
		m2Sockets: [{ name: "M2_1" }],
		price: { minor: 9, currency: "USD" },
	});
});
