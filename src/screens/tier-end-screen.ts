import { onlyInventedBoards } from "../choose/only-invented-boards.ts";
import { type Tier, tierNames } from "../questions/define-question.ts";
import { askedQuestions } from "../questions/is-asked.ts";
import { wattsWords } from "../questions/watts-words.ts";
import { fellOutLines, leftWords, nothingLeft } from "./boards-left.ts";
import { plainScreen } from "./plain-screen.ts";
import { heading, list, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

const following: Readonly<Record<Tier, string>> = {
	about: "Go on to Fit",
	fit: "Go on to Features: what you want to do with it",
	features: "Go on to Build quality: will it hold up for years",
	quality: "See the shortlist",
	"before-you-pay": "See the sheet",
};

/** The end of a tier: what is left, what fell out and why, what is still unsure. */
export function tierEndScreen(view: WalkView, tier: Tier): Screen {
	const judgement = view.judgement();
	const nothing = nothingLeft(judgement);
	// What the board has to feed belongs where its quality is about to be asked.
	const watts = tier === "features" ? wattsWords(judgement.build.facts) : null;
	const unsure = askedQuestions(judgement.build).filter(
		(question) => question.tier === tier && view.state.answers[question.id]?.status !== "answered",
	);
	return plainScreen(view, {
		id: `tier-end:${tier}`,
		place: tierNames[tier],
		title: nothing ? "No board is left so far" : `${tierNames[tier]} is done`,
		body: [
			text(leftWords(judgement)),
			...(watts ? [text(watts)] : []),
			...(nothing
				? [text("That is no dead end: the shortlist shows which answers to change, and what each brings back.")]
				: []),
			...(onlyInventedBoards(judgement) ? [] : [heading("What fell out, and why"), ...fellOutLines(judgement)]),
			...(unsure.length > 0
				? [heading("Not sure yet"), list(unsure.map(({ label, howToFindOut }) => `${label}. ${howToFindOut}`))]
				: []),
		],
		choices: [
			{ label: following[tier], event: { type: "next" } },
			{ label: "See each board", event: { type: "fell-out" } },
			{ label: "Change an answer", event: { type: "review" } },
		],
		enter: { words: "go on", event: { type: "next" } },
	});
}
