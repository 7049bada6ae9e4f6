import { describe, expect, test } from "vitest";
import { canonicalSocket } from "../../src/parts/canonical-name.ts";

/**
 * Names of processor sockets as firmware reports them: DMTF DSP0134 (SMBIOS), section 7.5.5, "Processor Upgrade"; read
 * second hand in the source of dmidecode, commit b70f6ee of 2024-09-03, and of another C header. The list is not whole.
 */
const sockets = [
	"LGA775",
	"LGA1366",
	"LGA1156",
	"BGA1155",
	"LGA2011",
	"LGA2011-3",
	"LGA1150",
	"SP3",
	"SP3r2",
	"LGA2066",
	"LGA4677",
	"LGA1700",
	"AM5",
	"SP5",
	"LGA7529",
	"LGA1851",
	"BGA2049",
	"BGA2551",
	"BGA2114",
	"BGA2833",
];

test("every one of the standard's sockets stays a socket of its own", () => {
	expect(new Set(sockets.map(canonicalSocket)).size).toBe(sockets.length);
});

describe.each(sockets)("%s", (name) => {
	const spaced = name.replace(/^([A-Z]+)(?=\d)/, "$1 ");

	test.each([`Socket ${name}`, `Socket${name}`, spaced, `Socket ${spaced}`, name.toLowerCase(), `${name} socket`])(
		"is spelt %j too",
		(spelling) => {
			expect(canonicalSocket(spelling)).toBe(canonicalSocket(name));
		},
	);
});

test.each(sockets.filter((name) => /^[LB]GA/.test(name)))("%s has the mark of a flipped chip before it too", (name) => {
	for (const spelling of [`FC${name}`, `FC-${name}`, `Socket FC${name}`])
		expect(canonicalSocket(spelling)).toBe(canonicalSocket(name));
});
