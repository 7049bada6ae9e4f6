import { glossary, type Term } from "../reference/glossary.ts";
import { mapBlock, mapChoice } from "./map-words.ts";
import { type Block, heading, type Screen, text } from "./screen.ts";

/**
 * Behind a word that is explained; also the key that shows what it means. In ASCII, and it needs no colour. Line by line
 * it is a command alone: read out, a star behind a word would only hold up.
 */
export const wordMark = "*";

const termOf = new Map(
	glossary.flatMap((term) => [term.word, ...(term.forms ?? [])].map((form) => [form.toLowerCase(), term] as const)),
);

/** Longer words first, so that "PCI Express" is not taken for "PCI". */
const anyTerm = new RegExp(
	`(?<![\\p{L}\\p{N}_./-])(${[...termOf.keys()]
		.toSorted((one, other) => other.length - one.length)
		.map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"))
		.join("|")})(?:s|es)?(?![\\p{L}\\p{N}_-])`,
	"giu",
);

/** Whether words of a screen are marked at all: not where what is typed may itself hold the mark. */
export function explainsWords({ typing }: Screen): boolean {
	return typing?.kind !== "free" && typing?.kind !== "page";
}

/** The screen with the first place of each word that is not an everyday one marked. Parts of pictures are left alone. */
export function withWordsMarked(screen: Screen): Screen {
	return marking(screen).screen;
}

/** The words that are marked on a screen, in the order in which they stand. */
export function wordsMarked(screen: Screen): readonly Term[] {
	return marking(screen).terms;
}

/**
 * What the marked words of a screen mean, or that all words are in the menu.
 *
 * @param menuKey what leads to the menu in this face
 */
export function wordBlocks(screen: Screen, menuKey = "Tab"): readonly Block[] {
	const terms = wordsMarked(screen);
	const all = `All words that are explained: ${menuKey}, then "Words explained".`;
	if (terms.length === 0) return [text("No word on this screen is marked."), text(all)];
	return [...terms.flatMap(({ word, forms, means }) => [heading(titleOf(word, forms)), text(means)]), heading(all)];
}

/** "DDR5 (also DDR3, DDR4)". */
export function titleOf(word: string, forms: readonly string[] = []): string {
	return forms.length > 0 ? `${word} (also ${forms.join(", ")})` : word;
}

/** What was marked, by screen: the same screen is drawn with every key. */
const known = new WeakMap<Screen, { readonly screen: Screen; readonly terms: readonly Term[] }>();

function marking(screen: Screen): { readonly screen: Screen; readonly terms: readonly Term[] } {
	const made = known.get(screen) ?? marked(screen);
	known.set(screen, made);
	return made;
}

function marked(screen: Screen): { readonly screen: Screen; readonly terms: readonly Term[] } {
	const found = new Set<Term>();
	if (!explainsWords(screen)) return { screen, terms: [] };
	const mark = (words: string): string =>
		words.replace(anyTerm, (match, word: string) => {
			const term = termOf.get(word.toLowerCase());
			if (!term || term.isEveryday || found.has(term)) return match;
			found.add(term);
			return match + wordMark;
		});
	const body = screen.body.map((block) => mapBlock(block, mark));
	// Where lines are found by typed letters, their words stay as they are, since a mark would stand in the way.
	const choices =
		screen.typing?.kind === "words" ? screen.choices : screen.choices.map((choice) => mapChoice(choice, mark));
	const side = screen.side.map((block) => mapBlock(block, mark));
	// The title last: its words mostly stand below too, and marks in it would make the question hard to read.
	const title = mark(screen.title);
	return { screen: { ...screen, title, body, choices, side }, terms: [...found] };
}
