import { glossary, type Term } from "../reference/glossary.ts";
import { wrapText } from "../sheet/wrap-text.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import type { Streams } from "./streams.ts";

const width = 78;

/**
 * `words [TERM]`: the words of the trade in plain words, all of them or one, with --json for other programs.
 *
 * @throws CommandError with code 64 for a word that is not explained here
 */
export function words({ operands, json }: Arguments, { out }: Streams): void {
	const wanted = operands.join(" ");
	if (wanted === "") {
		out(json ? `${JSON.stringify(glossary, null, "\t")}\n` : `${glossary.map(termText).join("\n\n")}\n`);
		return;
	}
	const term = glossary.find((one) => namesOf(one).some((name) => plain(name) === plain(wanted)));
	if (!term) {
		const near = nearWords(wanted, glossary.flatMap(namesOf)).replace("boardwalk --help", "boardwalk words");
		throw new CommandError(exitCodes.usage, `The word "${wanted}" is not explained here.${near}`);
	}
	out(json ? `${JSON.stringify(term, null, "\t")}\n` : `${termText(term)}\n`);
}

function termText(term: Term): string {
	const { word, forms = [], means } = term;
	const head = forms.length > 0 ? `${word} (also: ${forms.join(", ")})` : word;
	return [...wrapText(head, width), ...wrapText(`  ${means}`, width, { indent: "  " })].join("\n");
}

function namesOf({ word, forms = [] }: Term): readonly string[] {
	return [word, ...forms];
}

/** As people type it: small or large, "M2" for "M.2", a plural for one. */
function plain(word: string): string {
	const letters = word.normalize("NFKC").toLowerCase().replace(/[.]/g, "").trim();
	return letters.length > 4 ? letters.replace(/s$/, "") : letters;
}
