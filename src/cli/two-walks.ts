import { basename } from "node:path";
import { nameOf } from "../files/saved-walks.ts";
import type { AnswersFile } from "../parts/answers-file.ts";
import { cleanLine } from "../parts/clean-text.ts";
import type { Market } from "../parts/market.ts";
import type { SideNames } from "../sheet/merge-words.ts";
import type { Arguments } from "./arguments.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { loadMarket, loadWalk } from "./load.ts";
import type { Streams } from "./streams.ts";

/** Two walks that a command names, and what they are called in its sentences. */
export interface TwoWalks {
	readonly files: { readonly one: string; readonly other: string };
	readonly walks: { readonly one: AnswersFile; readonly other: AnswersFile };
	readonly names: SideNames;
	readonly market: Market;
}

/**
 * Reads the two walks that stand behind a command.
 *
 * @param also another file whose parts are wanted
 * @throws CommandError: 64 where not two are named, 65 and 66 for files that cannot be used
 */
export function twoWalks(args: Arguments, streams: Streams, example: string, also: string | undefined): TwoWalks {
	const [one, other] = args.operands;
	if (one === undefined || other === undefined)
		throw new CommandError(exitCodes.usage, `Which two files? Such as: ${example}`);
	const market = loadMarket(args, streams, undefined, [one, other, ...(also === undefined ? [] : [also])]);
	const walks = {
		one: loadWalk(one, { market }, streams).file,
		other: loadWalk(other, { market }, streams).file,
	};
	return { files: { one, other }, walks, names: namesFor([one, walks.one], [other, walks.other]), market };
}

type Named = readonly [file: string, walk: AnswersFile];

/** The walks' own names, else their files' names, else the paths: the first that tell the two apart. */
function namesFor(one: Named, other: Named): SideNames {
	const ways: readonly ((named: Named) => string | null)[] = [
		([, walk]) => nameOf(walk),
		([file]) => cleanLine(basename(file)),
	];
	for (const way of ways) {
		const [mine, theirs] = [way(one), way(other)];
		if (mine !== null && theirs !== null && mine !== theirs) return { one: mine, other: theirs };
	}
	return one[0] === other[0]
		? { one: "the first", other: "the second" }
		: { one: cleanLine(one[0]), other: cleanLine(other[0]) };
}
