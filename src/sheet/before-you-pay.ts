import type { Advice } from "../choose/advise.ts";
import { ownershipOf } from "../choose/firmness.ts";
import type { Judgement } from "../choose/judge.ts";
import type { Board } from "../parts/board.ts";
import type { BuildFacts } from "../parts/build.ts";
import type { Evidence } from "../parts/form-draft.ts";
import { partPrice } from "../parts/part-price.ts";
import { partWords } from "../parts/part-words.ts";
import { toldOf, toldWords } from "../parts/told-evidence.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { partKindsOfBuild } from "../questions/owned-parts.ts";
import { findingAdvice, findingWords } from "../rules/finding-words.ts";
import { daysBetween } from "./price-words.ts";
import type { Sheet } from "./sheet.ts";

/** What to check before money is spent, whichever board it is. */
export function beforeYouPay(
	{ market, build, boards }: Judgement,
	{ shortlist }: Pick<Advice, "shortlist">,
	{ asOf }: Pick<QuestionContext, "asOf">,
): readonly string[] {
	const processor = build.facts.processor.state === "have" ? build.facts.processor.part.name : "your processor";
	const ids = shortlist.map(({ boardId }) => boardId);
	const listed = ids.flatMap((id) => boards.find(({ board }) => board.id === id)?.subject.board ?? []);
	return [
		`Find ${processor} in the processor list on the board maker's support page. Note the firmware version beside it, and ask which version the box holds.`,
		"Compare name and revision on the box with the page, letter by letter: boards of nearly one name differ.",
		...twinWords(ids, market.parts.board),
		"See what is in the box: the shield for the back, screws for M.2 drives, drive cables, aerials.",
		"Ask until when the board can go back. That day must lie after the day you build, on: ____________",
		...backWords(listed, asOf),
		...returnWords(build.facts),
		...(listed.length > 0 ? [`Look at today's prices: ${noted(listed, asOf)}`] : []),
	];
}

/** Until when these boards can go back, where an offer at the price shown says so, and who told it. */
function backWords(boards: readonly Board[], asOf: string): readonly string[] {
	const said = boards.flatMap((board) => {
		const asked = partPrice(board)?.price;
		const days = (board.offers ?? []).flatMap(({ price, returnableUntil = "" }) =>
			price.minor === asked?.minor && price.currency === asked.currency && returnableUntil > asOf
				? returnableUntil
				: [],
		);
		const day = days.toSorted().at(-1);
		const told = toldOf((board.evidence as Readonly<Record<string, Evidence>> | undefined)?.["offers"]);
		return day === undefined ? [] : [`${board.name} until ${day}${told ? ` (${toldWords(told)})` : ""}`];
	});
	return said.length > 0 ? [`So much is noted of that: ${said.join("; ")}. Have the day written on the bill.`] : [];
}

/** How old the prices of these boards are. */
function noted(boards: readonly Board[], asOf: string): string {
	const days = boards.flatMap((board) => priceSeenOn(board) ?? []).toSorted();
	const [first, last] = [days[0], days.at(-1)];
	if (first === undefined || last === undefined) return "nobody noted on which day these were seen.";
	const age = daysBetween(first, asOf);
	const when = first === last ? `on ${first}` : `from ${first} to ${last}`;
	return `these were seen ${when}${age > 0 ? `, up to ${age} ${age === 1 ? "day" : "days"} ago` : ""}.`;
}

/** The day of the price that is shown: of its offer, else of the board's facts. */
function priceSeenOn(board: Board): string | undefined {
	const asked = partPrice(board)?.price;
	const days = (board.offers ?? []).flatMap(({ price, seenOn }) =>
		price.minor === asked?.minor && price.currency === asked.currency ? (seenOn ?? []) : [],
	);
	return days.toSorted().at(-1) ?? board.checkedOn;
}

/** What to plan around with the boards of the shortlist, each once with the boards it is about. */
export function planAround({ boards }: Judgement, { shortlist }: Pick<Advice, "shortlist">): Sheet["planAround"] {
	const byText = new Map<string, string[]>();
	for (const { boardId } of shortlist) {
		const judged = boards.find(({ board }) => board.id === boardId);
		for (const finding of judged?.findings ?? []) {
			const advice = finding.verdict === "fits" && finding.severity ? findingAdvice(finding) : undefined;
			if (!advice || !judged) continue;
			const text = `${findingWords(finding)} ${advice}`;
			byText.set(text, [...new Set([...(byText.get(text) ?? []), judged.board.name])]);
		}
	}
	return [...byText].map(([text, boardNames]) => ({ boardNames, text }));
}

/** Boards of nearly one name differ in what is fitted; each pair with a board of the shortlist is named. */
function twinWords(boardIds: readonly string[], boards: readonly Board[]): readonly string[] {
	return boardIds.flatMap((id) => {
		const board = boards.find((one) => one.id === id);
		if (!board) return [];
		const isTwin = ({ name, maker }: Board) =>
			maker === board.maker && name !== board.name && (name.startsWith(board.name) || board.name.startsWith(name));
		const twins = boards.filter((other) => other.id !== id && (isTwin(other) || other.name === board.name));
		const names = twins.map(({ name, revision }) => (revision ? `${name} (revision ${revision})` : name));
		const own = board.revision ? `${board.name} (revision ${board.revision})` : board.name;
		return names.length > 0 ? [`${own} is not ${names.join(" or ")}: compare memory type and wireless too.`] : [];
	});
}

/** Until when parts already bought can go back: what does not fit must be known before that day. */
function returnWords({ returnableUntil, ...facts }: BuildFacts): readonly string[] {
	const kinds = partKindsOfBuild.filter((kind) => ownershipOf({ returnableUntil, ...facts }, kind) === "returnable");
	if (kinds.length === 0) return [];
	const nouns = kinds.map((kind) => partWords[kind] ?? kind).join(", ");
	return [
		returnableUntil
			? `What you bought can go back until ${returnableUntil} (${nouns}): try the parts together before that day, if a tried part may still go back.`
			: `Ask until when your ${nouns} can go back, and try the parts together before that day.`,
	];
}
