import { PassThrough } from "node:stream";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openKeyboard, type Pressed } from "../../src/cli/keyboard.ts";
import { functionKeys, reports } from "./hostile-keys.ts";
import { waitUntil } from "./wait-until.ts";

/** A terminal's input that chunks can be sent to, and what was pressed. */
function terminal() {
	const modes: boolean[] = [];
	const input = Object.assign(new PassThrough(), {
		setRawMode: (on: boolean) => {
			modes.push(on);
		},
	});
	const pressed: Pressed[] = [];
	const keyboard = openKeyboard(input as unknown as NodeJS.ReadStream, (key) => pressed.push(key));
	return { input, pressed, modes, keyboard };
}

/** What is pressed once chunks have been sent, with some milliseconds between them, and a last End has arrived. */
async function pressedBy(chunks: readonly (string | Buffer)[], pauseMs = 0): Promise<Pressed[]> {
	const { input, pressed } = terminal();
	for (const [index, chunk] of chunks.entries()) {
		if (index > 0) await new Promise((resolve) => setTimeout(resolve, pauseMs));
		input.write(chunk);
	}
	// Longer than a lone Esc is waited for, so that nothing sent joins it.
	await new Promise((resolve) => setTimeout(resolve, 60));
	input.write("\u001b[F");
	await waitUntil(() => pressed.at(-1)?.name === "end");
	return pressed.slice(0, -1);
}

const named = (...names: readonly Pressed["name"][]) => names.map((name) => ({ name }));
const text = (...texts: readonly string[]): Pressed[] => texts.map((one) => ({ name: "text", text: one }));

describe.concurrent("keys", () => {
	test.each<[string, string, Pressed["name"]]>([
		["Up", "\u001b[A", "up"],
		["Up as an application key", "\u001bOA", "up"],
		["Down", "\u001b[B", "down"],
		["Right", "\u001b[C", "right"],
		["Left", "\u001b[D", "left"],
		["Home", "\u001b[H", "home"],
		["Home, in the old way", "\u001b[1~", "home"],
		["End", "\u001b[F", "end"],
		["Page Up", "\u001b[5~", "page-up"],
		["Page Down", "\u001b[6~", "page-down"],
		["Enter", "\r", "enter"],
		["Enter as line feed", "\n", "enter"],
		["Enter as both", "\r\n", "enter"],
		["Esc", "\u001b", "escape"],
		["Tab", "\t", "tab"],
		["Shift+Tab", "\u001b[Z", "back-tab"],
		["space", " ", "space"],
		["Backspace", "\u007f", "backspace"],
		["Backspace as Ctrl+H", "\b", "backspace"],
		["Delete", "\u001b[3~", "delete"],
		["Ctrl+Left", "\u001b[1;5D", "word-left"],
		["Ctrl+Right", "\u001b[1;5C", "word-right"],
		["Alt+b", "\u001bb", "word-left"],
		["Alt+f", "\u001bf", "word-right"],
		["Ctrl+W", "\u0017", "delete-word"],
		["Alt+Backspace", "\u001b\u007f", "delete-word"],
		["Ctrl+U", "\u0015", "delete-to-start"],
		["Ctrl+K", "\u000b", "delete-to-end"],
		["Ctrl+A", "\u0001", "home"],
		["Ctrl+E", "\u0005", "end"],
		["Ctrl+D", "\u0004", "delete"],
		["F1", "\u001bOP", "help"],
		["Ctrl+C", "\u0003", "interrupt"],
		["Ctrl+Z", "\u001a", "suspend"],
		["Ctrl+L", "\f", "redraw"],
	])("%s", async (_, bytes, name) => expect(await pressedBy([bytes])).toEqual(named(name)));

	test("letters, one by one, in any writing", async () => {
		expect(await pressedBy(["aB7?é矢👍"])).toEqual(text("a", "B", "7", "?", "é", "矢", "👍"));
	});

	test("a letter whose bytes come apart is one letter", async () => {
		const [first, second] = [Buffer.from("矢").subarray(0, 1), Buffer.from("矢").subarray(1)];
		expect(await pressedBy([first, second], 5)).toEqual(text("矢"));
	});
});

describe.concurrent("bursts", () => {
	test("every key in one chunk counts, in order", async () => {
		expect(await pressedBy(["\u001b[B\r\u001b[B\u001b[B\r"])).toEqual(named("down", "enter", "down", "down", "enter"));
		expect(await pressedBy(["\u001b[B".repeat(50)])).toEqual(named(...Array(50).fill("down")));
		expect(await pressedBy(["jj\r"])).toEqual([...text("j", "j"), ...named("enter")]);
	});

	test("an arrow in two chunks 10 ms apart is an arrow, not Esc and letters", async () => {
		expect(await pressedBy(["\u001b", "[A"], 10)).toEqual(named("up"));
		expect(await pressedBy(["\u001b[", "A"], 10)).toEqual(named("up"));
		expect(await pressedBy(["\u001b[", "1;5D"], 10)).toEqual(named("word-left"));
	});

	test("two Enters are two, also where each has a line feed", async () => {
		expect(await pressedBy(["\r\r"])).toEqual(named("enter", "enter"));
		expect(await pressedBy(["\r\n\r\n"])).toEqual(named("enter", "enter"));
		expect(await pressedBy(["\r", "\n"], 20)).toEqual(named("enter", "enter"));
	});
});

