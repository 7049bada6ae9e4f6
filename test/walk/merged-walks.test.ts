import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Answer, type AnswersFile, answersFile, type OwnPart } from "../../src/parts/answers-file.ts";
import { sortedJson } from "../../src/parts/fingerprint.ts";
import { questionById } from "../../src/questions/all-questions.ts";
import { mergeWalks } from "../../src/walk/merged-walks.ts";
import { anyWalk, walkOf } from "./made-up-walks.ts";
import { deepFreeze } from "./walk-in-demo.ts";

const merge = (one: AnswersFile, other: AnswersFile) => mergeWalks(deepFreeze(one), deepFreeze(other)).walk;
/** A walk whose lists count as sets. */
const asSets = ({ answers, parts, suggestions = [], ...rest }: AnswersFile) => ({
	...rest,
	answers,
	parts: parts.map(sortedJson).sort(),
	suggestions: suggestions.map(sortedJson).sort(),
});

const set = (value: Answer["value"], more: Partial<Answer> = {}): Answer => ({
	status: "answered",
	value: value as NonNullable<Answer["value"]>,
	by: "builder",
	...more,
});
const unsure: Answer = { status: "not-sure", by: "builder" };
const walkWith = (answers: Record<string, Answer>, more: Partial<AnswersFile> = {}): AnswersFile => ({
	schema: "boardwalk/answers@2",
	asOf: "2026-11-24",
	market: { version: "market", fingerprint: "a" },
	answers,
	parts: [],
	...more,
});
const rescue = "quality/rescue";

/** Whether a part says all that another one says; its id may be a new one. */
function saysAllOf(one: object, part: object, isOutside = true): boolean {
	return Object.entries(part).every(([key, value]) => {
		if (isOutside && key === "id") return true;
		const said = (one as Record<string, unknown>)[key];
		return value !== null && typeof value === "object" && !Array.isArray(value) && said && typeof said === "object"
			? saysAllOf(said, value, false)
			: sortedJson(said) === sortedJson(value);
	});
}

/** The facts that an answer names instead of ids, since a part may get a new id. */
function holds(merged: AnswersFile, file: AnswersFile, questionId: string, value: Answer["value"]): boolean {
	const kind = questionById(questionId)?.partKind;
	const said = [
		...(merged.answers[questionId] ? [merged.answers[questionId]] : []),
		...(merged.suggestions ?? []).filter((one) => one.questionId === questionId),
	].map((one) => one.value);
	const partOf = (of: AnswersFile, id: string): OwnPart | undefined =>
		of.parts.find((own) => own.kind === kind && own.part.id === id);
	const isSameId = (id: string, other: string) => {
		const [part, found] = [partOf(file, id), partOf(merged, other)];
		return part ? found !== undefined && saysAllOf(found.part, part.part) : id === other;
	};
	const ids = (given: Answer["value"]) =>
		Array.isArray(given) ? given : typeof given === "object" && "part" in given ? [given.part] : null;
	const wanted = kind ? ids(value) : null;
	return said.some((one) => {
		const found = ids(one);
		if (!wanted || !found) return sortedJson(one ?? null) === sortedJson(value ?? null);
		return wanted.length === found.length && wanted.every((id, index) => isSameId(id, found[index] ?? ""));
	});
}

/** What of a walk is nowhere in a merged one. */
function lost(file: AnswersFile, merged: AnswersFile): readonly string[] {
	const all = [...Object.values(merged.answers), ...(merged.suggestions ?? [])];
	return [
		...Object.entries(file.answers).flatMap(([id, { status, value, note }]) => [
			...(status === "answered" && !holds(merged, file, id, value)
				? [`the answer to ${id}: ${sortedJson(value)}`]
				: []),
			...(note !== undefined && !all.some((one) => [(one as Answer).note, (one as { why?: string }).why].includes(note))
				? [`a note of ${id}: ${note}`]
				: []),
			...(merged.answers[id] ? [] : [`that ${id} was dealt with`]),
		]),
		...(file.suggestions ?? []).flatMap((one) =>
			holds(merged, file, one.questionId, one.value) &&
			(merged.suggestions ?? []).some(
				(kept) => kept.questionId === one.questionId && kept.by === one.by && kept.why === one.why,
			)
				? []
				: [`the suggestion of ${one.by}: ${sortedJson(one.value)}`],
		),
		...file.parts.flatMap(({ kind, part }) =>
			merged.parts.some((own) => own.kind === kind && saysAllOf(own.part, part)) ? [] : [`the part ${part.id}`],
		),
	];
}

