import { inCaseTerms } from "./case-terms.ts";
import { topicsIn } from "./case-topics.ts";
import { columnsAsTabs } from "./column-text.ts";
import { type LabelledLine, labelledLines } from "./labelled-lines.ts";
import type { TextLine } from "./text-lines.ts";

const keyed = /^\s*(?:"([^"]{2,60})"\s*:|([\p{L}][\p{L}\d_. -]{1,59}?)\s*=)\s*(\S.*?),?\s*$/u;

/** Keys and values of data, such as "gpu_length = 330 mm", as labels and values. */
function dataAsLabels(lines: readonly TextLine[]): readonly TextLine[] {
	const filled = lines.filter(({ text }) => text.trim() !== "");
	const rows = filled.filter(({ text }) => keyed.test(text)).length;
	if (rows < 4 || rows / filled.length < 0.6) return lines;
	return lines.map((line) => {
		const [, quoted, plain, value = ""] = keyed.exec(line.text) ?? [];
		const key = (quoted ?? plain)?.replace(/_/g, " ").trim();
		if (key === undefined) return line;
		return { ...line, text: `${key}: ${value.replace(/^[["]+|["\]]+$/g, "").replace(/"\s*,\s*"/g, ", ")}` };
	});
}

/** The labelled lines of a page, be its columns made of tabs, spaces, dots, or keys. Quotes stand as printed. */
export function labelsOf(lines: readonly TextLine[]): readonly LabelledLine[] {
	const shown = columnsAsTabs(dataAsLabels(lines));
	const labelled = labelledLines(shown);
	if (shown === lines) return labelled;
	const places = new Map<number, number>();
	for (const [index, { number }] of lines.entries()) if (!places.has(number)) places.set(number, index);
	return labelled.map((entry) => {
		const first = places.get(entry.line) ?? 0;
		const count = entry.quote.split("\n").length;
		// Pieces of one line too long are told by their words alone.
		if (lines[first + 1]?.number === entry.line) return entry;
		const quote = lines
			.slice(first, first + count)
			.map(({ text }) => text.trimEnd())
			.join("\n")
			.trim();
		return { ...entry, quote };
	});
}

/** A line with its words in the terms that are read here; its quote stays as printed. */
export function termsOf(lines: readonly LabelledLine[]): readonly LabelledLine[] {
	const known = new Map<string, string>();
	const inTerms = (text: string): string => {
		const before = known.get(text);
		if (before !== undefined) return before;
		const told = inCaseTerms(text).trim();
		known.set(text, told);
		return told;
	};
	return lines.map((line) => ({
		...line,
		sections: line.sections.map(inTerms),
		label: line.label === undefined ? undefined : inTerms(line.label),
		value: inTerms(line.value) || line.value,
		cells: line.cells.map(inTerms),
	}));
}

/** Heads over other articles, or over what people who bought it write, in any of the languages. From memory. */
const otherWords =
	/customers\salso|also\s(?:bought|viewed|like)|others?\s(?:looked|bought)|you\s(?:may|might)|related\s(?:products|items|articles)|\brecommended\b|similar\s(?:products|items|cases)|bought\stogether|goes\swell|kunden\skauften|kauften\sauch|passend\sdazu|passende\s|das\skönnte|ähnliche\s|zubehör|empfohlen|^accessor|polecan[eay]|podobne|klienci|zobacz\s(?:też|także)|akcesoria|рекоменд|схожі|похожие|також\sкуп|также\sкуп|с\sэтим|з\sцим|аксес+уар|vous\saimerez|produits\s(?:similaires|associés)|accessoires|clients\sont|(?:también|relacionados|recomendad[oa]s|accesorios)|potrebbe|correlati|accessori|související|podobné\s|doporuč|zákazníci|příslušenství|também|relacionad[oa]s|semelhantes|acessórios|andere\sklanten|aanbevolen|vergelijkbar|benzer|önerilen|aksesuar|\breviews?\b|bewertung|\bavis\b|opinion[ei]s?|\bopinie\b|отзыв|відгук|recensi|recenze|avaliaç|yorumlar|\bfaq\b|questions|fragen|preguntas|pytania|питання|вопросы/iu;
const ownWords =
	/spec|technical|technisch|daten|données|caract|datos|scheda|dati|param|характ|данн|dane|údaje|especific|ficha|özellik|detail|data/iu;
const price = /(?:[€£$₴₺₽¥]\s?\d|\d\s?(?:[€£$₴₺₽¥]|zł|грн|руб|kč|kr\b|lei\b|eur\b|usd\b|pln\b|tl\b|chf\b|ft\b|,-))/iu;

/**
 * Without the lines that are about other articles, prices or people's questions: their figures are no facts of this
 * case. A line with a price that names several facts is kept.
 */
export function aboutThisCase(lines: readonly LabelledLine[]): readonly boolean[] {
	let isElsewhere = false;
	return lines.map(({ names, value, label, sections, cells }) => {
		const isHead = names || (label === undefined && value.length <= 60 && !/\d{2}/.test(value) && cells.length === 0);
		if (isHead && value.length <= 80) {
			const starts = otherWords.test(value);
			if (starts) isElsewhere = true;
			else if (names && (topicsIn(value).length > 0 || ownWords.test(value))) isElsewhere = false;
			if (starts) return false;
		}
		if (isElsewhere) return false;
		if ([...sections, label ?? ""].some((head) => head.length <= 60 && otherWords.test(head))) return false;
		if (/\?\s*$/.test(value) && label === undefined) return false;
		const topics = new Set(topicsIn(`${label ?? ""}: ${value}`).map(({ what }) => what));
		return !(price.test(value) && topics.size < 3);
	});
}
