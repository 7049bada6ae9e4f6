import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import { readArguments } from "../../src/cli/arguments.ts";
import { demoMarket } from "../../src/cli/demo-market.ts";
import { readEvent } from "../../src/cli/event-shapes.ts";
import { CommandError } from "../../src/cli/exit-codes.ts";
import { openKeyboard, type Pressed } from "../../src/cli/keyboard.ts";
import { replay } from "../../src/cli/replay-command.ts";
import { keptMapping } from "../../src/files/csv-mappings.ts";
import { NewerFile } from "../../src/files/newer-file.ts";
import { readWalk } from "../../src/files/read-answers.ts";
import { BrokenCsv, parseCsv } from "../../src/files/read-csv.ts";
import { BrokenJson, parseJson } from "../../src/files/read-json.ts";
import { decodeText, UnreadableFile } from "../../src/files/read-text.ts";
import { openSettings } from "../../src/files/settings.ts";
import { soundParts } from "../../src/files/sound-parts.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { factsOf } from "../../src/parts/fact-list.ts";
import { formFields } from "../../src/parts/form-fields.ts";
import { readTyped as readField } from "../../src/parts/form-read.ts";
import type { Market } from "../../src/parts/market.ts";
import { partKindNames } from "../../src/parts/part-kinds.ts";
import { boardForms } from "../../src/parts/vocabulary.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { readMoney } from "../../src/questions/read-money.ts";
import { readTyped } from "../../src/questions/read-typed.ts";
import { readCell } from "../../src/reading/csv-cells.ts";
import { mapColumns } from "../../src/reading/csv-columns.ts";
import { csvParts } from "../../src/reading/csv-parts.ts";
import { readBoard } from "../../src/reading/read-board.ts";
import { readCase } from "../../src/reading/read-case.ts";
import { readProcessor } from "../../src/reading/read-processor.ts";
import { readSize } from "../../src/reading/read-size.ts";
import { readSupportList, supportListOf } from "../../src/reading/support-list.ts";
import { readTold } from "../../src/walk/read-told.ts";

/** One parser of the program, with texts that it is made for. */
export interface Parser {
	readonly name: string;
	readonly samples: () => readonly string[];
	/** What it makes of a text. What it may throw is named in `refuses`. */
	readonly read: (text: string) => unknown;
	/** Errors that are an answer: documented with the function, and told to the person in words. */
	readonly refuses: readonly (new (
		...given: never[]
	) => Error)[];
	/** Text that is kept as it was given, so that control signs in it are none of this parser's: raw text, decoded bytes. */
	readonly keepsSigns?: true;
	/** It does what it reads, which takes longer than reading. */
	readonly goesThroughWalk?: true;
}

const day = "2026-11-24";
const market: Market = demoMarket();
const context = { market, asOf: day };
const told = { board: market.parts.board[0] as never, processor: "Robin", asOf: day, currency: "EUR" };

const filesIn = (folder: string, ending: RegExp): readonly string[] =>
	readdirSync(folder)
		.filter((name) => ending.test(name))
		.sort()
		.map((name) => readFileSync(join(folder, name), "utf8"));
const pages = (kind: RegExp) => () => filesIn("test/measure/pages", kind);

