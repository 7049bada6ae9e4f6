import { viewWalk } from "../screens/walk-view.ts";
import { adviceJson } from "../sheet/advice-json.ts";
import type { WalkContext, WalkState } from "../walk/walk-state.ts";

/** The shortlist of a walk as advice@1, indented with tabs; ends with a line feed. */
export function adviceText(context: WalkContext, state: WalkState): string {
	const view = viewWalk(context, state);
	return `${JSON.stringify(adviceJson(view.judgement(), view.advice(), view.state.answers, view.context), null, "\t")}\n`;
}
