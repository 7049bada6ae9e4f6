import type { Advice } from "../choose/advise.ts";
import { type FindOut, findOut } from "../choose/find-out.ts";
import type { BoardJudgement, Judgement } from "../choose/judge.ts";
import { openFindings } from "../choose/ranked-boards.ts";
import type { Answers } from "../parts/answers-file.ts";
import type { Board } from "../parts/board.ts";
import { cleanLine } from "../parts/clean-text.ts";
import type { Evidence } from "../parts/form-draft.ts";
import { partPrice } from "../parts/part-price.ts";
import { toldOf } from "../parts/told-evidence.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { leastWorth } from "./find-out-words.ts";
import { shopQuestionWords } from "./shop-question-words.ts";

/** One question about a board to somebody who has it, answerable in a word or a number. */
interface ShopQuestion {
	/** Path of the fact inside the board, such as "power.processorPlugs": what `told` takes. */
	readonly path: string;
	readonly english: string;
	readonly german: string;
}

/** One short, polite message about one board, to send or to read out. */
export interface ShopMessage {
	readonly boardId: string;
	readonly boardName: string;
	/** In the order of their numbers. */
	readonly questions: readonly ShopQuestion[];
	/** What would make the message too long; it is asked once the others are answered. */
	readonly later: readonly ShopQuestion[];
	/** Lines with line feeds, without one at the end. */
	readonly english: string;
	readonly german: string;
}

/** A shop answers a short message; more questions than these wait (own convention). */
const mostAtOnce = 8;

/** Asked of every board before money is spent, whatever is known from its page. */
const beforePaying = ["supportList", "firmware.oldestInShops", "offers"] as const;

/**
 * What to ask about each board of the shortlist, in its order: what decides whether it fits or who leads, and what is
 * asked before paying in any case. What somebody told already is not asked again.
 *
 * The context gives the day: a day of return that is past is asked again.
 *
 * @param open what is open, where somebody has worked it out
 */
export function shopMessages(
	judgement: Judgement,
	advice: Advice,
	answers: Answers,
	context: Pick<QuestionContext, "asOf">,
	open: readonly FindOut[] = findOut(judgement, advice, answers),
): readonly ShopMessage[] {
	return advice.shortlist.flatMap(({ boardId }) => shopMessage(judgement, boardId, context, open) ?? []);
}

/** What to ask about any one board, also one that is not on the shortlist; null where there is no such board. */
export function shopMessage(
	judgement: Judgement,
	boardId: string,
	{ asOf }: Pick<QuestionContext, "asOf">,
	open: readonly FindOut[],
): ShopMessage | null {
	const judged = judgement.boards.find(({ board }) => board.id === boardId);
	if (!judged) return null;
	const { processor } = judgement.build.facts;
	const name = processor.state === "have" ? cleanLine(processor.part.name) : null;
	const paths = [...new Set([...importantPaths(judged, open), ...beforePaying].map(wholeList))];
	const asked = paths
		.filter((path) => !isTold(judged.board, path) && !(path === "offers" && knowsReturn(judged.board, asOf)))
		.flatMap((path) => {
			const words = shopQuestionWords(path, name);
			return words ? [{ path, ...words }] : [];
		});
	// What is asked before paying never waits.
	const fixed = asked.filter(({ path }) => isBeforePaying(path));
	const facts = asked.filter(({ path }) => !isBeforePaying(path));
	const now = [...facts.slice(0, mostAtOnce - fixed.length), ...fixed];
	return {
		boardId,
		boardName: judged.board.name,
		questions: now,
		later: facts.slice(mostAtOnce - fixed.length),
		english: englishMessage(judged.board, now),
		german: germanMessage(judged.board, now),
	};
}

/** Whether something open weighs enough to ask somebody: it decides a fit, flips the lead, or is worth half a point. */
export function isImportant({ decides, overtakes, worth }: Pick<FindOut, "decides" | "overtakes" | "worth">): boolean {
	return decides.length > 0 || overtakes !== null || (worth ?? 0) >= leastWorth;
}

function importantPaths(judged: BoardJudgement, open: readonly FindOut[]): readonly string[] {
	const ofBoard = open.flatMap((one) =>
		one.about.kind === "board fact" && one.about.boardId === judged.board.id && isImportant(one)
			? [one.about.path]
			: [],
	);
	// A board beside the shortlist is not among what is open; what decides its fit is known all the same.
	const deciding = judged.verdict === "does-not-fit" ? [] : openFindings(judged).flatMap(({ missing }) => missing);
	return [...ofBoard, ...deciding]
		.filter((path) => path.startsWith("board."))
		.map((path) => path.slice("board.".length));
}

/** All that concerns the list of processors is one question. */
function wholeList(path: string): string {
	return path.startsWith("supportList") ? "supportList" : path;
}

function isBeforePaying(path: string): boolean {
	return (beforePaying as readonly string[]).includes(path);
}

function isTold({ evidence }: Board, path: string): boolean {
	return toldOf((evidence as Readonly<Record<string, Evidence>> | undefined)?.[path]) !== null;
}

/** Whether a day is known until which a board bought at the asked price can go back, and is still to come. */
function knowsReturn(board: Board, asOf: string): boolean {
	const asked = partPrice(board)?.price;
	return (board.offers ?? []).some(
		({ price, returnableUntil = "" }) =>
			price.minor === asked?.minor && price.currency === asked.currency && returnableUntil > asOf,
	);
}

function englishMessage(board: Board, questions: readonly ShopQuestion[]): string {
	if (questions.length === 0) return "";
	return [
		"Hello,",
		"",
		"before I buy it I have some questions about this board:",
		boardLine(board, { by: "by", revision: "revision", socket: "socket", slots: "memory slots", chipset: "chipset" }),
		"",
		...questions.map(({ english }, index) => `${index + 1}. ${english}`),
		"",
		"A word or a number for each is enough. Thank you very much!",
	].join("\n");
}

function germanMessage(board: Board, questions: readonly ShopQuestion[]): string {
	if (questions.length === 0) return "";
	return [
		"Guten Tag,",
		"",
		"vor dem Kauf habe ich einige Fragen an Sie zu dieser Hauptplatine:",
		boardLine(board, {
			by: "von",
			revision: "Revision",
			socket: "Sockel",
			slots: "Speichersteckplätze",
			chipset: "Chipsatz",
		}),
		"",
		...questions.map(({ german }, index) => `${index + 1}. ${german}`),
		"",
		"Ein Wort oder eine Zahl genügt jeweils. Vielen Dank!",
	].join("\n");
}

interface LineWords {
	readonly by: string;
	readonly revision: string;
	readonly socket: string;
	readonly slots: string;
	readonly chipset: string;
}

/** The facts by which a shop knows the board; what is not known is left out. */
function boardLine({ name, maker, revision, form, socket, chipset, memory }: Board, words: LineWords): string {
	const slots = memory?.slots === undefined ? undefined : `${memory.slots} ${words.slots}`;
	const facts = [
		maker && `${words.by} ${maker}`,
		revision && `${words.revision} ${revision}`,
		form,
		socket && `${words.socket} ${socket.replace(/^(?:socket|sockel)\s+/i, "")}`,
		chipset && `${words.chipset} ${chipset}`,
		memory?.type,
		slots,
	].filter((fact) => fact);
	return cleanLine(facts.length > 0 ? `${name} (${facts.join(", ")})` : name);
}
