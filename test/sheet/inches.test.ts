import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { withInches, withInchesInside } from "../../src/sheet/inches.ts";

/**
 * The inch is 25.4 mm exactly (NIST Special Publication 811, 2008 edition, Appendix B.8: 1 inch = 2.54 cm). Sizes of the ATX family in
 * both units from the ATX Specification 2.2, section 3.1 (12 by 9.6 inches, 305 by 244 mm); from memory.
 */
describe("lengths with their inches", () => {
	test.each([
		["The board is 305 x 244 mm.", "The board is 305 x 244 mm (12.01 x 9.61 in)."],
		["Cards up to 320 mm long", "Cards up to 320 mm (12.6 in) long"],
		["A number from 80 to 500 mm", "A number from 80 to 500 mm (3.15 to 19.69 in)"],
		["254 mm", "254 mm (10 in)"],
		["30.5 x 24.4 cm", "30.5 x 24.4 cm (12.01 x 9.61 in)"],
		["2 x 120 mm", "2 x 120 mm (4.72 in)"],
		["Space: 25.4 mm; needed: 2.54 cm.", "Space: 25.4 mm (1 in); needed: 2.54 cm (1 in)."],
	])("%s", (before, after) => {
		expect(withInches(before)).toBe(after);
		expect(withInches(after)).toBe(after);
	});

	test.each(["120 mm2", "5 mm\u00b2", "a mm", "V1.20 mm-wide", "12 mmol", "0.5 mm/s", "150 W", ""])(
		"%s is no length",
		(words) => {
			expect(withInches(words)).toBe(words);
		},
	);

	test("nothing of the text is lost, whatever it is, and twice is as once", () => {
		fc.assert(
			fc.property(
				fc.array(fc.oneof(fc.string(), fc.constantFrom("12 mm", " x ", "3.5 cm", " (", " in)"))),
				(pieces) => {
					const before = pieces.join("");
					const after = withInches(before);
					expect(withInches(after)).toBe(after);
					expect(after.replace(/ \([\d.]+(?:(?: x | by | to |-)[\d.]+)? in\)/g, "")).toBe(
						before.replace(/ \([\d.]+(?:(?: x | by | to |-)[\d.]+)? in\)/g, ""),
					);
				},
			),
		);
	});

	test("inside a value every text has them, pictures apart, and nothing is worked out before it is asked for", () => {
		let asked = 0;
		const value = withInchesInside({
			get late() {
				asked++;
				return ["10 mm"];
			},
			picture: ["10 mm |"],
			inner: { none: null, count: 3, text: "25.4 mm" },
		});
		expect(asked).toBe(0);
		expect(value.late).toEqual(["10 mm (0.39 in)"]);
		expect(value.late).toBe(value.late);
		expect(asked).toBe(1);
		expect(value.picture).toEqual(["10 mm |"]);
		expect(value.inner).toEqual({ none: null, count: 3, text: "25.4 mm (1 in)" });
	});
});
