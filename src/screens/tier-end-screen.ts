import { onlyInventedBoards } from "../choose/only-invented-boards.ts";
import { type Tier, tierNames, tiers } from "../questions/define-question.ts";
import { askedQuestions } from "../questions/is-asked.ts";
import { wattsWords } from "../questions/watts-words.ts";
import { type ShortWalk, shortWalkOf } from "../walk/short-walk.ts";
import { fellOutLines, leftWords, nothingLeft } from "./boards-left.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, list, type Screen, text } from "./screen.ts";
import { shortWalkEndWords } from "./short-walk-words.ts";
import type { WalkView } from "./walk-view.ts";

const shortlistNext = "See the shortlist";

/** The way to a tier's questions. */
const wayTo: Readonly<Record<Tier, string>> = {
	about: "Go on to About you",
	fit: "Go on to Fit",
	features: "Go on to Features: what you want to do with it",
	quality: "Go on to Build quality: will it hold up for years",
	"before-you-pay": shortlistNext,
};

/** What comes behind a tier, in words; a short walk may pass over a tier, and come back to one. */
function following(tier: Tier, short: ShortWalk | null): string {
	const behind = short ? short.next?.tier : tiers[tiers.indexOf(tier) + 1];
	return short && behind === tier ? `Go on with ${tierNames[tier]}` : behind ? wayTo[behind] : shortlistNext;
}

/** The end of a tier: what is left, what fell out and why, what is still unsure. */
export function tierEndScreen(view: WalkView, tier: Tier): Screen {
	const judgement = view.judgement();
	const nothing = nothingLeft(judgement);
	// What the board has to feed belongs where its quality is about to be asked.
	const watts = tier === "features" ? wattsWords(judgement.build.facts) : null;
	const short = shortWalkOf(view.context, view.state.answers, judgement.build, tier);
	const unsure = (short?.dealtWith ?? askedQuestions(judgement.build)).filter(
		(question) => question.tier === tier && view.state.answers[question.id]?.status !== "answered",
	);
	const end = short ? shortWalkEndWords(short, judgement.counts.all - judgement.counts.doesNotFit) : [];
	const askRest: Choice = {
		label: `Ask me the others too: ${short?.open.length}`,
		event: { type: "change", questionId: "about/walk-length" },
	};
	return plainScreen(view, {
		id: `tier-end:${tier}`,
		place: tierNames[tier],
		title: nothing ? "No board is left so far" : `${tierNames[tier]} is done`,
		body: [
			text(leftWords(judgement)),
			...(end.length > 0 ? [heading("The short walk ends here"), ...end.map(text)] : []),
			...(watts ? [text(watts)] : []),
			...(nothing
				? [text("That is no dead end: the shortlist shows which answers to change, and what each brings back.")]
				: []),
			...(onlyInventedBoards(judgement) ? [] : [heading("What was taken out, and why"), ...fellOutLines(judgement)]),
			...(unsure.length > 0
				? [heading("Not sure yet"), list(unsure.map(({ label, howToFindOut }) => `${label}. ${howToFindOut}`))]
				: []),
		],
		choices: [
			{ label: following(tier, short), event: { type: "next" } },
			...(end.length > 0 && (short?.open.length ?? 0) > 0 ? [askRest] : []),
			{ label: "Boards left, and boards taken out", event: { type: "fell-out" } },
			{ label: "Change an answer", event: { type: "review" } },
		],
		enter: { words: "go on", event: { type: "next" } },
	});
}
