import { defineRule } from "../define-rule.ts";
import { missingForOldPlugs, type OldPlug, oldPlugsOf, oldPlugsWithout } from "../old-things-on-board.ts";
import { cannotTell, type Outcome, pass, planAround } from "../outcome.ts";

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
	mayRead: ["oldThings", "board.rearOld", "board.headers.serial", "board.cardSlots", "board.drivePorts"],
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
		if (oldPlugsOf(facts.oldThings).length === 0) return pass("notAsked");
		const without = oldPlugsWithout(facts);
		if (without.length > 0) return planAround("lacks", { things: without });
		const missing = missingForOldPlugs(facts);
		if (missing.length > 0) return cannotTell(missing);
		return pass("has");
	},
	needs({ oldThings }) {
		const things = oldPlugsOf(oldThings);
		return things.length === 0 ? null : { messageId: "need", data: { things } };
	},
});
