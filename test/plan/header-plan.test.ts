import { expect, test } from "vitest";
import type { AddInCard } from "../../src/parts/add-in-card.ts";
import type { Board } from "../../src/parts/board.ts";
import type { PcCase } from "../../src/parts/case.ts";
import type { Cooler } from "../../src/parts/cooler.ts";
import { type HeaderPlan, headerPlanOf, headerRemarks } from "../../src/plan/header-plan.ts";
import type { HeaderBuild } from "../../src/plan/header-wish.ts";

type Headers = NonNullable<Board["headers"]>;
type Use = NonNullable<Headers["fans"]>[number]["use"];

/** A cooler without plugs, and else nothing. */
const bare: HeaderBuild = {
	case: { state: "unknown" },
	cooler: { state: "have", ownership: "bought", part: { id: "slab", name: "Slab", headersUsed: { fan: 0 } } },
	addInCards: null,
	lights: null,
	caseFans: null,
	laterThings: null,
};
const withCooler = (part: Partial<Cooler>): HeaderBuild => ({
	...bare,
	cooler: { state: "have", ownership: "bought", part: { id: "chimney", name: "Chimney", ...part } },
});
const withCase = (part: Partial<PcCase>): HeaderBuild => ({
	...bare,
	case: { state: "have", ownership: "bought", part: { id: "bandbox", name: "Bandbox", ...part } },
});
const card = (name: string, more: Partial<AddInCard>): AddInCard => ({ id: name.toLowerCase(), name, ...more });

/** Fan headers by the first letter of their use, such as P1, C1, C2, and U1 for the pump's. */
const letters = { processor: "P", pump: "U", case: "C" } as const;
const fanHeaders = (uses: readonly Use[], amps: Readonly<Record<string, number>> = {}): Pick<Headers, "fans"> => ({
	fans: uses.map((use, index) => {
		const name = `${letters[use]}${uses.slice(0, index + 1).filter((one) => one === use).length}`;
		return { name, use, ...(amps[name] === undefined ? {} : { amps: amps[name] }) };
	}),
});
const plan = (headers: Headers | undefined, build: HeaderBuild) =>
	headerPlanOf(headers === undefined ? {} : { headers }, build);

/** The plan in short: id of each wish to where it ends. */
function ends({ placed, sharing, without, unknown }: HeaderPlan): Readonly<Record<string, string>> {
	return Object.fromEntries([
		...placed.map(({ wish, header }) => [wish.id, header]),
		...sharing.map(({ wish, header, amps }) => [wish.id, `shares ${header}, ${amps} A`]),
		...without.map(({ id }) => [id, "without"]),
		...unknown.map(({ wish, fact }) => [wish.id, fact]),
	]);
}
const remarks = ({ placed }: HeaderPlan) =>
	placed.flatMap(({ wish, remark }) => (remark ? [`${wish.id}: ${remark}`] : []));

