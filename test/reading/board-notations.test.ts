import { describe, expect, test } from "vitest";
import { readBoard } from "../../src/reading/read-board.ts";

const page = (...lines: readonly string[]) => readBoard(lines.join("\n"));
type Page = ReturnType<typeof page>;

/** The values of a list, or of one fact, as the page states them. */
const values = ({ facts }: Page, path: string): readonly unknown[] =>
	facts.filter(({ fact }) => fact === path || fact.startsWith(`${path}[`)).map(({ value }) => value);
const doubtsOf = ({ doubts }: Page, path: string) => doubts.filter(({ fact }) => fact === path);

describe("items and heads", () => {
	test("numbers before items are no counts", () => {
		const read = page(
			"Board Quern",
			"",
			"Back panel ports",
			"1. HDMI port",
			"2. 1 x DisplayPort",
			"3. 2 x USB 5Gbps Type-A",
			"4. 1 x RJ-45",
		);
		expect(values(read, "rearUsb")).toEqual([{ plug: "A", gbps: 5, count: 2 }]);
		expect(values(read, "pictureSockets")).toEqual(["HDMI", "DisplayPort"]);
	});
	test("an ordinal at the begin of a line is no number of an item", () => {
		expect(page("For processors of the", "12. generation", "Socket: KT7").unread.map(({ text }) => text)).toContain(
			"12. generation",
		);
	});
	test.each([
		["Rear USB: total 3 ports", "Front USB: total 3 ports"],
		["USB traseiro: Total de 3 portas", "USB frontal: Total de 3 portas"],
		["USB hinten: insgesamt 3 Anschlüsse", "USB vorne: insgesamt 3 Anschlüsse"],
	])("%s stands over the lines that tell which", (rear, front) => {
		const read = page(
			"USB:",
			rear,
			"- 1 x USB 10Gbps (1 x USB Type-C)",
			"- 2 x USB 5Gbps (2 x Type-A)",
			front,
			"- 1 x USB 20Gbps header (USB Type-C)",
			"- 1 x USB 2.0 header (2 ports)",
		);
		expect(values(read, "rearUsb")).toEqual([
			{ plug: "C", gbps: 10, count: 1 },
			{ plug: "A", gbps: 5, count: 2 },
		]);
		expect(values(read, "headers.usb2")).toEqual([1]);
		expect(values(read, "headers.typeC")).toEqual([{ gbps: 20 }]);
		expect(doubtsOf(read, "headers")).toEqual([]);
	});
	test("a head in capitals ends what stands under a label in small letters", () => {
		const read = page(
			"MEMORY",
			"4x DDR5 DIMM",
			"Highest overclock:",
			"- 8000 MT/s",
			"STORAGE",
			"2x M.2 (2280)",
			"4x SATA 6G",
		);
		expect(values(read, "m2Sockets")).toHaveLength(2);
		expect(values(read, "drivePorts")).toHaveLength(4);
	});
	test("one bar between label and value, a row that begins with it goes on", () => {
		const read = page(
			"Socket|KT7",
			"Memory|4 x DIMM, max. 128 GB, DDR5",
			"Rear USB|1 x USB 20Gbps (Type-C)",
			"|2 x USB 10Gbps (Type-A)",
			"Form factor|ATX",
		);
		expect(values(read, "socket")).toEqual(["KT7"]);
		expect(values(read, "rearUsb")).toEqual([
			{ plug: "C", gbps: 20, count: 1 },
			{ plug: "A", gbps: 10, count: 2 },
		]);
	});
	test("a row of one cell in a table names those below it", () => {
		const read = page(
			"| Product | Board Quern |",
			"| Memory | |",
			"| Type | DDR4 |",
			"| Frequency | 3200 / 2666 MHz |",
		);
		expect(values(read, "memory.highestMtPerS")).toEqual([3200]);
	});
});

