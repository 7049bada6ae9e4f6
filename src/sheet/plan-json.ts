import { headerRemarks } from "../plan/header-plan.ts";
import type { HeaderWish } from "../plan/header-wish.ts";
import type { PlanMeasure } from "../plan/measure-plan.ts";
import { planWords } from "./plan-words.ts";

function toldOf({ name, kind, whose, isLater }: HeaderWish) {
	return { name, kind, whose, isLater };
}

/** A plan as plain JSON, for other programs; rates in GB/s (10^9 bytes). Unknown figures are null. */
export function planJson(boardId: string, measure: PlanMeasure): object {
	const { plan, uplink } = measure;
	return {
		schema: "boardwalk/plan@1",
		boardId,
		placed: plan.placed.map(({ device, connector, link, extra, isBuried }) => ({
			name: device.name,
			kind: device.kind,
			standing: device.standing,
			connector: connector.name,
			from: connector.from,
			lanes: link.lanes,
			generation: link.generation,
			gbytesPerS: link.gbytesPerS,
			canUseGbytesPerS: device.gbytesPerS,
			extra,
			isBuried,
		})),
		unplaced: plan.unplaced.map(({ name, kind }) => ({ name, kind })),
		mayLackPlace: measure.mayLackPlace.map(({ name, kind }) => ({ name, kind })),
		missing: measure.missing,
		wouldFitWithout: measure.waysToFit.map(({ without, extras }) => ({
			without: without.map(({ alike, count }) => ({ count, of: alike.map(({ name }) => name) })),
			extras,
		})),
		connectors: plan.ends.map(({ connector, state, lanes, by }) => ({
			name: connector.name,
			kind: connector.kind,
			state,
			lanes,
			by,
		})),
		uplink: {
			wantedGbytesPerS: uplink.wantedGbytesPerS,
			carriesGbytesPerS: uplink.carriesGbytesPerS,
			unrated: uplink.unrated.map(({ device }) => device.name),
		},
		later: {
			wanted: measure.later.wanted,
			fewest: measure.later.fewest,
			most: measure.later.most,
			missing: measure.later.missing,
		},
		headers: {
			placed: measure.headers.placed.map(({ wish, header, remark, couldDoMore }) => ({
				...toldOf(wish),
				header,
				remark: remark === null ? null : headerRemarks[remark],
				couldDoMore,
			})),
			sharing: measure.headers.sharing.map(({ wish, header, amps }) => ({ ...toldOf(wish), header, amps })),
			without: measure.headers.without.map(toldOf),
			unknown: measure.headers.unknown.map(({ wish, fact }) => ({ ...toldOf(wish), fact })),
			free: measure.headers.free,
		},
		memory: measure.memory && {
			modules: measure.memory.modules,
			fill: measure.memory.slots?.fill ?? null,
			empty: measure.memory.slots?.empty ?? null,
		},
		words: planWords(measure).map(({ heading, lines }) => ({ heading, lines })),
	};
}
