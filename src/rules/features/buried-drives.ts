import type { FactsUnder } from "../../parts/fact-path.ts";
import type { Connector } from "../../plan/connector.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

const mayRead = ["drives", "graphicsCard", "graphicsCard.thicknessMm", "plan.things", "plan.openLimits"] as const;

/** M.2 drives that lie under a long card: not off, but out of reach and in warm air. */
export const buriedDrives = defineRule({
	id: "features/buried-drives",
	scope: "board",
	label: "Drives within reach",
	wayOut: "a drive below a card",
	asks: "Can every M.2 drive be reached without taking a card out?",
	why: "A drive below a thick card is reached only when the card comes out, and it runs warmer there.",
	source: "common-practice",
	severity: "good-to-know",
	reads: [],
	mayRead,
	messages: {
		notAsked: () => "You have named no M.2 drives that find a socket.",
		free: () => "No M.2 drive lies below a card.",
		unsure: () => "Whether an M.2 drive lies below a card is not known.",
		tallBuried: ({ drives }: { drives: readonly string[] }) =>
			`Below a card, and with a cooler of its own: ${drives.join(", ")}. Whether it fits under the card is not known.`,
		buried: ({ drives }: { drives: readonly string[] }) => `Below a card: ${drives.join(", ")}.`,
	},
	advice: {
		tallBuried: () =>
			"Measure how high it stands, or take a drive without a cooler there. A card pressed onto it sits badly in its slot.",
		buried: () => "Fit the drive before the card, with the mains plug out. It works there, only warmer.",
	},
	check(facts): Outcome {
		const sticks = (facts["plan.things"] ?? []).filter(({ device, best }) => device.kind === "M.2 drive" && best);
		if (sticks.length === 0) return pass("notAsked");
		const below = sticks.filter(({ best }) => best?.isBuried);
		const named = (some: typeof sticks) => some.map(({ device, best }) => `${device.name} in ${best?.connector.name}`);
		const tall = below.filter(({ device }) => device.kind === "M.2 drive" && device.drive.ownCooler);
		if (tall.length > 0) return planAround("tallBuried", { drives: named(tall) });
		const buried = named(below);
		if (buried.length > 0) return goodToKnow("buried", { drives: buried });
		if (sticks.some(({ worst }) => worst?.isBuried)) return cannotTell(missingOf(facts), "unsure");
		const cards = (facts["plan.things"] ?? []).filter(
			({ device, best }) => "isLong" in device && device.isLong && best,
		);
		if (cards.length === 0) return pass("free");
		if (cards.some(({ best }) => best?.connector.row === null)) return cannotTell(["board.cardSlots"], "unsure");
		return sticks.some(({ best }) => best && mayLieUnder(best.connector))
			? cannotTell(["board.m2Sockets"], "unsure")
			: pass("free");
	},
});

/** A socket at the front of the board of which nobody knows the row. */
function mayLieUnder(connector: Connector): boolean {
	return connector.kind === "M.2 socket" && connector.row === null && (connector.socket.place ?? "front") === "front";
}

/** What would settle whether a card reaches over a drive. */
function missingOf(facts: FactsUnder<never, (typeof mayRead)[number]>): readonly string[] {
	if (facts.graphicsCard !== "have") return ["graphicsCard"];
	if (facts["graphicsCard.thicknessMm"] === undefined) return ["graphicsCard.thicknessMm"];
	const limits = facts["plan.openLimits"] ?? [];
	return limits.length > 0 ? limits : ["board.m2Sockets"];
}
