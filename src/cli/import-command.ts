import { basename } from "node:path";
import { keepMapping, keptMapping } from "../files/csv-mappings.ts";
import { addParts, partsIn, withFactsOf } from "../files/own-parts.ts";
import { type CsvTable, readCsv } from "../files/read-csv.ts";
import { readJson } from "../files/read-json.ts";
import { soundParts } from "../files/sound-parts.ts";
import type { OwnPart } from "../parts/answers-file.ts";
import { cleanLine } from "../parts/clean-text.ts";
import { type PartKind, partKindNames, partKinds } from "../parts/part-kinds.ts";
import { readMoney } from "../questions/read-money.ts";
import { readCell } from "../reading/csv-cells.ts";
import { type ColumnMapping, columnFacts, headKey, mapColumns } from "../reading/csv-columns.ts";
import { type BadCell, csvParts } from "../reading/csv-parts.ts";
import { wrapText } from "../sheet/wrap-text.ts";
import { nearWords } from "./arguments.ts";
import { changeOwn, kindNamed } from "./change-own.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { faultsMessage } from "./fault-words.ts";
import { reading, tellLeftOut } from "./load.ts";
import type { OwnContext } from "./own-context.ts";
import { valueWords } from "./own-parts-words.ts";
import { endingOf } from "./write-sheet.ts";

/** `own import FILE`: parts from a table or a parts file, into the own parts. All of them, or none. */
export function importParts(context: OwnContext): void {
	const [, file = ""] = context.args.operands;
	if (endingOf(file) === ".json") importJson(context, file);
	else importTable(context, file);
}

function importJson(context: OwnContext, path: string): void {
	const { args, streams } = context;
	const { file, faults } = soundParts(reading(() => readJson(path)));
	if (!file || (faults.length > 0 && !args.soundOnly)) {
		const advice = file ? " Add --sound-only to take its sound parts." : "";
		throw new CommandError(exitCodes.badData, `${faultsMessage(path, faults)}${advice}`);
	}
	tellLeftOut(path, faults, streams);
	keepParts(
		context,
		partsIn(file).map((own) => ({ own, at: path })),
		(_before, own) => own,
	);
}

function importTable(context: OwnContext, path: string): void {
	const { args, streams, folder, today } = context;
	if (args.kind === undefined)
		throw new CommandError(
			exitCodes.usage,
			`Which kind of part does the table hold? Add --kind board, or ${partKindNames.slice(1).join(", ")}.`,
		);
	const kind = kindNamed(args.kind);
	const table = reading(() => readCsv(path));
	const kept = keptMapping(folder, kind, table.head);
	const given = new Map([...(kept ?? [])].reverse());
	if (args.map !== undefined) for (const [column, fact] of mapOf(args.map, kind, table.head)) given.set(column, fact);
	const mapping = mapColumns(kind, table.head, given);
	if (!mapping.columns.some(({ fact }) => fact.path === "name") || (!kept && !args.yes && args.map === undefined)) {
		streams.out(previewText(basename(path), kind, table, mapping));
		throw new CommandError(exitCodes.usage, previewAdvice(mapping));
	}
	const { parts, bad } = csvParts(table.rows, {
		kind,
		columns: mapping.columns,
		width: table.head.length,
		source: { name: basename(path), date: today },
		readMoney,
	});
	if (bad.length > 0 && !args.soundOnly)
		throw new CommandError(
			exitCodes.badData,
			`${badText(bad)}\nNothing was imported. Mend them, or add --sound-only to take the other rows.`,
		);
	if (bad.length > 0) streams.err(`${badText(bad)}\nThese rows were left out.\n`);
	if (kept) streams.err("The columns were taken as last time; --map changes that.\n");
	keepParts(
		context,
		parts.map(({ row, part }) => ({
			own: { kind, part: withDayOfPrice(part, today) } as OwnPart,
			at: `${path}, row ${row}`,
		})),
		// A table has no cells for many facts: those a part had stay.
		withFactsOf,
	);
	reading(() => keepMapping(folder, kind, mappingToKeep(table.head, mapping)));
}

/** A price without a day could never grow old: it is one of the day it came in. */
function withDayOfPrice<T extends object>(part: T, today: string): T {
	return "price" in part && !("checkedOn" in part) ? { ...part, checkedOn: today } : part;
}

/**
 * Adds parts to the own ones. One that is there already is changed only where that is asked for.
 *
 * @param replacement what takes the place of a part that is there
 */
function keepParts(
	context: OwnContext,
	parts: readonly { readonly own: OwnPart; readonly at: string }[],
	replacement: (before: OwnPart, own: OwnPart) => OwnPart,
): void {
	const { args, streams, folder } = context;
	if (parts.length === 0) throw new CommandError(exitCodes.badData, "There is no part in it. Nothing was changed.");
	const { added, clashing } = changeOwn(folder, args, streams, (before) => {
		const there = new Set(partsIn(before).map(({ kind, part }) => `${kind} ${part.id}`));
		const isNew = ({ own }: (typeof parts)[number]) => args.replace || !there.has(`${own.kind} ${own.part.id}`);
		const clashing = parts
			.filter((one) => !isNew(one))
			.map(({ own, at }) => `${at}: you have a ${partKinds[own.kind].noun} "${own.part.id}" already.`);
		const taken = parts.filter(isNew).map(({ own }) => own);
		const file = addParts(before, taken, replacement);
		if (clashing.length > 0 && !args.soundOnly)
			throw new CommandError(
				exitCodes.badData,
				`${firstLines(clashing)}\nNothing was imported. --replace puts the new ones in their place.`,
			);
		return { file, result: { added: taken.length, clashing } };
	});
	if (clashing.length > 0) streams.err(`${firstLines(clashing)}\nThese were left out.\n`);
	streams.out(`Imported: ${added} ${added === 1 ? "part" : "parts"}. To see them: boardwalk own\n`);
}

