import type { BuildFacts, BuildPartKind, BuildParts, Have } from "../parts/build.ts";
import { partWords } from "../parts/part-words.ts";
import type { ManyLine } from "./many-question.ts";

/** Kinds of part that a person may have picked, in the order they are asked. */
export const partKindsOfBuild = [
	"processor",
	"case",
	"graphicsCard",
	"memory",
	"cooler",
	"supply",
] as const satisfies readonly BuildPartKind[];

/** A line for each part that was picked and that `counts` lets pass. */
export function linesOfParts(facts: BuildFacts, counts: (have: Have<unknown>) => boolean): readonly ManyLine[] {
	return partKindsOfBuild.flatMap((kind): readonly ManyLine[] => {
		const have = facts[kind];
		if (have.state !== "have" || !counts(have)) return [];
		return [{ value: kind, label: partLabel(kind), explanation: have.part.name }];
	});
}

const listWords: Readonly<Record<string, string>> = { drives: "drives", addInCards: "other cards" };

/** A kind of part at the beginning of a line: "Graphics card". */
export function partLabel(kind: string): string {
	const noun = partWords[kind] ?? listWords[kind] ?? kind;
	return `${noun[0]?.toUpperCase()}${noun.slice(1)}`;
}

/** The build with every picked part given the ownership that `ownershipOf` says, or left as it is. */
export function withOwnership(
	facts: BuildFacts,
	ownershipOf: (kind: BuildPartKind) => "bought" | "returnable" | "planned" | null,
): BuildFacts {
	const changed = partKindsOfBuild.flatMap((kind) => {
		const [have, ownership] = [facts[kind], ownershipOf(kind)];
		return have.state === "have" && ownership ? [[kind, { ...have, ownership }] as const] : [];
	});
	return { ...facts, ...(Object.fromEntries(changed) as Partial<BuildParts>) };
}
