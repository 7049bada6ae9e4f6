import type { BoardForm } from "../parts/vocabulary.ts";
import { caseBoardsIn, caseSupplyIn, sorted } from "./case-boards.ts";
import { caseSlotsIn, driveBaysIn } from "./case-counts.ts";
import { fansIn, radiatorsIn } from "./case-fans.ts";
import { type FrontSocket, frontPlugsOf, frontSocketsIn } from "./case-front.ts";
import { lengthsIn, soldLength } from "./case-lengths.ts";
import { aboutThisCase, labelsOf, termsOf } from "./case-lines.ts";
import { placesGathered } from "./case-places.ts";
import { type CasePlace, type CaseTopic, placesIn, topicsIn } from "./case-topics.ts";
import { type FactCollector, factCollector } from "./fact-collector.ts";
import type { LabelledLine } from "./labelled-lines.ts";
import { type PartReading, partOf, type ReadAt, type ReadDoubt, type ReadFact } from "./part-reading.ts";
import { textLines } from "./text-lines.ts";

/** More tellings of one fact than this are noise (own convention); they are left out, so that no text takes long. */
const mostTellings = 20;

/** No page of a case is longer; what is behind it counts as not read (own convention, for the same reason). */
const most = { lines: 4000, entries: 1500, letters: 50_000 } as const;

/** A run of a line with what it is about. */
interface Told {
	readonly topics: readonly CaseTopic[];
	/** Words that name the topic, and those between it and the run. */
	readonly head: string;
	readonly text: string;
	/** The label or the run itself names the topic, not only a head above. */
	readonly isOwn: boolean;
	readonly places: readonly CasePlace[];
	readonly at: ReadAt;
}

/** Reads the page of a case. Never throws; time is linear in the length of the text. */
export function readCase(text: string): PartReading<"case"> {
	const { lines } = textLines(text);
	const { entries, behind } = firstOf(labelsOf(lines.slice(0, most.lines)));
	const told = termsOf(entries);
	const isOwn = aboutThisCase(told);
	const collector = bounded(factCollector());
	const places = placesGathered();
	const lists: Lists = { boards: listsGathered(), supplies: listsGathered(), sockets: [], combined: [], caged: [] };
	const understood = new Set<number>();
	const seen = new Set<string>();
	const unread: { line: number; text: string }[] = [];
	let columns: readonly string[] = [];
	let stray: LabelledLine | undefined;
	let row: LabelledLine | undefined;
	let cooling: string | undefined;
	for (const { line: number, quote, names } of told.filter((_, index) => !isOwn[index]))
		if (!names) unread.push({ line: number, text: quote });
	for (const line of told.filter((_, index) => isOwn[index]).flatMap(partsOfLine)) {
		if (isStrayHead(line)) {
			stray = line;
			continue;
		}
		if (stray && !isBeside(line, stray)) stray = undefined;
		if (row && !isRowOf(line, row)) row = undefined;
		if (isRowHead(line)) row = line;
		const head = line.sections.findLast((section) => namesOf(section).some(isCooling));
		if (!isOnlyPlace(line.label ?? line.value)) cooling = undefined;
		else if (head !== undefined && !line.names) cooling = head;
		const entry =
			cooling !== undefined && head === undefined && !line.names && line.label !== undefined
				? { ...line, sections: [...line.sections, cooling] }
				: stray
					? { ...line, label: strayLabel(stray) }
					: row && line !== row
						? underRow(line, row)
						: line;
		const at = { line: entry.line, quote: entry.quote };
		const byPlace = placeColumns(entry);
		if (byPlace) {
			columns = byPlace;
			continue;
		}
		if (entry.cells.length > 1 && areColumns(entry)) {
			columns = entry.cells;
			continue;
		}
		let isRead = readSingles(entry, at, collector);
		if (!entry.names || entry.label !== undefined || isFactHead(entry)) {
			const runs = inColumns(entry, columns) ?? inPlaceColumns(entry, columns) ?? runsOf(entry, at);
			for (const run of runs) if (readRun(run, collector, places, lists)) isRead = true;
		}
		if (isRead) understood.add(entry.line);
		else if (!entry.names) unread.push({ line: entry.line, text: entry.quote });
	}
	for (const { line, quote } of behind) unread.push({ line, text: quote });
	for (const { number, text: left } of lines.slice(most.lines))
		if (left.trim() !== "") unread.push({ line: number, text: left.trim() });
	lists.boards.settle("boardForms", collector);
	lists.supplies.settle("supplyForms", collector);
	places.settle(collector);
	settleSockets(lists.sockets, collector);
	const before = collector.settled().facts;
	for (const { fact, might, at } of lists.caged)
		if (!before.some((one) => one.fact === fact))
			collector.doubted(fact, might, at, "The text gives the length without the drive cage only.");

	const { facts: all, doubts: asked } = collector.settled();
	const { facts, doubts } = withoutCombined(all, asked, lists.combined);
	const inOrder = facts.toSorted((one, other) => one.line - other.line);
	const { part, refused } = partOf("case", nameOf(entries), inOrder);
	const open = refused.map(
		({ fact, value, line, quote }): ReadDoubt => ({
			fact,
			might: [value],
			line,
			quote,
			why: "No case known here has this value.",
		}),
	);
	return {
		kind: "case",
		part,
		facts: inOrder.filter((fact) => !refused.includes(fact)),
		doubts: [...doubts, ...open],
		unread: unread
			.filter(({ line, text: words }) => {
				const key = `${line} ${words}`;
				const isNew = !seen.has(key) && !understood.has(line);
				seen.add(key);
				return isNew;
			})
			.toSorted((one, other) => one.line - other.line),
	};
}

