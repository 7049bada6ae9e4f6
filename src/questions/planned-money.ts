import type { Answers } from "../parts/answers-file.ts";
import type { BuildFacts } from "../parts/build.ts";
import type { Money } from "../parts/money.ts";
import { partKindsOfBuild } from "./owned-parts.ts";

interface Priced {
	readonly price?: Money | undefined;
}

/**
 * What the parts that were picked and are still to be paid cost, as far as their prices are known in the currency of the
 * money there is. Where something is spent already and nobody has said on what, nothing is counted: it could count twice.
 */
export function withPlannedMoney(facts: BuildFacts, answers: Answers): BuildFacts {
	const { moneyInAll, moneySpent } = facts;
	const toldWhat = answers["fit/bought"]?.status === "answered";
	if (!moneyInAll || ((moneySpent?.minor ?? 0) > 0 && !toldWhat)) return facts;
	const picked = partKindsOfBuild.flatMap((kind): readonly Priced[] => {
		const have = facts[kind];
		return have.state === "have" && have.ownership === "planned" ? [have.part] : [];
	});
	const lists = [
		...(facts.boughtLists?.includes("drives") ? [] : (facts.drives ?? [])),
		...(facts.boughtLists?.includes("addInCards") ? [] : (facts.addInCards ?? [])),
	];
	const minor = [...picked, ...lists].reduce(
		(sum, { price }: Priced) => sum + (price?.currency === moneyInAll.currency ? price.minor : 0),
		0,
	);
	return minor > 0 ? { ...facts, moneyPlanned: { minor, currency: moneyInAll.currency } } : facts;
}
