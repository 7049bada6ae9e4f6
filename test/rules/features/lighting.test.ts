import { describe, expect, test } from "vitest";
import { lighting } from "../../../src/rules/features/lighting.ts";
import { testRule } from "../test-rule.ts";

type Header = { volts: 5 | 12; amps?: number; mostLights?: number };
const boardWith = (...headers: Header[]) => ({
	headers: { lights: headers.map((header, index) => ({ name: `LIGHT_${index + 1}`, ...header })) },
});
const board = (...volts: (5 | 12)[]) => boardWith(...volts.map((one) => ({ volts: one })));
const [plugs5V, plugs12V] = [["5 V three-pin"], ["12 V four-pin"]] as const;

testRule(lighting, {
	fits: {
		"nobody has said": [{ board: board() }, "notAsked"],
		"no lights": [{ board: {}, lights: [] }, "notAsked"],
		"a header for each": [
			{ board: board(5, 12, 5), lights: ["5 V three-pin", "12 V four-pin", "5 V three-pin"] },
			"has",
			{ plugs: ["5 V three-pin", "12 V four-pin"] },
		],
		"no lights but the cooler's": [
			{ board: board(5), cooler: { kind: "liquid", headersUsed: { lights5V: 1 } } },
			"has",
			{ plugs: ["5 V three-pin"] },
		],
		"the cooler's lights too": [
			{ board: board(5, 5), lights: ["5 V three-pin"], cooler: { headersUsed: { lights5V: 1 } } },
			"has",
			{ plugs: ["5 V three-pin"] },
		],
		"a header that states both its current and a count": [
			{ board: boardWith({ volts: 5, amps: 3, mostLights: 256 }), lights: plugs5V },
			"has",
			{ plugs: plugs5V, header5V: "LIGHT_1", amps5V: 3, mostLights5V: 256 },
		],
		"only its current": [
			{ board: boardWith({ volts: 5, amps: 5 }), lights: plugs5V },
			"has",
			{ plugs: plugs5V, header5V: "LIGHT_1", amps5V: 5 },
		],
		"only a count": [
			{ board: boardWith({ volts: 5, mostLights: 240 }), lights: plugs5V },
			"has",
			{ plugs: plugs5V, header5V: "LIGHT_1", mostLights5V: 240 },
		],
		"12 V: only a current counts": [
			{ board: boardWith({ volts: 12, amps: 3, mostLights: 200 }), lights: plugs12V },
			"has",
			{ plugs: plugs12V, header12V: "LIGHT_1", amps12V: 3 },
		],
		"12 V that states nothing but a count": [
			{ board: boardWith({ volts: 12, mostLights: 200 }), lights: plugs12V },
			"has",
			{ plugs: plugs12V },
		],
		"both kinds": [
			{
				board: boardWith({ volts: 12, amps: 2 }, { volts: 5, amps: 3 }),
				lights: ["5 V three-pin", "12 V four-pin"],
			},
			"has",
			{ plugs: ["5 V three-pin", "12 V four-pin"], header5V: "LIGHT_2", amps5V: 3, header12V: "LIGHT_1", amps12V: 2 },
		],
		"of several it is the one of fewest amperes": [
			{
				board: boardWith(
					{ volts: 5, amps: 5 },
					{ volts: 5 },
					{ volts: 5, amps: 3, mostLights: 240 },
					{ volts: 5, amps: 4 },
				),
				lights: ["5 V three-pin", "5 V three-pin", "5 V three-pin", "5 V three-pin"],
			},
			"has",
			{ plugs: plugs5V, header5V: "LIGHT_3", amps5V: 3, mostLights5V: 240 },
		],
		"fewer amperes count before fewer lights": [
			{
				board: boardWith({ volts: 5, amps: 3, mostLights: 240 }, { volts: 5, amps: 5, mostLights: 100 }),
				lights: ["5 V three-pin", "5 V three-pin"],
			},
			"has",
			{ plugs: plugs5V, header5V: "LIGHT_1", amps5V: 3, mostLights5V: 240 },
		],
		"of as many amperes it is the one of fewest lights": [
			{
				board: boardWith({ volts: 5, amps: 3 }, { volts: 5, amps: 3, mostLights: 180 }),
				lights: ["5 V three-pin", "5 V three-pin"],
			},
			"has",
			{ plugs: plugs5V, header5V: "LIGHT_2", amps5V: 3, mostLights5V: 180 },
		],
	},
	cautions: {
		"no header at all": [
			{ board: board(), lights: ["5 V three-pin", "12 V four-pin"] },
			"plan-around",
			"lacks",
			{ plugs: ["5 V three-pin", "12 V four-pin"] },
		],
		"a header of the other voltage is none": [
			{ board: board(12, 12), lights: ["5 V three-pin"] },
			"plan-around",
			"lacks",
			{ plugs: ["5 V three-pin"] },
		],
		"one light more than headers": [
			{ board: board(5), lights: ["5 V three-pin", "5 V three-pin"] },
			"good-to-know",
			"shared",
			{ plugs: ["5 V three-pin"] },
		],
		"the cooler's lights take the only one": [
			{ board: board(12), lights: ["12 V four-pin"], cooler: { headersUsed: { lights12V: 1 } } },
			"good-to-know",
			"shared",
			{ plugs: ["12 V four-pin"] },
		],
		"a shared header that states its current": [
			{
				board: boardWith({ volts: 5, amps: 3, mostLights: 40 }, { volts: 12, amps: 1 }),
				lights: ["5 V three-pin", "5 V three-pin", "12 V four-pin"],
			},
			"good-to-know",
			"shared",
			{ plugs: plugs5V, header5V: "LIGHT_1", amps5V: 3, mostLights5V: 40 },
		],
		"a shared 12 V header that states its current": [
			{ board: boardWith({ volts: 12, amps: 3 }), lights: ["12 V four-pin", "12 V four-pin"] },
			"good-to-know",
			"shared",
			{ plugs: plugs12V, header12V: "LIGHT_1", amps12V: 3 },
		],
		"a plug of the maker's own": [{ board: {}, lights: ["maker's own"] }, "good-to-know", "ownController"],
		"a plug of the maker's own beside another": [
			{ board: board(5), lights: ["maker's own", "5 V three-pin"] },
			"good-to-know",
			"ownController",
		],
	},
	cannotTell: {
		"the page is silent": [{ board: {}, lights: ["5 V three-pin"] }, ["board.headers.lights"]],
		"only the cooler has lights, and the page is silent": [
			{ board: {}, cooler: { kind: "liquid", headersUsed: { lights12V: 1 } } },
			["board.headers.lights"],
		],
	},
	needs: {
		"both kinds": [
			{ lights: ["5 V three-pin", "12 V four-pin", "5 V three-pin"] },
			"Lighting headers: 5 V three-pin, 12 V four-pin. 5 V and 12 V do not mix.",
		],
		"only a plug of the maker's own": [{ lights: ["maker's own"] }, null],
		"nobody has said": [{}, null],
	},
});

