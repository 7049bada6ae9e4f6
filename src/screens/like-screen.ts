import { likeDirections, likeThisBut } from "../choose/like-this-but.ts";
import { directionWords, likeTitle, likeWords } from "../sheet/like-words.ts";
import type { Place } from "../walk/walk-state.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, list, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** What is like a board but better in one way; first the ways, then what is found. */
export function likeScreen(view: WalkView, { boardId, direction }: Extract<Place, { at: "like" }>): Screen {
	const judgement = view.judgement();
	const name = judgement.boards.find(({ board }) => board.id === boardId)?.board.name ?? boardId;
	const ways = likeDirections
		.filter((way) => way !== direction)
		.map(
			(way): Choice => ({
				label: `${direction ? "Or" : "Like this one, but"} ${directionWords[way]}`,
				event: { type: "like", boardId, direction: way },
			}),
		);
	const result = direction ? likeThisBut(judgement, view.advice(), boardId, direction) : null;
	const opened = [...(result?.found ?? []), ...(result?.nearestFallen ? [result.nearestFallen] : [])];
	return plainScreen(view, {
		id: `like:${boardId}:${direction ?? ""}`,
		title: direction ? likeTitle(name, direction) : `Like ${name}, but better in one way`,
		body: result
			? likeWords(result, judgement).flatMap((part) => [heading(part.heading), list(part.lines)])
			: [text("Pick in which way another board should be better. You then see what that would cost you.")],
		choices: [
			...opened.map(
				(one): Choice => ({
					label: `Look at ${judgement.boards.find(({ board }) => board.id === one.boardId)?.board.name ?? one.boardId}`,
					event: { type: "board", boardId: one.boardId },
				}),
			),
			...ways,
			{ label: "Back to the board", event: { type: "back" } },
		],
		enter: { words: "back to the board", event: { type: "back" } },
	});
}
