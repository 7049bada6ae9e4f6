import { makeMarket } from "../../src/parts/make-market.ts";
import type { PartsFile } from "../../src/parts/market.ts";
import type { Question, QuestionContext } from "../../src/questions/define-question.ts";

/** What every question says, for questions that a test makes up. */
export const madeUpWords = {
	id: "features/made-up",
	tier: "features",
	ask: "Which of these?",
	hint: "Any of them",
	label: "Made up",
	why: "To try it.",
	whereToFind: "Nowhere.",
	changes: "Nothing.",
	notSure: "Nothing.",
	howToFindOut: "Not at all.",
} as const satisfies Partial<Question>;

/** A market of these parts and of no others, on 24 November 2026. */
export function contextOf(parts: Omit<PartsFile, "schema"> = {}): QuestionContext {
	return { market: makeMarket("made up", [{ schema: "boardwalk/parts@1", ...parts }]).market, asOf: "2026-11-24" };
}
