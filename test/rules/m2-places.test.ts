import { describe, expect, test } from "vitest";
import type { Drive } from "../../src/parts/drive.ts";
import { isM2Drive, isSataDrive, type M2Socket } from "../../src/reference/m2-fit.ts";
import { m2PlacesOf } from "../../src/rules/m2-places.ts";

const drive = (facts: Partial<Drive>): Drive => ({ id: "a-drive", name: "Pebble", ...facts });

describe("what a drive is", () => {
	test.each<[string, Partial<Drive>, "M.2" | "SATA" | "neither"]>([
		["a stick", { shape: "M.2" }, "M.2"],
		["a stick with a SATA link is a stick", { shape: "M.2", link: "SATA" }, "M.2"],
		["a link alone", { link: "PCI Express" }, "M.2"],
		["a length alone", { lengthMm: 80 }, "M.2"],
		["a key alone", { key: "B+M" }, "M.2"],
		["a box with a SATA link", { shape: "2.5 inch", link: "SATA" }, "SATA"],
		["a box of which no link is given", { shape: "3.5 inch" }, "SATA"],
		["nothing but a SATA link", { link: "SATA" }, "SATA"],
		["a very old one", { shape: "3.5 inch", link: "IDE" }, "neither"],
		["a box for a U.2 port", { shape: "2.5 inch", link: "U.2" }, "neither"],
	])("%s", (_, facts, expected) => {
		expect(isM2Drive(drive(facts))).toBe(expected === "M.2");
		expect(isSataDrive(drive(facts))).toBe(expected === "SATA");
	});
});

describe("whether a stick goes into a socket", () => {
	const usual: Omit<M2Socket, "name"> = { key: "M", lengthsMm: [60, 80], wiredLanes: 4, sata: false };
	test.each<[string, Partial<Drive>, Omit<M2Socket, "name">, "yes" | "no" | "unknown"]>([
		["the usual ones", { link: "PCI Express", lengthMm: 80, key: "M" }, usual, "yes"],
		["length and key taken as usual", { link: "PCI Express" }, usual, "yes"],
		["a short one that the socket has a hole for", { link: "PCI Express", lengthMm: 60 }, usual, "yes"],
		["a short one that it has no hole for", { link: "PCI Express", lengthMm: 42 }, usual, "no"],
		["a long one", { link: "PCI Express", lengthMm: 110 }, usual, "no"],
		["a long one, and the page gives no lengths", { link: "PCI Express", lengthMm: 110 }, {}, "unknown"],
		["a usual one, and the page gives nothing", { link: "PCI Express", lengthMm: 80 }, {}, "yes"],
		["no length given, and the socket has no usual one", { link: "PCI Express" }, { lengthsMm: [30, 42] }, "unknown"],
		["SATA, and the socket is not wired for it", { link: "SATA" }, usual, "no"],
		["SATA, and the socket is wired for it", { link: "SATA" }, { ...usual, sata: true }, "yes"],
		["SATA, and the page is silent", { link: "SATA" }, { key: "M" }, "unknown"],
		["PCI Express, and no lanes are wired", { link: "PCI Express" }, { ...usual, wiredLanes: 0, sata: true }, "no"],
		["no link given, one of the two works", { shape: "M.2" }, usual, "unknown"],
		["no link given, both work", { shape: "M.2" }, { ...usual, sata: true }, "yes"],
		["no link given, none works", { shape: "M.2" }, { ...usual, wiredLanes: 0 }, "no"],
		["notched for both, into B", { link: "SATA", key: "B+M" }, { key: "B", sata: true }, "yes"],
		["notched for M only, into B", { link: "PCI Express", key: "M" }, { key: "B", wiredLanes: 2 }, "no"],
		["notched for B only, into M", { link: "SATA", key: "B" }, { key: "M", sata: true }, "no"],
		["no notch given, PCI Express into B", { link: "PCI Express" }, { key: "B", wiredLanes: 2 }, "no"],
		["no notch given, SATA into B", { link: "SATA" }, { key: "B", sata: true }, "unknown"],
		["into a socket for a wireless module", { link: "PCI Express" }, { key: "E", wiredLanes: 1 }, "no"],
	])("%s", (_, facts, socket, expected) => {
		const sockets = [{ name: "M2_1", ...socket }];
		const isIn = (leaning: "best" | "worst") =>
			m2PlacesOf(drive({ shape: "M.2", ...facts }), sockets, leaning).length > 0;
		expect([isIn("best"), isIn("worst")]).toEqual([expected !== "no", expected === "yes"]);
	});
});
