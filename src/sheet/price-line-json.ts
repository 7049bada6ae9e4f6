import type { LinePoint, PriceLine } from "../choose/price-line.ts";
import { priceLineWords } from "./price-line-words.ts";

function pointJson({ board, own, costs, minor, besides, isSure, score, points }: LinePoint) {
	return {
		boardId: board.id,
		name: board.name,
		priceMinor: minor,
		boardPriceMinor: own.price.minor,
		condition: own.condition,
		forces: {
			priced: costs.priced,
			unpriced: costs.unpriced,
			perhaps: costs.perhaps,
		},
		/** The price leaves these out, and others' prices do not: it is the least. */
		besides,
		fits: isSure ? "fits" : "cannot-tell",
		score: { low: score.low, mid: score.mid, high: score.high },
		points,
	};
}

/** Price against score as plain JSON, for other programs; sums in the currency's smallest unit, points of 100 of 100. */
export function priceLineJson(line: PriceLine): object {
	const idOf = ({ board }: LinePoint) => board.id;
	return {
		schema: "boardwalk/price-line@1",
		currency: line.currency,
		boards: line.points.map(pointJson),
		line: line.hull.map(idOf),
		steps: line.steps.map(({ from, to, moreMinor, morePoints, minorPerPoint, changes }) => ({
			from: idOf(from),
			to: idOf(to),
			moreMinor,
			morePoints,
			minorPerPoint,
			changes,
		})),
		below: line.below.map(idOf),
		beaten: line.beaten.map(({ point, by, how, isCertain }) => ({
			boardId: idOf(point),
			by: idOf(by),
			how,
			isCertain,
		})),
		unsettled: line.unsettled.map(idOf),
		allForce: line.allForce,
		leavesOut: line.leavesOut,
		noPrice: line.noPrice.map(({ id }) => id),
		otherCurrency: line.otherCurrency.map(({ board, price }) => ({ boardId: board.id, price })),
		words: priceLineWords(line).map(({ heading, lines }) => ({ heading, lines })),
	};
}
