import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass, planAround } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

/** With less than this to spare a panel, bent or of glass, can touch the cooler: common practice. */
const comfortMm = 2;

/** An air cooler stands up from the board toward the side panel. */
export const coolerHeight = defineRule({
	id: "build/cooler-height",
	scope: "build",
	label: "Height of the cooler",
	wayOut: "a lower cooler or a wider case",
	asks: "Does the side panel close over the cooler?",
	why: "A cooler that is too high keeps the panel from closing; a pane of glass that rests on it can crack.",
	source: "common-practice",
	severity: "stops",
	reads: ["cooler.kind", "case"],
	mayRead: ["cooler.heightMm", "case.coolerMaxHeightMm"],
	messages: {
		liquid: () => "A liquid cooler is low on the processor; its radiator is checked on its own.",
		noCase: () => "There is no case yet to measure the cooler against.",
		low: ({ heightMm, maxMm }: { heightMm: number; maxMm: number }) =>
			`The cooler is ${heightMm} mm high; the case has room for ${maxMm} mm.`,
		tight: ({ heightMm, maxMm }: { heightMm: number; maxMm: number }) =>
			`The cooler is ${heightMm} mm high, the case has room for ${maxMm} mm: so close that the panel can touch it.`,
		tooHigh: ({ heightMm, maxMm, overMm }: { heightMm: number; maxMm: number; overMm: number }) =>
			`The cooler is ${heightMm} mm high, ${overMm} mm more than the ${maxMm} mm the case has room for.`,
	},
	advice: {
		tight: () => "Take a cooler that is a few millimetres lower. Stop if a glass panel does not close without force.",
		tooHigh: () => "Take a lower cooler or a wider case.",
	},
	check(facts): Outcome {
		if (facts["cooler.kind"] === "liquid") return pass("liquid");
		if (facts.case === "open" || facts.case === "none") return pass("noCase");
		if (facts.case === "unknown") return cannotTell(["case"]);
		const { "cooler.heightMm": heightMm, "case.coolerMaxHeightMm": maxMm } = facts;
		if (heightMm === undefined || maxMm === undefined)
			return cannotTell([
				...(heightMm === undefined ? ["cooler.heightMm"] : []),
				...(maxMm === undefined ? ["case.coolerMaxHeightMm"] : []),
			]);
		const spareMm = roundToTenth(maxMm - heightMm);
		if (spareMm < 0) return fail("tooHigh", { heightMm, maxMm, overMm: -spareMm });
		return spareMm < comfortMm ? planAround("tight", { heightMm, maxMm }) : pass("low", { heightMm, maxMm });
	},
});
