import type { Block, Choice, Screen } from "./screen.ts";

/** A block with each of its texts changed; pictures stay as they are, since their columns stand under each other. */
export function mapBlock(block: Block, change: (words: string) => string): Block {
	switch (block.kind) {
		case "list":
			return { ...block, items: block.items.map(change) };
		case "pairs":
			return { ...block, pairs: block.pairs.map(([label, value]) => [change(label), change(value)] as const) };
		case "picture":
			return block;
		default:
			return { ...block, text: change(block.text) };
	}
}

export function mapChoice(choice: Choice, change: (words: string) => string): Choice {
	return {
		...choice,
		label: change(choice.label),
		...(choice.detail === undefined ? {} : { detail: change(choice.detail) }),
	};
}

/** A screen with each of its texts changed, in the order in which they are read. */
export function mapWords(screen: Screen, change: (words: string) => string): Screen {
	const blocks = (list: readonly Block[]) => list.map((block) => mapBlock(block, change));
	return {
		...screen,
		notice: screen.notice === null ? null : change(screen.notice),
		problem: screen.problem === null ? null : change(screen.problem),
		title: change(screen.title),
		body: blocks(screen.body),
		choices: screen.choices.map((choice) => mapChoice(choice, change)),
		side: blocks(screen.side),
		help: blocks(screen.help),
		sources: blocks(screen.sources),
	};
}
