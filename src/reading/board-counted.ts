import type { BoardLine } from "./board-lines.ts";
import type { ListEntry } from "./list-blocks.ts";
import type { ReadAt } from "./part-reading.ts";
import { known } from "./quantities.ts";
import { words } from "./words.ts";

/** A sort of counted connectors: what its lines say, and what each of them is. */
interface Sort {
	readonly is: (text: string, line: BoardLine) => boolean;
	/** `place`: the how-manieth of those that one count tells of, from 0. */
	readonly facts: (text: string, line: BoardLine, place: number) => Readonly<Record<string, unknown>> | undefined;
	readonly assumed?: (text: string, line: BoardLine) => readonly string[];
	readonly most: number;
}

/** Entries of one sort that a line tells of; a count must be told. */
export function counted(line: BoardLine, { is, facts, assumed, most }: Sort): readonly ListEntry[] {
	if (line.isHead || line.isNote || line.topic === "accessories") return [];
	return itemsIn(line).flatMap(({ count, text }) => {
		if (count < 1 || count > most || !is(text, line)) return [];
		const words = text.trim() === "" ? line.label : text;
		if (!facts(words, line, 0)) return [];
		const taken = assumed?.(text, line) ?? [];
		return Array.from(
			{ length: count },
			(_, place): ListEntry => ({
				line: line.line,
				quote: line.quote,
				facts: facts(words, line, place) ?? {},
				...(taken.length > 0 ? { assumed: taken } : {}),
				block: line.block,
				series: line.series,
				isOverview: line.topic === "overview",
			}),
		);
	});
}

/** "2 x A, 1 x B" as items; "label: 4" or "label: 4 pieces" as one. */
function itemsIn({ label, value }: BoardLine): readonly { count: number; text: string }[] {
	const counts = [
		...value.matchAll(
			/(?<![\w.,-])(?:(\d{1,2})\s?(?:x|×|\*)\s?(?=[^\d\s,;:()]|\d{1,2}\s?-?\s?(?:pin|pol)|\d\s?(?:gb|v\b)|\+|12v|6\s?gb)|x\s?(\d{1,2})(?![\w.]))/gi,
		),
	];
	const behind = counts.length > 0 && counts.every(([, , figure]) => figure !== undefined);
	if (behind)
		return counts.map(({ index, 2: figure = "0" }, at) => {
			const before = counts[at - 1];
			const start = before ? before.index + before[0].length : 0;
			return { count: Number(figure), text: value.slice(start, index) };
		});
	const ahead = counts.filter(([, figure]) => figure !== undefined);
	if (ahead.length > 0)
		return ahead.map(({ index, 0: all, 1: figure = "0" }, at) => {
			// What stands in brackets behind a thing tells of it and counts nothing new.
			const end = ahead[at + 1]?.index ?? value.length;
			return {
				count: insideBrackets(value, index) ? 0 : Number(figure),
				text: value.slice(index + all.length, end).replace(/[,;/+&\s]+$|\s(?:and|und|e|y|et|i)\s*$/i, ""),
			};
		});
	const alone = /^(\d{1,2})(?:\s?\D{0,12})?$/.exec(value)?.[1];
	if (alone !== undefined && label !== "" && !/\d\s?(?:gb|mhz|mt|w|v|mm|cm)/i.test(value))
		return [{ count: Number(alone), text: `${label} ${value.slice(alone.length)}` }];
	const pins = /^\W{0,3}(?=(?:24|20|8|4)[\s-]?pin)(.*)$/i.exec(value);
	if (pins) return [{ count: 1, text: pins[1] ?? "" }];
	const leading =
		/^[\s-]*(\d{1,2})\s(?=\p{L})(?!pin|pol|phase|channel|ch\b|kanal|g(?:b|bit)?(?:ps|\/s|\b))(.*)$/iu.exec(value);
	return leading ? [{ count: Number(leading[1]), text: leading[2] ?? "" }] : [];
}