test("all that has a plug for the board, by name and in order", () => {
	const build: HeaderBuild = {
		...withCooler({ kind: "liquid", headersUsed: { fan: 2, pump: 1, usb2: 1, lights5V: 1, lights12V: 0 } }),
		case: withCase({
			frontPlugs: [
				{ plug: "sound", count: 1 },
				{ plug: "USB-C 20-pin", count: 1, gbps: 20 },
				{ plug: "USB 9-pin", count: 2 },
				{ plug: "USB 19-pin", count: 1, gbps: 5 },
			],
			hubUsesUsb2: true,
		}).case,
		addInCards: [
			card("Gong", { use: "sound", usesUsb2: false }),
			card("Fiddle", { use: "wireless network", usesUsb2: true }),
			card("Lantern", { use: "other", usesUsb2: true }),
			card("Pigeon", { use: "wireless network" }),
		],
		caseFans: 2,
		lights: ["5 V three-pin", "5 V three-pin", "12 V four-pin", "maker's own", "maker's own"],
		laterThings: ["fan", "memory"],
	};
	const { wishes } = plan({}, build);
	expect(wishes.map(({ id, name, kind, whose }) => [id, name, kind, whose])).toEqual([
		["front-9-pin-1", "slow front USB 1 of Bandbox", "USB 9-pin", "case"],
		["front-9-pin-2", "slow front USB 2 of Bandbox", "USB 9-pin", "case"],
		["front-19-pin-1", "fast front USB of Bandbox", "USB 19-pin", "case"],
		["front-usb-c-1", "front USB-C of Bandbox", "USB-C 20-pin", "case"],
		["front-sound-1", "front sound of Bandbox", "front sound", "case"],
		["case-hub-1", "fan or lighting hub of Bandbox", "USB 9-pin", "case"],
		["cooler-usb-1", "USB plug of Chimney", "USB 9-pin", "cooler"],
		["pump-1", "pump of Chimney", "pump", "cooler"],
		["cooler-fan-1", "fan 1 of Chimney", "cooler fan", "cooler"],
		["cooler-fan-2", "fan 2 of Chimney", "cooler fan", "cooler"],
		["cooler-lights-5v-1", "5 V lights of Chimney", "5 V lights", "cooler"],
		// The second and third card of four want a plug, and keep their numbers.
		["card-usb-2", "Bluetooth of Fiddle", "USB 9-pin", "card"],
		["card-usb-3", "USB plug of Lantern", "USB 9-pin", "card"],
		["case-fan-1", "case fan 1", "case fan", "case fans"],
		["case-fan-2", "case fan 2", "case fan", "case fans"],
		["lights-5v-1", "5 V lights 1", "5 V lights", "lights"],
		["lights-5v-2", "5 V lights 2", "5 V lights", "lights"],
		["lights-12v-1", "12 V lights", "12 V lights", "lights"],
		// One controller for all lights of one maker.
		["lights-controller-1", "controller of the lights", "USB 9-pin", "lights"],
		["later-fan-1", "later case fan", "case fan", "case fans"],
	]);
	expect(wishes.filter(({ gbps }) => gbps !== null).map(({ id, gbps }) => [id, gbps])).toEqual([
		["front-19-pin-1", 5],
		["front-usb-c-1", 20],
	]);
	expect(wishes.filter(({ isLater }) => isLater).map(({ id }) => id)).toEqual(["later-fan-1"]);
});

test.each([
	["none", "fan of the cooler in the processor's box"],
	["open", "fan of the cooler"],
	["unknown", "fan of the cooler"],
] as const)("a cooler that is %s has one fan and no pump", (state, name) => {
	const { wishes } = plan({}, { ...bare, cooler: { state } });
	expect(wishes.map((wish) => wish.name)).toEqual([name]);
});

test.each([
	["a liquid cooler that says nothing has a pump and a fan", { kind: "liquid" }, ["pump-1", "cooler-fan-1"]],
	["an air cooler that says nothing has a fan", { kind: "air" }, ["cooler-fan-1"]],
	["what it says counts", { kind: "liquid", headersUsed: { pump: 0, fan: 0 } }, []],
] as const)("%s", (_, cooler, ids) => {
	expect(plan({}, withCooler(cooler)).wishes.map(({ id }) => id)).toEqual(ids);
});

test("headers by name; numbers only where there are several", () => {
	const { headers, free } = plan(
		{
			usb2: 2,
			usb5: 1,
			typeC: [{ gbps: 10 }, {}],
			frontAudio: true,
			...fanHeaders(["processor", "case"], { P1: 2 }),
			lights: [
				{ name: "L1", volts: 5, amps: 3, mostLights: 200 },
				{ name: "L2", volts: 12 },
				{ name: "L2", volts: 12 },
			],
		},
		bare,
	);
	expect(
		headers.map(({ name, kind, use, gbps, amps, mostLights }) => [name, kind, use, gbps, amps, mostLights]),
	).toEqual([
		["9-pin USB header 1", "USB 9-pin", null, 0.48, null, null],
		["9-pin USB header 2", "USB 9-pin", null, 0.48, null, null],
		["19-pin USB header", "USB 19-pin", null, 5, null, null],
		["USB-C header 1 (10 Gb/s)", "USB-C 20-pin", null, 10, null, null],
		["USB-C header 2", "USB-C 20-pin", null, null, null, null],
		["front sound header", "front sound", null, null, null, null],
		["P1", "fan", "processor", null, 2, null],
		// Where the manual is silent, 1 A.
		["C1", "fan", "case", null, 1, null],
		["L1", "5 V lights", null, null, 3, 200],
		["L2", "12 V lights", null, null, null, null],
		// A name that is there twice would point at two headers.
		["L2 (2)", "12 V lights", null, null, null, null],
	]);
	expect(free).toEqual(headers.map(({ name }) => name));
	expect(plan({ typeC: [{ gbps: 20 }] }, bare).free).toEqual(["USB-C header (20 Gb/s)"]);
});

