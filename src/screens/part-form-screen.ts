import { evidencePath, knownFields, valueIn } from "../parts/form-draft.ts";
import { type FormField, type FormPath, fieldAt, formFields, leadingFields } from "../parts/form-fields.ts";
import { wordsOf } from "../parts/form-words.ts";
import { partKinds } from "../parts/part-kinds.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import { isMadeOfFacts } from "../walk/form-update.ts";
import { factPath, isUnkept, type PartForm } from "../walk/part-form.ts";
import type { Place } from "../walk/walk-state.ts";
import { factsKnown } from "./own-part-words.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, list, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";
import { cutQuote, whereWords } from "./where-words.ts";

/** A place of a form that is not there any more. */
function closedForm(view: WalkView, id: string): Screen {
	return plainScreen(view, {
		id,
		title: "This form is closed",
		enter: { words: "to my parts", event: { type: "back" } },
	});
}

/** What was read or entered of a part, to be put right and kept: what is not clear comes first. */
export function partFormScreen(view: WalkView, { page }: Extract<Place, { at: "part-form" }>): Screen {
	const { form } = view.state;
	if (!form) return closedForm(view, "part-form");
	if (page === "all") return allFactsScreen(view, form);
	const { kind, doubts, unread } = form;
	const { noun } = partKinds[kind];
	const known = knownFields(kind, form.draft);
	const missing = leadingFields(kind).filter(
		({ path }) => valueIn(form.draft, path) === undefined && !isDoubted(form, path),
	);
	return plainScreen(view, {
		// Another page read is another screen: the marked line begins at its top again.
		id: `part-form:${kind}:${form.originalId ?? ""}:${form.facts.length}:${form.facts[0]?.quote.slice(0, 60) ?? ""}`,
		place: `Your ${noun}`,
		title: form.origin === "page" ? "Is this what the page says?" : `Your ${noun} so far`,
		body: [text(summaryWords(form))],
		choices: [
			...doubts.map((doubt, index): Choice => {
				const title = titleOf(form, factPath(doubt.fact));
				return {
					label: `Which is right? ${title}${alike(form, index)}`,
					detail: `Line ${doubt.line}: "${cutQuote(doubt.quote)}"`,
					group: "Not clear yet",
					event: { type: "doubt", index },
				};
			}),
			...known.map((field): Choice => factChoice(form, field, "Known so far")),
			...missing.map(
				({ path, title }): Choice => ({
					label: `${title}: not known`,
					group: "Not known, and worth having",
					event: { type: "fact-form", path },
				}),
			),
			{
				label: form.origin === "own" ? "Keep the changes" : `Keep this ${noun}`,
				key: "k",
				...(doubts.length > 0 ? { detail: "What is not clear stays unknown" } : {}),
				apart: true,
				event: { type: "keep" },
			},
			...(unread.length > 0
				? [{ label: `Lines not understood: ${unread.length}`, apart: true, event: { type: "unread" as const } }]
				: []),
			...(kind === "board"
				? [
						{
							label: "Paste its processor list",
							apart: true,
							event: { type: "paste-part" as const, what: "support-list" as const },
						},
					]
				: []),
			{ label: "Other facts that can be told", apart: true, event: { type: "part-form", page: "all" } },
			{ label: "Leave it", apart: true, event: { type: "back" } },
		],
		help: [
			heading("What to do here"),
			text("Look at what is not clear first. Then go over the facts, and pick one that is wrong to change it."),
			heading("If you are not sure"),
			text("Leave a fact out. It then stays unknown, and no board is judged by it."),
			...quotesOf(form),
		],
	});
}

function summaryWords(form: PartForm): string {
	const known = factsKnown(form.kind, form.draft);
	const facts =
		known === 0 ? "Nothing is known yet." : known === 1 ? "One fact is known." : `${known} facts are known.`;
	const { length } = form.doubts;
	const open = length === 0 ? "" : length === 1 ? " One is not clear yet." : ` ${length} are not clear yet.`;
	return `${facts}${open} ${isUnkept(form) ? "Nothing is kept before you say so (k)." : "Pick a fact to change it."}`;
}

