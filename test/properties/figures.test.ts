import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Advice, advise } from "../../src/choose/advise.ts";
import { judge } from "../../src/choose/judge.ts";
import { demoFiles } from "../../src/cli/demo-market.ts";
import type { Interval } from "../../src/maths/interval.ts";
import { makeMarket } from "../../src/parts/make-market.ts";
import { measurePlan } from "../../src/plan/measure-plan.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import type { WalkView } from "../../src/screens/walk-view.ts";
import { reasonWords } from "../../src/sheet/reason-words.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { wordsIn } from "../sheet/forms-reading.ts";
import { scenarios } from "../walk/walk-in-demo.ts";
import { anyAnswersIn, asOf } from "./any-answers.ts";
import { anyMarket, withBoards } from "./any-market.ts";
import { figuresOf, figuresOfResult, judgedIn, needsData, steadyOf, sumText } from "./figures-of-result.ts";
import { isFigure, lineOf, pageWords, paperForms, withoutNames } from "./figures-on-page.ts";
import { runs } from "./runs.ts";
import { formsOf, viewOf, type Walk, walkIn } from "./whole-way.ts";

/** The forms of one walk, read, beside the result that they were made of. */
interface Looked {
	readonly view: WalkView;
	readonly advice: Advice;
	readonly sheet: Sheet;
	readonly json: Sheet;
	readonly rows: readonly Readonly<Record<string, string>>[];
	readonly lines: readonly { readonly form: string; readonly line: string }[];
	readonly pages: readonly (ReturnType<typeof pageWords> & { readonly form: string })[];
	readonly nameless: ReturnType<typeof withoutNames>;
}

function lookAt(walk: Walk): Looked {
	// A market of its own, so that nothing is remembered of it.
	const { market, asOf } = walk.context;
	const view = viewOf({ ...walk, context: { market: withBoards(market, market.parts.board), asOf } });
	const forms = formsOf(walk, view);
	const sheet = view.sheet();
	return {
		view,
		advice: view.advice(),
		sheet,
		json: JSON.parse(forms.json),
		rows: parse(forms.csv, { bom: true, columns: true }),
		lines: paperForms.map((form) => ({ form, line: lineOf(form, forms[form]) })),
		pages: paperForms.map((form) => ({ form, ...pageWords(form, forms[form], sheet) })),
		nameless: withoutNames(view),
	};
}

/** How often each thing was told, so that no check passes for want of anything to check. */
type Counted = Record<string, number>;
const count = (told: Counted, what: string, times = 1): void => {
	told[what] = (told[what] ?? 0) + times;
};

/** A phrase stands in every form that is read by people. */
function expectOnPaper({ lines }: Looked, phrase: string): void {
	const words = ` ${wordsIn(phrase).join(" ")} `;
	for (const { form, line } of lines) expect(line.includes(words), `${form}: ${phrase}`).toBe(true);
}

const whole = ({ low, high }: Interval): readonly number[] => [...new Set([low, high].map(Math.round))];
const toHundredth = (value: number): number => Math.round(value * 100) / 100;

