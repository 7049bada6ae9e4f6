import { existsSync, readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { sessionsAtHome, tell } from "./sessions-at-home.ts";

const { path, start } = sessionsAtHome("2026-11-28");
const example: WalkEvent = { type: "look-at-example" };

describe("the made-up person's walk", () => {
	test("is one choice of the first screen, and shows a shortlist at once", () => {
		const session = start();
		const choice = session.screen()?.choices.find(({ event }) => event.type === "look-at-example");
		expect(choice?.label).toContain("made-up person");
		tell(session, example);
		expect(session.screen()).toMatchObject({ id: "shortlist", place: "Example: nothing is kept" });
		expect(session.state().notice).toContain("nothing is kept here");
	});

	test("can be changed in every way, and nothing reaches the disk", () => {
		const session = tell(start(), example);
		const before = session.screen();
		tell(
			session,
			{ type: "change", questionId: "about/budget" },
			{ type: "answer", value: { minor: 9_000, currency: "EUR" } },
			{ type: "shortlist" },
			{ type: "new-part", kind: "board" },
			{ type: "keep" },
			{ type: "name-walk" },
			{ type: "text", text: "Mine" },
			{ type: "leave" },
		);
		expect(before?.id).toBe("shortlist");
		expect(session.screen()).toBeNull();
		expect(existsSync(path(".local")) ? readdirSync(path(".local"), { recursive: true }) : []).toEqual([]);
	});

	test("an answer given in it changes its own shortlist", () => {
		const session = tell(start(), example);
		const left = () => session.screen()?.body[0];
		const before = left();
		tell(
			session,
			{ type: "change", questionId: "about/budget" },
			{ type: "answer", value: { minor: 9_000, currency: "EUR" } },
			{ type: "shortlist" },
		);
		expect(left()).not.toEqual(before);
	});

	test.each<WalkEvent>([{ type: "leave-example" }, { type: "back" }])(
		"$type leads back to the own walk as it was",
		(way) => {
			const session = tell(start(), { type: "next" }, { type: "not-sure" }, { type: "menu" });
			const own = session.state();
			tell(session, example, way);
			expect(session.state()).toMatchObject({ answers: own.answers, place: own.place, isExample: false });
			expect(session.state().notice).toBe("You are back in your own walk.");
			tell(session, { type: "back" }, { type: "not-sure" });
			expect(Object.keys(session.state().answers).length).toBe(Object.keys(own.answers).length + 1);
			expect(existsSync(path(".local", "state", "boardwalk", "walks"))).toBe(true);
		},
	);

	test("leaving the program out of it is leaving before a shortlist, and prints no result", () => {
		const session = tell(start(), example, { type: "leave" });
		expect(session.exitCode()).toBe(1);
		expect(session.result(78)).toBe("");
		expect(session.farewell()).toBe("");
	});

	test("another walk can be opened out of it, which is then kept as ever", () => {
		const first = tell(start(), { type: "next" }, { type: "not-sure" }, { type: "leave" });
		expect(first.farewell()).toContain("Your answers are kept");
		first.close();
		const session = start();
		const [kept] = session.state().saved;
		if (!kept) throw new Error("no walk was kept");
		tell(session, example, { type: "open", file: kept.file });
		expect(session.state()).toMatchObject({ isExample: false });
		expect(Object.keys(session.state().answers)).toHaveLength(1);
	});

	test("is not looked at twice, and there is nothing to leave outside of it", () => {
		const session = tell(start(), example);
		const before = session.state().answers;
		tell(session, { type: "change", questionId: "about/budget" }, { type: "not-sure" }, example);
		expect(session.state().answers).not.toEqual(before);
		const own = tell(start(), { type: "leave-example" });
		expect(own.screen()?.id).toBe("start");
	});
});
