import { expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { judge } from "../../src/choose/judge.ts";
import type { Answers } from "../../src/parts/answers-file.ts";
import type { Board } from "../../src/parts/board.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import type { PcCase } from "../../src/parts/case.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { screensOnCard } from "../../src/rules/build/screens-on-card.ts";
import { picture } from "../../src/rules/fit/picture.ts";
import { standoffs as standoffRule } from "../../src/rules/fit/standoffs.ts";
import { runRule } from "../../src/rules/run-rule.ts";
import { type BenchFacts, benchSteps } from "../../src/sheet/bench-steps.ts";
import { judgedOf } from "../../src/sheet/judged-board.ts";
import { demo, quietAnswers, walkWith } from "../walk/walk-in-demo.ts";

const nobody: BenchFacts = { board: null, findings: [], buildFindings: [], facts: emptyBuildFacts };
const textOf = (bench: BenchFacts, label: string) => benchSteps(bench).steps.find((step) => step.label === label)?.text;

/** What is known on the bench for one board of the demonstration. */
function benchOf(answers: Answers, boardId: string): BenchFacts {
	const judgement = judge(demo.market, foldAnswers(answers, demo));
	const judged = judgedOf(boardId, judgement);
	if (!judged) throw new Error(`no board ${boardId}`);
	return {
		board: judged.subject.board ?? judged.board,
		findings: judged.findings,
		buildFindings: advise(judgement, answers).buildFindings,
		facts: judgement.build.facts,
	};
}
const withAnswers = (more: Parameters<typeof walkWith>[0]) => walkWith({ ...quietAnswers, ...more }).answers;
const some = (more: Partial<Board>): Board => ({ id: "one", name: "One", ...more });

test("modules go where the board's manual says, by the names of the slots", () => {
	const board = some({ memory: { type: "DDR5", slots: 4, slotOrder: { "2": ["A2", "B2"] } } });
	const memory = { state: "have", part: { id: "kit", name: "Kit", modules: 2 }, ownership: "planned" } as const;
	const bench = { ...nobody, board, facts: { ...emptyBuildFacts, memory } };
	expect(textOf(bench, "Memory")).toBe("Press the 2 modules into A2 and B2 until both ends click.");
	expect(textOf(nobody, "Memory")).toContain("in the slots that the manual's drawing names");
});

test("the board's own processor plugs are named, several of a kind with their count", () => {
	const board = some({ power: { processorPlugs: ["8-pin", "8-pin"] } });
	expect(textOf({ ...nobody, board }, "Supply cables")).toMatch(
		/^The 24-pin plug, and for the processor 8-pin \(2\)\./,
	);
});

test("the screen's cable goes into the card where there is one, else into the board's sockets by name", () => {
	const card = { state: "have", part: { id: "card", name: "Carousel" }, ownership: "planned" } as const;
	const board = some({ pictureSockets: ["HDMI", "DisplayPort"] });
	const of = (graphicsCard: BenchFacts["facts"]["graphicsCard"]) =>
		textOf({ ...nobody, board, facts: { ...emptyBuildFacts, graphicsCard } }, "Screen cable");
	expect(of(card)).toBe("Into the Carousel, not into the board: the board's own sockets stay dark.");
	expect(of({ state: "none" })).toBe("Into HDMI or DisplayPort at the back of the board.");
	expect(of({ state: "unknown" })).toContain("With a graphics card into the card");
});

test("an active adapter is named where the screen stays dark without one", () => {
	const board = some({ pictureSockets: ["HDMI"], rearUsb: [] });
	const processor = { state: "have", part: { id: "p", name: "P", graphics: true }, ownership: "planned" } as const;
	const onBoard = (
		screens: readonly ["VGA"] | readonly ["HDMI"] | readonly ["DVI", "DisplayPort"],
		of: Board = board,
	) => {
		const facts = { ...emptyBuildFacts, processor, graphicsCard: { state: "none" } as const, screens };
		const findings = [runRule(picture, { board: of, facts, assumed: [] } as never)];
		return textOf({ ...nobody, board: of, facts, findings }, "Screen cable");
	};
	expect(onBoard(["VGA"])).toBe(
		"Into HDMI at the back of the board. Use an active adapter for HDMI to VGA: with a plain one it stays dark.",
	);
	expect(onBoard(["HDMI"])).toBe("Into HDMI at the back of the board.");
	const two = some({ pictureSockets: ["HDMI", "HDMI"], rearUsb: [] });
	expect(onBoard(["DVI", "DisplayPort"], two)).toContain("Use an active adapter for HDMI to DisplayPort:");
	const card: BenchFacts["facts"]["graphicsCard"] = {
		state: "have",
		part: { id: "card", name: "Carousel", pictureSockets: ["HDMI"] },
		ownership: "planned",
	};
	const facts: BenchFacts["facts"] = { ...emptyBuildFacts, graphicsCard: card, screens: ["DisplayPort"] };
	const buildFindings = [{ finding: runRule(screensOnCard, { facts, assumed: [] } as never), certain: true }];
	expect(textOf({ ...nobody, facts, buildFindings: buildFindings as never }, "Screen cable")).toBe(
		"Into the Carousel, not into the board: the board's own sockets stay dark. Use an active adapter for HDMI to DisplayPort: with a plain one it stays dark.",
	);
});

test("cooler and pump are named with their headers", () => {
	const answers = withAnswers({ "fit/cooler": { part: "puddlewink-brook" } });
	const bench = benchOf(answers, demo.market.parts.board[0]?.id ?? "");
	expect(textOf(bench, "Cooler")).toMatch(/Pump of Puddlewink Brook on \S+/);
});

test("firmware comes before the first start where the processor needs it, with its version", () => {
	const finding = {
		ruleId: "fit/generation",
		verdict: "fits",
		severity: "plan-around",
		messageId: "safeLater",
		data: { safe: "1.34", oldest: "1.22", updatesAlone: true },
		facts: [],
		missing: [],
	} as unknown as BenchFacts["findings"][number];
	const { steps, otherCautions } = benchSteps({ ...nobody, findings: [finding] });
	const labels = steps.map(({ label }) => label);
	expect(labels.indexOf("Firmware")).toBeGreaterThan(0);
	expect(labels.indexOf("Firmware")).toBeLessThan(labels.indexOf("First start"));
	// An update takes power; hands are out of the case by then.
	expect(labels.indexOf("Mains on")).toBe(labels.indexOf("Firmware") - 1);
	expect(steps.find(({ label }) => label === "Mains on")?.text).toMatch(
		/^Hands out of the case\. Mains plug in.* Before hands go in again: switch to 0, mains plug out\.$/,
	);
	expect(steps.find(({ label }) => label === "First start")?.text).toMatch(/^With the mains on as before, the power/);
	expect(steps.find(({ label }) => label === "Firmware")?.text).toContain("update to 1.34 before the first start");
	expect(otherCautions.map(({ id }) => id)).not.toContain("update");
	const without = benchSteps(nobody).steps;
	expect(without.map(({ label }) => label)).not.toContain("Firmware");
	expect(without.map(({ label }) => label)).not.toContain("Mains on");
	expect(without.find(({ label }) => label === "First start")?.text).toMatch(/^Hands out of the case\. Mains plug in/);
	// Every first start says it, with firmware or without.
	for (const all of [steps, without])
		expect(all.map(({ text }) => text).join(" ")).toContain("Before hands go in again: switch to 0, mains plug out.");
});

test("standoffs that must come out for this board are named where it goes in, and none where none must", () => {
	const atx = ["A", "C", "F", "G", "H", "J", "K", "L", "M"] as const;
	const withPosts = (standoffs: PcCase["standoffs"]) => {
		const board = some({ form: "ATX", holes: [...atx] });
		const part = { id: "case", name: "Case", standoffs };
		const facts = { ...emptyBuildFacts, case: { state: "have", part, ownership: "planned" } } as BenchFacts["facts"];
		return textOf(
			{ ...nobody, board, facts, findings: [runRule(standoffRule, { board, facts, assumed: [] } as never)] },
			"Into the case",
		);
	};
	expect(withPosts([...atx, "B"])).toMatch(
		/it can short the board\. .*B: the board has no hole there\. It must come out first\.$/,
	);
	expect(withPosts([...atx])).toMatch(/it can short the board\.$/);
	expect(textOf(nobody, "Into the case")).toMatch(/it can short the board\.$/);
});

test("parts that only may disagree, since something is open, stop no builder", () => {
	const finding = { ruleId: "build/memory-type", verdict: "does-not-fit", messageId: "", data: {}, missing: [] };
	const first = (certain: boolean) =>
		benchSteps({ ...nobody, buildFindings: [{ certain, finding }] as never }).steps[0]?.label;
	expect(first(true)).toBe("Not yet");
	expect(first(false)).toBe("Safe hands");
});

test("the memory profile is switched on only after a plain first start", () => {
	const labels = benchSteps(nobody).steps.map(({ label }) => label);
	expect(labels.indexOf("Then")).toBe(labels.indexOf("First start") + 1);
	expect(textOf(nobody, "First start")).toContain("No memory profile yet.");
	expect(textOf(nobody, "Then")).toContain("switch on the memory profile, not before");
});

test("lights have a step where some are planned, a caution where nobody knows, neither where there are none", () => {
	const lit = (lights: BenchFacts["facts"]["lights"]) => {
		const board = some({ headers: { lights: [] } });
		const { steps, otherCautions } = benchSteps({ ...nobody, board, facts: { ...emptyBuildFacts, lights } });
		return [steps.some(({ label }) => label === "Lights"), otherCautions.some(({ id }) => id === "lights")];
	};
	expect(lit(["5 V three-pin"])).toEqual([true, false]);
	expect(lit(null)).toEqual([false, true]);
	expect(lit([])).toEqual([false, false]);
});
