import { describe, expect, test } from "vitest";
import { partKinds } from "../../src/parts/part-kinds.ts";
import { allQuestions, questionById } from "../../src/questions/all-questions.ts";
import { factsToDescribe, update } from "../../src/walk/update.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { type Place, startWalk, type WalkState } from "../../src/walk/walk-state.ts";
import {
	answering,
	demo,
	notAskedOfQuiet,
	quietAnswers,
	walkAt,
	walkDone,
	walkThrough,
	walkWith,
} from "./walk-in-demo.ts";

const question = (id: string): Place => ({ at: "question", id });
const text = (words: string): WalkEvent => ({ type: "text", text: words });
const part = (id: string): WalkEvent => ({ type: "answer", value: { part: id } });
const next: WalkEvent = { type: "next" };
const back: WalkEvent = { type: "back" };
const notSure: WalkEvent = { type: "not-sure" };
const review: WalkEvent = { type: "review" };
const notOnPage: WalkEvent = { type: "not-on-page" };

/** A card of 340 mm and a case with room for 300. */
const tooLong = {
	...quietAnswers,
	"fit/case": { part: "larkspur-hatbox" },
	"fit/graphics-card": { part: "dapplegate-fairground" },
};

/** A walk from the start over every question; at the end of a tier and where parts disagree it goes on. */
function wholeWalk(values: typeof quietAnswers | Record<string, never>): { places: Place[]; state: WalkState } {
	const places: Place[] = [];
	let { state } = walkThrough([next]);
	const given = new Map(allQuestions.map(({ id }, index) => [id, answering(values)[index] as WalkEvent]));
	while (state.place.at !== "shortlist" && places.length < 60) {
		places.push(state.place);
		const event = state.place.at === "question" ? (given.get(state.place.id) as WalkEvent) : next;
		state = walkThrough([event], state).state;
	}
	return { places, state };
}

/** Questions as places, with the end of each tier but the first after its last. */
function stopsAt(asked: typeof allQuestions): readonly Place[] {
	return (["about", "fit", "features", "quality"] as const).flatMap((tier) => [
		...asked.filter((one) => one.tier === tier).map(({ id }) => question(id)),
		...(tier === "about" ? [] : [{ at: "tier-end", tier } as const]),
	]);
}

describe("from the start to the shortlist", () => {
	test("asks every question that makes sense, in order, and stops at the end of each tier", () => {
		const asked = allQuestions.filter(({ id }) => !notAskedOfQuiet.includes(id));
		const { places, state } = wholeWalk(quietAnswers);
		expect(places).toEqual(stopsAt(asked));
		expect(state.place).toEqual({ at: "shortlist" });
		expect(Object.keys(state.answers)).toEqual(asked.map(({ id }) => id));
	});

	test("asks on the short walk far less, stops at the end of each tier it asked in, and says at the last why", () => {
		const { places, state } = wholeWalk({ ...quietAnswers, "about/walk-length": "short" });
		const asked = places.flatMap((place) => (place.at === "question" ? [place.id] : []));
		const tiers = [...new Set(asked.map((id) => questionById(id)?.tier))].filter((tier) => tier !== "about");
		expect(new Set(asked).size).toBe(asked.length);
		expect(asked).toEqual(expect.arrayContaining(["about/budget", "fit/processor", "fit/case"]));
		expect(asked.length).toBeLessThan((allQuestions.length - notAskedOfQuiet.length) / 2);
		expect(places.flatMap((place) => (place.at === "tier-end" ? [place.tier] : []))).toEqual(tiers);
		expect(places.at(-1)?.at).toBe("tier-end");
		expect(state.place).toEqual({ at: "shortlist" });
		expect(Object.keys(state.answers)).toEqual(asked);
	});

	test("takes not sure for an answer everywhere", () => {
		const { state } = wholeWalk({});
		expect(new Set(Object.values(state.answers).map(({ status }) => status))).toEqual(new Set(["not-sure"]));
		expect(state.place).toEqual({ at: "shortlist" });
	});

	test("says where parts disagree right after Fit, before its end", () => {
		const { places, state } = wholeWalk(tooLong);
		const at = places.findIndex((place) => place.at === "parts-disagree");
		expect(places.slice(at - 1, at + 2)).toEqual([
			question("fit/bought"),
			{ at: "parts-disagree" },
			{ at: "tier-end", tier: "fit" },
		]);
		expect(places.filter((place) => place.at === "parts-disagree")).toHaveLength(1);
		expect(state.place).toEqual({ at: "shortlist" });
	});

	test("and after the shortlist comes the sheet", () => {
		const { state } = wholeWalk(quietAnswers);
		expect(walkThrough([next], state).state.place).toEqual({ at: "sheet" });
		expect(walkThrough([next, next, next], state).state.place).toEqual({ at: "sheet" });
	});
});

