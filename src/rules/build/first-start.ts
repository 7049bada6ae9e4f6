import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass } from "../outcome.ts";

/** From so many modules, or so much memory in all, the first start takes longest: own convention. */
const manyModules = 4;
const largeGb = 64;
/** How long to wait in the dark, in minutes: common practice, no source. */
const waitMinutes = 15;
const longWaitMinutes = 15;

/** The board tries out the memory at the first start, and shows nothing meanwhile. Common practice, no source. */
export const firstStart = defineRule({
	id: "build/first-start",
	scope: "build",
	label: "First start",
	wayOut: "other memory",
	asks: "Will the screen stay dark for long at the first start?",
	why: "At the first start the board tries out the memory. Switching off meanwhile makes it begin anew.",
	source: "common-practice",
	severity: "good-to-know",
	reads: ["memory.type"],
	mayRead: ["memory.modules", "memory.gbPerModule"],
	messages: {
		short: ({ type }: { type: string }) => `With ${type} the first start takes seconds, or a minute at most.`,
		fewMinutes: ({ modules, type }: { modules: number; type: string }) =>
			`With ${modules} modules of ${type} the screen can stay dark for a minute or two at the first start.`,
		minutes: ({ type }: { type: string }) =>
			`With ${type} the screen can stay dark for some minutes at the first start, while the board tries out the memory.`,
		long: ({ type, modules, gb }: { type: string; modules: number; gb: number }) =>
			`With ${[modules > 0 ? `${modules} ${modules === 1 ? "module" : "modules"}` : "", gb > 0 ? `${gb} GB` : ""].filter((words) => words).join(" and ")} of ${type} the screen can stay dark for ten minutes at the first start.`,
	},
	advice: {
		fewMinutes: () => waiting(waitMinutes),
		minutes: () => waiting(waitMinutes),
		long: () => waiting(longWaitMinutes),
	},
	check(facts): Outcome {
		const type = facts["memory.type"];
		const [modules, eachGb] = [facts["memory.modules"], facts["memory.gbPerModule"]];
		const isMany = modules !== undefined && modules >= manyModules;
		if (type !== "DDR5") {
			if (type === "DDR4" && modules === undefined) return cannotTell(["memory.modules"]);
			return type === "DDR4" && isMany ? goodToKnow("fewMinutes", { modules, type }) : pass("short", { type });
		}
		const gb = (modules ?? 1) * (eachGb ?? 0);
		return isMany || gb >= largeGb
			? goodToKnow("long", { type, modules: modules ?? 0, gb })
			: pass("minutes", { type });
	},
});

function waiting(minutes: number): string {
	return `Wait ${minutes} minutes before you think it broken. Switch off at once if it smells, smokes, sparks or leaks, or if no fan of the cooler turns. Switch on the memory profile, for the rate on the label, only after a first start without it.`;
}