// 60 mA a light at full white is from a secondary text; the header's 3 A and 256 lights are read in a board's manual, p. 21.
describe("what a header feeds, in words", () => {
	const advice = (messageId: string, data: object) =>
		lighting.advice?.[messageId]?.({ plugs: ["5 V three-pin"], ...data }) ?? "";

	test.each([
		[{}, /destroys them\.$/],
		[
			{ header5V: "LIGHT_1", amps5V: 3, mostLights5V: 256 },
			/ LIGHT_1 gives 3 A, enough for 50 lights at full white\. The 256 lights of the manual hold only for dimmed ones\.$/,
		],
		[{ header5V: "LIGHT_1", amps5V: 3 }, / LIGHT_1 gives 3 A, enough for 50 lights at full white\.$/],
		[
			{ header5V: "LIGHT_1", amps5V: 3, mostLights5V: 50 },
			/ The manual allows 50 lights on LIGHT_1, at full white too\.$/,
		],
		[
			{ header5V: "LIGHT_1", mostLights5V: 240 },
			/ The manual allows 240 lights on LIGHT_1\. At full white they would take 14\.4 A: keep them dimmed, unless it gives that much\.$/,
		],
		[{ header12V: "LIGHT_2", amps12V: 3 }, / LIGHT_2 gives 3 A at 12 V: that is 36 W of lights\.$/],
	])("%o", (data, words) => {
		for (const messageId of ["has", "shared"]) {
			expect(advice(messageId, data)).toMatch(/^Never plug 5 V lights/);
			if (messageId === "has" || Object.keys(data).length > 0) expect(advice(messageId, data)).toMatch(words);
		}
	});

	test("where no header says what it feeds, the manual does", () => {
		expect(advice("shared", {})).toMatch(/the manual says how many lights it feeds\.$/);
	});
});
