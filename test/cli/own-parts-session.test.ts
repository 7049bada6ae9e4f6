import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeEach, expect, test } from "vitest";
import { checkParts } from "../../src/parts/check-parts.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { boardPage } from "../walk/walks-with-forms.ts";
import { sessionsAtHome, tell } from "./sessions-at-home.ts";

const today = "2026-11-25";
const { path, start } = sessionsAtHome(today);
let file = "";
beforeEach(() => {
	file = path(".local", "share", "boardwalk", "parts.json");
});

const keepBoard: readonly WalkEvent[] = [
	{ type: "paste-part", what: "board" },
	{ type: "paste", text: boardPage },
	{ type: "read" },
	{ type: "keep" },
];

const kept = () => checkParts(JSON.parse(readFileSync(file, "utf8"))).value;

test("a board kept in one walk is there in the next, alone among boards, and leaves no empty walk behind", () => {
	const session = tell(start(), ...keepBoard);
	expect(session.screen()?.title).toBe("Copperbeech Ladder 4");
	expect(kept()?.boards).toMatchObject([{ name: "Copperbeech Ladder 4", evidence: { socket: { date: today } } }]);
	tell(session, { type: "leave" });
	const walks = path(".local", "state", "boardwalk", "walks");
	expect(existsSync(walks) ? readdirSync(walks).filter((name) => name.endsWith(".json")) : []).toEqual([]);
	const next = tell(start(), { type: "own-parts" });
	expect(next.screen()?.choices[0]?.label).toBe("Board: Copperbeech Ladder 4");
	tell(next, { type: "fell-out" });
	expect(next.screen()?.choices.filter(({ event }) => event.type === "board")).toHaveLength(1);
});

test("an answer that names an invented part holds when the first own board is kept, and when the walk is opened again", () => {
	const session = start();
	const pick: readonly WalkEvent[] = [
		{ type: "change", questionId: "fit/case" },
		{ type: "answer", value: { part: "larkspur-wardrobe" } },
	];
	tell(session, ...pick, ...keepBoard, { type: "leave" });
	session.close();
	const again = start();
	const [walk] = again.state().saved;
	tell(again, { type: "open", file: walk?.file ?? "" }, { type: "review" });
	expect(again.screen()?.choices.map(({ label }) => label)).toContainEqual(expect.stringMatching(/Larkspur Wardrobe/));
});

test("a change, a copy, a removal and what is brought back are kept", () => {
	const session = tell(start(), ...keepBoard);
	const id = kept()?.boards?.[0]?.id ?? "";
	tell(
		session,
		{ type: "own-part", kind: "board", id },
		{ type: "edit-part" },
		{ type: "fact-form", path: ["memory", "slots"] },
		{ type: "text", text: "2" },
		{ type: "keep" },
	);
	expect(kept()?.boards).toMatchObject([{ memory: { slots: 2 } }]);
	tell(session, { type: "copy-part" });
	expect(kept()?.boards?.map(({ name }) => name)).toEqual(["Copperbeech Ladder 4", "Copperbeech Ladder 4 (copy)"]);
	tell(session, { type: "remove-part" });
	expect(kept()?.boards).toHaveLength(1);
	expect(session.screen()?.choices.filter(({ event }) => event.type === "own-part")).toHaveLength(1);
	tell(session, { type: "bring-back" });
	expect(kept()?.boards).toHaveLength(2);
});

test("what cannot be kept is told, holds for this walk, and nothing else is broken", () => {
	const session = start();
	mkdirSync(path(".local", "share", "boardwalk"), { recursive: true });
	writeFileSync(file, "{ broken");
	tell(session, ...keepBoard);
	expect(session.screen()?.notice).toMatch(/holds for this walk, but cannot be kept/);
	expect(session.screen()?.title).toBe("Copperbeech Ladder 4");
	expect(readFileSync(file, "utf8")).toBe("{ broken");
});

test("with --parts own parts stay in the walk's own file", () => {
	const folder = path("market");
	mkdirSync(folder);
	writeFileSync(join(folder, "a.json"), JSON.stringify({ schema: "boardwalk/parts@1", boards: [] }));
	const answers = path("my.json");
	tell(start("--parts", folder, "--answers", answers), ...keepBoard);
	expect(existsSync(file)).toBe(false);
	expect(JSON.parse(readFileSync(answers, "utf8")).parts).toHaveLength(1);
});

test("a walk starts beside a damaged file of own parts, says so, and leaves the file as it is", () => {
	mkdirSync(path(".local", "share", "boardwalk"), { recursive: true });
	writeFileSync(file, "{ broken");
	const session = start();
	expect(session.screen()?.notice).toMatch(/parts\.json.*Nothing was changed\. Until then nothing is kept there\./);
	tell(session, ...keepBoard);
	expect(session.screen()?.title).toBe("Copperbeech Ladder 4");
	expect(readFileSync(file, "utf8")).toBe("{ broken");
});
