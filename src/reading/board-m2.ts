import type { BoardLine } from "./board-lines.ts";
import type { ListEntry } from "./list-blocks.ts";
import type { ReadDoubt } from "./part-reading.ts";
import { known } from "./quantities.ts";
import { readM2 } from "./read-m2.ts";
import { words } from "./words.ts";

interface Found {
	readonly entries: readonly ListEntry[];
	readonly doubts: readonly ReadDoubt[];
}

const someBeside =
	/^(.*?\bm\.?2\b[^,(]*),?\s(?:including|incl\.?|davon|of\swhich)\s(?:one|1\s?x?|a|an|eine[rn]?|einen)\s(.*)$/i;
/** A card drive's slot by its key and lengths, whatever it is called. */
const byKeyAndLength = /\bkey\s?-?m\b|\bm[\s-]key\b/i;
const onCard =
	/\bvia\s\S*\s?\S*\.2\b|\briser\b|\badd-?in\scard|\bexpansion\scard|\badapter\s?(?:card|karte)|\bsteckkarte/i;
const lengthWord = /(?<![\w.])(16|22|25|30)(30|42|60|80|110)(?!\d)/g;

/** "2 x M.2 2280 (1 x PCIe 5.0 x4, 1 x PCIe 4.0 x4)": what is told of each in brackets, as lines of their own. */
function eachInBrackets(line: BoardLine): readonly BoardLine[] {
	const text = /\bm\.?2/i.test(line.value)
		? line.value
		: /\bm\.?2/i.test(line.label)
			? line.value.replace(/^(\d{1,2}\s?[x×]\s)/, "$1M.2 ")
			: "";
	const [, count = "", outer = "", inner = ""] = /^(\d{1,2})\s?[x×]\s([^()]*)\(([^()]*)\)\s*$/i.exec(text) ?? [];
	const parts = inner.split(/[,;]\s(?=\d{1,2}\s?[x×]?\s)/);
	const counts = parts.map((part) => Number(/^(\d{1,2})\s?[x×]?\s/i.exec(part)?.[1] ?? Number.NaN));
	if (parts.length < 2 || counts.reduce((sum, one) => sum + one, 0) !== Number(count)) return [line];
	return parts.map((part, index) => ({
		...line,
		label: "",
		value: `${counts[index]} x ${outer.trim()} ${part.replace(/^\d{1,2}\s?(?:[x×]\s)?/i, "")}`,
	}));
}

/** M.2 sockets for drives that a line tells of. */
export function boardM2(line: BoardLine): Found {
	const found = eachInBrackets(line).map(ofOneLine);
	return { entries: found.flatMap(({ entries }) => entries), doubts: found.flatMap(({ doubts }) => doubts) };
}

function ofOneLine(line: BoardLine): Found {
	if (line.isHead || line.topic === "accessories" || line.isNote) return { entries: [], doubts: [] };
	const labelTells = /\bm\.?2/i.test(line.label) || /^M\.?2[_A-Z]?\d/i.test(line.label);
	const inRow = labelTells
		? /^(\d{1,2})\s?[x×]\s(?=(?:16|22|25|30)\d{2,3}|pci|key|[mb][\s-]key|nvme|sata|\()/i.exec(line.value)
		: null;
	const whole = inRow
		? `${inRow[1]} x ${line.label} ${line.value.slice(inRow[0].length)}`
		: labelTells && !/\bm\.?2/i.test(line.value)
			? `${line.label}: ${line.value}`
			: labelled(line);
	const riser = onCard.test(whole);
	// A slot on a card of its own name has key and lengths as the others have.
	const text =
		riser && byKeyAndLength.test(whole)
			? whole.replace(/^\S*?\.2_(\d)/, "M.2_$1").replaceAll(new RegExp(onCard, "gi"), " ")
			: whole;
	if (!/\bm\.?\s?2(?!\d)/i.test(text) && !/\bM2[_A-Z]/.test(text)) return { entries: [], doubts: [] };
	const some = someBeside.exec(text);
	const read = readM2(some?.[1] ?? text, line.from);
	const at = { line: line.line, quote: line.quote };
	const entries: ListEntry[] = [];
	const doubts: ReadDoubt[] = read.doubts
		.filter(({ about }) => about !== "key" || !words.wireless.test(text))
		.map(({ might, why }) => ({
			fact: "m2Sockets",
			might: [],
			...at,
			why: `${why}${might.length > 0 ? ` It names ${might.join(", ")}.` : ""}`,
		}));
	for (const socket of read.sockets) {
		if (socket.key === "E" || (socket.key === undefined && words.wireless.test(text))) continue;
		// Cards 30 mm wide with key B are modems.
		if (socket.key === "B" && /(?<!\d)30(?:42|52)(?!\d)/.test(text)) continue;
		if (line.topic === "wireless" || /\b(?:modem|wwan|lte|sim|[45]g)\b/i.test(text)) continue;
		const ownName = riser ? /^(\S*\.2_\d)/.exec(whole)?.[1] : undefined;
		const names = ownName === undefined ? (socket.names ?? []) : [ownName];
		// Several generations in one line are those of several sockets, and so are its lengths.
		const isMixed = (socket.count ?? 1) > 1 && read.doubts.some(({ about }) => about === "generation");
		const facts = isMixed
			? {}
			: {
					...known({
						key: socket.key,
						lengthsMm: socket.lengthsMm && socket.lengthsMm.length > 0 ? socket.lengthsMm : undefined,
						widestMm: widestIn(text),
						wiredLanes: socket.wiredLanes,
						generation: socket.generation,
						sata: socket.sata,
						from: socket.from,
						place: riser
							? "riser"
							: /\b(?:on\sthe\sback|bottom\sside|back\sside|rückseite|posterior\sde)\b/i.test(text)
								? "back"
								: undefined,
					}),
				};
		// Without a count it is told of one socket only where it says so: by a name, or as a slot with key or length.
		const count = socket.count ?? (isOneSlot(text, facts) ? 1 : undefined);
		if (count === undefined || count > 12) {
			if (
				Object.keys(facts).length > 0 &&
				!read.doubts.some(({ about }) => about === "count") &&
				/slot|socket|steckpl/i.test(text)
			)
				doubts.push({
					fact: "m2Sockets",
					might: [],
					...at,
					why: "The text does not say how many M.2 sockets it means.",
				});
			continue;
		}
		const isBare = Object.keys(facts).filter((key) => key !== "from").length === 0;
		if (isBare && names.length === 0 && line.topic === "slots") {
			doubts.push({
				fact: "m2Sockets",
				might: [],
				...at,
				why: "One M.2 socket stands among the card slots, without its key; it may be for a wireless card.",
			});
			continue;
		}
		for (let index = 0; index < count; index++)
			entries.push({
				...at,
				...(names.length === count && names[index] !== undefined ? { name: names[index] } : {}),
				facts,
				block: line.block,
				series: line.series,
				isOverview: line.topic === "overview",
			});
	}
	const [, , rest] = some ?? [];
	const special = rest === undefined ? undefined : readM2(`1 x M.2 ${rest}`, line.from).sockets[0];
	if (special && entries.length > 0) {
		const { generation, wiredLanes, lengthsMm } = special;
		entries[0] = {
			...(entries[0] as ListEntry),
			facts: { ...entries[0]?.facts, ...known({ generation, wiredLanes, lengthsMm }) },
		};
	}
	// A sentence about sockets that are listed elsewhere asks nothing of its own.
	const isTold =
		entries.length > 0 ||
		doubts.some(
			({ why }) => why.startsWith("One M.2 socket stands") || why.startsWith("The text does not say how many"),
		);
	const isCounted = read.doubts.some(({ about }) => about === "count" || about === "some of them");
	return { entries, doubts: isTold || isCounted ? doubts : [] };
}

/** The label belongs to it where it names the socket or its count. */
function labelled({ label, value }: BoardLine): string {
	return /^M\.?2[_A-Z]?\d/i.test(label) ? `${label}: ${value}` : value;
}

function isOneSlot(text: string, facts: object): boolean {
	return (
		/^\W{0,4}(?:\S+\s){0,2}?m\.?2\S*\s(?:slot|socket|steckplatz)\b/i.test(text) &&
		("key" in facts || "lengthsMm" in facts || "generation" in facts)
	);
}

/** The widest card in mm by the first two figures, such as 25 of 25110; 22 is the usual one. */
function widestIn(text: string): number | undefined {
	const widths = [...text.matchAll(lengthWord)].map(([, width]) => Number(width));
	return widths.length > 0 ? Math.max(...widths) : undefined;
}
