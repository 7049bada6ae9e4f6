import { judge } from "../../src/choose/judge.ts";
import { type PriceLine, priceLine } from "../../src/choose/price-line.ts";
import type { Score } from "../../src/choose/score.ts";
import type { AddInCard } from "../../src/parts/add-in-card.ts";
import type { Board } from "../../src/parts/board.ts";
import { makeMarket } from "../../src/parts/make-market.ts";
import type { GivenBuild } from "../rules/rule-subject.ts";
import { buildOf, goodBoard, goodBuild } from "./small-market.ts";

/** A board by name: price in euros or none, points of 100 or from to, and facts of its own. */
export interface MadeUp {
	readonly name: string;
	readonly euros?: number;
	readonly points: number | readonly [low: number, high: number];
	readonly facts?: Partial<Board>;
	/** Its socket is not known, so nobody can tell whether it fits. */
	readonly mayFit?: true;
	readonly parts?: Score["parts"];
}

export const eur = (euros: number) => ({ minor: Math.round(euros * 100), currency: "EUR" });

const { priceCap: _, ...noLimit } = goodBuild;

/** The line through made-up boards that all fit the same build. */
export function lineOf(
	boards: readonly MadeUp[],
	more: {
		readonly build?: GivenBuild;
		readonly cards?: readonly AddInCard[];
		readonly ways?: Record<string, GivenBuild>;
	} = {},
): PriceLine {
	const { market } = makeMarket("made up", [
		{
			schema: "boardwalk/parts@1",
			boards: boards.map(({ name, euros, facts, mayFit }): Board => {
				const { price: _price, socket, ...good } = goodBoard;
				const price = euros === undefined ? {} : { price: eur(euros) };
				return { id: idOf(name), name, ...good, ...(mayFit || !socket ? {} : { socket }), ...price, ...facts };
			}),
			addInCards: [...(more.cards ?? [])],
		},
	]);
	const judgement = judge(market, buildOf({ ...noLimit, ...more.build }, more.ways));
	const left = boards.filter(({ name }) =>
		judgement.boards.some(({ board, verdict }) => board.name === name && verdict !== "does-not-fit"),
	);
	return priceLine(
		judgement,
		left.map(({ name, points, parts = [] }) => {
			const [low, high] = typeof points === "number" ? [points, points] : points;
			return { boardId: idOf(name), score: { low, mid: (low + high) / 2, high, parts } };
		}),
	);
}

const idOf = (name: string) => name.toLowerCase().replace(/[^a-z0-9]+/g, "-");

export const namesOf = (points: PriceLine["points"]) => points.map(({ board }) => board.name);
