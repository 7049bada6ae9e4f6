import type { PcCase } from "../../parts/case.ts";
import type { FactsUnder } from "../../parts/fact-path.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

type Plug = NonNullable<PcCase["frontPlugs"]>[number]["plug"];

/** What a plug of the case stands for, as a person sees it at the front. */
const plugWords = {
	"USB 9-pin": "slow front USB (9-pin plug)",
	"USB 19-pin": "fast front USB (19-pin plug)",
	"USB-C 20-pin": "front USB-C (20-pin plug)",
	sound: "front sound",
} as const satisfies Record<Plug, string>;

/** A 19-pin header is for USB 5Gbps (from memory). */
const nineteenPinGbps = 5;

const mayRead = [
	"board.headers.usb2",
	"board.headers.usb5",
	"board.headers.typeC",
	"board.headers.frontAudio",
	"case.hubUsesUsb2",
	"cooler.headersUsed.usb2",
	"addInCards",
	"lights",
] as const;
type Facts = FactsUnder<"case.frontPlugs", (typeof mayRead)[number]>;

/**
 * Each plug at the loose cables of the case wants a header of its kind, or its sockets at the front stay dead. Several
 * other things want a 9-pin USB header too: the case's hub, a liquid cooler's pump, a wireless card, a controller for
 * lights. That headers must match the case is common practice; their pins are from memory.
 */
export const frontPlugs = defineRule({
	id: "fit/front-plugs",
	scope: "board",
	label: "Plugs of the case's front",
	wayOut: "front sockets that stay dead",
	asks: "Does every plug of the case's front find its place on the board?",
	why: "A socket at the front works only if its cable has a place on the board to go to.",
	source: "common-practice",
	severity: "plan-around",
	reads: ["case.frontPlugs"],
	mayRead,
	messages: {
		noPlugs: () => "The case has no plugs for the board.",
		all: () => "Every plug of the case's front finds its place.",
		dead: ({ dead }: { dead: readonly string[] }) =>
			`The board has no place for: ${dead.join(", ")}. ${dead.length === 1 ? "It stays" : "They stay"} dead.`,
		tooFewNinePin: ({ wanted, headers }: { wanted: number; headers: number }) =>
			`${wanted} ${wanted === 1 ? "plug wants" : "plugs want"} a 9-pin USB header; the board has ${headers === 0 ? "none" : headers}.`,
		deadAndFewNinePin: ({ dead, wanted, headers }: { dead: readonly string[]; wanted: number; headers: number }) =>
			`The board has no place for: ${dead.join(", ")}. ${wanted} plugs want a 9-pin USB header, and it has ${headers === 0 ? "none" : headers}.`,
		slower: ({ plug, cableGbps, headerGbps }: { plug: string; cableGbps: number; headerGbps: number }) =>
			`The cable of the ${plug} is made for ${cableGbps} Gb/s; the board's header gives ${headerGbps} Gb/s.`,
		unsure: () => "Whether every plug of the case's front finds its place is not known.",
		need: ({ plugs }: { plugs: readonly string[] }) => `Places for the plugs of your case: ${plugs.join(", ")}.`,
		needNinePin: ({ plugs, wanted }: { plugs: readonly string[]; wanted: number }) =>
			`Places for the plugs of your case: ${plugs.join(", ")}. 9-pin USB headers in all, with your other parts: ${wanted}.`,
	},
	advice: {
		dead: () =>
			"Think whether you will miss it. Never press a plug onto pins that do not match: it can short the board.",
		tooFewNinePin: () =>
			"An internal USB hub makes several 9-pin headers of one; count its price. Fit it with the mains plug out.",
		deadAndFewNinePin: () =>
			"An internal USB hub adds 9-pin headers. Never press a plug onto pins that do not match: it can short the board.",
		slower: () => "It works, only slower. Pay for a faster header only if you copy large files at the front.",
	},
	check(facts): Outcome {
		const plugs = facts["case.frontPlugs"];
		const headers = {
			"USB 9-pin": facts["board.headers.usb2"],
			"USB 19-pin": facts["board.headers.usb5"],
			"USB-C 20-pin": facts["board.headers.typeC"]?.length,
			sound: facts["board.headers.frontAudio"] === undefined ? undefined : Number(facts["board.headers.frontAudio"]),
		} as const satisfies Record<Plug, number | undefined>;
		const wanted = wantedOf(facts);
		if (Object.values(wanted).every((count) => count === 0)) return pass("noPlugs");
		const short = (Object.keys(wanted) as Plug[]).filter((plug) => wanted[plug] > (headers[plug] ?? wanted[plug]));
		const dead = short.filter((plug) => plug !== "USB 9-pin").map((plug) => plugWords[plug]);
		const ninePin = { wanted: wanted["USB 9-pin"], headers: headers["USB 9-pin"] ?? 0 };
		if (short.includes("USB 9-pin"))
			return dead.length > 0
				? planAround("deadAndFewNinePin", { dead, ...ninePin })
				: planAround("tooFewNinePin", ninePin);
		if (dead.length > 0) return planAround("dead", { dead });
		const missing = (Object.keys(wanted) as Plug[])
			.filter((plug) => wanted[plug] > 0 && headers[plug] === undefined)
			.map((plug) => headerPaths[plug]);
		if (missing.length > 0) return cannotTell(missing, "unsure");
		return slowerHeader(plugs, facts["board.headers.typeC"]) ?? pass("all");
	},
	needs(facts) {
		const plugs = facts["case.frontPlugs"];
		if (!plugs || plugs.length === 0) return null;
		const words = plugs.map(({ plug, count }) => (count > 1 ? `${count} x ${plugWords[plug]}` : plugWords[plug]));
		const wanted = wantedOf({ ...facts, "case.frontPlugs": plugs })["USB 9-pin"];
		const own = plugs.filter(({ plug }) => plug === "USB 9-pin").reduce((sum, { count }) => sum + count, 0);
		return wanted > own
			? { messageId: "needNinePin", data: { plugs: words, wanted } }
			: { messageId: "need", data: { plugs: words } };
	},
});

