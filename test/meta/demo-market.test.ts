import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { editDistance } from "../../src/maths/edit-distance.ts";
import type { Board } from "../../src/parts/board.ts";
import { partsFile } from "../../src/parts/market.ts";
import { type PartKind, type PartOf, partKindNames, partKinds } from "../../src/parts/part-kinds.ts";
import { boardForms } from "../../src/reference/board-forms.ts";
import { holePosition, sharedEdges } from "../../src/reference/board-holes.ts";
import { mmOfInches } from "../../src/reference/inches.ts";

const folder = fileURLToPath(new URL("../../data/demo", import.meta.url));
const rawFiles = readdirSync(folder)
	.sort()
	.map((name) => ({ name, content: JSON.parse(readFileSync(join(folder, name), "utf8")) as unknown }));

test("the market is these five files", () => {
	expect(rawFiles.map(({ name }) => name)).toEqual([
		"boards.json",
		"cases.json",
		"other-parts.json",
		"platforms.json",
		"processors.json",
	]);
});

test.each(rawFiles)("$name is a parts file and says that it is invented", ({ content }) => {
	expect(partsFile.parse(content).note).toMatch(/^Everything in this file is invented/);
});

// A file that does not parse fails above; the checks below go on with the others.
const files = rawFiles.map(({ content }) => partsFile.safeParse(content).data).filter((file) => file !== undefined);
const listed = <K extends PartKind>(kind: K) =>
	files.flatMap((file) => (file[partKinds[kind].list] ?? []) as readonly unknown[] as readonly PartOf<K>[]);
const boards = listed("board");
const processors = listed("processor");
const platforms = listed("platform");
const rowOf = (board: Board) => platforms.find((row) => row.socket === board.socket && row.chipset === board.chipset);

/** The one board of which its page tells next to nothing; checks that need facts leave it out. */
const bareBoardId = "fernquill-riddle";
const toldBoards = boards.filter(({ id }) => id !== bareBoardId);

describe.each(partKindNames)("every %s", (kind) => {
	const parts = listed(kind);

	test("has an id of its own", () => {
		expect(parts.length).toBeGreaterThan(0);
		expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
	});

	test("is marked invented", () => {
		expect(parts.filter(({ invented }) => invented !== true)).toEqual([]);
	});

	test("has a price in euro and the day it was seen, but for chipsets, which nobody buys", () => {
		const prices = parts.map((part) => ("price" in part ? [part.price?.currency, part.checkedOn !== undefined] : []));
		expect(prices).toEqual(parts.map(() => (kind === "platform" ? [] : ["EUR", true])));
	});
});

test("no other currency stands anywhere, offers included", () => {
	const currencies = JSON.stringify(rawFiles).match(/"currency":"[^"]*"/g) ?? [];
	expect(new Set(currencies)).toEqual(new Set(['"currency":"EUR"']));
});

test("one price is stale, all others are of two weeks", () => {
	const days = files.flatMap((file) => JSON.stringify(file).match(/(?<="checkedOn":")[^"]+/g) ?? []);
	expect(days.filter((day) => day < "2026-11-10" || day > "2026-11-22")).toEqual(["2026-03-02"]);
});

test("no two names are alike", () => {
	const names = partKindNames
		.filter((kind) => kind !== "platform")
		.flatMap((kind) => listed(kind).map(({ name }) => name.toLowerCase()));
	const alike = names.flatMap((one, at) =>
		names.slice(at + 1).flatMap((other) => (editDistance(one, other) < 4 ? [`${one} / ${other}`] : [])),
	);
	expect(alike).toEqual([]);
	expect(new Set(platforms.map(({ name }) => name)).size).toBe(platforms.length);
});

describe("sockets, chipsets and generations", () => {
	test("every board has a chipset row, but for the one of which only the socket is known", () => {
		expect(boards.filter((board) => rowOf(board) === undefined).map(({ id }) => id)).toEqual([bareBoardId]);
	});

	test("a board lets be raised what its chipset does", () => {
		expect(toldBoards.map(({ raises }) => raises)).toEqual(toldBoards.map((board) => rowOf(board)?.raises));
	});

	test.each(processors)("the generation of $name stands in every chipset row of its socket", (processor) => {
		const rows = platforms.filter(({ socket }) => socket === processor.socket);
		expect(rows.length).toBeGreaterThan(0);
		for (const { generations } of rows)
			expect(generations.map(({ generation }) => generation)).toContain(processor.generation);
	});

	test("each processor generation of the DDR5 socket is refused by one chipset", () => {
		const refused = platforms
			.filter(({ socket }) => socket === "Harbour 2")
			.flatMap(({ generations }) => generations.filter(({ served }) => served === "no"));
		expect(refused.map(({ generation }) => generation).sort()).toEqual(["Dinghy", "Schooner"]);
	});

	test("memory type follows the socket on boards and processors alike", () => {
		const types = new Set([
			...boards.map(({ socket, memory }) => `${socket} ${memory?.type}`),
			...processors.map(({ socket, memory }) => `${socket} ${memory?.types?.join()}`),
		]);
		expect([...types].sort()).toEqual(["Harbour 2 DDR5", "Kettle 7 DDR4"]);
	});
});

