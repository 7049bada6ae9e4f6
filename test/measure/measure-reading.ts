// Holds what the reader makes of texts against facts read by hand: npm run measure:reading -- FOLDER
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readBoard } from "../../src/reading/read-board.ts";
import { readCase } from "../../src/reading/read-case.ts";
import { readProcessor } from "../../src/reading/read-processor.ts";
import { type Flat, flatFacts } from "./flat-facts.ts";
import { held } from "./leaves.ts";

const readers = { board: readBoard, processor: readProcessor, case: readCase };
const [folder] = process.argv.slice(2);
if (folder === undefined) {
	console.error("Which folder? It holds texts NN.txt with facts read by hand in NN.json.");
	process.exit(2);
}
const names = readdirSync(folder)
	.filter((name) => name.endsWith(".json"))
	.map((name) => name.slice(0, -".json".length))
	.sort();
let [right, stated, found, expected, doubts] = [0, 0, 0, 0, 0];
for (const name of names) {
	const hand = JSON.parse(readFileSync(join(folder, `${name}.json`), "utf8")) as Flat;
	const kind = hand["kind"] as keyof typeof readers;
	const reading = readers[kind](readFileSync(join(folder, `${name}.txt`), "utf8"));
	const sure = held(flatFacts(reading, { assumed: false }), hand);
	const all = held(flatFacts(reading, { assumed: true }), hand);
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