describe.concurrent("a paste", () => {
	const paste = (words: string) => `\u001b[200~${words}\u001b[201~`;

	const pastedAs = (text: string): Pressed[] => [{ name: "paste", text }];

	test("is one text with its lines, whatever keys stand in it", async () => {
		expect(await pressedBy([paste("first line\r\nsecond\nthird\tend\r\r\n\n")])).toEqual(
			pastedAs("first line\nsecond\nthird\tend\n\n\n"),
		);
		expect(await pressedBy([paste("q?r")])).toEqual(pastedAs("q?r"));
		const [hostile] = await pressedBy([paste("a\u0003b\u001a\u001b[Bc\u007f\u001b")]);
		expect(hostile).toMatchObject({ name: "paste", text: expect.stringMatching(/^a.?b.?c/u) });
	});

	test("of nothing visible is nothing", async () => {
		expect(await pressedBy([paste("\r\n \u0007")])).toEqual([]);
		expect(await pressedBy(["\u001b[201~"])).toEqual([]);
	});

	test("may come in pieces, and keys after it are keys", async () => {
		expect(await pressedBy(["\u001b[20", "0~ab", "cd\u001b[201", "~\u001b[B"], 5)).toEqual([
			...pastedAs("abcd"),
			...named("down"),
		]);
	});

	test("without an end is over after a second, so that no key is lost for good", async () => {
		const { input, pressed } = terminal();
		input.write("\u001b[200~abc");
		await waitUntil(() => {
			input.write("\u0003");
			return pressed.length > 1;
		});
		expect(pressed.slice(0, 2)).toMatchObject([
			{ name: "paste", text: expect.stringMatching(/^abc/) },
			{ name: "interrupt" },
		]);
	});
});

describe.concurrent("what is no key of the walk", () => {
	test("function keys with Shift, Alt and Ctrl type no letter and press nothing that answers", async () => {
		const { input, pressed } = terminal();
		for (const sequence of functionKeys()) input.write(sequence);
		input.write("\u001b[F");
		await waitUntil(() => pressed.at(-1)?.name === "end");
		const allowed: readonly Pressed["name"][] = ["home", "end", "delete"];
		expect(pressed.filter(({ name }) => !allowed.includes(name))).toEqual([]);
	});

	test.each(reports)("a report of %s leaks no letter", async (_, bytes) => {
		// Ctrl+B and Ctrl+F are Left and Right, which move; Ctrl+T shows sources, and hides them. No letter comes of any.
		const pressed = await pressedBy([bytes]);
		expect(pressed.filter(({ name }) => name !== "sources" && name !== "left" && name !== "right")).toEqual([]);
	});

	test.each(reports.slice(0, 10))("a report of %s leaves the keys behind it whole", async (_, bytes) => {
		expect(await pressedBy([`${bytes}\u001b[Bx`])).toEqual([...named("down"), ...text("x")]);
	});

	test.each(reports.slice(0, 6))("a report of %s byte by byte leaks no letter either", async (_, bytes) => {
		expect(await pressedBy([...bytes], 1)).toEqual([]);
	});

	test("a sequence cut short swallows no later key, and never Ctrl+C", async () => {
		for (const start of ["\u001b[<0;1", "\u001b[", "\u001b[M", "\u001b]11;rgb", "\u001b[24;", "\u001bP", "\u001bO"]) {
			const { input, pressed } = terminal();
			input.write(start);
			await new Promise((resolve) => setTimeout(resolve, 60));
			input.write("\u0003");
			input.write("\u0003");
			await waitUntil(() => pressed.some(({ name }) => name === "interrupt"));
		}
		for (const start of ["\u001b[<0;1", "\u001b[M", "\u001b]11;rgb", "\u001b[24;8"])
			expect(await pressedBy([`${start}\u0003`])).toEqual(named("interrupt"));
		expect(await pressedBy(["\u001b[<0;1", "x"], 60)).toEqual(text("x"));
	});

	test("any bytes at all end in keys of the walk or nothing, and Ctrl+C is heard after them", async () => {
		const chunk = fc.oneof(
			fc.uint8Array({ maxLength: 40 }).map((bytes) => Buffer.from(bytes)),
			fc.constantFrom("\u001b", "\u001b[", "\u001b[<", "\u001bO", "\u001b[200~", "\u001b[M", "\u009b").map(Buffer.from),
		);
		await fc.assert(
			fc.asyncProperty(fc.array(chunk, { maxLength: 8 }), async (chunks) => {
				const { input, pressed, keyboard } = terminal();
				for (const one of chunks) input.write(one);
				input.write("\u001b[201~");
				await new Promise((resolve) => setTimeout(resolve, 50));
				for (const key of pressed) if (key.name === "text") expect(key.text).not.toMatch(/[\r\n\t\p{Cc}]/u);
				const before = pressed.length;
				await waitUntil(() => {
					input.write("\u0003");
					return pressed.slice(before).some(({ name }) => name === "interrupt");
				});
				keyboard.close();
			}),
			{ numRuns: 30 },
		);
	});
});

describe("raw mode", () => {
	test("is on while keys are read and off afterwards, and nothing is heard then", async () => {
		const { input, pressed, modes, keyboard } = terminal();
		expect(modes).toEqual([true]);
		keyboard.close();
		expect(modes).toEqual([true, false]);
		expect(input.isPaused()).toBe(true);
		input.emit("keypress", "x", { name: "x", sequence: "x", ctrl: false, meta: false, shift: false });
		expect(pressed).toEqual([]);
	});

	test("a terminal that is gone is no fault on the way out", () => {
		const { input, keyboard } = terminal();
		input.setRawMode = () => {
			throw new Error("setRawMode EIO");
		};
		expect(() => keyboard.close()).not.toThrow();
	});
});
