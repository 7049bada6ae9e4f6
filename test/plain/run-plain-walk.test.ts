import { describe, expect, test } from "vitest";
import { allQuestions } from "../../src/questions/all-questions.ts";
import type { Place, WalkState } from "../../src/walk/walk-state.ts";
import { emptyMarket, quietAnswers, scenarios, walkAt, walkWith } from "../walk/walk-in-demo.ts";
import { linesToShortlist } from "./lines-to-shortlist.ts";
import { plainWalkOf } from "./plain-walk-of.ts";

const at = (id: string): Place => ({ at: "question", id });
const quiet: WalkState = walkWith(quietAnswers);

/** From the start to a written sheet: every question by number, letters, typed values and not sure. */
const wholeWalk = [...linesToShortlist, "", "1", "s"];

/** What the answers to earlier questions have settled there. */
const notAsked = ["fit/candidates", "fit/case-front", "fit/front-plugs"];

describe("a whole walk", () => {
	test("leads in less than sixty lines from the start to a sheet", async () => {
		const { state, effects, steps } = await plainWalkOf(wholeWalk);
		expect(wholeWalk.length).toBeLessThan(60);
		expect(state.place).toEqual({ at: "left" });
		expect(Object.fromEntries(Object.entries(state.answers).map(([id, { value }]) => [id, value]))).toEqual({
			...quietAnswers,
			"about/walk-length": "whole",
			"about/who": "builder",
			"about/activities": ["writing", "films"],
			"about/session-length": "an-hour",
			"about/money-in-all": { minor: 90_000, currency: "EUR" },
			"about/money-spent": { minor: 42_000, currency: "EUR" },
			"about/summer-room": "warm",
			"about/quiet": "a-lot",
			"fit/screens": ["HDMI"],
			"fit/memory-size": 32,
			"fit/cooler": undefined,
			"fit/drives": [],
			"fit/older-drives": 0,
			"fit/cards": [],
			"fit/old-things": [],
			"fit/bought": ["processor", "memory"],
			"fit/returnable": ["memory"],
			"fit/return-until": "2026-12-12",
			"features/full-speed": "somewhat",
			"features/rear-devices": ["keyboard", "mouse", "printer", "drive", "drive"],
			"features/router": "1",
			"features/later": ["memory"],
			"features/room": "a-little",
			"features/second-card": "dont-mind",
			"features/raise-clock": "no",
			"features/error-correction": "dont-mind",
			"features/case-fans": 3,
			"features/lighting": [],
			"features/sound": ["headphones"],
			"features/colour": "plain",
			"features/rescue-musts": [],
			"features/wishes": "somewhat",
			"quality/stage-load": undefined,
			"quality/tested": "would-like",
			"quality/years": 6,
			"quality/warranty": "would-like",
			"quality/backing": "somewhat",
		});
		expect(effects.filter(({ type }) => type !== "save")).toEqual([
			{ type: "write-sheet", to: "board-sheet.html", orNext: true },
			{ type: "leave", finished: true },
		]);
		expect(effects.filter(({ type }) => type === "save").length).toBeGreaterThanOrEqual(
			allQuestions.length - notAsked.length,
		);
		expect(steps.join("")).toMatch(/Closest to your answers[^\n]*: /);
		expect(steps.filter((step) => /No line has|There is no line|^\nType /.test(step))).toEqual([]);
	});

	test("shows each question once, with its help only when asked", async () => {
		const { said } = await plainWalkOf(wholeWalk);
		const inOneLine = said.replace(/\s+/g, " ");
		for (const { id, ask, why } of allQuestions) {
			expect(inOneLine.split(ask).length - 1, ask).toBe(notAsked.includes(id) ? 0 : 1);
			expect(inOneLine).not.toContain(`Why we ask ${why}`);
		}
	});

	test("can be done without one sure answer", async () => {
		const unsure = (count: number) => Array.from({ length: count }, () => "not sure");
		const lines = ["1", ...unsure(8 + 13), "", ...unsure(13), "", ...unsure(6), "", "s"];
		const { state, effects } = await plainWalkOf(lines);
		expect(Object.keys(state.answers)).toHaveLength(8 + 13 + 13 + 6);
		expect(state.place).toEqual({ at: "left" });
		expect(new Set(Object.values(state.answers).map(({ status }) => status))).toEqual(new Set(["not-sure"]));
		expect(effects.at(-1)).toEqual({ type: "leave", finished: true });
	});

	test.each([
		["the demonstration", undefined],
		["a market without any part", emptyMarket],
	])("is written in lines of at most the width asked for, in %s", async (_, context) => {
		for (const width of [40, 78]) {
			const { said, steps } = await plainWalkOf(["?", ...wholeWalk], { width, ...(context ? { context } : {}) });
			for (const line of steps.flatMap((step) => step.split("\n")))
				if (line.length > width) expect(line.trim()).not.toContain(" ");
			expect(said).not.toMatch(/undefined|NaN|\[object|\n{4}/);
			// biome-ignore lint/suspicious/noControlCharactersInRegex: nothing is ever drawn or coloured line by line
			expect(said).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f]/);
		}
	});
});

