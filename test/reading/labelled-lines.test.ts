import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { labelledLines, splitLabel } from "../../src/reading/labelled-lines.ts";
import { textLines, textOfLines } from "../../src/reading/text-lines.ts";

const read = (pasted: string) => labelledLines(textLines(pasted).lines);
/** As "section > label = value", names of groups left out. */
const facts = (pasted: string): string[] =>
	read(pasted)
		.filter(({ names }) => !names)
		.map(({ sections, label, value }) => `${[...sections, label ?? "-"].join(" > ")} = ${value}`);

describe("each notation", () => {
	test.each([
		["label: value", "Socket: Kettle 7\nMemory slots : 4", ["Socket = Kettle 7", "Memory slots = 4"]],
		["no space, and a wide colon", "FORM:ATX\nSockel：Kettle 7", ["FORM = ATX", "Sockel = Kettle 7"]],
		[
			"label line, then value lines",
			"Memory:\n2 x DIMM\nDual channel\nForm factor: ATX",
			["Memory = 2 x DIMM", "Memory = Dual channel", "Form factor = ATX"],
		],
		[
			"label line without a colon",
			"Form factor\nATX\nSocket\nKettle 7\nMemory\n4 x DIMM\nUp to 96 GB",
			["Form factor = ATX", "Socket = Kettle 7", "Memory = 4 x DIMM", "Memory = Up to 96 GB"],
		],
		["the same in German", "Formfaktor\nATX\nSteckplätze\n2 x lang", ["Formfaktor = ATX", "Steckplätze = 2 x lang"]],
		["blocks in a language unknown", "Kanta\nKettle 7\n\nMuisti\nDDR5", ["Kanta = Kettle 7", "Muisti = DDR5"]],
		[
			"head, then bullets",
			"Harbour board\n\nCooling\n- 2 x fan\n- 1 x pump\n\nMemory\n• DDR5",
			["- = Harbour board", "Cooling > - = 2 x fan", "Cooling > - = 1 x pump", "Memory > - = DDR5"],
		],
		[
			"head, label line, bullets",
			"Slots\nProcessor:\n- 1 x long\nChipset:\n- 2 x short\n\nFans\n- 3",
			["Slots > Processor = 1 x long", "Slots > Chipset = 2 x short", "Fans > - = 3"],
		],
		[
			"label line over labelled lines",
			"Core details:\nCores : 8\nThreads : 16\n\nPackage details\nSocket : Kettle 7\n\nBoxed: Yes",
			[
				"Core details > Cores = 8",
				"Core details > Threads = 16",
				"Package details > Socket = Kettle 7",
				"- > Boxed = Yes",
			],
		],
		[
			"tabs",
			"Socket\tKettle 7\nMemory\tDDR5\nup to 96 GB",
			["Socket = Kettle 7", "Memory = DDR5", "Memory = up to 96 GB"],
		],
		[
			"tabs, the label only once",
			"Room\tFor coolers: 160 mm\n\tFor cards: 330 mm\nWeight\t6 kg",
			["Room > For coolers = 160 mm", "Room > For cards = 330 mm", "Weight = 6 kg"],
		],
		[
			"tabs, and groups within a cell",
			"Slots\tProcessor:\n- 1 x long\nChipset:\n- 2 x short\nWeight\t6 kg",
			["Slots > Processor = 1 x long", "Slots > Chipset = 2 x short", "Weight = 6 kg"],
		],
		["a label of one letter and a number", "M.2: 3", ["M.2 = 3"]],
		[
			"a table of Markdown",
			"## Memory\n\n| Feature | Details |\n|---|:---:|\n| Type | DDR5 |\n| **Slots** | 4 |\n| | all steel |\n\n## Fans\n- 2",
			["Memory > Type = DDR5", "Memory > Slots = 4", "Memory > Slots = all steel", "Fans > - = 2"],
		],
		["bars without a frame", "Socket | Kettle 7\nMemory | DDR5", ["Socket = Kettle 7", "Memory = DDR5"]],
		["bold labels", "**Socket:** Kettle 7\n- **Memory**: DDR5", ["Socket = Kettle 7", "Memory = DDR5"]],
		["lists stay whole", "Ports: 2 x HDMI; 1 x DP, 4 x USB; LAN: 1", ["Ports = 2 x HDMI; 1 x DP, 4 x USB; LAN: 1"]],
		[
			"a line that goes on, indented",
			"Memory:\n2 x DIMM, unbuffered and\n  without error correction\nFans: 2",
			["Memory = 2 x DIMM, unbuffered and without error correction", "Fans = 2"],
		],
		[
			"indented items are no such lines",
			"- USB ports:\n    1 x wide,\n    2 x narrow",
			["USB ports = 1 x wide,", "USB ports = 2 x narrow"],
		],
		[
			"HTML",
			"<h2>Slots</h2><table><tr><td>Long</td><td>1 x<br>2 x</td></tr></table>",
			["Slots > Long = 1 x", "Slots > Long = 2 x"],
		],
		["a number sign is no head", "# of cores : 8\nThreads : 16", ["# of cores = 8", "Threads = 16"]],
		["doubly spaced", "Slots\n\n- 1 x long\n\n- 2 x short", ["Slots > - = 1 x long", "Slots > - = 2 x short"]],
		[
			"a group among the lines of a label",
			"Inside plugs:\n2 x fan\nUSB\n1 x header\nAudio:\n1 x front",
			["Inside plugs = 2 x fan", "Inside plugs > USB = 1 x header", "Audio = 1 x front"],
		],
	])("%s", (_, pasted, wanted) => {
		expect(facts(pasted)).toEqual(wanted.map((one) => one.replace(/^- > /, "")));
	});
});

