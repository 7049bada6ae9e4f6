import type { FansTold, RadiatorsTold } from "./case-fans.ts";
import type { FactCollector } from "./fact-collector.ts";
import type { ReadAt } from "./part-reading.ts";

/** Fans and radiators as they are read, put together by place in the end. */
export interface PlacesGathered {
	fans(told: readonly FansTold[], at: ReadAt): void;
	radiators(told: readonly RadiatorsTold[], at: ReadAt): void;
	/** Hands everything to the collector: one entry a place and size, and a doubt where the text tells two counts. */
	settle(collector: FactCollector): void;
}

export function placesGathered(): PlacesGathered {
	const fans = new Map<string, { told: FansTold; at: ReadAt }[]>();
	const radiators = new Map<string, { lengths: Set<number>; thick: Set<number>; at: ReadAt }>();
	return {
		fans(told, at) {
			for (const one of told) {
				const key = `${one.place} ${one.sizeMm}`;
				const before = fans.get(key) ?? [];
				const isNew = !before.some(({ told: other }) => other.count === one.count && other.fitted === one.fitted);
				if (isNew) fans.set(key, [...before, { told: one, at }]);
			}
		},
		radiators(told, at) {
			for (const { place, lengthsMm, maxThicknessMm } of told) {
				const before = radiators.get(place) ?? { lengths: new Set(), thick: new Set(), at };
				for (const mm of lengthsMm) before.lengths.add(mm);
				if (maxThicknessMm !== undefined) before.thick.add(maxThicknessMm);
				radiators.set(place, before);
			}
		},
		settle(collector) {
			let index = 0;
			for (const all of fans.values()) settleFans(collector, all, () => `fanPlaces[${index++}]`);
			for (const [place, { lengths, thick, at }] of radiators) {
				const [maxThicknessMm, ...others] = [...thick];
				const value = {
					place,
					lengthsMm: [...lengths].toSorted((one, other) => one - other),
					...(maxThicknessMm !== undefined && others.length === 0 && { maxThicknessMm }),
				};
				collector.found(`radiatorPlaces[${[...radiators.keys()].indexOf(place)}]`, value, at);
			}
		},
	};
}

function settleFans(
	collector: FactCollector,
	all: readonly { readonly told: FansTold; readonly at: ReadAt }[],
	nextPath: () => string,
): void {
	const [first] = all;
	if (!first) return;
	const { place, sizeMm } = first.told;
	const counted = all.filter(({ told }) => told.count !== undefined);
	const counts = [...new Set(counted.map(({ told }) => told.count))];
	const fitted = [...new Set(all.map(({ told }) => told.fitted).filter((one) => one !== undefined))];
	const [count, ...otherCounts] = counts;
	if (count === undefined) {
		const might = fitted.filter((one) => one > 0).map((one) => ({ place, sizeMm, count: one, fitted: one }));
		collector.doubted("fanPlaces", might, first.at, "The text tells of fans that are fitted, not how many fit there.");
		return;
	}
	if (otherCounts.length > 0) {
		const might = counts.map((one) => ({ place, sizeMm, count: one }));
		collector.doubted(
			"fanPlaces",
			might,
			counted[0]?.at ?? first.at,
			"The text gives more than one count for this place.",
		);
		return;
	}
	// "Optional" beside a place tells less than a count of those in the box.
	const [sure, ...otherFitted] = fitted.some((one) => one > 0) ? fitted.filter((one) => one > 0) : fitted;
	const isSure = sure !== undefined && otherFitted.length === 0 && sure <= count;
	const value = { place, sizeMm, count, ...(isSure && { fitted: sure }) };
	collector.found(nextPath(), value, joined(all.map(({ at }) => at)));
}

function joined(all: readonly ReadAt[]): ReadAt {
	return { line: all[0]?.line ?? 1, quote: [...new Set(all.map(({ quote }) => quote))].slice(0, 4).join(" / ") };
}
