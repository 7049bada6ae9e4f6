import { boardConnectorFaults } from "../parts/board-connector-faults.ts";
import type { BoardForm } from "../parts/vocabulary.ts";
import { boardForms } from "../reference/board-forms.ts";
import {
	counted,
	drivePorts,
	fanHeaders,
	joinedPlugs,
	lightHeaders,
	namedDrivePorts,
	namedFans,
	networkOf,
	pictureSockets,
	processorPlugs,
	soundChannels,
	wirelessOf,
} from "./board-counted.ts";
import { type BoardLine, boardLines } from "./board-lines.ts";
import { boardM2 } from "./board-m2.ts";
import { boardMemory } from "./board-memory.ts";
import { chipsetName, socketNames } from "./board-names.ts";
import { boardOdds } from "./board-odds.ts";
import { sharingNotes } from "./board-sharing-notes.ts";
import { boardSlots, generationNote, withGenerations } from "./board-slots.ts";
import { boardUsb } from "./board-usb.ts";
import { continuedLines } from "./continued-lines.ts";
import { type FactCollector, factCollector } from "./fact-collector.ts";
import { labelledLines } from "./labelled-lines.ts";
import { type ListEntry, wholeList, withoutRepeats } from "./list-blocks.ts";
import { pageLines } from "./page-lines.ts";
import { type PartReading, partOf, type ReadDoubt, type ReadFact, type UnreadLine } from "./part-reading.ts";
import { onlyOf } from "./quantities.ts";
import { readSize } from "./read-size.ts";
import { otherSideLabel, widthLabel } from "./side-labels.ts";
import { wideRows } from "./wide-rows.ts";
import { words } from "./words.ts";

/** Lines that a page may be cut into, for its tables have many cells; own convention, so that no text takes long. */
const mostRows = 3000;

/** What a pasted page tells of a board. Pure; never throws; time grows with the length of the text. */
export function readBoard(text: string): PartReading<"board"> {
	const page = pageLines(text);
	const labelled = wideRows(labelledLines(page.lines)).map((one) => {
		const quote = page.quotes.get(one.line);
		return quote === undefined || one.quote.includes("\n") ? one : { ...one, quote };
	});
	const all = continuedLines(boardLines(labelled.slice(0, mostRows)));
	const lines = all.slice(0, mostRows);
	const used = new Set<number>();
	const collector = noting(factCollector(), used);
	const lists: ReadFact[] = [];
	const doubts: ReadDoubt[] = [];
	const put = (told: Told) => {
		for (const fact of told.facts) lists.push(fact);
		for (const doubt of told.doubts) doubts.push(doubt);
		for (const line of told.lines ?? []) used.add(line);
	};

	for (const told of readAll(lines, collector, used)) put(told);

	const settled = collector.settled();
	const name = nameOf(lines);
	if (name) used.add(name.line);
	const { part, facts, refused } = soundPart(name?.name, [...settled.facts, ...lists]);
	const allDoubts = [...settled.doubts, ...doubts, ...refused];
	for (const { line } of [...facts, ...allDoubts]) used.add(line);
	return {
		kind: "board",
		part,
		facts,
		doubts: allDoubts,
		unread: [
			...unreadLines(all, used),
			...unreadPieces(lines, used),
			...labelled.slice(mostRows).map(({ line, quote }) => ({ line, text: quote })),
			...page.tail
				.filter((line) => line.text.trim() !== "")
				.map(({ number, text: words }) => ({ line: number, text: words.trim() })),
		],
	};
}

/** All that lines tell: single facts go into the collector, lists are given back. */
function readAll(lines: readonly BoardLine[], collector: FactCollector, used: Set<number>): readonly Told[] {
	for (const line of boardMemory(lines, collector)) used.add(line);
	for (const line of boardOdds(lines, collector)) used.add(line);
	singleFacts(lines, collector, used);
	networkList(lines, collector, used);
	return [connectorLists(lines), usbLists(lines)];
}

