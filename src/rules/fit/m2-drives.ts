import { largestMatching } from "../../maths/bipartite-matching.ts";
import type { Drive } from "../../parts/drive.ts";
import type { FactsUnder } from "../../parts/fact-path.ts";
import { isM2Drive, isSataDrive } from "../../reference/m2-fit.ts";
import { graphicsInSlot, slotNeedOf, slotsBeside, slotsFor } from "../card-places.ts";
import { defineRule } from "../define-rule.ts";
import { m2PlacesOf } from "../m2-places.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";
import { factsThatSettleLimits, type Leaning, processorOfLimits, withProcessorLimits } from "../processor-limits.ts";

const mayRead = [
	"drives",
	"olderSataDrives",
	"addInCards",
	"board.m2Sockets",
	"board.cardSlots",
	"board.drivePorts",
	"board.conditions",
	"board.sharing",
	"processor",
	"processor.series",
	"processor.generation",
	"processor.graphics",
	"graphicsCard",
	"graphicsCard.lanes",
	"graphicsCard.thicknessMm",
] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

/** An adapter card takes one PCI Express drive, with all its four lanes. */
const adapterCard = { bus: "PCI Express", lanes: 4, leastLanes: 4 } as const;

/** How the drives come off: all in sockets, all with adapters for some, or not all. */
interface Placing {
	readonly how: "sockets" | "adapters" | "no place";
	/** Drives in sockets of their own. */
	readonly placed: number;
	readonly left: readonly string[];
}

/**
 * Every M.2 drive wants a socket of its length, key and link. Each is matched to one as well as they can be; what is
 * left over goes on an adapter card, as long as a slot of four lanes is free, or (SATA) on a SATA port.
 *
 * Sockets that share lanes with others are counted as free, and named: which of them are used together is a matter of
 * the whole plan. Source of lengths, keys and links: pages on M.2 keys and sizes.
 */
export const m2Drives = defineRule({
	id: "fit/m2-drives",
	scope: "board",
	label: "M.2 drives",
	wayOut: "fewer or other M.2 drives",
	asks: "Does every M.2 drive find a socket of its kind?",
	why: "An M.2 drive is a flat stick that plugs into the board itself. Sockets differ in length and in wiring.",
	source: "m2-pages",
	severity: "stops",
	reads: [],
	mayRead,
	messages: {
		notAsked: () => "You have named no M.2 drives.",
		placed: ({ drives }: { drives: number }) =>
			drives === 1
				? "Your M.2 drive finds a socket of its kind."
				: `${drives === 2 ? "Both" : `All ${drives}`} M.2 drives find sockets of their kind.`,
		placedShared: ({ drives }: { drives: number }) =>
			drives === 1
				? "Your M.2 drive finds a socket, but one that shares lanes with other plugs."
				: `${drives === 2 ? "Both" : `All ${drives}`} M.2 drives find sockets, but at least one of these shares lanes with other plugs.`,
		adapter: (words: FoundWords) =>
			`${foundWords(words)}; an adapter can hold the rest. Left over: ${words.left.join(", ")}.`,
		maybeAdapter: ({ drives }: { drives: number }) =>
			`Whether ${everyDrive(drives)} a socket is not known; if not, an adapter does it.`,
		noPlace: (words: FoundWords) =>
			`${foundWords(words)}, and nothing is left for an adapter. Left over: ${words.left.join(", ")}.`,
		unsure: ({ drives }: { drives: number }) => `Whether ${everyDrive(drives)} a place is not known.`,
		need: ({ drives, sata, lengths }: { drives: number; sata: number; lengths: readonly string[] }) =>
			`${drives} M.2 ${drives === 1 ? "socket" : "sockets"} for your drives${sata === 0 ? "" : `, ${sata} of them wired for SATA`}.${
				lengths.length === 0 ? "" : ` Lengths to look for: ${lengths.join(", ")} mm.`
			}`,
	},
	advice: {
		placedShared: () =>
			"Read the footnotes on the board's page: they say what is switched off when this socket is used.",
		adapter: () =>
			"A PCI Express drive goes on an adapter card, in a slot with four lanes. A SATA stick goes into a frame with a SATA plug. Count the price.",
		maybeAdapter: () => "Read in the board's manual which lengths and kinds of drive each M.2 socket takes.",
	},
	check(facts): Outcome {
		const drives = (facts.drives ?? []).filter(isM2Drive);
		if (drives.length === 0) return pass("notAsked");
		if (!facts["board.m2Sockets"]) return cannotTell(["board.m2Sockets"], "unsure", { drives: drives.length });
		const [best, worst] = [placingOf(drives, facts, "best"), placingOf(drives, facts, "worst")];
		const words = { drives: drives.length, places: best.placed, left: best.left };
		if (best.how === "no place" && worst.how === "no place") return fail("noPlace", words);
		if (best.how === "no place" || worst.how === "no place")
			return cannotTell(missingOf(facts), "unsure", { drives: drives.length });
		if (best.how === "adapters") return planAround("adapter", words);
		if (worst.how === "adapters") return goodToKnow("maybeAdapter", { drives: drives.length });
		return fitsUnshared(drives, facts)
			? pass("placed", { drives: drives.length })
			: goodToKnow("placedShared", { drives: drives.length });
	},
	needs({ drives }) {
		const sticks = (drives ?? []).filter(isM2Drive);
		const lengthsMm = new Set(sticks.flatMap(({ lengthMm }) => lengthMm ?? []));
		const isUsual = [...lengthsMm].every((lengthMm) => lengthMm === 80);
		return sticks.length === 0
			? null
			: {
					messageId: "need",
					data: {
						drives: sticks.length,
						sata: sticks.filter(({ link }) => link === "SATA").length,
						lengths: isUsual ? [] : [...lengthsMm].sort((one, other) => one - other).map(String),
					},
				};
	},
});

