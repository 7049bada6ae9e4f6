import type { Board } from "../parts/board.ts";
import type { M2Socket } from "../reference/m2-fit.ts";

export type CardSlot = NonNullable<Board["cardSlots"]>[number];
export type DrivePort = NonNullable<Board["drivePorts"]>[number];

/** How to take what is not known: as it would turn out best, or worst. Both alike: the answer is certain. */
export type Leaning = "best" | "worst";

interface AnyConnector {
	readonly name: string;
	/** Card row it lies in or under, 1 nearest the processor; null where nobody knows or it lies under none. */
	readonly row: number | null;
	/** Lanes that work with this processor; 1 for a drive port, 0 for what does not work at all. */
	readonly lanes: number;
	/** Lanes of the connector itself, before the processor's limits; null where nobody knows. */
	readonly wiredLanes: number | null;
	/** PCI Express generation with this processor; null where nobody knows or it is none. */
	readonly generation: number | null;
	/** Null where nobody knows. */
	readonly from: "processor" | "chipset" | null;
	/** Does not work with this processor. */
	readonly isDead: boolean;
}

/** A slot, socket or port as the plan sees it: one thing goes in. */
export type Connector = AnyConnector &
	(
		| {
				readonly kind: "card slot";
				readonly bus: "PCI Express" | "PCI";
				/** As long as the edge of the longest card that goes in. */
				readonly sizeLanes: number;
		  }
		| { readonly kind: "M.2 socket"; readonly socket: M2Socket }
		| { readonly kind: "drive port"; readonly port: DrivePort }
	);

/** Connectors that share lanes, by their place in the list of connectors. */
export interface SharingGroup {
	readonly members: readonly number[];
	/** One of these holds at a time: lanes by connector; a member that is not named is off. */
	readonly modes: readonly ReadonlyMap<number, number>[];
	/** In this mode, by its place in the list, all are on: it holds only while no SATA drive is in these M.2 sockets. */
	readonly withoutSata?: { readonly mode: number; readonly sockets: readonly number[] };
}