describe("an answer", () => {
	test("is kept with its value and who gave it, is saved, and leads on", () => {
		const { state, effects } = walkThrough(
			[part("larkspur-barn")],
			walkAt(question("fit/case"), { by: "the helper", answers: {} }),
		);
		expect(state.answers).toEqual({
			"fit/case": { status: "answered", value: { part: "larkspur-barn" }, by: "the helper" },
		});
		expect(effects).toEqual([{ type: "save" }]);
		expect(state.place).toEqual(question("fit/graphics-card"));
	});

	test("of not sure is kept as such, and saved", () => {
		const { state, effects } = walkThrough([notSure], walkAt(question("fit/case")));
		expect(state.answers["fit/case"]).toEqual({ status: "not-sure", by: "builder" });
		expect(effects).toEqual([{ type: "save" }]);
	});

	test("remembers what was answered before it", () => {
		const { state } = walkThrough(
			[part("larkspur-barn"), { type: "answer", value: "none" }],
			walkAt(question("fit/case")),
		);
		expect(state.answersBefore).toEqual({
			"fit/case": { status: "answered", value: { part: "larkspur-barn" }, by: "builder" },
		});
	});

	test.each<[string, WalkEvent]>([
		["a part that is not there", part("nobody-has-this")],
		["a value of another question", { type: "answer", value: 12 }],
		["a special that this question has not", { type: "answer", value: "none" }],
	])("that cannot be is refused in words: %s", (_, event) => {
		const before = walkAt(question("fit/case"));
		const { state, effects } = walkThrough([event], before);
		expect(state).toEqual({ ...before, problem: expect.stringMatching(/^This question takes /) });
		expect(effects).toEqual([]);
	});

	test("makes no sense where nothing is asked, and changes nothing there", () => {
		for (const place of [{ at: "start" }, { at: "shortlist" }, { at: "tier-end", tier: "fit" }] as const)
			for (const event of [part("larkspur-barn"), notSure, text("larkspur"), notOnPage])
				expect(walkThrough([event], walkAt(place))).toEqual({ state: walkAt(place), effects: [] });
	});
});

describe("typed text", () => {
	test("is read by the question", () => {
		const { state } = walkThrough([text(" eur 1.250,50 ")], walkAt(question("about/budget")));
		expect(state.answers["about/budget"]?.value).toEqual({ minor: 125_050, currency: "EUR" });
		expect(state.place).toEqual(question("about/summer-room"));
	});

	test("finds the one part that has these letters", () => {
		const { state } = walkThrough([text("WARDR")], walkAt(question("fit/case")));
		expect(state.answers["fit/case"]?.value).toEqual({ part: "larkspur-wardrobe" });
	});

	test.each([
		["about/budget", "a lot"],
		["fit/case", "larkspur"],
		["fit/case", "no such case"],
		["features/rear-devices", "31"],
	])("that %s cannot take keeps the place and every answer: %s", (id, words) => {
		const before = walkAt(question(id), { answers: { "fit/memory": { status: "not-sure" } } });
		const { state, effects } = walkThrough([text(words)], before);
		expect(state).toEqual({ ...before, problem: expect.stringMatching(/\w{3}.*\.$/) });
		expect(effects).toEqual([]);
	});

	test("clears the problem of the line before", () => {
		const before = walkAt(question("about/budget"));
		expect(walkThrough([text("a lot")], before).state.problem).not.toBeNull();
		expect(walkThrough([text("a lot"), text("200")], before).state.problem).toBeNull();
	});
});

