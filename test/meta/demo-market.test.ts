import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { editDistance } from "../../src/maths/edit-distance.ts";
import type { Board } from "../../src/parts/board.ts";
import { checkParts } from "../../src/parts/check-parts.ts";
import { partsFile } from "../../src/parts/market.ts";
import { type PartKind, type PartOf, partKindNames, partKinds } from "../../src/parts/part-kinds.ts";
import { limitPolicies, type Processor } from "../../src/parts/processor.ts";
import { boardForms } from "../../src/reference/board-forms.ts";
import { holePosition, holesOfForm, sharedEdges } from "../../src/reference/board-holes.ts";
import { mmOfInches } from "../../src/reference/inches.ts";
import { compareFirmware } from "../../src/rules/firmware-version.ts";

const asOf = "2026-11-24";
const folder = fileURLToPath(new URL("../../data/demo", import.meta.url));
const rawFiles = readdirSync(folder)
	.sort()
	.map((name) => ({ name, content: JSON.parse(readFileSync(join(folder, name), "utf8")) as unknown }));

test("the market is these files: boards in one a socket", () => {
	expect(rawFiles.map(({ name }) => name)).toEqual([
		"boards-gristmill-4.json",
		"boards-harbour-2.json",
		"boards-kettle-7.json",
		"boards-orchard-5.json",
		"cases.json",
		"other-parts.json",
		"platforms.json",
		"processors.json",
	]);
});

describe.each(rawFiles)("$name", ({ name, content }) => {
	test("is a parts file and says that it is invented", () => {
		expect(partsFile.parse(content).note).toMatch(/^Everything in this file is invented/);
	});

	test("has no id twice and no evidence for facts that do not exist", () => {
		const checked = checkParts(content);
		expect(checked.value === null ? checked.faults : []).toEqual([]);
	});

	test("holds the boards of the socket in its name", () => {
		const held = (partsFile.parse(content).boards ?? []) as readonly Board[];
		const sockets = held.map(({ socket = "" }) => `boards-${socket.toLowerCase().replace(" ", "-")}.json`);
		expect(new Set(sockets)).toEqual(new Set(name.startsWith("boards-") ? [name] : []));
	});
});

// A file that does not parse fails above; the checks below go on with the others.
const files = rawFiles.map(({ content }) => partsFile.safeParse(content).data).filter((file) => file !== undefined);
const listed = <K extends PartKind>(kind: K) =>
	files.flatMap((file) => (file[partKinds[kind].list] ?? []) as readonly unknown[] as readonly PartOf<K>[]);
const boards = listed("board");
const processors = listed("processor");
const platforms = listed("platform");
const rowOf = (board: Board) => platforms.find((row) => row.socket === board.socket && row.chipset === board.chipset);

/** Boards of which a page tells next to nothing; checks that need facts leave them out. */
const bareBoardIds = [
	"cobblestoat-mince-pie",
	"fernquill-conundrum",
	"fernquill-riddle",
	"moorhen-sandpiper",
	"oddment-hearsay",
	"tarradiddle-will-o-wisp",
];
const toldBoards = boards.filter(({ id }) => !bareBoardIds.includes(id));

/** Boards nobody sells new: they have offers and no price. */
const usedOnlyIds = ["brindlecroft-cowslip"];
const pricedBoards = toldBoards.filter(({ price }) => price !== undefined);

/** Boards whose price was read more than 180 days ago. */
const staleBoardIds = ["brindlecroft-marigold", "fernquill-palace", "oddment-haberdash", "tarradiddle-gale"];

const boardOf = (id: string): Board => {
	const found = boards.find((board) => board.id === id);
	if (!found) throw new Error(`no board has the id ${id}`);
	return found;
};
const idsWhere = (holds: (board: Board) => unknown) => boards.filter(holds).map(({ id }) => id);

describe.each(partKindNames)("every %s", (kind) => {
	const parts = listed(kind);

	test("has an id of its own", () => {
		expect(parts.length).toBeGreaterThan(0);
		expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
	});

	test("is marked invented", () => {
		expect(parts.filter(({ invented }) => invented !== true)).toEqual([]);
	});

	test("has a price in euro and the day it was seen, but for chipsets and for what is only sold used", () => {
		const bought = parts.filter(({ id }) => !usedOnlyIds.includes(id));
		const prices = bought.map((part) => ("price" in part ? [part.price?.currency, part.checkedOn !== undefined] : []));
		expect(prices).toEqual(bought.map(() => (kind === "platform" ? [] : ["EUR", true])));
	});
});

test("no other currency stands anywhere, offers included", () => {
	const currencies = JSON.stringify(rawFiles).match(/"currency":"[^"]*"/g) ?? [];
	expect(new Set(currencies)).toEqual(new Set(['"currency":"EUR"']));
});

test("four boards have a stale price; all other prices are of two weeks or older than half a year", () => {
	const days = files.flatMap((file) => JSON.stringify(file).match(/(?<="checkedOn":")[^"]+/g) ?? []);
	expect(days.filter((day) => day > "2026-11-22" || (day < "2026-11-10" && daysBefore(day) <= 180))).toEqual([]);
	expect(idsWhere(({ checkedOn }) => checkedOn && daysBefore(checkedOn) > 180).sort()).toEqual(staleBoardIds);
	expect(processors.filter(({ checkedOn = "" }) => daysBefore(checkedOn) > 14)).toEqual([]);
});

function daysBefore(day: string): number {
	return (Date.parse(asOf) - Date.parse(day)) / 86_400_000;
}

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

/** Whether the board runs this processor: its own support list decides, else the row of its chipset. */
function runs(board: Board, processor: Processor): boolean {
	if (board.socket !== processor.socket) return false;
	const { supportList } = board;
	if (supportList?.rows.some((row) => row.processor === processor.name)) return true;
	if (supportList && !supportList.partial) return false;
	const row = rowOf(board)?.generations.find(({ generation }) => generation === processor.generation);
	return row !== undefined && row.served !== "no";
}

/** The processors whose generation the board's chipset serves; a support list can still leave one out. */
const servedBy = (board: Board) =>
	processors.filter(
		({ socket, generation }) =>
			socket === board.socket &&
			rowOf(board)?.generations.some((row) => row.generation === generation && row.served !== "no"),
	);