/** A longer text in pieces is a page without lines; what is left of it is no list of a few things. */
const mostPieces = 300;

/** Pieces of a line of which other pieces told something: read by themselves they tell nothing. */
function unreadPieces(lines: readonly BoardLine[], used: ReadonlySet<number>): readonly UnreadLine[] {
	const pieces = lines.filter(
		(one, index) =>
			!one.isHead && used.has(one.line) && (lines[index - 1]?.line === one.line || lines[index + 1]?.line === one.line),
	);
	return pieces.slice(0, mostPieces).flatMap((one) => {
		const alone = new Set<number>();
		const told = readAll([one], noting(factCollector(), alone), alone);
		const isUsed =
			alone.size > 0 ||
			told.some(({ facts, doubts, lines: its }) => facts.length + doubts.length + (its ?? []).length > 0);
		return isUsed || one.value.length < 3 ? [] : [{ line: one.line, text: one.value }];
	});
}

/** What is told once more is understood, though it gives no fact of its own. */
function noting(collector: FactCollector, used: Set<number>): FactCollector {
	return {
		...collector,
		found(fact, value, at, standing) {
			used.add(at.line);
			collector.found(fact, value, at, standing);
		},
	};
}

const listOf = (fact: string): string => fact.replace(/\[\d+\]$/, "");

/** The part of what is sound. A list with one entry that is not is no list to go by, and groups that share need theirs. */
function soundPart(
	name: string | undefined,
	told: readonly ReadFact[],
): { readonly part: PartReading<"board">["part"]; readonly facts: readonly ReadFact[]; readonly refused: ReadDoubt[] } {
	let facts = told;
	const refused: ReadDoubt[] = [];
	for (;;) {
		const made = partOf("board", name, facts);
		const bad = new Set(made.refused.map(({ fact }) => listOf(fact)));
		if (bad.size === 0 && boardConnectorFaults(made.part, "board").length > 0) bad.add("sharing");
		const out = facts.filter(({ fact }) => bad.has(listOf(fact)));
		// Each turn leaves a fact out, or is the last.
		if (out.length === 0) return { part: made.part, facts, refused };
		for (const path of bad) refused.push(...refusedDoubt(out.filter(({ fact }) => listOf(fact) === path)));
		facts = facts.filter((fact) => !out.includes(fact));
	}
}

function refusedDoubt(out: readonly ReadFact[]): readonly ReadDoubt[] {
	const [first] = out;
	if (!first) return [];
	const fact = listOf(first.fact);
	const values = out.map(({ value }) => value);
	return [
		{
			fact,
			might: [fact === first.fact ? values[0] : values],
			line: first.line,
			quote: quotesOf(out),
			why: "No board known here has this value.",
		},
	];
}

const quotesOf = (told: readonly { readonly quote: string }[]): string =>
	[...new Set(told.map(({ quote }) => quote))].join(" / ").slice(0, 1000);

function unreadLines(lines: readonly BoardLine[], used: ReadonlySet<number>): readonly UnreadLine[] {
	const seen = new Set<number>();
	return lines.flatMap(({ line, isHead, quote }) => {
		if (isHead || used.has(line) || seen.has(line)) return [];
		seen.add(line);
		return [{ line, text: quote }];
	});
}

/** A row that gives the model, else the first line where it is a title. */
function nameOf(lines: readonly BoardLine[]): { readonly name: string; readonly line: number } | undefined {
	const label =
		/^(?:model|modell|modelo|modèle|модель|product(?:\sname)?|produkt(?:name)?|name|part\sname)(?:\s(?:name|no\.?|number))?$/iu;
	const row = lines.find((line) => label.test(line.label) && line.value.length <= 120);
	const named = (line: BoardLine) => ({ name: printedName(line), line: line.line });
	if (row) return named(row);
	const isTitle = ({ label: its, topic, value, line }: BoardLine) =>
		its === "" &&
		(topic === undefined || (topic === "overview" && line === lines[0]?.line)) &&
		value.length >= 3 &&
		value.length <= 100 &&
		!/^\d|[.!?]$| [>|] |[€$%]|^(?:socket|sockel|chip\s?set|chipsatz)\b/iu.test(value);
	const titles = lines.slice(0, 10).filter(isTitle);
	// Menus stand before it on shop pages; a name of a board has figures among its letters.
	const title =
		titles.find(({ value }) => /(?=[\w-]*\p{Lu})(?=[\w-]*\d)[\p{L}\d-]{2,}/u.test(value)) ??
		titles.find((line) => line === lines[0]);
	return title && named(title);
}

