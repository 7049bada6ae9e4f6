import { partsOfRule } from "../choose/firmness.ts";
import type { Judgement } from "../choose/judge.ts";
import type { Build, BuildFacts } from "../parts/build.ts";
import { type Money, moneyText } from "../parts/money.ts";
import { partWords } from "../parts/part-words.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import { isM2Drive } from "../reference/m2-fit.ts";
import { ruleById } from "../rules/all-rules.ts";
import { moneyLeft } from "../rules/money-left.ts";
import { listed } from "./listed.ts";

const numberWords = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** "one", "two" up to ten; figures beyond. */
export function countWord(count: number): string {
	return numberWords[count] ?? String(count);
}

/** "one drive", "five drives". */
export function counted(count: number, one: string, more = `${one}s`): string {
	return `${countWord(count)} ${count === 1 ? one : more}`;
}

/**
 * Demands that no board meets together, in one sentence: "These cannot go together on any board here: five M.2 drives and
 * your price limit of EUR 210.00." Demands are named from the build, and two rules about one thing name it once.
 */
export function conflictWords(ruleIds: readonly string[], { build }: Pick<Judgement, "build">): string {
	const demands = [...new Set(ruleIds.map((id) => demandWords(id, build)))].sort();
	return demands.length === 1
		? `No board here goes with this: ${demands[0]}.`
		: `These cannot go together on any board here: ${listed(demands)}.`;
}

/** What one rule demands of a board for this build: "your price limit of EUR 210.00", "your case, the Shoebox". */
export function demandWords(ruleId: string, { facts }: Pick<Build, "facts">): string {
	const special = specials[ruleId]?.(facts);
	if (special) return special;
	const rule = ruleById(ruleId);
	if (!rule) return ruleId;
	const parts = partsOfRule(rule, facts).map((kind) => partNamed(kind, facts));
	if (parts.length > 0) return listed(parts);
	const kinds = [...new Set(rule.reads.map((path) => path.split(".")[0] ?? ""))].flatMap(
		(root) => partWords[root] ?? [],
	);
	return kinds.length > 0 ? `your ${listed(kinds)}` : titleInSentence(rule.label);
}

function partNamed(kind: string, facts: BuildFacts): string {
	const have = facts[kind as "processor"];
	const noun = `your ${partWords[kind] ?? kind}`;
	return have.state === "have" ? `${noun} (${have.part.name})` : noun;
}

const specials: Readonly<Record<string, (facts: BuildFacts) => string | null>> = {
	"fit/price-cap": limitWords,
	"fit/m2-drives": ({ drives }) => {
		const sticks = (drives ?? []).filter(isM2Drive);
		return sticks.length > 0 ? counted(sticks.length, "M.2 drive") : null;
	},
	"fit/memory-size": ({ memoryGb }) => (memoryGb === null ? null : `${memoryGb} GB of memory in the end`),
	"fit/card-slots": ({ addInCards, graphicsCard }) => {
		const cards = (addInCards ?? []).length;
		const graphics = graphicsCard.state === "have" ? [`the ${graphicsCard.part.name}`] : [];
		return cards === 0 ? (graphics[0] ?? null) : listed([...graphics, counted(cards, "other card")]);
	},
	"fit/picture": ({ graphicsCard }) => (graphicsCard.state === "none" ? "a picture without a graphics card" : null),
	"features/rescue-musts": ({ rescueMusts }) =>
		rescueMusts && rescueMusts.length > 0
			? `${counted(rescueMusts.length, "aid")} for the day it does not start`
			: null,
	"features/raise-clock": () => "a processor that runs faster than its maker set",
};

/** The limit that binds: the one for the board, or what is left of all the money. */
export function limitWords({ priceCap, moneyInAll, moneySpent, moneyPlanned }: BuildFacts): string | null {
	const left = moneyLeft(moneyInAll ?? undefined, moneySpent ?? undefined, moneyPlanned ?? undefined);
	const capWords = (cap: Money) => `your price limit of ${moneyText(cap)}`;
	if (!left) return priceCap ? capWords(priceCap) : null;
	if (priceCap && (priceCap.currency !== left.currency || priceCap.minor <= left.minor)) return capWords(priceCap);
	return `the ${moneyText(left)} left of your money`;
}
