import type { FactsUnder } from "../../parts/fact-path.ts";
import type { HeaderWish } from "../../plan/header-wish.ts";
import { fansFed, silentFanHeader, usualFan } from "../../reference/header-budgets.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type MessageData, type Outcome, pass, planAround } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

const mayRead = [
	"cooler",
	"cooler.kind",
	"cooler.fans",
	"cooler.headersUsed.fan",
	"cooler.headersUsed.pump",
	"board.headers.fans",
	"headers.headers",
	"headers.placed",
	"headers.sharing",
	"headers.without",
] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

const setFullSpeed =
	"Set this header to full speed in the firmware (the board's own settings) before the first long work.";

/**
 * The cooler's plugs on the board's fan headers, as the header plan has them. A board looks at the processor's header
 * when it starts, and a pump wants full speed (both common practice, no source). The cooler from the processor's box has
 * one fan. Several fans on one header are held against its amperes, each as a usual fan that takes the most.
 */
export const coolerHeaders = defineRule({
	id: "fit/cooler-headers",
	scope: "board",
	label: "Headers for the cooler",
	wayOut: "another cooler",
	asks: "Does every plug of the cooler find its header on the board?",
	why: "Many boards stop at the start when no fan turns on the processor's header, a row of pins. A pump must run at full speed.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead,
	saysNothing: ["noPlug"],
	messages: {
		noPlug: () => "Your cooler has no plug for a fan header.",
		placed: ({ plugs }: { plugs: readonly string[] }) => `Every plug finds its header: ${plugs.join(", ")}.`,
		nothingLeft: ({ plugs }: { plugs: readonly string[] }) =>
			`The board has no fan header left for: ${plugs.join(", ")}.`,
		noProcessorHeader: ({ plug, header }: OnHeader) =>
			`The board has no header for the processor's fan; ${header} is left for the ${plug}.`,
		tooMuchCurrent: ({ fans, header, takeA, amps }: Overload) =>
			`${fans} fans of the cooler on ${header} may take ${takeA} A together; count on ${amps} A from it.`,
		pumpElsewhere: ({ plug, header }: OnHeader) => `The ${plug} goes on ${header}, which is not made for a pump.`,
		nothingTurns: ({ header }: { header: string }) =>
			`No plug of your cooler goes on ${header}, where the board looks for a fan at the start.`,
		shared: ({ fans, header, amps }: { fans: number; header: string; amps: number }) =>
			`${fans} fans of the cooler share ${header}; count on ${amps} A from it.`,
		unsure: () => "The board has no pump header, and whether your cooler has a pump is not known.",
		need: () => "A pump header, beside the one for the processor's fan.",
	},
	advice: {
		nothingLeft: () =>
			"Never start with a plug of the cooler left over: the processor gets too hot within seconds. Take a board with more fan headers.",
		noProcessorHeader: ({ pumpHeader }: OnHeader & { pumpHeader?: string }) =>
			`Set this header in the firmware (the board's own settings) so that it follows the processor's heat.${pumpHeader === undefined ? "" : ` Set ${pumpHeader} to full speed for the pump.`}`,
		tooMuchCurrent: ({ header, amps, pumpHeader }: Overload) =>
			`Add up the amperes on the fans' labels. Past ${amps} A take a fan hub fed by the supply on its own cable, with its lead on ${header}. Or put some with a splitter on another header, if one is free.${pumpHeader === undefined ? "" : ` Set ${pumpHeader} to full speed for the pump.`}`,
		pumpElsewhere: () => setFullSpeed,
		nothingTurns: () =>
			"Look into the cooler's manual: many pumps may go there, at full speed. Switch the warning for this header off only once you have seen the pump and all fans turn.",
		shared: ({ amps }: { amps: number }) =>
			`Use the splitter from the cooler's box. Add up the amperes on the fans' labels: past ${amps} A one wants another header.`,
	},
	check(facts): Outcome {
		if (!facts["board.headers.fans"]) return cannotTell(["board.headers.fans"]);
		const left = (facts["headers.without"] ?? []).filter(isCoolers);
		if (left.length > 0) return planAround("nothingLeft", { plugs: left.map(({ name }) => name) });
		const placed = (facts["headers.placed"] ?? []).filter(({ wish }) => isCoolers(wish));
		const sharing = (facts["headers.sharing"] ?? []).filter(({ wish }) => isCoolers(wish));
		const headers = (facts["headers.headers"] ?? []).filter(({ kind }) => kind === "fan");
		const ofProcessor = headers.filter(({ use }) => use === "processor");
		const pump = placed.find(({ wish, remark }) => wish.kind === "pump" && remark === "full speed");
		const fan = placed.find(({ wish }) => wish.kind === "cooler fan");
		if (fan && ofProcessor.length === 0)
			return planAround("noProcessorHeader", { ...onHeader(fan), ...(pump ? { pumpHeader: pump.header } : {}) });
		const overload = overloadOf(facts, [...placed, ...sharing]);
		if (overload) return planAround("tooMuchCurrent", { ...overload, ...(pump ? { pumpHeader: pump.header } : {}) });
		if (pump) return goodToKnow("pumpElsewhere", onHeader(pump));
		const [watched] = ofProcessor;
		if (watched && !placed.some(({ header }) => ofProcessor.some(({ name }) => name === header)))
			return goodToKnow("nothingTurns", { header: watched.name });
		const mayHavePump =
			facts.cooler === "have"
				? facts["cooler.kind"] === undefined && facts["cooler.headersUsed.pump"] === undefined
				: facts.cooler !== "open" && facts.cooler !== "none";
		if (mayHavePump && !headers.some(({ use }) => use === "pump"))
			return cannotTell([facts.cooler === "have" ? "cooler.kind" : "cooler"], "unsure");
		const [shared] = sharing;
		if (shared) {
			const onIt = [...placed, ...sharing].filter(({ header }) => header === shared.header);
			const amps = shared.amps ?? silentFanHeader.amps;
			return goodToKnow("shared", { fans: onIt.length, header: shared.header, amps });
		}
		if (placed.length === 0) return pass("noPlug");
		return pass("placed", { plugs: placed.map(({ wish, header }) => `${wish.name} on ${header}`) });
	},
	needs({ "cooler.kind": kind, "cooler.headersUsed.pump": pumps }) {
		return (pumps ?? (kind === "liquid" ? 1 : 0)) > 0 ? { messageId: "need", data: {} } : null;
	},
});

