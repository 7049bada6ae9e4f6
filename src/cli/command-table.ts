import { type ExitCode, exitCodes } from "./exit-codes.ts";
import type { FlagName } from "./flags.ts";

/** A word behind a command: one of a few, or something of the person's own. */
export interface Operand {
	readonly name: string;
	/** The words that can stand here, where they are known beforehand. */
	readonly words?: readonly string[];
	readonly isFile?: true;
}

/** What stands behind a command, or behind one of its words, and the flags that are read there. */
export interface Usage {
	readonly operands: readonly Operand[];
	readonly flags: readonly FlagName[];
}

/** All that is told of a command. Help, its page, completion and the checks of a command line derive from this. */
export interface CommandEntry {
	/** What it is for, in a sentence or two. */
	readonly does: string;
	/** As in the list of all commands: what stands behind its name, and what comes of it. */
	readonly forms: readonly (readonly [operands: string, does: string])[];
	/** Where another word follows the name, such as `own set`: that word with what follows it; else one usage. */
	readonly usage: Usage | { readonly words: Readonly<Record<string, Usage>> };
	/** Flags that mean something narrower here than in the list of all flags. */
	readonly flagHelp?: Readonly<Partial<Record<FlagName, string>>>;
	readonly examples: readonly (readonly [line: string, does: string])[];
	/** What it writes, and where. */
	readonly writes: string;
	/** Codes it ends with that a person may meet. */
	readonly codes: readonly ExitCode[];
}

const { ok, leftEarly, usage, badData, noInput, cannotCreate, notSetUp, interrupted } = exitCodes;

/** Where boards and parts come from. */
const market = ["parts", "with-demo", "sound-only"] as const;
/** A result of a walk is worked out. */
const ofAnswers = ["answers", ...market] as const;
/** A result is printed or written. */
const given = ["to", "replace", "json"] as const;
const readsWalk = [ok, usage, badData, noInput] as const;
const writesFile = [...readsWalk, cannotCreate] as const;

const id: Operand = { name: "ID" };
const board: Operand = { name: "BOARD" };
const file: Operand = { name: "FILE", isFile: true };

/** Kinds of part, as `--kind` takes them; a test holds them to those there are. */
export const kindWords = [
	"board",
	"processor",
	"case",
	"graphicsCard",
	"memory",
	"drive",
	"addInCard",
	"cooler",
	"supply",
	"fans",
	"lighting",
	"monitor",
	"platform",
] as const;

/** Words that can stand behind a flag; a test holds them to those there are. */
export const flagWords: Readonly<Partial<Record<FlagName, readonly string[]>>> = {
	kind: kindWords,
	condition: ["new", "opened", "used"],
	paper: ["a4", "letter"],
	language: ["en", "de"],
};

const withPicture = {
	to: "write to this file: .txt, .svg or .json; - prints it",
	plain: "the sentences without the picture; for screen readers",
} as const;
const asText = { to: "write to this file: .txt or .json; - prints it" } as const;

const part = ["kind", "sound-only"] as const;
const readPart: Usage = { operands: [file], flags: ["name", "keep", "json", "sound-only"] };
const resultWrites =
	"The result goes to standard output. With --to it goes to that file, which is not replaced without --replace.";

/** The walk itself: no command at all. */
export const walkEntry: CommandEntry = {
	does: "The walk: questions, then a shortlist and a sheet.",
	forms: [["", "the walk: questions, then a shortlist and a sheet"]],
	usage: { operands: [], flags: [...ofAnswers, "replace", "record", "json"] },
	examples: [
		["boardwalk", "start the walk"],
		["boardwalk --plain --answers my.json", "line by line, kept in my.json; run it again to go on"],
	],
	writes: "Answers are kept on this machine after each one: in the file of --answers, else among your walks.",
	codes: [...writesFile, leftEarly, interrupted],
};

