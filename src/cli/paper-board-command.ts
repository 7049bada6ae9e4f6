import type { BoardJudgement } from "../choose/judge.ts";
import { stoppedBy } from "../choose/stopped-by.ts";
import { viewWalk, type WalkView } from "../screens/walk-view.ts";
import { type PaperBoard, paperBoard } from "../sheet/paper-board.ts";
import { paperBoardHtml } from "../sheet/paper-board-html.ts";
import { paperBoardSvg } from "../sheet/paper-board-svg.ts";
import { type Paper, papers } from "../sheet/paper-board-tiles.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { loadAnswersOf, loadMarket } from "./load.ts";
import type { Streams } from "./streams.ts";
import { endingOf, writeResult } from "./write-sheet.ts";

/** Whether `sheet` is asked for a board at true size instead of the sheet. */
export function asksForPaperBoard({ to, board, paper }: Arguments): boolean {
	return paper !== undefined || board !== undefined || (to !== undefined && endingOf(to) === ".svg");
}

/**
 * `sheet --to FILE.svg`, or `--paper SIZE --to FILE.html`: a board at true size, the first of the shortlist or the one
 * that --board names.
 *
 * @throws CommandError: 64 for a wrong paper, file name or board; 65 where the board's size is not known
 */
export function paperBoardOfWalk(args: Arguments, streams: Streams): void {
	const form = formOf(args);
	const market = loadMarket(args, streams);
	const { state, context } = loadAnswersOf(args, market, streams);
	const drawn = drawnBoard(viewWalk(context, state), args.board);
	if (form.to === "-") streams.out(form.write(drawn));
	else {
		const options = { replace: args.replace, ifTaken: "Take another name, or add --replace." };
		streams.err(`Written: ${writeResult(form.to, form.write(drawn), options)}\n`);
	}
}

/**
 * A board at true size, the first of the shortlist where no id is given.
 *
 * @throws CommandError: 64 for a board that is not there, 65 where its size is not known
 */
export function drawnBoard(view: WalkView, boardId: string | undefined): PaperBoard {
	const { board, assumed, subject } = boardOf(boardId, view);
	const drawn = paperBoard({ board, assumed }, subject.facts, stoppedBy(subject));
	if ("unknown" in drawn) throw new CommandError(exitCodes.badData, drawn.unknown);
	return drawn;
}

interface PaperForm {
	/** A file, or "-" for standard output. */
	readonly to: string;
	readonly write: (board: PaperBoard) => string;
}

/** What is to be written, and where; looked at before anything is worked out. */
function formOf({ to, paper }: Arguments): PaperForm {
	const ending = to === undefined || to === "-" ? "" : endingOf(to);
	if (paper === undefined) {
		if (to !== undefined && ending === ".svg") return { to, write: paperBoardSvg };
		throw new CommandError(
			exitCodes.usage,
			"A board at true size is written as .svg, or as .html with --paper a4 or --paper letter. Such as: --to board.svg",
		);
	}
	const on = paper.toLowerCase();
	if (!isPaper(on))
		throw new CommandError(
			exitCodes.usage,
			`There is no paper "${paper}". Take ${Object.keys(papers).join(" or ")}, whichever your printer holds.`,
		);
	if (to === undefined)
		throw new CommandError(exitCodes.usage, "--paper needs a file to write to. Such as: --paper a4 --to board.html");
	if (to !== "-" && ending !== ".html" && ending !== ".htm")
		throw new CommandError(
			exitCodes.usage,
			"With --paper the file's name must end in .html; a .svg is one large drawing.",
		);
	return { to, write: (board) => paperBoardHtml(board, on) };
}

function isPaper(word: string): word is Paper {
	return Object.hasOwn(papers, word);
}

/** The board that is drawn, with its assumed facts filled in. */
function boardOf(id: string | undefined, view: WalkView) {
	const { boards } = view.judgement();
	const judged = id === undefined ? firstOf(view) : boards.find(({ board }) => board.id === id);
	if (!judged) {
		const near = nearWords(
			id ?? "",
			boards.map(({ board }) => board.id),
		);
		throw new CommandError(exitCodes.usage, `There is no board "${id}".${near}`);
	}
	const { subject } = judged;
	return { board: subject.board ?? judged.board, assumed: subject.assumed, subject };
}

function firstOf(view: WalkView): BoardJudgement {
	const first = view.advice().shortlist[0]?.boardId;
	const judged = view.judgement().boards.find(({ board }) => board.id === first);
	if (judged) return judged;
	throw new CommandError(exitCodes.usage, "The shortlist is empty. Name the board to draw: --board ID");
}
