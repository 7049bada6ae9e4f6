// Draws the pictures of README.md into a folder, and tells their names and titles as JSON: made and run by bin/dev/docs.mjs.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { DrawnTerminal } from "../../ui/drawn-terminal.ts";
import { frameSvg } from "./frame-svg.ts";
import { picturedScreens, pictureSize } from "./pictured-screens.ts";

const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error("Which folder are the pictures to go to?");

const made: { readonly name: string; readonly title: string }[] = [];
for (const { name, title, screen, face, inSight } of picturedScreens()) {
	const terminal = new DrawnTerminal(pictureSize);
	terminal.drawing.show(screen, face, false);
	const cells = await terminal.cells();
	const shown = (await terminal.rows()).join("\n");
	terminal.drawing.stop();
	const missing = inSight.filter((words) => !shown.includes(words));
	if (missing.length > 0) throw new Error(`The picture "${name}" lacks ${missing.join(", ")}:\n${shown}`);
	writeFileSync(join(folder, `${name}.svg`), frameSvg(cells, { name, title }));
	made.push({ name, title });
}
console.log(JSON.stringify(made));
