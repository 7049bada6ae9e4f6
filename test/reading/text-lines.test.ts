import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cleanText } from "../../src/parts/clean-text.ts";
import { longestLine, mostLines, textLines, textOfLines } from "../../src/reading/text-lines.ts";

const texts = (pasted: string): string[] => textLines(pasted).lines.map(({ text }) => text);

describe("line ends", () => {
	test.each([
		["LF", "a\nb"],
		["CR LF", "a\r\nb"],
		["CR", "a\rb"],
		["vertical tab", "a\u000bb"],
		["form feed", "a\fb"],
		["next line", "a\u0085b"],
		["line separator", "a\u2028b"],
		["paragraph separator", "a\u2029b"],
	])("%s", (_, pasted) => {
		expect(textLines(pasted).lines).toEqual([
			{ number: 1, text: "a" },
			{ number: 2, text: "b" },
		]);
	});
	test("empty lines stay and count", () => {
		expect(textLines("a\n\n b \n").lines).toEqual([
			{ number: 1, text: "a" },
			{ number: 2, text: "" },
			{ number: 3, text: " b" },
			{ number: 4, text: "" },
		]);
	});
});

describe("characters", () => {
	test.each([
		["tabs between cells stay", "Socket\tKettle 7", "Socket\tKettle 7"],
		["spaces of other widths", "64\u00a0GB\u2009max", "64 GB max"],
		["directions and zero width", "K\u202eet\u200btle", "Kettle"],
		["control characters", "a\u0000b\u0007", "ab"],
		["Windows-1252 taken for Latin-1", "3.5\u0094 \u0096 2\u0099", "3.5” – 2™"],
		["a byte that would begin a string of the terminal", "4\u009d slots", "4  slots"],
		["composed", "Steckpla\u0308tze", "Steckplätze"],
		[
			"entities without a tag",
			"Audio &amp; LAN &#8211; 4&nbsp;x &Uuml;ber &unknown;",
			"Audio & LAN – 4 x Über &unknown;",
		],
		["an entity that would be a control character", "a&#27;[31mb&#155;2J", "a [31mb 2J"],
		["an entity is read once", "&amp;lt;b&amp;gt;", "&lt;b&gt;"],
		["less than", "noise < 20 dB, <none> > 3", "noise < 20 dB, <none> > 3"],
	])("%s", (_, pasted, wanted) => {
		expect(texts(pasted)).toEqual([wanted]);
	});
	test("an escape sequence without an end takes no more than its line", () => {
		expect(texts("a\u001b]0;never ended\nb")).toEqual(["a", "b"]);
	});
});

describe("HTML", () => {
	test.each([
		["paragraphs", "<p>4 slots</p>\n<p>2 fans</p>", ["4 slots", "2 fans"]],
		["line breaks", "<div>one<br>two<br/>three</div>", ["one", "two", "three"]],
		["white space is layout", "<div>\n  4 x\n   DIMM\n</div>", ["4 x DIMM"]],
		["a list", "<ul><li>one</li><li><p>two</p></li></ul>", ["- one", "- two"]],
		[
			"a table",
			"<table>\n<tr>\n <td>Socket</td>\n <td>Kettle 7</td>\n</tr><tr><td>Memory<td>DDR5</table>",
			["Socket\tKettle 7", "Memory\tDDR5"],
		],
		["rows without their table", "<tr><td>Socket</td><td>Kettle 7</td></tr>", ["Socket\tKettle 7"]],
		["an empty cell", "<table><tr><td>A</td><td></td><td>B</td></tr></table>", ["A\t\tB"]],
		[
			"several lines in a cell",
			"<table><tr><td>Slots</td><td><p>CPU:</p><p>1 x long</p></td></tr></table>",
			["Slots\tCPU:", "\t1 x long"],
		],
		[
			"a list in a cell",
			"<table><tr><td>USB</td><td><ul><li>2</li><li>3</li></ul></td></tr></table>",
			["USB\t- 2", "\t- 3"],
		],
		[
			"a break in the name of a row",
			"<table><tr><th>Form<br>factor</th><td>ATX</td></tr></table>",
			["Form factor\tATX"],
		],
		[
			"a list of terms",
			"<dl><dt>Socket</dt><dd>Kettle 7</dd><dt>Fans</dt><dd>2</dd><dd>3</dd></dl>",
			["Socket\tKettle 7", "Fans\t2", "\t3"],
		],
		["scripts and styles", "<div>a<script>if (1 < 2) '<p>x</p>'</script><style>p{}</style>b</div>", ["ab"]],
		["comments", "<p>a<!-- <p>no</p> -->b</p>", ["ab"]],
		["brackets in attributes", `<p title="a > b" data-x='<p>'>text</p>`, ["text"]],
		["a mark raised", "<p>64<sup>2</sup> GB</p>", ["64² GB"]],
		["labels set apart by style alone", "<div><span>Socket</span><span>Kettle 7</span></div>", ["Socket Kettle 7"]],
		["written out", "<p>&lt;script&gt; &amp; more</p>", ["<script> & more"]],
		["text kept in form", "<pre>a\n  b</pre>", ["a", "  b"]],
	])("%s", (_, pasted, wanted) => {
		const read = textLines(pasted);
		expect(read.lines.map(({ text }) => text)).toEqual(wanted);
		expect(read.fromHtml).toBe(true);
	});
	test("headings and names of columns are known", () => {
		const page =
			"<h2>Memory</h2><table><tr><th>Feature</th><th>Value</th></tr><tr><th>Type</th><td>DDR5</td></tr>" +
			"<tr><th colspan=2>Slots</th></tr></table>";
		expect(textLines(page).lines).toEqual([
			{ number: 1, text: "Memory", kind: "head" },
			{ number: 2, text: "Feature\tValue", kind: "columns" },
			{ number: 3, text: "Type\tDDR5" },
			{ number: 4, text: "Slots", kind: "head" },
		]);
	});
	test("a stray element among plain lines leaves the lines as they are", () => {
		expect(texts("Socket: Kettle 7\nFans: 2<br>Slots: 4\n\nUSB: <b>3</b>\nLAN: 1\nAudio: 2")).toEqual([
			"Socket: Kettle 7",
			"Fans: 2",
			"Slots: 4",
			"",
			"USB: 3",
			"LAN: 1",
			"Audio: 2",
		]);
	});
	test("what is never closed loses no text", () => {
		expect(texts("<p>a<!-- b</p><p>c<script>d</p>").join(" ")).toContain("c");
		expect(texts("<p>4 slots <p")).toEqual(["4 slots <p"]);
	});
});

