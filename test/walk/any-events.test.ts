import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answersFile, type OwnPart } from "../../src/parts/answers-file.ts";
import { type FormPath, formFields } from "../../src/parts/form-fields.ts";
import { partKindNames, partKinds } from "../../src/parts/part-kinds.ts";
import { allQuestions, questionById } from "../../src/questions/all-questions.ts";
import { tiers } from "../../src/questions/define-question.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { marketOf } from "../../src/walk/market-of.ts";
import type { PastedKind } from "../../src/walk/own-places.ts";
import { savedWalk, takeUpWalk } from "../../src/walk/saved-walk.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import type { Place, WalkState } from "../../src/walk/walk-state.ts";
import { settledFacts } from "../choose/demo.ts";
import { inHandsOf, withSuggestions } from "./coached-walks.ts";
import { demo, emptyMarket, scenarios, walkAt, walkThrough } from "./walk-in-demo.ts";
import { boardPage, changedForms, pageRead } from "./walks-with-forms.ts";

const boardIds = demo.market.parts.board.map(({ id }) => id);
const questionIds = allQuestions.map(({ id }) => id);

/** Things people and files could hand in where something else belongs. */
const nonsense = fc.oneof(
	fc.jsonValue({ maxDepth: 2 }),
	fc.constantFrom(null, undefined, Number.NaN, -1, "", "none", "open", "must", "a-lot", "__proto__", ["8-pin"], {}),
	fc.constantFrom({ part: "" }, { part: "__proto__" }, { minor: 1.5, currency: "EUR" }, { minor: 5, currency: "eur" }),
);

const knownValue = fc.constantFrom(
	...allQuestions.flatMap((question) => question.options(demo, settledFacts).map(({ value }) => value)),
	{ minor: 17_500, currency: "EUR" },
	"no-limit",
	6,
);

/** Answers to change at once: some that stand as is said, most that do not. */
const anyWayOut = fc.record({
	type: fc.constant("way-out"),
	changes: fc.array(
		fc.record({
			questionId: fc.constantFrom(...questionIds, "__proto__", "no/question"),
			from: fc.oneof(fc.constant(null), knownValue, nonsense),
			to: fc.oneof(fc.constant(null), knownValue, nonsense),
		}),
		{ maxLength: 3 },
	),
});

/** A line of a list where several can be marked. */
const knownMark = fc.constantFrom(
	...allQuestions
		.filter(({ kind }) => kind === "many")
		.flatMap((question) => question.options(demo, settledFacts).map(({ value }) => String(value))),
);

const typed = fc.oneof(
	fc.string({ unit: "grapheme", maxLength: 30 }),
	fc.constantFrom("", " ", "1", "200", "5", "yes", "no", "none", "n", "ATX, matx", "HDMI", "300 mm", "EUR 12", "1.20"),
	fc.constantFrom("larkspur", "Wardrobe", "\u001b]52;c;aGk=\u0007Rook", "\u202eevil", "1e9", "-4", "9".repeat(200)),
);

const anyKind = fc.constantFrom(...partKindNames);
const anyPath = fc.oneof(
	fc.constantFrom<FormPath>(["name"], ["m2Sockets"], ["m2Sockets", 0], ["m2Sockets", 0, "key"], ["wireless"]),
	fc.constantFrom<FormPath>(
		["boardForms"],
		["price"],
		["supportList", "rows", 0],
		["wireless", "builtIn"],
		["kits", 1],
	),
	anyKind.chain((kind) => fc.constantFrom(...formFields(kind).map(({ path }) => path))),
	fc.array(fc.oneof(fc.constantFrom("__proto__", "constructor", "name"), fc.nat(3)), { maxLength: 3 }),
);

/** What is done with own parts; keeping and filling in stand often, so that much comes of it. */
const ownEvent = fc.oneof(
	fc.constantFrom<WalkEvent>(
		...(["own-parts", "read", "clear-paste", "edit-part", "copy-part", "remove-part", "bring-back"] as const).map(
			(type): WalkEvent => ({ type }),
		),
		...(["add-offer", "remove-entry", "unread", "keep", "keep", "keep", "drop-form"] as const).map(
			(type): WalkEvent => ({ type }),
		),
		{ type: "part-form" },
		{ type: "part-form", page: "all" },
		{ type: "add-entry" },
		{ type: "add-entry", like: true },
		{ type: "new-part" },
	),
	anyKind.map((kind): WalkEvent => ({ type: "new-part", kind })),
	fc
		.constantFrom<PastedKind>("board", "processor", "case", "support-list")
		.map((what): WalkEvent => ({ type: "paste-part", what })),
	fc
		.constantFrom(boardPage, "Socket: Lantern 4\nForm factor: ATX, microATX", "\u0000\u001b]52;c;x\u0007")
		.map((text): WalkEvent => ({ type: "paste", text })),
	anyPath.map((path): WalkEvent => ({ type: "fact-form", path })),
	fc.nat(3).map((index): WalkEvent => ({ type: "doubt", index })),
	fc
		.record({ kind: anyKind, id: fc.constantFrom("my-board", "my-case", "no-part", "copperbeech-ladder-4") })
		.map((part): WalkEvent => ({ type: "own-part", ...part })),
);

