import { dataFolder } from "../files/own-folders.ts";
import {
	addPart,
	addParts,
	copyPart,
	noParts,
	partsIn,
	partsWithId,
	replacePart,
	withOffer,
} from "../files/own-parts.ts";
import { ownPartsPath, removeOwnPart, takeBack } from "../files/own-parts-file.ts";
import type { OwnPart } from "../parts/answers-file.ts";
import { cleanLine } from "../parts/clean-text.ts";
import { type FactEntry, factAt } from "../parts/fact-list.ts";
import type { PartsFile } from "../parts/market.ts";
import { conditions } from "../parts/offer.ts";
import { type AnyPart, type PartKind, partKinds } from "../parts/part-kinds.ts";
import { readMoney } from "../questions/read-money.ts";
import { readCell } from "../reading/csv-cells.ts";
import { columnFacts } from "../reading/csv-columns.ts";
import { factIn, partsCsv } from "../reading/parts-csv.ts";
import { type Plain, withFact, withoutFact } from "../reading/put-fact.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { changeOwn, kindNamed } from "./change-own.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { importParts } from "./import-command.ts";
import { loadOwnParts, reading } from "./load.ts";
import type { OwnContext } from "./own-context.ts";
import { ownListText, ownPartText, valueWords } from "./own-parts-words.ts";
import type { Streams } from "./streams.ts";
import { endingOf, writeResult } from "./write-sheet.ts";

/** What can stand behind `own`, and the words each needs. */
const actions: Readonly<Record<string, { readonly words: string; readonly run: (context: OwnContext) => void }>> = {
	list: { words: "", run: list },
	show: { words: "ID", run: show },
	copy: { words: "ID", run: copy },
	remove: { words: "ID", run: remove },
	undo: { words: "", run: undo },
	offer: { words: "ID", run: addOffer },
	set: { words: "ID FACT VALUE", run: set },
	unset: { words: "ID FACT", run: unset },
	import: { words: "FILE", run: importParts },
	export: { words: "FILE", run: exportParts },
};

/** `own`: the person's own parts, listed and changed. */
export function own(
	args: Arguments,
	streams: Streams,
	today: string,
	folder: string | null = dataFolder(process.env, process.platform),
): void {
	const [name = "list", ...words] = args.operands;
	const action = Object.hasOwn(actions, name) ? actions[name] : undefined;
	if (!action)
		throw new CommandError(
			exitCodes.usage,
			`There is no command "own ${name}".${nearWords(name, Object.keys(actions))}`,
		);
	const wanted = action.words === "" ? [] : action.words.split(" ");
	if (words.length !== wanted.length)
		throw new CommandError(exitCodes.usage, `The command is: boardwalk own ${[name, ...wanted].join(" ")}`);
	if (folder === null) throw new CommandError(exitCodes.noInput, "There is no home folder to keep your parts in.");
	action.run({ args, streams, folder, today });
}

function list({ args, streams, folder, today }: OwnContext): void {
	const parts = loadOwnParts(folder, args, streams);
	streams.out(args.json ? `${JSON.stringify(parts, null, "\t")}\n` : ownListText(parts, today, ownPartsPath(folder)));
}

function show({ args, streams, folder, today }: OwnContext): void {
	const found = theOne(loadOwnParts(folder, args, streams), args);
	streams.out(args.json ? `${JSON.stringify(found.part, null, "\t")}\n` : ownPartText(found, today));
}

function copy(context: OwnContext): void {
	const added = changeParts(context, (parts) => {
		const copied = copyPart(parts, theOne(parts, context.args));
		return { file: copied.file, result: copied.added };
	});
	context.streams.out(`Copied: ${nameOf(added)}. Its id is ${added.part.id}.\n`);
}

function remove({ args, streams, folder }: OwnContext): void {
	const found = theOne(loadOwnParts(folder, args, streams), args);
	reading(() => removeOwnPart(folder, found, args));
	streams.out(`Removed: ${nameOf(found)}. To bring it back: boardwalk own undo\n`);
}

function undo({ args, streams, folder }: OwnContext): void {
	const found = reading(() => takeBack(folder, args));
	if (!found) throw new CommandError(exitCodes.usage, "Nothing was removed that could be brought back.");
	streams.out(`Brought back: ${nameOf(found)}. Its id is ${found.part.id}.\n`);
}

