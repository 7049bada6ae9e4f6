import { wireless } from "../../../src/rules/features/wireless.ts";
import { card, slot } from "../../plan/made-up-problem.ts";
import { testRule } from "../test-rule.ts";

const wish = (strength: "must" | "would-like" | "dont-mind") => ({ wishes: { "features/wireless": strength } });
const without = (moduleSocket?: "none" | "ordinary" | "one-family-only") => ({
	wireless: { builtIn: false, ...(moduleSocket ? { moduleSocket } : {}) },
});

const radio = card("Semaphore", { lanes: 1, use: "wireless network" });
const fiddle = card("Fiddle", { lanes: 1, use: "sound" });
/** A thick card in the first slot covers the second row. */
const thick = { graphicsCard: { thicknessMm: 40, lanes: 16 } };
const slots = (...rows: number[]) => ({
	...without("none"),
	cardSlots: [slot("X16", 1, 16), ...rows.map((row) => slot(`X1_${row}`, row, 1))],
	sharing: [],
});

testRule(wireless, {
	fits: {
		"a standard of two bands": [
			{ board: { wireless: { builtIn: true, standard: "Wi-Fi 6" } }, ...wish("must") },
			"has",
			{ standard: "Wi-Fi 6" },
		],
		"a standard that names the third band": [
			{ board: { wireless: { builtIn: true, standard: "Wi-Fi 6E" } }, ...wish("would-like") },
			"thirdBand",
			{ standard: "Wi-Fi 6E" },
		],
		"a wireless card of one's own": [
			{ board: without(), ...wish("must"), addInCards: [fiddle, radio] },
			"ownCard",
			{ card: "Semaphore" },
		],
		"a wireless card of one's own, and the page is silent": [
			{ board: {}, ...wish("would-like"), addInCards: [radio] },
			"ownCard",
			{ card: "Semaphore" },
		],
		"built in": [
			{ board: { wireless: { builtIn: true, standard: "Wi-Fi 7" } }, ...wish("must"), addInCards: [radio] },
			"thirdBand",
			{ standard: "Wi-Fi 7" },
		],
		"built in, standard not known": [
			{ board: { wireless: { builtIn: true } }, ...wish("would-like") },
			"has",
			{ standard: "" },
		],
		"not wished for": [{ board: without(), ...wish("dont-mind") }, "notAsked"],
		"nobody has said": [{ board: without() }, "notAsked"],
	},
	cautions: {
		"needed, and there is none": [{ board: without(), ...wish("must") }, "plan-around", "adapter"],
		"needed, and a socket for a module": [{ board: without("ordinary"), ...wish("must") }, "plan-around", "module"],
		"needed, and a socket for modules of one processor family": [
			{ board: without("one-family-only"), ...wish("must") },
			"plan-around",
			"familyModule",
		],
		"one slot left in the row below the graphics card": [
			{ board: slots(3), ...wish("must"), ...thick },
			"plan-around",
			"adapter",
		],
		"the only other slot lies under the graphics card": [
			{ board: slots(2), ...wish("must"), ...thick },
			"plan-around",
			"usbAdapter",
		],
		"the only other slot is taken by a card": [
			{ board: slots(3), ...wish("must"), ...thick, addInCards: [fiddle] },
			"plan-around",
			"usbAdapter",
		],
		"no slot at all": [
			{ board: { ...without(), cardSlots: [], sharing: [] }, ...wish("must"), graphicsCard: "none" },
			"plan-around",
			"usbAdapter",
		],
		"only an old PCI slot is left": [
			{
				board: { ...without(), cardSlots: [slot("X16", 1, 16), { name: "OLD", bus: "PCI", row: 4 }], sharing: [] },
				...wish("must"),
				...thick,
			},
			"plan-around",
			"usbAdapter",
		],
		"the slot left is in the last row of the case": [
			{ board: slots(4), ...wish("must"), ...thick, case: { cardSlots: 4 } },
			"plan-around",
			"adapter",
		],
		"the slot left is one row below the last of the case": [
			{ board: slots(5), ...wish("must"), ...thick, case: { cardSlots: 4 } },
			"plan-around",
			"usbAdapter",
		],
		"a slot of which no row is known": [
			{
				board: { ...without(), cardSlots: [slot("X1", 1, 1, { row: undefined })], sharing: [] },
				...wish("must"),
				graphicsCard: "none",
				case: { cardSlots: 2 },
			},
			"plan-around",
			"adapter",
		],
		"would be nice": [{ board: without("ordinary"), ...wish("would-like") }, "good-to-know", "wouldLike"],
	},
	cannotTell: {
		"needed, and the page is silent": [{ board: {}, ...wish("must") }, ["board.wireless"]],
		"would be nice, and the page is silent": [{ board: {}, ...wish("would-like") }, ["board.wireless"]],
	},
	needs: {
		needed: [wish("must"), "Wireless (Wi-Fi) built in; else count the price of an adapter."],
		"would be nice": [wish("would-like"), "Wireless (Wi-Fi) built in, if it costs little."],
		"not wished for": [wish("dont-mind"), null],
		"a wireless card of one's own": [{ ...wish("must"), addInCards: [radio] }, null],
		"nobody has said": [{}, null],
	},
});
