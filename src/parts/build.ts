import type { PcCase } from "./case.ts";
import type { Cooler } from "./cooler.ts";
import type { GraphicsCard } from "./graphics-card.ts";
import type { MemoryKit } from "./memory-kit.ts";
import type { Processor } from "./processor.ts";
import type { Supply } from "./supply.ts";
import { noWants, type Wants } from "./wants.ts";

/** How firmly a part belongs to the build; what is bought for good is the last to be given up. */
export const ownerships = ["bought", "returnable", "planned"] as const;
type Ownership = (typeof ownerships)[number];

/**
 * What the person has of one kind. "open": will be bought to suit the board. "none": there will be none.
 * "unknown": nobody has said, so nothing may be concluded from it.
 */
export type Have<Part> =
	| { readonly state: "have"; readonly part: Part; readonly ownership: Ownership }
	| { readonly state: "open" }
	| { readonly state: "none" }
	| { readonly state: "unknown" };
export type HaveState = Have<unknown>["state"];

export const wishStrengths = ["must", "would-like", "dont-mind"] as const;
export type WishStrength = (typeof wishStrengths)[number];

export const importanceTiers = ["a-lot", "somewhat", "a-little", "not-at-all"] as const;
export type ImportanceTier = (typeof importanceTiers)[number];

/** The parts of a build that rules and criteria can read, by the root of a fact path. */
export interface BuildParts {
	readonly processor: Have<Processor>;
	readonly case: Have<PcCase>;
	readonly graphicsCard: Have<GraphicsCard>;
	readonly memory: Have<MemoryKit>;
	/** "none": the cooler that comes with the processor. */
	readonly cooler: Have<Cooler>;
	readonly supply: Have<Supply>;
}
export type BuildPartKind = keyof BuildParts;

/** What a person has, plans and wishes, with every question either settled or unknown. */
export interface BuildFacts extends BuildParts, Wants {
	/** By the wish's question id; a wish nobody has settled is absent. */
	readonly wishes: Readonly<Record<string, WishStrength>>;
	/** By criterion id; a criterion nobody has placed is absent. */
	readonly importance: Readonly<Record<string, ImportanceTier>>;
}

/** One way an open question may turn out, and the build that follows. */
export interface World {
	readonly facts: BuildFacts;
	/** What was taken for each open question, in the order asked. */
	readonly choices: readonly { readonly questionId: string; readonly label: string }[];
}

/** The build as far as it is known, and every way the open questions may turn out (at least one, at most 64). */
export interface Build {
	readonly facts: BuildFacts;
	readonly worlds: readonly World[];
	/**
	 * Ids of the questions that made sense when the walk came to them; a question's own answer never takes it away. Left
	 * out of builds made by hand, for which the facts decide.
	 */
	readonly reached?: readonly string[];
}

export const mostWorlds = 64;

export const emptyBuildFacts: BuildFacts = {
	processor: { state: "unknown" },
	case: { state: "unknown" },
	graphicsCard: { state: "unknown" },
	memory: { state: "unknown" },
	cooler: { state: "unknown" },
	supply: { state: "unknown" },
	...noWants,
	wishes: {},
	importance: {},
};
