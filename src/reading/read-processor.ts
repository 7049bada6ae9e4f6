import { canonicalSocket } from "../parts/canonical-name.ts";
import { columnsAsTabs } from "./column-text.ts";
import { type LabelledLine, labelledLines, splitLabel } from "./labelled-lines.ts";
import { type PartReading, partOf, type ReadAt, type UnreadLine } from "./part-reading.ts";
import { type ProcessorNotes, processorNotes } from "./processor-notes.ts";
import { readRunOn } from "./processor-run-on.ts";
import { isOfMemory, type ProcessorTopic, plainLabel, topicOf } from "./processor-topics.ts";
import { readValue } from "./processor-values.ts";
import { textLines } from "./text-lines.ts";

/** A longest name, as the schema has it. */
const longestName = 120;

/** Heads of shops under which other products stand. */
const othersFollow =
	/^(?:customers|kunden|les clients|los clientes|klienci|inni klienci|zákazníci|klanten)(?!\p{L}).*(?:also|auch|bought|kauften|aussi|également|también|kupili|koupili|kochten)|^(?:similar|related|ähnliche|weitere|andere|passende|podobne|podobné|související|схожі|похожие|супутні|сопутствующие|benzer|ilgili|vergelijkbare|gerelateerde)\s(?:products?|items|processors|produkte|artikel|prozessoren|produkty|товари|товары|procesory|producten|ürünler)|^(?:produits|productos|prodotti|produtos|produkty)\s(?:similaires|associés|liés|relacionados|similares|correlati|simili|semelhantes|podobne|powiązane)|^(?:passend dazu|dazu passend|passt dazu)|(?:oft|häufig|wird oft) zusammen gekauft|you (?:may|might) also like|frequently bought|goes well with|pairs well with|vous aimerez aussi|souvent achetés|könnte (?:ihnen|dir|sie) auch|comprados? juntos|te puede (?:interesar|gustar)|potrebbe(?:ro)? (?:anche )?interessarti|comprati insieme|często kupowane|polecane produkty|(?:разом )?з цим товаром|с этим товаром|також купують|také koupili|mohlo by se|často kupované|quem (?:viu|comprou)|vaak samen|anderen kochten|birlikte alınan|^(?:recommended|passende) (?:accessories|zubehör)/iu;

/** Heads under which people tell of it, and of their other things. */
const peopleFollow =
	/^(?:customer |kunden)?(?:reviews?|ratings?|bewertungen|rezensionen|avis(?: clients)?|opiniones|valoraciones|recensioni|opinie|відгуки|отзывы|recenze|hodnocení|avaliações|beoordelingen|yorumlar|questions|fragen|pytania|preguntas|domande|kommentare|comments)(?!\p{L})[^:]{0,40}$/iu;

/** Signs of money beside a figure. */
const price =
	/(?:[€$£₴₽₺]|\b(?:eur|usd|gbp|pln|czk|uah|chf|try)\b|zł|kč|грн)\s?\d|\d\s?(?:[€$£₴₽₺]|(?:eur|usd|gbp|pln|czk|uah|chf|try)\b|zł|kč|грн)/iu;

/** Where the page stops to tell of this processor; undefined where it does not. */
function endOf(entries: readonly LabelledLine[]): number | undefined {
	const known = entries.map((entry) => hasOwnLabel(entry) && topicOf(entry.label ?? "") !== undefined);
	const all = known.filter(Boolean).length;
	let before = 0;
	for (const [place, { value }] of entries.entries()) {
		if (known[place]) before++;
		if (value.length > 60) continue;
		if (place > 0 && othersFollow.test(value) && (before > 0 || all === 0)) return place;
		if (before >= 3 && all - before < 3 && peopleFollow.test(value)) return place;
	}
	return undefined;
}

/**
 * What a processor's page tells: the page itself, a shop's table, a title line. Goes by labels in English and German,
 * by units and by notations of the trade; no maker's names are needed. Time is linear in the length. Never throws.
 */
