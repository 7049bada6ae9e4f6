import { expect, test } from "vitest";
import { update } from "../../src/walk/update.ts";
import { startWalk, type WalkState } from "../../src/walk/walk-state.ts";
import { demo, scenarios } from "../walk/walk-in-demo.ts";
import { blockTexts, screenAt, textsOf } from "./screen-words.ts";

const at = (state: WalkState) => screenAt(demo, state, { at: "settings" });

test("where the files are stands there, and that nothing is sent anywhere", () => {
	const files = [["Walks", "/home/ada/.local/state/boardwalk/walks"]] as const;
	const body = at({ ...startWalk(), files }).body.flatMap(blockTexts);
	expect(body).toEqual(expect.arrayContaining(["Walks", files[0][1], "Nothing is ever sent anywhere."]));
	expect(at(startWalk()).body.flatMap(blockTexts)).not.toContain("Where your files are");
});

const saysLengths = (state: WalkState) =>
	/\d mm/.test(textsOf(screenAt(demo, state, { at: "sheet", page: "all" })).join("\n"));

test("lengths turn over to inches and back, are kept, and every screen and the sheet then say both", () => {
	const before = scenarios.map(({ state }) => state).find(saysLengths);
	if (!before) throw new Error("no sheet says a length");
	const choice = at(before).choices.find(({ label }) => label === "Lengths: millimetres");
	if (!choice) throw new Error("there is no line for lengths");
	const [after, effects] = update(demo, before, choice.event);
	expect(effects).toEqual([{ type: "keep-settings", settings: { ...before.settings, lengths: "with-inches" } }]);
	for (const place of [{ at: "sheet", page: "all" }, { at: "question", id: "fit/case" }, { at: "fell-out" }] as const) {
		const [plain, both] = [before, after].map((state) => textsOf(screenAt(demo, state, place)).join("\n"));
		const lengths = plain?.match(/(?<![\d.])\d+(?:\.\d+)? mm(?![\d/])/g) ?? [];
		expect(plain).not.toMatch(/ \([\d.]+ in\)/);
		if (place.at === "sheet") expect(lengths.length).toBeGreaterThan(0);
		expect(both?.match(/ mm \([\d.]+(?:(?: x | by | to |-)[\d.]+)? in\)/g) ?? []).toHaveLength(lengths.length);
		expect(both?.replace(/ \([\d.]+(?:(?: x | by | to |-)[\d.]+)? in\)/g, "")).toBe(plain);
	}
	const [again] = update(
		demo,
		after,
		at(after).choices.find(({ label }) => label.startsWith("Lengths"))?.event ?? { type: "back" },
	);
	expect(again.settings).toEqual(before.settings);
});
