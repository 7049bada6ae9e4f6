import { measuredHeat } from "../../../src/rules/quality/measured-heat.ts";
import { testRule } from "../test-rule.ts";

const seen = (loadW: number, stageC: number) => ({ loadW, airC: 22, stageC });
const board = (...measurements: ReturnType<typeof seen>[]) => ({ powerDelivery: { measurements } });
const processor = { sustainedW: 200 };

testRule(measuredHeat, {
	fits: {
		"no test": [{ board: {}, processor }, "notMeasured"],
		"a test, but nothing known of the processor": [{ board: board(seen(200, 110)) }, "noLoad"],
		"cool under the same load": [
			{ board: board(seen(200, 89.9)), processor },
			"cool",
			{ stageC: 89.9, loadW: 200, wantW: 200 },
		],
		"cool under seven tenths of it": [
			{ board: board(seen(140, 60)), processor },
			"cool",
			{ stageC: 60, loadW: 140, wantW: 200 },
		],
		"hot, but under more than will be asked for": [
			{ board: board(seen(250, 95)), processor },
			"cool",
			{ stageC: 95, loadW: 250, wantW: 200 },
		],
		"the nearest of several tests counts": [
			{ board: board(seen(100, 120), seen(190, 70), seen(300, 120)), processor },
			"cool",
			{ stageC: 70, loadW: 190, wantW: 200 },
		],
		"of two as near the one under more load": [
			{ board: board(seen(190, 120), seen(210, 80)), processor },
			"cool",
			{ stageC: 80, loadW: 210, wantW: 200 },
		],
		"light use asks for little": [
			{ board: board(seen(60, 80)), processor, activities: ["writing"] },
			"cool",
			{ stageC: 80, loadW: 60, wantW: 60 },
		],
	},
	cautions: {
		"where boards hold back": [
			{ board: board(seen(200, 105)), processor },
			"plan-around",
			"holdsBack",
			{ stageC: 105, loadW: 200, wantW: 200 },
		],
		"just below it": [
			{ board: board(seen(200, 104.9)), processor },
			"plan-around",
			"warm",
			{ stageC: 104.9, loadW: 200, wantW: 200 },
		],
		"that hot under more load than will be asked for": [
			{ board: board(seen(201, 105)), processor },
			"good-to-know",
			"warm",
			{ stageC: 105, loadW: 201, wantW: 200 },
		],
		"hot from ninety degrees on": [
			{ board: board(seen(200, 90)), processor },
			"plan-around",
			"warm",
			{ stageC: 90, loadW: 200, wantW: 200 },
		],
		"a test under little load says little": [
			{ board: board(seen(139, 60)), processor },
			"good-to-know",
			"littleLoad",
			{ stageC: 60, loadW: 139, wantW: 200 },
		],
		"raising the clock asks for more": [
			{ board: board(seen(200, 105)), processor, clockPlan: "done-before" },
			"plan-around",
			"holdsBack",
			{ stageC: 105, loadW: 200, wantW: 270 },
		],
	},
	without: { cannotTell: "a test that nobody made can stop no board" },
});
