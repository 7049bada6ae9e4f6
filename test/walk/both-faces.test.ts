import { describe, expect, test } from "vitest";
import { demoMarket } from "../../src/cli/demo-market.ts";
import { makeMarket } from "../../src/parts/make-market.ts";
import { lineMeaning } from "../../src/plain/line-event.ts";
import { type Face, faceFor, pressKey } from "../../src/screens/face.ts";
import type { Key } from "../../src/screens/keys.ts";
import type { Screen } from "../../src/screens/screen.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { update } from "../../src/walk/update.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { startWalk, type WalkContext, type WalkState } from "../../src/walk/walk-state.ts";

const asOf = "2026-11-24";
const contexts: readonly (readonly [string, WalkContext])[] = [
	["the demonstration market", { market: demoMarket(), asOf }],
	["no market", { market: makeMarket("nothing", []).market, asOf }],
];

/** What a person decides on a screen, whichever face it has. */
type Decision =
	| { readonly kind: "line"; readonly index: number }
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

function decide(screen: Screen, next: () => number): Decision | null {
	const pick = <T>(from: readonly T[]): T | undefined => from[Math.floor(next() * from.length)];
	const roll = next();
	if (roll < 0.12) return pick(commands) ?? null;
	// A part's name comes first; were it a number, that number typed in the plain walk would mean the part, not a line.
	const typed = /^describe:.*:0$/.test(screen.id)
		? ["Kettle", "Copper tub"]
		: ["180", "0", "3", "12 mm", "1 m", "nonsense", "99999999", "Lantern 4"];
	if (screen.typing?.kind === "value" && roll < 0.8) return { kind: "type", text: pick(typed) ?? "" };
	if (screen.typing?.kind === "free" && screen.id !== "sheet" && roll < 0.4)
		return { kind: "type", text: pick(["ATX", "none", "HDMI, DisplayPort", "words"]) ?? "" };
	// Leaving and opening another walk are the same event in both faces, and would end most walks early.
	const lines = screen.choices.flatMap(({ event }, index) =>
		event.type === "leave" || event.type === "open" ? [] : [index],
	);
	const index = pick(lines);
	return index === undefined ? null : { kind: "line", index };
}

/** The decision as a line typed in the plain walk. */
function inPlain(screen: Screen, decision: Decision): WalkEvent | null {
	const line =
		decision.kind === "command"
			? decision.line
			: decision.kind === "type"
				? decision.text
				: screen.typing?.kind === "value"
					? (screen.choices[decision.index]?.key ?? "no such line")
					: String(decision.index + 1);
	const meaning = lineMeaning(screen, line);
	return meaning.kind === "event" ? meaning.event : null;
}

/** The decision as keys pressed in the drawn walk. */
function inDrawn(screen: Screen, decision: Decision): WalkEvent | null {
	const enter: Key = { name: "enter" };
	const toTop = Array.from({ length: screen.choices.length + 1 }, (): Key => ({ name: "up" }));
	// Where the answer is typed, the field lies above the first line.
	const steps = decision.kind === "line" ? decision.index + (screen.typing?.kind === "value" ? 1 : 0) : 0;
	const down = Array.from({ length: steps }, (): Key => ({ name: "down" }));
	const typed = decision.kind === "type" ? [...decision.text].map(keyFor) : [];
	const keys = decision.kind === "command" ? [decision.key] : [...toTop, ...down, ...typed, enter];
	let face: Face = faceFor(screen);
	for (const key of keys) {
		const pressed = pressKey(screen, face, key, { textRows: 5, lastScroll: 9 });
		if (pressed.event) return pressed.event;
		face = pressed.face;
	}
	return null;
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

describe.each(contexts)("with %s", (_, context) => {
	test("the plain and the drawn walk give the same for the same choices", () => {
		const seen = new Set<string>();
		for (let seed = 1; seed <= 15; seed++) {
			const next = chance(seed);
			let [plain, drawn] = [startWalk(), startWalk()];
			for (let step = 0; step < 60; step++) {
				const screen = screenOf(context, plain);
				if (!screen) break;
				seen.add(plain.place.at);
				const decision = decide(screen, next);
				if (!decision) break;
				const [lineEvent, keyEvent] = [inPlain(screen, decision), inDrawn(screen, decision)];
				const where = `seed ${seed}, step ${step}, ${screen.id}, ${JSON.stringify(decision)}`;
				expect(keyEvent, where).toEqual(lineEvent);
				expect(lineEvent, where).not.toBeNull();
				plain = carriedOut(context, plain, lineEvent);
				drawn = carriedOut(context, drawn, keyEvent);
				expect(drawn).toEqual(plain);
			}
		}
		// The walks went far enough to mean something.
		for (const place of ["question", "describe", "tier-end", "review", "shortlist", "sheet"])
			expect(seen).toContain(place);
	});
});

test("each line can be chosen in both faces, also where a number is the answer", () => {
	for (const [, context] of contexts) {
		let state = carriedOut(context, startWalk(), { type: "next" });
		for (let guard = 0; guard < 40 && state.place.at !== "shortlist"; guard++) {
			const screen = screenOf(context, state) as Screen;
			for (const [index, { event }] of screen.choices.entries()) {
				expect(inPlain(screen, { kind: "line", index })).toEqual(event);
				expect(inDrawn(screen, { kind: "line", index })).toEqual(event);
			}
			state = carriedOut(context, state, screen.choices.at(-1)?.event ?? { type: "next" });
			if (state.place.at === "tier-end" || state.place.at === "parts-disagree")
				state = carriedOut(context, state, { type: "next" });
			if (state.place.at === "review") state = carriedOut(context, state, { type: "back" });
		}
		expect(state.place.at).toBe("shortlist");
	}
});
