import { demoMarket } from "../../src/cli/demo-market.ts";
import { type Board, board as boardSchema } from "../../src/parts/board.ts";
import type { Market } from "../../src/parts/market.ts";
import { boardForms } from "../../src/parts/vocabulary.ts";

/** How likely a varied board loses one fact more, up to the most (own convention): most lose two or three. */
const dropChance = 0.7;
const mostDropped = 12;
/** Facts without which a board is no board. */
const kept: ReadonlySet<string> = new Set(["id", "name", "invented"]);
const seed = 20_261_128;

type Random = () => number;

/**
 * The demonstration's market with so many boards: those of the demonstration made others, always the same ones. A larger
 * market begins with the boards of a smaller one.
 *
 * @throws Error that names the first board that no parts file could hold
 */
export function marketOfMany(boardCount: number): Market {
	const demo = demoMarket();
	const random = seeded(seed);
	const boards = Array.from({ length: boardCount }, (_, index) =>
		varied(demo.parts.board[index % demo.parts.board.length] as Board, index, random),
	);
	throwWhereInvalid(boards);
	return { ...demo, parts: { ...demo.parts, board: boards } };
}

/** A board of the demonstration made another: price, form, slots and sockets changed, and some facts left out. */
function varied(board: Board, index: number, next: Random): Board {
	const oneOf = <T>(values: readonly T[]) => values[Math.floor(next() * values.length)] as T;
	const someOf = <T>(values: readonly T[]) => values.filter(() => next() < 0.8);
	const { cardSlots, m2Sockets, drivePorts, memory, ...rest } = structuredClone(board);
	const whole: Board = {
		...rest,
		id: `board-${index + 1}`,
		name: `${board.name} ${index + 1}`,
		price: { minor: 5000 + Math.floor(next() * 60_000), currency: "EUR" },
		...(next() < 0.2 ? { form: oneOf(boardForms) } : {}),
		...(cardSlots
			? { cardSlots: someOf(cardSlots).map((slot) => ({ ...slot, wiredLanes: oneOf([1, 4, 8, 16]) })) }
			: {}),
		...(m2Sockets ? { m2Sockets: someOf(m2Sockets).map((socket) => ({ ...socket, sata: next() < 0.3 })) } : {}),
		...(drivePorts ? { drivePorts: someOf(drivePorts) } : {}),
		...(memory ? { memory: { ...memory, slots: oneOf([1, 2, 4]), maxGb: oneOf([64, 128, 192, 256]) } } : {}),
	};
	const names = Object.keys(whole).filter((name) => !kept.has(name));
	const dropped = new Set<string>();
	while (dropped.size < mostDropped && next() < dropChance) dropped.add(oneOf(names));
	return Object.fromEntries(Object.entries(whole).filter(([name]) => !dropped.has(name))) as Board;
}

/** Numbers from 0 to below 1, always the same ones for a seed (xorshift over 32 bits). */
function seeded(start: number): Random {
	let state = start | 0;
	return () => {
		state ^= state << 13;
		state ^= state >>> 17;
		state ^= state << 5;
		return (state >>> 0) / 2 ** 32;
	};
}

function throwWhereInvalid(all: readonly Board[]): void {
	if (new Set(all.map(({ id }) => id)).size !== all.length) throw new Error("two boards have one id");
	for (const one of all.slice(0, 500)) {
		const checked = boardSchema.safeParse(one);
		if (!checked.success) throw new Error(`${one.id}: ${checked.error.message}`);
	}
}