/** What helpers do, and builders with what was suggested. */
const coachEvent = fc.oneof(
	fc.constantFrom<WalkEvent>(
		{ type: "coach" },
		{ type: "coach-name" },
		{ type: "suggestions" },
		{ type: "suggestions", page: "decided" },
		{ type: "show-sources" },
		{ type: "keep-tried" },
	),
	fc.nat(7).map((index): WalkEvent => ({ type: "take-suggestion", index })),
	fc
		.record({
			type: fc.constantFrom("suggestion" as const, "leave-suggestions" as const, "withdraw" as const),
			questionId: fc.constantFrom("about/budget", "fit/case", "features/rear-usb-c", "no/question", "__proto__"),
		})
		.map((event): WalkEvent => event),
);

const anyEvent: fc.Arbitrary<WalkEvent> = fc.oneof(
	{ weight: 4, arbitrary: coachEvent },
	{ weight: 8, arbitrary: ownEvent },
	{
		weight: 5,
		arbitrary: fc.constantFrom<WalkEvent>(
			{ type: "next" },
			{ type: "back" },
			{ type: "go-on" },
			{ type: "not-sure" },
			{ type: "not-on-page" },
			{ type: "describe" },
			{ type: "describe-board" },
			{ type: "review" },
			{ type: "fell-out" },
			{ type: "price-line" },
			{ type: "find-out" },
			{ type: "what-if" },
			{ type: "shortlist" },
			{ type: "sheet" },
			{ type: "menu" },
			{ type: "saved-walks" },
			{ type: "settings" },
			{ type: "glossary" },
			{ type: "look-at-example" },
			{ type: "leave-example" },
			{ type: "sheet", page: "all" },
		),
	},
	{ weight: 4, arbitrary: fc.record({ type: fc.constant("answer"), value: fc.oneof(knownValue, nonsense) }) },
	{ weight: 4, arbitrary: fc.record({ type: fc.constant("text"), text: typed }) },
	{ weight: 2, arbitrary: anyWayOut },
	{
		weight: 4,
		arbitrary: fc.record({
			type: fc.constant("mark"),
			value: fc.oneof(knownMark, typed),
			by: fc.constantFrom(1, 1, -1),
		}),
	},
	{
		weight: 2,
		arbitrary: fc.record({
			type: fc.constant("fact"),
			value: fc.oneof(nonsense, fc.constantFrom(true, false, "ATX", "DDR5", "yes", "no", ["4-pin"])),
		}),
	},
	{
		weight: 2,
		arbitrary: fc.record({
			type: fc.constant("change"),
			questionId: fc.oneof(fc.constantFrom(...questionIds), fc.string(), fc.constant("constructor")),
		}),
	},
	{
		weight: 2,
		arbitrary: fc.record({
			type: fc.constant("board"),
			boardId: fc.oneof(fc.constantFrom(...boardIds, "my-board"), fc.string()),
		}),
	},
	{
		weight: 3,
		arbitrary: fc.oneof(
			fc.record({ type: fc.constant("ask-shop"), boardId: fc.constantFrom(...boardIds, "my-board", "no-board") }),
			fc.record({
				type: fc.constant("they-answered"),
				path: fc.constantFrom("memory.slots", "chipsetFan", "supportList", "offers", "m2Sockets", "id", "__proto__"),
			}),
			fc.constantFrom(
				{ type: "told-by", by: "the shop" },
				{ type: "told-by", by: "Ada", replace: true },
				{ type: "told-by", by: "" },
				{ type: "take-back", path: "chipsetFan" },
			),
		),
	},
	fc.record({ type: fc.constant("write-sheet"), to: typed }),
	fc.record({ type: fc.constant("written"), path: typed }),
	fc.record({ type: fc.constant("not-written"), problem: typed }),
	fc.record({ type: fc.constant("tell"), words: typed }),
	fc.record({ type: fc.constant("open"), file: typed }),
	fc.record({ type: fc.constantFrom("kept-walk", "name-walk"), file: fc.constantFrom("/kept/a.json", "/kept/b.json") }),
	fc.constantFrom<WalkEvent>(
		{ type: "name-walk" },
		{ type: "copy-walk" },
		{ type: "remove-walk" },
		{ type: "bring-walk-back" },
		{ type: "take-walk" },
		{
			type: "walks-changed",
			saved: [{ file: "/kept/a.json", name: "For Oma", words: "7 of 12 answered" }],
			canBringBack: true,
			words: "Removed.",
		},
	),
	fc.constantFrom<WalkEvent>({ type: "set", setting: { colour: "never" } }),
) as fc.Arbitrary<WalkEvent>;

