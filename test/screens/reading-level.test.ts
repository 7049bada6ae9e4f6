import { fleschKincaid } from "flesch-kincaid";
import { syllable } from "syllable";
import { describe, expect, test } from "vitest";
import { partKindNames } from "../../src/parts/part-kinds.ts";
import type { Screen } from "../../src/screens/screen.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { type Place, startWalk, type WalkState } from "../../src/walk/walk-state.ts";
import { wholeDemo } from "../choose/demo.ts";
import { coachedWalks } from "../walk/coached-walks.ts";
import { demo, scenarios } from "../walk/walk-in-demo.ts";
import { changedForms, emptyForms, pageRead } from "../walk/walks-with-forms.ts";
import { blockTexts, everyPlace, screenAt, suggestionPlaces, textsOf } from "./screen-words.ts";
import { tradeTerms } from "./trade-terms.ts";

/**
 * Reading is measured by the Flesch-Kincaid grade (Kincaid, Fishburne, Rogers and Chissom, Navy research branch report
 * 8-75, 1975; from memory, computed by the library) over the running words of a screen, help included: lines of fewer than six
 * words are left out. Names of parts, terms of the glossary and figures count as one short word each.
 */
const mostGrade = 8;
const mostWordsInSentence = 25;

const names = partKindNames
	.flatMap((kind) => wholeDemo.parts[kind] as readonly { name: string; maker?: string | undefined }[])
	.flatMap(({ name, maker }) => [name, ...(maker ? [maker] : [])]);
const sockets = [...wholeDemo.parts.platform].flatMap(({ socket, chipset }) => [socket, chipset]);
const generations = wholeDemo.parts.processor.flatMap(({ generation, series }) => [generation, series]);
const escaped = (words: string) => words.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
const shortWords = new RegExp(
	`(?<![\\w-])(?:${[...names, ...sockets, ...generations, ...tradeTerms]
		.filter((word) => word !== undefined)
		.sort((one, other) => other.length - one.length)
		.map(escaped)
		.join("|")})(?:s|es)?(?![\\w-])`,
	"gi",
);

