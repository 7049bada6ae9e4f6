import type { FactsUnder } from "../parts/fact-path.ts";
import type { OldThing } from "../parts/wants.ts";

/** What tells whether old things find a socket on a board. */
type SocketFacts = FactsUnder<
	never,
	"oldThings" | "board.rearOld" | "board.headers.serial" | "board.cardSlots" | "board.drivePorts"
>;

/** A thing with a plug of its own. */
export type OldPlug = Exclude<OldThing, "installed system">;

/** Each kind of old thing with a plug that is brought along, once. */
export function oldPlugsOf(things: readonly OldThing[] = []): readonly OldPlug[] {
	return [...new Set(things)].filter((thing) => thing !== "installed system");
}

/** Old things for which the board surely has no socket. */
export function oldPlugsWithout(facts: SocketFacts): readonly OldPlug[] {
	return oldPlugsOf(facts.oldThings).filter((thing) => hasSocketFor(thing, facts) === false);
}

/** Paths of the facts that would tell of the other old things, each once. */
export function missingForOldPlugs(facts: SocketFacts): readonly string[] {
	const unsure = oldPlugsOf(facts.oldThings).filter((thing) => hasSocketFor(thing, facts) === undefined);
	return [...new Set(unsure.map((thing) => pathFor(thing, facts)))];
}

/** Undefined where the page does not say. */
function hasSocketFor(thing: OldPlug, facts: SocketFacts): boolean | undefined {
	switch (thing) {
		case "PS/2 keyboard or mouse":
			return facts["board.rearOld"]?.includes("PS/2");
		case "serial device": {
			const [rear, header] = [facts["board.rearOld"]?.includes("serial"), facts["board.headers.serial"]];
			if (rear || (header ?? 0) > 0) return true;
			return rear === undefined || header === undefined ? undefined : false;
		}
		case "parallel printer":
			return facts["board.rearOld"]?.includes("parallel");
		case "IDE drive":
			return facts["board.drivePorts"]?.some(({ kind }) => kind === "IDE");
		case "PCI card":
			return facts["board.cardSlots"]?.some(({ bus }) => bus === "PCI");
	}
}

function pathFor(thing: OldPlug, facts: SocketFacts): string {
	switch (thing) {
		case "serial device":
			return facts["board.rearOld"] ? "board.headers.serial" : "board.rearOld";
		case "IDE drive":
			return "board.drivePorts";
		case "PCI card":
			return "board.cardSlots";
		default:
			return "board.rearOld";
	}
}
