import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeEach, describe, expect, test } from "vitest";
import { answersTemplate } from "../../src/parts/answers-in-html.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { walkOf } from "../walk/made-up-walks.ts";
import { sessionsAtHome, tell } from "./sessions-at-home.ts";

const today = "2026-11-28";
const { path, start } = sessionsAtHome(today);
let walks = "";
beforeEach(() => {
	walks = path(".local", "state", "boardwalk", "walks");
});
function keep(name: string, more: object = {}): string {
	mkdirSync(walks, { recursive: true });
	const file = join(walks, name);
	writeFileSync(file, JSON.stringify({ ...walkOf("quiet-desk"), ...more }));
	return file;
}
const files = () =>
	existsSync(walks)
		? readdirSync(walks)
				.filter((name) => !name.endsWith(".lock"))
				.sort()
		: [];
const read = (file: string) => JSON.parse(readFileSync(file, "utf8"));
const typed = (text: string): WalkEvent => ({ type: "text", text });
const at = (file: string): readonly WalkEvent[] => [{ type: "saved-walks" }, { type: "kept-walk", file }];
const quietAnswer: readonly WalkEvent[] = [{ type: "change", questionId: "about/quiet" }, { type: "not-sure" }];

describe("kept walks in the walk", () => {
	test("are named, and listed by that name at once", () => {
		const file = keep("walk-1.json");
		const session = tell(start(), ...at(file), { type: "name-walk", file }, typed("For Oma"));
		expect(read(file).name).toBe("For Oma");
		expect(session.state()).toMatchObject({
			saved: [{ file, name: "For Oma" }],
			notice: "This walk is now called For Oma.",
			problem: null,
		});
		expect(session.screen()?.title).toBe("For Oma");
	});

	test("are copied, removed, and brought back", () => {
		const file = keep("walk-1.json", { name: "For Oma" });
		const session = tell(start(), ...at(file), { type: "copy-walk" });
		expect(files()).toEqual(["walk-1.json", "walk-2026-11-28.json"]);
		expect(session.state().notice).toContain("Copied: For Oma (copy).");
		tell(session, { type: "remove-walk" });
		expect(files()).toEqual(["walk-1.json.removed-1", "walk-2026-11-28.json"]);
		expect(session.state()).toMatchObject({ place: { at: "saved-walks" }, canBringBack: true });
		expect(session.state().saved.map(({ name }) => name)).toEqual(["For Oma (copy)"]);
		tell(session, { type: "bring-walk-back" });
		expect(files()).toEqual(["walk-1.json", "walk-2026-11-28.json"]);
		expect(session.state()).toMatchObject({ canBringBack: false });
		expect(session.state().saved).toHaveLength(2);
	});

	test("open in another window are neither removed nor named, and one is told", () => {
		const file = keep("walk-1.json");
		writeFileSync(`${file}.lock`, String(process.ppid));
		const session = tell(start(), ...at(file), { type: "remove-walk" });
		expect(session.state().problem).toContain(`open in another window (process ${process.ppid})`);
		expect(session.state().canBringBack).toBe(false);
		tell(session, ...at(file), { type: "name-walk", file }, typed("Mine"));
		expect(session.state().problem).toContain("open in another window");
		expect(files()).toEqual(["walk-1.json"]);
		expect(read(file)).not.toHaveProperty("name");
	});

	test("the walk one is in is named in its own file, and cannot be removed", () => {
		const file = keep("walk-1.json");
		const session = tell(start("--answers", file), { type: "menu" }, { type: "name-walk" }, typed("For Oma"));
		expect(read(file).name).toBe("For Oma");
		tell(session, ...at(file), { type: "remove-walk" });
		expect(session.state().problem).toContain("You are in this walk now, so it was not removed.");
		tell(session, ...at(file), { type: "name-walk", file }, typed("For Opa"));
		expect(session.state()).toMatchObject({ name: "For Opa", notice: "This walk is now called For Opa." });
		tell(session, ...quietAnswer);
		expect(read(file)).toMatchObject({ name: "For Opa", answers: { "about/quiet": { status: "not-sure" } } });
		expect(existsSync(`${file}.lock`)).toBe(true);
	});

	test("a friend's file comes in as a copy, and the file stays as it is", () => {
		const given = path("mia's file.json");
		writeFileSync(given, JSON.stringify({ ...walkOf("first-guess"), name: "Mia" }));
		const text = readFileSync(given, "utf8");
		const session = tell(start(), { type: "saved-walks" }, { type: "take-walk" }, typed(given));
		expect(session.state().saved).toMatchObject([{ file: join(walks, "walk-2026-11-28.json"), name: "Mia" }]);
		tell(session, { type: "open", file: join(walks, "walk-2026-11-28.json") }, ...quietAnswer);
		expect(readFileSync(given, "utf8")).toBe(text);
		expect(session.state().name).toBe("Mia");
	});

	test("a path that leads nowhere is told, with nothing kept", () => {
		const session = tell(start(), { type: "saved-walks" }, { type: "take-walk" }, typed(path("nowhere.json")));
		expect(session.state().problem).toContain("nowhere.json");
		expect(files()).toEqual([]);
	});
});

