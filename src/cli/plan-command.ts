import sample from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import { measurePlan, type PlanMeasure } from "../plan/measure-plan.ts";
import { viewWalk } from "../screens/walk-view.ts";
import { planJson } from "../sheet/plan-json.ts";
import { planPicture } from "../sheet/plan-picture.ts";
import { planPictureSvg } from "../sheet/plan-picture-svg.ts";
import { planWords } from "../sheet/plan-words.ts";
import { wrapText } from "../sheet/wrap-text.ts";
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
	const view = viewWalk(taken?.context ?? { market, asOf: sample.asOf }, taken?.state ?? startWalk());
	const judged = view.judgement().boards.find(({ board }) => board.id === id);
	if (!judged) {
		const near = nearWords(
			id,
			view.market.parts.board.map((board) => board.id),
		);
		throw new CommandError(exitCodes.usage, `There is no board "${id}".${near}`);
	}
	if (!taken) streams.err("Without --answers FILE nothing about your build is known, so little can be planned.\n");
	const board = judged.subject.board ?? judged.board;
	const measure = measurePlan(board, view.judgement().build.facts);
	const title = `What plugs in where: ${board.name}${board.invented ? " (invented)" : ""}`;
	const form = (ending: string) => {
		switch (ending) {
			case ".json":
				return `${JSON.stringify(planJson(board.id, measure), null, "\t")}\n`;
			case ".svg":
				return planPictureSvg(measure.plan, title);
			case ".txt":
				// A picture says nothing to a screen reader; the words say all of it.
				return planText(title, args.plain ? [] : ["", ...planPicture(measure.plan, board)], measure);
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

function planText(title: string, picture: readonly string[], measure: PlanMeasure): string {
	const words = planWords(measure).flatMap(({ heading, lines }) => [
		"",
		heading,
		...lines.flatMap((line) => wrapText(`- ${line}`, width, { indent: "  " })),
	]);
	return `${[title, ...picture, ...words].join("\n")}\n`;
}
