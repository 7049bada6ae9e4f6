import fc from "fast-check";
import { expect, test } from "vitest";
import type { AnswersFile } from "../../src/parts/answers-file.ts";
import { answersInHtml, answersTemplate } from "../../src/parts/answers-in-html.ts";
import { cleanText } from "../../src/parts/clean-text.ts";
import { htmlSheet } from "../../src/sheet/html-sheet.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { sheetDocument } from "../../src/sheet/sheet-document.ts";
import { savedWalk } from "../../src/walk/saved-walk.ts";
import { demo, scenarios } from "../walk/walk-in-demo.ts";
import { sheetOf } from "./sheet-of.ts";

const files = scenarios.map(({ name, state }) => ({
	name,
	sheet: sheetOf(state),
	html: htmlSheet(sheetOf(state), savedWalk(demo, state)),
	kept: savedWalk(demo, state),
}));

/** Names that a page could take for its own: tags, entities, ends of elements and comments, turned directions. */
const hostileNames = [
	`<img src=x onerror="alert(1)">`,
	"</template><script>alert(1)</script>",
	"--><script>alert(1)</script><!--",
	"</style></title></svg><svg onload=alert(1)>",
	`" onfocus="alert(1)" autofocus x="`,
	"' onclick='alert(1)",
	"&lt;b&gt; &amp;#x3c; &#60;script&#62;",
	"ends\u202ehere\u2066 and\u200b\u0000\u001b[31m",
	"two\nlines\r\nof\u2028it",
	"]]><!DOCTYPE x>",
];

/** The sheet with every text in it replaced, so that none is left out. */
function withTexts<T>(value: T, text: string): T {
	if (typeof value === "string") return text as T;
	if (Array.isArray(value)) return value.map((item) => withTexts(item, text)) as T;
	if (value === null || typeof value !== "object") return value;
	return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, withTexts(item, text)])) as T;
}

/** Codes stay what they are, or there would be nothing to show; a picture is made by us and no outside text. */
function withHostileTexts(sheet: Sheet, text: string): Sheet {
	return {
		...withTexts(sheet, text),
		plan: sheet.plan ? { ...withTexts(sheet.plan, text), svg: sheet.plan.svg } : null,
		power: sheet.power ? { ...withTexts(sheet.power, text), svg: sheet.power.svg } : null,
		suggestions: sheet.suggestions.map((one) => ({ ...withTexts(one, text), state: one.state })),
	};
}

/** Tags with their attributes, in order. */
const tagsOf = (html: string) => html.replace(/<style>[\s\S]*?<\/style>/, "").match(/<[^>]*>/g) ?? [];

/** The same, apart from the numbers of headings. */
const kindsOfTags = (html: string) =>
	tagsOf(html.replace(/<svg[\s\S]*?<\/svg>/g, "")).map((tag) => tag.replace(/heading-\d+/, "heading"));

/** Every kind of tag that pages with ordinary names have. */
const ownTags = new Set(files.flatMap(({ html }) => kindsOfTags(html)));

test.each(files)("$name: one file without script, address or handler", ({ html, kept }) => {
	expect(html.startsWith('<!doctype html>\n<html lang="en">')).toBe(true);
	expect(html).toContain(`content="default-src 'none'; style-src 'unsafe-inline'`);
	const tags = tagsOf(html).join("\n");
	expect(tags).not.toMatch(/<(script|link|iframe|object|embed|img|a|form|base|audio|video|use|image)\b/i);
	expect(tags).not.toMatch(/\s(on\w+|src|href|xlink:href|style|action|srcset)\s*=/i);
	expect(html.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|url\(|@import/i);
	expect(answersInHtml(html)).not.toBeNull();
	expect(JSON.parse(answersInHtml(html) ?? "")).toEqual(JSON.parse(JSON.stringify(kept)));
});

test.each(files)("$name: every text of the document stands in it, and headings never jump", ({ html, sheet }) => {
	const words = htmlText(html);
	for (const block of sheetDocument(sheet)) {
		if ("text" in block) expect(words).toContain(block.text.replace(/\s+/g, " "));
		if (block.kind === "table")
			for (const cell of block.rows.flat()) expect(words).toContain(cell.replace(/\s+/g, " "));
	}
	const levels = [...html.matchAll(/<h([1-6])\b/g)].map(([, level]) => Number(level));
	expect(levels.filter((level) => level === 1)).toHaveLength(1);
	levels.forEach((level, index) => {
		expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1);
	});
});

