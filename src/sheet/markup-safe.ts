import { cleanLine } from "../parts/clean-text.ts";

/**
 * A text in which no character has a meaning for HTML or XML: one line, without control and direction characters and
 * without those that XML does not allow in any form (XML 1.0, section 2.2).
 */
export function markupSafe(text: string): string {
	return cleanLine(text)
		.replace(/[\p{Cs}\ufffe\uffff]/gu, " ")
		.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
