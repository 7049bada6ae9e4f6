import { blockLines } from "../screens/block-lines.ts";
import type { Screen } from "../screens/screen.ts";
import { wrapText } from "../screens/wrap-lines.ts";
import { lineMeaning } from "./line-event.ts";
import { promptText, screenText } from "./screen-text.ts";

/** What the line-by-line walk needs from outside; a test hands in lists of lines. */
export interface PlainFace {
	/** The screen now, or null once the walk has been left. */
	screen(): Screen | null;
	dispatch(event: Screen["choices"][number]["event"]): void;
	write(text: string): void;
	/** The next line typed, or null at the end of input. */
	readLine(prompt: string): Promise<string | null>;
	readonly width: number;
}

/** Asks one screen after another until the walk is left. At the end of input the walk is saved and left. */
export async function runPlainWalk(face: PlainFace): Promise<void> {
	let shown: Screen | null = null;
	let shownText = "";
	for (let screen = face.screen(); screen; ) {
		// A screen that reads otherwise by now, such as a setting turned over, is shown again.
		const words = screenText({ ...screen, notice: null }, face.width);
		if (screen.id !== shown?.id || screen.notice || words !== shownText) face.write(screenText(screen, face.width));
		shownText = words;
		if (screen.problem && screen !== shown) face.write(`\n${wrapText(screen.problem, face.width).join("\n")}\n`);
		shown = screen;
		const line = await face.readLine(promptText(screen, face.width));
		if (line === null) {
			face.dispatch({ type: "leave" });
			screen = face.screen();
			continue;
		}
		const meaning = lineMeaning(screen, line);
		if (meaning.kind === "event") {
			face.dispatch(meaning.event);
			screen = face.screen();
		} else if (meaning.kind === "problem") face.write(`\n${wrapText(meaning.words, face.width).join("\n")}\n`);
		else face.write(`${helpText(screen, face.width)}\n`);
	}
}

function helpText({ help, title }: Screen, width: number): string {
	const words = `\n${title}\nType the number of a line. Nothing is lost by going back.`;
	return (help.length > 0 ? blockLines(help, width) : wrapText(words, width)).join("\n");
}
