import type { Arguments } from "./arguments.ts";
import type { Streams } from "./streams.ts";

/** What an own command works with. */
export interface OwnContext {
	readonly args: Arguments;
	readonly streams: Streams;
	/** Where own parts are kept. */
	readonly folder: string;
	/** Today as an ISO date. */
	readonly today: string;
}