describe("card slots", () => {
	const slots = (...lines: readonly string[]) => values(page("Expansion slots", ...lines), "cardSlots");
	test("a shorter way to run in a longer slot", () => {
		expect(slots("2 x PCIe 3.0 x8 (in x16 slot)")).toMatchObject([
			{ lengthLanes: 16, wiredLanes: 8, generation: 3 },
			{ lengthLanes: 16, wiredLanes: 8, generation: 3 },
		]);
	});
	test("a count over as many slots by name tells of each", () => {
		expect(
			slots(
				"2x PCI-E x16 slot",
				"PCI_E1 Gen PCIe 5.0 supports up to x16 (From CPU)",
				"PCI_E2 Gen PCIe 4.0 supports up to x4 (From Chipset)",
			),
		).toEqual([
			{ name: "PCI_E1", bus: "PCI Express", lengthLanes: 16, wiredLanes: 16, generation: 5, from: "processor" },
			{ name: "PCI_E2", bus: "PCI Express", lengthLanes: 16, wiredLanes: 4, generation: 4, from: "chipset" },
		]);
	});
	test.each([
		["All slots are PCIe Gen 3", [3, 3]],
		["(The PCI Express x16 slot conforms to the PCI Express 4.0 standard.)", [4, undefined]],
		["(The PCI Express x1 slots meet the PCI Express 2.0 standard.)", [undefined, 2]],
		["(The PCIEX16 slot and all PCI Express x1 slots conform to PCI Express 3.0.)", [3, 3]],
	])("the generation by a sentence: %s", (note, generations) => {
		expect(
			slots("1 x PCI Express x16 slot (PCIEX16)", "1 x PCI Express x1 slot", note).map(
				(slot) => (slot as { generation?: number }).generation,
			),
		).toEqual(generations);
	});
});

describe("M.2 sockets", () => {
	const sockets = (...lines: readonly string[]) => values(page("Storage", ...lines), "m2Sockets");
	test("what is told of one goes on in the lines below it", () => {
		expect(
			sockets(
				"1x M.2 (M Key) socket (M2A):",
				"Support M.2 Type 2260/2280 SSD module",
				"Support PCI-E 3.0 x4 NVMe & SATA 6Gb/s SSD",
			),
		).toMatchObject([{ key: "M", lengthsMm: [60, 80], generation: 3, wiredLanes: 4, sata: true }]);
	});
	test("with several processors the best is taken", () => {
		expect(
			sockets(
				"M.2_1 slot (Key M), type 2280",
				" - Tarn 9000 Series support PCIe 5.0 x4 mode",
				" - Tarn 8000 Series support PCIe 4.0 x4 mode",
			),
		).toMatchObject([{ name: "M.2_1", generation: 5, wiredLanes: 4, lengthsMm: [80] }]);
	});
	test("a sentence on RAID is no part of a socket", () => {
		expect(sockets("1x M.2 (M Key) socket", "Supports RAID 0 and RAID 1")).toEqual([
			{ name: "M.2 socket 1", key: "M" },
		]);
	});
	test("names glued in one cell", () => {
		expect(
			sockets("M.2_1 slot (Key M), type 2280 (PCIe 5.0 x4 mode)M.2_2 slot (Key M), type 2280 (PCIe 4.0 x4 mode)"),
		).toMatchObject([
			{ name: "M.2_1", generation: 5 },
			{ name: "M.2_2", generation: 4 },
		]);
	});
	test("connectors by their sort, as data sheets write it", () => {
		const read = page(
			"Storage Interfaces\tSATA-600 -connectors: 4 x 7pin Serial ATA - RAID 0 / RAID 1",
			"\tPCIe 4.0 x4/SATA-600 -connectors: 1 x M.2",
		);
		expect(values(read, "drivePorts")).toHaveLength(4);
		expect(values(read, "m2Sockets")).toMatchObject([{ generation: 4, wiredLanes: 4, sata: true }]);
	});
	test.each(["none", "ne", "nein", "brak", "nincs"])("M.2: %s", (word) => {
		expect(page("Socket: KT7", `M.2: ${word}`).facts.find(({ fact }) => fact === "m2Sockets")?.value).toEqual([]);
	});
	test("a socket for a modem is none for drives", () => {
		expect(sockets("1 x M.2 2280 M Key (PCIe 4.0 x4)", "1 x M.2 3042 B Key for 5G modem")).toHaveLength(1);
	});
});

