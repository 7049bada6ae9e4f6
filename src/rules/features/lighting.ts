import type { FactsUnder } from "../../parts/fact-path.ts";
import type { LightPlug } from "../../parts/wants.ts";
import type { HeaderWish } from "../../plan/header-wish.ts";
import { lightsAtFullWhite, whiteLightAmps } from "../../reference/header-budgets.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type MessageData, type Outcome, pass, planAround } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

const never =
	"Never plug 5 V lights (three pins) into a 12 V header (four pins), nor the other way round: it destroys them.";

type BoardPlug = Exclude<LightPlug, "maker's own">;
const kindOf = { "5 V three-pin": "5 V lights", "12 V four-pin": "12 V lights" } as const satisfies Record<
	BoardPlug,
	string
>;

const boardPlugs = Object.keys(kindOf) as readonly BoardPlug[];

const mayRead = [
	"lights",
	"headers.wishes",
	"headers.headers",
	"headers.placed",
	"headers.without",
	"headers.sharing",
	"headers.unknown",
] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

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
	mayRead,
	messages: {
		notAsked: () => "You have named no lights.",
		has: ({ plugs }: OnHeaders) => `It has headers for your lights (${plugs.join(", ")}).`,
		lacks: ({ plugs }: OnHeaders) => `It has no lighting header for: ${plugs.join(", ")}.`,
		shared: ({ plugs }: OnHeaders) =>
			`It has fewer lighting headers than you have lights: some of ${plugs.join(", ")} must share.`,
		ownController: () =>
			"Lights with their maker's own plug need that maker's controller, which takes a 9-pin USB header.",
		need: ({ plugs }: OnHeaders) => `Lighting headers: ${plugs.join(", ")}. 5 V and 12 V do not mix.`,
	},
	advice: {
		has: (header: OnHeaders) => [never, ...feedsWords(header)].join(" "),
		lacks: () =>
			`${never} A controller for the lights takes the place of a header, fed by the supply on its own cable: count its price.`,
		shared: (header: OnHeaders) => [never, sharedWords(header), ...feedsWords(header)].join(" "),
		ownController: () => "Count the 9-pin USB headers: the case's front wants one too.",
	},
	check(facts): Outcome {
		const lights = facts.lights ?? [];
		// A cooler's lights want a header too, whether or not others were named.
		const plugs = boardPlugs.filter((plug) => lights.includes(plug) || isAmong(plug, facts["headers.wishes"]));
		if (lights.length + plugs.length === 0) return pass("notAsked");
		if (plugs.length === 0) return goodToKnow("ownController");
		const wishesIn = (some: readonly { readonly wish: HeaderWish }[] = []) => some.map(({ wish }) => wish);
		if (plugs.some((plug) => isAmong(plug, wishesIn(facts["headers.unknown"]))))
			return cannotTell(["board.headers.lights"]);
		const lacking = plugs.filter((plug) => isAmong(plug, facts["headers.without"]));
		if (lacking.length > 0) return planAround("lacks", { plugs: lacking });
		const sharing = plugs.filter((plug) => isAmong(plug, wishesIn(facts["headers.sharing"])));
		if (sharing.length > 0) return goodToKnow("shared", { plugs: sharing, ...feeds(facts, sharing) });
		return lights.includes("maker's own")
			? goodToKnow("ownController")
			: pass("has", { plugs, ...feeds(facts, plugs) });
	},
	needs({ lights = [] }) {
		const plugs = boardPlugs.filter((plug) => lights.includes(plug));
		return plugs.length === 0 ? null : { messageId: "need", data: { plugs } };
	},
});

function isAmong(plug: BoardPlug, wishes: readonly HeaderWish[] = []): boolean {
	return wishes.some(({ kind }) => kind === kindOf[plug]);
}

/** Of each voltage the weakest header that the lights go on, as far as the board's facts say what it feeds. */
interface OnHeaders extends MessageData {
	readonly plugs: readonly string[];
	readonly header5V?: string;
	readonly amps5V?: number;
	readonly mostLights5V?: number;
	readonly header12V?: string;
	readonly amps12V?: number;
}

type Header = NonNullable<Facts["headers.headers"]>[number];

function feeds(facts: Facts, plugs: readonly BoardPlug[]): Omit<OnHeaders, "plugs"> {
	const on5V = plugs.includes("5 V three-pin") ? weakest(usedHeaders(facts, "5 V three-pin")) : undefined;
	const on12V = plugs.includes("12 V four-pin") ? weakest(usedHeaders(facts, "12 V four-pin")) : undefined;
	return {
		...(on5V ? { header5V: on5V.name } : {}),
		...(on5V && on5V.amps !== null ? { amps5V: on5V.amps } : {}),
		...(on5V && on5V.mostLights !== null ? { mostLights5V: on5V.mostLights } : {}),
		...(on12V && on12V.amps !== null ? { header12V: on12V.name, amps12V: on12V.amps } : {}),
	};
}

function usedHeaders(facts: Facts, plug: BoardPlug): readonly Header[] {
	const names = [...(facts["headers.placed"] ?? []), ...(facts["headers.sharing"] ?? [])]
		.filter(({ wish }) => wish.kind === kindOf[plug])
		.map(({ header }) => header);
	return (facts["headers.headers"] ?? []).filter(({ name }) => names.includes(name));
}

/** The one of fewest amperes, or of fewest lights where no amperes are given; none where neither is. */
function weakest(headers: readonly Header[]): Header | undefined {
	const given = headers.filter(({ amps, mostLights }) => amps !== null || mostLights !== null);
	const least = (value: number | null) => value ?? Number.POSITIVE_INFINITY;
	return given.reduce<Header | undefined>((before, header) => {
		if (!before) return header;
		const [one, other] = [least(header.amps), least(before.amps)];
		const isWeaker = one === other ? least(header.mostLights) < least(before.mostLights) : one < other;
		return isWeaker ? header : before;
	}, undefined);
}

const sharedWords = ({ header5V, header12V }: OnHeaders) =>
	header5V || header12V
		? "A splitter shares one header: all that hangs on it counts together."
		: "A splitter shares one header: the manual says how many lights it feeds.";

/** How many lights the headers feed, as sentences. A count in a manual holds at full white only where the amperes do. */
function feedsWords({ header5V, amps5V, mostLights5V, header12V, amps12V }: OnHeaders): readonly string[] {
	return [
		...(header5V ? words5V(header5V, amps5V, mostLights5V) : []),
		...(amps12V === undefined
			? []
			: [`${header12V} gives ${amps12V} A at 12 V: that is ${roundToTenth(amps12V * 12)} W of lights.`]),
	];
}

function words5V(header: string, amps: number | undefined, mostLights: number | undefined): readonly string[] {
	if (amps === undefined)
		return mostLights === undefined
			? []
			: [
					`The manual allows ${mostLights} lights on ${header}. At full white they would take ${roundToTenth(whiteLightAmps(mostLights))} A: keep them dimmed, unless it gives that much.`,
				];
	const white = lightsAtFullWhite(amps);
	if (mostLights !== undefined && mostLights <= white)
		return [`The manual allows ${mostLights} lights on ${header}, at full white too.`];
	return [
		`${header} gives ${amps} A, enough for ${white} lights at full white.`,
		...(mostLights === undefined ? [] : [`The ${mostLights} lights of the manual hold only for dimmed ones.`]),
	];
}
