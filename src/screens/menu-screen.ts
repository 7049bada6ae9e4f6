import { leftWords } from "./boards-left.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** Everything that can be reached from anywhere, one key away from every screen. */
export function menuScreen(view: WalkView): Screen {
	return plainScreen(view, {
		id: "menu",
		title: "Where to?",
		body: [text(leftWords(view.judgement()))],
		isMenu: true,
		choices: [
			{ label: "Back to where I was", event: { type: "back" } },
			{ label: "All my answers", detail: "See them, and change any of them", event: { type: "review" } },
			{ label: "Boards left, and why others fell out", event: { type: "fell-out" } },
			{ label: "The shortlist so far", event: { type: "shortlist" } },
			{ label: "The sheet for shop and bench", event: { type: "sheet" } },
			{ label: "Settings", event: { type: "settings" } },
			{ label: "Save and leave", event: { type: "leave" } },
		],
		enter: { words: "back to where you were", event: { type: "back" } },
	});
}