describe("falling back", () => {
	const lists = [
		"Expansion slots",
		"1 x PCIe 5.0 x16 slot (PCIE1), runs at x16",
		"1 x PCIe 4.0 x16 slot (PCIE3), x4 mode",
		"",
		"Storage",
		"M.2_1 slot (Key M), type 2280 (PCIe 5.0 x4 mode)",
		"M.2_2 slot (Key M), type 2280 (PCIe 4.0 x4 mode)",
	];
	const sharing = (note: string) => values(page(...lists, note), "sharing");
	const group = (slot: string, all: number, left: number, drive: string) => [
		{ members: [slot, drive], modes: [{ on: { [slot]: all } }, { on: { [drive]: 4, [slot]: left } }] },
	];
	test.each([
		["* PCIE3 will run at x2 when a device is installed in M.2_2.", group("PCIE3", 4, 2, "M.2_2")],
		["* If M.2_1 is occupied, PCIE1 will downgrade to x8 mode.", group("PCIE1", 16, 8, "M.2_1")],
		["* When M.2_1 is used, PCIE1 runs at x8.", group("PCIE1", 16, 8, "M.2_1")],
		["* Wenn M.2_1 belegt ist, läuft PCIE1 mit x8.", []],
	])("%s", (note, groups) => {
		expect(sharing(note)).toEqual(groups);
	});
	test("one falls back and another is off", () => {
		expect(sharing("* When M.2_1 is used, PCIE3 is disabled and PCIE1 runs at x8.")).toEqual([
			{
				members: ["PCIE1", "PCIE3", "M.2_1"],
				modes: [{ on: { PCIE1: 16, PCIE3: 4 } }, { on: { "M.2_1": 4, PCIE1: 8 } }],
			},
		]);
	});
	test("slots without names are meant by their order", () => {
		const read = page(
			"Expansion slots",
			"1 x PCIe 5.0 x16 slot (x16 mode)",
			"1 x PCIe 4.0 x16 slot (x4 mode)",
			"",
			"Storage",
			"M.2_4 slot (Key M), type 2280 (PCIe 4.0 x4 mode)",
			"* When PCIEX16_2 is operating in x4 mode, M.2_4 will be disabled.",
		);
		expect(read.facts.filter(({ fact }) => fact.startsWith("sharing"))).toMatchObject([
			{
				value: { members: ["Card slot 2", "M.2_4"], modes: [{ on: { "Card slot 2": 4 } }, { on: { "M.2_4": 4 } }] },
				standing: "assumed",
			},
		]);
	});
	test.each([
		"* PCIE3 runs at x4 when M.2_2 is used.",
		"* PCIE9 runs at x2 when M.2_2 is used.",
		"* PCIE1 runs at x8 when a second card is installed.",
	])("nothing is noted where no lanes are lost, or a name is unknown: %s", (note) => {
		expect(sharing(note)).toEqual([]);
	});
	test("the one M.2 socket of a board may be called just so", () => {
		const read = page(
			"Storage",
			"2 x SATA 6Gb/s ports",
			"1 x M.2 socket (Key M), type 2280 (PCIe 3.0 x4 and SATA)",
			"* SATA_2 will be unavailable when a SATA drive is installed in the M.2 socket.",
		);
		expect(values(read, "sharing")).toEqual([
			{
				members: ["M.2 socket 1", "SATA 2"],
				modes: [{ on: { "M.2 socket 1": 4 } }, { on: { "SATA 2": 1 } }],
				onlyWithSata: ["M.2 socket 1"],
			},
		]);
	});
});

