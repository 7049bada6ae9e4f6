import type { Board } from "../parts/board.ts";
import { isCard } from "../plan/device.ts";
import type { HeaderPlan } from "../plan/header-plan.ts";
import type { PlanMeasure } from "../plan/measure-plan.ts";
import type { MemorySlots } from "../plan/memory-slots.ts";
import type { ConnectorEnd, PlacedDevice, Plan } from "../plan/plan.ts";
import type { UplinkLoad } from "../plan/uplink.ts";
import { boardPictureSockets } from "../rules/board-picture-sockets.ts";
import { roundToHundredth } from "../rules/round-to-hundredth.ts";
import { numbered, withCounts } from "./listed.ts";

/** A connector as it is drawn: its end, and what goes in. */
export interface DrawnConnector {
	readonly name: string;
	readonly shape: "slot" | "socket" | "port" | "header";
	/** Length of a slot's edge in lanes; 0 for anything else, and for slots of the old kind. */
	readonly sizeLanes: number;
	readonly state: ConnectorEnd["state"] | "buried";
	/** What goes in, or what it is off or covered for; empty where nothing is. */
	readonly by: string;
	/** Lanes that what goes in does not get, such as "8 of 16 lanes"; empty where it has all. */
	readonly lack: string;
}

export interface DrawnRow {
	/** 1 nearest the processor. */
	readonly row: number;
	readonly connectors: readonly DrawnConnector[];
	/** Name of the card of several rows that fills this one, its own row among them; null where there is none. */
	readonly filledBy: string | null;
}

export interface DrawnPlan {
	readonly rows: readonly DrawnRow[];
	/** Slots and sockets without a row, then ports and headers; runs of ports alike are one. */
	readonly below: readonly DrawnConnector[];
	/** Names of memory slots to fill and to leave empty; null where nobody knows. */
	readonly memory: MemorySlots | null;
	/** What the chipset's link carries against what hangs on it; null where nothing does or nobody knows. */
	readonly chipset: string | null;
	/** The board's own processor plugs, and where the screen's cable goes; null where nobody knows. */
	readonly processorPlugs: string | null;
	readonly screenCable: string | null;
}

/** What is drawn beside the slots, sockets and ports, where it is known. */
export interface BesideConnectors {
	readonly headerPlan?: HeaderPlan;
	readonly memorySlots?: MemorySlots | null;
	readonly uplink?: UplinkLoad;
	readonly processorPlugs?: readonly string[] | undefined;
	/** Sockets of the board that give a picture; none where a graphics card gives it. */
	readonly pictureSockets?: readonly string[] | undefined;
}

/** All that a picture shows beside the plan itself, of a board and its measured plan. */
export function pictureShape(
	{ depthMm, power, pictureSockets, rearUsb }: Pick<Board, "depthMm" | "power" | "pictureSockets" | "rearUsb">,
	{ headers, memory, uplink, graphicsCard }: Pick<PlanMeasure, "headers" | "memory" | "uplink" | "graphicsCard">,
) {
	return {
		depthMm,
		headerPlan: headers,
		memorySlots: memory?.slots ?? null,
		uplink,
		processorPlugs: power?.processorPlugs,
		pictureSockets: graphicsCard === "none" ? boardPictureSockets(pictureSockets, rearUsb) : [],
	};
}

/** Most columns of the parts of a row, the slot's brackets among them. */
const shapeColumns = 12;
const nameColumns = 12;
/** Fewer letters of a name tell nothing. */
const leastNameColumns = 3;
/** A slot of the old kind (PCI) is about half as long as one for sixteen lanes. */
const oldSlotBars = 5;
/** A board this deep takes the full width; ATX (305 mm by 244 mm) is as deep. */
const fullDepthMm = 244;
/** Of the full width, the least that leaves names and states their room, however shallow the board is. */
const leastShareOfWidth = 0.9;

const meanings: readonly (readonly [DrawnConnector["state"], string])[] = [
	["off", "off = does not work while what is named is in"],
	["narrows", "narrows = takes lanes from what is named"],
	["covered", "covered = a card lies over it"],
	["buried", "buried = works, but a card must come out to reach it"],
	["free", "free = nothing goes in yet"],
	["dead", "dead = of no use with this processor"],
];

