import { describe, expect, test } from "vitest";
import { findingAdvice, findingWords } from "../../src/rules/finding-words.ts";
import type { MessageData } from "../../src/rules/outcome.ts";

/** What a rule says with these numbers and names. The tables of the rules hold which message comes, not its words. */
const said = (ruleId: string, messageId: string, data: MessageData) => findingWords({ ruleId, messageId, data });

describe("words that change with a number", () => {
	test.each<[string, string, MessageData, string]>([
		["fit/m2-drives", "placed", { drives: 1 }, "Your M.2 drive finds a socket of its kind."],
		["fit/m2-drives", "placed", { drives: 2 }, "Both M.2 drives find sockets of their kind."],
		["fit/m2-drives", "placed", { drives: 3 }, "All 3 M.2 drives find sockets of their kind."],
		[
			"fit/m2-drives",
			"switchesOff",
			{ drives: 1, off: ["S5", "S6"] },
			"Your M.2 drive finds a socket. Switched off for it: S5, S6.",
		],
		[
			"fit/m2-drives",
			"switchesOff",
			{ drives: 3, off: ["S5"] },
			"All 3 M.2 drives find sockets. Switched off for them: S5.",
		],
		[
			"fit/m2-drives",
			"noPlace",
			{ drives: 1, left: ["Dart"] },
			"Your M.2 drive finds neither a socket nor a place for an adapter. Left over: Dart.",
		],
		[
			"fit/m2-drives",
			"noPlace",
			{ drives: 2, left: ["Dart"] },
			"1 of your 2 M.2 drives finds a place, adapters counted. Left over: Dart.",
		],
		[
			"fit/m2-drives",
			"noPlace",
			{ drives: 3, left: ["Dart"] },
			"2 of your 3 M.2 drives find a place, adapters counted. Left over: Dart.",
		],
		["fit/m2-drives", "need", { drives: 1, sata: 0, lengths: [] }, "1 M.2 socket for your drives."],
		[
			"fit/m2-drives",
			"need",
			{ drives: 2, sata: 1, lengths: ["60", "80"] },
			"2 M.2 sockets for your drives, 1 of them wired for SATA. Lengths to look for: 60, 80 mm.",
		],
		["features/graphics-lanes", "full", { card: "Carousel", lanes: 1 }, "The Carousel gets all 1 lane it can use."],
		["features/graphics-lanes", "full", { card: "Carousel", lanes: 16 }, "The Carousel gets all 16 lanes it can use."],
		[
			"build/cooler-on-socket",
			"noKit",
			{ socket: "Kettle 7", sockets: ["Harbour 1", "Harbour 2", "Harbour 3"] },
			"The cooler fits Harbour 1, Harbour 2 and Harbour 3 only; the processor's socket is Kettle 7.",
		],
		[
			"build/cooler-on-socket",
			"noKit",
			{ socket: "Kettle 7", sockets: ["Harbour 1", "Harbour 2", "Harbour 3", "Lantern 4", "Lantern 5"] },
			"The cooler fits Harbour 1, Harbour 2, Harbour 3 and 2 more only; the processor's socket is Kettle 7.",
		],
	])("%s, %s, %j", (ruleId, messageId, data, words) => {
		expect(said(ruleId, messageId, data)).toBe(words);
	});

	const lanes = { card: "Carousel", slot: "X16", of: 16, generation: 4, gbytesPerS: 15.8, ofGbytesPerS: 31.5 };

	test("lanes are all there in an older slot, or fewer, with the cause and the speed where they are known", () => {
		const narrow = (more: MessageData) => said("features/graphics-lanes", "narrow", { ...lanes, because: [], ...more });
		expect(narrow({ lanes: 16 })).toBe(
			"The Carousel gets all 16 lanes in X16, but of PCI Express 4: 15.8 of 31.5 GB/s.",
		);
		expect(narrow({ lanes: 8 })).toBe("The Carousel gets 8 of its 16 lanes in X16, 15.8 of 31.5 GB/s.");
		expect(narrow({ lanes: 8, because: ["Fiddle", "Mouse"] })).toBe(
			"The Carousel gets 8 of its 16 lanes in X16, 15.8 of 31.5 GB/s. Cause: Fiddle and Mouse.",
		);
		expect(narrow({ lanes: 8, gbytesPerS: -1 })).toBe("The Carousel gets 8 of its 16 lanes in X16.");
	});

	test("an adapter with a chip inside is named only where one is needed", () => {
		const advice = (data: MessageData) => findingAdvice({ ruleId: "fit/picture", messageId: "otherShape", data });
		const always = "Adapters work one way only: the first name is the board's end, the second the screen's.";
		expect(advice({ adapters: ["HDMI to DVI"] })).toBe(always);
		expect(advice({ adapters: ["HDMI to VGA"], active: ["HDMI to VGA"] })).toBe(
			`${always} Buy one with a chip inside ("active") for: HDMI to VGA.`,
		);
	});
});