function insideBrackets(text: string, at: number): boolean {
	const before = text.slice(0, at);
	return before.lastIndexOf("(") > before.lastIndexOf(")");
}

const otherDriveWords =
	/\bpower\b|strom|cables?\b|kabel|kablo|kábel|cavo|câble|cabo\b|кабел|przew|express\b|\bm\.?\s?2(?!\d)|mode\b|modus\b|\bdom\b|screws?|raid|\bdevices?\b/i;

export const drivePorts: Sort = {
	is: (text, { label }) =>
		(/\bsata/i.test(text) ||
			(/^\W{0,2}sata/i.test(label) && /^[\s\d.]*(?:gb\/s|gbps|gbit\/s|g\b|ports?)/i.test(text)) ||
			/\bu\.2\b/i.test(text) ||
			/slim\s?sas/i.test(text)) &&
		!otherDriveWords.test(text.replace(/,?\s?supports?\sraid.*$|\(raid[^)]*\)/i, "")),
	facts: (text) => ({ kind: /\bu\.2\b/i.test(text) ? "U.2" : /slim\s?sas/i.test(text) ? "SlimSAS" : "SATA" }),
	most: 24,
};

const fanWord =
	/(?<![a-z])fans?(?![a-z])|lüfter|(?<![a-z])pump|ventilador\w*|ventilateur|вентил|\baio\b|water\scooling|wasserkühl/i;
const plugWord = /header|connector|anschl|stecker|steckplatz|\bpins?\b|pol\b|conector|connecteur|роз|pin\b/i;

/** What a fan header is for, where the label says that these are fans. */
const fanUse =
	/\bcpu|processor|prozessor|chassis|system|\bsys|\bcha\b|cha_|\bcase\b|gehäuse|\baio\b|pump|\bopt\b|\brad_?fan|\bpwr|\bpsu|caso\b/i;

export const fanHeaders: Sort = {
	is: (text, { label }) =>
		(fanWord.test(text) ||
			(fanWord.test(label) && (fanUse.test(text) || /^\s*(?:[346][\s-]?pin|pwm)/i.test(text))) ||
			text.startsWith(label)) &&
		(fanUse.test(text) || plugWord.test(text) || plugWord.test(label) || fanWord.test(label)) &&
		fanWord.test(`${label} ${text}`) &&
		!/hub|splitter|included|\bmm\b|\brpm\b|screw|sensor|tachometer|\bstatus\b|monitoring|speed\scontrol$/i.test(text),
	facts: (text, _line, place) => ({
		use: /pump|\baio\b|water|wasser/i.test(text)
			? "pump"
			: /\bcpu|processor|prozessor/i.test(text) || (!fanUse.test(text) && place === 0)
				? "processor"
				: "case",
	}),
	// "Fan headers: 6": every board has one for the processor's fan, and the others are for the case. Common practice, no source.
	assumed: (text) => (fanUse.test(text) ? [] : ["use"]),
	most: 16,
};

const lightWord = /\ba?rgb\w*|addressable|adressierbar|\bled\sstrip|leuchtstreifen|addr\.?\sled/i;

export const lightHeaders: Sort = {
	is: (text, { label, topic }) =>
		(lightWord.test(text) || (/\ba?rgb\b/i.test(label) && text.trim() === "")) &&
		(plugWord.test(text) ||
			plugWord.test(label) ||
			topic === "internal" ||
			/light|beleuchtung|\ba?rgb\b|\bleds?\b/i.test(label)) &&
		!/\bfan\b|\bpower\sled\b|memory|\bdimm/i.test(text.replace(/fan\/led|led\/fan/gi, "")),
	facts: (text) => {
		const isFive = /addressable|adressierbar|\bargb|addr\.?\s|5\s?v\b|digital|rgb\s?gen\s?2|\bgen\s?2\b/i.test(text);
		const isTwelve = /12\s?v\b|4-?\s?pin\srgb/i.test(text);
		if (isFive && isTwelve) return undefined;
		return { volts: isFive ? 5 : 12 };
	},
	// The voltage follows from the kind where it is not printed: common practice, no source.
	assumed: (text) => (/\b(?:5|12)\s?v\b/i.test(text) ? [] : ["volts"]),
	most: 12,
};

