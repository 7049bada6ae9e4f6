import { plainScreen } from "./plain-screen.ts";
import { type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** Walks kept earlier, newest first. */
export function savedWalksScreen(view: WalkView): Screen {
	const { saved } = view.state;
	return plainScreen(view, {
		id: "saved-walks",
		title: saved.length > 0 ? "Which walk shall we go on with?" : "No walk is kept yet",
		body: [text("Each walk is a file on this machine. Nothing is sent anywhere.")],
		isMenu: true,
		choices: [
			...saved.map(({ file, words }) => ({ label: words, detail: file, event: { type: "open" as const, file } })),
			{ label: "Back", apart: true, event: { type: "back" as const } },
		],
		enter: { words: "back", event: { type: "back" } },
	});
}
