import { mostAsked } from "../choose/when-to-stop.ts";
import { allQuestions } from "../questions/all-questions.ts";
import { askedQuestions } from "../questions/is-asked.ts";
import { waitingWords } from "../sheet/suggestion-words.ts";
import { plainScreen } from "./plain-screen.ts";
import { keptWalkWords } from "./saved-walks-screen.ts";
import { list, type Screen, text } from "./screen.ts";
import { suggestionsChoice } from "./suggestions-screen.ts";
import type { WalkView } from "./walk-view.ts";

/** What this is, what to have at hand, how long it takes. */
export function startScreen(view: WalkView): Screen {
	const asked = askedQuestions(view.build());
	const dealtWith = asked.filter(({ id }) => view.state.answers[id]).length;
	const [newest] = view.state.saved;
	const boards = view.market.parts.board;
	const invented = boards.some((board) => board.invented);
	return plainScreen(view, {
		id: "start",
		title: "Find the right board for your computer",
		body: [
			...waitingWords(view.state.suggestions).map(text),
			text(
				`About a quarter of an hour: at most ${mostAsked} questions on the short walk, ${allQuestions.length} on the long one. You leave with a shortlist, and a sheet for the shop. Stop at any time, and go on later.`,
			),
			text("Good to have at hand, as far as you have them:"),
			list([
				"the name of your processor",
				"the page of your case, or the case itself",
				"what you own already: graphics card, memory, power supply",
			]),
			text('"Not sure" is always a fine answer.'),
			...(invented
				? [
						text(
							`The ${boards.length} boards here are invented, to try the walk with. For a real one, paste the text of its page.`,
						),
					]
				: []),
			...(boards.length === 0
				? [text("There are no boards to choose from here. The sheet will say what to look for.")]
				: []),
			...(dealtWith > 0 ? [text(`${dealtWith} of ${asked.length} questions are answered already.`)] : []),
		],
		isMenu: true,
		choices: [
			...(newest && dealtWith === 0
				? [
						{
							label: `Go on with my walk: ${keptWalkWords(newest)}`,
							event: { type: "open" as const, file: newest.file },
						},
					]
				: []),
			{ label: dealtWith > 0 ? "Go on" : newest ? "Start a new walk" : "Start", event: { type: "next" } },
			...suggestionsChoice(view.state.suggestions),
			...(dealtWith === 0 && !view.state.isExample && !view.state.coaching
				? [
						{
							label: "Look at a made-up person's result first",
							detail: "Look round and try things; nothing is kept",
							event: { type: "look-at-example" as const },
						},
					]
				: []),
			...(dealtWith > 0 ? [{ label: "All my answers", event: { type: "review" as const } }] : []),
			...(view.state.saved.length > 1 || (newest && dealtWith > 0)
				? [{ label: "Open another walk", event: { type: "saved-walks" as const } }]
				: []),
			{ label: "Paste a board's page", event: { type: "paste-part", what: "board" } },
			{ label: "My parts", event: { type: "own-parts" } },
			{ label: "Settings", event: { type: "settings" } },
			{ label: "Leave", event: { type: "leave" } },
		],
		enter: newest && dealtWith === 0 ? null : { words: dealtWith > 0 ? "go on" : "start", event: { type: "next" } },
	});
}
