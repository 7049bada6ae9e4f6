import type { Board } from "../parts/board.ts";
import type { PcCase } from "../parts/case.ts";
import { connectorsOf } from "./board-connectors.ts";
import type { Connector, Leaning, SharingGroup } from "./connector.ts";
import type { CardDevice, Device } from "./device.ts";
import { type BuildOfPlan, devicesOf } from "./devices.ts";
import { laterDevicesOf } from "./later-devices.ts";
import type { ProcessorOfPlan } from "./processor-limits.ts";
import { sharingGroupsOf } from "./sharing-groups.ts";

/** What wants a place, and the places there are: all that a plan depends on. */
export interface PlanProblem {
	readonly connectors: readonly Connector[];
	readonly groups: readonly SharingGroup[];
	/** In the order they are named, in which they are shown; what is planned does not hang on it. */
	readonly devices: readonly Device[];
	/** Things that have no part in it, since nobody knows which connectors of their kind the board has. */
	readonly unlisted: readonly Device[];
	/** Card openings of the case, and those for a card that is mounted upright; null where nobody knows. */
	readonly caseRows: number | null;
	readonly uprightRows: number | null;
	readonly leaning: Leaning;
	/** Whether an M.2 drive may go on an adapter card or into a frame. */
	readonly mayAdapt: boolean;
}

export interface PlanOptions {
	readonly leaning: Leaning;
	readonly mayAdapt?: boolean;
	/** Things named for later are planned too, after all that comes now. */
	readonly withLater?: boolean;
}

export type BoardOfPlan = Pick<Board, "cardSlots" | "m2Sockets" | "drivePorts" | "conditions" | "sharing">;
export interface BuildAround extends BuildOfPlan {
	readonly processor: ProcessorOfPlan;
	readonly case: Pick<PcCase, "cardSlots" | "uprightSlots"> | null;
}

/** A board and a build as a problem; what is not known is taken by the leaning. */
export function problemOf(
	board: BoardOfPlan,
	build: BuildAround,
	{ leaning, mayAdapt = false, withLater = false }: PlanOptions,
): PlanProblem {
	const connectors = connectorsOf(board, build.processor, leaning);
	const all = devicesFor(build, leaning, withLater);
	return {
		connectors,
		groups: sharingGroupsOf(board.sharing, connectors, leaning),
		devices: all.filter((device) => isListed(board, device)),
		unlisted: all.filter((device) => !isListed(board, device)),
		caseRows: build.case?.cardSlots ?? null,
		uprightRows: build.case?.uprightSlots ?? null,
		leaning,
		mayAdapt,
	};
}

const knownDevices = new WeakMap<BuildAround, Map<string, readonly Device[]>>();

/** The same for every board; a thing that is the same at worst is one object, so that two problems are quickly compared. */
function devicesFor(build: BuildAround, leaning: Leaning, withLater: boolean): readonly Device[] {
	const ofBuild = knownDevices.get(build) ?? new Map<string, readonly Device[]>();
	knownDevices.set(build, ofBuild);
	const key = `${leaning} ${withLater}`;
	const known = ofBuild.get(key);
	if (known) return known;
	const made = [
		...devicesOf(build, leaning).map((device): Device => (withLater ? { ...device, standing: "owned" } : device)),
		...laterDevicesOf(build).map((device): Device => (withLater ? { ...device, standing: "planned" } : device)),
	];
	const atBest = leaning === "best" ? [] : devicesFor(build, "best", withLater);
	const all = made.map((device) => atBest.find((other) => JSON.stringify(other) === JSON.stringify(device)) ?? device);
	ofBuild.set(key, all);
	return all;
}

/** Where a board lists the connectors that a device goes into first of all. */
export function listFor({ kind }: Pick<Device, "kind">): "cardSlots" | "m2Sockets" | "drivePorts" {
	if (kind === "M.2 drive") return "m2Sockets";
	return kind === "drive" ? "drivePorts" : "cardSlots";
}

function isListed(board: BoardOfPlan, device: Device): boolean {
	return board[listFor(device)] !== undefined;
}

/** Whether the slots' rows and the case leave a card this slot. */
export function caseLeaves({ caseRows }: PlanProblem, card: CardDevice, row: number | null): boolean {
	// A card that not even the first row of the case holds is a matter between case and card; no board cures it.
	if (caseRows === null || row === null || !fitsAtRow(card, 1, caseRows)) return true;
	return fitsAtRow(card, row, caseRows);
}

/** Many cases have some room beside the last opening: less than a row too much is to be measured (common practice). */
function fitsAtRow({ bracketRows, exactRows, rows }: CardDevice, row: number, caseRows: number): boolean {
	return row - 1 + bracketRows <= caseRows && row - 1 + (exactRows ?? rows) < caseRows + 1;
}

/** Whether the graphics card can stand upright in this case, on a riser cable. */
export function mayStandUpright({ uprightRows }: PlanProblem, card: CardDevice): boolean {
	return card.kind === "graphics card" && (uprightRows ?? 0) >= card.bracketRows;
}
