import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import { type PriceLine, priceLine } from "../../src/choose/price-line.ts";
import { rankBoards } from "../../src/choose/ranked-boards.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { anyAnswers, anyMarket, demoContext } from "./demo.ts";
import { eur, lineOf, type MadeUp, namesOf } from "./made-up-lines.ts";

const beatenIn = ({ beaten }: PriceLine) =>
	beaten.map(({ point, by, how, isCertain }) => [by.board.name, how, point.board.name, isCertain]);

describe("the line", () => {
	const line = lineOf([
		{ name: "Dear", euros: 300, points: 90 },
		{ name: "Cheap", euros: 100, points: 40 },
		{ name: "Middling", euros: 150, points: 70 },
		{ name: "Sagging", euros: 170, points: 72 },
		{ name: "Poor", euros: 200, points: 60 },
	]);

	test("goes over the boards that are best for some worth of a point", () => {
		expect(namesOf(line.hull)).toEqual(["Cheap", "Middling", "Dear"]);
		expect(
			line.steps.map(({ moreMinor, morePoints, minorPerPoint }) => [moreMinor, morePoints, minorPerPoint]),
		).toEqual([
			[5_000, 30, 5_000 / 30],
			[15_000, 20, 750],
		]);
	});

	test("leaves below it what none beats, and names who beats the rest", () => {
		expect(namesOf(line.below)).toEqual(["Sagging"]);
		expect(beatenIn(line)).toEqual([["Sagging", "no-dearer", "Poor", true]]);
		expect([line.unsettled, line.noPrice, line.otherCurrency, line.allForce]).toEqual([[], [], [], []]);
	});
});

describe("boards that are nearly alike", () => {
	const two = (one: Omit<MadeUp, "name">, other: Omit<MadeUp, "name">) =>
		lineOf([
			{ name: "One", ...one },
			{ name: "Other", ...other },
		]);

	test("one point more is no reason to pay more; two are", () => {
		const apart = (points: number) => two({ euros: 100, points: 70 }, { euros: 130, points: 70 + points });
		expect(beatenIn(apart(1))).toEqual([["One", "about-as-good", "Other", true]]);
		expect(namesOf(apart(2).hull)).toEqual(["One", "Other"]);
	});

	test("a board at most two hundredths dearer and five points better takes the other's place", () => {
		const dearer = (euros: number, points: number) => two({ euros: 100, points: 70 }, { euros, points });
		expect(beatenIn(dearer(102, 75))).toEqual([["Other", "hardly-dearer", "One", true]]);
		expect(namesOf(dearer(102.01, 75).hull)).toEqual(["One", "Other"]);
		expect(namesOf(dearer(102, 74).hull)).toEqual(["One", "Other"]);
	});

	test("of two at one price with about the same points the better leads, and both are told", () => {
		expect(beatenIn(two({ euros: 100, points: 70 }, { euros: 100, points: 71 }))).toEqual([
			["Other", "alike", "One", true],
		]);
		expect(beatenIn(two({ euros: 100, points: 70 }, { euros: 100, points: 70 }))).toEqual([
			["One", "alike", "Other", true],
		]);
		expect(beatenIn(two({ euros: 100, points: 70 }, { euros: 100, points: 72 }))).toEqual([
			["Other", "no-dearer", "One", true],
		]);
	});

	test("small steps up in price do not push out a board that is far cheaper", () => {
		const row = lineOf(
			Array.from({ length: 6 }, (_, index) => ({
				name: `Step ${index}`,
				euros: 100 * 1.019 ** index,
				points: 50 + 6 * index,
			})),
		);
		// Each is beaten by the next, but the last one is a tenth dearer than the first.
		for (const { point, by } of row.beaten) expect(by.minor).toBeLessThanOrEqual(point.minor * 1.02);
		expect(row.hull.length).toBeGreaterThan(1);
	});
});

describe("what is not known", () => {
	test("a range that reaches past the other's leaves it open who is better", () => {
		const ranges = (points: MadeUp["points"]) =>
			lineOf([
				{ name: "Known", euros: 100, points: 80 },
				{ name: "Vague", euros: 120, points },
			]);
		expect(beatenIn(ranges([60, 80]))).toEqual([["Known", "no-dearer", "Vague", true]]);
		expect(beatenIn(ranges([60, 90]))).toEqual([["Known", "no-dearer", "Vague", false]]);
	});

	test("a board that may not fit leads nothing, but is named", () => {
		const line = lineOf([
			{ name: "Sure", euros: 150, points: 60 },
			{ name: "Perhaps", euros: 100, points: 80, mayFit: true },
			{ name: "Hardly", euros: 200, points: [10, 70], mayFit: true },
		]);
		expect(namesOf(line.hull)).toEqual(["Sure"]);
		expect(namesOf(line.unsettled)).toEqual(["Perhaps"]);
		expect(beatenIn(line)).toEqual([["Sure", "no-dearer", "Hardly", false]]);
	});

	test("where none surely fits, all are held against each other", () => {
		const line = lineOf([
			{ name: "One", euros: 150, points: 80, mayFit: true },
			{ name: "Other", euros: 100, points: 60, mayFit: true },
		]);
		expect(namesOf(line.hull)).toEqual(["Other", "One"]);
	});
});

