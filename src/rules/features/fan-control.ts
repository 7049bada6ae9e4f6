import type { FactsUnder } from "../../parts/fact-path.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass } from "../outcome.ts";

const mayRead = ["caseFans", "board.headers.fans", "headers.headers", "headers.placed", "headers.free"] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;
type Control = NonNullable<Facts["board.headers.fans"]>[number]["control"];

/**
 * How the headers that case fans get in the plan slow them. A 3-pin fan is slowed by fewer volts only; a 4-pin fan hears
 * a signal on its fourth pin (PWM), and is made for 12 V, give or take 5 % (4-Wire PWM Controlled Fans Specification,
 * sec. 2). That it may stop on fewer volts is common practice.
 */
export const fanControl = defineRule({
	id: "features/fan-control",
	scope: "board",
	label: "Slowing the case fans",
	wayOut: "case fans with another plug",
	asks: "Can the board slow your case fans, whatever their plug?",
	why: "A fan that is not slowed is loud all day. Fans with 3 holes in their plug are slowed in another way than those with 4.",
	source: "common-practice",
	severity: "good-to-know",
	reads: [],
	mayRead,
	saysNothing: ["noHeader", "any"],
	messages: {
		notAsked: () => "You have named no case fans.",
		noHeader: () => "No case fan goes on a header of this board.",
		any: () => "The headers for your case fans slow fans of either plug.",
		none: ({ headers }: Named) => `Fans run at full speed on: ${headers.join(", ")}. The board cannot slow them there.`,
		fourPinOnly: ({ headers }: Named) =>
			`A case fan with a 3-pin plug runs at full speed on: ${headers.join(", ")}. Only 4-pin fans are slowed there.`,
		voltageOnly: ({ headers }: Named) =>
			`Fans are slowed by fewer volts on: ${headers.join(", ")}. A 4-pin fan is made for 12 V and may stop there.`,
		unsure: ({ headers }: Named) => `How the board slows fans is not known for: ${headers.join(", ")}.`,
	},
	advice: {
		none: ({ better }: Better) => `Use quiet fans there.${betterWords(better)}`,
		fourPinOnly: ({ better }: Better) =>
			`Count the holes in the plugs of your fans; those with 4 are slowed.${betterWords(better)}`,
		voltageOnly: ({ better }: Better) =>
			`Fans with a 3-pin plug do well there. Do not set a 4-pin fan too slow.${betterWords(better)}`,
	},
	check(facts): Outcome {
		if (!facts.caseFans) return pass("notAsked");
		if (!facts["board.headers.fans"]) return cannotTell(["board.headers.fans"]);
		const used = (facts["headers.placed"] ?? [])
			.filter(({ wish }) => wish.kind === "case fan" && !wish.isLater)
			.map(({ header }) => header);
		if (used.length === 0) return pass("noHeader");
		const ways = waysByHeader(facts);
		const better = (facts["headers.free"] ?? []).filter((name) => ways.get(name)?.use === "case" && isAny(ways, name));
		const usedWhere = (is: (control: NonNullable<Control>) => boolean) =>
			used.filter((name) => {
				const control = ways.get(name)?.control;
				return control !== undefined && is(control);
			});
		const none = usedWhere((control) => control.length === 0);
		if (none.length > 0) return goodToKnow("none", { headers: none, better });
		const fourPinOnly = usedWhere((control) => !control.includes("3-pin voltage"));
		if (fourPinOnly.length > 0) return goodToKnow("fourPinOnly", { headers: fourPinOnly, better });
		const voltageOnly = usedWhere((control) => !control.includes("4-pin PWM"));
		if (voltageOnly.length > 0) return goodToKnow("voltageOnly", { headers: voltageOnly, better });
		const unsure = used.filter((name) => ways.get(name)?.control === undefined);
		return unsure.length > 0 ? cannotTell(["board.headers.fans"], "unsure", { headers: unsure }) : pass("any");
	},
});

interface Named {
	readonly headers: readonly string[];
}

/** Headers that are free and slow any fan. */
interface Better {
	readonly better: readonly string[];
}

function betterWords(better: readonly string[]): string {
	return better.length === 0 ? "" : ` These are free and slow any fan: ${better.join(", ")}.`;
}

type Ways = ReadonlyMap<string, NonNullable<Facts["board.headers.fans"]>[number]>;

/** The plan tells headers of one name apart, and keeps the order of the board's facts. */
function waysByHeader(facts: Facts): Ways {
	const names = (facts["headers.headers"] ?? []).filter(({ kind }) => kind === "fan").map(({ name }) => name);
	return new Map((facts["board.headers.fans"] ?? []).map((header, index) => [names[index] ?? header.name, header]));
}

function isAny(ways: Ways, name: string): boolean {
	const control = ways.get(name)?.control;
	return control?.includes("4-pin PWM") === true && control.includes("3-pin voltage");
}
