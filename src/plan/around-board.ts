import type { BuildFacts } from "../parts/build.ts";
import type { BuildAround } from "./problem.ts";

const known = new WeakMap<BuildFacts, BuildAround>();

/** The facts of a build that a plan looks at; the same object each time, since it is asked for with every board. */
export function buildAround(facts: BuildFacts): BuildAround {
	const around = known.get(facts) ?? whatPlansSee(facts);
	known.set(facts, around);
	return around;
}

function whatPlansSee(facts: BuildFacts): BuildAround {
	const processor = facts.processor.state === "have" ? facts.processor.part : undefined;
	return {
		processor: {
			state: facts.processor.state,
			series: processor?.series,
			generation: processor?.generation,
			graphics: processor?.graphics,
			graphicsLanes: processor?.lanes?.graphics,
			linkGeneration: processor?.lanes?.generation,
		},
		case: facts.case.state === "have" ? facts.case.part : null,
		graphicsCard: facts.graphicsCard,
		drives: facts.drives,
		olderSataDrives: facts.olderSataDrives,
		addInCards: facts.addInCards,
		boughtLists: facts.boughtLists,
		laterThings: facts.laterThings,
		wishes: facts.wishes,
	};
}