const boardWord =
	/^(?:motherboard|mainboard|hauptplatine|carte\sm[eè]re|placa(?:\s|-)(?:base|madre|m[aã]e)|płyta\sgłówna|scheda\smadre|moederbord|základní\sdeska|материнськ\p{L}+\s+плат\p{L}+|материнск\p{L}+\s+плат\p{L}+)[\s:,-]+|[\s:,-]+(?:motherboard|mainboard|hauptplatine|scheda\smadre|moederbord|placa\sbase)$/giu;

/** The name as the page prints it, without "mainboard" before or behind it; not in standard terms, as the value is. */
function printedName({ quote, label, value }: BoardLine): string {
	const [first = ""] = quote.split("\n");
	const plain = first
		.replace(/^[\s#*•·–-]+|[*_`]{1,3}/g, "")
		.replace(/^\|\s?|\s?\|$/g, "")
		.trim();
	const behind =
		label === "" ? plain : (/^[^:|\t;,]{1,60}(?::|\t|\s\|\s|;|\s{2,}|\s?\.{3,})\s*(.+)$/.exec(plain)?.[1] ?? value);
	const name = behind
		.replace(boardWord, "")
		.replace(/\s+/g, " ")
		.replace(/[;,|]+$/, "")
		.trim();
	return name === "" || name.length > 120 ? value : name;
}

function singleFacts(lines: readonly BoardLine[], collector: FactCollector, used: Set<number>): void {
	for (const line of lines) {
		const at = { line: line.line, quote: line.quote };
		const sockets = socketNames(line);
		if (sockets.length === 1) collector.found("socket", sockets[0], at);
		else if (sockets.length > 1) collector.doubted("socket", sockets, at, "The line names more than one socket.");
		const chipset = chipsetName(line);
		if (chipset !== undefined) collector.found("chipset", chipset, at);
		const channels = soundChannels(line);
		if (channels !== undefined) collector.found("sound.channels", channels, at);
		sizeOf(line, line === lines[0], collector);
	}
	sidesByLabel(lines, collector);
	wirelessFacts(lines, collector, used);
}

/** "Width: 305 mm" and "Depth: 244 mm" in rows of their own; one alone may be the size of anything. */
function sidesByLabel(lines: readonly BoardLine[], collector: FactCollector): void {
	const sideOf = (line: BoardLine, label: RegExp) => {
		const inLabel = label.exec(line.label.trim());
		const plain = line.value.replace(/[\d.,]+\s?(?:in(?:ch(?:es)?)?\b|zoll|["″”])|[()\s/-]+$|^[()\s/-]+/gi, " ").trim();
		const told = /^\W*(\d{2,3}(?:[.,]\d{1,2})?)\s?(mm|cm)?\W*$/i.exec(plain);
		const unit = (told?.[2] ?? inLabel?.[1])?.toLowerCase();
		if (!inLabel || !told || unit === undefined) return undefined;
		const mm = Number((told[1] ?? "").replace(",", ".")) * (unit === "cm" ? 10 : 1);
		return mm >= 80 && mm <= 500 ? Math.round(mm * 10) / 10 : undefined;
	};
	const sides = (label: RegExp) =>
		lines.flatMap((line) => {
			const mm = sideOf(line, label);
			return mm === undefined ? [] : [{ line, mm }];
		});
	const [width, other] = [sides(widthLabel), sides(otherSideLabel)];
	if (!width[0] || !other[0] || ![width, other].every((told) => onlyOf(told.map(({ mm }) => mm)))) return;
	const forms = lines
		.filter(({ topic, isHead }) => topic === "size" && !isHead)
		.flatMap(({ label, value }) => readSize(`${label}: ${value}`).size.form ?? []);
	// Shops call either side the width; the standard says which one lies along the back.
	const [along] = alongTheBack([width[0].mm, other[0].mm], onlyOf(forms), false);
	const [back, deep] = along === width[0].mm ? [width[0], other[0]] : [other[0], width[0]];
	collector.found("widthMm", back.mm, { line: back.line.line, quote: back.line.quote });
	collector.found("depthMm", deep.mm, { line: deep.line.line, quote: deep.line.quote });
}

function sizeOf(line: BoardLine, isFirst: boolean, collector: FactCollector): void {
	const at = { line: line.line, quote: line.quote };
	if (line.isNote || line.topic === "accessories") return;
	const namesForm = /\b(?:motherboard|mainboard|form[\s-]?factor|formfaktor)\b|\b(?:atx|itx)\sboard\b/i.test(
		line.value,
	);
	const hasSides =
		/\d\s?(?:mm|cm|in(?:ch)?|")?\s?[x×]\s?\d+(?:[.,]\d+)?\s?(?:mm|cm|in\b|inch|")/i.test(line.value) &&
		/\b(?:atx|itx|e-?atx|m-?atx|micro-?atx)\b/i.test(line.value);
	if (line.topic !== "size" && !namesForm && !hasSides && !isFirst) return;
	if (line.topic === "size" && line.isHead) return;
	const text = (line.topic === "size" ? `${line.label}: ${line.value}` : line.value).replace(
		/\b(?:thin|slim)\s(?=mini)/i,
		"",
	);
	const { size, doubts } = readSize(text);
	const form = size.form;
	if (form !== undefined) collector.found("form", form, at);
	if (isFirst && line.topic !== "size" && !hasSides) return;
	for (const { about, might, why } of doubts) {
		if (about === "form")
			collector.doubted(
				"form",
				might.filter((one) => typeof one === "string" && one in boardForms),
				at,
				why,
			);
		else collector.doubted("widthMm", [], at, why);
	}
	if (!size.sidesMm) return;
	const [width, depth] = alongTheBack([Math.round(size.sidesMm[0]), Math.round(size.sidesMm[1])], form);
	collector.found("widthMm", width, at);
	collector.found("depthMm", depth, at);
}

/** The side along the back edge first: the standard's width where a side has it, else the longer one (common practice, no source). */
function alongTheBack(
	[one, other]: readonly [number, number],
	form: BoardForm | undefined,
	maySwap = true,
): readonly [number, number] {
	const width = form === undefined ? undefined : boardForms[form].widthMm;
	const isWidth = (side: number) => width !== undefined && Math.abs(side - width) <= 2;
	if (isWidth(other) && !isWidth(one)) return [other, one];
	if (isWidth(one) || !maySwap) return [one, other];
	return one >= other ? [one, other] : [other, one];
}

function wirelessFacts(lines: readonly BoardLine[], collector: FactCollector, used: Set<number>): void {
	let isBuiltIn = false;
	for (const line of lines) {
		const at = { line: line.line, quote: line.quote };
		const told = wirelessOf(line);
		if (told.isNone) collector.found("wireless.builtIn", false, at);
		if (told.isSocketOnly) used.add(line.line);
		if (told.standard !== undefined) {
			isBuiltIn = true;
			collector.found("wireless.builtIn", true, at);
		}
		if (told.bluetooth !== undefined) {
			collector.found("wireless.bluetooth", true, at);
			if (told.bluetooth !== true) collector.found("wireless.bluetoothVersion", told.bluetooth, at);
		}
	}
	if (!isBuiltIn) return;
	newestStandard(lines, collector);
}

/** A page names older standards beside the newest; the newest of all lines is the one. */
function newestStandard(lines: readonly BoardLine[], collector: FactCollector): void {
	const order = ["Wi-Fi 4", "Wi-Fi 5", "Wi-Fi 6", "Wi-Fi 6E", "Wi-Fi 7", "Wi-Fi 8"];
	const told = lines.flatMap((line) => {
		const { standard } = wirelessOf(line);
		return standard === undefined ? [] : [{ line, standard }];
	});
	const newest = told.toSorted((one, other) => order.indexOf(other.standard) - order.indexOf(one.standard))[0];
	if (newest)
		collector.found("wireless.standard", newest.standard, { line: newest.line.line, quote: newest.line.quote });
}

/** Rates of all wired sockets: as many as the page counts, each with the rate it names. */
function networkList(lines: readonly BoardLine[], collector: FactCollector, used: Set<number>): void {
	const told = lines.flatMap((line) => {
		const network = networkOf(line);
		return network === undefined ? [] : [{ line, ...network }];
	});
	const first = told.find((one) => one.rates.length > 0);
	if (!first) return;
	const at = { line: first.line.line, quote: first.line.quote };
	for (const { line } of told) used.add(line.line);
	const byBlock = new Map<string, typeof told>();
	for (const one of told) byBlock.set(one.line.block, [...(byBlock.get(one.line.block) ?? []), one]);
	const blocks = [...byBlock.values()].map(ratesOfBlock);
	const lists = blocks.filter((list) => list.length > 0).toSorted((one, other) => other.length - one.length);
	const [most = []] = lists;
	const counts = told.flatMap(({ count, rates }) => (count !== undefined && rates.length === 0 ? [count] : []));
	const isPart = (list: readonly number[]) => {
		const left = [...most];
		return list.every((rate) => left.includes(rate) && left.splice(left.indexOf(rate), 1).length > 0);
	};
	const sockets = counts.length > 0 ? Math.max(...counts) : most.length;
	// Where a line counts sockets with their rate, a count elsewhere must be the same.
	const isCounted = told.some(({ rates, count }) => rates.length > 0 && count !== undefined && count > 1);
	const isAlike = new Set(most).size === 1 && !isCounted;
	// The same words in another block are another list, so the block is a part of them here.
	const rows = told.map(({ line: { line, quote, block } }) => ({ line, quote: `${block}: ${quote}` }));
	const isRepeated = withoutRepeats(rows).length < rows.length;
	if (isRepeated && most.length > 1)
		collector.doubted("wiredGbps", lists, at, "A line stands there twice, and may mean one socket or two.");
	else if (!lists.every(isPart) || (sockets !== most.length && !(isAlike && sockets > most.length)))
		collector.doubted(
			"wiredGbps",
			lists,
			{
				...at,
				quote: told
					.map(({ line }) => line.quote)
					.join(" / ")
					.slice(0, 1000),
			},
			"The text tells of the wired network in ways that do not agree.",
		);
	else
		collector.found(
			"wiredGbps",
			isAlike ? Array(sockets).fill(most[0]) : most.toSorted((one, other) => other - one),
			at,
		);
}

/** One block's sockets by rate: those counted as often as told, others once. */
function ratesOfBlock(
	all: readonly { readonly line: BoardLine; readonly rates: readonly number[]; readonly count: number | undefined }[],
): readonly number[] {
	// "2 x LAN by such a chip" and "2 x RJ-45" of the same rate are the same two.
	const isSocket = ({ line }: (typeof all)[number]) => /\brj-?45|\bports?\b|\bsockets?\b/i.test(line.value);
	const told = all.filter(
		(one) =>
			isSocket(one) ||
			!all.some(
				(other) =>
					other !== one &&
					isSocket(other) &&
					other.count !== undefined &&
					other.count === one.count &&
					String(other.rates) === String(one.rates),
			),
	);
	const counted = told.flatMap(({ rates, count }) =>
		count !== undefined && rates.length === 1 ? (Array(count).fill(rates[0]) as number[]) : [],
	);
	const others = told.flatMap(({ rates, count }) => (count !== undefined && rates.length === 1 ? [] : rates));
	return [...counted, ...new Set(others.filter((rate) => !counted.includes(rate)))];
}

interface Told {
	readonly facts: readonly ReadFact[];
	readonly doubts: readonly ReadDoubt[];
	/** Lines that were understood, be it that they only tell once more what others tell. */
	readonly lines?: readonly number[];
}

/** More than this is no list of one board, however often a page prints it (own convention). */
const mostEntries = 300;

const tooMany = (fact: string, entries: readonly ListEntry[]): ReadDoubt => ({
	fact,
	might: [],
	line: entries[0]?.line ?? 1,
	quote: quotesOf(entries),
	why: "The text tells of more of these than any board has.",
});

/** A list as facts, one an entry; as a doubt where the page tells two stories. */
function asFacts(
	path: string,
	entries: readonly ListEntry[],
	shownAs: (entry: ListEntry, index: number, taken: Set<string>) => unknown,
	taken: Set<string> = new Set(),
): Told {
	const lines = entries.map(({ line }) => line);
	if (entries.length > mostEntries) return { facts: [], doubts: [tooMany(path, entries)] };
	const { entries: whole, rivals } = wholeList(entries);
	if (rivals.length > 0) {
		const lists = [whole, ...rivals];
		return {
			facts: [],
			doubts: [
				{
					fact: path,
					might: lists.map((list) => {
						const names = new Set(taken);
						return list.map((entry, index) => shownAs(entry, index, names));
					}),
					line: whole[0]?.line ?? rivals[0]?.[0]?.line ?? 1,
					quote: quotesOf(lists.flat()),
					why: `The text gives this list more than once, with ${[...new Set(lists.map((list) => list.length))].join(" and ")} entries, and they do not agree.`,
				},
			],
			lines,
		};
	}
	return {
		facts: whole.map((entry, index) => ({
			fact: `${path}[${index}]`,
			value: shownAs(entry, index, taken),
			standing: "stated",
			line: entry.line,
			quote: entry.quote,
			...(entry.assumed ? { assumed: entry.assumed } : {}),
		})),
		doubts: [],
		lines,
	};
}

function connectorLists(lines: readonly BoardLine[]): Told {
	const m2 = lines.map(boardM2);
	const slots = lines.map(boardSlots);
	const pictures = lines.map(pictureSockets);
	const notes = lines.flatMap((line) => generationNote(line) ?? []);
	const taken = new Set<string>();
	const named = (what: string) => (entry: ListEntry, index: number, names: Set<string>) => ({
		name: freeName(entry.name ?? `${what} ${index + 1}`, names),
		...entry.facts,
	});
	const told: Told[] = [
		noneOr(
			lines.find(
				({ label, value, isHead }) => !isHead && /^M\.2(?:\s\p{L}+)?$/iu.test(label) && words.none.test(value),
			),
			asFacts(
				"m2Sockets",
				m2.flatMap(({ entries }) => entries),
				named("M.2 socket"),
				taken,
			),
		),
		asFacts(
			"cardSlots",
			withGenerations(
				slots.flatMap(({ entries }) => entries),
				notes,
			),
			named("Card slot"),
			taken,
		),
		asFacts(
			"drivePorts",
			lines.flatMap((line) => [...counted(line, drivePorts), ...namedDrivePorts(line)]),
			(entry, index, names) => ({
				name: freeName(`${String(entry.facts["kind"])} ${index + 1}`, names),
				...entry.facts,
			}),
			taken,
		),
		asFacts(
			"headers.fans",
			lines.flatMap((line) => [...counted(line, fanHeaders), ...namedFans(line)]),
			named("Fan header"),
			taken,
		),
		asFacts(
			"headers.lights",
			lines.flatMap((line) => counted(line, lightHeaders)),
			named("Light header"),
			taken,
		),
		asFacts(
			"power.processorPlugs",
			lines.flatMap((line) => [...counted(line, processorPlugs), ...joinedPlugs(line)]),
			(entry) => entry.facts["plug"],
		),
		pictureList(pictures),
	];
	const facts = told.flatMap((one) => one.facts);
	const others = [...otherFigures(m2), ...otherFigures(slots)];
	const shared = sharingNotes(
		lines,
		facts,
		slots.flatMap(({ shares }) => shares),
	);
	return {
		facts: [...facts, ...shared.facts],
		doubts: [
			...told.flatMap((one) => one.doubts),
			...m2.flatMap((one) => one.doubts),
			...slots.flatMap((one) => one.doubts),
			...others,
			...shared.doubts,
		],
		lines: [...told.flatMap(({ lines: some = [] }) => some), ...notes.map(({ line }) => line)],
	};
}

/** Where a list is told once for each sort of processors, the figures that were not taken. */
function otherFigures(found: readonly { readonly entries: readonly ListEntry[] }[]): readonly ReadDoubt[] {
	const entries = found.flatMap((one) => one.entries).filter(({ series }) => series !== undefined);
	const blocks = [...new Set(entries.map(({ block }) => block))];
	return blocks.flatMap((block) => {
		const its = entries.filter((entry) => entry.block === block);
		const [first, ...others] = [...new Set(its.map(({ series }) => series))];
		const told = (series: string | undefined) => its.filter((entry) => entry.series === series);
		const figures = (series: string | undefined) =>
			JSON.stringify(told(series).map(({ name, facts: all }) => [name, all]));
		return others.flatMap((series): readonly ReadDoubt[] => {
			const [line] = told(series);
			if (!line || figures(series) === figures(first)) return [];
			return [
				{
					fact: "conditions",
					might: [],
					line: line.line,
					quote: quotesOf(told(series)),
					why: `With other processors (${series}) the page gives other figures. The better ones were taken.`,
				},
			];
		});
	});
}

/** "M.2: none", where nothing else tells of any. */
function noneOr(none: BoardLine | undefined, told: Told): Told {
	if (!none || told.facts.length + told.doubts.length > 0) return told;
	return {
		facts: [{ fact: "m2Sockets", value: [], standing: "stated", line: none.line, quote: none.quote }],
		doubts: [],
	};
}

function pictureList(pictures: readonly ReturnType<typeof pictureSockets>[]): Told {
	const entries = pictures.flatMap((one) => one.entries);
	const none = pictures.find(({ isNone }) => isNone);
	if (none && entries.length === 0)
		return { facts: [{ fact: "pictureSockets", value: [], standing: "stated", ...none.at }], doubts: [] };
	return asFacts("pictureSockets", entries, (entry) => entry.facts["socket"]);
}

function freeName(name: string, taken: Set<string>): string {
	let free = name.slice(0, 40);
	for (let number = 2; taken.has(free); number++) free = `${name.slice(0, 36)} ${number}`;
	taken.add(free);
	return free;
}

function usbLists(lines: readonly BoardLine[]): Told {
	const usb = lines.map(boardUsb);
	const doubts: ReadDoubt[] = usb.flatMap((one) => one.doubts);
	const facts: ReadFact[] = [];
	const toldHeaders = usb.flatMap((one) => one.headers);
	const anywhere = usb.flatMap((one) => one.anywhere);
	const told = usb.flatMap((one) => one.rear);
	const over = [toldHeaders, anywhere, told].find((list) => list.length > mostEntries);
	if (over) return { facts: [], doubts: [...doubts, tooMany(over === toldHeaders ? "headers" : "rearUsb", over)] };
	const headers = wholeList(toldHeaders);
	// Sockets without a place are those at the back where the page lists the headers apart.
	const isBack = told.length === 0 && anywhere.length > 0 && headers.entries.length > 0;
	const rear = wholeList(isBack ? anywhere : told);
	if (told.length === 0 && anywhere.length > 0 && !isBack)
		doubts.push({
			fact: "rearUsb",
			might: [],
			line: anywhere[0]?.line ?? 1,
			quote: anywhere[0]?.quote ?? "",
			why: "The text does not say which of these sockets are at the back.",
		});
	const rows = rowsOf(rear.entries);
	if (rear.rivals.length > 0)
		doubts.push(
			rivalDoubt(
				"rearUsb",
				[rear.entries, ...rear.rivals].map((list) => rowsOf(list).map(({ value }) => value)),
				rear,
			),
		);
	else
		facts.push(
			...rows.map(
				({ value, entry }, index): ReadFact => ({
					fact: `rearUsb[${index}]`,
					value,
					standing: "stated",
					line: entry.line,
					quote: entry.quote,
					...(entry.assumed ? { assumed: entry.assumed } : {}),
				}),
			),
		);
	if (headers.rivals.length > 0) doubts.push(rivalDoubt("headers", [], headers));
	else facts.push(...headerFacts(headers.entries, doubts));
	return { facts, doubts, lines: [...told, ...toldHeaders, ...(isBack ? anywhere : [])].map(({ line }) => line) };
}

function rivalDoubt(
	fact: string,
	might: readonly unknown[],
	{ entries, rivals }: ReturnType<typeof wholeList>,
): ReadDoubt {
	const all = [entries, ...rivals].flat();
	return {
		fact,
		might,
		line: all[0]?.line ?? 1,
		quote: quotesOf(all),
		why: "The text gives this list more than once, and they do not agree.",
	};
}

/** Sockets of one sort as a row with their number. */
function rowsOf(entries: readonly ListEntry[]): readonly { value: unknown; entry: ListEntry }[] {
	const rows: { key: string; count: number; entry: ListEntry }[] = [];
	for (const entry of entries) {
		const key = JSON.stringify([entry.facts["plug"], entry.facts["gbps"], entry.assumed?.includes("plug") ?? false]);
		const row = rows.find((one) => one.key === key);
		if (row) row.count++;
		else rows.push({ key, count: 1, entry });
	}
	return rows.map(({ count, entry }) => ({ value: { ...entry.facts, count }, entry }));
}

function headerFacts(entries: readonly ListEntry[], doubts: ReadDoubt[]): readonly ReadFact[] {
	const sorts: readonly (readonly [string, (entry: ListEntry) => boolean])[] = [
		["headers.usb2", ({ facts }) => facts["gbps"] === 0.48],
		["headers.usb5", ({ facts }) => facts["gbps"] === 5 && facts["plug"] !== "C"],
	];
	const facts: ReadFact[] = [];
	for (const [fact, is] of sorts) {
		const all = entries.filter(is);
		const [first] = all;
		if (!first) continue;
		const ports = all.every((entry) => entry.ports !== undefined)
			? all.reduce((sum, { ports: some = 0 }) => sum + some, 0)
			: undefined;
		const isAssumed = all.some((entry) => entry.assumed?.includes("headers"));
		facts.push({
			fact,
			value: all.length,
			standing: isAssumed ? "assumed" : "stated",
			line: first.line,
			quote: first.quote,
			...(ports === undefined ? {} : { ports }),
		});
	}
	const oval = entries.filter((entry) => entry.facts["plug"] === "C");
	facts.push(
		...oval.map(
			(entry, index): ReadFact => ({
				fact: `headers.typeC[${index}]`,
				value: { gbps: entry.facts["gbps"] },
				standing: entry.assumed?.includes("headers") ? "assumed" : "stated",
				line: entry.line,
				quote: entry.quote,
				...(entry.ports === undefined ? {} : { ports: entry.ports }),
			}),
		),
	);
	for (const entry of entries)
		if (entry.facts["plug"] !== "C" && entry.facts["gbps"] !== 0.48 && entry.facts["gbps"] !== 5)
			doubts.push({
				fact: "headers",
				might: [],
				line: entry.line,
				quote: entry.quote,
				why: "No usual header has this rate and shape.",
			});
	return facts;
}
