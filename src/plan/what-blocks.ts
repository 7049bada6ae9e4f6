import type { Connector } from "./connector.ts";
import type { Device } from "./device.ts";
import { wayIn } from "./goes-in.ts";
import type { ConnectorEnd, Plan } from "./plan.ts";
import type { PlanProblem } from "./problem.ts";

/** Why a device finds no place: how each connector it could go into ends up. */
export interface Blocking {
	readonly device: Device;
	/** Devices of the plan that want the same connectors, it among them. */
	readonly wanted: number;
	/** Every connector of its kind on the board, dead ones among them. */
	readonly ends: readonly ConnectorEnd[];
}

/** The connectors a device could go into if nothing else were there, and what became of each. */
export function whatBlocks(problem: PlanProblem, plan: Plan, device: Device): Blocking {
	// Adapters are a way out and not what a thing wants: they are counted by nobody.
	const takes = (connector: Connector, one: Device) =>
		wayIn(one, { ...connector, isDead: false }, problem.leaning, false) !== null;
	const ends = plan.ends.filter(({ connector }) => takes(connector, device));
	const others = [...plan.placed.map((placed) => placed.device), ...plan.unplaced];
	return {
		device,
		wanted: others.filter((one) => ends.some(({ connector }) => takes(connector, one))).length,
		ends,
	};
}
