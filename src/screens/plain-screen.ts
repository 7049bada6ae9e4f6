import type { Screen } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** A screen with everything optional left empty. */
export function plainScreen(view: WalkView, given: Pick<Screen, "id" | "title"> & Partial<Screen>): Screen {
	return {
		place: "",
		body: [],
		choices: [],
		typing: null,
		isMenu: false,
		enter: null,
		side: [],
		help: [],
		sources: [],
		problem: view.state.problem,
		notice: view.state.notice,
		...given,
	};
}
