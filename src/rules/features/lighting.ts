import type { LightPlug } from "../../parts/wants.ts";
import type { HeaderWish } from "../../plan/header-wish.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

const never =
	"Never plug 5 V lights (three pins) into a 12 V header (four pins), nor the other way round: it destroys them.";

type BoardPlug = Exclude<LightPlug, "maker's own">;
const kindOf = { "5 V three-pin": "5 V lights", "12 V four-pin": "12 V lights" } as const satisfies Record<
	BoardPlug,
	string
>;

/** Lights by their plug against the board's lighting headers; what finds none gets a controller of its own. */
export const lighting = defineRule({
	id: "features/lighting",
	scope: "board",
	label: "Headers for lights",
	wayOut: "a controller for the lights",
	asks: "Does the board have headers of the right voltage for your lights?",
	why: "Lights of 5 V and of 12 V need different headers, and the wrong one destroys them.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead: ["lights", "headers.without", "headers.sharing", "headers.unknown"],
	messages: {
		notAsked: () => "You have named no lights.",
		has: ({ plugs }: { plugs: readonly string[] }) => `It has headers for your lights (${plugs.join(", ")}).`,
		lacks: ({ plugs }: { plugs: readonly string[] }) => `It has no lighting header for: ${plugs.join(", ")}.`,
		shared: ({ plugs }: { plugs: readonly string[] }) =>
			`It has fewer lighting headers than you have lights: some of ${plugs.join(", ")} must share.`,
		ownController: () =>
			"Lights with their maker's own plug need that maker's controller, which takes a 9-pin USB header.",
		need: ({ plugs }: { plugs: readonly string[] }) =>
			`Lighting headers: ${plugs.join(", ")}. 5 V and 12 V do not mix.`,
	},
	advice: {
		has: () => never,
		lacks: () => `${never} A controller for them does it, fed by the supply on its own cable: count its price.`,
		shared: () => `${never} A splitter shares one header: the manual says how many lights it feeds.`,
		ownController: () => "Count the 9-pin USB headers: the case's front wants one too.",
	},
	check(facts): Outcome {
		const lights = facts.lights ?? [];
		if (lights.length === 0) return pass("notAsked");
		const plugs = boardPlugsOf(lights);
		if (plugs.length === 0) return goodToKnow("ownController");
		const isAmong = (plug: BoardPlug, wishes: readonly HeaderWish[] = []) =>
			wishes.some(({ kind }) => kind === kindOf[plug]);
		const wishesIn = (some: readonly { readonly wish: HeaderWish }[] = []) => some.map(({ wish }) => wish);
		if (plugs.some((plug) => isAmong(plug, wishesIn(facts["headers.unknown"]))))
			return cannotTell(["board.headers.lights"]);
		const lacking = plugs.filter((plug) => isAmong(plug, facts["headers.without"]));
		if (lacking.length > 0) return planAround("lacks", { plugs: lacking });
		const sharing = plugs.filter((plug) => isAmong(plug, wishesIn(facts["headers.sharing"])));
		if (sharing.length > 0) return goodToKnow("shared", { plugs: sharing });
		return lights.includes("maker's own") ? goodToKnow("ownController") : pass("has", { plugs });
	},
	needs({ lights = [] }) {
		const plugs = boardPlugsOf(lights);
		return plugs.length === 0 ? null : { messageId: "need", data: { plugs } };
	},
});

function boardPlugsOf(lights: readonly LightPlug[]): readonly BoardPlug[] {
	return [...new Set(lights)].filter((plug) => plug !== "maker's own");
}
