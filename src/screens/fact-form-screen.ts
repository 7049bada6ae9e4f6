import { valueIn } from "../parts/form-draft.ts";
import { type FormField, type FormPath, fieldAt } from "../parts/form-fields.ts";
import { expectedWords, thingWords, wordsOf } from "../parts/form-words.ts";
import { partKinds } from "../parts/part-kinds.ts";
import { containerOf } from "../walk/form-places.ts";
import { askedPlace } from "../walk/form-update.ts";
import type { PartForm } from "../walk/part-form.ts";
import type { Place } from "../walk/walk-state.ts";
import { quoteWords } from "./part-form-screen.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";
import { whereWords } from "./where-words.ts";

type FactPlace = Extract<Place, { at: "fact-form" }>;

/** One fact of a part being filled in; a list of things, or one of them. */
export function factFormScreen(view: WalkView, place: FactPlace): Screen {
	const { form } = view.state;
	const field = form ? fieldAt(form.kind, place.path) : undefined;
	if (!form || !field)
		return plainScreen(view, {
			id: "fact-form",
			title: "Nothing is asked here",
			enter: { words: "to the form", event: { type: "back" } },
		});
	const { noun } = partKinds[form.kind];
	const value = valueIn(form.draft, place.path);
	const quote = quoteWords(form, place.path);
	const known = value === undefined ? null : wordsOf(field, value);
	const isTyped = typedByHand.has(field.typed.as);
	const isAList = field.typed.as === "things" || field.typed.as === "several";
	return plainScreen(view, {
		id: `fact:${form.kind}:${place.path.join(".")}`,
		place: placeWords(form, place, noun),
		title: field.title,
		body: [
			...(known === null || isAList || field.typed.as === "thing" ? [] : [text(`So far: ${known}`)]),
			...(quote && known !== null ? [text(quote)] : []),
			...(field.whereToFind ? [text(`Where to find it: ${whereWords(field)}`)] : []),
			...(isTyped ? [text(`${expectedWords(field)}.`)] : []),
			...(field.typed.as === "several" && field.typed.repeats ? [text("Mark a line twice for two of them.")] : []),
		],
		choices: choicesOf(form, place, field, value),
		typing: isTyped ? { kind: "value", words: "type it" } : null,
		enter:
			value === undefined
				? null
				: { words: isAList || field.typed.as === "thing" ? "go on" : "keep it", event: { type: "next" } },
		help: [
			heading("Why we ask"),
			text(`So that this ${noun} can be held against your other parts. What you leave out stays unknown.`),
			...(field.whereToFind ? [heading("Where to find it"), text(whereWords(field))] : []),
		],
	});
}

/** Ways of typing in which what is typed is the answer. */
const typedByHand: ReadonlySet<string> = new Set(["texts", "numbers", "number", "text", "date", "money", "pairs"]);

/** "Your board, fact 3 of 19", while facts are asked one after the other. */
function placeWords(form: PartForm, { path, guided }: FactPlace, noun: string): string {
	const container = containerOf(form, path);
	const asked = (container.length === 0 ? form.isGuided : guided) ? askedPlace(form, path) : null;
	const title = container.length === 0 ? `Your ${noun}` : (fieldAt(form.kind, container)?.title ?? `Your ${noun}`);
	return asked ? `${title}, fact ${asked.number} of ${asked.of}` : title;
}

function choicesOf(form: PartForm, place: FactPlace, field: FormField, value: unknown): readonly Choice[] {
	const { typed } = field;
	const isKnown = value !== undefined;
	const canBeNone =
		(typed.as === "several" || typed.as === "things" || typed.as === "texts" || typed.as === "numbers") &&
		typed.least === 0;
	const isNone = Array.isArray(value) && value.length === 0;
	const none: readonly Choice[] =
		canBeNone && !(isKnown && !isNone)
			? [
					{
						label: "There are none",
						key: "w",
						apart: true,
						...(isNone ? { chosen: true } : {}),
						event: { type: "fact", value: [] },
					},
				]
			: [];
	if (typed.as === "thing") return thingChoices(form, place.path, typed.fields, value);
	const out: Choice = isKnown
		? {
				label: "Leave it out",
				key: "n",
				detail: "It is wrong, or not sure",
				apart: true,
				event: { type: "not-on-page" },
			}
		: {
				label: "Not on the page",
				isUnsure: true,
				key: "n",
				detail:
					field.required && containerOf(form, place.path).length > 0
						? "Without it this one is left out"
						: "It stays unknown; no board is judged by it",
				apart: true,
				event: { type: "not-on-page" },
			};
	return [...linesOf(field, place.path, value), ...none, out];
}

/** The lines to pick or to mark. */
function linesOf({ typed, unit }: FormField, path: FormPath, value: unknown): readonly Choice[] {
	switch (typed.as) {
		case "choice":
			return typed.choices.map((choice) => ({
				label: unit ? `${choice} ${unit}` : String(choice),
				...(choice === value ? { chosen: true } : {}),
				event: { type: "fact", value: choice },
			}));
		case "yes or no":
			return [true, false].map((choice) => ({
				label: choice ? "Yes" : "No",
				...(choice === value ? { chosen: true } : {}),
				event: { type: "fact", value: choice },
			}));
		case "several": {
			const marked = Array.isArray(value) ? (value as readonly string[]) : [];
			return [
				...typed.choices.map(
					(choice): Choice => ({
						label: choice,
						mark: {
							count: marked.filter((one) => one === choice).length,
							most: typed.repeats ? typed.most : 1,
						},
						event: { type: "mark", value: choice, by: 1 },
					}),
				),
				...(marked.length > 0 ? [{ label: "That is all: go on", apart: true, event: { type: "next" as const } }] : []),
			];
		}
		case "things": {
			const entries = Array.isArray(value) ? (value as readonly unknown[]) : [];
			return [
				...entries.map(
					(entry, index): Choice => ({
						label: `Number ${index + 1}: ${thingWords(typed.fields, entry)}`,
						event: { type: "fact-form", path: [...path, index] },
					}),
				),
				...(entries.length < typed.most ? [{ label: "Add one", event: { type: "add-entry" as const } }] : []),
				...(entries.length > 0 && entries.length < typed.most
					? [
							{
								label: "Add another like the last",
								detail: "Only its name differs",
								event: { type: "add-entry" as const, like: true },
							},
						]
					: []),
				...(entries.length > 0 ? [{ label: "That is all: go on", apart: true, event: { type: "next" as const } }] : []),
			];
		}
		default:
			return [];
	}
}

/** The facts of one thing, each to be changed. */
function thingChoices(form: PartForm, path: FormPath, fields: readonly FormField[], value: unknown): readonly Choice[] {
	const isEntry = typeof path.at(-1) === "number";
	return [
		...fields.map((field): Choice => {
			const inner = valueIn(value, field.path);
			const open = field.required ? "needed" : "not known";
			return {
				label: `${field.title}: ${inner === undefined ? open : wordsOf(field, inner)}`,
				event: { type: "fact-form", path: [...path, ...field.path] },
			};
		}),
		{ label: "Go on", apart: true, event: { type: "next" } },
		isEntry
			? { label: "Remove this one", apart: true, event: { type: "remove-entry" } }
			: {
					label: valueIn(form.draft, path) === undefined ? "Not on the page" : "Leave it out",
					apart: true,
					event: { type: "not-on-page" },
				},
	];
}
