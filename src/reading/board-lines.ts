import { type BoardTopic, sumLine, topicOf } from "./board-topics.ts";
import { countAhead } from "./count-ahead.ts";
import { cutLines } from "./cut-lines.ts";
import { isGroupName, type LabelledLine } from "./labelled-lines.ts";
import { inStandardTerms, withFigures } from "./standard-terms.ts";
import { words } from "./words.ts";

/** One line of a board's page, with what the lines around it tell about it. */
export interface BoardLine {
	readonly line: number;
	readonly quote: string;
	readonly label: string;
	/** Counts as figures: "dual M.2" is "2 x M.2". */
	readonly value: string;
	readonly topic: BoardTopic | undefined;
	readonly place: "back" | "header" | undefined;
	readonly from: "processor" | "chipset" | undefined;
	/** The processors it holds for, where the page lists the same connectors once for each. */
	readonly series: string | undefined;
	/** Lines of one block make one list; the same list may stand in another block once more. */
	readonly block: string;
	/** A sentence about lines above it. */
	readonly isNote: boolean;
	/** Stands under "headers" or "internal connectors": a count is one of headers. */
	readonly isAmongHeaders: boolean;
	/** A head: tells nothing by itself. */
	readonly isHead: boolean;
}

const countAtStart = /^[\s*-]*\d{1,2}\s?[x×]\s/i;
/** A label that names one connector, such as "M2_1" or "PCIE2": it is the connector's name, not a block's. */
export const connectorLabel =
	/^(?:M\.?2[_A-Z]?\w*|PCIE\w*|PCI_?E\w*|SATA\w*_\w+|Slot\s?\d)(?:\s(?:slot|socket)(?:\s?\d)?)?(?:\s?\((?:cpu|chipset|pch)\))?$/i;
const seriesEnd =
	/(?:processors?|cpus?|prozessoren|processadores|procesadores|processeurs|chipset|chipsatz|apus?|series|serie)(?:\s?\([^)]*\))?\s?\*{0,6}:?$/i;

/** The end of a piece of a sentence that says where the things counted next are. */
const backVerb =
	/\b(?:rear|back)(?:\s(?:panel|side|i\/o))?\s(?:\p{L}+\s)?(?:offers?|has|have|provides?|features?|includes?|carries|holds?|find(?:et)?(?:\sman)?|bietet|hat)(?:\s\p{L}+)?$/iu;
const headerVerb =
	/\b(?:internal|front|on-?board)\s(?:usb\s)?(?:headers?|connectors?)\s(?:adds?|gives?|provides?|offers?|brings?|supports?|bieten|liefern)(?:\s\p{L}+)?$/iu;

/** Without the stars that point to a footnote; "2*M.2" keeps its own. */
function withoutStars(text: string): string {
	return text.replace(/\s?\[\d{1,2}\]$/, "").replace(/(?<=[\p{L}\d).])\*{1,8}(?=$|[\s,;:)])/gu, "");
}

/** The line in standard terms; its quote stays as the page has it. */
function standardised(one: LabelledLine): LabelledLine {
	// "PCIe 4.0 x4 -connectors: 2 x M.2" tells of the sockets by their label.
	const sort = /^(.{2,40}?)\s?-\s?connectors$/i.exec(one.label ?? "")?.[1];
	if (sort !== undefined)
		return { ...one, label: undefined, value: `${inStandardTerms(one.value).replace(/\s-\sRAID.*$/i, "")}, ${sort}` };
	return {
		...one,
		label: one.label === undefined ? undefined : inStandardTerms(one.label),
		value: withFigures(inStandardTerms(withoutStars(one.value))),
	};
}

/** A label that names processors by their series, in a row that goes on with what is above. */
const seriesLabel = /\d{3,}|processors?\b|prozessoren\b|\bseries\b|\bserie\b/i;

