import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readArguments } from "../../src/cli/arguments.ts";
import { CommandError } from "../../src/cli/exit-codes.ts";
import { own } from "../../src/cli/own-parts-command.ts";
import { ownFolder } from "../files/own-folder.ts";

const { path, write } = ownFolder();
const today = "2026-11-28";

function run(...words: readonly string[]): { readonly out: string; readonly err: string } {
	const said = { out: "", err: "" };
	const streams = {
		out: (text: string) => {
			said.out += text;
		},
		err: (text: string) => {
			said.err += text;
		},
	};
	own(readArguments(["own", ...words]), streams, today, path("data"));
	return said;
}

function refusal(...words: readonly string[]): { readonly code: number; readonly message: string } {
	try {
		run(...words);
	} catch (error) {
		if (error instanceof CommandError) return { code: error.code, message: error.message };
		throw error;
	}
	throw new Error(`${words.join(" ")} was taken`);
}

const keep = (lists: object) => write("data/parts.json", JSON.stringify({ schema: "boardwalk/parts@1", ...lists }));
const kept = () => JSON.parse(readFileSync(path("data/parts.json"), "utf8"));
const fir = {
	id: "fir-7",
	name: "Fir 7",
	memory: { type: "DDR5", slots: 4 },
	m2Sockets: [{ name: "M2_1", generation: 4 }, { name: "M2_2" }],
	price: { minor: 12990, currency: "EUR" },
	checkedOn: "2026-11-16",
	evidence: {
		"memory.type": { standing: "stated", quote: "4 x DDR5", where: "fir.csv, row 2", date: "2025-01-01" },
		"memory.slots": { standing: "assumed" },
	},
};

describe("the list", () => {
	test("says how to begin where there is nothing", () => {
		expect(run().out).toMatch(/no parts of your own yet.*boardwalk own import FILE/);
	});

	test("tells kind, id, name, prices with their age, and how much is known", () => {
		keep({
			boards: [fir],
			cases: [
				{
					id: "c",
					name: "C",
					offers: [{ price: { minor: 500, currency: "EUR" }, condition: "used", seenOn: "2026-05-01" }],
				},
			],
		});
		const { out } = run("list");
		expect(out.replace(/\n {2}/g, " ")).toContain(
			"- board fir-7: Fir 7; EUR 129.90 (seen 12 days ago); 3 facts known; read 696 days ago: look again",
		);
		expect(out.replace(/\n {2}/g, " ")).toContain(
			"- case c: C; EUR 5.00 used (seen 211 days ago: look again); 0 facts known",
		);
		expect(out).toContain(path("data/parts.json"));
		for (const line of out.split("\n").slice(0, -2)) expect(line.length).toBeLessThanOrEqual(78);
		expect(JSON.parse(run("--json").out)).toEqual(kept());
	});
});

test("show tells each fact with its path, where it was read and how long ago", () => {
	keep({ boards: [fir] });
	const out = run("show", "fir-7").out.replace(/\n {2}/g, " ");
	expect(out).toContain("Fir 7: your own board, fir-7");
	expect(out).toContain("Memory type (memory.type): DDR5");
	expect(out).toContain('stated, fir.csv, row 2, 696 days ago: look again, "4 x DDR5"');
	expect(out).toContain("assumed from a standard");
	expect(out).toContain("M.2 sockets (m2Sockets): name M2_1, generation 4; name M2_2");
	expect(JSON.parse(run("show", "fir-7", "--json").out)).toEqual(fir);
});

describe("a fact", () => {
	test("is set by its path, checked, and noted as typed in today", () => {
		keep({ boards: [fir] });
		run("set", "fir-7", "memory.type", "ddr4");
		run("set", "fir-7", "widthMm", "24,4 cm");
		run("set", "fir-7", "m2Sockets", '[{"name":"M2_1"}]');
		run("set", "fir-7", "price", "99 USD");
		const [board] = kept().boards;
		expect(board).toMatchObject({ memory: { type: "DDR4", slots: 4 }, widthMm: 244, m2Sockets: [{ name: "M2_1" }] });
		expect(board).toMatchObject({ price: { minor: 9900, currency: "USD" }, checkedOn: today });
		expect(board.evidence["memory.type"]).toEqual({ standing: "stated", where: "typed in", date: today });
	});

	test("is taken out again, with what was noted of it and a group that is left empty", () => {
		keep({ boards: [fir] });
		run("unset", "fir-7", "memory.type");
		expect(run("unset", "fir-7", "memory.slots").out).toContain("memory.slots is not known any more");
		expect(kept().boards[0]).toEqual({
			id: "fir-7",
			name: "Fir 7",
			m2Sockets: fir.m2Sockets,
			price: fir.price,
			checkedOn: fir.checkedOn,
		});
		expect(run("unset", "fir-7", "memory.slots").out).toContain("memory.slots was not known before");
	});

	test.each<[string[], number, RegExp]>([
		[["set", "fir-7", "memory.typ", "DDR5"], 64, /no fact "memory\.typ"\. Did you mean memory\.type\?/],
		[["set", "fir-7", "__proto__", "x"], 64, /no fact "__proto__"/],
		[["set", "fir-7", "m2Sockets[0].name", "x"], 64, /with the whole list/],
		[["set", "fir-7", "invented", "no"], 64, /no fact "invented"/],
		[["set", "fir-7", "id", "x"], 64, /^The id stays/],
		[
			["set", "fir-7", "memory.type", "DDR9"],
			64,
			/^memory\.type: expected one of DDR3, DDR4, DDR5\. Nothing was changed\.$/,
		],
		[["set", "fir-7", "memory.type", "unknown"], 64, /boardwalk own unset fir-7 memory\.type/],
		[
			["set", "fir-7", "chipsetUplink.lanes", "4"],
			65,
			/chipsetUplink\.generation: expected .*\nNothing was changed\.$/,
		],
		[["unset", "fir-7", "name"], 65, /boards\[0\]\.name: expected/],
		[["show", "fir-8"], 64, /^You have no part "fir-8" of your own\. Did you mean fir-7\?$/],
		[["show"], 64, /^The command is: boardwalk own show ID$/],
		[["sho", "x"], 64, /Did you mean show\?/],
		[["constructor"], 64, /^There is no command "own constructor"/],
		[["show", "fir-7", "--kind", "cas"], 64, /no kind of part "cas"\. Did you mean case\?/],
		[["undo"], 64, /^Nothing was removed/],
		[["export", "a.xls"], 64, /must end so\.$/],
		[["export", "a.json", "--kind", "fans"], 64, /no such part/],
	])("%j is refused", (words, code, message) => {
		keep({ boards: [fir] });
		const before = readFileSync(path("data/parts.json"), "utf8");
		const refused = refusal(...words);
		expect([refused.code, refused.message]).toEqual([code, expect.stringMatching(message)]);
		expect(readFileSync(path("data/parts.json"), "utf8")).toBe(before);
	});
});

