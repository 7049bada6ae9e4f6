import sample from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import { advise } from "../choose/advise.ts";
import { judge } from "../choose/judge.ts";
import {
	type LikeDirection,
	type LikeFacts,
	type LikeThisBut,
	likeDirections,
	likeThisBut,
} from "../choose/like-this-but.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { likeTitle, likeWords } from "../sheet/like-words.ts";
import type { WordsUnder } from "../sheet/what-if-words.ts";
import { marketOf } from "../walk/market-of.ts";
import { startWalk } from "../walk/walk-state.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { boardText, giveResult } from "./board-command.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { loadAnswersOf, loadMarket } from "./load.ts";
import type { Streams } from "./streams.ts";

/**
 * `like BOARD cheaper`: boards left that are like this one and better in one way, and what each costs otherwise; with
 * --json as like@1, with --to as .txt or .json.
 *
 * @throws CommandError with code 64 where no board or direction is named, or there is none such
 */
export function like(args: Arguments, streams: Streams): void {
	const [id, way] = args.operands;
	if (id === undefined || way === undefined)
		throw new CommandError(
			exitCodes.usage,
			`Like which board, and how better? Such as: boardwalk like BOARD cheaper --answers my.json. Ways: ${likeDirections.join(", ")}.`,
		);
	if (!isDirection(way))
		throw new CommandError(
			exitCodes.usage,
			`There is no way "${way}".${nearWords(way, likeDirections)} It takes ${likeDirections.join(", ")}.`,
		);
	const given = loadMarket(args, streams);
	const taken = args.answers === undefined ? null : loadAnswersOf(args, given, streams);
	const { ownParts, answers } = taken?.state ?? startWalk();
	const market = marketOf(given, ownParts);
	const judgement = judge(market, foldAnswers(answers, { market, asOf: taken?.context.asOf ?? sample.asOf }));
	const result = likeThisBut(judgement, advise(judgement, answers), id, way);
	const board = market.parts.board.find((one) => one.id === id);
	if (!result || !board) {
		const near = nearWords(
			id,
			market.parts.board.map((one) => one.id),
		);
		throw new CommandError(exitCodes.usage, `There is no board "${id}".${near}`);
	}
	if (!taken) streams.err("Without --answers FILE nothing about your build is known, so little can be compared.\n");
	const words = likeWords(result, judgement);
	giveResult(args, streams, (ending) => {
		if (ending === ".json") return `${JSON.stringify(likeJson(result, words), null, "\t")}\n`;
		if (ending === ".txt")
			return boardText({
				title: likeTitle(board.name, way),
				stopped: [],
				shows: "",
				picture: [],
				sections: words,
				last: "",
			});
		throw new CommandError(exitCodes.usage, "The result is written as .txt or .json; the file's name must end so.");
	});
}

function isDirection(word: string): word is LikeDirection {
	return (likeDirections as readonly string[]).includes(word);
}

/**
 * Boards like one but better, as plain JSON for other programs. Points are of 100 and unrounded; `from` is the board
 * asked about and `to` the other one: prices in the smallest unit, sides in mm, degrees in K. A degree without limit is
 * null, and `isEndless` says so. Ids and keys are stable; `words` are for people and may change.
 */
function likeJson(result: LikeThisBut, words: readonly WordsUnder[]): object {
	const { boardId, direction, isLeft, isKnown, found, more, leftOut, nearestFallen } = result;
	return {
		schema: "boardwalk/like@1",
		boardId,
		direction,
		isLeft,
		isKnown,
		found: found.map(({ from, to, ...one }) => ({ ...one, from: factsJson(from), to: factsJson(to) })),
		more,
		leftOut,
		nearestFallen: nearestFallen && {
			boardId: nearestFallen.boardId,
			stoppedBy: nearestFallen.stoppedBy,
			failedRuleIds: nearestFallen.failedRuleIds,
			from: factsJson(nearestFallen.from),
			to: factsJson(nearestFallen.to),
		},
		words,
	};
}

function factsJson({ price, sidesMm, form, spareK, rearUsb, usbHeaders }: LikeFacts): object {
	const finite = (value: number) => (Number.isFinite(value) ? value : null);
	return {
		priceMinor: price?.minor ?? null,
		currency: price?.currency ?? null,
		sidesMm,
		form,
		spareK: spareK && {
			low: finite(spareK.low),
			high: finite(spareK.high),
			isEndless: !Number.isFinite(spareK.low) || !Number.isFinite(spareK.high),
		},
		rearUsb,
		usbHeaders,
	};
}
