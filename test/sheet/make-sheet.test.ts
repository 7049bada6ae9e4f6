import { describe, expect, test } from "vitest";
import { allQuestions, questionById } from "../../src/questions/all-questions.ts";
import { askedQuestions, isAsked } from "../../src/questions/is-asked.ts";
import { cautions } from "../../src/reference/cautions.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { textSheet } from "../../src/sheet/text-sheet.ts";
import { startWalk, type WalkState } from "../../src/walk/walk-state.ts";
import { demo, emptyMarket, quietAnswers, scenarios, walkThrough, walkWith } from "../walk/walk-in-demo.ts";
import { sheetOf } from "./sheet-of.ts";

const quiet = walkWith(quietAnswers);
const labels = (list: readonly { readonly label: string }[]) => list.map(({ label }) => label);

/** The questions a sheet tells the answers of: those asked, and those answered all the same. */
function told(state: WalkState, context = demo): readonly string[] {
	const { build } = viewWalk(context, state).judgement();
	return allQuestions.filter((question) => isAsked(question, build) || state.answers[question.id]).map(({ id }) => id);
}

describe("what the board must have", () => {
	test("is every demand that the answers make, with figures and why", () => {
		const { mustHave } = sheetOf(quiet);
		const texts = Object.fromEntries(mustHave.map(({ label, text }) => [label, text]));
		expect(texts).toMatchObject({
			Socket: "Harbour 2, because the Tallowfinch Deckhand goes into no other.",
			"Board size": "ATX, microATX, Mini-ITX: the sizes your case takes, and nothing larger.",
			Memory: "DDR5, with at least 2 memory slots, for modules of 16 GB.",
			"USB-C at the back": "At least one USB-C socket at the back.",
			Price: "At most EUR 200.00, postage included.",
		});
		for (const { why } of mustHave) expect(why).toMatch(/\.$/);
	});

	test("holds what stops a board; a wish, and what an adapter would mend, are nice to have", () => {
		const split = (wireless: string, usbC: string) => {
			const { mustHave, niceToHave } = sheetOf(
				walkWith({ ...quietAnswers, "features/wireless": wireless, "features/rear-usb-c": usbC }),
			);
			const wishes = ["Wireless (Wi-Fi)", "USB-C at the back"];
			return [mustHave, niceToHave].map((list) =>
				labels(list)
					.filter((label) => wishes.includes(label))
					.sort(),
			);
		};
		expect(split("would-like", "must")).toEqual([["USB-C at the back"], ["Wireless (Wi-Fi)"]]);
		expect(split("must", "would-like")).toEqual([[], ["USB-C at the back", "Wireless (Wi-Fi)"]]);
		expect(split("dont-mind", "dont-mind")).toEqual([[], []]);
	});

	test("says what hangs on an open answer", () => {
		const { "fit/processor": _processor, ...others } = quietAnswers;
		const needs = sheetOf(
			walkWith({ ...others, "fit/candidates": ["tallowfinch-deckhand", "wimblecombe-beekeeper"] }),
		).mustHave;
		expect(needs.find(({ ruleId }) => ruleId === "fit/socket")?.text).toMatch(/^Find out first: .*Harbour 2.* Or: /);
	});

	test("while the supply is open says which plugs to look for, and not what each supply would ask for", () => {
		const { "fit/supply": _supply, ...others } = quietAnswers;
		const plugsOf = (state: WalkState) =>
			sheetOf(state).mustHave.find(({ ruleId }) => ruleId === "fit/power-plugs")?.text;
		expect(plugsOf(walkWith(others))).toBe("An 8-pin or a 4-pin processor plug: take a supply that has the same ones.");
		expect(plugsOf(walkWith(quietAnswers))).toMatch(/^A 4-pin or an 8-pin processor plug: your supply's/);
		const guessed = scenarios.find(({ name }) => name === "before-any-board")?.state ?? startWalk();
		expect(plugsOf(guessed)).toMatch(/^An 8-pin processor plug is the safe choice\. A 4-pin carries 144 W, and/);
		// Of several processors one needs more than any 4-pin carries: that is said.
		const { "fit/processor": _processor, ...open } = others;
		const both = walkWith({ ...open, "fit/candidates": ["tallowfinch-deckhand", "tallowfinch-figurehead"] });
		expect(plugsOf(both)).toContain("At least one 8-pin processor plug");
	});

	test("says nothing of a graphics card that one has not, as long as that is not sure", () => {
		const textOf = (state: WalkState) =>
			[...sheetOf(state).mustHave].find(({ ruleId }) => ruleId === "fit/picture")?.text;
		const { "fit/graphics-card": _card, ...others } = quietAnswers;
		expect(textOf(walkWith(others))).toMatch(/, in case you have no graphics card\./);
		expect(textOf(walkWith(quietAnswers))).toMatch(/, because you have no graphics card\./);
	});

	test("has a row for memory of which nothing is known", () => {
		const memory = sheetOf(startWalk()).mustHave.find(({ label }) => label === "Memory");
		expect(memory?.text).toBe("DDR4 or DDR5: your memory must match what the board's page says.");
	});

	test("does not change with the boards to choose from", () => {
		// In the empty market only what was picked from the market is unknown.
		const own = scenarios.find(({ name }) => name === "before-any-board")?.state ?? startWalk();
		expect(sheetOf(own, emptyMarket).mustHave).toEqual(sheetOf(own).mustHave);
	});
});

describe("in short", () => {
	test("counts the boards left and names the best, with price and score", () => {
		const { inShort, shortlist } = sheetOf(quiet);
		const [best] = shortlist;
		const { counts } = viewWalk(demo, quiet).judgement();
		expect(inShort[0]).toContain(`${counts.all - counts.doesNotFit} of ${counts.all} boards are left`);
		expect(inShort[1]).toContain(`${best?.name}, ${best?.priceWords}. It has ${best?.scoreWords}.`);
	});

	test("says what the best board hangs on where nothing is known to fit", () => {
		const { "fit/processor": _processor, ...others } = quietAnswers;
		expect(sheetOf(walkWith(others)).inShort.join(" ")).toContain("Find out what is still unknown before you pay");
	});

	test("says when nothing fits", () => {
		const handedDown = scenarios.find(({ name }) => name === "handed-down")?.state ?? startWalk();
		const sheet = sheetOf(handedDown);
		expect(sheet.inShort).toEqual([
			expect.stringContaining(`None of the ${demo.market.parts.board.length} boards fits.`),
		]);
		expect(sheet.shortlist).toEqual([]);
		expect(sheet.nothingFits.length).toBeGreaterThan(0);
		expect(sheet.partsDisagree[0]).toEqual({
			text: "The card is 340 mm long, 40 mm more than the 300 mm the case has room for.",
			isStopped: true,
			advice: expect.stringMatching(/^Change the card or the case\./),
		});
	});

	test("does not count invented boards against a processor of one's own", () => {
		const own = scenarios.find(({ name }) => name === "before-any-board")?.state ?? startWalk();
		const sheet = sheetOf(own);
		expect(sheet.inShort.join(" ")).toContain("This sheet says what to look for.");
		expect(sheet.nothingFits).toEqual([]);
		expect(sheet.shortlist).toEqual([]);
	});
});

describe("without any board", () => {
	const own = scenarios.find(({ name }) => name === "before-any-board")?.state ?? startWalk();
	const sheet = sheetOf(own, emptyMarket);

	test("the sheet is whole: what to look for, before paying, cautions, answers, sources", () => {
		expect(sheet.title).toBe("What to look for in a board");
		expect(sheet.inShort[0]).toContain("what to look for in any board");
		expect(labels(sheet.mustHave)).toEqual(
			expect.arrayContaining([
				"Socket",
				"Processor support",
				"Board size",
				"Power plugs",
				"USB-C at the back",
				"Price",
			]),
		);
		expect(sheet.beforeYouPay.length).toBeGreaterThanOrEqual(4);
		expect(sheet.beforeYouPay.join(" ")).toContain("Bramble Nine");
		expect(sheet.steps.map(({ label }) => label)).toEqual([
			"Safe hands",
			"Processor",
			"Memory",
			"Into the case",
			"Cooler",
			"Supply cables",
			"Front pins",
			"Drives, cards",
			"Screen cable",
			"On a stick",
			"First start",
			"Then",
			"If it stays dark later",
		]);
		// Those that no step carries.
		const carried = ["mains", "static", "standoffs", "contacts", "cables", "dark-first-start", "reset"];
		expect(sheet.cautions.map(({ text }) => text)).toEqual(
			cautions.filter(({ id }) => !carried.includes(id)).map(({ text }) => text),
		);
		expect(sheet.answers.map(({ questionId }) => questionId)).toEqual(told(own, emptyMarket));
		expect(sheet.sources.length).toBeGreaterThan(0);
	});

	test("and says nothing of prices, invented boards or a shortlist", () => {
		expect(sheet.hasInventedParts).toBe(false);
		expect(sheet.beforeYouPay.join(" ")).not.toContain("Prices were seen");
		expect(textSheet(sheet)).not.toMatch(/SHORTLIST|NOTHING FITS|invented/);
	});
});

describe("what is not sure yet", () => {
	test.each([
		["nothing yet", startWalk()],
		["a good part", quiet],
	])("is every question asked and not answered, with how to find out and what holds until then: %s", (_, state) => {
		const { open } = sheetOf(state);
		const { build } = viewWalk(demo, state).judgement();
		const unanswered = askedQuestions(build).filter(({ id }) => state.answers[id] === undefined);
		expect(unanswered.length).toBeGreaterThan(20);
		const lines = unanswered.map(({ label, howToFindOut, notSure }) => ({
			what: label,
			how: `${howToFindOut} Until then: ${notSure}`,
		}));
		// What could change most comes first, and says what it could change.
		for (const { what, how } of lines)
			expect(open.find((one) => one.what === what)?.how.startsWith(how), what).toBe(true);
		expect(open.length).toBeGreaterThanOrEqual(lines.length);
	});

	test("is no question that is not asked", () => {
		const whats = sheetOf(startWalk()).open.map(({ what }) => what);
		// No sum in all, so nothing of it is spent; no case, so nothing hangs at it.
		for (const id of ["about/money-spent", "fit/front-plugs"]) expect(whats).not.toContain(questionById(id)?.label);
		const short = sheetOf(walkWith({ ...quietAnswers, "about/walk-length": "short" }));
		for (const { what } of short.open) {
			const question = allQuestions.find(({ label }) => label === what);
			expect(question?.short ?? true, what).toBe(true);
		}
	});

	test("is no question that has one, whatever its part is called", () => {
		const state: WalkState = {
			...walkWith({ ...quietAnswers, "fit/case": { part: "unsure" } }),
			ownParts: [{ kind: "case", part: { id: "unsure", name: "Not sure which", boardForms: ["ATX"] } }],
		};
		const sheet = sheetOf(state);
		expect(sheet.open.map(({ what }) => what)).not.toContain("Case");
		expect(sheet.answers).toContainEqual({
			questionId: "fit/case",
			label: "Case",
			value: "Not sure which",
			by: "builder",
		});
	});

	test("is each fact that a board on the shortlist lacks, once, and where it stands", () => {
		const { open, shortlist } = sheetOf(quiet);
		const names = shortlist.map(({ name }) => name);
		const facts = open.filter(({ what }) => names.some((name) => what.startsWith(`${name}: `)));
		for (const { how } of facts) expect(how).toMatch(/\S/);
		const whats = open.map(({ what }) => what);
		expect(new Set(whats).size).toBe(whats.length);
	});
});

describe("answers", () => {
	test("stand in the order asked, in words, with who gave them", () => {
		const { answers } = sheetOf(quiet);
		expect(answers.map(({ questionId }) => questionId)).toEqual(told(quiet));
		const given = answers.filter(({ questionId }) => quiet.answers[questionId]);
		expect(given.slice(0, 4).map(({ value }) => value)).toEqual([
			"EUR 200.00",
			"Tallowfinch Deckhand",
			"Larkspur Wardrobe",
			"No card",
		]);
		expect(given).toHaveLength(Object.keys(quiet.answers).length);
		expect(new Set(given.map(({ by }) => by))).toEqual(new Set(["builder"]));
		for (const answer of answers.filter((one) => !given.includes(one)))
			expect(answer).toMatchObject({ value: "Not sure (not asked yet)", by: "" });
	});

	test("to a question that is not asked any more stand there all the same", () => {
		const short = walkWith({ ...quietAnswers, "about/walk-length": "short", "features/colour": "dark" });
		expect(sheetOf(short).answers).toContainEqual(
			expect.objectContaining({ questionId: "features/colour", value: "Dark" }),
		);
	});

	test("tell not sure from not asked", () => {
		const { state } = walkThrough([{ type: "not-sure" }], {
			...startWalk(),
			place: { at: "question", id: "fit/case" },
		});
		const values = new Map(sheetOf(state).answers.map(({ questionId, value }) => [questionId, value]));
		expect(values.get("fit/case")).toBe("Not sure");
		expect(values.get("fit/memory")).toBe("Not sure (not asked yet)");
	});

	test("that cannot be in this market count as not sure", () => {
		const values = new Map(sheetOf(quiet, emptyMarket).answers.map(({ questionId, value }) => [questionId, value]));
		expect(values.get("fit/case")).toBe("Not sure");
		expect(values.get("features/rear-devices")).toBe("5");
	});
});

test("before paying, what is said of several boards is said once, with their names", () => {
	const { planAround, shortlist } = sheetOf(walkWith({ ...quietAnswers, "features/wireless": "must" }));
	const adapter = planAround.filter(({ text }) => text.includes("Add the price of an adapter"));
	const without = shortlist.filter(({ against }) =>
		against.some((words) => words.includes("you would need an adapter")),
	);
	expect(adapter).toHaveLength(without.length > 0 ? 1 : 0);
	for (const { name } of without) expect(adapter[0]?.boardNames).toContain(name);
	expect(planAround.filter(({ text }) => text.includes("Ask which modules it takes"))).toHaveLength(1);
});

test("sources are named once each, and every caution's ground is among what is said", () => {
	const { sources, cautions: others, steps } = sheetOf(quiet);
	const told = [...others, ...steps];
	expect(new Set(sources).size).toBe(sources.length);
	for (const { ground } of told)
		expect(
			ground === "common practice, no source" ||
				ground === "from memory" ||
				sources.some((one) => one.includes(ground)),
		).toBe(true);
});