describe.each(toldBoards)("$name", (board) => {
	const form = boardForms[board.form ?? "ATX"];
	const connectors = [...(board.cardSlots ?? []), ...(board.m2Sockets ?? []), ...(board.drivePorts ?? [])];
	const names = connectors.map(({ name }) => name);

	test("is no larger than its form; Mini-ITX is exact", () => {
		expect(board.widthMm).toBeLessThanOrEqual(form.widthMm);
		// E-ATX is a name of the trade: such boards are usually shallower than the 330 mm written beside it.
		expect(board.depthMm).toBeLessThanOrEqual(form.depthMm);
		if (board.form === "Mini-ITX") expect([board.widthMm, board.depthMm]).toEqual([170, 170]);
		if (board.form === "E-ATX") expect(board.depthMm).toBe(277);
	});

	test("has its screw holes on the board", () => {
		const leftMm = mmOfInches(sharedEdges.rightIn) - (board.widthMm ?? 0);
		const frontMm = mmOfInches(sharedEdges.rearIn) + (board.depthMm ?? 0);
		expect(board.holes?.length).toBeGreaterThanOrEqual(4);
		const off = board.holes?.filter((hole) => holePosition(hole).xMm < leftMm || holePosition(hole).yMm > frontMm);
		expect(off).toEqual([]);
	});

	test("has no connector name twice and no card row past its form", () => {
		const rows = { "Mini-ITX": 1, microATX: 4, ATX: 7, "E-ATX": 8 } as Record<string, number>;
		expect(new Set(names).size).toBe(names.length);
		for (const { row, lengthLanes, wiredLanes } of board.cardSlots ?? []) {
			expect(row).toBeLessThanOrEqual(rows[board.form ?? ""] ?? 0);
			expect(wiredLanes).toBeLessThanOrEqual(lengthLanes ?? 0);
		}
	});

	test("shares and limits only connectors it has", () => {
		for (const { members, modes } of board.sharing ?? []) {
			expect(names).toEqual(expect.arrayContaining(members));
			for (const { on } of modes) {
				expect(members).toEqual(expect.arrayContaining(Object.keys(on)));
				for (const [name, lanes] of Object.entries(on)) {
					const connector = connectors.find((one) => one.name === name);
					const wired = connector && "wiredLanes" in connector ? connector.wiredLanes : 1;
					expect(lanes).toBeLessThanOrEqual(wired ?? 0);
				}
			}
		}
		for (const { connector, when } of board.conditions ?? []) {
			expect(names).toContain(connector);
			const known = processors.filter(({ socket }) => socket === board.socket);
			for (const series of when.processorSeries ?? []) expect(known.map((one) => one.series)).toContain(series);
			for (const generation of when.processorGenerations ?? [])
				expect(known.map((one) => one.generation)).toContain(generation);
		}
	});

	test("takes no more lanes from the processor than any processor it serves has", () => {
		const lanesOf = (list: readonly { from?: string | undefined; wiredLanes?: number | undefined }[] = []) =>
			list.reduce((sum, { from, wiredLanes }) => sum + (from === "processor" ? (wiredLanes ?? 0) : 0), 0);
		const served = rowOf(board)?.generations.filter((row) => row.served !== "no") ?? [];
		const plugged = processors.filter(
			({ socket, generation }) => socket === board.socket && served.some((row) => row.generation === generation),
		);
		expect(plugged.length).toBeGreaterThan(0);
		for (const { lanes } of plugged) expect(lanesOf(board.m2Sockets)).toBeLessThanOrEqual(lanes?.storage ?? 0);
	});

	test("names as many memory slots as modules, none it does not have", () => {
		const { slots = 0, channels = 1, maxGb, maxGbPerModule = 0, rates, slotOrder = {} } = board.memory ?? {};
		expect(maxGb).toBe(slots * maxGbPerModule);
		expect(Object.keys(slotOrder)).toContain(String(slots));
		for (const [modules, order] of Object.entries(slotOrder)) {
			expect(new Set(order).size).toBe(Number(modules));
			expect(order.length).toBeLessThanOrEqual(slots);
			expect(slotOrder[String(slots)]).toEqual(expect.arrayContaining(order));
		}
		const perChannel = new Set(rates?.map(({ modulesPerChannel }) => modulesPerChannel));
		expect([...perChannel]).toEqual(slots / channels === 2 ? [1, 2] : [1]);
	});

	test("has processor plugs that some supply of the market fills, the larger first", () => {
		const plugs = board.power?.processorPlugs ?? [];
		expect(plugs.length).toBeGreaterThan(0);
		expect(plugs).toEqual([...plugs].sort().reverse());
		// An 8-pin of a supply splits into 4+4, so it fills a 4-pin too; a 4-pin never fills an 8-pin.
		const filled = listed("supply").some(({ processorPlugs = [] }) => {
			const whole = processorPlugs.filter((plug) => plug === "8-pin").length;
			return plugs.filter((plug) => plug === "8-pin").length <= whole && plugs.length <= processorPlugs.length;
		});
		expect(filled).toBe(true);
	});

	test("may lie in shops with a firmware that its maker released", () => {
		expect(board.firmware?.releases?.map(({ version }) => version)).toContain(board.firmware?.oldestInShops);
	});
});

