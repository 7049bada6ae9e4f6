import { partKinds } from "../parts/part-kinds.ts";
import { readSupportList, supportListOf } from "../reading/support-list.ts";
import { mostLines } from "../reading/text-lines.ts";
import { mostPasted } from "./own-places.ts";
import { formOfReading, withFact } from "./part-form.ts";
import { readPage } from "./read-page.ts";
import type { Place, WalkContext, WalkState } from "./walk-state.ts";

type Reading = Extract<Place, { at: "read-part" }>;

/** The walk with more text taken; what is too much is refused, and what was taken before stays. */
export function pasted(state: WalkState, text: string): WalkState {
	return withText(state, text, false);
}

/** One line typed, or pasted where a terminal does not tell a paste from typing. A dot alone ends the text. */
export function typedLine(context: WalkContext, state: WalkState, place: Reading, line: string): WalkState {
	if (line.trim() === ".")
		return readPasted(context, { ...state, pasted: state.pasted && { ...state.pasted, isTyped: false } }, place);
	if (line.trim() === "") return readPasted(context, state, place);
	return withText(state, line, true);
}

function withText(state: WalkState, text: string, isTyped: boolean): WalkState {
	if (text.trim() === "") return state;
	const before = state.pasted?.text ?? "";
	const whole = before + text + (/[\r\n]$/.test(text) ? "" : "\n");
	if (whole.length > mostPasted)
		return {
			...state,
			problem: `That is too much text: ${mostPasted / 1_000_000} million letters at most. ${before === "" ? "Nothing was taken" : "What was taken before is still here"}.`,
		};
	return { ...state, pasted: { text: whole, lines: linesIn(whole), isTyped } };
}

function linesIn(text: string): number {
	return text.split(/\r\n?|\n/).filter((line) => line.trim() !== "").length;
}

/** What was pasted is read: it becomes a form to confirm, or the processor list of the board being filled in. */
export function readPasted(context: WalkContext, state: WalkState, place: Reading): WalkState {
	if (!state.pasted) return { ...state, problem: "There is no text yet. Paste it here first." };
	if (state.pasted.isTyped)
		return { ...state, pasted: { ...state.pasted, isTyped: false }, notice: "Press Enter once more to read it." };
	const { text, lines } = state.pasted;
	const tooLong = lines > mostLines ? `Only the first ${mostLines} lines were read. ` : "";
	if (place.what === "support-list") return withSupportList(context, state, text, tooLong);
	const reading = readPage(place.what, text);
	if (reading.facts.length === 0 && reading.doubts.length === 0)
		return {
			...state,
			problem: `Nothing in this text reads like the page of a ${partKinds[place.what].noun}. Paste more of it, or start again.`,
		};
	return {
		...state,
		pasted: null,
		form: formOfReading(reading, place.questionId),
		place: { at: "part-form" },
		notice: tooLong.trim() || null,
	};
}

function withSupportList(context: WalkContext, state: WalkState, text: string, tooLong: string): WalkState {
	const { form } = state;
	if (!form) return state;
	const list = supportListOf(readSupportList(text), context.asOf);
	if (list.rows.length === 0)
		return { ...state, problem: "No list of processors was found in this text. Paste more of it, or start again." };
	return {
		...state,
		pasted: null,
		form: withFact(form, ["supportList"], list, { by: state.by, asOf: context.asOf }),
		place: { at: "part-form" },
		notice: `${tooLong}${list.partial ? "Some of the list could not be read. " : ""}${list.rows.length === 1 ? "One processor is" : `${list.rows.length} processors are`} noted from the list.`,
	};
}
