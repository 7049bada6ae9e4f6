import { expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { textSheet } from "../../src/sheet/text-sheet.ts";
import { toldFact } from "../../src/walk/told-fact.ts";
import { demo, quietAnswers, walkWith } from "../walk/walk-in-demo.ts";
import { sheetOf } from "./sheet-of.ts";

const quiet = walkWith(quietAnswers);
const listed = viewWalk(demo, quiet).advice().shortlist[0]?.boardId ?? "";
const board = (id: string) => demo.market.parts.board.find((one) => one.id === id) as Board;

function told(boardId: string, path: string, value: unknown) {
	const result = toldFact(demo.market, quiet.ownParts, {
		boardId,
		path,
		value,
		by: "the shop",
		date: "2026-11-24",
		replace: true,
	});
	if ("problem" in result) throw new Error(result.problem);
	return { ...quiet, ownParts: result.ownParts };
}

test("what was told of a board that left the shortlist is in the annex, apart from what was told of those listed", () => {
	const on = sheetOf(told(listed, "chipsetFan", board(listed).chipsetFan ?? false));
	expect(on.told.map(({ isListed }) => isListed)).toEqual([true]);
	expect(textSheet(on)).not.toContain("Told of boards not on the list");
	// Of another socket, it leaves the list.
	const off = sheetOf(told(listed, "socket", "Kettle 7"));
	expect(off.shortlist.map(({ name }) => name)).not.toContain(board(listed).name);
	expect(off.told).toEqual([
		{ boardName: board(listed).name, text: expect.stringMatching(/told by the shop on 2026-11-24/), isListed: false },
	]);
	const paper = textSheet(off).replace(/\s+/g, " ");
	expect(paper).toMatch(new RegExp(`Told of boards not on the list.*${board(listed).name}: .*Kettle 7`, "i"));
});

test("a day of return that was told stands on the shop page, with who told it; one that is past does not", () => {
	const price = board(listed).price;
	const offers = (returnableUntil: string) => [{ price, condition: "new", returnableUntil }];
	const words = `So much is noted of that: ${board(listed).name} until 2026-12-24 (told by the shop on 2026-11-24). Have the day written on the bill.`;
	expect(sheetOf(told(listed, "offers", offers("2026-12-24"))).beforeYouPay).toContain(words);
	const past = sheetOf(told(listed, "offers", offers("2026-11-01"))).beforeYouPay;
	expect(past.join(" ")).not.toContain("So much is noted");
	expect(sheetOf(quiet).beforeYouPay.join(" ")).not.toContain("So much is noted");
});
