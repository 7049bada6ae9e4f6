import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { connections } from "../../src/criteria/connections.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";

type Facts = Record<string, unknown>;
const [rear, wired] = ["board.rearUsb", "board.wiredGbps"] as const;
const sockets = [
	{ plug: "A", count: 4 },
	{ plug: "C", count: 2 },
];
const flat = (count: number) => [{ plug: "A", count }];
/** Sockets alone: no cable will be used. */
const noCable = { routerGbps: 0 };
const points = (facts: Facts) => {
	const measure = connections.measure(facts);
	return measure && { low: Math.round(measure.low * 100) / 100, high: Math.round(measure.high * 100) / 100 };
};
const both = (value: number) => ({ low: value, high: value });

// Worked out from the corners: 0, 2, 4 spare sockets are 0.5, 0.9, 1, and two too few nothing.
test.each([
	[-5, 0],
	[-2, 0],
	[-1, 25],
	[0, 50],
	[1, 70],
	[2, 90],
	[3, 95],
	[4, 100],
	[20, 100],
])("%i spare sockets alone are worth %f points", (spare, worth) => {
	expect(points({ ...noCable, [rear]: flat(10 + spare), rearDevices: 10 })).toEqual(both(worth));
});

// With four sockets spare the network brings 30 of 100 points; worked out: 70 + 30 x 0, 0.7, 1.
test.each<[string, Facts, number]>([
	["no socket", { [wired]: [] }, 70],
	["1 Gb/s", { [wired]: [1] }, 91],
	["2.5 Gb/s", { [wired]: [1, 2.5] }, 100],
	["10 Gb/s is worth no more", { [wired]: [10] }, 100],
	["10 Gb/s, with a slow router", { [wired]: [10], routerGbps: 1 }, 100],
	["2.5 Gb/s, with one of 5", { [wired]: [2.5], routerGbps: 5 }, 91],
	["5 Gb/s, with one of 5", { [wired]: [5], routerGbps: 5 }, 100],
	["10 Gb/s, with one of 5", { [wired]: [10], routerGbps: 5 }, 100],
	["1 Gb/s, with one of 10", { [wired]: [1], routerGbps: 10 }, 82],
	["5 Gb/s, with one of 10", { [wired]: [5], routerGbps: 10 }, 97],
	["10 Gb/s, with one of 10", { [wired]: [10], routerGbps: 10 }, 100],
	["wireless must be there, and no cable is asked about", { [wired]: [], "wish.features/wireless": "must" }, 100],
])("wired network: %s", (_, facts, worth) => {
	expect(points({ [rear]: flat(4), rearDevices: 0, ...facts })).toEqual(both(worth));
});

test("both weigh 70 to 30", () => {
	// 70 x 0.5 + 30 x 0.7
	expect(points({ [rear]: flat(5), rearDevices: 5, [wired]: [1] })).toEqual(both(56));
});

describe("what is said", () => {
	test("nothing while nobody has told of things or of a network", () => {
		expect(connections.measure({ [rear]: sockets, [wired]: [1] })).toBeNull();
		expect(connections.measure({ [rear]: sockets, laterThings: ["USB thing"] })).toBeNull();
		expect(connections.measure({ [rear]: sockets, [wired]: [1], ...noCable })).toBeNull();
	});

	test("the network alone, where things are not counted", () => {
		expect(points({ [rear]: sockets, [wired]: [1], routerGbps: 1 })).toEqual(both(70));
	});
});

test.each([
	["each takes a socket", ["USB thing", "USB thing"], 50],
	["other things take none", ["M.2 drive", "fan", "USB thing"], 70],
	["nothing to be added", [], 90],
])("USB things to be added later: %s", (_, laterThings, worth) => {
	expect(points({ [rear]: sockets, rearDevices: 4, laterThings, ...noCable })).toEqual(both(worth));
});

// A wished socket that is not there wants a hub or an adapter: two sockets less.
test.each([
	["that is there costs nothing", sockets, "would-like", 90],
	["that is not there costs two", flat(6), "would-like", 50],
	["that must be there, too", flat(6), "must", 50],
	["that one does not mind does not", flat(6), "dont-mind", 90],
])("a wished USB-C socket %s", (_, rearUsb, strength, worth) => {
	const facts = { [rear]: rearUsb, rearDevices: 4, "wish.features/rear-usb-c": strength, ...noCable };
	expect(points(facts)).toEqual(both(worth));
});