const processorPower = /12\s?v|\beps\b|\bcpu\b|processor|prozessor|\bp4\b|\bp8\b/i;

/** "8+4 pin" and "8-pin + 4-pin". */
const twoPlugs = /(?<![\dx])(8|4)\s?(?:-?\s?pin)?\s?\+\s?(8|4)[\s-]?pin(?!\s?\+)/i;

export const processorPlugs: Sort = {
	is: (text, { label, value }) =>
		!/^\W*8[\s-]?pin\s?\+\s?[48]/i.test(text) &&
		/(?<!\d)[48][\s-]?(?:\(?\+?4\)?[\s-]?)?(?:pin|pol)/i.test(text) &&
		(processorPower.test(text) ||
			// "1 x 8-pin + 1 x 4-pin CPU power"
			(/^\s*8[\s-]?pin\s*$/i.test(text) && value.includes("+") && processorPower.test(value)) ||
			// "Power: 2 x 8-pin, 1 x 24-pin"
			(/^\s*8[\s-]?pin\s*$/i.test(text) && /\bpower\b|strom|\bpsu\b/i.test(label)) ||
			/\bpower\b/i.test(text) ||
			/cpu|processor|prozessor/i.test(label)) &&
		!/\bfan|lüfter|pump/i.test(label) &&
		!/\bfan|lüfter|pump|graphics|pci|vga|\b19\s?v|24[\s-]?pin|rgb|\bled\b|sata|molex|\b6[\s-]?pin|sleeve|cable|adapter/i.test(
			text,
		),
	facts: (text) => ({ plug: /(?<!\d)8[\s-]?(?:pin|pol)|4\s?\+\s?4/i.test(text) ? "8-pin" : "4-pin" }),
	most: 4,
};

/** "8+4 pin": one plug of each. */
export function joinedPlugs({ value, label, line, quote, block, isHead, isNote }: BoardLine): readonly ListEntry[] {
	if (isHead || isNote || !processorPower.test(`${label} ${value}`)) return [];
	const told = twoPlugs.exec(value);
	const before = told ? value.slice(0, told.index) : "";
	if (!told || /\d\s?x\s?$/i.test(before) || told[0].replace(/\s/g, "").startsWith("4+4")) return [];
	return [told[1], told[2]].map((pins) => ({ line, quote, block, facts: { plug: `${pins}-pin` } }));
}

const pictureWords: readonly (readonly [RegExp, string])[] = [
	[/\bhdmi/i, "HDMI"],
	[/display\s?port|\bdp\b/i, "DisplayPort"],
	[/\bdvi/i, "DVI"],
	[/\bvga\b|\bd-?sub\b|\bdb-?15\b/i, "VGA"],
];