const anyPlace: fc.Arbitrary<Place> = fc.oneof(
	fc.constantFrom<Place>(
		{ at: "start" },
		{ at: "parts-disagree" },
		{ at: "review" },
		{ at: "fell-out" },
		{ at: "price-line" },
		{ at: "find-out" },
		{ at: "ask-shop", boardId: "no-board" },
		{ at: "they-answered", boardId: "no-board", path: "memory.slots", answer: "2" },
		{ at: "they-answered", boardId: boardIds[0] ?? "", path: "memory.slots" },
		{ at: "they-answered", boardId: boardIds[0] ?? "", path: "__proto__", answer: "yes" },
		{ at: "they-answered", boardId: boardIds[1] ?? "", path: "chipsetFan", answer: "yes" },
		{ at: "what-if" },
		{ at: "shortlist" },
		{ at: "sheet" },
		{ at: "menu" },
		{ at: "saved-walks" },
		{ at: "kept-walk", file: "/kept/a.json" },
		{ at: "name-walk", file: "/kept/a.json" },
		{ at: "name-walk", file: null },
		{ at: "take-walk" },
		{ at: "settings" },
		{ at: "glossary" },
		{ at: "sheet", page: "all" },
	),
	fc.constantFrom<Place>(
		{ at: "own-parts" },
		{ at: "new-part" },
		{ at: "own-part", kind: "case", id: "my-case" },
		{ at: "read-part", what: "board", questionId: null },
		{ at: "read-part", what: "case", questionId: "fit/case" },
		{ at: "part-form" },
		{ at: "doubt", index: 0 },
		{ at: "unread" },
		{ at: "leave-form", leaving: true },
	),
	fc.constantFrom<Place>(
		{ at: "suggestions" },
		{ at: "suggestions", page: "decided" },
		{ at: "suggestion", questionId: "fit/case" },
		{ at: "suggestion", questionId: "no/question" },
	),
	anyPath.map((path): Place => ({ at: "fact-form", path, guided: true })),
	fc.constantFrom(...questionIds, "no/question").map((id): Place => ({ at: "question", id })),
	fc.constantFrom(...tiers).map((tier): Place => ({ at: "tier-end", tier })),
	fc.constantFrom(...boardIds, "no-board").map((boardId): Place => ({ at: "board", boardId })),
	fc.record({ kind: fc.constantFrom(...partKindNames), index: fc.nat(14), asked: fc.boolean() }).map(
		({ kind, index, asked }): Place => ({
			at: "describe",
			kind,
			index,
			questionId: asked ? (allQuestions.find((question) => question.partKind === kind)?.id ?? null) : null,
		}),
	),
);

const anyStart: fc.Arbitrary<WalkState> = fc
	.record({
		place: anyPlace,
		from: fc.constantFrom(undefined, ...scenarios.map(({ state }) => state), withSuggestions),
		form: fc.constantFrom(null, pageRead.form, ...changedForms.map(({ state }) => state.form)),
	})
	.map(({ place, from, form }) => walkAt(place, { ...from, form }));

function expectSound(state: WalkState): void {
	for (const { kind, part } of state.ownParts)
		expect(partKinds[kind].schema.safeParse(part), JSON.stringify(part)).toMatchObject({ success: true });
	const inside = { ...demo, market: marketOf(demo.market, state.ownParts) };
	for (const [id, answer] of Object.entries(state.answers)) {
		const question = questionById(id);
		expect(question, id).toBeDefined();
		if (answer.status === "answered")
			expect(question?.expected(answer.value as never, inside), `${id}: ${JSON.stringify(answer)}`).toBeNull();
		else expect(answer.status).toBe("not-sure");
	}
	expect(state.returnTo.length).toBeLessThanOrEqual(8);
}

/** A helper at work, somewhere in a walk to which others have suggested things. */
const anyCoached: fc.Arbitrary<WalkState> = fc
	.record({
		place: fc.oneof(
			anyPlace,
			fc.constantFrom<Place>({ at: "coach" }, { at: "coach-name" }),
			fc.constantFrom(...questionIds).map((id): Place => ({ at: "coach-question", id, tried: null })),
		),
		from: fc.constantFrom(withSuggestions, ...scenarios.map(({ state }) => state)),
	})
	.map(({ place, from }) => ({ ...inHandsOf("Ida", from), place }));