function addOffer(context: OwnContext): void {
	const { args, streams, today } = context;
	const { price, condition = "new", seller } = args;
	if (price === undefined)
		throw new CommandError(exitCodes.usage, 'For how much? Such as: boardwalk own offer ID --price "129.90 EUR"');
	if (!(conditions as readonly string[]).includes(condition))
		throw new CommandError(
			exitCodes.usage,
			`There is no condition "${condition}"; it is ${conditions.join(", ")}.${nearWords(condition, conditions)}`,
		);
	const seen = dateOf("--seen", args.seen) ?? today;
	if (seen > today)
		throw new CommandError(exitCodes.usage, `--seen ${seen} lies ahead: today is ${today}. When was the price seen?`);
	const until = dateOf("--until", args.until);
	const made = changeParts(context, (parts) => {
		const found = theOne(parts, args);
		const offer = {
			price: readFact(found.kind, "price", price),
			condition,
			seenOn: seen,
			...(seller === undefined ? {} : { seller }),
			...(until === undefined ? {} : { returnableUntil: until }),
		};
		const part = withOffer(found, offer as Parameters<typeof withOffer>[1]);
		return { file: replaced(parts, part), result: part };
	});
	streams.out(`Noted for ${nameOf(made)}: ${price}, ${condition}, seen on ${seen}.\n`);
}

function dateOf(flag: string, typed: string | undefined): string | undefined {
	const fact = factAt("board", "checkedOn");
	if (typed === undefined || !fact) return undefined;
	const cell = readCell(cleanLine(typed), { kind: "board", fact, readMoney });
	if ("value" in cell && typeof cell.value === "string") return cell.value;
	throw new CommandError(exitCodes.usage, `${flag} takes a date such as 2026-11-24, and "${typed}" is none.`);
}

function set(context: OwnContext): void {
	const { args, streams, today } = context;
	const [, id = "", path = "", typed = ""] = args.operands;
	const { part, value } = changeParts(context, (parts) => {
		const found = theOne(parts, args);
		const fact = factToChange(found.kind, path);
		const value = readFact(found.kind, fact.path, typed);
		if (value === undefined)
			throw new CommandError(exitCodes.usage, `To make it unknown again: boardwalk own unset ${id} ${path}`);
		const draft = withFact(withoutEvidence(found.part, path), path, value);
		const dated = path === "price" ? { ...draft, checkedOn: today } : withEvidence(draft, path, today);
		const part = { kind: found.kind, part: dated } as unknown as OwnPart;
		return { file: replaced(parts, part), result: { part, value } };
	});
	const seen = path === "price" ? ", seen today" : "";
	streams.out(`${nameOf(part)}: ${path} is ${valueWords(value)}${seen}.\n`);
}

function unset(context: OwnContext): void {
	const [, , path = ""] = context.args.operands;
	const { part, wasKnown } = changeParts(context, (parts) => {
		const found = theOne(parts, context.args);
		factToChange(found.kind, path);
		const draft = withoutFact(withoutEvidence(found.part, path), path);
		const part = { kind: found.kind, part: draft } as unknown as OwnPart;
		return { file: replaced(parts, part), result: { part, wasKnown: factIn(found.part, path) !== undefined } };
	});
	context.streams.out(`${nameOf(part)}: ${path} ${wasKnown ? "is not known any more" : "was not known before"}.\n`);
}

function exportParts({ args, streams, folder }: OwnContext): void {
	const [, file = ""] = args.operands;
	const parts = loadOwnParts(folder, args, streams);
	const wanted = args.kind === undefined ? null : kindNamed(args.kind);
	const chosen = partsIn(parts).filter(({ kind }) => wanted === null || kind === wanted);
	if (chosen.length === 0) throw new CommandError(exitCodes.usage, "There is no such part of your own to write.");
	const write = (text: string) => {
		const path = writeResult(file, text, {
			replace: args.replace,
			ifTaken: "Take another name, or add --replace.",
		});
		streams.err(`Written: ${path}\n`);
	};
	switch (endingOf(file)) {
		case ".json": {
			const all = addParts(noParts, chosen, (_before, own) => own);
			write(`${JSON.stringify(all, null, "\t")}\n`);
			return;
		}
		case ".csv": {
			const [first] = chosen;
			const kinds = [...new Set(chosen.map(({ kind }) => kind))];
			if (!first || kinds.length > 1)
				throw new CommandError(exitCodes.usage, `A table holds one kind of part. Add --kind ${kinds.join(" or ")}.`);
			const table = partsCsv(
				first.kind,
				chosen.map(({ part }) => part),
			);
			write(table.text);
			if (table.leftOut.length > 0)
				streams.err(`Not in it, since no cell can hold them: ${table.leftOut.join(", ")}. A .json file has them.\n`);
			return;
		}
		default:
			throw new CommandError(exitCodes.usage, "Your parts are written as .json or .csv; the file's name must end so.");
	}
}

