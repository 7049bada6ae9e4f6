import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readBoard } from "../../src/reading/read-board.ts";
import { readCase } from "../../src/reading/read-case.ts";
import { readProcessor } from "../../src/reading/read-processor.ts";
import { type Flat, flatFacts } from "../measure/flat-facts.ts";
import { held } from "../measure/leaves.ts";

const folder = new URL("../measure/pages/", import.meta.url);
const readers = { board: readBoard, processor: readProcessor, case: readCase };
const pages = readdirSync(folder)
	.filter((name) => name.endsWith(".json"))
	.map((name) => {
		const hand = JSON.parse(readFileSync(new URL(name, folder), "utf8")) as Flat;
		return { name, hand, text: readFileSync(new URL(name.replace(/json$/, "txt"), folder), "utf8") };
	});

/** The aims: of facts stated 98 in 100 are right, of facts that a text states 85 in 100 are found. */
test.each(["board", "processor", "case"] as const)("pages of a %s are read well enough", (kind) => {
	const results = pages
		.filter(({ hand }) => hand["kind"] === kind)
		.map(({ name, hand, text }) => {
			const reading = readers[kind](text);
			const sure = held(flatFacts(reading, { assumed: false }), hand);
			const all = held(flatFacts(reading, { assumed: true }), hand);
			return { name, right: sure.right, stated: sure.read, found: all.right, expected: all.expected };
		});
	const sum = (key: "right" | "stated" | "found" | "expected") =>
		results.reduce((total, result) => total + result[key], 0);
	const fallen = results
		.filter(({ right, stated, found, expected }) => right < stated * 0.98 || found < expected * 0.85)
		.map(({ name, right, stated, found, expected }) => `${name} ${right}/${stated} right, ${found}/${expected} found`);
	expect(results.length).toBeGreaterThan(4);
	expect(sum("right") / sum("stated"), `precision; below the aim: ${fallen.join("; ")}`).toBeGreaterThanOrEqual(0.98);
	expect(sum("found") / sum("expected"), `recall; below the aim: ${fallen.join("; ")}`).toBeGreaterThanOrEqual(0.85);
});
