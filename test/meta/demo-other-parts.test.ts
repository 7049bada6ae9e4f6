import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { editDistance } from "../../src/maths/edit-distance.ts";
import { checkParts } from "../../src/parts/check-parts.ts";
import { partsFile } from "../../src/parts/market.ts";
import { type PartKind, type PartOf, partKindNames, partKinds } from "../../src/parts/part-kinds.ts";
import { boardForms } from "../../src/reference/board-forms.ts";
import { holesOfForm } from "../../src/reference/board-holes.ts";
import { gbytesPerSecond, type LinkGeneration } from "../../src/reference/link-bandwidth.ts";
import { graphicsPlugs } from "../../src/reference/power-plugs.ts";
import { slotPitch } from "../../src/reference/slot-pitch.ts";

/** What demo-market.test.ts does for boards: that all other parts are plausible, and that each trap is still set. */

const folder = fileURLToPath(new URL("../../data/demo", import.meta.url));
const rawFiles = readdirSync(folder)
	.sort()
	.map((name) => ({ name, content: JSON.parse(readFileSync(join(folder, name), "utf8")) as unknown }));
const files = rawFiles.map(({ content }) => partsFile.safeParse(content).data).filter((file) => file !== undefined);
const listed = <K extends PartKind>(kind: K) =>
	files.flatMap((file) => (file[partKinds[kind].list] ?? []) as readonly unknown[] as readonly PartOf<K>[]);
const one = <K extends PartKind>(kind: K, id: string): PartOf<K> => {
	const found = listed(kind).find((part) => part.id === id);
	if (!found) throw new Error(`no ${kind} has the id ${id}`);
	return found;
};
const idsWhere = <K extends PartKind>(kind: K, holds: (part: PartOf<K>) => boolean) =>
	listed(kind)
		.filter(holds)
		.map(({ id }) => id);
/** Every value a fact takes over a kind, each once, smallest first. */
const values = <T extends string | number>(all: readonly (T | undefined)[]) =>
	[...new Set(all.filter((value) => value !== undefined))].sort((a, b) =>
		typeof a === "number" && typeof b === "number" ? a - b : String(a) < String(b) ? -1 : 1,
	);

/** The fewest parts of each kind that the market is to have. */
const fewest = {
	case: 18,
	graphicsCard: 14,
	memory: 12,
	drive: 12,
	addInCard: 9,
	cooler: 14,
	supply: 12,
	fans: 5,
	lighting: 5,
	monitor: 5,
} as const;
const kinds = Object.keys(fewest) as (keyof typeof fewest)[];

test.each(rawFiles.filter(({ name }) => name === "cases.json" || name === "other-parts.json"))(
	"$name passes the check of parts files",
	({ content }) => {
		const { value, faults } = checkParts(content) as { value: unknown; faults?: unknown };
		expect(faults ?? []).toEqual([]);
		expect(value).not.toBeNull();
	},
);

describe.each(kinds)("every %s", (kind) => {
	const parts = listed(kind);

	test("is one of enough", () => expect(parts.length).toBeGreaterThanOrEqual(fewest[kind]));

	test("has an id of its own, which is its name in small letters", () => {
		expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
		const strange = parts.filter(({ id, name }) => id !== name.toLowerCase().replaceAll(" ", "-"));
		expect(strange.map(({ id }) => id)).toEqual([]);
	});

	test("is invented, with a maker, a price above nothing, and the day it was seen", () => {
		for (const { id, invented, maker, price, checkedOn = "" } of parts) {
			expect([id, invented, price?.currency], id).toEqual([id, true, "EUR"]);
			expect(maker?.length, id).toBeGreaterThan(0);
			expect(price?.minor, id).toBeGreaterThan(0);
			expect(checkedOn >= "2026-11-10" && checkedOn <= "2026-11-22", `${id} ${checkedOn}`).toBe(true);
		}
	});

	test("that is handed down says so with a used offer at its price, and has no warranty left", () => {
		const usedIds = idsWhere(kind, ({ offers = [] }) => offers.some(({ condition }) => condition === "used"));
		expect(usedIds).toEqual(idsWhere(kind, ({ warrantyYears }) => warrantyYears === 0));
		for (const id of usedIds) expect(one(kind, id).offers?.[0]?.price).toEqual(one(kind, id).price);
	});
});

test("no two names of the market are alike", () => {
	const names = partKindNames
		.filter((kind) => kind !== "platform")
		.flatMap((kind) => listed(kind).map(({ name }) => name.toLowerCase()));
	const mine = kinds.flatMap((kind) => listed(kind).map(({ name }) => name.toLowerCase()));
	const alike = mine.flatMap((name) =>
		names.filter((other) => other !== name && editDistance(name, other) < 4).map((other) => `${name} / ${other}`),
	);
	expect(alike).toEqual([]);
	expect(mine.filter((name) => names.filter((other) => other === name).length > 1)).toEqual([]);
});

