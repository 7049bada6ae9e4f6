import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { demoContext, settledFacts } from "../choose/demo.ts";

const root = fileURLToPath(new URL("../../src/", import.meta.url));
/** What readers look for are the words of other people's pages, and data sheets are quoted as they are. */
const words = readdirSync(root, { recursive: true, encoding: "utf8" })
	.filter((file) => file.endsWith(".ts") && !file.startsWith("reading/"))
	.flatMap((file) => textsIn(file).map((text) => ({ file, text })));

/** Every text of a file that has a space in it, templates piece by piece; markup and style sheets are none. */
function textsIn(file: string): readonly string[] {
	const found: string[] = [];
	const visit = (node: ts.Node): void => {
		if (ts.isImportDeclaration(node)) return;
		if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node))
			found.push(node.text);
		ts.forEachChild(node, visit);
	};
	visit(ts.createSourceFile(file, readFileSync(root + file, "utf8"), ts.ScriptTarget.Latest, true));
	return found.filter((text) => / /.test(text) && !/[<>{};]\S|:\S/.test(text));
}

function saying(pattern: RegExp, where: RegExp = /./): readonly string[] {
	return words
		.filter(({ file, text }) => where.test(file) && pattern.test(text))
		.map((one) => `${one.file}: ${one.text}`);
}

test("the texts are found at all", () => {
	expect(words.length).toBeGreaterThan(2000);
	expect(saying(/Which case will the board go into\?/)).toHaveLength(1);
	expect(saying(/ is called by no such name/)).toEqual([]);
});

describe("no text", () => {
	test("begs, judges or speaks like a form", () => {
		expect(saying(/\b(please|sorry|oops|invalid|valid|forbidden|illegal|mandatory)\b/i)).toEqual([]);
	});

	test("promises that a thing is easy", () => {
		const promises =
			/\b(easy|simple|simply|obvious|obviously|of course|merely|effortless|just (pick|type|press|choose))\b/i;
		expect(saying(promises, /^(questions|rules|criteria|parts|sheet|screens|plain|walk)\//)).toEqual([]);
	});

	test("is spelt the American way", () => {
		expect(
			saying(
				/\b(?<!-)(colors?|center|gray|favorite|behavior|percent|toward|catalog|labeled|canceled|analyze|aluminum)\b/i,
			),
		).toEqual([]);
	});
});

/** One thing has one name; behind each the name that is used. */
test.each([
	["a list of processors", /\bsupport list\b/i, "processor list"],
	["aids for the first start", /\b(helps for|a help you|every help|no help that)\b/i, "aid"],
	["the place of a fan's plug", /(?<!and )\bfan plugs?\b/i, "fan header"],
	["what depends on something", /\bhangs on your\b/i, "depends on"],
	["memory that corrects errors", /\bmemory that finds its errors\b/i, "error-correcting memory"],
	["the sound of a USB box", /\bUSB sound device\b/i, "USB sound box"],
	["sound as light", /\blight cable\b/i, "optical cable"],
	["holes at the back of a case", /\bslot covers?\b/i, "card openings"],
])("%s has one name", (_thing, otherName) => {
	// The glossary tells other names too, since pages use them.
	expect(saying(otherName, /^(?!reference\/glossary)/)).toEqual([]);
});

/** A line of a list is read at a glance, also at sixty columns. */
const mostLetters = 40;
/** Titles of all facts, those inside lists too. */
const titlesOfFacts = readdirSync(`${root}parts`).flatMap((file) =>
	[...readFileSync(`${root}parts/${file}`, "utf8").matchAll(/\btitle: "([^"]+)"/g)].map(([, title]) => [file, title]),
);

test("labels and titles have at most forty letters", () => {
	const labels = [
		...allQuestions.flatMap(({ id, label }) => [[id, label]]),
		...allQuestions
			.filter(({ partKind }) => partKind === undefined)
			.flatMap(({ id, options }) => options(demoContext, settledFacts).map(({ label }) => [id, label])),
		...allRules.map(({ id, label }) => [id, label]),
		...allCriteria.map(({ id, name }) => [id, name]),
		...titlesOfFacts,
	];
	expect(titlesOfFacts.length).toBeGreaterThan(200);
	expect(labels.filter(([, label = ""]) => label.length > mostLetters)).toEqual([]);
});

test("no question leaves open what it is about, or asks two things at once", () => {
	const asks = allQuestions.map(({ ask }) => ask);
	expect(asks.filter((ask) => /\b(it|they|them)\b/i.test(ask))).toEqual([]);
	expect(asks.filter((ask) => /^(do|does|is|are|will|have|has|can) .*,? or (?!more)/i.test(ask))).toEqual([]);
});

test("what is weighed has the same name where it is asked, where it is reviewed and where it is scored", () => {
	for (const { asks, name } of allCriteria) {
		const label = allQuestions.find(({ ask }) => ask === asks)?.label ?? "";
		const bare = name.replace(/^(the|your) /, "");
		expect(label.toLowerCase().replace(/^(the|your) /, "")).toMatch(new RegExp(`^${bare} matters?$`));
	}
});
