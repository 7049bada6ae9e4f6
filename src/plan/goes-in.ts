import { kleeneAnd, kleeneOr, type ThreeValued } from "../maths/kleene.ts";
import type { Drive } from "../parts/drive.ts";
import type { Connector, DrivePort, Leaning, M2Socket } from "./connector.ts";
import { type CardDevice, type Device, type DriveDevice, type Extra, isCard } from "./device.ts";

/** Common practice, no source: nearly every M.2 drive sold is 2280, and nearly every socket holds it. */
const usualLengthMm = 80;
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
		const fits = kleeneAnd(
			keyFits(drive, connector.socket),
			lengthFits(drive, connector.socket),
			linkFits(drive, connector.socket),
		);
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

/** A drive notched for both goes into either; one for M only does not go into B. */
function keyFits({ key, link }: Drive, socket: M2Socket): ThreeValued {
	// Common practice, no source: a socket listed under storage without a key is M.
	const socketKey = socket.key ?? "M";
	if (socketKey === "E") return "no";
	if (key) return key.includes(socketKey) ? "yes" : "no";
	return socketKey === "M" ? "yes" : link === "PCI Express" ? "no" : "unknown";
}

/** A socket has a screw hole for each length it holds, and for no other. */
function lengthFits({ lengthMm }: Drive, { lengthsMm }: M2Socket): ThreeValued {
	const isUsual = (lengthMm ?? usualLengthMm) === usualLengthMm;
	if (!lengthsMm) return isUsual ? "yes" : "unknown";
	if (lengthsMm.includes(lengthMm ?? usualLengthMm)) return "yes";
	return lengthMm === undefined ? "unknown" : "no";
}

/** A socket for M.2 drives does not promise SATA: its wiring is a fact of the board (pages on M.2 keys and sizes). */
function linkFits({ link }: Drive, socket: M2Socket): ThreeValued {
	const sata = socket.sata === undefined ? "unknown" : socket.sata ? "yes" : "no";
	const pciExpress = socket.wiredLanes === 0 ? "no" : "yes";
	if (link === "SATA") return sata;
	if (link === "PCI Express") return pciExpress;
	const either = kleeneOr(sata, pciExpress);
	return kleeneAnd(sata, pciExpress) === "yes" ? "yes" : either === "no" ? "no" : "unknown";
}