describe("bounds", () => {
	test("a line on the limit stays whole, one past it is broken at a space and nothing is lost", () => {
		expect(texts("x".repeat(longestLine))).toHaveLength(1);
		expect(texts("x".repeat(longestLine + 1)).map(({ length }) => length)).toEqual([longestLine, 1]);
		const long = "word ".repeat(1000).trim();
		const read = textLines(`${long}\nnext`);
		expect(read.lines.map(({ text }) => text).join(" ")).toBe(`${long} next`);
		expect(read.lines.at(-1)).toEqual({ number: 2, text: "next" });
	});
	test("a character of two units is not parted", () => {
		expect(texts(`${"x".repeat(longestLine - 1)}😀`)).toEqual(["x".repeat(longestLine - 1), "😀"]);
	});
	test("lines on the limit are all there, more are counted", () => {
		expect(textLines("a\n".repeat(mostLines - 1)).leftOut).toBe(0);
		const more = textLines(`${"a\n".repeat(mostLines + 4)}b`);
		expect(more.lines).toHaveLength(mostLines);
		expect(more.leftOut).toBe(5);
	});
	test.each([
		["one long line", "x".repeat(1_000_000)],
		["line ends", "\n".repeat(1_000_000)],
		["spaces", " ".repeat(1_000_000)],
		["tags never ended", "<p ".repeat(330_000)],
		["quotes in tags", `<a ">" `.repeat(140_000)],
		["mixed quotes in tags", `<a '">' "`.repeat(110_000)],
		["comments never ended", "<!--".repeat(250_000)],
		["scripts never ended", "<script>".repeat(125_000)],
		["cells of one row", `<table><tr>${"<td>a<br>b".repeat(100_000)}`],
		["tables in tables", "<table><tr><td>".repeat(66_000)],
		["spaces in a tag of form", `<pre>${"a          b".repeat(80_000)}`],
		["ampersands", "&".repeat(1_000_000)],
		["marks on one letter", `a${"\u0301\u0323".repeat(500_000)}`],
		["marks between sequences", "\u0301\u0323\u001b[m".repeat(200_000)],
		["escapes", "\u001b]".repeat(500_000)],
	])("a megabyte of %s takes its time and no more", (_, pasted) => {
		const start = performance.now();
		const { lines } = textLines(pasted);
		expect(performance.now() - start).toBeLessThan(4000);
		expect(lines.length).toBeLessThanOrEqual(mostLines);
		expect(lines.every(({ text }) => text.length <= longestLine)).toBe(true);
	});
});

const bits = fc.constantFrom(
	"<p>",
	"</p>",
	"<table>",
	"<tr>",
	"<td>",
	"</table>",
	"<th>",
	"<li>",
	"<dt>",
	"<dd>",
	"<br>",
	"<sup>",
	"</sup>",
	"<!--",
	"-->",
	"<script>",
	"</script>",
	"<h2>",
	"</h2>",
	"<pre>",
	"<",
	">",
	'"',
	"'",
	"&amp;",
	"&#27;",
	"\u001b]",
	"\u001b[",
	"\n",
	"\r",
	"\t",
	" ",
	"4 x DIMM",
	"\u202e",
	"\u0301",
	"é",
	"\ud83d",
	"😀",
	"|",
	":",
);
const anyPaste = fc.oneof(
	fc.string({ unit: "binary", maxLength: 300 }),
	fc.array(bits, { maxLength: 120 }).map((some) => some.join("")),
);

describe("whatever is pasted", () => {
	test("it never throws, and its lines are within bounds and clean", () => {
		fc.assert(
			fc.property(anyPaste, (pasted) => {
				const { lines, leftOut } = textLines(pasted);
				expect(leftOut).toBe(0);
				let number = 0;
				for (const line of lines) {
					expect(line.text.length).toBeLessThanOrEqual(longestLine);
					expect(line.text).not.toMatch(/[\n\r]/);
					expect(cleanText(line.text)).toBe(line.text);
					expect(line.number).toBeGreaterThanOrEqual(number);
					number = line.number;
				}
			}),
		);
	});
	test("plain words and numbers all stay", () => {
		fc.assert(
			fc.property(fc.array(fc.stringMatching(/^[a-zA-Z0-9.,:;/+-]{1,12}$/), { minLength: 1 }), (some) => {
				expect(texts(some.join("\n"))).toEqual(some);
				expect(textOfLines(textLines(some.join("\n")).lines)).toBe(some.join("\n"));
				expect(texts(some.map((one) => `<p>${one}</p>`).join(""))).toEqual(some);
			}),
		);
	});
});