const entries = {
	shortlist: {
		does: "Prints the shortlist that a walk's answers lead to, with reasons and what is still open.",
		forms: [["--answers FILE", "the shortlist with reasons"]],
		usage: { operands: [], flags: [...ofAnswers, "json"] },
		examples: [
			["boardwalk shortlist --answers my.json", "the shortlist again"],
			["boardwalk shortlist --answers my.json --json", "for other programs"],
		],
		writes: "The shortlist goes to standard output. No file is written.",
		codes: readsWalk,
	},
	"price-line": {
		does: "Shows what more money buys among the boards left: price against points, as a picture and in sentences.",
		forms: [["--answers FILE", "what more money buys: price against points"]],
		usage: { operands: [], flags: [...ofAnswers, "width", ...given, "plain", "ascii"] },
		flagHelp: { ...asText, plain: withPicture.plain, width: "how wide the picture is, 40 to 200; 60 if not said" },
		examples: [
			["boardwalk price-line --answers my.json", "picture and sentences"],
			["boardwalk price-line --answers my.json --plain", "the sentences alone"],
		],
		writes: resultWrites,
		codes: writesFile,
	},
	sheet: {
		does: "Makes the requirement sheet for the shop and the bench. It can also draw a board at true size.",
		forms: [
			["--answers FILE [--to FILE.md]", "the requirement sheet for shop and bench"],
			["--to FILE.svg [--board ID]", "a board at true size, to lay into the case on paper; see --paper"],
		],
		usage: { operands: [], flags: [...ofAnswers, ...given, "board", "paper"] },
		flagHelp: { to: "write to this file: .html, .md, .txt, .json, .csv; a board .svg; - prints it" },
		examples: [
			["boardwalk sheet --answers my.json --to sheet.html", "to print: .html; also .md, .txt, .json, .csv"],
			["boardwalk sheet --answers my.json --to board.svg", "the first board of the shortlist at true size"],
			["boardwalk sheet --answers my.json --paper a4 --to board.html", "the same, cut into sheets to print"],
		],
		writes: resultWrites,
		codes: writesFile,
	},
	plan: {
		does: "Shows what plugs in where on one board: the best plan for all your parts, and what finds no place.",
		forms: [["BOARD --answers FILE", "what plugs in where on one board; --to FILE.svg draws it"]],
		usage: { operands: [board], flags: [...ofAnswers, ...given, "plain"] },
		flagHelp: withPicture,
		examples: [
			["boardwalk plan BOARD --answers my.json", "picture and sentences; BOARD is the board's id"],
			["boardwalk plan BOARD --answers my.json --to plan.svg", "the picture as a file"],
		],
		writes: resultWrites,
		codes: writesFile,
	},
	power: {
		does: "Tells how warm the chips that feed the processor get on one board, with every figure behind it.",
		forms: [["BOARD --answers FILE", "how warm one board's power stages get, and why; --to FILE.svg draws it"]],
		usage: { operands: [board], flags: [...ofAnswers, ...given, "plain"] },
		flagHelp: withPicture,
		examples: [
			["boardwalk power BOARD --answers my.json", "picture and sentences; BOARD is the board's id"],
			["boardwalk power BOARD --answers my.json --json", "for other programs"],
		],
		writes: resultWrites,
		codes: writesFile,
	},
	"what-if": {
		does: "Tells what one other answer would change. The file of your answers stays as it is.",
		forms: [["QUESTION=ANSWER", "what one other answer would change; takes --answers FILE too"]],
		usage: { operands: [{ name: "QUESTION=ANSWER" }], flags: [...ofAnswers, ...given] },
		flagHelp: asText,
		examples: [
			["boardwalk what-if about/budget=150 --answers my.json", "what another answer would change"],
			["boardwalk what-if about/budget=not-sure --answers my.json", "what if it were left open"],
		],
		writes: resultWrites,
		codes: writesFile,
	},
	like: {
		does: "Finds boards that are like one board and better in one way, and says what each costs otherwise.",
		forms: [["BOARD WAY --answers FILE", "what is like it but WAY: cheaper, cooler, smaller, more-ports"]],
		usage: {
			operands: [board, { name: "WAY", words: ["cheaper", "cooler", "smaller", "more-ports"] }],
			flags: [...ofAnswers, ...given],
		},
		flagHelp: asText,
		examples: [["boardwalk like BOARD cheaper --answers my.json", "BOARD is the board's id"]],
		writes: resultWrites,
		codes: writesFile,
	},
	ask: {
		does: "Writes what to ask the shop about the boards of your shortlist, as a message for each of them.",
		forms: [["[BOARD] --answers FILE", "what to ask the shop, as a message; --language de for German"]],
		usage: { operands: [board], flags: [...ofAnswers, "language", ...given] },
		flagHelp: asText,
		examples: [
			["boardwalk ask --answers my.json", "messages to the shop about the boards of your shortlist"],
			["boardwalk ask BOARD --answers my.json --language de", "about one board, in German"],
		],
		writes: `${resultWrites} Nothing is sent: you send the message.`,
		codes: writesFile,
	},
	told: {
		does: "Notes what a shop or a seller answered about a board. It counts as a fact, with the day and who said it.",
		forms: [["BOARD FACT VALUE --by WHO", "notes what they answered in the file of --answers"]],
		usage: {
			operands: [board, { name: "FACT" }, { name: "VALUE" }],
			flags: [...ofAnswers, "by", "quote", "replace"],
		},
		flagHelp: { replace: "what they said counts in place of what is stated" },
		examples: [
			['boardwalk told BOARD memory.slots 4 --by "the shop" --answers my.json', "FACT is a path, as ask names it"],
		],
		writes: "The fact goes into the file of --answers. A board among your own parts gets it there too.",
		codes: writesFile,
	},
	merge: {
		does: "Makes one walk of two, such as yours and a helper's copy. Where the two differ, both answers stay for you.",
		forms: [["A B --to FILE", "one walk of two; where they differ you decide; see --from"]],
		usage: {
			operands: [
				{ name: "A", isFile: true },
				{ name: "B", isFile: true },
			],
			flags: [...market, "from", "to", "replace"],
		},
		flagHelp: { to: "the file of the merged walk, .json" },
		examples: [
			["boardwalk merge mine.json mias.json --to both.json", "both files stay as they are"],
			["boardwalk merge mine.json mias.json --from start.json --to both.json", "start.json: the walk both began with"],
		],
		writes: "The merged walk goes into the file of --to; what came from where goes to standard output.",
		codes: writesFile,
	},
	compare: {
		does: "Tells the answers in which two walks differ, and what each leads to. Neither file is changed.",
		forms: [["A B", "the answers in which two walks differ, and what each leads to"]],
		usage: {
			operands: [
				{ name: "A", isFile: true },
				{ name: "B", isFile: true },
			],
			flags: [...market, ...given],
		},
		flagHelp: asText,
		examples: [["boardwalk compare mine.json mias.json", "in sentences; --json for other programs"]],
		writes: resultWrites,
		codes: writesFile,
	},
	walks: {
		does: "Lists the walks kept on this machine, and names, copies, removes or takes in one.",
		forms: [
			["", "the walks kept on this machine"],
			["name FILE NAME", "gives one of them a name"],
			["copy | remove FILE", "one of them; walks undo brings the last removed back"],
			["take FILE", "a copy of a friend's walk, or of the one in a sheet, among yours"],
		],
		usage: {
			words: {
				list: { operands: [], flags: [...market, "json"] },
				name: { operands: [file, { name: "NAME" }], flags: market },
				copy: { operands: [file], flags: market },
				remove: { operands: [file], flags: market },
				undo: { operands: [], flags: market },
				take: { operands: [file], flags: market },
			},
		},
		examples: [
			["boardwalk walks", "all of them, the last one first"],
			['boardwalk walks name walk-2026-11-24.json "The quiet one"', "FILE is a walk's file, or the name it has"],
			["boardwalk walks take mias.html", "the walk in a friend's sheet"],
		],
		writes:
			"What was done goes to standard output. A walk that is removed lies beside the others until the next one is.",
		codes: writesFile,
	},
	coach: {
		does: "For a helper: opens somebody's walk to look through it, answer what is open, and suggest other answers.",
		forms: [["FILE", "for a helper: look through a walk, answer what is open, suggest"]],
		usage: { operands: [file], flags: [...ofAnswers, "name", "replace", "record"] },
		flagHelp: { name: "your name, beside your answers and suggestions", answers: "the same as FILE" },
		examples: [
			["boardwalk coach their-walk.json", "a walk, or a sheet with a walk in it"],
			["boardwalk coach their-walk.json --name Mia", "your answers and suggestions carry this name"],
		],
		writes: "Answers and suggestions go into FILE. Give that file back to the builder.",
		codes: [...writesFile, interrupted],
	},
	why: {
		does: "Says what a rule or a criterion is for and where it comes from; or what was found for one board.",
		forms: [["ID | BOARD | criteria | all", "what a rule or criterion (ID) is for; what was found for a board"]],
		usage: { operands: [{ name: "ID", words: ["criteria", "all"] }], flags: ofAnswers },
		examples: [
			["boardwalk why fit/socket", "a rule; boardwalk why all prints every one"],
			["boardwalk why criteria", "what is scored, on which scale"],
			["boardwalk why BOARD --answers my.json", "everything that was checked for one board"],
		],
		writes: "The page goes to standard output. No file is written.",
		codes: readsWalk,
	},
	read: {
		does: "Reads the facts from a copied page of a board, a processor or a case. It can also read a board's processor list.",
		forms: [
			["board | processor | case [FILE]", "what a copied page tells; --keep takes it among your own parts"],
			["list [FILE] --name PROCESSOR", "whether a board's processor list names it, and from which firmware"],
		],
		usage: {
			words: {
				board: readPart,
				processor: readPart,
				case: readPart,
				list: { operands: [file], flags: ["name", "board", "keep", "json", "sound-only"] },
			},
		},
		examples: [
			["boardwalk read board page.txt --keep", "a board from its copied page, as a part of your own"],
			["boardwalk read board", "without FILE: paste the text; two empty lines end it"],
			['boardwalk read list page.txt --name "NAME"', "is this processor on the list?"],
		],
		writes: "What was read goes to standard output. With --keep the part goes among your own parts.",
		codes: writesFile,
	},
	own: {
		does: "Lists your own parts, which count in the walk, and changes them.",
		forms: [
			["", "your own parts, which count in the walk"],
			["show | copy | remove ID", "one of them; own undo brings the last removed back"],
			["set | unset ID FACT [VALUE]", "one fact of a part, by its path, such as memory.type"],
			["offer ID --price PRICE", "what a shop or a seller asks for it"],
			["import FILE [--kind KIND]", "take parts from a table (CSV) or a parts file (JSON)"],
			["export FILE [--kind KIND]", "write them to a file, .json or .csv"],
		],
		usage: {
			words: {
				list: { operands: [], flags: ["sound-only", "json"] },
				show: { operands: [id], flags: [...part, "json"] },
				copy: { operands: [id], flags: part },
				remove: { operands: [id], flags: part },
				undo: { operands: [], flags: ["sound-only"] },
				offer: { operands: [id], flags: [...part, "price", "condition", "seen", "seller", "until"] },
				set: { operands: [id, { name: "FACT" }, { name: "VALUE" }], flags: part },
				unset: { operands: [id, { name: "FACT" }], flags: part },
				import: { operands: [file], flags: [...part, "map", "yes", "replace"] },
				export: { operands: [file], flags: [...part, "replace"] },
			},
		},
		examples: [
			["boardwalk own import boards.csv --kind board", "take boards of your own from a table"],
			['boardwalk own offer ID --price "129.90 EUR"', "a price you saw"],
			["boardwalk own set ID memory.slots 4", "one fact; own unset ID memory.slots makes it unknown again"],
		],
		writes: "Your parts lie in one file that only you can read. own export writes where you say.",
		codes: writesFile,
	},
	check: {
		does: "Looks through a file of parts or of answers, and names every mistake with its place.",
		forms: [["FILE", "look through a file of parts or answers for mistakes"]],
		usage: { operands: [file], flags: market },
		examples: [["boardwalk check my-parts/boards.json", "look for mistakes in a parts file"]],
		writes: "One line goes to standard output if all is well; mistakes go to standard error. The file stays as it is.",
		codes: readsWalk,
	},
	replay: {
		does: "Goes through a walk once more, step by step: one that --record wrote, or the answers of a kept walk or a sheet.",
		forms: [["FILE", "a walk once more, step by step: a recorded one, or a walk's answers"]],
		usage: { operands: [file], flags: [...market, "json"] },
		examples: [
			["boardwalk replay my.json", "each answer, and what it took out"],
			["boardwalk replay steps.jsonl --json", "the answers it ends with"],
		],
		writes: "Each step and the screen behind it go to standard output. No file is written.",
		codes: readsWalk,
	},
	schema: {
		does: "Prints the JSON Schema of a kind of part, or of a whole file.",
		forms: [["KIND", "the JSON Schema of a part kind, or of files: parts, answers, sheet"]],
		usage: { operands: [{ name: "KIND", words: [...kindWords, "parts", "answers", "sheet"] }], flags: ["json"] },
		examples: [
			["boardwalk schema board", "every fact a board can have"],
			["boardwalk schema answers", "the file of a walk"],
		],
		writes: "The schema goes to standard output, always as JSON.",
		codes: [ok, usage],
	},
	words: {
		does: "Explains the words of the trade that the walk uses: all of them, or one.",
		forms: [["[TERM]", "the words of the trade in plain words, all or one"]],
		// "back plate" without quotation marks comes as two.
		usage: { operands: [{ name: "TERM" }, { name: "" }, { name: "" }, { name: "" }], flags: ["json"] },
		examples: [
			["boardwalk words", "all of them"],
			["boardwalk words back plate", "one"],
		],
		writes: "The words go to standard output.",
		codes: [ok, usage],
	},
	sources: {
		does: "Lists where facts and figures come from: standards, handbooks, and what is common practice.",
		forms: [["", "where facts and figures come from"]],
		usage: { operands: [], flags: ["json"] },
		examples: [["boardwalk sources", "each with title, revision and section"]],
		writes: "The list goes to standard output.",
		codes: [ok, usage],
	},
	doctor: {
		does: "Tells what boardwalk finds on this machine: versions, terminal, colour, and where files are. It changes nothing.",
		forms: [["", "what it finds on this machine: terminal, colour, where files are"]],
		usage: { operands: [], flags: ["plain", "no-input", "no-color", "ascii", "json"] },
		flagHelp: {
			plain: "as it would be with --plain",
			"no-input": "as it would be with --no-input",
			"no-color": "as it would be with --no-color",
			ascii: "as it would be with --ascii",
		},
		examples: [["boardwalk doctor", "to look first where something looks wrong"]],
		writes: "The report goes to standard output. Nothing is made or changed by looking.",
		codes: [ok, usage, notSetUp],
	},
	completion: {
		does: "Prints a script that lets bash complete boardwalk's commands and flags. It changes no file of yours.",
		forms: [["bash", "a script for bash: source <(boardwalk completion bash)"]],
		usage: { operands: [{ name: "SHELL", words: ["bash"] }], flags: [] },
		examples: [["source <(boardwalk completion bash)", "in this bash, until you close it"]],
		writes: "The script goes to standard output.",
		codes: [ok, usage],
	},
	help: {
		does: "Prints all commands, flags and keys, or what one command takes.",
		forms: [["[COMMAND]", "this list, or what one command takes, with examples"]],
		usage: { operands: [{ name: "COMMAND" }], flags: [] },
		examples: [["boardwalk help plan", "the same as boardwalk plan --help"]],
		writes: "The help goes to standard output.",
		codes: [ok, usage],
	},
} as const satisfies Readonly<Record<string, CommandEntry>>;

