import { cleanLine } from "../parts/clean-text.ts";
import { newEntry, valueIn } from "../parts/form-draft.ts";
import { type FormField, type FormPath, fieldAt } from "../parts/form-fields.ts";
import { readTyped } from "../parts/form-read.ts";
import { currencyOf } from "../questions/money-question.ts";
import { readMoney } from "../questions/read-money.ts";
import { askedIn, containerOf, placeAfterFact, placeAfterThing, placeAmongAsked } from "./form-places.ts";
import { marketOf } from "./market-of.ts";
import { factPath, isAllowed, type PartForm, settled, withFact, withoutFact } from "./part-form.ts";
import type { WalkEffect, WalkEvent } from "./walk-event.ts";
import type { Place, WalkContext, WalkState } from "./walk-state.ts";

type Step = readonly [WalkState, readonly WalkEffect[]];

/** A step inside a form. */
export interface FormStep {
	readonly context: WalkContext;
	readonly state: WalkState;
	readonly form: PartForm;
}

type FactPlace = Extract<Place, { at: "fact-form" }>;

/** A step where one fact, list or thing of the form is asked. */
export function atFactForm(step: FormStep, place: FactPlace, event: WalkEvent): Step | null {
	const { state, form } = step;
	const { path } = place;
	const field = fieldAt(form.kind, path);
	if (!field) return event.type === "next" ? [{ ...state, place: { at: "part-form" } }, []] : null;
	const enter = (value: unknown): Step => goOn(step, place, withFact(form, path, value, entering(step)));
	switch (event.type) {
		case "next":
			return goOn(step, place, form);
		case "text": {
			const reading = readTyped(field, event.text, typedContext(step));
			return "problem" in reading ? [{ ...state, problem: reading.problem }, []] : enter(reading.value);
		}
		case "fact":
			return isAllowed(form, path, event.value) ? enter(event.value) : [state, []];
		case "not-on-page":
			return leftOut(step, place, field);
		case "mark":
			return [marked(step, path, field, event), []];
		case "add-entry":
			return [withEntry(step, place, field, event.like === true), []];
		case "remove-entry":
			return typeof path.at(-1) === "number"
				? [
						{
							...state,
							form: withoutFact(form, path, entering(step)),
							place: { at: "fact-form", path: path.slice(0, -1) },
						},
						[],
					]
				: [state, []];
		default:
			return null;
	}
}

function entering({ context, state }: FormStep) {
	return { by: state.by, asOf: context.asOf };
}

function typedContext({ context, state }: FormStep) {
	const currency = currencyOf(marketOf(context.market, state.ownParts));
	return { asOf: context.asOf, readMoney: (text: string) => readMoney(text, currency) };
}

/** On to what comes after a fact. */
function goOn({ state }: FormStep, place: FactPlace, form: PartForm): Step {
	const { path } = place;
	const isThing = fieldAt(form.kind, path)?.typed.as === "thing";
	const after = isThing ? placeAfterThing(form, path) : placeAfterFact(form, path, place.guided === true);
	return [{ ...state, form: after.done ? { ...form, isGuided: false } : form, place: after.place }, []];
}

/** Nothing is known of a fact. A thing that cannot be without it goes with it, and that is said. */
function leftOut(step: FormStep, place: FactPlace, field: FormField): Step {
	const { state, form } = step;
	const { path } = place;
	const container = containerOf(form, path);
	if (!field.required || container.length === 0) return goOn(step, place, withoutFact(form, path, entering(step)));
	const without = withoutFact(form, container, entering(step));
	const title = fieldAt(form.kind, container)?.title ?? "This";
	const notice = `${title}: left out, because it cannot be told without this fact.`;
	const [next] = placeOut({ ...step, form: without }, container);
	return [{ ...next, notice }, []];

	function placeOut(inside: FormStep, thing: FormPath): Step {
		const after = placeAfterThing(inside.form, thing);
		return [{ ...state, form: after.done ? { ...inside.form, isGuided: false } : inside.form, place: after.place }, []];
	}
}

