import type { PlanMeasure } from "../plan/measure-plan.ts";
import { planWords } from "./plan-words.ts";

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
		mayLackPlace: measure.mayLackPlace,
		missing: measure.missing,
		wouldFitWithout: measure.goings.map((going) =>
			going.map(({ alike, count }) => ({ count, of: alike.map(({ name }) => name) })),
		),
		connectors: plan.ends.map(({ connector, state, lanes, by }) => ({
			name: connector.name,
			kind: connector.kind,
			state,
			lanes,
			by,
		})),
		uplink: { wantedGbytesPerS: uplink.wantedGbytesPerS, carriesGbytesPerS: uplink.carriesGbytesPerS },
		later: measure.later,
		words: planWords(measure).map(({ heading, lines }) => ({ heading, lines })),
	};
}