/** Where some places take drives of either size, a count for 2.5 inch may have these in it or not. */
function withoutCombined(
	facts: readonly ReadFact[],
	doubts: readonly ReadDoubt[],
	combined: readonly ReadAt[],
): { readonly facts: readonly ReadFact[]; readonly doubts: readonly ReadDoubt[] } {
	const fact = "driveBays.inch25";
	const sure = facts.find((one) => one.fact === fact);
	const [at] = combined;
	if (!sure || !at) return { facts, doubts };
	const quote = [...new Set([sure.quote, at.quote])].join(" / ");
	const why = "Some places take drives of either size, and may be counted or not.";
	return {
		facts: facts.filter((one) => one !== sure),
		doubts: [...doubts, { fact, might: [sure.value], line: sure.line, quote, why }],
	};
}

/** As much as a page may have, and what is behind it. */
function firstOf(all: readonly LabelledLine[]): {
	readonly entries: readonly LabelledLine[];
	readonly behind: readonly LabelledLine[];
} {
	let letters = 0;
	const end = all.findIndex(({ value, label }, index) => {
		letters += value.length + (label?.length ?? 0);
		return index >= most.entries || letters > most.letters;
	});
	return end < 0 ? { entries: all, behind: [] } : { entries: all.slice(0, end), behind: all.slice(end) };
}

interface SocketsAt {
	readonly sockets: readonly FrontSocket[];
	readonly unclear: readonly string[];
	readonly at: ReadAt;
	readonly group: string;
}

interface Lists {
	readonly boards: ListsGathered<BoardForm>;
	readonly supplies: ListsGathered<string>;
	readonly sockets: SocketsAt[];
	/** Lengths without the drive cage, of which the case as sold has none. */
	readonly caged: { readonly fact: string; readonly might: readonly number[]; readonly at: ReadAt }[];
	/** Lines about places that take drives of either size. */
	readonly combined: ReadAt[];
}

/** Facts of one value that a line gives by its label alone. */
function readSingles({ label, value, names }: LabelledLine, at: ReadAt, collector: FactCollector): boolean {
	const whole = `${label ?? ""}: ${value}`;
	let isRead = false;
	if (label !== undefined && !names && topicsIn(label)[0]?.what === "colour") {
		const shown = value.trim();
		const several = shown.split(/\s?[/,;|]\s?|\s(?:or|oder)\s/).filter((one) => one !== "");
		if (several.length > 1)
			collector.doubted("colour", several.slice(0, 6), at, "The text names more than one colour.");
		else if (shown.length <= 40) collector.found("colour", shown, at);
		isRead = true;
	}
	if (/\bmesh[\s-]?front\b|\bfront(?:[\s-]?(?:panel|side|cover|blende))?\s?:?\s(?:\w+\s){0,2}mesh\b/i.test(whole)) {
		// Mesh as a filter behind a plate, or beside glass, is no open front.
		if (/glas|solid|closed|filter|acryl|geschlossen/i.test(whole))
			collector.doubted("frontOpen", ["mesh", "slits", "solid"], at, "The text names mesh and something else.");
		else collector.found("frontOpen", "mesh", at);
		isRead = true;
	} else if (/\b(?:closed|solid|geschlossene?)\s(?:front|vorderseite)\b/i.test(whole)) {
		collector.found("frontOpen", "solid", at);
		isRead = true;
	} else if (/^\W*front(?:[\s-]?(?:panel|side|cover|blende))?$/i.test(label ?? "") && /glas|acryl/i.test(value)) {
		collector.doubted("frontOpen", ["solid", "slits"], at, "A front of glass may have slits at its sides.");
		isRead = true;
	}
	if (/\b(?:back|reverse)[\s-]connect(?:ion|ors?)?\b/i.test(whole) && !/\bnot?\b|\bnicht\b|\bkein\w*/i.test(whole)) {
		collector.found("backCutOuts", true, at);
		isRead = true;
	}
	return isRead;
}

/** "Slots 7" over a table tells a fact, and nothing of what is below. */
const toldHead = /\b(?:slots?|bays?)\s\d{1,2}$/i;

/** A head that is a value itself: a bare line under a label may look like one. */
function isFactHead({ sections, value }: LabelledLine): boolean {
	if (toldHead.test(value)) return true;
	return sections.length > 0 && /\batx\b|\bitx\b|\bsfx\b/i.test(value);
}

/** A bare line that names a thing and tells nothing of it: what follows at its side stands under it. */
function isStrayHead({ names, value, cells, label }: LabelledLine): boolean {
	const bare = value.replace(/[\s:()/&-]+/g, " ").trim();
	return (
		!names &&
		cells.length === 0 &&
		bare.length <= 45 &&
		!/\d|usb|[ai]tx|sfx|\bglas/i.test(bare.replace(/(?<!\d)(?:[23][.,]5|5[.,]25)/g, "")) &&
		(namesOf(value).length > 0 || isOnlyPlace(value)) &&
		(label === undefined || namesOf(label).length === 0 || isOnlyPlace(value) || isOtherName(value, label)) &&
		!/^\W*(?:none|no|yes|ja|nein)\b/i.test(bare)
	);
}

