import { describe, expect, test } from "vitest";
import { spareSockets } from "../../src/criteria/spare-sockets.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";

const sockets = [
	{ plug: "A", count: 4 },
	{ plug: "C", count: 2 },
];
const exactly = (spare: number) => ({ low: spare, high: spare, missing: [] });

test.each([
	["some spare", { "board.rearUsb": sockets, rearDevices: 4 }, { low: 2, high: 2, missing: [] }],
	["too few", { "board.rearUsb": sockets, rearDevices: 8 }, { low: -2, high: -2, missing: [] }],
	["nothing to plug in", { "board.rearUsb": sockets, rearDevices: 0 }, { low: 6, high: 6, missing: [] }],
	[
		"no socket at all is none, not unknown",
		{ "board.rearUsb": [], rearDevices: 3 },
		{ low: -3, high: -3, missing: [] },
	],
	["the page is silent: 4 to 10", { rearDevices: 5 }, { low: -1, high: 5, missing: ["board.rearUsb"] }],
])("%s", (_, facts, measure) => {
	expect(spareSockets.measure(facts)).toEqual(measure);
});

test("says nothing while nobody has counted", () => {
	expect(spareSockets.measure({ "board.rearUsb": sockets })).toBeNull();
	expect(spareSockets.measure({ "board.rearUsb": sockets, laterThings: ["USB thing"] })).toBeNull();
});

describe("USB things to be added later", () => {
	test.each([
		["each takes a socket", ["USB thing", "USB thing"], 0],
		["other things take none", ["M.2 drive", "fan", "USB thing"], 1],
		["nothing to be added", [], 2],
	])("%s", (_, laterThings, spare) => {
		expect(spareSockets.measure({ "board.rearUsb": sockets, rearDevices: 4, laterThings })).toEqual(exactly(spare));
	});

	test("count too where the page is silent", () => {
		expect(spareSockets.measure({ rearDevices: 5, laterThings: ["USB thing"] })).toMatchObject({ low: -2, high: 4 });
	});
});

// A wished socket that is not there wants a hub or an adapter: two sockets less.
describe("a wished USB-C socket", () => {
	const onlyFlat = [{ plug: "A", count: 6 }];
	test.each([
		["that is there costs nothing", sockets, "would-like", 2],
		["that is not there costs two", onlyFlat, "would-like", 0],
		["that must be there, too", onlyFlat, "must", 0],
		["that one does not mind does not", onlyFlat, "dont-mind", 2],
	])("%s", (_, rearUsb, strength, spare) => {
		const facts = { "board.rearUsb": rearUsb, rearDevices: 4, "wish.features/rear-usb-c": strength };
		expect(spareSockets.measure(facts)).toEqual(exactly(spare));
	});

	test("may be there or not where the page is silent", () => {
		expect(spareSockets.measure({ rearDevices: 5, "wish.features/rear-usb-c": "would-like" })).toEqual({
			low: -3,
			high: 5,
			missing: ["board.rearUsb"],
		});
	});
});

test.each([
	[-5, 0],
	[-2, 0],
	[-1, 0.25],
	[0, 0.5],
	[1, 0.7],
	[2, 0.9],
	[3, 0.95],
	[4, 1],
	[40, 1],
])("%i spare sockets are worth %f", (spare, value) => {
	expect(piecewiseLinear(spareSockets.scale, spare)).toBeCloseTo(value, 12);
});

test.each([
	[exactly(-2), "2 of your things find no USB socket at the back"],
	[exactly(0), "no USB sockets stay free at the back"],
	[exactly(1), "1 USB socket stays free at the back"],
	[exactly(3), "3 USB sockets stay free at the back"],
	[{ low: -1, high: 5, missing: ["board.rearUsb"] }, "how many USB sockets stay free at the back is not known"],
])("%o in words", (measure, words) => {
	expect(spareSockets.says(measure)).toBe(words);
});
