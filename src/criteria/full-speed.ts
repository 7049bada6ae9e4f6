import { piecewiseLinear } from "../maths/piecewise-linear.ts";
import type { FactsUnder } from "../parts/fact-path.ts";
import type { PlacedDevice } from "../plan/plan.ts";
import type { PlannedThing } from "../plan/plan-facts.ts";
import { gbytesPerSecond, type LinkGeneration } from "../reference/link-bandwidth.ts";
import { defineCriterion, type Measure, type Scale } from "./define-criterion.ts";

/**
 * What a share of the speed is worth, by kind. Common practice, no source: a graphics card at half its lanes loses a few
 * percent in games, a drive a tenth slower is noticed by nobody, and memory loses little with its rate. The figures are
 * our own convention.
 */
export const worthOfShare = {
	"graphics card": [
		[0, 0],
		[0.25, 0.6],
		[0.5, 0.95],
		[1, 1],
	],
	"drive or card": [
		[0, 0],
		[0.5, 0.7],
		[0.9, 1],
	],
	memory: [
		[0.5, 0],
		[0.8, 0.7],
		[0.95, 1],
	],
} as const satisfies Readonly<Record<string, Scale>>;

/** A graphics card with so much, in GB/s, is nearly at full speed whatever it can use: PCI Express 3.0 x8 is 7.88. */
const plentyGbytesPerS = 7.8;
const nearlyFull = 0.95;
/** The oldest generation on boards of today, where a page is silent (common practice, no source); and the newest known. */
const [oldestGeneration, newestGeneration] = [2, 6] as const;
/** Least share of its rate that memory surely runs at where no table is read (own convention). */
const leastMemoryShare = 0.5;

const reads = [
	"graphicsCard",
	"plan.things",
	"plan.missing",
	"plan.openLimits",
	"board.sharing",
	"memory.mtPerS",
	"memory.type",
	"processor.memory.rates",
	"board.memory.rates",
	"board.memory.highestMtPerS",
	"board.raises.memoryRate",
] as const;
type Facts = FactsUnder<never, (typeof reads)[number]>;

/** One fast part: what its speed on this board is worth, 0 to 1. */
interface FastPart {
	readonly name: string;
	readonly low: number;
	readonly high: number;
	/** Asked for a few boards only; it may take many plans to tell. */
	readonly missing: () => readonly string[];
}

/**
 * How fast the named fast parts run in their places of the plan: graphics card, PCI Express drives, cards, memory. Each
 * counts alike. That drives on the chipset share its link counts only when all work at once, so a rule tells it.
 */
export const fullSpeed = defineCriterion({
	id: "full-speed",
	name: "your parts at full speed",
	asks: "How much would parts slowed down by the board bother you?",
	why: "A graphics card, a fast drive or memory is only as fast as its place on the board lets it be.",
	ends: {
		worst: "what you paid for speed runs far slower",
		best: "all your fast parts run as fast as matters",
	},
	unit: "share of full speed",
	scale: [
		[0, 0],
		[1, 1],
	],
	// Below it names what runs slower, or says that it is not known.
	plusFrom: 1,
	source: "own-convention",
	grounds:
		"Each fast part counts alike. A graphics card at half its lanes counts 0.95; a drive or card at half its speed 0.7, from nine tenths on 1; memory at four fifths of its rate 0.7, from 95 per cent on 1.",
	reads,
	measure(facts): Measure | null {
		const things = (facts["plan.things"] ?? []).flatMap((thing) => partOf(thing, facts) ?? []);
		const memory = memoryOf(facts);
		const parts = memory ? [...things, memory] : things;
		if (parts.length === 0) return null;
		const mean = (end: "low" | "high") => parts.reduce((sum, part) => sum + part[end], 0) / parts.length;
		const note = noteOf(parts);
		return {
			low: mean("low"),
			high: mean("high"),
			get missing() {
				return [...new Set(parts.flatMap(({ missing }) => missing()))];
			},
			...(note ? { note } : {}),
		};
	},
	says: ({ low, high, note }) => {
		if (low === 1) return "all your fast parts run at full speed on it";
		if (note) return note;
		return low < high
			? "how fast some of your fast parts run on it is not known"
			: "some of your fast parts run slower on it than they can";
	},
});

/** Null for what uses no lanes, and for a graphics card of which nobody has said that there will be one. */
function partOf({ device, best, worst, hasPlace }: PlannedThing, facts: Facts): FastPart | null {
	if (device.lanes === null) return null;
	const isGraphics = device.kind === "graphics card";
	if (isGraphics && (facts.graphicsCard ?? "unknown") === "unknown") return null;
	const { name } = device;
	if (hasPlace === "no") return { name, low: 0, high: 0, missing: () => [] };
	const values = [best, worst].flatMap((placed) => (placed ? worthOf(placed) : []));
	const isUnsure = hasPlace === "unknown" || worst === null;
	const low = isUnsure ? 0 : Math.min(...values);
	const high = best ? Math.max(...values) : 1;
	if (low === high) return { name, low, high, missing: () => [] };
	const list = best ? listOf(best) : isGraphics || device.kind === "card" ? "board.cardSlots" : "board.m2Sockets";
	const isOpen = best !== null && (best.connector.generation === null || best.connector.wiredLanes === null);
	const found = () =>
		isUnsure
			? (facts["plan.missing"] ?? [])
			: [
					...(isOpen ? [list] : []),
					...(facts["plan.openLimits"] ?? []),
					...(facts["board.sharing"] || best?.lanes === worst?.lanes ? [] : ["board.sharing"]),
				];
	return { name, low, high, missing: () => (found().length > 0 ? found() : [list]) };
}

