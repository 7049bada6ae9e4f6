import { findOut } from "../choose/find-out.ts";
import { worthsWhenAsked } from "../choose/next-question.ts";
import { findOutWords } from "../sheet/find-out-words.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, list, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** Questions that can be asked again from here at once; the rest are in the list of all answers. */
const mostAsked = 5;

/** What is still open, what it could change, and how to find it out: what could change most stands first. */
export function findOutScreen(view: WalkView): Screen {
	const { boards } = view.judgement();
	const boardName = (id: string) => boards.find(({ board }) => board.id === id)?.board.name ?? id;
	const open = findOut(
		view.judgement(),
		view.advice(),
		view.state.answers,
		worthsWhenAsked(view.state.answers, view.context),
	).flatMap((one) => {
		const words = findOutWords(one, boardName);
		return words ? [{ one, words }] : [];
	});
	const couldChange = open.filter(({ words }) => words.changes !== "");
	const others = open.filter(({ words }) => words.changes === "");
	const questions = open.flatMap(({ one, words }): Choice[] =>
		one.about.kind === "question"
			? [{ label: `Answer now: ${words.what}`, event: { type: "change", questionId: one.about.questionId } }]
			: [],
	);
	const lines = (some: typeof open) =>
		list(some.map(({ words }) => [`${words.what}:`, words.changes, words.how].filter(Boolean).join(" ")));
	return plainScreen(view, {
		id: "find-out",
		title: "What to find out, and what it could change",
		body: [
			...(open.length === 0 ? [text("Nothing that bears on the shortlist is open.")] : []),
			...(couldChange.length > 0
				? [
						heading("Could change your shortlist"),
						text("Its worth is what you gain on average, in points of 100, by choosing after you know it."),
						lines(couldChange),
					]
				: []),
			...(others.length > 0 ? [heading("Open too, with less weight"), lines(others)] : []),
		],
		choices: [
			...questions.slice(0, mostAsked),
			{ label: "Back", event: { type: "back" } },
			{ label: "To the shortlist", event: { type: "shortlist" } },
		],
		enter: { words: "back", event: { type: "back" } },
	});
}