/** The name of something else than the label's, or of the same at another place; nothing is told of it. */
function isOtherName(value: string, label: string): boolean {
	const names = namesOf(value);
	const [first] = topicsIn(value);
	if (!first) return false;
	// What is told of a thing begins with other words, and is more than its name: "included fans are quiet".
	const isName = value.trim().split(/\s+/).length <= 6 && !/[.!]$|,(?!\d)/.test(value.trim());
	const before = namesOf(label);
	if (!isName) return false;
	const place = (text: string) =>
		placesIn(text)
			.map(({ what }) => what)
			.join();
	return (
		names.some((name) => !before.includes(name)) ||
		place(value) !== place(label) ||
		sizeOfBay(value) !== sizeOfBay(label)
	);
}

const sizeOfBay = (text: string): string => /(?<![\d.,])(?:[23][.,]5|5[.,]25)/.exec(text)?.[0].replace(",", ".") ?? "";

function strayLabel({ label = "", value }: LabelledLine): string {
	if (isOnlyPlace(value)) return isOnlyPlace(label) ? value : `${label} ${value}`;
	return namesOf(label).length > 0 ? value : `${label} ${value}`;
}

/** "Fans [tab] Front [tab] 3 x 120 mm": the rows below begin with their place. */
function isRowHead({ label, cells }: LabelledLine): boolean {
	return cells.length === 2 && namesOf(label ?? "").some(isCooling) && isOnlyPlace(cells[0] ?? "");
}

function isOnlyPlace(text: string): boolean {
	const found = placesIn(text.trim());
	return (
		found.length > 0 &&
		found.reduce((left, { from, to }) => left - (to - from), text.trim().length) <= 3 * found.length - 3
	);
}

function isRowOf({ label, sections, cells, names }: LabelledLine, row: LabelledLine): boolean {
	return !names && cells.length === 0 && isOnlyPlace(label ?? "") && sections.join("\n") === row.sections.join("\n");
}

const underRow = (line: LabelledLine, row: LabelledLine): LabelledLine => ({
	...line,
	sections: [...line.sections, row.label ?? ""],
});

const innerLabel = /(?:[|;,•]|\s\/|\.(?=\s))\s*(?=([^|;:,•()]{2,40})[:：]\s?\S)/g;

/** "Front - 3 x 120 mm", "GPU = 330 mm" */
const dashed = /^([^-–—=:|,•]{2,44}?)\s?(?:\s[-–—=•]|=)\s?(\S.*)$/;
/** "GPU: 340 mm | CPU: 160 mm" is no row of a table. */
const labelWithValue = /^([^:]{2,44}):\s?([^:]*\d[^:]*)$/;

function isNameOnly(text: string): boolean {
	return (
		!/\d/.test(text.replace(/(?<!\d)(?:[23][.,]5|5[.,]25)/g, "")) && (isOnlyPlace(text) || namesOf(text).length > 0)
	);
}

/** "Board: ATX | GPU: 330 mm": several labels with their values on one line. */
function partsOfLine(line: LabelledLine): readonly LabelledLine[] {
	if (line.names) return [line];
	const [, own, start] = labelWithValue.exec(line.label ?? "") ?? [];
	if (own !== undefined && start !== undefined)
		return partsOfLine({ ...line, label: own.trim(), value: `${start} | ${line.value}`, cells: [] });
	const [, before, behind] = dashed.exec(line.value) ?? [];
	if (before !== undefined && behind !== undefined && isNameOnly(before)) {
		const sections = line.label === undefined ? line.sections : [...line.sections, line.label];
		return partsOfLine({ ...line, sections, label: before.trim(), value: behind.trim(), cells: [] });
	}
	const cuts = [...line.value.matchAll(innerLabel)]
		.filter(({ 1: label = "" }) => namesOf(label).length > 0 || (isOnlyPlace(label) && isOnlyPlace(line.label ?? "")))
		.map(({ index, 0: mark }) => ({ at: index, from: index + mark.length }));
	if (cuts.length === 0) return [line];
	const [first] = cuts;
	return [
		{ ...line, value: line.value.slice(0, first?.at), cells: [] },
		...cuts.map(({ from }, index): LabelledLine => {
			const text = line.value.slice(from, cuts[index + 1]?.at);
			const colon = text.search(/[:：]/);
			return { ...line, label: text.slice(0, colon).trim(), value: text.slice(colon + 1).trim(), cells: [] };
		}),
	].filter(({ value }) => value.trim() !== "");
}

function isBeside(line: LabelledLine, stray: LabelledLine): boolean {
	return !line.names && line.label === stray.label && line.sections.join("\n") === stray.sections.join("\n");
}

const sizeCell = /^(\d{2,3})\s?(?:mm|cm)(?:\sfans?)?$/i;

/** Cells that name columns: fans, radiators, or sizes of fans. */
function areColumns({ label, cells }: LabelledLine): boolean {
	return (
		placesIn(label ?? "").length === 0 &&
		topicsIn(label ?? "").length === 0 &&
		cells.every(
			(cell) => sizeCell.test(cell) || topicsIn(cell).some(({ what }) => what === "fan" || what === "radiator"),
		) &&
		cells.every((cell) => sizeCell.test(cell) || !/\d{2}/.test(cell))
	);
}

