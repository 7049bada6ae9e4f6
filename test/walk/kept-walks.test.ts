import { describe, expect, test } from "vitest";
import { screenOf } from "../../src/screens/screen-of.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { startWalk, type WalkState } from "../../src/walk/walk-state.ts";
import { demo, quietAnswers, walkThrough, walkWith } from "./walk-in-demo.ts";

const saved = [
	{ file: "/kept/b.json", name: "For Oma", words: "7 of 12 answered, yesterday" },
	{ file: "/kept/a.json", name: null, words: "2 of 12 answered, 3 days ago" },
];
const from: WalkState = { ...startWalk(), saved };
const saveds: WalkEvent = { type: "saved-walks" };
const one: WalkEvent = { type: "kept-walk", file: "/kept/b.json" };
const typed = (text: string): WalkEvent => ({ type: "text", text });
const labels = (state: WalkState) => screenOf(demo, state)?.choices.map(({ label }) => label) ?? [];

describe("the list of walks", () => {
	test("names each by its name first, and a line opens its page", () => {
		const { state } = walkThrough([saveds], from);
		expect(labels(state).slice(0, 2)).toEqual(["For Oma: 7 of 12 answered, yesterday", "2 of 12 answered, 3 days ago"]);
		const page = walkThrough([one], state).state;
		expect(screenOf(demo, page)?.title).toBe("For Oma");
		expect(labels(page)).toEqual(["Go on with it", "Change its name", "Copy it", "Remove it", "Back to your walks"]);
		expect(walkThrough([{ type: "back" }], page).state.place).toEqual({ at: "saved-walks" });
	});

	test("of a walk that is gone says so, and leads back", () => {
		const { state } = walkThrough([saveds, { type: "kept-walk", file: "/kept/gone.json" }], from);
		expect(screenOf(demo, state)?.title).toBe("This walk is not here any more");
		expect(walkThrough([{ type: "back" }], state).state.place).toEqual({ at: "saved-walks" });
	});

	test("at the start tells the newest by its name", () => {
		expect(labels(from)[0]).toBe("Go on with my walk: For Oma: 7 of 12 answered, yesterday");
	});
});

describe("what is done with one walk", () => {
	test.each<[string, WalkEvent, object]>([
		["copied", { type: "copy-walk" }, { does: "copy", file: "/kept/b.json" }],
		["removed", { type: "remove-walk" }, { does: "remove", file: "/kept/b.json" }],
	])("it is %s by the outside, which has the last word", (_, event, change) => {
		const { state, effects } = walkThrough([saveds, one, event], from);
		expect(effects).toEqual([{ type: "change-walks", change }]);
		expect(state.saved).toEqual(saved);
		// Nowhere else is there a walk it could be about.
		expect(walkThrough([saveds, event], from).effects).toEqual([]);
	});

	test("what became of it is told, and a removal can be undone from the list", () => {
		const { state } = walkThrough(
			[
				saveds,
				one,
				{ type: "remove-walk" },
				{ type: "walks-changed", saved: saved.slice(1), canBringBack: true, words: "Removed: For Oma." },
			],
			from,
		);
		expect(state).toMatchObject({ place: { at: "saved-walks" }, notice: "Removed: For Oma." });
		expect(labels(state)).toContain("Bring back the walk removed last");
		expect(walkThrough([{ type: "bring-walk-back" }], state).effects).toEqual([
			{ type: "change-walks", change: { does: "bring-back" } },
		]);
		expect(labels(walkThrough([saveds], from).state)).not.toContain("Bring back the walk removed last");
	});

	test("a name that is typed is cleaned, and taken for that walk", () => {
		const { state, effects } = walkThrough(
			[saveds, one, { type: "name-walk", file: "/kept/b.json" }, typed("  For\t\u202eOma\u001b]0;x\u0007 2 ")],
			from,
		);
		expect(effects).toEqual([
			{ type: "change-walks", change: { does: "name", file: "/kept/b.json", name: "For Oma 2" } },
		]);
		expect(state.place).toEqual({ at: "kept-walk", file: "/kept/b.json" });
	});

	test.each([
		["nothing", " \u200b ", "Type a name, such as for whom the computer is."],
		["too much", "a".repeat(81), "A name has at most 80 letters; this one has 81."],
	])("a name of %s is refused, and one stays there", (_, text, problem) => {
		const { state, effects } = walkThrough([{ type: "name-walk", file: "/kept/b.json" }, typed(text)], from);
		expect({ problem: state.problem, at: state.place.at, effects }).toEqual({ problem, at: "name-walk", effects: [] });
	});

	test.each(["CON", "../../etc/passwd", "\u6f22".repeat(80), "nul.json", "-rf", 'Mia\'s "PC" <b>'])(
		"any name is only a name: %s",
		(name) => {
			const { effects } = walkThrough([{ type: "name-walk", file: "/kept/a.json" }, typed(name)], from);
			expect(effects).toEqual([{ type: "change-walks", change: { does: "name", file: "/kept/a.json", name } }]);
		},
	);
});

describe("the walk one is in", () => {
	test("gets a name from the menu, and is kept with it", () => {
		const at: WalkState = { ...walkWith(quietAnswers), place: { at: "shortlist" } };
		const { state, effects } = walkThrough([{ type: "menu" }, { type: "name-walk" }, typed("For Oma")], at);
		expect(state).toMatchObject({
			name: "For Oma",
			place: { at: "shortlist" },
			notice: "This walk is now called For Oma.",
		});
		expect(effects).toEqual([{ type: "save" }]);
		expect(labels(walkThrough([{ type: "menu" }], state).state)).toContain("Name of this walk: For Oma");
	});
});

test("a friend's file is named by its path, and taken in by the outside", () => {
	const { state, effects } = walkThrough([saveds, { type: "take-walk" }, typed(" mia's walk.json ")], from);
	expect(effects).toEqual([{ type: "change-walks", change: { does: "take", path: "mia's walk.json" } }]);
	expect(state.place).toEqual({ at: "saved-walks" });
	const empty = walkThrough([saveds, { type: "take-walk" }, typed("  ")], from);
	expect([empty.state.place.at, empty.effects]).toEqual(["take-walk", []]);
});