const front = withCase({
	frontPlugs: [
		{ plug: "USB 9-pin", count: 1 },
		{ plug: "USB 19-pin", count: 1 },
		{ plug: "USB-C 20-pin", count: 1 },
		{ plug: "sound", count: 1 },
	],
});
const everything: HeaderBuild = { ...front, caseFans: 1, lights: ["5 V three-pin", "12 V four-pin"] };

test("a board whose facts name no headers: of each wish the fact that would tell, and nothing is free", () => {
	const told = {
		"front-9-pin-1": "board.headers.usb2",
		"front-19-pin-1": "board.headers.usb5",
		"front-usb-c-1": "board.headers.typeC",
		"front-sound-1": "board.headers.frontAudio",
		"case-fan-1": "board.headers.fans",
		"lights-5v-1": "board.headers.lights",
		"lights-12v-1": "board.headers.lights",
	};
	expect(ends(plan(undefined, everything))).toEqual(told);
	expect(ends(plan({}, everything))).toEqual(told);
	expect(plan(undefined, everything).free).toEqual([]);
});

test("a board that surely has no headers leaves all without", () => {
	const none = { usb2: 0, usb5: 0, typeC: [], frontAudio: false, fans: [], lights: [] };
	const { without, placed, sharing, unknown, free } = plan(none, everything);
	expect(without.map(({ id }) => id)).toEqual([
		"front-9-pin-1",
		"front-19-pin-1",
		"front-usb-c-1",
		"front-sound-1",
		"case-fan-1",
		"lights-5v-1",
		"lights-12v-1",
	]);
	expect({ placed, sharing, unknown, free }).toEqual({ placed: [], sharing: [], unknown: [], free: [] });
});

test("one fact that is not known says nothing about the others", () => {
	expect(ends(plan({ usb2: 0, usb5: 1, typeC: [{}] }, front))).toEqual({
		"front-9-pin-1": "without",
		"front-19-pin-1": "19-pin USB header",
		"front-usb-c-1": "USB-C header",
		"front-sound-1": "board.headers.frontAudio",
	});
});

test("five things want a 9-pin header and three are there: the first three named get them", () => {
	const build: HeaderBuild = {
		...withCooler({ headersUsed: { fan: 0, usb2: 1 } }),
		case: withCase({ frontPlugs: [{ plug: "USB 9-pin", count: 1 }], hubUsesUsb2: true }).case,
		addInCards: [card("Fiddle", { use: "wireless network", usesUsb2: true })],
		lights: ["maker's own"],
	};
	expect(ends(plan({ usb2: 3 }, build))).toEqual({
		"front-9-pin-1": "9-pin USB header 1",
		"case-hub-1": "9-pin USB header 2",
		"cooler-usb-1": "9-pin USB header 3",
		"card-usb-1": "without",
		"lights-controller-1": "without",
	});
});

/** Where each of these ends on these fan headers. */
const fans = (uses: readonly Use[], more: Partial<HeaderBuild> & { pump?: number; fan?: number }) => {
	const { pump = 0, fan = 0, ...rest } = more;
	return plan(fanHeaders(uses), { ...withCooler({ headersUsed: { pump, fan } }), ...rest });
};

