import type { DocumentBlock } from "./document-block.ts";
import { item, page, sectionOf } from "./document-blocks.ts";
import { fittingBlocks } from "./fit-page.ts";
import type { Sheet } from "./sheet.ts";
import { firstSentence } from "./shop-page.ts";

/** A ground that most steps have is said once for all. */
const usualGround = "common practice, no source";

/** What lies on the bench on the day of building: one sheet of paper. */
export function benchPage(sheet: Sheet): readonly DocumentBlock[] {
	return fittingBlocks(
		"bench",
		([2, 1, 0] as const).map((fullness) => () => pageOf(sheet, fullness)),
	);
}

/** @param fullness 2: notes on the person's own parts with what to do, 1: without, 0: only in the annex */
function pageOf(sheet: Sheet, fullness: 0 | 1 | 2): readonly DocumentBlock[] {
	const { plan, power, steps, cautions } = sheet;
	const [first] = sheet.shortlist;
	const withGround = (text: string, ground: string) => (ground === usualGround ? text : `${text} (${ground})`);
	const notes = (fullness === 0 ? [] : sheet.partsDisagree).filter(
		({ isStopped, text }) => !isStopped && !isInSteps(text, sheet),
	);
	return [
		page("bench", "At the bench"),
		...(plan && plan.picture.length > 0
			? sectionOf(`What plugs in where: ${plan.boardName}`, [
					{ kind: "picture", lines: plan.picture, ...(plan.svg ? { svg: plan.svg } : {}) },
				])
			: []),
		...(first?.power && power ? [item(`${first.power}`, { label: "Power and heat" })] : []),
		...sectionOf(
			"Building and first start, in this order",
			steps.map(({ label, text, ground }) => item(withGround(text, ground), { label, box: true })),
		),
		...sectionOf("With care", [
			...cautions.map(({ text, ground }) => item(withGround(text, ground))),
			...notes.map(({ text, advice }) => item(fullness === 2 && advice ? `${text} ${advice}` : firstSentence(text))),
			item("A step without a source is common practice. Local rules come first."),
		]),
	];
}

/** What a step tells already. */
function isInSteps(text: string, { steps }: Sheet): boolean {
	return steps.some((step) => step.text.startsWith(text));
}