const headerPaths = {
	"USB 9-pin": "board.headers.usb2",
	"USB 19-pin": "board.headers.usb5",
	"USB-C 20-pin": "board.headers.typeC",
	sound: "board.headers.frontAudio",
} as const satisfies Record<Plug, (typeof mayRead)[number]>;

/** Headers wanted of each kind: the case's plugs, and what else goes on a 9-pin USB header. */
function wantedOf(facts: Facts): Readonly<Record<Plug, number>> {
	const plugged = (kind: Plug) =>
		facts["case.frontPlugs"].filter(({ plug }) => plug === kind).reduce((sum, { count }) => sum + count, 0);
	const others = [
		facts["case.hubUsesUsb2"] ? 1 : 0,
		facts["cooler.headersUsed.usb2"] ?? 0,
		facts.addInCards?.filter(({ usesUsb2 }) => usesUsb2).length ?? 0,
		facts.lights?.includes("maker's own") ? 1 : 0,
	];
	return {
		"USB 9-pin": plugged("USB 9-pin") + others.reduce((sum, count) => sum + count, 0),
		"USB 19-pin": plugged("USB 19-pin"),
		"USB-C 20-pin": plugged("USB-C 20-pin"),
		sound: plugged("sound"),
	};
}

/** A cable that could do more than its header; the fastest header is taken for the USB-C plug. */
function slowerHeader(plugs: NonNullable<PcCase["frontPlugs"]>, typeC: Facts["board.headers.typeC"]): Outcome | null {
	const fastestC = Math.max(0, ...(typeC ?? []).flatMap(({ gbps }) => gbps ?? []));
	for (const { plug, gbps } of plugs) {
		const headerGbps = plug === "USB 19-pin" ? nineteenPinGbps : plug === "USB-C 20-pin" ? fastestC : 0;
		if (gbps !== undefined && headerGbps > 0 && gbps > headerGbps)
			return goodToKnow("slower", { plug: plugWords[plug], cableGbps: gbps, headerGbps });
	}
	return null;
}