/** A folder of this run's own for parsers that read files; gone when the process ends. */
const folder = mkdtempSync(join(tmpdir(), "fuzz-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
function asFile<T>(name: string, text: string, read: (path: string) => T): T {
	const path = join(folder, name);
	writeFileSync(path, text);
	return read(path);
}

const scenarios = () => filesIn("data/scenarios", /\.json$/);
const savedWalks = () => [...scenarios(), ...filesIn("test/saved/answers-1", /\.json$/)];
const sheetsOf = (texts: readonly string[]) =>
	texts.flatMap((text) => {
		const json = JSON.stringify(JSON.parse(text));
		return [
			`<!doctype html><main>x</main><template id="boardwalk-answers">${json.replace(/[&<>]/g, "")}</template>`,
			`{"schema":"boardwalk/sheet@1","answersFile":${json}}`,
		];
	});

const tables = () => [
	"name;socket;price\nA;Larder 3;EUR 12,50\nB;Pantry 9;1.234\n",
	'sep=,\nname,board size (form),memory type,price\n"A, b",ATX,DDR5,189.00\n',
	"Name\tBreite (cm)\tKerne\nX\t24,4\t8\n",
];

/** The first line of a text picks one of several, the rest is read. */
function pick<T>(text: string, of: readonly T[]): { readonly one: T; readonly rest: string } {
	const at = text.indexOf("\n");
	const index = Number.parseInt(text.slice(0, Math.max(0, at)), 10) || 0;
	return { one: of[Math.abs(index) % of.length] as T, rest: at < 0 ? text : text.slice(at + 1) };
}
const everyFact = partKindNames.flatMap((kind) => factsOf(kind).map((fact) => ({ kind, fact })));
const everyField = partKindNames.flatMap((kind) => formFields(kind));
const boardPaths = factsOf("board").map(({ path }) => path);
const typedWords = () =>
	[
		"200",
		"EUR 1.234,50",
		"305 x 244 mm",
		"ATX, microATX",
		"yes",
		"1, 3",
		"2026-12-24",
		"24.12.2026",
		"DDR5",
		"x4",
	].flatMap((words, index) => [`${index}\n${words}`, `${index * 7}\n${words}`]);

const records = () => {
	const [walk = "{}"] = scenarios();
	const events = [
		{ type: "next" },
		{ type: "not-sure" },
		{ type: "answer", value: "no-limit" },
		{ type: "text", text: "200" },
		{ type: "mark", value: "keyboard", by: 1 },
		{ type: "board", boardId: market.parts.board[0]?.id ?? "" },
		{ type: "way-out", changes: [{ questionId: "about/budget", from: null, to: "no-limit" }] },
		{ type: "set", setting: { colour: "never" } },
		{ type: "back" },
	];
	return [
		walk,
		...events.map((event) => JSON.stringify(event)),
		events.map((event) => JSON.stringify(event)).join("\n"),
	];
};

/** What readline hears of bytes, as keys of the walk. */
function keysOf(text: string): readonly Pressed[] {
	const pressed: Pressed[] = [];
	const input = Object.assign(new PassThrough(), { setRawMode: () => {} });
	const keyboard = openKeyboard(input as unknown as NodeJS.ReadStream, (key) => pressed.push(key));
	input.emit("data", Buffer.from(text, "utf8"));
	input.emit("data", Buffer.from(text.slice(0, 64), "latin1"));
	// So that what was begun ends here and not in a timer.
	input.emit("data", Buffer.from("\u001b[201~\u001b[F", "utf8"));
	keyboard.close();
	input.destroy();
	return pressed;
}

const inJson = [BrokenJson] as const;
const inFile = [BrokenJson, UnreadableFile, NewerFile] as const;

export const parsers: readonly Parser[] = [
	{ name: "json", samples: savedWalks, read: (text) => parseJson(text, "a file"), refuses: inJson },
	{
		name: "answers",
		samples: savedWalks,
		read: (text) => asFile("walk.json", text, readWalk),
		refuses: inFile,
	},
	{
		name: "sheets",
		samples: () => sheetsOf(scenarios()),
		read: (text) => asFile("sheet.html", text, readWalk),
		refuses: inFile,
	},
	{
		name: "parts",
		samples: () => filesIn("data/demo", /^(?:platforms|cases)\.json$/),
		read: (text) => soundParts(parseJson(text, "a file")),
		refuses: inJson,
	},
	{ name: "csv", samples: tables, read: (text) => parseCsv(text, "a table"), refuses: [BrokenCsv] },
	{
		name: "csv-parts",
		samples: tables,
		read(text) {
			const { head, rows } = parseCsv(text, "a table");
			return partKindNames.map((kind) => {
				const { columns, leftOut } = mapColumns(kind, head);
				const target = { kind, columns, width: head.length, source: { name: "a table", date: day }, readMoney };
				return { leftOut, ...csvParts(rows.slice(0, 50), target) };
			});
		},
		refuses: [BrokenCsv],
	},
	{
		name: "cells",
		samples: typedWords,
		read(text) {
			const { one, rest } = pick(text, everyFact);
			return readCell(rest, { ...one, readMoney });
		},
		refuses: [],
		// A cell comes cleaned from its table, and what is typed comes cleaned from its line.
		keepsSigns: true,
	},
	{
		name: "csv-mappings",
		samples: () => ['{"schema":"boardwalk/csv-mappings@1","mappings":[{"kind":"board","columns":[["Name","name"]]}]}'],
		read: (text) => asFile("csv-mappings.json", text, () => keptMapping(folder, "board", ["Name"])),
		refuses: [],
	},
	{ name: "board-page", samples: pages(/^b\d+\.txt$/), read: readBoard, refuses: [] },
	{ name: "case-page", samples: pages(/^k\d+\.txt$/), read: readCase, refuses: [] },
	{ name: "processor-page", samples: pages(/^c\d+\.txt$/), read: readProcessor, refuses: [] },
	{
		name: "support-list",
		samples: () => [
			"Processor\tFirmware\nRobin 5 210\t1.10\nWren 7 330\tF4\n",
			"Robin 5 210 ; since 1.10\nWren 7 330 ; all\n",
			"<table><tr><th>CPU</th><th>BIOS</th></tr><tr><td>Robin 5</td><td>1.20</td></tr></table>",
		],
		read: (text) => {
			const reading = readSupportList(text);
			return { reading, list: supportListOf(reading, day) };
		},
		refuses: [],
	},
	{
		name: "money",
		samples: () => ["189", "EUR 189.00", "1.234,50 EUR", "1 234", "$ 12", "12 JPY", "0"],
		// As its callers hand it over: on one line. Long runs of white space would hold it up for hours.
		read: (text) => readMoney(text, "EUR"),
		refuses: [],
	},
	{
		name: "sizes",
		samples: () => ["305 x 244 mm", "12 x 9.6 inch", "30,5 cm x 24,4 cm ATX", ...boardForms],
		read: readSize,
		refuses: [],
		keepsSigns: true,
	},
	{
		name: "typed-answers",
		samples: typedWords,
		read(text) {
			const { one, rest } = pick(text, allQuestions);
			return readTyped(one, rest, context, emptyBuildFacts);
		},
		refuses: [],
	},
	{
		name: "typed-facts",
		samples: typedWords,
		read(text) {
			const { one, rest } = pick(text, everyField);
			return readField(one, rest, { asOf: day, readMoney: (sum) => readMoney(sum, "EUR") });
		},
		refuses: [],
	},
	{
		name: "told-facts",
		samples: () => [...typedWords(), "3\n4 x DIMM", "60\n2 x M.2, 4 x SATA", "20\nja, vier Stück"],
		read(text) {
			const { one, rest } = pick(text, boardPaths);
			return readTold(one, rest, told);
		},
		refuses: [],
	},
	{
		name: "events",
		samples: records,
		read: (text) =>
			text.split("\n").map((line) => {
				const read = readEvent(parseJson(line, "a line"));
				return "expected" in read ? read.expected : read.event.type;
			}),
		refuses: inJson,
	},
	{
		name: "replay",
		samples: () => [...scenarios(), ...records()],
		read: (text) =>
			asFile("record.json", text, (path) => {
				const said: string[] = [];
				const streams = { out: (words: string) => said.push(words), err: (words: string) => said.push(words) };
				replay({ ...readArguments(["replay", path, "--json"]) }, streams, null);
				return said.length;
			}),
		refuses: [CommandError],
		goesThroughWalk: true,
	},
	{
		name: "arguments",
		samples: () => [
			"sheet\n--to\na.html\n--json",
			"--answers\nx.json",
			"own\nset\n--kind=board\nid\nname\nX",
			"--",
			"-h",
		],
		read: (text) => readArguments(text.split("\n").slice(0, 200)),
		refuses: [CommandError],
		// File names are taken as they are.
		keepsSigns: true,
	},
	{
		name: "settings",
		samples: () => ['{"colour":"never","characters":"ascii","face":"line-by-line","lengths":"with-inches"}'],
		read: (text) => asFile("settings.json", text, () => openSettings(folder).settings),
		refuses: [],
	},
	{
		name: "keyboard",
		samples: () => [
			"abc\r",
			"\u001b[A\u001b[B",
			"\u001b[200~a\npaste\u001b[201~",
			"\u001b[M !!\u001b[<0;1;1M",
			"\u001bOP",
		],
		read: keysOf,
		refuses: [],
	},
	{
		name: "bytes",
		samples: () => ["name;price\nX;1\n", "\u00ff\u00fea\u0000b\u0000", "\u00ef\u00bb\u00bfa", "gr\u00fc\u00df"],
		read: (text) => decodeText(Buffer.from(text, "latin1"), "a file", { fallback: "windows-1252" }),
		refuses: [UnreadableFile],
		keepsSigns: true,
	},
];
