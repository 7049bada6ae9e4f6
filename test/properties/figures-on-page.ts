import type { WalkView } from "../../src/screens/walk-view.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { wordsIn } from "../sheet/forms-reading.ts";
import { readHtml } from "../sheet/html-reading.ts";
import { unescaped } from "../sheet/markdown-reading.ts";

/** The forms that are read by people, from top to bottom. */
export type PaperForm = "text" | "markdown" | "html";
export const paperForms: readonly PaperForm[] = ["text", "markdown", "html"];

/** What a form says in words and figures; its pictures are no part of it. */
export interface PageWords {
	readonly shop: readonly string[];
	readonly bench: readonly string[];
	readonly annex: readonly string[];
}

const pageMarks: Readonly<Record<PaperForm, RegExp>> = {
	text: /^=+\n(?:AT THE SHOP|AT THE BENCH|ANNEX)$/m,
	markdown: /^## (?:At the shop|At the bench|Annex)$/m,
	html: /<section class="page \w+">/,
};

/** A form cut at the marks of its pages. Reads the written form and takes from the sheet only what its pictures are. */
export function pageWords(form: PaperForm, written: string, { plan, power }: Sheet): PageWords {
	const pictures = [plan, power].flatMap((one) => (one && one.picture.length > 0 ? [one.picture.join("\n")] : []));
	const words = {
		text: (page: string) => wordsIn(pictures.reduce((rest, picture) => rest.replace(`\n${picture}\n`, "\n\n"), page)),
		markdown: (page: string) => wordsIn(unescaped(page.replace(/^(~{3,})\n[\s\S]*?\n\1$/gm, ""))),
		html: (page: string) =>
			wordsIn(readHtml(page.replace(/<svg[\s\S]*?<\/svg>|<pre>[\s\S]*?<\/pre>/g, "")).texts.join(" ")),
	}[form];
	const [, shop = "", bench = "", annex = "", ...more] = written.split(pageMarks[form]);
	if (annex === "" || more.length > 0) throw new Error(`${form}: not of three pages`);
	return { shop: words(shop), bench: words(bench), annex: words(annex) };
}

/** All that a form says, pictures too, as one line of words. */
export const lineOf = (form: PaperForm, written: string): string =>
	` ${wordsIn({ text: written, markdown: unescaped(written), html: readHtml(written).texts.join(" ") }[form]).join(" ")} `;

/**
 * What a standard or practice says the same of every board and build, in the phrases in which it stands; nothing of it is
 * worked out from the answers. A figure outside these phrases is not spared.
 */
const sameForAll: readonly string[] = [
	// Names of plugs, slots and standards.
	...["M.2", "2.5 inch", "3.5 inch", "3D", "x16", "DDR4", "12V-2x6", "PCI Express 4.0 or later", "IEC 60086-4"],
	...["3-pin", "4-pin", "8-pin", "9-pin", "24-pin", "with 8 pins", "splits into 4+4"],
	// What a plug carries, volts of lighting plugs, fewest lanes of a graphics card, room for a cable's bend.
	...["carries 144 W", "are 5 V", "are 12 V", "of 5 V", "of 12 V", "5 V and 12 V"],
	...["at least 8 lanes from the processor", "30 to 40 mm"],
	// The scale of points, the comfortable line, the time to wait, the switch of a supply, years of a warranty.
	...["points of 100", "below 90 degrees", "up to 90 is", "wait 15 minutes", "switch to 0"],
	...["at least 3 years", "years and not 3"],
];

/** Strings that are names: of parts in question whole, of all others their own names only. */
function namesIn(view: WalkView): readonly string[] {
	const { market } = view;
	const { facts, worlds } = view.build();
	const listed = new Set(view.advice().shortlist.map(({ boardId }) => boardId));
	const all = Object.values(market.parts).flat() as readonly Readonly<Record<string, unknown>>[];
	const named = all.flatMap(({ name, maker, revision, chipset, socket, series, generation }) =>
		[name, maker, revision, chipset, socket, series, generation].filter((one) => typeof one === "string"),
	);
	const inQuestion = [all.filter(({ id }) => listed.has(String(id))), facts, worlds.map((world) => world.facts)];
	return [...named, ...connectorNamesIn(inQuestion), view.state.name ?? ""];
}

/** Names at any depth of parts; facts that are told as figures, such as days, are none. */
function connectorNamesIn(value: unknown, key = ""): readonly string[] {
	if (typeof value === "string") return /^(?:name|maker|members|slotOrder|connector)$/.test(key) ? [value] : [];
	if (Array.isArray(value)) return value.flatMap((one) => connectorNamesIn(one, key));
	if (typeof value !== "object" || value === null) return [];
	return Object.entries(value).flatMap(([name, one]) => connectorNamesIn(one, name));
}

/** Takes names and the phrases above out of words, the longest first; gives the words that are left. */
export function withoutNames(view: WalkView): (words: readonly string[]) => readonly string[] {
	const byFirst = new Map<string, (readonly string[])[]>();
	for (const phrase of new Set([...namesIn(view), ...sameForAll])) {
		const words = wordsIn(phrase);
		const [first] = words;
		// What holds no figure spares none.
		if (first !== undefined && words.some(isFigure)) byFirst.set(first, [...(byFirst.get(first) ?? []), words]);
	}
	for (const phrases of byFirst.values()) phrases.sort((one, other) => other.length - one.length);
	return (words) => {
		const left: string[] = [];
		for (let at = 0; at < words.length; ) {
			const found = byFirst
				.get(words[at] ?? "")
				?.find((phrase) => phrase.every((word, index) => words[at + index] === word));
			if (!found) left.push(words[at] ?? "");
			at += found ? found.length : 1;
		}
		return left;
	};
}

export const isFigure = (word: string): boolean => /^\p{N}/u.test(word);