function listOf({ connector }: PlacedDevice): string {
	if (connector.kind === "card slot") return "board.cardSlots";
	return connector.kind === "M.2 socket" ? "board.m2Sockets" : "board.drivePorts";
}

/** What the speed of a thing in its place is worth, at worst and at best. */
function worthOf({ device, connector, link }: PlacedDevice): readonly number[] {
	const { lanes, gbytesPerS: moves } = link;
	// A thing of which only the lanes are known is as fast as its lanes.
	if (device.gbytesPerS === null || lanes === null)
		return [worth(device.kind, (lanes ?? 0) / (device.lanes ?? 1), null)];
	const full = device.gbytesPerS;
	const rate = (generation: number) =>
		Math.min(full, gbytesPerSecond(Math.min(device.generation ?? generation, generation, 6) as LinkGeneration, lanes));
	const rates =
		moves !== null
			? [moves]
			: connector.generation === null && connector.kind !== "drive port"
				? [rate(oldestGeneration), rate(newestGeneration)]
				: [rate(newestGeneration)];
	// What moves nothing loses nothing.
	return rates.map((one) => worth(device.kind, full > 0 ? one / full : 1, one));
}

function worth(kind: PlacedDevice["device"]["kind"], share: number, gbytesPerS: number | null): number {
	if (kind !== "graphics card") return piecewiseLinear(worthOfShare["drive or card"], share);
	const value = piecewiseLinear(worthOfShare["graphics card"], share);
	return gbytesPerS !== null && gbytesPerS >= plentyGbytesPerS ? Math.max(nearlyFull, value) : value;
}

/**
 * The memory at its rate on this board. Above the tables of processor and board the rate has to be raised, which the
 * board must let, and up to its highest. More modules a channel run slower on every board, so they are left out here.
 */
function memoryOf(facts: Facts): FastPart | null {
	const rate = facts["memory.mtPerS"];
	if (rate === undefined) return null;
	const [highest, mayRaise] = [facts["board.memory.highestMtPerS"], facts["board.raises.memoryRate"]];
	const [ofProcessor, ofBoard] = [facts["processor.memory.rates"], facts["board.memory.rates"]].map((rows) =>
		highestListed(rows, facts["memory.type"]),
	);
	const listed = Math.min(ofProcessor ?? ofBoard ?? Number.POSITIVE_INFINITY, ofBoard ?? Number.POSITIVE_INFINITY);
	const isListed = Number.isFinite(listed);
	// What it runs at without being raised; and what the board lets it be raised to.
	const plain = { low: isListed ? Math.min(rate, listed) : leastMemoryShare * rate, high: Math.min(rate, listed) };
	const raised = {
		low: highest === undefined ? plain.low : Math.min(rate, highest),
		high: Math.min(rate, highest ?? rate),
	};
	const rates = mayRaise === true ? [raised] : mayRaise === false ? [plain] : [plain, raised];
	const value = (mtPerS: number) => piecewiseLinear(worthOfShare.memory, mtPerS / rate);
	const low = value(Math.min(...rates.map((one) => one.low)));
	const high = value(Math.max(...rates.map((one) => one.high)));
	const missing = [
		...(mayRaise === undefined ? ["board.raises.memoryRate"] : []),
		...(highest === undefined && mayRaise !== false ? ["board.memory.highestMtPerS"] : []),
		...(isListed || mayRaise === true ? [] : ["processor.memory.rates"]),
	];
	return { name: "your memory", low, high, missing: () => (low < high ? missing : []) };
}

function highestListed(
	rows: Facts["board.memory.rates"] | Facts["processor.memory.rates"],
	type: Facts["memory.type"],
): number | undefined {
	const alike = (rows ?? []).filter((row) => row.type === undefined || type === undefined || row.type === type);
	return alike.length > 0 ? Math.max(...alike.map(({ mtPerS }) => mtPerS)) : undefined;
}

/** Names what surely runs slower; undefined where nothing does. */
function noteOf(parts: readonly FastPart[]): string | undefined {
	const slower = parts.filter(({ high }) => high < nearlyFull).map(({ name }) => name);
	const nearly = parts.filter(({ high }) => high >= nearlyFull && high < 1).map(({ name }) => name);
	const said = [
		...(slower.length > 0 ? [`${namesOf(slower)} slower on it than possible`] : []),
		...(nearly.length > 0 ? [`${namesOf(nearly)} nearly at full speed on it`] : []),
	];
	return said.length > 0 ? said.join("; ") : undefined;
}

function namesOf(names: readonly string[]): string {
	if (names.length > 2) return `${names.length} of your fast parts run`;
	return names.length === 2 ? `${names.join(" and ")} run` : `${names[0]} runs`;
}