describe("back", () => {
	test("goes through the questions the other way, to the start, and loses no answer", () => {
		const { places, state } = wholeWalk(quietAnswers);
		const backwards = places.filter((place) => place.at === "question").reverse();
		expect(backwards).toHaveLength(allQuestions.length - notAskedOfQuiet.length);
		let at = state;
		for (const place of backwards) {
			at = walkThrough([back], at).state;
			expect(at.place).toEqual(place);
		}
		at = walkThrough([back], at).state;
		expect(at.place).toEqual({ at: "start" });
		expect(at.answers).toEqual(state.answers);
		expect(walkThrough([back], at).state.place).toEqual({ at: "start" });
	});

	test("and a new answer there keeps all later ones", () => {
		const { state } = wholeWalk(quietAnswers);
		const again = walkThrough([part("larkspur-barn")], { ...state, place: question("fit/case") }).state;
		expect(again.answers).toEqual({
			...state.answers,
			"fit/case": { status: "answered", value: { part: "larkspur-barn" }, by: "builder" },
		});
	});

	test("from the end of a tier goes to its last question", () => {
		for (const [tier, id] of [
			["fit", "fit/bought"],
			["features", "features/wishes"],
			["quality", "quality/backing"],
		] as const)
			expect(walkThrough([back], { ...walkWith(quietAnswers), place: { at: "tier-end", tier } }).state.place).toEqual(
				question(id),
			);
		const disagreeing: WalkState = { ...walkWith(tooLong), place: { at: "parts-disagree" } };
		expect(walkThrough([back], disagreeing).state.place).toEqual(question("fit/bought"));
		// With nothing told of any part, there is none to ask whether it is bought.
		expect(walkThrough([back], walkAt({ at: "parts-disagree" })).state.place).toEqual(question("fit/old-things"));
	});
});

describe("going on with a walk", () => {
	test("begins at the first question nobody has dealt with", () => {
		const { state } = walkThrough([next], walkDone(quietAnswers, "fit/memory", "quality/rescue"));
		expect(state.place).toEqual(question("fit/memory"));
	});

	test("passes over questions that the short walk leaves out", () => {
		const short = { ...quietAnswers, "about/walk-length": "short" };
		const { state } = walkThrough([next], walkDone(short, "about/summer-room", "fit/memory-size", "quality/years"));
		expect(state.place).toEqual({ at: "shortlist" });
	});

	test("begins at the shortlist when all are dealt with", () => {
		expect(walkThrough([next], walkDone(quietAnswers)).state.place).toEqual({ at: "shortlist" });
	});

	test("from wherever one was looked to the first open question, with no way back left over", () => {
		const before = walkDone(quietAnswers, "fit/memory");
		const looking = walkThrough([review, { type: "fell-out" }], { ...before, place: { at: "start" } }).state;
		expect(walkThrough([{ type: "go-on" }], looking).state).toEqual({
			...before,
			place: question("fit/memory"),
		});
	});

	test("without answering keeps the answer given before", () => {
		const before = { ...walkDone(quietAnswers), place: question("fit/case") };
		const { state, effects } = walkThrough([next], before);
		expect(state).toEqual({ ...before, place: question("fit/graphics-card") });
		expect(effects).toEqual([]);
	});

	test("leads past what is answered already to what is not, within the tier", () => {
		const before = { ...walkDone(quietAnswers, "fit/cooler", "features/sound"), place: question("fit/case") };
		const cooler = walkThrough([next], before).state;
		expect(cooler.place).toEqual(question("fit/cooler"));
		// With nothing open behind it in its tier, the next one comes next, answered or not.
		const answered = walkThrough([{ type: "not-sure" }], cooler).state;
		expect(answered.place).toEqual(question("fit/supply"));
	});
});

