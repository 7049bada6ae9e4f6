/**
 * Compares two firmware versions as makers number them: runs of digits by value, runs of letters by alphabet, left to
 * right ("F9" < "F10", "1.20" < "1.30", "7D75vA1" < "7D75vA2"). Common practice, no source: no standard orders them.
 *
 * @returns negative, zero or positive; null when the two are not built alike, so that no order can be told
 */
export function compareFirmware(one: string, other: string): number | null {
	const [a, b] = [partsOf(one), partsOf(other)];
	if (a.length === 0 || b.length === 0) return null;
	for (let index = 0; index < Math.max(a.length, b.length); index++) {
		const [x, y] = [a[index], b[index]];
		if (x === undefined || y === undefined) return typeof (x ?? y) === "number" ? (x === undefined ? -1 : 1) : null;
		if (typeof x !== typeof y) return null;
		if (x < y) return -1;
		if (x > y) return 1;
	}
	return 0;
}

function partsOf(version: string): (string | number)[] {
	return (version.toLowerCase().match(/\d+|[a-z]+/g) ?? []).map((part) => (/^\d/.test(part) ? Number(part) : part));
}
