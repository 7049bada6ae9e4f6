import type { Screen } from "./screen.ts";

/** Where every page behind a board's own screen leads back to. */
export const waysFromBoardPage = {
	choices: [
		{ label: "Back to what was checked", event: { type: "back" } },
		{ label: "Back to the shortlist", event: { type: "shortlist" } },
		{ label: "Like this one, but better in one way", event: { type: "like" } },
	],
	enter: { words: "back to what was checked", event: { type: "back" } },
} as const satisfies Partial<Screen>;