describe("the review", () => {
	test.each<Place>([
		question("features/wireless"),
		{ at: "tier-end", tier: "fit" },
		{ at: "shortlist" },
		{ at: "sheet" },
		{ at: "board", boardId: "pennywhistle-polka" },
		{ at: "start" },
	])("is left to where one was: %j", (place) => {
		const before = { ...walkWith(quietAnswers), place };
		const { state } = walkThrough([review, back], before);
		expect(state).toEqual(before);
		expect(walkThrough([review], before).state.place).toEqual({ at: "review" });
	});

	test("lets one answer be changed, comes back to itself, and then to where one was", () => {
		const before: WalkState = { ...walkWith(quietAnswers), place: { at: "tier-end", tier: "features" } };
		const changing = walkThrough([review, { type: "change", questionId: "fit/case" }], before).state;
		expect(changing.place).toEqual(question("fit/case"));
		const changed = walkThrough([part("larkspur-barn")], changing).state;
		expect(changed.place).toEqual({ at: "review" });
		expect(changed.answers["fit/case"]?.value).toEqual({ part: "larkspur-barn" });
		expect(walkThrough([back], changed).state.place).toEqual(before.place);
		// Several changes one after another pile nothing up.
		const more = walkThrough(
			[
				{ type: "change", questionId: "fit/memory" },
				notSure,
				{ type: "change", questionId: "about/budget" },
				text("150"),
				back,
			],
			changed,
		).state;
		expect(more.place).toEqual(before.place);
		expect(more.returnTo).toEqual([]);
	});

	test("can be come back to without changing anything", () => {
		const before: WalkState = { ...walkWith(quietAnswers), place: { at: "shortlist" } };
		const opened = walkThrough([review, { type: "change", questionId: "fit/case" }], before).state;
		for (const event of [next, back]) expect(walkThrough([event], opened).state.place).toEqual({ at: "review" });
		expect(walkThrough([next], opened).state.answers).toEqual(before.answers);
	});

	test("knows no question of another name", () => {
		const before = walkAt({ at: "review" });
		expect(walkThrough([{ type: "change", questionId: "fit/horoscope" }], before).state).toEqual(before);
	});

	test("does not bring parts back that agree by now", () => {
		// A supply that has the card's plug and watts to spare, so that in the larger case all parts agree.
		const strong = { ...tooLong, "fit/supply": { part: "millpond-waterwheel" } };
		const before: WalkState = { ...walkWith(strong), place: { at: "parts-disagree" } };
		const cured = walkThrough(
			[review, { type: "change", questionId: "fit/case" }, part("larkspur-barn"), back],
			before,
		);
		expect(cured.state.place).toEqual({ at: "tier-end", tier: "fit" });
		const kept = walkThrough([review, { type: "change", questionId: "fit/memory" }, notSure, back], before);
		expect(kept.state.place).toEqual({ at: "parts-disagree" });
	});
});

