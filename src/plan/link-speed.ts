import { gbytesPerSecond, type LinkGeneration } from "../reference/link-bandwidth.ts";
import { sataRate } from "../reference/sata-rate.ts";
import type { Connector } from "./connector.ts";
import type { Device } from "./device.ts";

/** Generation that is counted with to compare two places where nobody has said (common practice, no source). */
const usualGeneration = 3;

export interface Link {
	/** Lanes it gets; null for what uses none. */
	readonly lanes: number | null;
	/** Null where nobody knows. */
	readonly generation: number | null;
	/** What it then moves, in GB/s; null where nobody knows. */
	readonly gbytesPerS: number | null;
}

/** The link a device gets in a connector that gives it so many lanes. */
export function linkOf(device: Device, connector: Connector, lanes: number): Link {
	if (device.lanes !== null && connector.kind === "drive port") return portLink(device, lanes);
	if (device.lanes === null || connector.kind === "drive port") {
		const sata = sataRate.payloadMBytesPerSecond / 1000;
		const carriesSata = "drive" in device && (device.drive.link ?? "SATA") === "SATA";
		const gbytesPerS =
			carriesSata && device.gbytesPerS !== null ? Math.min(sata, device.gbytesPerS) : device.gbytesPerS;
		return { lanes: null, generation: null, gbytesPerS };
	}
	const used = Math.min(lanes, device.lanes);
	if (connector.generation === null || connector.generation > 6)
		return { lanes: used, generation: null, gbytesPerS: null };
	// A drive of which only the speed is known moves that, or what the socket carries.
	if (device.generation === null && device.gbytesPerS === null)
		return { lanes: used, generation: null, gbytesPerS: null };
	const generation = Math.min(device.generation ?? connector.generation, connector.generation);
	const link = gbytesPerSecond(generation as LinkGeneration, used);
	return {
		lanes: used,
		generation: device.generation === null ? null : generation,
		gbytesPerS: Math.min(link, device.gbytesPerS ?? link),
	};
}

/** A U.2 drive at its port: of the port nobody gives a generation, so the drive's own counts. */
function portLink({ lanes: wanted, generation, gbytesPerS }: Device, given: number): Link {
	const lanes = Math.min(given, wanted ?? given);
	if (generation === null || generation > 6) return { lanes, generation, gbytesPerS };
	const link = gbytesPerSecond(generation as LinkGeneration, lanes);
	return { lanes, generation, gbytesPerS: Math.min(link, gbytesPerS ?? link) };
}

/** The same in MB/s as a whole number, with the usual stand-in where something is not known: only to compare places. */
export function comparedMbytesPerS(device: Device, connector: Connector, lanes: number): number {
	const link = linkOf(device, connector, lanes);
	if (link.gbytesPerS !== null) return Math.round(link.gbytesPerS * 1000);
	if (link.lanes === null) return Math.round(sataRate.payloadMBytesPerSecond);
	const generation = Math.min(
		connector.generation ?? device.generation ?? usualGeneration,
		device.generation ?? connector.generation ?? usualGeneration,
		6,
	);
	const most = gbytesPerSecond(generation as LinkGeneration, link.lanes);
	return Math.round(Math.min(most, device.gbytesPerS ?? most) * 1000);
}
