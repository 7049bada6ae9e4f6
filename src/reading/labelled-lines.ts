import { topicOf } from "./board-topics.ts";
import { inStandardTerms } from "./standard-terms.ts";
import type { TextLine } from "./text-lines.ts";

/** What one line says, with the words it stands under. Nothing is understood yet; no line is left out. */
export interface LabelledLine {
	/** Heads it stands under, outermost first. */
	readonly sections: readonly string[];
	/** The nearest words that name the value: its own label, or that of the lines it belongs to. */
	readonly label: string | undefined;
	/** Never empty. Lists within a line stay whole. */
	readonly value: string;
	/** Line of the pasted text, from 1; the first if several were joined. */
	readonly line: number;
	/** The line or lines as they stand in the cleaned text, which `textOfLines` gives. */
	readonly quote: string;
	/** A head, a title or names of columns: it names what follows. */
	readonly names: boolean;
	/** Bullet or stars before it. Stars are kept, for they may mark a footnote. */
	readonly mark: string | undefined;
	/** The cells behind the first, where a row of a table has several. */
	readonly cells: readonly string[];
}

type Draft = { -readonly [Key in keyof LabelledLine]: LabelledLine[Key] };

/** Own conventions: what is longer is a sentence, no label. */
const longestLabel = 60;
const mostWords = 9;
const longestHead = 45;
const mostHeadWords = 6;
/** Heads over one line; the outermost give way. */
const mostHeads = 6;
/** A value that goes on over lines grows no further than this. */
const longestValue = 2000;

const bullet = /^(?:([-–—•·▪◦‣●○■□►▶➤✓✔»]|\d{1,2}\))[ \t]+|([•▪◦‣●■►▶➤✓✔]))(?=\S)/;
const numbered = /^(\d{1,2})\.[ \t]+(?=\S)/;
const stars = /^\*{1,12}(?!\*)[ \t]*/;
/** "4 x", "2×", "1 port", "3 of": a count begins a value, never a label. "4-pin fan: 3" is a label. */
const count = /^(?:\d+[.,]?\d*\s*[x×*]\s|[x×]\s?\d|\d+[.,]?\d*\s)/i;
/** A value that only sums up what the lines below tell. */
const sumAlone =
	/^(?:total|in\sall|insgesamt|gesamt|totale?|total(?:\sde)?|łącznie|celkem|összesen|toplam|всего|tổng)[\s:]{1,2}(?:de\s|of\s|di\s)?\d{1,2}\s?\p{L}+$/iu;
/** "6 ports", where lines that count stand below. */
const countOfBelow = /^\d{1,2}\s(?:ports?|anschlüsse|buchsen|puertos|portas|porte|porty|portů|порт\p{L}*|cổng)$/iu;
const underline = /^\s*(?:={3,}|-{3,}|_{3,})\s*$/;
const columnRule = /^[\s:|-]+$/;

interface Line {
	readonly number: number;
	readonly raw: string;
	readonly text: string;
	readonly kind: TextLine["kind"];
	/** Spaces before the text; a tab counts four. */
	readonly indent: number;
	readonly tabFirst: boolean;
	readonly mark: string | undefined;
	readonly afterEmpty: boolean;
}

/** Words that name a group of facts, alone or joined, in English and German. They let a bare line be seen as a head. */
const groupWords = new Set(
	(
		"socket cpu processor processors chipset memory ram storage graphics graphic video display audio sound lan network " +
		"networking ethernet wireless wlan wifi wi-fi bluetooth usb slots slot expansion dimensions dimension size weight form " +
		"factor formfactor formfaktor format bios firmware uefi rear back front panel internal external i/o io ports port connectors " +
		"connector headers header fan fans cooling power supply interface interfaces sata m.2 raid specifications features " +
		"accessories software monitoring others other miscellaneous general motherboard mainboard model type clearance radiator " +
		"material color colour support and & / of on sockel prozessor prozessoren chipsatz speicher arbeitsspeicher " +
		"hauptspeicher massenspeicher grafik bild ton netzwerk steckplätze steckplatz erweiterung erweiterungssteckplätze " +
		"anschlüsse anschluss intern interne extern externe rückseite vorderseite rückwand abmessungen maße größe gewicht " +
		"lüfter kühlung strom stromversorgung netzteil schnittstellen laufwerke zubehör allgemein sonstiges technische daten " +
		"eigenschaften merkmale und hersteller modell farbe gehäuse " +
		"onboard on-board integrated led leds lighting pcb info information operating system os bundle included content contents " +
		"warranty garantie package health hardware note notes remark certifications certificates special feature switch buttons button"
	).split(" "),
);

