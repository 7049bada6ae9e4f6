import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { checkParts } from "../../src/parts/check-parts.ts";
import { factsOf } from "../../src/parts/fact-list.ts";
import { partsFileSchemaName } from "../../src/parts/market.ts";
import { answerWords, readTold, type ToldContext } from "../../src/walk/read-told.ts";
import { toldFact, toldPath } from "../../src/walk/told-fact.ts";
import { emptyMarket } from "./walk-in-demo.ts";

const board: Board = {
	id: "my-board",
	name: "My Board",
	price: { minor: 12_900, currency: "EUR" },
	checkedOn: "2026-11-20",
	memory: { slots: 4, channels: 2 },
};
const context: ToldContext = { board, processor: "Tallowfinch Deckhand", asOf: "2026-11-28", currency: "EUR" };

const read = (path: string, text: string, more: Partial<ToldContext> = {}) =>
	readTold(path, text, { ...context, ...more });

describe("answers in a word or a number", () => {
	test.each([
		["memory.slots", "4", 4],
		["memory.maxGb", "128 GB", 128],
		["memory.type", "ddr5", "DDR5"],
		["layout.ownBackPlate", "yes", true],
		["layout.ownBackPlate", "Ja", true],
		["chipsetFan", "nein", false],
		["power.processorPlugs", "2 x 8-pin", ["8-pin", "8-pin"]],
		["power.processorPlugs", "8-polig, 4-polig", ["8-pin", "4-pin"]],
		["power.mainPlug", "24-polig", "24-pin"],
		["pictureSockets", "HDMI and DisplayPort", ["HDMI", "DisplayPort"]],
		["pictureSockets", "none", []],
		["rearOld", "no", []],
		["recovery.faultDisplay", "no", "none"],
		["recovery.faultDisplay", "by digits", "digits"],
		["recovery.faultDisplay", "Leuchten", "lights"],
		["powerDelivery.heatSink", "auf beiden", "both sides"],
		["powerDelivery.stageKind", "einzelne Schalter", "separate switches"],
		["wireless.moduleSocket", "any", "ordinary"],
		["wireless.moduleSocket", "nur eine Sorte", "one-family-only"],
		["wireless.moduleSocket", "keine", "none"],
		["warrantyYears", "3 Jahre", 3],
		["wiredGbps", "2.5", [2.5]],
		["wiredGbps", "2 x 2.5 Gb/s", [2.5, 2.5]],
		["price", "129,90 €", { minor: 12_990, currency: "EUR" }],
		["depthMm", "24.4 cm", 244],
		["power.extraPlugs", "No", []],
		["power.extraPlugs", "6-pin graphics", [{ plug: "6-pin graphics" }]],
		["memory.rates", "5200 MT/s", [{ modulesPerChannel: 2, mtPerS: 5200 }]],
		["memory.slotOrder", "A2 und B2", { "2": ["A2", "B2"] }],
	])("%s: %s", (path, text, value) => {
		expect(read(path, text)).toEqual({ value });
	});

	test("lists of things are told as the board's page prints them", () => {
		expect(read("m2Sockets", "3")).toMatchObject({ value: { length: 3 } });
		expect(read("m2Sockets", "2 x PCIe 4.0 x4, 1 x PCIe 3.0 x4")).toMatchObject({
			value: [{ generation: 4 }, { generation: 4 }, { generation: 3 }],
		});
		expect(read("drivePorts", "4")).toMatchObject({ value: { length: 4 } });
		expect(read("headers.fans", "1 CPU fan, 3 case fans")).toMatchObject({ value: { length: 4 } });
		expect(read("rearUsb", "4 x USB 5Gbps, 1 x USB-C 10Gbps")).toMatchObject({
			value: [
				{ count: 4, gbps: 5 },
				{ count: 1, gbps: 10, plug: "C" },
			],
		});
		expect(read("drivePorts", "none")).toEqual({ value: [] });
		// A bare number would say of sockets what nobody said.
		for (const path of ["rearUsb", "cardSlots"]) expect(read(path, "4")).toHaveProperty("problem");
	});

	test("a measurement needs all three figures", () => {
		const value = [{ loadW: 150, airC: 22, stageC: 78 }];
		for (const text of ["78 C at 150 W, room 22 C", "150 W: 78°C, room 22°C", "78 Grad bei 150 W, Raum 22 Grad"])
			expect(read("powerDelivery.measurements", text), text).toEqual({ value });
		for (const text of ["78", "78 C at 150 W", "78 C or 80 C at 150 W, room 22 C", "hot"])
			expect(read("powerDelivery.measurements", text), text).toHaveProperty("problem");
	});
});

