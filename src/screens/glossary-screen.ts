import { glossary } from "../reference/glossary.ts";
import { titleOf } from "./marked-words.ts";
import { plainScreen } from "./plain-screen.ts";
import { heading, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** Every word that is explained, in the order of the alphabet. */
export function glossaryScreen(view: WalkView): Screen {
	return plainScreen(view, {
		id: "glossary",
		title: "Words explained",
		body: glossary.flatMap(({ word, forms, means }) => [heading(titleOf(word, forms)), text(means)]),
		choices: [{ label: "Back", event: { type: "back" } }],
		enter: { words: "back", event: { type: "back" } },
	});
}