/** Lines as labels and values. Time is linear in the length of the text; at most three entries a line. */
export function labelledLines(textLines: readonly TextLine[]): readonly LabelledLine[] {
	const lines = measured(textLines);
	const starsAreBullets = areStarsBullets(lines);
	const found: Draft[] = [];
	let heads: { text: string; depth: number }[] = [];
	/** A label that waits for values, or has some. */
	let open:
		| { label: string; indent: number; values: number; marked: boolean; row: boolean; colon?: true; sum?: true }
		| undefined;
	/** Where the last entry's text began, for lines that go on; nothing if it may not be joined to. */
	let last: { entry: Draft; indent: number; index: number } | undefined;
	let barHead = false;

	const add = (line: Line, index: number, entry: Partial<Draft> & { value: string }) => {
		const draft: Draft = {
			sections: heads.map(({ text }) => text),
			label: undefined,
			line: line.number,
			quote: line.raw.trim(),
			names: false,
			mark: line.mark,
			cells: [],
			...entry,
		};
		draft.value = plainWords(draft.value);
		if (draft.label !== undefined) draft.label = plainWords(draft.label);
		if (draft.value === "") return;
		found.push(draft);
		last = draft.names ? undefined : { entry: draft, indent: line.indent, index };
	};
	const head = (line: Line, index: number, text: string, depth: number) => {
		const shown = plainWords(text).replace(/\s*[:：]$/, "");
		heads = [...heads.filter((one) => one.depth < depth), ...(shown === "" ? [] : [{ text: shown, depth }])].slice(
			-mostHeads,
		);
		open = undefined;
		add(line, index, { value: shown, names: true, sections: heads.slice(0, -1).map((one) => one.text) });
	};
	/** A value, which may be "label: value" itself. */
	const addValue = (line: Line, index: number, text: string, under: string | undefined) => {
		const split = splitLabel(text);
		const sections = heads.map((one) => one.text);
		if (!split || split.value === "") add(line, index, { value: text, label: under });
		else add(line, index, { ...split, sections: under === undefined ? sections : [...sections, under] });
	};

	const readLine = (line: Line, index: number) => {
		if (line.text === "") return;
		const next = lines[index + 1];
		const before = lines[index - 1];
		if (underline.test(line.text) && !line.text.includes("|")) return;
		const marked = line.mark !== undefined && (!line.mark.startsWith("*") || starsAreBullets);
		if (line.afterEmpty && !marked && line.indent === 0) {
			if (!found.at(-1)?.names) heads = heads.filter((one) => one.depth < plainDepth);
			if (open && open.values > 0) open = undefined;
		}

		const hashes = /^(#{1,6})\s+(?=\S)/.exec(line.text);
		// "# of cores : 8" counts; it is no head of Markdown.
		if (hashes && !splitLabel(line.text)?.value)
			return head(line, index, line.text.slice(hashes[0].length), hashes[1]?.length ?? 1);
		if (line.kind === "head") return head(line, index, line.text, 6);
		if (line.kind === "columns") {
			return add(line, index, { value: line.text.replaceAll("\t", " | "), names: true });
		}
		if (/^\*\*[^*]+\*\*[:：]?$/.test(line.raw.trim())) return head(line, index, line.raw.trim(), 6);
		if (next && line.text.length <= longestHead && /^\s*={3,}\s*$/.test(next.text))
			return head(line, index, line.text, 1);

		// Rows between bars.
		const barred =
			line.text.startsWith("|") || (bars(line) > 0 && (bars(line) === bars(next) || bars(line) === bars(before)));
		if (barred) {
			if (columnRule.test(line.text) && line.text.includes("-")) {
				const names = found.at(-1);
				if (names && barHead && before?.number === names.line) names.names = true;
				return;
			}
			const cells = line.text
				.replace(/^\|/, "")
				.replace(/\|$/, "")
				.split("|")
				.map((cell) => cell.trim());
			const [first = "", ...rest] = cells;
			const kept = rest.filter((cell) => cell !== "");
			barHead = true;
			const label = first === "" ? open?.label : first.replace(/\s*[:：]$/, "");
			// A row of one filled cell among others names those below it.
			const isGroup = cells.length > 1 && first !== "" && bars(next) === bars(line) && looksLikeHead(first);
			if (kept.length === 0 && isGroup) return head(line, index, first, 6);
			if (kept.length === 0) return add(line, index, { value: first });
			if (label !== undefined) open = { label, indent: 0, values: 1, marked: false, row: true };
			return add(line, index, { label, value: kept.join(" | "), cells: kept.length > 1 ? kept : [] });
		}
		barHead = false;

		// Rows between tabs.
		if (line.text.includes("\t")) {
			const [first = "", ...rest] = line.text.split("\t").map((cell) => cell.trim());
			const kept = rest.filter((cell) => cell !== "");
			if (!marked && kept.length > 0) {
				const label = first.replace(/\s*[:：]$/, "");
				const value = kept.join(" | ");
				if (first !== "") heads = heads.filter((one) => one.depth < rowDepth);
				if (!line.tabFirst || !open?.row) {
					open = { label: plainWords(label), indent: 0, values: 1, marked: false, row: true };
				}
				if (kept.length === 1 && /[:：]$/.test(value) && splitLabel(value)) {
					// The first line of the cell names a group within the row.
					const name = plainWords(value.replace(/\s*[:：]$/, ""));
					add(line, index, { label, value: name, names: true });
					heads = [...heads, { text: plainWords(label), depth: rowDepth }];
					open = { label: name, indent: 0, values: 0, marked: false, row: false, colon: true };
					return;
				}
				if (kept.length > 1) add(line, index, { label, value, cells: kept });
				else addValue(line, index, value, label);
				return;
			}
		}
		if (line.tabFirst && open?.row && !marked) return addValue(line, index, line.text, open.label);

		const split = splitLabel(line.text);
		// A line that goes on with the one before it.
		if (
			last &&
			last.index === index - 1 &&
			!line.afterEmpty &&
			line.mark === undefined &&
			line.indent > last.indent &&
			!split &&
			!count.test(line.text) &&
			last.entry.value.length + line.text.length < longestValue
		) {
			last.entry.value = `${last.entry.value} ${plainWords(line.text)}`;
			last.entry.quote = `${last.entry.quote}\n${line.raw.trimEnd()}`;
			last.index = index;
			return;
		}

		// "Label:" with its values below.
		if (split && split.value === "") {
			if (open && open.values === 0 && line.indent > open.indent)
				heads = [...heads, { text: open.label, depth: 8 }].slice(-mostHeads);
			else heads = heads.filter((one) => one.depth < 8);
			open = { label: split.label, indent: line.indent, values: 0, marked, row: false, colon: true };
			add(line, index, { value: split.label, names: true });
			return;
		}
		const isCountOfBelow =
			split !== undefined && countOfBelow.test(split.value) && next !== undefined && count.test(next.text);
		if (split && (sumAlone.test(split.value) || isCountOfBelow)) {
			// "Rear USB: total 9 ports" stands over the lines that tell which.
			if (open && !open.sum) heads = [...heads.filter((one) => one.depth < 8), { text: open.label, depth: 8 }];
			open = { label: split.label, indent: line.indent, values: 0, marked, row: false, colon: true, sum: true };
			add(line, index, { value: split.label, names: true });
			return;
		}
		if (split) {
			const inside =
				open && (line.indent > open.indent || (marked && !open.marked) || (open.values === 0 && !open.row));
			if (open && inside) {
				// A label with no value of its own so far names a group.
				add(line, index, { ...split, sections: [...heads.map((one) => one.text), open.label] });
				return;
			}
			heads = heads.filter((one) => one.depth < 8);
			add(line, index, split);
			// "Inside: 1 x A" with "2 x B" below it: a list that begins on the line of its label.
			const isList = count.test(split.value) && next !== undefined && next.text !== "" && count.test(next.text);
			open = isList
				? { label: plainWords(split.label), indent: line.indent, values: 1, marked, row: false }
				: undefined;
			return;
		}

		// A bare line that names what follows.
		if (!marked && line.mark === undefined && line.indent === 0 && looksLikeHead(line.text)) {
			const group = isGroupName(line.text);
			const fresh = index === 0 || line.afterEmpty || !open || open.row;
			const beyond = lines[index + 2];
			const gap = next?.text === "" && beyond?.mark !== undefined;
			const beforeList = gap
				? isItem(beyond, starsAreBullets)
				: next !== undefined && next.text !== "" && isItem(next, starsAreBullets);
			const beforeCount = next !== undefined && next.text !== "" && count.test(next.text);
			const alone = index === 0 && lines.length > 2 && lines[2]?.text === "";
			const block = (line.afterEmpty || alone) && next !== undefined && next.text !== "" && !isGroupName(next.text);
			// Between two lines with labels of their own a sentence belongs to the one above; a short name is a head.
			const isSentence =
				!group &&
				!line.afterEmpty &&
				index > 0 &&
				!isShortName(line.text) &&
				next !== undefined &&
				next.mark === undefined;
			if (beforeList && !isSentence && (fresh || group || before?.mark !== undefined))
				return head(line, index, line.text, plainDepth);
			const waits = next !== undefined && (next.text !== "" || lines[index + 2] !== undefined);
			if (waits && (group || block || (beforeCount && fresh))) {
				if (group && before !== undefined && open?.values === 0 && !open.row) {
					// Two names one after another: the first names the group.
					heads = [...heads.filter((one) => one.depth < plainDepth), { text: open.label, depth: plainDepth }];
				}
				// Among heads in capitals a label in small letters has nothing under it but values.
				// "USB" alone is written so everywhere.
				const isOuter = line.text.length > 5 && isCapital(line.text) && open !== undefined && !isCapital(open.label);
				if (isOuter) heads = heads.filter((one) => one.depth < 8);
				if (open?.colon && open.values > 0 && !line.afterEmpty && !isOuter) {
					// Among lines under "Label:" a bare name is a group of these.
					heads = [...heads.filter((one) => one.depth < 8), { text: open.label, depth: 8 }];
				}
				open = { label: plainWords(line.text), indent: 0, values: 0, marked: false, row: false };
				return add(line, index, { value: line.text, names: true });
			}
		}
		add(line, index, { value: line.text, label: open?.label });
		if (open) open.values++;
	};
	for (const [index, line] of lines.entries()) readLine(line, index);
	return found;
}

/** Depth of a head that nothing but its place shows: an empty line ends what stands under it. */
const plainDepth = 7;
/** Depth of a row's label over the groups in its cell: the next row ends it. */
const rowDepth = 7.5;

function measured(textLines: readonly TextLine[]): Line[] {
	const filled = textLines.filter(({ text }) => text.trim() !== "");
	const empty = textLines.length - filled.length;
	// A text with an empty line behind nearly every line says nothing by them.
	const kept = empty >= (filled.length - 1) * 0.8 ? filled : textLines;
	let afterEmpty = false;
	let place = 0;
	return kept.map(({ number, text: raw, kind }) => {
		const space = /^[ \t]*/.exec(raw)?.[0] ?? "";
		const inner = raw.trim();
		// "1. HDMI", "2. USB": items, where the figures go up one by one.
		const item = numbered.exec(inner);
		const isNext = item !== null && [1, place + 1].includes(Number(item[1]));
		if (isNext) place = Number(item[1]);
		const dot = isNext ? item : bullet.exec(inner);
		const star = dot ? undefined : stars.exec(inner)?.[0];
		const isStar = star !== undefined && !/^\*\*[^\s*][^*]*\*\*/.test(inner);
		const cut = dot?.[0] ?? (isStar ? star : "") ?? "";
		const text = inner.slice(cut.length).trim();
		const line = {
			number,
			raw,
			text: text === "" ? inner : text,
			kind,
			indent: space.length + 3 * (space.split("\t").length - 1),
			tabFirst: space.startsWith("\t"),
			mark: text === "" || cut === "" ? undefined : cut.trim(),
			afterEmpty,
		};
		afterEmpty = inner === "";
		return line;
	});
}

/** Stars are bullets where there are no others, they stand before several lines, and no line refers to them. */
function areStarsBullets(lines: readonly Line[]): boolean {
	const one = lines.filter(({ mark }) => mark === "*").length;
	const more = lines.some(({ mark }) => mark !== undefined && mark !== "*");
	return one >= 3 && !more && !lines.some(({ text }) => /[^*\s]\*{1,3}$/.test(text));
}

const isItem = (line: Line, starsAreBullets: boolean): boolean =>
	line.mark !== undefined
		? !line.mark.startsWith("*") || starsAreBullets
		: line.indent > 0 || line.text.includes("\t") || line.text.startsWith("|") || splitLabel(line.text) !== undefined;

const bars = (line: Line | undefined): number => (line ? line.text.split(" | ").length - 1 : 0);

const isCapital = (text: string): boolean => text === text.toUpperCase();

const wordsOf = (text: string): string[] => text.split(/\s+/).filter((word) => word !== "");

function looksLikeHead(text: string): boolean {
	return (
		text.length <= longestHead &&
		wordsOf(text).length <= mostHeadWords &&
		/^\p{L}/u.test(text) &&
		!/[.,;!?*]$/.test(text) &&
		!/\d{2}|\d\s?(?:x|×|mm|cm|w|v|gb|mb)\b/i.test(text)
	);
}

/** Names of groups have few words and no figures; those of places and connectors may have some more. Own convention. */
const isShortName = (text: string): boolean =>
	!/\d/.test(text) &&
	(wordsOf(text).length <= 3 ||
		(wordsOf(text).length <= 5 &&
			["back", "internal", "usb", "slots", "storage"].includes(topicOf(inStandardTerms(text)) ?? "")));

/** Whether a line is made of words that name groups of facts, in English and German. */
export function isGroupName(text: string): boolean {
	const words = wordsOf(text.toLowerCase()).flatMap((word) => (word === "i/o" ? [word] : word.split(/(?<=.)\/(?=.)/)));
	return (
		words.length > 0 &&
		words.length <= mostHeadWords &&
		words.every((word) => groupWords.has(word.replace(/[()®™]/g, "")))
	);
}

/**
 * "Label: value" at the first colon that can end a label; an empty value if nothing follows. Not at "5 ports: 3 at the
 * back", within brackets, between digits (16:9), in an address, or behind a single letter ("W: 210 mm H: 90 mm").
 */
export function splitLabel(text: string): { readonly label: string; readonly value: string } | undefined {
	const plain = text.replace(/\*\*/g, "");
	const source = /\*\*[^*]*[:：]\*\*|\*\*[:：]/.test(text) ? plain : text;
	let depth = 0;
	const end = Math.min(source.length, longestLabel + 2);
	for (let at = 0; at < end; at++) {
		const letter = source[at];
		if (letter === "(" || letter === "[") depth++;
		else if ((letter === ")" || letter === "]") && depth > 0) depth--;
		else if (letter === ":" || letter === "：") {
			const after = source.slice(at + 1, at + 3);
			if (depth > 0 || after === "//" || (/\d/.test(source[at - 1] ?? "") && /^\d/.test(after))) continue;
			const label = source.slice(0, at).trim();
			return isLabel(label) ? { label, value: source.slice(at + 1).trim() } : undefined;
		}
	}
	return undefined;
}

function isLabel(label: string): boolean {
	return (
		label.length <= longestLabel &&
		wordsOf(label).length <= mostWords &&
		/\p{L}.*[\p{L}\d]/u.test(label) &&
		!count.test(label) &&
		!/[;|\t]|[\p{L})]{5}\.\s/u.test(label)
	);
}

/** Without the signs of Markdown for bold, and of code; stars of footnotes stay. */
function plainWords(text: string): string {
	return text
		.replace(/(^|\s)\*\*([^*\s][^*]*)\*\*(?=$|[\s:：,.;])/g, "$1$2")
		.replaceAll("`", "")
		.replace(/\s+/g, " ")
		.trim();
}
