import { writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readAnswers } from "../../src/files/read-answers.ts";
import type { AnswersFile } from "../../src/parts/answers-file.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { adviceJson } from "../../src/sheet/advice-json.ts";
import { htmlSheet } from "../../src/sheet/html-sheet.ts";
import { sheetJson } from "../../src/sheet/sheet-json.ts";
import { savedWalk, takeUpWalk } from "../../src/walk/saved-walk.ts";
import type { WalkState } from "../../src/walk/walk-state.ts";
import { ownFolder } from "../files/own-folder.ts";
import { demo, scenarios } from "../walk/walk-in-demo.ts";
import { readBack, strangersFile } from "./hostile-walk.ts";
import { sheetOf } from "./sheet-of.ts";

const { path } = ownFolder();

const forms = [
	["sheet.html", htmlSheet],
	["sheet.json", sheetJson],
] as const;

/** The sheets of a walk that carry it, and the advice it leads to. */
function madeOf(state: WalkState) {
	const view = viewWalk(demo, state);
	const kept = savedWalk(demo, state);
	return {
		kept,
		sheets: forms.map(([, form]) => form(view.sheet(), kept)),
		advice: JSON.stringify(adviceJson(view.judgement(), view.advice(), view.state.answers, view.context)),
	};
}

/** What somebody has who is sent the sheet alone. */
function sentOn(name: string, text: string): AnswersFile {
	writeFileSync(path(name), text);
	const { value, faults } = readAnswers(path(name));
	if (!value) throw new Error(JSON.stringify(faults));
	return value;
}

test.each(scenarios)("a sheet alone gives the walk of $name again, and so the same advice and sheets", ({ file }) => {
	const { value: read } = readBack(file);
	if (!read) throw new Error("the file is refused");
	const { kept, sheets, advice } = madeOf(takeUpWalk(demo, read).state);
	const opened = forms.map(([fileName], index) => sentOn(fileName, sheets[index] ?? ""));
	expect(opened).toEqual([kept, kept]);
	const { state, faults, warnings } = takeUpWalk(demo, opened[0] as AnswersFile);
	expect([faults, warnings]).toEqual([[], []]);
	expect(madeOf(state)).toEqual({ kept, sheets, advice });
});

describe.each(forms)("%s", (fileName, form) => {
	test.each([
		"</template><script>alert(1)</script>",
		"</TEMPLATE ><!-- ]]> &lt; \\u003c \\\\ \" '",
		'=1;"=2 | `~~~` [x](y)',
		"__proto__",
		"\u001b]0;x\u0007\u202eevil\u200b \ud800 \u{1f600} e\u0301",
	])("passed to and fro keeps a stranger's %j as it was read first", (word) => {
		const { value: first } = readBack(strangersFile(word, "handed-down"));
		if (!first) throw new Error("the stranger's file is refused");
		let kept = first;
		for (let times = 1; times <= 2; times++) {
			const { state, faults } = takeUpWalk(demo, kept);
			expect(faults).toEqual([]);
			kept = sentOn(fileName, form(sheetOf(state), savedWalk(demo, state)));
		}
		expect(kept).toEqual({ ...first, market: kept.market, asOf: demo.asOf });
		expect(kept.suggestions).toHaveLength(3);
		expect(Object.values(kept.answers).every(({ by, note }) => by && note)).toBe(true);
	});
});
