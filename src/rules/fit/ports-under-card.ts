import type { FactsUnder } from "../../parts/fact-path.ts";
import type { PlannedThing } from "../../plan/plan-facts.ts";
import { isSataDrive } from "../../reference/m2-fit.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass } from "../outcome.ts";

const mayRead = ["graphicsCard", "graphicsCard.lengthMm", "board.drivePorts", "plan.things", "plan.ends"] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

/**
 * Drive ports that stand up from the board below a long card: a plug in one presses against the card. The plan keeps
 * drives off a port that is known to lie so; this rule speaks where such a port is wanted all the same, or may lie so.
 */
export const portsUnderCard = defineRule({
	id: "fit/ports-under-card",
	scope: "board",
	label: "Drive ports clear of the card",
	wayOut: "a shorter card or fewer drives",
	asks: "Do the plugs of your drives find room below the long card?",
	why: "Some SATA ports (for drives on a cable) stand up from the board. Below a long card a plug in such a port presses against the card.",
	source: "common-practice",
	severity: "good-to-know",
	reads: [],
	mayRead,
	saysNothing: ["clear"],
	messages: {
		notAsked: () => "You have named no drive on a cable.",
		clear: () => "No card lies over the ports that your drives need.",
		otherPorts: ({ ports }: Ports) =>
			`A card lies over ${ports.join(", ")}. Your drives have other ports, so leave ${ports.length === 1 ? "it" : "them"} empty.`,
		pressed: ({ ports }: Ports) =>
			`Your drives need more ports than a card leaves clear. These stand up below it: ${ports.join(", ")}.`,
		unsure: ({ ports }: Ports) =>
			`Whether a card lies over a port that your drives need is not known: ${ports.join(", ")}.`,
	},
	advice: {
		pressed: () =>
			"A cable with a flat, angled plug may find room. Lay it before the card goes in, with the mains plug out. Never press the card down on it.",
	},
	check(facts): Outcome {
		const drives = (facts["plan.things"] ?? []).filter(
			({ device }) => device.kind === "drive" && isSataDrive(device.drive),
		);
		if (drives.length === 0) return pass("notAsked");
		if (!facts["board.drivePorts"]) return cannotTell(["board.drivePorts"]);
		const ends = (facts["plan.ends"] ?? []).flatMap(({ connector, state }) =>
			connector.kind === "drive port" && connector.port.kind === "SATA"
				? [{ name: connector.name, port: connector.port, state }]
				: [],
		);
		const covered = ends.filter(({ state }) => state === "covered").map(({ name }) => name);
		if (covered.length > 0 && drives.some(({ hasPlace }) => hasPlace === "no"))
			return goodToKnow("pressed", { ports: covered });
		const working = ends
			.filter(({ state }) => state === "used" || state === "free")
			.map((end) => ({ ...end, missing: missingFor(end.port, facts) }));
		const clear = working.filter(({ missing }) => missing.length === 0);
		const used = working.filter(({ state }) => state === "used");
		if (used.length <= clear.length) return covered.length > 0 ? pass("otherPorts", { ports: covered }) : pass("clear");
		const doubtful = used.filter(({ missing }) => missing.length > 0);
		return cannotTell([...new Set(doubtful.flatMap(({ missing }) => missing))], "unsure", {
			ports: doubtful.map(({ name }) => name),
		});
	},
});

interface Ports {
	readonly ports: readonly string[];
}

type Port = NonNullable<Facts["board.drivePorts"]>[number];

/** Facts without which nobody can say that no card lies over a plug in this port; none where that is certain. */
function missingFor({ upright, row }: Port, facts: Facts): readonly string[] {
	if (upright === false) return [];
	const cards = (facts["plan.things"] ?? []).flatMap((thing) => missingBeside(thing, row, upright, facts));
	return [...cards, ...(mayBeCard(facts) ? ["graphicsCard"] : [])];
}

/** Nobody has said whether there will be a graphics card. */
function mayBeCard({ graphicsCard }: Facts): boolean {
	return graphicsCard === undefined || graphicsCard === "unknown";
}

function missingBeside(
	{ best, worst }: PlannedThing,
	row: number | undefined,
	upright: boolean | undefined,
	facts: Facts,
): readonly string[] {
	const [least, most] = [best?.device, worst?.device];
	if (!best || !least || !("reachesEdge" in least) || best.extra === "riser cable") return [];
	const largest = most && "reachesEdge" in most ? most : least;
	if (!largest.reachesEdge) return [];
	const at = best.connector.row;
	if (at === null) return ["board.cardSlots"];
	if (row === undefined) return ["board.drivePorts"];
	if (row < at || row >= at + largest.rows) return [];
	return [
		...(upright === undefined ? ["board.drivePorts"] : []),
		...(facts.graphicsCard === "have" && facts["graphicsCard.lengthMm"] === undefined ? ["graphicsCard.lengthMm"] : []),
		...(row >= at + least.rows ? ["graphicsCard.thicknessMm"] : []),
	];
}
