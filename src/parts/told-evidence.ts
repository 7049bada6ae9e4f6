import type { Evidence } from "./form-draft.ts";

const begin = "told by ";

/** Who told a fact, such as a shop that was asked, and when. */
interface Told {
	readonly by: string;
	/** ISO date; null where none was kept. */
	readonly on: string | null;
	/** The answer as it came, or null. */
	readonly quote: string | null;
}

/** The evidence of a fact that somebody told. */
export function toldEvidence(by: string, date: string, quote: string | null): Evidence {
	return { standing: "stated", ...(quote === null ? {} : { quote }), where: toldWhere(by), date, by };
}

/** Where a figure comes from that somebody told: "told by Ada". */
export function toldWhere(by: string): string {
	return begin + by;
}

/** Whether what is noted of where a figure comes from says that somebody told it. */
export function isTold(where: string | undefined): boolean {
	return where?.startsWith(begin) ?? false;
}

/** Who told a fact; null where it was read somewhere, or nothing was noted. */
export function toldOf(evidence: Evidence | undefined): Told | null {
	if (evidence?.where === undefined || !isTold(evidence.where)) return null;
	return { by: evidence.where.slice(begin.length), on: evidence.date ?? null, quote: evidence.quote ?? null };
}

/** "told by Ada on 2026-11-28". */
export function toldWords({ by, on }: Told): string {
	return `${begin}${by}${on === null ? "" : ` on ${on}`}`;
}
