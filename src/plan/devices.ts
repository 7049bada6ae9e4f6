import type { AddInCard } from "../parts/add-in-card.ts";
import type { BuildFacts } from "../parts/build.ts";
import type { Drive } from "../parts/drive.ts";
import type { GraphicsCard } from "../parts/graphics-card.ts";
import { gbytesPerSecond, type LinkGeneration } from "../reference/link-bandwidth.ts";
import { isM2Drive } from "../reference/m2-fit.ts";
import { sataRate } from "../reference/sata-rate.ts";
import { rowsOf, slotPitch } from "../reference/slot-pitch.ts";
import { usualCardLanes } from "../reference/usual-card-lanes.ts";
import type { Leaning } from "./connector.ts";
import type { CardDevice, Device, DriveDevice } from "./device.ts";

export type BuildOfPlan = Pick<
	BuildFacts,
	"graphicsCard" | "drives" | "olderSataDrives" | "addInCards" | "boughtLists" | "laterThings" | "wishes"
>;

/** Rows a graphics card fills where nobody knows: from one to four (common practice, no source). */
const rowsWhereUnknown = { best: 1, worst: 4 } as const satisfies Record<Leaning, number>;
/** Rows of a card that is still to be bought: it can be chosen two wide (common practice, no source). */
const rowsOfOpenCard = 2;
/** A card up to this long, in mm, leaves the M.2 sockets of its row free (own convention). */
const shortCardMm = 120;
/** From this length on, in mm, a card reaches over ports that stand up at the far edge of a board (own convention). */
const edgeMm = 200;
/** A hard disk of which nothing is said, in GB/s (common practice, no source): what the fastest read at their rim. */
const hardDiskGbytesPerS = 0.28;
/** A low-profile card, in mm (PCI-SIG CEM, from memory: 68.9 mm). */
const lowCardMm = 70;

/** Everything of a build that wants a slot, socket or port: the graphics card, drives, cards; no later things. */
export function devicesOf(build: BuildOfPlan, leaning: Leaning): readonly Device[] {
	const bought = (list: "drives" | "addInCards") => (build.boughtLists?.includes(list) ? "owned" : "planned");
	const drives = (build.drives ?? []).map((drive, index) => driveDevice(drive, `drive-${index + 1}`, bought("drives")));
	const older = Array.from({ length: build.olderSataDrives ?? 0 }, (_, index) =>
		driveDevice(olderDrive(index, build.olderSataDrives ?? 0), `older-drive-${index + 1}`, "owned"),
	);
	const cards = (build.addInCards ?? []).map((card, index) =>
		addInDevice(card, addInId(index), bought("addInCards"), leaning),
	);
	return [...graphicsDevices(build.graphicsCard, leaning), ...drives, ...older, ...cards];
}

/** The id of an add-in card by its place in the build's list, from 0. */
export function addInId(index: number): string {
	return `card-${index + 1}`;
}

function olderDrive(index: number, all: number): Drive {
	return {
		id: `older-${index + 1}`,
		name: all === 1 ? "older drive" : `older drive ${index + 1}`,
		shape: "3.5 inch",
		link: "SATA",
	};
}

function graphicsDevices(have: BuildFacts["graphicsCard"], leaning: Leaning): readonly CardDevice[] {
	if (have.state === "none" || (have.state === "unknown" && leaning === "best")) return [];
	if (have.state === "have") return [graphicsDevice(have.part, have.ownership !== "planned", leaning)];
	// Still to be bought: it is chosen two wide. Not known at all: as bad as it may be.
	const rows = have.state === "open" ? rowsOfOpenCard : rowsWhereUnknown.worst;
	return [
		{
			id: "graphics",
			kind: "graphics card",
			name: "graphics card",
			standing: "planned",
			bus: "PCI Express",
			sizeLanes: 16,
			leastLanes: 1,
			lanes: 16,
			generation: null,
			gbytesPerS: null,
			rows,
			bracketRows: Math.min(2, rows),
			exactRows: null,
			isLong: true,
			reachesEdge: have.state === "unknown",
			isLow: false,
		},
	];
}