export function readProcessor(text: string): PartReading<"processor"> {
	const entries = labelledLines(columnsAsTabs(textLines(text).lines));
	const notes = withOneSocketName(processorNotes());
	const unread: UnreadLine[] = [];
	const models: string[] = [];
	const end = endOf(entries) ?? entries.length;
	for (const { line, quote } of entries.slice(end)) unread.push({ line, text: quote });
	let labels = 0;
	for (let place = 0; place < end; place++) {
		const entry = entries[place];
		if (!entry) continue;
		if (hasOwnLabel(entry) && topicOf(entry.label ?? "") !== undefined) labels++;
		// What has a price below the facts is another product.
		if (labels >= 3 && price.test(entry.value) && topicOf(entry.label ?? "") === undefined) {
			unread.push({ line: entry.line, text: entry.quote });
			continue;
		}
		const rows = turnedTable(entries, place);
		if (rows.length > 0) {
			const heads = cellsOf(entry);
			for (const row of rows) {
				for (const [column, value] of cellsOf(row).entries()) {
					const label = heads[column] ?? "";
					if (topicOf(label) === "name") models.push(value);
					else if (value !== "")
						readLabelled(label, value, row.sections, row, rows.length > 1 ? ofSeveral(notes) : notes);
				}
			}
			place += rows.length;
			continue;
		}
		const next = entries[place + 1];
		if (next && isBareLabel(entry) && readBelow(entry, next, notes, models)) {
			place++;
			continue;
		}
		if (entry.names && !/\d/.test(entry.value)) continue;
		if (!readEntry(entry, notes, models)) unread.push({ line: entry.line, text: entry.quote });
	}
	const { facts, doubts } = notes.settled();
	const { part, refused } = partOf("processor", nameOf(entries.slice(0, end), models), facts);
	unread.sort((one, other) => one.line - other.line);
	return {
		kind: "processor",
		part,
		facts: facts.filter((fact) => !refused.includes(fact)),
		doubts: [
			...doubts,
			...refused.map(({ fact, line, quote }) => ({
				fact,
				might: [],
				line,
				quote,
				why: "The figure is one that no processor has.",
			})),
		],
		unread,
	};
}

/** For columns or rows of several processors: no figure of one is better than another's, and no lists are joined. */
function ofSeveral(notes: ProcessorNotes): ProcessorNotes {
	return {
		...notes,
		highest: notes.found,
		memoryType: (type, at) => notes.found("memory.types", [type], at),
	};
}

/** The first spelling of a socket stands for all others of it. */
function withOneSocketName(notes: ProcessorNotes): ProcessorNotes {
	const names = new Map<string, string>();
	return {
		...notes,
		found(fact, value, at) {
			if (fact !== "socket" || typeof value !== "string") return notes.found(fact, value, at);
			const known = names.get(canonicalSocket(value)) ?? value;
			names.set(canonicalSocket(value), known);
			notes.found(fact, known, at);
		},
	};
}

