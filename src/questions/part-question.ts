import { type AnswerValue, type PartChoice, partChoice } from "../parts/answers-file.ts";
import type { BuildFacts, BuildPartKind, Have } from "../parts/build.ts";
import { findPart } from "../parts/market.ts";
import type { AnyPart } from "../parts/part-kinds.ts";
import type { Option, Question, QuestionContext } from "./define-question.ts";
import { byGroup, partGroup } from "./part-groups.ts";
import { partSummary } from "./part-summary.ts";

/** "open": to be bought to suit the board. "none": there will be none. */
type Special = "open" | "none";

/** Declares a question about a part: picked from the market, described by the person, or left open. */
export function partQuestion(
	question: Omit<Question, "kind" | "partKind" | "options" | "expected" | "sets" | "says" | "applies"> & {
		readonly partKind: BuildPartKind;
		readonly specials: Readonly<Partial<Record<Special, { readonly label: string; readonly explanation: string }>>>;
		readonly applies?: Question["applies"];
	},
): Question {
	const { partKind, specials } = question;
	return {
		applies: () => true,
		...question,
		kind: "part",
		options: (context) => optionsOf(partKind, specials, context),
		expected: (value, { market }) => {
			if (isSpecial(value)) return specials[value] ? null : expectation(specials);
			const choice = partChoice.safeParse(value);
			if (!choice.success) return expectation(specials);
			return findPart(market, partKind, choice.data.part) ? null : `the id of a ${partKind} in the market`;
		},
		sets: (facts, value, context) => withHave(facts, partKind, haveOf(partKind, value, context)),
		says: (value, { market }) => {
			if (isSpecial(value)) return specials[value]?.label ?? value;
			const { part } = value as PartChoice;
			return findPart(market, partKind, part)?.name ?? part;
		},
	};
}

/** The build with one part set. */
export function withHave<K extends BuildPartKind>(facts: BuildFacts, kind: K, have: BuildFacts[K]): BuildFacts {
	return { ...facts, [kind]: have };
}

function optionsOf(
	kind: BuildPartKind,
	specials: Readonly<Partial<Record<Special, { label: string; explanation: string }>>>,
	{ market }: QuestionContext,
): readonly Option[] {
	const parts = market.parts[kind].map(
		(part): Option => ({
			value: { part: part.id },
			label: part.name,
			explanation: partSummary(kind, part),
			...inGroup(kind, part),
		}),
	);
	const extra = Object.entries(specials).map(([value, words]): Option => ({ value, ...words }));
	return [...byGroup(parts), ...extra];
}

function inGroup(kind: BuildPartKind, part: AnyPart): Pick<Option, "group"> | object {
	const group = partGroup(kind, part);
	return group ? { group } : {};
}

function haveOf(kind: BuildPartKind, value: AnswerValue, { market }: QuestionContext): Have<never> {
	if (isSpecial(value)) return { state: value };
	const { part: id, ownership = "planned" } = value as PartChoice;
	const part = findPart(market, kind, id);
	return part ? { state: "have", part: part as never, ownership } : { state: "unknown" };
}

function isSpecial(value: AnswerValue): value is Special {
	return value === "open" || value === "none";
}

function expectation(specials: object): string {
	return ['{"part": an id}', ...Object.keys(specials).map((special) => `"${special}"`)].join(" or ");
}