export type CommandName = keyof typeof entries;

/** Every command, in the order of the help. */
export const commandTable: Readonly<Record<CommandName, CommandEntry>> = entries;
export const commandNames = Object.keys(entries) as readonly CommandName[];

export function isCommand(word: string): word is CommandName {
	return Object.hasOwn(entries, word);
}

/** Words that may stand behind a command's name, such as `set` behind own; empty where none do. */
export function subWords({ usage }: CommandEntry): readonly string[] {
	return "words" in usage ? Object.keys(usage.words) : [];
}

/** How a command is used with this word behind it. What the word does not settle, any of its usages may have. */
export function usagesOf({ usage }: CommandEntry, word: string | undefined): readonly Usage[] {
	if (!("words" in usage)) return [usage];
	const named = word !== undefined && Object.hasOwn(usage.words, word) ? usage.words[word] : undefined;
	const alone = word === undefined && usage.words["list"]?.operands.length === 0 ? usage.words["list"] : undefined;
	const one = named ?? alone;
	return one ? [one] : Object.values(usage.words);
}

/** The most words that may stand behind a command's name. */
export function mostOperands({ usage }: CommandEntry): number {
	if (!("words" in usage)) return usage.operands.length;
	return 1 + Math.max(...Object.values(usage.words).map(({ operands }) => operands.length));
}
