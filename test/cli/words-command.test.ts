import { describe, expect, test } from "vitest";
import { words } from "../../src/cli/words-command.ts";
import { glossary } from "../../src/reference/glossary.ts";
import { commandRuns, flat } from "./run-command.ts";

const { run, refusal } = commandRuns("words", words);

describe("words", () => {
	test("prints all of them, each with what it means, in 78 columns", () => {
		const { out } = run();
		for (const { word, means } of glossary) {
			expect(out).toContain(word);
			expect(flat(out)).toContain(flat(means));
		}
		for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(78);
		expect(JSON.parse(run("--json").out)).toEqual(glossary);
	});

	test("prints one, by its word or any other form, however it is typed", () => {
		for (const term of glossary)
			for (const name of [term.word, ...(term.forms ?? [])]) {
				expect(JSON.parse(run(...name.split(" "), "--json").out).word, name).toBe(term.word);
				expect(JSON.parse(run(name.toUpperCase(), "--json").out).word, name).toBe(term.word);
			}
		expect(run("back", "plates").out).toMatch(/^back plate/);
	});

	test("names near ones for a word that is not explained", () => {
		const { code, message } = refusal("bak", "plate");
		expect(code).toBe(64);
		expect(message).toBe('The word "bak plate" is not explained here. Did you mean back plate?');
		expect(refusal("zzzzzzz").message).toMatch(/See: boardwalk words$/);
	});
});