describe("prices", () => {
	test("boards without one, or with one in another currency, stand apart", () => {
		const line = lineOf([
			{ name: "Priced", euros: 150, points: 80 },
			{ name: "Priced too", euros: 160, points: 90 },
			{ name: "Silent", points: 95 },
			{ name: "Abroad", points: 95, facts: { price: { minor: 100, currency: "GBP" } } },
		]);
		expect(line.currency).toBe("EUR");
		expect(namesOf(line.points)).toEqual(["Priced", "Priced too"]);
		expect(line.noPrice.map(({ name }) => name)).toEqual(["Silent"]);
		expect(line.otherCurrency.map(({ board, price }) => [board.name, price.currency])).toEqual([["Abroad", "GBP"]]);
	});

	test("the currency is the one that most have; of two with as many the first by name", () => {
		const gbp = (name: string) => ({ name, points: 50, facts: { price: { minor: 5_000, currency: "GBP" } } });
		expect(lineOf([gbp("A"), gbp("B"), { name: "C", euros: 1, points: 1 }]).currency).toBe("GBP");
		expect(lineOf([gbp("A"), { name: "C", euros: 1, points: 1 }]).currency).toBe("EUR");
		expect(lineOf([{ name: "C", points: 1 }])).toMatchObject({ currency: null, points: [], hull: [] });
	});

	test("where only used ones are offered, that price counts and is told as such", () => {
		const offers = [{ price: eur(80), condition: "used" as const }];
		const line = lineOf([{ name: "Old", points: 50, facts: { offers } }]);
		expect(line.points).toMatchObject([{ minor: 8_000, own: { condition: "used" } }]);
	});
});

describe("what a board forces", () => {
	const build = { wishes: { "features/wireless": "must", "features/rear-usb-c": "dont-mind" } } as const;
	const slots = [{ name: "SLOT_1", bus: "PCI Express" as const, sizeLanes: 16, lanes: 16, row: 1 }];
	const wired = (more = {}) => ({ wireless: { builtIn: false }, cardSlots: slots, ...more });
	const card = {
		id: "aerial",
		name: "Aerial",
		use: "wireless network",
		bus: "PCI Express",
		lanes: 1,
		price: eur(30),
	} as const;
	const dearer = { ...card, id: "mast", name: "Mast", price: eur(50) };
	const boards = [
		{ name: "Wired", euros: 100, points: 70, facts: wired() },
		{ name: "Wireless", euros: 120, points: 70, facts: { wireless: { builtIn: true } } },
	];

	test("is added at the price of the cheapest part that does it", () => {
		const line = lineOf(boards, { build, cards: [dearer, card] });
		expect(line.points.map(({ board, minor, costs }) => [board.name, minor, costs.priced])).toEqual([
			["Wireless", 12_000, []],
			["Wired", 13_000, [{ words: "an adapter for wireless", partName: "Aerial", minor: 3_000 }]],
		]);
		expect(beatenIn(line)).toEqual([["Wireless", "no-dearer", "Wired", true]]);
	});

	test("without a known price the board's own is the least, and it beats none for certain", () => {
		const line = lineOf(boards, { build });
		expect(namesOf(line.hull)).toEqual(["Wireless"]);
		expect(line.unsettled.map(({ board, minor, besides }) => [board.name, minor, besides])).toEqual([
			["Wired", 10_000, ["an adapter for wireless"]],
		]);
		const dear = lineOf([{ ...boards[0], name: "Wired", euros: 130, points: 70 }, boards[1] as MadeUp], { build });
		expect(beatenIn(dear)).toEqual([["Wireless", "no-dearer", "Wired", true]]);
	});

	test("a card in another currency, for the old slots, or without a free slot is no price", () => {
		const priceOf = (given: object, facts = wired()) =>
			lineOf([{ name: "Wired", euros: 100, points: 70, facts }, boards[1] as MadeUp], {
				build,
				cards: [{ ...card, ...given }],
			}).points.find(({ board }) => board.name === "Wired")?.costs;
		const unknown = { priced: [], unpriced: ["an adapter for wireless"] };
		expect(priceOf({})?.unpriced).toEqual([]);
		expect(priceOf({ price: { minor: 1, currency: "GBP" } })).toMatchObject(unknown);
		expect(priceOf({ bus: "PCI" })).toMatchObject(unknown);
		expect(priceOf({ use: "sound" })).toMatchObject(unknown);
		expect(priceOf({}, wired({ cardSlots: [] }))).toMatchObject(unknown);
	});

	test("what all force alike is no difference between them, and is told once", () => {
		const line = lineOf(
			[
				{ name: "One", euros: 100, points: 60, facts: wired() },
				{ name: "Other", euros: 130, points: 80, facts: wired() },
			],
			{ build },
		);
		expect(line.allForce).toEqual(["an adapter for wireless"]);
		expect(namesOf(line.hull)).toEqual(["One", "Other"]);
		expect(line.points.flatMap(({ besides }) => besides)).toEqual([]);
	});

	test("where each forces something else the line leaves that out, and says so", () => {
		const old = { oldThings: ["serial device"] } as const;
		const line = lineOf(
			[
				{ name: "One", euros: 100, points: 60, facts: wired({ rearOld: ["serial"] }) },
				{
					name: "Other",
					euros: 130,
					points: 80,
					facts: {
						wireless: { builtIn: true },
						rearOld: [],
						headers: { fans: [{ name: "FAN_1", use: "processor" }], serial: 0 },
					},
				},
			],
			{ build: { ...build, ...old } },
		);
		expect(line.points.map(({ besides }) => besides)).toEqual([
			["an adapter for wireless"],
			["a USB to serial adapter"],
		]);
		expect(line.leavesOut).toBe(true);
		expect(namesOf(line.hull)).toEqual(["One", "Other"]);
	});

	test("what is bought only if an answer turns out so is no sure cost", () => {
		const line = lineOf(boards, {
			cards: [card],
			ways: {
				must: build,
				"do not mind": { wishes: { "features/wireless": "dont-mind", "features/rear-usb-c": "dont-mind" } },
			},
		});
		const wiredPoint = line.points.find(({ board }) => board.name === "Wired");
		expect(wiredPoint).toMatchObject({ minor: 10_000, besides: ["perhaps an adapter for wireless"] });
	});
});

