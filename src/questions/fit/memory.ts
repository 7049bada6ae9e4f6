import type { MemoryType } from "../../parts/vocabulary.ts";
import { partQuestion, withHave } from "../part-question.ts";

/** Types that boards sold today, or handed down, take. */
const typesAbout: readonly MemoryType[] = ["DDR3", "DDR4", "DDR5"];

export const memory = partQuestion({
	id: "fit/memory",
	tier: "fit",
	short: true,
	partKind: "memory",
	ask: "Which memory will you use?",
	hint: "What you own or have picked; the label on the module says DDR4 or DDR5",
	label: "Memory",
	why: "Memory of one type does not go into slots for another: the notches sit in different places.",
	whereToFind: "On the label of the module, or on the shop's page: DDR4 or DDR5, how many modules, how many GB each.",
	recipe: [
		"The label says DDR4 or PC4, DDR5 or PC5. A number of four digits behind it is the speed; divide one of five digits by 8.",
		"Two modules of 16 GB read as 2 x 16 GB.",
		"A module as long as a pen is for desktops. One half as long (SO-DIMM) is for laptops, and does not go in.",
		"Touch bare metal of the case first, and hold modules by the edge.",
	],
	changes: "Boards for another type of memory, and boards with too few slots for it, are taken out.",
	notSure: "Each type is kept in mind: a board then fits, does not fit, or depends on your memory.",
	howToFindOut: "Read the label on the module.",
	specials: {
		open: { label: "I will buy what the board needs", explanation: "No board is taken out for its memory" },
	},
	possibilities: () =>
		typesAbout.map((type) => ({
			label: `${type} memory`,
			sets: (facts) =>
				withHave(facts, "memory", {
					state: "have",
					ownership: "planned",
					// One module is the least there can be: what does not take that takes no memory at all.
					part: { id: "some-memory", name: `${type} memory`, type, modules: 1 },
				}),
		})),
});
