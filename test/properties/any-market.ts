import fc from "fast-check";
import type { Board } from "../../src/parts/board.ts";
import { makeMarket } from "../../src/parts/make-market.ts";
import { type Market, type PartsFile, partsFileSchemaName } from "../../src/parts/market.ts";
import type { PartKind, PartOf } from "../../src/parts/part-kinds.ts";
import { anyPart, type Fullness, full, soundBoard, sparse } from "./any-part.ts";

/** A plain board for the plain parts below: with nothing but drawn parts hardly ever a board would be known to fit. */
const plainBoard: Omit<Board, "id" | "name"> = {
	socket: "Larder 3",
	chipset: "Shelf 20",
	form: "ATX",
	widthMm: 305,
	depthMm: 244,
	supportList: { rows: [{ processor: "Robin 5 210" }] },
	memory: { type: "DDR5", form: "DIMM", slots: 4, channels: 2, maxGb: 128 },
	cardSlots: [
		{
			name: "SLOT_1",
			bus: "PCI Express",
			row: 1,
			lengthLanes: 16,
			wiredLanes: 16,
			generation: 4,
			from: "processor",
		},
	],
	m2Sockets: [{ name: "M2_1", key: "M", lengthsMm: [80], wiredLanes: 4, generation: 4, from: "processor" }],
	drivePorts: [
		{ name: "PORT_1", kind: "SATA" },
		{ name: "PORT_2", kind: "SATA" },
	],
	power: { mainPlug: "24-pin", processorPlugs: ["8-pin"], extraPlugs: [] },
	pictureSockets: ["HDMI", "DisplayPort"],
	headers: { usb2: 2, usb5: 1, typeC: [{ gbps: 20 }], frontAudio: true, fans: [{ name: "FAN_1", use: "processor" }] },
	rearUsb: [
		{ plug: "A", gbps: 5, count: 6 },
		{ plug: "C", gbps: 10, count: 1 },
	],
	wiredGbps: [2.5],
	powerDelivery: { coreStages: 10, stageKind: "integrated", stageRatingA: 60, heatSink: "both sides" },
	warrantyYears: 3,
	price: { minor: 18_900, currency: "EUR" },
};

export const plainParts: PartsFile = {
	schema: partsFileSchemaName,
	processors: [
		{
			id: "plain-processor",
			name: "Robin 5 210",
			socket: "Larder 3",
			generation: "Copper",
			series: "Robin 5",
			graphics: true,
			coolerInBox: true,
			baseW: 65,
			peakW: 95,
			memory: { types: ["DDR5"], channels: 2, rates: [{ modulesPerChannel: 1, mtPerS: 5600 }] },
			lanes: { graphics: 16, storage: 4, generation: 5 },
		},
	],
	cases: [{ id: "plain-case", name: "Plain case", boardForms: ["ATX", "microATX"], frontPlugs: [], frontOpen: "mesh" }],
	memory: [{ id: "plain-memory", name: "Plain memory", type: "DDR5", modules: 2, gbPerModule: 16, mtPerS: 5600 }],
	drives: [
		{
			id: "plain-drive",
			name: "Plain drive",
			shape: "M.2",
			link: "PCI Express",
			key: "M",
			lengthMm: 80,
			lanes: 4,
			generation: 4,
		},
		{ id: "plain-disk", name: "Plain disk", shape: "2.5 inch", link: "SATA" },
	],
	supplies: [{ id: "plain-supply", name: "Plain supply", processorPlugs: ["8-pin", "8-pin"], watts: 650 }],
};

/** The plain board with some of its facts as a drawn board has them, or without these. */
const nearlyPlainBoard: fc.Arbitrary<Board> = fc
	.tuple(anyPart("board"), fc.subarray(Object.keys(plainBoard), { maxLength: 4 }), fc.boolean())
	.map(([drawn, names, onlyKnown]) => {
		const given = Object.fromEntries(
			names.flatMap((name) => {
				const value = (drawn as unknown as Record<string, unknown>)[name];
				return value === undefined && onlyKnown ? [] : [[name, value]];
			}),
		);
		const { id, name, offers, checkedOn } = drawn;
		const extras = { ...(offers ? { offers } : {}), ...(checkedOn ? { checkedOn } : {}) };
		const board = { id, name, ...extras, ...plainBoard, ...given };
		return soundBoard(Object.fromEntries(Object.entries(board).filter(([, value]) => value !== undefined)) as Board);
	});

/** Any board: as a schema lets it be, of which much or little is known, or a plain one with a few facts changed. */
export const anyBoard: fc.Arbitrary<Board> = fc.oneof(
	{ weight: 3, arbitrary: nearlyPlainBoard },
	{ weight: 2, arbitrary: anyPart("board", full) },
	{ weight: 1, arbitrary: anyPart("board", sparse) },
);

/** Boards with ids of their own. */
export const someBoards = (minLength: number, maxLength: number): fc.Arbitrary<readonly Board[]> =>
	fc.uniqueArray(anyBoard, { selector: ({ id }) => id, minLength, maxLength });

const some = <K extends PartKind>(kind: K, maxLength: number, fullness: Fullness = full): fc.Arbitrary<PartOf<K>[]> =>
	fc.uniqueArray(anyPart(kind, fullness), { selector: ({ id }) => id, maxLength });

/** Parts of every kind but boards: drawn ones, and the plain ones too as often as not. */
const otherParts: fc.Arbitrary<readonly PartsFile[]> = fc
	.record({
		isPlain: fc.boolean(),
		processors: some("processor", 3),
		cases: some("case", 2),
		graphicsCards: some("graphicsCard", 2),
		memory: some("memory", 2),
		drives: some("drive", 3),
		addInCards: some("addInCard", 2),
		coolers: some("cooler", 2),
		supplies: some("supply", 2),
		fans: some("fans", 1),
		lighting: some("lighting", 1),
		monitors: some("monitor", 1),
		platforms: some("platform", 2),
	})
	.map(({ isPlain, ...lists }) => {
		const drawn: PartsFile = { schema: partsFileSchemaName, ...lists };
		return isPlain ? [plainParts, drawn] : [drawn, plainParts];
	});

/** Any market of at most so many boards, made as files make it. */
export const anyMarket = (mostBoards = 4): fc.Arbitrary<Market> =>
	fc.tuple(otherParts, someBoards(0, mostBoards)).map(([files, boards]) => marketWith(files, boards));

const marketWith = (files: readonly PartsFile[], boards: readonly Board[]): Market =>
	makeMarket("any parts", [...files, { schema: partsFileSchemaName, boards: [...boards] }]).market;

/** The same market with other boards. A new market, so that nothing is remembered of it. */
export const withBoards = (market: Market, board: readonly Board[]): Market => ({
	...market,
	parts: { ...market.parts, board },
});