/**
 * A plan as a picture of the board, seen from above, its back edge at the left.
 *
 * @param shape depthMm: from the back edge to the opposite one, in mm; a shallow board is drawn narrower. Headers and
 * memory slots are drawn where they are given.
 * @param width most columns of a line.
 * @returns lines of plain ASCII, but for what names hold.
 */
export function planPicture(
	plan: Plan,
	shape: { readonly depthMm?: number | undefined } & BesideConnectors,
	width = 60,
): readonly string[] {
	const { rows, below, memory, chipset, processorPlugs, screenCable } = drawnPlan(plan, shape);
	const share = Math.min(1, Math.max(leastShareOfWidth, (shape.depthMm ?? fullDepthMm) / fullDepthMm));
	const inner = Math.max(0, Math.floor(width * share) - 4);
	const edge = `+${"-".repeat(inner + 2)}+`;
	const framed = (line: string) => `| ${padded(line, inner)} |`;
	const lines = [
		shortened(`[ processor ]${processorPlugs === null ? "" : ` plugs: ${processorPlugs}`}`, inner),
		...(screenCable === null ? [] : [shortened(`screen cable: ${screenCable}`, inner)]),
		...(memory ? packed(memoryItems(memory), inner) : []),
		...rows.flatMap((row) => rowLines(row, inner)),
		...(chipset === null ? [] : [shortened(`[ chipset ] ${chipset}`, inner)]),
		...packed(
			below.map((one) => belowWords(one, inner)),
			inner,
		),
	];
	return [edge, ...lines.map(framed), edge, ...packed(legend({ rows, below }, asciiSigns), width)].map((line) =>
		shortened(line, width),
	);
}

/** What a picture of a plan shows, however it is drawn. */
export function drawnPlan(
	{ placed, ends }: Plan,
	{ headerPlan, memorySlots = null, uplink, processorPlugs = [], pictureSockets = [] }: BesideConnectors = {},
): DrawnPlan {
	const filled = new Map(
		placed.flatMap((one) => rowsFilled(one).map((row) => [row, cleaned(one.device.name)] as const)),
	);
	const ofRow = ({ connector }: ConnectorEnd) => (connector.kind === "drive port" ? null : connector.row);
	const count = Math.max(0, ...ends.map(({ connector }) => connector.row ?? 0), ...filled.keys());
	const drawn = (end: ConnectorEnd) => drawnConnector(end, placed);
	const slotsFirst = [...ends].sort((one, other) => rank(one) - rank(other));
	return {
		rows: Array.from({ length: count }, (_, index) => ({
			row: index + 1,
			connectors: slotsFirst.filter((end) => ofRow(end) === index + 1).map(drawn),
			filledBy: filled.get(index + 1) ?? null,
		})),
		below: [
			...folded(slotsFirst.filter((end) => ofRow(end) === null).map(drawn)),
			...(headerPlan ? drawnHeaders(headerPlan) : []),
		],
		memory: memorySlots,
		chipset: uplink ? chipsetWords(uplink) : null,
		processorPlugs: processorPlugs.length > 0 ? withCounts(processorPlugs).join(", ") : null,
		screenCable: screenWords(placed, pictureSockets),
	};
}

/** The socket that gives the picture: a graphics card's where there is one. */
function screenWords(placed: Plan["placed"], pictureSockets: readonly string[]): string | null {
	const card = placed.find(({ device }) => device.kind === "graphics card");
	if (card) return `into ${cleaned(card.device.name)}`;
	return pictureSockets.length > 0 ? `into ${withCounts(pictureSockets).join(" or ")} at the back` : null;
}

/** "link 7.88 GB/s, 8.7 wanted: too much". */
function chipsetWords({ devices, wantedGbytesPerS: wanted, carriesGbytesPerS: carries }: UplinkLoad): string | null {
	if (devices.length === 0 || carries === null || wanted === 0) return null;
	return `link ${roundToHundredth(carries)} GB/s, ${roundToHundredth(wanted)} wanted${wanted > carries ? ": too much" : ""}`;
}

/** "memory: A2, B2 filled". */
export function memoryItems({ fill, empty }: MemorySlots): readonly string[] {
	return [
		`memory: ${fill.map(cleaned).join(", ")} filled`,
		...(empty?.length ? [`${empty.map(cleaned).join(", ")} empty`] : []),
	];
}

