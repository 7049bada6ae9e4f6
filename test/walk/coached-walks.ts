import type { Suggestion } from "../../src/parts/answers-file.ts";
import type { WalkState } from "../../src/walk/walk-state.ts";
import { demo, quietAnswers, walkDone } from "./walk-in-demo.ts";

/** What somebody proposes, with nothing decided. */
export function proposed(questionId: string, value: Suggestion["value"], more: Partial<Suggestion> = {}): Suggestion {
	return {
		questionId,
		...(value === undefined ? { status: "not-sure" } : { status: "answered", value }),
		by: "Ida",
		on: demo.asOf,
		state: "open",
		...more,
	} as Suggestion;
}

const { "fit/supply": _, ...withoutSupply } = quietAnswers;

/** The quiet desk with its supply and all that is not in the short list of answers open. */
export const builders: WalkState = walkDone(withoutSupply, "fit/later", "features/colour");

/** The same walk in the hands of a helper, on the page of what to check. */
export function inHandsOf(by: string, state: WalkState = builders): WalkState {
	return {
		...state,
		by,
		coaching: { theirParts: state.ownParts.map(({ kind, part }) => `${kind}/${part.id}`) },
		place: { at: "coach" },
		returnTo: [],
	};
}

/** A helper proposes three things, and two copies of the walk answer the case differently. */
export const withSuggestions: WalkState = {
	...builders,
	answers: { ...builders.answers, "fit/case": { status: "not-sure" } },
	suggestions: [
		proposed("about/budget", { minor: 15_000, currency: "EUR" }, { why: "The rest is better spent on memory." }),
		proposed("features/rear-usb-c", "would-like"),
		proposed("features/wireless", undefined, { why: "Ask at home where the computer will stand.", by: "Uncle Joe" }),
		proposed("fit/case", { part: "larkspur-wardrobe" }, { by: "builder", rival: true }),
		proposed("fit/case", "open", { by: "Ida", rival: true }),
		proposed("quality/rescue", "a-little", { state: "left" }),
		proposed("features/rear-devices", 5, { state: "taken" }),
	],
};

/** Walks in which somebody helps, or has helped. */
export const coachedWalks: readonly { readonly name: string; readonly state: WalkState }[] = [
	{ name: "someone to whom others suggest things", state: withSuggestions },
	{ name: "a helper", state: inHandsOf("Ida", withSuggestions) },
	{ name: "a helper who wants to see numbers and sources", state: { ...inHandsOf("Ida"), showsSources: true } },
];
