import type { OwnPart } from "../parts/answers-file.ts";
import { knownFields } from "../parts/form-draft.ts";
import { moneyText } from "../parts/money.ts";
import { type AnyPart, partKinds } from "../parts/part-kinds.ts";
import { daysBetween } from "../sheet/price-words.ts";

type Priced = Partial<Pick<Extract<OwnPart, { kind: "board" }>["part"], "price" | "checkedOn" | "offers" | "evidence">>;

/** Facts about buying it; they are told apart. */
const aboutBuying: ReadonlySet<string> = new Set(["name", "price", "checkedOn", "offers"]);

/** How many facts of a part are known, beside its name and what it costs. */
export function factsKnown(kind: OwnPart["kind"], part: unknown): number {
	return knownFields(kind, part).filter(({ path }) => !aboutBuying.has(path[0] ?? "")).length;
}

/** A part in a list: how much is known of it and how old that is, then what it costs. */
export function ownPartWords(own: OwnPart, asOf: string): string {
	const known = factsKnown(own.kind, own.part);
	const facts = known === 0 ? "no fact known yet" : known === 1 ? "1 fact known" : `${known} facts known`;
	const age = factsAge(own.part, asOf);
	return `${facts}${age ? `, ${age}` : ""}; ${pricesWords(own.part, asOf)}`;
}

/** Age of the oldest fact with a date, or null. */
function factsAge(part: AnyPart, asOf: string): string | null {
	const dates = Object.values((part as Priced).evidence ?? {}).flatMap(({ date }) => date ?? []);
	const oldest = dates.toSorted()[0];
	return oldest === undefined ? null : `read ${agoWords(oldest, asOf)}`;
}

/** "EUR 189.00, seen 12 days ago", from the price noted or the cheapest offer; or that no price is known. */
export function pricesWords(part: AnyPart, asOf: string): string {
	const { price, checkedOn, offers = [] } = part as Priced;
	const cheapest = offers.toSorted((one, other) => one.price.minor - other.price.minor)[0];
	const asked = price
		? { price, seen: checkedOn, condition: "" }
		: cheapest && { price: cheapest.price, seen: cheapest.seenOn, condition: ` (${cheapest.condition})` };
	if (!asked) return "price not known";
	const more = offers.length > 0 ? `; ${offers.length === 1 ? "1 offer" : `${offers.length} offers`}` : "";
	const seen = asked.seen ? `, seen ${agoWords(asked.seen, asOf)}` : ", not known since when";
	return `${moneyText(asked.price)}${asked.condition}${seen}${more}`;
}

/** "today", "yesterday", "12 days ago"; a day to come is named. */
function agoWords(then: string, today: string): string {
	const days = daysBetween(then, today);
	if (days === 0) return "today";
	if (days === 1) return "yesterday";
	return days > 1 ? `${days} days ago` : `on ${then}`;
}

/** "Graphics card" at the beginning of a line. */
export function kindLabel(kind: OwnPart["kind"]): string {
	const { noun } = partKinds[kind];
	return `${noun[0]?.toUpperCase()}${noun.slice(1)}`;
}
