import { glossary } from "../../src/reference/glossary.ts";

/**
 * Terms of the trade that screens use as they are: each counts as one short word when reading is measured, since the
 * glossary, one key away, explains it. At most forty entries.
 */
export const tradeTerms: readonly string[] = glossary.flatMap(({ word, forms }) => [word, ...(forms ?? [])]);
