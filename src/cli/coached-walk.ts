import { noParts } from "../files/own-parts.ts";
import { newFileBeside } from "../files/saved-walks.ts";
import type { Answers } from "../parts/answers-file.ts";
import type { PartsFile } from "../parts/market.ts";
import { partKindNames, partKinds } from "../parts/part-kinds.ts";
import { namelessHelper } from "../walk/helper-name.ts";
import type { WalkState } from "../walk/walk-state.ts";
import type { AnswersKeeper } from "./answers-keeper.ts";
import type { Arguments } from "./arguments.ts";
import { marketWithOwn } from "./demo-market.ts";
import { loadMarket, loadWalkFile } from "./load.ts";
import type { Streams } from "./streams.ts";
import type { WalkMarket } from "./walk-market.ts";

/**
 * The market of somebody else's walk: what its file holds, and beside it what its builder has beside their own parts. The
 * helper's own parts have no place in it, and nothing of it is kept among them.
 */
export function marketOfFile(args: Arguments, streams: Streams): WalkMarket {
	const alone = args.parts === undefined ? null : loadMarket(args, streams, null);
	const own = alone || args.answers === undefined ? noParts : partsOf(args.answers);
	return {
		now: (answers: Answers) => ({
			market: alone ?? marketWithOwn(own, { withDemo: args.withDemo, named: idsIn(answers) }),
			kept: [],
		}),
		keep: () => null,
		remove: () => null,
		warning: null,
	};
}

function partsOf(path: string): PartsFile {
	// A copy of an invented board, of which somebody told a fact, is no board of the builder's own.
	const own = loadWalkFile(path).parts.filter(({ part }) => (part as { invented?: boolean }).invented !== true);
	const lists = partKindNames.map((kind) => [
		partKinds[kind].list,
		own.filter((one) => one.kind === kind).map(({ part }) => part),
	]);
	return { ...noParts, ...Object.fromEntries(lists) };
}

function idsIn(answers: Answers): ReadonlySet<string> {
	return new Set(
		Object.values(answers).flatMap(({ value }) => {
			if (typeof value === "string") return [value];
			if (Array.isArray(value)) return value;
			return typeof value === "object" && "part" in value ? [value.part] : [];
		}),
	);
}

/** The walk as a helper takes it up: on the page of what to check, or first asked for a name. */
export function coachedBy(name: string | null, state: WalkState): WalkState {
	const theirParts = state.ownParts.map(({ kind, part }) => `${kind}/${part.id}`);
	return {
		...state,
		by: name ?? namelessHelper,
		coaching: { theirParts },
		place: name === null ? { at: "coach-name" } : { at: "coach" },
		returnTo: name === null ? [{ at: "coach" }] : [],
	};
}

/**
 * Where a helper's answers go if they cannot go into the file handed over: a new one beside it, to be given back. It is the
 * builder's walk, so it does not lie among the helper's own; but rather there than nowhere.
 */
export function helpersNewFile(handedOver: string, amongOwn: () => string | null): string | null {
	return newFileBeside(handedOver) ?? amongOwn();
}

/** Said of a walk that comes out of a sheet, which is never written into. */
export function sheetWords(newFile: string | null): string {
	const where = newFile === null ? "a new file." : `a new file: ${newFile}`;
	return `This walk comes out of a sheet. The sheet stays as it is, and what you answer goes into ${where}`;
}

/** Where answers and suggestions lie, and what the builder does with them. */
export function helpersFarewell(keeper: AnswersKeeper): string {
	const file = keeper.isKept() ? keeper.file() : null;
	if (file === null) return "Nothing was changed, so the file is as it was.\n";
	return `What you answered and suggested is kept in ${file}\nGive that file back. The builder goes on in it with: boardwalk --answers FILE\n`;
}
