import { fellOutBlocks, leftWords } from "./boards-left.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** Every board that fell out, grouped by why; each can be opened. */
export function fellOutScreen(view: WalkView): Screen {
	const judgement = view.judgement();
	return plainScreen(view, {
		id: "fell-out",
		title: "Boards that fell out, and why",
		body: [text(leftWords(judgement)), ...fellOutBlocks(judgement)],
		choices: judgement.boards
			.filter(({ verdict }) => verdict === "does-not-fit")
			.map(({ board }) => ({ label: `Open ${board.name}`, event: { type: "board" as const, boardId: board.id } })),
		enter: { words: "go back", event: { type: "back" } },
	});
}
