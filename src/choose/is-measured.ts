import { pathParts } from "../parts/fact-path.ts";
import type { Rule } from "../rules/define-rule.ts";

const measuredRoots = ["plan", "headers", "power"];

/** Whether a rule reads what must be measured of the whole build first: such rules are run last. */
export function isMeasured({ reads, mayRead }: Rule): boolean {
	return [...reads, ...mayRead].some((path) => measuredRoots.includes(pathParts(path).root));
}
