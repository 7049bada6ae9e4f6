import { expect, test } from "vitest";
import { factsToDescribe } from "../../src/walk/update.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { screenAt } from "../screens/screen-words.ts";
import { demo, walkAt, walkThrough } from "./walk-in-demo.ts";

const describeDrive: readonly WalkEvent[] = [{ type: "describe" }, { type: "text", text: "Snail" }];
const fact = (value: unknown): WalkEvent => ({ type: "fact", value });
const from = walkAt({ at: "question", id: "fit/drives" });

test("only of a stick is the length asked; a box is described without it", () => {
	const box = walkThrough([...describeDrive, fact("2.5 inch"), fact("SATA")], from).state;
	expect(box.ownParts.map(({ part }) => part)).toEqual([
		{ id: "snail", name: "Snail", shape: "2.5 inch", link: "SATA" },
	]);
	expect(box.answers["fit/drives"]?.value).toEqual(["snail"]);
	const stick = walkThrough([...describeDrive, fact("M.2"), fact("PCI Express")], from).state;
	expect(factsToDescribe(demo, stick)[stick.place.at === "describe" ? stick.place.index : -1]?.path).toBe("lengthMm");
	const whole = walkThrough([{ type: "text", text: "80 mm" }], stick).state;
	expect(whole.ownParts[0]?.part).toMatchObject({ shape: "M.2", lengthMm: 80 });
});

test("a fact of another shape makes sense no more: the box that turns out to be a stick is asked for its length", () => {
	const back: WalkEvent = { type: "back" };
	const changed = walkThrough([...describeDrive, fact("2.5 inch"), back, fact("M.2"), fact("SATA")], from).state;
	expect(changed.place).toMatchObject({ at: "describe", index: 3 });
});

test("going back to a list shows what was picked, so that Enter keeps it", () => {
	const state = walkThrough([...describeDrive, fact("2.5 inch"), { type: "back" }], from).state;
	const { choices } = screenAt(demo, state);
	expect(choices.filter(({ chosen }) => chosen).map(({ event }) => event)).toEqual([fact("2.5 inch")]);
});
