import { fingerprintOf } from "./fingerprint.ts";
import type { Market, PartsFile } from "./market.ts";
import { type AnyPart, type PartKind, partKindNames, partKinds } from "./part-kinds.ts";

/** An id that two files both use for one kind of part; the later one is left out. */
export interface Clash {
	readonly kind: PartKind;
	readonly id: string;
}

/** One market from any number of checked parts files, in the order given. */
export function makeMarket(
	version: string,
	files: readonly PartsFile[],
): { market: Market; clashes: readonly Clash[] } {
	const clashes: Clash[] = [];
	const parts = Object.fromEntries(
		partKindNames.map((kind) => {
			const byId = new Map<string, AnyPart>();
			for (const file of files)
				for (const part of (file[partKinds[kind].list] ?? []) as AnyPart[])
					if (byId.has(part.id)) clashes.push({ kind, id: part.id });
					else byId.set(part.id, part);
			return [kind, [...byId.values()]];
		}),
	) as unknown as Market["parts"];
	let fingerprint: string | null = null;
	return {
		market: {
			version,
			// Only what is kept or told needs it, and the first screen waits for neither.
			get fingerprint() {
				fingerprint ??= fingerprintOf(parts);
				return fingerprint;
			},
			parts,
		},
		clashes,
	};
}

/** A market that is called and known as another, with other parts. */
export function marketLike(market: Market, parts: Market["parts"]): Market {
	return {
		version: market.version,
		get fingerprint() {
			return market.fingerprint;
		},
		parts,
	};
}
