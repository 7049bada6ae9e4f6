import { dataFolder } from "../files/own-folders.ts";
import { readWalk } from "../files/read-answers.ts";
import { readJsonText } from "../files/read-json.ts";
import type { Answer, AnswersFile } from "../parts/answers-file.ts";
import type { Market } from "../parts/market.ts";
import { screenText } from "../plain/screen-text.ts";
import { questionById } from "../questions/all-questions.ts";
import type { Question } from "../questions/define-question.ts";
import { answerWords } from "../screens/question-screen.ts";
import type { Screen } from "../screens/screen.ts";
import { screenOf } from "../screens/screen-of.ts";
import { viewWalk } from "../screens/walk-view.ts";
import { wrapText } from "../screens/wrap-lines.ts";
import { savedWalk, takeUpWalk } from "../walk/saved-walk.ts";
import { update } from "../walk/update.ts";
import type { WalkEffect, WalkEvent } from "../walk/walk-event.ts";
import { startWalk, type WalkContext, type WalkState } from "../walk/walk-state.ts";
import type { Arguments } from "./arguments.ts";
import { coachedBy } from "./coached-walk.ts";
import { marketWithOwn } from "./demo-market.ts";
import { didWords } from "./event-shapes.ts";
import { exampleWalk } from "./example-walk.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { faultsMessage } from "./fault-words.ts";
import { loadMarket, loadOwnParts, reading } from "./load.ts";
import { isRecord, type LineFault, type RecordedLine, readRecord } from "./recorded-walk.ts";
import type { Streams } from "./streams.ts";

const width = 78;
/** More faults than this help nobody. */
const mostFaults = 20;

/**
 * `replay FILE`: a recorded walk, or the answers of a kept walk or a sheet in the order they were given, step by step: what
 * was done, and the screen that followed. With --json only the answers it ends with. Nothing is written, and no effect of
 * a step is carried out.
 *
 * @param folder where own parts are kept, or null
 * @throws CommandError: 64 without a file, 65 for a line that cannot be used, 66 for a file that cannot be read
 */
export function replay(
	args: Arguments,
	streams: Streams,
	folder: string | null = dataFolder(process.env, process.platform),
): void {
	const [path] = args.operands;
	if (path === undefined)
		throw new CommandError(exitCodes.usage, "Which walk? Such as: boardwalk replay my.json, or a file of --record.");
	const text = reading(() => readJsonText(path));
	const player = new Player(path, args.json ? () => {} : streams.out);
	if (isRecord(text)) {
		const { lines, faults } = reading(() => readRecord(text, path));
		if (faults.length > 0) throw new CommandError(exitCodes.badData, lineFaultsText(path, faults));
		const market = marketFor(args, streams, folder, lines);
		for (const line of lines) player.playLine(line, market, streams);
	} else {
		const { checked } = reading(() => readWalk(path));
		if (!checked.value) throw new CommandError(exitCodes.badData, faultsMessage(path, checked.faults));
		player.playAnswers(checked.value, marketFor(args, streams, folder, checked.value), streams);
	}
	if (args.json) streams.out(`${JSON.stringify(player.answersFile(), null, "\t")}\n`);
	else player.end();
}

function lineFaultsText(path: string, faults: readonly LineFault[]): string {
	const shown = faults.slice(0, mostFaults).map(({ line, words }) => `${path}: line ${line}: ${words}.`);
	const more = faults.length > shown.length ? [`... and ${faults.length - shown.length} more.`] : [];
	return [...shown, ...more, "Nothing was replayed."].join("\n");
}

/** The boards that the flags ask for; whatever part a step names stays among them. */
function marketFor(args: Arguments, streams: Streams, folder: string | null, walk: unknown): Market {
	if (args.parts !== undefined) return loadMarket(args, streams, folder, []);
	return marketWithOwn(loadOwnParts(folder, args, streams), { withDemo: args.withDemo, named: textsIn(walk) });
}