describe("a look at something and back", () => {
	const visits: readonly (readonly [WalkEvent, Place["at"]])[] = [
		[{ type: "review" }, "review"],
		[{ type: "fell-out" }, "fell-out"],
		[{ type: "shortlist" }, "shortlist"],
		[{ type: "sheet" }, "sheet"],
		[{ type: "board", boardId: "oddment-button" }, "board"],
		[{ type: "settings" }, "settings"],
		[{ type: "saved-walks" }, "saved-walks"],
		[{ type: "describe-board" }, "describe"],
	];

	test.each(visits)("%j from a question returns to it", (event, at) => {
		const before = walkAt(question("features/rear-devices"));
		const there = walkThrough([event], before).state;
		expect(there.place.at).toBe(at);
		expect(walkThrough([back], there).state).toEqual(before);
	});

	test.each(visits)("%j through the menu returns to the question, not to the menu", (event, at) => {
		const before = walkAt(question("features/rear-devices"));
		const there = walkThrough([{ type: "menu" }, event], before).state;
		expect(there.place.at).toBe(at);
		expect(walkThrough([back], there).state.place).toEqual(before.place);
	});

	test("the menu itself goes back to where one was", () => {
		const before = walkAt(question("fit/memory"));
		expect(walkThrough([{ type: "menu" }, back], before).state).toEqual(before);
		expect(walkThrough([{ type: "menu" }, { type: "menu" }, back], before).state.place).toEqual(before.place);
	});

	test("one board after another goes back board by board, and to the shortlist at once", () => {
		const before = walkAt({ at: "shortlist" });
		const second = walkThrough(
			[
				{ type: "board", boardId: "oddment-button" },
				{ type: "board", boardId: "oddment-thimble" },
			],
			before,
		).state;
		expect(second.place).toEqual({ at: "board", boardId: "oddment-thimble" });
		expect(walkThrough([{ type: "shortlist" }], second).state).toEqual(before);
	});

	test("a board's facts are a look at it, and lead back to it", () => {
		const board = walkThrough([{ type: "board", boardId: "oddment-button" }], walkAt({ at: "shortlist" })).state;
		const facts = walkThrough([{ type: "board", boardId: "oddment-button", page: "facts" }], board).state;
		expect(facts.place).toEqual({ at: "board", boardId: "oddment-button", page: "facts" });
		expect(walkThrough([back], facts).state).toEqual(board);
	});

	test("a board that is not there is not gone to", () => {
		const before = walkAt({ at: "shortlist" });
		expect(walkThrough([{ type: "board", boardId: "nobody-makes-this" }], before).state).toEqual(before);
	});

	test("going round and round keeps the way back short", () => {
		const round: WalkEvent[] = [
			{ type: "review" },
			{ type: "fell-out" },
			{ type: "board", boardId: "oddment-button" },
			{ type: "shortlist" },
			{ type: "board", boardId: "oddment-thimble" },
			{ type: "sheet" },
		];
		const { state } = walkThrough(Array.from({ length: 20 }, () => round).flat(), walkAt(question("fit/case")));
		expect(state.returnTo.length).toBeLessThanOrEqual(8);
	});
});

/** Events that tell a whole board, in the order of its facts when a processor is settled. */
const boardTold: readonly WalkEvent[] = [
	text("Wobblestone Harvest"),
	text("Harbour 2"),
	text("1.10"),
	text("microatx"),
	{ type: "fact", value: "DDR5" },
	text("4"),
	text("192 GB"),
	{ type: "fact", value: ["8-pin"] },
	text("HDMI, dp"),
	text("6"),
	text("1"),
	text("2"),
	text("1"),
	{ type: "fact", value: true },
	text("149"),
];

