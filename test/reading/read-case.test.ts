import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pcCase } from "../../src/parts/case.ts";
import { readCase } from "../../src/reading/read-case.ts";
import { specLikeText } from "./spec-like-text.ts";

const stated = (text: string) =>
	Object.fromEntries(
		readCase(text)
			.facts.filter(({ standing }) => standing === "stated")
			.map(({ fact, value }) => [fact, value]),
	);
const asked = (text: string) => readCase(text).doubts.map(({ fact }) => fact);

const germanPage = `Kastanie 20 Midi-Tower

Mainboard-Formate: Mini-ITX, Micro-ATX, ATX, E-ATX (bis 272 mm)
Netzteil: 1x ATX (max. 190 mm, optional)
Erweiterungsslots: 7
Laufwerksschächte
2x 3,5 Zoll (intern)
3x 2,5 Zoll (intern)
Front-Anschlüsse
2x USB 3.0 Typ A
1x USB 3.2 Gen 2 Typ C
1x Mikrofon
Lüfter
Vorne: 3x 120 mm oder 2x 140 mm (2x 140 mm vorinstalliert)
Hinten: 1x 120 mm
Radiator
Vorne: max. 360 mm
Maximale Grafikkartenlänge: 35,5 cm (ohne Radiator in der Front)
Maximale CPU-Kühler-Höhe: 16,3 cm
`;

test("a German page, its lengths in cm", () => {
	const reading = readCase(germanPage);
	expect(reading.doubts).toEqual([]);
	expect(reading.part).toMatchObject({
		name: "Kastanie 20 Midi-Tower",
		boardForms: ["E-ATX", "ATX", "microATX", "Mini-ITX"],
		boardMaxDepthMm: 272,
		supplyForms: ["ATX"],
		supplyMaxLengthMm: 190,
		supplyIncludedW: 0,
		cardSlots: 7,
		driveBays: { inch35: 2, inch25: 3 },
		frontSockets: ["USB 3.0 Type-A", "USB 3.0 Type-A", "USB 3.2 Gen 2 Type-C", "microphone"],
		fanPlaces: [
			{ place: "front", sizeMm: 120, count: 3 },
			{ place: "front", sizeMm: 140, count: 2, fitted: 2 },
			{ place: "rear", sizeMm: 120, count: 1 },
		],
		radiatorPlaces: [{ place: "front", lengthsMm: [360] }],
		cardMaxLengthMm: 355,
		coolerMaxHeightMm: 163,
	});
	expect(pcCase.safeParse(reading.part).success).toBe(true);
});

test("plugs follow from the sockets, and are no more than assumed", () => {
	const plugs = readCase(germanPage).facts.filter(({ fact }) => fact.startsWith("frontPlugs"));
	expect(plugs.map(({ value, standing }) => [value, standing])).toEqual([
		[{ plug: "USB-C 20-pin", count: 1, gbps: 10 }, "assumed"],
		[{ plug: "USB 19-pin", count: 1, gbps: 5 }, "assumed"],
		[{ plug: "sound", count: 1 }, "assumed"],
	]);
});

test("every quote stands in the text, and the part keeps it as evidence", () => {
	const reading = readCase(germanPage);
	for (const { quote } of reading.facts) for (const words of quote.split(" / ")) expect(germanPage).toContain(words);
	expect(reading.part.evidence?.["cardMaxLengthMm"]?.quote).toContain("35,5 cm");
});

test("a Markdown table with a column for each size of fan", () => {
	const text = "| Place | 120 mm | 140 mm |\n| --- | --- | --- |\n| Front | 3 | 2 |\n| Top | 2 | - |\n";
	expect(readCase(text).part.fanPlaces).toEqual([
		{ place: "front", sizeMm: 120, count: 3 },
		{ place: "front", sizeMm: 140, count: 2 },
		{ place: "top", sizeMm: 120, count: 2 },
	]);
});

test("rows under a row of a table of tabs belong to it", () => {
	const text = "Model\tAlder 4\nRadiator\tFront\tUp to 360 mm\n\tTop\tUp to 240 mm / 280 mm\nWarranty\t2 years\n";
	expect(readCase(text).part).toMatchObject({
		name: "Alder 4",
		radiatorPlaces: [
			{ place: "front", lengthsMm: [360] },
			{ place: "top", lengthsMm: [240, 280] },
		],
	});
});

