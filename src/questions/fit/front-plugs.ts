import type { PcCase } from "../../parts/case.ts";
import { manyQuestion } from "../many-question.ts";
import { withHave } from "../part-question.ts";

type Plug = NonNullable<PcCase["frontPlugs"]>[number]["plug"];

export const frontPlugs = manyQuestion({
	id: "fit/front-plugs",
	tier: "fit",
	ask: "Which plugs do the cables of the case's front have?",
	hint: "Count the plugs at the loose ends inside the case",
	label: "Plugs of the case's front",
	why: "The sockets at the front of the case only work if the board has a place for each of their plugs.",
	whereToFind: "Inside the case: follow the cables from the front sockets to their loose ends.",
	recipe: [
		"USB 9-pin: two rows of small holes, five in each row, one of the ten closed.",
		"USB 19-pin: a thick plug as wide as a thumb, ten holes in each row, one of the twenty closed.",
		"USB-C 20-pin: a flat metal plug, about 1 cm wide, that clicks in.",
		"Sound: like USB 9-pin, but with AUDIO printed on it, and another hole closed.",
	],
	picture: [
		"USB 9-pin     USB 19-pin            USB-C 20-pin",
		" o o o o o     o o o o o o o o o o    ________",
		" o o o o       o o o o o o o o o     (________)",
	],
	changes: "A board without a place for a plug is marked: that front socket would stay dead.",
	notSure: "The front sockets are not counted for or against any board.",
	howToFindOut: "Open the case's side and look at the loose cable ends.",
	applies: ({ case: pcCase }) => pcCase.state === "have" && pcCase.part.frontPlugs === undefined,
	lines: [
		{ value: "USB 9-pin", label: "USB 9-pin", explanation: "For slow USB sockets", most: 2 },
		{ value: "USB 19-pin", label: "USB 19-pin", explanation: "For fast flat USB sockets", most: 2 },
		{ value: "USB-C 20-pin", label: "USB-C 20-pin", explanation: "For a small oval socket at the front", most: 2 },
		{ value: "sound", label: "Sound plug", explanation: "For headphones at the front" },
	],
	none: { label: "No such plugs", explanation: "The case has no sockets at its front" },
	sets(facts, values) {
		if (facts.case.state !== "have") return facts;
		const kinds = [...new Set(values)] as Plug[];
		const plugs = kinds.map((plug) => ({ plug, count: values.filter((value) => value === plug).length }));
		return withHave(facts, "case", { ...facts.case, part: { ...facts.case.part, frontPlugs: plugs } });
	},
});