/** Names of columns that are places: "Front [tab] Top [tab] Rear". */
function placeColumns({ cells, names, value }: LabelledLine): readonly string[] | undefined {
	const told = cells.length > 0 ? cells : names ? value.split(" | ") : [];
	const columns = isOnlyPlace(told[0] ?? "") ? told : told.slice(1);
	return columns.length > 1 && columns.every(isOnlyPlace) ? columns : undefined;
}

/** The cells of a row about fans or radiators, each under its place. */
function inPlaceColumns(
	{ label = "", cells, sections, line, quote }: LabelledLine,
	columns: readonly string[],
): readonly Told[] | undefined {
	if (columns.length < 2 || cells.length !== columns.length || !columns.every(isOnlyPlace)) return undefined;
	const size = /(?<![\d.,])\d{2,3}\s?(?:mm|cm)/i.exec(label)?.[0];
	const named = [label, ...sections.toReversed()].map(namesOf).find((topics) => topics.some(isCooling));
	const topics = named ?? (size === undefined ? undefined : ["fan" as const]);
	if (!topics) return undefined;
	return cells.flatMap((cell, index): readonly Told[] => {
		const digit = /^\W*(\d{1,2})\s?x?\W*$/.exec(cell)?.[1];
		if (digit !== undefined && size === undefined) return [];
		const text = digit === undefined ? cell : `${digit} x ${size}`;
		if (!/\d/.test(text)) return [];
		const places = placesIn(columns[index] ?? "").map(({ what }) => what);
		return [{ topics, head: label, text, isOwn: true, places, at: { line, quote } }];
	});
}

/** The cells of a row about a place, each under its column. */
function inColumns(
	{ label, cells, line, quote }: LabelledLine,
	columns: readonly string[],
): readonly Told[] | undefined {
	const places = placesIn(label ?? "").map(({ what }) => what);
	if (columns.length < 2 || cells.length !== columns.length || places.length === 0) return undefined;
	return cells.flatMap((cell, index): readonly Told[] => {
		const column = columns[index] ?? "";
		const size = sizeCell.exec(column);
		const digit = /^\W*(\d{1,2})\s?x?\W*$/.exec(cell)?.[1];
		if (size && digit === undefined) return [];
		const text = size ? `${digit} x ${column}` : cell;
		const topics = size ? ["fan" as const] : [...new Set(topicsIn(column).map(({ what }) => what))];
		return [{ topics, head: column, text, isOwn: true, places, at: { line, quote } }];
	});
}

const conditionWords =
	/\b(?:(?:drive|hdd|ssd|front)[\s-])?(?:cages?|bays?|racks?|radiators?|laufwerkskäfig|käfig)\s(?:is\s|are\s)?(?:fitted|installed|mounted|removed|taken\sout|in\splace|entfernt|ausgebaut|eingebaut)\b|(?<![\w/])(?:w\/o|w\/|with|without|mit|ohne|when|if|wenn|falls|bei|incl\.?|including|inkl\.?|no|behind|hinter)\s?[^,;()|:]{0,40}?\b(?:radiators?|(?:water|liquid)[\s-]?cool\w*|aios?|fans?|lüfter|cages?|drive\w*|hdds?|laufwerk\w*|festplatten\w*|käfige?|wakü|wasserkühl\w*|psu|power\ssupply)\b/gi;
const strip = (text: string): string => text.replace(conditionWords, (match) => "_".repeat(match.length));
const namesOf = (text: string): readonly CaseTopic[] => [...new Set(topicsIn(strip(text)).map(({ what }) => what))];

/** Cuts a line into runs that are each about one thing, by their own words, the label, or the heads above. */
function runsOf({ label = "", sections, value }: LabelledLine, at: ReadAt): readonly Told[] {
	const byLabel = namesOf(label);
	const above = sections.toReversed().find((section) => namesOf(section).length > 0 && !toldHead.test(section));
	const around = byLabel.length > 0 ? byLabel : above === undefined ? [] : namesOf(above);
	const placesOf = (text: string) => placesIn(text).map(({ what }) => what);
	const own = placesOf(label);
	const places =
		own.length > 0
			? own
			: (sections
					.toReversed()
					.filter((section) => isOnlyPlace(section) || namesOf(section).some(isCooling))
					.map(placesOf)
					.find((some) => some.length > 0) ?? []);
	const head = byLabel.length > 0 || above === undefined ? label : `${above} ${label}`;
	const base: Told = { topics: around, head, text: value, isOwn: byLabel.length > 0, places, at };
	const [topic] = around;
	if (topic !== undefined && !isLength(topic) && !isCooling(topic)) {
		const end = sentenceEnd(value, byLabel.length > 0 ? byLabel : around);
		if (end === undefined) return [base];
		const rest = piecesOf(value.slice(end)).map((piece) =>
			under({ ...base, topics: [], head: "", isOwn: false }, piece),
		);
		return [{ ...base, text: value.slice(0, end) }, ...rest];
	}
	const pieces = piecesOf(value);
	if (topic !== undefined && isCooling(topic)) {
		// Under a head for cooling, only a piece about something else is cut out.
		const isOther = pieces.some(({ topics }) => topics.some((one) => !isCooling(one)));
		return isOther ? pieces.map((piece) => under(base, piece)) : [base];
	}
	// Under a label of its own a length stays what it is, unless a piece begins with another name.
	const isTold = ({ topics, text }: Piece) =>
		topics.length > 0 && (byLabel.length === 0 || /^\D{0,14}$/.test(text.slice(0, topicsIn(text)[0]?.from)));
	if (!pieces.some(isTold)) return [base];
	return pieces.map((piece) =>
		isTold(piece) ? under({ ...base, head: label }, piece) : { ...base, text: piece.text },
	);
}