const even = (text: string): string => text.replace(/\*\*|`/g, "").replace(/\s+/g, " ");

/** Whether the label stands in the very line, and is not one from above. */
const hasOwnLabel = ({ label, quote }: LabelledLine): boolean =>
	label !== undefined && even(quote).includes(label) && even(quote).length > label.length;

/** "Home / Parts / Processors": where the page hangs in a shop. */
const isPath = /[›»>]|\s\/\s.*\s\/\s/;

const isBareLabel = (entry: LabelledLine): boolean =>
	!hasOwnLabel(entry) &&
	entry.cells.length === 0 &&
	entry.value.length <= 60 &&
	entry.value.split(" ").length <= 8 &&
	!/\d{2}|\d[.,]\d|\d\s?(?:w|ghz|mhz|gb)\b/i.test(entry.value) &&
	/^[\p{L}#]/u.test(entry.value) &&
	!isPath.test(entry.value) &&
	topicOf(entry.value) !== undefined &&
	!(topicOf(entry.value) === "socket" && /\d/.test(entry.value));

/** Topics whose value may be any words, so that a line which is a label itself is none. */
const wordTopics: ReadonlySet<ProcessorTopic> = new Set<ProcessorTopic>([
	"name",
	"series",
	"generation",
	"codeName",
	"socket",
	"graphics",
	"graphicsDetail",
	"cooler",
	"coolerInBox",
	"other",
]);

/** A label on a line of its own, its value on the next. */
function readBelow(label: LabelledLine, below: LabelledLine, notes: ProcessorNotes, models: string[]): boolean {
	const topic = topicOf(label.value);
	if (topic === undefined || hasOwnLabel(below) || below.cells.length > 0) return false;
	if (below.line - label.line > 3) return false;
	if (wordTopics.has(topic) && isBareLabel(below)) return false;
	// A head such as "Graphics" stands over other lines too.
	if (topic === "graphicsDetail" && !/^\W{0,2}\d/.test(below.value)) return false;
	const at = { line: label.line, quote: `${label.quote}\n${below.quote}` };
	if (topic === "name") {
		models.push(below.value);
		return true;
	}
	return readLabelled(label.value, below.value, label.sections, at, notes);
}

/** A line, with a label of its own, one from above, one at its beginning, or none. */
function readEntry(entry: LabelledLine, notes: ProcessorNotes, models: string[]): boolean {
	const { label, value, cells, sections } = entry;
	if (label === undefined) return readInline(entry, notes) || readRunOn(value, entry, notes);
	if (topicOf(label) === "name" && hasOwnLabel(entry)) {
		models.push(cells[0] ?? value);
		readRunOn(value, entry, notes);
		return true;
	}
	if (cells.length > 1) return readCells(entry, label, notes);
	const several = hasOwnLabel(entry) ? severalIn(`${label}: ${value}`) : [];
	if (several.length > 1)
		return several.filter((one) => readLabelled(one.label, one.value, sections, entry, notes)).length > 0;
	if (!hasOwnLabel(entry) && readInline(entry, notes)) return true;
	if (readLabelled(label, value, sections, entry, notes)) return true;
	if (!hasOwnLabel(entry) || topicOf(label) === undefined) return readRunOn(value, entry, notes);
	return false;
}

/** "Cores: 8; threads: 16": more labels in one line. */
function severalIn(text: string): readonly { readonly label: string; readonly value: string }[] {
	const pieces = text.split(/\s*(?:[;•|]|\s\/\s|,(?!\d))\s*(?=[\p{L}#][^,;:•|/]{1,40}[:：])/u).map(splitLabel);
	const known = pieces.filter((piece, place) => piece && (place === 0 || topicOf(piece.label) !== undefined));
	return known.length === pieces.length ? known.filter((piece) => piece !== undefined) : [];
}

/** A row of several cells: more pairs of label and value, or a value for each of several models. */
function readCells(entry: LabelledLine, label: string, notes: ProcessorNotes): boolean {
	const { cells, sections } = entry;
	const second = cells[1] ?? "";
	const isPairs = cells.length % 2 === 1 && !/\d{2}/.test(second) && topicOf(second) !== undefined;
	if (!isPairs) {
		const each = ofSeveral(notes);
		return cells.filter((cell) => readLabelled(label, cell, sections, entry, each)).length > 0;
	}
	const all = [label, ...cells];
	let isRead = false;
	for (let place = 0; place + 1 < all.length; place += 2) {
		isRead = readLabelled(all[place] ?? "", all[place + 1] ?? "", sections, entry, notes) || isRead;
	}
	return isRead;
}

/** "TDP 125 W": words, then the figure, and nothing between them. */
function readInline(entry: LabelledLine, notes: ProcessorNotes): boolean {
	const pieces = entry.value.slice(0, 600).split(/\s*(?:[;|•·,]\s|\s\/\s)\s*(?=\p{L})/u);
	if (pieces.length > 1 && pieces.length <= 20) {
		// "Core count 8 / Thread count 16": every piece is a pair.
		const isPairs = pieces.every((piece) => {
			const [, label] = /^(\p{L}[^\d]{1,40}?)\s[~≥<(]?\d[^\p{L}]{0,8}\s?\S{0,6}$/u.exec(piece) ?? [];
			return label !== undefined && topicOf(label) !== undefined;
		});
		if (isPairs) return pieces.filter((piece) => readInline({ ...entry, value: piece }, notes)).length > 0;
	}
	const socket =
		/^(?:(?:cpu|processor)\s|prozessor-?)?(?:socket|sockel)(?:\s?typ(?:e)?)?\s+([\p{Lu}\d]\S*(?:\s\S+){0,2})$/iu.exec(
			entry.value,
		);
	if (socket?.[1] && /^[\p{Lu}\d]/u.test(socket[1]))
		return readLabelled("Socket", socket[1], entry.sections, entry, notes);
	const words = entry.value.slice(0, 300).split(" ");
	const first = words.findIndex((word, place) => place > 0 && (/^[~≥<(]?\d/.test(word) || isAnswer(words, place)));
	if (first < 1 || first > 8) return false;
	const label = words.slice(0, first).join(" ");
	if (/[\d.,;!?]/.test(label)) return false;
	const topic = topicOf(label);
	if (topic === undefined || ["name", "series", "socket", "package"].includes(topic)) return false;
	return readLabelled(label, words.slice(first).join(" "), entry.sections, entry, notes);
}

const isAnswer = (words: readonly string[], place: number): boolean =>
	place === words.length - 1 &&
	/^(?:yes|no|ja|nein|oui|non|sí|tak|nie|ano|ne|так|ні|да|нет|sim|não|nee|evet|hayır)$/i.test(words[place] ?? "");

function readLabelled(
	label: string,
	value: string,
	sections: readonly string[],
	{ line, quote }: ReadAt,
	notes: ProcessorNotes,
): boolean {
	const at = { line, quote };
	// "# of cores" on a line of its own looks like a head of Markdown.
	const head = sections.findLast((one) => !/^of /i.test(one)) ?? "";
	const own = topicOf(label);
	// "Clock: Base: 3.6 GHz": the head gives a short label its meaning.
	const isShort = plainLabel(label).split(" ").length <= 2;
	const joined = own === undefined && isShort && head !== "" ? topicOf(`${head} ${label}`) : undefined;
	const topic = own === "clock" && isOfMemory(head) ? "memory" : (own ?? joined);
	if (topic === "name") return false;
	const context = `${head} ${label}`;
	if (topic !== undefined) return readValue(topic, { value, context, label, at }, notes);
	// Watts tell what they are, whatever a page calls them; which of them, they do not.
	if (/\d\s?w(?:att)?\b/i.test(value)) return readValue("power", { value, context: label, label, at }, notes);
	return false;
}

const cellsOf = (entry: LabelledLine): readonly string[] =>
	entry.names && entry.value.includes(" | ")
		? entry.value.split(" | ")
		: [entry.label ?? "", ...(entry.cells.length > 0 ? entry.cells : [entry.value])];

/** Rows under names of columns, where each row is a processor and each column a fact. */
function turnedTable(entries: readonly LabelledLine[], place: number): readonly LabelledLine[] {
	const head = entries[place];
	if (!head || (head.cells.length < 2 && !head.value.includes(" | "))) return [];
	const heads = cellsOf(head);
	const known = heads.filter((cell) => cell !== "" && !/\d{2}|\d[.,]\d/.test(cell) && topicOf(cell) !== undefined);
	if (heads.length < 3 || known.length < 3 || known.length < heads.length * 0.6) return [];
	const rows: LabelledLine[] = [];
	for (let at = place + 1; at < entries.length; at++) {
		const row = entries[at];
		if (!row || row.names || cellsOf(row).length !== heads.length) break;
		if (rows.length === 0 && cellsOf(row).every((cell) => topicOf(cell) !== undefined)) return [];
		rows.push(row);
	}
	return rows;
}

/** By its label, or the title: the first line that is neither a fact nor a common word. */
function nameOf(entries: readonly LabelledLine[], models: readonly string[]): string | undefined {
	const isOfName = (text: string) => /\p{L}/u.test(text) && text.length <= 400;
	const cut = (text: string) =>
		text
			.split(/\s[|–—]\s|\s\(|\s-\s|[,;](?!\d)|\s(?=\d{1,3}[\s-]?(?:cores?|kerne?)\b|\d+[.,]\d+\s?ghz|up to\b)/i)[0]
			?.replace(
				/^(?:cpu|processor|prozessor|vi xử lý|procesador|processeur|processore|procesor|процесор|процессор|processador|i̇?şlemci)\s+(?=\S+\s)/i,
				"",
			)
			.replace(/[®™]|\((?:r|tm)\)/gi, "")
			.trim()
			.slice(0, longestName)
			.trim();
	const title = entries
		.slice(0, 6)
		.filter((entry) => !hasOwnLabel(entry) && entry.cells.length === 0)
		.filter(({ value }) => !isPath.test(value) && !price.test(value) && !/\(\d+\)$/.test(value))
		.map(({ value }) => cut(value))
		.find(
			(value) =>
				value !== undefined &&
				// A sentence is no title.
				!/\p{L}\d*\.\s|\.$/u.test(value) &&
				topicOf(value) === undefined &&
				/\d/.test(value) &&
				isOfName(value) &&
				value.split(" ").length >= 2,
		);
	const [model] = models.filter((one) => isOfName(one) && !/^\d+[\s-]?(?:x|cores?|kerne?|bit)\b/i.test(one)).map(cut);
	if (model === undefined || model === "") return title;
	// "2400X" beside "Cadmor 7 2400X": the longer names it better.
	const isWithin = title?.toLowerCase().split(" ").includes(model.toLowerCase());
	return title !== undefined && isWithin && model.split(" ").length === 1 ? title : model;
}
