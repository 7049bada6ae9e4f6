import { expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import { onlyInventedBoards } from "../../src/choose/only-invented-boards.ts";
import type { GivenBuild } from "../rules/rule-subject.ts";
import { buildOf, smallMarket } from "./small-market.ts";

const invented = { invented: true };
const own: GivenBuild = { processor: { socket: "Lantern 4" } };

test.each<[string, object[], GivenBuild, boolean]>([
	["a processor of one's own, and invented boards only", [invented, invented], own, true],
	["one board that is not invented", [invented, {}], own, false],
	["no board at all", [], own, false],
	["an invented processor", [invented], { processor: { invented: true } }, false],
	["no processor yet", [invented], {}, false],
	["a processor still to be bought", [invented], { processor: "open" }, false],
])("%s", (_, boards, build, expected) => {
	expect(onlyInventedBoards(judge(smallMarket(boards), buildOf(build)))).toBe(expected);
});
