import * as z from "zod";
import { answersFile } from "./answers-file.ts";
import { money } from "./money.ts";

export const sheetFileSchemaName = "boardwalk/sheet@1";

const texts = z.array(z.string());

const need = z.object({ ruleId: z.string(), label: z.string(), text: z.string(), why: z.string() });

const points = z.number().int().min(0).max(100);

const ofAll = z.object({ for: texts, against: texts, unknown: texts });

const board = z.object({
	boardId: z.string(),
	name: z.string(),
	invented: z.boolean(),
	role: z.enum(["best-match", "lowest-price", "step-between", "most-room", "also-good", "check-first"]),
	roleWords: z.string(),
	verdictWords: z.string(),
	/** Whole points of 100. */
	score: z.object({ low: points, mid: points, high: points }),
	scoreWords: z.string(),
	pointsWords: z.string(),
	behind: texts,
	priceWords: z.string(),
	price: money.nullable(),
	forced: texts,
	mind: texts,
	facts: z.string(),
	power: z.string().nullable(),
	...ofAll.shape,
});

const plan = z.object({
	boardName: z.string(),
	picture: texts,
	svg: z.string().nullable(),
	sections: z.array(z.object({ heading: z.string(), lines: texts })),
});

/**
 * A sheet as JSON: all that the sheet says, for other programs, and the answers that it was made of, so that boardwalk
 * opens it again. Later programs may add keys; none goes or changes its meaning without a new version. All texts are for
 * people and may change.
 */
export const sheetFile = z.object({
	schema: z.literal(sheetFileSchemaName),
	title: z.string(),
	asOf: z.iso.date(),
	market: z.string(),
	hasInventedParts: z.boolean(),
	forWhom: z.array(z.object({ label: z.string(), text: z.string() })),
	inShort: texts,
	partsDisagree: z.array(z.object({ text: z.string(), isStopped: z.boolean(), advice: z.string().nullable() })),
	beforeYouPay: texts,
	planAround: z.array(z.object({ boardNames: texts, text: z.string() })),
	mustHave: z.array(need),
	niceToHave: z.array(need),
	shortlist: z.array(board),
	lead: texts,
	ofAll,
	nothingFits: texts,
	plan: plan.nullable(),
	power: plan.nullable(),
	steps: z.array(z.object({ label: z.string(), text: z.string(), ground: z.string() })),
	cautions: z.array(z.object({ text: z.string(), ground: z.string() })),
	open: z.array(z.object({ what: z.string(), how: z.string(), changes: z.string() })),
	askTheShop: z.array(z.object({ boardName: z.string(), english: z.string(), german: z.string() })),
	answers: z.array(z.object({ questionId: z.string(), label: z.string(), value: z.string(), by: z.string() })),
	suggestions: z.array(
		z.object({ label: z.string(), text: z.string(), by: z.string(), state: z.enum(["open", "taken", "left"]) }),
	),
	told: z.array(z.object({ boardName: z.string(), text: z.string(), isListed: z.boolean() })),
	sources: texts,
	/** The walk it was made of; null where there was none. */
	answersFile: answersFile.nullable(),
});