/** Where a value goes on with a sentence about something else. */
function sentenceEnd(value: string, topics: readonly CaseTopic[]): number | undefined {
	return [...value.matchAll(/\.\s(?=\p{Lu})/gu)].find(({ index }) => {
		const named = namesOf(value.slice(index, index + 200));
		return named[0] !== undefined && !topics.includes(named[0]);
	})?.index;
}

const isLength = (topic: CaseTopic): boolean => topic === "card" || topic === "cooler" || topic === "supply";
const isCooling = (topic: CaseTopic): boolean => topic === "fan" || topic === "radiator";

interface Piece {
	readonly topics: readonly CaseTopic[];
	readonly text: string;
}

function under(base: Told, { topics, text }: Piece): Told {
	return topics.length === 0 ? { ...base, text } : { ...base, topics, text, isOwn: true };
}

const pieceEnd = /[;|•\n]|,\s|\.\s|\s(?:and|und|sowie|as\swell\sas)\s/gi;

/** Within a list of board forms nothing is cut. */
const formBefore = /(?:[aid]tx|[ec]eb)\)?$/i;
const formBehind =
	/^[\s,;|]*(?:(?:and|und|or|oder)\s)?(?:(?:micro|mini|extended|ssi|m|e|µ)[\s-]?)?(?:[aid]tx|[ec]eb)\b/i;

/** Pieces of a value, each with what it names; a piece that names nothing belongs to the one before it. */
function piecesOf(value: string): readonly Piece[] {
	const cuts: number[] = [];
	let depth = 0;
	let last = 0;
	for (const found of value.matchAll(pieceEnd)) {
		for (; last < found.index; last++) depth += value[last] === "(" ? 1 : value[last] === ")" ? -1 : 0;
		const isList =
			formBefore.test(value.slice(Math.max(0, found.index - 14), found.index)) &&
			formBehind.test(value.slice(found.index, found.index + 28));
		if (depth <= 0 && !isList) cuts.push(found.index);
	}
	const texts = [0, ...cuts].map((from, index) => value.slice(from, cuts[index] ?? value.length));
	const named = texts.map(namesOf);
	const pieces: { topics: readonly CaseTopic[]; text: string }[] = [];
	for (const [index, text] of texts.entries()) {
		const before = pieces.at(-1);
		const topics = named[index] ?? [];
		// "At the front, three fans": the place goes with what follows.
		if (before && before.topics.length === 0 && isPlaceOnly(before.text)) {
			before.text += text;
			before.topics = topics;
			continue;
		}
		const behind = named[index + 1] ?? [];
		if (before && topics.length === 0 && isPlaceOnly(text) && (behind.length > 0 || !before.topics.some(isCooling))) {
			pieces.push({ topics: [], text });
			continue;
		}
		// A new sentence that names nothing goes on only with places.
		const isSentence = /^\.\s/.test(text) && topics.length === 0;
		if (before && isSentence && !(before.topics.some(isCooling) && placesIn(text).length > 0)) {
			pieces.push({ topics: [], text });
			continue;
		}
		if (before && (topics.length === 0 || topics.join() === before.topics.join())) before.text += text;
		else pieces.push({ topics, text });
	}
	// "GPU 330 mm CPU cooler 165 mm": nothing parts them but the names.
	return pieces.flatMap(({ topics, text }) => (topics.length > 1 ? atNames(text) : [{ topics, text }]));
}

/** Few words, a place among them, and no figure. */
const isPlaceOnly = (text: string): boolean =>
	placesIn(text).length > 0 && !/\d/.test(text) && text.split(/\s+/).length <= 7;

function atNames(text: string): readonly Piece[] {
	const names = topicsIn(strip(text)).filter(({ what }) => isLength(what));
	const starts = names.filter(({ what }, index) => names[index - 1]?.what !== what);
	const [first] = starts;
	const hasFigures = starts.every(({ to }, index) => /\d{2}/.test(text.slice(to, starts[index + 1]?.from)));
	if (starts.length < 2 || !first || /\d{2}/.test(text.slice(0, first.from)) || !hasFigures)
		return [{ topics: [...new Set(topicsIn(strip(text)).map(({ what }) => what))], text }];
	return starts.map(({ what, from }, index) => ({ topics: [what], text: text.slice(from, starts[index + 1]?.from) }));
}

function readRun(
	run: Told,
	collector: FactCollector,
	places: ReturnType<typeof placesGathered>,
	lists: Lists,
): boolean {
	const { topics, head, text, at } = run;
	const [topic, second] = topics;
	const hasBoth = topics.includes("fan") && topics.includes("radiator");
	switch (topic) {
		case "front sockets":
			return readSockets(run, lists.sockets);
		case "slots":
			return readSlots(text, head, at, collector);
		case "bays":
			return readBays(text, head, at, collector, lists.combined);
		case "board":
			return readBoards(run, collector, lists.boards);
		case "supply": {
			const { forms, includedW } = caseSupplyIn(text);
			if (forms.length > 0) lists.supplies.add(head, forms, at);
			if (includedW !== undefined) collector.found("supplyIncludedW", includedW, at);
			const hasLength = second === undefined && readLength(run, "supply", collector, lists);
			return hasLength || forms.length > 0 || includedW !== undefined;
		}
		case "card":
		case "cooler":
			if (second !== undefined && isLength(second)) return readTwo(run, topic, second, collector);
			return readLength(run, topic, collector, lists);
		case "fan":
		case "radiator":
			return readCooling(run, hasBoth, collector, places);
		default:
			return (
				topic === undefined && isByShape(run) && readCooling({ ...run, topics: ["fan"] }, false, collector, places)
			);
	}
}