describe("the end of input", () => {
	test("saves and leaves, whenever it comes", async () => {
		// Every fourth line comes to each kind of place; every single one would take long and tell no more.
		for (let count = 0; count < wholeWalk.length - 1; count += 4) {
			const { state, effects } = await plainWalkOf(wholeWalk.slice(0, count));
			expect(state.place).toEqual({ at: "left" });
			expect(effects.slice(-2).map(({ type }) => type)).toEqual(["save", "leave"]);
		}
	});

	test("before a shortlist is leaving early, after it is not", async () => {
		const finishedAfter = async (count: number) => (await plainWalkOf(wholeWalk.slice(0, count))).effects.at(-1);
		expect(await finishedAfter(8)).toEqual({ type: "leave", finished: false });
		expect(await finishedAfter(wholeWalk.length - 2)).toEqual({ type: "leave", finished: true });
	});

	test("in the middle of a description keeps what was answered", async () => {
		const { state, steps } = await plainWalkOf(["another one", "Gatepost"], {
			from: { ...quiet, place: at("fit/case") },
		});
		expect(steps[2]).toContain("Your case, fact 2 of 3");
		expect(state.answers).toEqual(quiet.answers);
	});
});

describe("a line that is not understood", () => {
	test("is told what can be typed, and the screen is not said again", async () => {
		const { steps, state } = await plainWalkOf(["seventeen", "99", ""], { from: walkAt(at("features/rear-usb-c")) });
		expect(state.answers).toEqual({});
		for (const step of steps.slice(1, 4)) {
			expect(step).toMatch(/Type a number from 1 to 4/);
			expect(step).not.toContain("Do you want a USB-C socket");
		}
	});

	test("by the question itself is told in its words", async () => {
		const { steps } = await plainWalkOf(["lots", "31"], { from: walkAt(at("features/case-fans")) });
		for (const step of steps.slice(1, 3)) expect(step).toMatch(/whole number from 0 to 20/);
	});

	test("is told again if it is typed again, and help in between does not repeat it", async () => {
		const { steps } = await plainWalkOf(["lots", "?", "lots"], { from: walkAt(at("features/case-fans")) });
		const told = steps.map((step) => step.includes("whole number from 0 to 20"));
		expect(told.slice(1, 4)).toEqual([true, false, true]);
	});
});

describe("help", () => {
	test.each(allQuestions)("on $id says all four things", async ({ id, why, whereToFind, changes, notSure }) => {
		const { steps } = await plainWalkOf(["?"], { from: walkAt(at(id)) });
		const said = steps[1]?.replace(/\s+/g, " ") ?? "";
		const heads = ["Why we ask", "Where to find it", "What your answer changes", "If you are not sure"];
		const places = heads.map((head) => said.indexOf(head));
		expect(places).toEqual([...places].sort((one, other) => one - other));
		for (const words of [...heads, why, whereToFind, changes, notSure]) expect(said).toContain(words);
	});

	test("on a screen without any says what to do", async () => {
		const { steps } = await plainWalkOf(["?"], { from: { ...quiet, place: { at: "shortlist" } } });
		expect(steps[1]).toContain("Type the number of a line.");
	});
});

