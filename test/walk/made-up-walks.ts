import fc from "fast-check";
import type { Answer, AnswersFile, OwnPart, Suggestion } from "../../src/parts/answers-file.ts";
import { demo, scenarios } from "./walk-in-demo.ts";

/** Few questions and few values, so that two made-up walks often say the same and often contradict each other. */
const questionIds = ["fit/case", "fit/drives", "features/wireless", "quality/rescue", "no/question"];
const values = fc.constantFrom<NonNullable<Answer["value"]>>(
	{ part: "my-case" },
	{ part: "larkspur-wardrobe" },
	["my-drive"],
	["my-drive", "pantryshelf-dart"],
	"must",
	"a-lot",
);
const by = fc.constantFrom("builder", "Mia", "helper");
const notes = fc.constantFrom("as the label says", "a guess");
const day = fc.constantFrom("2026-11-20", "2026-11-24", "2026-11-28");

const anyAnswer: fc.Arbitrary<Answer> = fc.oneof(
	{
		weight: 4,
		arbitrary: fc.record(
			{ status: fc.constant("answered" as const), value: values, by, note: notes },
			{ requiredKeys: ["status", "value"] },
		),
	},
	fc.record(
		{ status: fc.constantFrom("not-sure" as const, "skipped" as const), by, note: notes },
		{ requiredKeys: ["status"] },
	),
) as fc.Arbitrary<Answer>;

const anySuggestion: fc.Arbitrary<Suggestion> = fc
	.record({
		questionId: fc.constantFrom(...questionIds),
		value: values,
		by,
		why: fc.option(notes, { nil: undefined }),
		on: day,
		state: fc.constantFrom("open" as const, "taken" as const, "left" as const),
		rival: fc.constantFrom(true as const, undefined, undefined),
	})
	.map(({ why, rival, ...one }) => ({
		...one,
		status: "answered" as const,
		...(why === undefined ? {} : { why }),
		...(rival ? { rival } : {}),
	}));

const anyPart: fc.Arbitrary<OwnPart> = fc.oneof(
	fc.record({
		kind: fc.constant("case" as const),
		part: fc.record(
			{
				id: fc.constantFrom("my-case", "my-case-2"),
				name: fc.constantFrom("Gatepost", "Barn"),
				boardForms: fc.constantFrom(["ATX"], ["ATX", "microATX"]),
				cardMaxLengthMm: fc.constantFrom(300, 360),
			},
			{ requiredKeys: ["id", "name"] },
		),
	}),
	fc.record({
		kind: fc.constant("drive" as const),
		part: fc.record({ id: fc.constant("my-drive"), name: fc.constantFrom("Dart", "Sling") }),
	}),
) as fc.Arbitrary<OwnPart>;

const named: readonly OwnPart[] = [
	{ kind: "case", part: { id: "my-case", name: "Wicket" } },
	{ kind: "drive", part: { id: "my-drive", name: "Pebble" } },
];

/** Any walk that a file may hold; nothing in it needs to make sense together. */
export const anyWalk: fc.Arbitrary<AnswersFile> = fc
	.record({
		name: fc.option(fc.constantFrom("For Oma", "The desk", "\u{1f5a5}".repeat(40)), { nil: undefined }),
		asOf: day,
		fingerprint: fc.constantFrom("a", "b"),
		answers: fc.dictionary(fc.constantFrom(...questionIds), anyAnswer),
		parts: fc.uniqueArray(anyPart, { selector: ({ kind, part }) => `${kind}/${part.id}`, maxLength: 3 }),
		suggestions: fc.array(anySuggestion, { maxLength: 4 }),
	})
	.map(({ name, fingerprint, suggestions, parts, ...file }) => ({
		schema: "boardwalk/answers@2" as const,
		...(name === undefined ? {} : { name }),
		...file,
		// A walk carries the own parts that its answers name.
		parts: [...parts, ...named.filter(({ part }) => !parts.some((own) => own.part.id === part.id))],
		market: { version: `market ${fingerprint}`, fingerprint },
		...(suggestions.length > 0 ? { suggestions } : {}),
	}));

/** An invented person's walk as the walk writes it today. */
export function walkOf(name: string, changes: Partial<AnswersFile> = {}): AnswersFile {
	const found = scenarios.find((scenario) => scenario.name === name);
	if (!found) throw new Error(`there is no ${name}`);
	return { ...found.file, asOf: demo.asOf, ...changes };
}
