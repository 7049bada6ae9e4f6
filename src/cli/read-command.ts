import { dataFolder } from "../files/own-folders.ts";
import { addPart, partsWithId, replacePart } from "../files/own-parts.ts";
import { readForeignText, UnreadableFile } from "../files/read-text.ts";
import type { OwnPart } from "../parts/answers-file.ts";
import { cleanLine } from "../parts/clean-text.ts";
import { fieldAt } from "../parts/form-fields.ts";
import { wordsOf } from "../parts/form-words.ts";
import { partKinds } from "../parts/part-kinds.ts";
import { rowsFor } from "../parts/support-rows.ts";
import {
	idOf,
	type PartReading,
	type ReadDoubt,
	type ReadFact,
	type ReadKind,
	readKinds,
} from "../reading/part-reading.ts";
import { readSupportList, supportListOf } from "../reading/support-list.ts";
import { wrapText } from "../sheet/wrap-text.ts";
import { factPath } from "../walk/part-form.ts";
import { readPage } from "../walk/read-page.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { changeOwn } from "./change-own.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { loadOwnParts } from "./load.ts";
import { mostPageBytes, standardInputText, tooLong } from "./standard-input.ts";
import type { Streams } from "./streams.ts";

const width = 78;
const subjects = [...readKinds, "list"] as const;

/** `read`: what a pasted page, or a board's processor support list, tells. */
export async function read(
	args: Arguments,
	streams: Streams,
	today: string,
	folder: string | null = dataFolder(process.env, process.platform),
): Promise<void> {
	const [subject, path = "-"] = args.operands;
	if (subject === undefined || !(subjects as readonly string[]).includes(subject))
		throw new CommandError(
			exitCodes.usage,
			subject === undefined
				? `Read what? One of: ${subjects.join(", ")}. Such as: boardwalk read board page.txt`
				: `There is nothing to read a "${subject}" by: it is one of ${subjects.join(", ")}.${nearWords(subject, subjects)}`,
		);
	const text = await textAt(path, args, streams);
	if (args.keep && folder === null)
		throw new CommandError(exitCodes.noInput, "There is no home folder to keep your parts in.");
	if (subject === "list") readList(text, args, streams, today, folder);
	else readPart(subject as ReadKind, text, args, streams, today, folder);
}

async function textAt(path: string, { noInput }: Arguments, { err }: Streams): Promise<string> {
	try {
		if (path !== "-") {
			const text = readForeignText(path);
			if (text.length > mostPageBytes) throw tooLong(path);
			return text;
		}
		if (process.stdin.isTTY && noInput)
			throw new CommandError(
				exitCodes.usage,
				"Without asking, read needs a FILE behind it, or the text on standard input.",
			);
		if (process.stdin.isTTY) err("Paste the text of the page, then press Enter until two lines are empty.\n");
		return await standardInputText(process.stdin);
	} catch (error) {
		if (error instanceof UnreadableFile) throw new CommandError(exitCodes.noInput, `${error.path}: ${error.reason}.`);
		throw error;
	}
}

function readPart(
	kind: ReadKind,
	text: string,
	args: Arguments,
	streams: Streams,
	today: string,
	folder: string | null,
): void {
	const found = readPage(kind, text);
	const named = args.name === undefined ? found : renamed(found, args.name);
	if (named.facts.length === 0 && named.doubts.length === 0)
		throw new CommandError(
			exitCodes.badData,
			`Nothing about a ${partKinds[kind].noun} was found in this text. Is it the page's specifications?`,
		);
	streams.out(args.json ? `${JSON.stringify(readingJson(named), null, "\t")}\n` : readingText(named));
	if (!args.keep || folder === null) return;
	const own = { kind, part: dated(named, today) } as OwnPart;
	const { added } = changeOwn(folder, args, streams, (parts) => {
		const { file, added: kept } = addPart(parts, own);
		return { file, result: { added: kept } };
	});
	if (added.part.id !== own.part.id)
		streams.err(
			`You had a ${partKinds[kind].noun} ${own.part.id} before: both are there now. To take one out: boardwalk own remove ${own.part.id}\n`,
		);
	streams.err(
		`Kept among your own parts as ${added.part.id}. ${named.doubts.length > 0 ? "What is in doubt was left out." : "Nothing was in doubt."}\n`,
	);
}

/** `--json`: part, facts, doubts, unread lines. */
export function readingJson({ part, facts, doubts, unread }: PartReading) {
	return {
		part,
		facts: facts.map(({ fact, value, standing, line, quote, assumed }) => ({
			fact,
			value,
			standing,
			line,
			quote,
			...(assumed ? { assumed } : {}),
		})),
		doubts,
		unread,
	};
}

function renamed(found: PartReading, name: string): PartReading {
	const shown = cleanLine(name).slice(0, 120);
	return shown === ""
		? found
		: {
				...found,
				part: { ...found.part, name: shown, id: idOf(shown, partKinds[found.kind].noun) } as PartReading["part"],
			};
}

/** With where and when each fact was read. */
function dated({ part }: PartReading, today: string): PartReading["part"] {
	const evidence = Object.fromEntries(
		Object.entries(part.evidence ?? {}).map(([path, one]) => [
			path,
			one.quote === undefined ? one : { ...one, where: "page read from a file", date: today },
		]),
	);
	return { ...part, ...(part.evidence ? { evidence } : {}) } as PartReading["part"];
}

