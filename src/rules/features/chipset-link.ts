import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass } from "../outcome.ts";
import { roundToHundredth } from "../round-to-hundredth.ts";

/** What any chipset's link of today carries, in GB/s: two lanes of generation 3 (common practice, no source). */
const alwaysCarriedGbytesPerS = 1.97;

/** What hangs on the chipset against the link that carries it to the processor. Rates are those of PCI Express. */
export const chipsetLink = defineRule({
	id: "features/chipset-link",
	scope: "board",
	label: "The chipset's link",
	wayOut: "things on the chipset that wait for each other",
	asks: "Can everything that hangs on the chipset work at once?",
	why: "The chipset is the board's second large chip. Drives and cards on it share one link to the processor, however many sockets there are.",
	source: "wiki-pci-express",
	severity: "good-to-know",
	reads: [],
	mayRead: ["plan.uplink"],
	messages: {
		notAsked: () => "Nothing you named is known to hang on the chipset.",
		unrated: ({ things }: { things: readonly string[] }) =>
			`The chipset's link is not judged, since it is not known how much data these move: ${things.join(", ")}.`,
		enough: ({ wanted }: { wanted: number }) =>
			`What you hang on the chipset moves ${wanted} GB/s at most, and its link carries it.`,
		more: ({ wanted, carries }: { wanted: number; carries: number }) =>
			`What you hang on the chipset could move ${wanted} GB/s at once; its link carries ${carries} GB/s.`,
		unsure: ({ wanted }: { wanted: number }) =>
			`What you hang on the chipset could move ${wanted} GB/s at once; what its link carries is not known.`,
	},
	advice: {
		more: ({ things }: { things: number }) =>
			things === 1
				? "It works, only slower than it could elsewhere."
				: "That counts only when all of it works at the same time, such as copying between two fast drives.",
	},
	check(facts): Outcome {
		const uplink = facts["plan.uplink"];
		if (!uplink || uplink.devices.length === 0) return pass("notAsked");
		const wanted = roundToHundredth(uplink.wantedGbytesPerS);
		const unrated = uplink.unrated.map(({ device }) => device.name);
		const carries = uplink.carriesGbytesPerS;
		const isCarried = uplink.wantedGbytesPerS <= (carries ?? alwaysCarriedGbytesPerS);
		if (isCarried) return unrated.length > 0 ? pass("unrated", { things: unrated }) : pass("enough", { wanted });
		return carries === null
			? cannotTell(["board.chipsetUplink"], "unsure", { wanted })
			: goodToKnow("more", { wanted, carries: roundToHundredth(carries), things: uplink.devices.length });
	},
});