interface OnHeader {
	readonly plug: string;
	readonly header: string;
}

/** Fans on a header that may ask it for more than it gives. */
interface Overload extends MessageData {
	readonly fans: number;
	readonly header: string;
	/** What usual fans take at most, and what the header gives, in A. */
	readonly takeA: number;
	readonly amps: number;
	/** A header that drives the pump and is not made for one. */
	readonly pumpHeader?: string;
}

/** The first header on which more of the cooler's fans hang than it feeds; null where their plugs are not counted. */
function overloadOf(
	facts: Facts,
	plugs: readonly { readonly wish: HeaderWish; readonly header: string }[],
): Overload | null {
	const { "cooler.fans": allFans, "cooler.headersUsed.fan": fanPlugs } = facts;
	if (fanPlugs === undefined || fanPlugs === 0) return null;
	const fans = Math.max(allFans ?? 0, fanPlugs);
	const onPlug = Math.ceil(fans / fanPlugs);
	const overloads = (facts["headers.headers"] ?? []).flatMap(({ name, kind, amps }): Overload[] => {
		const count = plugs.filter(({ wish, header }) => wish.kind === "cooler fan" && header === name).length;
		const fansOnIt = Math.min(fans, count * onPlug);
		const given = amps ?? silentFanHeader.amps;
		return kind !== "fan" || fansOnIt < 2 || fansOnIt <= fansFed(given).usually
			? []
			: [{ fans: fansOnIt, header: name, takeA: roundToTenth(fansOnIt * usualFan.mostAmps), amps: given }];
	});
	return overloads[0] ?? null;
}

function isCoolers({ kind }: HeaderWish): boolean {
	return kind === "pump" || kind === "cooler fan";
}

function onHeader({ wish, header }: { readonly wish: HeaderWish; readonly header: string }) {
	return { plug: wish.name, header };
}