/** Headers in use, with all that shares one, then those that stay free. */
function drawnHeaders({ headers, placed, sharing }: HeaderPlan): readonly DrawnConnector[] {
	const drawn = headers.map(({ name }): DrawnConnector => {
		const on = [...placed, ...sharing].filter((one) => one.header === name && !one.wish.isLater);
		const by = on.map(({ wish }) => cleaned(wish.name)).join(", ");
		const state = on.length > 0 ? "used" : "free";
		return { name: cleaned(name), shape: "header", sizeLanes: 0, state, by, lack: "" };
	});
	const isUsed = ({ state }: DrawnConnector) => state === "used";
	return [...drawn.filter(isUsed), ...folded(drawn.filter((one) => !isUsed(one)))];
}

/** "Dart", "Carousel, 8 of 16 lanes", "Dart, buried", "off (Dart)" or "free", in so many columns; the state stays whole. */
export function endWords({ state, by, lack }: DrawnConnector, columns: number): string {
	const tail = [lack, state === "buried" ? "buried" : ""]
		.filter(Boolean)
		.map((words) => `, ${words}`)
		.join("");
	if (state === "used" || state === "buried") {
		// Where both do not go in, the state is the one that is seen from outside.
		const short = state === "buried" ? ", buried" : tail;
		const said = columns - tail.length < leastNameColumns ? short : tail;
		return `${shortened(by, columns - said.length)}${said}`;
	}
	const room = columns - state.length - 3;
	return by === "" || room < 4 ? state : `${state} (${shortened(by, room)})`;
}

/** A text in so many columns at most, its end left out for ".." where it is longer. */
export function shortened(text: string, columns: number): string {
	if (columnsOf(text) <= columns) return text;
	let short = "";
	for (const piece of graphemes(text)) {
		if (columnsOf(short + piece) > columns - 2) break;
		short += piece;
	}
	return `${short.trimEnd()}..`.slice(columns < 2 ? 2 : 0);
}

function rank({ connector }: ConnectorEnd): number {
	return ["card slot", "M.2 socket", "drive port"].indexOf(connector.kind);
}

/** Rows of a card of several rows; one that stands upright fills none of the board's. */
function rowsFilled({ device, connector, extra }: PlacedDevice): readonly number[] {
	const { row } = connector;
	if (!isCard(device) || row === null || extra === "riser cable" || device.rows < 2) return [];
	return Array.from({ length: Math.ceil(device.rows) }, (_, index) => row + index);
}

function drawnConnector({ connector, state, by }: ConnectorEnd, placed: readonly PlacedDevice[]): DrawnConnector {
	const inIt = placed.find((one) => one.connector === connector);
	const isBuried = inIt?.isBuried === true;
	const [gets, of] = [inIt?.link.lanes ?? 0, inIt?.device.lanes ?? 0];
	return {
		name: cleaned(connector.name),
		shape: connector.kind === "card slot" ? "slot" : connector.kind === "M.2 socket" ? "socket" : "port",
		sizeLanes: connector.kind === "card slot" && connector.bus === "PCI Express" ? connector.sizeLanes : 0,
		state: isBuried ? "buried" : state,
		by: [...new Set(by)].map(cleaned).join(", "),
		lack: [
			inIt && gets > 0 && gets < of ? `${gets} of ${of} lanes` : "",
			inIt?.extra === "adapter card" ? "on a card" : "",
		]
			.filter(Boolean)
			.join(", "),
	};
}

/** Ports next to each other that are numbered on and end alike, as one: "SATA_1-4". */
function folded(connectors: readonly DrawnConnector[]): readonly DrawnConnector[] {
	const runs: { first: DrawnConnector; last: DrawnConnector }[] = [];
	for (const one of connectors) {
		const run = runs.at(-1);
		if (run && isNext(run.last, one)) run.last = one;
		else runs.push({ first: one, last: one });
	}
	return runs.map(({ first, last }) =>
		first === last ? first : { ...first, name: `${first.name}-${numbered(last.name)?.number}` },
	);
}

function isNext(before: DrawnConnector, after: DrawnConnector): boolean {
	const [one, other] = [numbered(before.name), numbered(after.name)];
	const isSmall = before.shape !== "slot" && before.shape !== "socket" && before.shape === after.shape;
	if (!isSmall || !one || !other) return false;
	const isAlike = before.state === after.state && before.by === after.by;
	return isAlike && one.stem === other.stem && other.number === one.number + 1;
}

