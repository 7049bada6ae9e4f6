import type { FactsUnder } from "../../parts/fact-path.ts";
import { defineRule } from "../define-rule.ts";
import { channelsOf, perChannelOf, tableOf } from "../memory-tables.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

const reads = ["memory"] as const;
const mayRead = [
	"laterThings",
	"memoryGb",
	"memory.type",
	"memory.modules",
	"memory.gbPerModule",
	"memory.ranks",
	"memory.mtPerS",
	"processor",
	"processor.memory.rates",
	"processor.memory.channels",
	"board.memory.type",
	"board.memory.slots",
	"board.memory.channels",
	"board.memory.maxGb",
	"board.memory.maxGbPerModule",
	"board.memory.rates",
] as const;
type Facts = FactsUnder<(typeof reads)[number], (typeof mayRead)[number]>;

/**
 * Some modules now and more beside them later: whether there are slots for that, and what rate the tables list for the
 * fuller board. Whether the memory wanted in the end goes in at all is held against the board by fit/memory-size, so
 * slots are counted here only for "the same again later".
 *
 * Common practice, no source: modules are added in the size of those that are there; two packs are not tested together;
 * more modules a channel run slower.
 */
export const memoryLater = defineRule({
	id: "features/memory-later",
	scope: "board",
	label: "More memory later",
	wayOut: "all the memory from the start",
	asks: "Can more memory go in beside yours later, at the same rate?",
	why: "A channel is a way from processor to memory; most boards have two. Two modules on one channel run slower than one there.",
	source: "common-practice",
	severity: "plan-around",
	reads,
	mayRead,
	saysNothing: ["noModules", "otherType", "tooMany", "bySize", "asNow"],
	messages: {
		notAsked: () => "You have not said that more memory comes in beside your modules.",
		noModules: () => "You have no memory yet that more could come in beside.",
		otherType: () => "Board and memory are of different types, so the slots are not counted.",
		tooMany: () => "Your modules do not all find a slot, which is told with the memory.",
		bySize: () => "The memory you want in the end is checked on its own.",
		oneEach: ({ slots }: { slots: number }) =>
			`The board has ${slots} memory ${slots === 1 ? "slot" : "slots"}, so no channel gets more than one module.`,
		asNow: ({ modules, perChannel }: { modules: number; perChannel: number }) =>
			`With ${modules} modules in, no channel holds more than ${perChannel}, as now.`,
		noLower: ({ modules }: { modules: number }) =>
			`With ${modules} modules in, the tables list no rate that is lower for your memory.`,
		noSlot: ({ slots }: { slots: number }) =>
			slots === 1
				? "Your module fills the only memory slot; for more memory later it would have to go."
				: `Your modules fill all ${slots} memory slots; for more memory later some would have to go.`,
		tooMuch: ({ gb, maxGb }: { gb: number; maxGb: number }) =>
			`The same again later makes ${gb} GB; the board takes at most ${maxGb} GB.`,
		lower: ({ modules, by, later, now }: { modules: number; by: string; later: string; now: string }) =>
			`For your modules alone ${by} lists ${now} MT/s, and with ${modules} modules in only ${later} MT/s.`,
		unlisted: ({ modules, perChannel }: { modules: number; perChannel: number }) =>
			`With ${modules} modules in, a channel holds ${perChannel}; the rate listed for that is not known, and usually lower.`,
		need: ({ slots }: { slots: number }) => `At least ${slots} memory slots: for yours, and for the same again.`,
	},
	advice: {
		noSlot: () =>
			"Buy the whole amount as one pack from the start, or take a board with more slots. Two packs are not tested together.",
		tooMuch: () => "Plan with less memory, or take a board that takes more.",
		lower: () => wholePack,
		unlisted: () => wholePack,
	},
	check(facts): Outcome {
		const isSameAgain = facts.laterThings?.includes("memory") ?? false;
		if (!isSameAgain && facts.memoryGb === undefined) return pass("notAsked");
		if (facts.memory === "open" || facts.memory === "none") return pass("noModules");
		if (facts.memory === "unknown") return cannotTell(["memory"]);
		const [type, boardType] = [facts["memory.type"], facts["board.memory.type"]];
		if (type && boardType && type !== boardType) return pass("otherType");
		const [modules, slots] = [facts["memory.modules"], facts["board.memory.slots"]];
		const haveGb = kitGb(facts);
		const isMore = facts.memoryGb !== undefined && (haveGb === undefined || facts.memoryGb > haveGb);
		if (!isSameAgain && !isMore) return pass("notAsked");
		if (!isSameAgain && slots !== undefined && slots <= (channelsOf(facts) ?? 0)) return pass("oneEach", { slots });
		if (modules === undefined || slots === undefined)
			return cannotTell([
				...(slots === undefined ? ["board.memory.slots"] : []),
				...(modules === undefined ? ["memory.modules"] : []),
			]);
		if (modules > slots) return pass("tooMany");
		if (isMore && haveGb !== undefined) return towardSize(facts, { modules, slots, haveGb });
		return isSameAgain ? sameAgain(facts, { modules, slots }) : ofUnknownSize({ modules, slots });
	},
	needs(facts) {
		const [modules, haveGb] = [facts["memory.modules"], kitGb(facts)];
		// For an amount in the end the sheet has a line of its own.
		const isMore = facts.memoryGb !== undefined && haveGb !== undefined && facts.memoryGb > haveGb;
		return facts.laterThings?.includes("memory") && modules !== undefined && !isMore
			? { messageId: "need", data: { slots: 2 * modules } }
			: null;
	},
});