test("five kinds have two makers, each with more than one part", () => {
	const makers = (kind: (typeof kinds)[number]) => values(listed(kind).map(({ maker }) => maker));
	for (const kind of ["case", "graphicsCard", "memory", "cooler", "supply"] as const) {
		expect(makers(kind).length, kind).toBe(2);
		for (const maker of makers(kind))
			expect(idsWhere(kind, (part) => part.maker === maker).length, maker).toBeGreaterThan(1);
	}
});

/** Radiators are built for fans of 120 or 140 mm side by side (common practice, no source). */
const radiatorLengths = [120, 140, 240, 280, 360, 420];
const fansAlong = (lengthMm: number) => lengthMm / (lengthMm % 140 === 0 ? 140 : 120);

describe("cases", () => {
	const cases = listed("case");
	const toldCases = cases.filter(({ id }) => id !== "larkspur-cubbyhole");

	test.each(cases)("$name does not contradict itself", (one) => {
		const { cardMaxLengthMm = 0, cardMaxLengthWithRadiatorMm, fanPlaces = [], radiatorPlaces = [] } = one;
		for (const { count, fitted = 0 } of fanPlaces) expect(fitted).toBeLessThanOrEqual(count);
		for (const { place, lengthsMm, maxThicknessMm } of radiatorPlaces) {
			expect(radiatorLengths).toEqual(expect.arrayContaining(lengthsMm));
			// A radiator lies where fans could: no longer than the row of them.
			const rowMm = Math.max(
				...fanPlaces.filter((row) => row.place === place).map(({ sizeMm, count }) => sizeMm * count),
			);
			expect(Math.max(...lengthsMm)).toBeLessThanOrEqual(rowMm);
			// The thinnest radiators are some 27 mm, and 15 mm fans the flattest (common practice, no source).
			expect(maxThicknessMm).toBeGreaterThanOrEqual(42);
		}
		if (cardMaxLengthWithRadiatorMm !== undefined) {
			expect(radiatorPlaces.map(({ place }) => place)).toContain("front");
			expect(cardMaxLengthWithRadiatorMm).toBeLessThan(cardMaxLengthMm);
		}
		if (one.backCutOutPatterns) expect(one.backCutOuts).toBe(true);
	});

	test.each(toldCases)("$name has the room and the posts for each size it names", (one) => {
		for (const form of one.boardForms ?? []) {
			const holes = holesOfForm(form)?.letters ?? [];
			// A Mini-ITX, DTX or microATX board needs all its own posts; hole S is optional there.
			if (form !== "E-ATX" && one.standoffs)
				expect(one.standoffs).toEqual(expect.arrayContaining(holes.filter((hole) => hole !== "S")));
			expect(one.boardMaxWidthMm).toBeGreaterThanOrEqual(boardForms[form].widthMm);
			// E-ATX is a name of the trade; how deep is said by the case.
			if (form !== "E-ATX") expect(one.boardMaxDepthMm).toBeGreaterThanOrEqual(boardForms[form].depthMm);
			expect(one.cardSlots).toBeGreaterThanOrEqual(boardForms[form].slotCount ?? 0);
		}
	});

	test("are of every size, often enough", () => {
		const largest = (form: string) => idsWhere("case", ({ boardForms: forms }) => forms?.[0] === form).length;
		expect(idsWhere("case", ({ boardForms: forms }) => forms?.join() === "Mini-ITX").length).toBeGreaterThanOrEqual(3);
		expect(largest("microATX")).toBeGreaterThanOrEqual(4);
		expect(largest("ATX")).toBeGreaterThanOrEqual(7);
		expect(
			Object.fromEntries(
				cases
					.filter(({ boardForms: forms }) => forms?.includes("E-ATX"))
					.map(({ id, boardMaxDepthMm }) => [id, boardMaxDepthMm]),
			),
		).toEqual({ "larkspur-barn": 280, "wickerby-washtub": 280, "wickerby-bushel": 305, "larkspur-granary": 330 });
	});

	test("span fronts, cooler heights, drive places and radiators", () => {
		expect(values(cases.map(({ frontOpen }) => frontOpen))).toEqual(["mesh", "slits", "solid"]);
		const small = cases.filter(({ boardForms: forms }) => forms?.join() === "Mini-ITX");
		expect(values(small.map(({ coolerMaxHeightMm }) => coolerMaxHeightMm))).toEqual([47, 67, 70, 155]);
		expect(values(cases.map(({ driveBays }) => driveBays?.inch35))).toEqual([0, 1, 2, 3, 4, 6, 8]);
		const lengths = cases.flatMap(({ radiatorPlaces = [] }) => radiatorPlaces.flatMap(({ lengthsMm }) => lengthsMm));
		expect(values(lengths)).toEqual(radiatorLengths);
		const places = cases.flatMap(({ radiatorPlaces = [] }) => radiatorPlaces.map(({ place }) => place));
		expect(values(places)).toEqual(["front", "rear", "side", "top"]);
		expect(values(cases.map(({ uprightSlots }) => uprightSlots)).at(-1)).toBe(4);
	});

	test("with cut-outs name the pattern, and no pattern suits all of them", () => {
		const patterns = cases
			.filter(({ backCutOuts }) => backCutOuts)
			.map(({ id, backCutOutPatterns }) => [id, backCutOutPatterns?.map((name) => name.slice(-1)).join("")]);
		expect(Object.fromEntries(patterns)).toEqual({
			"wickerby-trug": "A",
			"larkspur-bookcase": "AB",
			"larkspur-lectern": "B",
			"wickerby-washtub": "AB",
		});
		expect(idsWhere("case", ({ backCutOuts }) => backCutOuts === undefined)).toEqual([
			"larkspur-footstool",
			"wickerby-hamper",
			"larkspur-cubbyhole",
		]);
	});

	test("have front plugs of every kind, among them sets that few boards serve", () => {
		const counts = (id: string) =>
			Object.fromEntries((one("case", id).frontPlugs ?? []).map(({ plug, count }) => [plug, count]));
		expect(counts("wickerby-punnet")).toEqual({ "USB-C 20-pin": 1, sound: 1 });
		expect(counts("wickerby-hamper")).toEqual({ "USB 19-pin": 2, sound: 1 });
		expect(counts("larkspur-breadbin")).toEqual({ "USB 9-pin": 2, sound: 1 });
		expect(counts("larkspur-tuckbox")).toEqual({ "USB 9-pin": 1, sound: 1 });
		expect(counts("larkspur-granary")).toEqual({ "USB 9-pin": 1, "USB 19-pin": 2, "USB-C 20-pin": 1, sound: 1 });
		const rates = cases.flatMap(({ frontPlugs = [] }) => frontPlugs.map(({ plug, gbps }) => `${plug} ${gbps}`));
		expect(values(rates)).toEqual([
			"USB 19-pin 5",
			"USB 9-pin 0.48",
			"USB-C 20-pin 10",
			"USB-C 20-pin 20",
			"sound undefined",
		]);
	});

	test("set the traps they are there for", () => {
		const tellsOnly = Object.keys(one("case", "larkspur-cubbyhole")).sort();
		expect(tellsOnly).toEqual(
			["boardForms", "checkedOn", "frontOpen", "id", "invented", "maker", "name", "price"].sort(),
		);
		expect(idsWhere("case", ({ supplyForms }) => supplyForms?.join() === "SFX")).toEqual(["larkspur-inkwell"]);
		expect(idsWhere("case", ({ supplyIncludedW = 0 }) => supplyIncludedW > 0)).toEqual(["larkspur-sideboard"]);
		expect(idsWhere("case", ({ cardSlots }) => cardSlots === 2)).toEqual([
			"larkspur-hatbox",
			"larkspur-inkwell",
			"larkspur-breadbin",
		]);
		expect(idsWhere("case", ({ cardMaxHeightMm }) => cardMaxHeightMm === 145)).toEqual([
			"wickerby-punnet",
			"larkspur-sideboard",
			"wickerby-picnic",
		]);
		expect(idsWhere("case", ({ hubUsesUsb2 }) => hubUsesUsb2 === true)).toEqual([
			"larkspur-barn",
			"wickerby-creel",
			"larkspur-bookcase",
			"wickerby-saddlebag",
			"wickerby-bushel",
		]);
		// A hub and a 9-pin front plug want two headers of this case alone.
		expect(one("case", "wickerby-saddlebag").frontPlugs?.[0]?.plug).toBe("USB 9-pin");
		expect(one("case", "wickerby-washtub").deepBoardCovers).toEqual(["cable openings", "front radiator"]);
		expect(one("case", "wickerby-bushel").deepBoardCovers).toEqual(["front radiator"]);
		// A standoff that cannot be unscrewed, under a board that has no hole there, can short it.
		expect(one("case", "larkspur-footstool").standoffsRemovable).toBe(false);
	});

	test("take some liquid cooler by length only: its thickness is too much for the place under the roof", () => {
		const thickMm = one("cooler", "puddlewink-estuary").radiatorThicknessMm ?? 0;
		const top = (id: string) => one("case", id).radiatorPlaces?.find(({ place }) => place === "top");
		expect(top("larkspur-lectern")?.lengthsMm).toContain(360);
		expect(top("larkspur-lectern")?.maxThicknessMm).toBeLessThan(thickMm);
		expect(top("wickerby-bushel")?.maxThicknessMm).toBeGreaterThanOrEqual(thickMm);
	});
});

