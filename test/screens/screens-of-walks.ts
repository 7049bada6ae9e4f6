import beforeAnyBoard from "../../data/scenarios/before-any-board.json" with { type: "json" };
import firstGuess from "../../data/scenarios/first-guess.json" with { type: "json" };
import handedDown from "../../data/scenarios/handed-down.json" with { type: "json" };
import quietDesk from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import typedIn from "../../data/scenarios/typed-in.json" with { type: "json" };
import { demoMarket } from "../../src/cli/demo-market.ts";
import type { AnswersFile } from "../../src/parts/answers-file.ts";
import { makeMarket } from "../../src/parts/make-market.ts";
import type { Market } from "../../src/parts/market.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import type { Screen } from "../../src/screens/screen.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { marketOf } from "../../src/walk/market-of.ts";
import { takeUpWalk } from "../../src/walk/saved-walk.ts";
import { factsToDescribe } from "../../src/walk/update.ts";
import { type Place, startWalk, type WalkContext, type WalkState } from "../../src/walk/walk-state.ts";
import { withFirstBoards } from "../choose/first-boards.ts";
import { coachedWalks } from "../walk/coached-walks.ts";
import { changedForms, pageRead } from "../walk/walks-with-forms.ts";
import { askShopPlaces, ownPlaces, suggestionPlaces } from "./screen-words.ts";

/** A screen, and where it comes from. */
export interface Shown {
	readonly name: string;
	readonly screen: Screen;
}

interface Walk {
	readonly name: string;
	readonly context: WalkContext;
	readonly state: WalkState;
	/** Not every place, where each has far more on it than in other walks. */
	readonly places?: readonly Place[];
}

const asOf = "2026-11-24";
const wholeDemo = demoMarket();
const demo = withFirstBoards(wholeDemo);

/** Names that are hard to lay out; each may be 120 characters long, as a parts file allows. */
export const hardNames = {
	oneLongWord: "Unbreakable".repeat(10).slice(0, 118),
	wide: "矢車菊の静かな箱".repeat(10).slice(0, 78),
	combining: `Ze\u0301\u0302\u0323bra \u0e01\u0e34\u0e4d ${"e\u0301\u0327\u0330".repeat(20)}`,
	emoji: "👩‍👩‍👧‍👦 box 🇺🇳 👍🏽 1️⃣ ❤️ case ☕︎ 🏴",
	rightToLeft: "קופסה שקטה 12 صندوق هادئ",
} as const;

function taken(name: string, file: unknown): Walk {
	return {
		name,
		context: { market: demo, asOf },
		state: takeUpWalk({ market: demo, asOf }, file as AnswersFile).state,
	};
}

/** Parts of the person's own with hard names, each picked as an answer. */
function withHardNames(): Walk {
	const { oneLongWord, wide, combining, emoji, rightToLeft } = hardNames;
	const file = {
		...quietDesk,
		answers: {
			...quietDesk.answers,
			"fit/processor": { status: "answered", value: { part: "own-processor" } },
			"fit/case": { status: "answered", value: { part: "own-case" } },
			"fit/memory": { status: "answered", value: { part: "own-memory" } },
		},
		parts: [
			{ kind: "processor", part: { id: "own-processor", name: wide, socket: "Harbour 2", graphics: true } },
			{ kind: "processor", part: { id: "own-processor-2", name: rightToLeft, socket: "Harbour 2" } },
			{ kind: "case", part: { id: "own-case", name: emoji, boardForms: ["ATX"] } },
			{ kind: "case", part: { id: "own-case-2", name: oneLongWord, boardForms: ["ATX"] } },
			{ kind: "memory", part: { id: "own-memory", name: combining, type: "DDR5", modules: 2 } },
			{ kind: "board", part: { id: "own-board", name: wide, socket: "Harbour 2", form: "ATX" } },
			{ kind: "board", part: { id: "own-board-2", name: oneLongWord, socket: "Harbour 2", form: "ATX" } },
		],
	};
	return taken("hard names", file);
}

/** A form with its pages, and some of the facts it asks: they are laid out alike. */
function withForm(name: string, state: WalkState): Walk {
	const places = ownPlaces(state).filter(({ at }, index) => at !== "fact-form" || index % 12 === 0);
	return { name, context: { market: demo, asOf }, state, places };
}

/** Several people's walks, an empty one, one with hard names, and one without any part to choose from. */
export const walks: readonly Walk[] = [
	{ name: "nothing answered", context: { market: demo, asOf }, state: startWalk() },
	taken("quiet desk", quietDesk),
	taken("first guess", firstGuess),
	taken("handed down", handedDown),
	taken("before any board", beforeAnyBoard),
	taken("typed in", typedIn),
	withHardNames(),
	{
		...taken("handed down", handedDown),
		name: "all boards, none of which fits",
		context: { market: wholeDemo, asOf },
		places: [
			...(["fit", "features", "quality"] as const).map((tier): Place => ({ at: "tier-end", tier })),
			...(["fell-out", "shortlist", "price-line", "find-out", "what-if", "sheet", "review"] as const).map(
				(at): Place => ({ at }),
			),
			{ at: "question", id: "fit/processor" },
		],
	},
	withForm("a page read", pageRead),
	...changedForms.slice(0, 1).map(({ name, state }) => withForm(name, state)),
	...coachedWalks.map(
		({ name, state }): Walk => ({
			name,
			context: { market: demo, asOf },
			state,
			places: [
				...suggestionPlaces(state).filter(({ at }, index) => at !== "coach-question" || index % 8 === 0),
				...(["start", "menu", "review", "shortlist", "what-if"] as const).map((at): Place => ({ at })),
				{ at: "question", id: "about/budget" },
				...demo.parts.board.slice(0, 2).map(({ id }): Place => ({ at: "board", boardId: id })),
			],
		}),
	),
	{ name: "empty market", context: { market: makeMarket("nothing", []).market, asOf }, state: startWalk() },
];