/** What was read, in words: doubts first, for they need a person. */
export function readingText({ kind, part, facts, doubts, unread }: PartReading): string {
	const lines = [part.name, ""];
	if (doubts.length > 0) {
		lines.push(doubts.length === 1 ? "One thing is open:" : `${doubts.length} things are open:`);
		for (const doubt of doubts)
			lines.push(...wrapText(doubtWords(kind, doubt), width, { indent: "    " }).map(bulleted));
		lines.push("");
	}
	lines.push(facts.length === 1 ? "One fact was read:" : `${facts.length} facts were read:`);
	for (const group of alikeInRow(facts))
		lines.push(...wrapText(factWords(kind, group), width, { indent: "    " }).map(bulleted));
	if (unread.length > 0)
		lines.push(
			"",
			`${unread.length === 1 ? "One line was" : `${unread.length} lines were`} not understood; --json names them.`,
		);
	return `${lines.join("\n")}\n`;
}

const bulleted = (line: string, index: number): string => (index === 0 ? `  - ${line}` : line);

/** Entries of a list one behind the other that differ in their names only, such as four drive ports. */
function alikeInRow(facts: readonly ReadFact[]): readonly (readonly ReadFact[])[] {
	const groups: ReadFact[][] = [];
	const keyOf = ({ fact, value, line }: ReadFact) => {
		const entry = typeof value === "object" && value !== null && !Array.isArray(value) ? { ...value, name: "" } : value;
		return JSON.stringify([fact.replace(/\d+(?=\]$)/, ""), entry, line]);
	};
	for (const fact of facts) {
		const last = groups.at(-1);
		if (last?.[0] && /\]$/.test(fact.fact) && keyOf(last[0]) === keyOf(fact)) last.push(fact);
		else groups.push([fact]);
	}
	return groups;
}

function factWords(kind: ReadKind, group: readonly ReadFact[]): string {
	const [first] = group;
	if (!first) return "";
	const { fact, value, standing, assumed, line } = first;
	const mark = standing === "assumed" || assumed ? ", partly by the standard it names" : "";
	const until = group.length > 1 ? ` to ${Number(factPath(group.at(-1)?.fact ?? "").at(-1)) + 1}` : "";
	return `${titleOf(kind, fact)}${until}: ${shownValue(kind, fact, value)} (line ${line}${mark})`;
}

function doubtWords(kind: ReadKind, { fact, might, why, line, quote }: ReadDoubt): string {
	const values = might.map((value) => shownValue(kind, fact, value));
	const choice = values.length > 0 ? ` It may be ${values.join(", or ")}.` : "";
	const words = quote.replace(/\s+/g, " ").slice(0, 160);
	return `${titleOf(kind, fact)}: ${why}${choice} Line ${line}: "${words}"`;
}

/** "M.2 sockets 2" for an entry of a list. */
function titleOf(kind: ReadKind, fact: string): string {
	const path = factPath(fact);
	const last = path.at(-1);
	const field = fieldAt(kind, typeof last === "number" ? path.slice(0, -1) : path);
	return `${field?.title ?? fact}${typeof last === "number" ? ` ${last + 1}` : ""}`;
}

function shownValue(kind: ReadKind, fact: string, value: unknown): string {
	const field = fieldAt(kind, factPath(fact));
	return field ? wordsOf(field, value) : typeof value === "string" ? value : JSON.stringify(value);
}

/** `read list`: the rows of a support list, for one processor with --name; kept with an own board with --board ID --keep. */
function readList(text: string, args: Arguments, streams: Streams, today: string, folder: string | null): void {
	const list = readSupportList(text);
	if (list.rows.length === 0)
		throw new CommandError(
			exitCodes.badData,
			"No processor list was found in this text. It needs the names of its columns, such as CPU and BIOS.",
		);
	if (args.json) streams.out(`${JSON.stringify({ ...supportListOf(list, today), unread: list.unread }, null, "\t")}\n`);
	else if (args.name !== undefined) streams.out(listedText(args.name, rowsFor(list, args.name), list.partial));
	else streams.out(`${list.rows.length} processors are listed${list.partial ? ", and the list is not whole" : ""}.\n`);
	if (!args.keep || folder === null) return;
	const { board } = args;
	if (board === undefined)
		throw new CommandError(exitCodes.usage, "Whose list is it? Name one of your own boards with --board ID.");
	const own = partsWithId(loadOwnParts(folder, args, streams), board).find(({ kind }) => kind === "board");
	if (own?.kind !== "board")
		throw new CommandError(exitCodes.usage, `None of your own boards has the id "${board}". See: boardwalk own`);
	changeOwn(folder, args, streams, (parts) => {
		const changed = replacePart(parts, {
			kind: "board",
			part: { ...own.part, supportList: supportListOf(list, today) },
		});
		return { file: changed ?? parts, result: null };
	});
	streams.err(`Kept with ${own.part.name}.\n`);
}

function listedText(name: string, rows: ReturnType<typeof readSupportList>["rows"], isPartial: boolean): string {
	if (rows.length === 0)
		return isPartial
			? `"${name}" is not among the rows here, and the list is not whole.\n`
			: `"${name}" is not on this list.\n`;
	return rows
		.map(({ processor, fromVersion, versionOpen, note, line }) => {
			const version = fromVersion
				? `from firmware ${fromVersion}`
				: versionOpen
					? "firmware not clear"
					: "from the first firmware";
			return `${processor}: ${version}${note ? ` (${note})` : ""}, line ${line}\n`;
		})
		.join("");
}
