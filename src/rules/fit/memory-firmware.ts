import type { FactsUnder } from "../../parts/fact-path.ts";
import { defineRule } from "../define-rule.ts";
import { compareFirmware } from "../firmware-version.ts";
import { cannotTell, goodToKnow, type Outcome, pass } from "../outcome.ts";

const reads = ["memory"] as const;
const mayRead = [
	"memory.type",
	"memory.gbPerModule",
	"memory.registered",
	"board.memory.type",
	"board.memory.maxGbPerModule",
	"board.firmware.oldestInShops",
	"board.firmware.releases",
	"board.recovery.flashWithoutProcessor",
] as const;
type Facts = FactsUnder<(typeof reads)[number], (typeof mayRead)[number]>;

/**
 * Firmware of this day or later knows such modules: half a year after they came into shops. The half year is our own
 * convention; when they came (early in 2023, early in 2025) is from memory, no source.
 */
const knownFrom = { threeQuarters: "2023-10-01", large: "2025-10-01" } as const;
/** Sizes between the powers of two, in GB; those above 48 were made for servers first. */
const threeQuartersGb = [24, 48, 96];
/** Largest module of the first years of DDR5 that is not registered (from memory). */
const usualMostGb = 32;

/**
 * Modules of 24, 48, 64 GB and more came later than the first boards for DDR5, and firmware has to know a size. That the
 * board's page lists so large a module is said of today's firmware, not of what a box in the shop holds.
 */
export const memoryFirmware = defineRule({
	id: "fit/memory-firmware",
	scope: "board",
	label: "Firmware for the memory",
	wayOut: "modules of a usual size",
	asks: "Does the firmware in the box know modules of your size?",
	why: "Firmware is the program on the board that starts the computer. It has to know a size of module to start with it.",
	source: "common-practice",
	severity: "good-to-know",
	reads,
	mayRead,
	saysNothing: ["noModules", "otherType", "usual", "tooLarge", "newest"],
	messages: {
		noModules: () => "You have named no memory yet.",
		otherType: () => "Only DDR5 memory is checked here.",
		usual: ({ gb }: { gb: number }) => `Every firmware for this type of memory knows modules of ${gb} GB.`,
		newest: () => "The box holds the newest firmware there is for this board.",
		recent: ({ since, from }: { since: string; from: string }) =>
			`The oldest firmware a box may hold is dated ${since}. From about ${from} on it usually knows modules of this size.`,
		tooLarge: () => "The board does not list modules as large as yours, see the line on memory.",
		unlisted: ({ gb }: { gb: number }) =>
			`Modules of ${gb} GB are newer than many boards; the largest module this board takes is not known.`,
		mayNeed: ({ gb, mostGb, oldest }: { gb: number; mostGb: number; oldest: string }) =>
			`The board lists modules up to ${mostGb} GB today. ${oldest ? `Firmware ${oldest}, which a box may still hold,` : "Older firmware in a box"} may not know your ${gb} GB modules.`,
	},
	advice: {
		unlisted: () => "Look for modules of this size on the board maker's memory list.",
		mayNeed: ({ updatesAlone }: { updatesAlone: boolean }) =>
			[
				updatesAlone
					? "If it does not start, update the firmware: this board can do that without a processor."
					: "Ask the shop which firmware the box holds. If it does not start, borrow a module of 8 or 16 GB to update with. Pull the mains plug while you swap modules, and plug it in again for the update.",
				"Take the file for this very board and revision, and keep the power on while it updates: a stopped update can leave it dead.",
			].join(" "),
	},
	check(facts): Outcome {
		if (facts.memory === "open" || facts.memory === "none") return pass("noModules");
		const types = [facts["memory.type"], facts["board.memory.type"]];
		if (types.some((type) => type !== undefined && type !== "DDR5")) return pass("otherType");
		const gb = facts["memory.gbPerModule"];
		const from = gb === undefined ? knownFrom.large : knownSince(gb, facts["memory.registered"] ?? false);
		if (gb !== undefined && from === null) return pass("usual", { gb });
		if (holdsNewest(facts)) return pass("newest");
		const since = oldestDay(facts);
		if (from !== null && since !== undefined && since >= from) return pass("recent", { since, from });
		if (gb === undefined) return cannotTell([facts.memory === "have" ? "memory.gbPerModule" : "memory"]);
		const mostGb = facts["board.memory.maxGbPerModule"];
		if (mostGb === undefined) return cannotTell(["board.memory.maxGbPerModule"], "unlisted", { gb });
		if (mostGb < gb) return pass("tooLarge");
		return goodToKnow("mayNeed", {
			gb,
			mostGb,
			oldest: facts["board.firmware.oldestInShops"] ?? "",
			updatesAlone: facts["board.recovery.flashWithoutProcessor"] ?? false,
		});
	},
});

/** From which day on firmware knows modules of this size, as an ISO date; null where it always did. */
function knownSince(gb: number, isRegistered: boolean): string | null {
	if (threeQuartersGb.includes(gb) && (gb <= 48 || isRegistered)) return knownFrom.threeQuarters;
	// Registered modules of 64 GB and more are as old as DDR5 itself (common practice, no source).
	return gb > usualMostGb && !isRegistered ? knownFrom.large : null;
}

/** Whether no firmware is out that is newer than what a box holds at least. */
function holdsNewest(facts: Facts): boolean {
	const [oldest, releases = []] = [facts["board.firmware.oldestInShops"], facts["board.firmware.releases"]];
	if (oldest === undefined) return releases.length === 1;
	return releases.length > 0 && releases.every(({ version }) => (compareFirmware(oldest, version) ?? -1) >= 0);
}

/** The day of the oldest firmware that a box may hold, as an ISO date; undefined where a day is missing. */
function oldestDay(facts: Facts): string | undefined {
	const [oldest, releases = []] = [facts["board.firmware.oldestInShops"], facts["board.firmware.releases"]];
	if (oldest !== undefined) return releases.find(({ version }) => compareFirmware(oldest, version) === 0)?.date;
	const days = releases.map(({ date }) => date).sort();
	return days.includes(undefined) ? undefined : days[0];
}
