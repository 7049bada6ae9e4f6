import type { ReadAt } from "./part-reading.ts";

/** One thing of a list, as one line tells of it. */
export interface ListEntry extends ReadAt {
	/** As the text prints it. */
	readonly name?: string;
	/** What is told of it; keys as in the part. */
	readonly facts: Readonly<Record<string, unknown>>;
	/** Facts among these that are not stated and follow from a standard. */
	readonly assumed?: readonly string[];
	readonly block: string;
	/** The processors it holds for, where the page lists the same things once for each. */
	readonly series?: string | undefined;
	/** A summing-up, such as "key features": may leave things out. */
	readonly isOverview?: boolean;
	/** USB sockets that come with it, where told. */
	readonly ports?: number;
}

export interface WholeList {
	readonly entries: readonly ListEntry[];
	/** Other lists that the text gives and that do not agree; empty if it tells one story. */
	readonly rivals: readonly (readonly ListEntry[])[];
}

/** One list out of all that a page tells: each thing once, though it stands in several places. */
export function wholeList(all: readonly ListEntry[]): WholeList {
	const blocks = [...groupedBy(all, ({ block }) => block).values()].map((block) => {
		const once = withoutRepeats(block);
		const { entries, rivals } = wholeBlock(once);
		return { entries, rivals: once.length < block.length && !isPrintedAgain(block) ? [...rivals, block] : rivals };
	});
	const lists = joinedByName(blocks.map(({ entries }) => entries).filter((entries) => entries.length > 0));
	const rivals = blocks.flatMap((block) => block.rivals);
	const main = lists.toSorted((one, other) => weight(other) - weight(one))[0];
	if (!main) return { entries: [], rivals };
	let entries: readonly ListEntry[] = main;
	for (const list of lists) {
		if (list === main) continue;
		const pairs = pairing(list, entries);
		const isWhole = list.length === entries.length;
		const isPart = list.length < entries.length && (isOverview(list) || list.every((one) => details(one) > 0));
		if (pairs && (isWhole || isPart) && (isWhole || isOverview(list) || countsAgree(list, entries)))
			entries = entries.map((entry, index) => {
				const at = pairs.indexOf(index);
				return at < 0 ? entry : enriched(entry, list[at] as ListEntry);
			});
		else rivals.push(list);
	}
	return { entries, rivals };
}

/** Of lines further apart one that stands there once more is no second thing of its sort; own convention. */
const apart = 3;

/** Entries without those of a line that stands further down once more. */
export function withoutRepeats<T extends ReadAt & Pick<ListEntry, "name" | "series">>(
	block: readonly T[],
): readonly T[] {
	const last = new Map<string, number>();
	return block.filter(({ quote, series, line, name }) => {
		const key = `${series ?? ""}/${quote}`;
		// Lines that follow each other count each; where the run has ended, the same line is a repeat.
		const isNext = line - (last.get(key) ?? line) <= apart;
		if (isNext) last.set(key, line);
		return isNext || name !== undefined;
	});
}

/** Whether a block is a list of several lines, printed as a whole more than once. */
function isPrintedAgain(block: readonly ListEntry[]): boolean {
	const lines = [...groupedBy(block, ({ quote }) => quote).values()].map(
		(entries) => new Set(entries.map(({ line }) => line)).size,
	);
	return lines.length > 1 && lines.every((count) => count === lines[0]);
}

const details = ({ facts, name }: ListEntry): number => Object.keys(facts).length + (name === undefined ? 0 : 1);
const isOverview = (list: readonly ListEntry[]): boolean => list.every((one) => one.isOverview === true);
const weight = (list: readonly ListEntry[]): number =>
	list.reduce((sum, entry) => sum + 1 + details(entry) * 2, 0) - (isOverview(list) ? 1000 : 0);

