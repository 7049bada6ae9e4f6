import type { FactsUnder } from "../../parts/fact-path.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

/** What a header is good for where the manual is silent. Common practice, no source. */
const ampsWhereSilent = 1;

const mayRead = [
	"caseFans",
	"laterThings",
	"headers.headers",
	"headers.placed",
	"headers.free",
	"headers.unknown",
] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

/**
 * Fans of the case against the headers that the cooler leaves over in the plan. A pump header left over drives a fan as
 * well; one of the processor's own that is left over is not counted: it follows the cooler.
 */
export const caseFans = defineRule({
	id: "features/case-fans",
	scope: "board",
	label: "Headers for case fans",
	wayOut: "a splitter or a hub for the fans",
	asks: "Is there a fan header for every fan of your case?",
	why: "A fan on a header of its own can be slowed by the board. Two on one header share what it can carry.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead,
	messages: {
		notAsked: () => "You have named no case fans.",
		enough: ({ fans, headers }: Counts) => `${fansWant(fans)}; ${headersWords(headers)} for the case.`,
		noReserve: ({ fans, headers, later }: Counts & { later: number }) =>
			`${fansWant(fans)}; ${headersWords(headers)} for the case. ${later === 1 ? "One more fan" : `${later} more fans`} later would want a splitter.`,
		splitter: ({ fans, headers }: Counts & { amps: number }) =>
			`${fansWant(fans)}. Only ${headersWords(headers)}, so some must share.`,
		hub: ({ fans }: { fans: number }) => `${fansWant(fans)}. No header is left for them.`,
		need: ({ fans, later }: { fans: number; later: number }) =>
			`${fans + later} ${fans + later === 1 ? "header" : "headers"} for case fans${later === 0 ? "" : `, ${later} of them for later`}.`,
	},
	advice: {
		noReserve: ({ amps }: { amps: number }) =>
			`A splitter puts two fans on one header. Add up the amperes on their labels: at most ${amps} A a header.`,
		splitter: ({ amps }: { amps: number }) =>
			`A splitter puts several fans on one header. Add up the amperes on their labels: at most ${amps} A a header. Past that take a hub fed by the supply, on that supply's own cable.`,
		hub: () => "Take a fan hub fed by the supply, on that supply's own cable. Count its price.",
	},
	check(facts): Outcome {
		const { fans, later } = wantedOf(facts);
		if (fans + later === 0) return pass("notAsked");
		const all = facts["headers.headers"];
		const isUnknown = facts["headers.unknown"]?.some(({ fact }) => fact === "board.headers.fans");
		if (!all || isUnknown) return cannotTell(["board.headers.fans"]);
		const headers = headersLeft(facts, all);
		if (headers >= fans + later) return pass("enough", { fans, headers });
		const forCase = all.filter(({ use }) => use === "case");
		const amps = Math.min(
			...forCase.map((header) => header.amps ?? ampsWhereSilent),
			...(forCase[0] ? [] : [ampsWhereSilent]),
		);
		if (headers >= fans) return goodToKnow("noReserve", { fans, headers, later, amps });
		return headers > 0 ? planAround("splitter", { fans, headers, amps }) : planAround("hub", { fans });
	},
	needs(facts) {
		const { fans, later } = wantedOf(facts);
		return fans + later === 0 ? null : { messageId: "need", data: { fans, later } };
	},
});

interface Counts {
	readonly fans: number;
	readonly headers: number;
}

function fansWant(fans: number): string {
	if (fans === 0) return "No case fan wants a header now";
	return fans === 1 ? "One case fan wants a header" : `${fans} case fans want a header each`;
}

function headersWords(headers: number): string {
	return headers === 1 ? "1 header is left" : `${headers} headers are left`;
}

function wantedOf({ caseFans: fans, laterThings }: Facts): { readonly fans: number; readonly later: number } {
	return { fans: fans ?? 0, later: (laterThings ?? []).filter((thing) => thing === "fan").length };
}

/** Headers that case fans have or can have. */
function headersLeft(facts: Facts, all: NonNullable<Facts["headers.headers"]>): number {
	const free = all.filter(
		({ name, use }) => use !== null && use !== "processor" && facts["headers.free"]?.includes(name),
	);
	const taken = facts["headers.placed"]?.filter(({ wish }) => wish.kind === "case fan") ?? [];
	return free.length + taken.length;
}