describe("a newer program's walk", () => {
	test("is told at the start and left as it is", () => {
		const file = keep("walk-1.json", { schema: "boardwalk/answers@3" });
		const session = start();
		expect(session.state()).toMatchObject({
			saved: [],
			notice: `A newer boardwalk wrote this walk, so it is left as it is: ${file}`,
		});
		expect(read(file).schema).toBe("boardwalk/answers@3");
		tell(session, { type: "open", file });
		expect(session.state().notice).toMatch(/written by a newer boardwalk .*Nothing was changed\./);
		expect(read(file).schema).toBe("boardwalk/answers@3");
	});

	test("named with --answers ends the start with 65, and is not touched", () => {
		const file = keep("walk-1.json", { schema: "boardwalk/answers@3" });
		const text = readFileSync(file, "utf8");
		expect(() => start("--answers", file)).toThrow(expect.objectContaining({ code: 65 }));
		expect(readFileSync(file, "utf8")).toBe(text);
		expect(files()).toEqual(["walk-1.json"]);
	});
});

describe("an older program's walk", () => {
	test("goes on where it left off, and is written in today's form", () => {
		const file = keep("walk-1.json", { schema: "boardwalk/answers@1" });
		tell(start("--answers", file), ...quietAnswer);
		const { answers, ...rest } = walkOf("quiet-desk");
		expect(read(file)).toEqual({
			...rest,
			asOf: today,
			answers: { ...answers, "about/quiet": { status: "not-sure", by: "builder" } },
		});
	});
});

describe("a sheet", () => {
	const sheets = () => [
		["sheet.html", `<!doctype html><title>x</title>${answersTemplate(walkOf("quiet-desk"))}`],
		["sheet.json", JSON.stringify({ schema: "boardwalk/sheet@1", answersFile: walkOf("quiet-desk") })],
	];

	test("is opened as a walk, which goes on in a new file, and says so", () => {
		for (const [name = "", text = ""] of sheets()) {
			const sheet = path(name);
			writeFileSync(sheet, text);
			const session = start("--answers", sheet);
			expect(session.state().notice).toContain("This walk comes out of a sheet.");
			expect(session.state().answers["about/quiet"]?.value).toBe("a-lot");
			tell(session, ...quietAnswer).close();
			expect(readFileSync(sheet, "utf8")).toBe(text);
			expect(existsSync(`${sheet}.lock`)).toBe(false);
			const [kept = ""] = files();
			expect(read(join(walks, kept)).answers["about/quiet"].status).toBe("not-sure");
			expect(session.farewell()).toContain(join(walks, kept));
			rmSync(walks, { recursive: true });
		}
	});
});
