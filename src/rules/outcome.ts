import type { SourceId } from "../reference/sources.ts";

export type Verdict = "fits" | "does-not-fit" | "cannot-tell";
export type Severity = "stops" | "plan-around" | "good-to-know";
/** Values a message is filled with. */
export type MessageData = Readonly<Record<string, string | number | boolean | readonly string[]>>;

/** What the body of a rule answers. Only a failure stops; a caution is a fit with something to plan around or know. */
export type Outcome =
	| { readonly kind: "pass"; readonly messageId: string; readonly data: MessageData }
	| {
			readonly kind: "caution";
			readonly severity: "plan-around" | "good-to-know";
			readonly messageId: string;
			readonly data: MessageData;
	  }
	| { readonly kind: "fail"; readonly messageId: string; readonly data: MessageData }
	| {
			readonly kind: "unknown";
			readonly messageId: string;
			readonly data: MessageData;
			readonly missing: readonly string[];
	  };

export const pass = (messageId: string, data: MessageData = {}): Outcome => ({ kind: "pass", messageId, data });
export const fail = (messageId: string, data: MessageData = {}): Outcome => ({ kind: "fail", messageId, data });
export const planAround = (messageId: string, data: MessageData = {}): Outcome => ({
	kind: "caution",
	severity: "plan-around",
	messageId,
	data,
});
export const goodToKnow = (messageId: string, data: MessageData = {}): Outcome => ({
	kind: "caution",
	severity: "good-to-know",
	messageId,
	data,
});
/** The rule cannot tell; `missing` are the fact paths that would settle it. */
export const cannotTell = (missing: readonly string[], messageId = "missing", data: MessageData = {}): Outcome => ({
	kind: "unknown",
	messageId,
	data,
	missing,
});

/** A fact that a rule read, and how it is known. */
export interface FactRead {
	readonly path: string;
	readonly value: unknown;
	readonly standing: "stated" | "assumed";
	/** For an assumed fact: the standard it is assumed from, and why. */
	readonly source?: SourceId;
	readonly because?: string;
}

/** What a rule found for one board in one world (a build rule: for the build in one world). */
export interface Finding {
	readonly ruleId: string;
	readonly verdict: Verdict;
	/** Set when there is something to say beyond "fits". */
	readonly severity: Severity | null;
	readonly messageId: string;
	readonly data: MessageData;
	readonly facts: readonly FactRead[];
	/** Fact paths that would have to be found out. */
	readonly missing: readonly string[];
}
