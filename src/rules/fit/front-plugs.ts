import type { PcCase } from "../../parts/case.ts";
import type { FactsUnder } from "../../parts/fact-path.ts";
import type { HeaderWish } from "../../plan/header-wish.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

type Plug = NonNullable<PcCase["frontPlugs"]>[number]["plug"];

/** What a plug of the case stands for, as a person sees it at the front. */
const plugWords = {
	"USB 9-pin": "slow front USB (9-pin plug)",
	"USB 19-pin": "fast front USB (19-pin plug)",
	"USB-C 20-pin": "front USB-C (20-pin plug)",
	sound: "front sound",
} as const satisfies Record<Plug, string>;

const mayRead = [
	"headers.headers",
	"headers.wishes",
	"headers.placed",
	"headers.without",
	"headers.unknown",
	"case.hubUsesUsb2",
	"cooler.headersUsed.usb2",
	"addInCards",
	"lights",
] as const;

/**
 * Each plug at the loose cables of the case wants a header of its kind, or its sockets at the front stay dead. Several
 * other things want a 9-pin USB header too: the case's hub, a liquid cooler's pump, a wireless card, a controller for
 * lights. That headers must match the case is common practice; their pins are from memory.
 */
export const frontPlugs = defineRule({
	id: "fit/front-plugs",
	scope: "board",
	label: "Plugs of the case's front",
	wayOut: "front sockets that stay dead",
	asks: "Does every plug of the case's front find its place on the board?",
	why: "A socket at the front works only if its cable has a place on the board to go to.",
	source: "common-practice",
	severity: "plan-around",
	reads: ["case.frontPlugs"],
	mayRead,
	messages: {
		noPlugs: () => "The case has no plugs for the board.",
		all: () => "Every plug of the case's front finds its place.",
		dead: ({ dead, plugs }: { dead: readonly string[]; plugs: number }) =>
			`The board has no place for: ${dead.join(", ")}. ${plugs === 1 ? "It stays" : "They stay"} dead.`,
		tooFewNinePin: ({ wanted, headers }: { wanted: number; headers: number }) =>
			`${wanted} ${wanted === 1 ? "plug wants" : "plugs want"} a 9-pin USB header; the board has ${headers === 0 ? "none" : headers}.`,
		deadAndFewNinePin: ({ dead, wanted, headers }: { dead: readonly string[]; wanted: number; headers: number }) =>
			`The board has no place for: ${dead.join(", ")}. ${wanted} plugs want a 9-pin USB header, and it has ${headers === 0 ? "none" : headers}.`,
		slower: ({ plug, cableGbps, headerGbps }: { plug: string; cableGbps: number; headerGbps: number }) =>
			`The ${plug} is made for ${cableGbps} Gb/s; the board's header gives ${headerGbps} Gb/s.`,
		unsure: () => "Whether every plug of the case's front finds its place is not known.",
		need: ({ plugs }: { plugs: readonly string[] }) => `Places for: ${plugs.join(", ")}.`,
		needNinePin: ({ plugs, wanted }: { plugs: readonly string[]; wanted: number }) =>
			`Places for: ${plugs.join(", ")}. With your other parts that makes ${wanted} ${wanted === 1 ? "header" : "headers"} for 9-pin USB in all.`,
	},
	advice: {
		dead: () =>
			"Think whether you will miss it. Never press a plug onto pins that do not match: it can short the board.",
		tooFewNinePin: () =>
			"An internal USB hub makes several 9-pin headers of one; count its price. Fit it with the mains plug out.",
		deadAndFewNinePin: () =>
			"An internal USB hub adds 9-pin headers. Never press a plug onto pins that do not match: it can short the board.",
		slower: () => "It works, only slower. Pay for a faster header only if you copy large files at the front.",
	},
	check(facts): Outcome {
		const wishes = (facts["headers.wishes"] ?? []).filter(isOfThisRule);
		if (wishes.length === 0) return pass("noPlugs");
		const without = (facts["headers.without"] ?? []).filter(isOfThisRule);
		const deadOnes = without.filter(({ kind }) => kind !== "USB 9-pin");
		const dead = [...new Set(deadOnes.map(({ kind }) => kind))].flatMap((kind) => {
			const countIn = (some: readonly HeaderWish[]) => some.filter((wish) => wish.kind === kind).length;
			return wordsFor(kind).map((words) => countedWords(words, countIn(without), countIn(wishes)));
		});
		const ninePin = {
			wanted: wishes.filter(({ kind }) => kind === "USB 9-pin").length,
			headers: (facts["headers.headers"] ?? []).filter(({ kind }) => kind === "USB 9-pin").length,
		};
		if (without.some(({ kind }) => kind === "USB 9-pin"))
			return dead.length > 0
				? planAround("deadAndFewNinePin", { dead, ...ninePin })
				: planAround("tooFewNinePin", ninePin);
		if (dead.length > 0) return planAround("dead", { dead, plugs: deadOnes.length });
		const unknown = (facts["headers.unknown"] ?? []).filter(({ wish }) => isOfThisRule(wish));
		if (unknown.length > 0) return cannotTell([...new Set(unknown.map(({ fact }) => fact))], "unsure");
		const slower = facts["headers.placed"]?.find(({ couldDoMore }) => couldDoMore);
		if (!slower) return pass("all");
		const [plug = slower.wish.name] = wordsFor(slower.wish.kind);
		return goodToKnow("slower", { plug, cableGbps: slower.wish.gbps ?? 0, headerGbps: slower.headerGbps ?? 0 });
	},
	needs(facts) {
		const plugs = facts["case.frontPlugs"];
		if (!plugs || plugs.length === 0) return null;
		const words = plugs.map(({ plug, count }) => countedWords(plugWords[plug], count, count));
		const own = plugs.filter(({ plug }) => plug === "USB 9-pin").reduce((sum, { count }) => sum + count, 0);
		const wanted = ninePinWanted(facts, own);
		return wanted > own
			? { messageId: "needNinePin", data: { plugs: words, wanted } }
			: { messageId: "need", data: { plugs: words } };
	},
});

/** 9-pin headers wanted before any board is known: the case's plugs, and what else goes on one. */
function ninePinWanted(facts: FactsUnder<never, (typeof mayRead)[number]>, own: number): number {
	const cards = facts.addInCards?.filter(({ usesUsb2 }) => usesUsb2).length ?? 0;
	const others = [facts["case.hubUsesUsb2"], facts.lights?.includes("maker's own")].filter(Boolean).length;
	return own + others + cards + (facts["cooler.headersUsed.usb2"] ?? 0);
}

/** So many of all the plugs of a kind, such as "one of 2 ...". */
function countedWords(words: string, count: number, of: number): string {
	if (of === 1) return words;
	return count === of ? `${count} x ${words}` : `${count === 1 ? "one" : count} of ${of} ${words}`;
}

/** Fans and lights have rules of their own. */
function isOfThisRule({ kind }: HeaderWish): boolean {
	return wordsFor(kind).length > 0;
}

function wordsFor(kind: HeaderWish["kind"]): readonly string[] {
	const plug = kind === "front sound" ? "sound" : kind;
	return Object.hasOwn(plugWords, plug) ? [plugWords[plug as Plug]] : [];
}
