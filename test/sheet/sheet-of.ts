import { viewWalk } from "../../src/screens/walk-view.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import type { WalkContext, WalkState } from "../../src/walk/walk-state.ts";
import { demo } from "../walk/walk-in-demo.ts";

/** The sheet of a walk. */
export function sheetOf(state: WalkState, context: WalkContext = demo): Sheet {
	return viewWalk(context, state).sheet();
}
