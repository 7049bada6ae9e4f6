import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { picturedScreens, pictureSize } from "../screens/pictures/pictured-screens.ts";
import { DrawnTerminal } from "./drawn-terminal.ts";

const screens = picturedScreens();

test.each(screens)(
	"the picture of README.md of the $name is what is drawn today",
	async ({ name, title, screen, face }) => {
		const terminal = new DrawnTerminal(pictureSize);
		terminal.drawing.show(screen, face, false);
		const rows = await terminal.rows();
		terminal.drawing.stop();
		const svg = readFileSync(new URL(`../screens/pictures/${name}.svg`, import.meta.url), "utf8");
		expect(inside(svg, "desc"), "lags: npm run docs").toBe(rows.join("\n").trim());
		expect(inside(svg, "title")).toBe(title);
		// What is painted is what is said.
		const painted = [...svg.matchAll(/<text [^>]*>([^<]*)<\/text>/g)].map(([, words]) => plain(words ?? ""));
		expect(painted.join(" ").split(/\s+/)).toEqual(rows.join(" ").trim().split(/\s+/));
	},
);

function inside(svg: string, tag: string): string | undefined {
	const words = new RegExp(`<${tag} [^>]*>([^<]*)</${tag}>`).exec(svg)?.[1];
	return words === undefined ? undefined : plain(words);
}

function plain(escaped: string): string {
	return escaped.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&");
}
