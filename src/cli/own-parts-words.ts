import { partsIn } from "../files/own-parts.ts";
import type { OwnPart } from "../parts/answers-file.ts";
import type { evidence } from "../parts/evidence.ts";
import { factsOf } from "../parts/fact-list.ts";
import type { PartsFile } from "../parts/market.ts";
import { type Money, moneyText } from "../parts/money.ts";
import type { offer } from "../parts/offer.ts";
import { type AnyPart, partKinds } from "../parts/part-kinds.ts";
import { factIn, factsKnown } from "../reading/parts-csv.ts";
import { daysBetween } from "../sheet/price-words.ts";
import { wrapText } from "../sheet/wrap-text.ts";

const width = 78;
/** A price older than this may have moved, a page older than that may have changed (own convention). */
const [oldPriceDays, oldFactDays] = [60, 365];

type Offer = ReturnType<typeof offer.parse>;
type Evidence = ReturnType<typeof evidence.parse>;
/** What most kinds have; a chipset row has no price. */
type Priced = { readonly price?: Money; readonly checkedOn?: string; readonly offers?: readonly Offer[] };

/** All own parts, a few words each. */
export function ownListText(parts: PartsFile, today: string, path: string): string {
	const lines = partsIn(parts).map(
		({ kind, part }) =>
			`${partKinds[kind].noun} ${part.id}: ${part.name}; ${[
				...priceWords(part as Priced, today),
				knownWords(factsKnown(kind, part)),
				...oldFactsWords(part, today),
			].join("; ")}`,
	);
	if (lines.length === 0)
		return "You have no parts of your own yet. To take some from a file: boardwalk own import FILE\n";
	return `${[...lines.flatMap((line) => wrapText(`- ${line}`, width, { indent: "  " })), "", `They are kept in ${path}`].join("\n")}\n`;
}

/** One own part: each fact known, with its path, where it was read and how long ago. */
export function ownPartText({ kind, part }: OwnPart, today: string): string {
	const held = factsOf(kind).filter(
		({ path, form }) =>
			!["id", "name", "invented", "evidence", "price.minor", "price.currency"].includes(path) &&
			(form !== "group" || path === "price") &&
			factIn(part, path) !== undefined,
	);
	const facts = held.flatMap(({ path, title, unit }) => {
		const value = factIn(part, path);
		const words = isMoney(value)
			? moneyText(value)
			: `${valueWords(value)}${unit && typeof value !== "object" ? ` ${unit}` : ""}`;
		return [
			`${title} (${path}): ${words}`,
			...evidenceWords(evidenceOf(part, path), today).map((line) => `    ${line}`),
		];
	});
	const head = `${part.name}: your own ${partKinds[kind].noun}, ${part.id}`;
	const body = facts.flatMap((line) => wrapText(line, width, { indent: "  " }));
	return `${[head, "", ...(body.length > 0 ? body : ["Nothing is known of it yet."])].join("\n")}\n`;
}

/** A fact's value in words: lists entry by entry, groups as "name M2_1, key M". */
export function valueWords(value: unknown): string {
	if (typeof value === "boolean") return value ? "yes" : "no";
	if (isMoney(value)) return moneyText(value);
	if (Array.isArray(value)) {
		if (value.length === 0) return "none";
		const areGroups = value.some((entry) => entry !== null && typeof entry === "object");
		return value.map(valueWords).join(areGroups ? "; " : ", ");
	}
	if (value !== null && typeof value === "object")
		return Object.entries(value)
			.map(([key, entry]) => `${key} ${valueWords(entry)}`)
			.join(", ");
	return String(value);
}

function isMoney(value: unknown): value is Money {
	return typeof value === "object" && value !== null && "minor" in value && "currency" in value;
}

function priceWords(part: Priced, today: string): readonly string[] {
	const offers = (part.offers ?? []).map(
		(one) => `${moneyText(one.price)} ${one.condition}${seenWords(one.seenOn, today)}`,
	);
	const noted = part.price ? [`${moneyText(part.price)}${seenWords(part.checkedOn, today)}`] : [];
	const all = [...noted, ...offers];
	return all.length > 0 ? all.slice(0, 3) : ["price not known"];
}

function seenWords(day: string | undefined, today: string): string {
	if (day === undefined) return "";
	const days = daysBetween(day, today);
	return ` (seen ${agoWords(days, day)}${days > oldPriceDays ? ": look again" : ""})`;
}

function agoWords(days: number, day: string): string {
	if (days === 0) return "today";
	if (days === 1) return "yesterday";
	return days > 1 ? `${days} days ago` : `on ${day}`;
}

function knownWords(count: number): string {
	return count === 1 ? "1 fact known" : `${count} facts known`;
}

function oldFactsWords(part: AnyPart, today: string): readonly string[] {
	const dates = Object.values(part.evidence ?? {}).flatMap(({ date }) => date ?? []);
	const oldest = Math.max(0, ...dates.map((date) => daysBetween(date, today)));
	return oldest > oldFactDays ? [`read ${oldest} days ago: look again`] : [];
}

function evidenceOf(part: AnyPart, path: string): Evidence | undefined {
	const all: Readonly<Record<string, Evidence>> = part.evidence ?? {};
	return Object.hasOwn(all, path) ? all[path] : undefined;
}

function evidenceWords(known: Evidence | undefined, today: string): readonly string[] {
	if (!known) return [];
	const { standing, where, date, by, quote } = known;
	const days = date === undefined ? 0 : daysBetween(date, today);
	const words = [
		standing === "assumed" ? "assumed from a standard" : "stated",
		...(where ? [where] : []),
		...(date ? [`${agoWords(days, date)}${days > oldFactDays ? ": look again" : ""}`] : []),
		...(by ? [`by ${by}`] : []),
		...(quote ? [`"${quote}"`] : []),
	];
	return [words.join(", ")];
}
