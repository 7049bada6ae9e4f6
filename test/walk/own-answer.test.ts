import { describe, expect, test } from "vitest";
import type { Answer, AnswerValue } from "../../src/parts/answers-file.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import type { Place } from "../../src/walk/walk-state.ts";
import { contextOf } from "../questions/made-up-question.ts";
import { screenAt } from "../screens/screen-words.ts";
import { deepFreeze, walkAt, walkThrough } from "./walk-in-demo.ts";

const context = deepFreeze(
	contextOf({
		processors: ["one", "two"].map((id) => ({ id, name: `Number ${id}` })),
		cases: [{ id: "bandbox", name: "Bandbox" }],
	}),
);
const at = (id: string): Place => ({ at: "question", id });
const given = (value: AnswerValue): Answer => ({ status: "answered", value, by: "builder" });
const answers = {
	"fit/processor": { status: "not-sure" } as const,
	"fit/case": given({ part: "bandbox" }),
	"fit/bought": given(["case"]),
	"fit/returnable": given(["case"]),
};

// Each of these sets what it asks for, and by that makes its own asking needless.
describe.each<[string, WalkEvent, Place]>([
	// The case is answered already, so that its front comes next.
	["fit/candidates", { type: "mark", value: "one", by: 1 }, at("fit/case-front")],
	["fit/case-front", { type: "answer", value: "mesh" }, at("fit/front-plugs")],
	["fit/front-plugs", { type: "mark", value: "sound", by: 1 }, at("fit/graphics-card")],
	["fit/return-until", { type: "answer", value: "2026-11-01" }, { at: "tier-end", tier: "fit" }],
])("%s is not taken away by its own answer", (id, event, following) => {
	const before = walkAt(at(id), { answers });
	const answered = walkThrough(event.type === "mark" ? [event, { type: "next" }] : [event], before, context).state;

	test("what comes after it comes next, and what was before is gone back to", () => {
		expect(answered.place).toEqual(following);
		const there = { ...answered, place: at(id) };
		const back = walkThrough([{ type: "back" }], there, context).state.place;
		expect(back).toEqual(walkThrough([{ type: "back" }], before, context).state.place);
		expect(back.at).toBe("question");
	});

	test("it keeps its place in the tier, and its answer stands in the review", () => {
		const there = { ...answered, place: at(id) };
		expect(screenAt(context, there).place).toBe(screenAt(context, before).place);
		const changes = screenAt(context, there, { at: "review" }).choices.map(({ event: chosen }) => chosen);
		expect(changes).toContainEqual({ type: "change", questionId: id });
	});

	test("nothing is said to be no longer asked, however often it is answered", () => {
		const again = walkThrough([event], { ...answered, place: at(id) }, context).state;
		expect([answered.notice, again.notice]).toEqual([null, null]);
	});
});

test("one candidate of two taken away is no reason to say that candidates are no longer asked", () => {
	const before = walkAt(at("fit/candidates"), { answers: { ...answers, "fit/candidates": given(["one", "two"]) } });
	const { state } = walkThrough([{ type: "mark", value: "two", by: -1 }], before, context);
	expect(state.answers["fit/candidates"]?.value).toEqual(["one"]);
	expect(state.notice).toBeNull();
});