describe("whether the processor runs on it", () => {
	const row = (fromVersion?: string) => ({
		value: {
			readOn: "2026-11-28",
			partial: true,
			rows: [{ processor: "Tallowfinch Deckhand", ...(fromVersion ? { fromVersion } : {}) }],
		},
	});

	test.each([
		["yes", undefined],
		["Ja.", undefined],
		["yes, from the first version", undefined],
		["yes, since F12", "F12"],
		["Ja, ab BIOS F12", "F12"],
		["1.20", "1.20"],
		["it is supported from version 7D75vA2", "7D75vA2"],
	])("%s", (text, version) => {
		expect(read("supportList", text)).toEqual(row(version));
	});

	test.each(["no", "Nein, leider nicht", "maybe", "yes, F12 or F14", "we think so", "yes but ask 3 others"])(
		"%s is no fact",
		(text) => {
			expect(read("supportList", text)).toHaveProperty("problem");
		},
	);

	test("without a processor there is nothing that the answer is about", () => {
		expect(read("supportList", "yes", { processor: null })).toMatchObject({
			problem: expect.stringContaining("which processor"),
		});
	});

	test("the maker's list, pasted, is read as such", () => {
		const text = "Processor\tSince BIOS\nTallowfinch Deckhand 200\tF2\nTallowfinch Figurehead 900\tF7\n";
		expect(read("supportList", text)).toMatchObject({
			value: {
				rows: [
					{ processor: "Tallowfinch Deckhand 200", fromVersion: "F2" },
					{ processor: "Tallowfinch Figurehead 900", fromVersion: "F7" },
				],
			},
		});
		expect(read("supportList", "Hello,\nyes it does.\nBye")).toHaveProperty("problem");
	});
});

describe("firmware and the day of return", () => {
	test("the version in the box, alone or in few words", () => {
		const path = "firmware.oldestInShops";
		for (const text of ["F12", "BIOS F12", "it's F12.", "Version F12"])
			expect(read(path, text), text).toEqual({ value: "F12" });
		for (const text of ["new", "F12 or F13", "the newest", "12 or so we think"])
			expect(read(path, text), text).toHaveProperty("problem");
		expect(read("firmware.releases", "F12, 01.10.2026")).toEqual({ value: [{ version: "F12", date: "2026-10-01" }] });
		expect(read("firmware.releases", "F12")).toHaveProperty("problem");
	});

	test("the day joins the offer at the asked price, or makes one of it", () => {
		const price = { minor: 12_900, currency: "EUR" };
		const fresh = { price, condition: "new" as const };
		expect(read("offers", "until 24.12.2026")).toEqual({
			value: [{ ...fresh, seenOn: "2026-11-20", returnableUntil: "2026-12-24" }],
		});
		const used = { price: { minor: 8000, currency: "EUR" }, condition: "used" as const };
		expect(read("offers", "2026-12-24", { board: { ...board, offers: [used, fresh] } })).toEqual({
			value: [used, { ...fresh, returnableUntil: "2026-12-24" }],
		});
		expect(read("offers", "2026-12-24", { board: { id: "b", name: "B" } })).toHaveProperty("problem");
		for (const text of ["2026-02-30", "30 days", "Christmas"])
			expect(read("offers", text), text).toHaveProperty("problem");
	});
});

describe("hostile and useless answers", () => {
	const paths = factsOf("board").flatMap(({ path }) => toldPath(path) ?? []);
	const hostile = [
		"",
		" \n ",
		"?",
		"don't know",
		"unbekannt",
		"\u001b]52;c;aGk=\u0007",
		"\u202e4",
		"__proto__",
		'{"__proto__":{"polluted":1}}',
		'[{"name":"x","extra":1}]',
		"=1+1",
		"1e9",
		"9".repeat(400),
		"x".repeat(100_000),
		`${"(".repeat(5000)}a`,
		"-1",
		"4; DROP",
	];

	test("whatever is answered, what is taken is sound, and nothing throws", () => {
		fc.assert(
			fc.property(
				fc.constantFrom(...paths),
				fc.oneof(
					fc.constantFrom(...hostile),
					fc.string({ unit: "grapheme", maxLength: 40 }),
					fc.constantFrom("yes", "no", "2", "4 x SATA", "8-pin", "F12", "none", "[]", "{}", "DDR5", "2.5", "A2, B2"),
				),
				(path, text) => {
					const reading = read(path, text);
					if ("problem" in reading) {
						expect(reading.problem).toMatch(/\S/);
						return;
					}
					const market = { ...emptyMarket.market, parts: { ...emptyMarket.market.parts, board: [board] } };
					const told = { boardId: "my-board", path, value: reading.value, by: "the shop", date: "2026-11-28" };
					const result = toldFact(market, [], { ...told, quote: text, replace: true });
					if ("problem" in result) return;
					const file = { schema: partsFileSchemaName, boards: [result.own.part] };
					expect(checkParts(file).faults).toEqual([]);
					expect(({} as { polluted?: number }).polluted).toBeUndefined();
				},
			),
			{ numRuns: 1500 },
		);
	});

	test("that nothing is known is no answer", () => {
		for (const path of paths)
			for (const text of hostile.slice(0, 6)) expect(read(path, text), `${path} ${text}`).toHaveProperty("problem");
	});

	test("a long answer takes no long time", () => {
		const started = performance.now();
		for (const path of paths) {
			read(path, "1 x ".repeat(50_000));
			read(path, `${"F12 ".repeat(300)}`);
		}
		expect(performance.now() - started).toBeLessThan(4000);
	});

	test("each fact says what may be typed", () => {
		for (const path of paths) expect(answerWords(path)).toMatch(/^[A-Z].*\.$/);
	});
});