/** What one block says: sums told beside their parts are dropped, and one thing told by processor is one thing. */
function wholeBlock(block: readonly ListEntry[]): WholeList {
	const named = mergedNames(block);
	const bySeries = mergedSeries(named);
	const bare = bySeries.entries.filter((entry) => details(entry) === 0);
	const rest = bySeries.entries.filter((entry) => details(entry) > 0);
	if (bare.length > 0 && rest.length > 0 && bare.length === rest.length && isOneLine(bare))
		return { entries: rest, rivals: bySeries.rivals };
	// "3 x M.2" over two sockets by name: one of the two is wrong.
	if (bare.length > 0 && rest.length > 0 && isOneLine(bare) && rest.every(({ name }) => name !== undefined))
		return { entries: rest, rivals: [...bySeries.rivals, bare] };
	return overNamed(bySeries);
}

/** "3 x PCIe x16 slot" over three slots by name tells of each of them. */
function overNamed({ entries, rivals }: WholeList): WholeList {
	const named = entries.filter(({ name }) => name !== undefined);
	const over = entries.filter(({ name }) => name === undefined);
	if (over.length === 0 || over.length !== named.length || over.some((one) => details(one) === 0))
		return { entries, rivals };
	// A short slot has fewer of the others to be, so it is placed first.
	const lengthOf = ({ facts }: ListEntry) => Number(facts["lengthLanes"] ?? 0);
	const byLength = over.toSorted((one, other) => lengthOf(one) - lengthOf(other));
	const places = pairing(byLength, named);
	const pairs = places && over.map((one) => places[byLength.indexOf(one)] as number);
	return pairs
		? { entries: named.map((entry, index) => enriched(entry, over[pairs.indexOf(index)] as ListEntry)), rivals }
		: { entries, rivals };
}

const isOneLine = (entries: readonly ListEntry[]): boolean => entries.every(({ quote }) => quote === entries[0]?.quote);

/** Entries of one name are one thing. */
function mergedNames(block: readonly ListEntry[]): readonly ListEntry[] {
	const merged: ListEntry[] = [];
	for (const entry of block) {
		const at = entry.name === undefined ? -1 : merged.findIndex(({ name }) => name === entry.name);
		if (at < 0) merged.push(entry);
		else merged[at] = best(merged[at] as ListEntry, entry);
	}
	return merged;
}

function mergedSeries(block: readonly ListEntry[]): WholeList {
	const groups = [...groupedBy(block, ({ series }) => series ?? "").entries()];
	const always = groups.find(([series]) => series === "")?.[1] ?? [];
	const series = groups.filter(([name]) => name !== "").map(([, entries]) => entries);
	const [first, ...others] = series;
	if (!first) return { entries: block, rivals: [] };
	let entries: readonly ListEntry[] = first;
	const rivals: (readonly ListEntry[])[] = [];
	for (const other of others) {
		// With some processors fewer of them work: the longer list has the best case of each.
		const [long, short] = other.length > entries.length ? [other, entries] : [entries, other];
		const isAlike = short.every((entry, index) => (entry.name ?? "") === (long[index]?.name ?? entry.name ?? ""));
		if (isAlike) entries = long.map((entry, index) => (short[index] ? best(entry, short[index]) : entry));
		else rivals.push([...other, ...always]);
	}
	return { entries: [...entries, ...always], rivals };
}

/** The same thing with two processors: the wider and the newer of what is told. */
function best(one: ListEntry, other: ListEntry): ListEntry {
	const facts: Record<string, unknown> = { ...other.facts, ...one.facts };
	for (const key of Object.keys(facts)) {
		const [mine, its] = [one.facts[key], other.facts[key]];
		if (typeof mine === "number" && typeof its === "number") facts[key] = Math.max(mine, its);
	}
	return { ...one, facts };
}