/** Two doubts about the same list are told apart by number. */
function alike({ doubts }: PartForm, index: number): string {
	const same = doubts.flatMap(({ fact }, at) => (titleKey(fact) === titleKey(doubts[index]?.fact ?? "") ? [at] : []));
	return same.length > 1 ? ` (${same.indexOf(index) + 1})` : "";
}

function titleKey(fact: string): string {
	return factPath(fact)
		.filter((key) => typeof key === "string")
		.join(".");
}

/** Title of a fact; one inside a list or a thing names that too. */
export function titleOf({ kind }: PartForm, path: FormPath): string {
	const titles = path.flatMap((_, index) => {
		if (typeof path[index] === "number") return [];
		const field = fieldAt(kind, path.slice(0, index + 1));
		return field ? [field.title] : [];
	});
	const [first = "A fact", ...others] = titles;
	return [first, ...others.map(titleInSentence)].join(", ");
}

function isDoubted({ doubts }: PartForm, path: FormPath): boolean {
	return doubts.some(({ fact }) => evidencePath(factPath(fact)) === path.join("."));
}

/** A line for a fact, with the words of the page it was read from. */
function factChoice(form: PartForm, field: FormField, group: string): Choice {
	const value = valueIn(form.draft, field.path);
	const detail = quoteWords(form, field.path);
	return {
		label: `${field.title}: ${value === undefined ? "not known" : wordsOf(field, value)}`,
		...(detail ? { detail } : {}),
		group,
		event: { type: "fact-form", path: field.path },
	};
}

/** Where a fact was read: line and quote, or null. For an entry of a list its own, as long as nobody changed the list. */
export function quoteWords(form: PartForm, path: FormPath): string | null {
	const at = evidencePath(path);
	const evidence = Object.entries(form.evidence).find(([key]) => key === at || key.startsWith(`${at}.`))?.[1];
	if (!evidence?.quote) return null;
	const standing = evidence.standing === "assumed" ? "Follows from a standard. " : "";
	const facts = form.facts.filter(({ fact }) => {
		const key = evidencePath(factPath(fact));
		return key === at || key.startsWith(`${at}.`);
	});
	const [first, ...others] =
		typeof path.at(-1) === "number" ? facts.slice(Number(path.at(-1)), Number(path.at(-1)) + 1) : facts;
	if (!first) return `${standing}Read as "${cutQuote(evidence.quote)}"`;
	const more = others.length > 0 ? ` and ${others.length} more` : "";
	return `${standing}Line ${first.line}: "${cutQuote(first.quote)}"${more}`;
}

/** All that was read with its line, for the help. */
function quotesOf(form: PartForm) {
	const lines = form.facts.map(
		({ fact, line, quote }) => `${titleOf(form, factPath(fact))}: line ${line}, "${cutQuote(quote)}"`,
	);
	return lines.length > 0 ? [heading("Where it was read"), list(lines)] : [];
}

/** The facts that matter less, found by their words. */
function allFactsScreen(view: WalkView, form: PartForm): Screen {
	const { noun } = partKinds[form.kind];
	const leading = leadingFields(form.kind);
	return plainScreen(view, {
		id: `part-form-all:${form.kind}`,
		place: `Your ${noun}`,
		title: "Which fact do you want to add?",
		body: [text("Few pages tell all of these. Add what you know and care for.")],
		choices: [
			...formFields(form.kind)
				.filter((field) => !leading.includes(field))
				.map((field): Choice => {
					const { group: _, ...choice } = factChoice(form, field, "");
					return choice;
				}),
			{ label: "Back to what is known", apart: true, event: { type: "part-form" } },
		],
		typing: { kind: "words", words: "or some letters of a fact" },
		enter: { words: "back to what is known", event: { type: "part-form" } },
	});
}

