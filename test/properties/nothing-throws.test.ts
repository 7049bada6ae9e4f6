import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Market } from "../../src/parts/market.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { adviceJson } from "../../src/sheet/advice-json.ts";
import { everyPlace, textsOf } from "../screens/screen-words.ts";
import { deepFreeze } from "../walk/walk-in-demo.ts";
import { anyAnswersIn } from "./any-answers.ts";
import { anyMarket } from "./any-market.ts";
import { runs } from "./runs.ts";
import { formsOf, viewOf, walkIn } from "./whole-way.ts";

/** What no text made of sound facts says. */
const slips = /\bundefined\b|\bNaN\b|\[object |\bInfinity\b/;

/** Names and words of the person's own may say anything, so texts are looked at without them. */
function withoutNames(text: string, { parts }: Market): string {
	const said = new Set<string>();
	const collect = (value: unknown): void => {
		if (typeof value === "string") said.add(value);
		else if (Array.isArray(value)) value.forEach(collect);
		else if (typeof value === "object" && value !== null) {
			for (const [key, inner] of Object.entries(value)) {
				said.add(key);
				collect(inner);
			}
		}
	};
	collect(parts);
	return [...said].filter((name) => slips.test(name)).reduce((rest, name) => rest.replaceAll(name, "-"), text);
}

/** Parts that a person described fact by fact: the market's own, under other ids. */
const anyWalk = fc.tuple(anyAnswersIn(anyMarket()), fc.nat(3)).map(([{ market, answers }, own]) => {
	const ownParts = market.parts.board
		.slice(0, own)
		.map((part) => ({ kind: "board" as const, part: { ...part, id: `my-${part.id}`.slice(0, 80) } }));
	return { walk: deepFreeze(walkIn(market, answers, ownParts)), market, answers };
});

describe("for any market and any answers", () => {
	test("nothing throws on the way from parts to all forms of the sheet, and nothing is changed", () => {
		fc.assert(
			fc.property(anyWalk, ({ walk, market }) => {
				const view = viewOf(walk);
				for (const [form, written] of Object.entries(formsOf(walk, view)))
					expect(withoutNames(written, market), form).not.toMatch(slips);
				const advice = adviceJson(view.judgement(), view.advice(), walk.state.answers, view.context);
				expect(withoutNames(JSON.stringify(advice), market)).not.toMatch(slips);
			}),
			runs(25),
		);
	});

	test("there is a screen at every place, and none says what is no word", () => {
		fc.assert(
			fc.property(anyWalk, fc.infiniteStream(fc.nat()), ({ walk, market }, picks) => {
				const places = everyPlace(walk.context, walk.state);
				for (const pick of picks.take(40)) {
					const place = places[pick % places.length];
					const screen = place && screenOf(walk.context, { ...walk.state, place });
					expect(screen, place?.at).not.toBeNull();
					if (screen)
						expect(withoutNames(textsOf(screen).join("\n"), market), JSON.stringify(place)).not.toMatch(slips);
				}
			}),
			runs(12),
		);
	});
});
