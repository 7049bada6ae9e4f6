import type { BoardLine } from "./board-lines.ts";
import type { ListEntry } from "./list-blocks.ts";
import type { ReadDoubt } from "./part-reading.ts";
import { eachOnce, known } from "./quantities.ts";
import { readSlots } from "./read-slots.ts";

/** Slots that divide their lanes: each way to use them, by the name or the place of the slot in its line. */
export interface LaneModes {
	readonly names: readonly string[];
	readonly modes: readonly (readonly number[])[];
	readonly line: number;
	readonly quote: string;
}

interface Found {
	readonly entries: readonly ListEntry[];
	readonly doubts: readonly ReadDoubt[];
	readonly shares: readonly LaneModes[];
}

const nothing: Found = { entries: [], doubts: [], shares: [] };

/** Card slots that a line tells of. */
export function boardSlots(line: BoardLine): Found {
	if (line.isHead || line.isNote || line.topic === "accessories" || line.topic === "storage") return nothing;
	const names = slotNames(line.label);
	const labelTells = /\bpci[\s-]?e|\bpci\b/i.test(line.label) && !/\bpci[\s-]?e|\bpci\b/i.test(line.value);
	const named =
		names.length > 0 ? `${names.length} x ${/\bpci/i.test(line.value) ? "" : "PCIe "}${line.value}` : undefined;
	const text = named ?? nameAhead(line.value) ?? (labelTells ? `${line.label}: ${line.value}` : line.value);
	if (!/\bpci/i.test(text) || generationNote(line)) return nothing;
	// "Slot PCIe x8: 0" counts none; what stands beside an M.2 socket or a cable's plug is no card slot.
	if (/^0(?:\s|$)/.test(line.value) || /\bm\.2\b|\bmcio\b|oculink|slimsas/i.test(line.label)) return nothing;
	// A drive's length, SATA or NVMe beside it: a drive socket whose name stands in another line.
	if (/(?<![\d.])(?:22|25)(?:30|42|60|80|110)(?!\d)|\bsata|\bnvme\b/i.test(text)) return nothing;
	const at = { line: line.line, quote: line.quote };
	const byName = namedModes(text);
	const divided = byName ?? dividedModes(text);
	// The modes are read apart; what is left is the slot itself.
	const plain = divided ? text.replace(divided.told, byName ? " " : "x16") : text;
	const read = readSlots(plain, line.from);
	const doubts: ReadDoubt[] = read.doubts
		.filter(({ about }) => about !== "lanes wired" || line.series === undefined)
		.map(({ might, why }) => ({
			fact: "cardSlots",
			might: [],
			...at,
			why: `${why}${might.length > 0 ? ` It names ${might.join(", ")}.` : ""}`,
		}));
	const entries: ListEntry[] = [];
	const shares: LaneModes[] = [];
	for (const slot of read.slots) {
		const isSingle =
			/\bslot\b|\bsteckplatz\b|kaartslot/i.test(`${line.label} ${plain}`) && slot.lengthLanes !== undefined;
		const count = slot.count ?? (isSingle ? 1 : undefined);
		if (count === undefined || count > 12) continue;
		const own = names.length === count ? names : slot.names?.length === count ? slot.names : undefined;
		const wired = divided && (divided.modes[0]?.length ?? 0) === count ? widest(divided.modes) : undefined;
		const facts = known({
			bus: slot.bus,
			lengthLanes: slot.lengthLanes,
			wiredLanes: slot.wiredLanes ?? widestMode(plain, slot.lengthLanes),
			generation: slot.generation,
			from: slot.from,
		});
		for (let index = 0; index < count; index++)
			entries.push({
				...at,
				...(own?.[index] === undefined ? {} : { name: own[index] }),
				facts: { ...facts, ...known({ wiredLanes: wired?.[index] ?? facts.wiredLanes }) },
				block: line.block,
				series: line.series,
				isOverview: line.topic === "overview",
			});
		if (divided && wired) shares.push({ names: own ?? [], modes: divided.modes, ...at });
	}
	return { entries, doubts, shares };
}

/** "PCI_E1 Gen PCIe 5.0 supports up to x16": one slot by its name, how many lanes it runs at. */
function nameAhead(value: string): string | undefined {
	const [, name, rest = ""] = /^(PCI_E\d{1,2}|PCIEX?\d{1,2}(?:_\d)?)[\s:]+(?:gen\s)?(pci.*)$/i.exec(value) ?? [];
	if (name === undefined) return undefined;
	return `1 x ${rest.replace(/supports?\s(?:up\sto\s)?(x\d{1,2})/i, "runs at $1 mode")} (${name})`;
}

/** A sentence that tells the generation of slots listed elsewhere. */
export interface GenerationNote {
	readonly generation: number;
	/** The slots by their length or names; neither: all of them. */
	readonly lengthLanes?: readonly number[];
	readonly names?: readonly string[];
	readonly line: number;
}

