import type { FactsUnder } from "../../parts/fact-path.ts";
import type { OldThing } from "../../parts/wants.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, type Outcome, pass, planAround } from "../outcome.ts";

const mayRead = ["oldThings", "board.rearOld", "board.headers.serial", "board.cardSlots", "board.drivePorts"] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

/** A thing with a plug of its own. */
type OldPlug = Exclude<OldThing, "installed system">;

/** What helps where the board has no socket for it. Common practice, no source. */
const helpFor = {
	"PS/2 keyboard or mouse": "An active PS/2 to USB adapter costs little; the plain plug works with few keyboards.",
	"serial device": "A USB to serial adapter works with most devices.",
	"parallel printer": "A USB to parallel cable works with most printers, not with other devices.",
	"IDE drive": "A USB to IDE adapter, with a supply of its own, lets you copy what is on the drive. Do that first.",
	"PCI card": "Replace the card: the same on USB, or on a card of today, costs little.",
} as const satisfies Record<OldPlug, string>;

/** Things with plugs that few new boards have. What an adapter helps never costs a board its place. */
export const oldConnectors = defineRule({
	id: "features/old-connectors",
	scope: "board",
	label: "Sockets for old things",
	wayOut: "adapters for your old things",
	asks: "Does the board have the sockets your old things need?",
	why: "New boards leave old sockets out. For most of them there is an adapter, for a few there is not.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead,
	messages: {
		notAsked: () => "You bring no old things along.",
		has: () => "All your old things find their sockets.",
		lacks: ({ things }: { things: readonly string[] }) => `It has no socket for: ${things.join(", ")}.`,
		need: ({ things }: { things: readonly string[] }) => `Sockets for these, or an adapter: ${things.join(", ")}.`,
	},
	advice: {
		lacks: ({ things }: { things: readonly OldPlug[] }) => things.map((thing) => helpFor[thing]).join(" "),
	},
	check(facts): Outcome {
		const things = plugsOf(facts.oldThings);
		if (things.length === 0) return pass("notAsked");
		const without = things.filter((thing) => hasSocketFor(thing, facts) === false);
		if (without.length > 0) return planAround("lacks", { things: without });
		const missing = things.filter((thing) => hasSocketFor(thing, facts) === undefined);
		if (missing.length > 0) return cannotTell([...new Set(missing.map((thing) => pathFor(thing, facts)))]);
		return pass("has");
	},
	needs({ oldThings }) {
		const things = plugsOf(oldThings);
		return things.length === 0 ? null : { messageId: "need", data: { things } };
	},
});

function plugsOf(things: readonly OldThing[] = []): readonly OldPlug[] {
	return [...new Set(things)].filter((thing) => thing !== "installed system");
}

/** Undefined where the page does not say. */
function hasSocketFor(thing: OldPlug, facts: Facts): boolean | undefined {
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

function pathFor(thing: OldPlug, facts: Facts): string {
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
