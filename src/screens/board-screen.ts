import { plansAround } from "../choose/advise.ts";
import type { BoardJudgement } from "../choose/judge.ts";
import { ruleById } from "../rules/all-rules.ts";
import { findingAdvice, findingWords } from "../rules/finding-words.ts";
import type { Finding } from "../rules/outcome.ts";
import { howToFindOut } from "../sheet/how-to-find-out.ts";
import { priceWords } from "../sheet/price-words.ts";
import { dependingWords, missingWords, sentence, verdictWords } from "../sheet/reason-words.ts";
import { toldLines } from "../sheet/told-words.ts";
import { ownPart } from "../walk/own-parts-list.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, list, pairs, type Screen, text } from "./screen.ts";
import { findingMark } from "./verdict-words.ts";
import type { WalkView } from "./walk-view.ts";

/** One board: every rule's verdict with its reason, what is not known, and its facts. */
export function boardScreen(view: WalkView, boardId: string): Screen {
	const judged = view.judgement().boards.find(({ board }) => board.id === boardId);
	if (!judged)
		return plainScreen(view, {
			id: "board",
			title: "This board is not in the market",
			enter: { words: "go back", event: { type: "back" } },
		});
	const { board, verdict, findings } = judged;
	const missing = [...new Set(findings.flatMap((finding) => finding.missing))].flatMap(
		(path) => howToFindOut(path) ?? [],
	);
	const told = toldLines(board);
	const lines = ordered(findings).map((finding) => findingLine(finding, judged));
	// Before the first answer there is no shortlist to go back to.
	const first: Choice =
		Object.keys(view.state.answers).length === 0
			? { label: "Start the walk, to see whether it suits you", event: { type: "go-on" } }
			: { label: "Back to the shortlist", event: { type: "shortlist" } };
	return plainScreen(view, {
		id: `board:${board.id}`,
		title: `${board.name}${board.invented ? " (invented)" : ""}`,
		body: [
			text(
				verdict === "does-not-fit"
					? "It does not fit your answers. What stops it stands first."
					: sentence(verdictWords({ verdict, dependsOn: judged.dependsOn, planAround: plansAround(judged) })),
			),
			pairs([["Price", priceWords(judged.subject.board, view.context.asOf)]]),
			...(told.length > 0 ? [heading("What was told of it"), list(told)] : []),
			heading("What was checked"),
			...(lines.some((line) => line.startsWith(perhaps))
				? [text(`"${perhaps}" depends on an answer that is still open.`)]
				: []),
			list(lines),
			...(missing.length > 0
				? [heading("Not known, and where to find it"), list(missing.map(({ what, how }) => `${what}: ${how}`))]
				: []),
		],
		choices: [
			first,
			{ label: "What plugs in where", event: { type: "board", boardId: board.id, page: "plan" } },
			{ label: "Power and heat", event: { type: "board", boardId: board.id, page: "power" } },
			{ label: "Like this one, but better in one way", event: { type: "like", boardId: board.id } },
			{ label: "Ask the shop about it", event: { type: "ask-shop", boardId: board.id } },
			{ label: "All its facts", event: { type: "board", boardId: board.id, page: "facts" } },
			...(ownPart(view.state, "board", board.id)
				? [
						{
							label: "Change its facts, or add an offer",
							event: { type: "own-part" as const, kind: "board" as const, id: board.id },
						},
					]
				: []),
			{ label: "Paste another board's page", event: { type: "paste-part", what: "board" } },
			{ label: "Type in another board from its page", event: { type: "describe-board" } },
			{ label: "Make the sheet for the shop", event: { type: "sheet" } },
		],
		enter: { words: first.event.type === "go-on" ? "start the walk" : "back to the shortlist", event: first.event },
	});
}

/** What stops it first, then what can't be told, then cautions, then what fits; what binds nothing is left out. */
function ordered(findings: readonly Finding[]): readonly Finding[] {
	const weight = ({ verdict, severity }: Finding) =>
		verdict === "does-not-fit" ? 0 : verdict === "cannot-tell" ? 1 : severity === "plan-around" ? 2 : severity ? 3 : 4;
	return findings.filter((finding) => !saysNothing(finding)).toSorted((one, other) => weight(one) - weight(other));
}

/** Messages that tell nothing of a board, of whatever rule. */
const alwaysNothing: readonly string[] = ["open", "notAsked"];

function saysNothing({ ruleId, messageId }: Finding): boolean {
	return alwaysNothing.includes(messageId) || (ruleById(ruleId)?.saysNothing?.includes(messageId) ?? false);
}

/** In front of what holds in one way that an open answer may turn out, and not in another. */
const perhaps = "Perhaps";

function findingLine(
	finding: Finding,
	{ depending: all, unsettledRuleIds }: Pick<BoardJudgement, "depending" | "unsettledRuleIds">,
): string {
	const depending = all.filter(({ ruleId }) => ruleId === finding.ruleId);
	const advice = findingAdvice(finding) ? ` ${findingAdvice(finding)}` : "";
	if (depending.length > 0) {
		// With the answers under which it fits there may still be something to plan around.
		const caution = finding.severity ? ` ${findingWords(finding)}${advice}` : "";
		return `Depends - ${depending.map(dependingWords).join(" ")}${caution}`;
	}
	const assumed = finding.facts.filter(({ standing }) => standing === "assumed");
	const label = ruleById(finding.ruleId)?.label ?? finding.ruleId;
	const because = [...new Set(assumed.flatMap(({ because: ground }) => ground ?? []))].join(", ");
	const words = missingWords(finding) ?? findingWords(finding);
	const isUnsettled = finding.verdict === "fits" && unsettledRuleIds.includes(finding.ruleId);
	return [
		`${isUnsettled ? perhaps : findingMark(finding)} - ${label}: ${words}`,
		assumed.length > 0 ? ` (Partly assumed${because ? `: ${because}` : ""}.)` : "",
		advice,
	].join("");
}
