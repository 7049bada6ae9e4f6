import type { Board } from "../../parts/board.ts";
import type { FactsUnder } from "../../parts/fact-path.ts";
import { wideAdapterPlugs } from "../../reference/graphics-plug-budget.ts";
import { isM2Drive, isSataDrive } from "../../reference/m2-fit.ts";
import { adapterPlugs } from "../adapter-plugs.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

type ExtraPlug = NonNullable<NonNullable<Board["power"]>["extraPlugs"]>[number];

const mayRead = [
	"board.power.extraPlugs",
	"supply",
	"supply.graphics8Pin",
	"supply.native12V2x6",
	"supply.sataPlugs",
	"supply.drivePlugs",
	"graphicsCard",
	"graphicsCard.powerPlugs",
	"graphicsCard.watts",
	"addInCards",
	"drives",
	"olderSataDrives",
	"oldThings",
	"case.frontPlugs",
] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

/**
 * Power plugs of the board beside the main one and the processor's, against what the card and the drives leave over of
 * the supply's. A board starts without them; what they feed works less, or not at all (common practice, no source).
 */
export const extraPower = defineRule({
	id: "fit/extra-power",
	scope: "board",
	label: "Extra power plugs",
	wayOut: "another power supply",
	asks: "Does your supply have a plug left for each extra power plug of the board?",
	why: "Some boards take one more cable of the supply, such as for fast charging at the front, or for the card slots.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead,
	saysNothing: ["none", "notNamed"],
	messages: {
		none: () => "The board has no extra power plug.",
		notNamed: () => "No extra power plug is named on the board's page.",
		notNeeded: ({ plugs }: Named) => `Nothing in your build needs: ${plugs.join(", ")}. The computer runs without.`,
		noSupply: ({ plugs }: Named) => `There is no supply yet. Choose one with a plug to spare for: ${plugs.join(", ")}.`,
		fed: ({ plugs }: Named) => `Your supply has a plug left for: ${plugs.join(", ")}.`,
		keep: ({ plugs }: Named) => `The card you will buy must leave a plug of your supply for: ${plugs.join(", ")}.`,
		unfed: ({ plugs }: Named) =>
			`Your supply has no plug left for: ${plugs.join(", ")}. The computer starts, but what the plug feeds gets less power or none.`,
		unsure: ({ plugs }: Named) => `Whether your supply has a plug left is not known, for: ${plugs.join(", ")}.`,
	},
	advice: {
		notNeeded: () => "Leave it empty. Never fill it with a plug that does not match.",
		keep: () => "Count the power plugs of the card before you buy it.",
		unfed: () =>
			"Think whether you will miss it. For a power plug use no splitter, no adapter and no cable of another supply: they can melt or do harm.",
	},
	check(facts): Outcome {
		const extra = facts["board.power.extraPlugs"];
		const isToCome = facts.supply === "open" || facts.supply === "none";
		// Common practice, no source: pages name such a plug where there is one, and few boards have any.
		if (!extra) return pass("notNamed");
		if (extra.length === 0) return pass("none");
		const wanted = inOrderOfNeed(extra, facts);
		const first = wanted.filter(({ need }) => need !== "no");
		if (first.length === 0) return pass("notNeeded", named(wanted));
		if (isToCome) return pass("noSupply", named(first));
		if (facts.supply !== "have") return cannotTell(["supply"]);
		const served = first.map((one) => ({ ...one, ...servedBy(one, first, facts) }));
		const unfed = served.filter(({ gets }) => gets === "nothing");
		if (unfed.length > 0)
			return unfed.some(({ need }) => need === "yes")
				? planAround("unfed", named(unfed))
				: goodToKnow("unfed", named(unfed));
		const unsure = served.filter(({ gets }) => gets === "unsure");
		if (unsure.length === 0) return pass("fed", named(first));
		const missing = [...new Set(unsure.flatMap((one) => one.missing))];
		return missing.length > 0 ? cannotTell(missing, "unsure", named(unsure)) : goodToKnow("keep", named(unsure));
	},
});

interface Named {
	readonly plugs: readonly string[];
}

interface Wanted {
	readonly plug: ExtraPlug;
	readonly need: "yes" | "no" | "unknown";
}

function named(wanted: readonly Wanted[]): { readonly plugs: readonly string[] } {
	return {
		plugs: wanted.map(({ plug }) => `${plug.plug} plug${plug.for === undefined ? "" : ` (${plug.for})`}`),
	};
}

/** What is needed for certain is served before what may be, and what nothing uses not at all. */
function inOrderOfNeed(extra: readonly ExtraPlug[], facts: Facts): readonly Wanted[] {
	const all = extra.map((plug): Wanted => ({ plug, need: needFor(plug, facts) }));
	return (["yes", "unknown", "no"] as const).flatMap((need) => all.filter((one) => one.need === need));
}