/** "All slots are PCIe Gen 3", "The PCI Express x1 slots conform to the PCI Express 2.0 standard." */
export function generationNote({ value, line, isHead }: BoardLine): GenerationNote | undefined {
	const told =
		/^\W*((?:the|all|both|every|each|alle|die)\b[^.]{0,80}?\bslots?\b[^.]{0,30}?)\s(?:conforms?|meets?|follows?|comply|complies|are|is|supports?|sind|entsprechen|entspricht)\s(?:to\s)?(?:the\s)?pci[\s-]?e(?:xpress)?\s?(?:gen\.?\s?)?([1-6])(?:\.\d)?\b/i.exec(
			value,
		);
	if (!told || isHead) return undefined;
	const [, which = "", generation] = told;
	const names = [...which.matchAll(/\bPCI(?:EX|_E|E)_?\d{1,2}(?:_\d{1,2})?\b/gi)].map(([name]) => name);
	const lengthLanes = [...which.matchAll(/(?<!\w)x(16|8|4|1)\b/gi)].map(([, lanes]) => Number(lanes));
	if (names.length + lengthLanes.length === 0 && !/\b(?:all|alle|every|each)\b/i.test(which)) return undefined;
	return {
		generation: Number(generation),
		line,
		...(lengthLanes.length > 0 ? { lengthLanes } : {}),
		...(names.length > 0 ? { names } : {}),
	};
}

/** Entries with the generation that a sentence elsewhere tells of them. */
export function withGenerations(entries: readonly ListEntry[], notes: readonly GenerationNote[]): readonly ListEntry[] {
	return entries.map((entry) => {
		if (entry.facts["bus"] !== "PCI Express" || entry.facts["generation"] !== undefined) return entry;
		const generations = eachOnce(
			notes
				.filter(({ names, lengthLanes }) => {
					const isAll = names === undefined && lengthLanes === undefined;
					const isNamed = entry.name !== undefined && names?.includes(entry.name) === true;
					return isAll || isNamed || lengthLanes?.includes(Number(entry.facts["lengthLanes"])) === true;
				})
				.toSorted((one, other) => Number(other.names !== undefined) - Number(one.names !== undefined))
				.map(({ generation }) => generation),
		);
		// A note by name goes before one by length; two of a kind that differ tell nothing.
		const [generation] = generations;
		const byName = notes.some(({ names }) => entry.name !== undefined && names?.includes(entry.name));
		return generation === undefined || (generations.length > 1 && !byName)
			? entry
			: { ...entry, facts: { ...entry.facts, generation } };
	});
}

/** Names in a label that is nothing but names: "SLOT1, SLOT3", "PCIEX16_1 & PCIEX16_2". */
function slotNames(label: string): readonly string[] {
	const all = label
		.replace(/\s?\([^)]*\)$/, "")
		.split(/[,&/]|\s(?:and|und)\s/)
		.map((name) => name.trim())
		.filter((name) => name !== "");
	return all.every((name) => /^(?:SLOT\s?\d{1,2}|PCI_?E(?:X\d{1,2})?_?\d{1,2})$/i.test(name)) ? all : [];
}

/** "supports x8/x4 mode": the widest way it runs with some processor. */
function widestMode(text: string, length: number | undefined): number | undefined {
	const told =
		/(?:supports?|at|mode[s:]*|unterstützt|läuft\s(?:mit|als))\s(x\d{1,2}(?:\s?\/\s?x\d{1,2})+)(?:\smode)?/i.exec(
			text,
		)?.[1];
	if (told === undefined || length === undefined) return undefined;
	const lanes = [...told.matchAll(/x(\d{1,2})/gi)].map(([, figure]) => Number(figure));
	const most = Math.max(...lanes);
	return most <= length ? most : undefined;
}

type Modes = { readonly modes: readonly (readonly number[])[]; readonly told: string };

/** "x16 or x8/x8", "x16 / x8+x8": two or more slots that divide lanes. The first list is padded with slots that are off. */
function dividedModes(text: string): Modes | undefined {
	const told =
		/\(?[^(]*?\b(x16\s?(?:\/\s?x?0\s?)?(?:,|\bor\b|\boder\b|\/|;|\bou\b|\be\b)\s?x8\s?[/+]\s?x8(?:\s?(?:,|\bor\b|\boder\b|;)\s?x8\s?[/+]\s?x4\s?[/+]\s?x4)?)(?:\smodes?(?:\(s\))?)?\)?/i.exec(
			text,
		);
	const [, all = ""] = told ?? [];
	if (!told || all === "") return undefined;
	const at = text.indexOf(all);
	const modes = [
		[16, 0],
		[8, 8],
	];
	const after = text.slice(at + all.length).match(/^\smodes?(?:\(s\))?/i)?.[0] ?? "";
	return { modes, told: `${all}${after}` };
}

/** "single at x16 (PCIE1); dual at x16 (PCIE1) / x8 (PCIE2)": each way by names. */
function namedModes(text: string): Modes | undefined {
	const ways = text
		.split(/;|,\s(?=(?:dual|triple|quad|zwei|drei)\b)/i)
		.map((way) => [...way.matchAll(/x(16|8|4|2|1)\s?\((PCI\w*?\d\w*)\)/gi)]);
	const told = ways.filter((way) => way.length > 0);
	const names = eachOnce(told.flat().map(([, , name = ""]) => name));
	if (told.length < 2 || names.length < 2) return undefined;
	const inOrder = names.toSorted((one, other) => text.indexOf(one) - text.indexOf(other));
	const modes = told.map((way) => inOrder.map((name) => Number(way.find(([, , its]) => its === name)?.[1] ?? 0)));
	const from = text.search(/:\s?(?:single|einzeln|ein)?\s?(?:at|mit)?\s?x(?:16|8|4)\s?\(/i);
	return { modes, told: from < 0 ? "" : text.slice(from, text.lastIndexOf(")") + 1) };
}

/** The most lanes each slot has: of named ways in any of them, of divided ones the first has all and the others share. */
function widest(modes: readonly (readonly number[])[]): readonly number[] {
	const [first = []] = modes;
	return first.map((_, index) => Math.max(...modes.map((mode) => mode[index] ?? 0)));
}
