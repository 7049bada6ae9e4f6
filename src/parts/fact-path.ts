import type { Board } from "./board.ts";
import type { BuildFacts, BuildPartKind, BuildParts, HaveState, WishStrength } from "./build.ts";
import type { Platform } from "./platform.ts";
import { noWants, type Wants } from "./wants.ts";

type PartInside<H> = H extends { readonly state: "have"; readonly part: infer P } ? P : never;

/**
 * What is worked out of a whole build for one board, by the root of its paths ("plan.things"). Whoever measures adds a
 * line to this interface, beside the shape of what is measured.
 */
// biome-ignore lint/suspicious/noEmptyInterface: it is filled where things are measured, so that parts need not know them
export interface MeasuredFacts {}

/** Everything a fact path can start with, and the part it leads into. */
export type FactRoots = { [K in BuildPartKind]: PartInside<BuildParts[K]> } & {
	board: Board;
	platform: Platform;
} & MeasuredFacts;

type ValueAt<T, P extends string> = P extends `${infer Key}.${infer Rest}`
	? Key extends keyof NonNullable<T>
		? ValueAt<NonNullable<T>[Key], Rest>
		: never
	: P extends keyof NonNullable<T>
		? NonNullable<NonNullable<T>[P]>
		: never;

/**
 * The type of the fact at a path. A part kind alone ("graphicsCard") gives what the person has of it; "platform" is
 * the table row for the board's socket and chipset; "wish.ID" the strength of a wish; a want stands under its name.
 */
export type FactValue<P extends string> = P extends BuildPartKind
	? HaveState
	: P extends keyof Wants
		? NonNullable<Wants[P]>
		: P extends `wish.${string}`
			? WishStrength
			: ValueAt<FactRoots, P>;

/** Facts under their paths: those always present and those that may be missing. */
export type FactsUnder<Always extends string, Maybe extends string> = {
	readonly [P in Always]: FactValue<P>;
} & { readonly [P in Maybe]?: FactValue<P> };

/** What fact paths are read from: one board (with its platform row, if there is one) in one world. */
export interface FactSubject {
	readonly board?: Board;
	readonly platform?: Platform;
	readonly facts: BuildFacts;
	/** How to measure the board with a build; asked only for what is read. */
	readonly measures?: { readonly [Root in keyof MeasuredFacts]?: (facts: BuildFacts) => MeasuredFacts[Root] };
}

export type FactLookup =
	| { readonly known: true; readonly value: unknown }
	/** `missing` is the path a person would have to find out; `state` says why where a whole part is not there. */
	| { readonly known: false; readonly missing: string; readonly state?: HaveState };

/** A fact path taken apart: its root, the keys below it, and those as one path inside a part. */
export interface PathParts {
	readonly root: string;
	readonly keys: readonly string[];
	readonly inside: string;
}

/** There are only as many paths as rules and criteria name, and each is looked up for every board. */
const partsOfPath = new Map<string, PathParts>();

/** Takes a path apart, once for all. */
export function pathParts(path: string): PathParts {
	const known = partsOfPath.get(path);
	if (known) return known;
	const [root = "", ...keys] = path.split(".");
	const parts: PathParts = { root, keys, inside: keys.join(".") };
	partsOfPath.set(path, parts);
	return parts;
}

const measuredRoots: ReadonlySet<string> = new Set(["plan", "headers", "power"]);

/** Whether what stands at a path must be measured of the whole build first, which takes a while. */
export function isMeasuredPath(path: string): boolean {
	return measuredRoots.has(pathParts(path).root);
}

/** Looks one path up. Never throws; an unknown root is simply missing (a test holds all paths against the definitions). */
export function lookUpFact(subject: FactSubject, path: string): FactLookup {
	const { root, keys, inside: below } = pathParts(path);
	if (root === "wish") return inside(subject.facts.wishes, [below], path);
	if (isWant(root)) return present(subject.facts[root] ?? undefined, path);
	if (root === "board" || root === "platform") return inside(subject[root], keys, path);
	const measures: Readonly<Record<string, ((facts: BuildFacts) => object) | undefined>> = subject.measures ?? {};
	const measure = Object.hasOwn(measures, root) ? measures[root] : undefined;
	if (measure) return inside(measure(subject.facts), keys, path);
	const have = (subject.facts as unknown as Record<string, BuildParts[BuildPartKind] | undefined>)[root];
	if (!Object.hasOwn(subject.facts, root) || !have?.state) return { known: false, missing: path };
	if (keys.length === 0) return { known: true, value: have.state };
	if (have.state !== "have") return { known: false, missing: root, state: have.state };
	return inside(have.part, keys, path);
}

/**
 * Puts a fact under its path, if it is known. What is measured of the whole build is looked up when it is first read:
 * that takes long, and many rules see from the rest that they need not know. Who has no M.2 drive needs no plan for it.
 */
export function addFact(values: Record<string, unknown>, path: string, subject: FactSubject): void {
	if (!isMeasuredPath(path)) {
		const found = lookUpFact(subject, path);
		if (found.known) values[path] = found.value;
		return;
	}
	Object.defineProperty(values, path, {
		configurable: true,
		enumerable: true,
		get() {
			const found = lookUpFact(subject, path);
			const value = found.known ? found.value : undefined;
			Object.defineProperty(values, path, { value, enumerable: found.known });
			return value;
		},
	});
}

function isWant(root: string): root is keyof Wants {
	return Object.hasOwn(noWants, root);
}

function inside(start: unknown, keys: readonly string[], path: string): FactLookup {
	let value: unknown = start;
	for (const key of keys) {
		if (value === null || typeof value !== "object" || !Object.hasOwn(value, key))
			return { known: false, missing: path };
		value = (value as Record<string, unknown>)[key];
	}
	return present(value, path);
}

function present(value: unknown, path: string): FactLookup {
	return value === undefined ? { known: false, missing: path } : { known: true, value };
}
