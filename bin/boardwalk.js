#!/usr/bin/env node
// Old Nodes must be able to read this file, so it uses nothing newer than Node 12 knows.
import { existsSync } from "fs";
import { oldNodeSentence } from "./old-node.js";

const program = new URL("../dist/main.js", import.meta.url);
const oldNode = oldNodeSentence(process.version);

// 78 is "bad configuration": in both cases what the program stands on is not ready, while 70 would say that the
// program itself has a bug and 66 that a file the person named is missing.
if (oldNode || !existsSync(program)) {
	const notBuilt = "boardwalk is not built yet: run `npm start` (installs, builds and starts) or `npm run build`.";
	console.error(oldNode || notBuilt);
	process.exitCode = 78;
} else {
	import(program.href)
		.then((boardwalk) => boardwalk.main(process.argv.slice(2)))
		.catch((error) => {
			console.error(error);
			process.exitCode = 70;
		});
}
