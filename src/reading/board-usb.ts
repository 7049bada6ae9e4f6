import type { BoardLine } from "./board-lines.ts";
import type { ListEntry } from "./list-blocks.ts";
import type { ReadDoubt } from "./part-reading.ts";
import { known } from "./quantities.ts";
import { readUsb, type UsbReading } from "./read-usb.ts";
import { words } from "./words.ts";

interface Found {
	readonly rear: readonly ListEntry[];
	readonly headers: readonly ListEntry[];
	/** Sockets of which the text does not say where they are. */
	readonly anywhere: readonly ListEntry[];
	readonly doubts: readonly ReadDoubt[];
}

const nothing: Found = { rear: [], headers: [], anywhere: [], doubts: [] };
/** Ports by the trade name of a cable standard: version 3 and 4 run at 40 Gb/s, version 5 at 80, always with USB-C. From memory. */
const cablePort = /thunderbolt(?:™|®)?\s?([345])/i;

/** USB sockets and headers that a line tells of. */
export function boardUsb(line: BoardLine): Found {
	if (
		line.isHead ||
		line.isNote ||
		["accessories", "overview", "picture", "wireless", "size"].includes(line.topic ?? "")
	)
		return nothing;
	const cable = cablePort.exec(line.value);
	const labelTells = words.usb.test(line.label) && !/usb/i.test(line.value);
	if (!cable && !labelTells && !/usb/i.test(line.value)) return nothing;
	const place = line.place;
	const text = withHeaderWord(labelTells ? underLabel(line) : line.value, line);
	const at = { line: line.line, quote: line.quote };
	if (cable) return cablePorts(line, cable[1] === "5" ? 80 : 40, place, at);
	const { usb, doubts } = readUsb(text, place);
	const rear: ListEntry[] = [];
	const headers: ListEntry[] = [];
	const anywhere: ListEntry[] = [];
	const told: ReadDoubt[] = doubts.map(({ about, might, why }) => ({
		fact: about === "place" ? "rearUsb" : place === "header" ? "headers" : "rearUsb",
		might: [],
		...at,
		why: `${why}${might.length > 0 ? ` It names ${might.join(", ")}.` : ""}`,
	}));
	const isOpen = doubts.some(({ about }) => about === "count" || about === "place" || about === "some of them");
	for (const one of usb) {
		if (isOpen) continue;
		if (one.place === "header") headers.push(...headerEntries(one, line, at, told));
		else if (one.count !== undefined && one.count <= 20) {
			const entries = socketEntries(one, line, at);
			if (one.place === "back") rear.push(...entries);
			else anywhere.push(...entries);
		}
	}
	return { rear, headers, anywhere, doubts: told };
}

/** "usb rear: 2 x 10Gbps" is "2 x USB 10Gbps"; its place is known from the label. */
function underLabel({ label, value }: BoardLine): string {
	const [, count, rest] = /^(\d{1,2})\s?[x×]\s(.*)$/i.exec(value) ?? [];
	return count === undefined ? `${label}: ${value}` : `${count} x USB ${rest}`;
}

/** Under "headers" or "internal connectors" a count without "ports" is one of headers, and the word is put in. */
function withHeaderWord(text: string, line: BoardLine): string {
	if (!line.isAmongHeaders || /header|stiftleist|pfostenst/i.test(text)) return text;
	const outside = text.replace(/\([^)]*\)/g, "");
	if (/\bports?\b|anschlüsse|buchsen/i.test(outside)) return text;
	return /\(/.test(text) ? text.replace("(", "header (") : `${text} header`;
}

function cablePorts(
	line: BoardLine,
	gbps: number,
	place: "back" | "header" | undefined,
	at: { line: number; quote: string },
): Found {
	const count = Number(/(?<![\w.])(\d{1,2})\s?[x×]\s/i.exec(line.value)?.[1] ?? Number.NaN);
	const isHeader = /header|stiftleiste|add-?in|card/i.test(line.value);
	if (!Number.isInteger(count) || count < 1 || count > 8 || isHeader) return nothing;
	const side = words.back.test(line.value) ? "back" : place;
	const entries = Array.from(
		{ length: count },
		(): ListEntry => ({ ...at, facts: { plug: "C", gbps }, block: line.block, series: line.series }),
	);
	return side === "back"
		? { ...nothing, rear: entries }
		: side === "header"
			? nothing
			: { ...nothing, anywhere: entries };
}

function socketEntries(one: UsbReading, line: BoardLine, at: { line: number; quote: string }): readonly ListEntry[] {
	const facts = { plug: one.plug ?? "A", ...known({ gbps: one.gbps }) };
	return Array.from({ length: one.count ?? 0 }, () => ({
		...at,
		facts,
		// A socket of which no shape is told is a flat one: the oval one is always named. Common practice, no source.
		...(one.plug === undefined ? { assumed: ["plug"] } : {}),
		block: line.block,
		series: line.series,
	}));
}

function headerEntries(
	one: UsbReading,
	line: BoardLine,
	at: { line: number; quote: string },
	doubts: ReadDoubt[],
): readonly ListEntry[] {
	if (one.gbps === undefined) {
		doubts.push({
			fact: "headers",
			might: [],
			...at,
			why: "The text does not say how fast the sockets of this header are.",
		});
		return [];
	}
	const each = one.plug === "C" ? 1 : 2;
	const { headers, count } = one;
	if (headers === undefined && count === undefined) return [];
	if (headers !== undefined && count !== undefined && headers * each !== count && headers !== count)
		doubts.push({
			fact: "headers",
			might: [],
			...at,
			why: `${headers} headers would give ${headers * each} sockets, and the text says ${count}.`,
		});
	const many = headers ?? Math.ceil((count ?? 0) / each);
	return Array.from({ length: Math.min(many, 8) }, () => ({
		...at,
		facts: { plug: one.plug ?? "A", gbps: one.gbps },
		assumed: [...(one.plug === undefined ? ["plug"] : []), ...(headers === undefined ? ["headers"] : [])],
		...(count === undefined ? {} : { ports: count / many }),
		block: line.block,
		series: line.series,
	}));
}