describe("sockets, chipsets and generations", () => {
	test("there are four sockets, with chipset rows, processors and boards on each", () => {
		const sockets = ["Gristmill 4", "Harbour 2", "Kettle 7", "Orchard 5"];
		for (const list of [boards, processors, platforms])
			expect([...new Set(list.map(({ socket }) => socket))].sort()).toEqual(sockets);
		expect(boards.length).toBeGreaterThanOrEqual(88);
		expect(processors.length).toBeGreaterThanOrEqual(28);
	});

	test("every board has a chipset row, but for those of which only the socket is known", () => {
		expect(idsWhere((board) => rowOf(board) === undefined).sort()).toEqual(["fernquill-conundrum", "fernquill-riddle"]);
	});

	test("every chipset has boards", () => {
		expect(platforms.filter((row) => !boards.some((board) => rowOf(board) === row))).toEqual([]);
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

	test("each processor generation of the DDR5 socket is refused by one chipset and served by another", () => {
		const rows = platforms.filter(({ socket }) => socket === "Harbour 2");
		const generationsWhere = (isServed: boolean) =>
			new Set(
				rows.flatMap(({ generations }) =>
					generations.filter(({ served }) => (served !== "no") === isServed).map(({ generation }) => generation),
				),
			);
		expect(generationsWhere(false)).toEqual(new Set(["Dinghy", "Schooner", "Coracle"]));
		expect(generationsWhere(true)).toEqual(generationsWhere(false));
	});

	test("the oldest and the newest generation of one socket never share a chipset", () => {
		const servedOf = (id: string) => new Set(servedBy(boardOf(id)).map(({ generation }) => generation));
		expect(servedOf("brindlecroft-marigold")).toEqual(new Set(["Dinghy"]));
		expect(servedOf("fernquill-peacock")).toEqual(new Set(["Schooner"]));
		for (const board of boards.filter(({ socket }) => socket === "Harbour 2"))
			expect([...servedOf(board.id)]).not.toEqual(expect.arrayContaining(["Dinghy", "Coracle"]));
	});

	test("memory type follows the socket; on one socket both types exist, and each processor there takes both", () => {
		const types = new Set([
			...boards.map(({ socket, memory }) => `${socket} ${memory?.type}`),
			...processors.map(({ socket, memory }) => `${socket} ${memory?.types?.join()}`),
		]);
		expect([...types].sort()).toEqual([
			"Gristmill 4 DDR5",
			"Harbour 2 DDR5",
			"Kettle 7 DDR4",
			"Orchard 5 DDR4",
			"Orchard 5 DDR4,DDR5",
			"Orchard 5 DDR5",
		]);
	});
});

describe("the processors", () => {
	test("span 30 to 290 W, all ways to limit the watts, and known and unknown held watts", () => {
		const watts = processors.map(({ baseW }) => baseW ?? Number.NaN);
		expect([Math.min(...watts), Math.max(...watts)]).toEqual([30, 290]);
		expect(new Set(processors.map(({ limitPolicy }) => limitPolicy))).toEqual(new Set(limitPolicies));
		expect(new Set(processors.map(({ sustainedW }) => sustainedW !== undefined))).toEqual(new Set([true, false]));
	});

	test.each(["unlocked", "graphics", "coolerInBox"] as const)("some have %s, some have not", (fact) => {
		expect(new Set(processors.map((processor) => processor[fact]))).toEqual(new Set([true, false]));
	});

	test("some correct memory errors, some do not; some have few lanes", () => {
		expect(new Set(processors.map(({ memory }) => memory?.errorCorrection))).toEqual(new Set([true, false]));
		expect([...new Set(processors.map(({ lanes }) => lanes?.storage))]).toEqual(expect.arrayContaining([0, 4, 8, 16]));
		expect([...new Set(processors.map(({ lanes }) => lanes?.graphics))]).toEqual(expect.arrayContaining([8, 16, 48]));
	});

	test.each(processors)("the watts of $name stand in order", ({ baseW = 0, sustainedW = baseW, peakW = 0 }) => {
		expect(baseW).toBeLessThanOrEqual(sustainedW);
		expect(sustainedW).toBeLessThanOrEqual(peakW);
	});

	test.each(processors)("$name leaves a choice of boards in an ATX case and in a Mini-ITX case", (processor) => {
		const formsIn = (id: string) => listed("case").find((one) => one.id === id)?.boardForms ?? [];
		const fitting = (caseId: string) =>
			boards.filter(
				(board) =>
					runs(board, processor) &&
					board.connectorsOnBack === false &&
					processor.memory?.types?.some((type) => type === board.memory?.type) &&
					formsIn(caseId).some((form) => form === board.form),
			).length;
		const isWorkstation = processor.socket === "Gristmill 4";
		expect(fitting("larkspur-wardrobe")).toBeGreaterThanOrEqual(isWorkstation ? 4 : 6);
		expect(fitting("larkspur-hatbox")).toBeGreaterThanOrEqual(isWorkstation ? 0 : 2);
	});
});

/** How many lanes a connector has with this processor, by the board's footnotes; 0 where it does not work then. */
function lanesWith(
	board: Board,
	{ series, generation, graphics }: Processor,
	{ name, wiredLanes = 0 }: { name: string; wiredLanes?: number | undefined },
): number {
	return footnotesFor(board, { series, generation, graphics }, name).reduce(
		(lanes, { dead, wiredLanes: limit = lanes }) => (dead ? 0 : Math.min(lanes, limit)),
		wiredLanes,
	);
}

function footnotesFor(
	board: Board,
	{ series = "", generation = "", graphics }: Pick<Processor, "series" | "generation" | "graphics">,
	name: string,
) {
	return (board.conditions ?? []).filter(
		({ connector, when }) =>
			connector === name &&
			(when.processorSeries?.includes(series) ?? true) &&
			(when.processorGenerations?.includes(generation) ?? true) &&
			(when.processorGraphics ?? graphics) === graphics,
	);
}

/** The most lanes the card slots take from this processor at once, whichever way each sharing group is used. */
function mostSlotLanes(board: Board, processor: Processor): number {
	const slots = (board.cardSlots ?? []).filter(({ from }) => from === "processor");
	const lanes = new Map(slots.map((slot) => [slot.name, lanesWith(board, processor, slot)]));
	const groups = (board.sharing ?? []).filter(({ members }) => members.some((name) => lanes.has(name)));
	const alone = [...lanes].filter(([name]) => !groups.some(({ members }) => members.includes(name)));
	const inGroups = groups.map(({ modes }) =>
		Math.max(
			...modes.map(({ on }) =>
				Object.entries(on).reduce((sum, [name, used]) => sum + Math.min(used, lanes.get(name) ?? 0), 0),
			),
		),
	);
	return [...alone.map(([, used]) => used), ...inGroups].reduce((sum, used) => sum + used, 0);
}

describe.each(toldBoards)("$name", (board) => {
	const form = boardForms[board.form ?? "ATX"];
	const connectors = [...(board.cardSlots ?? []), ...(board.m2Sockets ?? []), ...(board.drivePorts ?? [])];
	const names = connectors.map(({ name }) => name);
	/** Common practice, no source: a port for U.2 drives has four lanes, any other one. */
	const lanesOfPort = (kind?: string) => (kind === "U.2" || kind === "SlimSAS" ? 4 : 1);

	test("is no larger than its form; Mini-ITX and Mini-DTX are exact", () => {
		expect(board.widthMm).toBeLessThanOrEqual(form.widthMm);
		// E-ATX is a name of the trade: such boards are usually shallower than the 330 mm written beside it.
		expect(board.depthMm).toBeLessThanOrEqual(form.depthMm);
		if (board.form === "Mini-ITX" || board.form === "Mini-DTX")
			expect([board.widthMm, board.depthMm]).toEqual([form.widthMm, form.depthMm]);
		if (board.form === "E-ATX") {
			expect(board.depthMm).toBeGreaterThanOrEqual(257);
			expect(board.depthMm).toBeLessThanOrEqual(285);
		}
	});

	test("has its screw holes on the board, and only those of its form", () => {
		const leftMm = mmOfInches(sharedEdges.rightIn) - (board.widthMm ?? 0);
		const frontMm = mmOfInches(sharedEdges.rearIn) + (board.depthMm ?? 0);
		expect(board.holes?.length).toBeGreaterThanOrEqual(4);
		const off = board.holes?.filter((hole) => holePosition(hole).xMm < leftMm || holePosition(hole).yMm > frontMm);
		expect(off).toEqual([]);
		// E-ATX has no hole letters of its own; the boards sold under it use those of ATX.
		const letters = holesOfForm(board.form ?? "ATX")?.letters ?? holesOfForm("ATX")?.letters ?? [];
		expect(letters).toEqual(expect.arrayContaining(board.holes ?? []));
	});

	test("has no connector name twice and no card row past its form", () => {
		const rows = { "Mini-ITX": 1, "Mini-DTX": 2, microATX: 4, ATX: 7, "E-ATX": 8 } as Record<string, number>;
		expect(new Set(names).size).toBe(names.length);
		for (const { row, lengthLanes = 0, wiredLanes = 0 } of [...(board.cardSlots ?? []), ...(board.m2Sockets ?? [])].map(
			(one) => ({ lengthLanes: one.wiredLanes, ...one }),
		)) {
			if (row !== undefined) expect(row).toBeLessThanOrEqual(rows[board.form ?? ""] ?? 0);
			expect(wiredLanes).toBeLessThanOrEqual(lengthLanes);
		}
		const slotRows = board.cardSlots?.map(({ row }) => row) ?? [];
		expect(slotRows).toEqual([...new Set(slotRows)]);
		expect(slotRows).not.toContain(undefined);
	});

	test("shares and limits only connectors it has", () => {
		for (const { members, modes } of board.sharing ?? []) {
			expect(names).toEqual(expect.arrayContaining(members));
			for (const { on } of modes) {
				expect(members).toEqual(expect.arrayContaining(Object.keys(on)));
				for (const [name, lanes] of Object.entries(on)) {
					const port = board.drivePorts?.find((one) => one.name === name);
					const wider = [...(board.cardSlots ?? []), ...(board.m2Sockets ?? [])].find((one) => one.name === name);
					expect(lanes).toBeLessThanOrEqual(port ? lanesOfPort(port.kind) : (wider?.wiredLanes ?? 0));
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

	test("takes no more lanes from the processor than any processor it serves has, footnotes read", () => {
		const plugged = servedBy(board);
		expect(plugged.length).toBeGreaterThan(0);
		for (const processor of plugged) {
			const sockets = (board.m2Sockets ?? []).filter(({ from }) => from === "processor");
			const taken = sockets.reduce((sum, socket) => sum + lanesWith(board, processor, socket), 0);
			expect(taken).toBeLessThanOrEqual(processor.lanes?.storage ?? 0);
			expect(mostSlotLanes(board, processor)).toBeLessThanOrEqual(processor.lanes?.graphics ?? 0);
			expect(board.chipsetUplink?.lanes).toBeLessThanOrEqual(processor.lanes?.uplink ?? 0);
		}
	});

	test("promises no newer link than the processor has, footnotes read", () => {
		for (const processor of servedBy(board))
			for (const one of [...(board.cardSlots ?? []), ...(board.m2Sockets ?? [])].filter(
				({ from }) => from === "processor",
			)) {
				if (lanesWith(board, processor, one) === 0) continue;
				const limits = footnotesFor(board, processor, one.name).map(({ generation }) => generation ?? 7);
				expect(Math.min(one.generation ?? 7, ...limits)).toBeLessThanOrEqual(processor.lanes?.generation ?? 0);
			}
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
		expect(new Set(rates?.map(({ type }) => type))).toEqual(new Set([board.memory?.type]));
		expect(board.memory?.registered === true && board.memory.errorCorrection === false).toBe(false);
	});

	test("has as many picture sockets over USB-C as rear USB-C sockets that can carry one", () => {
		const carrying = (board.rearUsb ?? []).reduce(
			(sum, { plug, modes, count }) => sum + (plug === "C" && modes?.includes("picture") ? count : 0),
			0,
		);
		const shown = board.pictureSockets?.filter((socket) => socket === "USB-C").length ?? 0;
		expect(shown).toBe(board.pictureSockets?.length === 0 ? 0 : carrying);
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

	test("splits its stages the way it counts them", () => {
		const { coreStages, controllerPhases, pairing } = board.powerDelivery ?? {};
		if (coreStages === undefined || controllerPhases === undefined) return;
		expect(coreStages).toBe(pairing === "none" ? controllerPhases : 2 * controllerPhases);
	});

	test("gets hotter stages from more watts in the same air", () => {
		const measured = board.powerDelivery?.measurements ?? [];
		for (const one of measured)
			for (const other of measured)
				if (one.airflow === other.airflow && one.loadW < other.loadW)
					expect(one.stageC - one.airC).toBeLessThan(other.stageC - other.airC);
	});

	test("may lie in shops with a firmware that its maker released", () => {
		expect(board.firmware?.releases?.map(({ version }) => version)).toContain(board.firmware?.oldestInShops);
	});

	test("has firmware releases in order, numbered and dated as all of its chipset", () => {
		const releases = board.firmware?.releases ?? [];
		for (const [at, { version, date = "" }] of releases.entries()) {
			const before = releases[at - 1];
			if (before) expect(compareFirmware(before.version, version)).toBeLessThan(0);
			if (before) expect((before.date ?? "") < date).toBe(true);
			const elsewhere = toldBoards
				.filter(({ chipset }) => chipset === board.chipset)
				.flatMap(({ firmware }) => firmware?.releases?.filter((release) => release.version === version) ?? []);
			expect(new Set(elsewhere.map((release) => release.date))).toEqual(new Set([date]));
		}
	});

	test("lists processors of the market by their very names, all of them of generations its chipset serves", () => {
		const known = servedBy(board).map(({ name }) => name);
		expect(known).toEqual(expect.arrayContaining(board.supportList?.rows.map(({ processor }) => processor) ?? []));
	});

	test("was read on a page of the last two weeks, with a quote", () => {
		const stated = Object.values(board.evidence ?? {}).filter(({ where }) => /spec page|shop page/.test(where ?? ""));
		for (const { date = "", quote } of stated) {
			expect(date >= "2026-11-10" || date === board.checkedOn).toBe(true);
			expect(date <= "2026-11-22").toBe(true);
			expect(quote).toBeDefined();
		}
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

/** Everything that is counted, and what else is a matter of more or less, each on its own. */
function amountsOf(board: Board): readonly number[] {
	const { memory, headers, recovery, rearUsb = [], wiredGbps = [] } = board;
	const usb = (sockets: typeof rearUsb) => sockets.reduce((sum, { count }) => sum + count, 0);
	return [
		board.warrantyYears,
		memory?.slots,
		memory?.maxGb,
		memory?.highestMtPerS,
		board.cardSlots?.length,
		board.m2Sockets?.length,
		board.drivePorts?.length,
		board.pictureSockets?.length,
		wiredGbps.length,
		Math.max(0, ...wiredGbps),
		usb(rearUsb),
		usb(rearUsb.filter(({ plug }) => plug === "C")),
		headers?.usb2,
		headers?.usb5,
		headers?.typeC?.length,
		headers?.fans?.length,
		headers?.lights?.length,
		board.power?.processorPlugs?.length,
		board.powerDelivery?.coreStages,
		board.sound?.channels,
		Number(board.sound?.optical),
		Number(board.wireless?.builtIn),
		Number(recovery?.flashWithoutProcessor),
		Number(recovery?.resetAtBack),
		Number(recovery?.faultDisplay !== "none"),
	].map((amount) => amount ?? 0);
}

/** Whether the other board serves the same processors at the same size with the same memory, costs no more and is never less. */
function isBeatenBy(board: Board, other: Board): boolean {
	const kindOf = (one: Board) =>
		JSON.stringify([one.socket, rowOf(one)?.generations, one.form, one.memory?.type, one.connectorsOnBack]);
	if (board === other || kindOf(board) !== kindOf(other)) return false;
	if ((other.price?.minor ?? Number.NaN) > (board.price?.minor ?? Number.NaN)) return false;
	const [less, more] = [amountsOf(board), amountsOf(other)];
	return less.every((amount, at) => amount <= (more[at] ?? 0)) && less.some((amount, at) => amount < (more[at] ?? 0));
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
			pricedBoards.map(({ price }) => price?.minor ?? Number.NaN),
			pricedBoards.map(countFeatures),
		);
		expect(correlation).toBeGreaterThan(0.6);
		expect(correlation).toBeLessThan(0.85);
	});

	test("prices run from about 60 to about 900 euro; most DDR5 boards of the main socket cost 90 to 350", () => {
		const prices = pricedBoards.map(({ price }) => (price?.minor ?? 0) / 100);
		expect(Math.min(...prices)).toBeLessThan(65);
		expect(Math.max(...prices)).toBeGreaterThan(850);
		const main = pricedBoards
			.filter(({ socket }) => socket === "Harbour 2")
			.map(({ price }) => (price?.minor ?? 0) / 100);
		expect(main.filter((price) => price >= 90 && price <= 350).length / main.length).toBeGreaterThan(0.7);
	});

	test("one board costs more than another of its size and socket, and has less of everything counted", () => {
		const [beaten, better] = [boardOf("brindlecroft-marigold"), boardOf("pennywhistle-polka")];
		const offers = ({ form, socket }: Board) => ({ form, socket });
		expect(offers(beaten)).toEqual(offers(better));
		expect(beaten.price?.minor).toBeGreaterThan(better.price?.minor ?? Number.NaN);
		expect(countFeatures(beaten)).toBeLessThan(countFeatures(better));
		for (const [at, amount] of amountsOf(beaten).entries())
			expect(amount).toBeLessThanOrEqual(amountsOf(better)[at] ?? -1);
	});

	test("one board in ten is plainly beaten by another that costs no more; most are not", () => {
		const beaten = pricedBoards.filter((board) => pricedBoards.some((other) => isBeatenBy(board, other)));
		expect(beaten.length).toBeGreaterThanOrEqual(boards.length / 10);
		expect(beaten.length).toBeLessThan(boards.length / 4);
		expect(new Set(beaten.map(({ socket }) => socket)).size).toBeGreaterThanOrEqual(3);
	});

	test.each([
		["fernquill-ballroom", "cobblestoat-bannock"],
		["fernquill-merry-go-round", "pennywhistle-mazurka"],
		["fernquill-peacock", "pennywhistle-quadrille"],
		["fernquill-opera-glass", "pennywhistle-minuet"],
		["fernquill-pagoda", "brindlecroft-hollyhock"],
		["fernquill-cuckoo-clock", "pennywhistle-waltz"],
		["fernquill-hall-of-mirrors", "pennywhistle-strathspey"],
		["fernquill-masquerade", "pennywhistle-tarantella"],
		["fernquill-palace", "brindlecroft-sunflower"],
	])("the lit %s feeds a processor worse than the plain, cheaper %s", (litId, plainId) => {
		const [lit, plain] = [boardOf(litId), boardOf(plainId)];
		expect([lit.lit, plain.lit, lit.socket, lit.form]).toEqual([true, false, plain.socket, plain.form]);
		expect(lit.price?.minor).toBeGreaterThan(plain.price?.minor ?? Number.NaN);
		const amperes = ({ powerDelivery }: Board) =>
			(powerDelivery?.coreStages ?? Number.NaN) * (powerDelivery?.stageRatingA ?? Number.NaN);
		expect(amperes(lit)).toBeLessThan(amperes(plain));
		const sinks = ["none", "one side", "both sides", "both sides with heat pipe", "finned"];
		const sinkOf = ({ powerDelivery }: Board) => sinks.indexOf(powerDelivery?.heatSink ?? "");
		expect(sinkOf(lit)).toBeLessThan(sinkOf(plain));
		expect(sinkOf(lit)).toBeGreaterThanOrEqual(0);
	});
});

const tally = (values: readonly (string | number | boolean | undefined)[]) =>
	Object.fromEntries([...new Set(values)].map((value) => [value, values.filter((one) => one === value).length]));

test("the boards span forms, plugs, wireless and stages", () => {
	const forms = tally(boards.map(({ form }) => form));
	expect(Object.keys(forms).sort()).toEqual(["ATX", "E-ATX", "Mini-DTX", "Mini-ITX", "microATX"]);
	for (const form of ["ATX", "microATX", "Mini-ITX"]) expect(forms[form]).toBeGreaterThanOrEqual(15);
	expect(forms["E-ATX"]).toBeGreaterThanOrEqual(4);
	expect(new Set(toldBoards.map(({ power }) => power?.processorPlugs?.join(" + ")))).toEqual(
		new Set(["4-pin", "8-pin", "8-pin + 4-pin", "8-pin + 8-pin"]),
	);
	const wireless = tally(toldBoards.map(({ wireless: { builtIn } = {} }) => builtIn));
	for (const builtIn of ["true", "false"]) expect(wireless[builtIn]).toBeGreaterThan(toldBoards.length / 3);
	const stages = toldBoards.map(({ powerDelivery }) => powerDelivery?.coreStages);
	expect(stages).toContain(undefined);
	expect(Math.min(...stages.filter((count) => count !== undefined))).toBeLessThanOrEqual(4);
	expect(Math.max(...stages.filter((count) => count !== undefined))).toBeGreaterThanOrEqual(20);
});

test("facts that are hard to come by are there for a part of the boards", () => {
	const share = (holds: (board: Board) => unknown) => idsWhere(holds).length / boards.length;
	const measured = share(({ powerDelivery }) => powerDelivery?.measurements);
	expect(measured).toBeGreaterThan(0.25);
	expect(measured).toBeLessThan(0.42);
	const listedShare = share(({ supportList }) => supportList);
	expect(listedShare).toBeGreaterThan(0.4);
	expect(listedShare).toBeLessThan(0.6);
	expect(share(({ supportList }) => supportList?.partial)).toBeGreaterThan(0.05);
	expect(share(({ evidence }) => Object.keys(evidence ?? {}).length >= 2)).toBeGreaterThan(0.8);
});

test("of every mix of the aids for a first start that goes wrong there is a board", () => {
	const mixes = toldBoards.map(
		({ recovery }) =>
			`${recovery?.flashWithoutProcessor ? "updates alone" : "does not"}, ${recovery?.faultDisplay}, ${recovery?.resetAtBack ? "reset at the back" : "no reset"}`,
	);
	const all = ["updates alone", "does not"].flatMap((flash) =>
		["none", "lights", "digits"].flatMap((display) =>
			["reset at the back", "no reset"].map((reset) => `${flash}, ${display}, ${reset}`),
		),
	);
	expect(new Set(mixes)).toEqual(new Set(all));
});

test("of some boards next to nothing is told, of one by a shop's page alone", () => {
	expect(bareBoardIds.length).toBeGreaterThanOrEqual(5);
	for (const id of bareBoardIds) {
		const { m2Sockets, rearUsb, headers, recovery, firmware, power } = boardOf(id);
		expect([m2Sockets, rearUsb, headers, recovery, firmware, power].filter(Boolean)).toEqual([]);
	}
	const places = Object.values(boardOf("cobblestoat-mince-pie").evidence ?? {}).map(({ where }) => where);
	expect(new Set(places)).toEqual(new Set(["invented shop page"]));
});

/** The first of the figures a page gives for phases, such as 16 of "16+2". */
const advertisedPhases = ({ powerDelivery }: Board) => Number(powerDelivery?.advertised?.match(/\d+/)?.[0]);
const fansOf = ({ headers }: Board) => headers?.fans?.length;
const lightVolts = ({ headers }: Board) => headers?.lights && [...new Set(headers.lights.map(({ volts }) => volts))];
/** Whether a box may hold firmware older than what some processor that the chipset serves wants. */
const mayHoldOlderThan = (board: Board, wanted: "startsFrom" | "safeFrom") =>
	rowOf(board)?.generations.some(
		(row) => row[wanted] && (compareFirmware(board.firmware?.oldestInShops ?? "", row[wanted]) ?? 0) < 0,
	) ?? false;
const modeOf = (board: Board, name: string) =>
	board.sharing?.find(({ members }) => members.includes(name))?.modes.find(({ on }) => name in on)?.on ?? {};
const offersOf = (board: Board, condition: string) => board.offers?.filter((one) => one.condition === condition) ?? [];

/** What the market must hold so that every check of the program has something to find. */
const traps: readonly (readonly [trap: string, ids: readonly string[], holds: (board: Board) => unknown])[] = [
	[
		"may need newer firmware and cannot update without a processor",
		["brindlecroft-foxglove", "cobblestoat-dumpling", "oddment-thimble", "pennywhistle-saraband", "oddment-haberdash"],
		(board) => mayHoldOlderThan(board, "startsFrom") && board.recovery?.flashWithoutProcessor === false,
	],
	[
		"may need newer firmware and can update without a processor",
		["cobblestoat-gingerbread", "dovetail-stepladder", "tarradiddle-gale"],
		(board) => mayHoldOlderThan(board, "startsFrom") && board.recovery?.flashWithoutProcessor === true,
	],
	[
		"starts with the newer processors and may hold firmware that does not protect them",
		["pennywhistle-hornpipe", "pennywhistle-mazurka", "oddment-safety-pin"],
		(board) => !mayHoldOlderThan(board, "startsFrom") && mayHoldOlderThan(board, "safeFrom"),
	],
	[
		"newer firmware, already out, drops older processors",
		["pennywhistle-polka", "tarradiddle-squall", "oddment-toggle", "pennywhistle-waltz"],
		(board) => {
			const versions = board.firmware?.releases?.map(({ version }) => version) ?? [];
			return rowOf(board)?.dropsOlderFrom?.some(({ version }) => versions.includes(version));
		},
	],
	[
		"advertises twice the stages it has",
		[
			"fernquill-merry-go-round",
			"fernquill-opera-glass",
			"fernquill-chandelier",
			"fernquill-pagoda",
			"fernquill-cuckoo-clock",
			"fernquill-pantomime",
			"fernquill-hall-of-mirrors",
			"fernquill-masquerade",
			"fernquill-palace",
		],
		(board) => advertisedPhases(board) === 2 * (board.powerDelivery?.coreStages ?? Number.NaN),
	],
	[
		"advertises stages that run in pairs",
		["pennywhistle-mazurka", "fernquill-ballroom", "tarradiddle-squall"],
		({ powerDelivery }) =>
			powerDelivery?.pairing === "paired" && powerDelivery.coreStages === 2 * (powerDelivery.controllerPhases ?? 0),
	],
	[
		"is an ATX board too shallow for the last row of holes",
		["oddment-safety-pin", "pennywhistle-reel", "oddment-haberdash"],
		({ form, depthMm = 0, holes }) => form === "ATX" && depthMm <= 211 && !holes?.some((hole) => "KLM".includes(hole)),
	],
	[
		"is shallower than the E-ATX on its page",
		["tarradiddle-moonbow", "tarradiddle-monsoon", "tarradiddle-cloudburst", "pennywhistle-pavane"],
		({ form, depthMm = 0 }) => form === "E-ATX" && depthMm >= 257 && depthMm <= 285,
	],
	[
		"has its plugs on the back",
		["dovetail-settle", "tarradiddle-hoarfrost"],
		({ connectorsOnBack, connectorsOnBackPattern }) => connectorsOnBack && connectorsOnBackPattern,
	],
	[
		"has an M.2 socket that switches off drive ports",
		["pennywhistle-mazurka", "brindlecroft-hollyhock", "brindlecroft-teasel", "cobblestoat-teabread"],
		({ sharing, drivePorts = [] }) =>
			sharing?.some(({ modes }) =>
				modes.some(
					({ on }) =>
						Object.keys(on).every((name) => name.startsWith("M2_")) &&
						modes.some((other) => drivePorts.some(({ name }) => name in other.on)),
				),
			),
	],
	[
		"has an M.2 socket dead with a series of processors",
		["oddment-darning-egg", "oddment-toggle", "cobblestoat-gingerbread"],
		({ conditions }) =>
			conditions?.some(({ dead, connector, when }) => dead && connector.startsWith("M2_") && when.processorSeries),
	],
	[
		"has an M.2 socket dead with a generation of processors",
		["fernquill-fireworks", "cobblestoat-treacle-tart", "dovetail-rocking-chair"],
		({ conditions }) =>
			conditions?.some(({ dead, connector, when }) => dead && connector.startsWith("M2_") && when.processorGenerations),
	],
	[
		"has a long slot wired for four lanes",
		["pennywhistle-mazurka", "brindlecroft-hollyhock", "moorhen-heron"],
		({ cardSlots }) => cardSlots?.some(({ lengthLanes, wiredLanes }) => lengthLanes === 16 && wiredLanes === 4),
	],
	[
		"has a slot that falls to eight lanes with a series of processors",
		["oddment-button", "oddment-darning-egg", "cobblestoat-flapjack"],
		({ conditions }) => conditions?.some(({ wiredLanes, when }) => wiredLanes === 8 && when.processorSeries),
	],
	[
		"has a slot that falls to eight lanes with a generation of processors",
		["pennywhistle-minuet", "brindlecroft-speedwell"],
		({ conditions }) => conditions?.some(({ wiredLanes, when }) => wiredLanes === 8 && when.processorGenerations),
	],
	[
		"has a slot that falls to eight lanes with any processor that has graphics",
		["oddment-tape-measure", "dovetail-hammock", "pennywhistle-waltz"],
		({ conditions }) => conditions?.some(({ wiredLanes, when }) => wiredLanes === 8 && when.processorGraphics),
	],
	[
		"has a single USB 2.0 header",
		["oddment-bobbin", "oddment-tape-measure", "fernquill-ballroom", "moorhen-curlew"],
		({ headers }) => headers?.usb2 === 1,
	],
	[
		"has neither a 19-pin header nor one for the front USB-C",
		["oddment-tape-measure", "oddment-darning-egg"],
		({ headers }) => headers?.usb5 === 0 && headers.typeC?.length === 0,
	],
	[
		"is an ATX board with two memory slots",
		["brindlecroft-teasel", "oddment-safety-pin", "cobblestoat-scone", "tarradiddle-heat-haze"],
		({ form, memory }) => form === "ATX" && memory?.slots === 2,
	],
	[
		"starts the heaviest processor of its socket and feeds it badly",
		["oddment-pincushion", "oddment-seam-ripper", "oddment-button-box"],
		(board) =>
			servedBy(board).some(({ peakW = 0 }) => peakW >= 230) &&
			(board.powerDelivery?.coreStages ?? 99) <= 7 &&
			board.powerDelivery?.stageKind === "separate switches" &&
			["none", "one side"].includes(board.powerDelivery.heatSink ?? ""),
	],
	[
		"is dear and has nothing an ordinary person needs",
		["moorhen-curlew"],
		(board) =>
			(board.price?.minor ?? 0) > 40000 &&
			board.wiredGbps?.join() === "10,10" &&
			board.drivePorts?.some(({ kind }) => kind === "U.2") &&
			board.rearUsb?.some(({ gbps }) => gbps === 40) &&
			!board.wireless?.builtIn &&
			board.headers?.lights?.length === 0,
	],
	[
		"is offered opened, to be given back",
		["pennywhistle-mazurka", "dovetail-rocking-chair"],
		(board) => offersOf(board, "opened").some(({ returnableUntil = "" }) => returnableUntil > asOf),
	],
	[
		"is offered opened, with no word on giving it back",
		["tarradiddle-squall"],
		(board) => offersOf(board, "opened").some(({ returnableUntil }) => returnableUntil === undefined),
	],
	[
		"is offered used, to be given back",
		["pennywhistle-gavotte", "brindlecroft-cowslip"],
		(board) => offersOf(board, "used").some(({ returnableUntil = "" }) => returnableUntil > asOf),
	],
	[
		"is offered used, with no word on giving it back",
		["cobblestoat-jam-tart", "brindlecroft-cowslip"],
		(board) => offersOf(board, "used").some(({ returnableUntil }) => returnableUntil === undefined),
	],
	[
		"has a small fan on the chipset",
		["tarradiddle-monsoon", "tarradiddle-gale", "tarradiddle-whirlwind"],
		({ chipsetFan }) => chipsetFan,
	],
	[
		"has no picture socket at all",
		["tarradiddle-heat-haze", "moorhen-heron", "tarradiddle-whirlwind"],
		({ pictureSockets }) => pictureSockets?.length === 0,
	],
	[
		"has only old picture sockets",
		["oddment-tape-measure", "moorhen-pintail"],
		({ pictureSockets = [] }) =>
			pictureSockets.length > 0 && pictureSockets.every((socket) => socket === "VGA" || socket === "DVI"),
	],
	[
		"has an old PCI slot",
		["cobblestoat-rock-cake", "pennywhistle-reel", "cobblestoat-teabread", "oddment-haberdash", "moorhen-godwit"],
		({ cardSlots }) => cardSlots?.some(({ bus }) => bus === "PCI"),
	],
	[
		"has PS/2 and serial sockets",
		["cobblestoat-rock-cake", "brindlecroft-teasel"],
		({ rearOld }) => rearOld?.includes("PS/2") && rearOld.includes("serial"),
	],
	["has a parallel socket", ["cobblestoat-rock-cake"], ({ rearOld }) => rearOld?.includes("parallel")],
	[
		"has 5 V lighting headers only",
		["oddment-thimble", "cobblestoat-dumpling"],
		(board) => lightVolts(board)?.join() === "5",
	],
	[
		"has 12 V lighting headers only",
		["brindlecroft-teasel", "cobblestoat-batch-loaf", "oddment-hook-and-eye"],
		(board) => lightVolts(board)?.join() === "12",
	],
	[
		"has no lighting header",
		["oddment-bobbin", "moorhen-curlew", "cobblestoat-rock-cake"],
		(board) => lightVolts(board)?.length === 0,
	],
	[
		"has two fan headers in all, one of them for the processor",
		["oddment-bobbin", "oddment-button", "oddment-pincushion", "brindlecroft-speedwell"],
		(board) => fansOf(board) === 2 && board.headers?.fans?.filter(({ use }) => use === "processor").length === 1,
	],
	[
		"has five sound sockets and optical sound",
		["brindlecroft-hollyhock", "pennywhistle-mazurka", "cobblestoat-bannock"],
		({ sound }) => sound?.rearSockets === 5 && sound.optical,
	],
	[
		"has three sound sockets and no optical sound",
		["oddment-button", "pennywhistle-minuet"],
		({ sound }) => sound?.rearSockets === 3 && sound.optical === false,
	],
	["has a 2.5 Gb/s network socket", ["pennywhistle-polka"], ({ wiredGbps }) => wiredGbps?.includes(2.5)],
	[
		"has a 5 Gb/s network socket",
		["tarradiddle-squall", "brindlecroft-honesty"],
		({ wiredGbps }) => wiredGbps?.includes(5),
	],
	[
		"has a 10 Gb/s network socket",
		["fernquill-lighthouse", "cobblestoat-plum-duff"],
		({ wiredGbps }) => wiredGbps?.includes(10),
	],
	["has Wi-Fi 5", ["pennywhistle-hornpipe", "fernquill-ballroom"], ({ wireless }) => wireless?.standard === "Wi-Fi 5"],
	["has Wi-Fi 6", ["pennywhistle-jig", "cobblestoat-bannock"], ({ wireless }) => wireless?.standard === "Wi-Fi 6"],
	["has Wi-Fi 6E", ["brindlecroft-snowdrop"], ({ wireless }) => wireless?.standard === "Wi-Fi 6E"],
	["has Wi-Fi 7", ["pennywhistle-quadrille", "dovetail-washstand"], ({ wireless }) => wireless?.standard === "Wi-Fi 7"],
	["has wireless without Bluetooth", ["brindlecroft-buttercup"], ({ wireless }) => wireless?.bluetooth === false],
	[
		"has an M.2 socket for 110 mm",
		["pennywhistle-mazurka", "moorhen-dipper"],
		({ m2Sockets }) => m2Sockets?.some(({ lengthsMm }) => lengthsMm?.includes(110)),
	],
	[
		"has no M.2 socket for 80 mm",
		["oddment-tape-measure"],
		({ m2Sockets }) => m2Sockets?.length && m2Sockets.every(({ lengthsMm }) => !lengthsMm?.includes(80)),
	],
	[
		"has an M.2 socket from 42 mm up",
		["dovetail-stepladder", "dovetail-brass-bed"],
		({ m2Sockets }) => m2Sockets?.some(({ lengthsMm }) => lengthsMm?.join() === "42,60,80"),
	],
	[
		"has an M.2 socket for SATA drives and one that takes none",
		["pennywhistle-mazurka", "cobblestoat-bannock"],
		({ m2Sockets }) => m2Sockets?.some(({ sata }) => sata) && m2Sockets.some(({ sata }) => sata === false),
	],
	[
		"is a Mini-ITX board with an M.2 socket on the back",
		["pennywhistle-jig", "dovetail-whatnot", "tarradiddle-dewdrop"],
		({ form, m2Sockets }) => form === "Mini-ITX" && m2Sockets?.some(({ place }) => place === "back"),
	],
	["is guaranteed for two years", ["oddment-button"], ({ warrantyYears }) => warrantyYears === 2],
	["is guaranteed for three years", ["pennywhistle-polka"], ({ warrantyYears }) => warrantyYears === 3],
	[
		"is guaranteed for five years",
		["moorhen-dipper", "brindlecroft-honesty"],
		({ warrantyYears }) => warrantyYears === 5,
	],
	[
		"is a main-stream board that takes error-correcting memory, unbuffered only",
		["moorhen-dipper", "brindlecroft-honesty", "tarradiddle-gale", "moorhen-bittern"],
		({ memory, socket }) => socket !== "Gristmill 4" && memory?.errorCorrection && memory.registered === false,
	],
	[
		"takes registered memory in four channels",
		["moorhen-heron", "moorhen-cormorant", "moorhen-pintail"],
		({ memory }) => memory?.registered && memory.channels === 4,
	],
	[
		"has eight memory slots and takes no registered memory",
		["cobblestoat-plum-duff", "brindlecroft-sunflower"],
		({ memory }) => memory?.registered === false && memory.slots === 8 && memory.errorCorrection,
	],
	[
		"has two card slots on a Mini-DTX board",
		["brindlecroft-primrose"],
		({ form, cardSlots }) => form === "Mini-DTX" && cardSlots?.length === 2,
	],
];

test.each(traps)("a board %s", (_trap, ids, holds) => {
	expect(ids.filter((id) => !holds(boardOf(id)))).toEqual([]);
	// A trap that every told board springs is none.
	expect(toldBoards.some((board) => !holds(board))).toBe(true);
});

test("the boards with the plugs on the back come in two sizes, and some case has cut-outs for each", () => {
	const onBack = boards.filter(({ connectorsOnBack }) => connectorsOnBack);
	expect(new Set(onBack.map(({ form }) => form))).toEqual(new Set(["ATX", "microATX"]));
	for (const { form, connectorsOnBackPattern = "" } of onBack) {
		const takers = listed("case").filter(
			({ boardForms: forms, backCutOuts, backCutOutPatterns }) =>
				forms?.some((one) => one === form) && backCutOuts && backCutOutPatterns?.includes(connectorsOnBackPattern),
		);
		expect(takers).not.toEqual([]);
	}
});

test("an M.2 socket in use leaves the drive ports it shares with dark", () => {
	expect(modeOf(boardOf("pennywhistle-mazurka"), "M2_3")).toEqual({ M2_3: 2 });
	expect(modeOf(boardOf("pennywhistle-mazurka"), "SATA_5")).toEqual({ SATA_5: 1, SATA_6: 1 });
});

test("only one board can be had used and not new", () => {
	expect(idsWhere(({ price, offers }) => !price && offers?.length)).toEqual(usedOnlyIds);
	expect(new Set(boardOf("brindlecroft-cowslip").offers?.map(({ condition }) => condition))).toEqual(new Set(["used"]));
});

/** The paths, at the first or second level, of the facts in which two boards differ. */
function differences(one: Board, other: Board): string[] {
	const flat = (board: Board) =>
		new Map(
			Object.entries(board).flatMap(([key, value]): [string, string][] =>
				value !== null && typeof value === "object" && !Array.isArray(value)
					? Object.entries(value).map(([inner, fact]) => [`${key}.${inner}`, JSON.stringify(fact)])
					: [[key, JSON.stringify(value)]],
			),
		);
	const [a, b] = [flat(one), flat(other)];
	return [...new Set([...a.keys(), ...b.keys()])].filter((key) => a.get(key) !== b.get(key)).sort();
}

/** What may differ whatever the twins are: which is which, what it costs, and where it was read. */
const namesAndPrices = /^(id|name|price\.minor|offers|evidence\..*)$/;

describe("twins", () => {
	test.each([
		["pennywhistle-mazurka", "pennywhistle-mazurka-aerial"],
		["brindlecroft-thistledown", "brindlecroft-thistledown-aerial"],
	])("%s and %s differ in the wireless, what comes with it, the price and the offers, nothing else", (id, twin) => {
		const [plain, aerial] = [boardOf(id), boardOf(twin)];
		expect([plain.wireless?.builtIn, aerial.wireless?.builtIn]).toEqual([false, true]);
		const left = differences(plain, aerial).filter((path) => !namesAndPrices.test(path));
		expect(left.filter((path) => path !== "inTheBox" && !path.startsWith("wireless."))).toEqual([]);
		expect(aerial.price?.minor).toBeGreaterThan(plain.price?.minor ?? Number.NaN);
	});

	test.each([
		["cobblestoat-crumble", "cobblestoat-crumble-ddr4"],
		["pennywhistle-strathspey", "pennywhistle-strathspey-ddr4"],
		["fernquill-grandstand", "fernquill-grandstand-ddr4"],
	])("%s and %s differ in the memory and the price, nothing else", (id, twin) => {
		const [newer, older] = [boardOf(id), boardOf(twin)];
		expect([newer.memory?.type, older.memory?.type]).toEqual(["DDR5", "DDR4"]);
		const left = differences(newer, older).filter((path) => !namesAndPrices.test(path));
		expect(left.filter((path) => !path.startsWith("memory."))).toEqual([]);
		expect(older.name).toBe(`${newer.name} DDR4`);
	});

	test("the second revision of a board costs as much and has quietly lost parts", () => {
		const [first, second] = [boardOf("pennywhistle-gavotte"), boardOf("pennywhistle-gavotte-2")];
		expect([first.revision, second.revision]).toEqual(["1.0", "2.0"]);
		expect(isBeatenBy(second, first)).toBe(true);
		const lost = [first, second].map(({ recovery, powerDelivery, sound, headers }) => [
			recovery?.flashWithoutProcessor,
			recovery?.resetAtBack,
			sound?.optical,
			powerDelivery?.coreStages,
			headers?.fans?.length,
		]);
		expect(lost).toEqual([
			[true, true, true, 12, 6],
			[false, false, false, 9, 5],
		]);
		expect(boards.filter(({ revision }) => revision).length).toBe(2);
	});
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
	const left = (caseId: string) => idsWhere((board) => reasons(board, caseId).length === 0);

	test("keeps many boards in the tower, fewer in each smaller case, never one that the larger case refuses", () => {
		const [tower, small, smallest] = ["larkspur-wardrobe", "larkspur-cupboard", "larkspur-hatbox"].map(left);
		if (!tower || !small || !smallest) throw new Error("a case is missing");
		expect(tower).toEqual(expect.arrayContaining(small));
		expect(small).toEqual(expect.arrayContaining(smallest));
		expect(small.length).toBeLessThan(tower.length);
		expect(smallest.length).toBeLessThan(small.length);
		expect(tower.length).toBeLessThan(boards.length / 2);
		expect(smallest.length).toBeGreaterThanOrEqual(2);
		expect(tower).toEqual(
			expect.arrayContaining([
				"pennywhistle-polka",
				"fernquill-riddle",
				"pennywhistle-mazurka",
				"pennywhistle-mazurka-aerial",
				"brindlecroft-snowdrop",
			]),
		);
		expect(small).toEqual(expect.arrayContaining(["pennywhistle-polka", "brindlecroft-snowdrop"]));
		expect(smallest).toContain("brindlecroft-snowdrop");
	});

	test("loses a board for each reason; for price, the rear socket, the generation or the form also alone", () => {
		const lost = boards.map((board) => reasons(board, "larkspur-wardrobe").join(", "));
		expect(new Set(lost.join(", ").split(", ").filter(Boolean))).toEqual(
			new Set(["socket", "generation", "form", "memory type", "price", "rear USB-C"]),
		);
		expect(lost).toEqual(expect.arrayContaining(["price", "rear USB-C", "generation"]));
		expect(boards.map((board) => reasons(board, "larkspur-cupboard").join())).toContain("form");
	});
});

test("each deep board goes into some case that says how deep, and not into every one that lists its form", () => {
	const cases = listed("case").filter(({ boardForms: forms }) => forms?.includes("E-ATX"));
	const takersOf = ({ depthMm = 999 }: Board) =>
		cases.filter(({ boardMaxDepthMm = 0 }) => boardMaxDepthMm >= depthMm).map(({ id }) => id);
	const deep = boards.filter(({ form }) => form === "E-ATX");
	expect(deep.filter((board) => takersOf(board).length === 0)).toEqual([]);
	expect(takersOf(boardOf("fernquill-lighthouse"))).toContain("larkspur-barn");
	expect(takersOf(boardOf("tarradiddle-monsoon"))).not.toContain("larkspur-barn");
});
