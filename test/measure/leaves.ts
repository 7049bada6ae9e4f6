import type { Flat } from "./flat-facts.ts";

/** A leaf of a flat part and what became of it. */
export interface Miss {
	readonly key: string;
	readonly told: unknown;
	readonly expected: unknown;
}

export interface Held {
	/** Leaves that are in both and alike. */
	readonly right: number;
	/** Leaves of what was read. */
	readonly read: number;
	/** Leaves of what was expected. */
	readonly expected: number;
	readonly misses: readonly Miss[];
}

type Plain = Readonly<Record<string, unknown>>;

/** Holds what was read against what a careful person read: leaf by leaf, entries of lists paired by best match. */
export function held(read: Flat, expected: Flat): Held {
	const keys = [...new Set([...Object.keys(expected), ...Object.keys(read)])].filter(
		(key) => key !== "kind" && key !== "_notes",
	);
	const sides = ["widthMm", "depthMm"];
	const parts = keys.filter((key) => !sides.includes(key)).map((key) => heldAt(key, read[key], expected[key]));
	// Which side is which is not asked.
	const sidesOf = (flat: Flat) => sides.flatMap((key) => (flat[key] === undefined ? [] : [flat[key]]));
	// A part's sides are whole millimetres: 304.8 is 305.
	const whole = (values: readonly unknown[]) =>
		values.map((side) => (typeof side === "number" ? Math.round(side) : side));
	const both = heldList("sides", whole(sidesOf(read)), whole(sidesOf(expected)));
	return sum([...parts, both]);
}

function sum(parts: readonly Held[]): Held {
	return {
		right: parts.reduce((total, { right }) => total + right, 0),
		read: parts.reduce((total, one) => total + one.read, 0),
		expected: parts.reduce((total, one) => total + one.expected, 0),
		misses: parts.flatMap(({ misses }) => misses),
	};
}

const isPlain = (value: unknown): value is Plain =>
	typeof value === "object" && value !== null && !Array.isArray(value);

function heldAt(key: string, read: unknown, expected: unknown): Held {
	if (Array.isArray(read) || Array.isArray(expected)) {
		const list = (value: unknown) => (value === undefined ? undefined : Array.isArray(value) ? value : [value]);
		const [mine, its] = [list(read), list(expected)];
		// "None" is told by an empty list, which is one leaf.
		if ((mine?.length ?? 1) === 0 || (its?.length ?? 1) === 0) {
			const alike = mine?.length === 0 && its?.length === 0;
			return leaf(
				key,
				mine === undefined ? undefined : JSON.stringify(mine),
				its === undefined ? undefined : JSON.stringify(its),
				alike,
			);
		}
		return heldList(key, mine ?? [], its ?? []);
	}
	if (isPlain(read) || isPlain(expected)) {
		const [mine, its] = [isPlain(read) ? read : {}, isPlain(expected) ? expected : {}];
		return sum(
			[...new Set([...Object.keys(its), ...Object.keys(mine)])].map((inner) =>
				heldAt(`${key}.${inner}`, mine[inner], its[inner]),
			),
		);
	}
	return leaf(
		key,
		read,
		expected,
		key.startsWith("laneSharing")
			? sameConnectors(read, expected)
			: key.startsWith("frontPorts")
				? samePort(read, expected)
				: sameWord(read, expected),
	);
}

function leaf(key: string, told: unknown, expected: unknown, alike: boolean): Held {
	const isRight = alike && told !== undefined;
	return {
		right: isRight ? 1 : 0,
		read: told === undefined ? 0 : 1,
		expected: expected === undefined ? 0 : 1,
		misses: isRight ? [] : [{ key, told, expected }],
	};
}

/**
 * Letters' case, "Thin" before Mini-ITX, which has the same sides and holes, and the letter behind DVI, which a part
 * has no place for, make no difference.
 */
function sameWord(one: unknown, other: unknown): boolean {
	const plain = (value: unknown) =>
		typeof value === "string"
			? value
					.toLowerCase()
					.replace(/^thin\s/, "")
					.replace(/^dvi-[di]$/, "dvi")
			: value;
	return plain(one) === plain(other);
}

/** Names of one front socket: by shape the oval one, else by rate; one for sound is one for sound. */
function samePort(one: unknown, other: unknown): boolean {
	const sort = (value: unknown) => {
		const text = String(value).toLowerCase();
		if (/type-?\s?c|usb-?c/.test(text)) return "c";
		if (/usb/.test(text)) return /2\.0/.test(text) ? "usb 2" : /3\.[012]|[51]0?\s?gbps/.test(text) ? "usb 3" : "usb";
		return text.replace(/^(?:headphones?|headset|sound)$/, "audio");
	};
	return sort(one) === sort(other);
}

/** A sentence about sharing is found where one of ours names the same connectors. */
function sameConnectors(one: unknown, other: unknown): boolean {
	const names = (text: unknown) =>
		[...String(text).matchAll(/\b(?:M\.?2\w*|PCIe?\s?[\w.]*|SATA\w*|U\.2|x16|x8)/gi)].map(([name]) =>
			name.toUpperCase().replace(/[^A-Z0-9]/g, ""),
		);
	const [mine, its] = [names(one), names(other)];
	return (
		mine.length > 0 && its.length > 0 && its.filter((name) => mine.includes(name)).length >= Math.min(2, its.length)
	);
}

function heldList(key: string, read: readonly unknown[], expected: readonly unknown[]): Held {
	const taken = new Set<number>();
	const pairs: { score: number; mine: number; its: number; result: Held }[] = [];
	for (const [mine, value] of read.entries())
		for (const [its, other] of expected.entries()) {
			const result = heldAt(`${key}[${its}]`, value, other);
			pairs.push({ score: result.right * 100 - result.misses.length, mine, its, result });
		}
	const chosen: Held[] = [];
	const used = new Set<number>();
	for (const pair of pairs.toSorted((one, other) => other.score - one.score)) {
		if (taken.has(pair.mine) || used.has(pair.its) || pair.result.right === 0) continue;
		taken.add(pair.mine);
		used.add(pair.its);
		chosen.push(pair.result);
	}
	// "DDR5" where the hand notes say "DDR5-5600" is right as far as it goes: the rate is missed, nothing is wrong.
	const isPart = (value: unknown) =>
		key === "memoryTypes" &&
		expected.some((other, its) => !used.has(its) && String(other).startsWith(`${String(value)}-`));
	const left = [
		...read.flatMap((value, mine) => (taken.has(mine) || isPart(value) ? [] : [heldAt(`${key}[+]`, value, undefined)])),
		...expected.flatMap((value, its) => (used.has(its) ? [] : [heldAt(`${key}[${its}]`, undefined, value)])),
	];
	return sum([...chosen, ...left]);
}
