import type { ProcessorPlug } from "../../parts/vocabulary.ts";
import { partQuestion, withHave } from "../part-question.ts";

const kindsOfSupply: readonly { readonly label: string; readonly processorPlugs: readonly ProcessorPlug[] }[] = [
	{ label: "one 4-pin processor plug", processorPlugs: ["4-pin"] },
	{ label: "one 8-pin processor plug", processorPlugs: ["8-pin"] },
	{ label: "two 8-pin processor plugs", processorPlugs: ["8-pin", "8-pin"] },
];

export const supply = partQuestion({
	id: "fit/supply",
	tier: "fit",
	short: true,
	partKind: "supply",
	ask: "Which power supply will you use?",
	hint: "What you own or have picked; look for the plugs marked CPU at its cables",
	label: "Power supply",
	why: "The processor is fed by a plug of its own. Without it a board does not start.",
	whereToFind:
		'At the loose ends of its cables: a plug marked CPU, "4+4" or 8-pin. Never open a supply. Use only the cables that came with that very unit.',
	recipe: [
		"The label on its side says the watts in all, and the amperes at 12 V.",
		"Plugs marked CPU feed the processor: 4 or 8 holes, or 4+4 that can be split.",
		"Plugs marked PCIE or VGA feed a graphics card. They look alike, and must not be used for the processor.",
		"Pull the mains plug first. Never open a supply: it stays charged.",
	],
	changes: "Boards whose processor plug your supply cannot feed are taken out.",
	notSure: "Each kind of supply is kept in mind: a board then fits, does not fit, or depends on your supply.",
	howToFindOut: "Count the plugs marked CPU on the cables, or read the supply maker's page.",
	specials: {
		open: { label: "I will buy one to suit", explanation: "No board is taken out for its plugs" },
	},
	possibilities: () =>
		kindsOfSupply.map(({ label, processorPlugs }) => ({
			label: `a supply with ${label}`,
			sets: (facts) =>
				withHave(facts, "supply", {
					state: "have",
					ownership: "planned",
					part: { id: "a-supply", name: `a supply with ${label}`, processorPlugs: [...processorPlugs] },
				}),
		})),
});
