import { runPlainWalk } from "../../src/plain/run-plain-walk.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { update } from "../../src/walk/update.ts";
import type { WalkEffect } from "../../src/walk/walk-event.ts";
import { startWalk, type WalkContext, type WalkState } from "../../src/walk/walk-state.ts";
import { demo } from "../walk/walk-in-demo.ts";

/** What came of a line-by-line walk. */
export interface PlainWalk {
	readonly state: WalkState;
	readonly effects: readonly WalkEffect[];
	/** All that was written, prompts too. */
	readonly said: string;
	/** What was written after each line, the first entry before any. */
	readonly steps: readonly string[];
	/** Prompts, in order. */
	readonly prompts: readonly string[];
}

/** Walks line by line without a terminal; after the last line the input ends. */
export async function plainWalkOf(
	lines: readonly string[],
	{ from = startWalk(), context = demo, width = 78 }: { from?: WalkState; context?: WalkContext; width?: number } = {},
): Promise<PlainWalk> {
	const left = [...lines];
	const effects: WalkEffect[] = [];
	const steps = [""];
	const prompts: string[] = [];
	let state = from;
	const write = (text: string) => {
		steps.push((steps.pop() ?? "") + text);
	};
	await runPlainWalk({
		screen: () => screenOf(context, state),
		dispatch: (event) => {
			const [after, asked] = update(context, state, event);
			state = after;
			effects.push(...asked);
		},
		write,
		readLine: (prompt) => {
			write(prompt);
			prompts.push(prompt);
			steps.push("");
			return Promise.resolve(left.shift() ?? null);
		},
		width,
	});
	return { state, effects, said: steps.join(""), steps, prompts };
}