describe("describing a board", () => {
	const before: WalkState = { ...walkWith(quietAnswers), place: { at: "shortlist" } };
	const begun = walkThrough([{ type: "describe-board" }], before).state;

	test("asks at most fifteen facts, one by one, and ends at the board", () => {
		expect(begun.place).toEqual({ at: "describe", kind: "board", questionId: null, index: 0 });
		expect(factsToDescribe(demo, begun)).toHaveLength(boardTold.length);
		expect(boardTold.length).toBeLessThanOrEqual(15);
		boardTold.forEach((_, index) => {
			const { state, effects } = walkThrough(boardTold.slice(0, index), begun);
			expect(state.place).toEqual({ at: "describe", kind: "board", questionId: null, index });
			expect({ problem: state.problem, effects, own: state.ownParts }).toEqual({ problem: null, effects: [], own: [] });
		});
		const { state, effects } = walkThrough(boardTold, begun);
		expect(state.place).toEqual({ at: "board", boardId: "wobblestone-harvest" });
		expect(effects).toEqual([{ type: "save" }]);
		expect(walkThrough([back], state).state.place).toEqual({ at: "shortlist" });
	});

	test("makes a board with those facts and no other, as a parts file may hold it", () => {
		const { state } = walkThrough(boardTold, begun);
		expect(state.ownParts).toEqual([
			{
				kind: "board",
				part: {
					id: "wobblestone-harvest",
					name: "Wobblestone Harvest",
					socket: "Harbour 2",
					supportList: expect.objectContaining({
						rows: [{ processor: "Tallowfinch Deckhand", fromVersion: "1.10" }],
					}),
					form: "microATX",
					memory: { type: "DDR5", slots: 4, maxGb: 192 },
					power: { processorPlugs: ["8-pin"] },
					pictureSockets: ["HDMI", "DisplayPort"],
					rearUsb: [
						{ plug: "A", count: 6 },
						{ plug: "C", count: 1 },
					],
					m2Sockets: [
						{ name: "M2_1", key: "M", lengthsMm: [80] },
						{ name: "M2_2", key: "M", lengthsMm: [80] },
					],
					drivePorts: [{ name: "SATA_1", kind: "SATA" }],
					wireless: { builtIn: true },
					price: { minor: 14_900, currency: "EUR" },
				},
			},
		]);
		expect(partKinds.board.schema.safeParse(state.ownParts[0]?.part).success).toBe(true);
	});

	test("leaves out what is not on the page", () => {
		const { state } = walkThrough(
			boardTold.map(() => notOnPage),
			begun,
		);
		expect(state.ownParts).toEqual([{ kind: "board", part: { id: "my-board", name: "my board" } }]);
		expect(state.place).toEqual({ at: "board", boardId: "my-board" });
	});

	test("goes back fact by fact, and takes what is then told in place of what was", () => {
		const third = walkThrough([...boardTold.slice(0, 3)], begun).state;
		const corrected = walkThrough([back, back, text("Kettle 7"), text("1.10")], third).state;
		expect(corrected.place).toEqual(third.place);
		expect(corrected.draft).toEqual({ ...third.draft, socket: "Kettle 7" });
	});

	test("remembers in words what was entered, and going on keeps it", () => {
		const fourth = walkThrough(boardTold.slice(0, 3), begun).state;
		expect(fourth.entered).toEqual({ 0: "Wobblestone Harvest", 1: "Harbour 2", 2: "1.10" });
		const second = walkThrough([back, back], fourth).state;
		expect(second.place).toMatchObject({ index: 1 });
		expect(walkThrough([next, next], second).state).toEqual(fourth);
		const unknown = walkThrough([notOnPage, back], second).state;
		expect(unknown.entered[1]).toBe("not on the page");
		expect(walkThrough([next, next], unknown).state.draft).not.toHaveProperty("socket");
	});

	test("does not go on from a fact that nothing was entered for", () => {
		expect(walkThrough([next], begun).state).toEqual(begun);
		const second = walkThrough([boardTold[0] as WalkEvent], begun).state;
		expect(walkThrough([next], second).state).toEqual(second);
	});

	test("takes a fact back that turns out not to be on the page", () => {
		const told = walkThrough(boardTold.slice(0, 14), begun).state;
		expect(told.draft).toMatchObject({ wireless: { builtIn: true }, memory: { type: "DDR5", slots: 4, maxGb: 192 } });
		const without = walkThrough([back, notOnPage], told).state;
		expect(without.place).toEqual(told.place);
		expect(without.draft).not.toHaveProperty("wireless");
		const { memory: _memory, ...others } = told.draft;
		const slotsOnly = walkThrough([...Array<WalkEvent>(10).fill(back), notOnPage], told).state;
		expect(slotsOnly.draft).toEqual({ ...others, memory: { slots: 4, maxGb: 192 } });
	});

	test("back from the first fact leaves the description, and nothing of it stays", () => {
		const { state } = walkThrough([boardTold[0] as WalkEvent, back, back], begun);
		expect(state.place).toEqual({ at: "shortlist" });
		expect(state.ownParts).toEqual([]);
		expect(walkThrough([{ type: "describe-board" }], state).state.draft).toEqual({});
	});

	test("keeps the place where a fact cannot be read, and what was told so far", () => {
		const fourth = walkThrough(boardTold.slice(0, 3), begun).state;
		const { state } = walkThrough([text("as big as a door")], fourth);
		expect(state).toEqual({ ...fourth, problem: expect.stringMatching(/\w/) });
		expect(walkThrough([{ type: "fact", value: "as big as a door" }], fourth).state).toEqual(fourth);
	});

	test("does not ask for the support list where there is no processor to look for", () => {
		const asked = factsToDescribe(demo, walkThrough([{ type: "describe-board" }]).state).map(({ path }) => path);
		expect(asked).not.toContain("supportList");
		expect(asked).toHaveLength(boardTold.length - 1);
	});

	test("gives every board an id of its own", () => {
		const twice = walkThrough([...boardTold, { type: "describe-board" }, ...boardTold], begun).state;
		expect(twice.ownParts.map(({ part: { id } }) => id)).toEqual(["wobblestone-harvest", "wobblestone-harvest-2"]);
		const demoName = walkThrough([text("Oddment Button"), ...boardTold.slice(1).map(() => notOnPage)], begun).state;
		expect(demoName.ownParts[0]?.part.id).toBe("oddment-button-2");
	});
});