/** Lines of a page in order, each with its topic and what heads above it say. */
export function boardLines(labelled: readonly LabelledLine[]): readonly BoardLine[] {
	const found: BoardLine[] = [];
	const shared = sharedSections(labelled);
	const marked = labelled.filter(({ mark }) => mark !== undefined);
	// A text whose only bullets are stars has no footnotes by them.
	const starsAreBullets =
		marked.length >= 3 && marked.every(({ mark }) => mark === "*") && marked.length > labelled.length / 2;
	const first = labelled[0]?.line;
	const turnOf = turns();
	let before = "";
	let from: "processor" | "chipset" | undefined;
	let series: string | undefined;
	let place: "back" | "header" | undefined;
	const spoken: { line: number; place: "back" | "header" | undefined } = { line: 0, place: undefined };
	const seen: { topic: BoardTopic | undefined; block: string; line: number } = { topic: undefined, block: "", line: 0 };
	for (const one of cutLines(labelled.map(standardised))) {
		const label = one.label ?? "";
		const sections = one.sections.slice(shared).map(inStandardTerms);
		const names = [label, ...sections.toReversed()].filter((name) => name !== "");
		const seriesName = sections.toReversed().find(isSeriesHead);
		const outer = names.filter((name) => !isSource(name) && !isSeriesHead(name) && !connectorLabel.test(name));
		const counted = countAhead(one.value, label, topicOf(label) ?? topicOf(sections.join(" ")));
		// "3 x USB ports, and internal headers add": the clause is about what comes next.
		const value = countAtStart.test(counted.value)
			? counted.value.replace(/,?\s(?:and|while|und|sowie)\s[^,]{0,60}$/iu, (clause) =>
					headerVerb.test(clause) || backVerb.test(clause) ? "" : clause,
				)
			: counted.value;
		// A label that is itself what is counted, or a connector's name, makes no block of its own.
		const isOwnLabel = connectorLabel.test(label) || counted.isOfLabel;
		const isSeriesRow = sections.length === 0 && seriesLabel.test(label) && one.line - seen.line <= 1;
		// "Chipset" alone over counted things goes on with the list above; it only tells where the lanes come from.
		const goesOn =
			names.length > 0 &&
			names.every(isSource) &&
			countAtStart.test(value) &&
			["slots", "storage", "usb"].includes(seen.topic ?? "");
		const block =
			isSeriesRow || goesOn
				? seen.block
				: ([...sections, ...(isOwnLabel ? [] : [label])].find(
						(name) => name !== "" && !isSource(name) && !isSeriesHead(name),
					) ?? "");
		const turn = turnOf(block);
		const where = `${block}/${turn}/${names.join("/")}`;
		if (where !== before) {
			before = where;
			from = undefined;
			series = undefined;
			place = undefined;
		}
		const told = topicUnder(outer.map(topicOf), value) ?? names.map(topicOf).find(Boolean);
		// A page's title may sum up what the page tells.
		const isTitle = one.line === first && names.length === 0 && told === undefined && labelled.length > 4;
		const topic = isSeriesRow || goesOn ? seen.topic : isTitle ? "overview" : told;
		// "No M.2" lists nothing.
		const isDenied = /^(?:no(?!\.)|none|without|niente|sin|sans|ohne|keine?|bez|без|sem|geen|ingen)\s/iu.test(value);
		const isNote = isDenied || (!starsAreBullets && one.mark !== undefined && /^\*+$/.test(one.mark));
		const source = sourceHead(one, value, topic, isNote);
		if (source) {
			from = source.from;
			series = source.series;
		}
		const side = placeHead(value);
		if (side) place = side;
		// Within a sentence: "The rear panel offers 2 x USB ..., and internal headers add 2 x USB ...".
		if (one.line === spoken.line && !countAtStart.test(value)) spoken.place = undefined;
		if (one.line !== spoken.line) Object.assign(spoken, { line: one.line, place: undefined });
		const spokenHere = spoken.place;
		if (backVerb.test(counted.value)) spoken.place = "back";
		else if (headerVerb.test(counted.value)) spoken.place = "header";
		const sourceName = names.find(isSource);
		found.push({
			line: one.line,
			quote: one.quote.trim(),
			label,
			value,
			topic,
			place:
				place ??
				spokenHere ??
				placeOf(outer) ??
				(topic === "back" ? "back" : topic === "internal" ? "header" : undefined),
			from: from ?? sourceOf(sourceName ?? seriesName),
			series: series ?? seriesName,
			block: `${block}${isVague(block) && topic === "back" ? "/back" : ""}${turn > 1 ? ` ${turn}` : ""}${one.isSum || sumLine.test(value) ? " (sum)" : ""}`,
			isNote,
			isAmongHeaders: outer.some(
				(name) =>
					/\bheaders?\b|\binternal\b|on-?board(?!\s(?:graphics|vga|video|audio|lan|wireless|devices?)\b)|stiftleist|pfostenstecker|колод/iu.test(
						name,
					) && !/\bby\sheader|ports?\s(?:by|via)\b/i.test(name),
			),
			isHead: one.names || source !== undefined || side !== undefined,
		});
		if (!(one.names && isSource(value))) Object.assign(seen, { topic, block, line: one.line });
	}
	return found;
}

