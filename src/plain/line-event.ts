import type { Screen } from "../screens/screen.ts";

type WalkEvent = Screen["choices"][number]["event"];

/** What a typed line means on a screen: an event, a look at the help, or a word about what was expected. */
export type LineMeaning =
	| { readonly kind: "event"; readonly event: WalkEvent }
	| { readonly kind: "help" }
	| { readonly kind: "problem"; readonly words: string };

const commands: Readonly<Record<string, WalkEvent>> = {
	b: { type: "back" },
	back: { type: "back" },
	r: { type: "review" },
	review: { type: "review" },
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
	const command = Object.hasOwn(commands, word) ? commands[word] : undefined;
	if (command) return { kind: "event", event: command };
	const byKey = screen.choices.find(({ key }) => key === word);
	if (byKey) return { kind: "event", event: byKey.event };
	if (typed === "")
		return screen.enter ? { kind: "event", event: screen.enter.event } : { kind: "problem", words: emptyWords(screen) };
	if (screen.typing?.kind !== "value" && /^\d{1,4}[.)]?$/.test(typed)) {
		const choice = screen.choices[Number.parseInt(typed, 10) - 1];
		return choice
			? { kind: "event", event: choice.event }
			: { kind: "problem", words: `There is no line ${typed}. ${emptyWords(screen)}` };
	}
	return screen.typing
		? { kind: "event", event: { type: "text", text: typed } }
		: { kind: "problem", words: emptyWords(screen) };
}

function emptyWords({ choices, typing }: Screen): string {
	if (typing?.kind === "value")
		return `Type your answer, or n for "${choices.find(({ key }) => key === "n")?.label ?? "not sure"}".`;
	return `Type a number from 1 to ${choices.length}${typing ? `, ${typing.words}` : ""}.`;
}
