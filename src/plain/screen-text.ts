import { blockLines } from "../screens/block-lines.ts";
import { wordsMarked } from "../screens/marked-words.ts";
import type { Block, Choice, Screen } from "../screens/screen.ts";
import { wrapText } from "../screens/wrap-lines.ts";

/** A screen as lines of text, top to bottom; nothing in it is ever redrawn. */
export function screenText(screen: Screen, width: number): string {
	const lines = [
		...(screen.notice ? wrapText(screen.notice, width) : []),
		"",
		// What the last answer did comes first, so that question and lines to pick stand next to the prompt.
		...blockLines(screen.side, width),
		"",
		...(screen.place ? [screen.place] : []),
		...wrapText(screen.title, width),
		"",
		...blockLines(screen.body.filter(isForReading), width),
		"",
		...blockLines(screen.sources, width),
		"",
		...choicesText(screen, width),
	];
	return `${lines.join("\n").replace(/\n{3,}/g, "\n\n")}\n`;
}

/** A picture whose words stand beside it only holds up whoever reads line by line. */
function isForReading(block: Block): boolean {
	return block.kind !== "picture" || !block.isTold;
}

function choicesText({ choices, typing }: Screen, width: number): string[] {
	return choices.flatMap((choice, index) => {
		const mark = choiceMark(choice, index, typing?.kind === "value" || typing?.kind === "page");
		const indent = " ".repeat(mark.length);
		const count = choice.count ? ` (${choice.count})` : "";
		const apart = choice.apart && !choices[index - 1]?.apart && index > 0 ? ["  or"] : [];
		const group = choice.group !== undefined && choice.group !== choices[index - 1]?.group ? [choice.group] : [];
		return [
			...apart,
			...group,
			...wrapText(`${mark}${choice.label}${choice.chosen ? " (chosen)" : ""}${markedInWords(choice)}${count}`, width, {
				indent,
			}),
			...(choice.detail ? wrapText(`${indent}${choice.detail}`, width, { indent }) : []),
		];
	});
}

/** In words, since a sign in brackets is read out as nothing or as noise. */
function markedInWords({ mark }: Choice): string {
	if (!mark || mark.count === 0) return "";
	return mark.count === 1 ? " (marked)" : ` (marked ${mark.count} times)`;
}

/** A number; where numbers are answers, the line's letter. */
function choiceMark({ key }: Choice, index: number, byKey: boolean): string {
	return byKey ? `  ${key ?? "-"}  ` : `${String(index + 1).padStart(3)}  `;
}

/** The prompt line: what can be typed now. */
export function promptText(screen: Screen, width: number): string {
	const { choices, typing, enter, help } = screen;
	const canMark = choices.some(({ mark }) => mark);
	const canRepeat = choices.some(({ mark }) => (mark?.most ?? 1) > 1);
	const all = choices.length === 1 ? "1" : `1 to ${choices.length}`;
	const picks =
		choices.length > 0 && typing?.kind !== "value" && typing?.kind !== "page"
			? [canMark ? `${all}; several as ${canRepeat ? "1, 3, 3 (3 twice)" : "1, 3"}` : all]
			: [];
	const parts = [
		...picks,
		...(typing ? [typing.words] : []),
		...(enter ? [`Enter: ${enter.words}`] : []),
		"b: back",
		...(help.length > 0 ? ["?: why, and where to find it"] : []),
		...(wordsMarked(screen).length > 0 ? ["*: words explained"] : []),
		"r: review",
		"m: more",
		"s: save and leave",
	];
	return `${wrapText(`[${parts.join("; ")}]`, width, { indent: " " }).join("\n")}\n> `;
}
