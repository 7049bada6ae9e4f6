import { topicOf } from "./board-topics.ts";
import { isGroupName } from "./labelled-lines.ts";
import { inStandardTerms } from "./standard-terms.ts";
import type { TextLine } from "./text-lines.ts";

/** Fewer lines than this may be glued by chance; own convention. */
const fewest = 5;
const longestLabel = 45;
/** Where a label may end and its value begin without a space: "ChipsetK720", "USB4x USB 2.0", "PCIe x162 x". */
const seams =
	/(?<=[\p{Ll})™®])(?<![\s\d]x)(?=\p{Lu}|\d|m(?:ATX|ITX))|(?<=\p{Lu}{2})(?=\d{1,2}(?:\.\d)?\s?G)|(?<=\p{Lu}{2})(?=\p{Lu}\p{Ll}{2}|\d{1,2}\s?x\s)|(?<=x(?:16|8|4|1))(?=\d\s?x\s)|(?<=\/s)(?=\d{1,2}\s?x\s)|(?<=M\.2)(?=M\.?2|\d{1,2}(?:$|\s?x\s))/gu;
/** Names with a capital within that are no seams. */
const oneWord = /^(?:Display|Flash|Thunder|Sound|Slim|Lan|Oculink)$/i;
const otherLabel =
	/^(?:model(?:\sn(?:ame|umber))?|brand|series|weight|colou?rs?|warranty|features?|architecture|channels?\ssupported)$/i;
/** What a label ends with, where its last word tells no topic by itself. */
const endOfLabel =
	/^(?:speeds?|types?|standards?|supported|support|capacity|sizes?|numbers?|names?|ports?|info|features?|channels?|levels?|contents?|pins?|models?|architecture|systems?|lighting|warranty|weight|brand|series)$|[\d)]$/i;
/** A count glued to what it counts: "Type-C1", "HDMI 2.11", "USB 3.2 Gen 12", "CPU Fan1". */
const countAtEnd =
	/^(?=.*(?:usb|hdmi|display|rj-?45|fan|pump|rgb|pin|power|audio|header|port|led\b|sata|vga|dvi))(.*?(?:\bgen\s?[12](?:x2)?|\d\.\d|type[\s-][ac]|rj-?45|12v|[\p{L})]))(\d{1,2})$/iu;

/**
 * Pages whose cells were copied without anything between them: labels get a tab behind them. Only where several lines
 * are written so, and hardly any with a colon or a tab.
 */
export function withoutGlue(lines: readonly TextLine[]): readonly TextLine[] {
	const filled = lines.filter(({ text }) => text.trim() !== "");
	const apart = filled.filter(({ text }) => /\t|^[^:]{2,40}:\s/.test(text)).length;
	if (apart > filled.length * 0.2) return lines;
	const cut = new Map(filled.map((line) => [line, splitGlued(line.text)]));
	if ([...cut.values()].filter((text) => text !== undefined).length < fewest) return lines;
	return lines.map((line) => {
		const text = cut.get(line) ?? withCountApart(line.text);
		return text === undefined ? line : { ...line, text };
	});
}

function splitGlued(text: string): string | undefined {
	const line = text.trim();
	for (const { index } of line.slice(0, longestLabel + 1).matchAll(seams)) {
		const label = line.slice(0, index).trim();
		if (index === 0 || oneWord.test(label.split(/\s/).at(-1) ?? "")) continue;
		if (isLabel(label)) return `${label}\t${line.slice(index)}`;
	}
	return undefined;
}

function isLabel(label: string): boolean {
	if (label.split(/\s+/).length > 6 || /^\d|[,;]/.test(label)) return false;
	if (isGroupName(label) || otherLabel.test(label)) return true;
	// A name such as "FernCo" has a seam too.
	const last = label.split(/\s+/).at(-1) ?? "";
	const isWhole = endOfLabel.test(last) || isGroupName(last) || topicOf(inStandardTerms(last)) !== undefined;
	return isWhole && topicOf(inStandardTerms(label)) !== undefined;
}

function withCountApart(text: string): string | undefined {
	const [, thing, count] = countAtEnd.exec(text.trim()) ?? [];
	return thing === undefined ? undefined : `${thing}\t${count}`;
}
