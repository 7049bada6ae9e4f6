import sample from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import { measurePlan } from "../plan/measure-plan.ts";
import { viewWalk } from "../screens/walk-view.ts";
import { planJson } from "../sheet/plan-json.ts";
import { planWords } from "../sheet/plan-words.ts";
import { wrapText } from "../sheet/wrap-text.ts";
import { startWalk } from "../walk/walk-state.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { loadAnswersOf, loadMarket } from "./load.ts";
import type { Streams } from "./streams.ts";

const width = 78;

/**
 * `plan BOARD`: what plugs in where, in words, or with --json as plan@1.
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
	if (args.json) {
		streams.out(`${JSON.stringify(planJson(board.id, measure), null, "\t")}\n`);
		return;
	}
	const words = planWords(measure).flatMap(({ heading, lines }) => [
		"",
		heading,
		...lines.flatMap((line) => wrapText(`- ${line}`, width, { indent: "  " })),
	]);
	const title = `What plugs in where: ${board.name}${board.invented ? " (invented)" : ""}`;
	streams.out(`${[title, ...words].join("\n")}\n`);
}
