import { expect, test } from "vitest";
import { colourKind } from "../../src/reference/colour-words.ts";

test.each([
	"black",
	"Black",
	"BLACK AND WHITE",
	"matte black",
	"black/silver",
	"dark blue",
	"grey",
	"Gray with red lines",
	"anthracite",
	"charcoal, white print",
	"navy",
	"brown and cream",
])("%j is dark: its first word that tells says so", (colour) => {
	expect(colourKind(colour)).toBe("dark");
});

test.each([
	"white",
	"White and black",
	"off-white",
	"silver",
	"bare metal",
	"light grey",
	"pale brown",
	"cream",
	"ivory with dark lines",
	"beige",
])("%j is light", (colour) => {
	expect(colourKind(colour)).toBe("light");
});

test.each(["", "red", "teal", "lightning pattern", "blackened", "unwhitened", "metal", "greyhound print"])(
	"%j says neither",
	(colour) => {
		expect(colourKind(colour)).toBeNull();
	},
);