describe("lengths", () => {
	test.each([
		["Max. GPU Length: 14.5 in (368 mm)", { cardMaxLengthMm: 368 }],
		["Max GPU length (mm): 385", { cardMaxLengthMm: 385 }],
		[
			"GPU: up to 390 mm w/o front radiator, up to 360 mm with front radiator",
			{ cardMaxLengthMm: 390, cardMaxLengthWithRadiatorMm: 360 },
		],
		["GPU: 390 mm (360 mm with 360 mm front radiator)", { cardMaxLengthMm: 390, cardMaxLengthWithRadiatorMm: 360 }],
		["Front radiator installed: GPU max 345 mm", { cardMaxLengthWithRadiatorMm: 345 }],
		["VGA length: 420 mm (without HDD cage) / 310 mm (with HDD cage)", { cardMaxLengthMm: 310 }],
		["Graphics card: up to 322 mm long and 140 mm high", { cardMaxLengthMm: 322, cardMaxHeightMm: 140 }],
		["Max. GPU length 400 mm (vertical: 360 mm)", { cardMaxLengthMm: 400 }],
		[
			"Clearance: GPU 330 mm / CPU 165 mm / PSU 180 mm",
			{ cardMaxLengthMm: 330, coolerMaxHeightMm: 165, supplyMaxLengthMm: 180 },
		],
		["GPU / CPU cooler clearance: 330 mm / 165 mm", { cardMaxLengthMm: 330, coolerMaxHeightMm: 165 }],
		["GPU support bracket: up to 330 mm", {}],
		["Maximum GPU thickness: 160 mm", {}],
	])("%s", (line, facts) => {
		expect(stated(`Page\n\n${line}\nWeight: 7 kg\n`)).toEqual(facts);
	});

	test.each([
		["GPU clearance: 330-350 mm", "cardMaxLengthMm"],
		['Graphics card length up to 15" / 330 mm', "cardMaxLengthMm"],
		["GPU Length: 395 mm (without front fan), 370 mm (with front fan)", "cardMaxLengthMm"],
		["GPU length: 410 mm (without HDD cage)", "cardMaxLengthMm"],
		["GPU clearance (front radiator): 300 mm", "cardMaxLengthMm"],
		["CPU cooler: 165 mm\nMax. CPU cooler height: 160 mm", "coolerMaxHeightMm"],
		["CPU/GPU clearance: 165 / 330 mm", "cardMaxLengthMm"],
	])("%s is a doubt", (line, fact) => {
		const text = `Page\n\n${line}\nWeight: 7 kg\n`;
		expect(stated(text)).toEqual({});
		expect(asked(text)).toContain(fact);
	});
});

describe("boards", () => {
	test.each([
		["M/B: ITX / M-ATX / ATX (E-ATX 280 mm)", ["E-ATX", "ATX", "microATX", "Mini-ITX"]],
		["Mainboards\nATX\nMicro ATX\nMini ITX", ["ATX", "microATX", "Mini-ITX"]],
		["Motherboard Support: ATX, mATX\nCase Type: Mid Tower E-ATX", ["ATX", "microATX"]],
		["Motherboards: SSI-EEB, SSI-CEB, ATX", ["SSI EEB", "SSI CEB", "ATX"]],
	])("%s", (line, forms) => {
		expect(stated(`Page\n\n${line}\nWeight: 7 kg\n`)["boardForms"]).toEqual(forms);
	});

	test("up to a size: the smaller ones are assumed, and a printed list goes before", () => {
		const upTo = readCase("Motherboard: up to ATX\nWeight: 7 kg");
		expect(upTo.facts).toMatchObject([{ value: ["ATX", "microATX", "Mini-ITX"], standing: "assumed" }]);
		const listed = "Motherboard: up to ATX\nMotherboard support: ATX, Mini-ITX";
		expect(stated(listed)["boardForms"]).toEqual(["ATX", "Mini-ITX"]);
	});

	test.each(["Motherboard: ATX, Micro-ATX (no E-ATX)", "Form factor: ATX", "Motherboard: ATX\nMainboard: Mini-ITX"])(
		"%s is a doubt",
		(line) => {
			expect(stated(line)).toEqual({});
			expect(asked(line)).toEqual(["boardForms"]);
		},
	);

	test("inches beside E-ATX give its depth", () => {
		expect(stated('Motherboard: ATX, E-ATX (12" x 10.7")')["boardMaxDepthMm"]).toBe(271.8);
	});
});

describe("slots, bays, supply", () => {
	test.each([
		["Expansion Slots: 7 + 2 (vertical)", { cardSlots: 7, uprightSlots: 2 }],
		["Expansion slots: 8 (5 horizontal + 3 vertical)", { cardSlots: 5, uprightSlots: 3 }],
		["Expansion Slots: 7 (vertical mounting possible)", { cardSlots: 7 }],
		["Expansion Slots: 5+2", { cardSlots: 5 }],
		['Drive Bays: 3.5" x 2 / 2.5" x 4', { "driveBays.inch35": 2, "driveBays.inch25": 4 }],
		['3.5" drive bays: 0', { "driveBays.inch35": 0 }],
		['Drive bays: 2 x 3.5"/2.5" combo', { "driveBays.inch35": 2 }],
		['Drive bays: 3.5" x 2 or 2.5" x 4', {}],
		["Power supply: 450W SFX included", { supplyIncludedW: 450, supplyForms: ["SFX"] }],
		["Power supply: PS/2, up to 850 W", { supplyForms: ["ATX"] }],
	])("%s", (line, facts) => {
		expect(stated(`Page\n\n${line}\nWeight: 7 kg\n`)).toEqual(facts);
	});

	test("slots behind a plus with no word are assumed to be upright", () => {
		expect(readCase("Expansion Slots: 5+2").facts).toMatchObject([
			{ fact: "cardSlots", standing: "stated" },
			{ fact: "uprightSlots", value: 2, standing: "assumed" },
		]);
	});
});

