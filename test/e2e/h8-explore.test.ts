import { test } from "vitest";
import { keys, newHome, RealTerminal } from "./real-terminal.ts";

test("explore", async () => {
	const home = newHome();
	const terminal = new RealTerminal({ home, columns: 60, rows: 20 });
	const press = async (k: string, wait: string) => {
		terminal.press(k);
		await terminal.waitFor(wait).catch((e) => console.log(String(e)));
		console.log(terminal.text());
		console.log("-----");
	};
	await press("", "Start");
	await press(keys.enter, "question 1");
	await press("200\r", "Fit, question 1");
	await press("tallow", "allow");
	await press(keys.down, "allow");
	await press(keys.enter, "question 2");
	await press(keys.down + keys.enter, "question 3");
	await press(keys.down + keys.enter, "question 4");
	await press(keys.down + keys.enter, "question 5");
	await press(keys.down + keys.enter, "done");
	await press(keys.pageDown, "Page Up");
	terminal.resize(40, 12);
	await press("", "done");
	terminal.resize(39, 12);
	await press("", "too small");
	terminal.resize(120, 40);
	await press("", "What fell");
	await press(keys.enter, "Features, ");
	await press(keys.down + keys.enter, "question 2");
	terminal.press(keys.interrupt);
	console.log(await terminal.ended());
	console.log(terminal.text());
	console.log(JSON.stringify(terminal.sent.slice(0, 1500)));
	home.remove();
});