/** The own part that a command names. */
function theOne(parts: PartsFile, { operands, kind }: Arguments): OwnPart {
	const [, id = ""] = operands;
	const wanted = kind === undefined ? null : kindNamed(kind);
	const found = partsWithId(parts, id).filter((one) => wanted === null || one.kind === wanted);
	const [only, other] = found;
	if (only && other)
		throw new CommandError(
			exitCodes.usage,
			`"${id}" is a ${found.map((one) => partKinds[one.kind].noun).join(" and a ")}. Add --kind ${found.map((one) => one.kind).join(" or --kind ")}.`,
		);
	if (only) return only;
	const ids = partsIn(parts).map(({ part }) => part.id);
	const near = ids.length > 0 ? nearWords(id, ids).replace("boardwalk --help", "boardwalk own") : "";
	throw new CommandError(exitCodes.usage, `You have no part "${id}" of your own.${near}`);
}

/** The fact that set and unset may touch. */
function factToChange(kind: PartKind, path: string): FactEntry {
	if (path === "id")
		throw new CommandError(exitCodes.usage, "The id stays as it is, since answers name the part by it. Copy the part.");
	const known = columnFacts(kind);
	const fact = known.find((one) => one.path === path);
	if (fact) return fact;
	const near = nearWords(
		path,
		known.map((one) => one.path),
	).replace("boardwalk --help", `boardwalk schema ${kind}`);
	const inside = /[[\]]/.test(path) ? " One entry of a list is changed with the whole list, as JSON." : "";
	throw new CommandError(exitCodes.usage, `A ${partKinds[kind].noun} has no fact "${path}".${inside}${near}`);
}

/** What was typed for a fact; undefined for words that say it is not known. */
function readFact(kind: PartKind, path: string, typed: string): unknown {
	const fact = factAt(kind, path);
	if (!fact) throw new CommandError(exitCodes.usage, `A ${partKinds[kind].noun} has no ${path}.`);
	const cell = readCell(cleanLine(typed), { kind, fact, readMoney });
	if ("expected" in cell)
		throw new CommandError(exitCodes.usage, `${path}: expected ${cell.expected}. Nothing was changed.`);
	return cell.value;
}

function withEvidence(part: Plain, path: string, today: string): Plain {
	if (path === "name" || path === "checkedOn" || path === "offers") return part;
	const evidence = { ...(part["evidence"] as Plain | undefined), [path]: typedIn(today) };
	return { ...part, evidence };
}

function typedIn(today: string): Plain {
	return { standing: "stated", where: "typed in", date: today };
}

/** What was noted of a fact, and of facts inside it, goes when its value does. */
function withoutEvidence(part: AnyPart, path: string): Plain {
	const { evidence, ...others } = part as AnyPart & { readonly evidence?: Plain };
	const kept = Object.entries(evidence ?? {}).filter(([of]) => of !== path && !of.startsWith(`${path}.`));
	return kept.length > 0 ? { ...others, evidence: Object.fromEntries(kept) } : (others as Plain);
}

function replaced(parts: PartsFile, part: OwnPart): PartsFile {
	return replacePart(parts, part) ?? addPart(parts, part).file;
}

function nameOf({ kind, part }: OwnPart): string {
	return `${partKinds[kind].noun} ${part.name}`;
}

function changeParts<T>(
	{ folder, args, streams }: OwnContext,
	change: (parts: PartsFile) => { readonly file: PartsFile; readonly result: T },
): T {
	return changeOwn(folder, args, streams, change);
}
