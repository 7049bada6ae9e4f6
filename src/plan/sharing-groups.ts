import type { Board } from "../parts/board.ts";
import type { Connector, Leaning, SharingGroup } from "./connector.ts";
import type { Device } from "./device.ts";

/** Common practice, no source: where a page is silent, an M.2 drive switches off two drive ports at the most. */
const portsPerSocketAtWorst = 2;

/**
 * The sharing groups of a board, by the place of their members in the list of connectors. Where the page says nothing,
 * nothing shares at best; at worst each M.2 socket that is not the processor's own takes two drive ports with it.
 */
export function sharingGroupsOf(
	sharing: Board["sharing"],
	connectors: readonly Connector[],
	leaning: Leaning,
): readonly SharingGroup[] {
	if (sharing === undefined) return leaning === "worst" ? usualSharing(connectors) : [];
	const indexOf = (name: string) => connectors.findIndex((connector) => connector.name === name);
	const places = (names: readonly string[]) => names.map(indexOf).filter((index) => index >= 0);
	return sharing.map(({ members, modes, onlyWithSata }): SharingGroup => {
		const group = {
			members: places(members),
			modes: modes.map(
				({ on }) =>
					new Map(
						Object.entries(on)
							.map(([name, lanes]) => [indexOf(name), lanes] as const)
							.filter(([index]) => index >= 0),
					),
			),
		};
		if (onlyWithSata === undefined) return group;
		const allOn = new Map(group.members.map((member) => [member, connectors[member]?.lanes ?? 0] as const));
		return {
			...group,
			modes: [...group.modes, allOn],
			withoutSata: { mode: group.modes.length, sockets: places(onlyWithSata) },
		};
	});
}

/** Whether a drive takes part in a group that only SATA drives share: what nobody knows counts as the leaning has it. */
export function countsAsSata(device: Device, leaning: Leaning): boolean {
	return device.kind === "M.2 drive" && (device.drive.link ?? (leaning === "best" ? "PCI Express" : "SATA")) === "SATA";
}

function usualSharing(connectors: readonly Connector[]): readonly SharingGroup[] {
	const places = (keep: (connector: Connector) => boolean) =>
		connectors.flatMap((connector, index) => (keep(connector) ? [index] : []));
	const sockets = places(({ kind, from }) => kind === "M.2 socket" && from !== "processor");
	const ports = places(({ kind }) => kind === "drive port").reverse();
	return [
		...slotsThatMayHalve(connectors),
		...sockets.flatMap((socket, nth): SharingGroup[] => {
			const taken = ports.slice(nth * portsPerSocketAtWorst, (nth + 1) * portsPerSocketAtWorst).reverse();
			if (taken.length === 0) return [];
			const modes = [
				new Map([[socket, connectors[socket]?.lanes ?? 0]]),
				new Map(taken.map((port) => [port, 1] as const)),
			];
			return [{ members: [socket, ...taken], modes }];
		}),
	];
}

/** Lanes a processor has for its slots together, and what each of two then gets (common practice, no source). */
const [lanesForSlots, lanesOfHalf] = [16, 8];

/** Wide slots of the processor's share its lanes at worst: the first alone, or the first and one other with half each. */
function slotsThatMayHalve(connectors: readonly Connector[]): readonly SharingGroup[] {
	const wide = connectors.flatMap((connector, index) =>
		connector.kind === "card slot" && connector.from !== "chipset" && connector.lanes >= lanesOfHalf ? [index] : [],
	);
	const [first, ...others] = wide;
	const lanes = first === undefined ? 0 : (connectors[first]?.lanes ?? 0);
	if (first === undefined || others.length === 0 || lanes <= lanesOfHalf) return [];
	const halved = others.map((other) => new Map([first, other].map((index) => [index, lanesOfHalf] as const)));
	return [{ members: wide, modes: [new Map([[first, Math.min(lanesForSlots, lanes)]]), ...halved] }];
}