/** Every text anywhere in a value. */
function textsIn(value: unknown, found: Set<string> = new Set()): ReadonlySet<string> {
	if (typeof value === "string") found.add(value);
	else if (value !== null && typeof value === "object") for (const one of Object.values(value)) textsIn(one, found);
	return found;
}

/** A walk that is gone through again, and prints what it comes to. */
class Player {
	private context: WalkContext | null = null;
	private state: WalkState = startWalk();
	private steps = 0;
	/** The walk that is replayed, while the made-up person's is looked at. */
	private beforeExample: { readonly context: WalkContext; readonly state: WalkState } | null = null;
	/** The line that begins another walk only says what the step before has done here already. */
	private hasSwapped = false;
	/** What belongs to the file and comes of no step. */
	private kept: Partial<AnswersFile> = {};
	private readonly path: string;
	private readonly out: (text: string) => void;

	constructor(path: string, out: (text: string) => void) {
		this.path = path;
		this.out = out;
	}

	playLine(line: RecordedLine, market: Market, streams: Streams): void {
		const where = `line ${line.line}`;
		const isKnown = this.hasSwapped;
		this.hasSwapped = false;
		if ("begins" in line && isKnown) return;
		if ("begins" in line) {
			this.beforeExample = null;
			const { walk, helper } = line.begins;
			this.begin(walk, market, where, streams);
			if (helper !== null) this.state = coachedBy(helper.name, this.state);
			this.say(this.steps === 0 ? `The walk begins, on ${walk.asOf}.` : "\nAnother walk is taken up.");
			this.show(where);
			return;
		}
		const { event } = line;
		this.play(event, where, this.wordsOf(event));
	}

	/** Answers in the order in which they were given; each is a step, wherever the walk would be. */
	playAnswers(walk: AnswersFile, market: Market, streams: Streams): void {
		const { answers, suggestions, name, ...rest } = walk;
		this.begin(walk, market, "answers", streams);
		this.kept = { ...(name === undefined ? {} : { name }), ...(suggestions ? { suggestions } : {}) };
		this.state = startWalk({}, rest.parts);
		this.say(`The walk begins, on ${walk.asOf}.`);
		for (const [id, answer] of Object.entries(answers)) {
			const question = questionById(id);
			if (question) this.playAnswer(question, answer);
		}
	}

	private playAnswer(question: Question, answer: Answer): void {
		const { id } = question;
		const event: WalkEvent =
			answer.status === "answered" && answer.value !== undefined
				? { type: "answer", value: answer.value }
				: { type: "not-sure" };
		const isAsked = () => this.state.place.at === "question" && this.state.place.id === id;
		this.state = { ...this.state, by: answer.by ?? "builder" };
		if (!isAsked()) this.quietly({ type: "go-on" }, `answers.${id}`);
		if (!isAsked()) this.quietly({ type: "change", questionId: id }, `answers.${id}`);
		const { context } = this;
		if (!context) return;
		const words = this.guarded(`answers.${id}`, () => answerWords(question, answer, viewWalk(context, this.state)));
		this.play(event, `answers.${id}`, `${question.label}: ${words}`);
	}

	private begin(walk: AnswersFile, market: Market, where: string, { err }: Streams): void {
		const taken = takeUpWalk({ market, asOf: walk.asOf }, walk);
		if (taken.faults.length > 0) throw this.refusal(where, faultsMessage(this.path, taken.faults));
		for (const warning of taken.warnings) err(`${this.path}: ${warning}\n`);
		this.context = { market, asOf: walk.asOf };
		this.state = taken.state;
	}

	private quietly(event: WalkEvent, where: string): readonly WalkEffect[] {
		const { context } = this;
		if (!context) return [];
		return this.guarded(where, () => {
			const [state, effects] = update(context, this.state, event);
			this.state = state;
			return effects;
		});
	}

