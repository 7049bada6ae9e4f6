import { keymap } from "../screens/keys.ts";
import { nearWords } from "./arguments.ts";
import {
	type CommandEntry,
	type CommandName,
	commandNames,
	commandTable,
	isCommand,
	walkEntry,
} from "./command-table.ts";
import { CommandError, exitCodes, exitCodeWords } from "./exit-codes.ts";
import { type FlagName, flags, flagsForAll } from "./flags.ts";

/** Examples of single commands that a beginner wants first. */
const firstExamples: readonly CommandName[] = ["shortlist", "sheet", "what-if", "ask", "read", "own", "check"];

const widest = 120;

type Row = readonly [left: string, right: string];

/** All that --help prints. */
export function helpText(): string {
	const entries: readonly (readonly [string, CommandEntry])[] = [
		["", walkEntry],
		...commandNames.map((name) => [name, commandTable[name]] as const),
	];
	const firsts = firstExamples.flatMap((name) => commandTable[name].examples.slice(0, 1));
	return `boardwalk helps you choose the mainboard for a computer you build yourself.

Examples
${rows([...walkEntry.examples, ...firsts])}

Commands
${rows(entries.flatMap(([name, { forms }]) => forms.map((form) => formRow(name, form))))}

Flags
${rows(flagNames.map((flag) => flagRow(flag)))}

Keys in the walk
${rows(keymap.map(({ keys, does }) => [keys, does] as const))}

More on one command: boardwalk help COMMAND
Results go to standard output, everything else to standard error.
Ends with 0 when finished (also when nothing fits), 1 when left before a shortlist, 64 for a wrong command,
65 for bad data in a file, 66 for a file that cannot be read, 73 for one that cannot be written, 70 for a fault of ours,
78 where it is not set up (see boardwalk doctor).
Nothing is ever sent anywhere: the program reads and writes files on this machine only.
`;
}

/**
 * All about one command.
 *
 * @throws CommandError with code 64 where there is no such command
 */
export function commandHelp(name: string): string {
	if (!isCommand(name))
		throw new CommandError(exitCodes.usage, `There is no command "${name}".${nearWords(name, commandNames)}`);
	const { does, forms, usage, flagHelp = {}, examples, writes, codes } = commandTable[name];
	const usages = "words" in usage ? Object.values(usage.words) : [usage];
	const read = new Set<FlagName>(usages.flatMap((one) => one.flags));
	const shown = flagNames.filter((flag) => read.has(flag));
	const ownFlags = shown.length > 0 ? `\nFlags\n${rows(shown.map((flag) => flagRow(flag, flagHelp[flag])))}\n` : "";
	const others = flagsForAll.filter((flag) => !read.has(flag)).map((flag) => `--${flag}`);
	return `boardwalk ${name}

${does}

Forms
${rows(forms.map((form) => formRow(name, form)))}
${ownFlags}
Examples
${rows(examples)}

What it writes
${wrapped(writes)}

Ends with
${rows(codes.map((code) => [String(code), exitCodeWords[code] ?? ""] as const))}

Every command takes ${others.slice(0, -1).join(", ")} and ${others.at(-1)} too.
All commands and flags: boardwalk --help
`;
}

const flagNames = Object.keys(flags) as readonly FlagName[];

function formRow(name: string, [operands, does]: CommandEntry["forms"][number]): Row {
	return [["boardwalk", name, operands].filter(Boolean).join(" "), does];
}

function flagRow(name: FlagName, does: string = flags[name].help): Row {
	const { value } = flags[name];
	return [`--${name}${value ? ` ${value}` : ""}`, does];
}

/** Two columns; where they would not fit beside each other, the second goes below. */
function rows(list: readonly Row[]): string {
	const width = Math.max(...list.map(([left]) => left.length)) + 2;
	const fits = list.every(([, right]) => 2 + width + right.length <= widest);
	return list
		.map(([left, right]) => (fits ? `  ${left.padEnd(width)}${right}` : `  ${left}\n      ${right}`))
		.join("\n");
}

/** Sentences, each on a line of its own, so that none is too wide. */
function wrapped(text: string): string {
	return text
		.split(/(?<=\.) (?=[A-Z])/)
		.map((sentence) => `  ${sentence}`)
		.join("\n");
}
