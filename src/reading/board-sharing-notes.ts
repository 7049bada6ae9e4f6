import type { BoardLine } from "./board-lines.ts";
import type { LaneModes } from "./board-slots.ts";
import type { ReadAt, ReadDoubt, ReadFact } from "./part-reading.ts";

type Connector = ReadAt & { readonly name: string; readonly lanes: number; readonly list: string } & {
	readonly lengthLanes?: number | undefined;
	/** Has a name of the page's own. */
	readonly isNamed: boolean;
};

interface Told {
	readonly facts: readonly ReadFact[];
	readonly doubts: readonly ReadDoubt[];
}

const usedWord =
	/\bwith\s(?=\S+\s(?:populated|occupied|installed|used|fitted|in\suse)\b)|\b(?:if|when(?:ever)?|while|once|as\ssoon\sas|wenn|falls|sobald|bei(?:\s(?:nutzung|belegung|verwendung)\svon)?|se|si|quando|cuando|lorsque?)\b/i;
const offWord =
	/\b(?:disabled?|unavail[ai]ble|not\s(?:be\s)?available|deactivated|turned\soff|switched\soff|deaktiviert|abgeschaltet|nicht\s(?:mehr\s)?(?:verfügbar|nutzbar)|desativad[ao]s?|desactivad[ao]s?|désactivée?s?)\b/i;
const sharesWord = /\b(?:shares?|sharing|shared|teilt|teilen|geteilt)\b/i;

/** "runs at x8", "downgrades to x4 mode": how many lanes are left. */
const lessWord =
	/\b(?:falls?|drops?|runs?|works?|operates?|downgrade[ds]?|switch(?:es)?|changes?|reduced|limited|läuft|fällt|arbeitet|wechselt|passe|pasa|cae|scende|spada|przechodzi)\s(?:[\p{L}]+\s){0,2}?(?:PCIe\s\d\.\d\s)?x(16|8|4|2|1)\b/iu;

/** Names of connectors in a sentence, with what each stands for: "SATA_5/6" is two. */
const nameWord =
	/\b(?:M\.?2(?:[_\s-]?[A-Z]?\d(?:_[A-Z]+)?|[A-Z]_[A-Z]+)(?:\s?[/,&]\s?\d(?!\d|\s?x))*|PCI_?E(?:X\d{1,2})?(?:_?\d{1,2})?(?:\(G\d\))?|SATA(?:3|6G|\d?)?[\s_-]*(?:ports?\s|anschl\S+\s|connectors?\s)?\d{1,2}(?:\s?(?:[/,&~-]|and|und)\s?(?:SATA\d?_)?\d{1,2}(?!\d|\s?x|\.\d))*|U\.2(?:_\d)?)|\bthe\sM\.2\s(?:slot|socket|connector)\b(?!\s?\d)/gi;

/** Groups of connectors that switch each other off, as footnotes and modes of slots tell. */
export function sharingNotes(
	lines: readonly BoardLine[],
	lists: readonly ReadFact[],
	modes: readonly LaneModes[],
): Told {
	const connectors = connectorsOf(lists);
	const facts: { value: unknown; at: ReadAt; isAssumed?: boolean }[] = modes.flatMap((one) => {
		const group = groupOfModes(one, connectors);
		return group ? [{ value: group, at: one }] : [];
	});
	const doubts: ReadDoubt[] = [];
	for (const line of lines) {
		if (line.isHead || line.topic === "accessories") continue;
		for (const sentence of line.value.split(/(?<=[.;!])\s+(?=\p{L})/u)) {
			const isOff = usedWord.test(sentence) && offWord.test(sentence);
			const isAssumed = namesIn(sentence).some(([name]) => byOrder(name, connectors) !== undefined);
			const isBoth = isOff && lessWord.test(sentence);
			const fallen = isOff && !isBoth ? undefined : fallenBack(sentence, connectors);
			if (fallen) {
				facts.push({ value: fallen, at: { line: line.line, quote: line.quote }, isAssumed });
				continue;
			}
			const fallsBack =
				(usedWord.test(sentence) || namesIn(sentence).length > 1) &&
				(lessWord.test(sentence) || /\bis\soff\b|halved|halbiert/i.test(sentence)) &&
				nameIn(sentence) &&
				!/^\W*\d\s?[x×]\s/.test(sentence);
			if (!isOff && fallsBack) {
				doubts.push({
					fact: "sharing",
					might: [],
					line: line.line,
					quote: line.quote,
					why: "It tells how a connector falls back when another is used; that was not noted.",
				});
				continue;
			}
			if (
				!isOff &&
				!(sharesWord.test(sentence) && /\bwith\b|\bmit\b|between|zwischen|lanes?|bandwidth|bandbreite/i.test(sentence))
			)
				continue;
			const at = { line: line.line, quote: line.quote };
			const sides = isBoth ? undefined : sidesOf(sentence, isOff, connectors);
			if (!sides) {
				doubts.push({
					fact: "sharing",
					might: [],
					...at,
					why: "It tells of connectors that share, in words or names that are not understood.",
				});
				continue;
			}
			const value = { ...eitherOr(sides), ...(isOff ? sataOnly(sentence, sides[0]) : {}) };
			if (isOff) {
				if (!facts.some((one) => JSON.stringify(one.value) === JSON.stringify(value)))
					facts.push({ value, at, isAssumed });
			} else if (!facts.some(({ at: its }) => its.line === line.line))
				doubts.push({
					fact: "sharing",
					might: [],
					...at,
					why: `${namesOf(sides[0])} and ${namesOf(sides[1])} share. The line does not say which is off when the other is used.`,
				});
		}
	}
	return {
		facts: facts.map(({ value, at, isAssumed }, index) => ({
			fact: `sharing[${index}]`,
			value,
			standing: isAssumed ? "assumed" : "stated",
			line: at.line,
			quote: at.quote,
		})),
		doubts,
	};
}

