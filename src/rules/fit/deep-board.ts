import { boardForms } from "../../reference/board-forms.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";
import { radiatorPlacesFor } from "../radiator-places.ts";

/** A board deeper than ATX reaches over what lies in front of it in the case: common practice, no source. */
export const deepBoard = defineRule({
	id: "fit/deep-board",
	scope: "board",
	label: "Room in front of a deep board",
	wayOut: "a board no deeper than ATX, or another case",
	asks: "Does a deep board cover something in the case that you need?",
	why: "Cases have openings for cables beside the board, and room for fans in front. A deep board lies over them.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead: [
		"board.form",
		"board.depthMm",
		"case",
		"case.deepBoardCovers",
		"case.radiatorPlaces",
		"cooler.kind",
		"cooler.radiatorMm",
	],
	saysNothing: ["notDeep", "free", "coversNothing"],
	messages: {
		notAsked: () => "You have not said which case the board goes into, or its size is not known.",
		coversNothing: () => "A deep board covers nothing in this case.",
		notDeep: () => `The board is no deeper than ATX (${boardForms.ATX.depthMm} mm).`,
		noCase: ({ depthMm }: { depthMm: number }) =>
			`The board is ${depthMm} mm deep; choose a case whose cable openings stay free beside it.`,
		free: ({ depthMm }: { depthMm: number }) => `The board is ${depthMm} mm deep and covers nothing in this case.`,
		openings: ({ depthMm }: { depthMm: number }) =>
			`The board is ${depthMm} mm deep and covers the case's openings for cables.`,
		radiator: ({ depthMm, radiatorMm }: { depthMm: number; radiatorMm: number }) =>
			`The board is ${depthMm} mm deep: your ${radiatorMm} mm radiator has no room in front, and no other place.`,
		radiatorElsewhere: ({ depthMm, places }: { depthMm: number; places: readonly string[] }) =>
			`The board is ${depthMm} mm deep, so the radiator has no room in front; it goes here: ${places.join(", ")}.`,
		noRadiator: ({ depthMm }: { depthMm: number }) =>
			`The board is ${depthMm} mm deep: beside it no radiator has room at the case's front.`,
		depthUnknown: () => "How deep the board is, and so what it covers in the case, is not known.",
		unknown: ({ depthMm }: { depthMm: number }) =>
			`The board is ${depthMm} mm deep; what it covers in your case is not known.`,
	},
	advice: {
		openings: () => "Lay the cables before the board goes in; some must go round its edge.",
		radiator: () => "Take an air cooler, another case, or a board no deeper than ATX.",
		depthUnknown: () => "Ask the seller for the board's depth in mm.",
		unknown: () => "Look for notes on deep or E-ATX boards on the case maker's page.",
	},
	check(facts): Outcome {
		const { "board.form": form, "board.depthMm": statedMm, "case.deepBoardCovers": covers } = facts;
		if (facts.case === undefined || facts.case === "unknown") return pass("notAsked");
		// A form other than the deep ones is no deeper than its size; E-ATX is no fixed size at all.
		const depthMm = statedMm ?? (form === undefined || form === "E-ATX" ? undefined : boardForms[form].depthMm);
		if (depthMm === undefined) {
			if (facts.case !== "have" || form !== "E-ATX") return pass("notAsked");
			return covers?.length === 0 ? pass("coversNothing") : cannotTell(["board.depthMm"], "depthUnknown");
		}
		if (depthMm <= boardForms.ATX.depthMm) return pass("notDeep");
		if (facts.case !== "have") return goodToKnow("noCase", { depthMm });
		if (!covers) return cannotTell(["case.deepBoardCovers"], "unknown", { depthMm });
		if (covers.includes("front radiator") && facts["cooler.kind"] === "liquid") {
			const radiatorMm = facts["cooler.radiatorMm"];
			const places = facts["case.radiatorPlaces"];
			if (radiatorMm === undefined || !places)
				return cannotTell(
					[...(radiatorMm === undefined ? ["cooler.radiatorMm"] : []), ...(places ? [] : ["case.radiatorPlaces"])],
					"unknown",
					{ depthMm },
				);
			const fitting = radiatorPlacesFor(places, radiatorMm).map(({ place }) => place);
			const others = [...new Set(fitting.filter((place) => place !== "front"))];
			if (fitting.includes("front"))
				return others.length > 0
					? planAround("radiatorElsewhere", { depthMm, places: others })
					: fail("radiator", { depthMm, radiatorMm });
		}
		if (covers.includes("cable openings")) return planAround("openings", { depthMm });
		return covers.includes("front radiator") ? goodToKnow("noRadiator", { depthMm }) : pass("free", { depthMm });
	},
});