/** Picture sockets that a line tells of, at the back; nothing where it only describes one. */
export function pictureSockets(line: BoardLine): {
	readonly entries: readonly ListEntry[];
	readonly isNone: boolean;
	readonly at: ReadAt;
} {
	const none = { entries: [], isNone: false, at: { line: line.line, quote: line.quote } };
	if (line.isHead || line.isNote || line.topic === "accessories") return none;
	const { value, topic } = line;
	if (/\bno\s(?:video|picture|display)|ohne\sbild/i.test(value)) return none;
	if (topic === "picture" && words.none.test(value)) return { ...none, isNone: true };
	if (
		line.place === "header" ||
		/\bfront\b|phía\strước|\binternal\b|header|\bcables?\b|\bedp\b|\blvds\b/i.test(
			value.replace(/\bone lvds|1 x lvds/gi, ""),
		)
	)
		return none;
	const isList =
		topic === "picture" || topic === "back" || /outputs?\b|ausgäng|ports?\b|anschl/i.test(`${line.label} ${value}`);
	const entry = (socket: string): ListEntry => ({
		line: line.line,
		quote: line.quote,
		facts: { socket },
		block: line.block,
		isOverview: topic === "overview",
	});
	const counts = [...value.matchAll(/(?<![\w.])(\d)\s?(?:x|×)\s?(?=\S)/gi)].filter(
		({ index }) => !insideBrackets(value, index),
	);
	if (counts.length > 0) {
		const entries = counts.flatMap(({ index, 0: all, 1: figure = "0" }, at) => {
			const text = value.slice(index + all.length, counts[at + 1]?.index ?? value.length);
			const thing = text.split(/[,(;]|\ssupport|\swith\b|\smit\b|\shỗ\strợ/i)[0] ?? "";
			// "4 x USB 2.0 ports as well as HDMI" counts no HDMI.
			const socket = /\busb/i.test(thing) ? undefined : pictureWords.find(([pattern]) => pattern.test(thing))?.[1];
			if (socket !== undefined) return Array.from({ length: Number(figure) }, () => entry(socket));
			const isOval =
				/type[\s-]?c|usb-?c|thunderbolt|usb\s?4/i.test(thing + text.slice(0, 60)) &&
				(topic === "picture" || /display\s?port|\bdp\b|video|picture|bild/i.test(text));
			return isOval && !(/usb\s\d/i.test(thing) && topic !== "picture" && !/display|\bdp\b|alt/i.test(text))
				? Array.from({ length: Number(figure) }, () => entry("USB-C"))
				: [];
		});
		return { ...none, entries };
	}
	if (
		!isList ||
		/resolution|auflösung|support|unterstütz|@\s?\d|\d{4}\s?x\s?\d{3}|^\s*\d\.\d|hdcp|graphics\soutput/i.test(
			`${line.label} ${value}`,
		)
	)
		return none;
	const found = pictureWords.filter(([pattern]) => pattern.test(value)).map(([, socket]) => socket);
	const isBareList = value
		.split(/[,/&+]|\s(?:and|und)\s/)
		.every((piece) => pictureWords.some(([pattern]) => pattern.test(piece)) || piece.trim().length < 3);
	return isBareList || /outputs?\b|ausgäng/i.test(value) ? { ...none, entries: found.map(entry) } : none;
}

/** Of a line that lists all sorts of sockets what is said of the network's. */
const onlyNetwork = (text: string): string =>
	text
		.split(/\s\/\s|[,;]\s/)
		.filter((piece) => words.network.test(piece) || /\bnic\b|gbase-?t/i.test(piece))
		.join(", ");

const remoteCare = /management|\bipmi\b|\bbmc\b/i;

/** Rates of wired sockets in Gb/s, with how many where told. */
export function networkOf(
	line: BoardLine,
): { readonly rates: readonly number[]; readonly count: number | undefined } | undefined {
	if (line.isHead || line.isNote || line.topic === "accessories" || line.topic === "wireless") return undefined;
	const whole =
		line.topic === "network" && !words.network.test(line.value) ? `${line.label} ${line.value}` : line.value;
	// A socket for looking after the machine from afar is none of the network's.
	const text = (/\busb|hdmi/i.test(whole) ? onlyNetwork(whole) : whole)
		.split(/(?<=\s)\+\s|[,;]\s(?=\d\s?[x×]\s)/)
		.filter((piece, _, all) => all.length === 1 || !remoteCare.test(piece))
		.join(", ");
	const isNetwork =
		line.topic === "network" ||
		/\blan\b|ethernet|rj-?45|\bnetwork\b|netzwerk|\brede\b|réseau|netwerk|\bnic\b|gbase-?t|\d\s?gbe\b|\bgbe\b|gigalan/i.test(
			text,
		);
	if (!isNetwork || /teaming|management|\bipmi\b|\bbmc\b|\bpxe\b|wake|surge|protect|cables?\b/i.test(text))
		return undefined;
	const plain = text.replace(/\b10\s?\/\s?100(?:\s?\/\s?\d{3,5})*/g, " ");
	const rates = [
		...plain.matchAll(
			/(?<![\d.,/])(1|2[.,]5|5|10)[\s-]?(?:gbase-?t\b|g(?:b(?:e|ps|it)?|igabit|bit\/s|b\/s)?\b(?!\s?\/?\s?s?\s?usb)|гбіт|гбит)/gi,
		),
	].map(([, figure = ""]) => Number(figure.replace(",", ".")));
	const megabit = [...plain.matchAll(/(?<![\d.,/])(1000|2500|5000|10000)\s?(?:mbps|mb\/s|mbit(?:\/s)?)/gi)].map(
		([, figure]) => Number(figure) / 1000,
	);
	const ladder = /\b10\s?\/\s?100((?:\s?\/\s?\d{3,5})*)/.exec(text)?.[1];
	const top = ladder ? Math.max(...(ladder.match(/\d+/g) ?? []).map(Number)) / 1000 : undefined;
	const plainGigabit =
		rates.length === 0 && megabit.length === 0 && top === undefined && /\bgigabit\b|\bgbe\b|\bgigalan\b/i.test(plain)
			? [1]
			: [];
	const all = [...rates, ...megabit, ...plainGigabit, ...(rates.length === 0 && top !== undefined ? [top] : [])];
	const first = line.topic === "network" ? /^(\d)\s?[x×]\s/i.exec(line.value)?.[1] : undefined;
	const count = Number(
		first ??
			/(?<![\w.,/])(\d)\s?(?:x|×)\s?(?=[^,;]{0,40}(?:rj-?45|lan\b|ethernet|gigalan|gbe))/i.exec(text)?.[1] ??
			Number.NaN,
	);
	return { rates: all, count: Number.isInteger(count) && count > 0 ? count : undefined };
}

const standards: readonly (readonly [RegExp, string])[] = [
	[/wi-?fi\s?8\b|802\.11bn/i, "Wi-Fi 8"],
	[/wi-?fi\s?7\b|802\.11be|(?<=802\.11[\w/,\s]*)\bbe\b/i, "Wi-Fi 7"],
	[/wi-?fi\s?6e\b/i, "Wi-Fi 6E"],
	[/wi-?fi\s?6\b|802\.11ax|(?<=802\.11[\w/,\s]*)\bax\b/i, "Wi-Fi 6"],
	[/wi-?fi\s?5\b|802\.11ac|(?<=802\.11[\w/,\s]*)\bac\b/i, "Wi-Fi 5"],
	[/wi-?fi\s?4\b|802\.11n\b|(?<=802\.11[\w/,\s]*\/)n\b/i, "Wi-Fi 4"],
];

/** Wireless that a line tells of: the newest standard it names, Bluetooth with its version. */
export function wirelessOf(line: BoardLine): {
	readonly standard?: string;
	readonly bluetooth?: string | true;
	readonly isNone?: true;
	readonly isSocketOnly?: true;
} {
	if (line.isHead || line.topic === "accessories") return {};
	const text = `${line.label} ${line.value}`;
	if (line.topic === "wireless" && words.none.test(line.value)) return { isNone: true };
	if (line.isNote || !words.wireless.test(text)) return {};
	const namesStandard = standards.some(([pattern]) => pattern.test(line.value));
	const isSocketOnly =
		!namesStandard &&
		/\bm\.?2\b|\bsocket\b|\bslot\b|key\s?-?e\b/i.test(line.value) &&
		!/bundled|pre-?installed|included|with\sthe/i.test(line.value);
	if (isSocketOnly) return { isSocketOnly: true };
	const standard = standards.find(([pattern]) => pattern.test(text))?.[1];
	const version =
		/bluetooth(?:®|™)?\s?(?:v(?:ersion)?\.?\s?)?(\d\.\d)/i.exec(text)?.[1] ??
		/(?<=[,&/+]\s?)BT\s?(\d\.\d)/.exec(text)?.[1];
	return {
		...known({ standard: standard === "Wi-Fi 6" && /6\s?ghz/i.test(text) ? "Wi-Fi 6E" : standard }),
		...(version !== undefined
			? { bluetooth: version }
			: /bluetooth/i.test(line.value)
				? { bluetooth: true as const }
				: {}),
	};
}

/** Sound channels: "7.1" is eight, "5.1" six. */
export function soundChannels(line: BoardLine): number | undefined {
	if (line.isHead || line.isNote) return undefined;
	const text = `${line.label} ${line.value}`;
	const isAlone = line.label !== "" && /^[57]\.1$/.test(line.value.trim());
	if (line.topic !== "sound" && !isAlone && !words.sound.test(line.value)) return undefined;
	if (/required|header|front\spanel|benötigt/i.test(line.value)) return undefined;
	const all = [...text.matchAll(/(?<![\d.])([257])\.([01])(?:\.?\d)?(?=$|[\s,)/+-]|ch)/gi)].map(
		([, main, low]) => Number(main) + Number(low),
	);
	const eight = /\b(8|6|2)[\s-]?(?:channel|ch\b|kanal|kênh)/i.exec(text)?.[1];
	const found = [...all, ...(eight === undefined ? [] : [Number(eight)])];
	return found.length > 0 ? Math.max(...found) : undefined;
}

