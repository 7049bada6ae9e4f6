import * as z from "zod";
import sample from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import { allCriteria, criterionById } from "../criteria/all-criteria.ts";
import type { Criterion, Scale } from "../criteria/define-criterion.ts";
import { holdsAnswers, readAnswers } from "../files/read-answers.ts";
import { readJson } from "../files/read-json.ts";
import { type AnswersFile, answersFile } from "../parts/answers-file.ts";
import type { Fault } from "../parts/check-json.ts";
import { checkParts } from "../parts/check-parts.ts";
import { partsFile } from "../parts/market.ts";
import { partKindNames, partKinds } from "../parts/part-kinds.ts";
import { sheetFile } from "../parts/sheet-file.ts";
import { allSources, sourceById } from "../reference/sources.ts";
import { allRules, ruleById } from "../rules/all-rules.ts";
import { blockLines } from "../screens/block-lines.ts";
import type { Screen } from "../screens/screen.ts";
import { screenOf } from "../screens/screen-of.ts";
import { viewWalk } from "../screens/walk-view.ts";
import { readWords } from "../sheet/read-words.ts";
import { ownersPage, ruleBook, severityWords } from "../sheet/rule-book.ts";
import { sourceWords } from "../sheet/source-words.ts";
import { wrapText } from "../sheet/wrap-text.ts";
import { savedWalk, takeUpWalk } from "../walk/saved-walk.ts";
import type { BoardPage } from "../walk/walk-event.ts";
import { startWalk, type WalkContext, type WalkState } from "../walk/walk-state.ts";
import { adviceText } from "./advice-text.ts";
import { type Arguments, nearWords } from "./arguments.ts";
import { demoMarket } from "./demo-market.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { faultLine } from "./fault-words.ts";
import { loadAnswersOf, loadMarket, reading } from "./load.ts";
import { asksForPaperBoard, paperBoardOfWalk } from "./paper-board-command.ts";
import type { Streams } from "./streams.ts";
import { sheetForm, writeSheet } from "./write-sheet.ts";

const width = 78;

/** `shortlist`: as text, or with --json as advice@1. */
export function shortlist(args: Arguments, streams: Streams): void {
	const market = loadMarket(args, streams);
	const { state, context } = loadAnswersOf(args, market, streams);
	streams.out(args.json ? adviceText(context, state) : shortlistText(context, state));
}

function shortlistText(context: WalkContext, state: WalkState): string {
	return resultText(screenOf(context, { ...state, place: { at: "shortlist" } }));
}

/** A screen without what can be done on it. */
function resultText(screen: Screen | null): string {
	if (!screen) return "";
	const lines = [...wrapText(screen.title, width), "", ...blockLines(screen.body, width)];
	return `${lines.join("\n").replace(/\n{3,}/g, "\n\n")}\n`;
}

/** With no terminal and no command: a made-up person's shortlist, and how to start a walk. */
export function sampleShortlist({ out }: Streams): void {
	const context: WalkContext = { market: demoMarket(), asOf: sample.asOf };
	const { state } = takeUpWalk(context, sample as AnswersFile);
	out("There is no terminal here to ask questions in. This is what a made-up person got:\n\n");
	out(shortlistText(context, state));
	out("\nTo walk yourself: npm start in a terminal; or, line by line, npm start -- --plain.\n");
}

/** `sheet`: to standard output as text, or to a file in the form its ending names. */
export function sheet(args: Arguments, streams: Streams): void {
	if (asksForPaperBoard(args)) {
		paperBoardOfWalk(args, streams);
		return;
	}
	const market = loadMarket(args, streams);
	const { state, context } = loadAnswersOf(args, market, streams);
	const made = viewWalk(context, state).sheet();
	const kept = savedWalk(context, state);
	if (args.to === undefined || args.to === "-") streams.out(sheetForm(made, kept, args.json ? ".json" : ".txt"));
	else
		streams.err(
			`Written: ${writeSheet(args.to, made, kept, { replace: args.replace, ifTaken: "Take another name, or add --replace." })}\n`,
		);
}

/** `check FILE`: every fault with path, what was expected, and what was perhaps meant. */
export function check(args: Arguments, streams: Streams): void {
	const [path] = args.operands;
	if (path === undefined)
		throw new CommandError(exitCodes.usage, "Which file? Such as: boardwalk check my-boards.json");
	const isAnswers = reading(() => holdsAnswers(path));
	const json = isAnswers ? null : reading(() => readJson(path));
	const faults = isAnswers ? answersFaults(path, args, streams) : checkParts(json).faults;
	if (faults.length > 0) throw new CommandError(exitCodes.badData, faultsText(path, faults));
	streams.out(`${path}: no mistakes found${isAnswers ? "" : ` in ${partsCount(json)}`}.\n`);
}

/** Also values that the question itself cannot have. */
function answersFaults(path: string, args: Arguments, streams: Streams): readonly Fault[] {
	const { value: file, faults } = reading(() => readAnswers(path));
	if (!file) return faults;
	return takeUpWalk({ market: loadMarket(args, streams), asOf: file.asOf }, file).faults;
}

function faultsText(path: string, faults: readonly Fault[]): string {
	const shown = faults.slice(0, 200).map((fault) => faultLine(path, fault));
	const more = faults.length > shown.length ? [`... and ${faults.length - shown.length} more.`] : [];
	return [...shown, ...more, `${faults.length} ${faults.length === 1 ? "mistake" : "mistakes"} in all.`].join("\n");
}

