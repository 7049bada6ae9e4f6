import { describe, expect, test } from "vitest";
import type { Place } from "../../src/walk/walk-state.ts";
import { builders, inHandsOf, withSuggestions } from "../walk/coached-walks.ts";
import { demo } from "../walk/walk-in-demo.ts";
import { screenAt, textsOf } from "./screen-words.ts";

const ida = inHandsOf("Ida", withSuggestions);
const wordsAt = (place: Place, state = ida) => textsOf(screenAt(demo, state, place)).join("\n");
const labelsAt = (place: Place, state = ida) => screenAt(demo, state, place).choices.map(({ label }) => label);

describe("the helper's page", () => {
	test("shows what is open by its effect, the first to be answered at once", () => {
		const screen = screenAt(demo, ida, { at: "coach" });
		expect(screen.place).toBe("Helping, as Ida");
		expect(screen.choices[0]?.label).toMatch(/^Answer: /);
		expect(wordsAt({ at: "coach" })).toMatch(/Open, by what it could change\n.*: It decides whether /);
	});

	test("shows where two copies differ, with both answers and who gave them", () => {
		expect(wordsAt({ at: "coach" })).toMatch(/Case: Larkspur Wardrobe \(by the builder\); .* \(by Ida\)\./);
		expect(labelsAt({ at: "coach" })).toContain("Look at both answers: Case");
	});

	test("shows what they suggest, and leads to what others have answered", () => {
		expect(wordsAt({ at: "coach" })).toMatch(/You suggest\nMost the board may cost: .*150/);
		const answered = Object.values(ida.answers).filter(({ status }) => status === "answered").length;
		expect(labelsAt({ at: "coach" })).toContain(`All answers: ${answered}`);
	});

	test("shows what became of their suggestions once the builder has decided, and not of anybody else's", () => {
		const words = wordsAt({ at: "coach" });
		expect(words).toMatch(
			/What became of your suggestions\n.*, 5: taken\.\n.*a little: left, so the answer stays as it was\./i,
		);
		expect(wordsAt({ at: "coach" }, inHandsOf("Joe", withSuggestions))).not.toContain("What became of");
		expect(wordsAt({ at: "coach" }, inHandsOf("Ida"))).not.toContain("What became of");
	});

	test("has its own place line on the page of all answers too", () => {
		expect(screenAt(demo, ida, { at: "review" }).place).toBe("Helping, as Ida");
		expect(screenAt(demo, builders, { at: "review" }).place).not.toContain("Helping");
	});

	test("asks nobody how the builder walks", () => {
		const fresh = inHandsOf("Ida", { ...builders, answers: {} });
		expect(wordsAt({ at: "coach" }, fresh)).not.toContain("Length of the walk");
	});
});

describe("a question in a helper's hands", () => {
	test("says what stands there, by whom, and whether an answer counts at once", () => {
		const at = (id: string): Place => ({ at: "coach-question", id, tried: null });
		expect(wordsAt(at("fit/supply"))).toContain("What you answer counts at once, with your name.");
		expect(wordsAt(at("features/rear-usb-c"))).toMatch(/So far: .* \(by the builder\)\./);
		expect(wordsAt(at("features/rear-usb-c"))).toContain("What you answer is a suggestion.");
		expect(labelsAt(at("features/rear-usb-c"))).toContain("Take my suggestion back");
		expect(labelsAt(at("fit/supply"))).not.toContain("Take my suggestion back");
	});

	test("asks why, and says what it would change", () => {
		const words = wordsAt({
			at: "coach-why",
			id: "about/budget",
			tried: { status: "answered", value: { minor: 15_000, currency: "EUR" } },
		});
		expect(words).toMatch(/Most the board may cost: .*150.* instead of .*200/);
		expect(words).toMatch(/boards would be left/);
	});
});

describe("what the builder sees", () => {
	test("at the start and in the menu: who suggests how many things", () => {
		for (const at of ["start", "suggestions"] as const) {
			const words = wordsAt({ at }, withSuggestions);
			expect(words).toContain("Ida and Uncle Joe suggest 3 things: look at them.");
			expect(words).toContain("Two copies of this walk differ in one answer.");
		}
		for (const at of ["start", "menu"] as const)
			expect(labelsAt({ at }, withSuggestions)).toContain("Look at what others suggest: 4");
		expect(labelsAt({ at: "menu" }, builders).join()).not.toContain("suggest");
	});

	test("of one suggestion: what is answered, what is proposed, why, by whom, and what it would change", () => {
		const place: Place = { at: "suggestion", questionId: "about/budget" };
		const words = wordsAt(place, withSuggestions);
		expect(words).toMatch(/Answered so far\n.*200.* \(by you\)/);
		expect(words).toMatch(/Suggested\n.*150.* \(by Ida, 2026-11-24\)/);
		expect(words).toContain("Why\nThe rest is better spent on memory.");
		expect(words).toMatch(/\d+ of \d+ boards would be left/);
		expect(labelsAt(place, withSuggestions)).toEqual([
			expect.stringMatching(/^Take it: .*150/),
			"Leave it as it is",
			"Answer it anew",
			"Decide later",
		]);
	});

	test("of two copies: both answers, to pick one", () => {
		const labels = labelsAt({ at: "suggestion", questionId: "fit/case" }, withSuggestions);
		expect(labels).toEqual([
			"Take what the builder says: Larkspur Wardrobe",
			expect.stringMatching(/^Take what Ida says: /),
			"Take none of them: not sure",
			"Answer it anew",
			"Decide later",
		]);
	});

	test("what was decided, and how to decide otherwise", () => {
		const words = wordsAt({ at: "suggestions", page: "decided" }, withSuggestions);
		expect(words).toMatch(/Decided: .*, by Ida: left\./);
		expect(words).toMatch(/Decided: .*, by Ida: taken\./);
	});

	test("in all answers: who gave which, and who would answer otherwise", () => {
		const helped = {
			...withSuggestions,
			answers: {
				...withSuggestions.answers,
				"fit/supply": { status: "answered", value: { part: "millpond-bonfire" }, by: "Ida" },
			},
		} as const;
		const details = screenAt(demo, helped, { at: "review" }).choices.map(({ label, detail }) => `${label} | ${detail}`);
		expect(details).toContain("Power supply: Millpond Bonfire | Fit; by Ida");
		expect(details.find((line) => line.startsWith("Most the board"))).toMatch(/; Ida suggests: .*150/);
	});

	test("cannot be led to take a suggestion of which nothing is known here", () => {
		const odd = {
			...builders,
			suggestions: withSuggestions.suggestions.map((one) => ({ ...one, questionId: "no/question" })),
		};
		expect(wordsAt({ at: "suggestion", questionId: "no/question" }, odd)).toContain("does not know");
	});
});
