import { keymap } from "../screens/keys.ts";
import { type CommandName, flags } from "./arguments.ts";

const commands: readonly (readonly [CommandName | "", string, string])[] = [
	["", "", "the walk: questions, then a shortlist and a sheet"],
	["shortlist", "--answers FILE", "the shortlist with reasons"],
	["price-line", "--answers FILE", "what more money buys: price against points"],
	["sheet", "--answers FILE [--to FILE.md]", "the requirement sheet for shop and bench"],
	["sheet", "--to FILE.svg [--board ID]", "a board at true size, to lay into the case on paper; see --paper"],
	["plan", "BOARD --answers FILE", "what plugs in where on one board; --to FILE.svg draws it"],
	["power", "BOARD --answers FILE", "how warm one board's power stages get, and why; --to FILE.svg draws it"],
	["what-if", "QUESTION=ANSWER", "what one other answer would change; takes --answers FILE too"],
	["like", "BOARD WAY --answers FILE", "what is like it but WAY: cheaper, cooler, smaller, more-ports"],
	["ask", "[BOARD] --answers FILE", "what to ask the shop, as a message; --language de for German"],
	["told", "BOARD FACT VALUE --by WHO", "notes what they answered in the file of --answers"],
	["merge", "A B --to FILE", "one walk of two; where they differ you decide; see --from"],
	["compare", "A B", "the answers in which two walks differ, and what each leads to"],
	["walks", "", "the walks kept on this machine"],
	["walks", "name FILE NAME", "gives one of them a name"],
	["walks", "copy | remove FILE", "one of them; walks undo brings the last removed back"],
	["walks", "take FILE", "a copy of a friend's walk, or of the one in a sheet, among yours"],
	["coach", "FILE", "for a helper: look through a walk, answer what is open, suggest"],
	["why", "ID | BOARD | criteria | all", "what a rule or criterion (ID) is for; what was found for a board"],
	["read", "board | processor | case [FILE]", "what a copied page tells; --keep takes it among your own parts"],
	["read", "list [FILE] --name PROCESSOR", "whether a board's processor list names it, and from which firmware"],
	["own", "", "your own parts, which count in the walk"],
	["own", "show | copy | remove ID", "one of them; own undo brings the last removed back"],
	["own", "set | unset ID FACT [VALUE]", "one fact of a part, by its path, such as memory.type"],
	["own", "offer ID --price PRICE", "what a shop or a seller asks for it"],
	["own", "import FILE [--kind KIND]", "take parts from a table (CSV) or a parts file (JSON)"],
	["own", "export FILE [--kind KIND]", "write them to a file, .json or .csv"],
	["check", "FILE", "look through a file of parts or answers for mistakes"],
	["schema", "KIND", "the JSON Schema of a part kind, or of files: parts, answers, sheet"],
	["sources", "", "where facts and figures come from"],
];

const examples: readonly (readonly [string, string])[] = [
	["boardwalk", "start the walk"],
	["boardwalk --plain --answers my.json", "line by line, kept in my.json; run it again to go on"],
	["boardwalk shortlist --answers my.json", "the shortlist again"],
	["boardwalk sheet --answers my.json --to sheet.md", "write the sheet"],
	["boardwalk what-if about/budget=150 --answers my.json", "what another answer would change"],
	["boardwalk ask --answers my.json", "messages to the shop about the boards of your shortlist"],
	["boardwalk read board page.txt --keep", "a board from its copied page, as a part of your own"],
	["boardwalk own import boards.csv --kind board", "take boards of your own from a table"],
	["boardwalk check my-parts/boards.json", "look for mistakes in a parts file"],
];

/** All that --help prints. */
export function helpText(): string {
	const rows = (list: readonly (readonly [string, string])[]) => {
		const width = Math.max(...list.map(([left]) => left.length)) + 2;
		return list.map(([left, right]) => `  ${left.padEnd(width)}${right}`).join("\n");
	};
	return `boardwalk helps you choose the mainboard for a computer you build yourself.

Examples
${rows(examples)}

Commands
${rows(commands.map(([name, operands, help]) => [["boardwalk", name, operands].filter(Boolean).join(" "), help] as const))}

Flags
${rows(Object.entries(flags).map(([name, { value, help }]) => [`--${name}${value ? ` ${value}` : ""}`, help] as const))}

Keys in the walk
${rows(keymap.map(({ keys, does }) => [keys, does] as const))}

Results go to standard output, everything else to standard error.
Ends with 0 when finished (also when nothing fits), 1 when left before a shortlist, 64 for a wrong command,
65 for bad data in a file, 66 for a file that cannot be read, 73 for one that cannot be written, 70 for a fault of ours.
Nothing is ever sent anywhere: the program reads and writes files on this machine only.
`;
}
