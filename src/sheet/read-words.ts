import { factAt } from "../parts/fact-list.ts";
import { type PartKind, partKinds } from "../parts/part-kinds.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import { type Wants, wantTitles } from "../parts/wants.ts";

/** A fact path with its title, where it is a fact of a part. */
export function readWords(path: string): string {
	const [root = "", ...keys] = path.split(".");
	if (Object.hasOwn(wantTitles, path)) return `${path} (${wantTitles[path as keyof Wants]})`;
	const fact = Object.hasOwn(partKinds, root) && keys.length > 0 ? factAt(root as PartKind, keys.join(".")) : undefined;
	if (fact) return `${path} (${titleInSentence(fact.title)})`;
	const measured = measuredWords[root];
	return measured === undefined ? path : `${path} (${measured})`;
}

/** What is worked out of a whole build, by the root of its path. */
const measuredWords: Readonly<Record<string, string>> = {
	plan: "worked out: what plugs in where",
	headers: "worked out: what goes on which header",
	power: "worked out: power and heat of the board",
	load: "worked out: what the parts take",
};
