import type { Connector, SharingGroup } from "./connector.ts";
import { isCard } from "./device.ts";
import { wayIn } from "./goes-in.ts";
import type { PlanProblem } from "./problem.ts";

/** Whether a problem is the same at best and at worst, so that one plan serves for both. */
export function isAllKnown(best: PlanProblem, worst: PlanProblem): boolean {
	// What is the same at both ends is one object: see devicesFor.
	if (!areAlike(best.devices, worst.devices, (one, other) => one === other)) return false;
	if (!areAlike(best.connectors, worst.connectors, isSameConnector)) return false;
	if (!areAlike(best.groups, worst.groups, isSameGroup)) return false;
	// A slot whose row is not known may lie under a card of several rows.
	const hasRows = best.connectors.every(({ kind, row }) => kind !== "card slot" || row !== null);
	if (!hasRows && best.devices.some((device) => isCard(device) && device.rows > 1)) return false;
	// How a card goes in does not hang on what is not known.
	return best.devices.every(
		(device) =>
			isCard(device) ||
			best.connectors.every((connector) => {
				const [well, badly] = (["best", "worst"] as const).map((leaning) =>
					wayIn(device, connector, leaning, best.mayAdapt),
				);
				return (well === null) === (badly === null);
			}),
	);
}

function areAlike<T>(some: readonly T[], others: readonly T[], isSame: (one: T, other: T) => boolean): boolean {
	return some.length === others.length && some.every((one, at) => isSame(one, others[at] as T));
}

function isSameConnector(one: Connector, other: Connector): boolean {
	const size = (connector: Connector) => (connector.kind === "card slot" ? connector.sizeLanes : null);
	return (
		size(one) === size(other) &&
		one.lanes === other.lanes &&
		one.generation === other.generation &&
		one.isDead === other.isDead
	);
}

function isSameGroup(one: SharingGroup, other: SharingGroup): boolean {
	const isSameMode = (on: SharingGroup["modes"][number], otherOn: SharingGroup["modes"][number]) =>
		on.size === otherOn.size && [...on].every(([member, lanes]) => otherOn.get(member) === lanes);
	return (
		areAlike(one.members, other.members, (member, otherMember) => member === otherMember) &&
		areAlike(one.modes, other.modes, isSameMode)
	);
}