/** Whether the build uses what the plug feeds, by the words of the board's page (own convention). */
function needFor({ for: feeds = "" }: ExtraPlug, facts: Facts): Wanted["need"] {
	if (/charg/i.test(feeds)) {
		const front = facts["case.frontPlugs"];
		if (!front) return "unknown";
		return front.some(({ plug }) => plug === "USB-C 20-pin") ? "yes" : "no";
	}
	if (/\bslots?\b/i.test(feeds)) {
		const { graphicsCard: card, addInCards: cards } = facts;
		if (card === "have" || card === "open" || (cards && cards.length > 0)) return "yes";
		return card === "none" && cards ? "no" : "unknown";
	}
	return "yes";
}

/** Plugs of one kind that the supply has left, at least and at most, and the facts that would tell. */
interface Left {
	readonly least: number;
	readonly most: number;
	readonly missing: readonly string[];
}

function servedBy(
	wanted: Wanted,
	all: readonly Wanted[],
	facts: Facts,
): { readonly gets: "plug" | "nothing" | "unsure"; readonly missing: readonly string[] } {
	const kind = supplyPlugFor(wanted.plug);
	const nth = all.filter(({ plug }) => supplyPlugFor(plug) === kind).indexOf(wanted);
	const { least, most, missing } = leftOf(kind, facts);
	return { gets: nth < least ? "plug" : nth >= most ? "nothing" : "unsure", missing };
}

type SupplyPlug = "graphics8Pin" | "sataPlugs" | "drivePlugs";

/** A 6+2-pin graphics plug of the supply feeds a 6-pin or an 8-pin plug of the board. */
function supplyPlugFor({ plug }: ExtraPlug): SupplyPlug {
	return plug === "SATA power" ? "sataPlugs" : plug === "4-pin drive" ? "drivePlugs" : "graphics8Pin";
}

function leftOf(kind: SupplyPlug, facts: Facts): Left {
	const has = facts[`supply.${kind}`];
	if (has === undefined) return { least: 0, most: Number.POSITIVE_INFINITY, missing: [`supply.${kind}`] };
	const taken = kind === "graphics8Pin" ? takenByCard(facts) : takenByDrives(kind, facts);
	return { least: Math.max(0, has - taken.most), most: Math.max(0, has - taken.least), missing: taken.missing };
}

/** Plugs already taken, at least and at most. */
type Taken = Left;

function takenByDrives(kind: "sataPlugs" | "drivePlugs", { drives, olderSataDrives, oldThings }: Facts): Taken {
	if (kind === "sataPlugs") {
		const least = (drives ?? []).filter(isSataDrive).length + (olderSataDrives ?? 0);
		return upTo(least, [...(drives ? [] : ["drives"]), ...(olderSataDrives === undefined ? ["olderSataDrives"] : [])]);
	}
	const named = (drives ?? []).filter((drive) => drive.link === "IDE" && !isM2Drive(drive)).length;
	return upTo(Math.max(named, oldThings?.includes("IDE drive") ? 1 : 0), drives ? [] : ["drives"]);
}

/** So many for certain, and nobody knows how many more where a fact is missing. */
function upTo(least: number, missing: readonly string[]): Taken {
	return { least, most: missing.length > 0 ? Number.POSITIVE_INFINITY : least, missing };
}

/** 6+2-pin plugs that the graphics card takes, those of an adapter for its 12V-2x6 socket among them. */
function takenByCard(facts: Facts): Taken {
	const { graphicsCard: state, "graphicsCard.powerPlugs": plugs, "supply.native12V2x6": leads } = facts;
	if (state === "none") return upTo(0, []);
	// A card still to be bought takes what it takes; no fact is missing.
	if (state === "open") return { least: 0, most: Number.POSITIVE_INFINITY, missing: [] };
	if (state !== "have") return upTo(0, ["graphicsCard"]);
	if (!plugs) return upTo(0, ["graphicsCard.powerPlugs"]);
	const wide = plugs.filter((plug) => plug === "12V-2x6").length;
	const small = plugs.length - wide;
	if (wide === 0) return upTo(small, []);
	if (!leads) return { least: small, most: small + wide * wideAdapterPlugs.most, missing: ["supply.native12V2x6"] };
	const cardW = facts["graphicsCard.watts"];
	const adapters = adapterPlugs(
		wide,
		leads.map(({ watts }) => watts),
		cardW,
	);
	return {
		least: small + adapters.least,
		most: small + adapters.most,
		missing: cardW === undefined ? ["graphicsCard.watts"] : [],
	};
}