describe("graphics cards", () => {
	const cards = listed("graphicsCard");

	test.each(cards)("$name has the slots, plugs and advice its size and watts call for", (card) => {
		const { thicknessMm = 0, bracketSlots = 0, powerPlugs, watts, supplyAdvisedW, lanes = 0, leastLanes = 0 } = card;
		// A bracket may be narrower than the card, never wider.
		expect(bracketSlots).toBeLessThanOrEqual(Math.ceil(thicknessMm / slotPitch.pitchMm));
		expect(leastLanes).toBeLessThanOrEqual(lanes);
		if (powerPlugs && watts) {
			const plugsW = powerPlugs.reduce((sum, plug) => sum + graphicsPlugs[plug].watts, 0);
			expect(watts).toBeLessThanOrEqual(75 + plugsW);
		}
		if (watts) expect(supplyAdvisedW).toBeGreaterThanOrEqual(watts + 150);
	});

	test("span sizes, links, plugs and watts", () => {
		const ends = (all: readonly (number | undefined)[]) => [values(all).at(0), values(all).at(-1)];
		expect(ends(cards.map(({ lengthMm }) => lengthMm))).toEqual([150, 358]);
		expect(ends(cards.map(({ thicknessMm }) => thicknessMm))).toEqual([18, 71]);
		expect(ends(cards.map(({ heightMm }) => heightMm))).toEqual([111, 165]);
		expect(ends(cards.map(({ watts }) => watts))).toEqual([40, 575]);
		expect(values(cards.map(({ lanes }) => lanes))).toEqual([4, 8, 16]);
		expect(values(cards.map(({ generation }) => generation))).toEqual([3, 4, 5]);
		expect(values(cards.map(({ powerPlugs }) => powerPlugs?.join(" + ")))).toEqual([
			"",
			"12V-2x6",
			"6-pin",
			"6-pin + 6-pin",
			"8-pin",
			"8-pin + 6-pin",
			"8-pin + 8-pin",
			"8-pin + 8-pin + 8-pin",
		]);
		expect(values(cards.flatMap(({ pictureSockets = [] }) => pictureSockets))).toEqual([
			"DVI",
			"DisplayPort",
			"HDMI",
			"USB-C",
			"VGA",
		]);
	});

	test("set the traps they are there for", () => {
		// Thicker than the bracket tells: the slot below is covered all the same.
		expect(
			idsWhere(
				"graphicsCard",
				({ thicknessMm = 0, bracketSlots = 9 }) => thicknessMm > bracketSlots * slotPitch.pitchMm,
			),
		).toEqual([
			"dapplegate-fairground",
			"dapplegate-coconut-shy",
			"dapplegate-candyfloss",
			"dapplegate-helter-skelter",
			"smudgeworth-watercolour",
			"smudgeworth-tapestry",
			"smudgeworth-charcoal",
			"smudgeworth-fresco",
		]);
		const { thicknessMm: thick, bracketSlots: narrow } = one("graphicsCard", "smudgeworth-fresco");
		expect([Math.round(((thick ?? 0) / slotPitch.pitchMm) * 2) / 2, narrow]).toEqual([3.5, 2]);
		expect(idsWhere("graphicsCard", ({ watts, powerPlugs }) => !watts && !powerPlugs)).toEqual([
			"smudgeworth-scribble",
		]);
		expect(one("graphicsCard", "dapplegate-magic-lantern").pictureSockets).toEqual(["DVI", "DVI", "VGA"]);
		expect(one("graphicsCard", "dapplegate-magic-lantern").warrantyYears).toBe(0);
		// The plug is a fact of the card: one of 220 W has the wide plug, one of 340 W has three 8-pin plugs.
		expect(one("graphicsCard", "dapplegate-carousel").powerPlugs).toEqual(["12V-2x6"]);
		expect(one("graphicsCard", "smudgeworth-charcoal").powerPlugs).toEqual(["8-pin", "8-pin", "8-pin"]);
		expect(one("graphicsCard", "smudgeworth-tapestry").heightMm).toBe(165);
		expect(idsWhere("graphicsCard", ({ lanes }) => lanes === 4)).toEqual(["smudgeworth-crayon", "smudgeworth-pastel"]);
	});
});

