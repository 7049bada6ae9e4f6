import { isM2Drive } from "../../reference/m2-fit.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

/**
 * Every M.2 drive wants a socket of its length, key and link, or an adapter: a PCI Express drive on a card with four
 * lanes, a SATA one in a frame at a SATA port. The board is out only where nothing but the graphics card stands in the
 * way; where other parts do, something else may go. Source of lengths, keys and links: pages on M.2 keys and sizes.
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
	mayStop: ({ drives }) => drives?.some(isM2Drive) === true,
	reads: [],
	mayRead: ["drives", "board.m2Sockets", "plan.things", "plan.ends", "plan.m2Alone"],
	messages: {
		notAsked: () => "You have named no M.2 drives.",
		placed: ({ drives }: { drives: number }) =>
			drives === 1
				? "Your M.2 drive finds a socket of its kind."
				: `${drives === 2 ? "Both" : `All ${drives}`} M.2 drives find sockets of their kind.`,
		switchesOff: ({ drives, off }: { drives: number; off: readonly string[] }) =>
			`${drives === 1 ? "Your M.2 drive finds a socket" : `${drives === 2 ? "Both" : `All ${drives}`} M.2 drives find sockets`}. Switched off for ${drives === 1 ? "it" : "them"}: ${off.join(", ")}.`,
		adapter: (words: FoundWords) =>
			`${foundWords(words)}; an adapter can hold the rest. Left over: ${words.left.join(", ")}.`,
		maybeAdapter: ({ drives }: { drives: number }) =>
			`Whether ${everyDrive(drives)} a socket is not known; if not, an adapter does it.`,
		crowded: ({ left }: { left: readonly string[] }) =>
			`Not everything you plug in goes in at once. Left without a place: ${left.join(", ")}.`,
		maybeCrowded: ({ left }: { left: readonly string[] }) =>
			`Whether everything you plug in goes in at once is not known. It may leave out: ${left.join(", ")}.`,
		noPlace: ({ drives, left }: { drives: number; left: readonly string[] }) =>
			drives === left.length
				? `${drives === 1 ? "Your M.2 drive finds" : `Your ${drives} M.2 drives find`} neither a socket nor a place for an adapter. Left over: ${left.join(", ")}.`
				: `${drives - left.length} of your ${drives} M.2 drives ${drives - left.length === 1 ? "finds" : "find"} a place, adapters counted. Left over: ${left.join(", ")}.`,
		unsure: ({ drives }: { drives: number }) => `Whether ${everyDrive(drives)} a place is not known.`,
		need: ({ drives, sata, lengths }: { drives: number; sata: number; lengths: readonly string[] }) =>
			`${drives} M.2 ${drives === 1 ? "socket" : "sockets"} for your drives${sata === 0 ? "" : `, ${sata} of them wired for SATA`}.${
				lengths.length === 0 ? "" : ` Lengths to look for: ${lengths.join(", ")} mm.`
			}`,
	},
	advice: {
		switchesOff: () => "Nothing you named needs what is switched off. Think of it when you add drives or cards.",
		adapter: () =>
			"A PCI Express drive goes on an adapter card, in a slot with four lanes. A SATA stick goes into a frame with a SATA plug. Count the price.",
		maybeAdapter: () => "Read in the board's manual which lengths and kinds of drive each M.2 socket takes.",
		crowded: () => 'The page "What plugs in where" says what could be left out instead.',
	},
	check(facts): Outcome {
		const drives = (facts.drives ?? []).filter(isM2Drive).length;
		if (drives === 0) return pass("notAsked");
		const alone = facts["plan.m2Alone"];
		if (!facts["board.m2Sockets"] || !alone) return cannotTell(["board.m2Sockets"], "unsure", { drives });
		const left = alone.without.filter(isStick);
		if (left.length > 0) return fail("noPlace", { drives, left: left.map(({ name }) => name) });
		// Where a graphics card that may have no slot of its own leaves that slot to an adapter, nothing is sure either.
		const hangsOnGraphics =
			alone.unsure.length > 0 && alone.worst.placed.some((one) => isStick(one.device) && one.extra);
		if (hangsOnGraphics || alone.unsure.some(isStick)) return cannotTell(alone.missing, "unsure", { drives });
		const sticks = (facts["plan.things"] ?? []).filter(({ device }) => isStick(device));
		const named = (some: typeof sticks) => some.map(({ device }) => device.name);
		const crowded = sticks.filter(({ hasPlace }) => hasPlace === "no");
		if (crowded.length > 0) return planAround("crowded", { left: named(crowded) });
		const maybe = sticks.filter(({ hasPlace }) => hasPlace === "unknown");
		if (maybe.length > 0) return goodToKnow("maybeCrowded", { left: named(maybe) });
		const adapted = sticks.filter(({ best }) => best?.extra);
		if (adapted.length > 0)
			return planAround("adapter", { drives, places: drives - adapted.length, left: named(adapted) });
		if (sticks.some(({ worst }) => worst?.extra)) return goodToKnow("maybeAdapter", { drives });
		const names = named(sticks);
		const off = (facts["plan.ends"] ?? []).filter(
			(end) => end.state === "off" && end.by.some((by) => names.includes(by)),
		);
		return off.length > 0
			? goodToKnow("switchesOff", { drives, off: off.map(({ connector }) => connector.name) })
			: pass("placed", { drives });
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

function isStick({ kind }: { readonly kind: string }): boolean {
	return kind === "M.2 drive";
}

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
