import { expect, test } from "vitest";
import { faultOf } from "../fuzz/check.ts";
import { parsers } from "../fuzz/parsers.ts";
import { seedsOf } from "../fuzz/seeds.ts";
import { drawsOf, drawText } from "../fuzz/texts.ts";

test.each(parsers)(
	"$name reads its samples, what it once failed with, and a few drawn texts, without a fault",
	(parser) => {
		const samples = parser.samples();
		expect(samples.length).toBeGreaterThan(0);
		const kept = seedsOf(parser.name).map(({ text }) => text);
		const drawn = Array.from({ length: 10 }, (_, run) => drawText(drawsOf(run), samples));
		for (const text of [...samples.slice(0, 10), ...kept, ...drawn])
			expect(faultOf(parser, text), JSON.stringify(text.slice(0, 200))).toBeNull();
	},
);

test("a parser that throws, dawdles, or lets a control sign or a prototype through is told", () => {
	const made = (read: (text: string) => unknown) => ({
		name: "made up",
		samples: () => ["x"],
		read,
		refuses: [RangeError],
	});
	const thrown = (error: Error) => () => {
		throw error;
	};
	expect(faultOf(made(thrown(new TypeError("no"))), "x")?.what).toMatch(/threw TypeError/);
	expect(faultOf(made(thrown(new RangeError("no"))), "x")).toBeNull();
	expect(
		faultOf(
			made(() => ["a\u001b[31m"]),
			"x",
		)?.what,
	).toMatch(/control sign/);
	expect(
		faultOf(
			made(() => JSON.parse('{"a":{"__proto__":1}}')),
			"x",
		)?.what,
	).toMatch(/__proto__/);
});