describe("memory", () => {
	const kits = listed("memory");

	test.each(kits)("$name has rates, correction and height of its kind", (kit) => {
		const { type, mtPerS = 0, standardMtPerS, errorCorrection, registered, heightMm, form } = kit;
		if (standardMtPerS) expect(standardMtPerS).toBeLessThanOrEqual(mtPerS);
		expect(type === "DDR5" ? mtPerS >= 4800 : mtPerS <= 3600).toBe(true);
		// Every DDR5 chip corrects within itself; DDR4 does not.
		expect(type === "DDR5" ? ["on-chip", "full"] : ["none", "full"]).toContain(errorCorrection);
		if (registered) expect(errorCorrection).toBe("full");
		if (form === "DIMM") expect(heightMm).toBeGreaterThanOrEqual(31);
	});

	test("span types, counts, sizes, rates and heights", () => {
		expect(values(kits.map(({ type }) => type))).toEqual(["DDR4", "DDR5"]);
		expect(values(kits.map(({ modules }) => modules))).toEqual([1, 2, 4]);
		expect(values(kits.map(({ gbPerModule }) => gbPerModule))).toEqual([8, 16, 24, 32, 64]);
		expect(values(kits.map(({ mtPerS }) => mtPerS))).toEqual([2400, 2666, 3200, 3600, 4800, 5600, 6000, 6400, 7200]);
		const heights = kits.filter(({ form }) => form === "DIMM").map(({ heightMm }) => heightMm);
		expect([values(heights).at(0), values(heights).at(-1)]).toEqual([31, 52]);
		expect(values(kits.map(({ modules, gbPerModule }) => `${modules} x ${gbPerModule}`))).toEqual(
			expect.arrayContaining(["4 x 32", "2 x 64", "4 x 16", "4 x 8", "1 x 8"]),
		);
		expect(idsWhere("memory", ({ lit }) => lit === true).length).toBeGreaterThanOrEqual(4);
	});

	test("set the traps they are there for", () => {
		expect(idsWhere("memory", ({ registered }) => registered === true)).toEqual(["hedgemarrow-pumpkin"]);
		expect(
			idsWhere("memory", ({ errorCorrection, registered }) => errorCorrection === "full" && registered === false),
		).toEqual(["hedgemarrow-gooseberry"]);
		expect(idsWhere("memory", ({ form }) => form === "SO-DIMM")).toEqual(["tabbywren-bootees"]);
		expect(idsWhere("memory", ({ warrantyYears }) => warrantyYears === 0)).toEqual([
			"tabbywren-galoshes",
			"tabbywren-bootees",
		]);
		expect(idsWhere("memory", ({ standardMtPerS, ranks }) => !standardMtPerS && !ranks)).toEqual([
			"hedgemarrow-bramble",
		]);
		// The label promises a profile that is not the rate it starts with.
		const { mtPerS, standardMtPerS } = one("memory", "tabbywren-earmuffs");
		expect([mtPerS, standardMtPerS]).toEqual([7200, 5600]);
		// Too high for the room under a wide cooler that hangs over the modules.
		const roomMm = one("cooler", "draughty-attic").memoryRoomMm ?? 0;
		expect(one("memory", "hedgemarrow-parsnip").heightMm).toBe(52);
		expect(idsWhere("memory", ({ heightMm = 0 }) => heightMm <= roomMm).length).toBeGreaterThan(0);
		expect(idsWhere("memory", ({ heightMm = 0 }) => heightMm > roomMm).length).toBeGreaterThan(0);
	});
});