	private play(event: WalkEvent, where: string, words: string): void {
		const effects = this.quietly(event, where);
		this.say(`\nStep ${++this.steps}. ${words}`);
		for (const effect of effects) {
			const told = effectWords(effect);
			if (told) this.say(told);
			this.swap(effect);
		}
		this.show(where);
	}

	/** Into the made-up person's walk and back, as the program does it; nothing else is carried out. */
	private swap({ type }: WalkEffect): void {
		const { context, state, beforeExample } = this;
		if (type === "look-at-example" && context) {
			this.beforeExample = { context, state };
			const example = exampleWalk();
			this.context = example.context;
			this.state = { ...example.state, saved: state.saved, settings: state.settings };
			this.hasSwapped = true;
		} else if (type === "leave-example" && beforeExample) {
			this.context = beforeExample.context;
			this.state = beforeExample.state;
			this.beforeExample = null;
			this.hasSwapped = true;
		}
	}

	private show(where: string): void {
		const screen = this.screen(where);
		if (!screen) return;
		this.out(screenText(screen, width));
		if (screen.problem) this.say(screen.problem);
	}

	private screen(where: string): Screen | null {
		const { context } = this;
		return context && this.guarded(where, () => screenOf(context, this.state));
	}

	/** As the person saw it: the line that was picked, where the event is one of the screen's. */
	private wordsOf(event: WalkEvent): string {
		const written = JSON.stringify(event);
		const choice = this.screen("the step before")?.choices.find((one) => JSON.stringify(one.event) === written);
		return choice
			? event.type === "answer"
				? `Answered: ${choice.label}`
				: `Picked: ${choice.label}`
			: didWords(event);
	}

	/** What a file of rubbish can bring about: the walk knows no such thing, and it is told as a fault of the file. */
	private guarded<T>(where: string, work: () => T): T {
		try {
			return work();
		} catch (error) {
			throw this.refusal(where, `${error instanceof Error ? error.message : String(error)}`);
		}
	}

	private refusal(where: string, why: string): CommandError {
		return new CommandError(exitCodes.badData, `${this.path}: ${where} cannot be replayed: ${why}`);
	}

	private say(words: string): void {
		this.out(`${wrapText(words, width).join("\n")}\n`);
	}

	/** Never the made-up person's. */
	private ownWalk(): { readonly context: WalkContext | null; readonly state: WalkState } {
		return this.beforeExample ?? { context: this.context, state: this.state };
	}

	answersFile(): object {
		const { context, state } = this.ownWalk();
		return context ? { ...savedWalk(context, state), ...this.kept } : {};
	}

	/** How many steps it took, and what they lead to. */
	end(): void {
		const { context, state } = this.ownWalk();
		if (!context) return;
		const inShort = this.guarded("the end", () => viewWalk(context, state).sheet().inShort);
		this.out("\n");
		this.say(`The end, after ${this.steps} ${this.steps === 1 ? "step" : "steps"}. Nothing was written.`);
		for (const line of inShort) this.say(line);
	}
}

/** What would have been done outside the walk. */
function effectWords(effect: WalkEffect): string | null {
	switch (effect.type) {
		case "save":
			return null;
		case "write-sheet":
			return `(Then the sheet was written to ${effect.to}; now nothing is written.)`;
		case "open":
			return `(Then the walk in ${effect.file} was opened; what stands below is what was recorded of it.)`;
		case "change-walks":
			return "(Then the kept walks were changed; now they stay as they are.)";
		case "keep-settings":
			return "(Then the settings were kept; now they stay as they are.)";
		case "keep-part":
		case "remove-part":
			return "(Then the file of own parts was changed; now it stays as it is.)";
		case "look-at-example":
			return "(Then a made-up person's walk was shown.)";
		case "leave-example":
			return null;
		case "leave":
			return effect.finished ? "(The walk was left, with a shortlist.)" : "(The walk was left before a shortlist.)";
	}
}
