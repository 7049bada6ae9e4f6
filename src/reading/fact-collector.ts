import type { ReadAt, ReadDoubt, ReadFact } from "./part-reading.ts";

/** Gathers what the lines of a text tell, so that what is told twice counts once and what disagrees is told. */
export interface FactCollector {
	/** The text says so. `standing` "assumed": it follows from a standard. */
	found(fact: string, value: unknown, at: ReadAt, standing?: "stated" | "assumed"): void;
	/** The text leaves it open. */
	doubted(fact: string, might: readonly unknown[], at: ReadAt, why: string): void;
	/** What stands in the end. */
	settled(): { readonly facts: readonly ReadFact[]; readonly doubts: readonly ReadDoubt[] };
}

/** A collector for facts that have one value; lists are put together by those who read them. */
export function factCollector(): FactCollector {
	const told = new Map<string, ReadFact[]>();
	const doubts: ReadDoubt[] = [];
	const alike = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);
	return {
		found(fact, value, { line, quote }, standing = "stated") {
			const before = told.get(fact) ?? [];
			// A page tells a fact a few times; a hostile text must not make this slow.
			if (before.length >= 40 || before.some((one) => alike(one.value, value) && one.standing === standing)) return;
			told.set(fact, [...before, { fact, value, standing, line, quote }]);
		},
		doubted(fact, might, { line, quote }, why) {
			if (doubts.some((one) => one.fact === fact && one.quote === quote && one.why === why)) return;
			doubts.push({ fact, might, line, quote, why });
		},
		settled() {
			const facts: ReadFact[] = [];
			const open: ReadDoubt[] = [];
			for (const [fact, all] of told) {
				const stated = all.filter(({ standing }) => standing === "stated");
				const values = stated.length > 0 ? stated : all;
				const [first] = values;
				if (!first) continue;
				const against = doubts.filter((doubt) => doubt.fact === fact && !settles(doubt, first.value, alike));
				if (values.length === 1 && against.length === 0) facts.push(first);
				else
					open.push({
						fact,
						might: [...values.map(({ value }) => value), ...against.flatMap(({ might }) => might)].filter(
							(value, index, list) => list.findIndex((other) => alike(other, value)) === index,
						),
						line: first.line,
						quote: [...new Set([...values, ...against].map(({ quote }) => quote))].join(" / "),
						why: against[0]?.why ?? "The text gives more than one value.",
					});
			}
			return { facts, doubts: [...open, ...doubts.filter(({ fact }) => !told.has(fact))] };
		},
	};
}

/** A clear line settles what another line left open, if the two can both be right. */
function settles({ might }: ReadDoubt, value: unknown, alike: (one: unknown, other: unknown) => boolean): boolean {
	return might.length === 0 || might.some((one) => alike(one, value));
}
