import { expect, test } from "vitest";
import { faceFor, pressKey } from "../../src/screens/face.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { demo, walkAt } from "../walk/walk-in-demo.ts";
import { screenAt } from "./screen-words.ts";

/** Events of a word typed letter by letter on a screen. */
function typedOn(screen: ReturnType<typeof screenAt>, word: string): readonly WalkEvent[] {
	let face = faceFor(screen);
	return [...word].flatMap((letter) => {
		const pressed = pressKey(screen, face, { name: "text", text: letter }, { textRows: 10, lastScroll: 0 });
		face = pressed.face;
		return pressed.event ? [pressed.event] : [];
	});
}

test("a word typed into a list of answers leads nowhere, least of all out of the walk", () => {
	for (const id of ["about/summer-room", "about/activities", "features/raise-clock"])
		expect(typedOn(screenAt(demo, walkAt({ at: "question", id })), "a brick, quite warm")).toEqual([]);
	const described = walkAt({ at: "describe", kind: "drive", questionId: "fit/drives", index: 1 });
	expect(typedOn(screenAt(demo, described), "flat brick, quarter")).toEqual([]);
});

test("where nothing is asked, r shows all answers and q leaves", () => {
	const end = screenAt(demo, walkAt({ at: "tier-end", tier: "fit" }));
	expect(typedOn(end, "rq")).toEqual([{ type: "review" }, { type: "leave" }]);
});
