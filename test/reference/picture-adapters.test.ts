import { expect, test } from "vitest";
import { pictureSockets } from "../../src/parts/vocabulary.ts";
import { pictureWay } from "../../src/reference/picture-adapters.ts";

// Common practice, no published source.
test("alike plugs go straight together, whatever they are", () => {
	for (const socket of pictureSockets) expect(pictureWay(socket, socket)).toBe("direct");
});

test("DVI from HDMI needs no chip, VGA from anything newer does", () => {
	expect(pictureWay("HDMI", "DVI")).toBe("plain");
	for (const socket of ["HDMI", "DisplayPort", "USB-C"] as const) expect(pictureWay(socket, "VGA")).toBe("active");
});

test("DisplayPort gives HDMI plainly, the other way round needs a chip", () => {
	expect(pictureWay("DisplayPort", "HDMI")).toBe("plain");
	expect(pictureWay("HDMI", "DisplayPort")).toBe("active");
});

test("a screen with USB-C alone needs a USB-C socket, and an old VGA socket feeds only VGA", () => {
	for (const socket of pictureSockets.filter((kind) => kind !== "USB-C"))
		expect(pictureWay(socket, "USB-C")).toBeNull();
	for (const screen of pictureSockets.filter((kind) => kind !== "VGA")) expect(pictureWay("VGA", screen)).toBeNull();
});
