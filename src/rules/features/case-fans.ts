import type { FactsUnder } from "../../parts/fact-path.ts";
import { fansFed, silentFanHeader, usualFan } from "../../reference/header-budgets.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type MessageData, type Outcome, pass, planAround } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

const mayRead = [
	"caseFans",
	"laterThings",
	"case.hubUsesUsb2",
	"headers.headers",
	"headers.placed",
	"headers.sharing",
	"headers.free",
	"headers.unknown",
] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

const askOwnHub = "Look first whether the hub of your case takes them.";

function hubAdvice({ ownHub }: OwnHub): string {
	return `${ownHub ? `${askOwnHub} Else take` : "Take"} a fan hub fed by the supply, on that supply's own cable. Count its price.`;
}

/**
 * Fans of the case against the headers that the cooler leaves over in the plan, and those that share a header against
 * its amperes. A pump header left over drives a fan as well; one of the processor's own that is left over is not
 * counted: it follows the cooler.
 */
export const caseFans = defineRule({
	id: "features/case-fans",
	scope: "board",
	label: "Headers for case fans",
	wayOut: "a splitter or a hub for the fans",
	asks: "Is there a fan header for every fan of your case?",
	why: "A header is a row of pins for a plug. The board can slow a fan on a header of its own; two on one header share what it carries.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead,
	messages: {
		notAsked: () => "You have named no case fans.",
		enough: ({ fans, headers }: Counts) => `${fansWant(fans)}; ${headersWords(headers)} for the case.`,
		noReserve: ({ fans, headers, later }: Counts & Later) =>
			`${fansWant(fans)}; ${headersWords(headers)} for the case. ${laterFans(later)} later would want a splitter.`,
		noReserveHub: ({ fans, headers, later }: Counts & Later) =>
			`${fansWant(fans)}; ${headersWords(headers)} for the case. ${laterFans(later)} later would want a hub.`,
		splitter: ({ fans, headers }: Counts) => `${fansWant(fans)}. Only ${headersWords(headers)}, so some must share.`,
		tooManyShare: (counts: Counts & Shared) =>
			`${fansWant(counts.fans)}. Only ${headersWords(counts.headers)}. ${takeWords(counts)}.`,
		hub: ({ fans }: { fans: number }) => `${fansWant(fans)}. No header is left for them.`,
		need: ({ fans, later }: { fans: number } & Later) =>
			`${fans + later} ${fans + later === 1 ? "header" : "headers"} for case fans${later === 0 ? "" : `, ${later} of them for later`}.`,
	},
	advice: {
		noReserve: splitterAdvice,
		noReserveHub: ({ ownHub }: OwnHub) =>
			`${ownHub ? `${askOwnHub} Else take` : "Take"} a fan hub fed by the supply when that time comes. Use only that supply's own cable.`,
		splitter: splitterAdvice,
		tooManyShare: (shared: Shared & OwnHub) =>
			`${hubAdvice(shared)} A splitter will do if the labels of its fans add up to ${shared.amps} A or less.`,
		hub: hubAdvice,
	},
	check(facts): Outcome {
		const { fans, later } = wantedOf(facts);
		if (fans + later === 0) return pass("notAsked");
		const all = facts["headers.headers"];
		const isUnknown = facts["headers.unknown"]?.some(({ fact }) => fact === "board.headers.fans");
		if (!all || isUnknown) return cannotTell(["board.headers.fans"]);
		const headers = headersLeft(facts, all);
		const own: OwnHub = facts["case.hubUsesUsb2"] ? { ownHub: true } : {};
		if (headers >= fans + later) return pass("enough", { fans, headers });
		if (headers >= fans) {
			const shared = mostShared(facts, all, true);
			return shared && feeds(shared)
				? goodToKnow("noReserve", { fans, headers, later, ...shared, ...own })
				: goodToKnow("noReserveHub", { fans, headers, later, ...own });
		}
		const shared = mostShared(facts, all, false);
		if (!shared) return planAround("hub", { fans, ...own });
		return planAround(feeds(shared) ? "splitter" : "tooManyShare", { fans, headers, ...shared, ...own });
	},
	needs(facts) {
		const { fans, later } = wantedOf(facts);
		return fans + later === 0 ? null : { messageId: "need", data: { fans, later } };
	},
});

interface Counts extends MessageData {
	readonly fans: number;
	readonly headers: number;
}

interface Later extends MessageData {
	readonly later: number;
}

interface OwnHub extends MessageData {
	/** There where the case is known to bring a hub, for fans or for lights. */
	readonly ownHub?: true;
}

/** The header that is asked for most of what it gives: how many fans hang on it, and the amperes it gives. */
interface Shared extends MessageData {
	readonly onOne: number;
	readonly amps: number;
}

function splitterAdvice(shared: Shared & OwnHub): string {
	return `${shared.ownHub ? `${askOwnHub} ` : ""}A splitter puts several fans on one header. ${takeWords(shared)}. Add up the amperes on the labels of yours. Past ${shared.amps} A take a hub fed by the supply, on that supply's own cable.`;
}

function takeWords({ onOne, amps }: Shared): string {
	return `${onOne} usual fans take at most ${roundToTenth(onOne * usualFan.mostAmps)} A together, and one header gives ${amps} A`;
}

function laterFans(later: number): string {
	return later === 1 ? "One more fan" : `${later} more fans`;
}

function fansWant(fans: number): string {
	if (fans === 0) return "No case fan wants a header now";
	return fans === 1 ? "One case fan wants a header" : `${fans} case fans want a header each`;
}

function headersWords(headers: number): string {
	return headers === 1 ? "1 header is left" : `${headers} headers are left`;
}

function wantedOf({ caseFans: fans, laterThings }: Facts): { readonly fans: number; readonly later: number } {
	return { fans: fans ?? 0, later: (laterThings ?? []).filter((thing) => thing === "fan").length };
}

/** Headers that case fans have or can have. */
function headersLeft(facts: Facts, all: NonNullable<Facts["headers.headers"]>): number {
	const free = all.filter(
		({ name, use }) => use !== null && use !== "processor" && facts["headers.free"]?.includes(name),
	);
	const taken = facts["headers.placed"]?.filter(({ wish }) => wish.kind === "case fan") ?? [];
	return free.length + taken.length;
}

/** The fullest of the headers that case fans share, with those for later or without; null where none can be shared. */
function mostShared(facts: Facts, all: NonNullable<Facts["headers.headers"]>, withLater: boolean): Shared | null {
	const isFan = ({ wish }: { readonly wish: { readonly kind: string; readonly isLater: boolean } }) =>
		wish.kind === "case fan" && (withLater || !wish.isLater);
	const sharing = (facts["headers.sharing"] ?? []).filter(isFan);
	const onHeaders = [...(facts["headers.placed"] ?? []).filter(isFan), ...sharing];
	const shared = all
		.filter(({ name }) => sharing.some(({ header }) => header === name))
		.map(
			({ name, amps }): Shared => ({
				onOne: onHeaders.filter(({ header }) => header === name).length,
				amps: amps ?? silentFanHeader.amps,
			}),
		);
	const fullness = ({ onOne, amps }: Shared) => onOne / amps;
	return shared.reduce<Shared | null>(
		(before, one) => (before === null || fullness(one) > fullness(before) ? one : before),
		null,
	);
}

function feeds({ onOne, amps }: Shared): boolean {
	return onOne <= fansFed(amps).usually;
}
