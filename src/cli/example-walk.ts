import example from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import type { AnswersFile } from "../parts/answers-file.ts";
import { takeUpWalk } from "../walk/saved-walk.ts";
import type { WalkContext, WalkState } from "../walk/walk-state.ts";
import { demoMarket } from "./demo-market.ts";

export const exampleWords = "This is a made-up person's result. Look round and try things: nothing is kept here.";

/** A made-up person's walk, to look round in, with the boards and the day it was made for. */
export function exampleWalk(): { readonly state: WalkState; readonly context: WalkContext } {
	const context: WalkContext = { market: demoMarket(), asOf: example.asOf };
	const { state } = takeUpWalk(context, example as AnswersFile);
	return {
		context,
		state: { ...state, isExample: true, place: { at: "start" }, notice: null },
	};
}
