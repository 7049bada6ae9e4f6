import { explainsWords, wordMark } from "../screens/marked-words.ts";
import type { Screen } from "../screens/screen.ts";

type WalkEvent = Screen["choices"][number]["event"];

/** What a typed line means on a screen: an event, a look at the help, or a word about what was expected. */
export type LineMeaning =
	| { readonly kind: "event"; readonly event: WalkEvent }
	| { readonly kind: "help" }
	| { readonly kind: "words" }
	| { readonly kind: "problem"; readonly words: string };

const commands: Readonly<Record<string, WalkEvent>> = {
	b: { type: "back" },
	back: { type: "back" },
	r: { type: "review" },
	review: { type: "review" },
	sources: { type: "show-sources" },
	m: { type: "menu" },
	menu: { type: "menu" },
	s: { type: "leave" },
	save: { type: "leave" },
	q: { type: "leave" },
	quit: { type: "leave" },
};

/** Reads one line. Letters that are commands come first, then numbers of lines, then what the screen lets be typed. */
export function lineMeaning(screen: Screen, line: string): LineMeaning {
	const typed = line.trim();
	const word = typed.toLowerCase();
	if (word === "?" || word === "help") return { kind: "help" };
	if (word === wordMark && explainsWords(screen)) return { kind: "words" };
	const command = Object.hasOwn(commands, word) ? commands[word] : undefined;
	if (command) return { kind: "event", event: command };
	const byWords = choiceByWords(screen, word);
	if (byWords) return { kind: "event", event: byWords.event };
	if (typed === "")
		return screen.enter ? { kind: "event", event: screen.enter.event } : { kind: "problem", words: emptyWords(screen) };
	const marks = screen.choices.filter(({ mark }) => mark).length;
	// Several lines at once, or the only one of them: what is typed is the whole answer.
	if (marks > 0 && /^[\d\s,;.)]+$/.test(typed)) {
		const numbers = typed.split(/[\s,;.)]+/).filter((piece) => piece !== "");
		const apart = numbers.length === 1 ? screen.choices[Number(numbers[0]) - 1] : undefined;
		return apart && !apart.mark
			? { kind: "event", event: apart.event }
			: { kind: "event", event: { type: "text", text: numbers.join(", ") } };
	}
	const isByKey = screen.typing?.kind === "value" || screen.typing?.kind === "page";
	if (!isByKey && /^\d{1,4}[.)]?$/.test(typed)) {
		const choice = screen.choices[Number.parseInt(typed, 10) - 1];
		return choice
			? { kind: "event", event: choice.event }
			: { kind: "problem", words: `There is no line ${typed}. ${emptyWords(screen)}` };
	}
	return screen.typing
		? { kind: "event", event: { type: "text", text: typed } }
		: { kind: "problem", words: emptyWords(screen) };
}

/** Ways to say that one does not know. */
const unsureWords = new Set(["not sure", "unsure", "don't know", "dont know", "no idea", "not on the page", "unknown"]);

/** The line whose key or words were typed: its whole label, or a beginning that no other line has. */
function choiceByWords({ choices, typing }: Screen, word: string): Screen["choices"][number] | undefined {
	const byKey = choices.find(({ key }) => key === word);
	if (byKey) return byKey;
	if (unsureWords.has(word)) return choices.find(({ isUnsure }) => isUnsure);
	const exact = choices.find(({ label }) => label.toLowerCase() === word);
	if (exact || typing?.kind === "value" || typing?.kind === "page" || word === "") return exact;
	// Where a name is being looked for, the walk itself finds it among the parts.
	const open = typing?.kind === "words" ? choices.filter(({ apart }) => apart) : choices;
	const begun = open.filter(({ label }) => label.toLowerCase().startsWith(word));
	return begun.length === 1 && !/^\d/.test(word) ? begun[0] : undefined;
}

function emptyWords({ choices, typing }: Screen): string {
	if (typing?.kind === "page") return `There is no text yet: ${typing.words}.`;
	if (typing?.kind === "value")
		return `Type your answer, or n for "${choices.find(({ key }) => key === "n")?.label ?? "not sure"}".`;
	return `Type a number from 1 to ${choices.length}${typing ? `, ${typing.words}` : ""}.`;
}
