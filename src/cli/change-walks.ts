import { basename } from "node:path";
import { readWalk } from "../files/read-answers.ts";
import { nameOf } from "../files/saved-walks.ts";
import { changeWalk, keepCopy, liesIn, removeWalk, takeWalkBack } from "../files/walk-copies.ts";
import type { AnswersFile } from "../parts/answers-file.ts";
import type { Market } from "../parts/market.ts";
import { mostOfName, type WalksChange } from "../walk/kept-walk-places.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { faultsMessage } from "./fault-words.ts";
import { loadWalk, reading } from "./load.ts";

/** Where walks are kept, and by what they are checked. */
interface WalksPlace {
	readonly folder: string;
	readonly market: Market;
	readonly today: string;
	/** The walk that this program has open itself. */
	readonly open: string | null;
}

/**
 * Names, copies, removes or takes in a kept walk.
 *
 * @returns what was done, in words
 * @throws CommandError where it cannot be done; then nothing was changed
 */
export function changeWalks(change: WalksChange, place: WalksPlace): string {
	return reading(() => changed(change, place));
}

function changed(change: WalksChange, { folder, market, today, open }: WalksPlace): string {
	switch (change.does) {
		case "name":
			changeWalk(change.file, () => ({ ...soundWalk(change.file), name: change.name }));
			return `This walk is now called ${change.name}.`;
		case "copy": {
			const { file: walk } = loadWalk(change.file, { market }, quiet);
			const copy = { ...walk, name: copyName(walk) };
			return `Copied: ${copy.name}. It is kept in ${keepCopy(folder, copy, today)}.`;
		}
		case "take": {
			const { file: walk } = loadWalk(change.path, { market }, quiet);
			const file = keepCopy(folder, walk, today);
			return `Taken in: ${calledOf(walk)}. It is kept in ${file}; the file you gave stays as it is.`;
		}
		case "remove": {
			if (change.file === open)
				throw new CommandError(
					exitCodes.usage,
					"You are in this walk now, so it was not removed. Open another one first.",
				);
			if (!liesIn(folder, change.file))
				throw new CommandError(
					exitCodes.usage,
					`${change.file} is not among the kept walks, so it was not removed. They lie in ${folder}.`,
				);
			return `Removed: ${calledAt(change.file)}. It now lies in ${removeWalk(change.file)}.`;
		}
		case "bring-back": {
			const file = takeWalkBack(folder);
			if (file === null) throw new CommandError(exitCodes.usage, "Nothing was removed that could be brought back.");
			return `Brought back: ${calledAt(file)}. It is kept in ${file}.`;
		}
	}
}

const quiet = { out: () => {}, err: () => {} };

/** A walk to write a change into: a sound one that stands in no sheet. */
function soundWalk(file: string): AnswersFile {
	const { checked, inSheet } = readWalk(file);
	if (inSheet)
		throw new CommandError(exitCodes.badData, `${file} is a sheet, and was not changed. Take its walk in first.`);
	if (!checked.value) throw new CommandError(exitCodes.badData, faultsMessage(file, checked.faults));
	return checked.value;
}

function calledOf(walk: AnswersFile): string {
	return nameOf(walk) ?? `a walk of ${walk.asOf}`;
}

function calledAt(file: string): string {
	try {
		return calledOf(soundWalk(file));
	} catch {
		return basename(file); // A file that cannot be used can be removed all the same.
	}
}

/** The name with "(copy)" behind it, or a number for the copy of a copy; a long one is cut between letters as they are seen. */
function copyName(walk: AnswersFile): string {
	const called = nameOf(walk) ?? `A walk of ${walk.asOf}`;
	const [, stem = called, number = "1"] = /^(.*) \(copy(?: (\d{1,3}))?\)$/.exec(called) ?? [];
	const mark = stem === called ? " (copy)" : ` (copy ${Number(number) + 1})`;
	let name = "";
	for (const { segment } of new Intl.Segmenter("en").segment(stem)) {
		if (name.length + segment.length + mark.length > mostOfName) break;
		name += segment;
	}
	return name.trimEnd() + mark;
}
