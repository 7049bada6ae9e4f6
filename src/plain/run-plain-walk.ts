import { blockLines } from "../screens/block-lines.ts";
import { wordBlocks } from "../screens/marked-words.ts";
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
	/** Whether more lines are coming in by themselves, as they do while a terminal hands over a paste. */
	moreComes?(): Promise<boolean>;
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
		if (meaning.kind === "event" && screen.typing?.kind === "page" && meaning.event.type === "text") {
			await takePage(face, line);
			screen = face.screen();
		} else if (meaning.kind === "event") {
			face.dispatch(meaning.event);
			screen = face.screen();
		} else if (meaning.kind === "problem") face.write(`\n${wrapText(meaning.words, face.width).join("\n")}\n`);
		else if (meaning.kind === "words") face.write(`\n${blockLines(wordBlocks(screen, "m"), face.width).join("\n")}\n`);
		else face.write(`${helpText(screen, face.width)}\n`);
	}
}

/** Two empty lines end a paste, or a line with only a dot. Nothing in it is a command. */
async function takePage(face: PlainFace, first: string): Promise<void> {
	const lines: string[] = [];
	let letters = 0;
	let emptyLines = 0;
	let isOver = false;
	for (let line: string | null = first; !isOver && line !== null && line.trim() !== "."; ) {
		// What is too long is refused as a whole; the rest of it need not be held.
		if (letters <= mostHeld) lines.push(line);
		letters += line.length + 1;
		emptyLines = line.trim() === "" ? emptyLines + 1 : 0;
		// A page may well have two empty lines in it: while more comes by itself, it is not over.
		isOver = emptyLines >= 2 && !(await face.moreComes?.());
		if (!isOver) line = await face.readLine("");
	}
	face.dispatch({ type: "paste", text: lines.join("\n") });
	const screen = face.screen();
	if (screen?.enter && !screen.problem) face.dispatch(screen.enter.event);
}

/** More than the walk takes; own convention, in characters. */
const mostHeld = 2_100_000;

const sourcesHint = 'The word "sources" shows numbers and where they come from; the same word hides them.';

function helpText({ help, title }: Screen, width: number): string {
	const words = `\n${title}\nType the number of a line. Nothing is lost by going back.`;
	const more = wrapText(`\n${sourcesHint}`, width);
	return [...(help.length > 0 ? blockLines(help, width) : wrapText(words, width)), ...more].join("\n");
}
