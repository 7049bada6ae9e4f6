import type { Question } from "../define-question.ts";
import { linesOfParts, withOwnership } from "../owned-parts.ts";

export const returnUntil: Question = {
	id: "fit/return-until",
	tier: "fit",
	kind: "number",
	ask: "Until which day can the parts go back?",
	hint: "The earliest last day, such as 2026-12-24",
	label: "Can go back until",
	why: "Try the parts together before that day, or the way back is closed.",
	whereToFind: "Count from the day of delivery, by the shop's terms for returns.",
	changes: "The day stands on the sheet. Once it has passed, the parts count as bought for good.",
	notSure: "The sheet reminds you to ask for the day.",
	howToFindOut: "Ask the shop until when the parts can go back.",
	applies: (facts) => linesOfParts(facts, (have) => "ownership" in have && have.ownership === "returnable").length > 0,
	options: () => [],
	read: (text) => {
		const day = isoDay(text);
		return day ? { value: day } : { problem: "Type the day as year-month-day, such as 2026-12-24." };
	},
	expected: (value) => (typeof value === "string" && isoDay(value) === value ? null : "a day such as 2026-12-24"),
	sets: (facts, value, { asOf }) => {
		const isPast = String(value) < asOf;
		const until = { ...facts, returnableUntil: value as string };
		if (!isPast) return until;
		return withOwnership(until, (kind) => {
			const have = facts[kind];
			return have.state === "have" && have.ownership === "returnable" ? "bought" : null;
		});
	},
	says: (value) => String(value),
};

/** A day as ISO 8601 writes it, read also from "24.12.2026"; null where it is no day of the calendar. */
function isoDay(text: string): string | null {
	const iso = /^\s*(\d{4})-(\d{1,2})-(\d{1,2})\s*$/.exec(text);
	const dotted = /^\s*(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})\s*$/.exec(text);
	const [year, month, day] = iso ? iso.slice(1) : dotted ? [dotted[3], dotted[2], dotted[1]] : [];
	if (!year || !month || !day) return null;
	const written = `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
	const time = Date.parse(`${written}T00:00:00Z`);
	return !Number.isNaN(time) && new Date(time).toISOString().startsWith(written) ? written : null;
}
