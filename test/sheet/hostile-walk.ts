import { type AnswersFile, answersFile } from "../../src/parts/answers-file.ts";
import { answersOfToday } from "../../src/parts/answers-versions.ts";
import { type Checked, checkJson } from "../../src/parts/check-json.ts";
import { cleanJson, cleanLine } from "../../src/parts/clean-text.ts";
import { findPart } from "../../src/parts/market.ts";
import { partBasics } from "../../src/parts/part-basics.ts";
import type { PartKind } from "../../src/parts/part-kinds.ts";
import { partKindNames } from "../../src/parts/part-kinds.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { takeUpWalk } from "../../src/walk/saved-walk.ts";
import { demo, scenarios } from "../walk/walk-in-demo.ts";
import { sheetOf } from "./sheet-of.ts";

/**
 * A person's walk with every part they named, and the boards they were shown, as parts of their own that have this name;
 * maker, quotes, notes, suggestions and who gave each answer are this word too. Parsed JSON, as a stranger sends it.
 */
export function strangersFile(word: string, person = "showpiece"): unknown {
	const scenario = scenarios.find(({ name }) => name === person);
	if (!scenario) throw new Error(`${person} is gone`);
	const copies = new Map<string, { readonly kind: PartKind; readonly part: { readonly id: string } }>();
	const copyOf = (id: unknown): string | null => {
		if (typeof id !== "string") return null;
		const kind = partKindNames.find((one) => findPart(demo.market, one, id));
		if (!kind) return null;
		const part = findPart(demo.market, kind, id);
		const copy = copies.get(id)?.part ?? { ...part, ...named(word), id: `own-${copies.size}` };
		copies.set(id, { kind, part: copy });
		return copy.id;
	};
	const withCopies = (value: unknown): unknown => {
		if (Array.isArray(value)) return value.map((one) => copyOf(one) ?? one);
		if (typeof value !== "object" || value === null || !("part" in value)) return value;
		return { ...value, part: copyOf(value.part) ?? value.part };
	};
	const answers = Object.fromEntries(
		Object.entries(scenario.file.answers).map(([id, answer]) => [
			id,
			{ ...answer, value: withCopies(answer.value), by: word.slice(0, 60), note: word },
		]),
	);
	for (const { boardId } of sheetOf(scenario.state).shortlist) copyOf(boardId);
	const suggestions = ["open", "taken", "left"].map((state, index) => ({
		questionId: Object.keys(answers)[index * 3],
		status: "not-sure",
		by: word.slice(0, 60),
		why: word,
		on: demo.asOf,
		state,
	}));
	return {
		...scenario.file,
		schema: "boardwalk/answers@2",
		name: word.slice(0, 80),
		answers,
		parts: [...copies.values()],
		suggestions,
	};
}

function named(word: string): object {
	const evidence = { standing: "stated", quote: word, where: word, by: word };
	// No part of the demonstration: such ones make way for a person's own.
	return { name: word, maker: word, revision: word.slice(0, 40), invented: false, evidence: { price: evidence } };
}

/** A file as it is read: what is parsed is cleaned, brought to today's version and checked. */
export function readBack(json: unknown): Checked<AnswersFile> {
	return checkJson(answersFile, answersOfToday(cleanJson(json)));
}

/** Stands wherever a stranger's word may, and means nothing to anybody. */
export const marker = "Qxmarker";

/** A stranger's walk as it is read, and its sheet. */
export function strangersWalk(word: string, person: string): { readonly file: AnswersFile; readonly sheet: Sheet } {
	const { value, faults } = readBack(strangersFile(word, person));
	if (!value) throw new Error(JSON.stringify(faults));
	return { file: value, sheet: sheetOf(takeUpWalk(demo, value).state) };
}

/** The name that is left of a word once a file with it was read; null where such a file is refused. */
export function nameRead(word: string): string | null {
	return checkJson(partBasics.name, cleanJson(word.slice(0, 120))).value;
}

/** The names that are read of these words and stand on one line; the letters of harmless names are left out. */
export function namesRead(words: readonly string[]): readonly string[] {
	return words
		.flatMap((word) => nameRead(word) ?? [])
		.filter((name) => name === cleanLine(name) && !/[\u6000-\u60ff]/.test(name));
}

/**
 * The same with a word in each of the marker's places: the first word in the first place, and so on, over and over.
 * Pictures as SVG stay: no word gets there but through its own escape.
 */
export function withWords<T>(value: T, words: readonly string[]): T {
	let place = 0;
	const next = () => words[place++ % words.length] ?? "";
	const changed = (one: unknown): unknown => {
		if (typeof one === "string") return one.replaceAll(marker, next);
		if (Array.isArray(one)) return one.map(changed);
		if (typeof one !== "object" || one === null) return one;
		return Object.fromEntries(Object.entries(one).map(([key, inner]) => [key, key === "svg" ? inner : changed(inner)]));
	};
	return changed(value) as T;
}

/** Harmless names as long as these and with the same gaps, each of a letter that stands nowhere else. */
export function harmlessLike(names: readonly string[]): readonly string[] {
	return names.map((name, index) => name.replace(/\S/g, String.fromCharCode(firstHarmless + index)));
}

/** Ideographs, which have no capitals; none of the hostile words has one from here on. */
const firstHarmless = 0x6000;

/** A text with harmless names as it has to be with these. */
export function asNamed(text: string, names: readonly string[]): string {
	return harmlessLike(names).reduce(
		(said, harmless, index) => said.replaceAll(harmless, () => names[index] ?? ""),
		text,
	);
}