test.each<[string, readonly Use[], Parameters<typeof fans>[1], Record<string, string>, readonly string[]]>([
	[
		"each has the header that is meant for it",
		["processor", "case", "case", "pump"],
		{ pump: 1, fan: 1, caseFans: 2 },
		{ "pump-1": "U1", "cooler-fan-1": "P1", "case-fan-1": "C1", "case-fan-2": "C2" },
		[],
	],
	[
		"no pump header, and one processor header: the fan has that, the pump a case header at full speed",
		["processor", "case", "case"],
		{ pump: 1, fan: 1, caseFans: 1 },
		{ "pump-1": "C1", "cooler-fan-1": "P1", "case-fan-1": "C2" },
		["pump-1: full speed"],
	],
	[
		"no pump header, and two processor headers: the pump comes before the cooler's second fan",
		["processor", "processor", "case"],
		{ pump: 1, fan: 2 },
		{ "pump-1": "P2", "cooler-fan-1": "P1", "cooler-fan-2": "C1" },
		["pump-1: full speed", "cooler-fan-2: follow the processor"],
	],
	[
		"one header in all goes to the pump, and no fan hangs on with it",
		["processor"],
		{ pump: 1, fan: 1 },
		{ "pump-1": "P1", "cooler-fan-1": "without" },
		["pump-1: full speed"],
	],
	[
		"two pumps, one pump header: the first has it, the other goes on a case header",
		["processor", "pump", "case", "case"],
		{ pump: 2, fan: 1, caseFans: 1 },
		{ "pump-1": "U1", "pump-2": "C1", "cooler-fan-1": "P1", "case-fan-1": "C2" },
		["pump-2: full speed"],
	],
	[
		"two pumps and one header: a splitter is nothing for a pump",
		["pump"],
		{ pump: 2 },
		{ "pump-1": "U1", "pump-2": "without" },
		[],
	],
	[
		"the cooler's second fan goes on a case header before a pump header",
		["pump", "processor", "case"],
		{ fan: 2 },
		{ "cooler-fan-1": "P1", "cooler-fan-2": "C1" },
		["cooler-fan-2: follow the processor"],
	],
	[
		"and on the pump header where there is no other",
		["pump", "processor"],
		{ fan: 2 },
		{ "cooler-fan-1": "P1", "cooler-fan-2": "U1" },
		["cooler-fan-2: follow the processor"],
	],
	[
		"case fans go on case headers, then on the pump header that is left",
		["pump", "processor", "case"],
		{ fan: 1, caseFans: 2 },
		{ "cooler-fan-1": "P1", "case-fan-1": "U1", "case-fan-2": "C1" },
		["case-fan-1: slow it"],
	],
	[
		"a case fan never goes on a processor header, be it free",
		["processor", "processor"],
		{ fan: 1, caseFans: 1 },
		{ "cooler-fan-1": "P1", "case-fan-1": "without" },
		[],
	],
	[
		"the pump keeps its header, though a case fan stays without",
		["processor", "processor", "pump"],
		{ pump: 1, fan: 1, caseFans: 1 },
		{ "pump-1": "U1", "cooler-fan-1": "P1", "case-fan-1": "without" },
		[],
	],
	[
		"a fan for later takes what is left",
		["processor", "pump", "case"],
		{ fan: 1, caseFans: 1, laterThings: ["fan"] },
		{ "cooler-fan-1": "P1", "case-fan-1": "C1", "later-fan-1": "U1" },
		["later-fan-1: slow it"],
	],
	[
		"and shares where nothing is left",
		["processor", "case"],
		{ fan: 1, caseFans: 1, laterThings: ["fan", "fan"] },
		{
			"cooler-fan-1": "P1",
			"case-fan-1": "C1",
			"later-fan-1": "shares C1, 1 A",
			"later-fan-2": "shares C1, 1 A",
		},
		[],
	],
	[
		"the cooler's fans share the processor header where there is only that; a case fan may not join them",
		["processor"],
		{ fan: 2, caseFans: 1 },
		{ "cooler-fan-1": "P1", "cooler-fan-2": "shares P1, 1 A", "case-fan-1": "without" },
		[],
	],
	[
		"a case fan does not join a cooler's fan on a case header either",
		["processor", "case"],
		{ fan: 2, caseFans: 1 },
		{ "cooler-fan-1": "P1", "cooler-fan-2": "C1", "case-fan-1": "without" },
		["cooler-fan-2: follow the processor"],
	],
])("%s", (_, uses, wanted, where, said) => {
	const made = fans(uses, wanted);
	expect(ends(made)).toEqual(where);
	expect(remarks(made)).toEqual(said);
});

test("more fans than headers: each joins where most amperes are left for each", () => {
	const headers = fanHeaders(["case", "case", "case"], { C1: 1, C2: 3, C3: 2 });
	// With two on it C2 gives 1.5 A each, with three 1 A, as C3 gives with two; of those alike the first.
	expect(ends(plan(headers, { ...bare, caseFans: 6 }))).toEqual({
		"case-fan-1": "C1",
		"case-fan-2": "C2",
		"case-fan-3": "C3",
		"case-fan-4": "shares C2, 3 A",
		"case-fan-5": "shares C2, 3 A",
		"case-fan-6": "shares C3, 2 A",
	});
});

