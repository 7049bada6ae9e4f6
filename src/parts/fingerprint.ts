/**
 * A short text that changes whenever the value does, whatever the order of keys: FNV-1a (64 bit, offset basis and prime
 * of G. Fowler, L. C. Noll and K.-P. Vo) over the JSON with sorted keys. It guards against mix-ups, not against malice.
 */
export function fingerprintOf(value: unknown): string {
	let high = 0xcbf29ce4;
	let low = 0x84222325;
	const text = sortedJson(value);
	for (let index = 0; index < text.length; index++) {
		const unit = text.charCodeAt(index);
		for (const byte of [unit & 0xff, unit >>> 8]) {
			low = (low ^ byte) >>> 0;
			// 64-bit product with the prime 0x100000001b3, in 32-bit halves kept exact by 16-bit parts.
			const lowProduct = low * 0x1b3;
			const carry = Math.floor(lowProduct / 0x1_0000_0000);
			high = (Math.imul(high, 0x1b3) + carry + ((low << 8) >>> 0)) >>> 0;
			low = lowProduct >>> 0;
		}
	}
	return high.toString(16).padStart(8, "0") + low.toString(16).padStart(8, "0");
}

/** The JSON of a value, the same in whatever order its keys stand; `value` is one that JSON can hold. */
export function sortedJson(value: unknown): string {
	if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
	let text = "";
	if (Array.isArray(value)) {
		for (const item of value) text += `${text === "" ? "" : ","}${sortedJson(item)}`;
		return `[${text}]`;
	}
	for (const key of inOrder(Object.keys(value))) {
		const item: unknown = (value as Record<string, unknown>)[key];
		// As JSON does: a key without a value is none.
		if (item !== undefined) text += `${text === "" ? "" : ","}${keyText(key)}:${sortedJson(item)}`;
	}
	return `{${text}}`;
}

const keyTexts = new Map<string, string>();
/** There are only as many keys as facts, but for what a file of rubbish brings. */
const mostKeyTexts = 2000;

function keyText(key: string): string {
	const known = keyTexts.get(key) ?? JSON.stringify(key);
	if (keyTexts.size < mostKeyTexts) keyTexts.set(key, known);
	return known;
}

/** By their letters; those that are whole numbers stand first, as in every object. */
function inOrder(keys: readonly string[]): readonly string[] {
	const sorted = keys.toSorted();
	return sorted.some((key) => key >= "0" && key < ":")
		? Object.keys(Object.fromEntries(sorted.map((key) => [key, 0])))
		: sorted;
}
