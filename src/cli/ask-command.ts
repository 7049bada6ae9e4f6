import { advise } from "../choose/advise.ts";
import { findOut } from "../choose/find-out.ts";
import { judge } from "../choose/judge.ts";
import { dataFolder } from "../files/own-folders.ts";
import { partsIn, replacePart } from "../files/own-parts.ts";
import { readWalk } from "../files/read-answers.ts";
import { lockWalk } from "../files/walk-lock.ts";
import { writeFile } from "../files/write-file.ts";
import type { OwnPart } from "../parts/answers-file.ts";
import type { Board } from "../parts/board.ts";
import { cleanLine } from "../parts/clean-text.ts";
import { factAt, factsOf } from "../parts/fact-list.ts";
import { valueIn } from "../parts/form-draft.ts";
import { findPart, type Market } from "../parts/market.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { currencyOf } from "../questions/money-question.ts";
import { type ShopMessage, shopMessage, shopMessages } from "../sheet/shop-questions.ts";
import { toldChanges } from "../sheet/told-words.ts";
import { marketOf } from "../walk/market-of.ts";
import { readTold, saysNothingKnown } from "../walk/read-told.ts";
import { type ToldFact, toldFact, toldPath, toldValue, untold } from "../walk/told-fact.ts";
import type { WalkState } from "../walk/walk-state.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { giveResult } from "./board-command.ts";
import { changeOwn } from "./change-own.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { loadAnswersOf, loadMarket, loadOwnParts, reading } from "./load.ts";
import type { Streams } from "./streams.ts";

/**
 * `ask [BOARD]`: what to ask the shop about each board of the shortlist, or about one board, as a message to send or to
 * read out; with --json both languages, with --to as .txt or .json.
 *
 * @throws CommandError with code 64 for a board or a language that is not there, or without --answers
 */
export function ask(args: Arguments, streams: Streams): void {
	const [id] = args.operands;
	const language = languageOf(args);
	const given = loadMarket(args, streams);
	const { state, context } = loadAnswersOf(args, given, streams);
	const market = marketOf(given, state.ownParts);
	const judgement = judge(market, foldAnswers(state.answers, { ...context, market }));
	const advice = advise(judgement, state.answers);
	if (id !== undefined) boardNamed(market, id);
	const messages =
		id === undefined
			? shopMessages(judgement, advice, state.answers, context)
			: [shopMessage(judgement, id, context, findOut(judgement, advice, state.answers))].flatMap((one) => one ?? []);
	const [first] = messages;
	const isInvented = ({ boardId }: ShopMessage) => findPart(market, "board", boardId)?.invented === true;
	const invented = messages.filter(isInvented).length;
	if (invented > 0)
		streams.err(
			messages.length === 1
				? "This board is invented: no shop sells it. What to ask is the same for a real one.\n"
				: `${invented === messages.length ? "These boards are" : "Boards marked so are"} invented: no shop sells them. What to ask is the same for real ones.\n`,
		);
	if (!first) streams.err("No board is left, so there is nobody to ask about one.\n");
	giveResult(args, streams, (ending) => {
		if (ending === ".json") return `${JSON.stringify(askJson(messages), null, "\t")}\n`;
		if (ending === ".txt")
			// What is about one board can be sent as it is.
			return id !== undefined && first
				? `${messageOf(first, language)}\n`
				: messages
						.map(
							(one) =>
								`== ${cleanLine(one.boardName)}${isInvented(one) ? " (invented)" : ""} ==\n\n${messageOf(one, language)}\n`,
						)
						.join("\n");
		throw new CommandError(exitCodes.usage, "A message is written as .txt or .json; the file's name must end so.");
	});
	for (const { boardName, later } of messages)
		if (later.length > 0)
			streams.err(`${cleanLine(boardName)}: ${later.length} more to ask once these are answered; --json lists them.\n`);
	if (first?.questions[0])
		streams.err(
			`To note an answer: boardwalk told ${first.boardId} ${first.questions[0].path} ANSWER --by WHO --answers FILE\n`,
		);
}

function languageOf({ language = "en" }: Arguments): "en" | "de" {
	if (language === "en" || language === "de") return language;
	throw new CommandError(exitCodes.usage, `--language takes en or de, and "${language}" is neither.`);
}

function messageOf({ english, german }: ShopMessage, language: "en" | "de"): string {
	const message = language === "de" ? german : english;
	return message === "" ? "All that matters of this board was asked and told." : message;
}

function askJson(messages: readonly ShopMessage[]) {
	return { schema: "boardwalk/ask@1", boards: messages };
}

/** @throws CommandError with code 64 and near ids */
function boardNamed(market: Market, id: string): Board {
	const board = findPart(market, "board", id);
	if (board) return board;
	const near = nearWords(
		id,
		market.parts.board.map((one) => one.id),
	);
	throw new CommandError(exitCodes.usage, `There is no board "${id}".${near}`);
}

/**
 * `told BOARD FACT VALUE --by WHO`: writes into the answers file what somebody told of a board, and tells what it
 * changed. A board of the person's own that is kept for all walks has the fact there too.
 *
 * @param today ISO date
 * @param folder where own parts are kept, or null
 * @throws CommandError: 64 for what cannot be read or contradicts what is stated, 73 where the file cannot be written
 */
