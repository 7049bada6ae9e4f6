import { priceLine } from "../choose/price-line.ts";
import { priceLinePicture } from "../sheet/price-line-picture.ts";
import { priceLineWords } from "../sheet/price-line-words.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, list, type Screen } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** What more money buys among the boards left: a picture of price against points, and the same in words. */
export function priceLineScreen(view: WalkView): Screen {
	const line = priceLine(view.judgement(), view.advice().ranking);
	const picture = priceLinePicture(line);
	return plainScreen(view, {
		id: "price-line",
		title: "What more money buys",
		body: [
			...(picture.length > 0 ? [{ kind: "picture", isTold: true, lines: picture } as const] : []),
			...priceLineWords(line).flatMap(({ heading: words, lines }) => [heading(words), list(lines)]),
		],
		choices: [
			...line.hull.map(
				({ board }): Choice => ({ label: `Look at ${board.name}`, event: { type: "board", boardId: board.id } }),
			),
			{ label: "Back", event: { type: "back" } },
			{ label: "To the shortlist", event: { type: "shortlist" } },
		],
		enter: { words: "back", event: { type: "back" } },
	});
}