/** Letters that pick a line where a fact can be typed too; none is a command, and n leaves it open. */
const lineKeys = ["w", "x", "y", "z", "t", "u", "v", "p", "o", "l"];

/** Something the page leaves open. */
export function doubtScreen(view: WalkView, { index }: Extract<Place, { at: "doubt" }>): Screen {
	const { form } = view.state;
	const doubt = form?.doubts[index];
	if (!form || !doubt) return closedForm(view, "doubt");
	const path = factPath(doubt.fact);
	const field = fieldAt(form.kind, path);
	const might = field
		? doubt.might
				.map((value) => ({ value, label: wordsOf(field, value) }))
				.filter(({ label }, at, all) => all.findIndex((other) => other.label === label) === at)
				.slice(0, lineKeys.length)
		: [];
	const canType = field !== undefined && !isMadeOfFacts(field);
	const lists = path.findIndex((key) => typeof key === "number");
	const byHand = lists < 0 ? path : path.slice(0, lists);
	return plainScreen(view, {
		id: `doubt:${index}:${doubt.fact}`,
		place: `Not clear yet, ${index + 1} of ${form.doubts.length}`,
		title: `Which is right: ${titleInSentence(titleOf(form, path))}?`,
		body: [
			text(`Line ${doubt.line} of the page: "${cutQuote(doubt.quote)}"`),
			text(doubt.why),
			...(field ? [text(`Where to find it: ${whereWords(field)}`)] : []),
		],
		choices: [
			...might.map(
				({ value, label }, at): Choice => ({
					label,
					...(canType ? { key: lineKeys[at] as string } : {}),
					event: { type: "fact", value },
				}),
			),
			...(canType || !field
				? []
				: [{ label: "Fill it in by hand", apart: true, event: { type: "fact-form" as const, path: byHand } }]),
			{
				label: "Leave it open",
				isUnsure: true,
				key: "n",
				detail: "It stays unknown; no board is judged by it",
				apart: true,
				event: { type: "not-on-page" },
			},
		],
		typing: canType ? { kind: "value", words: "type it" } : null,
		help: [
			heading("Why we ask"),
			text(
				"The page can be read in more than one way here. A fact that is only guessed could make a wrong board look right.",
			),
		],
	});
}

/** More lines than this are counted only; own convention. */
const mostLinesShown = 200;

/** Lines of the page of which nothing was understood. */
export function unreadScreen(view: WalkView): Screen {
	const { form } = view.state;
	if (!form) return closedForm(view, "unread");
	const lines = form.unread.slice(0, mostLinesShown).map(({ line, text: words }) => `${line}: ${cutQuote(words)}`);
	const more = form.unread.length - lines.length;
	return plainScreen(view, {
		id: "unread",
		place: `Your ${partKinds[form.kind].noun}`,
		title: "Lines not understood",
		body: [
			text("Most of these tell nothing that matters here. If one does, add its fact yourself."),
			...(lines.length > 0 ? [list(lines)] : []),
			...(more > 0 ? [text(`And ${more} more lines.`)] : []),
		],
		choices: [{ label: "Back to what is known", event: { type: "part-form" } }],
		enter: { words: "back to what is known", event: { type: "part-form" } },
	});
}

/** Asked once when a part is not kept yet. */
export function leaveFormScreen(view: WalkView): Screen {
	const { form } = view.state;
	if (!form) return closedForm(view, "leave-form");
	const { noun } = partKinds[form.kind];
	return plainScreen(view, {
		id: "leave-form",
		title: `Keep this ${noun}?`,
		body: [
			text(`What you entered of this ${noun} is not kept yet.`),
			...(form.originalId === null ? [text("If you go back now, it stays open under My parts until you leave.")] : []),
		],
		isMenu: true,
		choices: [
			{ label: "Keep it", event: { type: "keep" } },
			{ label: "Go on with it", event: { type: "part-form" } },
			{ label: "Leave it, and lose what was entered", event: { type: "drop-form" } },
		],
		enter: { words: "keep it", event: { type: "keep" } },
	});
}