describe("drives", () => {
	const drives = listed("drive");

	test.each(drives)("$name has link, key, speed and size that belong together", (one) => {
		const { shape, link, key, lengthMm, lanes, generation, readMBytesPerS = 0, gb = 0 } = one;
		const isM2 = shape === "M.2";
		expect([key !== undefined, lengthMm !== undefined]).toEqual([isM2, isM2]);
		const isPciExpress = link === "PCI Express" || link === "U.2";
		expect([lanes !== undefined, generation !== undefined]).toEqual([isPciExpress, isPciExpress]);
		// Four lanes need key M; two notches leave two lanes or SATA.
		if (isM2) expect(key).toBe(isPciExpress && lanes === 4 ? "M" : "B+M");
		if (isPciExpress)
			expect(readMBytesPerS).toBeLessThanOrEqual(gbytesPerSecond(generation as LinkGeneration, lanes ?? 0) * 1000);
		else expect(readMBytesPerS).toBeLessThanOrEqual(link === "SATA" ? 600 : 133);
		expect(gb).toBeLessThanOrEqual(shape === "3.5 inch" ? 32000 : 8000);
		if (shape === "3.5 inch") expect(readMBytesPerS).toBeLessThan(300);
	});

	test("span shapes, lengths, links and generations", () => {
		expect(values(drives.map(({ lengthMm }) => lengthMm))).toEqual([30, 42, 60, 80, 110]);
		expect(values(drives.map(({ shape, link }) => `${shape} ${link}`))).toEqual([
			"2.5 inch SATA",
			"2.5 inch U.2",
			"3.5 inch IDE",
			"3.5 inch SATA",
			"M.2 PCI Express",
			"M.2 SATA",
		]);
		expect(values(drives.map(({ generation }) => generation))).toEqual([3, 4, 5]);
	});

	test("set the traps they are there for", () => {
		expect(idsWhere("drive", ({ system }) => system === true)).toEqual(["pantryshelf-fruitcake"]);
		expect(idsWhere("drive", ({ link }) => link === "IDE")).toEqual(["pantryshelf-old-crock"]);
		expect(idsWhere("drive", ({ link }) => link === "U.2")).toEqual(["pantryshelf-teatray"]);
		expect(idsWhere("drive", ({ ownCooler }) => ownCooler === true)).toEqual([
			"pantryshelf-marmalade",
			"pantryshelf-honeycomb",
		]);
		expect(idsWhere("drive", ({ lengthMm }) => lengthMm === 110)).toEqual(["pantryshelf-baguette"]);
		expect(idsWhere("drive", ({ lengthMm }) => lengthMm === 30)).toEqual(["pantryshelf-crumb"]);
		// Both fit an M.2 socket and have the same notches; only one of them is SATA.
		const twoNotches = ({ key, lengthMm }: PartOf<"drive">) => key === "B+M" && lengthMm === 80;
		expect(idsWhere("drive", twoNotches).map((id) => [id, one("drive", id).link])).toEqual([
			["pantryshelf-pickle", "SATA"],
			["pantryshelf-shortbread", "PCI Express"],
		]);
		expect(idsWhere("drive", ({ generation, ownCooler }) => generation === 5 && ownCooler === false)).toEqual([
			"pantryshelf-mustard",
		]);
	});
});

