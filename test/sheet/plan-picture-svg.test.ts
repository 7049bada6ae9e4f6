import { expect, test } from "vitest";
import { planFor } from "../../src/plan/plan.ts";
import { type BoardOfPlan, problemOf } from "../../src/plan/problem.ts";
import { planPictureSvg } from "../../src/sheet/plan-picture-svg.ts";
import { bareBuild, boardOfEveryState, stick, withGraphics } from "../plan/made-up-problem.ts";

const empty: BoardOfPlan = { cardSlots: [], m2Sockets: [], drivePorts: [], conditions: [], sharing: [] };
const svgOf = (of: BoardOfPlan, title: string) =>
	planPictureSvg(
		planFor(
			problemOf(
				of,
				{
					...bareBuild,
					processor: { ...bareBuild.processor, state: "have" },
					graphicsCard: withGraphics({ thicknessMm: 55, lengthMm: 300 }),
					drives: [stick('Dart & <b>"Sons"'), stick("Arrow\u0001\ud800")],
				},
				{ leaning: "best" },
			),
		),
		title,
	);

/** Names of the tags left open at the end; throws at one that closes another. */
function leftOpen(svg: string): readonly string[] {
	const open: string[] = [];
	for (const [, close, name, self] of svg.matchAll(/<(\/?)([a-z]+)(?:\s[a-zA-Z-]+="[^"<]*")*(\/?)>/g)) {
		if (close) expect(open.pop()).toBe(name);
		else if (!self) open.push(name ?? "");
	}
	return open;
}

test.each([
	["a full board", boardOfEveryState],
	["an empty one", empty],
])("%s: tags balance, and nothing is left that is not text", (_, of) => {
	const svg = svgOf(of, 'Board "A" & <B>');
	expect(leftOpen(svg)).toEqual([]);
	const text = svg.replace(/<\/?[a-z]+(?:\s[a-zA-Z-]+="[^"<]*")*\/?>/g, "");
	expect(text).not.toMatch(/[<>"]|&(?!(amp|lt|gt|quot);)/);
	expect(svg.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cs}]/u);
	expect(svg).toContain("<title>Board &quot;A&quot; &amp; &lt;B&gt;</title>");
	expect(svg).toMatch(/^<svg [^>]*viewBox="0 0 \d+ \d+" role="img"/);
	expect(svg.replace("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|<script|href/);
});

test("the description tells the plan", () => {
	const words = /<desc>(.*)<\/desc>/s.exec(svgOf(boardOfEveryState, "Board"))?.[1];
	for (const part of ["X16: Carousel", "X1: covered (Carousel)", "X4: dead", ", buried", "S5-6: off", "S1-4: free"])
		expect(words).toContain(part);
	expect(words).toContain("Dart &amp; &lt;b&gt;&quot;Sons&quot;");
	expect(words).toContain("Row 3, filled by Carousel.");
});
