import { powerGauge } from "../sheet/power-gauge.ts";
import { powerGaugeSvg } from "../sheet/power-gauge-svg.ts";
import { powerJson } from "../sheet/power-json.ts";
import { powerToldOf, powerWords } from "../sheet/power-words.ts";
import type { Arguments } from "./arguments.ts";
import { boardOfCommand, boardText, giveResult } from "./board-command.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import type { Streams } from "./streams.ts";

/**
 * `power BOARD`: how warm the stages get, as a gauge and in words, with --json as power@1, with --to as .txt, .svg or
 * .json. Where nothing is known of the processor's watts it says what is missing.
 *
 * @throws CommandError with code 64 where no board is named, or none has this id
 */
export function power(args: Arguments, streams: Streams): void {
	const { board, build, stopped, name } = boardOfCommand(args, streams, { command: "power", little: "told" });
	const told = powerToldOf(board, build.facts, build.worlds);
	const { steady } = told;
	const title = `Power and heat: ${name}`;
	giveResult(args, streams, (ending) => {
		switch (ending) {
			case ".json":
				return `${JSON.stringify(powerJson(board.id, told), null, "\t")}\n`;
			case ".svg":
				return powerGaugeSvg(steady, title);
			case ".txt":
				return boardText({
					title,
					stopped,
					shows: "This page shows only how warm it would get.",
					// A picture says nothing to a screen reader; the words say all of it.
					picture: args.plain || !steady ? [] : ["", ...powerGauge(steady)],
					sections: powerWords(told),
					last: "",
				});
			default:
				throw new CommandError(
					exitCodes.usage,
					"Power and heat are written as .txt, .svg or .json; the file's name must end so.",
				);
		}
	});
}
