import type { ShortlistEntry } from "../choose/advise.ts";
import { cardPrices, forcedCosts } from "../choose/forced-costs.ts";
import type { BoardJudgement, Judgement } from "../choose/judge.ts";
import type { Build } from "../parts/build.ts";
import { moneyText } from "../parts/money.ts";
import { partPrice } from "../parts/part-price.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { ruleById } from "../rules/all-rules.ts";
import { findingWords } from "../rules/finding-words.ts";
import { neverFirst, pointsWords, reasonsWords } from "./choice-words.ts";
import { boardNameOf, judgedOf } from "./judged-board.ts";
import { listed } from "./listed.ts";
import { powerSentence } from "./power-words.ts";
import { priceWords } from "./price-words.ts";
import { reasonWords, roleWords, scoreWords, verdictWords } from "./reason-words.ts";
import type { SheetBoard, SheetOfAll } from "./sheet.ts";
import { shortFacts } from "./short-facts.ts";

/** A board of the shortlist in words. */
export function boardOf(entry: ShortlistEntry, judgement: Judgement, { asOf }: QuestionContext): SheetBoard {
	const judged = judgedOf(entry.boardId, judgement);
	const { low, mid, high } = entry.score;
	return {
		boardId: entry.boardId,
		name: judged?.board.name ?? entry.boardId,
		invented: judged?.board.invented === true,
		role: entry.role,
		roleWords: roleWords(entry),
		verdictWords: verdictWords(entry),
		score: { low: Math.round(low), mid: Math.round(mid), high: Math.round(high) },
		scoreWords: scoreWords(entry),
		pointsWords: pointsWords(entry.score),
		behind: entry.behind
			? [...reasonsWords(entry.behind, boardNameOf(judgement)), ...(entry.canLead === false ? [neverFirst] : [])]
			: [],
		priceWords: priceWords(judged?.subject.board, asOf),
		price: (judged?.subject.board && partPrice(judged.subject.board)?.price) ?? null,
		forced: judged ? forcedWords(judged, judgement) : [],
		power: judged ? powerInShort(judged, judgement.build) : null,
		facts: judged ? shortFacts(judged.subject.board ?? judged.board) : "",
		mind: (judged?.findings ?? [])
			.filter(
				({ ruleId, verdict, severity }) =>
					verdict === "fits" && severity === "plan-around" && ruleById(ruleId)?.severity === "stops",
			)
			.map((finding) => perhaps(findingWords(finding), judged?.unsettledRuleIds.includes(finding.ruleId))),
		for: entry.for.map(reasonWords),
		against: entry.against.map(reasonWords),
		unknown: entry.unknown.map(reasonWords),
	};
}

/** What holds only if an open answer turns out so is never told as if it were sure. */
function perhaps(words: string, isUnsettled = false): string {
	return isUnsettled ? `Perhaps: ${words}` : words;
}

/** Reasons that stand with every board of a list of several. */
export function reasonsOfAll(boards: readonly SheetBoard[]): SheetOfAll {
	const [first, ...others] = boards;
	const shared = (of: (board: SheetBoard) => readonly string[]) =>
		first && others.length > 0 ? of(first).filter((text) => others.every((board) => of(board).includes(text))) : [];
	return {
		for: shared((board) => board.for),
		against: shared((board) => board.against),
		unknown: shared((board) => board.unknown),
	};
}

/** A board without the reasons that stand once for all. */
export function withoutReasons(board: SheetBoard, ofAll: SheetOfAll): SheetBoard {
	const own = (of: (one: SheetOfAll) => readonly string[]) => of(board).filter((text) => !of(ofAll).includes(text));
	return {
		...board,
		for: own((one) => one.for),
		against: own((one) => one.against),
		unknown: own((one) => one.unknown),
	};
}

/** What the board makes its buyer pay for besides, a sentence each. */
function forcedWords({ subject, possibleWorlds }: BoardJudgement, { build, market }: Judgement): readonly string[] {
	const worlds = possibleWorlds.flatMap((index) => build.worlds[index]?.facts ?? []);
	const currency = (subject.board && partPrice(subject.board)?.price.currency) ?? "";
	const { priced, unpriced, perhaps } = forcedCosts(subject, worlds, cardPrices(market, currency));
	const extras = priced.map(
		({ words, partName, minor }) => `${words} (${partName}, ${moneyText({ minor, currency })})`,
	);
	return [
		...(extras.length > 0 ? [`With it you also buy ${listed(extras)}.`] : []),
		...(unpriced.length > 0 ? [`With it you also buy ${listed(unpriced)}; the price is not known here.`] : []),
		...(perhaps.length > 0 ? [`Perhaps also ${listed(perhaps)}.`] : []),
	];
}

/** Power and heat of a board as a sentence; null where nothing is known of the processor's watts. */
function powerInShort(judged: BoardJudgement, { facts }: Build): string | null {
	const steady = judged.subject.measures?.power?.(facts).steady;
	return steady ? powerSentence(steady, facts.sessionLength) : null;
}