test("footnotes keep their stars, and those of the text stay", () => {
	const lines = read("Slots\n- 1 x long**\n- 2 x short*\n* Shares lanes\n** Depends on the processor\n***Not with two");
	expect(lines.map(({ mark, value }) => [mark, value])).toEqual([
		[undefined, "Slots"],
		["-", "1 x long**"],
		["-", "2 x short*"],
		["*", "Shares lanes"],
		["**", "Depends on the processor"],
		["***", "Not with two"],
	]);
});

test("stars are bullets where nothing refers to them", () => {
	expect(facts("Slots\n* 1 x long\n* 2 x short\n* 1 x wide")).toEqual([
		"Slots > - = 1 x long",
		"Slots > - = 2 x short",
		"Slots > - = 1 x wide",
	]);
});

test("heads are bounded however deep a text is indented", () => {
	const deep = Array.from({ length: 50 }, (_, depth) => `${" ".repeat(depth)}group ${"x".repeat(depth % 9)}y:`).join(
		"\n",
	);
	expect(Math.max(...read(deep).map(({ sections }) => sections.length))).toBe(6);
});

test("line, quote, and further cells are told", () => {
	expect(read("\n- Fans: 2\n| A | B | C |\n| d | 1 | 2 |")).toEqual([
		{ sections: [], label: "Fans", value: "2", line: 2, quote: "- Fans: 2", names: false, mark: "-", cells: [] },
		{
			sections: [],
			label: "A",
			value: "B | C",
			line: 3,
			quote: "| A | B | C |",
			names: false,
			mark: undefined,
			cells: ["B", "C"],
		},
		{
			sections: [],
			label: "d",
			value: "1 | 2",
			line: 4,
			quote: "| d | 1 | 2 |",
			names: false,
			mark: undefined,
			cells: ["1", "2"],
		},
	]);
	expect(read("Memory: two\n  and more")[0]?.quote).toBe("Memory: two\n  and more");
});

describe("a colon that ends no label", () => {
	test.each([
		"5 ports: 3 at the back, 2 by header",
		"4 x slots (long: 1)",
		"(long: 1, short: 2) in all",
		"picture 16:9",
		"https://example.test/page",
		"W: 210 mm H: 435 mm D: 428 mm",
		`${"x".repeat(61)}: 3`,
		"one two three four five six seven eight nine ten: 3",
		"The slots share lanes. Note: see below",
	])("%s", (text) => {
		expect(splitLabel(text)).toBeUndefined();
	});
	test.each([
		["4-pin fan: 3", "4-pin fan", "3"],
		["Max. memory: 96 GB", "Max. memory", "96 GB"],
		["Size (L x W: see below): 3", "Size (L x W: see below)", "3"],
		[`${"x".repeat(60)}: 3`, "x".repeat(60), "3"],
	])("but %s has one", (text, label, value) => {
		expect(splitLabel(text)).toEqual({ label, value });
	});
});

const bits = fc.constantFrom(
	"Memory",
	"USB",
	"4 x DIMM",
	"Slots:",
	"Fans: 2",
	"- ",
	"* ",
	"** note",
	"• ",
	"| ",
	" | ",
	"|---|---|",
	"\t",
	"  ",
	"\n",
	"\n\n",
	"## ",
	"===",
	"---",
	"**bold**",
	"`",
	": ",
	"(",
	")",
	"; ",
	"<td>",
	"<tr>",
	"<table>",
	"<br>",
	"<h3>",
	"</h3>",
	"16:9",
	"x16",
);
const anyPaste = fc.oneof(
	fc.string({ unit: "binary", maxLength: 200 }),
	fc.array(bits, { maxLength: 80 }).map((some) => some.join("")),
);

describe("whatever is pasted", () => {
	test("it never throws; every quote stands in the clean text; lines rise; nothing grows", () => {
		fc.assert(
			fc.property(anyPaste, (pasted) => {
				const { lines } = textLines(pasted);
				const whole = textOfLines(lines);
				const found = labelledLines(lines);
				expect(found.length).toBeLessThanOrEqual(lines.length);
				let line = 0;
				for (const entry of found) {
					expect(whole).toContain(entry.quote);
					expect(entry.value).not.toBe("");
					expect(entry.value.length).toBeLessThanOrEqual(entry.quote.length * 3);
					expect(entry.sections.length).toBeLessThanOrEqual(7);
					expect(entry.line).toBeGreaterThan(line);
					line = entry.line;
				}
			}),
			{ numRuns: 300 },
		);
	});
	test("no number is lost", () => {
		fc.assert(
			fc.property(anyPaste, (pasted) => {
				const { lines } = textLines(pasted);
				const quotes = labelledLines(lines)
					.map(({ quote }) => quote)
					.join("\n");
				for (const [number] of textOfLines(lines).matchAll(/\d+/g)) expect(quotes).toContain(number);
			}),
		);
	});
	test.each([
		["bullets", "- 4 x DIMM\n".repeat(20_000)],
		["indented lines", `a\n${"  b\n".repeat(19_000)}`],
		["bars", "|".repeat(2000).concat("\n").repeat(500)],
		["stars", "**a ".repeat(500).concat("\n").repeat(500)],
		["label lines", "a b:\n".repeat(20_000)],
		["tabs", "a\t".repeat(900).concat("\n").repeat(500)],
		["spaces", `a${" ".repeat(1900)}b\n`.repeat(500)],
		["rules", `|${"- :".repeat(600)}x\n`.repeat(500)],
	])("a megabyte of %s takes its time and no more", (_, pasted) => {
		const { lines } = textLines(pasted);
		const start = performance.now();
		expect(labelledLines(lines).length).toBeLessThanOrEqual(lines.length);
		expect(performance.now() - start).toBeLessThan(4000);
	});
});
