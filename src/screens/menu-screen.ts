import type { Place } from "../walk/walk-state.ts";
import { leftWords } from "./boards-left.ts";
import { exampleChoice } from "./example-choice.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Screen, text } from "./screen.ts";
import { goOnWords } from "./short-walk-words.ts";
import { sourcesChoice } from "./sources-choice.ts";
import { suggestionsChoice } from "./suggestions-screen.ts";
import type { WalkView } from "./walk-view.ts";

/** Where going on with the questions is what "back" does anyway. */
const onTheWay: readonly Place["at"][] = ["start", "question", "describe"];

/** Everything that can be reached from anywhere, one key away from every screen. */
export function menuScreen(view: WalkView): Screen {
	const goOn = goOnWords(view);
	return plainScreen(view, {
		id: "menu",
		title: "Where to?",
		body: [text(leftWords(view.judgement()))],
		isMenu: true,
		choices: [
			{ label: "Back to where I was", event: { type: "back" } },
			...exampleChoice(view.state),
			{ label: "All my answers", detail: "See them, and change any of them", event: { type: "review" } },
			...suggestionsChoice(view.state.suggestions),
			{ label: "Boards left, and boards taken out", event: { type: "fell-out" } },
			{ label: "The shortlist so far", event: { type: "shortlist" } },
			...(onTheWay.includes(view.state.returnTo[0]?.at ?? "start")
				? []
				: [
						{ label: "What could still change the shortlist", event: { type: "find-out" as const } },
						{ label: "What more money buys", event: { type: "price-line" as const } },
					]),
			{
				label: "What if one answer were another?",
				detail: "Try another answer; nothing is kept",
				event: { type: "what-if" },
			},
			{ label: "The sheet for shop and bench", event: { type: "sheet" } },
			{ label: "My parts", detail: "Paste a part's page, or type in its facts", event: { type: "own-parts" } },
			...(goOn !== null && !onTheWay.includes(view.state.returnTo[0]?.at ?? "start")
				? [{ label: goOn, event: { type: "go-on" as const } }]
				: []),
			{
				label: view.state.name === null ? "Give this walk a name" : `Name of this walk: ${view.state.name}`,
				event: { type: "name-walk" },
			},
			{
				label: "My walks",
				detail: "Name, copy or remove one, or take in a friend's",
				event: { type: "saved-walks" },
			},
			sourcesChoice(view.state),
			{ label: "Words explained", event: { type: "glossary" } },
			{ label: "Settings", event: { type: "settings" } },
			{ label: "Save and leave", event: { type: "leave" } },
		],
		enter: { words: "back to where you were", event: { type: "back" } },
	});
}
