import { parseArgs } from "node:util";
import { nearestWords } from "../maths/nearest-word.ts";
import {
	type CommandName,
	commandNames,
	commandTable,
	isCommand,
	mostOperands,
	usagesOf,
	walkEntry,
} from "./command-table.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { type FlagName, flags, flagsForAll } from "./flags.ts";

export interface Arguments {
	readonly command: CommandName | null;
	readonly operands: readonly string[];
	readonly answers?: string;
	readonly parts?: string;
	readonly to?: string;
	readonly kind?: string;
	readonly name?: string;
	readonly board?: string;
	readonly paper?: string;
	readonly map?: string;
	readonly price?: string;
	readonly condition?: string;
	readonly seen?: string;
	readonly seller?: string;
	readonly until?: string;
	readonly width?: string;
	readonly from?: string;
	readonly quote?: string;
	readonly language?: string;
	readonly by?: string;
	readonly record?: string;
	readonly withDemo: boolean;
	readonly soundOnly: boolean;
	readonly replace: boolean;
	readonly yes: boolean;
	readonly keep: boolean;
	readonly json: boolean;
	readonly plain: boolean;
	readonly noColour: boolean;
	readonly ascii: boolean;
	readonly noInput: boolean;
	/** Lengths in inches too, beside the millimetres. */
	readonly inches: boolean;
	readonly help: boolean;
	readonly version: boolean;
}

/**
 * Reads a command line.
 *
 * @throws CommandError with code 64 for an unknown command or flag (with near ones), a flag that the command does not read,
 *   a missing or an unwanted value
 */
export function readArguments(argv: readonly string[]): Arguments {
	const { values, positionals, tokens } = parseArgs({
		args: [...argv],
		options: Object.fromEntries([
			...Object.entries(flags).map(([name, { value }]) => [name, { type: value ? "string" : "boolean" }] as const),
			["h", { type: "boolean" }] as const,
			["V", { type: "boolean" }] as const,
		]),
		strict: false,
		allowPositionals: true,
		tokens: true,
	});
	for (const token of tokens)
		if (token.kind === "option") {
			// "--answers --json" has forgotten the file; a name that begins so can be given as --answers=-name.
			const isFlag = token.inlineValue === false && token.value.length > 1 && token.value.startsWith("-");
			checkFlag(token.name, token.rawName, isFlag ? undefined : token.value);
		}
	const [first, ...operands] = positionals;
	const help = values["help"] === true || values["h"] === true;
	if (first !== undefined && !isCommand(first) && !help)
		throw new CommandError(exitCodes.usage, `There is no command "${first}".${nearWords(first, commandNames)}`);
	const command = first !== undefined && isCommand(first) ? first : null;
	const most = command === null ? 0 : mostOperands(commandTable[command]);
	if (command !== null && !help && operands.length > most)
		throw new CommandError(
			exitCodes.usage,
			`${command} takes ${wordsBehind(most)} behind it, and "${operands.at(-1)}" is one too many.`,
		);
	const version = values["version"] === true || values["V"] === true;
	if (!help && !version) refuseUnread(command, operands[0], Object.keys(values) as FlagName[]);
	const text = (name: FlagName) => (typeof values[name] === "string" ? { [name]: values[name] } : {});
	return {
		command,
		operands,
		...text("answers"),
		...text("parts"),
		...text("to"),
		...text("kind"),
		...text("name"),
		...text("board"),
		...text("paper"),
		...text("map"),
		...text("price"),
		...text("condition"),
		...text("seen"),
		...text("seller"),
		...text("until"),
		...text("width"),
		...text("from"),
		...text("quote"),
		...text("language"),
		...text("by"),
		...text("record"),
		withDemo: values["with-demo"] === true,
		soundOnly: values["sound-only"] === true,
		replace: values["replace"] === true,
		yes: values["yes"] === true,
		keep: values["keep"] === true,
		json: values["json"] === true,
		plain: values["plain"] === true,
		noColour: values["no-color"] === true,
		ascii: values["ascii"] === true,
		noInput: values["no-input"] === true,
		inches: values["inches"] === true,
		help,
		version,
	};
}

function wordsBehind(most: number): string {
	return most === 0 ? "no word" : most === 1 ? "one word" : `at most ${most} words`;
}

/** A flag that a command does not read would be taken for something it does. */
function refuseUnread(command: CommandName | null, word: string | undefined, given: readonly FlagName[]): void {
	const entry = command === null ? walkEntry : commandTable[command];
	const usages = usagesOf(entry, command === null ? undefined : word);
	const read = new Set<FlagName>([...flagsForAll, ...usages.flatMap((usage) => usage.flags)]);
	const unread = given.find((name) => !read.has(name));
	if (unread === undefined) return;
	const takers = takersOf(unread);
	const isWordOfIts = usages.length === 1 && "words" in entry.usage && word !== undefined;
	const name = command === null ? "The walk" : isWordOfIts ? `${command} ${word}` : command;
	const instead =
		takers.length > 0 && takers.length <= 3
			? `; ${takers.join(" and ")} ${takers.length > 1 ? "do" : "does"}.`
			: `. See: boardwalk ${command === null ? "" : `${command} `}--help`;
	throw new CommandError(exitCodes.usage, `${name} does not take --${unread}${instead}`);
}

/** Commands that read a flag, with their next word where only that one does. */
function takersOf(flag: FlagName): readonly string[] {
	const reads = ({ flags: read }: { readonly flags: readonly FlagName[] }) => read.includes(flag);
	const ofCommands = commandNames.flatMap((name) => {
		const { usage } = commandTable[name];
		if (!("words" in usage)) return reads(usage) ? [name] : [];
		const words = Object.entries(usage.words);
		const takers = words.filter(([, one]) => reads(one));
		return takers.length === words.length ? [name] : takers.map(([word]) => `${name} ${word}`);
	});
	return usagesOf(walkEntry, undefined).some(reads) ? ["the walk", ...ofCommands] : ofCommands;
}

function checkFlag(name: string, rawName: string, value: string | undefined): void {
	if (name === "h" || name === "V") return;
	if (!Object.hasOwn(flags, name)) {
		const near = nearWords(name, Object.keys(flags), "--");
		throw new CommandError(exitCodes.usage, `There is no flag ${rawName}.${near}`);
	}
	const wanted = flags[name as FlagName].value;
	if (wanted !== null && (value === undefined || value === ""))
		throw new CommandError(exitCodes.usage, `${rawName} needs a ${wanted} behind it.`);
	if (wanted === null && value !== undefined)
		throw new CommandError(exitCodes.usage, `${rawName} takes no value, and "${value}" was given.`);
}

/** " Did you mean ...?", or where the list is found. */
export function nearWords(word: string, known: readonly string[], prefix = ""): string {
	const containing = word.length >= 3 ? known.filter((one) => one.includes(word.toLowerCase())) : [];
	const near = [...new Set([...containing, ...nearestWords(word, known)])].slice(0, 3).map((found) => prefix + found);
	return near.length > 0 ? ` Did you mean ${near.join(" or ")}?` : " See: boardwalk --help";
}