/** One line of a list marked once more, or once less; past the most for none. */
function marked(
	step: FormStep,
	path: FormPath,
	{ typed }: FormField,
	{ value, by }: Extract<WalkEvent, { type: "mark" }>,
): WalkState {
	const { state, form } = step;
	if (typed.as !== "several" || !typed.choices.includes(value)) return state;
	const before = (valueIn(form.draft, path) ?? []) as readonly string[];
	const count = before.filter((one) => one === value).length + by;
	const wanted = count < 0 || count > (typed.repeats ? typed.most : 1) ? 0 : count;
	const now = typed.choices.flatMap((one) =>
		Array<string>(one === value ? wanted : before.filter((other) => other === one).length).fill(one),
	);
	if (now.length === 0) return { ...state, form: withoutFact(form, path, entering(step)) };
	if (now.length > typed.most) return { ...state, problem: `At most ${typed.most} of them.` };
	return isAllowed(form, path, now) ? { ...state, form: withFact(form, path, now, entering(step)) } : state;
}

/** One more entry in a list: asked fact by fact, or shown where it is like the last. */
function withEntry(step: FormStep, { path }: FactPlace, field: FormField, isLike: boolean): WalkState {
	const { state, form } = step;
	if (field.typed.as !== "things") return state;
	const value = valueIn(form.draft, path);
	const entries = Array.isArray(value) ? (value as readonly object[]) : [];
	if (entries.length >= field.typed.most) return { ...state, problem: `At most ${field.typed.most} of them.` };
	const last = entries.at(-1);
	if (isLike && !last) return state;
	const entry = newEntry(path, field, entries, isLike ? last : undefined);
	const at = [...path, entries.length];
	const next = withFact(form, at, entry, entering(step));
	const open = askedIn(next, at).find((inner) => valueIn(entry, inner.path) === undefined);
	const place: FactPlace =
		isLike || !open ? { at: "fact-form", path } : { at: "fact-form", path: [...at, ...open.path], guided: true };
	return { ...state, form: next, place };
}

/** A step where the page left something open. */
export function atDoubt(step: FormStep, place: Extract<Place, { at: "doubt" }>, event: WalkEvent): Step | null {
	const { state, form } = step;
	const doubt = form.doubts[place.index];
	if (!doubt) return event.type === "next" ? [{ ...state, place: { at: "part-form" } }, []] : null;
	const settle = (value: unknown): Step => {
		const next = settled(form, place.index, value, entering(step));
		if (!next) return [{ ...state, problem: "This fact cannot have that value." }, []];
		// The next one has its place by now.
		const index = Math.min(place.index, next.doubts.length - 1);
		return [{ ...state, form: next, place: index >= 0 ? { at: "doubt", index } : { at: "part-form" } }, []];
	};
	switch (event.type) {
		case "fact":
			return event.value === undefined ? [state, []] : settle(event.value);
		case "not-on-page":
			return settle(undefined);
		case "text": {
			const field = fieldAt(form.kind, factPath(doubt.fact));
			if (!field || isMadeOfFacts(field)) return [{ ...state, problem: "Pick one of the lines." }, []];
			const reading = readTyped(field, cleanLine(event.text), typedContext(step));
			return "problem" in reading ? [{ ...state, problem: reading.problem }, []] : settle(reading.value);
		}
		case "next":
			return [{ ...state, place: { at: "part-form" } }, []];
		default:
			return null;
	}
}

/** Whether a field is a list or a thing, which is filled in fact by fact and never typed. */
export function isMadeOfFacts({ typed }: FormField): boolean {
	return typed.as === "things" || typed.as === "thing";
}

/** Place of a fact among those asked one after the other, from 1, and how many they are; null where it is not. */
export function askedPlace(form: PartForm, path: FormPath): { readonly number: number; readonly of: number } | null {
	const at = placeAmongAsked(form, path);
	return at < 0 ? null : { number: at + 1, of: askedIn(form, containerOf(form, path)).length };
}
