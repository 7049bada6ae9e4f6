import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cleanJson, cleanLine, cleanText } from "../../src/parts/clean-text.ts";

const [esc, bel, st] = ["\u001b", "\u0007", "\u001b\\"];

describe("escape sequences go with all they carry", () => {
	test.each([
		["into the clipboard (OSC 52), ended by BEL", `a${esc}]52;c;cm0gLXJmIC8=${bel}b`, "ab"],
		["into the clipboard, ended by ST", `a${esc}]52;c;cm0gLXJmIC8=${st}b`, "ab"],
		["into the clipboard, in single characters", "a\u009d52;c;cm0=\u009cb", "ab"],
		["never ended: nothing behind it is to be trusted", `a${esc}]52;c;cm0=`, "a"],
		["a window's title", `${esc}]0;owned${bel}Board`, "Board"],
		["a link that says another", `${esc}]8;;http://example.test${st}shop${esc}]8;;${st}`, "shop"],
		["a device's string (DCS)", `a${esc}P+q544e${st}b`, "ab"],
		["an application's string (APC)", `a${esc}_Gx${st}b`, "ab"],
		["a private message (PM)", `a${esc}^x${st}b`, "ab"],
		["a string (SOS)", `a${esc}Xx${st}b`, "ab"],
		["over several lines", `a${esc}]0;one\ntwo${bel}b`, "ab"],
		["two of them, with text between", `${esc}]0;x${bel}a${esc}]0;y${bel}b`, "ab"],
		["colour", `${esc}[1;31mred${esc}[0m`, "red"],
		["colour in a single character", "\u009b31mred", "red"],
		["screen wiped, cursor moved", `${esc}[2J${esc}[1;1Ha${esc}[3A`, "a"],
		["another screen", `${esc}[?1049ha`, "a"],
		["a character set", `${esc}(0a`, "a"],
		["reset", `${esc}ca`, "a"],
		["a lone escape at the end", `a${esc}`, "a"],
		["an escape before an escape", `${esc}${esc}[31ma`, "a"],
		["a sequence inside a sequence", `${esc}${esc}]0;x${bel}[31ma`, "a"],
		["a sequence broken off", `a${esc}[31`, "a"],
	])("%s", (_, dirty, clean) => {
		expect(cleanText(dirty)).toBe(clean);
	});
});

describe("control characters go, line ends become one kind", () => {
	test.each([
		["bell", "a\u0007b", "ab"],
		["backspace", "safe\b\b\b\bevil", "safeevil"],
		["nul", "a\u0000b", "ab"],
		["delete", "a\u007fb", "ab"],
		["next line (C1)", "a\u0085b", "ab"],
		["form feed and vertical tab", "a\f\vb", "ab"],
		["carriage return over what was said", "fits\rdoes not", "fits\ndoes not"],
		["CR LF", "a\r\nb", "a\nb"],
		["tab and line feed stay", "a\tb\nc", "a\tb\nc"],
	])("%s", (_, dirty, clean) => {
		expect(cleanText(dirty)).toBe(clean);
	});
});

describe("what turns or hides goes", () => {
	test.each([
		["right-to-left override", "gpj.\u202egnp", "gpj.gnp"],
		["isolates", "\u2066a\u2069b\u2067", "ab"],
		["marks", "a\u200eb\u200fc\u061c", "abc"],
		["zero-width space", "A\u200bM", "AM"],
		["word joiner and invisible operators", "A\u2060M\u2063", "AM"],
		["byte order mark", "\ufeffA", "A"],
		["soft hyphen", "A\u00adM", "AM"],
		["fillers", "A\u3164\u115f\u1160\uffa0M", "AM"],
		["grapheme joiner", "A\u034fM", "AM"],
		["tags, which spell hidden words", "A\u{e0061}\u{e0062}\u{e007f}M", "AM"],
		["half a character", "A\ud83dM", "AM"],
		["a tag in two halves, with something to be taken out between", "A\udb40\u200b\udc61M\udb40\u001b[m\udc61", "AM"],
		["line and paragraph separators", "a\u2028b\u2029", "ab"],
		["old format controls", "a\u206a\u180e\ufff9b", "ab"],
	])("%s", (_, dirty, clean) => {
		expect(cleanText(dirty)).toBe(clean);
	});

	test("whole characters beyond the first 65 536 stay", () => {
		expect(cleanText("\u{1f600}\u{20000}")).toBe("\u{1f600}\u{20000}");
	});

	test("joiners that words and emoji need stay", () => {
		expect(cleanText("\u0645\u06cc\u200c\u062e\u0648\u0627\u0647\u0645")).toBe(
			"\u0645\u06cc\u200c\u062e\u0648\u0627\u0647\u0645",
		);
		expect(cleanText("\u{1f468}\u200d\u{1f4bb} \u2764\ufe0f")).toBe("\u{1f468}\u200d\u{1f4bb} \u2764\ufe0f");
	});
});

