// Holds what the reader makes of texts against facts read by hand: npm run measure:reading -- FOLDER
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { readBoard } from "../../src/reading/read-board.ts";
import { readCase } from "../../src/reading/read-case.ts";
import { readProcessor } from "../../src/reading/read-processor.ts";
import { type Flat, flatFacts } from "./flat-facts.ts";
import { held } from "./leaves.ts";

const readers = { board: readBoard, processor: readProcessor, case: readCase };
const [folder] = process.argv.slice(2);

function stop(why: string): never {
	console.error(why);
	process.exit(2);
}

/** Facts read by hand, of a kind that can be read, with their text. */
function pageOf(within: string, name: string): { kind: keyof typeof readers; hand: Flat; text: string } {
	const [facts, text] = [join(within, `${name}.json`), join(within, `${name}.txt`)];
	if (!existsSync(text)) stop(`${facts} has no text ${name}.txt beside it.`);
	let hand: unknown;
	try {
		hand = JSON.parse(readFileSync(facts, "utf8"));
	} catch {
		stop(`${facts} is not valid JSON.`);
	}
	const isFlat = (value: unknown): value is Flat =>
		typeof value === "object" && value !== null && !Array.isArray(value);
	if (!isFlat(hand)) stop(`${facts} holds no facts.`);
	const kind = hand["kind"];
	const isKind = (value: unknown): value is keyof typeof readers =>
		typeof value === "string" && Object.hasOwn(readers, value);
	if (!isKind(kind)) stop(`${facts} has no kind that can be read: ${Object.keys(readers).join(", ")}.`);
	return { kind, hand, text: readFileSync(text, "utf8") };
}

if (folder === undefined) stop("Which folder? It holds texts NN.txt with facts read by hand in NN.json.");
if (!existsSync(folder) || !statSync(folder).isDirectory()) stop(`There is no folder ${folder}.`);
const names = readdirSync(folder)
	.filter((name) => name.endsWith(".json"))
	.map((name) => name.slice(0, -".json".length))
	.sort();
if (names.length === 0) stop(`${folder} has no facts read by hand: no file NN.json.`);
/** Facts that notes by hand may leave out as a whole: asked only where some page of the folder notes them. */
const mayBeUnasked = ["psuMaxMm", "drive35", "drive25"];
const pages = names.map((name) => ({ name, ...pageOf(folder, name) }));
const unasked = new Set(mayBeUnasked.filter((key) => !pages.some(({ hand }) => key in hand)));
const asked = (flat: Flat): Flat => Object.fromEntries(Object.entries(flat).filter(([key]) => !unasked.has(key)));
let [right, stated, found, expected, doubts] = [0, 0, 0, 0, 0];
for (const { name, kind, hand, text } of pages) {
	const reading = readers[kind](text);
	const sure = held(asked(flatFacts(reading, { assumed: false })), hand);
	const all = held(asked(flatFacts(reading, { assumed: true })), hand);
	right += sure.right;
	stated += sure.read;
	found += all.right;
	expected += all.expected;
	doubts += reading.doubts.length;
	console.log(
		`${name} (${kind}): ${sure.right} of ${sure.read} stated are right, ${all.right} of ${all.expected} found, ${reading.doubts.length} doubts, ${reading.unread.length} lines unread`,
	);
	for (const miss of sure.misses.filter(({ told }) => told !== undefined))
		console.log(
			`  wrong   ${miss.key}: read ${JSON.stringify(miss.told)}${miss.expected === undefined ? ", nothing expected" : `, expected ${JSON.stringify(miss.expected)}`}`,
		);
	for (const miss of all.misses.filter(({ expected: its }) => its !== undefined))
		console.log(
			`  missed  ${miss.key}: ${JSON.stringify(miss.expected)}${miss.told === undefined ? "" : `, read ${JSON.stringify(miss.told)}`}`,
		);
	for (const { fact, why, line } of reading.doubts) console.log(`  doubt   ${fact}, line ${line}: ${why}`);
}
const share = (part: number, whole: number) => (whole === 0 ? "1.000" : (part / whole).toFixed(3));
console.log(
	`precision ${share(right, stated)} recall ${share(found, expected)} (${right} of ${stated} stated leaves right, ${found} of ${expected} leaves found, ${doubts} doubts)`,
);
