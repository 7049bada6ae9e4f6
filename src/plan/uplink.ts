import type { Board } from "../parts/board.ts";
import { gbytesPerSecond, type LinkGeneration } from "../reference/link-bandwidth.ts";
import type { PlacedDevice } from "./plan.ts";

/** What hangs on the chipset against the link that carries it, in GB/s. */
export interface UplinkLoad {
	/** What the devices there could move all at once; those of which nobody knows are not in it. */
	readonly wantedGbytesPerS: number;
	/** Null where the link is not known. */
	readonly carriesGbytesPerS: number | null;
	readonly devices: readonly PlacedDevice[];
	/** Those of them of which nobody knows what they move. */
	readonly unrated: readonly PlacedDevice[];
}

export function uplinkLoad(placed: readonly PlacedDevice[], uplink: Board["chipsetUplink"]): UplinkLoad {
	const devices = placed.filter(({ connector }) => connector.from === "chipset");
	// In order of size: a sum of fractions hangs on the order by a hair, and a hair may round to another hundredth.
	const rates = devices.map((one) => rateOf(one) ?? 0).sort((one, other) => one - other);
	return {
		wantedGbytesPerS: rates.reduce((sum, rate) => sum + rate, 0),
		carriesGbytesPerS:
			uplink && uplink.generation <= 6 ? gbytesPerSecond(uplink.generation as LinkGeneration, uplink.lanes) : null,
		devices,
		unrated: devices.filter((one) => rateOf(one) === null),
	};
}

/** What it moves there; where that is not known, what it can move at most. */
function rateOf({ link, device }: PlacedDevice): number | null {
	return link.gbytesPerS ?? device.gbytesPerS;
}
