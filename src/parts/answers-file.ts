import * as z from "zod";
import { ownerships } from "./build.ts";
import { date, line } from "./fact.ts";
import { money } from "./money.ts";
import { partBasics } from "./part-basics.ts";
import { type PartKind, type PartOf, partKindNames, partKinds } from "./part-kinds.ts";

/** A part picked as an answer, by id, and how firmly it belongs to the build (planned when not said). */
export const partChoice = z.strictObject({ part: partBasics.id, ownership: z.enum(ownerships).optional() });
export type PartChoice = z.infer<typeof partChoice>;

export const answerValue = z.union([
	z.string().max(200),
	z.number(),
	z.array(z.string().max(200)).max(64),
	money,
	partChoice,
]);
export type AnswerValue = z.infer<typeof answerValue>;

export const answer = z.strictObject({
	/** "skipped" was passed over and counts as not sure. */
	status: z.enum(["answered", "not-sure", "skipped"]),
	value: answerValue.optional(),
	/** Who gave it. */
	by: line(60).optional(),
	note: line(400).optional(),
});
export type Answer = z.infer<typeof answer>;

/**
 * An answer that somebody else proposes; the person who builds takes it or leaves it. What was decided stays in the file,
 * so that a copy that still has it open does not bring it back.
 */
export const suggestion = z.strictObject({
	questionId: line(80),
	/** "not-sure": better leave it open. */
	status: z.enum(["answered", "not-sure"]),
	value: answerValue.optional(),
	by: line(60),
	/** Why, in a line. */
	why: line(400).optional(),
	on: date(),
	state: z.enum(["open", "taken", "left"]),
	/**
	 * One of several answers that two copies of a walk gave to one question. The question counts as not sure until the
	 * person has decided.
	 */
	rival: z.literal(true).optional(),
});
export type Suggestion = z.infer<typeof suggestion>;
/** A file holds no more suggestions than this. */
export const mostSuggestions = 500;

export type OwnPart = { [K in PartKind]: { readonly kind: K; readonly part: PartOf<K> } }[PartKind];

const ownPart = z.discriminatedUnion(
	"kind",
	partKindNames.map((kind) => z.strictObject({ kind: z.literal(kind), part: partKinds[kind].schema })) as never,
) as unknown as z.ZodType<OwnPart>;

export const answersFileSchemaName = "boardwalk/answers@2";

/** A walk as it is kept: answers by question id, and the person's own parts, so that another machine sees the same. */
export const answersFile = z.strictObject({
	schema: z.literal(answersFileSchemaName),
	/** What the walk is called, such as for whom it is. */
	name: line(80).optional(),
	asOf: date(),
	market: z.strictObject({ version: line(200), fingerprint: line(80) }),
	answers: z.record(line(80), answer),
	parts: z.array(ownPart).max(500),
	suggestions: z.array(suggestion).max(mostSuggestions).optional(),
});
export type AnswersFile = z.infer<typeof answersFile>;
export type Answers = Readonly<Record<string, Answer>>;