/** "Front: 3 x 120 mm" under no head at all, or one about cooling. */
function isByShape({ places, text }: Told): boolean {
	return (
		(places.length > 0 || /^[^\d,]{0,30}$/.test(text.slice(0, placesIn(text)[0]?.to ?? 60))) &&
		placeShape(text, places.length > 0)
	);
}

function placeShape(text: string, isUnder: boolean): boolean {
	// "Front takes 3 x 120 or 2 x 140, top 2 x 120": nothing but fans is counted by these sizes.
	if (!isUnder) return /^[^\d,]{0,40}\b\d\s?[x×]\s?(?:92|120|140|200)\s?(?:mm)?(?![\d.]|\s?[x×])/i.test(text);
	return /^\W*\d{1,2}\s?[x×]\s?(?:80|92|120|140|200)\s?(?:mm)?\b|^\W*[1-9]\s?[x×]\s?(?:12|14|20)\s?cm\b/i.test(text);
}

function readSockets(
	{ text, head, at, isOwn }: Pick<Told, "text" | "head" | "at" | "isOwn">,
	found: SocketsAt[],
): boolean {
	if (/\bhub|control|\bled\b|\bheader/i.test(head) && !/i\s?\/\s?o|port|front/i.test(head)) return false;
	// "USB 3.0: 2" and "Headphone: 1" name the socket before the count.
	if (/^\W*usb\W*$/i.test(head) && /^\W*[23]\.\d/.test(text))
		return readSockets({ text: `USB ${text}`, head: "", at, isOwn }, found);
	const count = /^\W*(\d{1,2})\s?x?\W*$/i.exec(text)?.[1];
	const label = head.replace(/^.*\b(?:ports?|i\/o|panel|connectors?|anschlüsse|front)\b\W*(?=\w)/i, "");
	const named =
		count === undefined && !isSocketLabel.test(head)
			? text
			: count === undefined
				? `${text} ${label}`
				: `${count} x ${label}`;
	const { sockets, unclear } = frontSocketsIn(isSocketLabel.test(text) && count === undefined ? text : named);
	if (sockets.length === 0 && unclear.length === 0) return false;
	if (found.length < 60) found.push({ sockets, unclear, at, group: isOwn ? "" : head.slice(0, 60) });
	return true;
}

const isSocketLabel = /\busb|type-?[ac]\b|audio|mic|headphone|kopfhörer|mikrofon|sound/i;

function readSlots(text: string, label: string, at: ReadAt, collector: FactCollector): boolean {
	const { cardSlots, uprightSlots, isUprightUnnamed, might } = caseSlotsIn(text, label);
	if (cardSlots !== undefined) collector.found("cardSlots", cardSlots, at);
	if (uprightSlots !== undefined)
		collector.found("uprightSlots", uprightSlots, at, isUprightUnnamed ? "assumed" : "stated");
	if (might.length > 0) collector.doubted("cardSlots", might, at, "The text gives more than one count of slots.");
	return cardSlots !== undefined || uprightSlots !== undefined || might.length > 0;
}

function readBays(text: string, label: string, at: ReadAt, collector: FactCollector, combined: ReadAt[]): boolean {
	const { inch35, inch25, open, isCombined } = driveBaysIn(text, label);
	if (isCombined && combined.length < 4) combined.push(at);
	if (inch35 !== undefined) collector.found("driveBays.inch35", inch35, at);
	if (inch25 !== undefined) collector.found("driveBays.inch25", inch25, at);
	for (const { size, might } of open)
		collector.doubted(
			`driveBays.${size}`,
			might,
			at,
			"Places take drives of either size, or one set instead of another.",
		);
	return inch35 !== undefined || inch25 !== undefined || open.length > 0;
}

function readBoards({ text, head, at }: Told, collector: FactCollector, boards: ListsGathered<BoardForm>): boolean {
	if (/\btower\b|\bdesktop\b/i.test(text) && !/board/i.test(`${head} ${text}`)) return false;
	if (/\b(?:case|chassis|gehäuse\w*)\b/i.test(head) && !/board|compat|support/i.test(head)) return false;
	const { forms, isUpTo, isUnclear, maxDepthMm } = caseBoardsIn(text);
	if (forms.length === 0) return false;
	const isWeak = /form/i.test(head) && !/board|m\/b|support|kompat|compat/i.test(head) && forms.length === 1;
	if (isUnclear)
		collector.doubted("boardForms", [forms], at, "The text says of a size that it does not fit, or not wholly.");
	else if (isWeak && !isUpTo) collector.doubted("boardForms", [forms], at, "This may be the name of the case's size.");
	else if (isUpTo) collector.found("boardForms", forms, at, "assumed");
	else boards.add(head, forms, at);
	if (maxDepthMm !== undefined) collector.found("boardMaxDepthMm", maxDepthMm, at);
	return true;
}