export function told(
	args: Arguments,
	streams: Streams,
	today: string,
	folder: string | null = dataFolder(process.env, process.platform),
): void {
	const [id, named, text] = args.operands;
	if (id === undefined || named === undefined || text === undefined)
		throw new CommandError(
			exitCodes.usage,
			'It is: boardwalk told BOARD FACT VALUE --by WHO --answers my.json, such as: told my-board memory.slots 4 --by "the shop"',
		);
	if (args.by === undefined) throw new CommandError(exitCodes.usage, "Who told it? Add --by WHO.");
	if (args.answers === undefined)
		throw new CommandError(exitCodes.usage, "This needs --answers FILE: the file that a walk wrote.");
	const file = args.answers;
	const lock = lockWalk(file);
	if (typeof lock === "number")
		throw new CommandError(
			exitCodes.cannotCreate,
			`This walk is open in another window (process ${lock}). Leave it there first, or note the answer in that window.`,
		);
	try {
		note(args, streams, { boardId: id, named, text, by: args.by, today, file, folder });
	} finally {
		lock.release();
	}
}

interface Noting {
	readonly boardId: string;
	readonly named: string;
	readonly text: string;
	readonly by: string;
	readonly today: string;
	readonly file: string;
	readonly folder: string | null;
}

function note(args: Arguments, streams: Streams, noting: Noting): void {
	const { boardId, named, text, by, today, file, folder } = noting;
	const given = loadMarket(args, streams, folder);
	const { state, context, file: before } = loadAnswersOf(args, given, streams);
	if (reading(() => readWalk(file)).inSheet)
		throw new CommandError(exitCodes.usage, `${file} is a sheet. An answer is noted in the file of a walk.`);
	const market = marketOf(given, state.ownParts);
	const board = boardNamed(market, boardId);
	const path = toldPath(named);
	if (path === null) throw new CommandError(exitCodes.usage, noFactWords(named));
	if (args.replace && saysNothingKnown(text)) {
		const back = untold(given, state.ownParts, boardId, path);
		if ("problem" in back) throw new CommandError(exitCodes.usage, back.problem);
		keepFact(back, "Taken back for", "");
		return;
	}
	const { processor } = foldAnswers(state.answers, { ...context, market }).facts;
	const read = readTold(path, text, {
		board,
		processor: processor.state === "have" ? processor.part.name : null,
		asOf: today,
		currency: currencyOf(market),
	});
	if ("problem" in read) throw new CommandError(exitCodes.usage, `${path}: ${read.problem} Nothing was noted.`);
	const fact: ToldFact = {
		boardId,
		path,
		value: read.value,
		by,
		date: today,
		replace: args.replace,
		quote: args.quote ?? text,
	};
	const result = toldFact(given, state.ownParts, fact);
	if ("problem" in result) {
		const both = result.contradiction;
		throw new CommandError(
			exitCodes.usage,
			both
				? `${both.stated} ${both.told} Nothing was noted. To take what was told: add --replace.`
				: `${path}: ${result.problem}`,
		);
	}
	keepFact(result, "Noted for", `, ${toldValue(path, valueIn(result.own.part, path.split(".")))}`);

	function keepFact(
		{ own, ownParts }: { readonly own: OwnPart; readonly ownParts: readonly OwnPart[] },
		done: string,
		value: string,
	): void {
		const after: WalkState = { ...state, ownParts };
		const text = `${JSON.stringify({ ...before, asOf: today, parts: ownParts }, null, "\t")}\n`;
		reading(() => writeFile(file, text, { replace: true, ownerOnly: true }));
		if (args.parts === undefined && folder !== null) keepForAllWalks(own, args, streams, folder);
		const title = titleInSentence(factAt("board", path ?? "")?.title ?? "");
		streams.out(
			[
				`${done} ${cleanLine(own.part.name)}: ${title}${value}.`,
				...toldChanges(outcomeOf(given, state, context.asOf), outcomeOf(given, after, context.asOf), boardId),
			]
				.map((line) => `${line}\n`)
				.join(""),
		);
	}
}

function outcomeOf(given: Market, { answers, ownParts }: WalkState, asOf: string) {
	const market = marketOf(given, ownParts);
	const judgement = judge(market, foldAnswers(answers, { market, asOf }));
	return { judgement, advice: advise(judgement, answers) };
}

/** The board among those kept for all walks, if it is one of them: what is kept there counts before the walk's copy. */
function keepForAllWalks(own: OwnPart, args: Arguments, streams: Streams, folder: string): void {
	const isKept = partsIn(loadOwnParts(folder, args, streams)).some(
		(one) => one.kind === own.kind && one.part.id === own.part.id,
	);
	if (isKept) changeOwn(folder, args, streams, (parts) => ({ file: replacePart(parts, own) ?? parts, result: null }));
}

function noFactWords(named: string): string {
	const known = factsOf("board").map(({ path }) => path);
	const near = nearWords(named, known).replace("boardwalk --help", "boardwalk schema board");
	return `A board has no fact "${named}" that could be told.${near}`;
}