describe("fans and radiators", () => {
	const placed = (line: string) => {
		const { fanPlaces = [], radiatorPlaces = [] } = readCase(`Page\n\n${line}\nWeight: 7 kg\n`).part;
		return [
			...fanPlaces.map(
				({ place, count, sizeMm, fitted }) =>
					`${place} ${count}x${sizeMm}${fitted === undefined ? "" : ` ${fitted} in`}`,
			),
			...radiatorPlaces.map(({ place, lengthsMm }) => `${place} ${lengthsMm.join("/")}`),
		];
	};

	test.each([
		["Fans: 120mm x 3 (front, optional), 120mm x 1 (rear, included)", ["front 3x120 0 in", "rear 1x120 1 in"]],
		["Fan Support: Top: 3 x 12 cm; Rear: 1 x 12 cm or 1 x 14 cm", ["top 3x120", "rear 1x120", "rear 1x140"]],
		["Front fans: 2 x 120/140 mm", ["front 2x120", "front 2x140"]],
		["Fan Support: Front: 3x120mm\nFans Included: Front 2x120mm", ["front 3x120 2 in"]],
		["Zwei 120-mm-Lüfter in der Front, ein 120-mm-Lüfter im Heck", ["front 2x120", "rear 1x120"]],
		["Front: 3x120mm fans or 1x360mm radiator; Top: 2x140mm fans", ["front 3x120", "top 2x140", "front 360"]],
		["Water Cooling: Front 360/280mm, Top 240mm", ["front 280/360", "top 240"]],
		["Radiator: 360 mm front, 120 mm rear", ["front 360", "rear 120"]],
		["Cooling\nFront\n3 x 120 mm\nTop\n2 x 140 mm", ["front 3x120", "top 2x140"]],
		["Fan speed: 1200 RPM, 120 x 120 x 25 mm", []],
	])("%s", (line, places) => {
		expect(placed(line)).toEqual(places);
		expect(asked(line)).toEqual([]);
	});

	test.each([
		["Fan support: 6 x 120 mm", "fanPlaces"],
		["Top/front fan: 3 x 120 mm", "fanPlaces"],
		["Top fans: 2 x 120 mm, 1 x 120 mm rear", "fanPlaces"],
		["Top fan support: 3 x 120mm\nTop fan support: 2 x 120mm", "fanPlaces"],
		["Front Radiator: 60 mm", "radiatorPlaces"],
		["Radiator: Front 3 x 120 mm", "radiatorPlaces"],
		["Radiator: 360 mm", "radiatorPlaces"],
	])("%s is a doubt", (line, fact) => {
		expect(placed(line)).toEqual([]);
		expect(asked(line)).toContain(fact);
	});
});

describe("the front", () => {
	test.each([
		["I/O Port: USB3.0 x1, USB2.0 x2, HD Audio x1", ["USB 3.0", "USB 2.0", "USB 2.0", "sound"]],
		["Front I/O: 1x USB-C (10 Gbps), 2x USB-A (5 Gbps)", ["USB 10Gbps Type-C", "USB 5Gbps Type-A", "USB 5Gbps Type-A"]],
		["USB: 3.2 Gen 1 x 2", ["USB 3.2 Gen 1", "USB 3.2 Gen 1"]],
		["RGB hub: 1 x USB 2.0 header", undefined],
	])("%s", (line, sockets) => {
		expect(stated(line)["frontSockets"]).toEqual(sockets);
	});

	test("a USB-C socket without a rate leaves the plugs open", () => {
		expect(asked("Front I/O: 1x USB-C, 1x audio")).toEqual(["frontPlugs"]);
	});

	test("two lanes or two sockets", () => {
		expect(asked("Front I/O: USB 3.2 Gen 2 x 2")).toEqual(["frontSockets"]);
	});

	test("mesh is read where the front is said to be of it", () => {
		expect(stated("Front panel: mesh")["frontOpen"]).toBe("mesh");
		expect(stated("Mesh side panel")["frontOpen"]).toBeUndefined();
		expect(asked("Front Side: Tempered glass")).toEqual(["frontOpen"]);
	});
});

test("whatever is pasted, the part is valid and nothing throws", () => {
	fc.assert(
		fc.property(specLikeText, (text) => {
			const { part, facts } = readCase(text);
			expect(pcCase.safeParse(part).success).toBe(true);
			expect(facts.every(({ quote }) => quote !== "")).toBe(true);
		}),
	);
});

test("lines of a page in any order, some of them twice, make a valid part", () => {
	const lines = germanPage.split("\n");
	fc.assert(
		fc.property(fc.array(fc.constantFrom(...lines), { maxLength: 40 }), (shuffled) => {
			const { part, facts, doubts } = readCase(shuffled.join("\n"));
			expect(pcCase.safeParse(part).success).toBe(true);
			const inDoubt = new Set(doubts.map(({ fact }) => fact));
			expect(facts.filter(({ fact }) => inDoubt.has(fact))).toEqual([]);
		}),
	);
});
