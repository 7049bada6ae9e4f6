import { describe, expect, test } from "vitest";
import { cleanLine } from "../../src/parts/clean-text.ts";
import { type ScreenSize, smallest } from "../../src/screens/arrange.ts";
import { type Face, faceFor } from "../../src/screens/face.ts";
import { withWordsMarked } from "../../src/screens/marked-words.ts";
import type { Screen } from "../../src/screens/screen.ts";
import type { Place, WalkState } from "../../src/walk/walk-state.ts";
import { demo, scenarios } from "../walk/walk-in-demo.ts";
import { frameSlips } from "./frame-slips.ts";
import { hardNamesBySort, walkWithNames } from "./hard-names.ts";
import { everyPlace, screenAt } from "./screen-words.ts";

/** The smallest, the narrowest with something beside the question, the usual one, and up to very large ones. */
const sizes: readonly ScreenSize[] = [
	smallest,
	{ columns: 60, rows: 20 },
	{ columns: 76, rows: 24 },
	{ columns: 80, rows: 24 },
	{ columns: 100, rows: 30 },
	{ columns: 120, rows: 40 },
	{ columns: 200, rows: 60 },
];
/** Sizes at which what is wide has least room, and where a column stands beside it. */
const tightSizes = [smallest, { columns: 76, rows: 24 }, { columns: 120, rows: 40 }] as const;

function screensOf(state: WalkState, wanted: (place: Place) => boolean = () => true): readonly Screen[] {
	const places = everyPlace(demo, state).filter(({ at }) => at !== "parts-disagree");
	// As it is drawn.
	return places.filter(wanted).map((place) => withWordsMarked(screenAt(demo, state, place)));
}

/** Fresh, the last line marked, help open, the words explained. */
function facesOf(screen: Screen): readonly (readonly [string, Face])[] {
	const fresh = faceFor(screen);
	return [
		["fresh", fresh],
		["last line", { ...fresh, row: Math.max(0, screen.choices.length - 1) }],
		["help", { ...fresh, helpOpen: true }],
		["words", { ...fresh, wordsOpen: true }],
	];
}

function slipsAt(screens: readonly Screen[], allSizes: readonly ScreenSize[]): readonly string[] {
	return screens.flatMap((screen) =>
		allSizes.flatMap((size) =>
			facesOf(screen).flatMap(([face, state]) =>
				frameSlips(screen, state, size).map((slip) => `${screen.id} ${size.columns}x${size.rows} ${face}: ${slip}`),
			),
		),
	);
}

const people = scenarios.filter(({ name }) => /quiet|workbench/.test(name));

test("two people are looked at", () => {
	expect(people).toHaveLength(2);
});

test.each(people)(
	"every place of $name fits at every size, with marked line, cursor and keys in sight",
	({ state }) => {
		const screens = screensOf(state);
		expect(screens.length).toBeGreaterThan(200);
		expect(slipsAt(screens, sizes).slice(0, 10)).toEqual([]);
	},
);

test("no place of theirs has a sign outside ASCII, in words, pictures, help or sources", () => {
	const screens = people.flatMap(({ state }) => screensOf({ ...state, showsSources: true }));
	const pictured = screens.filter(({ body }) => body.some(({ kind }) => kind === "picture"));
	// Plans and gauges of boards, and the price line.
	expect(pictured.map(({ id }) => id.split(":")[0])).toEqual(
		expect.arrayContaining(["board-plan", "board-power", "price-line"]),
	);
	const odd = screens.flatMap((screen) => {
		// The sheet may hold a letter to a shop in German, which goes on paper or into a message.
		const own = screen.id === "sheet-page" ? /[^ -~äöüÄÖÜß]/ : /[^ -~]/;
		const signs = JSON.stringify(screen).match(new RegExp(`.{0,30}${own.source}.{0,30}`, "g")) ?? [];
		return signs.map((words) => `${screen.id}: ${words}`);
	});
	expect(odd.slice(0, 10)).toEqual([]);
});

describe("names that are hard to lay out, of parts and walks", () => {
	const isNamed = (place: Place) =>
		!["describe", "they-answered", "fact-form", "tier-end", "settings", "take-walk"].includes(place.at) &&
		(!("boardId" in place) || place.boardId === "own-board");
	test.each(Object.entries(hardNamesBySort))("%s push nothing out of its place", (_, name) => {
		const screens = screensOf(walkWithNames(name, demo), isNamed);
		expect(JSON.stringify(screens).split(JSON.stringify(cleanLine(name)).slice(1, 8)).length).toBeGreaterThan(10);
		expect(JSON.stringify(screens)).not.toMatch(/[\u200e\u200f\u202a-\u202e\u2066-\u2069]/);
		expect(slipsAt(screens, tightSizes).slice(0, 10)).toEqual([]);
	});
});