describe("any two walks", () => {
	test("merge into one that a file may hold, the same whichever is named first", () => {
		fc.assert(
			fc.property(anyWalk, anyWalk, fc.option(anyWalk), (one, other, start) => {
				const merged = mergeWalks(deepFreeze(one), deepFreeze(other), deepFreeze(start));
				expect(answersFile.safeParse(merged.walk)).toMatchObject({ success: true });
				expect(asSets(merged.walk)).toEqual(asSets(mergeWalks(other, one, start).walk));
			}),
			{ numRuns: 400 },
		);
	});

	test("a walk merged with itself is the walk, and merged once more with either nothing changes", () => {
		fc.assert(
			fc.property(anyWalk, anyWalk, (one, other) => {
				const merged = merge(one, other);
				expect(asSets(merge(merged, merged))).toEqual(asSets(merged));
				expect(Object.keys(merge(merged, one).answers)).toEqual(Object.keys(merged.answers));
				expect(merge(merged, other).parts).toHaveLength(merged.parts.length);
			}),
			{ numRuns: 300 },
		);
	});

	test("a walk without open rivals merged with itself stays as it is", () => {
		for (const name of ["quiet-desk", "typed-in", "before-any-board"]) {
			const walk = walkOf(name);
			expect(merge(walk, walk)).toEqual(walk);
		}
	});
});

describe("three walks", () => {
	test("merge in any order with no answer, note, part or suggestion lost", () => {
		fc.assert(
			fc.property(anyWalk, anyWalk, anyWalk, (first, second, third) => {
				const all = [first, second, third];
				const orders = [
					merge(merge(first, second), third),
					merge(first, merge(second, third)),
					merge(merge(third, first), second),
				];
				for (const merged of orders) for (const file of all) expect(lost(file, merged)).toEqual([]);
			}),
			{ numRuns: 400 },
		);
	});
});

describe("without a start", () => {
	test.each<[string, Answer | undefined]>([
		["none", undefined],
		["not sure", unsure],
		["passed over", { status: "skipped" }],
	])("an answer counts for more than %s, and it is told", (_, less) => {
		const one = walkWith({ [rescue]: set("a-lot") });
		const other = walkWith(less ? { [rescue]: less } : {});
		const { walk, answers } = mergeWalks(one, other);
		expect(walk.answers[rescue]).toEqual(set("a-lot"));
		expect(answers).toEqual([
			{ questionId: rescue, how: "taken", from: "one", one: set("a-lot"), other: less ?? null },
		]);
		expect(mergeWalks(other, one).answers[0]).toMatchObject({ how: "taken", from: "other" });
	});

	test("two answers that differ are open rivals, with who gave them and why; the question is not sure", () => {
		const { walk, answers } = mergeWalks(
			walkWith({ [rescue]: set("a-lot", { note: "as the label says" }) }),
			walkWith({ [rescue]: set("a-little", { by: "Mia" }) }, { asOf: "2026-11-26" }),
		);
		expect(walk.answers[rescue]).toEqual({ status: "not-sure" });
		const rival = { questionId: rescue, status: "answered", state: "open", rival: true } as const;
		expect(walk.suggestions).toEqual([
			{ ...rival, value: "a-lot", by: "builder", why: "as the label says", on: "2026-11-24" },
			{ ...rival, value: "a-little", by: "Mia", on: "2026-11-26" },
		]);
		expect(answers).toMatchObject([{ questionId: rescue, how: "conflict" }]);
	});

	test("the same answer by two people is no conflict, and both are kept", () => {
		const { walk, answers } = mergeWalks(
			walkWith({ [rescue]: set("a-lot") }),
			walkWith({ [rescue]: set("a-lot", { by: "Mia" }) }),
		);
		expect(walk.answers[rescue]).toEqual(set("a-lot", { by: "Mia" }));
		expect(walk.suggestions).toMatchObject([{ value: "a-lot", by: "builder", state: "taken" }]);
		expect(answers).toEqual([]);
	});

	test("the day is the later one, with the boards of that day", () => {
		const { walk, marketsDiffer } = mergeWalks(
			walkWith({}),
			walkWith({}, { asOf: "2026-11-28", market: { version: "newer", fingerprint: "b" } }),
		);
		expect(walk).toMatchObject({ asOf: "2026-11-28", market: { version: "newer", fingerprint: "b" } });
		expect(marketsDiffer).toBe(true);
	});

	test("two names become one that has both, as far as there is room", () => {
		const named = (name?: string) => walkWith({}, name === undefined ? {} : { name });
		expect(merge(named("The desk"), named("For Oma")).name).toBe("For Oma + The desk");
		expect(merge(merge(named("The desk"), named("For Oma")), named("For Oma")).name).toBe("For Oma + The desk");
		expect(merge(named("The desk"), named()).name).toBe("The desk");
		expect(merge(named("a".repeat(80)), named("b")).name).toBe("a".repeat(80));
		expect(merge(named(), named())).not.toHaveProperty("name");
	});
});

