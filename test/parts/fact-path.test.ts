import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lookUpFact } from "../../src/parts/fact-path.ts";
import { subjectOf } from "../rules/rule-subject.ts";

const subject = subjectOf({
	board: { socket: "Kettle 7", memory: { type: "DDR5", slots: 0 }, rearUsb: [], lit: false },
	processor: { name: "Deckhand", memory: { channels: 2 } },
	graphicsCard: "none",
	memory: "open",
	platform: { generations: [{ generation: "Dinghy", served: "yes" }] },
	priceCap: { minor: 100, currency: "EUR" },
	rearDevices: 0,
	wishes: { "features/wireless": "must" },
});

describe("known", () => {
	test.each([
		["board.socket", "Kettle 7"],
		["board.memory.type", "DDR5"],
		["board.memory", { type: "DDR5", slots: 0 }],
		["processor.name", "Deckhand"],
		["processor.memory.channels", 2],
		["platform.generations", [{ generation: "Dinghy", served: "yes" }]],
		["priceCap", { minor: 100, currency: "EUR" }],
		["wish.features/wireless", "must"],
		["processor", "have"],
		["graphicsCard", "none"],
		["memory", "open"],
		["case", "unknown"],
	])("%s", (path, value) => {
		expect(lookUpFact(subject, path)).toEqual({ known: true, value });
	});

	test.each([
		["board.memory.slots", 0],
		["board.rearUsb", []],
		["board.lit", false],
		["rearDevices", 0],
	])("none is not unknown: %s", (path, value) => {
		expect(lookUpFact(subject, path)).toEqual({ known: true, value });
	});
});

describe("not known", () => {
	test.each([
		"board.form",
		"board.memory.form",
		"board.wireless.builtIn",
		"platform.raises.memoryRate",
		"wish.features/rear-usb-c",
		"wish.constructor",
		"nothing.at.all",
		"nothing",
		"constructor",
		"wishes",
		"importance.rescue",
		"",
		"board.socket.length",
		"board.toString",
		"board.constructor.name",
		"board.__proto__",
		"processor.memory.rates.length",
	])("%s names itself as missing", (path) => {
		expect(lookUpFact(subject, path)).toEqual({ known: false, missing: path });
	});

	test.each([
		["case.boardForms", "case", "unknown"],
		["memory.type", "memory", "open"],
		["graphicsCard.lengthMm", "graphicsCard", "none"],
	])("%s: the whole part is missing", (path, missing, state) => {
		expect(lookUpFact(subject, path)).toEqual({ known: false, missing, state });
	});

	test("an empty build knows nothing but that", () => {
		const empty = subjectOf({});
		for (const path of ["priceCap", "rearDevices", "board.socket", "platform.generations"])
			expect(lookUpFact(empty, path)).toEqual({ known: false, missing: path });
	});
});

test("no path makes it throw", () => {
	const words = fc.constantFrom("board", "processor", "wish", "memory", "type", "constructor", "__proto__", "", "0");
	fc.assert(
		fc.property(
			fc.oneof(
				fc.string(),
				fc.array(words).map((keys) => keys.join(".")),
			),
			(path) => {
				expect(lookUpFact(subject, path).known).toBeTypeOf("boolean");
			},
		),
	);
});