/** Facts of lengths, with the figures that can be one: a slip of a digit or another figure is left out (own convention). */
const lengthFacts = {
	card: { fact: "cardMaxLengthMm", way: "length", least: 140, most: 700 },
	cooler: { fact: "coolerMaxHeightMm", way: "height", least: 25, most: 250 },
	supply: { fact: "supplyMaxLengthMm", way: "length", least: 90, most: 350 },
} as const;
const aboutLength =
	/max|length|länge|clearance|support|height|höhe|\bwith|\bmit\b|\bohne\b|\bw\/|size|limit|compat|kompat|thick|dicke|width|breite|room|space|platz|abstand/i;

/** "Cards longer than 305 mm need the cage out" gives no limit of the case. */
const beyond = /(?<!\b(?:no|not|nicht)\s)\b(?:longer|taller|higher|deeper|larger|länger|höher)\s(?:than|als)\b/i;

function readLength(run: Told, topic: keyof typeof lengthFacts, collector: FactCollector, lists: Lists): boolean {
	const { fact, way, least, most } = lengthFacts[topic];
	const { head, text, at, isOwn } = run;
	if (!isOwn && head.includes(" ") && !aboutLength.test(head)) return false;
	if (beyond.test(text)) return false;
	const read = lengthsIn(text, head, head !== "");
	const { mm, withRadiatorMm, heightMm, might } = soldLength(read, way, least, most);
	if (mm !== undefined) collector.found(fact, mm, at);
	const isUncaged = might.length > 0 && read.lengths.every(({ given }) => given.has("without cage"));
	if (isUncaged && lists.caged.length < mostTellings) lists.caged.push({ fact, might, at });
	else if (might.length > 0)
		collector.doubted(fact, might, at, "The text gives lengths and does not say clearly which holds.");
	if (topic === "card") {
		if (withRadiatorMm !== undefined) collector.found("cardMaxLengthWithRadiatorMm", withRadiatorMm, at);
		if (heightMm !== undefined) collector.found("cardMaxHeightMm", heightMm, at);
	}
	return mm !== undefined || might.length > 0 || withRadiatorMm !== undefined || heightMm !== undefined;
}

/** "GPU / CPU cooler: 330 mm / 165 mm": as many lengths as names, in their order; else it is a doubt. */
function readTwo(run: Told, one: CaseTopic, other: CaseTopic, collector: FactCollector): boolean {
	const { lengths, isUnclear } = lengthsIn(run.text, "", false);
	if (lengths.length === 0) return false;
	const topics = [one, other] as readonly (keyof typeof lengthFacts)[];
	const isSure = run.head !== "" && run.topics.length === 2 && lengths.length === 2 && !isUnclear;
	for (const [index, topic] of topics.entries()) {
		const { fact, least, most } = lengthFacts[topic];
		const mm = lengths[index]?.mm;
		if (isSure && mm !== undefined && lengths[index]?.given.size === 0 && mm >= least && mm <= most)
			collector.found(fact, mm, run.at);
		else
			collector.doubted(
				fact,
				lengths.map((length) => length.mm).slice(0, 6),
				run.at,
				"The text names two things in one breath.",
			);
	}
	return true;
}

function readCooling(
	{ text, head, places: around, topics, at }: Told,
	hasBoth: boolean,
	collector: FactCollector,
	places: ReturnType<typeof placesGathered>,
): boolean {
	let isRead = false;
	const namesBoth =
		topicsIn(text).some(({ what }) => what === "radiator") && topicsIn(text).some(({ what }) => what === "fan");
	const named = topicsIn(text).find(({ what }) => isCooling(what))?.what;
	const isMixed = hasBoth || namesBoth || (named !== undefined && topics[0] !== named && topics.length === 1);
	const parts = isMixed ? separated(text) : undefined;
	const fanText = parts ? parts.fans : topics.includes("fan") ? text : "";
	const radiatorText = parts ? parts.radiators : topics.includes("radiator") ? text : "";
	const areFitted =
		/includ|inkl|pre-?\s?(?:installed|fitted)|vorinstalliert|vormontiert|mitgeliefert|\bfitted\b|supplied/i.test(head);
	if (fanText !== "") {
		const { told, doubts } = fansIn(fanText, around, areFitted);
		places.fans(told, at);
		for (const { might, why } of doubts) collector.doubted("fanPlaces", might, at, why);
		isRead ||= told.length > 0 || doubts.length > 0;
	}
	if (radiatorText !== "") {
		const { told, doubts, isNone } = radiatorsIn(radiatorText, around, hasBoth && !namesBoth);
		places.radiators(told, at);
		for (const { might, why } of doubts) collector.doubted("radiatorPlaces", might, at, why);
		if (isNone && topics.length === 1) collector.found("radiatorPlaces", [], at);
		isRead ||= told.length > 0 || doubts.length > 0 || isNone;
	}
	return isRead;
}

