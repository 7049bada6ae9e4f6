import { expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { headerPlanOf } from "../../src/plan/header-plan.ts";
import type { HeaderBuild } from "../../src/plan/header-wish.ts";
import { headersUnknownWords, headersWithoutWords, headerWords } from "../../src/sheet/header-words.ts";

type Headers = NonNullable<Board["headers"]>;

/** A cooler without plugs, and else nothing. */
const bare: HeaderBuild = {
	case: { state: "unknown" },
	cooler: { state: "have", ownership: "bought", part: { id: "slab", name: "Slab", headersUsed: { fan: 0 } } },
	addInCards: null,
	lights: null,
	caseFans: null,
	laterThings: null,
};
const liquid = (fan: number): Pick<HeaderBuild, "cooler"> => ({
	cooler: {
		state: "have",
		ownership: "bought",
		part: { id: "brook", name: "Brook", kind: "liquid", headersUsed: { pump: 1, fan } },
	},
});
const bandbox = (
	frontPlugs: NonNullable<Extract<HeaderBuild["case"], { state: "have" }>["part"]["frontPlugs"]>,
): Pick<HeaderBuild, "case"> => ({
	case: { state: "have", ownership: "bought", part: { id: "bandbox", name: "Bandbox", frontPlugs } },
});
const cpuFan = { name: "CPU_FAN", use: "processor" } as const;
const pumpFan = { name: "PUMP", use: "pump" } as const;
const caseFan = { name: "FAN_1", use: "case" } as const;
const noHeaders: Headers = { usb2: 0, usb5: 0, typeC: [], frontAudio: false, fans: [], lights: [] };
const caution =
	"Never plug 5 V lights (three pins) into a 12 V header (four pins), nor the other way round: it destroys them.";

const planOf = (headers: Headers, build: Partial<HeaderBuild>) => headerPlanOf({ headers }, { ...bare, ...build });
const goes = (headers: Headers, build: Partial<HeaderBuild>) => headerWords(planOf(headers, build));
const lacks = (headers: Headers, build: Partial<HeaderBuild>) => headersWithoutWords(planOf(headers, build));
const open = (headers: Headers, build: Partial<HeaderBuild>) => headersUnknownWords(planOf(headers, build));

test("each plug on its header, in a sentence; the header with an article where it has no name of its own", () => {
	expect(
		goes(
			{ usb2: 2, usb5: 1, typeC: [{}], frontAudio: true, fans: [cpuFan, pumpFan] },
			{
				...bandbox([
					{ plug: "USB 9-pin", count: 2 },
					{ plug: "USB 19-pin", count: 1 },
					{ plug: "USB-C 20-pin", count: 1 },
					{ plug: "sound", count: 1 },
				]),
				...liquid(1),
			},
		),
	).toEqual([
		"Slow front USB 1 of Bandbox on the 9-pin USB header 1.",
		"Slow front USB 2 of Bandbox on the 9-pin USB header 2.",
		"Fast front USB of Bandbox on the 19-pin USB header.",
		"Front USB-C of Bandbox on the USB-C header.",
		"Front sound of Bandbox on the front sound header.",
		"Pump of Brook on PUMP.",
		"Fan of Brook on CPU_FAN.",
	]);
});

test("what is to be set in the firmware stands beside its plug", () => {
	expect(goes({ fans: [cpuFan, caseFan] }, liquid(1))).toEqual([
		"Pump of Brook on FAN_1. A pump must run at full speed. Set this header to full speed in the firmware.",
		"Fan of Brook on CPU_FAN.",
	]);
	expect(goes({ fans: [cpuFan, caseFan, { ...caseFan, name: "FAN_2" }] }, liquid(2))[2]).toBe(
		"Fan 2 of Brook on FAN_2. Set this header in the firmware so that it follows the processor's heat.",
	);
	expect(goes({ fans: [cpuFan, pumpFan] }, { caseFans: 1 })).toEqual([
		"Case fan on PUMP. A pump header often runs at full speed. Set a fan curve for it in the firmware.",
		"Free: CPU_FAN.",
	]);
});

test("a cable that could do more than its header gives is told so, and no other", () => {
	const front = (gbps?: number) =>
		bandbox([{ plug: "USB-C 20-pin", count: 1, ...(gbps === undefined ? {} : { gbps }) }]);
	const slower = (headerGbps: number | undefined, gbps?: number) =>
		goes({ typeC: [headerGbps === undefined ? {} : { gbps: headerGbps }] }, front(gbps)).slice(1);
	expect(slower(10, 20)).toEqual(["Front USB-C of Bandbox is made for 20 Gb/s and runs at 10 Gb/s there."]);
	expect(slower(20, 20)).toEqual([]);
	expect(slower(undefined, 20)).toEqual([]);
	expect(slower(10)).toEqual([]);
});

test("what shares a header goes on a splitter, with all that it may draw", () => {
	expect(goes({ fans: [cpuFan, { ...caseFan, amps: 2 }] }, { caseFans: 2 })).toEqual([
		"Case fan 1 on FAN_1.",
		"Case fan 2 shares FAN_1 through a splitter; together they may draw 2 A at most.",
		"Free: CPU_FAN.",
	]);
});

test("lights are several and share a header, a fan is one and shares it", () => {
	const lights: Headers = { lights: [{ name: "L12", volts: 12, amps: 3 }] };
	expect(goes(lights, { lights: ["12 V four-pin", "12 V four-pin"] })).toEqual([
		"12 V lights 1 on L12.",
		"12 V lights 2 share L12 through a splitter; together they may draw 3 A at most.",
		caution,
	]);
});

test("where nobody knows what a lighting header feeds, no figure is told", () => {
	expect(goes({ lights: [{ name: "L5", volts: 5 }] }, { lights: ["5 V three-pin", "5 V three-pin"] })).toEqual([
		"5 V lights 1 on L5.",
		"5 V lights 2 share L5 through a splitter.",
		caution,
	]);
});

test("whoever plugs in lights is told once never to mix the voltages", () => {
	const both: Headers = {
		lights: [
			{ name: "L5", volts: 5 },
			{ name: "L12", volts: 12 },
		],
	};
	expect(goes(both, { lights: ["5 V three-pin", "12 V four-pin"] })).toEqual([
		"5 V lights on L5.",
		"12 V lights on L12.",
		caution,
	]);
	expect(goes({ ...both, fans: [caseFan] }, { caseFans: 1 })).toEqual(["Case fan on FAN_1.", "Free: L5 and L12."]);
});

test.each([
	["the board has none of any kind", { lights: [] }, []],
	["the board has only the other voltage", { lights: [{ name: "L12", volts: 12 }] }, ["Free: L12."]],
	["nobody knows which the board has", {}, []],
] as const)("the voltages are never to be mixed either where %s", (_, headers, free) => {
	expect(goes(headers as Headers, { lights: ["5 V three-pin"] })).toEqual([caution, ...free]);
});

test("lights of the cooler count as lights, and a controller with a USB plug does not", () => {
	const cooler: HeaderBuild["cooler"] = {
		state: "have",
		ownership: "bought",
		part: { id: "slab", name: "Slab", headersUsed: { fan: 0, lights5V: 1 } },
	};
	expect(goes(noHeaders, { cooler })).toEqual([caution]);
	expect(goes(noHeaders, { lights: ["maker's own"] })).toEqual([]);
});

test("lights never go on a header of the other voltage", () => {
	const twelve: Headers = { lights: [{ name: "L12", volts: 12 }] };
	expect(planOf(twelve, { lights: ["5 V three-pin"] }).placed).toEqual([]);
	expect(lacks(twelve, { lights: ["5 V three-pin"] })).toEqual([
		"5 V lights: the board has no 5 V lighting header for them.",
	]);
});

test("what stays free is told in short sentences, with runs folded", () => {
	const fans = [2, 3, 4, 5].map((nth) => ({ ...caseFan, name: `FAN_${nth}` }));
	expect(goes({ usb2: 3, usb5: 1, frontAudio: true, fans: [cpuFan, ...fans] }, { caseFans: 1 })).toEqual([
		"Case fan on FAN_2.",
		"Free: 9-pin USB headers 1 to 3, 19-pin USB header, front sound header and CPU_FAN.",
		"Free too: FAN_3 to FAN_5.",
	]);
});

test("plugs of which the board has no header at all are told with the kind of header they want", () => {
	expect(
		lacks(noHeaders, {
			...bandbox([
				{ plug: "USB 9-pin", count: 1 },
				{ plug: "USB-C 20-pin", count: 1 },
				{ plug: "sound", count: 1 },
			]),
			...liquid(1),
			caseFans: 1,
			lights: ["5 V three-pin", "12 V four-pin"],
		}),
	).toEqual([
		"Slow front USB of Bandbox: the board has no USB 9-pin header for it.",
		"Front USB-C of Bandbox: the board has no USB-C 20-pin header for it.",
		"Front sound of Bandbox: the board has no sound header for it.",
		"Pump of Brook: the board has no fan header for it. Do not start without it: nothing would cool the processor.",
		"Fan of Brook: the board has no fan header for it.",
		"Case fan: the board has no fan header for it.",
		"5 V lights: the board has no 5 V lighting header for them.",
		"12 V lights: the board has no 12 V lighting header for them.",
	]);
});

test("where others took the headers, none is left", () => {
	expect(lacks({ usb2: 1, usb5: 1 }, bandbox([{ plug: "USB 9-pin", count: 2 }]))).toEqual([
		"Slow front USB 2 of Bandbox: the board has no USB 9-pin header left for it.",
	]);
	// A fan may share another fan's header, a pump never.
	const twoPumps: HeaderBuild["cooler"] = {
		state: "have",
		ownership: "bought",
		part: { id: "brook", name: "Brook", kind: "liquid", headersUsed: { pump: 2, fan: 0 } },
	};
	expect(lacks({ fans: [pumpFan] }, { cooler: twoPumps })).toEqual([
		"Pump 2 of Brook: the board has no fan header left for it. Do not start without it: nothing would cool the processor.",
	]);
	// A case fan never shares with a pump, which must run at full speed.
	expect(lacks({ fans: [pumpFan] }, { ...liquid(0), caseFans: 1 })).toEqual([
		"Case fan: the board has no fan header left for it.",
	]);
});

test("headers that nobody knows: a sentence for each fact that would tell", () => {
	const silent = { ...liquid(1), lights: ["5 V three-pin", "12 V four-pin"] as const, caseFans: 3 };
	expect(open({}, silent)).toEqual([
		"Fan and pump headers, for: pump of Brook, fan of Brook and case fans 1 to 3.",
		"Lighting headers, for: 5 V lights and 12 V lights.",
	]);
	expect(open({ fans: [cpuFan], lights: [] }, silent)).toEqual([]);
	expect(open({}, bare)).toEqual([]);
});

test("things only thought of for later years are not told, wherever they end", () => {
	const later: Partial<HeaderBuild> = { laterThings: ["fan", "fan"] };
	for (const headers of [{ fans: [caseFan] }, noHeaders, {}] satisfies readonly Headers[]) {
		expect(planOf(headers, later).wishes.map(({ isLater }) => isLater)).toEqual([true, true]);
		expect([...goes(headers, later), ...lacks(headers, later), ...open(headers, later)]).toEqual([]);
	}
});

test("nothing but what is free is told of a board where nothing is plugged in", () => {
	expect(goes({ usb2: 2, fans: [cpuFan] }, {})).toEqual(["Free: 9-pin USB header 1, 9-pin USB header 2 and CPU_FAN."]);
	expect(goes(noHeaders, {})).toEqual([]);
	expect(lacks(noHeaders, {})).toEqual([]);
});
