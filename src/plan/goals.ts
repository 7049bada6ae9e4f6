import { inCanonicalOrder } from "./canonical-order.ts";
import type { Connector } from "./connector.ts";
import { type Device, isCard } from "./device.ts";
import type { Way } from "./goes-in.ts";
import { comparedMbytesPerS } from "./link-speed.ts";
import type { PlanProblem } from "./problem.ts";

/**
 * What a plan is after, the first that differs decides. The graphics card comes before the count: a plan that leaves it
 * out for two small cards, or moves it to a slot of one lane for them, would be no plan. Then owned things, then all; then
 * the card's width and the drives' speed; then drives within reach, before whose lanes they have.
 */
export type Goal =
	/** Placed at all, and then with so many lanes: half of what it wants, or as many as the board could ever give it. */
	| { readonly goal: "graphics card"; readonly enoughLanes: number }
	| {
			readonly goal: "owned" | "placed" | "no extras" | "graphics lanes" | "graphics speed" | "first slot";
	  }
	| { readonly goal: "speed" | "from processor" | "no adapter"; readonly deviceId: string }
	| { readonly goal: "kept on" | "later" | "later speed" | "not buried" | "cooled" | "air" }
	/** Ties are always broken alike: the first device of the canonical order gets the connector named first. */
	| { readonly goal: "order"; readonly deviceId: string };

/** Lanes a graphics card wants where nobody has said (common practice, no source). */
const usualLanes = 16;

/** The goals for these devices, in order of weight; the same whatever order the devices are named in. */
export function goalsFor({ devices, connectors }: Pick<PlanProblem, "devices" | "connectors">): readonly Goal[] {
	const graphics = devices.find(({ kind }) => kind === "graphics card");
	const most = Math.max(
		0,
		...connectors.map(({ kind, lanes, isDead }) => (kind === "card slot" && !isDead ? lanes : 0)),
	);
	// Fewer than half of what it wants is no place for one, if there is another (common practice, no source).
	const enoughLanes = Math.min(Math.ceil((graphics?.lanes ?? usualLanes) / 2), most);
	const inOrder = inCanonicalOrder(devices);
	const now = inOrder.filter(({ standing }) => standing !== "later");
	const fastestFirst = (some: readonly Device[]) =>
		[...some].sort((one, other) => (other.gbytesPerS ?? 0) - (one.gbytesPerS ?? 0));
	const sticks = fastestFirst(now.filter((device) => !isCard(device) && device.lanes !== null));
	const cards = fastestFirst(now.filter(({ kind }) => kind === "card"));
	return [
		{ goal: "graphics card", enoughLanes },
		{ goal: "owned" },
		{ goal: "placed" },
		{ goal: "no extras" },
		{ goal: "graphics lanes" },
		{ goal: "graphics speed" },
		{ goal: "first slot" },
		...sticks.map(({ id }): Goal => ({ goal: "speed", deviceId: id })),
		...sticks.flatMap(({ id }): Goal[] => [
			// Of drives that are as well off either way, the slower goes on what has to be bought.
			{ goal: "no adapter", deviceId: id },
		]),
		...cards.map(({ id }): Goal => ({ goal: "speed", deviceId: id })),
		{ goal: "kept on" },
		{ goal: "later" },
		{ goal: "later speed" },
		// A drive as fast in a clear socket is cooler and within reach there, whoever gives its lanes.
		{ goal: "not buried" },
		...sticks.map(({ id }): Goal => ({ goal: "from processor", deviceId: id })),
		{ goal: "cooled" },
		{ goal: "air" },
		...inOrder.map(({ id }): Goal => ({ goal: "order", deviceId: id })),
	];
}

/** How a device stands in a place: what the goals look at beside the place itself. */
export interface Standing {
	readonly way: Way;
	readonly lanes: number;
	readonly isUpright: boolean;
	readonly isBuried: boolean;
	/** Right below the graphics card, where its fans draw air. */
	readonly isInItsAir: boolean;
}

