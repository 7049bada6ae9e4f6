import { describe, expect, test } from "vitest";
import { screenOf } from "../../src/screens/screen-of.ts";
import type { WalkState } from "../../src/walk/walk-state.ts";
import { demo, quietAnswers, scenarios, walkDone, walkThrough } from "../walk/walk-in-demo.ts";
import { blockTexts, listsOf } from "./screen-words.ts";

const eur = (units: number) => ({ minor: units * 100, currency: "EUR" });
const place = { at: "shortlist" } as const;
const screenAt = (state: WalkState) => {
	const screen = screenOf(demo, { ...state, place });
	if (!screen) throw new Error("the walk was left");
	return screen;
};

const poor = walkDone({ ...quietAnswers, "about/budget": eur(50) });
const handedDown = scenarios.find(({ name }) => name === "handed-down")?.state;

describe("nothing fits", () => {
	test("what to change stands with the sum, and what comes back; then what cannot go together", () => {
		const screen = screenAt(poor);
		const [ways = [], conflicts = []] = listsOf(screen.body);
		expect(ways[0]).toMatch(/^EUR [\d.]+ more for the board: EUR [\d.]+ instead of EUR 50\.00\. (Then|For) 1 board/);
		expect(conflicts).toEqual(["No board here goes with this: your price limit of EUR 50.00."]);
	});

	test("each way that can be taken is a line, before all others", () => {
		const { choices } = screenAt(poor);
		expect(choices[0]?.label).toMatch(/^Let the board cost EUR [\d.]+$/);
		expect(choices[0]?.event).toMatchObject({ type: "way-out", changes: [{ questionId: "about/budget" }] });
		expect(choices.findLastIndex(({ event }) => event.type === "way-out")).toBeLessThan(
			choices.findIndex(({ event }) => event.type !== "way-out"),
		);
	});

	test("once it is taken, the shortlist has what was promised", () => {
		const [choice] = screenAt(poor).choices;
		if (!choice) throw new Error("no line");
		const taken = walkThrough([choice.event], { ...poor, place }).state;
		const screen = screenAt(taken);
		expect(screen.title).toBe("Your shortlist");
		const names = screen.choices.flatMap(({ event }) => (event.type === "board" ? [event.boardId] : []));
		expect(names).toHaveLength(1);
		const name = demo.market.parts.board.find(({ id }) => id === names[0])?.name;
		expect(choice.detail).toContain(name);
	});

	test("handed-down parts: two conflicts that read alike stand once, and no id is shown", () => {
		if (!handedDown) throw new Error("no such person");
		const screen = screenAt(handedDown);
		const [, conflicts = []] = listsOf(screen.body);
		expect(new Set(conflicts).size).toBe(conflicts.length);
		expect(conflicts.length).toBeGreaterThan(0);
		expect(screen.body.flatMap(blockTexts).join("\n")).not.toMatch(/\b(fit|features|about)\//);
	});
});