test("12 V lights and 5 V headers only: the lights stay without, and the headers free", () => {
	const made = plan({ lights: [{ name: "L1", volts: 5, amps: 3 }] }, { ...bare, lights: ["12 V four-pin"] });
	expect(ends(made)).toEqual({ "lights-12v-1": "without" });
	expect(made.free).toEqual(["L1"]);
});

test("lights share a header of their own voltage; those of the cooler have theirs first", () => {
	const build: HeaderBuild = {
		...withCooler({ headersUsed: { fan: 0, lights5V: 1, lights12V: 1 } }),
		lights: ["12 V four-pin", "5 V three-pin"],
	};
	const lights: Headers["lights"] = [
		{ name: "W1", volts: 12 },
		{ name: "A1", volts: 5, amps: 3 },
	];
	expect(ends(plan({ lights }, build))).toEqual({
		"cooler-lights-12v-1": "W1",
		"cooler-lights-5v-1": "A1",
		// How much a lighting header feeds is not taken for granted.
		"lights-12v-1": "shares W1, null A",
		"lights-5v-1": "shares A1, 3 A",
	});
});

/** Where front USB-C cables of these rates go on headers of these rates, and whether they could do more. */
function typeC(cables: readonly (number | null)[], headers: readonly (number | null)[]) {
	const rate = (gbps: number | null) => (gbps === null ? {} : { gbps });
	const frontPlugs = cables.map((gbps) => ({ plug: "USB-C 20-pin" as const, count: 1, ...rate(gbps) }));
	const { placed } = plan({ typeC: headers.map(rate) }, withCase({ frontPlugs }));
	return Object.fromEntries(placed.map((one) => [one.wish.id, [one.headerGbps, one.couldDoMore]]));
}

test.each([
	[
		"the faster cable on the faster header",
		[10, 20],
		[10, 20],
		[
			[10, false],
			[20, false],
		],
	],
	[
		"whatever their order",
		[20, 10],
		[10, 20],
		[
			[20, false],
			[10, false],
		],
	],
	[
		"two fast cables: one could do more",
		[20, 20],
		[10, 20],
		[
			[20, false],
			[10, true],
		],
	],
	["one cable takes the fastest, though it needs less", [5], [10, 20], [[20, false]]],
	["one header: the fastest cable has it", [10, 20], [10], [null, [10, true]]],
	[
		"a cable nobody knows has the faster header, if no other loses by it",
		[10, null],
		[10, 20],
		[
			[10, false],
			[20, null],
		],
	],
	[
		"but not where another surely loses",
		[20, null],
		[10, 20],
		[
			[20, false],
			[10, null],
		],
	],
	[
		"a header nobody knows comes last",
		[20, 10],
		[null, 10],
		[
			[10, true],
			[null, null],
		],
	],
	["the fastest cable has the one header, though nobody knows its rate", [10, 20], [null], [null, [null, null]]],
	["and says nothing of the cable", [20], [null], [[null, null]]],
] as const)("front USB-C, %s", (_, cables, headers, where) => {
	const expected = where.flatMap((one, index) => (one ? [[`front-usb-c-${index + 1}`, one]] : []));
	expect(typeC(cables, headers)).toEqual(Object.fromEntries(expected));
});

test.each([
	[5, false],
	[10, true],
])("a 19-pin header gives 5 Gb/s; a cable for %i could do more: %s", (gbps, couldDoMore) => {
	const build = withCase({ frontPlugs: [{ plug: "USB 19-pin", count: 1, gbps }] });
	expect(plan({ usb5: 1 }, build).placed.map((one) => [one.headerGbps, one.couldDoMore])).toEqual([[5, couldDoMore]]);
});

test("of a slow USB plug nobody asks whether it could do more", () => {
	const build = withCase({ frontPlugs: [{ plug: "USB 9-pin", count: 1, gbps: 0.48 }] });
	expect(plan({ usb2: 1 }, build).placed.map(({ couldDoMore }) => couldDoMore)).toEqual([null]);
});

test("remarks are short sentences", () => {
	for (const remark of Object.values(headerRemarks))
		for (const sentence of remark.split(/(?<=\.) /)) {
			expect(sentence).toMatch(/^[A-Z].*\.$/);
			expect(sentence.split(" ").length).toBeLessThanOrEqual(25);
		}
});
