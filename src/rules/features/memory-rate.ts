import { defineRule } from "../define-rule.ts";
import { perChannelOf, tableOf } from "../memory-tables.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass } from "../outcome.ts";

/**
 * The rate on the memory's label, in MT/s, against three lists: the processor's table and the board's table hold without
 * a memory profile, the board's highest rate with one. A lower rate stops nothing.
 *
 * Common practice, no source: the lower of the two tables counts; a rate above it is a raised clock, which usually runs;
 * more modules a channel run slower, and the highest rate on a board's page is meant for one module a channel.
 */
export const memoryRate = defineRule({
	id: "features/memory-rate",
	scope: "board",
	label: "Memory rate",
	wayOut: "memory of another rate",
	asks: "Does your memory run at the rate on its label?",
	why: "The label often names a raised rate, and a memory profile is the setting for it. Processor, board and the number of modules decide which rate it reaches.",
	source: "common-practice",
	severity: "plan-around",
	reads: ["memory.mtPerS"],
	mayRead: [
		"memory.type",
		"memory.modules",
		"memory.ranks",
		"processor",
		"processor.memory.rates",
		"processor.memory.channels",
		"board.memory.type",
		"board.memory.rates",
		"board.memory.channels",
		"board.memory.highestMtPerS",
		"board.raises.memoryRate",
	],
	saysNothing: ["otherType"],
	messages: {
		otherType: () => "Board and memory are of different types, so their rates are not compared.",
		within: ({ rate, perChannel }: { rate: number; perChannel: number }) =>
			`Your memory's ${rate} MT/s is within your processor's table ${forModules(perChannel)}.`,
		listed: ({ rate, highest }: { rate: number; highest: number }) =>
			`The board lists up to ${highest} MT/s. Whether your memory's ${rate} MT/s needs a memory profile is not known.`,
		byProfile: ({ rate, listed, by, perChannel, highest }: Raised & { highest: number }) =>
			`${above({ rate, listed, by, perChannel })} The board lists up to ${highest} MT/s with a memory profile.`,
		crowded: (raised: Raised) =>
			`${above(raised)} The highest rate on a board's page is usually meant for one module a channel.`,
		unlisted: (raised: Raised) => `${above(raised)} The highest rate with a memory profile is not known of this board.`,
		locked: ({ runs, ...raised }: Raised & { runs: number }) =>
			`${above(raised)} This board does not let the rate be raised, so expect ${runs} MT/s at most.`,
		slower: ({ rate, highest }: { rate: number; highest: number }) =>
			`Your memory is made for ${rate} MT/s; the board lists at most ${highest} MT/s, so expect no more.`,
	},
	advice: {
		listed: () => "Start once without the profile. Then look up the memory table in your processor's data sheet.",
		byProfile: () =>
			"Start once without it, then switch on the memory profile in the firmware. Some warranties count it as raising the clock.",
		crowded: () => "Fewer and larger modules usually run faster. With this many, be ready to set a lower rate.",
		locked: () => "It works, only slower than its label says. If you still have to buy it, a lower rate is enough.",
		slower: () => "It works, only slower than its label says. If you still have to buy it, a lower rate is enough.",
	},
	check(facts): Outcome {
		const [type, boardType] = [facts["memory.type"], facts["board.memory.type"]];
		if (type && boardType && type !== boardType) return pass("otherType");
		const [rate, highest] = [facts["memory.mtPerS"], facts["board.memory.highestMtPerS"]];
		const perChannel = perChannelOf(facts) ?? 0;
		const tables = [
			tableOf(facts["processor.memory.rates"], facts, "your processor"),
			tableOf(facts["board.memory.rates"], facts, "the board"),
		].filter((table) => table !== null);
		// A table that is surely passed; of two the lower.
		const [passed] = tables.filter(({ most }) => rate > most).sort((one, other) => one.most - other.most);
		const raised = passed && { rate, listed: passed.most, by: passed.by, perChannel };
		if (raised && facts["board.raises.memoryRate"] === false)
			return fail("locked", { ...raised, runs: Math.min(raised.listed, highest ?? raised.listed) });
		if (highest !== undefined && rate > highest) return fail("slower", { rate, highest });
		if (raised && perChannel > 1) return fail("crowded", raised);
		if (raised)
			return highest === undefined
				? cannotTell(["board.memory.highestMtPerS"], "unlisted", raised)
				: goodToKnow("byProfile", { ...raised, highest });
		const isProcessorsKnown = tables.some(({ by }) => by === "your processor");
		if (isProcessorsKnown && tables.every(({ least }) => rate <= least)) return pass("within", { rate, perChannel });
		// With more modules a channel, or a rate that cannot be raised, the highest rate alone promises nothing.
		if (highest !== undefined && perChannel === 1 && facts["board.raises.memoryRate"] !== false)
			return goodToKnow("listed", { rate, highest });
		return cannotTell([
			...new Set([
				...tables.filter(({ least }) => rate > least).flatMap(({ missing }) => missing),
				...(isProcessorsKnown ? [] : [facts.processor === "have" ? "processor.memory.rates" : "processor"]),
				...(highest === undefined ? ["board.memory.highestMtPerS"] : []),
			]),
		]);
	},
});

/** Rates in MT/s; `perChannel` is 0 where it is not known how many modules share a channel. */
type Raised = {
	readonly rate: number;
	readonly listed: number;
	readonly by: string;
	readonly perChannel: number;
};

function above({ rate, listed, by, perChannel }: Raised): string {
	return `Your memory's ${rate} MT/s is above the ${listed} MT/s that ${by} lists ${forModules(perChannel)}.`;
}

function forModules(perChannel: number): string {
	if (perChannel === 0) return "for your modules";
	return perChannel === 1 ? "for one module a channel" : `for ${perChannel} modules a channel`;
}
