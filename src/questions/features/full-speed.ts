import { fullSpeed as criterion } from "../../criteria/full-speed.ts";
import type { BuildFacts } from "../../parts/build.ts";
import { importanceQuestion } from "../importance-question.ts";

export const fullSpeed = importanceQuestion(criterion, {
	id: "features/full-speed",
	tier: "features",
	label: "Your parts at full speed matter",
	howToFindOut: "Ask yourself whether you would notice if a large copy took twice as long.",
	// Without any fast part there is nothing to weigh.
	applies: namesFastPart,
});

function namesFastPart({ graphicsCard, memory, drives, addInCards }: BuildFacts): boolean {
	return (
		graphicsCard.state === "have" ||
		graphicsCard.state === "open" ||
		(memory.state === "have" && memory.part.mtPerS !== undefined) ||
		(drives ?? []).some(({ link }) => link === "PCI Express" || link === "U.2") ||
		(addInCards ?? []).some(({ bus }) => bus !== "PCI")
	);
}