/**
 * A plain count of what is on a board: everything one can plug something into, and one for each kind of help when
 * something goes wrong. Every item counts the same, whatever it is worth.
 */
function countFeatures(board: Board): number {
	const { cardSlots, m2Sockets, drivePorts, rearUsb, pictureSockets, wiredGbps, headers, power, recovery } = board;
	const lists = [cardSlots, m2Sockets, drivePorts, pictureSockets, wiredGbps, power?.processorPlugs];
	const headerLists = [headers?.fans, headers?.lights, headers?.typeC];
	const items = [...lists, ...headerLists].reduce((sum, list) => sum + (list?.length ?? 0), 0);
	const rearUsbCount = (rearUsb ?? []).reduce((sum, { count }) => sum + count, 0);
	const extras = [
		board.wireless?.builtIn,
		board.sound?.optical,
		recovery?.flashWithoutProcessor,
		recovery?.resetAtBack,
		recovery?.faultDisplay !== "none",
	].filter(Boolean).length;
	return items + rearUsbCount + (headers?.usb2 ?? 0) + (headers?.usb5 ?? 0) + (board.memory?.slots ?? 0) + extras;
}

/** Places from 1 for the smallest; equal values share the mean of their places. */
function ranks(values: readonly number[]): number[] {
	return values.map((value) => {
		const below = values.filter((other) => other < value).length;
		const equal = values.filter((other) => other === value).length;
		return below + (equal + 1) / 2;
	});
}

/** Rank correlation: Pearson's coefficient of the places (Spearman 1904, from memory). */
function spearman(one: readonly number[], other: readonly number[]): number {
	const [x, y] = [ranks(one), ranks(other)];
	// The mean place is the same with and without ties.
	const mean = (one.length + 1) / 2;
	const products = (a: readonly number[], b: readonly number[]) =>
		a.reduce((sum, place, at) => sum + (place - mean) * ((b[at] as number) - mean), 0);
	return products(x, y) / Math.sqrt(products(x, x) * products(y, y));
}

describe("price and what is offered", () => {
	test("the correlation itself: 1 for the same order, -1 for the reverse, ties share places", () => {
		expect(spearman([1, 2, 5], [10, 20, 21])).toBeCloseTo(1, 12);
		expect(spearman([1, 2, 5], [3, 2, 1])).toBeCloseTo(-1, 12);
		expect(ranks([7, 3, 7])).toEqual([2.5, 1, 2.5]);
	});

	test("go together, but not strictly", () => {
		const correlation = spearman(
			toldBoards.map(({ price }) => price?.minor ?? Number.NaN),
			toldBoards.map(countFeatures),
		);
		expect(correlation).toBeGreaterThan(0.6);
		expect(correlation).toBeLessThan(0.9);
	});

	test("one board costs more than another of its size and socket, and has less of everything counted", () => {
		const [beaten, better] = ["brindlecroft-marigold", "pennywhistle-polka"].map((id) =>
			boards.find((board) => board.id === id),
		);
		if (!beaten || !better) throw new Error("one of the two boards is not in the market");
		const offers = ({ form, socket }: Board) => ({ form, socket });
		expect(offers(beaten)).toEqual(offers(better));
		expect(beaten.price?.minor).toBeGreaterThan(better.price?.minor ?? Number.NaN);
		expect(countFeatures(beaten)).toBeLessThan(countFeatures(better));
		const amounts = (board: Board) => [
			board.warrantyYears,
			board.memory?.slots,
			board.memory?.maxGb,
			board.memory?.highestMtPerS,
			board.cardSlots?.length,
			board.m2Sockets?.length,
			board.drivePorts?.length,
			board.pictureSockets?.length,
			Math.max(...(board.wiredGbps ?? [])),
			board.rearUsb?.reduce((sum, { count }) => sum + count, 0),
			board.headers?.fans?.length,
			board.headers?.lights?.length,
			board.headers?.typeC?.length,
			board.powerDelivery?.coreStages,
			board.sound?.channels,
		];
		for (const [at, amount] of amounts(beaten).entries()) expect(amount).toBeLessThanOrEqual(amounts(better)[at] ?? -1);
	});
});

