// node test/faults/run-kills.mjs [KILLS] [SEED] [PROGRAM]: kills the built program at random moments of scripted walks and
// prints one line of JSON; ends with 1 where anything was lost that may not be, or a start after a kill did not open.

import { fileURLToPath } from "node:url";
import { runKills } from "./kills.mjs";

const [kills = "200", seed = String(Date.now() % 1_000_000), program] = process.argv.slice(2);
const figures = await runKills({
	kills: Number(kills),
	seed: Number(seed),
	program: program ?? fileURLToPath(new URL("../../bin/boardwalk.js", import.meta.url)),
});
console.log(JSON.stringify(figures));
process.exitCode = figures.isWell ? 0 : 1;