test("a price is not seen on a day that lies ahead", () => {
	keep({ boards: [fir] });
	expect(refusal("offer", "fir-7", "--price", "99 EUR", "--seen", "2031-01-01")).toEqual({
		code: 64,
		message: `--seen 2031-01-01 lies ahead: today is ${today}. When was the price seen?`,
	});
	expect(kept().boards[0].offers).toBeUndefined();
	expect(run("offer", "fir-7", "--price", "99 EUR", "--seen", today).out).toContain(`seen on ${today}`);
});

test("a part is copied, removed and brought back", () => {
	keep({ boards: [fir] });
	expect(run("copy", "fir-7").out).toBe("Copied: board Fir 7 (copy). Its id is fir-7-2.\n");
	run("remove", "fir-7");
	expect(kept().boards.map(({ id }: { id: string }) => id)).toEqual(["fir-7-2"]);
	expect(run("undo").out).toContain("Brought back: board Fir 7.");
	expect(kept().boards[1]).toEqual(fir);
});

test("an id that two kinds share needs the kind", () => {
	keep({ boards: [fir], cases: [{ id: "fir-7", name: "Fir case" }] });
	expect(refusal("show", "fir-7").message).toBe('"fir-7" is a board and a case. Add --kind board or --kind case.');
	expect(run("show", "fir-7", "--kind", "cases").out).toContain("Fir case");
	run("remove", "fir-7", "--kind", "case");
	expect(kept()).toEqual({ schema: "boardwalk/parts@1", boards: [fir] });
});

describe("an offer", () => {
	test("is noted with what is said of it", () => {
		keep({ boards: [fir] });
		run("offer", "fir-7", "--price", "129.90 EUR");
		run(
			"offer",
			"fir-7",
			"--price",
			"€ 80",
			"--condition",
			"used",
			"--seen",
			"1.11.2026",
			"--seller",
			"A, B",
			"--until",
			"2026-12-24",
		);
		expect(kept().boards[0].offers).toEqual([
			{ price: { minor: 12990, currency: "EUR" }, condition: "new", seenOn: today },
			{
				price: { minor: 8000, currency: "EUR" },
				condition: "used",
				seenOn: "2026-11-01",
				seller: "A, B",
				returnableUntil: "2026-12-24",
			},
		]);
	});

	test.each<[string[], RegExp]>([
		[[], /^For how much\?/],
		[["--price", "80"], /price with its currency/],
		[["--price", "80 EUR", "--condition", "usd"], /Did you mean used\?$/],
		[["--price", "80 EUR", "--until", "2026-13-01"], /^--until takes a date/],
		[["--price", "80 EUR", "--seen", "yesterday"], /^--seen takes a date/],
	])("%j is refused", (words, message) => {
		keep({ boards: [fir] });
		expect(refusal("offer", "fir-7", ...words)).toEqual({ code: 64, message: expect.stringMatching(message) });
	});
});

describe("export", () => {
	test("writes a parts file, and does not write over one", () => {
		keep({ boards: [fir], cases: [{ id: "c", name: "C" }] });
		run("export", path("all.json"));
		expect(JSON.parse(readFileSync(path("all.json"), "utf8"))).toEqual(kept());
		run("export", path("cases.json"), "--kind", "case");
		expect(JSON.parse(readFileSync(path("cases.json"), "utf8")).boards).toBeUndefined();
		expect(refusal("export", path("all.json")).code).toBe(73);
		run("export", path("all.json"), "--replace");
	});

	test("writes a table of one kind, and tells what no cell can hold", () => {
		keep({ boards: [fir], cases: [{ id: "c", name: "C" }] });
		expect(refusal("export", path("all.csv")).message).toContain("Add --kind board or case.");
		expect(run("export", path("boards.csv"), "--kind", "board").err).toContain("no cell can hold them: m2Sockets.");
		expect(readFileSync(path("boards.csv"), "utf8")).toMatch(/^id,name,price,checkedOn,memory\.type,memory\.slots\r\n/);
	});
});
