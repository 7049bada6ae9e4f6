import type { BoardLine } from "./board-lines.ts";
import type { FactCollector } from "./fact-collector.ts";
import { readMemory } from "./read-memory.ts";
import { words } from "./words.ts";

/** Phrases of other languages that pages print beside standard terms, as the reader of memory knows them. From memory. */
const phrases: readonly (readonly [RegExp, string])[] = [
	[
		/(?<!\p{L})(?:par|por|per|na|auf|за|на|mỗi)\s(?:slot|module?|modulo|módulo|barrette|ranura|emplacement|moduł\p{L}*|gniazd\p{L}*|слот|модуль|khe(?:\scắm)?|paměťový\smodul)(?!\p{L})/giu,
		"per module",
	],
	[/об['’ʼ]?ъ?[ёеє]м\p{L}*/giu, "capacity"],
	[/гб\b|гб(?=$|\W)/giu, "GB"],
	[/тб(?=$|\W)/giu, "TB"],
	[/мгц/giu, "MHz"],
	// "192 GB'a kadar": the word stands behind.
	[/(\d{1,4}\s?[GT]B)['’]?[ae]\skadar/giu, "up to $1"],
	[/lên\sđến|do\s|hasta|hingga|sampai|jusqu['’]?à|fino\sa|até(?:\so\smáximo\sde)?|до\s/giu, "up to "],
	[
		/tối\sđa|máxim[oa]|máx\.|maks\.|legfeljebb|en\sfazla|nejvýše|högst|maximálně?|maksymaln\w*|максимальн\p{L}*|макс\.|maximale?/giu,
		"max.",
	],
	[/dung\slượng\sdimm\sđơn/giu, "single DIMM"],
	[/khe\scắm|ranuras?|emplacements?|gniazd\w*|слот\p{L}*|роз['’ʼ]?[єe]м\p{L}*|разъ[её]м\p{L}*/giu, "slots"],
	[
		/двоканальн\p{L}*|двухканальн\p{L}*|kênh\sđôi|canal\sduplo|doble\scanal|double\scanal|dwukanałow\w*|canal\sdual/giu,
		"dual channel",
	],
	[/чотириканальн\p{L}*|четыр[её]хканальн\p{L}*|quad\scanal/giu, "quad channel"],
	[
		/(?:оперативн\p{L}*\s)?пам['’ʼ]?ят\p{L}*|(?:оперативн\p{L}*\s)?памят\p{L}*|bộ\snhớ|mem[oó]ria|mémoire|pami[eę]\w*|geheugen/giu,
		"memory",
	],
];

const paths: Readonly<Record<string, string>> = {
	type: "memory.type",
	form: "memory.form",
	slots: "memory.slots",
	channels: "memory.channels",
	"most memory": "memory.maxGb",
	"largest module": "memory.maxGbPerModule",
	"highest rate": "memory.highestMtPerS",
};

/** What the lines of a page tell of a board's memory, into a collector. Gives the lines that told something. */
export function boardMemory(lines: readonly BoardLine[], collector: FactCollector): ReadonlySet<number> {
	const used = new Set<number>();
	/** Sizes that are not said to be the most: open only where no line tells of the most. */
	const sizes: { might: readonly (number | string)[]; line: BoardLine; why: string }[] = [];
	let most = 0;
	const rates: { value: number; line: BoardLine }[] = [];
	for (const line of lines) {
		if (line.isHead || line.isNote || line.topic === "accessories") continue;
		const isMemory = line.topic === "memory";
		const isTold = isMemory || /\bddr[345]\b|\bdimm|\b(?:dual|quad|single)[\s-]channel/i.test(inEnglish(line.value));
		// Under "Slots" a line may tell of those for memory.
		const mayTell =
			line.topic === undefined ||
			["memory", "overview", "processor", "size"].includes(line.topic) ||
			(line.topic === "slots" && !/\bpci|\bm\.?2|\bsata/i.test(line.value));
		if (!isTold || !mayTell) continue;
		const label = isMemory && isMemoryLabel(line.label) ? line.label : "";
		const text = inEnglish(label === "" ? line.value : `${label}: ${line.value}`);
		const { memory, doubts } = readMemory(text);
		const at = { line: line.line, quote: line.quote };
		const byLabel = isMemory ? labelledFacts(line) : {};
		const { highestMtPerS, ...rest } = { ...memory, ...byLabel };
		for (const [key, value] of Object.entries(rest)) collector.found(`memory.${key}`, value, at);
		most = Math.max(most, rest.maxGb ?? 0);
		const rate = highestMtPerS ?? labelledRate(text, label);
		if (rate !== undefined) rates.push({ value: rate, line });
		for (const { about, might, why } of doubts) {
			const path = paths[about];
			// A size that is not said to be the most stands in nearly every line; it is a question only where no line says it.
			if (about === "most memory" && /does not say/.test(why)) sizes.push({ might, line, why });
			else if (path && !(path.slice(7) in byLabel) && !(about === "most memory" && line.topic === "overview"))
				collector.doubted(path, might, at, why);
		}
		const modules = moduleFacts(text);
		for (const [path, value] of modules.facts) collector.found(path, value, at);
		if (modules.isCorrectionOpen)
			collector.doubted(
				"memory.errorCorrection",
				[true, false],
				at,
				"It names modules with error correction; whether the correction then works is not said.",
			);
		if (Object.keys(rest).length > 0 || rate !== undefined || doubts.length > 0 || modules.facts.length > 0)
			used.add(line.line);
	}
	for (const { might, line, why } of sizes)
		if (line.topic !== "overview" && !might.every((size) => Number(size) <= most))
			collector.doubted("memory.maxGb", might, { line: line.line, quote: line.quote }, why);
	highestRate(rates, collector);
	return used;
}

/** A label that tells what its figure is; "Memory" alone tells nothing, and the name of a processor series would be read as a rate. */
function isMemoryLabel(label: string): boolean {
	return label !== "" && !/^(?:memory|ram|speicher)$/i.test(label) && !/\d{3,}/.test(label);
}

/** What a label of any language known here tells of a figure that stands alone: "slots: 4", "most: 192 GB". */
function labelledFacts({ label, value }: BoardLine): { slots?: number; maxGb?: number; channels?: number } {
	const figure = /^(\d{1,2})(?!\d|\s?[x×.,]|\s?\S?[BbБб]\b)/.exec(value)?.[1];
	const pins = /^(\d{1,2})\s?[x×]\s?(?:\d{3}[\s-]?pin|(?:so-?)?dimm|ddr\d)/i.exec(value)?.[1];
	const size = /^\D{0,20}?(\d{1,4})\s?(?:GB|ГБ|Go|TB|ТБ|To)(?=$|[\s,;(])/i.exec(value);
	const inTb = /T|Т/i.test(size?.[0].replace(/\d+/, "").trim().slice(-2) ?? "");
	const told = inEnglish(label);
	const gb = /(?:GB|ГБ|Go)$/i.test(label.trim()) ? /^(\d{1,4})$/.exec(value.trim())?.[1] : undefined;
	const channel = /^(single|dual|two|quad|four|[1248])\b/i.exec(value)?.[1]?.toLowerCase();
	const channels =
		/channel|kan[aá]l|canal|kanał/i.test(label) && channel !== undefined
			? ({ single: 1, dual: 2, two: 2, quad: 4, four: 4 }[channel] ?? Number(channel))
			: undefined;
	return {
		...((figure ?? pins) !== undefined && words.memorySlots.test(label) && Number(figure ?? pins) > 0
			? { slots: Number(figure ?? pins) }
			: {}),
		...(size && (words.most.test(label) || /max/i.test(told)) && !/module|dimm|slot|riegel|модул/i.test(label)
			? { maxGb: Number(size[1]) * (inTb ? 1024 : 1) }
			: {}),
		...(gb !== undefined && words.most.test(label) ? { maxGb: Number(gb) } : {}),
		...(channels === undefined ? {} : { channels }),
		...(words.yes.test(value) && /dual channel/i.test(told) ? { channels: 2 } : {}),
	};
}

function inEnglish(text: string): string {
	return phrases.reduce((told, [pattern, phrase]) => told.replace(pattern, phrase), text);
}

/** "Highest rate: 6400": a figure alone, where its label tells that it is a rate. */
function labelledRate(text: string, label: string): number | undefined {
	if (label === "" || !words.rate.test(label)) return undefined;
	const figure = Number(/:\s*(?:\S+\s){0,2}(\d{4,5})(?:\s|$|\+)/.exec(text)?.[1] ?? Number.NaN);
	return figure >= 800 && figure <= 12000 ? figure : undefined;
}

/** The highest of all rates of the memory's own rows; rows that sum up must not name a higher one. */
function highestRate(rates: readonly { value: number; line: BoardLine }[], collector: FactCollector): void {
	const own = rates.filter(({ line }) => line.topic === "memory");
	const told = own.length > 0 ? own : rates;
	const highest = told.toSorted((one, other) => other.value - one.value)[0];
	if (!highest) return;
	collector.found("memory.highestMtPerS", highest.value, { line: highest.line.line, quote: highest.line.quote });
	const higher = rates.find(({ value }) => value > highest.value);
	if (higher)
		collector.found("memory.highestMtPerS", higher.value, { line: higher.line.line, quote: higher.line.quote });
}

function moduleFacts(text: string): { facts: readonly (readonly [string, unknown])[]; isCorrectionOpen: boolean } {
	if (/not\ssupported|nicht\sunterstützt|non\ssupport|no\sson\scompatibles/i.test(text))
		return { facts: [], isCorrectionOpen: false };
	const plain = text.replace(/on[\s-]?(?:die|chip)\s?ecc/gi, " ");
	const facts: (readonly [string, unknown])[] = [];
	const isRegistered = /\br-?dimm|(?<!un[\s-]?)(?:registered|buffered)\b|registriert/i.test(
		plain.replace(/un-?\s?buffered|ungepuffert/gi, " "),
	);
	if (isRegistered) facts.push(["memory.registered", true]);
	else if (/un-?\s?buffered|\bu-?dimm|ungepuffert/i.test(plain)) facts.push(["memory.registered", false]);
	const withCorrection = plain.replace(/non[\s-]?ecc/gi, " ").match(/\becc\b/i) !== null;
	const runsWithout =
		/without\s(?:error\s)?correction|ohne\s(?:fehler)?korrektur|non[\s-]?ecc\smode|không\sphải\secc|nicht-ecc-modus|\(?operates?\sin\snon/i.test(
			text,
		);
	if (withCorrection && runsWithout) facts.push(["memory.errorCorrection", false]);
	return { facts, isCorrectionOpen: withCorrection && !runsWithout && !/\bnot?\b|kein/i.test(plain) };
}