function partsCount(json: unknown): string {
	const counts = partKindNames.flatMap((kind) => {
		const list = (json as Record<string, unknown[] | undefined>)[partKinds[kind].list];
		return list && list.length > 0 ? [`${list.length} ${partKinds[kind].noun}${list.length === 1 ? "" : "s"}`] : [];
	});
	return counts.length > 0 ? counts.join(", ") : "an empty file";
}

/** `schema KIND`: JSON Schema, draft 2020-12. */
export function schema({ operands: [kind] }: Arguments, { out }: Streams): void {
	const schemas: Readonly<Record<string, z.ZodType>> = {
		...Object.fromEntries(partKindNames.map((name) => [name, partKinds[name].schema])),
		parts: partsFile,
		answers: answersFile,
		sheet: sheetFile,
	};
	const names = Object.keys(schemas);
	if (kind === undefined) throw new CommandError(exitCodes.usage, `Of what? One of: ${names.join(", ")}.`);
	const found = Object.hasOwn(schemas, kind) ? schemas[kind] : undefined;
	if (!found) throw new CommandError(exitCodes.usage, `There is no schema "${kind}".${nearWords(kind, names)}`);
	out(`${JSON.stringify(z.toJSONSchema(found, { io: "input" }), null, "\t")}\n`);
}

/** `why`: a rule, a criterion, the whole rule book, or a board held against a file of answers. */
export function why(args: Arguments, streams: Streams): void {
	const [name] = args.operands;
	const rules = allRules.map(({ id }) => id);
	const criteria = allCriteria.map(({ id }) => id);
	if (name === undefined)
		throw new CommandError(
			exitCodes.usage,
			`Of what? A rule (${rules.join(", ")}), a criterion (${criteria.join(", ")}) or a board's id.`,
		);
	if (name === "all") {
		streams.out(ruleBook());
		return;
	}
	if (name === "criteria") {
		streams.out(`${ownersPage()}\n`);
		return;
	}
	const text = ruleText(name) ?? criterionText(name);
	if (text !== null) {
		streams.out(text);
		return;
	}
	const market = loadMarket(args, streams);
	const taken = args.answers === undefined ? null : loadAnswersOf(args, market, streams);
	const context = taken?.context ?? { market, asOf: sample.asOf };
	const state = taken?.state ?? startWalk();
	const known = [
		...market.parts.board,
		...state.ownParts.filter(({ kind }) => kind === "board").map(({ part }) => part),
	];
	if (!known.some(({ id }) => id === name)) {
		const near = nearWords(name, [...rules, ...criteria, ...known.map(({ id }) => id)]);
		throw new CommandError(exitCodes.usage, `There is no rule, criterion or board "${name}".${near}`);
	}
	if (!taken) streams.err("Without --answers FILE nothing about your build is known, so little can be told.\n");
	const pageOf = (page: { readonly page?: BoardPage }) =>
		resultText(screenOf(context, { ...state, place: { at: "board", boardId: name, ...page } }));
	streams.out(`${pageOf({})}\n${pageOf({ page: "facts" })}`);
}

function ruleText(id: string): string | null {
	const rule = ruleById(id);
	if (!rule) return null;
	return textOf([
		`${rule.id}: ${rule.label}`,
		rule.asks,
		`Why: ${rule.why}`,
		`If not: ${severityWords[rule.severity]}.${rule.scope === "build" ? " It is about your parts among themselves, and takes no board out." : ""}`,
		`It reads: ${[...rule.reads, ...rule.mayRead].map(readWords).join("; ")}.`,
		`Source: ${sourceWords(sourceById(rule.source))}`,
	]);
}

function criterionText(id: string): string | null {
	const criterion = criterionById(id);
	if (!criterion) return null;
	return textOf([
		`${criterion.id}: ${criterion.name}`,
		`Why: ${criterion.why}`,
		...scaleTexts(criterion),
		`Grounds: ${criterion.grounds}`,
		`It reads: ${criterion.reads.map(readWords).join("; ")}.`,
		`Source: ${sourceWords(sourceById(criterion.source))}`,
	]);
}

/** Each scale with its corners: one, or one a part. */
function scaleTexts({ unit, scale, madeOf }: Criterion): readonly string[] {
	const corners = (of: Scale, inUnit: string) =>
		`${of.map(([measure, value]) => `${measure} ${inUnit} = ${Math.round(value * 100)} points`).join(", ")}; straight lines between, level outside.`;
	if (!madeOf) return [`Scale: ${corners(scale, unit)}`];
	return madeOf.map((part) => `Scale, ${part.weight} of 100 (${part.name}): ${corners(part.scale, part.unit)}`);
}

/** `sources`: the bibliography. */
export function sources({ json }: Arguments, { out }: Streams): void {
	const all = allSources();
	out(
		json ? `${JSON.stringify(all, null, "\t")}\n` : textOf(all.map((source) => `${source.id}: ${sourceWords(source)}`)),
	);
}

function textOf(paragraphs: readonly string[]): string {
	return `${paragraphs.flatMap((paragraph) => wrapText(paragraph, width, { indent: "  " })).join("\n")}\n`;
}