test.each(files)("$name: elements close in the order they were opened, and no id stands twice", ({ html }) => {
	const open: string[] = [];
	for (const tag of tagsOf(html)) {
		const name = /^<\/?([\w-]+)/.exec(tag)?.[1];
		if (name === undefined || ["meta", "input"].includes(name) || tag.endsWith("/>")) continue;
		if (tag.startsWith("</")) expect(open.pop()).toBe(name);
		else open.push(name);
	}
	expect(open).toEqual([]);
	const ids = [...html.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id);
	expect(new Set(ids).size).toBe(ids.length);
	for (const [, id] of html.matchAll(/aria-labelledby="([^"]*)"/g)) expect(ids).toContain(id);
});

test.each(hostileNames)("%j in every text stays text", (name) => {
	const [first] = files;
	for (const { sheet } of files.slice(0, 4)) {
		const hostile = htmlSheet(withHostileTexts(sheet, name), null);
		// Which texts are told depends on their length, so the tags are the same in kind, not in number.
		expect(kindsOfTags(hostile).filter((tag) => !ownTags.has(tag))).toEqual([]);
		expect(cleanText(hostile)).toBe(hostile);
	}
	const kept: AnswersFile = { ...(first?.kept as AnswersFile), name };
	const html = htmlSheet(withHostileTexts(first?.sheet as Sheet, name), kept);
	expect(JSON.parse(answersInHtml(html) ?? "")).toMatchObject({ name });
});

test("a document is told in lists, tables and boxes", () => {
	const [first] = files;
	const html = htmlSheet(first?.sheet as Sheet, null);
	expect(html).toContain('<section class="page shop">');
	expect(html).toMatch(/<li class="box"><label><input type="checkbox"><span>/);
	expect(html).toContain('<th scope="col">');
	expect(html).toContain('<th scope="row">');
	expect(html).not.toContain("<template");
});

test("a message in German says that it is", () => {
	const { sheet, html } = files.find((one) => one.sheet.askTheShop.length > 0) as (typeof files)[number];
	const [first] = sheet.askTheShop;
	const paragraphs = [...html.matchAll(/<p( lang="de")?>(.*)<\/p>/g)];
	const languagesOf = (text: string | undefined) =>
		paragraphs.filter(([, , words]) => words === text).map(([, language]) => (language ? "de" : "en"));
	expect(new Set(languagesOf(first?.german.split("\n")[0]))).toEqual(new Set(["de"]));
	expect(new Set(languagesOf(first?.english.split("\n")[0]))).toEqual(new Set(["en"]));
});

test("any text at all survives in the template, in plain ASCII", () => {
	fc.assert(
		fc.property(fc.string({ unit: "binary", maxLength: 80 }), (name) => {
			const template = answersTemplate({ name } as AnswersFile);
			expect(template).toMatch(/^[ -~]*$/);
			expect(JSON.parse(answersInHtml(`<p>before</p>${template}<p>after</p>`) ?? "")).toEqual({ name });
		}),
	);
});

test.each([
	["no template", "<p>nothing</p>"],
	["another id", '<template id="other">{}</template>'],
	["an attribute more", '<template id="boardwalk-answers" data-x>{}</template>'],
	["never closed", '<template id="boardwalk-answers">{}'],
	["two of them", `${answersTemplate({} as AnswersFile)}${answersTemplate({} as AnswersFile)}`],
	[
		"one inside the other",
		'<template id="boardwalk-answers"><template id="boardwalk-answers">{}</template></template>',
	],
	["tags in it", '<template id="boardwalk-answers"><b>{}</b></template>'],
	["entities in it", '<template id="boardwalk-answers">{&quot;a&quot;:1}</template>'],
	["nothing", ""],
])("answers are not taken from a page with %s", (_, html) => {
	expect(answersInHtml(html)).toBeNull();
});

test("a page of many false beginnings is refused quickly", () => {
	const began = performance.now();
	expect(answersInHtml('<template id="boardwalk-answers">'.repeat(200_000))).toBeNull();
	expect(answersInHtml(`<template id="boardwalk-answers">${"<".repeat(4_000_000)}</template>`)).toBeNull();
	expect(performance.now() - began).toBeLessThan(2000);
});

/** What a reader sees, on one line. */
function htmlText(html: string): string {
	return html
		.replace(/<style>[\s\S]*?<\/style>/, " ")
		.replace(/<\/(b|span)>|<(b|span)\b[^>]*>/g, "")
		.replace(/<[^>]*>/g, " ")
		.replace(/&#(\d+);/g, (_, code) => String.fromCharCode(Number(code)))
		.replace(/\s+/g, " ");
}
