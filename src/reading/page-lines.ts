import { topicOf } from "./board-topics.ts";
import { columnsAsTabs } from "./column-text.ts";
import { withoutGlue } from "./glued-labels.ts";
import { isGroupName } from "./labelled-lines.ts";
import { isSideLabel } from "./side-labels.ts";
import { inStandardTerms } from "./standard-terms.ts";
import { type TextLine, textLines } from "./text-lines.ts";

/** The lines of a page that can tell of the part, and those behind them that are of other things. */
export interface PageLines {
	readonly lines: readonly TextLine[];
	/** Other goods, what people wrote, signatures, and what is beyond the longest page: not read. */
	readonly tail: readonly TextLine[];
	/** Lines that were changed for reading, by their number, as they stand in the pasted text. */
	readonly quotes: ReadonlyMap<number, string>;
}

/** No page of one part has more filled lines or letters; own convention, so that no text takes long. */
const most = { lines: 1500, letters: 60_000 } as const;

/** Pasted text as lines whose columns and labels are marked alike, whatever page they come from. Never throws. */
export function pageLines(text: string): PageLines {
	const plain = withoutTableMarks(text);
	const lines = withoutSecondPrint(textLines(plain).lines);
	const end = Math.min(tailStart(lines), longestEnd(lines));
	const read = labelsWithColons(withoutGlue(columnsAsTabs(lines.slice(0, end))));
	const source = plain === text || isWiki(text) ? lines : textLines(text).lines;
	return { lines: read, tail: lines.slice(end), quotes: changedLines(read, source) };
}

function changedLines(read: readonly TextLine[], source: readonly TextLine[]): ReadonlyMap<number, string> {
	const before = new Map(source.map(({ number, text }) => [number, text]));
	return new Map(
		read.flatMap(({ number, text }) => {
			const own = before.get(number);
			return own === undefined || own === text ? [] : [[number, own.trim()] as const];
		}),
	);
}

// The source of a wiki's table has lines of its own for marks, so that its lines have other numbers.
const isWiki = (text: string): boolean => /^\{\|/m.test(text) && /^\|-/m.test(text);

/** Source of a wiki's table, and rows of quoted cells, as label, tab and value. */
function withoutTableMarks(text: string): string {
	if (isWiki(text)) return withoutWikiMarks(text);
	const lines = text.split("\n");
	const filled = lines.filter((line) => line.trim() !== "");
	const share = (pattern: RegExp) => filled.filter((line) => pattern.test(line)).length / filled.length;
	if (filled.length < 5) return text;
	const articles = articleRows(filled);
	if (articles) return lines.map((line) => articles.get(line) ?? line).join("\n");
	// One bar without spaces between label and value; a row that begins with it goes on with the one above.
	if (share(/^[^|\n]*\|[^|\n]+$/) > 0.6 && share(/\s\|\s|\t/) < 0.1)
		return lines.map((line) => (/^[^|]*\|[^|]+$/.test(line) ? line.replace("|", "\t") : line)).join("\n");
	if (share(/^"[^"\n]*",/) > 0.7) return lines.map(cellsOf).join("\n");
	// Rows of a database: a name in small letters, a comma, the value.
	return share(/^[a-z][a-z0-9_]{1,40},/) > 0.8 ? lines.map((line) => cellsOf(withSpokenName(line))).join("\n") : text;
}

function withoutWikiMarks(text: string): string {
	return text
		.replace(/<ref[^>]{0,200}>[^<]{0,500}<\/ref>|<ref[^>]{0,200}\/>/gi, "")
		.replace(/\[\[(?:[^[\]|\n]{0,200}\|)?([^[\]|\n]{0,200})\]\]/g, "$1")
		.split("\n")
		.filter((line) => !/^(?:\{\||\|-|\|\}|!)/.test(line))
		.map((line) =>
			line
				.replace(/^\|\+\s?/, "")
				.replace(/^\|\s?/, "")
				.replace(/\s?\|\|\s?/g, "\t")
				.replace(/<br\s?\/?>/gi, "\n\t"),
		)
		.join("\n");
}

/** "A11;Memory max.;96;GB" in every line: an article's number, a label, the value, its unit. */
function articleRows(filled: readonly string[]): ReadonlyMap<string, string> | undefined {
	const rows = filled.map((line) => line.split(";").map((cell) => cell.trim()));
	const [number] = rows[1] ?? [];
	const same = rows.filter(([first, label, value]) => first === number && label !== undefined && value !== undefined);
	if (number === undefined || same.length < filled.length * 0.8) return undefined;
	return new Map(
		filled.map((line, index) => {
			const [, label = "", ...values] = rows[index] ?? [];
			return [line, `${label}\t${values.filter((value) => value !== "").join(" ")}`];
		}),
	);
}

/** "pcie_4_0_x16,2" is "pcie 4.0 x16,2". */
function withSpokenName(line: string): string {
	const at = line.indexOf(",");
	const name = line
		.slice(0, at)
		.replaceAll("_", " ")
		.replace(/(?<=\b\d) (?=\d\b)/g, ".")
		.replace(/\b(gb|mm|mhz|max)$/i, "($1)");
	return `${name}${line.slice(at)}`;
}

/** `"Memory","Slots","4"` is "Memory Slots", tab, "4". */
function cellsOf(line: string): string {
	const cells = [...line.matchAll(/"((?:[^"]|"")*)"|([^",]+)/g)].map(([, quoted, plain]) =>
		(quoted ?? plain ?? "").replaceAll('""', '"').trim(),
	);
	const value = cells.at(-1) ?? "";
	return cells.length < 2 ? value : `${cells.slice(0, -1).join(" ")}\t${value}`;
}

