import { kleeneAnd, kleeneOr, type ThreeValued } from "../maths/kleene.ts";
import type { Board } from "../parts/board.ts";
import type { Drive } from "../parts/drive.ts";

export type M2Socket = NonNullable<Board["m2Sockets"]>[number];

/** Common practice, no source: nearly every M.2 drive sold is 2280, and nearly every socket holds it. */
const usualLengthMm = 80;

/** Whether it is a stick for an M.2 socket; where its shape is not given, a length, a key or its link tells. */
export function isM2Drive({ shape, link, key, lengthMm }: Drive): boolean {
	if (shape) return shape === "M.2";
	return key !== undefined || lengthMm !== undefined || link === "PCI Express";
}

/** Whether it hangs on a SATA port by a cable; a box of which no link is given does. Common practice, no source. */
export function isSataDrive(drive: Drive): boolean {
	return !isM2Drive(drive) && (drive.link ?? "SATA") === "SATA";
}

/** Whether a drive goes into a socket, by key, length and link (pages on M.2 keys and sizes). */
export function m2Fits(drive: Drive, socket: M2Socket): ThreeValued {
	return kleeneAnd(keyFits(drive, socket), lengthFits(drive, socket), linkFits(drive, socket));
}

/** A drive notched for both goes into either; one for M only does not go into B. Key E is for wireless modules. */
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