describe("whatever is answered, in whatever market", () => {
	const anyLine = fc.tuple(anyAnswers, anyMarket).map(([answers, market]) => {
		const judgement = judge(market, foldAnswers(answers, { ...demoContext, market }));
		const ranking = rankBoards(judgement).map(({ judged, score }) => ({ boardId: judged.board.id, score }));
		return { judgement, ranking, line: priceLine(judgement, ranking) };
	});

	test("each board left stands in one place, and who beats whom holds by what is shown", () => {
		fc.assert(
			fc.property(anyLine, ({ ranking, line }) => {
				const placed = [
					...[...line.hull, ...line.below, ...line.unsettled].map(({ board }) => board.id),
					...line.beaten.map(({ point }) => point.board.id),
					...line.noPrice.map(({ id }) => id),
					...line.otherCurrency.map(({ board }) => board.id),
				];
				expect([...placed].sort()).toEqual(ranking.map(({ boardId }) => boardId).sort());
				for (const { point, by, how } of line.beaten) {
					expect(by.minor <= point.minor * (how === "hardly-dearer" ? 1.02 : 1)).toBe(true);
					expect(by.points - point.points).toBeGreaterThan(how === "hardly-dearer" ? 4 : -2);
				}
			}),
			{ numRuns: 60 },
		);
	});

	test("along the line price, points and the price of a point rise, and the changes add up", () => {
		fc.assert(
			fc.property(anyLine, ({ line: { steps } }) => {
				steps.forEach(({ from, to, moreMinor, morePoints, minorPerPoint, changes }, index) => {
					expect(moreMinor).toBeGreaterThan(0);
					expect(morePoints).toBeGreaterThan(0);
					expect(minorPerPoint).toBeCloseTo(moreMinor / morePoints, 9);
					expect(minorPerPoint).toBeGreaterThan(steps[index - 1]?.minorPerPoint ?? 0);
					const sum = changes.reduce((all, { points }) => all + points, 0);
					expect(sum).toBeCloseTo(to.score.mid - from.score.mid, 6);
				});
			}),
			{ numRuns: 60 },
		);
	});

	test("a board at the place of no other, taken out, changes nothing unless it is on the line or beats", () => {
		fc.assert(
			fc.property(anyLine, ({ judgement, ranking, line }) => {
				const gone = line.beaten.find(({ point }) => !line.beaten.some(({ by }) => by === point))?.point;
				// What all force alike may be told of a board that is taken out alone; that is another line.
				fc.pre(gone !== undefined && line.allForce.length === 0 && !line.leavesOut);
				const without = priceLine(
					judgement,
					ranking.filter(({ boardId }) => boardId !== gone?.board.id),
				);
				fc.pre(without.allForce.length === 0 && without.currency === line.currency);
				expect(namesOf(without.hull)).toEqual(namesOf(line.hull));
				expect(namesOf(without.below)).toEqual(namesOf(line.below));
			}),
			{ numRuns: 60 },
		);
	});

	test("the order of the ranking changes nothing", () => {
		fc.assert(
			fc.property(anyLine, ({ judgement, ranking, line }) => {
				const again = priceLine(judgement, [...ranking].reverse());
				expect(namesOf(again.points)).toEqual(namesOf(line.points));
				expect(namesOf(again.hull)).toEqual(namesOf(line.hull));
				expect(beatenIn(again)).toEqual(beatenIn(line));
			}),
			{ numRuns: 30 },
		);
	});
});
