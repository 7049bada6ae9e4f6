import type { Answer, AnswersFile, OwnPart } from "../parts/answers-file.ts";
import type { Market } from "../parts/market.ts";
import { compareWords } from "../sheet/compare-words.ts";
import { type AnswersOfBoth, type ComparedSide, compareWalks, type WalksCompared } from "../sheet/compared-walks.ts";
import { marketOf } from "../walk/market-of.ts";
import type { Arguments } from "./arguments.ts";
import { boardText, giveResult } from "./board-command.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { listedJson } from "./listed-json.ts";
import type { Streams } from "./streams.ts";
import { type TwoWalks, twoWalks } from "./two-walks.ts";

/**
 * `compare A B`: the answers in which two walks differ and what each leads to, in words or with --json as compare@1;
 * with --to as .txt or .json. No file of answers is changed.
 *
 * @throws CommandError: 64 without two files, 65 and 66 for files that cannot be used
 */
export function compare(args: Arguments, streams: Streams): void {
	const two = twoWalks(args, streams, "boardwalk compare mine.json mias.json", undefined);
	const sides = { one: sideOf(two.walks.one, two.market), other: sideOf(two.walks.other, two.market) };
	const result = compareWalks(sides.one, sides.other);
	const sections = compareWords(result, sides, two.names);
	giveResult(args, streams, (ending) => {
		if (ending === ".json") return `${JSON.stringify({ ...compareJson(result, two), words: sections }, null, "\t")}\n`;
		if (ending === ".txt")
			return boardText({
				title: `${two.names.one} and ${two.names.other}, compared`,
				stopped: [],
				shows: "",
				picture: [],
				sections,
				last: "",
			});
		throw new CommandError(exitCodes.usage, "The result is written as .txt or .json; the file's name must end so.");
	});
}

function sideOf({ answers, parts, asOf }: AnswersFile, market: Market): ComparedSide {
	return { answers, ownParts: parts, context: { market: marketOf(market, parts), asOf } };
}

/**
 * A comparison as plain JSON for other programs. Points are whole, of 100; prices in the smallest unit; null where
 * something is not there. Ids and keys are stable; `words` are for people and may change.
 */
function compareJson(result: WalksCompared, { files, walks, names }: TwoWalks): object {
	const { differ, onlyOne, onlyOther, alike, parts, shortlists, onBoth } = result;
	const walkJson = (side: "one" | "other") => ({
		file: files[side],
		name: walks[side].name ?? null,
		called: names[side],
		asOf: walks[side].asOf,
	});
	const partsJson = (list: readonly OwnPart[]) => list.map(({ kind, part }) => ({ kind, id: part.id }));
	return {
		schema: "boardwalk/compare@1",
		walks: { one: walkJson("one"), other: walkJson("other") },
		answers: {
			alike,
			differ: differ.map(pairJson),
			onlyOne: onlyOne.map(pairJson),
			onlyOther: onlyOther.map(pairJson),
		},
		parts: {
			onlyOne: partsJson(parts.one),
			onlyOther: partsJson(parts.other),
			differ: parts.differ.map(({ one, facts }) => ({ kind: one.kind, id: one.part.id, facts })),
		},
		shortlists: { one: shortlists.one.map(listedJson), other: shortlists.other.map(listedJson) },
		onBoth: onBoth.map(({ boardId, one, other }) => ({ boardId, points: other.points - one.points })),
	};
}

function pairJson({ questionId, one, other }: AnswersOfBoth): object {
	return { questionId, one: answerJson(one), other: answerJson(other) };
}

function answerJson(answer: Answer | null): object | null {
	return (
		answer && { status: answer.status, value: answer.value ?? null, by: answer.by ?? null, note: answer.note ?? null }
	);
}