/** Lists whose things all have names of their own are parts of one list. */
function joinedByName(lists: readonly (readonly ListEntry[])[]): readonly (readonly ListEntry[])[] {
	const allNamed = (list: readonly ListEntry[]) => list.every(({ name }) => name !== undefined);
	const named = lists.filter(allNamed);
	if (named.length < 2) return lists;
	return [mergedNames(named.flat()), ...lists.filter((list) => !allNamed(list))];
}

/** For each thing of a list its place in another, or nothing where one has none left. */
function pairing(list: readonly ListEntry[], others: readonly ListEntry[]): readonly number[] | undefined {
	if (list.length > others.length) return undefined;
	const taken = new Set<number>();
	const places = new Map<ListEntry, number>();
	// What is told in the same words is the same thing; of the rest who tells most is the hardest to place.
	for (const entry of list) {
		const at = others.findIndex((other, index) => !taken.has(index) && isSame(entry, other));
		if (at < 0) continue;
		taken.add(at);
		places.set(entry, at);
	}
	for (const entry of list.toSorted((one, other) => details(other) - details(one))) {
		if (places.has(entry)) continue;
		const at = others.findIndex((other, index) => !taken.has(index) && agree(entry, other));
		if (at < 0) return undefined;
		taken.add(at);
		places.set(entry, at);
	}
	return list.map((entry) => places.get(entry) as number);
}

const isSame = (one: ListEntry, other: ListEntry): boolean =>
	one.name === other.name && JSON.stringify(one.facts) === JSON.stringify(other.facts);

function agree(one: ListEntry, other: ListEntry): boolean {
	// No slot has more lanes than it is long for.
	const [length, wired] = [one.facts["lengthLanes"], other.facts["wiredLanes"]];
	if (typeof length === "number" && typeof wired === "number" && wired > length) return false;
	if (one.name !== undefined && other.name !== undefined && one.name !== other.name) return false;
	return Object.entries(one.facts).every(
		([key, value]) =>
			other.facts[key] === undefined ||
			one.assumed?.includes(key) ||
			other.assumed?.includes(key) ||
			JSON.stringify(other.facts[key]) === JSON.stringify(value),
	);
}

/** "PCI Express x16: 2" counts all of this sort: the whole list must have just as many. */
function countsAgree(list: readonly ListEntry[], whole: readonly ListEntry[]): boolean {
	const sorts = groupedBy(list, ({ facts }) => JSON.stringify(facts));
	return [...sorts.values()].every((sort) => {
		const [first] = sort;
		if (!first || first.name !== undefined) return true;
		const keys = Object.keys(first.facts);
		const alike = whole.filter((entry) =>
			keys.every((key) => JSON.stringify(entry.facts[key]) === JSON.stringify(first.facts[key])),
		);
		return alike.length === sort.length;
	});
}

function enriched(entry: ListEntry, other: ListEntry): ListEntry {
	const stated = Object.fromEntries(Object.entries(other.facts).filter(([key]) => !other.assumed?.includes(key)));
	// What follows from a standard in one place may be stated in the other.
	const assumed = entry.assumed?.filter((key) =>
		key in entry.facts ? !(key in stated) : other.assumed?.includes(key),
	);
	const { assumed: _, ...rest } = entry;
	return {
		...rest,
		...(entry.name === undefined && other.name !== undefined ? { name: other.name } : {}),
		...(entry.ports === undefined && other.ports !== undefined ? { ports: other.ports } : {}),
		facts: {
			...other.facts,
			...entry.facts,
			...Object.fromEntries(Object.entries(stated).filter(([key]) => entry.assumed?.includes(key))),
		},
		...(assumed && assumed.length > 0 ? { assumed } : {}),
	};
}

function groupedBy<T>(list: readonly T[], keyOf: (one: T) => string): ReadonlyMap<string, readonly T[]> {
	const groups = new Map<string, T[]>();
	for (const one of list) {
		const key = keyOf(one);
		const group = groups.get(key);
		if (group) group.push(one);
		else groups.set(key, [one]);
	}
	return groups;
}
