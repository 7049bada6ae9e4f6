import { inchesOfMm } from "../reference/inches.ts";

const number = "\\d+(?:\\.\\d+)?";
/** One length, or two that share their unit: "80 to 500 mm", "305 x 244 mm". What has its inches already is left alone. */
const length = new RegExp(
	`(?<![\\p{L}\\p{N}.,_/-])(${number})(?:( x | by | to |-)(${number}))? (mm|cm)(?![\\p{L}\\p{N}\\u00b2\\u00b3/-]|[ ]\\([^()]* in\\))`,
	"gu",
);

/** A number of 2 in "2 x 120 mm" counts things and is no length. */
const leastLength = 10;

/**
 * A text with each length in inches too, behind its millimetres or centimetres: "244 mm (9.61 in)". Two decimals, so
 * that what is said never is further off than 0.13 mm. Once more changes nothing.
 */
export function withInches(text: string): string {
	return text.replace(length, (match, first: string, between: string | undefined, second: string, unit: string) => {
		const inches = (value: string) => shortNumber(inchesOfMm(Number(value) * (unit === "cm" ? 10 : 1)));
		if (between === undefined || second === undefined) return `${match} (${inches(first)} in)`;
		if (between.trim() === "x" && unit === "mm" && Number(first) < leastLength)
			return `${match} (${inches(second)} in)`;
		return `${match} (${inches(first)}${between}${inches(second)} in)`;
	});
}

function shortNumber(value: number): string {
	return String(Math.round(value * 100) / 100);
}

/** A picture's columns stand under each other, so that nothing may be put between them. */
const isDrawn = (key: string) => key === "picture" || key === "svg";

/** Everything a value says, with inches, at any depth; what is worked out when asked for is still worked out only then. */
export function withInchesInside<T>(value: T): T {
	if (typeof value === "string") return withInches(value) as T;
	if (Array.isArray(value)) return value.map(withInchesInside) as T;
	if (typeof value !== "object" || value === null || value instanceof Map || value instanceof Set) return value;
	const made: Record<string, unknown> = {};
	for (const key of Object.keys(value)) {
		if (isDrawn(key)) {
			Object.defineProperty(made, key, Object.getOwnPropertyDescriptor(value, key) ?? {});
			continue;
		}
		let worked: { readonly out: unknown } | null = null;
		Object.defineProperty(made, key, {
			enumerable: true,
			get: () => {
				worked ??= { out: withInchesInside((value as Record<string, unknown>)[key]) };
				return worked.out;
			},
		});
	}
	return made as T;
}
