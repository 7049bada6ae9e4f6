import { canonicalName } from "./canonical-name.ts";

/** A name without trade signs and stars of footnotes. */
export const withoutMarks = (name: string): string =>
	name.replace(/[®™©‡†*]|\((?:r|tm|c)\)/gi, "").replace(/\s+/g, " ");

/** Words behind a name that make no other processor of it; short ones such as "X", "F" or "Pro" do. */
const addsNothing =
	/^(?:\d+(?:[.,]\d+)?\s?(?:w|ghz|mhz|mb|nm|cores?|threads?)|processors?|prozessor|cpu|apu|desktop|box(?:ed)?|tray|rev|step(?:ping)?|tdp|with|mit)$/i;

/**
 * The rows that name a processor: the same letters and digits, alone or within a longer text ("Cadmor 7 2400 (AB-1234),
 * 65 W"), or without a maker's word that the name has in front. "2400X" is not "2400". All rows that fit are given, in
 * the list's order; they may name different versions.
 */
export function rowsFor<Row extends { readonly processor: string }>(
	list: { readonly rows: readonly Row[] } | readonly Row[],
	processorName: string,
): readonly Row[] {
	const rows = "rows" in list ? list.rows : list;
	const wanted = wordsOf(processorName);
	if (wanted.length === 0) return [];
	return rows.filter(({ processor }) => {
		const listed = wordsOf(processor);
		return holds(listed, wanted) || holds(wanted, listed, true);
	});
}

interface Word {
	/** As `canonicalName` spells it. */
	readonly text: string;
	/** Nothing but spaces and hyphens before it. */
	readonly isJoined: boolean;
}

function wordsOf(name: string): readonly Word[] {
	const plain = withoutMarks(name).slice(0, 400).normalize("NFKC");
	let end = 0;
	return [...plain.matchAll(/[\p{L}\p{N}+]+/gu)].map(({ 0: text, index }) => {
		const isJoined = /^[\s-]*$/.test(plain.slice(end, index));
		end = index + text.length;
		return { text: canonicalName(text), isJoined };
	});
}

/** Whether a longer name holds a shorter one as whole words, with nothing behind it that makes another part of it. */
function holds(longer: readonly Word[], shorter: readonly Word[], onlyMakerBefore = false): boolean {
	const wanted = shorter.map(({ text }) => text).join("");
	// A family's name alone is no processor.
	if (wanted === "" || (onlyMakerBefore && !/\d{2}/.test(wanted))) return false;
	for (let from = 0; from < longer.length; from++) {
		if (onlyMakerBefore && (from > 2 || longer.slice(0, from).some(({ text }) => /\d/.test(text)))) return false;
		// Without the family the number alone could be one of several.
		if (onlyMakerBefore && from > 0 && !/^\p{L}{2}/u.test(wanted)) continue;
		let joined = "";
		for (let to = from; to < longer.length && joined.length < wanted.length; to++) {
			joined += longer[to]?.text ?? "";
			if (joined !== wanted) continue;
			const [next, after] = [longer[to + 1], longer[to + 2]];
			if (!next?.isJoined || addsNothing.test(next.text)) return true;
			// "65 W" and "3.4 GHz" are two words each.
			if (/^\d+$/.test(next.text) && addsNothing.test(next.text + (after?.text ?? ""))) return true;
		}
	}
	return false;
}
