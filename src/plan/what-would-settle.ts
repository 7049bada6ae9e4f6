import type { GraphicsCard } from "../parts/graphics-card.ts";
import type { M2Socket } from "../reference/m2-fit.ts";
import type { CardSlot, DrivePort } from "./connector.ts";
import { planFor } from "./plan.ts";
import { type BoardOfPlan, type BuildAround, listFor, problemOf } from "./problem.ts";
import { factsThatSettleLimits } from "./processor-limits.ts";

/** A fact that nobody has given, and what a board and a build are if it turns out well. */
interface OpenFact {
	readonly path: string;
	readonly settle: (board: BoardOfPlan, build: BuildAround) => readonly [BoardOfPlan, BuildAround];
}

/** Any card of today and any drive goes into these; used to see what a missing detail decides. */
const ampleLanes = 16;
/** Rows so far apart that no card reaches from one to the next. */
const [farRow, mostRows] = [20, 5];
const allLengthsMm = [30, 42, 60, 80, 110];
/** A card that is in nobody's way. */
const slimCard = { thicknessMm: 20, lengthMm: 100 } as const;

/**
 * The facts that decide how a plan turns out at worst: those with which alone, turned out well, it is worth more. Where it
 * takes several together, those without which all the others do less.
 *
 * @param worthAtWorst what a board and a build are worth when all that is not known turns out badly; more is better
 */
export function decidingFacts(
	board: BoardOfPlan,
	build: BuildAround,
	worthAtWorst: (board: BoardOfPlan, build: BuildAround) => number,
): readonly string[] {
	const open = openFacts(board, build);
	const worthWith = (facts: readonly OpenFact[]) => {
		let settled: readonly [BoardOfPlan, BuildAround] = [board, build];
		for (const { settle } of facts) settled = settle(...settled);
		return worthAtWorst(...settled);
	};
	const worst = worthWith([]);
	const alone = open.filter((fact) => worthWith([fact]) > worst);
	const all = worthWith(open);
	const together =
		alone.length > 0 ? alone : open.filter((fact) => worthWith(open.filter((one) => one !== fact)) < all);
	return [...new Set((together.length > 0 ? together : open).map(({ path }) => path))];
}

/**
 * The facts that decide whether things find a place.
 *
 * @param unlisted paths of lists of connectors that are not known and might hold what is left over
 */
export function whatWouldSettle(
	board: BoardOfPlan,
	build: BuildAround,
	unlisted: readonly string[],
): readonly string[] {
	const lists = problemOf(board, build, { leaning: "best" }).unlisted.map((device) => `board.${listFor(device)}`);
	const known = [...new Set([...lists, ...unlisted])];
	const countUnplaced = (one: BoardOfPlan, around: BuildAround) =>
		-planFor(problemOf(one, around, { leaning: "worst", mayAdapt: true })).unplaced.length;
	const details = decidingFacts(board, build, countUnplaced);
	// Where a whole list is missing, details come after it.
	const all = known.length > 0 ? known : details;
	return all.length > 0 ? all : ["board.m2Sockets"];
}

function openFacts(board: BoardOfPlan, build: BuildAround): readonly OpenFact[] {
	const { cardSlots, m2Sockets, drivePorts } = board;
	const card = build.graphicsCard;
	const names = [...(cardSlots ?? []), ...(m2Sockets ?? []), ...(drivePorts ?? [])].map(({ name }) => name);
	const withBoard = (path: string, change: (board: BoardOfPlan) => Partial<BoardOfPlan>): OpenFact => ({
		path,
		settle: (one, around) => [{ ...one, ...change(one) }, around],
	});
	const withBuild = (path: string, change: (build: BuildAround) => Partial<BuildAround>): OpenFact => ({
		path,
		settle: (one, around) => [one, { ...around, ...change(around) }],
	});
	const cardWith = (facts: Partial<GraphicsCard>) => (around: BuildAround) =>
		around.graphicsCard.state === "have"
			? { graphicsCard: { ...around.graphicsCard, part: { ...around.graphicsCard.part, ...facts } } }
			: {};
	const { thicknessMm, lengthMm } = card.state === "have" ? card.part : slimCard;
	return [
		...(card.state === "unknown" ? [withBuild("graphicsCard", () => ({ graphicsCard: { state: "none" } }))] : []),
		...(thicknessMm === undefined ? [withBuild("graphicsCard.thicknessMm", cardWith(slimCard))] : []),
		...(thicknessMm !== undefined && lengthMm === undefined
			? [withBuild("graphicsCard.lengthMm", cardWith({ lengthMm: slimCard.lengthMm }))]
			: []),
		...(board.sharing === undefined ? [withBoard("board.sharing", () => ({ sharing: [] }))] : []),
		...factsThatSettleLimits(names, board.conditions ?? [], build.processor).map((path) =>
			// No limit touches a processor that is still to be bought.
			withBuild(path, ({ processor }) => ({ processor: { ...processor, state: "open" } })),
		),
		...(cardSlots?.some(
			({ lengthLanes, wiredLanes, row, from }) => !lengthLanes || wiredLanes === undefined || !row || !from,
		)
			? [withBoard("board.cardSlots", () => ({ cardSlots: cardSlots.map(ampleSlot) }))]
			: []),
		...(m2Sockets?.some(({ key, lengthsMm, sata }) => !key || !lengthsMm || sata === undefined)
			? [withBoard("board.m2Sockets", () => ({ m2Sockets: m2Sockets.map(ampleSocket) }))]
			: []),
		// Whether a SlimSAS port carries a U.2 drive is a matter of its wiring.
		...(drivePorts?.some(({ kind }) => kind === "SlimSAS")
			? [withBoard("board.drivePorts", () => ({ drivePorts: drivePorts.map(ampleWiring) }))]
			: []),
	];
}

function ampleSlot(slot: CardSlot, nth: number): CardSlot {
	const { lengthLanes = ampleLanes, wiredLanes = ampleLanes, from = "processor" } = slot;
	return { ...slot, lengthLanes, wiredLanes, from, row: slot.row ?? farRow + nth * mostRows };
}

function ampleWiring(port: DrivePort): DrivePort {
	return port.kind === "SlimSAS" ? { ...port, kind: "U.2" } : port;
}

function ampleSocket(socket: M2Socket): M2Socket {
	const { key = "M", lengthsMm = allLengthsMm, sata = true } = socket;
	return { ...socket, key, lengthsMm, sata };
}
