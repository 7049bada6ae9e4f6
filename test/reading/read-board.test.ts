import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boardConnectorFaults } from "../../src/parts/board-connector-faults.ts";
import { partKinds } from "../../src/parts/part-kinds.ts";
import type { PartReading } from "../../src/reading/part-reading.ts";
import { readBoard } from "../../src/reading/read-board.ts";
import { textLines, textOfLines } from "../../src/reading/text-lines.ts";
import { heavyTexts, specLikeText } from "./spec-like-text.ts";

type Reading = PartReading<"board">;

const page = (...lines: readonly string[]): Reading => readBoard(lines.join("\n"));

/** What a page tells, by path, lists as a whole; each with its standing where it is not stated. */
function told({ facts }: Reading): Record<string, unknown> {
	const found: Record<string, unknown> = {};
	for (const { fact, value, standing } of facts) {
		const [, path = "", entry] = /^([^[]*)(\[\d+\])?$/.exec(fact) ?? [];
		const key = standing === "assumed" ? `${path} (assumed)` : path;
		if (entry === undefined) found[key] = value;
		else found[key] = [...((found[key] as unknown[] | undefined) ?? []), value];
	}
	return found;
}

const inDoubt = ({ doubts }: Reading) => doubts.map(({ fact, might }) => [fact, might]);
const ports = (count: number, from = 1) =>
	Array.from({ length: count }, (_, index) => ({ name: `SATA ${index + from}`, kind: "SATA" }));
const drive = { key: "M", lengthsMm: [80], widestMm: 22, wiredLanes: 4 };
const slot = (number: number, facts: object) => ({ name: `Card slot ${number}`, bus: "PCI Express", ...facts });

/** What holds for every reading, whatever the text. */
function expectSound(text: string, reading: Reading): void {
	const { part, facts, doubts, unread } = reading;
	expect(partKinds.board.schema.safeParse(part).error).toBeUndefined();
	expect(boardConnectorFaults(part, "board")).toEqual([]);
	const clean = textOfLines(textLines(text).lines).replace(/\s+/g, " ");
	const lastLine = Math.max(...textLines(text).lines.map(({ number }) => number), 1);
	for (const { fact, standing, quote, line } of facts) {
		const path = fact.replace(/\[\d+\]$/, "");
		expect(["stated", "assumed"]).toContain(standing);
		expect(part.evidence?.[path]?.quote ?? "").not.toBe("");
		expect(part.evidence?.[path]?.standing).toBeDefined();
		if (standing === "assumed") expect(part.evidence?.[path]?.standing).toBe("assumed");
		expect(clean).toContain(quote.replace(/\s+/g, " ").trim());
		expect(line).toBeLessThanOrEqual(lastLine);
	}
	expect(Object.keys(part.evidence ?? {}).sort()).toEqual(
		[...new Set(facts.map(({ fact }) => fact.replace(/\[\d+\]$/, "")))].sort(),
	);
	// A single fact in doubt is not in the part.
	for (const { fact } of doubts)
		if (/^(?:socket|chipset|form|widthMm|depthMm|wiredGbps|memory\.|wireless\.)/.test(fact))
			expect(facts.map((one) => one.fact)).not.toContain(fact);
	for (const { line } of unread) expect(line).toBeGreaterThan(0);
}

describe("layouts of pages", () => {
	const board = {
		socket: "KT7",
		"memory.type": "DDR5",
		"memory.slots": 4,
		"memory.maxGb": 128,
		drivePorts: ports(4),
		wiredGbps: [2.5],
	};

	test("section heads and the values below", () => {
		const reading = page(
			"Fernbrook Alder 5",
			"",
			"Processor",
			"Socket KT7",
			"",
			"Memory",
			"4 x DDR5, max. 128 GB",
			"",
			"Storage",
			"4 x SATA 6 Gb/s",
			"",
			"Network",
			"1 x 2.5 Gb RJ45",
		);
		expect(told(reading)).toEqual(board);
		expect(reading.facts.find(({ fact }) => fact === "socket")).toEqual({
			fact: "socket",
			value: "KT7",
			standing: "stated",
			line: 4,
			quote: "Socket KT7",
		});
		expect(reading.part.name).toBe("Fernbrook Alder 5");
		expect(reading.part.id).toBe("fernbrook-alder-5");
		expect([reading.doubts, reading.unread]).toEqual([[], []]);
	});

	test("label: value", () => {
		const reading = page(
			"Socket: KT7",
			"Memory: 4 x DDR5, up to 128 GB",
			"SATA: 4 ports",
			"LAN: 1 x 2.5 Gb RJ45",
			"Colour: black",
		);
		expect(told(reading)).toEqual(board);
		expect(reading.facts.find(({ fact }) => fact === "wiredGbps")).toMatchObject({
			line: 4,
			quote: "LAN: 1 x 2.5 Gb RJ45",
		});
		expect(reading.unread).toEqual([{ line: 5, text: "Colour: black" }]);
	});

	test("a label line, then its value line", () => {
		const reading = page(
			...["Socket", "KT7", "Memory type", "DDR5", "Memory slots", "4", "Maximum memory", "128 GB"],
			...["Storage", "4 x SATA 6 Gb/s", "Network", "1 x 2.5 Gb LAN", "Form factor", "ATX"],
		);
		expect(told(reading)).toEqual({ ...board, form: "ATX" });
		expect(reading.doubts).toEqual([]);
		expect(reading.facts.find(({ fact }) => fact === "memory.maxGb")).toMatchObject({ line: 8, quote: "128 GB" });
	});

	test.each([
		["tabs", "\t"],
		["bars", " | "],
		["dots", " ........ "],
		["spaces", "        "],
	])("a table by %s", (_, border) => {
		const rows = [
			["Socket", "KT7"],
			["Memory type", "DDR5"],
			["Memory slots", "4"],
			["Maximum memory", "128 GB"],
			["SATA ports", "4"],
			["LAN", "1 x 2.5 Gb RJ45"],
		];
		const reading = page(...rows.map((cells) => cells.join(border)));
		expect(told(reading)).toEqual(board);
		expect(reading.facts.find(({ fact }) => fact === "memory.slots")).toMatchObject({
			line: 3,
			quote: ["Memory slots", "4"].join(border),
		});
		expect([reading.doubts, reading.unread]).toEqual([[], []]);
	});

	test("rows of quoted cells; quotes keep the marks of the page", () => {
		const reading = page(
			'"Processor","Socket","KT7"',
			'"Memory","Type","DDR5"',
			'"Memory","Slots","4"',
			'"Memory","Maximum","128 GB"',
			'"Storage","SATA","4 x SATA 6 Gb/s"',
			'"Network","LAN","1 x 2.5 Gb RJ45"',
		);
		expect(told(reading)).toEqual(board);
		expect(reading.facts.find(({ fact }) => fact === "socket")?.quote).toBe('"Processor","Socket","KT7"');
	});

	test("a Markdown table", () => {
		const reading = page(
			"| Feature | Value |",
			"| --- | --- |",
			"| Socket | KT7 |",
			"| Memory | 4 x DDR5, max. 128 GB |",
			"| SATA ports | 4 |",
			"| LAN | 1 x 2.5 Gb RJ45 |",
		);
		expect(told(reading)).toEqual(board);
		expect(reading.facts.find(({ fact }) => fact === "socket")).toMatchObject({ line: 3, quote: "| Socket | KT7 |" });
	});

	test("a Markdown table whose columns count", () => {
		const reading = page(
			"| Interface | Ports at the back | Ports by header |",
			"| --- | --- | --- |",
			"| USB 3.2 Gen 1 Type-A | 4 | 2 |",
			"| USB 2.0 Type-A | 2 | 4 |",
		);
		expect(told(reading)).toEqual({
			rearUsb: [
				{ plug: "A", gbps: 5, count: 4 },
				{ plug: "A", gbps: 0.48, count: 2 },
			],
			"headers.usb2 (assumed)": 2,
			"headers.usb5 (assumed)": 1,
		});
	});

	test("a list whose lines were glued together", () => {
		const reading = page("Back panel", "1 x HDMI1 x DisplayPort2 x USB 3.2 Gen 2 Type-A4 x USB 2.0 Type-A1 x RJ45");
		expect(told(reading)).toEqual({
			pictureSockets: ["HDMI", "DisplayPort"],
			rearUsb: [
				{ plug: "A", gbps: 10, count: 2 },
				{ plug: "A", gbps: 0.48, count: 4 },
			],
		});
	});

	test("versions glued to the next count", () => {
		const reading = page("Back panel", "1 x HDMI 2.12 x USB 3.2 Gen 24 x USB 2.01 x RJ45");
		expect(told(reading)).toMatchObject({
			pictureSockets: ["HDMI"],
			rearUsb: [
				{ gbps: 10, count: 2 },
				{ gbps: 0.48, count: 4 },
			],
		});
	});

	test("a list without any border", () => {
		const reading = page(
			"Back panel: 1 x HDMI 1 x DisplayPort 2 x USB 3.2 Gen 2 Type-A 4 x USB 2.0 Type-A 3 x audio jacks",
		);
		expect(told(reading)).toEqual({
			"sound.rearSockets": 3,
			pictureSockets: ["HDMI", "DisplayPort"],
			rearUsb: [
				{ plug: "A", gbps: 10, count: 2 },
				{ plug: "A", gbps: 0.48, count: 4 },
			],
		});
	});

	test("a run-on paragraph; quotes keep the words of the page", () => {
		const reading = page(
			"The Fernbrook Alder 5 is an ATX board. Socket: KT7. Chipset: K720. Memory: 4 x DDR5 DIMM, max. 192 GB, dual " +
				"channel. Slots: one PCIe 5.0 x16, 2 x PCIe 3.0 x1. Storage: two M.2 2280 (PCIe 4.0 x4), 4 x SATA 6 Gb/s. " +
				"Network: 2.5 Gb LAN.",
		);
		expect(told(reading)).toEqual({
			"memory.type": "DDR5",
			"memory.form": "DIMM",
			"memory.slots": 4,
			"memory.channels": 2,
			"memory.maxGb": 192,
			form: "ATX",
			socket: "KT7",
			chipset: "K720",
			wiredGbps: [2.5],
			m2Sockets: [1, 2].map((number) => ({
				name: `M.2 socket ${number}`,
				lengthsMm: [80],
				widestMm: 22,
				wiredLanes: 4,
				generation: 4,
			})),
			cardSlots: [
				slot(1, { lengthLanes: 16, generation: 5 }),
				slot(2, { lengthLanes: 1, generation: 3 }),
				slot(3, { lengthLanes: 1, generation: 3 }),
			],
			drivePorts: ports(4),
		});
		expect(reading.facts.find(({ fact }) => fact === "form")?.quote).toBe("The Fernbrook Alder 5 is an ATX board.");
		expect(reading.doubts).toEqual([]);
	});

	test("pasted HTML", () => {
		const reading = page(
			"<h1>Fernbrook Alder 5</h1><table><tr><th>Socket</th><td>KT7</td></tr>",
			"<tr><th>Memory</th><td>4 x DDR5<br>max. 128&nbsp;GB</td></tr>",
			"<tr><th>SATA</th><td>4 x SATA 6 Gb/s</td></tr><tr><th>LAN</th><td>1 x 2.5 Gb RJ45</td></tr></table>",
		);
		expect(told(reading)).toEqual(board);
		expect(reading.part.name).toBe("Fernbrook Alder 5");
	});
});

describe("languages", () => {
	test("German labels", () => {
		const reading = page(
			"Sockel: KT7",
			"Chipsatz: K720",
			"Arbeitsspeicher: 4 x DDR5-DIMM, max. 192 GB, Dual-Channel",
			"Steckplätze: 1 x PCIe 5.0 x16, 1 x PCIe 3.0 x1",
			"Massenspeicher: 2 x SATA 6 Gb/s",
			"Anschlüsse hinten: 4 x USB 3.2 Gen 1 Typ-A, 1 x HDMI",
			"Anschlüsse intern: 1 x USB 2.0 Stiftleiste, 2 x 8-pol. EPS-Stecker 12 V (Prozessor), 1 x 4-pol. Gehäuselüfter",
			"Netzwerk: 1 x 2,5 Gbit/s",
			"Formfaktor: ATX (30,5 x 24,4 cm)",
		);
		expect(told(reading)).toEqual({
			socket: "KT7",
			chipset: "K720",
			"memory.type": "DDR5",
			"memory.form": "DIMM",
			"memory.slots": 4,
			"memory.channels": 2,
			"memory.maxGb": 192,
			cardSlots: [slot(1, { lengthLanes: 16, generation: 5 }), slot(2, { lengthLanes: 1, generation: 3 })],
			drivePorts: ports(2),
			rearUsb: [{ plug: "A", gbps: 5, count: 4 }],
			pictureSockets: ["HDMI"],
			"headers.usb2": 1,
			"power.processorPlugs": ["8-pin", "8-pin"],
			"headers.fans": [{ name: "Fan header 1", use: "case" }],
			wiredGbps: [2.5],
			form: "ATX",
			widthMm: 305,
			depthMm: 244,
		});
		expect([reading.doubts, reading.unread]).toEqual([[], []]);
	});

	test.each([
		[
			"Ukrainian",
			[
				"Сокет: KT7",
				"Пам'ять: 2 x DDR5 DIMM, макс. 96 ГБ",
				"Слоти розширення: 1 x PCIe 5.0 x16",
				"Накопичувачі: 4 x SATA 6 Гбіт/с",
				"Форм-фактор: microATX, 244 x 244 мм",
			],
		],
		[
			"Spanish",
			[
				"Zócalo: KT7",
				"Memoria: 2 x DDR5 DIMM, máximo 96 GB",
				"Ranuras de expansión: 1 x PCIe 5.0 x16",
				"Almacenamiento: 4 x SATA 6 Gb/s",
				"Formato: microATX, 244 x 244 mm",
			],
		],
		[
			"French",
			[
				"Socket : KT7",
				"Mémoire : 2 x DDR5 DIMM, max. 96 Go",
				"Emplacements : 1 x PCIe 5.0 x16",
				"Stockage : 4 x SATA 6 Gb/s",
				"Format : microATX, 244 x 244 mm",
			],
		],
	])("%s, by numbers and standard terms", (_, lines) => {
		const reading = page(...lines);
		expect(told(reading)).toEqual({
			socket: "KT7",
			"memory.type": "DDR5",
			"memory.form": "DIMM",
			"memory.slots": 2,
			"memory.maxGb": 96,
			cardSlots: [slot(1, { lengthLanes: 16, generation: 5 })],
			drivePorts: ports(4),
			form: "microATX",
			widthMm: 244,
			depthMm: 244,
		});
		expect(reading.facts.find(({ fact }) => fact === "memory.maxGb")?.quote).toBe(lines[1]);
	});
});

describe("card slots", () => {
	test("one slot listed several times by processor series is one slot", () => {
		const reading = page(
			"Expansion slots",
			"Tarn 9000 series processors",
			"- 1 x PCIe 5.0 x16 slot",
			"Tarn 8000 series processors",
			"- 1 x PCIe 4.0 x16 slot",
			"Chipset",
			"- 2 x PCIe 3.0 x1 slots",
		);
		expect(told(reading)).toEqual({
			cardSlots: [
				slot(1, { lengthLanes: 16, generation: 5, from: "processor" }),
				slot(2, { lengthLanes: 1, generation: 3, from: "chipset" }),
				slot(3, { lengthLanes: 1, generation: 3, from: "chipset" }),
			],
		});
		// The lesser figures of other processors are told, for the part holds the better ones.
		expect(reading.doubts).toEqual([
			{
				fact: "conditions",
				might: [],
				line: 5,
				quote: "- 1 x PCIe 4.0 x16 slot",
				why: "With other processors (Tarn 8000 series processors) the page gives other figures. The better ones were taken.",
			},
		]);
		expect(reading.unread).toEqual([]);
	});

	test.each([
		["1 x PCIe 4.0 x16 slot (x4 mode)", { lengthLanes: 16, wiredLanes: 4, generation: 4 }],
		["PCI Express 4.0 x16: 1 (x4 mode)", { lengthLanes: 16, wiredLanes: 4, generation: 4 }],
		["1 x PCIe 5.0 x16 slot, runs at x8", { lengthLanes: 16, wiredLanes: 8, generation: 5 }],
		["1 x PCIe 3.0 x4 slot, x16 mechanical length", { lengthLanes: 16, wiredLanes: 4, generation: 3 }],
		// How many lanes are wired is not said.
		["1 x PCIe 5.0 x16 slot", { lengthLanes: 16, generation: 5 }],
	])("length apart from lanes: %s", (line, facts) => {
		expect(told(page("Slots", line))).toEqual({ cardSlots: [slot(1, facts)] });
	});

	test("slots that divide their lanes are a group", () => {
		const reading = page("Slots", "2 x PCIe 5.0 x16 slots (x16 or x8/x8)");
		expect(told(reading)["sharing"]).toEqual([
			{
				members: ["Card slot 1", "Card slot 2"],
				modes: [{ on: { "Card slot 1": 16 } }, { on: { "Card slot 1": 8, "Card slot 2": 8 } }],
			},
		]);
	});
});

describe("counts hidden in names", () => {
	test("M.2_1,2 slot is two", () => {
		expect(told(page("Storage: M.2_1,2 slot (Key M, 2280, PCIe 4.0 x4)"))).toEqual({
			m2Sockets: ["M.2_1", "M.2_2"].map((name) => ({ name, ...drive, generation: 4 })),
		});
	});
	test("4x DDR5~128GB", () => {
		expect(told(page("Memory: 4x DDR5~128GB"))).toEqual({
			"memory.type": "DDR5",
			"memory.slots": 4,
			"memory.maxGb": 128,
		});
	});
	test("2 x M.2 (M2_1 and M2_2) is two, not four", () => {
		expect(told(page("Storage: 2 x M.2 (M2_1 and M2_2), PCIe 4.0 x4"))).toEqual({
			m2Sockets: ["M2_1", "M2_2"].map((name) => ({ name, wiredLanes: 4, generation: 4 })),
		});
	});
});

describe("USB", () => {
	test.each([
		["USB 3.2 Gen 1: 5 ports: 3 at the back, 2 by header", 3, 1],
		["4 x USB 3.2 Gen 1 (2 rear, 2 front)", 2, 1],
		["6 x USB 3.2 Gen 1 Anschlüsse (2 hinten, 4 vorne)", 2, 2],
	])("mixed counts: %s", (line, rear, headers) => {
		const reading = page(line);
		expect(told(reading)).toEqual({
			rearUsb: [{ plug: "A", gbps: 5, count: rear }],
			"headers.usb5 (assumed)": headers,
		});
		expect(reading.facts[0]?.assumed).toEqual(["plug"]);
		expect(reading.facts.find(({ fact }) => fact === "headers.usb5")?.ports).toBe(headers * 2);
		expect(reading.part.evidence?.["rearUsb"]?.standing).toBe("assumed");
	});

	test.each([
		["USB 1.1", 0.012],
		["USB 2.0", 0.48],
		["Hi-Speed USB 2.0", 0.48],
		["USB 3.0", 5],
		["USB 3.1 Gen 1", 5],
		["USB 3.2 Gen 1", 5],
		["USB 3.2 Gen 1x1", 5],
		["USB 5Gbps", 5],
		["USB 3.1 Gen 2", 10],
		["USB 3.2 Gen 2", 10],
		["USB 3.2 Gen2", 10],
		["SuperSpeed USB 10Gbps", 10],
		["USB 3.2 Gen 2x2", 20],
		["USB 20Gbps", 20],
		["USB4 20Gbps", 20],
		["USB4 40Gbps", 40],
		["USB4 Version 2.0 80Gbps", 80],
	])("%s is %d Gb/s", (name, gbps) => {
		const reading = page("Back panel", `2 x ${name} Type-C`);
		expect(told(reading)).toEqual({ rearUsb: [{ plug: "C", gbps, count: 2 }] });
		expect(reading.doubts).toEqual([]);
	});

	test.each(["USB 3.1", "USB 3.2", "USB4"])("%s alone had more than one rate, so it is asked", (name) => {
		const reading = page("Back panel", `2 x ${name} Type-C`);
		expect(told(reading)).toEqual({ rearUsb: [{ plug: "C", count: 2 }] });
		expect(reading.doubts).toMatchObject([{ fact: "rearUsb", line: 2, quote: `2 x ${name} Type-C` }]);
	});
});

describe("size", () => {
	test.each(["30.5 cm x 24.4 cm", "12 in x 9.6 in", '12" x 9.6"', "305 x 244 mm", "24,4 cm × 30,5 cm"])(
		"%s",
		(sides) => {
			expect(told(page(`Form factor: ATX, ${sides}`))).toEqual({ form: "ATX", widthMm: 305, depthMm: 244 });
		},
	);
});

test("a list printed twice counts once, and the second time is understood", () => {
	const list = [
		"Storage",
		"2 x M.2 2280 (PCIe 4.0 x4)",
		"4 x SATA 6 Gb/s",
		"Back panel",
		"4 x USB 5Gbps Type-A",
		"1 x HDMI",
	];
	const reading = page("Overview", ...list, "", "Details", ...list);
	expect(reading.facts.map(({ fact }) => fact).sort()).toEqual(
		[
			"m2Sockets[0]",
			"m2Sockets[1]",
			...[0, 1, 2, 3].map((at) => `drivePorts[${at}]`),
			"pictureSockets[0]",
			"rearUsb[0]",
		].sort(),
	);
	expect(told(reading)["rearUsb"]).toEqual([{ plug: "A", gbps: 5, count: 4 }]);
	expect(reading.doubts).toEqual([]);
	expect(reading.unread.filter(({ text }) => list.includes(text))).toEqual([]);
});

describe("shared lanes", () => {
	const storage = [
		"Storage",
		"M2_1: Key M 2280, PCIe 4.0 x4",
		"M2_2: Key M 2280, PCIe 4.0 x4",
		"6 x SATA 6 Gb/s",
	] as const;

	test.each([
		["* When M2_2 is used, SATA_5 and SATA_6 are disabled."],
		["* SATA_5 and SATA_6 are disabled when M2_2 is used."],
		["* Wenn M2_2 belegt ist, werden SATA_5/6 abgeschaltet."],
	])("%s", (note) => {
		const reading = page(...storage, note);
		const members = ["M2_2", "SATA 5", "SATA 6"];
		expect(reading.facts.find(({ fact }) => fact === "sharing[0]")).toEqual({
			fact: "sharing[0]",
			value: { members, modes: [{ on: { M2_2: 4 } }, { on: { "SATA 5": 1, "SATA 6": 1 } }] },
			standing: "stated",
			line: 5,
			quote: note,
		});
		expect(reading.doubts).toEqual([]);
		expect(told(reading)["m2Sockets"]).toHaveLength(2);
	});

	test("a note that does not say which is off is asked", () => {
		const reading = page(...storage, "Note: M2_2 shares bandwidth with SATA_5.");
		expect(told(reading)).not.toHaveProperty("sharing");
		expect(inDoubt(reading)).toEqual([["sharing", []]]);
		expect(reading.doubts[0]?.why).toContain("M2_2 and SATA 5 share.");
	});

	test("a note about a connector that no list has is asked", () => {
		const reading = page(...storage, "* M2_9 is disabled when SATA_5 is used.");
		expect(told(reading)).not.toHaveProperty("sharing");
		expect(inDoubt(reading)).toEqual([["sharing", []]]);
	});
});

describe("false friends", () => {
	test("a socket with key E is none for drives", () => {
		const reading = page("Storage", "1 x M.2 2280 (Key M, PCIe 4.0 x4)", "1 x M.2 2230 (Key E) for a Wi-Fi card");
		expect(told(reading)).toEqual({ m2Sockets: [{ name: "M.2 socket 1", ...drive, generation: 4 }] });
	});
	test("screws for M.2 and cables in the box are no connectors", () => {
		const reading = page("In the box: 2 x M.2 screws, 4 x SATA cables", "Accessories: 1 x M.2 stand-off");
		expect(told(reading)).toEqual({});
	});
	test("a six-pin plug for graphics power is none of the processor, and no slot", () => {
		const reading = page("Power", "1 x 8-pin 12 V (processor)", "1 x 6-pin PCIe graphics power");
		expect(told(reading)).toEqual({ "power.processorPlugs": ["8-pin"] });
	});
	test("Slots: of memory are no card slots", () => {
		const reading = page("Memory", "Slots: 4 x DDR5 DIMM", "Max.: 192 GB");
		expect(told(reading)).toMatchObject({ "memory.slots": 4, "memory.type": "DDR5", "memory.maxGb": 192 });
		expect(told(reading)).not.toHaveProperty("cardSlots");
	});
	test("correction on the chip is no correction of the board", () => {
		const reading = page("Memory: 2 x DDR5 DIMM, on-die ECC");
		expect(told(reading)).not.toHaveProperty("memory.errorCorrection");
		expect(reading.doubts).toEqual([]);
	});
	test("modules with correction leave open whether it works", () => {
		expect(inDoubt(page("Memory: 2 x DDR5 DIMM, ECC and non-ECC modules"))).toEqual([
			["memory.errorCorrection", [true, false]],
		]);
	});
});

test("a total that counts the sockets of a riser card", () => {
	const reading = page(
		"Storage",
		"Supports 4 x M.2 slots",
		"M2_1: Key M, 2280, PCIe 5.0 x4",
		"M2_2: Key M, 2280, PCIe 4.0 x4",
		"RC.2_1 slot (Key M), via RC.2 riser card, 2280, PCIe 4.0 x4",
		"RC.2_2 slot (Key M), via RC.2 riser card, 2280, PCIe 4.0 x4",
	);
	expect(told(reading)).toEqual({
		m2Sockets: [
			{ name: "M2_1", ...drive, generation: 5 },
			{ name: "M2_2", ...drive, generation: 4 },
			{ name: "RC.2_1", ...drive, generation: 4, place: "riser" },
			{ name: "RC.2_2", ...drive, generation: 4, place: "riser" },
		],
	});
	expect([reading.doubts, reading.unread]).toEqual([[], []]);
});

describe("contradictions are doubts with every value, and no fact", () => {
	test.each([
		["socket", ["Socket: KT7", "Chipset: K720", "Processor: socket KT9"], ["KT7", "KT9"]],
		["form", ["Form factor: ATX", "Socket: KT7", "Board size: microATX"], ["ATX", "microATX"]],
		["memory.slots", ["Memory slots: 4", "Memory: 2 x DDR5 DIMM"], [4, 2]],
		["memory.maxGb", ["Memory: max. 128 GB", "Maximum memory: 192 GB"], [128, 192]],
		["wiredGbps", ["LAN: 1 x 2.5 Gb RJ45", "Network", "1 x 5 Gb Ethernet RJ45"], [[2.5], [5]]],
	])("%s", (fact, lines, might) => {
		const reading = page(...lines);
		expect(reading.facts.map((one) => one.fact)).not.toContain(fact);
		const doubt = reading.doubts.find((one) => one.fact === fact);
		expect(doubt?.might).toEqual(might);
		expect(doubt?.quote).not.toBe("");
		expect(doubt?.line).toBe(1);
		expect(reading.part).not.toHaveProperty(fact);
	});

	test("two lists that do not agree", () => {
		const reading = page("Storage", "4 x SATA 6 Gb/s", "", "Internal connectors", "6 x SATA 6 Gb/s connectors");
		expect(told(reading)).toEqual({});
		expect(inDoubt(reading)).toEqual([["drivePorts", expect.arrayContaining([ports(6), ports(4)])]]);
		expect(reading.doubts[0]?.quote).toContain("6 x SATA 6 Gb/s connectors");
		expect(reading.doubts[0]?.quote).toContain("4 x SATA 6 Gb/s");
	});

	test.each([
		["Back panel", "4 x USB 3.2 Gen 1 (2 rear, 3 front)", "rearUsb"],
		["Back panel", "4 x USB 3.2 Gen 2 5Gbps", "rearUsb"],
		["Storage", "3 x M.2 (M2_1, M2_2), PCIe 4.0 x4", "m2Sockets"],
		["Size", "Form factor: Mini-ITX, 24.4 x 24.4 cm", "form"],
	])("%s: %s", (head, line, fact) => {
		const reading = page(head, line);
		expect(reading.doubts.map((one) => one.fact)).toContain(fact);
		expect(JSON.stringify(told(reading))).not.toMatch(/"gbps":(?:5|10),"count":4|m2Sockets|"form"/);
	});
});

describe("more than a board has", () => {
	test("a list longer than any is no list cut short", () => {
		const reading = page("Storage", "9 x M.2 2280 (PCIe 4.0 x4)", "9 x M.2 2260 (PCIe 3.0 x4)", "Socket: KT7");
		expect(told(reading)).toEqual({ socket: "KT7" });
		expect(reading.part).not.toHaveProperty("m2Sockets");
		expect(reading.doubts.map(({ fact }) => fact)).toEqual(["m2Sockets"]);
	});
	test("hundreds of them are one doubt, and nothing is thrown", () => {
		const reading = readBoard(`Storage\n${"24 x SATA 6Gb/s ports\n".repeat(5000)}`);
		expect(reading.facts).toEqual([]);
		expect(reading.doubts.map(({ fact }) => fact)).toEqual(["drivePorts"]);
		expect(reading.doubts[0]?.quote.length).toBeLessThan(1001);
	});
	test("what is behind the longest page is told as not read", () => {
		const reading = readBoard(`Socket: KT7\n${"Note: nothing new here\n".repeat(3000)}Chipset: K720`);
		expect(told(reading)).toEqual({ socket: "KT7" });
		expect(reading.unread.at(-1)).toEqual({ line: 3002, text: "Chipset: K720" });
	});
});

const wholePage = [
	"Fernbrook Alder 5",
	"",
	"Processor",
	"Socket KT7, Chipset K720",
	"",
	"Memory",
	"4 x DDR5 DIMM, max. 192 GB, dual channel",
	"",
	"Expansion slots",
	"1 x PCIe 5.0 x16 slot (PCIE_1)",
	"1 x PCIe 4.0 x16 slot (PCIE_2), runs at x4",
	"",
	"Storage",
	"M2_1 (Key M): 2280/22110, PCIe 5.0 x4",
	"M2_2 (Key M): 2280, PCIe 4.0 x4",
	"4 x SATA 6 Gb/s",
	"* When M2_2 is used, SATA_3 and SATA_4 are disabled.",
	"",
	"Back panel",
	"1 x HDMI 2.1",
	"2 x USB 10Gbps Type-C",
	"4 x USB 5Gbps Type-A",
	"1 x 2.5 Gb RJ45",
	"",
	"Internal connectors",
	"2 x 8-pin 12 V power",
	"1 x CPU fan header",
	"4 x chassis fan header",
	"2 x USB 2.0 header (4 more ports)",
	"3 x addressable LED header (3-pin, 5 V)",
	"",
	"Form factor",
	"ATX, 30.5 cm x 24.4 cm",
];

describe("any text", () => {
	test("gives a sound part, whatever it is", () => {
		fc.assert(
			fc.property(fc.oneof(specLikeText, fc.string({ unit: "binary", maxLength: 300 })), (text) => {
				expectSound(text, readBoard(text));
			}),
			{ numRuns: 1500 },
		);
	});

	test("lines of pages in any order, doubled or left out, give a sound part", () => {
		fc.assert(
			fc.property(fc.array(fc.constantFrom(...wholePage), { maxLength: 50 }), (lines) => {
				const text = lines.join("\n");
				expectSound(text, readBoard(text));
			}),
			{ numRuns: 500 },
		);
	});

	test("lines left out give no fact that the whole page does not give, but for names and sharing", () => {
		const whole = readBoard(wholePage.join("\n"));
		const plain = (reading: Reading) =>
			reading.facts
				.filter(({ fact }) => !/^(?:sharing|rearUsb|headers)/.test(fact))
				.map(({ fact, value }) => `${fact.replace(/\[\d+\]$/, "")} ${JSON.stringify(value)}`);
		const known = new Set(plain(whole));
		fc.assert(
			fc.property(fc.subarray(wholePage.map((_, index) => index)), (kept) => {
				const headed = wholePage.filter(
					(line, index) => line === "" || wholePage[index - 1] === "" || kept.includes(index) || index === 0,
				);
				for (const fact of plain(readBoard(headed.join("\n")))) expect(known).toContain(fact);
			}),
			{ numRuns: 300 },
		);
	});

	test("a page printed twice gives the same facts, or doubts, and nothing else", () => {
		const once = told(readBoard(wholePage.join("\n")));
		const twice = readBoard([...wholePage, "", ...wholePage].join("\n"));
		const again = told(twice);
		for (const [fact, value] of Object.entries(again)) expect([fact, once[fact]]).toEqual([fact, value]);
		for (const fact of Object.keys(once))
			expect(fact in again || twice.doubts.some((doubt) => fact.startsWith(doubt.fact))).toBe(true);
		expect(again).toMatchObject({ socket: "KT7", "memory.slots": 4, form: "ATX" });
	});

	test("some sections with some of their lines, printed twice, give no other facts but where once is in doubt", () => {
		const [title = "", ...sections] = wholePage.join("\n").split("\n\n");
		const some = fc.tuple(
			...sections.map((section) => {
				const [head = "", ...lines] = section.split("\n");
				return fc.subarray(lines).map((kept) => (kept.length === 0 ? [] : [head, ...kept, ""]));
			}),
		);
		fc.assert(
			fc.property(some, (kept) => {
				const lines = [title, "", ...kept.flat()];
				const first = readBoard(lines.join("\n"));
				const once = told(first);
				const twice = told(readBoard([...lines, ...lines].join("\n")));
				for (const [fact, value] of Object.entries(twice))
					if (once[fact] !== undefined || !first.doubts.some((doubt) => fact.startsWith(doubt.fact)))
						expect([fact, once[fact]]).toEqual([fact, value]);
			}),
			{ numRuns: 300 },
		);
	});

	test.each(heavyTexts)("is read in a blink (%#)", (text) => {
		const before = performance.now();
		expectSound("", { ...readBoard(text), facts: [], part: readBoard("").part });
		expect(performance.now() - before).toBeLessThan(3000);
	});
});

describe("what a practised eye would miss", () => {
	test("a bare count of fan headers: one for the processor, and that is only assumed", () => {
		const reading = page("Socket: KT7", "Fan headers: 3");
		expect(told(reading)["headers.fans"]).toEqual([
			{ name: "Fan header 1", use: "processor" },
			{ name: "Fan header 2", use: "case" },
			{ name: "Fan header 3", use: "case" },
		]);
		expect(reading.part.evidence?.["headers.fans"]?.standing).toBe("assumed");
	});

	test("fan headers by their printed names, with a span", () => {
		const reading = page("Socket: KT7", "Fans: CPU_FAN1, SYS_FAN1 to SYS_FAN3, AIO_PUMP");
		expect(told(reading)["headers.fans"]).toEqual([
			{ name: "CPU_FAN1", use: "processor" },
			{ name: "SYS_FAN1", use: "case" },
			{ name: "SYS_FAN2", use: "case" },
			{ name: "SYS_FAN3", use: "case" },
			{ name: "AIO_PUMP", use: "pump" },
		]);
	});

	test("a count over sockets by name that are fewer is asked, not added", () => {
		const reading = page(
			"Storage",
			"- 3 x M.2 sockets",
			"- M2_1 (Key M), 2280, PCIe 5.0 x4",
			"- M2_2 (Key M), 2280, PCIe 4.0 x4",
		);
		expect(told(reading)).toEqual({});
		expect(reading.doubts.map(({ fact, might }) => [fact, might.map((one) => (one as unknown[]).length)])).toEqual([
			["m2Sockets", [2, 3]],
		]);
	});

	test("a piece of a line that tells nothing known is named among the lines not understood", () => {
		const reading = page("Socket: KT7", "On the board: 1 x USB 2.0 header, 1 x wreath holder, 1 x 24-pin ATX");
		expect(reading.unread).toEqual([{ line: 2, text: "1 x wreath holder" }]);
	});

	test("how slots fall back when a drive is in is told, though it is not noted", () => {
		const reading = page(
			"Slots",
			"2 x PCIe 5.0 x16",
			"With a drive in M.2_2 the first slot falls to x8 and the second is off.",
		);
		expect(inDoubt(reading)).toEqual([["sharing", []]]);
	});

	test.each([
		["Placa base Fennimark Olivo H52", "Fennimark Olivo H52"],
		["Quillhart Aurum P93, Mainboard", "Quillhart Aurum P93"],
		["Model: Ledger R640 Plus", "Ledger R640 Plus"],
	])("the name as printed, without the word for a board: %s", (line, name) => {
		expect(page(line, "Socket: KT7", "Chipset: Ostrel H52").part.name).toBe(name);
	});

	test("modules with error correction that start without it", () => {
		const reading = page("Memory", "- Unbuffered modules; ECC modules start, but without correction");
		expect(told(reading)).toEqual({ "memory.registered": false, "memory.errorCorrection": false });
	});

	test('"no M.2" lists none, and a drive\'s line broken before its length makes no card slot', () => {
		expect(
			told(page("Socket: KT7", "- No M.2 sockets", "- (2280, PCIe 3.0 x4) and 4 x SATA ports"))["cardSlots"],
		).toBeUndefined();
		expect(told(page("Socket: KT7", "- No M.2 sockets"))).toEqual({ socket: "KT7" });
	});
});
