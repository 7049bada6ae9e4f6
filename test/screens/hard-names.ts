import quietDesk from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import type { AnswersFile } from "../../src/parts/answers-file.ts";
import { cleanLine } from "../../src/parts/clean-text.ts";
import { takeUpWalk } from "../../src/walk/saved-walk.ts";
import type { WalkContext, WalkState } from "../../src/walk/walk-state.ts";

/** Names that terminals lay out differently or not at all as their letters are counted. */
export const hardNamesBySort: Readonly<Record<string, string>> = {
	"wide letters": "矢車菊の静かな箱".repeat(8),
	"marks over letters": `Ze\u0301\u0302\u0323bra ${"e\u0301\u0327\u0330".repeat(12)}`,
	"emoji held together by joiners": "👩‍👩‍👧‍👦 👩🏽‍🚀 🏳️‍🌈 🇺🇳 1️⃣ ❤️ ☕︎ box",
	"letters from right to left": "קופסה שקטה 12 صندوق هادئ",
	"signs that turn the direction": "left \u202etfel\u202c \u2066inner\u2069 \u200fend",
	"letters of uncertain width": "α–β … ‘quoted’ № ① ±5 ★ Ω×2",
	"400 letters without a space": "Unbreakable".repeat(40).slice(0, 400),
};

/**
 * The quiet desk with a board, a case, a processor and a drive of one's own that all have one name, the last three
 * picked as answers; another walk of that name is kept beside it.
 */
export function walkWithNames(uncleaned: string, context: WalkContext): WalkState {
	// As all that is read or typed.
	const name = cleanLine(uncleaned);
	const picked = (part: unknown) => ({ status: "answered", value: part });
	const file = {
		...quietDesk,
		answers: {
			...quietDesk.answers,
			"fit/processor": picked({ part: "own-processor" }),
			"fit/case": picked({ part: "own-case" }),
			"fit/drives": picked(["own-drive"]),
		},
		parts: [
			{ kind: "processor", part: { id: "own-processor", name, socket: "Harbour 2", graphics: true } },
			{ kind: "case", part: { id: "own-case", name, boardForms: ["ATX"], fans: 2 } },
			{
				kind: "drive",
				part: { id: "own-drive", name, shape: "M.2", link: "PCI Express", lengthMm: 80, key: "M", lanes: 4 },
			},
			{ kind: "board", part: { ...ownBoard(context), id: "own-board", name } },
		],
	};
	const { state } = takeUpWalk(context, file as unknown as AnswersFile);
	return { ...state, name, saved: [{ file: "/home/somebody/walk.json", name, words: "2 of 12 answered, yesterday" }] };
}

/** All that is known of the demonstration's first board for the quiet desk's processor, so that it can be planned. */
function ownBoard({ market }: WalkContext): object {
	const board = market.parts.board.find(({ socket, form }) => socket === "Harbour 2" && form === "ATX");
	if (!board) throw new Error("the demonstration has no ATX board on Harbour 2");
	return board;
}