describe("add-in cards", () => {
	const cards = listed("addInCard");

	test.each(cards)("$name moves no more than its link carries", (card) => {
		const { bus, lanes, leastLanes, generation, gbytesPerS = 0, thicknessMm = 0, bracketSlots = 0 } = card;
		if (bus === "PCI") expect([lanes, leastLanes, generation]).toEqual([undefined, undefined, undefined]);
		else {
			expect(leastLanes).toBeLessThanOrEqual(lanes ?? 0);
			expect(gbytesPerS).toBeLessThanOrEqual(gbytesPerSecond(generation as LinkGeneration, lanes ?? 0));
		}
		expect(gbytesPerS).toBeGreaterThan(0);
		expect(bracketSlots).toBe(Math.ceil(thicknessMm / slotPitch.pitchMm));
	});

	test("are of every use and of four widths", () => {
		const uses = partKinds.addInCard.schema.shape.use.unwrap().options;
		expect(values(cards.map(({ use }) => use))).toEqual([...uses].sort());
		expect(values(cards.map(({ lanes }) => lanes))).toEqual([1, 4, 8, 16]);
	});

	test("set the traps they are there for", () => {
		expect(idsWhere("addInCard", ({ bus }) => bus === "PCI")).toEqual(["bellfoundry-gong"]);
		const wireless = ({ use }: PartOf<"addInCard">) => use === "wireless network";
		expect(idsWhere("addInCard", wireless).map((id) => [id, one("addInCard", id).usesUsb2])).toEqual([
			["bellfoundry-pigeon", true],
			["bellfoundry-semaphore", false],
		]);
		const carries = (id: string) => {
			const { use, lanes } = one("addInCard", id);
			return [use, lanes];
		};
		expect(carries("bellfoundry-town-crier")).toEqual(["wired network", 4]);
		expect(one("addInCard", "bellfoundry-town-crier").gbytesPerS).toBe(1.25);
		expect(carries("bellfoundry-spyglass")).toEqual(["video capture", 4]);
		expect(carries("bellfoundry-turnstile")).toEqual(["USB sockets", 4]);
		expect(carries("bellfoundry-larder-door")).toEqual(["drives", 8]);
		// Four M.2 drives on one card: it needs a slot of 16 lanes that splits.
		expect(carries("bellfoundry-magpie")).toEqual(["drives", 16]);
	});
});

