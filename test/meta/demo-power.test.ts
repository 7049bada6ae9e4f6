import { describe, expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { canonicalSocket } from "../../src/parts/canonical-name.ts";
import type { Processor } from "../../src/parts/processor.ts";
import { powerFactsOf } from "../../src/power/power-facts.ts";
import { wholeDemo } from "../choose/demo.ts";

const { board: boards, processor: processors } = wholeDemo.parts;
const sockets = [...new Set(processors.map(({ socket }) => socket as string))];

/** A warm room, a front with narrow slits, a cooler with a fan, and nothing said of the use: full load all day. */
function powerOf(board: Board, processor: Processor) {
	return powerFactsOf(board, {
		...emptyBuildFacts,
		processor: { state: "have", part: processor, ownership: "planned" },
		case: { state: "have", part: { id: "a-case", name: "A case", frontOpen: "slits" }, ownership: "planned" },
		cooler: { state: "have", part: { id: "a-cooler", name: "A cooler", kind: "air" }, ownership: "planned" },
		summerRoom: "warm",
		caseFans: 2,
	}).steady;
}

const boardsFor = (socket: string) =>
	boards
		.filter(
			(board) =>
				board.socket !== undefined &&
				canonicalSocket(board.socket) === canonicalSocket(socket) &&
				board.price !== undefined,
		)
		.sort((one, other) => (one.price?.minor ?? 0) - (other.price?.minor ?? 0));
const processorsFor = (socket: string) =>
	processors
		.filter((processor) => processor.socket === socket)
		.sort((one, other) => (one.peakW ?? 0) - (other.peakW ?? 0));

describe.each(sockets)("%s", (socket) => {
	test.each(processorsFor(socket))("every board has a verdict under $name, or names what it lacks", (processor) => {
		for (const board of boardsFor(socket)) {
			const steady = powerOf(board, processor);
			expect(steady, board.id).toBeDefined();
			if (!steady) continue;
			expect(Number.isFinite(steady.hotSpotC.low), board.id).toBe(true);
			expect(steady.hotSpotC.high, board.id).toBeGreaterThan(steady.hotSpotC.low);
			if (steady.verdict === "cannot tell") {
				expect(steady.missing.length, board.id).toBeGreaterThan(0);
				expect(steady.missing.every((path) => /^(board\.powerDelivery|processor)\.\w+$/.test(path))).toBe(true);
			}
		}
	});
});

// The fourth socket is for workstations: no board for it is cheap.
test.each(sockets.filter((socket) => (boardsFor(socket)[0]?.price?.minor ?? 0) < 10_000))(
	"%s: the cheapest board that is counted is tight or worse under the heaviest processor",
	(socket) => {
		const cheapest = boardsFor(socket).find(({ powerDelivery }) => powerDelivery?.coreStages !== undefined) as Board;
		const heaviest = processorsFor(socket).at(-1) as Processor;
		expect(["tight", "not enough"]).toContain(powerOf(cheapest, heaviest)?.verdict);
	},
);

test.each(sockets)("%s: a middling board is ample under a modest processor", (socket) => {
	const stages = ({ powerDelivery }: Board) => powerDelivery?.coreStages ?? 0;
	const counted = boardsFor(socket)
		.filter((board) => stages(board) > 0)
		.sort((one, other) => stages(one) - stages(other));
	const middling = counted[Math.floor(counted.length / 2)] as Board;
	const modest = processorsFor(socket)[1] as Processor;
	expect(powerOf(middling, modest)?.verdict, `${middling.id} under ${modest.id}`).toBe("ample");
});

test("boards that boast of pairs are told by their counted stages, not by what they advertise", () => {
	const boastful = boards.filter(
		({ powerDelivery: power }) =>
			power?.coreStages !== undefined && Number.parseInt(power.advertised ?? "", 10) >= 1.5 * power.coreStages,
	);
	expect(boastful.length).toBeGreaterThan(3);
	for (const board of boastful) {
		const processor = processorsFor(board.socket as string).at(-1) as Processor;
		const { coreStages: _, ...uncounted } = board.powerDelivery ?? {};
		const [told, advertised] = [powerOf(board, processor), powerOf({ ...board, powerDelivery: uncounted }, processor)];
		expect(told?.hotSpotC.low, board.id).toBeGreaterThan(advertised?.hotSpotC.low ?? Number.NaN);
	}
});
