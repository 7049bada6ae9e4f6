import { readdirSync, statSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import type { Fault } from "../parts/check-json.ts";
import { cleanLine } from "../parts/clean-text.ts";
import { makeMarket } from "../parts/make-market.ts";
import type { Market, PartsFile } from "../parts/market.ts";
import { BrokenJson, readJson } from "./read-json.ts";
import { reasonOf, UnreadableFile } from "./read-text.ts";
import { type SoundParts, soundParts } from "./sound-parts.ts";

/** Faults of one file. */
export interface FaultyFile {
	readonly file: string;
	readonly faults: readonly Fault[];
}

/** Parts read from a file, or from all .json files of a folder in the order of their names. */
export interface ReadParts {
	readonly market: Market;
	/** Files of which nothing was taken; with `soundOnly`, files of which only the sound parts were. */
	readonly faulty: readonly FaultyFile[];
	readonly warnings: readonly string[];
}

/**
 * Reads a market from a parts file or a folder of them.
 *
 * @param more parts that come after those read, such as the demonstration market
 * @param soundOnly takes the sound parts of a faulty file, and leaves out a file of a folder that is no JSON
 * @throws UnreadableFile, BrokenJson
 */
export function readParts(path: string, more: readonly PartsFile[] = [], soundOnly = false): ReadParts {
	const files = partsFilesAt(path);
	const faulty: FaultyFile[] = [];
	const sound: PartsFile[] = [];
	for (const file of files) {
		const { file: parts, faults } = soundOnly && files.length > 1 ? partsOrReason(file) : soundParts(readJson(file));
		if (faults.length > 0) faulty.push({ file, faults });
		if (parts && (soundOnly || faults.length === 0)) sound.push(parts);
	}
	const { market, clashes } = makeMarket(marketName(path), [...sound, ...more]);
	const empty = files.length === 0 ? [`${path}: there is no .json file in this folder, so the market is empty.`] : [];
	return {
		market,
		faulty,
		warnings: [...empty, ...clashes.map(({ kind, id }) => `${kind} "${id}" is given twice; the first one counts.`)],
	};
}

/** Longest name of a market that an answers file may hold, in UTF-16 units; see parts/answers-file. */
const longestName = 200;

/** The name alone: a path is long, and says more than the paper should. A folder may be called anything, letters that no line may hold too. */
function marketName(path: string): string {
	return (
		cleanLine(basename(resolve(path)))
			.slice(0, longestName)
			.trim() || "parts"
	);
}

function partsOrReason(file: string): SoundParts {
	try {
		return soundParts(readJson(file));
	} catch (error) {
		if (error instanceof BrokenJson)
			return { file: null, faults: [{ path: "", expected: `sound JSON; ${error.reason}` }] };
		throw error;
	}
}

function partsFilesAt(path: string): readonly string[] {
	try {
		if (!statSync(path).isDirectory()) return [path];
		return readdirSync(path, { withFileTypes: true })
			.filter((entry) => entry.name.endsWith(".json") && !entry.isDirectory())
			.map(({ name }) => name)
			.sort()
			.map((name) => join(path, name));
	} catch (error) {
		throw new UnreadableFile(path, reasonOf(error));
	}
}