describe("what is not known is a range", () => {
	test("4 to 10 sockets", () => {
		expect(connections.measure({ rearDevices: 5, ...noCable })).toMatchObject({ low: 25, high: 100, missing: [rear] });
		const wishesC = { rearDevices: 5, "wish.features/rear-usb-c": "would-like", ...noCable };
		expect(connections.measure(wishesC)).toMatchObject({ low: 0, high: 100, missing: [rear] });
	});

	test("1 to 10 Gb/s", () => {
		const measure = connections.measure({ [rear]: flat(9), rearDevices: 5 });
		expect(measure).toMatchObject({ low: 91, high: 100, missing: [wired] });
	});

	test("both", () => {
		expect(connections.measure({ rearDevices: 5 })).toMatchObject({ low: 38.5, high: 100, missing: [rear, wired] });
	});

	test("what is good on a guess stays a guess", () => {
		expect(connections.measure({ rearDevices: 0, ...noCable })).toMatchObject({ low: 100, high: 100, missing: [rear] });
	});

	test("finding out never leads out of the range", () => {
		const given = fc.record({
			rearDevices: fc.option(fc.nat({ max: 12 }), { nil: undefined }),
			routerGbps: fc.option(fc.constantFrom(0, 1, 2.5, 5, 10), { nil: undefined }),
			"wish.features/rear-usb-c": fc.constantFrom("must", "would-like", "dont-mind"),
		});
		const told = fc.record({
			[rear]: fc.record({ count: fc.integer({ min: 4, max: 9 }), plug: fc.constantFrom("A", "C") }),
			[wired]: fc.constantFrom(1, 2.5, 5, 10),
		});
		fc.assert(
			fc.property(given, told, fc.subarray([rear, wired]), (asked, facts, known) => {
				const asFound = { [rear]: [facts[rear]], [wired]: [facts[wired]] };
				const some = Object.fromEntries(known.map((path) => [path, asFound[path]]));
				const [before, after] = [
					connections.measure({ ...asked, ...some }),
					connections.measure({ ...asked, ...asFound }),
				];
				expect(after === null).toBe(before === null);
				if (!before || !after) return;
				expect(after.low).toBeGreaterThanOrEqual(before.low - 1e-9);
				expect(after.high).toBeLessThanOrEqual(before.high + 1e-9);
				expect(after.high - after.low).toBeLessThan(1e-9);
			}),
		);
	});
});

test("its points are its value", () => {
	expect([0, 56, 100].map((value) => piecewiseLinear(connections.scale, value))).toEqual([0, 0.56, 1]);
});

const said = (facts: Facts) => {
	const measure = connections.measure(facts);
	return measure && connections.says(measure);
};
test.each<[Facts, string]>([
	[{ rearDevices: 6 }, "no USB sockets stay free at the back, and its wired network does 2.5 Gb/s"],
	[{ rearDevices: 5, [wired]: [] }, "1 USB socket stays free at the back, and it has no socket for a network cable"],
	[{ rearDevices: 7, ...noCable }, "1 of your things finds no USB socket at the back"],
	[{ rearDevices: 8, ...noCable }, "2 of your things find no USB socket at the back"],
	[{ routerGbps: 10 }, "its wired network does 2.5 Gb/s"],
])("%o in words", (facts, words) => {
	expect(said({ [rear]: sockets, [wired]: [2.5], ...facts })).toBe(words);
});

test("what is not known, in words", () => {
	expect(said({ rearDevices: 5 })).toBe(
		"how many USB sockets stay free at the back is not known, and how fast its wired network is, is not known",
	);
	expect(connections.says({ low: 20, high: 40, missing: [] })).toBe(
		"how well its sockets and network meet your needs depends on what is not known",
	);
	expect(connections.says({ low: 40, high: 40, missing: [] })).toBe("its sockets and network meet your needs in part");
});
