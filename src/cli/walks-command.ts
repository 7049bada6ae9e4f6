import { basename, join, resolve, sep } from "node:path";
import { walksFolder } from "../files/own-folders.ts";
import { isThere } from "../files/read-answers.ts";
import { type KeptWalk, keptWalks } from "../files/saved-walks.ts";
import { cleanLine } from "../parts/clean-text.ts";
import { mostOfName } from "../walk/kept-walk-places.ts";
import { summaryWords } from "../walk/saved-walk.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { changeWalks } from "./change-walks.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { loadMarket } from "./load.ts";
import type { Streams } from "./streams.ts";

interface WalksContext {
	readonly args: Arguments;
	readonly streams: Streams;
	readonly today: string;
	readonly folder: string;
}

/** What can stand behind `walks`, and the words each needs. */
const actions: Readonly<Record<string, { readonly words: string; readonly run: (context: WalksContext) => void }>> = {
	list: { words: "", run: list },
	name: { words: "FILE NAME", run: name },
	copy: { words: "FILE", run: copy },
	remove: { words: "FILE", run: remove },
	undo: { words: "", run: undo },
	take: { words: "FILE", run: take },
};

/**
 * `walks`: the walks that are kept, listed, named, copied, removed and brought back; a friend's file taken in.
 *
 * @throws CommandError
 */
export function walks(
	args: Arguments,
	streams: Streams,
	today: string,
	folder: string | null = walksFolder(process.env, process.platform),
): void {
	const [word = "list", ...words] = args.operands;
	const action = Object.hasOwn(actions, word) ? actions[word] : undefined;
	if (!action)
		throw new CommandError(
			exitCodes.usage,
			`There is no command "walks ${word}".${nearWords(word, Object.keys(actions))}`,
		);
	const wanted = action.words === "" ? [] : action.words.split(" ");
	if (words.length !== wanted.length)
		throw new CommandError(exitCodes.usage, `The command is: boardwalk walks ${[word, ...wanted].join(" ")}`);
	if (folder === null) throw new CommandError(exitCodes.noInput, "There is no home folder to keep walks in.");
	action.run({ args, streams, today, folder });
}

function list(context: WalksContext): void {
	const { args, streams, folder } = context;
	const { walks: kept, setAside, newer } = walksIn(context);
	for (const path of setAside) streams.err(`A damaged walk was set aside: ${path}\n`);
	for (const path of newer) streams.err(`A newer boardwalk wrote this walk, so it is left as it is: ${path}\n`);
	if (args.json) {
		const listed = kept.map(({ file, name: called, words }) => ({ file, name: called, words }));
		streams.out(`${JSON.stringify({ schema: "boardwalk/walks@1", folder, walks: listed }, null, "\t")}\n`);
		return;
	}
	const lines = kept.map(
		({ file, name: called, words }) => `${cleanLine(basename(file))}${called === null ? "" : `, ${called}`}: ${words}`,
	);
	streams.out(
		lines.length > 0
			? `Walks in ${folder}:\n${lines.join("\n")}\n`
			: `No walk is kept yet. They would lie in ${folder}.\n`,
	);
}

function name(context: WalksContext): void {
	const [, given = "", wanted = ""] = context.args.operands;
	const called = cleanLine(wanted);
	if (called === "" || called.length > mostOfName)
		throw new CommandError(
			exitCodes.usage,
			`A name has 1 to ${mostOfName} letters, and this one has ${called.length}.`,
		);
	change(context, { does: "name", file: fileOf(context, given), name: called });
}

function copy(context: WalksContext): void {
	change(context, { does: "copy", file: fileOf(context, context.args.operands[1] ?? "") });
}

function remove(context: WalksContext): void {
	change(context, { does: "remove", file: fileOf(context, context.args.operands[1] ?? "") });
	context.streams.out("To bring it back: boardwalk walks undo\n");
}

function undo(context: WalksContext): void {
	change(context, { does: "bring-back" });
}

function take(context: WalksContext): void {
	change(context, { does: "take", path: context.args.operands[1] ?? "" });
}

function change({ args, streams, today, folder }: WalksContext, what: Parameters<typeof changeWalks>[0]): void {
	const files = what.does === "take" ? [what.path] : what.does === "bring-back" ? [] : [what.file];
	const market = loadMarket(args, streams, undefined, files);
	streams.out(`${changeWalks(what, { folder, market, today, open: null })}\n`);
}

function walksIn({ args, streams, today, folder }: WalksContext) {
	const context = { market: loadMarket(args, streams), asOf: today };
	return keptWalks(folder, (walk) => summaryWords(walk, context), Number.POSITIVE_INFINITY);
}

/**
 * The file of a walk that is named: by its file's name in the folder (with .json or without), by its own name where no
 * other walk has it, or by a path.
 */
function fileOf(context: WalksContext, given: string): string {
	const { folder } = context;
	const isPath = given.includes("/") || given.includes(sep);
	const { walks: kept, newer } = walksIn(context);
	const all = [...kept.map(({ file }) => file), ...newer];
	const inFolder = isPath ? undefined : all.find((file) => [given, `${given}.json`].includes(basename(file)));
	if (inFolder) return inFolder;
	const called = kept.filter((walk) => isSameName(walk, given));
	const [only, ...more] = called;
	if (only && more.length === 0) return only.file;
	if (only)
		throw new CommandError(
			exitCodes.usage,
			`Several walks are called ${only.name}; name the file: ${called.map(({ file }) => basename(file)).join(", ")}.`,
		);
	const path = resolve(given);
	if (given !== "" && isThere(path)) return path;
	const known = [...all.map((file) => basename(file)), ...kept.flatMap(({ name: one }) => one ?? [])];
	const near = nearWords(given, known).replace(" See: boardwalk --help", " See: boardwalk walks");
	throw new CommandError(exitCodes.noInput, `There is no walk "${cleanLine(given)}" in ${join(folder, "")}.${near}`);
}

function isSameName({ name: called }: KeptWalk, given: string): boolean {
	const plain = (words: string) => cleanLine(words).normalize("NFKC").toLowerCase();
	return called !== null && plain(called) === plain(given);
}
