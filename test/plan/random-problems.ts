import type { LaterThing } from "../../src/parts/wants.ts";
import { type BoardOfPlan, type BuildAround, type PlanProblem, problemOf } from "../../src/plan/problem.ts";
import { bareBuild, card, m2, slot, stick, withGraphics } from "./made-up-problem.ts";

/** Numbers drawn from a seed, always the same ones (mulberry32, from memory). */
interface Draws {
	readonly chance: (share: number) => boolean;
	/** From `least` to `most`, both among them. */
	readonly count: (least: number, most: number) => number;
	readonly pick: <T>(some: readonly T[]) => T;
	readonly shuffled: <T>(some: readonly T[]) => readonly T[];
}

/** The first draws of near seeds are much alike. */
const drawsThrownAway = 64;

function drawsFrom(seed: number): Draws {
	let state = seed >>> 0;
	const next = () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
	};
	for (let thrown = 0; thrown < drawsThrownAway; thrown++) next();
	const count = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
	return {
		chance: (share) => next() < share,
		count,
		pick: <T>(some: readonly T[]) => some[count(0, some.length - 1)] as T,
		shuffled: (some) =>
			some
				.map((one) => [next(), one] as const)
				.sort(([one], [other]) => one - other)
				.map(([, one]) => one),
	};
}

const several = <T>(many: number, make: (nth: number) => T) =>
	Array.from({ length: many }, (_, index) => make(index + 1));
const origins = ["processor", "chipset"] as const;

function randomBoard(draws: Draws): BoardOfPlan {
	const { chance, count, pick, shuffled } = draws;
	const rows = shuffled([1, 2, 3, 4, 5, 6, 7])
		.slice(0, count(2, 5))
		.sort((one, other) => one - other);
	const cardSlots = rows.map((row, index) => {
		const lanes = index === 0 && chance(0.8) ? 16 : pick([16, 4, 1]);
		if (index > 0 && chance(0.12)) return { name: `X${index + 1}`, bus: "PCI" as const, row };
		return slot(`X${index + 1}`, row, lanes, { generation: count(3, 5), from: pick(origins) });
	});
	const m2Sockets = several(count(1, 4), (nth) =>
		m2(`M${nth}`, {
			wiredLanes: pick([2, 4]),
			generation: count(3, 5),
			sata: chance(0.4),
			cooled: chance(0.5),
			row: count(1, 7),
			from: pick(origins),
		}),
	);
	const drivePorts = several(count(0, 6), (nth) => ({
		name: `S${nth}`,
		kind: chance(0.15) ? pick(["U.2", "SlimSAS"] as const) : ("SATA" as const),
		...(chance(0.4) ? { upright: true, row: count(1, 7) } : {}),
	}));
	const widths = new Map([
		...cardSlots.map(({ name, wiredLanes }) => [name, wiredLanes ?? 1] as const),
		...m2Sockets.map(({ name, wiredLanes }) => [name, wiredLanes ?? 1] as const),
		...drivePorts.map(({ name, kind }) => [name, kind === "SATA" ? 1 : 4] as const),
	]);
	const sharing = several(count(0, 3), () => randomGroup(draws, widths));
	const conditions = several(count(0, 2), () => ({
		connector: pick([...widths.keys()]),
		when: pick([{ processorSeries: ["Lump"] }, { processorGraphics: true }]),
		...pick([{ dead: true }, { wiredLanes: 1 }, { generation: 3 }, { wiredLanes: 8 }] as const),
	}));
	return { cardSlots, m2Sockets, drivePorts, conditions: widths.size > 0 ? conditions : [], sharing };
}

/** Either the first member or the others; where two have sixteen lanes, perhaps eight and eight instead. */
function randomGroup({ chance, count, shuffled }: Draws, widths: ReadonlyMap<string, number>) {
	const on = (names: readonly string[]) => ({
		on: Object.fromEntries(names.map((name) => [name, widths.get(name) ?? 1])),
	});
	const wide = [...widths].filter(([, lanes]) => lanes === 16).map(([name]) => name);
	const [first, second] = wide;
	if (first && second && chance(0.6))
		return { members: [first, second], modes: [on([first]), { on: { [first]: 8, [second]: 8 } }] };
	const members = shuffled([...widths.keys()]).slice(0, count(2, 3));
	const sockets = members.filter((name) => name.startsWith("M"));
	const isOnlySata = sockets.length > 0 && chance(0.4);
	return {
		members,
		modes: [on(members.slice(0, 1)), on(members.slice(1))],
		...(isOnlySata ? { onlyWithSata: sockets } : {}),
	};
}

const laterKinds = ["M.2 drive", "SATA drive", "card"] as const satisfies readonly LaterThing[];

function randomBuild({ chance, count, pick }: Draws): BuildAround {
	const drives = several(count(0, 3), (nth) => {
		const more = { readMBytesPerS: 1000 * nth + count(500, 6000), ownCooler: chance(0.2) };
		return chance(0.3)
			? stick(`stick ${nth}`, { link: "SATA", key: "B+M", readMBytesPerS: 500 + nth })
			: stick(`stick ${nth}`, { ...more, generation: count(3, 5), lanes: pick([2, 4]) });
	});
	if (chance(0.2))
		drives.push({
			id: "box",
			name: "box",
			shape: "2.5 inch",
			link: "U.2",
			generation: count(3, 5),
			lanes: pick([2, 4]),
		});
	const addInCards = several(count(0, 3), (nth) =>
		card(`card ${nth}`, {
			lanes: pick([1, 4, 8]),
			generation: count(2, 4),
			thicknessMm: chance(0.25) ? count(30, 40) : 18,
			lengthMm: pick([100, 160, 240]),
			heightMm: pick([60, 110]),
			...(chance(0.15) ? { bus: "PCI" as const } : {}),
		}),
	);
	const processor = {
		state: pick(["have", "have", "open", "unknown"] as const),
		series: pick(["Lump", "Loaf", undefined]),
		generation: undefined,
		graphics: pick([true, false, undefined]),
		graphicsLanes: pick([undefined, 4, 8, 16]),
		linkGeneration: pick([undefined, 3, 4, 5]),
	};
	return {
		...bareBuild,
		processor: processor.state === "have" ? processor : { ...bareBuild.processor, state: processor.state },
		case: chance(0.7) ? { cardSlots: count(4, 8), uprightSlots: pick([0, 2, 3]) } : null,
		graphicsCard: chance(0.8)
			? withGraphics({ thicknessMm: count(18, 75), lengthMm: pick([170, 280]), generation: count(3, 5) })
			: bareBuild.graphicsCard,
		drives,
		olderSataDrives: count(0, 4),
		addInCards,
		boughtLists: chance(0.5) ? [pick(["drives", "addInCards"] as const)] : null,
		laterThings: chance(0.4) ? several(count(1, 3), () => pick(laterKinds)) : null,
		wishes: chance(0.15) ? { "features/second-card": "would-like" } : {},
	};
}

/** A made-up board and build for each seed, with every row known. */
export function randomProblem(seed: number): PlanProblem {
	const draws = drawsFrom(seed);
	return problemOf(randomBoard(draws), randomBuild(draws), {
		leaning: draws.pick(["best", "worst"] as const),
		mayAdapt: draws.chance(0.5),
		withLater: draws.chance(0.3),
	});
}
