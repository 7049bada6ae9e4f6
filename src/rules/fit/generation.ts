import type { Board } from "../../parts/board.ts";
import { canonicalName } from "../../parts/canonical-name.ts";
import { rowsFor } from "../../parts/support-rows.ts";
import { defineRule } from "../define-rule.ts";
import { compareFirmware } from "../firmware-version.ts";
import { cannotTell, fail, goodToKnow, type MessageData, type Outcome, pass, planAround } from "../outcome.ts";

const careWhileUpdating =
	"The power must stay on throughout: a stopped update can leave the board dead. Take the file for this very board and revision.";

/** Firmware that a processor needs to start, and the one that protects it where that is a later one. */
interface Update extends MessageData {
	readonly from: string;
	readonly safe?: string;
}

/** Who must update anyway goes straight to what protects the processor. */
const updateTo = ({ from, safe }: Update) => (safe ? `${safe}, which also protects the processor` : `${from} or newer`);
/** A later firmware that protects the processor; a board that updates alone need never run the older one with it. */
interface Safer extends MessageData {
	readonly safe: string;
	readonly updatesAlone: boolean;
}

const updateFirst = ({ safe, updatesAlone }: Safer) =>
	updatesAlone
		? `This board updates without a processor: update to ${safe} before the first start. ${careWhileUpdating}`
		: `Start it once with its settings as they are, only to update to ${safe}. Until then raise no memory rate and do no heavy work. ${careWhileUpdating}`;

/** What is known of the firmware on this board and of what this processor wants of it. */
interface BoardFirmware {
	readonly oldestInShops: string | undefined;
	readonly releases: readonly string[];
	readonly flashWithoutProcessor: boolean | undefined;
	readonly safeFrom: string | undefined;
	readonly droppedFrom: string | undefined;
	readonly processor: string;
}

/**
 * One socket does not mean every board on it runs every processor. A processor list read for this very board decides;
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
		"board.supportList.partial",
		"board.firmware.oldestInShops",
		"board.recovery.flashWithoutProcessor",
		"board.firmware.releases",
		"platform.generations",
		"platform.dropsOlderFrom",
	],
	messages: {
		listed: ({ processor }: { processor: string }) => `The board's processor list names the ${processor}.`,
		versionOpen: ({ processor }: { processor: string }) =>
			`The board's processor list names the ${processor}, but not clearly from which firmware on.`,
		notListed: ({ processor }: { processor: string }) =>
			`The processor list read for this board does not name the ${processor}.`,
		served: ({ chipset, generation }: { chipset: string; generation: string }) =>
			`Chipset ${chipset} runs ${generation} processors.`,
		notServed: ({ chipset, generation }: { chipset: string; generation: string }) =>
			`Chipset ${chipset} does not run ${generation} processors, though the socket is the same.`,
		newEnough: ({ from, oldest }: { from: string; oldest: string }) =>
			`It needs firmware ${from}; the oldest a box may hold is ${oldest}.`,
		updatesAlone: ({ from }: { from: string }) =>
			`It needs firmware ${from}, which the box may not hold yet; the board can update without a processor.`,
		needsUpdate: ({ from, processor }: { from: string; processor: string }) =>
			`It needs firmware ${from} before it starts with the ${processor}, and what the box holds is not known here.`,
		safeUnsure: ({ safe }: Safer) =>
			`It starts, but only firmware ${safe} keeps this processor from harm, and what the box holds is not known here.`,
		safeLater: ({ safe, oldest }: Safer & { oldest: string }) =>
			`It starts, but only firmware ${safe} keeps this processor from harm, and a box may still hold ${oldest}.`,
		dropped: ({ version }: { version: string }) =>
			`Firmware ${version} and newer no longer runs this processor, and it is out already.`,
		mayDrop: ({ version }: { version: string }) =>
			`On this chipset firmware ${version} and newer no longer runs this processor.`,
		nearlyListed: ({ processor, listed }: { processor: string; listed: string }) =>
			`The processor list names "${listed}", which may or may not be your ${processor}.`,
		noList: ({ processor }: { processor: string }) =>
			`No processor list was read for this board, and no table here says whether it runs the ${processor}.`,
		listPartial: ({ processor }: { processor: string }) =>
			`Only part of the board's processor list was noted. It does not name the ${processor}, and no table here says whether it runs.`,
		need: ({ processor }: { processor: string }) =>
			`The board maker's processor list names the ${processor}; note from which firmware.`,
	},
	advice: {
		safeUnsure: updateFirst,
		safeLater: updateFirst,
		dropped: ({ version }: { version: string }) =>
			`Ask the shop for a box with firmware older than ${version}, and never update to it or beyond.`,
		mayDrop: ({ version }: { version: string }) => `Do not update to ${version} or beyond.`,
		versionOpen: () =>
			"Ask the shop or the maker from which firmware on this processor starts, and what the box holds.",
		notListed: () => "Take a board whose list names your processor.",
		notServed: () => "Take a board whose processor list names your processor.",
		nearlyListed: () => "Look at the list again, letter by letter, or ask the maker.",
		updatesAlone: (update: Update) => `Update to ${updateTo(update)} before the first start. ${careWhileUpdating}`,
		needsUpdate: (update: Update) =>
			`A board that can update without a processor is best. Else let the shop update it to ${updateTo(update)}, or borrow an older processor that it runs. Pull the mains plug before you change the processor, and never touch the contacts in the socket. ${careWhileUpdating}`,
		noList: openList,
		listPartial: openList,
	},
	check(facts): Outcome {
		const name = facts["processor.name"];
		const generationName = facts["processor.generation"];
		const sameGeneration = ({ generation }: { generation: string }) =>
			generationName !== undefined && canonicalName(generation) === canonicalName(generationName);
		const row = facts["platform.generations"]?.find(sameGeneration);
		const firmware: BoardFirmware = {
			oldestInShops: facts["board.firmware.oldestInShops"],
			releases: facts["board.firmware.releases"]?.map(({ version }) => version) ?? [],
			flashWithoutProcessor: facts["board.recovery.flashWithoutProcessor"],
			safeFrom: row?.safeFrom,
			droppedFrom: facts["platform.dropsOlderFrom"]?.find(sameGeneration)?.version,
			processor: name,
		};
		const rows = facts["board.supportList.rows"];
		const named = rows && byList(rows, firmware);
		// A list of which only some rows were noted says nothing of the others.
		if (named && (named.kind !== "fail" || !facts["board.supportList.partial"])) return named;
		const chipset = facts["board.chipset"];
		if (!row || !chipset)
			return cannotTell(["board.supportList"], rows ? "listPartial" : "noList", { processor: name });
		const served = { chipset, generation: row.generation };
		if (row.served === "no") return fail("notServed", served);
		return row.served === "from firmware" && row.startsFrom
			? byFirmware(row.startsFrom, firmware)
			: withCare(pass("served", served), firmware);
	},
	needs: ({ "processor.name": processor }) => (processor ? { messageId: "need", data: { processor } } : null),
});

function openList(): string {
	return "Open the board maker's support page, processor list, and look for your processor's name.";
}

type SupportRows = NonNullable<Board["supportList"]>["rows"];

function byList(rows: SupportRows, firmware: BoardFirmware): Outcome {
	const { processor } = firmware;
	const named = rowsFor(rows, processor);
	const isVersionOpen = named.some(({ versionOpen }) => versionOpen === true);
	const [row] = named.toSorted(newestFirst);
	if (row?.fromVersion) return byFirmware(row.fromVersion, firmware);
	if (row)
		return withCare(isVersionOpen ? planAround("versionOpen", { processor }) : pass("listed", { processor }), firmware);
	const near = rows.find((listed) => sharesWords(listed.processor, processor));
	return near
		? cannotTell(["board.supportList"], "nearlyListed", { processor, listed: near.processor })
		: fail("notListed", { processor });
}

/** Of rows that name one processor with several versions the newest counts: with it every stepping starts. */
function newestFirst(one: SupportRows[number], other: SupportRows[number]): number {
	if (one.fromVersion === undefined || other.fromVersion === undefined) return one.fromVersion === undefined ? 1 : -1;
	return -(compareFirmware(one.fromVersion, other.fromVersion) ?? 0);
}

