import { partKinds } from "../parts/part-kinds.ts";
import type { Place } from "../walk/walk-state.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** Where the text of a page is pasted. */
export function readPartScreen(view: WalkView, { what }: Extract<Place, { at: "read-part" }>): Screen {
	const { pasted } = view.state;
	const isList = what === "support-list";
	const noun = isList ? "list" : partKinds[what].noun;
	const lines = pasted?.lines === 1 ? "1 line" : `${pasted?.lines} lines`;
	return plainScreen(view, {
		id: `read-part:${what}`,
		title: isList ? "Paste the board's list of processors" : `Paste the page of your ${noun}`,
		body: [
			text(
				isList
					? "On the maker's support page, mark the whole list of processors, copy it, and paste it here."
					: `Open the ${noun}'s page with its specifications. Mark all of it, copy it, and paste it here.`,
			),
			...(pasted ? [text(`${lines} taken. Paste more, or press Enter to read.`)] : []),
		],
		choices: [
			...(pasted
				? [
						{ label: "That is all: read it", key: "g", event: { type: "read" as const } },
						{ label: "Throw the text away", key: "z", event: { type: "clear-paste" as const } },
					]
				: []),
			...(isList
				? []
				: [
						{
							label: "Fill in a form instead",
							key: "f",
							apart: true,
							event: { type: "new-part" as const, kind: what },
						} satisfies Choice,
					]),
			{ label: "Back", key: "x", apart: true, event: { type: "back" } },
		],
		typing: { kind: "page", words: "paste the text; end it with two empty lines, or a line with only a dot" },
		enter: pasted ? { words: "read it", event: { type: "read" } } : null,
		help: [
			heading("What happens with it"),
			text(
				"The text is read on this machine and sent nowhere. You see what was understood, and nothing is kept before you say so.",
			),
			heading("What to copy"),
			text("Take the whole page rather than too little. What tells nothing is left aside."),
		],
	});
}