describe("a conflict that was decided", () => {
	const [one, other] = [walkWith({ [rescue]: set("a-lot") }), walkWith({ [rescue]: set("a-little", { by: "Mia" }) })];
	const merged = merge(one, other);
	/** As the walk writes it once the first is taken. */
	const decided: AnswersFile = {
		...merged,
		answers: { [rescue]: set("a-lot") },
		suggestions: (merged.suggestions ?? []).map((rival) => ({
			...rival,
			state: rival.value === "a-lot" ? ("taken" as const) : ("left" as const),
		})),
	};

	test("stays decided, whichever older copy comes in", () => {
		for (const older of [merged, one, other])
			for (const again of [merge(decided, older), merge(older, decided)]) {
				expect(again.answers[rescue]).toEqual(set("a-lot"));
				expect(asSets(again).suggestions).toEqual(asSets(decided).suggestions);
			}
		expect(mergeWalks(decided, other).answers).toMatchObject([{ how: "decided", from: "one" }]);
	});

	test("in two ways by two people is open again", () => {
		const otherwise: AnswersFile = {
			...merged,
			answers: { [rescue]: set("a-little", { by: "Mia" }) },
			suggestions: (merged.suggestions ?? []).map((rival) => ({
				...rival,
				state: rival.value === "a-lot" ? ("left" as const) : ("taken" as const),
			})),
		};
		const again = merge(decided, otherwise);
		expect(again.answers[rescue]).toEqual({ status: "not-sure" });
		expect(again.suggestions?.map(({ state }) => state)).toEqual(["open", "open"]);
	});

	test("by a third answer opens again where somebody else took one of the two", () => {
		const anew: AnswersFile = {
			...merged,
			answers: { [rescue]: set("somewhat") },
			suggestions: (merged.suggestions ?? []).map((rival) => ({ ...rival, state: "left" as const })),
		};
		const again = merge(decided, anew);
		expect(again.answers[rescue]).toEqual({ status: "not-sure" });
		expect(again.suggestions?.filter(({ state }) => state === "open").map(({ value }) => value)).toEqual([
			"a-lot",
			"somewhat",
		]);
		expect(merge(merged, anew).answers[rescue]).toEqual(set("somewhat"));
	});

	test("is the same whichever is named first, also where both gave a new answer on different days", () => {
		const [early, late] = ["2026-11-20", "2026-11-28"].map((asOf) => ({
			...merged,
			asOf,
			answers: { [rescue]: set("somewhat", { note: "a guess" }) },
		}));
		if (!early || !late) throw new Error("there are two");
		expect(asSets(merge(early, late))).toEqual(asSets(merge(late, early)));
		expect(merge(late, early).suggestions?.at(-1)).toMatchObject({
			value: "somewhat",
			on: "2026-11-20",
			state: "open",
		});
	});

	test("nothing is decided by merging with an older copy: a conflict stays one", () => {
		for (const older of [one, other]) {
			expect(merge(merged, older).answers[rescue]).toEqual({ status: "not-sure" });
			expect(asSets(merge(merged, older))).toEqual(asSets(merged));
			expect(mergeWalks(merged, older).answers).toMatchObject([{ how: "open" }]);
		}
	});
});

