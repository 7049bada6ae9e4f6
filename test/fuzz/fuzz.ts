import { createHash } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { type Fault, faultOf } from "./check.ts";
import { type Parser, parsers } from "./parsers.ts";
import { seedsOf } from "./seeds.ts";
import { drawsOf, drawText, heavyPieces, heavyText } from "./texts.ts";

const { values, positionals } = parseArgs({
	allowPositionals: true,
	options: {
		seconds: { type: "string", default: "60" },
		seed: { type: "string", default: "1" },
		runs: { type: "string" },
		growth: { type: "boolean", default: false },
		keep: { type: "boolean", default: false },
	},
});
const [seconds, seed] = [Number(values.seconds), Number(values.seed)];
const mostRuns = values.runs === undefined ? Number.POSITIVE_INFINITY : Number(values.runs);
const unknown = positionals.filter((name) => !parsers.some((parser) => parser.name === name));
const chosen = parsers.filter(({ name }) => positionals.length === 0 || positionals.includes(name));
/** More faults of one parser than this tell nothing more. */
const mostFaults = 5;

if (unknown.length > 0 || !(seconds > 0) || !Number.isInteger(seed)) {
	console.error(`Such as: --seconds 60 --seed 1 ${parsers.map(({ name }) => name).join(" ")}`);
	process.exitCode = 2;
} else for (const parser of chosen) (values.growth ? growth : fuzz)(parser, seconds / chosen.length);

/** Reads drawn texts until the time is over. Text number N is the same for a seed, however fast the machine is. */
function fuzz(parser: Parser, forSeconds: number): void {
	const samples = [...parser.samples(), ...seedsOf(parser.name).map(({ text }) => text)];
	const begun = performance.now();
	const spent = () => (performance.now() - begun) / 1000;
	const faults: object[] = [];
	let runs = 0;
	let slowestMs = 0;
	while (
		runs < mostRuns &&
		faults.length < mostFaults &&
		(spent() < forSeconds || mostRuns < Number.POSITIVE_INFINITY)
	) {
		const begunAt = performance.now();
		const text = drawText(drawsOf((seed * 1_000_003 + runs++) >>> 0), samples);
		const fault = faultOf(parser, text);
		slowestMs = Math.max(slowestMs, performance.now() - begunAt);
		if (fault) faults.push(told(parser, fault, smaller(parser, text, fault), runs - 1));
	}
	report({ name: parser.name, runs, seconds: rounded(spent()), seed, slowestMs: Math.round(slowestMs), faults });
}

/** Times one piece said again and again, at 50 and 100 KB. Up to 1.3 the time grows about as the text does. */
function growth(parser: Parser): void {
	const begun = performance.now();
	const faults: object[] = [];
	const steepest = { piece: "", exponent: 0, ms: 0 };
	for (const piece of heavyPieces) {
		const [half, whole] = [50_000, 100_000].map((length) => msOf(parser, heavyText(piece, length)));
		const ms = whole ?? 0;
		// What takes next to no time cannot be timed.
		const exponent = ms < 40 ? 0 : Math.log2(ms / Math.max(1, half ?? 1));
		if (exponent > steepest.exponent)
			Object.assign(steepest, { piece, exponent: rounded(exponent), ms: Math.round(ms) });
		if (exponent > 1.3 || ms > 2000) faults.push({ piece, exponent: rounded(exponent), ms: Math.round(ms) });
	}
	const seconds = rounded((performance.now() - begun) / 1000);
	report({ name: parser.name, runs: 2 * heavyPieces.length, seconds, seed: 0, steepest, faults });
}

/** Processor time, the better of two: a machine that does other things only adds to it. */
function msOf(parser: Parser, text: string): number {
	const once = () => {
		const begun = process.cpuUsage();
		faultOf(parser, text);
		const { user, system } = process.cpuUsage(begun);
		return (user + system) / 1000;
	};
	const first = once();
	return first < 20 || first > 3000 ? first : Math.min(first, once());
}

/** A shorter text with the same fault, by taking pieces out; not the shortest there is. */
function smaller(parser: Parser, text: string, { what }: Fault): string {
	const kind = (words: string | undefined) => words?.replace(/\d+|".*"/g, "").slice(0, 40);
	let left = text;
	let tries = what.startsWith("took") ? 0 : 400;
	for (let size = Math.ceil(left.length / 2); size >= 1 && tries > 0; size = Math.floor(size / 2))
		for (let at = 0; at < left.length && tries > 0; tries--) {
			const without = left.slice(0, at) + left.slice(at + size);
			if (kind(faultOf(parser, without)?.what) === kind(what)) left = without;
			else at += size;
		}
	return left;
}

/** With --keep the text is kept, and every test run reads it from then on. */
function told({ name }: Parser, { what }: Fault, text: string, run: number): object {
	const file = `test/fuzz/seeds/${name}/${createHash("sha256").update(text).digest("hex").slice(0, 12)}.txt`;
	if (values.keep) {
		mkdirSync(`test/fuzz/seeds/${name}`, { recursive: true });
		writeFileSync(file, JSON.stringify(text));
	}
	return { run, what, text: text.slice(0, 200), ...(values.keep ? { file } : {}) };
}

function rounded(value: number): number {
	return Math.round(value * 100) / 100;
}

function report(line: {
	readonly name: string;
	readonly faults: readonly object[];
	readonly [figure: string]: unknown;
}): void {
	console.log(JSON.stringify(line));
	if (line.faults.length > 0) process.exitCode = 1;
}
