import { factAt } from "../parts/fact-list.ts";
import { type PartKind, partKindNames } from "../parts/part-kinds.ts";
import { partWords } from "../parts/part-words.ts";

/** A fact that is missing, in words, and where a person finds it; null for paths that are not facts of a part. */
export function howToFindOut(path: string): { what: string; how: string; ofBoard: boolean } | null {
	const [root = "", ...keys] = path.split(".");
	if (keys.length === 0) return null; // A whole part that is open is listed by its question.
	if (!partKindNames.includes(root as PartKind)) return null;
	const fact = factAt(root as PartKind, keys.join("."));
	if (!fact) return null;
	const ofBoard = root === "board";
	const owner = ofBoard ? "" : ` of your ${partWords[root] ?? root}`;
	const how = fact.whereToFind;
	// Where a fact names nothing but a page, it is still a sentence among others.
	return { what: `${fact.title}${owner}`, how: how.endsWith(".") ? how : `${how}.`, ofBoard };
}