/** Whether all words of one name stand in the other: a maker's name in front, or watts behind, make no other part. */
function sharesWords(one: string, other: string): boolean {
	const wordsOf = (name: string) => new Set(name.toLowerCase().match(/[\p{L}\p{N}+]+/gu) ?? []);
	const [a, b] = [wordsOf(one), wordsOf(other)];
	const [few, many] = a.size <= b.size ? [a, b] : [b, a];
	return few.size > 0 && [...few].every((word) => many.has(word));
}

function byFirmware(fromVersion: string, firmware: BoardFirmware): Outcome {
	const { oldestInShops, flashWithoutProcessor, processor } = firmware;
	const order = oldestInShops === undefined ? null : compareFirmware(oldestInShops, fromVersion);
	if (oldestInShops !== undefined && order !== null && order >= 0)
		return withCare(pass("newEnough", { from: fromVersion, oldest: oldestInShops }), firmware);
	const { safeFrom } = firmware;
	const isSafeLater = safeFrom !== undefined && isBefore(fromVersion, safeFrom);
	const update: Update = { from: fromVersion, ...(isSafeLater ? { safe: safeFrom } : {}) };
	return flashWithoutProcessor
		? planAround("updatesAlone", update)
		: planAround("needsUpdate", { ...update, processor });
}

/** A board that starts may still hold firmware that does not protect the processor, or be updated past it. */
function withCare(otherwise: Outcome, firmware: BoardFirmware): Outcome {
	const { oldestInShops, releases, safeFrom, droppedFrom } = firmware;
	const updatesAlone = firmware.flashWithoutProcessor === true;
	if (droppedFrom !== undefined && releases.some((version) => !isBefore(version, droppedFrom)))
		return planAround("dropped", { version: droppedFrom });
	if (safeFrom !== undefined && oldestInShops === undefined)
		return planAround("safeUnsure", { safe: safeFrom, updatesAlone });
	if (safeFrom !== undefined && oldestInShops !== undefined && isBefore(oldestInShops, safeFrom))
		return planAround("safeLater", { safe: safeFrom, updatesAlone, oldest: oldestInShops });
	return droppedFrom === undefined ? otherwise : goodToKnow("mayDrop", { version: droppedFrom });
}

function isBefore(version: string, limit: string): boolean {
	return (compareFirmware(version, limit) ?? 0) < 0;
}
