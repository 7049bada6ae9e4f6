import type { AddInCard } from "../parts/add-in-card.ts";
import { type PlanBothWays, planBothWays } from "./both-ways.ts";
import { type Device, isCard } from "./device.ts";
import { addInId } from "./devices.ts";
import type { BoardOfPlan, BuildAround } from "./problem.ts";

/** The cards of a build, each beside nothing but the graphics card: what no other part could be blamed for. */
export interface CardsAlone {
	/** Those of which it is not known whether they find a slot even so, where the board's slots are listed. */
	readonly unsure: readonly Device[];
	/** Paths of the facts that would settle it. */
	readonly missing: readonly string[];
}

/** Looks only at cards that may find no slot among all the rest: whatever surely does finds one alone too. */
export function cardsAlone(board: BoardOfPlan, build: BuildAround, all: PlanBothWays): CardsAlone {
	const left = all.worst.unplaced.filter(isCard);
	// One plan serves for both where all is known.
	if (left.length === 0 || all.worst === all.best) return { unsure: [], missing: [] };
	const cards = (build.addInCards ?? []).flatMap((card, index) => {
		const device = left.find(({ id }) => id === addInId(index));
		return device ? [{ card, device }] : [];
	});
	// Equal cards are one card of the market named twice, and fare alike.
	const plans = new Map<AddInCard | null, PlanBothWays>();
	for (const card of cards.length > 0 ? cards.map((one) => one.card) : [null])
		if (!plans.has(card)) plans.set(card, planBothWays(board, aloneWith(build, card)));
	const isUnsure = (card: AddInCard | null, kind: Device["kind"]) =>
		plans.get(card)?.unsure.some((device) => device.kind === kind) === true;
	const graphics = left.filter(
		({ kind }) => kind === "graphics card" && [...plans.keys()].some((card) => isUnsure(card, kind)),
	);
	return {
		unsure: [...graphics, ...cards.flatMap(({ card, device }) => (isUnsure(card, "card") ? [device] : []))],
		missing: [...new Set([...plans.values()].flatMap(({ missing }) => missing))],
	};
}

function aloneWith(build: BuildAround, card: AddInCard | null): BuildAround {
	return { ...build, drives: [], olderSataDrives: 0, addInCards: card ? [card] : [], laterThings: [] };
}
