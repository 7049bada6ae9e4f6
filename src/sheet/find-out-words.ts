import type { FindOut } from "../choose/find-out.ts";
import type { OvertakesIf } from "../choose/overtakes-if.ts";
import { criterionById } from "../criteria/all-criteria.ts";
import { factAt } from "../parts/fact-list.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import { questionById } from "../questions/all-questions.ts";
import { howToFindOut } from "./how-to-find-out.ts";
import { listed } from "./listed.ts";

/** One open thing: its name, how to find it out, and what it could change. */
export interface FindOutWords {
	readonly what: string;
	readonly how: string;
	/** Empty where nothing is known of what it could change. */
	readonly changes: string;
}

/** From so many points on a fact's worth is told (own convention: less is noise). */
export const leastWorth = 0.5;

/** @param boardName of a board by its id */
export function findOutWords(one: FindOut, boardName: (id: string) => string): FindOutWords | null {
	const { about } = one;
	const changes = changesWords(one, boardName);
	if (about.kind === "question") {
		const question = questionById(about.questionId);
		return question
			? { what: question.label, how: `${question.howToFindOut} Until then: ${question.notSure}`, changes }
			: null;
	}
	const found = howToFindOut(about.path);
	if (!found) return null;
	const what = about.kind === "board fact" ? `${boardName(about.boardId)}: ${found.what}` : found.what;
	return { what, how: found.how, changes };
}

/** Fewer entries than these are told one by one (own convention). */
const fewestFolded = 4;
/** Words of one sentence of names; more names go into the next one. */
const mostWords = 20;

/** What could change something, told in full, and the names of all else. */
interface FoldedOpen<T> {
	readonly shown: readonly T[];
	/** "Open too, with less weight: A, B and C."; null where too little is left to fold. */
	readonly folded: string | null;
}

/** Parts what is open by whether it could change anything: of what could not, only the names are worth reading. */
export function foldedOpen<T extends Pick<FindOutWords, "what" | "changes">>(open: readonly T[]): FoldedOpen<T> {
	const idle = open.filter(({ changes }) => changes === "");
	if (idle.length < fewestFolded) return { shown: open, folded: null };
	return {
		shown: open.filter(({ changes }) => changes !== ""),
		folded: [...byOwner(idle.map(({ what }) => what))]
			.flatMap(([owner, names]) => sentencesOf(owner, names))
			.map((sentence, index) => `${index === 0 ? "Open too, with less weight: " : "Also "}${sentence}.`)
			.join(" "),
	};
}

/** Names by the board they are of; "" for those of none. */
function byOwner(names: readonly string[]): ReadonlyMap<string, readonly string[]> {
	const found = new Map<string, string[]>();
	for (const name of names) {
		const at = name.lastIndexOf(": ");
		const [owner, what] = at < 0 ? ["", name] : [name.slice(0, at), name.slice(at + 2)];
		found.set(owner, [...(found.get(owner) ?? []), titleInSentence(what)]);
	}
	return found;
}

/** "of Polka colour, warranty and socket", as many times as the names need. */
function sentencesOf(owner: string, names: readonly string[]): readonly string[] {
	const groups: string[][] = [];
	const wordsIn = (some: readonly string[]) => some.join(" ").split(/[\s/-]+/).length;
	for (const name of names) {
		const group = groups.at(-1);
		if (group && wordsIn([owner, ...group, name]) <= mostWords - 3) group.push(name);
		else groups.push([name]);
	}
	return groups.map((group) => `${owner === "" ? "" : `of ${owner} `}${listed(group)}`);
}

function changesWords({ decides, overtakes, worth }: FindOut, boardName: (id: string) => string): string {
	return [
		decides.length > 0
			? `It decides whether ${listed(decides.map(boardName))} ${decides.length === 1 ? "fits" : "fit"}.`
			: "",
		overtakes ? overtakesWords(overtakes, boardName) : "",
		worth !== null && worth >= leastWorth ? `Knowing it is worth about ${pointsOf(worth)}.` : "",
	]
		.filter((sentence) => sentence !== "")
		.join(" ");
}

function pointsOf(worth: number): string {
	const points = Math.max(1, Math.round(worth));
	return points === 1 ? "1 point" : `${points} points`;
}

/** "It passes Polka only if the answer is 50 A or more." */
export function overtakesWords(
	{ path, criterionId, passes, turn, otherId }: OvertakesIf & { readonly otherId: string },
	boardName: (id: string) => string,
): string {
	const fact = factAt("board", path.replace(/^board\./, ""));
	const unit = fact?.unit ? ` ${fact.unit}` : "";
	const other = boardName(otherId);
	if (turn.kind !== "one of" && turn.measure) {
		const criterion = criterionById(criterionId);
		const value = turn.kind === "at least" ? Math.ceil(turn.value) : Math.floor(turn.value);
		const shows = `the answer shows ${value} ${criterion?.unit ?? ""} or ${turn.kind === "at least" ? "more" : "less"}`;
		return passes ? `It passes ${other} only if ${shows}.` : `It falls behind ${other} if ${shows}.`;
	}
	const told =
		turn.kind === "one of"
			? listedOr(turn.values.map((value) => (value === true ? "yes" : value === false ? "no" : `${value}${unit}`)))
			: `${turn.value}${unit} or ${turn.kind === "at least" ? "more" : "less"}`;
	return passes
		? `It passes ${other} only if the answer is ${told}.`
		: `It falls behind ${other} if the answer is ${told}.`;
}

function listedOr(values: readonly string[]): string {
	return values.length < 2 ? values.join("") : `${values.slice(0, -1).join(", ")} or ${values.at(-1)}`;
}