/** "S5 Brick"; headers with a colon, since their names are words: "FAN_1: fan of Chimney". */
function belowWords(one: DrawnConnector, columns: number): string {
	const name = one.shape === "header" ? one.name : shortened(one.name, nameColumns + 8);
	return one.shape === "header" && one.state !== "free"
		? `${one.name}: ${endWords(one, columns)}`
		: `${name} ${endWords(one, columns)}`;
}

/** One line a connector of the row; the row's number on the first. */
function rowLines({ row, connectors, filledBy }: DrawnRow, columns: number): readonly string[] {
	const start = (index: number) => `${index === 0 ? String(row).padStart(2) : "  "} ${filledBy === null ? " " : "#"}`;
	if (connectors.length === 0) return [start(0).trimEnd()];
	return connectors.map((one, index) => {
		const lead = `${start(index)} ${padded(outline(one), shapeColumns)} ${padded(one.name, nameColumns)} `;
		return `${lead}${endWords(one, columns - columnsOf(lead))}`;
	});
}

function outline({ shape, sizeLanes }: DrawnConnector): string {
	if (shape === "socket") return "  (--)";
	if (sizeLanes === 0) return `[${"-".repeat(oldSlotBars)}]`;
	const bars = Math.ceil((Math.min(16, Math.max(1, sizeLanes)) / 16) * (shapeColumns - 2));
	return `[${"=".repeat(bars)}]`;
}

/** The signs of a legend; an empty one is left out. */
interface Signs {
	readonly slot: string;
	readonly oldSlot: string;
	readonly socket: string;
	readonly filled: string;
}

const asciiSigns: Signs = {
	slot: "[==] = card slot",
	oldSlot: "[--] = slot of the old kind",
	socket: "(--) = M.2 socket",
	filled: "# = filled by one thick card",
};

/** What signs and words in the picture mean, of those that are in it. */
export function legend({ rows, below }: Pick<DrawnPlan, "rows" | "below">, signs: Signs): readonly string[] {
	const inRows = rows.flatMap(({ connectors }) => connectors);
	const states = new Set([...inRows, ...below].map(({ state }) => state));
	const has = (keep: (one: DrawnConnector) => boolean) => inRows.some(keep);
	return [
		...(has(({ shape, sizeLanes }) => shape === "slot" && sizeLanes > 0) ? [signs.slot] : []),
		...(has(({ shape, sizeLanes }) => shape === "slot" && sizeLanes === 0) ? [signs.oldSlot] : []),
		...(has(({ shape }) => shape === "socket") ? [signs.socket] : []),
		...(rows.some(({ filledBy }) => filledBy !== null) ? [signs.filled] : []),
		...meanings.filter(([state]) => states.has(state)).map(([, words]) => words),
	].filter(Boolean);
}

/** As many items in a line as go in. */
export function packed(items: readonly string[], columns: number): readonly string[] {
	const lines: string[] = [];
	for (const item of items) {
		const longer = `${lines.at(-1)}; ${item}`;
		if (lines.length > 0 && columnsOf(longer) <= columns) lines[lines.length - 1] = longer;
		else lines.push(item);
	}
	return lines;
}

function padded(text: string, columns: number): string {
	const short = shortened(text, columns);
	return short + " ".repeat(Math.max(0, columns - columnsOf(short)));
}

/** Line breaks, other controls and marks that turn the direction of text would break the frame, half characters an SVG. */
function cleaned(name: string): string {
	return name.replace(/[\p{Cc}\p{Cs}\u2028-\u202e\u2066-\u2069\ufffe\uffff]+/gu, " ").trim();
}

function graphemes(text: string): readonly string[] {
	return Array.from(new Intl.Segmenter("en", { granularity: "grapheme" }).segment(text), ({ segment }) => segment);
}

/** Scripts whose characters take two cells of a terminal (the wide ones of Unicode, from memory, by blocks). */
const isWide =
	/[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{20000}-\u{3ffff}]|\p{Emoji_Presentation}|\ufe0f/u;

function columnsOf(text: string): number {
	return graphemes(text).reduce((sum, piece) => sum + (isWide.test(piece) ? 2 : 1), 0);
}