/** Sentences of a text, with terms and figures as short words. */
function sentencesOf(text: string): readonly string[] {
	return text
		.replace(/\(?invented\)?/g, "")
		.replace(shortWords, "term")
		.replace(/\b\d[\d.,x]*(?:\s?(?:mm|cm|W|A|GB|TB|MT\/s|Gb\/s|K|C|F|V))?\b/g, "one")
		.split(/(?<=[.!?])["')]?\s+(?=["'(]?[A-Z0-9a-z])/)
		.filter((sentence) => /[a-z]/i.test(sentence));
}

const wordsOf = (sentence: string) => sentence.match(/[\p{L}\p{N}'][\p{L}\p{N}'/-]*/gu) ?? [];

/** The sheet says what a line is about in front of it, and names what is open in lists: neither is part of a sentence. */
function withoutLabel(words: string): readonly string[] {
	return words.replace(/^(?:\[ \] )?(?:[^.:;]{1,60}: ){1,2}/, "").split("; ");
}

/** Labels and short lines are read at a glance and would make any screen look easy; running words count. */
const leastWords = 6;

function gradeOf(texts: readonly string[]): number {
	const all = texts.flatMap(sentencesOf);
	const running = all.filter((sentence) => wordsOf(sentence).length >= leastWords);
	const sentences = running.length > 0 ? running : all;
	const words = sentences.flatMap(wordsOf);
	return fleschKincaid({
		sentence: sentences.length,
		word: words.length,
		syllable: words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0),
	});
}

test("the measure itself: easy words are easy, hard ones hard, a term counts as one short word", () => {
	expect(gradeOf(["The cat sat on the mat."])).toBeLessThan(1);
	expect(
		gradeOf(["Institutional considerations necessitate comprehensive documentation of compatibility."]),
	).toBeGreaterThan(15);
	expect(gradeOf(["The processor sits in it."])).toBeCloseTo(gradeOf(["The term sits in it."]), 12);
});

const states: readonly { readonly name: string; readonly state: WalkState }[] = [
	{ name: "nobody yet", state: startWalk() },
	...scenarios,
];
const withWalks: WalkState = {
	...startWalk(),
	canBringBack: true,
	saved: [
		{ file: "/kept/a.json", name: "For Oma", words: "7 of 12 answered, next comes Fit, yesterday" },
		{ file: "/kept/b.json", name: null, words: "2 of 12 answered, 3 days ago" },
	],
};
/** Of those with a form only what is about own parts is new. */
const withForms = [{ name: "a page read", state: pageRead }, ...emptyForms, ...changedForms];
const keptPlaces: readonly Place["at"][] = ["start", "saved-walks", "kept-walk", "name-walk", "take-walk"];
const ownPlaces: readonly Place["at"][] = [
	...(["own-parts", "new-part", "own-part", "read-part", "part-form"] as const),
	...(["fact-form", "doubt", "unread", "leave-form"] as const),
];

const whole = { market: wholeDemo, asOf: demo.asOf };
/** Screens that tell of many boards at once are read with all of them, and so is each board that is advised. */
const tellOfMany: readonly Place["at"][] = [
	"parts-disagree",
	"tier-end",
	"shortlist",
	"price-line",
	"find-out",
	"fell-out",
	"review",
	"sheet",
];

function screensFor(state: WalkState): readonly { place: string; screen: Screen }[] {
	const advised = viewWalk(whole, state)
		.advice()
		.shortlist.map(({ boardId }): Place => ({ at: "board", boardId }));
	const many = everyPlace(demo, state).filter(({ at }) => tellOfMany.includes(at));
	return [
		...everyPlace(demo, state).map((place) => ({ place: JSON.stringify(place), screen: screenAt(demo, state, place) })),
		...[...many, ...advised].map((place) => ({
			place: `all boards: ${JSON.stringify(place)}`,
			screen: screenAt(whole, state, place),
		})),
	];
}

function ownScreensFor(
	state: WalkState,
	places: readonly Place["at"][] = ownPlaces,
): readonly { place: string; screen: Screen }[] {
	return everyPlace(demo, state)
		.filter(({ at }) => places.includes(at))
		.map((place) => ({ place: JSON.stringify(place), screen: screenAt(demo, state, place) }));
}

function suggestionScreensFor(state: WalkState): readonly { place: string; screen: Screen }[] {
	const others = (["start", "menu", "review"] as const).map((at): Place => ({ at }));
	return [...suggestionPlaces(state), ...others].map((place) => ({
		place: JSON.stringify(place),
		screen: screenAt(demo, state, place),
	}));
}

describe.each([
	...states.map(({ name, state }) => ({ name, screens: screensFor(state) })),
	...coachedWalks
		.filter(({ state }) => !state.showsSources)
		.map(({ name, state }) => ({ name, screens: suggestionScreensFor(state) })),
	{ name: "walks kept before", screens: ownScreensFor(withWalks, keptPlaces) },
	...withForms.map(({ name, state }) => ({ name, screens: ownScreensFor(state) })),
])("$name", ({ screens }) => {
	test(`no screen reads harder than grade ${mostGrade}`, () => {
		const hard = screens.flatMap(({ place, screen }) => {
			const grade = gradeOf(textsOf(screen));
			return grade > mostGrade ? [`${grade.toFixed(1)} ${place}`] : [];
		});
		expect(hard).toEqual([]);
	});

	test(`no sentence has more than ${mostWordsInSentence} words`, () => {
		const long = screens.flatMap(({ place, screen }) =>
			textsOf(screen)
				.flatMap((words) => (screen.id === "sheet-page" ? withoutLabel(words) : [words]))
				.flatMap(sentencesOf)
				.filter((sentence) => wordsOf(sentence).length > mostWordsInSentence)
				.map((sentence) => `${wordsOf(sentence).length} ${place}: ${sentence}`),
		);
		expect([...new Set(long)]).toEqual([]);
	});
});

/** Titles of standards are as they are, so that only the length of sentences is held. */
test.each(scenarios.slice(0, 3))("numbers and sources of $name are told in short sentences", ({ state }) => {
	const shown = { ...state, showsSources: true };
	const long = everyPlace(demo, shown)
		.filter(({ at }) => !["describe", "fact-form"].includes(at))
		.flatMap((place) =>
			screenAt(demo, shown, place)
				.sources.flatMap(blockTexts)
				.flatMap(sentencesOf)
				.filter((sentence) => wordsOf(sentence).length > mostWordsInSentence)
				.map((sentence) => `${wordsOf(sentence).length} ${JSON.stringify(place)}: ${sentence}`),
		);
	expect([...new Set(long)]).toEqual([]);
});