interface Counted {
	readonly modules: number;
	readonly slots: number;
}

/** More modules of the same size, until there is as much as is wanted in the end. */
function towardSize(facts: Facts, { modules, slots, haveGb }: Counted & { readonly haveGb: number }): Outcome {
	const [wantedGb, free] = [facts.memoryGb ?? 0, slots - modules];
	const [maxGb, mostPerModuleGb] = [facts["board.memory.maxGb"], facts["board.memory.maxGbPerModule"]];
	const reachedGb = haveGb + free * (mostPerModuleGb ?? wantedGb);
	if (free === 0 || reachedGb < wantedGb || (maxGb !== undefined && maxGb < wantedGb)) return pass("bySize");
	const added = Math.ceil((wantedGb - haveGb) / (haveGb / modules));
	// Where so many find no slot, larger ones go into all that are free.
	return rateWith(facts, modules + Math.min(added, free));
}

/** As many modules again, as far as there are slots. */
function sameAgain(facts: Facts, { modules, slots }: Counted): Outcome {
	const added = Math.min(modules, slots - modules);
	if (added === 0) return fail("noSlot", { slots });
	const [eachGb, maxGb] = [facts["memory.gbPerModule"], facts["board.memory.maxGb"]];
	const gb = eachGb === undefined ? undefined : (modules + added) * eachGb;
	if (gb !== undefined && maxGb !== undefined && gb > maxGb) return planAround("tooMuch", { gb, maxGb });
	return rateWith(facts, modules + added);
}

/** How many modules it takes to reach the amount is not known. */
function ofUnknownSize({ modules, slots }: Counted): Outcome {
	return modules === slots ? pass("bySize") : cannotTell(["memory.gbPerModule"]);
}

/** What the tables list with so many modules in, held against what they list for those of today alone. */
function rateWith(facts: Facts, modules: number): Outcome {
	const fuller = { ...facts, "memory.modules": modules };
	const perChannel = perChannelOf(fuller);
	if (perChannel === undefined) return cannotTell(["board.memory.channels"]);
	if (perChannel === perChannelOf(facts)) return pass("asNow", { modules, perChannel });
	const tables = [
		{ rows: facts["processor.memory.rates"], by: "your processor" } as const,
		{ rows: facts["board.memory.rates"], by: "the board" } as const,
	].flatMap(({ rows, by }) => {
		const [now, later] = [tableOf(rows, facts, by), tableOf(rows, fuller, by)];
		return now && later ? [{ by, now, later }] : [];
	});
	// Modules made for less than a table lists lose nothing until it lists less than that.
	const label = facts["memory.mtPerS"] ?? Number.POSITIVE_INFINITY;
	const [lower] = tables
		.filter(({ now, later }) => later.most < Math.min(now.least, label))
		.sort((one, other) => one.later.most - other.later.most);
	if (lower)
		return goodToKnow("lower", {
			modules,
			by: lower.by,
			later: fromTo(lower.later.least, lower.later.most),
			now: fromTo(lower.now.least, lower.now.most),
		});
	if (!tables.some(({ by }) => by === "your processor")) return goodToKnow("unlisted", { modules, perChannel });
	const unsure = tables.filter(({ now, later }) => later.least < Math.min(now.most, label));
	return unsure.length === 0
		? pass("noLower", { modules })
		: cannotTell([...new Set(unsure.flatMap(({ now, later }) => [...now.missing, ...later.missing]))]);
}

/** All modules of today together, in GB; undefined while their number or size is not known. */
function kitGb(facts: { readonly "memory.modules"?: number; readonly "memory.gbPerModule"?: number }) {
	const [modules, eachGb] = [facts["memory.modules"], facts["memory.gbPerModule"]];
	return modules === undefined || eachGb === undefined ? undefined : modules * eachGb;
}

function fromTo(least: number, most: number): string {
	return least === most ? String(least) : `${least} to ${most}`;
}

/** Common practice, no source. */
const wholePack =
	"If you can still choose, buy the whole amount as one pack of fewer modules: two packs are not tested together. Else expect the lower rate.";
