import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { readArguments } from "../../src/cli/arguments.ts";
import { CommandError, exitCodes } from "../../src/cli/exit-codes.ts";
import { read } from "../../src/cli/read-command.ts";
import type { Board } from "../../src/parts/board.ts";
import { checkParts } from "../../src/parts/check-parts.ts";

const today = "2026-11-25";
const page = `Copperbeech Ladder 7
Socket: Lantern 4
Form factor: ATX, 30.5 cm x 24.4 cm
Memory: 4 x DDR5 DIMM, max. 192 GB, dual channel
Expansion slots: 1 x PCIe 5.0 x16, 1 x PCIe 4.0 x16 (x4 mode)
Storage: 2 x M.2 2280 (PCIe 4.0 x4), 4 x SATA 6Gb/s
Back panel: 1 x HDMI, 2 x USB 3.2 Gen 2 Type-A
LAN: 2.5 Gb/s
Network: 1 Gb/s
With a wreath of dried lavender
`;
let folder = "";
let file = "";

beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), "read-command-"));
	file = join(folder, "page.txt");
	writeFileSync(file, page);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

async function run(...words: readonly string[]) {
	let [out, err] = ["", ""];
	const streams = {
		out: (text: string) => {
			out += text;
		},
		err: (text: string) => {
			err += text;
		},
	};
	await read(readArguments(["read", ...words]), streams, today, join(folder, "own"));
	return { out, err };
}

async function refusal(...words: readonly string[]): Promise<CommandError> {
	const error = await run(...words).then(
		() => null,
		(thrown: unknown) => thrown,
	);
	expect(error).toBeInstanceOf(CommandError);
	return error as CommandError;
}

test("in words: what is open first, then the facts with their lines, and how much was not understood", async () => {
	const { out } = await run("board", file);
	expect(out.split("\n")[0]).toBe("Copperbeech Ladder 7");
	expect(out.indexOf("One thing is open:")).toBeLessThan(out.indexOf("facts were read:"));
	expect(out).toMatch(/- Wired network sockets: .*It may be 2\.5 Gb\/s, or 1 Gb\/s/s);
	expect(out).toContain("- Socket: Lantern 4 (line 2)");
	expect(out).toContain("- Drive ports 1 to 4: SATA 1. Kind of drive port: SATA (line 6)");
	expect(out).toContain("One line was not understood; --json names them.");
});

test("--json: the part by its schema, and facts, doubts and unread lines beside it", async () => {
	const told = JSON.parse((await run("board", file, "--json")).out);
	expect(Object.keys(told)).toEqual(["part", "facts", "doubts", "unread"]);
	expect(checkParts({ schema: "boardwalk/parts@1", boards: [told.part] }).faults).toEqual([]);
	expect(told.facts.find(({ fact }: { fact: string }) => fact === "socket")).toEqual({
		fact: "socket",
		value: "Lantern 4",
		standing: "stated",
		line: 2,
		quote: "Socket: Lantern 4",
	});
	expect(told.doubts.map(({ fact }: { fact: string }) => fact)).toEqual(["wiredGbps"]);
	expect(told.part).not.toHaveProperty("wiredGbps");
	expect(told.unread).toEqual([{ line: 10, text: "With a wreath of dried lavender" }]);
});

test("--keep: the part is kept with quotes and the day, once more under an id of its own", async () => {
	const { err } = await run("board", file, "--keep", "--name", "My\u202e second board");
	expect(err).toBe("Kept among your own parts as my-second-board. What is in doubt was left out.\n");
	expect((await run("board", file, "--keep", "--name", "My second board")).err).toContain(
		"You had a board my-second-board before: both are there now. To take one out: boardwalk own remove my-second-board\n",
	);
	const kept = checkParts(JSON.parse(readFileSync(join(folder, "own", "parts.json"), "utf8"))).value?.boards ?? [];
	expect(kept.map(({ id }) => id)).toEqual(["my-second-board", "my-second-board-2"]);
	expect(kept[0]?.name).toBe("My second board");
	expect(kept[0]?.evidence?.["socket"]).toEqual({
		standing: "stated",
		quote: "Socket: Lantern 4",
		where: "page read from a file",
		date: today,
	});
});

test("a processor list tells of one processor, and is kept with a board", async () => {
	const list = join(folder, "list.txt");
	writeFileSync(list, "CPU\tBIOS\nCairn 7 3800 (AB)\tF5\nCairn 7 3800X\tF9\n");
	expect((await run("list", list, "--name", "Cairn 7 3800")).out).toBe("Cairn 7 3800 (AB): from firmware F5, line 2\n");
	expect((await run("list", list, "--name", "Cairn 9")).out).toBe('"Cairn 9" is not on this list.\n');
	await run("board", file, "--keep");
	await run("list", list, "--board", "copperbeech-ladder-7", "--keep");
	const boards = checkParts(JSON.parse(readFileSync(join(folder, "own", "parts.json"), "utf8"))).value?.boards;
	const board = boards?.[0] as Board | undefined;
	expect(board?.supportList).toEqual({
		readOn: today,
		rows: [
			{ processor: "Cairn 7 3800 (AB)", fromVersion: "F5" },
			{ processor: "Cairn 7 3800X", fromVersion: "F9" },
		],
	});
	expect((await refusal("list", list, "--board", "nobody", "--keep")).message).toContain('has the id "nobody"');
});

test.each([
	["nothing to read by", ["sofa"], exitCodes.usage, 'There is nothing to read a "sofa" by'],
	["no word at all", [], exitCodes.usage, "Read what?"],
	["no such file", ["board", "/nowhere/page.txt"], exitCodes.noInput, "there is no such file"],
] as const)("%s is told", async (_, words, code, told) => {
	const error = await refusal(...words);
	expect([error.code, error.message]).toEqual([code, expect.stringContaining(told)]);
});

test.each([
	["a picture", Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 1, 2, 3, 0, 7]), exitCodes.noInput, "this is no text"],
	["nothing in it", Buffer.from(""), exitCodes.noInput, "the file is empty"],
	["millions of letters", Buffer.alloc(5 * 1024 * 1024, "a"), exitCodes.noInput, "longer than 4 MB"],
	["a poem", Buffer.from("Roses are red\nViolets are blue\n"), exitCodes.badData, "Nothing about a board was found"],
] as const)("a file with %s is refused in words", async (_, bytes, code, told) => {
	writeFileSync(file, bytes);
	const error = await refusal("board", file);
	expect([error.code, error.message]).toEqual([code, expect.stringContaining(told)]);
});

test("a page in Latin-1 or UTF-16 is read, and control characters do not come out again", async () => {
	const wide = "Copperbeech Möwe\nSockel: Lantern 4\nSpeicher: 2x DDR5 DIMM, max. 96GB\n";
	for (const bytes of [Buffer.from(wide, "latin1"), Buffer.from(`\ufeff${wide}`, "utf16le")]) {
		writeFileSync(file, bytes);
		expect((await run("board", file)).out).toMatch(/^Copperbeech Möwe\n[\s\S]*Memory slots: 2/);
	}
	writeFileSync(file, `Cop\u001b[31mper\u0007beech\nSocket: Lan\u202etern 4\nMemory: 2 x DDR5 DIMM\n`);
	// biome-ignore lint/suspicious/noControlCharactersInRegex: these must not reach the terminal
	expect((await run("board", file)).out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f\u202a-\u202e]/);
});