/** Fewer lines and letters than these may stand there twice and mean two things; own convention. */
const shortestPrint = { lines: 5, letters: 300 } as const;

/** A page that was copied twice, one below the other, as it is once. */
function withoutSecondPrint(lines: readonly TextLine[]): readonly TextLine[] {
	const filled = lines.filter(({ text }) => text.trim() !== "");
	const half = filled.length / 2;
	if (!Number.isInteger(half)) return lines;
	const letters = filled.slice(0, half).reduce((sum, { text }) => sum + text.length, 0);
	if (half < shortestPrint.lines && letters < shortestPrint.letters) return lines;
	const second = filled[half];
	if (!second || !filled.slice(half).every(({ text }, index) => text.trim() === filled[index]?.text.trim()))
		return lines;
	return lines.slice(0, lines.indexOf(second));
}

function longestEnd(lines: readonly TextLine[]): number {
	const told = { lines: 0, letters: 0 };
	const end = lines.findIndex(({ text }) => {
		told.lines += text.trim() === "" ? 0 : 1;
		told.letters += text.length;
		return told.lines > most.lines || told.letters > most.letters;
	});
	return end < 0 ? lines.length : end;
}

const tailHead =
	/^(?:(?:customer|user|product|top|kunden|buyer)?[\s-]?(?:reviews?|ratings?|feedback)\b|customers?\s(?:also|who|questions)|others?\s(?:also|bought)|similar\b|related\b|recommended|you\s(?:may|might)\salso|questions?\s(?:and|&)|bewertung\p{L}*|rezension\p{L}*|kunden(?:meinung|rezension|bewertung)\p{L}*|kunden\s|ähnliche|wird\soft|avis\s|opini[eoõ]\p{L}*|recensioni|відгук\p{L}*|отзыв\p{L}*|hodnocení|beoordeling\p{L}*|yorum\p{L}*|avalia[çc]\p{L}*|coment[aá]rios?|produtos?\s|productos?\srelacionad\p{L}*|podobne|схожі|benzer|buyers?\s\S{1,12}:|q\s?(?:&\s?a|:)|frage:|voir\saussi|avis\s|re:\s|my\s(?:rig|pc|setup)\b)/iu;
/** Of a page shorter than this no line is taken for the begin of its tail: menus at the top have such words too. */
const shortestHead = 10;

/** The line from which on a page tells of other goods or what people wrote. */
function tailStart(lines: readonly TextLine[]): number {
	let filled = 0;
	for (const [index, { text }] of lines.entries()) {
		const line = text.trim();
		if (line === "") continue;
		filled++;
		if (filled > shortestHead && (/^--\s?$/.test(line) || (line.length < 80 && tailHead.test(line)))) return index;
	}
	return lines.length;
}

const valueLike = /^(?:dual|single|quad|двоканал|dwukanał|yes|no|none|ja|nein|tak|nie|brak|oui|non|sí|так|ні|немає)/iu;

/** Labels of what is no fact of a part. */
const otherLabel =
	/^(?:warranty|garantie|gwarancja|garanzia|garantía|garantia|záruka|гарантія|гарантия|hersteller|manufacturer|producent|fabricant|fabricante|produttore|výrobce|fabrikant|brand|marke|marca|marque|merk|značka|kod\sproducenta|herstellernummer|part\snumber|model\snumber|ean|gtin|sku|mpn|weight|gewicht|waga|poids|peso|hmotnost|series|serie|seria|série)$/iu;

/** A short line of words that names what follows: of a known topic, without a figure, a colon or a tab. */
function isLabelLine(text: string): boolean {
	const line = text.trim();
	if (
		line.length > 50 ||
		line.split(/\s+/).length > 7 ||
		!/^\p{L}/u.test(line) ||
		/[\t|:;.!?]|[x×]\s?\d/iu.test(line.replace(/\.(?=\s|2)/g, ""))
	)
		return false;
	if (/\d/.test(line.replace(/m\.2|usb\s[234](?:\.\d)?|i\/o|\b12\s?v\b/gi, "")) || valueLike.test(line)) return false;
	return topicOf(inStandardTerms(line)) !== undefined || isSideLabel(line) || otherLabel.test(line);
}

/**
 * Pages copied as a label line and the value lines below it: the labels get their colon. Only where most of a text is
 * written so.
 */
function labelsWithColons(lines: readonly TextLine[]): readonly TextLine[] {
	const filled = lines.filter(({ text }) => text.trim() !== "");
	const withMarks = filled.filter(({ text }) => /\t|:\s|^\s*[-*•|]/.test(text)).length;
	if (filled.length < 10 || withMarks > filled.length * 0.15) return lines;
	const labels = filled.map(({ text }) => isLabelLine(text));
	if (labels.filter(Boolean).length < 5) return lines;
	// English and German heads are known where the lines are put under their labels.
	const known = filled.filter(({ text }, index) => labels[index] && isGroupName(text.trim())).length;
	// Where each label has one value, all are labels, known as heads or not.
	const alone = labels.filter((isLabel, index) => isLabel && !labels[index + 1] && labels[index + 2] !== false).length;
	const all = labels.filter(Boolean).length;
	if (known > all * 0.6 && (known === all || alone < all * 0.9)) return lines;
	const marked = new Set<TextLine>();
	for (const [index, line] of filled.entries()) {
		// Of two such lines the first is a head or a label; the second is its value if another label follows.
		const isValue = index > 0 && marked.has(filled[index - 1] as TextLine) && labels[index + 1] === true;
		if (labels[index] && !isValue && index < filled.length - 1) marked.add(line);
	}
	return lines.map((line) => (marked.has(line) ? { ...line, text: `${line.text.trim()}:` } : line));
}
