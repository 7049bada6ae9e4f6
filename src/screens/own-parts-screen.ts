import { type Evidence, knownFields, valueIn } from "../parts/form-draft.ts";
import { leadingFields } from "../parts/form-fields.ts";
import { thingWords, wordsOf } from "../parts/form-words.ts";
import { type PartKind, partKindNames, partKinds } from "../parts/part-kinds.ts";
import { toldOf, toldWords } from "../parts/told-evidence.ts";
import { readKinds } from "../reading/part-reading.ts";
import { ownPart, ownPartsOf } from "../walk/own-parts-list.ts";
import { isUnkept } from "../walk/part-form.ts";
import type { Place } from "../walk/walk-state.ts";
import { factsKnown, kindLabel, ownPartWords, pricesWords } from "./own-part-words.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, list, pairs, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";
import { cutQuote } from "./where-words.ts";

/** From so many parts on they are found by typing. */
const manyParts = 8;

/** The person's own parts, and the ways to bring one in. */
export function ownPartsScreen(view: WalkView): Screen {
	const { state } = view;
	const own = ownPartsOf(state);
	const labels = own.map(({ kind, part }) => `${kindLabel(kind)}: ${part.name}`);
	return plainScreen(view, {
		id: "own-parts",
		title: "My parts",
		body: [
			text(
				own.length > 0
					? "Parts you brought in yourself. Pick one to look at it or to change it."
					: "You have no parts of your own yet. Paste a part's page, or fill in a form.",
			),
		],
		choices: [
			...(isUnkept(state.form)
				? [
						{
							label: `Go on with the ${partKinds[state.form.kind].noun} that is not kept yet`,
							event: { type: "part-form" as const },
						},
					]
				: []),
			...own.map(({ kind, part }, index): Choice => {
				const label = labels[index] ?? part.name;
				const isTwice = labels.filter((other) => other === label).length > 1;
				return {
					label: isTwice ? `${label} (${part.id})` : label,
					detail: ownPartWords({ kind, part } as (typeof own)[number], view.context.asOf),
					event: { type: "own-part", kind, id: part.id },
				};
			}),
			...(state.removed
				? [
						{
							label: `Bring back ${state.removed.own.part.name}`,
							detail: "It was removed just now",
							apart: true,
							event: { type: "bring-back" as const },
						},
					]
				: []),
			...readKinds.map(
				(kind): Choice => ({
					label: `Paste a ${partKinds[kind].noun}'s page`,
					apart: true,
					event: { type: "paste-part", what: kind },
				}),
			),
			{ label: "Fill in a form", detail: "For any kind of part", apart: true, event: { type: "new-part" } },
			{ label: "Back", apart: true, event: { type: "back" } },
		],
		typing: own.length > manyParts ? { kind: "words", words: "or some letters of a name" } : null,
		enter: { words: "back", event: { type: "back" } },
		help: [
			heading("What this is for"),
			text("The boards shown at first are invented. With parts of your own, real ones are held against each other."),
			heading("How a part comes in"),
			text(
				"Copy the text of its page and paste it here. You then see what was understood, and put right what is wrong.",
			),
		],
	});
}

/** Which kind of part a form is for. */
export function newPartScreen(view: WalkView): Screen {
	return plainScreen(view, {
		id: "new-part",
		title: "What kind of part is it?",
		body: [text("The facts that matter most come first. Any of them can be left out.")],
		choices: [
			...partKindNames.map((kind): Choice => ({ label: kindLabel(kind), event: { type: "new-part", kind } })),
			{ label: "Back", apart: true, event: { type: "back" } },
		],
	});
}

/** One own part: what is known of it in short, and what can be done with it. */
export function ownPartScreen(view: WalkView, { kind, id, page }: Extract<Place, { at: "own-part" }>): Screen {
	const own = ownPart(view.state, kind, id);
	if (!own)
		return plainScreen(view, {
			id: `own-part:${kind}:${id}`,
			title: "This part is not here any more",
			enter: { words: "back to my parts", event: { type: "back" } },
		});
	const { part } = own;
	if (page === "facts") return ownFactsScreen(view, kind, id);
	const open = leadingFields(kind).filter(({ path }) => valueIn(part, path) === undefined && path[0] !== "price");
	return plainScreen(view, {
		id: `own-part:${kind}:${id}`,
		place: "My parts",
		title: part.name,
		body: [
			pairs([
				["What it is", partKinds[kind].noun],
				["Known", `${factsKnown(kind, part)} facts`],
				["Price", pricesWords(part, view.context.asOf)],
			]),
			...(open.length > 0 ? [heading("Not known, and worth having"), list(open.map(({ title }) => title))] : []),
		],
		choices: [
			...(kind === "board" ? [{ label: "See whether it fits", event: { type: "board" as const, boardId: id } }] : []),
			{ label: "All that is known of it", event: { type: "own-part", kind, id, page: "facts" } },
			{ label: "Change or add a fact", event: { type: "edit-part" } },
			{
				label: "Add an offer",
				detail: "What a shop or a seller asks for it",
				event: { type: "add-offer" },
			},
			{ label: "Copy it", detail: "For one that differs in little", event: { type: "copy-part" } },
			{ label: "Remove it", detail: "You can bring it back at once", event: { type: "remove-part" } },
			{ label: "Back to my parts", apart: true, event: { type: "own-parts" } },
		],
		enter: { words: "back to my parts", event: { type: "next" } },
	});
}

function ownFactsScreen(view: WalkView, kind: PartKind, id: string): Screen {
	const part = ownPart(view.state, kind, id)?.part;
	const fields = knownFields(kind, part);
	const evidence =
		(part as { evidence?: Record<string, { quote?: string; by?: string; date?: string }> }).evidence ?? {};
	const read = fields.flatMap(({ path, title }) => {
		const found = evidence[path.join(".")];
		if (!found) return [];
		const told = toldOf(found as Evidence);
		if (told) return [`${title}: ${toldWords(told)}`];
		const from = found.quote ? `read as "${cutQuote(found.quote)}"` : `told by the ${found.by ?? "person"}`;
		return [`${title}: ${from}${found.date ? `, ${found.date}` : ""}`];
	});
	return plainScreen(view, {
		id: `own-part-facts:${kind}:${id}`,
		place: "My parts",
		title: `All that is known of ${part?.name ?? "it"}`,
		body: [
			pairs(
				fields.map((field) => {
					const value = valueIn(part, field.path);
					return [
						field.title,
						field.typed.as === "things" && Array.isArray(value) && value.length > 0
							? value.map((entry, index) => `(${index + 1}) ${thingWords(entryFields(field), entry)}`).join(". ")
							: wordsOf(field, value),
					];
				}),
			),
			...(read.length > 0 ? [heading("How it is known"), list(read)] : []),
		],
		choices: [{ label: "Back", event: { type: "back" } }],
		enter: { words: "back", event: { type: "back" } },
	});
}

function entryFields({ typed }: ReturnType<typeof knownFields>[number]) {
	return typed.as === "things" ? typed.fields : [];
}
