import type { AnswerValue } from "../parts/answers-file.ts";
import type { BuildFacts } from "../parts/build.ts";
import { findPart } from "../parts/market.ts";
import { type PartOf, partKinds } from "../parts/part-kinds.ts";
import type { Question, QuestionContext } from "./define-question.ts";
import { byGroup, partGroup } from "./part-groups.ts";
import { partSummary } from "./part-summary.ts";

/** Kinds of part of which there may be several. */
export type SeveralKind = "drive" | "addInCard" | "processor";

/**
 * Declares a question about several parts of one kind, marked in a list or described. The answer is a list of part ids;
 * the same one twice means two of them.
 */
export function partsQuestion<K extends SeveralKind>(
	question: Omit<Question, "kind" | "partKind" | "options" | "expected" | "sets" | "says" | "applies"> & {
		readonly partKind: K;
		readonly none: NonNullable<Question["none"]>;
		/** How many of the same one there may be. */
		readonly mostOfOne: number;
		/** How many in all. */
		readonly most: number;
		readonly sets: (facts: BuildFacts, parts: readonly PartOf<K>[]) => BuildFacts;
		readonly applies?: Question["applies"];
	},
): Question {
	const { partKind, mostOfOne, most, sets, ...plain } = question;
	const { noun } = partKinds[partKind];
	return {
		applies: () => true,
		...plain,
		kind: "many",
		partKind,
		options: ({ market }) =>
			byGroup(
				market.parts[partKind].map((part) => {
					const group = partGroup(partKind, part);
					return {
						value: [part.id],
						label: part.name,
						explanation: partSummary(partKind, part),
						most: mostOfOne,
						...(group ? { group } : {}),
					};
				}),
			),
		expected: (value, { market }) => {
			if (!Array.isArray(value)) return `a list of ids, one a ${noun}`;
			if (value.length > most) return `${most} lines at most`;
			const isKnown = value.every((id) => findPart(market, partKind, id));
			const tooMany = value.some((id) => value.filter((other) => other === id).length > mostOfOne);
			return isKnown && !tooMany ? null : `a list of ids of the market, the same ${noun} ${mostOfOne} times at most`;
		},
		sets: (facts, value, context) => sets(facts, partsOf(partKind, value, context)),
		says: (value, context) => {
			const ids = value as readonly string[];
			if (ids.length === 0) return plain.none.label;
			return [...new Set(ids)]
				.map((id) => {
					const count = ids.filter((other) => other === id).length;
					const name = findPart(context.market, partKind, id)?.name ?? id;
					return count > 1 ? `${count} x ${name}` : name;
				})
				.join(", ");
		},
	};
}

/** The parts of a list of ids, in its order. */
export function partsOf<K extends SeveralKind>(
	kind: K,
	value: AnswerValue,
	{ market }: QuestionContext,
): readonly PartOf<K>[] {
	return (value as readonly string[]).flatMap((id) => findPart(market, kind, id) ?? []);
}
