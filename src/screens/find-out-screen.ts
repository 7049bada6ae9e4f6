import { type FindOut, findOut } from "../choose/find-out.ts";
import { worthsWhenAsked } from "../choose/next-question.ts";
import { findOutWords, foldedOpen } from "../sheet/find-out-words.ts";
import { isImportant } from "../sheet/shop-questions.ts";
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
		return words ? [{ one, ...words }] : [];
	});
	const { shown, folded } = foldedOpen(open);
	const couldChange = shown.filter(({ changes }) => changes !== "");
	const others = shown.filter(({ changes }) => changes === "");
	const questions = open.flatMap(({ one, what }): Choice[] =>
		one.about.kind === "question"
			? [{ label: `Answer now: ${what}`, event: { type: "change", questionId: one.about.questionId } }]
			: [],
	);
	const lines = (some: typeof open) =>
		list(some.map(({ what, changes, how }) => [`${what}:`, changes, how].filter(Boolean).join(" ")));
	return plainScreen(view, {
		id: "find-out",
		title: "What could still change the shortlist",
		body: [
			...(open.length === 0 ? [text("Nothing that is open could change the shortlist.")] : []),
			...(couldChange.length > 0
				? [
						heading("Could change your shortlist"),
						text("Its worth is what you gain on average, in points of 100, by choosing after you know it."),
						lines(couldChange),
					]
				: []),
			...(others.length > 0 ? [heading("Open too, with less weight"), lines(others)] : []),
			...(folded === null ? [] : [text(folded)]),
		],
		choices: [
			...questions.slice(0, mostAsked),
			...boardsToAsk(view, open).map(
				(id): Choice => ({ label: `Ask the shop about ${boardName(id)}`, event: { type: "ask-shop", boardId: id } }),
			),
			{ label: "Back", event: { type: "back" } },
			{ label: "To the shortlist", event: { type: "shortlist" } },
		],
		enter: { words: "back", event: { type: "back" } },
	});
}

/** The board that leads, and those of which something important is open, in the order of the shortlist. */
function boardsToAsk(view: WalkView, open: readonly { readonly one: FindOut }[]): readonly string[] {
	const important = open.flatMap(({ one }) =>
		one.about.kind === "board fact" && isImportant(one) ? [one.about.boardId] : [],
	);
	return view
		.advice()
		.shortlist.map(({ boardId }) => boardId)
		.filter((id, index) => index === 0 || important.includes(id));
}