describe("coolers", () => {
	const coolers = listed("cooler");
	const sockets = values(listed("platform").map(({ socket }) => socket));
	const kitsFor = (socket: string) =>
		coolers.filter(({ kits = [] }) => kits.some((kit) => kit.socket === socket)).map(({ id }) => id);
	const kitOf = (id: string, socket: string) => one("cooler", id).kits?.find((kit) => kit.socket === socket)?.how;

	test.each(coolers)("$name has kits for sockets of the market, each named once", ({ kits = [] }) => {
		expect(kits.length).toBeGreaterThan(0);
		expect(sockets).toEqual(expect.arrayContaining(kits.map(({ socket }) => socket)));
		expect(new Set(kits.map(({ socket }) => socket)).size).toBe(kits.length);
	});

	test.each(coolers.filter(({ kind }) => kind === "liquid"))("$name has a radiator of a real length", (one) => {
		expect(radiatorLengths).toContain(one.radiatorMm);
		expect(one.fans).toBe(fansAlong(one.radiatorMm ?? 0));
		expect(one.headersUsed?.pump).toBe(1);
		expect(one.memoryRoomMm).toBeUndefined();
	});

	test("cool more the larger they are: a step up in size never cools less", () => {
		const sizes = (kind: PartOf<"cooler">["kind"], size: (one: PartOf<"cooler">) => number | undefined) =>
			coolers.flatMap((one) =>
				one.kind === kind && size(one) && one.publishedW
					? [{ id: one.id, size: size(one) ?? 0, watts: one.publishedW }]
					: [],
			);
		const air = sizes("air", ({ heightMm }) => heightMm);
		const liquid = sizes("liquid", ({ radiatorMm }) => radiatorMm);
		const slips = (all: typeof air, step: number) =>
			all.flatMap((small) => all.filter(({ size, watts }) => size >= small.size + step && watts <= small.watts));
		expect(slips(air, 10)).toEqual([]);
		expect(slips(liquid, 80)).toEqual([]);
		expect([values(air.map(({ watts }) => watts)).at(0), values(liquid.map(({ watts }) => watts)).at(-1)]).toEqual([
			65, 320,
		]);
	});

	test("serve all four sockets, the workstation's least", () => {
		expect(sockets.length).toBe(4);
		const counts = sockets.map((socket) => kitsFor(socket).length);
		expect(Math.min(...counts)).toBeGreaterThanOrEqual(2);
		expect(kitsFor("Gristmill 4")).toEqual(["draughty-belvedere", "puddlewink-estuary", "puddlewink-waterfall"]);
		for (const socket of sockets.filter((name) => name !== "Gristmill 4"))
			expect(kitsFor(socket).length).toBeGreaterThanOrEqual(8);
	});

	test("are flat, towers, wide towers and liquid of every length", () => {
		const flat = coolers.filter(({ kind, heightMm = 0 }) => kind === "air" && heightMm <= 67);
		expect(values(flat.map(({ heightMm }) => heightMm))).toEqual([37, 47, 54, 67]);
		const towers = coolers.filter(({ kind, heightMm = 0 }) => kind === "air" && heightMm >= 120);
		expect(values(towers.map(({ heightMm }) => heightMm))).toEqual([122, 136, 155, 158, 165, 168, 170]);
		expect(values(coolers.map(({ radiatorMm }) => radiatorMm))).toEqual([120, 240, 280, 360, 420]);
		expect(values(coolers.map(({ needsBoardBackPlate }) => String(needsBoardBackPlate)))).toEqual([
			"false",
			"true",
			"undefined",
		]);
	});

	test("set the traps they are there for", () => {
		expect(one("cooler", "draughty-attic").memoryRoomMm).toBe(32);
		expect(kitOf("draughty-attic", "Kettle 7")).toBeUndefined();
		expect(kitOf("draughty-chimney", "Kettle 7")).toBe("on request");
		expect(kitOf("draughty-dovecote", "Orchard 5")).toBe("bought");
		expect(kitOf("puddlewink-estuary", "Gristmill 4")).toBe("on request");
		expect(kitOf("puddlewink-waterfall", "Gristmill 4")).toBe("bought");
		// One tower leans away from the memory, one over it.
		expect(one("cooler", "draughty-chimney").overMemoryMm).toBeLessThan(40);
		expect(one("cooler", "draughty-dovecote").overMemoryMm).toBeGreaterThan(75);
		const candlestick = one("cooler", "draughty-candlestick");
		expect([candlestick.kits, candlestick.warrantyYears]).toEqual([[{ socket: "Kettle 7", how: "in the box" }], 0]);
		expect([candlestick.publishedW, candlestick.overMemoryMm, candlestick.needsBoardBackPlate]).toEqual([
			undefined,
			undefined,
			undefined,
		]);
		expect(idsWhere("cooler", ({ headersUsed }) => headersUsed?.usb2 === 1)).toEqual([
			"draughty-fountain",
			"puddlewink-estuary",
			"puddlewink-waterfall",
		]);
		expect(one("cooler", "puddlewink-birdbath").headersUsed?.lights5V).toBe(2);
		expect(one("cooler", "puddlewink-duckpond").headersUsed?.lights12V).toBe(1);
		// Exactly as high as some case allows; one millimetre more would not go in.
		for (const [coolerId, caseId] of [
			["draughty-pancake", "larkspur-inkwell"],
			["draughty-lintel", "wickerby-punnet"],
			["draughty-chimney", "larkspur-breadbin"],
		] as const)
			expect(one("cooler", coolerId).heightMm, coolerId).toBe(one("case", caseId).coolerMaxHeightMm);
	});
});

describe("supplies", () => {
	const supplies = listed("supply");

	test.each(supplies)("$name has a label and leads its rating can feed", (one) => {
		const { watts = 0, twelveVoltA, native12V2x6 = [], graphics8Pin, lengthMm, form } = one;
		if (twelveVoltA) expect(twelveVoltA * 12).toBeLessThanOrEqual(watts * 1.02);
		for (const lead of native12V2x6) {
			expect([300, 450, 600]).toContain(lead.watts);
			expect(lead.watts).toBeLessThan(watts);
		}
		expect(graphics8Pin).toBeLessThanOrEqual(6);
		if (lengthMm)
			expect([lengthMm >= 100, lengthMm <= 200, form !== "SFX" || lengthMm === 100]).toEqual([true, true, true]);
	});

	test("span watts, forms, plugs and leads", () => {
		const watts = values(supplies.map((one) => one.watts));
		expect([watts.at(0), watts.at(-1)]).toEqual([300, 1300]);
		expect(values(supplies.map(({ form }) => form))).toEqual(["ATX", "SFX", "SFX-L", "TFX"]);
		expect(values(supplies.map(({ processorPlugs }) => processorPlugs?.join(" + ")))).toEqual([
			"4-pin",
			"4-pin + 4-pin",
			"8-pin",
			"8-pin + 4-pin",
			"8-pin + 8-pin",
		]);
		expect(values(supplies.flatMap(({ native12V2x6 = [] }) => native12V2x6.map((lead) => lead.watts)))).toEqual([
			300, 450, 600,
		]);
		expect(values(supplies.map(({ graphics8Pin }) => graphics8Pin))).toEqual([0, 2, 3, 4, 6]);
		const lengths = values(supplies.map(({ lengthMm }) => lengthMm));
		expect([lengths.at(0), lengths.at(-1)]).toEqual([100, 200]);
	});

	test("set the traps they are there for", () => {
		expect(idsWhere("supply", ({ bornIn = 2026 }) => bornIn <= 2012)).toEqual(["oxcart-wheelbarrow"]);
		expect(idsWhere("supply", ({ mainPlug }) => mainPlug === "10-pin 12 V only")).toEqual(["oxcart-handcart"]);
		expect(idsWhere("supply", ({ twelveVoltA, lengthMm }) => !twelveVoltA && !lengthMm)).toEqual(["millpond-kiln"]);
		// Strong, yet without the lead the newest cards need.
		expect(one("supply", "oxcart-ploughteam").native12V2x6).toEqual([]);
		expect(one("supply", "oxcart-ploughteam").watts).toBe(1200);
		// A lead of 300 W feeds one card with this plug, and not another.
		const leadW = one("supply", "millpond-beacon").native12V2x6?.[0]?.watts ?? 0;
		expect(one("graphicsCard", "dapplegate-helter-skelter").watts).toBeLessThanOrEqual(leadW);
		expect(one("graphicsCard", "smudgeworth-fresco").watts).toBeGreaterThan(leadW);
		// The case that is sold with a supply takes no other length or form than this one's.
		const taper = one("supply", "millpond-taper");
		expect(one("case", "larkspur-sideboard")).toMatchObject({
			supplyForms: [taper.form],
			supplyMaxLengthMm: taper.lengthMm,
		});
		expect(one("supply", "oxcart-carthorse").lengthMm).toBeGreaterThan(
			one("case", "wickerby-hamper").supplyMaxLengthMm ?? 999,
		);
	});
});

