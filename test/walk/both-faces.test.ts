import { describe, expect, test } from "vitest";
import { lineMeaning } from "../../src/plain/line-event.ts";
import { type Face, faceFor, pressKey } from "../../src/screens/face.ts";
import type { Key } from "../../src/screens/keys.ts";
import type { Screen } from "../../src/screens/screen.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { update } from "../../src/walk/update.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { startWalk, type WalkContext, type WalkState } from "../../src/walk/walk-state.ts";
import { demo, emptyMarket } from "./walk-in-demo.ts";

const contexts: readonly (readonly [string, WalkContext])[] = [
	["the demonstration market", demo],
	["no market", emptyMarket],
];

/** What a person decides on a screen, whichever face it has. */
type Decision =
	| { readonly kind: "line"; readonly index: number }
	/** Lines to be marked, and no others; one twice for two of them. */
	| { readonly kind: "marks"; readonly indices: readonly number[] }
	| { readonly kind: "type"; readonly text: string }
	| { readonly kind: "command"; readonly line: string; readonly key: Key };

const commands: readonly Extract<Decision, { kind: "command" }>[] = [
	{ kind: "command", line: "b", key: { name: "escape" } },
	{ kind: "command", line: "back", key: { name: "back-tab" } },
	{ kind: "command", line: "m", key: { name: "tab" } },
];

/** A seeded generator of numbers from 0 up to 1 (a multiplicative congruence modulo 2^31 - 1). */
function chance(seed: number): () => number {
	let state = (seed % 2_147_483_646) + 1;
	return () => {
		state = (state * 48_271) % 2_147_483_647;
		return state / 2_147_483_647;
	};
}

/** Ways into the person's own parts, which go on for long; half of the walks leave them aside. */
const intoOwnParts: readonly WalkEvent["type"][] = ["own-parts", "paste-part", "new-part"];

function decide(screen: Screen, next: () => number, withOwnParts: boolean): Decision | null {
	const pick = <T>(from: readonly T[]): T | undefined => from[Math.floor(next() * from.length)];
	const roll = next();
	if (roll < 0.12) return pick(commands) ?? null;
	// A part's name comes first; were it a number, that number typed in the plain walk would mean the part, not a line.
	const typed = /^describe:.*:0$/.test(screen.id)
		? ["Kettle", "Copper tub"]
		: ["180", "0", "3", "12 mm", "1 m", "nonsense", "99999999", "Lantern 4"];
	if (screen.typing?.kind === "value" && roll < 0.8) return { kind: "type", text: pick(typed) ?? "" };
	if (screen.typing?.kind === "page" && roll < 0.5)
		return { kind: "type", text: pick(["Socket: Lantern 4", "Memory slots: 4", "Form factor: ATX", "."]) ?? "" };
	if (screen.typing?.kind === "free" && screen.id !== "sheet" && roll < 0.4)
		return { kind: "type", text: pick(["ATX", "none", "HDMI, DisplayPort", "words"]) ?? "" };
	// Leaving and opening another walk are the same event in both faces, and would end most walks early.
	const lines = screen.choices.flatMap(({ event }, index) =>
		event.type === "leave" || event.type === "open" || (!withOwnParts && intoOwnParts.includes(event.type))
			? []
			: [index],
	);
	const index = pick(lines);
	if (index === undefined) return null;
	const { mark } = screen.choices[index] ?? {};
	if (!mark) return { kind: "line", index };
	const other = pick(lines.filter((one) => screen.choices[one]?.mark && (one !== index || mark.most > 1)));
	return { kind: "marks", indices: other === undefined || next() < 0.5 ? [index] : [index, other] };
}

/** The decision as a line typed in the plain walk. */
function inPlain(screen: Screen, decision: Exclude<Decision, { kind: "marks" }>): WalkEvent | null {
	const line =
		decision.kind === "command"
			? decision.line
			: decision.kind === "type"
				? decision.text
				: isPickedByKey(screen)
					? (screen.choices[decision.index]?.key ?? screen.choices[decision.index]?.label ?? "no such line")
					: String(decision.index + 1);
	return lineTyped(screen, line);
}

function isPickedByKey({ typing }: Screen): boolean {
	return typing?.kind === "value" || typing?.kind === "page";
}

function lineTyped(screen: Screen, line: string): WalkEvent | null {
	const meaning = lineMeaning(screen, line);
	return meaning.kind === "event" ? meaning.event : null;
}

/** The decision as keys pressed in the drawn walk. */
function inDrawn(screen: Screen, decision: Exclude<Decision, { kind: "marks" }>): WalkEvent | null {
	const enter: Key = { name: "enter" };
	const steps = decision.kind === "line" ? toLine(screen, decision.index) : toTop(screen);
	const typed = decision.kind === "type" ? [...decision.text].map(keyFor) : [];
	const keys = decision.kind === "command" ? [decision.key] : [...steps, ...typed, enter];
	let face: Face = faceFor(screen);
	for (const key of keys) {
		const pressed = pressKey(screen, face, key, page);
		if (pressed.event) return pressed.event;
		face = pressed.face;
	}
	return null;
}

const page = { textRows: 5, lastScroll: 9 };

