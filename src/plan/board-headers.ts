import type { Board } from "../parts/board.ts";
import { silentFanHeader } from "../reference/header-budgets.ts";
import { usbRates } from "../reference/usb-rates.ts";

export type BoardOfHeaders = Pick<Board, "headers">;

export type BoardHeaderKind =
	| "USB 9-pin"
	| "USB 19-pin"
	| "USB-C 20-pin"
	| "front sound"
	| "fan"
	| "5 V lights"
	| "12 V lights";

/** The fact of a board that gives its headers of a kind. */
export const headerFacts = {
	"USB 9-pin": "board.headers.usb2",
	"USB 19-pin": "board.headers.usb5",
	"USB-C 20-pin": "board.headers.typeC",
	"front sound": "board.headers.frontAudio",
	fan: "board.headers.fans",
	"5 V lights": "board.headers.lights",
	"12 V lights": "board.headers.lights",
} as const satisfies Record<BoardHeaderKind, string>;
export type HeaderFact = (typeof headerFacts)[BoardHeaderKind];

/** A header of the board: one plug goes on it. */
export interface BoardHeader {
	/** The board's own name where its facts give one; used once. */
	readonly name: string;
	readonly kind: BoardHeaderKind;
	/** What a fan header is meant for; null for all others. */
	readonly use: "processor" | "pump" | "case" | null;
	/** Rate of a USB header, in Gb/s; null where nobody knows or it is none. */
	readonly gbps: number | null;
	/** What it can feed, in A; 1 for a fan header of which nothing is said, null for lights of which nothing is said. */
	readonly amps: number | null;
	/** Most single lights on a lighting header; null where nobody knows or it is none. */
	readonly mostLights: number | null;
}

/** The headers a board's facts give, and the facts that are not known: of those nobody may say there are none. */
export interface BoardHeaders {
	readonly known: readonly BoardHeader[];
	readonly notGiven: readonly HeaderFact[];
}

/** Every header of a board, in the order of its facts: USB, sound, fans, lights. */
export function boardHeadersOf({ headers = {} }: BoardOfHeaders): BoardHeaders {
	const { usb2, usb5, typeC, frontAudio, fans, lights } = headers;
	const known = [
		...counted(usb2 ?? 0, "9-pin USB header", "USB 9-pin", usbRates["USB 2.0"].gbitsPerSecond),
		// A 19-pin header is for USB 5Gbps (from memory).
		...counted(usb5 ?? 0, "19-pin USB header", "USB 19-pin", usbRates["USB 5Gbps"].gbitsPerSecond),
		...typeCHeaders(typeC ?? []),
		...counted(frontAudio ? 1 : 0, "front sound header", "front sound", null),
		...(fans ?? []).map(
			({ name, use, amps = silentFanHeader.amps }): BoardHeader => ({ ...plain, name, kind: "fan", use, amps }),
		),
		...(lights ?? []).map(
			({ name, volts, amps = null, mostLights = null }): BoardHeader => ({
				...plain,
				name,
				kind: volts === 5 ? "5 V lights" : "12 V lights",
				amps,
				mostLights,
			}),
		),
	];
	const given: Readonly<Record<HeaderFact, unknown>> = {
		"board.headers.usb2": usb2,
		"board.headers.usb5": usb5,
		"board.headers.typeC": typeC,
		"board.headers.frontAudio": frontAudio,
		"board.headers.fans": fans,
		"board.headers.lights": lights,
	};
	const notGiven = (Object.keys(given) as HeaderFact[]).filter((fact) => given[fact] === undefined);
	return { known: namedOnce(known), notGiven };
}

const plain = { use: null, gbps: null, amps: null, mostLights: null } as const;

/** Headers of which a page gives only the number. */
function counted(count: number, words: string, kind: BoardHeaderKind, gbps: number | null): readonly BoardHeader[] {
	return Array.from({ length: count }, (_, index) => ({
		...plain,
		name: count === 1 ? words : `${words} ${index + 1}`,
		kind,
		gbps,
	}));
}

function typeCHeaders(all: NonNullable<NonNullable<Board["headers"]>["typeC"]>): readonly BoardHeader[] {
	return all.map(({ gbps = null }, index) => {
		const words = all.length === 1 ? "USB-C header" : `USB-C header ${index + 1}`;
		const name = gbps === null ? words : `${words} (${gbps} Gb/s)`;
		return { ...plain, name, kind: "USB-C 20-pin", gbps };
	});
}

/** A name that a board's facts use twice would point at two headers: the second gets a number. */
function namedOnce(headers: readonly BoardHeader[]): readonly BoardHeader[] {
	const taken = new Set<string>();
	return headers.map((header) => {
		let name = header.name;
		for (let nth = 2; taken.has(name); nth++) name = `${header.name} (${nth})`;
		taken.add(name);
		return { ...header, name };
	});
}