test("one letter in two spellings is one: composed (NFC)", () => {
	expect(cleanText("Gehäuse")).toBe("Geh\u00e4use");
	expect(cleanText("Geha\u0308use")).toBe("Geh\u00e4use");
	// Taking something out first lets letter and mark meet.
	expect(cleanText("Geha\u200b\u0308use")).toBe("Geh\u00e4use");
	expect(cleanText("5\u00a0\u00b5H \ufb01")).toBe("5\u00a0\u00b5H \ufb01");
});

const nasty = fc
	.array(
		fc.oneof(
			fc.constantFrom(
				esc,
				bel,
				st,
				"[",
				"]",
				"52;c;",
				"m",
				"\\",
				"\u009b",
				"\u009d",
				"\u009c",
				"\r",
				"\n",
				"\u202e",
				"\u200b",
				"\u0308",
				"a",
				"\u001bP",
			),
			fc.integer({ min: 0, max: 0xffff }).map((unit) => String.fromCharCode(unit)),
		),
		{ maxLength: 14 },
	)
	.map((pieces) => pieces.join(""));

const steering =
	// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the very characters that may not be left
	/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff]/;

test("nothing that steers a terminal is left, and cleaning twice is cleaning once", () => {
	fc.assert(
		fc.property(nasty, (text) => {
			const clean = cleanText(text);
			expect(clean).not.toMatch(steering);
			expect(cleanText(clean)).toBe(clean);
			expect(clean.normalize("NFC")).toBe(clean);
			expect(cleanLine(text)).toBe(cleanLine(clean));
		}),
		{ numRuns: 500 },
	);
});

test.each([
	["  My\n\tboard \r\n 2 ", "My board 2"],
	[`${esc}[1m  ${esc}[0m`, ""],
	["a\u00a0\u3000b", "a b"],
])("on one line: %j is %j", (text, line) => {
	expect(cleanLine(text)).toBe(line);
});

describe("a JSON value", () => {
	test("texts and keys are cleaned at every depth, all else stays", () => {
		expect(cleanJson({ [`na${esc}[1mme`]: `A${bel}`, list: [1, 1.5, true, null, { deep: ["\u202ex"] }] })).toEqual({
			name: "A",
			list: [1, 1.5, true, null, { deep: ["x"] }],
		});
	});

	test.each([
		"__proto__",
		"constructor",
		"prototype",
		"__proto__\u200b",
		"__pro\u0007to__",
		" __proto__ ",
		"con\u00adstructor",
	])("a key that could reach a prototype gets another name, so that it is told: %j", (key) => {
		const cleaned = cleanJson(JSON.parse(`{${JSON.stringify(key)}: {"polluted": true}, "kept": 1}`)) as object;
		expect(Object.keys(cleaned)).toEqual([expect.stringMatching(/^\w+ \(a key that no file may have\)$/), "kept"]);
		expect(Object.getPrototypeOf(cleaned)).toBe(Object.prototype);
		expect("polluted" in cleaned).toBe(false);
	});

	const nested = (depth: number) => JSON.parse(`${"[".repeat(depth)}1${"]".repeat(depth)}`) as unknown;

	test("40 deep is read, 41 is not", () => {
		expect(JSON.stringify(cleanJson(nested(40)))).toBe(JSON.stringify(nested(40)));
		expect(() => cleanJson(nested(41))).toThrow(new RangeError("nested more than 40 deep"));
	});

	test("a bomb is refused without exhausting the stack", () => {
		expect(() => cleanJson(nested(50_000))).toThrow("nested more than 40 deep");
		const objects = JSON.parse(`${'{"a":'.repeat(50_000)}1${"}".repeat(50_000)}`) as unknown;
		expect(() => cleanJson(objects)).toThrow("nested more than 40 deep");
	});

	test("any sound value stays as it is", () => {
		fc.assert(
			fc.property(fc.jsonValue({ maxDepth: 6, stringUnit: fc.constantFrom("a", "é", " x", "1") }), (value) => {
				// JSON has no minus zero.
				const sound = JSON.parse(JSON.stringify(value)) as unknown;
				const trimmed = JSON.stringify(sound).replace(/" +/g, '"');
				fc.pre(trimmed === JSON.stringify(sound));
				expect(cleanJson(sound)).toEqual(sound);
			}),
		);
	});
});