function everyDrive(drives: number): string {
	return drives === 1 ? "your M.2 drive finds" : `each of your ${drives} M.2 drives finds`;
}

interface FoundWords {
	readonly drives: number;
	readonly places: number;
	readonly left: readonly string[];
}

function foundWords({ drives, places }: FoundWords): string {
	if (drives === 1) return "Your M.2 drive finds no socket of its kind";
	if (places === 0) return `None of your ${drives} M.2 drives finds a socket of its kind`;
	return `Only ${places} of your ${drives} M.2 drives ${places === 1 ? "finds" : "find"} a socket of its kind`;
}

function placingOf(drives: readonly Drive[], facts: Facts, leaning: Leaning): Placing {
	const sockets = socketsOf(facts, leaning);
	const inSockets = largestMatching(drives.map((drive) => m2PlacesOf(drive, sockets, leaning)));
	const left = drives.filter((_, index) => inSockets[index] === null);
	const placed = drives.length - left.length;
	if (left.length === 0) return { how: "sockets", placed, left: [] };
	const slots = slotsLeft(facts, drives.length, leaning);
	const ports = portsLeft(facts, drives.length, leaning);
	// Cards and drives with a cable were there before adapters, so they are served first.
	const cards = (facts.addInCards ?? []).map((card) => slotsFor(slotNeedOf(card), slots, leaning));
	const withAdapters = largestMatching<object>([
		...cards,
		...drives.map((drive) => [
			...m2PlacesOf(drive, sockets, leaning),
			...(drive.link === "SATA" ? ports : slotsFor(adapterCard, slots, leaning)),
		]),
	]).slice(cards.length);
	return {
		how: withAdapters.includes(null) ? "no place" : "adapters",
		placed,
		left: left.map(({ name }) => name),
	};
}

function socketsOf(facts: Facts, leaning: Leaning) {
	return withProcessorLimits(
		facts["board.m2Sockets"] ?? [],
		facts["board.conditions"] ?? [],
		processorOfLimits(facts),
		leaning,
	);
}

/** Slots beside the graphics card; where the page is silent, at best one for each drive and at worst none. */
function slotsLeft(facts: Facts, most: number, leaning: Leaning) {
	const known = facts["board.cardSlots"];
	if (!known)
		return leaning === "worst"
			? []
			: Array.from({ length: most + (facts.addInCards?.length ?? 0) }, () => ({ name: "" }));
	const slots = withProcessorLimits(known, facts["board.conditions"] ?? [], processorOfLimits(facts), leaning);
	const card = graphicsInSlot(
		facts.graphicsCard ?? "unknown",
		facts["graphicsCard.lanes"],
		facts["graphicsCard.thicknessMm"],
		leaning,
	);
	return slotsBeside(slots, card, leaning).left;
}

/** SATA ports that the drives with a cable leave over. */
function portsLeft(facts: Facts, most: number, leaning: Leaning): readonly object[] {
	const taken = (facts.drives ?? []).filter(isSataDrive).length + (facts.olderSataDrives ?? 0);
	const ports = facts["board.drivePorts"]?.filter(({ kind }) => kind === "SATA");
	return ports?.slice(taken) ?? (leaning === "worst" ? [] : Array.from({ length: most }, () => ({})));
}

function fitsUnshared(drives: readonly Drive[], facts: Facts): boolean {
	const shared = new Set((facts["board.sharing"] ?? []).flatMap(({ members }) => members));
	const alone = socketsOf(facts, "worst").filter(({ name }) => !shared.has(name));
	return !largestMatching(drives.map((drive) => m2PlacesOf(drive, alone, "worst"))).includes(null);
}

/** What would settle it; where all that is asked of the parts is known, it is the sockets' own details. */
function missingOf(facts: Facts): readonly string[] {
	const connectors = [...(facts["board.m2Sockets"] ?? []), ...(facts["board.cardSlots"] ?? [])];
	const missing = [
		...factsThatSettleLimits(connectors, facts["board.conditions"], processorOfLimits(facts)),
		...(facts["board.cardSlots"] ? [] : ["board.cardSlots"]),
		...(facts.drives?.some(({ link }) => link === "SATA") && !facts["board.drivePorts"] ? ["board.drivePorts"] : []),
		...(facts.graphicsCard === "unknown" ? ["graphicsCard"] : []),
		...(facts.graphicsCard === "have" && facts["graphicsCard.thicknessMm"] === undefined
			? ["graphicsCard.thicknessMm"]
			: []),
	];
	return missing.length > 0 ? missing : ["board.m2Sockets"];
}
