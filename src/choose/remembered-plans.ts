import type { Board } from "../parts/board.ts";
import type { BuildFacts } from "../parts/build.ts";
import { buildAround } from "../plan/around-board.ts";
import { devicesOf } from "../plan/devices.ts";
import { type HeaderPlan, headerPlanOf } from "../plan/header-plan.ts";
import { headerWishesOf } from "../plan/header-wishes.ts";
import { laterDevicesOf } from "../plan/later-devices.ts";
import { type PlanFacts, planFactsAround } from "../plan/plan-facts.ts";
import { type PowerFacts, powerFactsOf, powerOfBuild } from "../power/power-facts.ts";

/** What a plan sees of a build, as text that is the same where plans are the same. */
export const planSees = rememberedBy((facts) => {
	const build = buildAround(facts);
	return JSON.stringify([
		build.processor,
		build.case && [build.case.cardSlots, build.case.uprightSlots],
		facts.graphicsCard.state,
		devicesOf(build, "best"),
		devicesOf(build, "worst"),
		laterDevicesOf(build),
		facts.wishes["features/second-card"],
	]);
});

/** The same for what plugs in on headers. */
export const headersSee = rememberedBy((facts) => JSON.stringify(headerWishesOf(facts)));

/** The same for watts and heat. */
export const powerSees = rememberedBy((facts) => JSON.stringify(powerOfBuild(facts)));

/** The plan of a board for a build; worked out once for all builds that look alike to a plan. */
export const rememberedPlan = rememberedForBoards<PlanFacts>(planSees, (board, facts) =>
	planFactsAround(board, buildAround(facts)),
);

/** What plugs in on which header of a board; worked out once for all builds that want the same. */
export const rememberedHeaders = rememberedForBoards<HeaderPlan>(headersSee, headerPlanOf);

/** Power and heat of a board; worked out once for all builds of the same load and air. */
export const rememberedPower = rememberedForBoards<PowerFacts>(powerSees, powerFactsOf);

function rememberedBy(textOf: (facts: BuildFacts) => string): (facts: BuildFacts) => string {
	const texts = new WeakMap<BuildFacts, string>();
	return (facts) => {
		const text = texts.get(facts) ?? textOf(facts);
		texts.set(facts, text);
		return text;
	};
}

/** Most plans kept for one board: enough for every way the open answers may turn out, a few times over. */
const mostKept = 200;

function rememberedForBoards<T>(
	seenOf: (facts: BuildFacts) => string,
	measure: (board: Board, facts: BuildFacts) => T,
): (board: Board, facts: BuildFacts) => T {
	const all = new WeakMap<Board, { lastKey: string; last: T; readonly kept: Map<string, T> }>();
	return (board, facts) => {
		const key = seenOf(facts);
		const ofBoard = all.get(board);
		// Rules ask one after another for the same plan.
		if (ofBoard?.lastKey === key) return ofBoard.last;
		const kept = ofBoard?.kept ?? new Map<string, T>();
		const measured = kept.get(key) ?? measure(board, facts);
		if (ofBoard) Object.assign(ofBoard, { lastKey: key, last: measured });
		else all.set(board, { lastKey: key, last: measured, kept });
		// What was used last stays longest.
		kept.delete(key);
		kept.set(key, measured);
		const [oldest] = kept.keys();
		if (kept.size > mostKept && oldest !== undefined) kept.delete(oldest);
		return measured;
	};
}
