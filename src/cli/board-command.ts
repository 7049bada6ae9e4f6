import sample from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import { type BoardSubject, boardSubjects } from "../choose/findings-of-market.ts";
import { stoppedBy } from "../choose/stopped-by.ts";
import type { Build } from "../parts/build.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { listed } from "../sheet/listed.ts";
import { wrapText } from "../sheet/wrap-text.ts";
import { marketOf } from "../walk/market-of.ts";
import { startWalk } from "../walk/walk-state.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { loadAnswersOf, loadMarket } from "./load.ts";
import type { Streams } from "./streams.ts";
import { endingOf, writeResult } from "./write-sheet.ts";

/** Columns of what a command prints. */
const width = 78;

/** The board that a command is about, and the build it is held against. */
export interface BoardOfCommand {
	readonly board: BoardSubject["board"];
	readonly build: Build;
	/** Labels of the rules that stop it. */
	readonly stopped: readonly string[];
	/** Behind what a page is of: "Chandelier (invented)". */
	readonly name: string;
}

/**
 * Finds the board a command names, and folds the answers that --answers names.
 *
 * @param command its name, for an example
 * @param little what little can be done without answers, such as "planned"
 * @throws CommandError with code 64 where no board is named, or none has this id
 */
export function boardOfCommand(
	args: Arguments,
	streams: Streams,
	{ command, little }: { readonly command: string; readonly little: string },
): BoardOfCommand {
	const [id] = args.operands;
	if (id === undefined)
		throw new CommandError(exitCodes.usage, `Of which board? Such as: boardwalk ${command} BOARD --answers my.json`);
	const market = loadMarket(args, streams);
	const taken = args.answers === undefined ? null : loadAnswersOf(args, market, streams);
	const { ownParts, answers } = taken?.state ?? startWalk();
	const all = marketOf(market, ownParts);
	const subject = boardSubjects(all).find(({ board: one }) => one.id === id);
	if (!subject) {
		const near = nearWords(
			id,
			all.parts.board.map((one) => one.id),
		);
		throw new CommandError(exitCodes.usage, `There is no board "${id}".${near}`);
	}
	if (!taken) streams.err(`Without --answers FILE nothing about your build is known, so little can be ${little}.\n`);
	const build = foldAnswers(answers, { market: all, asOf: taken?.context.asOf ?? sample.asOf });
	const { board } = subject;
	return {
		board,
		build,
		stopped: stoppedBy({ ...subject, facts: build.facts }),
		name: `${board.name}${board.invented ? " (invented)" : ""}`,
	};
}

/** Prints a result, as text or with --json as JSON, or writes it to the file --to names, in the form of its ending. */
export function giveResult(args: Arguments, streams: Streams, form: (ending: string) => string): void {
	if (args.to === undefined || args.to === "-") streams.out(form(args.json ? ".json" : ".txt"));
	else {
		const options = { replace: args.replace, ifTaken: "Take another name, or add --replace." };
		streams.err(`Written: ${writeResult(args.to, form(endingOf(args.to)), options)}\n`);
	}
}

/** Sections in words, and what goes before and after them, as lines of text. */
export function boardText(page: {
	readonly title: string;
	readonly stopped: readonly string[];
	/** What the page still shows of a board that does not fit. */
	readonly shows: string;
	readonly picture: readonly string[];
	readonly sections: readonly { readonly heading: string; readonly lines: readonly string[] }[];
	/** Said last; empty where nothing is. */
	readonly last: string;
}): string {
	const { title, stopped, shows, picture, sections, last } = page;
	const warning =
		stopped.length > 0 ? ["", ...wrapText(`This board does not fit: ${listed(stopped)}. ${shows}`, width)] : [];
	const words = sections.flatMap(({ heading, lines }) => [
		"",
		heading,
		...lines.flatMap((line) => wrapText(`- ${line}`, width, { indent: "  " })),
	]);
	const end = last === "" ? [] : ["", ...wrapText(last, width)];
	return `${[title, ...warning, ...picture, ...words, ...end].join("\n")}\n`;
}
