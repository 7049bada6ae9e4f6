// Makes the checkout ready to run: installs the packages when they are missing or out of date, then builds.
// Old Nodes must be able to read this file, so it uses nothing newer than Node 12 knows and loads the rest late.
import { fileURLToPath } from "url";
import { oldNodeSentence } from "../old-node.js";

const oldNode = oldNodeSentence(process.version);
if (oldNode) {
	console.error(oldNode);
	// 78 as in bin/boardwalk.js: bad configuration.
	process.exitCode = 78;
} else {
	import("./make-ready.mjs")
		.then(({ makeReady }) => makeReady(fileURLToPath(new URL("../../", import.meta.url))))
		.then((exitCode) => {
			process.exitCode = exitCode;
		})
		.catch((error) => {
			console.error(error);
			process.exitCode = 70;
		});
}