const fanName =
	/(?<![A-Za-z0-9_])((?:[A-Z]{2,4}_?)+FAN|CPU_?OPT|(?:AIO|W|WATER)_?PUMP|PUMP_?FAN|PUMP)[_-]?(\d{0,2})([_/]W?_?(?:PUMP|AIO))?\+?(?![A-Za-z0-9_]|\s?[x×]\s?\d)/g;

/** Fan headers that a line lists by the names printed on the board, "SYS_FAN1 to SYS_FAN6" as six. */
export function namedFans(line: BoardLine): readonly ListEntry[] {
	if (line.isHead || line.isNote || line.topic === "accessories" || /\d\s?[x×]\s|[x×]\s?\d/i.test(line.value))
		return [];
	const names = [...line.value.matchAll(fanName)];
	if (names.length < 2) return [];
	return names.flatMap(({ 0: all, 1: stem = "", 2: figure, 3: also = "", index }, at): readonly ListEntry[] => {
		const before = names[at - 1];
		const between = before ? line.value.slice(before.index + before[0].length, index) : "";
		const isSpan = before?.[1] === stem && /^\s?(?:to|bis|-|–|~|a)\s?$/i.test(between);
		const from = isSpan ? Number(before?.[2]) + 1 : Number(figure);
		const many = isSpan ? Number(figure) - from + 1 : 1;
		if (!(many >= 1 && many <= 12)) return [];
		const use = /PUMP|AIO|WATER/.test(stem + also) ? "pump" : /CPU/.test(stem) ? "processor" : "case";
		return Array.from({ length: many }, (_, place) => ({
			line: line.line,
			quote: line.quote,
			name: isSpan ? `${stem}${from + place}` : all,
			facts: { use },
			block: line.block,
			series: line.series,
		}));
	});
}

/** "SATA_1 to SATA_4" as four ports. */
export function namedDrivePorts(line: BoardLine): readonly ListEntry[] {
	if (line.isHead || line.isNote || line.topic === "accessories") return [];
	const text = `${line.label} ${line.value}`;
	const [, from, to] =
		/\bSATA(?:3|6G|_6G)?_(\d{1,2})\s?(?:to|bis|~|-|–)\s?SATA(?:3|6G|_6G)?_(\d{1,2})\b/i.exec(text) ?? [];
	const many = Number(to) - Number(from) + 1;
	if (!(many >= 2 && many <= 16) || /shar|disabl|when\s|\bif\s/i.test(text)) return [];
	return Array.from({ length: many }, () => ({
		line: line.line,
		quote: line.quote,
		facts: { kind: "SATA" },
		block: line.block,
		series: line.series,
	}));
}
