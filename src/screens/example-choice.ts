import type { WalkState } from "../walk/walk-state.ts";
import type { Choice } from "./screen.ts";

/** In the example, the way back to one's own walk; elsewhere nothing. */
export function exampleChoice({ isExample }: WalkState): readonly Choice[] {
	return isExample
		? [{ label: "Leave the example, back to my own walk", event: { type: "leave-example" as const } }]
		: [];
}

/** Says on every screen of the example that it is one. */
export function examplePlace(place: string): string {
	return place === "" ? "Example: nothing is kept" : `Example: ${place}`;
}
