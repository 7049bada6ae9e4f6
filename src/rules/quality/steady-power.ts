import type { Board } from "../../parts/board.ts";
import { countedWatts, processorUse, processorUsePaths } from "../../power/counted-watts.ts";
import { stageLimitC } from "../../reference/activity-loads.ts";
import { defineRule } from "../define-rule.ts";
import { goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

type Measurement = NonNullable<NonNullable<Board["powerDelivery"]>["measurements"]>[number];

/** From here on stages are hot but safe; boards hold the processor back from about 105 on. Both common practice. */
const warmC = 90;

/** What a published test saw beats any count of stages: how hot they got, under how much load. */
export const measuredHeat = defineRule({
	id: "quality/measured-heat",
	scope: "board",
	label: "Measured heat of the power stages",
	wayOut: "a board that gets hot",
	asks: "Did a test see the power stages stay cool under a load like yours?",
	why: "Counts and ratings are promises. A thermometer on the board under load is not.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead: ["board.powerDelivery.measurements", ...processorUsePaths],
	messages: {
		notMeasured: () => "No test with a thermometer is noted.",
		noLoad: () => "How many watts your processor takes is not known, so the test cannot be held against it.",
		cool: ({ stageC, loadW, wantW }: { stageC: number; loadW: number; wantW: number }) =>
			`A test saw ${stageC} degrees C at ${loadW} W. You will ask for up to ${wantW} W.`,
		warm: ({ stageC, loadW, wantW }: { stageC: number; loadW: number; wantW: number }) =>
			`A test saw ${stageC} degrees C at ${loadW} W: that is hot. You will ask for up to ${wantW} W.`,
		holdsBack: ({ stageC, loadW, wantW }: { stageC: number; loadW: number; wantW: number }) =>
			`A test saw ${stageC} degrees C at ${loadW} W: boards hold back there. You will ask for up to ${wantW} W.`,
		littleLoad: ({ stageC, loadW, wantW }: { stageC: number; loadW: number; wantW: number }) =>
			`A test saw ${stageC} degrees C, but at ${loadW} W only. You will ask for up to ${wantW} W.`,
	},
	advice: {
		holdsBack: () => "Take a board that was measured cooler, or set the processor's power limit lower.",
		warm: () => "See that air from a case fan reaches the stages.",
	},
	check(facts): Outcome {
		const tests = facts["board.powerDelivery.measurements"] ?? [];
		const watts = countedWatts(processorUse(facts));
		const nearest = nearestTo(tests, watts?.high ?? 0);
		if (!nearest) return pass("notMeasured");
		if (!watts) return pass("noLoad");
		const data = { stageC: nearest.stageC, loadW: nearest.loadW, wantW: Math.round(watts.high) };
		// Hot under no more than what will be asked for: it can only get hotter.
		const binds = nearest.loadW <= watts.high;
		if (nearest.stageC >= stageLimitC) return binds ? planAround("holdsBack", data) : goodToKnow("warm", data);
		if (nearest.stageC >= warmC) return binds ? planAround("warm", data) : pass("cool", data);
		return nearest.loadW < watts.high * mostStretch ? goodToKnow("littleLoad", data) : pass("cool", data);
	},
});

/** A test under less than this part of the load says little about it (own convention). */
const mostStretch = 0.7;

/** The test whose load is nearest to what will be asked for; of two as near the one under more load. */
function nearestTo(tests: readonly Measurement[], watts: number): Measurement | undefined {
	const byDistance = [...tests].sort(
		(one, other) => Math.abs(one.loadW - watts) - Math.abs(other.loadW - watts) || other.loadW - one.loadW,
	);
	return byDistance[0];
}
