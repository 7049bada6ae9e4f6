import type { Board } from "../../parts/board.ts";
import { canonicalName } from "../../parts/canonical-name.ts";
import { defineRule } from "../define-rule.ts";
import { compareFirmware } from "../firmware-version.ts";
import { cannotTell, fail, type Outcome, pass, planAround } from "../outcome.ts";

interface FirmwareFacts {
	readonly fromVersion: string;
	readonly oldestInShops: string | undefined;
	readonly flashWithoutProcessor: boolean | undefined;
	readonly processor: string;
}

/**
 * One socket does not mean every board on it runs every processor. A support list read for this very board decides;
 * without one the table of chipsets and generations does.
 */
export const generation = defineRule({
	id: "fit/generation",
	scope: "board",
	label: "Processor support",
	wayOut: "another processor",
	asks: "Does this board run this generation of processors, and with the firmware it is sold with?",
	why: "Boards on one socket can refuse a newer or older processor, or need newer firmware before they start with it.",
	source: "common-practice",
	severity: "stops",
	reads: ["processor.name"],
	mayRead: [
		"processor.generation",
		"board.chipset",
		"board.supportList.rows",
		"board.firmware.oldestInShops",
		"board.recovery.flashWithoutProcessor",
		"platform.generations",
	],
	messages: {
		listed: ({ processor }: { processor: string }) => `The board's support list names the ${processor}.`,
		notListed: ({ processor }: { processor: string }) =>
			`The support list read for this board does not name the ${processor}.`,
		served: ({ chipset, generation }: { chipset: string; generation: string }) =>
			`Chipset ${chipset} runs ${generation} processors.`,
		notServed: ({ chipset, generation }: { chipset: string; generation: string }) =>
			`Chipset ${chipset} does not run ${generation} processors, though the socket is the same.`,
		newEnough: ({ from, oldest }: { from: string; oldest: string }) =>
			`It needs firmware ${from}; the oldest a box may hold is ${oldest}.`,
		updatesAlone: ({ from }: { from: string }) =>
			`It needs firmware ${from}, which the box may not hold yet; the board can update without a processor.`,
		needsUpdate: ({ from, processor }: { from: string; processor: string }) =>
			`It needs firmware ${from} before it starts with the ${processor}, and nobody knows what the box holds.`,
		noList: ({ processor }: { processor: string }) =>
			`No support list was read for this board, and no table here says whether it runs the ${processor}.`,
		need: ({ processor }: { processor: string }) =>
			`The board maker's support list names the ${processor}; note from which firmware.`,
	},
	advice: {
		updatesAlone: () =>
			"Update before the first start, with the power on throughout: a stopped update can leave the board dead. Take the file for this very board and revision.",
		needsUpdate: () =>
			"Ask the shop for a box with this firmware, or let the shop update it; else borrow an older processor that the board runs.",
		noList: () => "Open the board maker's support page, processor list, and look for your processor's name.",
	},
	check(facts): Outcome {
		const name = facts["processor.name"];
		const firmware = {
			oldestInShops: facts["board.firmware.oldestInShops"],
			flashWithoutProcessor: facts["board.recovery.flashWithoutProcessor"],
			processor: name,
		};
		const rows = facts["board.supportList.rows"];
		if (rows) return byList(rows, firmware);
		const chipset = facts["board.chipset"];
		const wanted = facts["processor.generation"];
		const row =
			wanted === undefined
				? undefined
				: facts["platform.generations"]?.find(({ generation }) => canonicalName(generation) === canonicalName(wanted));
		if (!row || !chipset || !wanted) return cannotTell(["board.supportList"], "noList", { processor: name });
		if (row.served === "no") return fail("notServed", { chipset, generation: row.generation });
		if (row.served === "yes" || !row.startsFrom) return pass("served", { chipset, generation: row.generation });
		return byFirmware({ ...firmware, fromVersion: row.startsFrom });
	},
	needs: ({ "processor.name": processor }) => (processor ? { messageId: "need", data: { processor } } : null),
});

type SupportRows = NonNullable<Board["supportList"]>["rows"];

function byList(rows: SupportRows, firmware: Omit<FirmwareFacts, "fromVersion">): Outcome {
	const row = rows.find(({ processor }) => canonicalName(processor) === canonicalName(firmware.processor));
	if (!row) return fail("notListed", { processor: firmware.processor });
	if (!row.fromVersion) return pass("listed", { processor: firmware.processor });
	return byFirmware({ ...firmware, fromVersion: row.fromVersion });
}

function byFirmware({ fromVersion, oldestInShops, flashWithoutProcessor, processor }: FirmwareFacts): Outcome {
	const order = oldestInShops === undefined ? null : compareFirmware(oldestInShops, fromVersion);
	if (oldestInShops !== undefined && order !== null && order >= 0)
		return pass("newEnough", { from: fromVersion, oldest: oldestInShops });
	if (flashWithoutProcessor) return planAround("updatesAlone", { from: fromVersion });
	return planAround("needsUpdate", { from: fromVersion, processor });
}
