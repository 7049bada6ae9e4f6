import sample from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import { boardSubjects } from "../choose/findings-of-market.ts";
import { stoppedBy } from "../choose/stopped-by.ts";
import { measurePlan, type PlanMeasure } from "../plan/measure-plan.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { listed } from "../sheet/listed.ts";
import { planJson } from "../sheet/plan-json.ts";
import { pictureShape, planPicture } from "../sheet/plan-picture.ts";
import { planPictureSvg } from "../sheet/plan-picture-svg.ts";
import { notInThePlan, planWords } from "../sheet/plan-words.ts";
import { wrapText } from "../sheet/wrap-text.ts";
import { marketOf } from "../walk/market-of.ts";
import { startWalk } from "../walk/walk-state.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { loadAnswersOf, loadMarket } from "./load.ts";
import type { Streams } from "./streams.ts";
import { endingOf, writeResult } from "./write-sheet.ts";

const width = 78;

/**
 * `plan BOARD`: what plugs in where, as a picture and in words, with --json as plan@1, with --to as .txt, .svg or .json.
 *
 * @throws CommandError with code 64 where no board is named, or none has this id
 */
export function plan(args: Arguments, streams: Streams): void {
	const [id] = args.operands;
	if (id === undefined)
		throw new CommandError(exitCodes.usage, "Of which board? Such as: boardwalk plan BOARD --answers my.json");
	const market = loadMarket(args, streams);
	const taken = args.answers === undefined ? null : loadAnswersOf(args, market, streams);
	const { ownParts, answers } = taken?.state ?? startWalk();
	const all = marketOf(market, ownParts);
	const subject = boardSubjects(all).find(({ board: one }) => one.id === id);
	if (!subject) {
		const near = nearWords(
			id,
			all.parts.board.map((one) => one.id),
		);
		throw new CommandError(exitCodes.usage, `There is no board "${id}".${near}`);
	}
	if (!taken) streams.err("Without --answers FILE nothing about your build is known, so little can be planned.\n");
	const { facts } = foldAnswers(answers, { market: all, asOf: taken?.context.asOf ?? sample.asOf });
	const { board } = subject;
	const measure = measurePlan(board, facts);
	const stopped = stoppedBy({ ...subject, facts });
	const title = `What plugs in where: ${board.name}${board.invented ? " (invented)" : ""}`;
	const form = (ending: string) => {
		switch (ending) {
			case ".json":
				return `${JSON.stringify(planJson(board.id, measure), null, "\t")}\n`;
			case ".svg":
				return planPictureSvg(measure.plan, title, pictureShape(board, measure));
			case ".txt":
				// A picture says nothing to a screen reader; the words say all of it.
				return planText(
					title,
					stopped,
					args.plain ? [] : ["", ...planPicture(measure.plan, pictureShape(board, measure))],
					measure,
				);
			default:
				throw new CommandError(
					exitCodes.usage,
					"A plan is written as .txt, .svg or .json; the file's name must end so.",
				);
		}
	};
	if (args.to === undefined || args.to === "-") streams.out(form(args.json ? ".json" : ".txt"));
	else {
		const options = { replace: args.replace, ifTaken: "Take another name, or add --replace." };
		streams.err(`Written: ${writeResult(args.to, form(endingOf(args.to)), options)}\n`);
	}
}

function planText(title: string, stopped: readonly string[], picture: readonly string[], measure: PlanMeasure): string {
	const words = planWords(measure).flatMap(({ heading, lines }) => [
		"",
		heading,
		...lines.flatMap((line) => wrapText(`- ${line}`, width, { indent: "  " })),
	]);
	const warning =
		stopped.length > 0
			? [
					"",
					...wrapText(`This board does not fit: ${listed(stopped)}. The plan shows only where things would go.`, width),
				]
			: [];
	return `${[title, ...warning, ...picture, ...words, "", ...wrapText(notInThePlan, width)].join("\n")}\n`;
}
