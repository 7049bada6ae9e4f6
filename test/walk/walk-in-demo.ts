import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { demoFiles } from "../../src/cli/demo-market.ts";
import type { AnswersFile, AnswerValue } from "../../src/parts/answers-file.ts";
import { answersOfToday } from "../../src/parts/answers-versions.ts";
import { makeMarket } from "../../src/parts/make-market.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { takeUpWalk } from "../../src/walk/saved-walk.ts";
import { update } from "../../src/walk/update.ts";
import type { WalkEffect, WalkEvent } from "../../src/walk/walk-event.ts";
import { type Place, startWalk, type WalkContext, type WalkState } from "../../src/walk/walk-state.ts";
import { withFirstBoards } from "../choose/first-boards.ts";

/** The demonstration, frozen to its depth: no step of a walk may change what it is made in. */
export const demo: WalkContext = deepFreeze({
	// Of the same name as the program's own, so that walks kept with that one are at home here.
	market: withFirstBoards(makeMarket("the demonstration market (invented)", structuredClone(demoFiles)).market),
	asOf: "2026-11-24",
});

/** A market with no parts of any kind. */
export const emptyMarket: WalkContext = deepFreeze({
	market: makeMarket("an empty folder", []).market,
	asOf: "2026-11-24",
});

export function deepFreeze<T>(value: T): T {
	if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
	Object.freeze(value);
	for (const inner of Object.values(value)) deepFreeze(inner);
	return value;
}

/** Goes through events one by one; every state is frozen, so that a step that changes one throws. */
export function walkThrough(
	events: readonly WalkEvent[],
	from: WalkState = startWalk(),
	context: WalkContext = demo,
): { readonly state: WalkState; readonly effects: readonly WalkEffect[] } {
	const effects: WalkEffect[] = [];
	let state = deepFreeze(from);
	for (const event of events) {
		const [after, asked] = update(context, state, deepFreeze(event));
		state = deepFreeze(after);
		effects.push(...asked);
	}
	return { state, effects };
}

/** A walk that stands at a place, and else is as given. */
export function walkAt(place: Place, from: Partial<WalkState> = {}): WalkState {
	return { ...startWalk(), ...from, place };
}

/** Answers that leave a good part of the demonstration: the desk, no card, USB-C. */
export const quietAnswers: Readonly<Record<string, AnswerValue>> = {
	"about/budget": { minor: 20_000, currency: "EUR" },
	"fit/processor": { part: "tallowfinch-deckhand" },
	"fit/case": { part: "larkspur-wardrobe" },
	"fit/graphics-card": "none",
	"fit/memory": { part: "tabbywren-mittens" },
	"fit/supply": { part: "millpond-bonfire" },
	"features/wireless": "would-like",
	"features/rear-usb-c": "must",
	"features/rear-devices": 5,
	"features/spare-sockets": "a-little",
	"quality/stage-load": "somewhat",
	"quality/rescue": "a-lot",
};

/** What nobody is asked with those answers: an earlier one has settled it, or left it without sense. */
export const notAskedOfQuiet: readonly string[] = [
	"about/money-spent",
	"fit/candidates",
	"fit/case-front",
	"fit/front-plugs",
	"fit/returnable",
	"fit/return-until",
	"features/room",
];

/** One answer event a question, in the order asked; a question without a value here is answered "not sure". */
export function answering(values: Readonly<Record<string, AnswerValue>>): readonly WalkEvent[] {
	return allQuestions.map(({ id }): WalkEvent => {
		const value = values[id];
		return value === undefined ? { type: "not-sure" } : { type: "answer", value };
	});
}

/** A walk with these answers and no others, at the start. */
export function walkWith(values: Readonly<Record<string, AnswerValue>>): WalkState {
	return startWalk(
		Object.fromEntries(
			Object.entries(values).map(([id, value]) => [id, { status: "answered", value, by: "builder" } as const]),
		),
	);
}

/** A walk with these answers and "not sure" to every other question, at the start; questions left open have neither. */
export function walkDone(values: Readonly<Record<string, AnswerValue>>, ...open: readonly string[]): WalkState {
	const { answers } = walkWith(values);
	return startWalk(
		Object.fromEntries(
			allQuestions
				.filter(({ id }) => !open.includes(id))
				.map(({ id }) => [id, answers[id] ?? ({ status: "not-sure", by: "builder" } as const)]),
		),
	);
}

const folder = fileURLToPath(new URL("../../data/scenarios", import.meta.url));

/** The invented people of data/scenarios and the walks they left. */
export const scenarios: readonly { readonly name: string; readonly file: AnswersFile; readonly state: WalkState }[] =
	readdirSync(folder)
		.sort()
		.map((name) => {
			const file = answersOfToday(JSON.parse(readFileSync(`${folder}/${name}`, "utf8"))) as AnswersFile;
			return { name: name.replace(/\.json$/, ""), file, state: takeUpWalk(demo, file).state };
		});
