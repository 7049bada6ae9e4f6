import { cleanLine } from "../parts/clean-text.ts";
import type { SavedSummary } from "../walk/kept-walk-places.ts";
import type { Place } from "../walk/walk-state.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, pairs, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** A kept walk in a line: its name, where it has one, and how far it came. */
export function keptWalkWords({ name, words }: SavedSummary): string {
	return name ? `${name}: ${words}` : words;
}

/** Walks kept earlier, newest first; a line opens the page of one. */
export function savedWalksScreen(view: WalkView): Screen {
	const { saved, canBringBack } = view.state;
	return plainScreen(view, {
		id: "saved-walks",
		title: saved.length > 0 ? "Your walks" : "No walk is kept yet",
		body: [
			text("Each walk is a file on this machine. Nothing is sent anywhere."),
			...(saved.length > 0 ? [text("Pick one to go on with it, to name it, to copy it or to remove it.")] : []),
		],
		isMenu: true,
		choices: [
			...saved.map(
				(walk): Choice => ({
					label: keptWalkWords(walk),
					detail: cleanLine(walk.file),
					event: { type: "kept-walk", file: walk.file },
				}),
			),
			...(canBringBack
				? [{ label: "Bring back the walk removed last", apart: true, event: { type: "bring-walk-back" as const } }]
				: []),
			{
				label: "Take in a friend's walk",
				detail: "A file of answers, or a sheet that has them in it",
				apart: true,
				event: { type: "take-walk" },
			},
			{ label: "Back", apart: true, event: { type: "back" } },
		],
		enter: { words: "back", event: { type: "back" } },
	});
}

/** One kept walk, and what can be done with it. */
export function keptWalkScreen(view: WalkView, { file }: Extract<Place, { at: "kept-walk" }>): Screen {
	const walk = view.state.saved.find((one) => one.file === file);
	const id = `kept-walk:${file}`;
	if (!walk)
		return plainScreen(view, {
			id,
			title: "This walk is not here any more",
			enter: { words: "back to your walks", event: { type: "back" } },
		});
	return plainScreen(view, {
		id,
		place: "Your walks",
		title: walk.name ?? "A walk without a name",
		body: [
			pairs([
				["How far", walk.words],
				["File", cleanLine(walk.file)],
			]),
		],
		isMenu: true,
		choices: [
			{ label: "Go on with it", event: { type: "open", file } },
			{ label: walk.name ? "Change its name" : "Give it a name", event: { type: "name-walk", file } },
			{ label: "Copy it", detail: "To try things; the first one stays as it is", event: { type: "copy-walk" } },
			{ label: "Remove it", detail: "You can bring it back", event: { type: "remove-walk" } },
			{ label: "Back to your walks", apart: true, event: { type: "saved-walks" } },
		],
		enter: { words: "back to your walks", event: { type: "saved-walks" } },
	});
}

/** The name of a walk is typed. */
export function nameWalkScreen(view: WalkView, { file }: Extract<Place, { at: "name-walk" }>): Screen {
	const { state } = view;
	const name = file === null ? state.name : (state.saved.find((one) => one.file === file)?.name ?? null);
	return plainScreen(view, {
		id: `name-walk:${file ?? ""}`,
		title: "What shall this walk be called?",
		body: [
			...(name === null ? [] : [text(`It is called ${name} now.`)]),
			text("Such as for whom the computer is. The file keeps its own name."),
		],
		choices: [{ label: "Leave it as it is", key: "n", apart: true, event: { type: "back" } }],
		typing: { kind: "value", words: "type a name" },
		enter: { words: "leave it as it is", event: { type: "back" } },
	});
}

/** The path of a friend's file is typed. */
export function takeWalkScreen(view: WalkView): Screen {
	return plainScreen(view, {
		id: "take-walk",
		title: "Where is the file?",
		body: [
			text("Type where the file is, such as mia.json. A sheet written as HTML or JSON has the answers in it too."),
			text("You get a copy among your walks. The file itself stays as it is."),
		],
		choices: [{ label: "Back", key: "n", apart: true, event: { type: "back" } }],
		typing: { kind: "value", words: "type the file's name" },
		enter: { words: "back", event: { type: "back" } },
		help: [
			heading("What this is for"),
			text("A friend can send you a walk. You can look at it, go on with it, and keep your own beside it."),
		],
	});
}
