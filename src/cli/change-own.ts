import { changeOwnParts, FaultyParts } from "../files/own-parts-file.ts";
import type { Fault } from "../parts/check-json.ts";
import type { PartsFile } from "../parts/market.ts";
import { type PartKind, partKindNames, partKinds } from "../parts/part-kinds.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { faultLine } from "./fault-words.ts";
import { loadOwnParts, reading } from "./load.ts";
import type { Streams } from "./streams.ts";

/**
 * Changes the own parts in a folder and writes them; see changeOwnParts. A faulty file that was set aside is told.
 *
 * @throws CommandError also when the change would give a part something it cannot have
 */
export function changeOwn<T>(
	folder: string,
	{ soundOnly }: Pick<Arguments, "soundOnly">,
	streams: Streams,
	change: (parts: PartsFile) => { readonly file: PartsFile; readonly result: T },
): T {
	// What was wrong before is told as such, so that faults found from here on are those of the change.
	loadOwnParts(folder, { soundOnly }, streams);
	const { result, setAside } = reading(() => {
		try {
			return changeOwnParts(folder, change, { soundOnly });
		} catch (error) {
			if (error instanceof FaultyParts) throw new CommandError(exitCodes.badData, changeWords(error.faults));
			throw error;
		}
	});
	if (setAside !== null) streams.err(`The faulty file was set aside: ${setAside}\n`);
	return result;
}

function changeWords(faults: readonly Fault[]): string {
	const lines = faults.slice(0, 5).map((fault) => faultLine("Your parts would have a mistake", fault));
	return [...lines, "Nothing was changed."].join("\n");
}

/**
 * The kind of part a person names: "board", "boards", "graphics card".
 *
 * @throws CommandError with code 64
 */
export function kindNamed(name: string): PartKind {
	const plain = (word: string) => word.toLowerCase().replace(/[^a-z]/g, "");
	const found = partKindNames.find((kind) =>
		[kind, partKinds[kind].list, partKinds[kind].noun].some((word) => plain(word) === plain(name)),
	);
	if (found) return found;
	throw new CommandError(exitCodes.usage, `There is no kind of part "${name}".${nearKinds(name)}`);
}

function nearKinds(name: string): string {
	const near = nearWords(name, partKindNames);
	return near.startsWith(" Did") ? near : ` It is one of ${partKindNames.join(", ")}.`;
}
