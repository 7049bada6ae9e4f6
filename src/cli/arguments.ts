import { parseArgs } from "node:util";
import { nearestWords } from "../maths/nearest-word.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";

/** The flags, the value each takes, and what it does; help and checks derive from this. */
export const flags = {
	answers: { value: "FILE", help: "take answers from this file; the walk goes on in it" },
	parts: {
		value: "FOLDER",
		help: "boards and parts from this folder or file alone, instead of your own and the demonstration",
	},
	"with-demo": { value: null, help: "the demonstration's parts too, beside your own or those of --parts" },
	"sound-only": { value: null, help: "of a faulty parts file or table take the sound parts, and tell the others" },
	to: {
		value: "FILE",
		help: "write to this file: .txt, .json; a sheet also .html, .md, .csv; pictures .svg; - prints it",
	},
	replace: { value: null, help: "replace the file if it is there; with own import and told, also what is stated" },
	name: { value: "NAME", help: "with read: the part; with read list: the processor to look for; with coach: yours" },
	board: { value: "ID", help: "with read list --keep: your board whose list it is; with sheet: the board drawn" },
	paper: { value: "SIZE", help: "with sheet --to FILE.html: a board at true size on sheets of a4 or letter" },
	keep: { value: null, help: "with read: keep what was read among your own parts" },
	kind: { value: "KIND", help: "with own: the kind of part, such as board" },
	map: { value: '"COLUMN=FACT,..."', help: "with own import: the fact a column gives; COLUMN= leaves it out" },
	yes: { value: null, help: "with own import: take the table as it was understood" },
	price: { value: "PRICE", help: 'with own offer: what is asked, such as "129.90 EUR"' },
	condition: { value: "WORD", help: "with own offer: new, opened or used; new if not said" },
	seen: { value: "DATE", help: "with own offer: the day it was seen, today if not said" },
	seller: { value: "NAME", help: "with own offer: who sells it" },
	until: { value: "DATE", help: "with own offer: the last day it can go back" },
	from: { value: "START", help: "with merge: the walk that both came from" },
	width: { value: "COLUMNS", help: "with price-line: how wide the picture is, 60 if not said" },
	by: { value: "WHO", help: "with told: who said it" },
	quote: { value: '"..."', help: "with told: the answer as it came" },
	language: { value: "en|de", help: "with ask: the language of the message, en if not said" },
	json: { value: null, help: "print JSON" },
	plain: { value: null, help: "ask line by line; for screen readers and simple terminals" },
	"no-color": { value: null, help: "use no colour" },
	ascii: { value: null, help: "use ASCII characters only" },
	help: { value: null, help: "print this help" },
	version: { value: null, help: "print the version" },
} as const;
export type FlagName = keyof typeof flags;

export const commandNames = [
	"shortlist",
	"price-line",
	"sheet",
	"plan",
	"power",
	"what-if",
	"like",
	"coach",
	"merge",
	"compare",
	"walks",
	"ask",
	"told",
	"read",
	"own",
	"check",
	"schema",
	"why",
	"sources",
	"help",
] as const;
export type CommandName = (typeof commandNames)[number];

/** Words a command takes behind its name. */
const mostOperands: Readonly<Record<CommandName, number>> = {
	shortlist: 0,
	"price-line": 0,
	sheet: 0,
	plan: 1,
	power: 1,
	"what-if": 1,
	like: 2,
	coach: 1,
	merge: 2,
	compare: 2,
	walks: 3,
	ask: 1,
	told: 3,
	read: 2,
	own: 4,
	check: 1,
	schema: 1,
	why: 1,
	sources: 0,
	help: 1,
};

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
	readonly withDemo: boolean;
	readonly soundOnly: boolean;
	readonly replace: boolean;
	readonly yes: boolean;
	readonly keep: boolean;
	readonly json: boolean;
	readonly plain: boolean;
	readonly noColour: boolean;
	readonly ascii: boolean;
	readonly help: boolean;
	readonly version: boolean;
}

/**
 * Reads a command line.
 *
 * @throws CommandError with code 64 for an unknown command or flag (with near ones), a missing or an unwanted value
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
	if (first !== undefined && isCommand(first) && !help && operands.length > mostOperands[first])
		throw new CommandError(
			exitCodes.usage,
			`${first} takes ${wordsBehind(mostOperands[first])} behind it, and "${operands.at(-1)}" is one too many.`,
		);
	const text = (name: FlagName) => (typeof values[name] === "string" ? { [name]: values[name] } : {});
	return {
		command: first !== undefined && isCommand(first) ? first : null,
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
		withDemo: values["with-demo"] === true,
		soundOnly: values["sound-only"] === true,
		replace: values["replace"] === true,
		yes: values["yes"] === true,
		keep: values["keep"] === true,
		json: values["json"] === true,
		plain: values["plain"] === true,
		noColour: values["no-color"] === true,
		ascii: values["ascii"] === true,
		help,
		version: values["version"] === true || values["V"] === true,
	};
}

function wordsBehind(most: number): string {
	return most === 0 ? "no word" : most === 1 ? "one word" : `at most ${most} words`;
}

function isCommand(word: string): word is CommandName {
	return (commandNames as readonly string[]).includes(word);
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