describe("describing a part of one's own", () => {
	test("becomes the answer to its question, in one save, and leads on", () => {
		const { state, effects } = walkThrough(
			[{ type: "describe" }, text("Gatepost"), text("ATX, matx and itx"), text("36 cm")],
			walkAt(question("fit/case")),
		);
		expect(state.ownParts).toEqual([
			{
				kind: "case",
				part: { id: "gatepost", name: "Gatepost", boardForms: ["ATX", "microATX", "Mini-ITX"], cardMaxLengthMm: 360 },
			},
		]);
		expect(state.answers["fit/case"]).toEqual({ status: "answered", value: { part: "gatepost" }, by: "builder" });
		// A case nobody knows more of is asked about further.
		expect(state.place).toEqual(question("fit/case-front"));
		expect(effects).toEqual([{ type: "save" }]);
	});

	test("from the review comes back to the review", () => {
		const before: WalkState = { ...walkWith(quietAnswers), place: { at: "shortlist" } };
		const { state } = walkThrough(
			[
				review,
				{ type: "change", questionId: "fit/supply" },
				{ type: "describe" },
				text("Old Faithful"),
				{ type: "fact", value: ["8-pin", "4-pin"] },
				text("550 W"),
			],
			before,
		);
		expect(state.place).toEqual({ at: "review" });
		expect(state.answers["fit/supply"]?.value).toEqual({ part: "old-faithful" });
	});

	test("back from the first fact returns to its question, which has no answer yet", () => {
		const { state } = walkThrough([{ type: "describe" }, back], walkAt(question("fit/memory")));
		expect(state).toEqual(walkAt(question("fit/memory")));
	});

	test("looking something up on the way keeps what was told", () => {
		const told = walkThrough([{ type: "describe" }, text("Gatepost"), text("ATX")], walkAt(question("fit/case"))).state;
		const { state } = walkThrough([review, back], told);
		expect(state).toEqual(told);
	});

	test("is only for questions about a part", () => {
		const before = walkAt(question("about/budget"));
		expect(walkThrough([{ type: "describe" }], before).state).toEqual(before);
	});

	test.each(["fit/processor", "fit/case", "fit/graphics-card", "fit/memory", "fit/supply"])(
		"%s: nothing on the page still makes a part that a file may hold",
		(id) => {
			let { state } = walkThrough([{ type: "describe" }], walkAt(question(id)));
			const count = factsToDescribe(demo, state).length;
			expect(count).toBeGreaterThan(1);
			state = walkThrough(Array<WalkEvent>(count).fill(notOnPage), state).state;
			const [own] = state.ownParts;
			expect(own && partKinds[own.kind].schema.safeParse(own.part).success).toBe(true);
			expect(state.answers[id]?.value).toEqual({ part: own?.part.id });
		},
	);
});