/** "Specifications" over a whole page: what it tells of the back is a list of its own, told once more elsewhere. */
function isVague(block: string): boolean {
	return block !== "" && [undefined, "overview"].includes(topicOf(block));
}

/** The nearest name's topic; "max. size: 192 GB" under memory is one of memory, and "features" is what its section is. */
function topicUnder(topics: readonly (BoardTopic | undefined)[], value: string): BoardTopic | undefined {
	const known = topics.filter((topic) => topic !== undefined);
	const [own, ...outer] = known;
	if (own === "size" && outer.includes("memory") && /\d\s?[GT]B\b/i.test(value)) return "memory";
	return own === "overview" ? (outer.find((topic) => topic !== "overview") ?? own) : own;
}

/** The same head may come again further down, over the same list once more: each time is a block of its own. */
function turns(): (block: string) => number {
	const count = new Map<string, number>();
	let last = "";
	return (block) => {
		if (block === "") return 1;
		if (block !== last) count.set(block, (count.get(block) ?? 0) + 1);
		last = block;
		return count.get(block) ?? 1;
	};
}

/** How many of the outermost sections all lines share: a page's title, not a block of it. */
function sharedSections(labelled: readonly LabelledLine[]): number {
	const values = labelled.filter(({ names }) => !names);
	for (let depth = 0; depth < 4; depth++) {
		const first = values.find(({ sections }) => sections[depth] !== undefined)?.sections[depth];
		const alike = values.filter(({ sections }) => sections[depth] === first).length;
		if (first === undefined || alike < values.length * 0.8) return depth;
		// Of a page may be pasted what stands under one head only.
		const topic = isGroupName(first) ? topicOf(first) : undefined;
		if (topic !== undefined && topic !== "overview") return depth;
	}
	return 4;
}

/** "CPU", "Chipset", "Chipset + hub": where lanes or ports come from, as a head within slots, storage and USB. */
function isSource(name: string): boolean {
	return /^(?:from\s|by\s|vom\s|im\s|(?:integrated\s)?in\s)?(?:the\s)?(?:cpu|processor|prozessor|processador|procesador|chipset|chipsatz|pch|bộ\schip|yonga\sseti|čipset|čipová\ssada|чипсет|чіпсет|процессор|işlemci|lapkakészlet|芯片组|晶片組|チップセット)(?:\s(?:integriert|integrated))?(?:\s?[(+].*)?$/iu.test(
		name,
	);
}

function sourceOf(name: string | undefined): "processor" | "chipset" | undefined {
	if (name === undefined) return undefined;
	return words.chipset.test(name) ? "chipset" : "processor";
}

/** "Tarn 9000 series processors": a head over the connectors that are there with these. */
function isSeriesHead(name: string): boolean {
	return /\d{3,}/.test(name) && name.length <= 60 && seriesEnd.test(name) && !words.chipset.test(name);
}

/** A bare line within slots or storage that says where the next ones come from, or for which processors they hold. */
function sourceHead(
	{ names }: LabelledLine,
	value: string,
	topic: BoardTopic | undefined,
	isNote: boolean,
): { from: "processor" | "chipset"; series: string | undefined } | undefined {
	if (isNote || names || !["slots", "storage", "usb", "picture", "internal", "back"].includes(topic ?? ""))
		return undefined;
	const isSeries =
		seriesEnd.test(value) || (/\d{3,}/.test(value) && value.length <= 60 && (topic === "slots" || topic === "storage"));
	if (countAtStart.test(value) || value.length > 120 || !isSeries) return undefined;
	if (/\bm\.?2|\bsata|\bpci|\busb|\bx\d/i.test(value)) return undefined;
	return words.chipset.test(value)
		? { from: "chipset", series: undefined }
		: { from: "processor", series: value.replace(/[*:]+$/, "").trim() };
}

/** "Rear USB (total 6 ports)": a bare line that says where the next sockets are. */
function placeHead(value: string): "back" | "header" | undefined {
	if (countAtStart.test(value) || value.length > 60 || !/\busb\b|\bports?\b|\bi\/o\b/i.test(value)) return undefined;
	if (/^(?:usb\s)?(?:rear|back)\b/i.test(value) && !/\d\s?x\s/i.test(value)) return "back";
	if (/^(?:usb\s)?(?:front|internal)\b/i.test(value) && !/\d\s?x\s|header|connector/i.test(value)) return "header";
	return undefined;
}

function placeOf(names: readonly string[]): "back" | "header" | undefined {
	for (const name of names) {
		if (words.back.test(name)) return "back";
		if (words.front.test(name) && (words.usb.test(name) || /header|intern/i.test(name))) return "header";
	}
	return undefined;
}
