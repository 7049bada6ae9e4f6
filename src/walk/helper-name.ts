import { cleanLine } from "../parts/clean-text.ts";

/** Who answers when nobody has said a name. */
export const namelessHelper = "helper";

/** Names under which the builder's own answers are kept; a helper of that name could not be told from the builder. */
const buildersNames: readonly string[] = ["builder", "builder with a helper", "helper for the builder"];

/** An answers file keeps no longer name; see parts/answers-file. In characters (UTF-16 units). */
const longestName = 60;

/** A helper's name as it is kept, or what is wrong with it. */
export function helperNamed(text: string): { readonly name: string } | { readonly problem: string } {
	const name = cleanLine(text);
	if (name === "") return { problem: "Type your name, as the builder knows you." };
	if (name.length > longestName) return { problem: `A name has at most ${longestName} letters.` };
	return buildersNames.includes(name.toLowerCase())
		? { problem: `"${name}" stands for the one who builds. Take another name.` }
		: { name };
}