function graphicsDevice(card: GraphicsCard, isOwned: boolean, leaning: Leaning): CardDevice {
	const rows = card.thicknessMm === undefined ? rowsWhereUnknown[leaning] : rowsOf(card.thicknessMm);
	return {
		id: "graphics",
		kind: "graphics card",
		name: card.name,
		standing: isOwned ? "owned" : "planned",
		bus: "PCI Express",
		// Common practice, no source: a graphics card of which nothing is said has an edge for sixteen lanes.
		sizeLanes: card.lanes ?? 16,
		leastLanes: card.leastLanes ?? 1,
		lanes: card.lanes ?? 16,
		generation: card.generation ?? null,
		gbytesPerS: linkGbytes(card.generation, card.lanes),
		rows,
		bracketRows: card.bracketSlots ?? Math.min(2, rows),
		exactRows: card.thicknessMm === undefined ? null : card.thicknessMm / slotPitch.pitchMm,
		isLong: true,
		reachesEdge: card.lengthMm === undefined ? leaning === "worst" : card.lengthMm >= edgeMm,
		isLow: false,
	};
}

/**
 * Common practice, no source, where a card's page is silent: most small cards are x1, those that move much x4, and
 * every card works with one lane, only slower.
 */
function addInDevice(card: AddInCard, id: string, standing: Device["standing"], leaning: Leaning): CardDevice {
	const sizeLanes = card.lanes ?? card.leastLanes ?? usualCardLanes(card.use);
	const rows = card.thicknessMm === undefined ? (card.bracketSlots ?? 1) : rowsOf(card.thicknessMm);
	const isPci = card.bus === "PCI";
	return {
		id,
		kind: "card",
		name: card.name,
		standing,
		bus: card.bus ?? "PCI Express",
		sizeLanes,
		leastLanes: card.leastLanes ?? 1,
		lanes: isPci ? null : sizeLanes,
		generation: isPci ? null : (card.generation ?? null),
		gbytesPerS: card.gbytesPerS ?? (isPci ? null : linkGbytes(card.generation, card.lanes)),
		rows,
		bracketRows: card.bracketSlots ?? rows,
		exactRows: card.thicknessMm === undefined ? null : card.thicknessMm / slotPitch.pitchMm,
		isLong: (card.lengthMm ?? (sizeLanes > 4 ? shortCardMm + 1 : 0)) > shortCardMm,
		reachesEdge: (card.lengthMm ?? 0) >= edgeMm,
		isLow: card.heightMm === undefined ? leaning === "best" : card.heightMm <= lowCardMm,
	};
}

export function driveDevice(drive: Drive, id: string, standing: Device["standing"]): DriveDevice {
	const isPci = drive.link === "PCI Express" || drive.link === "U.2";
	// Common practice, no source: an M.2 or U.2 drive of which no lanes are given has four.
	const lanes = isPci ? (drive.lanes ?? 4) : null;
	const link = isPci ? linkGbytes(drive.generation, lanes ?? undefined) : null;
	const read = drive.readMBytesPerS === undefined ? null : drive.readMBytesPerS / 1000;
	const usual = drive.shape === "3.5 inch" ? hardDiskGbytesPerS : sataRate.payloadMBytesPerSecond / 1000;
	return {
		id,
		kind: isM2Drive(drive) ? "M.2 drive" : "drive",
		name: drive.name,
		standing,
		lanes,
		generation: isPci ? (drive.generation ?? null) : null,
		gbytesPerS: read ?? link ?? (drive.link === "SATA" ? usual : null),
		drive,
	};
}

function linkGbytes(generation: number | undefined, lanes: number | undefined): number | null {
	if (generation === undefined || lanes === undefined || generation > 6) return null;
	return gbytesPerSecond(generation as LinkGeneration, lanes);
}
