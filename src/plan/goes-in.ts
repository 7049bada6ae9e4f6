import type { Drive } from "../parts/drive.ts";
import { m2Fits } from "../reference/m2-fit.ts";
import type { Connector, DrivePort, Leaning } from "./connector.ts";
import { type CardDevice, type Device, type DriveDevice, type Extra, isCard } from "./device.ts";

/** An adapter card takes one PCI Express drive, with all its four lanes. */
const adapterLanes = 4;

/** How a device goes into a connector, and the fewest lanes it must be given there. */
export interface Way {
	readonly leastLanes: number;
	readonly extra: Extra | null;
}

/** Whether and how a device goes in, lanes, covers and case apart; null where it does not. */
export function wayIn(device: Device, connector: Connector, leaning: Leaning, mayAdapt: boolean): Way | null {
	if (connector.isDead) return null;
	if (isCard(device)) return cardWay(device, connector);
	return device.kind === "M.2 drive"
		? stickWay(device, connector, leaning, mayAdapt)
		: cableWay(device.drive, connector, leaning);
}

/** A card fits a slot of its size or longer (wiki "PCI Express", sec. 6). */
function cardWay({ bus, sizeLanes, leastLanes }: CardDevice, connector: Connector): Way | null {
	if (connector.kind !== "card slot" || connector.bus !== bus) return null;
	if (bus === "PCI") return { leastLanes: 0, extra: null };
	return connector.sizeLanes >= sizeLanes ? { leastLanes, extra: null } : null;
}

function stickWay({ drive }: DriveDevice, connector: Connector, leaning: Leaning, mayAdapt: boolean): Way | null {
	if (connector.kind === "M.2 socket") {
		const fits = m2Fits(drive, connector.socket);
		return fits === "yes" || (fits === "unknown" && leaning === "best") ? { leastLanes: 1, extra: null } : null;
	}
	if (!mayAdapt) return null;
	if (connector.kind === "drive port")
		return drive.link === "SATA" && connector.port.kind === "SATA" ? { leastLanes: 1, extra: "adapter frame" } : null;
	if (drive.link === "SATA" || connector.bus === "PCI" || connector.sizeLanes < adapterLanes) return null;
	return { leastLanes: adapterLanes, extra: "adapter card" };
}

function cableWay({ link = "SATA" }: Drive, connector: Connector, leaning: Leaning): Way | null {
	if (connector.kind !== "drive port") return null;
	return portTakes(connector.port.kind, link, leaning) ? { leastLanes: 1, extra: null } : null;
}

/** A SlimSAS port carries a U.2 drive by a cable, where the board wires it so: its manual says. */
function portTakes(kind: DrivePort["kind"], link: NonNullable<Drive["link"]>, leaning: Leaning): boolean {
	if (link === "U.2" && kind === "SlimSAS") return leaning === "best";
	return kind === link;
}