describe("counted things", () => {
	test("plugs for the processor: counts before pins, joined ones", () => {
		expect(
			values(page("Power connectors", "1 24-pin main ATX power", "2 8-pin CPU power"), "power.processorPlugs"),
		).toEqual(["8-pin", "8-pin"]);
		expect(
			values(page("Internal interface\t1*24Pin ATX power", "\t1*8Pin + 1*4Pin CPU power"), "power.processorPlugs"),
		).toEqual(["8-pin", "4-pin"]);
		expect(values(page("power: 24-pin, 8-pin + 4-pin for the CPU"), "power.processorPlugs")).toEqual([
			"8-pin",
			"4-pin",
		]);
	});
	test("a socket for care from afar is none of the network's", () => {
		expect(values(page("LAN: 2 x RJ45 10GbE + 1 x RJ45 dedicated IPMI"), "wiredGbps")).toEqual([[10, 10]]);
	});
	test("a graphics chipset is not the board's, nor is a system on a chip one", () => {
		expect(values(page("Chipset: K720", "Onboard graphics chipset: B250"), "chipset")).toEqual(["K720"]);
		expect(values(page("Chipset: System on Chip", "Socket: KT7"), "chipset")).toEqual([]);
	});
	test("a maker before the socket's name", () => {
		expect(values(page("CPU socket: Fernwick KT7"), "socket")).toEqual(["KT7"]);
	});
	test("fan headers of a label, counted by pins; what watches fans is none", () => {
		const read = page("Fan: 6 x 4-pin fan headers", "6 fans with tachometer status");
		expect(values(read, "headers.fans")).toHaveLength(6);
	});
	test("SATA drives that another connector takes are no ports", () => {
		expect(
			values(page("Storage", "4 x SATA 6Gb/s ports", "1 x SlimSAS, for PCIe 4.0 x4 or 4 x SATA devices"), "drivePorts"),
		).toHaveLength(5);
	});
	test("sockets at both places, by header, with and without words for each", () => {
		const read = page(
			"USB ports",
			"- 3 x USB 3.2 Gen2 ports (1 x Type-C + 1 x Type-A on the rear I/O, 1 x Type-C via 1 internal header)",
			"- 4 x USB 2.0 ports (2 external, 2 internal via 1 header)",
		);
		expect(values(read, "rearUsb")).toEqual([
			{ plug: "C", gbps: 10, count: 1 },
			{ plug: "A", gbps: 10, count: 1 },
			{ plug: "A", gbps: 0.48, count: 2 },
		]);
		expect(values(read, "headers.typeC")).toEqual([{ gbps: 10 }]);
		expect(values(read, "headers.usb2")).toEqual([1]);
	});
	test("in a sentence: what the back offers, what headers add", () => {
		const read = page(
			"The rear panel offers one USB 10Gbps Type-C port and three USB 5Gbps Type-A ports, and internal headers add two USB 2.0 ports.",
		);
		expect(values(read, "rearUsb")).toEqual([
			{ plug: "C", gbps: 10, count: 1 },
			{ plug: "A", gbps: 5, count: 3 },
		]);
	});
});

describe("sizes", () => {
	test("the standard says which side lies along the back", () => {
		const read = page("Form factor: ATX", "Width: 225 mm", "Length: 305 mm");
		expect([values(read, "widthMm"), values(read, "depthMm")]).toEqual([[305], [225]]);
	});
	test("of an unknown form the sides stay as they are named", () => {
		const read = page("Width: 225 mm", "Depth: 305 mm");
		expect([values(read, "widthMm"), values(read, "depthMm")]).toEqual([[225], [305]]);
	});
	test.each([
		["Width: 9.6 in (24.4 cm)", "Depth: 9.6 in (24.4 cm)"],
		["Width: 9.6in - 244mm", "Length: 9.6in - 244mm"],
	])("%s", (width, depth) => {
		const read = page("Form factor: microATX", width, depth);
		expect([values(read, "widthMm"), values(read, "depthMm")]).toEqual([[244], [244]]);
	});
	test.each([
		'Dimensions: Mini-ITX, 170mm (6.7") x 170mm (6.7")',
		"Fator de Forma: Mini-ITX, 6.7 pol. x 6.7 pol. (17 cm x 17 cm)",
		"フォームファクター: Mini-ITX、6.7 インチ x 6.7 インチ(17 cm x 17 cm)",
	])("%s", (line) => {
		expect([values(page(line), "form"), values(page(line), "widthMm")]).toEqual([["Mini-ITX"], [170]]);
	});
});

describe("warranty", () => {
	test.each([
		["Warranty: 3 years", 3],
		["Warranty\t36 months", 3],
		["Garantie: 2 Jahre", 2],
		["Gwarancja: 36 miesięcy (gwarancja producenta)", 3],
		["Bảo hành: 36 tháng", 3],
		["保修: 3年", 3],
		["This board has a 5-year limited warranty", 5],
	])("%s", (line, years) => {
		expect(values(page("Socket: KT7", line), "warrantyYears")).toEqual([years]);
	});
	test.each([
		"Warranty: 3 years, 2 years in the shop",
		"Warranty: 3 years extended",
		"Warranty: 90 days",
		"Warranty: 40 years",
		"Warranty: 7 months",
		"In the trade for 30 years",
	])("%s: nothing is taken", (line) => {
		expect(values(page("Socket: KT7", line), "warrantyYears")).toEqual([]);
	});
});