test("the boards span forms, plugs, wireless and stages", () => {
	const tally = (values: readonly (string | number | boolean | undefined)[]) =>
		Object.fromEntries([...new Set(values)].map((value) => [value, values.filter((one) => one === value).length]));
	expect(tally(boards.map(({ form }) => form))).toEqual({ microATX: 4, ATX: 5, "Mini-ITX": 2, "E-ATX": 1 });
	expect(new Set(toldBoards.map(({ power }) => power?.processorPlugs?.join(" + ")))).toEqual(
		new Set(["4-pin", "8-pin", "8-pin + 4-pin", "8-pin + 8-pin"]),
	);
	expect(tally(toldBoards.map(({ wireless }) => wireless?.builtIn))).toEqual({ false: 6, true: 5 });
	expect(tally(boards.map(({ powerDelivery }) => powerDelivery?.coreStages))).toMatchObject({ undefined: 2, 4: 2 });
});

test("the twins differ in the wireless, what comes with it, the price and the offers, nothing else", () => {
	const twins = ["pennywhistle-mazurka", "pennywhistle-mazurka-aerial"].map((id) => {
		const {
			id: _id,
			name: _name,
			price: _price,
			offers: _offers,
			wireless,
			inTheBox: _box,
			...rest
		} = boards.find((board) => board.id === id) ?? ({} as Board);
		return { wireless: wireless?.builtIn, rest };
	});
	expect(twins.map(({ wireless }) => wireless)).toEqual([false, true]);
	expect(twins[0]?.rest).toEqual(twins[1]?.rest);
});

describe("a person with the modest processor, DDR5 memory and EUR 200", () => {
	const processor = processors.find(({ id }) => id === "tallowfinch-deckhand");
	const caseForms = (id: string) => listed("case").find((one) => one.id === id)?.boardForms ?? [];
	const isServed = (board: Board) =>
		rowOf(board)?.generations.find(({ generation }) => generation === processor?.generation)?.served !== "no";
	const reasons = (board: Board, caseId: string) => [
		...(board.socket === processor?.socket ? [] : ["socket"]),
		...(isServed(board) || board.socket !== processor?.socket ? [] : ["generation"]),
		...(caseForms(caseId).some((form) => form === board.form) ? [] : ["form"]),
		...(board.memory?.type === "DDR5" ? [] : ["memory type"]),
		...((board.price?.minor ?? 0) <= 20000 ? [] : ["price"]),
		...(board.rearUsb?.some(({ plug }) => plug === "C") === false ? ["rear USB-C"] : []),
	];
	const left = (caseId: string) => boards.filter((board) => reasons(board, caseId).length === 0).map(({ id }) => id);

	test("keeps several boards in the tower, fewer in each smaller case", () => {
		expect(left("larkspur-wardrobe")).toEqual([
			"pennywhistle-polka",
			"fernquill-riddle",
			"pennywhistle-mazurka",
			"pennywhistle-mazurka-aerial",
			"brindlecroft-snowdrop",
		]);
		expect(left("larkspur-cupboard")).toEqual(["pennywhistle-polka", "brindlecroft-snowdrop"]);
		expect(left("larkspur-hatbox")).toEqual(["brindlecroft-snowdrop"]);
	});

	test("loses a board for each reason; for price, the rear socket or the form also alone", () => {
		const lost = boards.map((board) => reasons(board, "larkspur-wardrobe").join(", "));
		expect(new Set(lost.join(", ").split(", ").filter(Boolean))).toEqual(
			new Set(["socket", "generation", "form", "memory type", "price", "rear USB-C"]),
		);
		expect(lost).toEqual(expect.arrayContaining(["price", "rear USB-C"]));
		expect(boards.map((board) => reasons(board, "larkspur-cupboard").join())).toContain("form");
	});
});

test("the deep board goes into the one case that says how deep", () => {
	const deep = boards.find(({ form }) => form === "E-ATX");
	const takers = listed("case").filter(
		({ boardForms: forms, boardMaxDepthMm }) =>
			forms?.includes("E-ATX") && (boardMaxDepthMm ?? 0) >= (deep?.depthMm ?? 999),
	);
	expect(takers.map(({ id }) => id)).toEqual(["larkspur-barn"]);
});
