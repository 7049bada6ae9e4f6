import type { Finding } from "../rules/outcome.ts";

/** A finding's verdict as the word in front of it. */
export function findingMark({ verdict, severity }: Pick<Finding, "verdict" | "severity">): string {
	if (verdict === "does-not-fit") return "Stops it";
	if (verdict === "cannot-tell") return "Can't tell";
	if (severity === "plan-around") return "Plan around it";
	return severity === "good-to-know" ? "Good to know" : "Fits";
}
