import { headerKindFor } from "../plan/header-goals.ts";
import { type HeaderPlan, headerRemarks, type PlacedWish } from "../plan/header-plan.ts";
import type { HeaderWish } from "../plan/header-wish.ts";
import { howToFindOut } from "./how-to-find-out.ts";
import { capital, listed, withRuns } from "./listed.ts";

/** Lights of the wrong voltage are destroyed, so every line about them says so. */
const neverMix =
	"Never plug 5 V lights (three pins) into a 12 V header (four pins), nor the other way round: it destroys them.";

/** What goes on which header, in sentences; things for later years are left out. */
export function headerWords({ placed, sharing, without, unknown, free }: HeaderPlan): readonly string[] {
	const now = placed.filter(({ wish }) => !wish.isLater);
	const lines = now.map(({ wish, header, remark }) => {
		const does = remark === null ? "" : ` ${headerRemarks[remark]}`;
		return `${capital(wish.name)} on ${withArticle(header)}.${does}`;
	});
	const shared = sharing
		.filter(({ wish }) => !wish.isLater)
		.map(({ wish, header, amps }) => {
			const most = amps === null ? "" : `; together they may draw ${amps} A at most`;
			const verb = wish.kind.endsWith("lights") ? "share" : "shares";
			return `${capital(wish.name)} ${verb} ${withArticle(header)} through a splitter${most}.`;
		});
	const all = [...[...placed, ...sharing, ...unknown].map(({ wish }) => wish), ...without];
	const hasLights = all.some(({ kind, isLater }) => kind.endsWith("lights") && !isLater);
	return [...lines, ...slowerWords(now), ...shared, ...(hasLights ? [neverMix] : []), ...freeWords(free)];
}

/** More names than this make a sentence that nobody reads to its end. */
const mostNames = 4;

function freeWords(free: readonly string[]): readonly string[] {
	const names = withRuns(free);
	const parts = Array.from({ length: Math.ceil(names.length / mostNames) }, (_, nth) =>
		names.slice(nth * mostNames, (nth + 1) * mostNames),
	);
	return parts.map((some, nth) => `${nth === 0 ? "Free" : "Free too"}: ${listed(some)}.`);
}

function slowerWords(placed: readonly PlacedWish[]): readonly string[] {
	return placed
		.filter(({ couldDoMore }) => couldDoMore)
		.map(
			({ wish, headerGbps }) =>
				`${capital(wish.name)} is made for ${wish.gbps} Gb/s and runs at ${headerGbps} Gb/s there.`,
		);
}

/** What a header for a wish is called. */
function headerKindWords(kind: HeaderWish["kind"]): string {
	if (kind === "pump" || kind.endsWith("fan")) return "fan header";
	if (kind.endsWith("lights")) return kind === "5 V lights" ? "5 V lighting header" : "12 V lighting header";
	return kind === "front sound" ? "sound header" : `${kind} header`;
}

/** Plugs for which the board has no header left, or none at all. */
export function headersWithoutWords({ without, headers }: HeaderPlan): readonly string[] {
	return without
		.filter(({ isLater }) => !isLater)
		.map(({ name, kind }) => {
			const hasAny = headers.some((header) => header.kind === headerKindFor(kind));
			const caution = kind === "pump" ? " Do not start without it: nothing would cool the processor." : "";
			return `${capital(name)}: the board has no ${headerKindWords(kind)}${hasAny ? " left" : ""} for ${kind.endsWith("lights") ? "them" : "it"}.${caution}`;
		});
}

/** Plugs of which nobody knows whether there is a header, and which fact of the board would tell. */
export function headersUnknownWords({ unknown }: HeaderPlan): readonly string[] {
	const facts = [...new Set(unknown.map(({ fact }) => fact))];
	return facts.flatMap((fact): readonly string[] => {
		const names = unknown.filter((one) => one.fact === fact && !one.wish.isLater).map(({ wish }) => wish.name);
		if (names.length === 0) return [];
		const what = howToFindOut(fact)?.what ?? fact;
		return [`${what}, for: ${listed(withRuns(names))}.`];
	});
}

/** A header of which the page gives no name is called by what it is, and wants an article. */
function withArticle(header: string): string {
	return / header\b/.test(header) ? `the ${header}` : header;
}
