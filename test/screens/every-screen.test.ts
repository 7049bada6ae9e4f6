import { describe, expect, test } from "vitest";
import type { Screen } from "../../src/screens/screen.ts";
import { partsDisagree } from "../../src/walk/places.ts";
import { factsToDescribe } from "../../src/walk/update.ts";
import { type Place, startWalk, type WalkState } from "../../src/walk/walk-state.ts";
import { coachedWalks } from "../walk/coached-walks.ts";
import { demo, emptyMarket, quietAnswers, scenarios, walkThrough, walkWith } from "../walk/walk-in-demo.ts";
import { changedForms, emptyForms, pageRead } from "../walk/walks-with-forms.ts";
import { everyPlace, screenAt, suggestionPlaces, textsOf } from "./screen-words.ts";

/** Everything left open: no rule binds any board, so that there is next to nothing to look for. */
const allOpen = walkWith({
	"about/budget": "no-limit",
	"fit/case": "open",
	"fit/graphics-card": "open",
	"fit/memory": "open",
	"fit/supply": "open",
	"features/wireless": "dont-mind",
	"features/rear-usb-c": "dont-mind",
	"features/rear-devices": 0,
	"features/spare-sockets": "not-at-all",
	"quality/stage-load": "not-at-all",
	"quality/rescue": "not-at-all",
});

/** A board of one's own of which its page tells nothing. */
const bareBoard: WalkState = {
	...walkWith(quietAnswers),
	ownParts: [{ kind: "board", part: { id: "my-board", name: "my board" } }],
};

const states: readonly { readonly name: string; readonly state: WalkState }[] = [
	{ name: "nobody yet", state: startWalk() },
	{ name: "someone who leaves all open", state: allOpen },
	{ name: "someone with a board of which nothing is known", state: bareBoard },
	{ name: "someone with a page read", state: pageRead },
	...emptyForms,
	...changedForms,
	...scenarios,
];

/** Screens of states nobody can get into say nothing of value: parts that agree are not said to disagree. */
function screensOf(context: typeof demo, state: WalkState): readonly { place: Place; screen: Screen }[] {
	return everyPlace(context, state)
		.filter(({ at }) => at !== "parts-disagree" || partsDisagree(context, state))
		.map((place) => ({ place, screen: screenAt(context, state, place) }));
}

/** Faults in the words of a screen, with the words. */
function slipsOf(screen: Screen): readonly string[] {
	const { body, side, help, sources, choices, enter } = screen;
	const blocks = [...body, ...side, ...help, ...sources];
	const labels = choices.map(({ label }) => label);
	return [
		...textsOf(screen).filter((words) =>
			/undefined|NaN|\[object|\bnull\b| {2}|\n|^\s|\s$|^$|\.\.$| [.,:;](?!\w)/.test(words),
		),
		...blocks.filter((block) => block.kind === "list" && block.items.length === 0).map(() => "a list of nothing"),
		...blocks.filter((block) => block.kind === "pairs" && block.pairs.length === 0).map(() => "pairs of nothing"),
		...labels.filter((label, index) => labels.indexOf(label) !== index).map((label) => `twice: ${label}`),
		...(choices.length === 0 && enter === null ? ["no way on"] : []),
	];
}

describe.each([
	["the demonstration", demo],
	["a market without any part", emptyMarket],
] as const)("in %s", (_, context) => {
	test.each(states)("every screen of $name has sound words and a way on", ({ state }) => {
		const slips = screensOf(context, state).flatMap(({ place, screen }) =>
			slipsOf(screen).map((slip) => `${JSON.stringify(place)}: ${slip}`),
		);
		expect(slips).toEqual([]);
	});
});

test.each(coachedWalks)("every screen of $name about what is suggested has sound words and a way on", ({ state }) => {
	const others = (["start", "menu", "review", "shortlist"] as const).map((at): Place => ({ at }));
	for (const context of [demo, emptyMarket]) {
		const slips = [...suggestionPlaces(state), ...others].flatMap((place) =>
			slipsOf(screenAt(context, state, place)).map((slip) => `${JSON.stringify(place)}: ${slip}`),
		);
		expect(slips).toEqual([]);
	}
});

test("no two places share an id, so that a face can tell screens apart", () => {
	const ids = screensOf(demo, walkWith(quietAnswers))
		// A processor is described in the same words, whichever question it answers.
		.filter(({ place }) => place.at !== "describe" || place.questionId !== "fit/candidates")
		.map(({ screen }) => screen.id);
	expect(new Set(ids).size).toBe(ids.length);
});

test("a title is a short line", () => {
	for (const { screen } of screensOf(demo, startWalk())) {
		expect(screen.title.length, screen.title).toBeLessThanOrEqual(78);
		expect(screen.title, screen.title).toMatch(/[\p{L}\p{N})?]$/u);
	}
});

test("what every choice asks for makes sense where it stands: each leads on, or says what is to be done", () => {
	const state = walkWith(quietAnswers);
	for (const { place, screen } of screensOf(demo, state))
		for (const { label, event } of [
			...screen.choices,
			...(screen.enter ? [{ label: "Enter", event: screen.enter.event }] : []),
		]) {
			const before = { ...state, place };
			const after = walkThrough([event], before);
			const said = `${JSON.stringify(place)} ${label}`;
			expect(after.state.problem, said).toBeNull();
			expect(after.effects.length > 0 || after.state.place !== before.place, said).toBe(true);
		}
});

test("a fact typed in is asked with where to find it, and can be left out", () => {
	const state = walkWith(quietAnswers);
	for (const { place, screen } of screensOf(demo, state).filter(({ place: { at } }) => at === "describe")) {
		if (place.at !== "describe") continue;
		const facts = factsToDescribe(demo, { ...state, place });
		expect(screen.place).toMatch(new RegExp(`, fact ${place.index + 1} of ${facts.length}$`));
		expect(screen.body[0]).toMatchObject({ kind: "text", text: expect.stringMatching(/^Where to find it: \S/) });
		expect(screen.choices.filter(({ event }) => event.type === "not-on-page")).toHaveLength(1);
		expect(screen.choices.at(-1)?.event.type).toBe("not-on-page");
	}
});
