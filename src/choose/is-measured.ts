import { isMeasuredPath } from "../parts/fact-path.ts";
import type { Rule } from "../rules/define-rule.ts";

/** Whether a rule reads what must be measured of the whole build first: such rules are run last. */
export function isMeasured({ reads, mayRead }: Rule): boolean {
	return [...reads, ...mayRead].some(isMeasuredPath);
}