function pointsPricesWays(looked: Looked, told: Counted): void {
	const { view, json, rows } = looked;
	// From the result alone, worked out once more.
	const { market, context, state } = view;
	const judgement = judge(withBoards(market, market.parts.board), foldAnswers(state.answers, context));
	const { shortlist } = advise(judgement, state.answers);
	expect(json.shortlist.map(({ boardId }) => boardId)).toEqual(shortlist.map(({ boardId }) => boardId));
	shortlist.forEach(({ score: exact, price, ways }, index) => {
		count(told, "boards");
		const [low, mid, high] = [exact.low, exact.mid, exact.high].map(Math.round);
		const board = json.shortlist[index] as Sheet["shortlist"][number];
		const cell = (head: string) => rows[index]?.[head];
		expect(board.score).toEqual({ low, mid, high });
		expect(["score at least", "score", "score at most"].map(cell)).toEqual([low, mid, high].map(String));
		const sum = price && sumText(price.minor, price.currency);
		expect([cell("price"), cell("currency")]).toEqual(price ? [sum, price.currency] : ["", ""]);
		// The sentences that each form has on paper, and their figures.
		const points = `${mid} points of 100${low === high ? "" : ` (between ${low} and ${high}`}`;
		expect(board.scoreWords.startsWith(points), board.scoreWords).toBe(true);
		const inWays = /(?:in|suits) (\d+) of (?:the|your) (\d+) /.exec(board.scoreWords)?.slice(1).map(Number);
		expect(inWays).toEqual(ways.fit === ways.all ? undefined : [ways.fit, ways.all]);
		if (inWays) count(told, "ways");
		for (const phrase of [board.scoreWords, ...(price ? [`${price.currency} ${sum}`] : [])])
			expectOnPaper(looked, phrase);
		expect(cell("score in words")).toBe(board.scoreWords);
		// Whole points add up, and none is off by a point or more.
		const parts = [...exact.parts].sort((one, other) => other.weight - one.weight);
		const shares = [...board.pointsWords.matchAll(/(\d+) of (\d+) for /g)].map(([, got, most]) =>
			[got, most].map(Number),
		);
		expect(shares).toHaveLength(parts.length);
		shares.forEach(([got = 0, most = 0], at) => {
			count(told, "shares of points");
			const { weight = 0, value } = parts[at] ?? {};
			expect(Math.abs(got - 100 * weight * (value?.mid ?? 0))).toBeLessThan(1);
			expect(Math.abs(most - 100 * weight)).toBeLessThan(1);
		});
		const sumOf = (of: 0 | 1) => shares.reduce((all, share) => all + (share[of] ?? 0), 0);
		if (shares.length > 0) expect([sumOf(0), sumOf(1)]).toEqual([mid, 100]);
		expectOnPaper(looked, board.pointsWords);
	});
}

function shares(looked: Looked, told: Counted): void {
	const { advice, json } = looked;
	const mids = new Map(advice.ranking.map(({ boardId, score }) => [boardId, Math.round(score.mid)]));
	const { lead } = advice;
	const comparisons = [
		...(lead?.nearest ? [{ said: json.lead, ...lead.nearest }] : []),
		...advice.shortlist.flatMap(({ behind }, at) =>
			behind ? [{ said: json.shortlist[at]?.behind ?? [], ...behind }] : [],
		),
	];
	for (const { said, boardId, otherId } of comparisons) {
		const gaps = said.flatMap((text) => /has (\d+) points? more than /.exec(text)?.[1] ?? []).map(Number);
		const gap = Math.abs((mids.get(boardId) ?? 0) - (mids.get(otherId) ?? 0));
		count(told, "gaps", gaps.length);
		expect([[], [gap]]).toContainEqual(gaps);
		for (const text of said) expectOnPaper(looked, text);
	}
	if (!lead?.nearest) return;
	const { ahead, sureness, turns } = lead.nearest;
	const often = json.lead.flatMap((text) => /more points in (all|\d+ of 100) tries/.exec(text)?.[1] ?? []);
	const share = ahead?.share ?? 0;
	const inHundred = share >= 1 ? "all" : `${Math.min(99, Math.max(1, Math.round(100 * share)))} of 100`;
	expect(often).toEqual(lead.anyOf.length > 1 || !ahead || sureness === "too-close" ? [] : [inHundred]);
	count(told, "ahead in", often.length);
	const turned = json.lead
		.flatMap((text) => /than (\d+) of 100; now that is (\d+)\.$/.exec(text)?.slice(1) ?? [])
		.map(Number);
	if (turned.length > 0)
		expect(turned).toEqual([turns?.at, turns?.now].map((weight) => Math.round(100 * (weight ?? 0))));
	count(told, "turns", turned.length);
}

/** What is left of a sentence on power when each figure that is right is taken out. */
function wrongInPower(said: string, watts: Interval, spareK: Interval): string {
	const right =
		(figures: readonly number[], isTrue: boolean) =>
		(all: string, ...groups: readonly unknown[]) => {
			const told = groups.slice(0, 2).flatMap((one) => (typeof one === "string" ? [Number(one)] : []));
			return isTrue && told.join() === figures.join() ? "" : all;
		};
	const down = [...new Set([spareK.low, spareK.high].map(Math.floor))].filter((degrees) => degrees > 0);
	const past = Math.floor(-spareK.high);
	return said
		.replace(/(?<!\d)(\d+)(?: to (\d+))? W\b/, right(whole(watts), true))
		.replace(/with (?:up to )?(\d+)(?: to (\d+))? degrees? to spare/, right(down, true))
		.replace(/less than 1 degree to spare/, right([], spareK.high < 1 || spareK.low < 1))
		.replace(/have (?:up to )?(\d+) degrees? to spare/, right([Math.floor(spareK.high)], true))
		.replace(/lack (\d+)/, right([Math.max(1, Math.ceil(-spareK.low))], true))
		.replace(/at least (\d+) degrees? past/, right([past], past >= 1));
}

function powers(looked: Looked, told: Counted): void {
	const { view, advice, json, rows } = looked;
	advice.shortlist.forEach(({ boardId }, index) => {
		const steady = steadyOf(view, boardId);
		const said = json.shortlist[index]?.power ?? null;
		expect(said === null).toBe(steady === undefined);
		expect(rows[index]?.["power and heat"]).toBe(said ?? "");
		if (said === null || !steady) return;
		count(told, "power sentences");
		expect(wrongInPower(said, steady.watts, steady.spareK)).not.toMatch(/\d/);
		expectOnPaper(looked, said);
	});
	const [first] = advice.shortlist;
	const steady = first && steadyOf(view, first.boardId);
	if (!first || !steady) return;
	// The first board in full, and the gauge beside it.
	const { airC, hotSpotC, watts, comfortableW, holdingBackW, ratedW } = steady;
	const celsius = ({ low, high }: Interval) =>
		high > 150
			? `${low > 150 ? "" : `${Math.round(low)} to `}far past 150 degrees C`
			: `${whole({ low, high }).join(" to ")} degrees C`;
	const most = (range: Interval, end: "low" | "high") =>
		Math.min(range[end], ratedW?.[end] ?? Number.POSITIVE_INFINITY);
	const isWide = most(comfortableW, "high") > 6 * most(comfortableW, "low");
	const [below, back] = [comfortableW, holdingBackW].map((range) => Math.floor(most(range, "low")));
	const warm = json.power?.sections.find(({ heading }) => heading === "How warm it gets")?.lines ?? [];
	const phrases = [
		`Air at the stages, on a hot evening under load: ${celsius(airC)}.`,
		`Hottest stage, feeding ${whole(watts).join(" to ")} W: ${celsius(hotSpotC)}.`,
		`it surely feeds ${below} W${isWide ? "." : ` below 90 degrees, and ${back} W below 105.`}`,
	];
	for (const phrase of phrases) {
		count(told, "lines on warmth");
		expect(
			warm.filter((line) => line.includes(phrase)),
			phrase,
		).toHaveLength(1);
		expectOnPaper(looked, phrase);
	}
	expect(json.power?.picture).toEqual(
		expect.arrayContaining([`air: ${celsius(airC)}`, `hottest stage: ${celsius(hotSpotC)}`]),
	);
	for (const { line } of looked.lines)
		expect(line.split(` ${wordsIn(celsius(hotSpotC)).join(" ")} `).length).toBeGreaterThan(2);
}

function plans(looked: Looked, told: Counted): void {
	const { view, advice, json } = looked;
	const [first] = advice.shortlist;
	const judged = first && judgedIn(view, first.boardId);
	if (!judged) return;
	const { plan, uplink } = measurePlan(judged.subject.board ?? judged.board, view.build().facts);
	const sections = json.plan?.sections ?? [];
	const placed = sections.find(({ heading }) => heading === "What goes where")?.lines ?? [];
	plan.placed.forEach(({ device, connector, link }, index) => {
		const line = placed[index] ?? "";
		const at = ` in ${connector.name}`;
		expect(line, at).toContain(at);
		const [said = ""] = line.slice(line.lastIndexOf(at) + at.length).split(/\.(?= |$)/);
		const isSmall = (device.gbytesPerS ?? 1) < 0.1;
		const moves = link.gbytesPerS === null || isSmall ? [] : [toHundredth(link.gbytesPerS)];
		const could = moves.length === 0 || device.gbytesPerS === null ? [] : [toHundredth(device.gbytesPerS)];
		const isNarrow = link.lanes !== null && device.lanes !== null && link.lanes < device.lanes;
		const lanes = link.lanes === null ? [] : [link.lanes, ...(isNarrow ? [device.lanes] : [])];
		const generation = link.lanes === null || link.generation === null ? [] : [link.generation];
		const figures = [...lanes, ...generation, ...moves, ...(could[0] === moves[0] ? [] : could)];
		expect(said.match(/\d+(?:\.\d+)?/g)?.map(Number) ?? [], line).toEqual(figures);
		count(told, "places with lanes or GB/s", figures.length);
		expectOnPaper(looked, line);
	});
	const rates = [uplink.carriesGbytesPerS, uplink.wantedGbytesPerS].flatMap((rate) =>
		rate === null ? [] : [toHundredth(rate)],
	);
	const others = sections.filter(({ heading }) => heading !== "What goes where").flatMap(({ lines }) => lines);
	const saidRates = others.flatMap((line) =>
		[...line.matchAll(/(\d+(?:\.\d+)?) GB\/s/g)].map(([, rate]) => Number(rate)),
	);
	for (const rate of saidRates) expect(rates).toContain(rate);
	const drawn =
		json.plan?.picture.flatMap((line) => /link ([\d.]+) GB\/s, ([\d.]+) wanted/.exec(line)?.slice(1) ?? []) ?? [];
	if (drawn.length > 0) expect(drawn.map(Number)).toEqual(rates);
	count(told, "rates of the chipset", saidRates.length + drawn.length);
}

/** Each sentence has the figures of its own finding or demand, and no other's. */
function demandsAndReasons(looked: Looked, told: Counted): void {
	const { view, advice, json, nameless } = looked;
	const strange = (text: string, of: unknown) => {
		const known = new Set(figuresOf(of, nameless));
		const figures = nameless(wordsIn(text)).filter(isFigure);
		count(told, "figures in demands and reasons", figures.length);
		return figures.filter((figure) => !known.has(figure));
	};
	const data = needsData(view);
	const wrong: (readonly [string, readonly string[]])[] = [];
	for (const { ruleId, text } of [...json.mustHave, ...json.niceToHave]) {
		wrong.push([text, strange(text, data.get(ruleId))]);
		expectOnPaper(looked, text);
	}
	advice.shortlist.forEach((entry, index) => {
		for (const side of ["for", "against", "unknown"] as const)
			for (const reason of entry[side]) {
				const text = reasonWords(reason);
				expect([...(json.shortlist[index]?.[side] ?? []), ...json.ofAll[side]]).toContain(text);
				if (reason.kind === "finding") wrong.push([text, strange(text, reason.finding.data)]);
				if (reason.kind === "criterion") wrong.push([text, strange(text, reason.part.measure)]);
			}
	});
	expect(wrong.filter(([, figures]) => figures.length > 0)).toEqual([]);
}

/** How many figures were on the pages to take along, and of how many a figure one off would have been noticed. */
function pagesToTake(looked: Looked, told: Counted): void {
	const { view, pages, nameless } = looked;
	const known = figuresOfResult(view, nameless);
	for (const { form, shop, bench } of pages)
		for (const page of [shop, bench]) {
			const figures = nameless(page).filter(isFigure);
			const around = (figure: string) =>
				page.join(" ").match(new RegExp(`.{0,40} ${figure.replace(".", "\\.")} .{0,40}`))?.[0];
			expect(figures.filter((figure) => !known.has(figure)).map(around), form).toEqual([]);
			count(told, "figures on pages", figures.length);
			const offByOne = figures.filter((figure) => !known.has(String(toHundredth(Number(figure) + 1))));
			count(told, "noticed when one off", offByOne.length);
		}
}

/** Wherever a sheet tells the points or the price of its boards, it is those of the list, in its order. */
function oneFigureAThing({ advice: { shortlist }, pages }: Looked, told: Counted): void {
	const points = shortlist.map(({ score: { low, mid, high } }) => {
		const [from, to] = [low, high].map(Math.round);
		return [Math.round(mid), ...(from === to ? [] : [from, to])].join(" ");
	});
	const sums = shortlist.map(({ price }) =>
		price ? `${price.currency} ${sumText(price.minor, price.currency)}` : "PRICE NOT KNOWN",
	);
	for (const { form, shop, annex } of pages) {
		const all = (page: readonly string[], pattern: RegExp) =>
			[...` ${page.join(" ")} `.matchAll(pattern)].map(([, ...figures]) => figures.filter(Boolean).join(" "));
		const inFull = / (\d+) POINTS OF 100 (?:BETWEEN (\d+) AND (\d+) NOT )?/g;
		// In short the first, then the boards that the page has room for.
		const inShort = all(shop, inFull);
		expect([[], points.slice(0, 1)], form).toContainEqual(inShort);
		const onShop = all(shop, / (\d+) POINTS (?:(\d+) TO (\d+) )?(?=FITS |DEPENDS |CAN T )/g);
		expect(onShop, form).toEqual(points.slice(0, onShop.length));
		expect(onShop.length, form).toBeGreaterThanOrEqual(Math.min(2, points.length));
		expect(all(annex, inFull), form).toEqual(points);
		const inAnnex = all(annex, / PRICE ([A-Z]{3} [\d.]+(?= )|PRICE NOT KNOWN) /g);
		expect(inAnnex, form).toEqual(sums);
		count(told, "points and prices again", inShort.length + onShop.length + inAnnex.length);
	}
}

/** What the pages count: boards, days, modules; and what they tell twice, such as gaps and the chipset's link. */
function counts({ view, advice, json, pages, lines }: Looked, told: Counted): void {
	const { all, doesNotFit, cannotTell } = advice.counts;
	const { facts } = view.build();
	const days = advice.shortlist.flatMap(({ boardId }) => judgedIn(view, boardId).board.checkedOn ?? []).toSorted();
	const age = Math.round((Date.parse(view.context.asOf) - Date.parse(days[0] ?? view.context.asOf)) / 86_400_000);
	const modules = facts.memory.state === "have" ? facts.memory.part.modules : undefined;
	const gap = (text: string) => /has (\d+) points? more than /.exec(text)?.slice(1) ?? [];
	const gaps = [...json.lead, ...json.shortlist.flatMap(({ behind }) => behind)].flatMap(gap);
	for (const { form, shop, bench, annex } of pages) {
		const found = (page: readonly string[], pattern: RegExp) =>
			[...` ${page.join(" ")} `.matchAll(pattern)].flatMap(([, ...figures]) => figures.map(Number));
		const left = found(shop, / (\d+) OF (\d+) BOARDS (?:IS|ARE) LEFT /g);
		if (left.length > 0) expect(left, form).toEqual([all - doesNotFit, all]);
		const open = found(shop, / FOR (\d+) OF THEM SOMETHING IS NOT KNOWN YET /g);
		if (open.length > 0) expect(open, form).toEqual([cannotTell]);
		const ago = found(shop, / UP TO (\d+) DAYS? AGO /g);
		if (ago.length > 0) expect(ago, form).toEqual([age]);
		const pressed = found(bench, / PRESS THE (\d+) MODULES INTO /g);
		if (pressed.length > 0) expect(pressed, form).toEqual([modules]);
		expect(found(annex, / HAS (\d+) POINTS? MORE THAN /g), form).toEqual(gaps.map(Number));
		count(told, "counts", [left, open, ago, pressed].flat().length);
	}
	const drawn = (json.plan?.picture ?? []).flatMap(
		(line) => /link ([\d.]+) GB\/s, ([\d.]+) wanted/.exec(line)?.[0] ?? [],
	);
	for (const { form, line } of lines) {
		// A drawing says it to the eye and to the ear.
		const links = [...new Set(line.match(/LINK [\d.]+ GB S [\d.]+ WANTED/g))];
		expect(links, form).toEqual(drawn.map((words) => wordsIn(words).join(" ")));
	}
}

/** Temperatures that the sentences of one board tell, as they stand there. */
function celsiusOf({ json }: Looked, boardName: string): readonly string[] {
	const board = json.shortlist.find(({ name }) => name === boardName);
	const { ofAll, planAround } = json;
	const about = planAround.filter(({ boardNames }) => boardNames.includes(boardName)).map(({ text }) => text);
	const own = board ? [board, ofAll].flatMap((one) => [...one.for, ...one.against, ...one.unknown]) : [];
	return [...own, ...about].flatMap((text) => /get hot: (\d+ to \d+) degrees C/.exec(text)?.[1] ?? []);
}

/** What rules and criteria say of the heat of a board is that of its power; where one way is open, so that there is one. */
function heatInReasons(looked: Looked, told: Counted): void {
	const { view, advice, json } = looked;
	if (view.build().worlds.length > 1) return;
	advice.shortlist.forEach(({ boardId }, index) => {
		const steady = steadyOf(view, boardId);
		const board = json.shortlist[index];
		if (!steady || !board) return;
		const { spareK, hotSpotC } = steady;
		const hot = [hotSpotC.low, hotSpotC.high].map(Math.round).join(" to ");
		const heat = celsiusOf(looked, board.name);
		for (const range of heat) expect(range, board.name).toBe(hot);
		const spare = [board, json.ofAll]
			.flatMap((one) => [...one.for, ...one.unknown])
			.flatMap((text) => /power stages have (\d+)(?: to (\d+))? degrees? to spare/.exec(text)?.slice(1) ?? []);
		// Past 60 degrees to spare the scale of the criterion ends, and nothing more is told.
		const down = [...new Set([spareK.low, spareK.high].map((degrees) => Math.floor(Math.min(60, degrees))))];
		if (spare.length > 0) expect(spare.filter(Boolean).map(Number), board.name).toEqual(down);
		count(told, "heat in reasons", heat.length + spare.length);
	});
}

const checks: readonly ((looked: Looked, told: Counted) => void)[] = [
	...[pointsPricesWays, shares, powers, plans, demandsAndReasons, pagesToTake, oneFigureAThing, counts, heatInReasons],
];

/** Least often that each thing must have been told, so that its check has something to hold. */
function expectTold(told: Counted, least: Counted): void {
	for (const [what, times] of Object.entries(least)) expect(told[what] ?? 0, what).toBeGreaterThanOrEqual(times);
	// A figure of the pages told one off would be noticed in more than half of all places, by this check alone.
	expect(told["noticed when one off"] ?? 0).toBeGreaterThan((told["figures on pages"] ?? 0) / 2);
}

test("over random markets each figure in a form is the one in the result", () => {
	const told: Counted = {};
	fc.assert(
		fc.property(anyAnswersIn(anyMarket()), ({ market, answers }) => {
			const looked = lookAt(walkIn(market, answers));
			for (const check of checks) check(looked, told);
		}),
		runs(15),
	);
	expectTold(told, {
		...{ boards: 6, "shares of points": 30, "power sentences": 6, "lines on warmth": 6, "heat in reasons": 6 },
		...{ "figures in demands and reasons": 80, "figures on pages": 400, "points and prices again": 40, counts: 6 },
	});
});

describe("of the people of data/scenarios", () => {
	// All boards of the demonstration, as in the program.
	const context = { market: makeMarket("the demonstration", structuredClone(demoFiles)).market, asOf };
	const people = scenarios.map(({ name, state }) => ({ name, looked: lookAt({ context, state }) }));

	test("each figure in a form is the one in the result", () => {
		const told: Counted = {};
		for (const { looked } of people) for (const check of checks) check(looked, told);
		expectTold(told, {
			...{ boards: 20, ways: 5, "shares of points": 150, gaps: 15, "ahead in": 3, turns: 2, "power sentences": 15 },
			...{ "lines on warmth": 12, "places with lanes or GB/s": 20, "rates of the chipset": 6, "heat in reasons": 12 },
			...{ "figures in demands and reasons": 250, "figures on pages": 600, "points and prices again": 120, counts: 40 },
		});
	});

	test("the temperature of the first board is the same wherever the sheet tells it", () => {
		const differing = people.flatMap(({ looked }) => {
			const [first] = looked.advice.shortlist;
			const steady = first && steadyOf(looked.view, first.boardId);
			const name = looked.json.shortlist[0]?.name ?? "";
			if (!steady) return [];
			const inFull = whole(steady.hotSpotC).join(" to ");
			return celsiusOf(looked, name).flatMap((range) => (range === inFull ? [] : [`${name}: ${range}, ${inFull}`]));
		});
		expect(differing).toEqual([]);
	});
});
