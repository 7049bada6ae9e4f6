import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { Machine } from "./program.ts";

let mine: Machine;
let mias: Machine;
beforeEach(() => {
	mine = new Machine();
	mias = new Machine();
});
afterEach(() => {
	mine.remove();
	mias.remove();
});

const answersOf = (text: string) => JSON.parse(text).answers;

describe("a walk that is passed on", () => {
	test("is answered on by two people, merged, and nothing of either is lost", async () => {
		const start = mine.putScenario("first-guess");
		const text = readFileSync(start, "utf8");
		const copy = mias.put("first-guess.json", text);
		await mine.run(["--plain", "--answers", start], ["r", "q"]);
		// Each changes one answer of their own.
		const changed = (from: string, id: string, answer: object) => {
			const walk = JSON.parse(from);
			return { ...walk, answers: { ...walk.answers, [id]: answer } };
		};
		mine.put("mine.json", changed(text, "about/quiet", { status: "answered", value: "a-lot", by: "builder" }));
		const given = mine.put(
			"mias.json",
			changed(readFileSync(copy, "utf8"), "about/summer-room", { status: "answered", value: "warm", by: "Mia" }),
		);
		const merged = await mine.run(["merge", "mine.json", given, "--from", start, "--to", "both.json"]);
		expect([merged.exitCode, merged.stderr]).toEqual([0, `Written: ${join(mine.desk, "both.json")}\n`]);
		const answers = answersOf(mine.read("both.json"));
		expect(answers["about/quiet"]).toEqual({ status: "answered", value: "a-lot", by: "builder" });
		expect(answers["about/summer-room"]).toEqual({ status: "answered", value: "warm", by: "Mia" });
		const compared = await mine.run(["compare", "mine.json", "both.json"]);
		expect(compared.exitCode).toBe(0);
		expect(compared.stdout).toContain("(by Mia)");
		expect((await mine.run(["check", "both.json"])).stdout).toContain("no mistakes found");
		expect((await mine.run(["shortlist", "--answers", "both.json"])).exitCode).toBe(0);
	});

	test("by a newer program is left alone by every command", async () => {
		const newer = mine.put("newer.json", { schema: "boardwalk/answers@3", answers: [] });
		const sheet = mine.put("sheet.json", { schema: "boardwalk/sheet@9" });
		const text = mine.read("newer.json");
		for (const file of [newer, sheet])
			for (const words of [
				["check", file],
				["shortlist", "--answers", file],
				["--plain", "--answers", file],
				["merge", file, file, "--to", "both.json"],
				["compare", file, file],
				["walks", "take", file],
			]) {
				const { exitCode, stderr } = await mine.run(words, ["q"]);
				expect([words[0], exitCode]).toEqual([words[0], 65]);
				expect(stderr).toContain("it was written by a newer boardwalk");
				expect(stderr).toContain("Nothing was changed.");
			}
		expect(mine.read("newer.json")).toBe(text);
		expect(mine.onDesk()).toEqual(["newer.json", "sheet.json"]);
	});
});

test("programs that remove walks and bring them back at the same time lose none", async () => {
	const scenario = mine.putScenario("first-guess");
	for (let count = 0; count < 4; count++) await mine.run(["walks", "take", scenario]);
	const texts = () =>
		readdirSync(mine.walks)
			.filter((name) => !name.endsWith(".lock"))
			.map((name) => readFileSync(join(mine.walks, name), "utf8"));
	const [first] = texts();
	const names = [...mine.keptWalks()];
	expect(names).toHaveLength(4);
	const removed = await Promise.all(names.map((name) => mine.run(["walks", "remove", name])));
	expect(removed.map(({ stderr }) => stderr)).toEqual(["", "", "", ""]);
	expect(mine.keptWalks().map((name) => /\.json\.removed-\d$/.test(name))).toEqual([true, true, true, true]);
	const back = await Promise.all(names.map(() => mine.run(["walks", "undo"])));
	expect(back.map(({ stderr }) => stderr)).toEqual(["", "", "", ""]);
	expect(mine.keptWalks()).toEqual(names);
	expect(texts()).toEqual([first, first, first, first]);
});
