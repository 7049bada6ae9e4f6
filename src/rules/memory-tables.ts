import type { FactsUnder } from "../parts/fact-path.ts";

/** What is looked at to find the rows of a table of memory rates that hold for some modules. */
type ModuleFacts = FactsUnder<
	never,
	| "memory.type"
	| "memory.modules"
	| "memory.ranks"
	| "board.memory.type"
	| "board.memory.channels"
	| "processor.memory.channels"
>;
type Rows = FactsUnder<"board.memory.rates", never>["board.memory.rates"];

interface TableAnswer {
	readonly by: "your processor" | "the board";
	/** MT/s; lower than `most` only while a fact of `missing` is not known. */
	readonly least: number;
	readonly most: number;
	readonly missing: readonly string[];
}

/** How many modules share a channel when they are spread evenly; undefined where nobody can tell. */
export function perChannelOf(facts: ModuleFacts): number | undefined {
	const [modules, channels] = [facts["memory.modules"], channelsOf(facts)];
	if (modules === 1) return 1;
	return modules === undefined || channels === undefined ? undefined : Math.ceil(modules / channels);
}

/** Channels that board and processor both have; where only one of them tells, its own; undefined where neither does. */
export function channelsOf(facts: ModuleFacts): number | undefined {
	const channels = [facts["board.memory.channels"], facts["processor.memory.channels"]].filter(
		(known) => known !== undefined,
	);
	return channels.length === 0 ? undefined : Math.min(...channels);
}

/** What a table lists for these modules; null where it has no row for them. */
export function tableOf(table: Rows | undefined, facts: ModuleFacts, by: TableAnswer["by"]): TableAnswer | null {
	const [type, ranks] = [facts["memory.type"] ?? facts["board.memory.type"], facts["memory.ranks"]];
	const perChannel = perChannelOf(facts);
	const alike = (table ?? []).filter(
		(row) =>
			(row.type === undefined || type === undefined || row.type === type) &&
			(perChannel === undefined || row.modulesPerChannel === perChannel) &&
			(row.ranks === undefined || ranks === undefined || row.ranks === ranks),
	);
	// A row for these ranks says more than one for any, of the same type and as many modules a channel.
	const exact = alike.filter((row) => ranks !== undefined && row.ranks === ranks);
	const isReplaced = (row: Rows[number]) =>
		row.ranks === undefined &&
		exact.some((other) => other.type === row.type && other.modulesPerChannel === row.modulesPerChannel);
	const rows = alike.filter((row) => !isReplaced(row));
	if (rows.length === 0) return null;
	const differ = (of: (row: Rows[number]) => unknown) => new Set(rows.map(of)).size > 1;
	const missing = [
		...(type === undefined && differ((row) => row.type) ? ["memory.type"] : []),
		...(perChannel === undefined && differ((row) => row.modulesPerChannel)
			? [facts["memory.modules"] === undefined ? "memory.modules" : "board.memory.channels"]
			: []),
		...(ranks === undefined && differ((row) => row.ranks) ? ["memory.ranks"] : []),
	];
	const rates = rows.map(({ mtPerS }) => mtPerS);
	const least = Math.min(...rates);
	// Rows that contradict each other with nothing left to find out: the lower counts.
	return { by, least, most: missing.length > 0 ? Math.max(...rates) : least, missing };
}