describe("from a start", () => {
	const start = walkWith({ [rescue]: set("a-lot"), "features/wireless": unsure }, { name: "The desk" });
	const changedTo = (answer: Answer, more: Partial<AnswersFile> = {}) =>
		walkWith({ ...start.answers, [rescue]: answer }, { name: "The desk", ...more });

	test("a change counts for more than no change, also one to not sure", () => {
		for (const answer of [set("a-little", { by: "Mia" }), unsure]) {
			const merged = mergeWalks(changedTo(answer), start, start);
			expect(merged.walk.answers[rescue]).toEqual(answer);
			expect(merged.walk.suggestions).toBeUndefined();
			expect(merged.answers).toMatchObject([{ questionId: rescue, how: "taken", from: "one" }]);
		}
	});

	test("two changes to the same are none to speak of", () => {
		const merged = mergeWalks(changedTo(set("somewhat")), changedTo(set("somewhat")), start);
		expect(merged.walk.answers[rescue]).toEqual(set("somewhat"));
		expect(merged.answers).toEqual([]);
	});

	test("two changes to different things are a conflict, also where one is not sure any more", () => {
		for (const answer of [set("a-little", { by: "Mia" }), { status: "not-sure", by: "Mia" } as const]) {
			const { walk, answers } = mergeWalks(changedTo(set("somewhat")), changedTo(answer), start);
			expect(walk.answers[rescue]).toEqual({ status: "not-sure" });
			expect(walk.suggestions).toMatchObject([
				{ value: "somewhat", rival: true, state: "open" },
				{ status: answer.status, by: "Mia", rival: true, state: "open" },
			]);
			expect(answers).toMatchObject([{ how: "conflict" }]);
		}
	});

	test("the name that was changed is taken", () => {
		expect(mergeWalks(changedTo(unsure, { name: "For Oma" }), start, start).walk.name).toBe("For Oma");
		expect(mergeWalks(start, changedTo(unsure, { name: "For Oma" }), start).walk.name).toBe("For Oma");
	});
});

describe("own parts", () => {
	const gatepost = (facts: object, id = "my-case"): OwnPart => ({
		kind: "case",
		part: { id, name: "Gatepost", ...facts },
	});
	const walkWithCase = (own: OwnPart) => walkWith({ "fit/case": set({ part: own.part.id }) }, { parts: [own] });

	test("that tell what the other leaves open become one", () => {
		const stated = (quote: string) => ({ standing: "stated", quote });
		const { walk, parts } = mergeWalks(
			walkWithCase(gatepost({ boardForms: ["ATX"], evidence: { boardForms: stated("ATX") } })),
			walkWithCase(gatepost({ cardMaxLengthMm: 360, evidence: { cardMaxLengthMm: stated("360 mm") } })),
		);
		expect(walk.parts).toEqual([
			gatepost({
				boardForms: ["ATX"],
				cardMaxLengthMm: 360,
				evidence: { boardForms: stated("ATX"), cardMaxLengthMm: stated("360 mm") },
			}),
		]);
		expect(parts).toMatchObject([{ how: "joined", id: "my-case" }]);
		expect(walk.answers["fit/case"]).toEqual(set({ part: "my-case" }));
	});

	test("that contradict each other are both kept, and each answer goes with its own", () => {
		const [short, long] = [gatepost({ cardMaxLengthMm: 300 }), gatepost({ cardMaxLengthMm: 360 })];
		const merged = mergeWalks(walkWithCase(short), walkWithCase(long));
		expect(merged.walk.parts).toEqual([short, gatepost({ cardMaxLengthMm: 360 }, "my-case-2")]);
		expect(merged.parts).toEqual([
			{ kind: "case", id: "my-case", name: "Gatepost", how: "both", newId: "my-case-2", from: "other" },
		]);
		expect(merged.walk.suggestions).toMatchObject([
			{ value: { part: "my-case" }, rival: true },
			{ value: { part: "my-case-2" }, rival: true },
		]);
		expect(asSets(merge(merged.walk, walkWithCase(long)))).toEqual(asSets(merged.walk));
	});

	test("changed by one alone since the start are taken as changed", () => {
		const [before, after] = [walkWithCase(gatepost({ cardMaxLengthMm: 300 })), walkWithCase(gatepost({}))];
		const { walk, parts } = mergeWalks(before, after, before);
		expect(walk.parts).toEqual([gatepost({})]);
		expect(parts).toMatchObject([{ how: "changed", from: "other" }]);
	});
});