/** The facts of columns as --map tells them: "Column=fact,Other=", or the same as a JSON object. */
function mapOf(text: string, kind: PartKind, head: readonly string[]): readonly (readonly [string, string])[] {
	return pairsOf(text).map(([name, path]) => {
		const column =
			head.find((one) => one === name) ?? head.find((one) => headKey(one) === headKey(name) && headKey(name) !== "");
		if (column === undefined)
			throw new CommandError(
				exitCodes.usage,
				`The table has no column "${name}".${nearWords(name, head).replace(" See: boardwalk --help", ` It has ${head.slice(0, 30).map(shortened).join(", ")}.`)}`,
			);
		const facts = columnFacts(kind).map((fact) => fact.path);
		if (path !== "" && !facts.includes(path))
			throw new CommandError(
				exitCodes.usage,
				`A ${partKinds[kind].noun} has no fact "${path}".${nearWords(path, facts).replace("boardwalk --help", `boardwalk schema ${kind}`)}`,
			);
		return [column, path] as const;
	});
}

function pairsOf(text: string): readonly (readonly [string, string])[] {
	if (text.trim().startsWith("{")) {
		try {
			const pairs = Object.entries(JSON.parse(text) as object).map(([name, path]) => [cleanLine(name), path] as const);
			if (pairs.every((pair): pair is readonly [string, string] => typeof pair[1] === "string")) return pairs;
		} catch {
			// Told below.
		}
		throw new CommandError(exitCodes.usage, '--map as JSON is such as {"Column": "fact.path"}.');
	}
	return text.split(",").map((pair) => {
		const at = pair.lastIndexOf("=");
		if (at < 1) throw new CommandError(exitCodes.usage, '--map is such as "Column=fact.path,Other=memory.type".');
		return [cleanLine(pair.slice(0, at)), pair.slice(at + 1).trim()] as const;
	});
}

function mappingToKeep(head: readonly string[], { columns }: ColumnMapping): readonly (readonly [string, string])[] {
	return head.map((column, place) => [column, columns.find(({ index }) => index === place)?.fact.path ?? ""] as const);
}

const delimiterWords: Readonly<Record<string, string>> = { ",": "commas", ";": "semicolons", "\t": "tabs" };

function previewText(name: string, kind: PartKind, table: CsvTable, { columns, leftOut }: ColumnMapping): string {
	const taken = columns.map(({ column, index, fact, unit }) => {
		const cell = table.rows.map(({ cells }) => cells[index] ?? "").find((one) => one !== "");
		const given = `${shortened(column)} gives ${fact.path} (${fact.title})`;
		if (cell === undefined) return `${given}; no row has it`;
		const found = readCell(cell, { kind, fact, readMoney, ...(unit ? { unit } : {}) });
		if ("expected" in found) return `${given}; first "${shortened(cell)}", which cannot be: expected ${found.expected}`;
		const words = `${valueWords(found.value ?? "not known")}${fact.unit && found.value !== undefined ? ` ${fact.unit}` : ""}`;
		return `${given}; first "${shortened(cell)}", read as ${shortened(words)}`;
	});
	const left = leftOut.map(({ column, why }) => `${column === "" ? "a column" : shortened(column)}: ${why}`);
	const lines = [
		`${name}: ${table.rows.length} ${table.rows.length === 1 ? "row" : "rows"}, cells between ${delimiterWords[table.delimiter]}.`,
		...(taken.length > 0 ? ["", "Taken", ...taken.map((line) => `- ${line}`)] : []),
		...(left.length > 0 ? ["", "Left out", ...left.map((line) => `- ${line}`)] : []),
	];
	return `${lines.flatMap((line) => wrapText(line, 78, { indent: "  " })).join("\n")}\n`;
}

function previewAdvice({ columns }: ColumnMapping): string {
	if (!columns.some(({ fact }) => fact.path === "name"))
		return 'Nothing was imported: no column gives the name. Say which one: --map "Column=name"';
	return 'Nothing was imported yet. If this is right, add --yes. Else say it better: --map "Column=fact.path,Other="';
}

function shortened(text: string): string {
	return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

function badText(bad: readonly BadCell[]): string {
	return firstLines(
		bad.map(
			({ row, column, found, expected }) =>
				`Row ${row}${column === null ? "" : `, ${column}`}: found ${column === null ? shortened(found) : `"${shortened(found)}"`}, expected ${expected}.`,
		),
	);
}

function firstLines(lines: readonly string[]): string {
	const more = lines.length > 50 ? [`... and ${lines.length - 50} more.`] : [];
	return [...lines.slice(0, 50), ...more].join("\n");
}
