import { findOut } from "../choose/find-out.ts";
import type { OwnPart } from "../parts/answers-file.ts";
import type { Board } from "../parts/board.ts";
import { cleanLine } from "../parts/clean-text.ts";
import type { Evidence } from "../parts/form-draft.ts";
import { findPart } from "../parts/market.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import { toldOf } from "../parts/told-evidence.ts";
import { shopQuestionWords } from "../sheet/shop-question-words.ts";
import { type ShopMessage, shopMessage } from "../sheet/shop-questions.ts";
import { toldChanges, toldLines } from "../sheet/told-words.ts";
import { answerWords } from "../walk/read-told.ts";
import { fieldOf } from "../walk/told-fact.ts";
import type { Place } from "../walk/walk-state.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, list, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";
import { cutQuote } from "./where-words.ts";

type Asking = Extract<Place, { at: "ask-shop" }>;
type Answering = Extract<Place, { at: "they-answered" }>;

/**
 * The message to a shop about one board, and what came of answers so far.
 *
 * @param viewBefore the walk as it was with other own parts
 */
export function askShopScreen(
	view: WalkView,
	{ boardId, language, before }: Asking,
	viewBefore: (ownParts: readonly OwnPart[]) => WalkView,
): Screen {
	const judgement = view.judgement();
	const message = shopMessage(judgement, boardId, view.context, findOut(judgement, view.advice(), view.state.answers));
	if (!message) return goneScreen(view, boardId);
	const isGerman = language === "de";
	const board = findPart(view.market, "board", boardId) ?? { id: boardId, name: boardId };
	const told = toldLines(board);
	return plainScreen(view, {
		id: `ask-shop:${boardId}${isGerman ? ":de" : ""}`,
		title: `Ask the shop about ${message.boardName}`,
		body: [
			...(before ? [heading("What that changed"), list(changedWords(view, viewBefore(before), boardId))] : []),
			...messageBlocks(message, isGerman),
			...(told.length > 0 ? [heading("Told so far"), list(told)] : []),
		],
		choices: [
			...message.questions.map(
				({ path }): Choice => ({
					label: `They answered: ${shortTitle(path)}`,
					event: { type: "they-answered", path },
				}),
			),
			...(message.questions.length > 0
				? [
						{
							label: isGerman ? "The message in English" : "The message in German",
							key: "g",
							event: { type: "ask-shop" as const, boardId, ...(isGerman ? {} : { language: "de" as const }) },
						},
					]
				: []),
			...toldPaths(board).map(
				(path): Choice => ({ label: `Take back: ${shortTitle(path)}`, event: { type: "take-back", path } }),
			),
			{ label: "What could still change the shortlist", event: { type: "find-out" } },
			{ label: "To the shortlist", event: { type: "shortlist" } },
		],
		enter: { words: "go back to where you were", event: { type: "back" } },
		help: [
			heading("What this is for"),
			text("What no page tells, the shop may know. Nothing is sent: you copy the message, or read it out."),
			text("What they answer is kept with the day and who said it."),
		],
	});
}

function toldPaths({ evidence = {} }: Board): readonly string[] {
	return Object.entries(evidence as Readonly<Record<string, Evidence>>).flatMap(([path, one]) =>
		toldOf(one) ? [path] : [],
	);
}

function goneScreen(view: WalkView, boardId: string): Screen {
	return plainScreen(view, {
		id: `ask-shop:${boardId}`,
		title: "This board is not in the market",
		enter: { words: "go back", event: { type: "back" } },
	});
}

function messageBlocks({ questions, later, english, german }: ShopMessage, isGerman: boolean): Screen["body"] {
	if (questions.length === 0) return [text("All that matters of this board was asked and told.")];
	const lines = (isGerman ? german : english).split("\n").filter((line) => line !== "");
	const more = later.length === 1 ? "One more question waits" : `${later.length} more questions wait`;
	return [
		heading("To send, or to read out"),
		...lines.map(text),
		...(later.length > 0 ? [heading("Later"), text(`${more} until these are answered.`)] : []),
	];
}

function changedWords(view: WalkView, viewBefore: WalkView, boardId: string): readonly string[] {
	const outcome = (of: WalkView) => ({ judgement: of.judgement(), advice: of.advice() });
	return toldChanges(outcome(viewBefore), outcome(view), boardId);
}

/** What a question is about, in a few words. */
function shortTitle(path: string): string {
	switch (path) {
		case "supportList":
			return "whether your processor runs on it";
		case "firmware.oldestInShops":
			return "firmware in the box";
		case "offers":
			return "until when it can go back";
		default:
			return titleInSentence(fieldOf(path)?.title ?? path);
	}
}

/** Where an answer is taken down: what they said, then who said it; then perhaps which of two facts counts. */
export function theyAnsweredScreen(view: WalkView, place: Answering): Screen {
	const { boardId, path, answer, both } = place;
	const board = findPart(view.market, "board", boardId);
	if (!board) return goneScreen(view, boardId);
	const processor = view.build().facts.processor;
	const question = shopQuestionWords(path, processor.state === "have" ? cleanLine(processor.part.name) : null);
	const given = { place: board.name, help: [heading("What may be typed"), text(answerWords(path))] };
	const id = `they-answered:${boardId}:${path}`;
	if (answer === undefined)
		return plainScreen(view, {
			...given,
			id: `${id}${place.asPage ? ":page" : ""}`,
			title: "What did they answer?",
			body: [
				...(question ? [text(question.english)] : []),
				text(place.asPage ? "Paste the maker's list of processors for this board." : answerWords(path)),
			],
			choices: [
				...(path === "supportList" && !place.asPage
					? [
							{
								label: "Paste the maker's list instead",
								key: "p",
								event: { type: "they-answered" as const, path, asPage: true as const },
							},
						]
					: []),
				{ label: "Back", key: "x", apart: true, event: { type: "back" } },
			],
			typing: place.asPage
				? { kind: "page", words: "paste the text; end it with two empty lines, or a line with only a dot" }
				: { kind: "value", words: "type what they said" },
			// "n" is "no" here, so nobody is told to type it for "not sure".
			enter: { words: "back", event: { type: "back" } },
		});
	if (!both)
		return plainScreen(view, {
			...given,
			id: `${id}:by`,
			title: "Who said so?",
			body: [text(`Their answer: "${cutQuote(answer)}"`)],
			choices: [
				...tellersOf(view).map((name): Choice => ({ label: name, event: { type: "told-by", by: name } })),
				{ label: "Back", key: "x", apart: true, event: { type: "back" } },
			],
			typing: { kind: "free", words: "or type a name" },
		});
	return plainScreen(view, {
		...given,
		id: `${id}:both`,
		title: "Something else is stated of this board",
		body: [text(both.stated), text(both.told), text("Ask again if you are in doubt. Only one of the two can count.")],
		choices: [
			{ label: "Keep what is stated", event: { type: "ask-shop", boardId } },
			{ label: "Take what they said", event: { type: "told-by", by: both.by, replace: true } },
			{ label: "Back", key: "x", apart: true, event: { type: "back" } },
		],
	});
}

/** Who told something before in this walk, and the shop; at most four. */
function tellersOf({ state }: WalkView): readonly string[] {
	const told = state.ownParts.flatMap(({ part }) =>
		Object.values((part.evidence ?? {}) as Readonly<Record<string, Evidence>>).flatMap((one) => toldOf(one)?.by ?? []),
	);
	return [...new Set(["the shop", ...told])].slice(0, 4);
}
