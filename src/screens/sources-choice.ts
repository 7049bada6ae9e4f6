import type { WalkState } from "../walk/walk-state.ts";
import type { Choice } from "./screen.ts";

/** The line that shows numbers and sources with every screen, or hides them again. */
export function sourcesChoice({ showsSources }: Pick<WalkState, "showsSources">): Choice {
	return {
		label: `${showsSources ? "Hide" : "Show"} numbers and sources`,
		detail: 'Anywhere: Ctrl+T, or line by line the word "sources"',
		event: { type: "show-sources" },
	};
}