function toTop({ choices }: Screen): readonly Key[] {
	return Array.from({ length: choices.length + 1 }, () => ({ name: "up" }));
}

/** Keys that lead the mark to a line, from wherever it is. */
function toLine(screen: Screen, index: number): readonly Key[] {
	// Where the answer is typed, the field lies above the first line.
	const steps = index + (isPickedByKey(screen) ? 1 : 0);
	return [...toTop(screen), ...Array.from({ length: steps }, (): Key => ({ name: "down" }))];
}

/** Marks lines in the drawn walk, and no others, and takes them; the walk goes through every state on the way. */
function markedInDrawn(context: WalkContext, from: WalkState, indices: readonly number[]): WalkState {
	const screen = screenOf(context, from) as Screen;
	const keys = [
		...screen.choices.flatMap(({ mark }, index) =>
			mark ? [...toLine(screen, index), ...Array.from({ length: mark.count }, () => keyFor("-"))] : [],
		),
		...indices.flatMap((index): Key[] => [...toLine(screen, index), { name: "space" }]),
		{ name: "enter" } as const,
	];
	let state = from;
	let face = faceFor(screen);
	for (const key of keys) {
		const pressed = pressKey(screenOf(context, state) as Screen, face, key, page);
		face = pressed.face;
		state = carriedOut(context, state, pressed.event);
	}
	return state;
}

function keyFor(letter: string): Key {
	return letter === " " ? { name: "space" } : { name: "text", text: letter };
}

/** One step, with the outside played: what is to be written is written. */
function carriedOut(context: WalkContext, state: WalkState, event: WalkEvent | null): WalkState {
	if (!event) return state;
	const [next, effects] = update(context, state, event);
	return effects.reduce(
		(now, effect) =>
			effect.type === "write-sheet" ? carriedOut(context, now, { type: "written", path: `/desk/${effect.to}` }) : now,
		next,
	);
}

/** A walk as far as both faces must agree: marking line by line, each mark is an answer before the next. */
function asFarAsBothAgree({ answersBefore: _, notice: __, ...state }: WalkState) {
	return state;
}

/** Takes lines in both faces, and says what both have come to. */
function markedInBoth(context: WalkContext, from: WalkState, indices: readonly number[], where: string): WalkState {
	const typed = lineTyped(screenOf(context, from) as Screen, indices.map((index) => index + 1).join(", "));
	const plain = carriedOut(context, from, typed);
	const drawn = markedInDrawn(context, from, indices);
	expect(asFarAsBothAgree(drawn), where).toEqual(asFarAsBothAgree(plain));
	expect(plain.place, where).not.toEqual(from.place);
	return plain;
}

describe.each(contexts)("with %s", (_, context) => {
	test("the plain and the drawn walk give the same for the same choices", () => {
		const seen = new Set<string>();
		for (let seed = 1; seed <= 10; seed++) {
			const next = chance(seed);
			let [plain, drawn] = [startWalk(), startWalk()];
			for (let step = 0; step < 100; step++) {
				const screen = screenOf(context, plain);
				if (!screen) break;
				seen.add(plain.place.at);
				const decision = decide(screen, next, seed % 2 === 0);
				if (!decision) break;
				const where = `seed ${seed}, step ${step}, ${screen.id}, ${JSON.stringify(decision)}`;
				if (decision.kind === "marks") {
					plain = markedInBoth(context, plain, decision.indices, where);
					drawn = plain;
					seen.add("marks");
					continue;
				}
				const [lineEvent, keyEvent] = [inPlain(screen, decision), inDrawn(screen, decision)];
				expect(keyEvent, where).toEqual(lineEvent);
				expect(lineEvent, where).not.toBeNull();
				plain = carriedOut(context, plain, lineEvent);
				drawn = carriedOut(context, drawn, keyEvent);
				expect(drawn).toEqual(plain);
			}
		}
		// The walks went far enough to mean something.
		for (const place of [
			"question",
			"marks",
			"describe",
			"tier-end",
			"review",
			"shortlist",
			"sheet",
			"part-form",
			"fact-form",
		])
			expect(seen).toContain(place);
	});
});

test("each line can be chosen in both faces, also where a number is the answer, and where several can be marked", () => {
	for (const [, context] of contexts) {
		let state = carriedOut(context, startWalk(), { type: "next" });
		let marks = 0;
		for (let guard = 0; guard < 80 && state.place.at !== "shortlist"; guard++) {
			const screen = screenOf(context, state) as Screen;
			for (const [index, { event, mark }] of screen.choices.entries()) {
				expect(inDrawn(screen, { kind: "line", index })).toEqual(event);
				if (mark) {
					markedInBoth(context, state, [index], `${screen.id}, line ${index}`);
					marks++;
				} else expect(inPlain(screen, { kind: "line", index })).toEqual(event);
			}
			state = carriedOut(context, state, screen.choices.at(-1)?.event ?? { type: "next" });
			while (state.place.at === "tier-end" || state.place.at === "parts-disagree")
				state = carriedOut(context, state, { type: "next" });
			if (state.place.at === "review") state = carriedOut(context, state, { type: "back" });
		}
		expect(state.place.at).toBe("shortlist");
		expect(marks).toBeGreaterThan(20);
	}
});