/** What one device in one connector adds to one goal. */
export function gainFor(
	goal: Goal,
	device: Device,
	connector: Connector,
	connectorIndex: number,
	{ way, lanes, isUpright, isBuried, isInItsAir }: Standing,
): number {
	const isLater = device.standing === "later";
	if ("deviceId" in goal && goal.deviceId !== device.id) return 0;
	switch (goal.goal) {
		case "order":
			return mostConnectors - connectorIndex;
		case "later":
			return isLater ? 1 : 0;
		case "later speed":
			return isLater && isUseful(device, connector, lanes) ? 1 : 0;
		case "kept on":
			return 0;
	}
	if (isLater) return 0;
	switch (goal.goal) {
		case "graphics card":
			return device.kind === "graphics card" ? (lanes >= goal.enoughLanes ? 2 : 1) : 0;
		case "owned":
			return device.standing === "owned" ? 1 : 0;
		case "placed":
			return 1;
		case "no extras":
			return way.extra !== null || isUpright ? -1 : 0;
		case "graphics lanes":
			return device.kind === "graphics card" ? Math.min(lanes, device.lanes ?? 16) : 0;
		case "graphics speed":
			return device.kind === "graphics card" ? comparedMbytesPerS(device, connector, lanes) : 0;
		case "first slot":
			// Common practice, no source: of two slots that are as fast, manuals name the one nearest the processor.
			return device.kind === "graphics card" ? mostConnectors - (connector.row ?? connectorIndex) : 0;
		case "speed":
			return comparedMbytesPerS(device, connector, lanes);
		case "from processor":
			return connector.from === "processor" ? 1 : 0;
		case "no adapter":
			return way.extra === null ? 1 : 0;
		case "not buried":
			return isBuried ? -1 : 0;
		case "cooled":
			return wantsCooling(device) && connector.kind === "M.2 socket" && connector.socket.cooled ? 1 : 0;
		case "air":
			return isInItsAir ? -1 : 0;
	}
}

/** Of any link that gains are reckoned with: sixteen lanes of generation 6, and some more (PCI-SIG: 121 GB/s). */
const mostMbytesPerS = 131_072;

/** The most that all devices together gain for a goal, either way. */
export function boundOf(goal: Goal, { devices, connectors }: Pick<PlanProblem, "devices" | "connectors">): number {
	switch (goal.goal) {
		case "graphics card":
			return 2;
		case "graphics lanes":
			return Math.max(16, ...connectors.map(({ lanes }) => lanes));
		case "graphics speed":
		case "speed":
			return Math.max(mostMbytesPerS, ...devices.map(({ gbytesPerS }) => Math.ceil((gbytesPerS ?? 0) * 1000)));
		case "first slot":
			return mostConnectors + Math.max(connectors.length, ...connectors.map(({ row }) => Math.abs(row ?? 0)));
		case "order":
			return mostConnectors + connectors.length;
		case "from processor":
		case "no adapter":
			return 1;
		case "kept on":
			return connectors.length;
		default:
			return devices.length;
	}
}

/** More than any board has, so that the first device is not the one left out. */
const mostConnectors = 100;

/** Half of what it can use is still useful (own convention). */
const usefulShare = 0.5;

export function isUseful(device: Device, connector: Connector, lanes: number): boolean {
	if (device.gbytesPerS === null) return true;
	// Rates are compared in whole MB/s, so half of one is room for rounding.
	return comparedMbytesPerS(device, connector, lanes) + 0.5 >= usefulShare * device.gbytesPerS * 1000;
}

/** Drives of generation 4 and later grow hot at work (common practice, no source). */
function wantsCooling(device: Device): boolean {
	return !isCard(device) && device.kind === "M.2 drive" && (device.generation ?? 0) >= 4 && !device.drive.ownCooler;
}