describe("fans and lights", () => {
	test.each(listed("fans"))("$name draws more at its start than later", ({ amps = 0, startAmps, lit, lightVolts }) => {
		if (startAmps) expect(startAmps).toBeGreaterThan(amps);
		expect(lit).toBe(lightVolts !== undefined);
	});

	test("fans span plugs, lights and amps", () => {
		const fans = listed("fans");
		expect(values(fans.map(({ plug, lightVolts }) => `${plug} ${lightVolts ?? "unlit"}`))).toEqual([
			"3-pin 12",
			"3-pin unlit",
			"4-pin 5",
			"4-pin unlit",
		]);
		expect(idsWhere("fans", ({ hubUsesUsb2 }) => hubUsesUsb2 === true)).toEqual(["dandelion-lullaby"]);
		// Three at 0.6 A on one lead: more than a header of 1 A or 1.5 A gives.
		const sneeze = one("fans", "dandelion-sneeze");
		expect((sneeze.amps ?? 0) * (sneeze.count ?? 0)).toBeGreaterThan(1.5);
		expect(sneeze.startAmps).toBe(0.95);
		expect(one("fans", "dandelion-flutter").startAmps).toBeUndefined();
	});

	test.each(listed("lighting"))("$name has the plug of its voltage", ({ volts, plug, amps = 0, lights = 0 }) => {
		if (plug === "5 V three-pin") expect(volts).toBe(5);
		if (plug === "12 V four-pin") expect(volts).toBe(12);
		// 60 mA a light at full white: trade figures for the common 5 V light with its own chip.
		if (volts === 5) expect(amps).toBeLessThanOrEqual(lights * 0.06 + 1e-9);
	});

	test("lights set the traps they are there for", () => {
		expect(idsWhere("lighting", ({ plug }) => plug === "maker's own")).toEqual(["glowworm-sparkler"]);
		expect(idsWhere("lighting", ({ usesUsb2 }) => usesUsb2 === true)).toEqual(["glowworm-sparkler"]);
		expect(idsWhere("lighting", ({ volts }) => volts === 12)).toEqual(["glowworm-tinsel", "glowworm-paper-moon"]);
		// More than the 3 A that lighting headers commonly give.
		expect(idsWhere("lighting", ({ amps = 0, plug }) => amps > 3 && plug !== "maker's own")).toEqual([
			"glowworm-bunting",
			"glowworm-paper-moon",
		]);
		expect(idsWhere("lighting", ({ volts, plug }) => !volts && !plug)).toEqual(["glowworm-stardust"]);
	});
});

describe("screens", () => {
	test("span sockets, sizes and rates", () => {
		const screens = listed("monitor");
		expect(values(screens.map(({ sockets }) => sockets?.join(" + ")))).toEqual([
			"DVI + VGA",
			"DisplayPort",
			"HDMI",
			"HDMI + DisplayPort",
			"HDMI + DisplayPort + USB-C",
			"HDMI + VGA",
			"USB-C",
			"VGA",
		]);
		expect(one("monitor", "parlour-skylight")).toMatchObject({ columns: 3840, lines: 2160, hz: 144 });
	});

	test("set the traps they are there for", () => {
		const only = (socket: string) => idsWhere("monitor", ({ sockets }) => sockets?.join() === socket);
		expect(only("HDMI")).toEqual(["parlour-looking-glass"]);
		expect(only("DisplayPort")).toEqual(["parlour-shop-window"]);
		expect(only("USB-C")).toEqual(["parlour-music-stand"]);
		expect(only("VGA")).toEqual(["parlour-arrowslit"]);
		expect(one("monitor", "parlour-cellar-hatch").sockets).toEqual(["DVI", "VGA"]);
	});
});
