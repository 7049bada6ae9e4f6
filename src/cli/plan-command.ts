import { measurePlan } from "../plan/measure-plan.ts";
import { planJson } from "../sheet/plan-json.ts";
import { pictureShape, planPicture } from "../sheet/plan-picture.ts";
import { planPictureSvg } from "../sheet/plan-picture-svg.ts";
import { notInThePlan, planWords } from "../sheet/plan-words.ts";
import type { Arguments } from "./arguments.ts";
import { boardOfCommand, boardText, giveResult } from "./board-command.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import type { Streams } from "./streams.ts";

/**
 * `plan BOARD`: what plugs in where, as a picture and in words, with --json as plan@1, with --to as .txt, .svg or .json.
 *
 * @throws CommandError with code 64 where no board is named, or none has this id
 */
export function plan(args: Arguments, streams: Streams): void {
	const { board, build, stopped, name } = boardOfCommand(args, streams, { command: "plan", little: "planned" });
	const measure = measurePlan(board, build.facts);
	const title = `What plugs in where: ${name}`;
	giveResult(args, streams, (ending) => {
		switch (ending) {
			case ".json":
				return `${JSON.stringify(planJson(board.id, measure), null, "\t")}\n`;
			case ".svg":
				return planPictureSvg(measure.plan, title, pictureShape(board, measure));
			case ".txt":
				return boardText({
					title,
					stopped,
					shows: "The plan shows only where things would go.",
					// A picture says nothing to a screen reader; the words say all of it.
					picture: args.plain ? [] : ["", ...planPicture(measure.plan, pictureShape(board, measure))],
					sections: planWords(measure),
					last: notInThePlan,
				});
			default:
				throw new CommandError(
					exitCodes.usage,
					"A plan is written as .txt, .svg or .json; the file's name must end so.",
				);
		}
	});
}