describe("leaving", () => {
	test.each<Place>([{ at: "shortlist" }, { at: "sheet" }, { at: "board", boardId: "oddment-button" }])(
		"with a shortlist seen is finishing: %j",
		(place) => {
			const { state, effects } = walkThrough([{ type: "leave" }], { ...walkDone(quietAnswers), place });
			expect(state.place).toEqual({ at: "left" });
			expect(effects).toEqual([{ type: "save" }, { type: "leave", finished: true }]);
		},
	);

	test.each<Place>([{ at: "start" }, question("fit/case"), { at: "tier-end", tier: "quality" }, { at: "review" }])(
		"before that, with a question left, is leaving early: %j",
		(place) => {
			const { effects } = walkThrough([{ type: "leave" }], { ...walkDone(quietAnswers, "quality/rescue"), place });
			expect(effects).toEqual([{ type: "save" }, { type: "leave", finished: false }]);
		},
	);

	test("with every question dealt with is finishing, wherever one stands", () => {
		const { effects } = walkThrough([{ type: "leave" }], { ...walkDone(quietAnswers), place: { at: "review" } });
		expect(effects.at(-1)).toEqual({ type: "leave", finished: true });
	});

	test("from a place looked at behind the shortlist is finishing too", () => {
		const { effects } = walkThrough([review, { type: "change", questionId: "fit/case" }, { type: "leave" }], {
			...walkWith(quietAnswers),
			place: { at: "shortlist" },
		});
		expect(effects.at(-1)).toEqual({ type: "leave", finished: true });
	});

	test("is for good: nothing happens afterwards", () => {
		const left = walkThrough([{ type: "leave" }], walkWith(quietAnswers)).state;
		for (const event of [next, back, review, text("x"), part("larkspur-barn"), { type: "leave" } as const])
			expect(update(demo, left, event)).toEqual([left, []]);
	});
});

describe("the sheet", () => {
	const before: WalkState = { ...walkWith(quietAnswers), place: { at: "sheet" } };

	test("is written by the outside, by choice or by typing a name", () => {
		expect(walkThrough([{ type: "write-sheet", to: " my sheet.md " }], before)).toEqual({
			state: before,
			effects: [{ type: "write-sheet", to: "my sheet.md", orNext: false }],
		});
		expect(walkThrough([{ type: "write-sheet", to: "paper.md", orNext: true }], before).effects).toEqual([
			{ type: "write-sheet", to: "paper.md", orNext: true },
		]);
		expect(walkThrough([text("other.txt")], before).effects).toEqual([
			{ type: "write-sheet", to: "other.txt", orNext: false },
		]);
	});

	test("is not written to no name", () => {
		expect(walkThrough([{ type: "write-sheet", to: "  " }, text("")], before)).toEqual({ state: before, effects: [] });
	});

	test("is told to be written, with the path, until the next step", () => {
		const written = walkThrough([{ type: "written", path: "/desk/sheet.md" }], before).state;
		expect(written).toEqual({ ...before, notice: expect.stringContaining("/desk/sheet.md") });
		expect(walkThrough([{ type: "shortlist" }], written).state.notice).toBeNull();
	});

	test("is told not to be written, and why, and one stays there", () => {
		const { state } = walkThrough([{ type: "not-written", problem: "sheet.md is there already." }], before);
		expect(state).toEqual({ ...before, problem: "sheet.md is there already." });
	});
});

describe("settings and other walks", () => {
	test("a setting holds at once and is to be kept", () => {
		const before = walkAt({ at: "settings" });
		const settings = { ...before.settings, characters: "ascii" } as const;
		expect(walkThrough([{ type: "set", setting: { characters: "ascii" } }], before)).toEqual({
			state: { ...before, settings },
			effects: [{ type: "keep-settings", settings }],
		});
	});

	test("another walk is opened by the outside", () => {
		const before = walkAt({ at: "saved-walks" });
		expect(walkThrough([{ type: "open", file: "/kept/walk.json" }], before)).toEqual({
			state: before,
			effects: [{ type: "open", file: "/kept/walk.json" }],
		});
	});

	test("a word from outside is shown", () => {
		expect(walkThrough([{ type: "tell", words: "Look here." }], startWalk()).state.notice).toBe("Look here.");
	});
});

test("what was written is called what it is", () => {
	const said = (path: string) => update(demo, startWalk(), { type: "written", path })[0].notice;
	expect(said("/home/me/sheet.html")).toBe("The sheet is written: /home/me/sheet.html");
	expect(said("/home/me/board.svg")).toBe("The drawing is written: /home/me/board.svg");
});