/** Every place a walk can be at, as far as it has words of its own. */
function placesIn({ context, state, places }: Walk): readonly Place[] {
	if (places) return places;
	const market: Market = marketOf(context.market, state.ownParts);
	// What was left open looks the same in every walk; one that answers nothing shows all of it.
	const answered = Object.keys(state.answers);
	const questions = allQuestions.filter(({ id }) => answered.length === 0 || answered.includes(id));
	return [
		{ at: "start" },
		...questions.map(({ id }): Place => ({ at: "question", id })),
		...(["fit", "features", "quality"] as const).map((tier): Place => ({ at: "tier-end", tier })),
		{ at: "parts-disagree" },
		{ at: "review" },
		{ at: "fell-out" },
		{ at: "price-line" },
		{ at: "find-out" },
		{ at: "what-if" },
		{ at: "shortlist" },
		{ at: "board", boardId: "no-such-board" },
		...market.parts.board.map(({ id }): Place => ({ at: "board", boardId: id })),
		...askShopPlaces(context, state).filter(({ at }, index) => at !== "they-answered" || index % 20 === 0),
		{ at: "sheet" },
		{ at: "sheet", page: "all" },
		{ at: "menu" },
		{ at: "saved-walks" },
		{ at: "kept-walk", file: "gone.json" },
		{ at: "name-walk", file: null },
		{ at: "take-walk" },
		{ at: "settings" },
		{ at: "glossary" },
		...ownPlaces(state),
		...(["board", "processor", "case", "graphicsCard", "memory", "supply"] as const).flatMap((kind): Place[] => {
			const at = (index: number): Place => ({ at: "describe", kind, questionId: null, index });
			return factsToDescribe(context, { ...state, place: at(0) }).map((_, index) => at(index));
		}),
	];
}

function screensIn(walk: Walk): readonly Shown[] {
	const longPath = `/home/somebody/${"a-folder-with-a-long-name/".repeat(6)}board-sheet.md`;
	const saved = (count: number) =>
		Array.from({ length: count }, (_, index) => ({
			file: `/home/somebody/.local/state/boardwalk/walks/walk-2026-11-24-${index + 2}.json`,
			name: [null, "For Oma", walk.name === "hard names" ? "\u6f22".repeat(80) : "The attic"][index % 3] ?? null,
			words: `${index} of 12 answered, next comes Fit, yesterday`,
		}));
	const shown = (name: string, state: WalkState): Shown[] => {
		const screen = screenOf(walk.context, state);
		return screen ? [{ name: `${walk.name}: ${name}`, screen }] : [];
	};
	const placed = placesIn(walk).flatMap((place) =>
		shown(JSON.stringify(place), { ...walk.state, place, answersBefore: {} }),
	);
	const at = (place: Place, more: Partial<WalkState>) => ({ ...walk.state, place, ...more });
	return [
		...placed,
		...shown("one walk kept", at({ at: "start" }, { saved: saved(1) })),
		...shown("many walks kept", at({ at: "saved-walks" }, { saved: saved(20) })),
		...shown("a walk removed", at({ at: "saved-walks" }, { saved: saved(1), canBringBack: true })),
		...saved(3).flatMap(({ file, words, name }) => [
			...shown(`kept: ${words}`, at({ at: "kept-walk", file }, { saved: saved(3) })),
			...shown(`named: ${words}`, at({ at: "name-walk", file }, { saved: saved(3), name })),
		]),
		...shown("written far away", at({ at: "sheet" }, { notice: `The sheet is written: ${longPath}` })),
		...shown(
			"a problem",
			at({ at: "question", id: "about/budget" }, { problem: 'Type a sum, such as 180, or "none".' }),
		),
		...shown(
			"a problem and a notice",
			at(
				{ at: "question", id: "fit/case" },
				{ problem: `There is no ${"very ".repeat(30)}long case.`, notice: `A damaged walk was set aside: ${longPath}` },
			),
		),
	];
}

/** All screens of all walks, each once; made once, since each judges a market. */
export const allScreens: readonly Shown[] = [
	...new Map(walks.flatMap(screensIn).map((shown) => [JSON.stringify(shown.screen), shown])).values(),
];

/** One walk's screens. */
export function screensOfWalk(name: string): readonly Shown[] {
	return walks.filter((walk) => walk.name === name).flatMap(screensIn);
}
