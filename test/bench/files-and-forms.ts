import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import workbench from "../../data/scenarios/workbench.json" with { type: "json" };
import { advise } from "../../src/choose/advise.ts";
import { judge } from "../../src/choose/judge.ts";
import { demoMarket } from "../../src/cli/demo-market.ts";
import { sheetForm } from "../../src/cli/write-sheet.ts";
import { readCsv } from "../../src/files/read-csv.ts";
import { readParts } from "../../src/files/read-parts.ts";
import type { AnswersFile } from "../../src/parts/answers-file.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { readMoney } from "../../src/questions/read-money.ts";
import { mapColumns } from "../../src/reading/csv-columns.ts";
import { csvParts } from "../../src/reading/csv-parts.ts";
import { readBoard } from "../../src/reading/read-board.ts";
import { makeSheet } from "../../src/sheet/make-sheet.ts";
import { savedWalk, takeUpWalk } from "../../src/walk/saved-walk.ts";
import { printFigure } from "./figure.ts";
import { median, processorMs } from "./stop-watch.ts";

const boardCount = 10_000;
const pageBytes = 100_000;
const rounds = 3;
const folder = mkdtempSync(join(tmpdir(), "files-and-forms-"));

try {
	loadJson();
	loadCsv();
	readPage();
	writeForms();
} finally {
	rmSync(folder, { recursive: true, force: true });
}

function loadJson(): void {
	// Those of the demonstration over and over, since varied ones may name slots that they no longer have.
	const demo = demoMarket().parts.board;
	const boards = Array.from({ length: boardCount }, (_, index) => {
		const board = demo[index % demo.length];
		return { ...board, id: `board-${index + 1}`, name: `${board?.name} ${index + 1}` };
	});
	const path = join(folder, "boards.json");
	writeFileSync(path, JSON.stringify({ schema: "boardwalk/parts@1", boards }));
	print(`load and check ${boardCount} boards from JSON`, {
		ours: () => {
			const { market, faulty } = readParts(path);
			if (faulty.length > 0 || market.parts.board.length !== boardCount) throw new Error("faults in the boards");
		},
		theirs: () => JSON.parse(readFileSync(path, "utf8")),
		referenceWork: "reading the file and JSON.parse, nothing checked",
	});
}

function loadCsv(): void {
	const path = join(folder, "boards.csv");
	const rows = Array.from({ length: boardCount }, (_, index) =>
		[
			`"Made-up ${index + 1}"`,
			`EUR ${80 + (index % 400)}.00`,
			`Harbour ${2 + (index % 3)}`,
			["ATX", "microATX", "Mini-ITX"][index % 3],
			index % 2 === 0 ? "DDR5" : "DDR4",
			2 + 2 * (index % 2),
			[64, 128, 192][index % 3],
		].join(","),
	);
	writeFileSync(path, ["Name,Price,Socket,Form,Memory type,Memory slots,Max memory GB", ...rows].join("\n"));
	print(`load and check a table (CSV) of ${boardCount} boards, seven columns`, {
		ours: () => {
			const table = readCsv(path);
			const { columns } = mapColumns("board", table.head, new Map());
			const source = { name: "boards.csv", date: workbench.asOf };
			const read = csvParts(table.rows, { kind: "board", columns, width: table.head.length, source, readMoney });
			if (read.parts.length !== boardCount) throw new Error(`${read.parts.length} of ${boardCount} boards`);
		},
		theirs: () =>
			readFileSync(path, "utf8")
				.split("\n")
				.map((line) => line.split(",")),
		referenceWork: "reading the file and splitting it at line ends and commas",
	});
}

function readPage(): void {
	const pages = ["b01", "b02", "b03", "b04", "b05"].map((name) =>
		readFileSync(`test/measure/pages/${name}.txt`, "utf8"),
	);
	let page = "";
	for (let nth = 0; page.length < pageBytes; nth++) page += `${pages[nth % pages.length]}\n`;
	page = page.slice(0, pageBytes);
	print(`read a page of ${pageBytes / 1000} KB about a board`, {
		ours: () => {
			if (readBoard(page).facts.length === 0) throw new Error("nothing was read");
		},
		theirs: () => page.match(/\p{L}+|\d+/gu),
		referenceWork: "finding its words and numbers with one pattern",
	});
}

function writeForms(): void {
	const file = workbench as unknown as AnswersFile;
	const market = demoMarket();
	const context = { market, asOf: file.asOf };
	const { state } = takeUpWalk(context, file);
	const judgement = judge(market, foldAnswers(state.answers, context));
	const advice = advise(judgement, state.answers);
	const kept = savedWalk(context, state);
	for (const ending of [".txt", ".md", ".html", ".json", ".csv"]) {
		let bytes = 0;
		print(`write the sheet of one person as ${ending}, advice given`, {
			ours: () => {
				const text = sheetForm(makeSheet(judgement, advice, state.answers, context, state), kept, ending);
				bytes = text.length;
			},
			theirs: () => JSON.parse(JSON.stringify(market.parts.board)),
			referenceWork: "JSON.stringify and JSON.parse of the demonstration's boards",
		});
		if (bytes < 500) throw new Error(`${ending} holds ${bytes} letters`);
	}
}

interface Measured {
	readonly ours: () => unknown;
	readonly theirs: () => unknown;
	readonly referenceWork: string;
}

function print(name: string, { ours, theirs, referenceWork }: Measured): void {
	ours();
	theirs();
	const [mine, other]: [number[], number[]] = [[], []];
	for (let round = 0; round < rounds; round++) {
		mine.push(ms(ours));
		other.push(ms(theirs));
	}
	const [value, reference] = [median(mine), median(other)];
	printFigure({
		name,
		value,
		unit: "ms of processor time",
		reference,
		referenceWork,
		ratio: value / reference,
		limit: null,
	});
}

function ms(work: () => unknown): number {
	const start = processorMs();
	work();
	return processorMs() - start;
}
