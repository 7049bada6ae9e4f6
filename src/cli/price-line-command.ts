import { priceLine } from "../choose/price-line.ts";
import { viewWalk } from "../screens/walk-view.ts";
import { priceLineJson } from "../sheet/price-line-json.ts";
import { priceLinePicture } from "../sheet/price-line-picture.ts";
import { priceLineWords } from "../sheet/price-line-words.ts";
import type { Arguments } from "./arguments.ts";
import { boardText, giveResult } from "./board-command.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { loadAnswersOf, loadMarket } from "./load.ts";
import type { Streams } from "./streams.ts";
import { isUtf8 } from "./terminal.ts";

/** Columns of the picture: the fewest, the most, and those where nothing is said. */
const columns = { least: 40, most: 200, usual: 60 } as const;

/**
 * `price-line`: what more money buys among the boards left, as a picture and in words, with --json as price-line@1, with
 * --to as .txt or .json.
 *
 * @throws CommandError with code 64 for a width that is none, without answers, or for a file of another kind
 */
export function priceLineOfWalk(args: Arguments, streams: Streams): void {
	const width = widthOf(args);
	const market = loadMarket(args, streams);
	const { state, context } = loadAnswersOf(args, market, streams);
	const view = viewWalk(context, state);
	const line = priceLine(view.judgement(), view.advice().ranking);
	giveResult(args, streams, (ending) => {
		switch (ending) {
			case ".json":
				return `${JSON.stringify(priceLineJson(line), null, "\t")}\n`;
			case ".txt": {
				// A picture says nothing to a screen reader; the words say all of it.
				const ascii = args.ascii || !isUtf8(process.env);
				const picture = args.plain ? [] : priceLinePicture(line, { width, ascii });
				return boardText({
					title: "What more money buys",
					stopped: [],
					shows: "",
					picture: picture.length > 0 ? ["", ...picture] : [],
					sections: priceLineWords(line),
					last: "",
				});
			}
			default:
				throw new CommandError(
					exitCodes.usage,
					"What more money buys is written as .txt or .json; the file's name must end so.",
				);
		}
	});
}

function widthOf({ width }: Arguments): number {
	if (width === undefined) return columns.usual;
	const count = /^\d{1,4}$/.test(width) ? Number(width) : Number.NaN;
	if (count >= columns.least && count <= columns.most) return count;
	throw new CommandError(exitCodes.usage, `--width takes ${columns.least} to ${columns.most}, and not "${width}".`);
}
