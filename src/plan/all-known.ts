import { isCard } from "./device.ts";
import { wayIn } from "./goes-in.ts";
import type { PlanProblem } from "./problem.ts";

/** Whether a problem is the same at best and at worst, so that one plan serves for both. */
export function isAllKnown(best: PlanProblem, worst: PlanProblem): boolean {
	const told = ({ connectors, groups, devices }: PlanProblem) => [
		connectors.map(({ sizeLanes, lanes, generation, isDead }: { sizeLanes?: number } & (typeof connectors)[number]) => [
			sizeLanes,
			lanes,
			generation,
			isDead,
		]),
		groups.map(({ members, modes }) => [members, modes.map((on) => [...on])]),
		devices,
	];
	if (JSON.stringify(told(best)) !== JSON.stringify(told(worst))) return false;
	// A slot whose row is not known may lie under a card of several rows.
	const hasRows = best.connectors.every(({ kind, row }) => kind !== "card slot" || row !== null);
	if (!hasRows && best.devices.some((device) => isCard(device) && device.rows > 1)) return false;
	return best.devices.every((device) =>
		best.connectors.every((connector) => {
			const [well, badly] = (["best", "worst"] as const).map((leaning) =>
				wayIn(device, connector, leaning, best.mayAdapt),
			);
			return (well === null) === (badly === null);
		}),
	);
}
