import type { LightPlug } from "../../parts/wants.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass } from "../outcome.ts";

/** What the cooler's plugs for lights look like, by their voltage. */
const plugWords = {
	"5 V three-pin": "5 V, three holes",
	"12 V four-pin": "12 V, four holes",
} as const satisfies Partial<Record<LightPlug, string>>;

/** Lit fans and coolers bring a plug for their lights beside the one that turns them; the two are easily mixed up. */
export const litFans = defineRule({
	id: "build/lit-fans",
	scope: "build",
	label: "Plugs of lit fans",
	wayOut: "fans without lights",
	asks: "How many plugs do lit fans and a lit cooler bring?",
	why: "A lit fan has two plugs: one turns the fan, the other feeds its lights. Each wants a place of its own on the board.",
	source: "common-practice",
	severity: "good-to-know",
	reads: [],
	mayRead: [
		"cooler",
		"cooler.name",
		"cooler.headersUsed.lights5V",
		"cooler.headersUsed.lights12V",
		"caseFans",
		"lights",
	],
	messages: {
		notLit: () => "Nobody has named a lit fan or a lit cooler.",
		cooler: ({ cooler, plugs }: CoolerLights) =>
			`Beside its other plugs the ${cooler} brings ${plugs.join(" and ")} for its lights.`,
		caseFans: ({ fans }: Fans) => `${fansWords(fans)} Your lights count as one plug of each kind here.`,
		both: ({ cooler, plugs, fans }: CoolerLights & Fans) =>
			`Beside its other plugs the ${cooler} brings ${plugs.join(" and ")} for its lights. ${fansWords(fans)}`,
		unsure: ({ cooler }: { cooler: string }) => `Whether the ${cooler} has a plug for lights is not known.`,
	},
	advice: {
		cooler: () => coolerAdvice,
		caseFans: () => fansAdvice,
		both: () => `${coolerAdvice} ${fansAdvice}`,
	},
	check(facts): Outcome {
		const { lights, cooler: state } = facts;
		const cooler = facts["cooler.name"] ?? "cooler";
		const [five, twelve] = [facts["cooler.headersUsed.lights5V"], facts["cooler.headersUsed.lights12V"]];
		const plugs = [...plugsOf(five, "5 V three-pin"), ...plugsOf(twelve, "12 V four-pin")];
		const hasLights = lights !== undefined && lights.length > 0;
		const fans = hasLights ? (facts.caseFans ?? 0) : 0;
		if (plugs.length > 0)
			return fans > 0 ? goodToKnow("both", { cooler, plugs, fans }) : goodToKnow("cooler", { cooler, plugs });
		if (fans > 0) return goodToKnow("caseFans", { fans });
		// Who has no eye for lights misses nothing where the cooler's stay dark.
		const missing = [
			...(five === undefined ? ["cooler.headersUsed.lights5V"] : []),
			...(twelve === undefined ? ["cooler.headersUsed.lights12V"] : []),
		];
		return hasLights && state === "have" && missing.length > 0
			? cannotTell(missing, "unsure", { cooler })
			: pass("notLit");
	},
});

const coolerAdvice =
	"Lights left unplugged stay dark and do no harm. Never plug 5 V lights (three holes) into a 12 V header (four pins), nor the other way round: it destroys them.";
const fansAdvice =
	"Count the light plugs of your fans. Many can be chained: add up their amperes, and stay below what the board's manual gives for that header.";

interface CoolerLights {
	readonly cooler: string;
	readonly plugs: readonly string[];
}

interface Fans {
	readonly fans: number;
}

function fansWords(fans: number): string {
	return fans === 1
		? "If your case fan is lit, it has two plugs: one turns it, one feeds its lights."
		: `If your ${fans} case fans are lit, each has two plugs: one turns it, one feeds its lights.`;
}

function plugsOf(count: number | undefined, plug: keyof typeof plugWords): readonly string[] {
	return count ? [`${count} ${count === 1 ? "plug" : "plugs"} (${plugWords[plug]})`] : [];
}