describe("memory", () => {
	test.each([
		["Maximum memory: 128 GB", "Maximum memory per slot: 32 GB"],
		["Capacité maximale de RAM: 128 Go", "Capacité maximale de RAM par slot: 32 Go"],
		["Supports up to 128 GB", "Each DIMM supports 4/8/16/32 GB modules"],
		["Máx. 128 GB", "32 GB por módulo"],
	])("what one module may have is not the most: %s, %s", (...lines) => {
		const read = page("Memory", "4 x DIMM, DDR4", ...lines);
		expect(values(read, "memory.maxGb")).toEqual([128]);
		expect(doubtsOf(read, "memory.maxGb")).toEqual([]);
	});
	test("a size that no line calls the most stays open", () => {
		expect(doubtsOf(page("Memory", "4 x DIMM, DDR4", "128 GB"), "memory.maxGb")).toHaveLength(1);
	});
	test("a row of rates with commas, and one with a space for the thousands", () => {
		expect(values(page("Memory rates: 2133,2400,2666,3200 MHz", "Memory: DDR4"), "memory.highestMtPerS")).toEqual([
			3200,
		]);
		expect(values(page("Frekvence paměti: 3 200 MHz", "Typ paměti: DDR4"), "memory.highestMtPerS")).toEqual([3200]);
	});
});

describe("cells with nothing between them", () => {
	const glued = [
		"General",
		"CPU SocketKT7",
		"ChipsetFernwick K720",
		"Form FactorATX",
		"Dimensions305 x 244 mm",
		"Memory Slots4",
		"Max. Memory128GB",
		"USB4x USB 2.0 (Rear)",
		"PCI Express 5.0 x162 x PCI Express 5.0 x16 slots",
		"M.2M.2_1 slot (Key M), type 2280 (PCIe 5.0 x4 mode)",
		"HDMI 2.11",
		"CPU Fan1",
		"System Fan5",
	];
	test("labels and counts are told from their values", () => {
		const read = page(...glued);
		expect(values(read, "socket")).toEqual(["KT7"]);
		expect(values(read, "chipset")).toEqual(["K720"]);
		expect(values(read, "form")).toEqual(["ATX"]);
		expect(values(read, "memory.slots")).toEqual([4]);
		expect(values(read, "memory.maxGb")).toEqual([128]);
		expect(values(read, "rearUsb")).toEqual([{ plug: "A", gbps: 0.48, count: 4 }]);
		expect(values(read, "cardSlots")).toHaveLength(2);
		expect(values(read, "m2Sockets")).toMatchObject([{ name: "M.2_1", generation: 5 }]);
		expect(values(read, "pictureSockets")).toEqual(["HDMI"]);
		expect(values(read, "headers.fans")).toHaveLength(6);
	});
	test("quotes keep the words of the page", () => {
		expect(page(...glued).facts.find(({ fact }) => fact === "socket")?.quote).toBe("CPU SocketKT7");
	});
	test("a name with a capital within is no label, nor is one line enough", () => {
		const read = page("Socket: KT7", "Processors of FernCo for the desk", "ChipsetK720", "Memory: DDR5", "Slots: 4");
		expect(values(read, "chipset")).toEqual([]);
	});
	test("rows of an article's number, a label, a value and its unit", () => {
		const rows = [
			"Description;Board Quern;",
			"Socket;KT7;",
			"Width;17;cm",
			"Depth;17;cm",
			"Form factor;Mini-ITX;",
			"Memory max.;96;GB",
			"Slot PCIe x16 4.0;1;pcs",
			"Slot PCIe x8;0;pcs",
			"M.2 socket 1;PCIe 5.0 x4, 2280;",
			"M.2 socket 2;PCIe 4.0 x4, 2280;",
			"USB 2.0 int. (header);1;pcs",
		];
		const read = page("Article;Attribute;Value;Unit", ...rows.map((row) => `A1108;${row}`));
		expect(values(read, "widthMm")).toEqual([170]);
		expect(values(read, "memory.maxGb")).toEqual([96]);
		expect(values(read, "cardSlots")).toMatchObject([{ lengthLanes: 16, generation: 4 }]);
		expect(values(read, "m2Sockets")).toMatchObject([{ generation: 5 }, { generation: 4 }]);
		expect(values(read, "headers.usb2")).toEqual([1]);
	});
});

