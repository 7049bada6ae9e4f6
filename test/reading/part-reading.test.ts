import fc from "fast-check";
import { expect, test } from "vitest";
import { partKinds } from "../../src/parts/part-kinds.ts";
import { partOf, type ReadFact } from "../../src/reading/part-reading.ts";

const fact = (path: string, value: unknown, more: Partial<ReadFact> = {}): ReadFact => ({
	fact: path,
	value,
	standing: "stated",
	line: 1,
	quote: `${path} it is`,
	...more,
});

test("facts stand at their paths, lists in order, with evidence", () => {
	const { part, refused } = partOf("board", "Alder 5 (Größe M)", [
		fact("socket", "KT7"),
		fact("memory.slots", 4),
		fact("m2Sockets[0]", { name: "M2_1" }),
		fact("m2Sockets[1]", { name: "M2_2" }, { quote: "M2_2 too" }),
	]);
	expect(refused).toEqual([]);
	expect(part).toEqual({
		id: "alder-5-gro-e-m",
		name: "Alder 5 (Größe M)",
		socket: "KT7",
		memory: { slots: 4 },
		m2Sockets: [{ name: "M2_1" }, { name: "M2_2" }],
		evidence: {
			socket: { standing: "stated", quote: "socket it is" },
			"memory.slots": { standing: "stated", quote: "memory.slots it is" },
			m2Sockets: { standing: "stated", quote: "m2Sockets[0] it is / M2_2 too" },
		},
	});
});

test("without a name it gets one, and without facts no evidence", () => {
	expect(partOf("board", "百", []).part).toEqual({ id: "own-board", name: "百" });
	expect(partOf("board", undefined, []).part).toEqual({
		id: "a-board-read-from-its-page",
		name: "A board read from its page",
	});
});

test("what the schema refuses is left out and given back, wherever it stands", () => {
	const good = [fact("socket", "KT7"), fact("memory.slots", 4), fact("chipset", "K720")];
	const bad = [fact("memory.maxGb", -1), fact("form", "round"), fact("noSuchFact", 1)];
	fc.assert(
		fc.property(fc.shuffledSubarray([...good, ...bad]), (some) => {
			const { part, refused } = partOf("board", "Alder", some);
			expect(partKinds.board.schema.safeParse(part).success).toBe(true);
			expect(new Set(refused)).toEqual(new Set(some.filter((one) => bad.includes(one))));
			const kept = some.filter((one) => good.includes(one));
			expect(new Set(Object.keys(part.evidence ?? {}))).toEqual(new Set(kept.map((one) => one.fact)));
		}),
	);
});

test("one entry that is assumed makes the whole list no more than that", () => {
	const { part } = partOf("board", "Alder", [
		fact("rearUsb[0]", { plug: "A", gbps: 5, count: 2 }, { assumed: ["plug"] }),
		fact("rearUsb[1]", { plug: "C", gbps: 10, count: 1 }),
		fact("headers.usb2", 1, { standing: "assumed" }),
	]);
	expect(part.evidence?.["rearUsb"]?.standing).toBe("assumed");
	expect(part.evidence?.["headers.usb2"]?.standing).toBe("assumed");
});

test("the schema is held against the facts a few times, not once a fact", () => {
	const many = Array.from({ length: 4000 }, () => fact("memory.slots", 4));
	const before = performance.now();
	expect(partOf("board", "Alder", many).refused).toEqual([]);
	expect(performance.now() - before).toBeLessThan(1500);
});
