import { expect, test } from "vitest";
import { mostPasted } from "../../src/walk/own-places.ts";
import { walkAt } from "../walk/walk-in-demo.ts";
import { boardPage } from "../walk/walks-with-forms.ts";
import { plainWalkOf } from "./plain-walk-of.ts";

const from = walkAt({ at: "read-part", what: "board", questionId: null });
const page = boardPage.split("\n");

test("a page pasted line by line ends with two empty lines, and no line of it is a command", async () => {
	const { steps, said } = await plainWalkOf([...page, "b", "m", "1", "?", "", "", "25"], { from });
	expect(said).toContain("Is this what the page says?");
	expect(said).toContain("Socket: Lantern 4");
	// While it is pasted nothing is said.
	for (const step of steps.slice(2, page.length + 4)) expect(step).toBe("");
});

test("a line with only a dot ends it too, and so does the end of input", async () => {
	for (const end of [["."], []]) {
		const { said } = await plainWalkOf([...page, ...end], { from });
		expect(said).toContain("Is this what the page says?");
	}
});

test("the first line may be a command or a letter of the screen", async () => {
	expect((await plainWalkOf(["m"], { from })).said).toContain("Where to?");
	expect((await plainWalkOf(["f"], { from })).said).toContain("Name");
	expect((await plainWalkOf([""], { from })).said).toContain("There is no text yet");
});

test("too much text is refused in words, and the walk goes on", async () => {
	const { said, state } = await plainWalkOf([...Array<string>(mostPasted / 100 + 10).fill("x".repeat(99)), ".", "x"], {
		from,
	});
	expect(said).toContain("That is too much text");
	expect(state.pasted).toBeNull();
});