describe("what a label stands over", () => {
	test("a sentence between labels is no head over all that follows", () => {
		const read = page(
			"Memory: 2 x DDR4 DIMM",
			"Supports profiles of the memory and more",
			"Video: 1 x HDMI, 1 x VGA",
			"Back panel:",
			"1 x HDMI",
			"1 x VGA",
			"2 x USB 2.0",
		);
		expect(values(read, "pictureSockets")).toEqual(["HDMI", "VGA"]);
	});
	test("a list that begins on the line of its label goes on below it", () => {
		const read = page(
			"Back panel:",
			"2 x USB 2.0",
			"Internal connectors: 1 x USB 3.2 Gen 1 header (2 ports)",
			"2 x USB 2.0 header (4 ports)",
		);
		expect(values(read, "rearUsb")).toEqual([{ plug: "A", gbps: 0.48, count: 2 }]);
		expect(values(read, "headers.usb2")).toEqual([2]);
	});
	test("connectors at the front are headers, be they called so or not", () => {
		const read = page(
			"USB:",
			"Rear USB: total 2 ports",
			"2 x USB 2.0 (2 x Type-A)",
			"Front USB: total 5 ports",
			"1 x USB 20Gbps connector (supports USB Type-C)",
			"1 x USB 5Gbps (19-pin, 2 ports)",
			"4 x USB 2.0 (2 x 9-pin headers)",
		);
		expect(values(read, "headers.typeC")).toEqual([{ gbps: 20 }]);
		expect(values(read, "headers.usb5")).toEqual([1]);
		expect(values(read, "headers.usb2")).toEqual([2]);
	});
	test("a header's sockets are not counted as headers of their own", () => {
		const read = page(
			"USB",
			"Rear USB: 2 ports",
			"2 x USB 2.0 ports",
			"Front USB: 6 ports",
			"2 x USB 2.0 headers support additional 4 USB 2.0 ports",
			"1 x USB 3.2 Gen 1 header supports 2 additional USB 3.2 Gen 1 ports",
		);
		expect(values(read, "rearUsb")).toEqual([{ plug: "A", gbps: 0.48, count: 2 }]);
		expect([values(read, "headers.usb2"), values(read, "headers.usb5")]).toEqual([[2], [1]]);
	});
	test("an older generation behind a slash is that of older processors", () => {
		expect(values(page("Slots", "1 x PCIe 4.0/3.0 x16"), "cardSlots")).toMatchObject([{ generation: 4 }]);
	});
	test("a fan of all, then which: counted once", () => {
		expect(values(page("On board", "7 x fan 4-pin PWM: 1 CPU, 1 pump (3 A), 5 chassis"), "headers.fans")).toHaveLength(
			7,
		);
	});
});

describe("letters of other alphabets", () => {
	test("Japanese", () => {
		const read = page(
			"メモリ",
			"4 x DIMMスロット、最大256GB、DDR5",
			"",
			"USB",
			"背面USB(合計3ポート)",
			" 1 x USB 10Gbpsポート(1 x USB Type-C®)",
			" 2 x USB 5Gbpsポート(2 x Type-A)",
			"",
			"内部I/Oコネクター",
			" 1 x 4ピンCPUファンヘッダー",
			" 3 x 4ピンシャーシファンヘッダー",
			" 2 x 8ピン +12V電源コネクター",
		);
		expect(values(read, "memory.maxGb")).toEqual([256]);
		expect(values(read, "rearUsb")).toEqual([
			{ plug: "C", gbps: 10, count: 1 },
			{ plug: "A", gbps: 5, count: 2 },
		]);
		expect(values(read, "headers.fans")).toHaveLength(4);
		expect(values(read, "power.processorPlugs")).toEqual(["8-pin", "8-pin"]);
	});
	test("Chinese", () => {
		const read = page(
			"存储\t2*SATA3.0(7Pin),1*M.2 M-KEY 2280(PCIe 3.0 x2 NVMe)",
			"后置I/O\t1*HDMI",
			"\t2*USB3.2 Gen2 Type-A",
			"板载I/O\t1*CPU风扇接口(4Pin)",
			"\t1*系统风扇接口(4Pin)",
			"\t2*USB2.0插针(可扩展4个USB2.0)",
		);
		expect(values(read, "drivePorts")).toHaveLength(2);
		expect(values(read, "m2Sockets")).toMatchObject([{ key: "M", generation: 3, wiredLanes: 2, lengthsMm: [80] }]);
		expect(values(read, "headers.fans")).toHaveLength(2);
		expect(values(read, "headers.usb2")).toEqual([2]);
	});
	test.each([
		["Áudio: 7.1", "sound.channels", 8],
		["Zvuková karta: integrovaná, 7.1", "sound.channels", 8],
		["Hangkártya: 7.1", "sound.channels", 8],
	])("letters with accents begin words too: %s", (line, fact, value) => {
		expect(values(page("Socket: KT7", line), fact)).toEqual([value]);
	});
});
