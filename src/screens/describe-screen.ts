import { factAt } from "../parts/fact-list.ts";
import { type PartKind, partKinds } from "../parts/part-kinds.ts";
import { readKinds } from "../reading/part-reading.ts";
import { factsToDescribe } from "../walk/update.ts";
import type { Place, WalkContext } from "../walk/walk-state.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** At the start of a short description: other ways to bring the part in, each with a letter of its own. */
function otherWays(kind: PartKind): readonly Choice[] {
	const read = readKinds.find((one) => one === kind);
	return [
		...(read
			? [{ label: "Paste its page instead", key: "p", event: { type: "paste-part", what: read } } satisfies Choice]
			: []),
		{ label: "All its facts: the whole form", key: "f", event: { type: "new-part", kind } },
	];
}

/** One fact of a part that is being typed in from its page. */
export function describeScreen(
	context: WalkContext,
	view: WalkView,
	place: Extract<Place, { at: "describe" }>,
): Screen {
	const facts = factsToDescribe(context, view.state);
	const fact = facts[place.index];
	const { noun } = partKinds[place.kind];
	if (!fact) return plainScreen(view, { id: "describe", title: `Nothing is asked about this ${noun}` });
	const entered = view.state.entered[place.index];
	const words = factAt(place.kind, fact.path);
	return plainScreen(view, {
		id: `describe:${place.kind}:${place.index}`,
		place: `Your ${noun}, fact ${place.index + 1} of ${facts.length}`,
		title: fact.ask,
		body: [
			...(entered === undefined ? [] : [text(`Entered so far: ${entered}`)]),
			text(`Where to find it: ${words?.whereToFind ?? "its page or label"}`),
			...(fact.example && !fact.choices ? [text(`Such as: ${fact.example}`)] : []),
		],
		choices: [
			...(place.index === 0 && !fact.choices ? otherWays(place.kind) : []),
			...(fact.choices ?? []).map(({ value, label }) => ({
				label,
				...(label === entered ? { chosen: true } : {}),
				event: { type: "fact" as const, value },
			})),
			{
				label: "Not on the page",
				isUnsure: true,
				...(fact.choices ? {} : { key: "n" }),
				detail: "It stays unknown; no board is judged by it",
				apart: true,
				event: { type: "not-on-page" },
			},
		],
		enter: entered === undefined ? null : { words: "keep it", event: { type: "next" } },
		typing: fact.read
			? fact.choices
				? { kind: "free", words: fact.example ?? "or type it" }
				: { kind: "value", words: "type it" }
			: null,
		help: [
			heading("Why we ask"),
			text(
				`So that this ${noun} can be held against your other parts. What you leave out stays unknown, and is never guessed.`,
			),
			heading("Where to find it"),
			text(words?.whereToFind ?? "Its page or label."),
		],
	});
}