describe("the prompt", () => {
	const promptAt = async (from: WalkState) => (await plainWalkOf([], { from })).prompts[0]?.replace(/\n /g, " ");

	test("says what can be typed, on each kind of screen", async () => {
		expect(await promptAt(walkAt(at("about/budget")))).toMatch(/^\[type your answer; b: back; \?: why, .*\]\n> $/);
		expect(await promptAt(walkAt(at("features/wireless")))).toMatch(/^\[1 to 4; b: back; /);
		expect(await promptAt(walkAt(at("fit/case")))).toMatch(/^\[1 to 25; or some letters of a name; b: back; /);
		expect(await promptAt(walkAt(at("features/lighting")))).toMatch(/^\[1 to 5; several as 1, 3; b: back; /);
		expect(await promptAt({ ...quiet, place: at("fit/case") })).toContain("; Enter: keep your answer; ");
		expect(await promptAt({ ...quiet, place: { at: "sheet" } })).toContain("or type another file name");
	});

	test("offers help only where there is some", async () => {
		expect(await promptAt({ ...quiet, place: { at: "shortlist" } })).not.toContain("?: why");
	});
});

describe("looking around", () => {
	test("a setting that is turned over is shown turned over", async () => {
		const { steps, effects } = await plainWalkOf(["1", "1"], { from: { ...quiet, place: { at: "settings" } } });
		expect(steps[0]).toContain("Colour: as the terminal has it");
		expect(steps[1]).toContain("Colour: never");
		expect(steps[2]).toContain("Colour: as the terminal has it");
		expect(effects.map(({ type }) => type).slice(0, 2)).toEqual(["keep-settings", "keep-settings"]);
	});

	test("a board is opened by some letters of its name", async () => {
		const from: WalkState = { ...quiet, place: { at: "fell-out" } };
		expect((await plainWalkOf(["POLKA"], { from })).steps[1]).toContain("Pennywhistle Polka");
		expect((await plainWalkOf(["pennywhistle mazurka"], { from })).steps[1]).toMatch(/^\s*Pennywhistle Mazurka \(/);
		const several = (await plainWalkOf(["mazur"], { from })).steps[1] ?? "";
		expect(several).toMatch(/Several boards have "mazur": Pennywhistle Mazurka, Pennywhistle Mazurka\s+Aerial\./);
		expect((await plainWalkOf(["zzz"], { from })).steps[1]).toContain('No board has "zzz" in its name.');
	});

	test("what the last answer took out stands before the next question", async () => {
		const { steps } = await plainWalkOf(["deckhand"], { from: walkAt(at("fit/processor")) });
		const said = steps[1] ?? "";
		expect(said.indexOf("Your last answer took out:")).toBeGreaterThan(-1);
		expect(said.indexOf("Your last answer took out:")).toBeLessThan(said.indexOf("Which case will the board go into?"));
	});

	test("a notice is said with the screen, once", async () => {
		const from: WalkState = { ...quiet, place: { at: "sheet" }, notice: "The sheet is written: /desk/note.md" };
		const { steps } = await plainWalkOf(["nonsense.pdf.", "?"], { from });
		expect(steps[0]).toMatch(/^The sheet is written: \/desk\/note\.md\n/);
		expect(steps.slice(1).join("")).not.toContain("/desk/note.md");
	});

	test.each(scenarios)("$name: every screen that the menu leads to can be read and left", async ({ state }) => {
		for (const line of ["2", "3", "4", "5", "6"]) {
			const { steps, state: after } = await plainWalkOf(["m", line, "b"], {
				from: { ...state, place: at("fit/case") },
			});
			expect(steps[3]).toContain("Which case will the board go into?");
			expect(after.answers).toEqual(state.answers);
		}
	});
});
