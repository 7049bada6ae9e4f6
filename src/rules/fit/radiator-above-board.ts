import type { FactsUnder } from "../../parts/fact-path.ts";
import { boardForms } from "../../reference/board-forms.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass } from "../outcome.ts";
import { isThinEnough, radiatorPlacesFor } from "../radiator-places.ts";
import { roundToTenth } from "../round-to-tenth.ts";

/** Memory higher than this, in mm, stands up toward a radiator above it (own convention); most is 31 to 35 mm high. */
const tallMemoryMm = 40;
/** With this much of the named room to spare, in mm, the case's maker has counted what stands below (own convention). */
const comfortMm = 2;

const mayRead = [
	"cooler",
	"cooler.kind",
	"cooler.radiatorMm",
	"cooler.radiatorThicknessMm",
	"case",
	"case.radiatorPlaces",
	"case.deepBoardCovers",
	"case.cardMaxLengthWithRadiatorMm",
	"graphicsCard.lengthMm",
	"memory",
	"memory.heightMm",
	"board.form",
	"board.depthMm",
	"board.powerDelivery.heatSink",
] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

/**
 * A radiator in the top of the case hangs with its fans over the board's upper edge. Where the case's page names the room
 * for both and they leave some of it, that is counted; else what stands tall on the board can meet them. How tall heat
 * sinks are no page says, so there it stays "measure it".
 */
export const radiatorAboveBoard = defineRule({
	id: "fit/radiator-above-board",
	scope: "board",
	label: "Radiator above the board",
	wayOut: "lower memory, or a radiator at another place",
	asks: "Does anything tall on the board meet a radiator in the top of the case?",
	why: "A radiator is the liquid cooler's box of fins. In the top of the case it hangs with its fans over the board's edge.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead,
	saysNothing: ["notTop", "low"],
	messages: {
		notAsked: () => "You have not named both a liquid cooler and a case.",
		notTop: () => "The radiator has no place in the top of your case, so it does not hang over the board.",
		elsewhere: ({ places }: { places: readonly string[] }) =>
			`The radiator has a place away from the board's upper edge: ${places.join(" or ")}.`,
		counted: ({ thicknessMm, maxMm }: { thicknessMm: number; maxMm: number }) =>
			`Radiator and fans take ${thicknessMm} mm of the ${maxMm} mm that the top of the case has for them.`,
		low: () => "Nothing on the board stands tall below the radiator.",
		tight: ({ thicknessMm, maxMm, tall }: { thicknessMm: number; maxMm: number; tall: readonly string[] }) =>
			`Radiator and fans take ${thicknessMm} mm of the ${maxMm} mm in the top of the case. Tall below them: ${tall.join(" and ")}.`,
		unmeasured: ({ tall }: { tall: readonly string[] }) =>
			`The case's page names no room between board and top for radiator and fans. Tall below them: ${tall.join(" and ")}.`,
		unsure: () => "Whether the radiator in the top of the case clears what stands tall on the board is not known.",
	},
	advice: {
		elsewhere: () => "Mount it there: in the top of the case it could meet tall memory or heat sinks.",
		tight: () =>
			"Before you buy, ask the case's maker how high memory may be below a radiator. In the case, measure before you screw it in.",
		unmeasured: () =>
			"Measure in the case from the board's upper edge to the top, or ask its maker. A radiator with fans is mostly 52 mm thick or more.",
	},
	check(facts): Outcome {
		const kind = facts["cooler.kind"];
		if (facts.cooler !== "have" || kind === "air" || facts.case !== "have") return pass("notAsked");
		const outcome = ofLiquidCooler(facts);
		return kind === "liquid" || outcome.kind === "pass" ? outcome : cannotTell(["cooler.kind"], "unsure");
	},
});

function ofLiquidCooler(facts: Facts): Outcome {
	const { "cooler.radiatorMm": radiatorMm, "case.radiatorPlaces": allPlaces } = facts;
	const thicknessMm = facts["cooler.radiatorThicknessMm"];
	if (allPlaces?.every(({ place }) => place !== "top")) return pass("notTop");
	const { tall, missing } = tallOf(facts);
	if (radiatorMm === undefined || allPlaces === undefined)
		return tall.length + missing.length === 0
			? pass("low")
			: cannotTell(
					[
						...(radiatorMm === undefined ? ["cooler.radiatorMm"] : []),
						...(allPlaces === undefined ? ["case.radiatorPlaces"] : []),
					],
					"unsure",
				);
	const suiting = radiatorPlacesFor(allPlaces, radiatorMm);
	const tops = suiting.filter((place) => place.place === "top" && isThinEnough(place, thicknessMm) !== false);
	if (tops.length === 0) return pass("notTop");
	if (tall.length + missing.length === 0) return pass("low");
	// Of several places in the top the one that names most room is taken.
	const maxMm = Math.max(...tops.map(({ maxThicknessMm }) => maxThicknessMm ?? 0));
	if (thicknessMm !== undefined && roundToTenth(maxMm - thicknessMm) >= comfortMm)
		return pass("counted", { thicknessMm, maxMm });

	const elsewhere = suiting.filter(
		(one) => one.place !== "top" && isThinEnough(one, thicknessMm) && !(one.place === "front" && isFrontTaken(facts)),
	);
	if (elsewhere.length > 0) return pass("elsewhere", { places: [...new Set(elsewhere.map(({ place }) => place))] });
	if (maxMm === 0) return tall.length > 0 ? fail("unmeasured", { tall }) : cannotTell(missing, "unsure");
	if (thicknessMm === undefined)
		return cannotTell(["cooler.radiatorThicknessMm", ...(tall.length > 0 ? [] : missing)], "unsure");
	return tall.length > 0 ? fail("tight", { thicknessMm, maxMm, tall }) : cannotTell(missing, "unsure");
}

/** A deep board or a long card can lie where a radiator in front would go (fit/deep-board, build/card-in-case). */
function isFrontTaken(facts: Facts): boolean {
	const { "board.form": form, "board.depthMm": statedMm, "graphicsCard.lengthMm": cardMm } = facts;
	const depthMm = statedMm ?? (form === undefined ? 0 : boardForms[form].depthMm);
	const isCovered = depthMm > boardForms.ATX.depthMm && facts["case.deepBoardCovers"]?.includes("front radiator");
	const cardRoomMm = facts["case.cardMaxLengthWithRadiatorMm"] ?? Number.POSITIVE_INFINITY;
	return isCovered === true || (cardMm ?? 0) > cardRoomMm;
}

/** What is known to stand tall at the upper edge, and facts that would tell of more. Memory still to be bought can be low. */
function tallOf(facts: Facts): { readonly tall: readonly string[]; readonly missing: readonly string[] } {
	const { memory, "memory.heightMm": heightMm, "board.powerDelivery.heatSink": heatSink } = facts;
	const isTallSink = heatSink === "finned" || heatSink === "both sides with heat pipe";
	return {
		tall: [
			...(heightMm !== undefined && heightMm > tallMemoryMm ? [`the memory of ${heightMm} mm`] : []),
			...(isTallSink ? ["the heat sinks beside the socket"] : []),
		],
		missing: [
			...(memory === "unknown" ? ["memory"] : []),
			...(memory === "have" && heightMm === undefined ? ["memory.heightMm"] : []),
			...(heatSink === undefined ? ["board.powerDelivery.heatSink"] : []),
		],
	};
}
