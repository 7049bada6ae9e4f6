import type { Device } from "./device.ts";

const standings: readonly Device["standing"][] = ["owned", "planned", "later"];
const kinds: readonly Device["kind"][] = ["graphics card", "M.2 drive", "drive", "card"];
/** More digits than any number in a name. */
const digits = 6;

/**
 * Devices in an order of their own, whatever order they are named in, so that a plan does not hang on that: what is owned
 * first, later things last, then by kind, by name, and by all else that is known of them. Of equal ones the first stays
 * first.
 */
export function inCanonicalOrder(devices: readonly Device[]): readonly Device[] {
	return devices
		.map((device) => ({ device, name: device.name.replace(/\d+/g, (number) => number.padStart(digits, "0")) }))
		.sort(
			(one, other) =>
				standings.indexOf(one.device.standing) - standings.indexOf(other.device.standing) ||
				kinds.indexOf(one.device.kind) - kinds.indexOf(other.device.kind) ||
				compareTexts(one.name, other.name) ||
				// Names rarely are the same, so the rest is written out only then.
				compareTexts(allButId(one.device), allButId(other.device)),
		)
		.map(({ device }) => device);
}

function allButId(device: Device): string {
	return JSON.stringify({ ...device, id: "" });
}

/** By code points: the same on every machine, whatever its language. */
function compareTexts(one: string, other: string): number {
	return one < other ? -1 : Number(one > other);
}