/** Fans and radiators of one text apart: each keeps the place it stands under. */
function separated(text: string): { readonly fans: string; readonly radiators: string } {
	const pieces = text.split(/(?<=[,;|/+()])|(?=\s(?:or|oder|and|und)\s)/);
	if (!/radiator|cool|kühl|aio|wakü/i.test(text)) return { fans: text, radiators: text };
	const fans: string[] = [];
	const radiators: string[] = [];
	let isRadiator = false;
	for (const piece of pieces) {
		const [named] = topicsIn(piece).filter(({ what }) => isCooling(what));
		if (named) isRadiator = named.what === "radiator";
		else if (placesIn(piece).length > 0) isRadiator = false;
		(isRadiator ? radiators : fans).push(piece);
		// The other keeps the names of places, so that what follows finds its own.
		const [place] = placesIn(piece);
		if (place) (isRadiator ? fans : radiators).push(`${piece.slice(place.from, place.to)}: `);
	}
	return { fans: fans.join(" "), radiators: radiators.join(" ") };
}

function settleSockets(found: readonly SocketsAt[], collector: FactCollector): void {
	const [first] = found;
	if (!first) return;
	const quote = [...new Set(found.map(({ at }) => at.quote))].slice(0, 8).join(" / ");
	const at = { line: first.at.line, quote };
	// A list printed twice counts once.
	const lines = found.filter((one, index) => found.findIndex((other) => namesIn(other) === namesIn(one)) === index);
	const whole = lines.filter(({ sockets }) => sockets.length > 1);
	const isTwoLists = whole.length > 1 && whole.every(({ sockets }) => sockets.some(({ usb }) => usb));
	const sockets = lines.flatMap((one) => one.sockets);
	const unclear = lines.flatMap((one) => one.unclear);
	const names = sockets
		.flatMap(({ name, count }) => Array.from({ length: Math.min(count, 8) }, () => name))
		.slice(0, 24);
	if (isTwoLists || unclear.length > 0) {
		const why = isTwoLists
			? "The text has two lists that differ."
			: `It is not clear what this means: ${unclear[0]?.slice(0, 60)}.`;
		collector.doubted("frontSockets", [names], at, why);
		return;
	}
	if (names.length === 0) return;
	collector.found("frontSockets", names, at);
	const plugs = frontPlugsOf(sockets);
	if (!plugs)
		collector.doubted("frontPlugs", [], at, "Which plug such a socket's cable has is not certain: look at the cable.");
	else for (const [index, plug] of plugs.entries()) collector.found(`frontPlugs[${index}]`, plug, at, "assumed");
}

const namesIn = ({ sockets, unclear }: SocketsAt): string =>
	JSON.stringify([sockets.map(({ name, count }) => [name, count]), unclear]);

interface ListsGathered<T> {
	/** Entries under one label are one list, be it over several lines. */
	add(label: string, entries: readonly T[], at: ReadAt): void;
	/** The longest list, if it holds all that the others name; else a doubt. */
	settle(fact: string, collector: FactCollector): void;
}

function listsGathered<T>(): ListsGathered<T> {
	const found = new Map<string, { entries: Set<T>; at: ReadAt[] }>();
	return {
		add(label, entries, at) {
			const before = found.get(label) ?? { entries: new Set<T>(), at: [] };
			for (const entry of entries) before.entries.add(entry);
			if (before.at.length < 8) before.at.push(at);
			found.set(label, before);
		},
		settle(fact, collector) {
			const all = [...found.values()].toSorted((one, other) => other.entries.size - one.entries.size).slice(0, 12);
			const [longest] = all;
			if (!longest) return;
			for (const { entries, at } of all) {
				if (entries !== longest.entries && [...entries].every((entry) => longest.entries.has(entry))) continue;
				const value = fact === "boardForms" ? sorted([...entries] as BoardForm[]) : [...entries];
				const quote = [...new Set(at.map((one) => one.quote))].join(" / ");
				collector.found(fact, value, { line: at[0]?.line ?? 1, quote });
			}
		},
	};
}

const nameLabels: readonly RegExp[] = [
	/^(?:product\s?name|produktname|produktbezeichnung|model\s?name|modellname)$/i,
	/^(?:name|bezeichnung)$/i,
	/^(?:model|modell|modelo|modèle)$/i,
];

/** By its label, else the title: a first line that is short and says nothing else. */
function nameOf(entries: readonly LabelledLine[]): string | undefined {
	for (const pattern of nameLabels) {
		const named = entries.find(
			({ label, names, value }) => label && !names && pattern.test(label.trim()) && value.length <= 120,
		);
		if (named) return named.value;
	}
	const [title] = entries;
	const isTitle =
		title !== undefined &&
		title.label === undefined &&
		title.value.length <= 80 &&
		/\p{L}/u.test(title.value) &&
		namesOf(title.value).length === 0 &&
		!/[.:!?|]$/.test(title.value) &&
		!/\bspecs?\b|\bspecifications?\b|technische|technical|\bdetails?\b|\bdaten\b|overview|features|eigenschaften|\bcase\stype\b|\bsupport\b/i.test(
			title.value,
		);
	return isTitle ? title.value : undefined;
}

/** A collector that takes no more than so many tellings of a fact. */
function bounded(collector: FactCollector): FactCollector {
	const told = new Map<string, number>();
	const isFull = (fact: string) => {
		const before = told.get(fact) ?? 0;
		told.set(fact, before + 1);
		return before >= mostTellings;
	};
	return {
		found(fact, value, at, standing) {
			if (!isFull(fact)) collector.found(fact, value, at, standing);
		},
		doubted(fact, might, at, why) {
			if (!isFull(`${fact}?`)) collector.doubted(fact, might, at, why);
		},
		settled: () => collector.settled(),
	};
}