/** "PCIe" alone names no connector. */
const namesIn = (sentence: string): readonly RegExpExecArray[] =>
	[...sentence.matchAll(nameWord)].filter(([name]) => /^the\s|\d/i.test(name.replace(/^M\.?2(?=\W|$)/i, "")));
const nameIn = (sentence: string): boolean => namesIn(sentence).length > 0;

function connectorsOf(lists: readonly ReadFact[]): readonly Connector[] {
	return lists.flatMap(({ fact, value, line, quote }) => {
		const list = /^(m2Sockets|cardSlots|drivePorts)\[/.exec(fact)?.[1];
		if (list === undefined) return [];
		const { name, wiredLanes, lengthLanes } = value as { name: string; wiredLanes?: number; lengthLanes?: number };
		const usual = list === "drivePorts" ? 1 : list === "m2Sockets" ? 4 : 16;
		return [
			{
				name,
				lanes: list === "drivePorts" ? 1 : (wiredLanes ?? lengthLanes ?? usual),
				list,
				line,
				quote,
				lengthLanes,
				isNamed: !/^Card slot \d+$/.test(name),
			},
		];
	});
}

function groupOfModes({ modes, names, line, quote }: LaneModes, connectors: readonly Connector[]): unknown {
	const slots = connectors.filter((one) => one.line === line && one.quote === quote);
	const members = names.length > 0 ? names : slots.map(({ name }) => name);
	if (members.length !== modes[0]?.length || !members.every((name) => connectors.some((one) => one.name === name)))
		return undefined;
	return {
		members,
		modes: modes.map((mode) => ({
			on: Object.fromEntries(members.flatMap((name, index) => ((mode[index] ?? 0) > 0 ? [[name, mode[index]]] : []))),
		})),
	};
}

type Sides = readonly [readonly Connector[], readonly Connector[]];

/** What is used and what is then off; of a line that only tells of sharing, its first connector and the others. */
function sidesOf(sentence: string, isOff: boolean, connectors: readonly Connector[]): Sides | undefined {
	const named = namesIn(sentence).map(({ 0: text, index }) => ({
		at: index,
		found: resolved(text, connectors),
	}));
	if (named.length < 2 || named.some(({ found }) => found === undefined)) return undefined;
	const all = named.map(({ at, found = [] }) => ({ at, found }));
	if (!isOff) {
		const [first, ...rest] = all;
		return split(
			first?.found ?? [],
			rest.flatMap(({ found }) => found),
		);
	}
	const when = sentence.search(usedWord);
	// "Y is off when X is used": what stands behind the "when" is what is used.
	const comma = sentence.indexOf(",", when);
	const isBehind = all.some(({ at }) => at < when);
	const used = isBehind
		? all.filter(({ at }) => at > when)
		: all.filter(({ at }) => at > when && (comma < 0 ? at === all[0]?.at : at < comma));
	return split(
		used.flatMap(({ found }) => found),
		all.filter((one) => !used.includes(one)).flatMap(({ found }) => found),
	);
}

/** "If A is used, B runs at x8": B alone with all its lanes, or A beside B with fewer. */
function fallenBack(sentence: string, connectors: readonly Connector[]): unknown {
	const less = lessWord.exec(sentence);
	const when = sentence.search(usedWord);
	if (!less || when < 0) return undefined;
	const named = namesIn(sentence).map(({ 0: text, index }) => ({
		at: index,
		found: resolved(text, connectors),
	}));
	const all = named.flatMap(({ at, found = [] }) => found.map((connector) => ({ at, connector })));
	if (named.length < 2 || named.some(({ found }) => found === undefined)) return undefined;
	// What stands before the "when", or behind the comma that ends its clause, is what falls back.
	const comma = sentence.indexOf(",", when);
	const isMain = (at: number) => (less.index < when ? at < when : comma > 0 ? at > comma : false);
	const main = all.filter(({ at }) => isMain(at));
	const used = all.filter(({ at }) => !isMain(at)).map(({ connector }) => connector);
	// Of several the one right before "runs at x8" falls back; the others are off then, if the sentence says so.
	const one = main.findLast(({ at }) => at < less.index)?.connector;
	const off = main.map(({ connector }) => connector).filter((connector) => connector !== one);
	const lanes = Number(less[1]);
	const isOff = offWord.test(sentence);
	if (!one || off.length > 0 !== isOff || !split([one, ...off], used) || lanes >= one.lanes) return undefined;
	const lanesOf = (list: readonly Connector[]) => Object.fromEntries(list.map(({ name, lanes: its }) => [name, its]));
	return {
		members: [one, ...off, ...used].map(({ name }) => name),
		modes: [{ on: lanesOf([one, ...off]) }, { on: { ...lanesOf(used), [one.name]: lanes } }],
	};
}

const namesOf = (side: readonly Connector[]): string => side.map(({ name }) => name).join(", ");

function split(one: readonly Connector[], other: readonly Connector[]): Sides | undefined {
	const isApart = one.every(({ name }) => !other.some((its) => its.name === name));
	return one.length > 0 && other.length > 0 && isApart ? [one, other] : undefined;
}

/** "When a SATA drive is in M2_3": with a drive of another kind there nothing is off. */
const sataDrive =
	/\bsata(?:\d|\siii?)?[\s-]?(?:based\s|type\s)?(?:m\.2\s)?(?:ssds?|drives?|devices?|modes?|modus|type|laufwerk\p{L}*|gerät\p{L}*|speicher\p{L}*|storage|modul\p{L}*)(?!\p{L})|\bin\ssata\b|\bm\.2\ssata\b|\b(?:ssd|disque|disco|unidad|unità|dysk|накопител\p{L}*)\s(?:m\.2\s)?sata\b/iu;

function sataOnly(sentence: string, used: readonly Connector[]): { readonly onlyWithSata?: readonly string[] } {
	const sockets = used.filter(({ list }) => list === "m2Sockets");
	return sataDrive.test(sentence) && sockets.length > 0 && sockets.length === used.length
		? { onlyWithSata: sockets.map(({ name }) => name) }
		: {};
}

function eitherOr([one, other]: Sides): object {
	const on = (side: readonly Connector[]) => ({ on: Object.fromEntries(side.map(({ name, lanes }) => [name, lanes])) });
	return { members: [...one, ...other].map(({ name }) => name), modes: [on(one), on(other)] };
}

const bare = (name: string): string => name.toUpperCase().replace(/\(G\d\)|[^A-Z0-9]/g, "");

/** The connectors that a name in a sentence stands for, or nothing where one of them is not in the lists. */
function resolved(text: string, connectors: readonly Connector[]): readonly Connector[] | undefined {
	if (/^sata/i.test(text)) {
		const figures = text.replace(/^sata(?:3|6g)?(?=[\s_-])/i, "").replace(/sata\d?_/gi, "");
		const numbers = /~|-\s?\d/.test(figures.slice(1))
			? span(figures)
			: [...figures.matchAll(/\d{1,2}/g)].map(([figure]) => Number(figure));
		const ports = connectors.filter(({ name }) => /^sata/i.test(name));
		const found = numbers.map((number) => ports.find(({ name }) => Number(/(\d+)$/.exec(name)?.[1]) === number));
		return found.length > 0 && found.every((one) => one !== undefined) ? found : undefined;
	}
	if (/^the\s/i.test(text)) {
		const sockets = connectors.filter(({ list }) => list === "m2Sockets");
		return sockets.length === 1 ? sockets : undefined;
	}
	const inOrder = byOrder(text, connectors);
	if (inOrder) return [inOrder];
	const [first = "", ...more] = text.split(/\s?[/,&]\s?/);
	const names = [first, ...more.map((figure) => first.replace(/\d{1,2}$/, figure))];
	const found = names.map((name) => {
		const exact = connectors.filter((one) => bare(one.name) === bare(name));
		const begun =
			exact.length > 0
				? exact
				: connectors.filter((one) => /^U\.?2/i.test(name) && bare(one.name).startsWith(bare(name)));
		return begun.length === 1 ? begun[0] : undefined;
	});
	return found.every((one) => one !== undefined) ? found : undefined;
}

/**
 * "PCIEX16_2" where no slot has a name: the second of those this long. Boards number them from the processor down, as
 * pages list them; common practice, no source.
 */
function byOrder(text: string, connectors: readonly Connector[]): Connector | undefined {
	const [, length, place = "1"] = /^PCI_?EX(16|8|4|1)(?:_(\d))?$/i.exec(text) ?? [];
	if (length === undefined || connectors.some(({ name }) => bare(name) === bare(text))) return undefined;
	const slots = connectors.filter(({ list }) => list === "cardSlots");
	if (slots.some(({ isNamed }) => isNamed)) return undefined;
	const alike = slots.filter(({ lengthLanes }) => lengthLanes === Number(length));
	return /_/.test(text) || alike.length === 1 ? alike[Number(place) - 1] : undefined;
}

function span(text: string): readonly number[] {
	const [from = 0, to = 0] = [...text.matchAll(/\d{1,2}/g)].map(([figure]) => Number(figure));
	return to > from && to - from < 12 ? Array.from({ length: to - from + 1 }, (_, index) => from + index) : [];
}
