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

/** The JSON of a value, the same in whatever order its keys stand. */
export function sortedJson(value: unknown): string {
	return JSON.stringify(value, (_key, item) =>
		item !== null && typeof item === "object" && !Array.isArray(item)
			? Object.fromEntries(Object.entries(item).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)))
			: item,
	);
}
