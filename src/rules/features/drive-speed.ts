import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass } from "../outcome.ts";
import { roundToHundredth } from "../round-to-hundredth.ts";

/** A tenth less than it can do is noticed by nobody (own convention). */
const fullShare = 0.9;

/** What each fast drive moves in its place against what it can move. Rates are those of the PCI Express generations. */
export const driveSpeed = defineRule({
	id: "features/drive-speed",
	scope: "board",
	label: "Speed of the drives",
	wayOut: "slower drives",
	asks: "Does every fast drive get a place that is fast enough?",
	why: "A drive is as fast as the slower of the two: itself, or the place it sits in.",
	source: "wiki-pci-express",
	severity: "good-to-know",
	reads: [],
	mayRead: ["drives", "plan.things", "plan.openLimits"],
	messages: {
		notAsked: () => "You have named no fast drives that find a place.",
		full: ({ drives }: { drives: number }) =>
			drives === 1
				? "Your fast drive can run at full speed."
				: `${drives === 2 ? "Both" : `All ${drives}`} fast drives can run at full speed.`,
		unknownDrives: ({ drives }: { drives: readonly string[] }) =>
			`The places are not judged, since it is not known how fast these drives can be: ${drives.join(", ")}.`,
		slower: ({ drives }: { drives: readonly string[] }) => drives.join(" "),
		unsure: ({ drives }: { drives: readonly string[] }) =>
			`How fast the place is, is not known for: ${drives.join(", ")}.`,
	},
	advice: {
		slower: () =>
			"It works, only slower; in daily use few people notice. Do not pay for a faster drive than the place.",
	},
	check(facts): Outcome {
		const fast = (facts["plan.things"] ?? []).flatMap(({ device, best, worst }) =>
			"drive" in device && device.lanes !== null && best ? [{ device, best, worst }] : [],
		);
		if (fast.length === 0) return pass("notAsked");
		const slower = fast.flatMap(({ device, best: { link, connector } }) =>
			link.gbytesPerS !== null && device.gbytesPerS !== null && link.gbytesPerS < fullShare * device.gbytesPerS
				? [
						`${device.name} in ${connector.name} moves ${roundToHundredth(link.gbytesPerS)} of the ${roundToHundredth(device.gbytesPerS)} GB/s it can use.`,
					]
				: [],
		);
		if (slower.length > 0) return goodToKnow("slower", { drives: slower });
		// A socket that may not work, or not as fast, with the processor still to be told.
		const mayBeSlower = fast.filter(
			({ device, best, worst }) =>
				device.gbytesPerS !== null &&
				(worst?.link.gbytesPerS ?? 0) < fullShare * Math.min(device.gbytesPerS, best.link.gbytesPerS ?? 0),
		);
		const limits = facts["plan.openLimits"] ?? [];
		if (mayBeSlower.length > 0 && limits.length > 0)
			return cannotTell(limits, "unsure", { drives: mayBeSlower.map(({ device }) => device.name) });
		const unknown = fast.filter(({ device, best }) => device.gbytesPerS !== null && best.link.gbytesPerS === null);
		if (unknown.length > 0)
			return cannotTell(
				[
					...new Set(
						unknown.map(({ best }) => (best.connector.kind === "card slot" ? "board.cardSlots" : "board.m2Sockets")),
					),
				],
				"unsure",
				{ drives: unknown.map(({ device }) => device.name) },
			);
		const unrated = fast.filter(({ device }) => device.gbytesPerS === null);
		return unrated.length > 0
			? pass("unknownDrives", { drives: unrated.map(({ device }) => device.name) })
			: pass("full", { drives: fast.length });
	},
});