describe("whatever is done, in whatever order", () => {
	test("a helper throws nothing over, changes no answer of another, and always has a screen", () => {
		fc.assert(
			fc.property(anyCoached, fc.array(anyEvent, { maxLength: 40 }), (start, events) => {
				const { state } = walkThrough(events, start);
				expectSound(state);
				for (const [id, answer] of Object.entries(start.answers))
					if (answer.status === "answered") expect(state.answers[id]).toEqual(answer);
				for (const one of start.suggestions)
					if (one.by !== "Ida" || one.state !== "open") expect(state.suggestions).toContainEqual(one);
				const screen = screenOf(demo, state);
				expect(screen === null).toBe(state.place.at === "left");
				if (screen) expect(screen.title).toMatch(/\S/);
				expect(["start", "question"]).not.toContain(events.length > 0 ? state.place.at : null);
			}),
			{ numRuns: 40 },
		);
	});

	test("nothing throws, no state is changed, and all that is kept is sound", () => {
		fc.assert(
			fc.property(anyStart, fc.array(anyEvent, { maxLength: 40 }), (start, events) => {
				// Every state on the way is frozen: see walkThrough.
				expectSound(walkThrough(events, start).state);
			}),
			{ numRuns: 200 },
		);
	});

	test("a part told fact by fact, in any words, is one that a file may hold", () => {
		const told = fc.oneof(
			{ weight: 3, arbitrary: typed.map((text): WalkEvent => ({ type: "text", text })) },
			{
				weight: 3,
				arbitrary: fc
					.oneof(nonsense, fc.constantFrom(true, "ATX", "E-ATX", "DDR4", "yes", ["8-pin", "4-pin"]))
					.map((value): WalkEvent => ({ type: "fact", value })),
			},
			{ weight: 2, arbitrary: fc.constant<WalkEvent>({ type: "not-on-page" }) },
			fc.constant<WalkEvent>({ type: "back" }),
		);
		const described = allQuestions.flatMap(({ id, partKind }) =>
			partKind ? [{ kind: partKind, questionId: id }] : [],
		);
		const place = fc
			.constantFrom(...described, { kind: "board" as const, questionId: null })
			.map((part): Place => ({ at: "describe", index: 0, ...part }));
		fc.assert(
			fc.property(place, fc.array(told, { minLength: 8, maxLength: 40 }), (from, events) => {
				const rest = Array.from({ length: 14 }, (): WalkEvent => ({ type: "not-on-page" }));
				const { state } = walkThrough([...events, ...rest], walkAt(from, scenarios[0]?.state));
				expectSound(state);
				expect(screenOf(demo, state)?.title).toMatch(/\S/);
			}),
			{ numRuns: 150 },
		);
	});

	test("from any place, the walk ends at one that has a screen, or is left", () => {
		fc.assert(
			fc.property(anyStart, fc.array(anyEvent, { maxLength: 6 }), fc.boolean(), (start, events, isEmpty) => {
				const context = isEmpty ? emptyMarket : demo;
				const { state } = walkThrough(events, start, context);
				const screen = screenOf(context, state);
				expect(screen === null).toBe(state.place.at === "left");
				if (screen) {
					expect(screen.title).toMatch(/\S/);
					expect({ problem: screen.problem, notice: screen.notice }).toEqual({
						problem: state.problem,
						notice: state.notice,
					});
				}
			}),
			{ numRuns: 120 },
		);
	});

	test("from any place, going back again and again comes to rest at the start", () => {
		fc.assert(
			fc.property(anyStart, fc.array(anyEvent, { maxLength: 8 }), (start, events) => {
				const { state } = walkThrough(events, start);
				// Who leaves a form without keeping it may leave the walk.
				fc.pre(state.place.at !== "left");
				// All questions, a whole description, and the places one may have come from.
				const backs = Array.from({ length: allQuestions.length + 30 }, (): WalkEvent => ({ type: "back" }));
				expect(walkThrough(backs, state).state.place).toEqual({ at: "start" });
			}),
			{ numRuns: 60 },
		);
	});

	test("what is saved can be read again, and gives the same walk", () => {
		fc.assert(
			fc.property(fc.array(anyEvent, { maxLength: 40 }), (events) => {
				const { state } = walkThrough(events);
				const file = answersFile.parse(JSON.parse(JSON.stringify(savedWalk(demo, state))));
				const taken = takeUpWalk(demo, file);
				expect({ faults: taken.faults, warnings: taken.warnings }).toEqual({ faults: [], warnings: [] });
				expect(taken.state.answers).toEqual(state.answers);
				expect(taken.state.ownParts).toEqual(state.ownParts as readonly OwnPart[]);
				expect(taken.state.suggestions).toEqual(state.suggestions);
			}),
			{ numRuns: 100 },
		);
	});
});
