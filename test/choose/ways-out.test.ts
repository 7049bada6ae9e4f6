import { describe, expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import { waysOut } from "../../src/choose/ways-out.ts";
import type { Board } from "../../src/parts/board.ts";
import { withOwnership } from "../../src/questions/owned-parts.ts";
import { buildFacts } from "../rules/rule-subject.ts";
import { buildOf, goodBoard, goodBuild, smallMarket } from "./small-market.ts";

const dear = { price: { minor: 20_000, currency: "EUR" } };
const otherSocket = { socket: "Harbour 2" };
const otherMemory = { memory: { type: "DDR4" as const, slots: 2 } };
const tooLarge = { form: "E-ATX" as const };

const ways = (boards: readonly Partial<Board>[], given: Parameters<typeof buildOf> = [goodBuild]) =>
	waysOut(judge(smallMarket(boards.map((facts) => ({ ...goodBoard, ...facts }))), buildOf(...given)));

/** A way that changes plans only. */
const plans = (giveUp: readonly string[], ...boardIds: string[]) => ({ giveUp, boardIds, firmness: "planned" });

describe("none where a board is left", () => {
	test("one fits", () => {
		expect(ways([{}, dear])).toEqual([]);
	});

	test("of one it cannot be told", () => {
		expect(ways([{ price: { minor: 1, currency: "JPY" } }, dear])).toEqual([]);
	});

	test("there is no board at all", () => {
		expect(ways([])).toEqual([]);
	});
});

describe("nothing fits", () => {
	test("one board, one rule", () => {
		expect(ways([dear])).toEqual([plans(["fit/price-cap"], "board-1")]);
	});

	test("fewer demands first, then more boards brought back", () => {
		expect(ways([{ ...otherSocket, ...otherMemory }, dear, tooLarge, dear])).toEqual([
			plans(["fit/price-cap"], "board-2", "board-4"),
			plans(["fit/board-form"], "board-3"),
			plans(["fit/memory-modules", "fit/socket"], "board-1"),
		]);
	});

	test("one demand before two, though the two bring back more boards", () => {
		const twice = { ...otherSocket, ...otherMemory };
		expect(ways([twice, twice, dear]).map(({ giveUp }) => giveUp.length)).toEqual([1, 2]);
	});

	test("a set that contains another is no smallest way", () => {
		expect(ways([{ ...dear, ...otherSocket }, dear])).toEqual([plans(["fit/price-cap"], "board-2")]);
	});

	test("a board that needs less is brought back along with one that needs more", () => {
		expect(
			ways([
				{ ...dear, ...otherSocket },
				{ ...dear, ...otherSocket },
				{ ...tooLarge, ...otherMemory },
			]),
		).toEqual([
			plans(["fit/price-cap", "fit/socket"], "board-1", "board-2"),
			plans(["fit/board-form", "fit/memory-modules"], "board-3"),
		]);
	});

	test("of as many demands and boards: money before a part, and parts by the names of their rules", () => {
		expect(ways([otherSocket, dear, tooLarge]).map(({ giveUp }) => giveUp.join())).toEqual([
			"fit/price-cap",
			"fit/board-form",
			"fit/socket",
		]);
	});

	test("a wish before money, and both of them before one part, though they are two", () => {
		const wishes = { "features/rear-usb-c": "must" as const };
		const plugged = { rearUsb: [{ plug: "C" as const, count: 1 }] };
		expect(
			ways([dear, { ...otherSocket, ...plugged }], [{ ...goodBuild, wishes }]).map(({ giveUp }) => giveUp.join()),
		).toEqual(["features/rear-usb-c,fit/price-cap", "fit/socket"]);
		expect(ways([{ ...dear, ...plugged }, {}], [{ ...goodBuild, wishes }]).map(({ giveUp }) => giveUp.join())).toEqual([
			"features/rear-usb-c",
			"fit/price-cap",
		]);
	});

	test("drives that are paid for come after a plan", () => {
		const stick = {
			id: "stick",
			name: "Stick",
			shape: "M.2" as const,
			key: "M" as const,
			lengthMm: 80,
			link: "PCI Express" as const,
		};
		const drives = [stick, { ...stick, id: "other" }];
		const build = buildFacts({ ...goodBuild, drives, boughtLists: ["drives"] } as never);
		const boards = [
			{ ...goodBoard, m2Sockets: [], cardSlots: [], drivePorts: [], sharing: [] },
			{ ...goodBoard, ...otherSocket },
		];
		const found = waysOut(judge(smallMarket(boards), { facts: build, worlds: [{ facts: build, choices: [] }] }));
		expect(found.map(({ giveUp, firmness }) => [giveUp.join(), firmness])).toEqual([
			["fit/socket", "planned"],
			["fit/m2-drives", "bought"],
		]);
	});
});

describe("open answers", () => {
	const open = { ...goodBuild, case: "unknown" as const, supply: "unknown" as const };
	const small = { boardForms: ["Mini-ITX" as const] };
	const large = { boardForms: ["ATX" as const] };
	const [weak, strong] = [{ processorPlugs: [] }, { processorPlugs: ["8-pin" as const] }];

	test("rules that together leave no way: giving up either is enough", () => {
		expect(
			ways(
				[{}],
				[open, { "small, strong": { case: small, supply: strong }, "large, weak": { case: large, supply: weak } }],
			),
		).toEqual([plans(["fit/board-form"], "board-1"), plans(["fit/power-plugs"], "board-1")]);
	});

	test("a rule that always fails is not all there is to give up", () => {
		expect(
			ways(
				[dear],
				[open, { "small, strong": { case: small, supply: strong }, "large, weak": { case: large, supply: weak } }],
			),
		).toEqual([
			plans(["fit/board-form", "fit/price-cap"], "board-1"),
			plans(["fit/power-plugs", "fit/price-cap"], "board-1"),
		]);
	});

	test("what one way spares need not be given up", () => {
		expect(
			ways(
				[dear],
				[open, { "small, strong": { case: small, supply: strong }, "large, strong": { case: large, supply: strong } }],
			),
		).toEqual([plans(["fit/price-cap"], "board-1")]);
	});
});

describe("what is harder to change comes later", () => {
	type Owned = Parameters<typeof withOwnership>[1];
	const owned = (boards: readonly Partial<Board>[], ownershipOf: Owned) => {
		const facts = withOwnership(buildFacts(goodBuild), ownershipOf);
		const market = smallMarket(boards.map((more) => ({ ...goodBoard, ...more })));
		return waysOut(judge(market, { facts, worlds: [{ facts, choices: [] }] })).map(
			({ giveUp, firmness }) => [giveUp.join(), firmness] as const,
		);
	};
	const three = [otherMemory, tooLarge, otherSocket];

	test("a part planned, then one that can go back, then one bought for good", () => {
		expect(owned(three, (kind) => (kind === "memory" ? "returnable" : kind === "case" ? "bought" : "planned"))).toEqual(
			[
				["fit/socket", "planned"],
				["fit/memory-modules", "returnable"],
				["fit/board-form", "bought"],
			],
		);
		expect(
			owned(three, (kind) => (kind === "processor" ? "bought" : kind === "case" ? "returnable" : "planned")),
		).toEqual([
			["fit/memory-modules", "planned"],
			["fit/board-form", "returnable"],
			["fit/socket", "bought"],
		]);
	});

	test("a limit before any part that is not planned", () => {
		expect(owned([otherSocket, dear], () => "returnable")).toEqual([
			["fit/price-cap", "planned"],
			["fit/socket", "returnable"],
		]);
	});

	test("two plans before one part bought, though two are more to give up and the part brings back more boards", () => {
		const twice = { ...otherSocket, ...otherMemory };
		expect(owned([tooLarge, tooLarge, twice], (kind) => (kind === "case" ? "bought" : "planned"))).toEqual([
			["fit/memory-modules,fit/socket", "planned"],
			["fit/board-form", "bought"],
		]);
	});

	test("a way is as firm as the firmest part in it", () => {
		const twice = { ...otherSocket, ...otherMemory };
		expect(owned([twice], (kind) => (kind === "memory" ? "returnable" : "planned"))).toEqual([
			["fit/memory-modules,fit/socket", "returnable"],
		]);
		expect(owned([twice], (kind) => (kind === "memory" ? "returnable" : "bought"))).toEqual([
			["fit/memory-modules,fit/socket", "bought"],
		]);
	});
});
