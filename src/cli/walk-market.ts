import { addPart, noParts, partsIn, replacePart } from "../files/own-parts.ts";
import { removeOwnPart } from "../files/own-parts-file.ts";
import type { Answers, OwnPart } from "../parts/answers-file.ts";
import type { Market, PartsFile } from "../parts/market.ts";
import type { PartKind } from "../parts/part-kinds.ts";
import type { Arguments } from "./arguments.ts";
import { changeOwn } from "./change-own.ts";
import { marketWithOwn } from "./demo-market.ts";
import { CommandError } from "./exit-codes.ts";
import { loadMarket, loadOwnParts, reading } from "./load.ts";
import type { Streams } from "./streams.ts";

/** The parts of a walk, and what changes the person's own among them. */
export interface WalkMarket {
	/** The market beside these answers: what they name stays in it. Own parts are read anew. */
	readonly now: (answers: Answers) => { readonly market: Market; readonly kept: readonly OwnPart[] };
	/** Keeps a part for all walks; gives a word about what went wrong, or null. */
	readonly keep: (own: OwnPart) => string | null;
	readonly remove: (kind: PartKind, id: string) => string | null;
	/** What is wrong with the file of own parts, or null. The walk goes on with the sound ones; the file stays as it is. */
	readonly warning: string | null;
}

/**
 * The market of a walk. What --parts names stands alone: own parts then live in the walk's own file only.
 *
 * @param folder where own parts are kept, or null
 */
export function walkMarket(args: Arguments, streams: Streams, folder: string | null): WalkMarket {
	// While the walk is on screen nothing else may write to it.
	const quiet: Streams = { ...streams, err: () => {} };
	if (args.parts !== undefined || folder === null) {
		const market = loadMarket(args, streams, folder);
		return { now: () => ({ market, kept: [] }), keep: () => null, remove: () => null, warning: null };
	}
	let warning: string | null = null;
	try {
		loadOwnParts(folder, args, streams);
	} catch (error) {
		if (!(error instanceof CommandError)) throw error;
		warning = `${error.message} Until then nothing is kept there.`;
	}
	const soundParts = (): PartsFile => {
		try {
			return loadOwnParts(folder, { soundOnly: args.soundOnly || warning !== null }, quiet);
		} catch (error) {
			if (!(error instanceof CommandError)) throw error;
			return noParts;
		}
	};
	const told = (work: () => void): string | null => {
		try {
			work();
			return null;
		} catch (error) {
			if (!(error instanceof CommandError)) throw error;
			return error.message;
		}
	};
	return {
		warning,
		now: (answers) => {
			const own = soundParts();
			const named = new Set(Object.values(answers).flatMap(({ value }) => idsIn(value)));
			return { market: marketWithOwn(own, { withDemo: args.withDemo, named }), kept: partsIn(own) };
		},
		keep: (own) =>
			told(() =>
				changeOwn(folder, args, quiet, (parts) => ({
					file: replacePart(parts, own) ?? addPart(parts, own).file,
					result: null,
				})),
			),
		remove: (kind, id) =>
			told(() => {
				const own = partsIn(loadOwnParts(folder, args, quiet)).find((one) => one.kind === kind && one.part.id === id);
				if (own) reading(() => removeOwnPart(folder, own, { soundOnly: args.soundOnly }));
			}),
	};
}

/** Ids of parts that an answer may name. */
function idsIn(value: Answers[string]["value"]): readonly string[] {
	if (typeof value === "string") return [value];
	if (Array.isArray(value)) return value;
	return typeof value === "object" && "part" in value ? [value.part] : [];
}
