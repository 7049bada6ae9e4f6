import { plainScreen } from "./plain-screen.ts";
import { list, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** Parts that disagree with each other; no board can cure it, and none is taken out for it. */
export function partsDisagreeScreen(view: WalkView): Screen {
	const { partsDisagree } = view.sheet();
	const stops = partsDisagree.some(({ isStopped }) => isStopped);
	return plainScreen(view, {
		id: "parts-disagree",
		place: "Fit",
		title: stops ? "Some of your parts disagree with each other" : "Some things to know about your own parts",
		body: [
			text("No board can cure this, and none was taken out for it. It is better to know now than with the box open."),
			list(partsDisagree.map(({ text: words, advice }) => (advice ? `${words} ${advice}` : words))),
		],
		choices: [
			{ label: "Go on as it is", event: { type: "next" } },
			{ label: "Change an answer", event: { type: "review" } },
		],
		enter: { words: "go on", event: { type: "next" } },
	});
}
