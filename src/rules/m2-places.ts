import type { Drive } from "../parts/drive.ts";
import { type M2Socket, m2Fits } from "../reference/m2-fit.ts";
import type { Leaning } from "./processor-limits.ts";

/** The sockets that a drive goes into, by length, key and link; what is not known is taken by the leaning. */
export function m2PlacesOf(drive: Drive, sockets: readonly M2Socket[], leaning: Leaning): readonly M2Socket[] {
	return sockets.filter((socket) => {
		const fits = m2Fits(drive, socket);
		return fits === "yes" || (fits === "unknown" && leaning === "best");
	});
}
