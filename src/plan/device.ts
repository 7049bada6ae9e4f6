import type { Drive } from "../parts/drive.ts";

interface AnyDevice {
	/** Told apart by this; the same build always gives the same ids. */
	readonly id: string;
	readonly name: string;
	/** What it belongs to: paid for already, still to be bought, or only thought of for later years. */
	readonly standing: "owned" | "planned" | "later";
	/** PCI Express lanes and generation it can use; null where nobody knows or it uses none. */
	readonly lanes: number | null;
	readonly generation: number | null;
	/** What it can move, in GB/s; null where nobody knows. */
	readonly gbytesPerS: number | null;
}

export type CardDevice = AnyDevice & {
	readonly kind: "graphics card" | "card";
	readonly bus: "PCI Express" | "PCI";
	/** Length of its edge: the slot must be as long. */
	readonly sizeLanes: number;
	/** Fewest lanes it works with. */
	readonly leastLanes: number;
	/** Rows it fills, its own among them, and openings its bracket takes. */
	readonly rows: number;
	readonly bracketRows: number;
	/** Thickness counted in rows of the case, not rounded; null where nobody knows. */
	readonly exactRows: number | null;
	/** Reaches over the M.2 sockets of its rows; and over ports that stand up at the far edge. */
	readonly isLong: boolean;
	readonly reachesEdge: boolean;
	/** Low enough to sit under a graphics card that is mounted upright. */
	readonly isLow: boolean;
};

export type DriveDevice = AnyDevice & {
	readonly kind: "M.2 drive" | "drive";
	readonly drive: Drive;
};

/** One thing that wants one connector of the board. */
export type Device = CardDevice | DriveDevice;

/** What connects a graphics card to a slot upright, or an M.2 drive to another kind of connector: bought besides. */
export type Extra = "riser cable" | "adapter card" | "adapter frame";

export function isCard(device: Device): device is CardDevice {
	return device.kind === "graphics card" || device.kind === "card";
}
