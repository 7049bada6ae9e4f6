import type { GraphicsCard } from "../../parts/graphics-card.ts";
import { graphicsPlugBudgetW } from "../../reference/graphics-plug-budget.ts";
import { adapterPlugs } from "../adapter-plugs.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

type Plugs = NonNullable<GraphicsCard["powerPlugs"]>;

/**
 * The card's power plugs against the supply's: a 6+2-pin plug feeds a 6-pin or an 8-pin socket; a 12V-2x6 socket wants a
 * lead of its own that is good for the card's watts, or the card maker's adapter on two to four 8-pin plugs.
 */
export const supplyGraphicsPlugs = defineRule({
	id: "build/supply-graphics-plugs",
	scope: "build",
	label: "Power plugs of the graphics card",
	wayOut: "another power supply or another card",
	asks: "Does your supply have the plugs the graphics card needs?",
	why: "A card with an empty power socket does not start. Each kind of plug is made for a fixed number of watts.",
	source: "atx-3.0-guide-2.01",
	severity: "stops",
	reads: ["graphicsCard.powerPlugs", "supply"],
	mayRead: ["supply.graphics8Pin", "supply.native12V2x6", "graphicsCard.watts"],
	messages: {
		noPlug: () => "The card has no power socket of its own; the board feeds it.",
		noSupply: ({ plugs }: { plugs: readonly string[] }) =>
			`There is no supply yet: choose one with the plugs the card needs (${plugs.join(", ")}).`,
		fed: ({ plugs }: { plugs: readonly string[] }) => `Your supply has the plugs the card needs (${plugs.join(", ")}).`,
		doubtful: ({ cardW, budgetW }: { cardW: number; budgetW: number }) =>
			`The plugs fit, but slot and plugs are meant for ${budgetW} W, and the card is said to take ${cardW} W.`,
		adapter: ({ plugs, wide }: { plugs: number; wide: number }) =>
			`${wide === 1 ? "A 12V-2x6 socket of the card needs an adapter; that takes" : `${wide} 12V-2x6 sockets of the card need adapters; those take`} ${plugs} of your supply's 8-pin graphics plugs.`,
		leadTight: ({ leadW, plugW }: { leadW: number; plugW: number }) =>
			`Your supply's 12V-2x6 plug is made for ${leadW} W; the card takes ${plugW} W, and its slot adds the rest.`,
		tooFew: ({ have, need }: { have: number; need: number }) =>
			`The card needs ${need === 1 ? "1 power plug" : `${need} power plugs`} with 6 or 8 pins; your supply has ${have === 0 ? "none" : have}.`,
		leadWeak: ({ leadW, plugW }: { leadW: number; plugW: number }) =>
			`Your supply's 12V-2x6 plug is made for ${leadW} W; the card takes ${plugW} W.`,
		noLead: ({ have, need }: { have: number; need: number }) =>
			`The card needs a 12V-2x6 plug, or an adapter on ${need} plugs with 8 pins; your supply has ${have === 0 ? "neither" : `only ${have} of these`}.`,
	},
	advice: {
		fed: () =>
			"Use a cable of its own for each socket where you can, and only cables that came with this very supply. Push each plug in until it clicks.",
		doubtful: () => "Look at the card and its page again: count its power sockets and read its watts.",
		adapter: () =>
			"Use only the adapter from the card's own box, and a cable of its own for each of its plugs. Push all in until they click.",
		leadTight: () => "A supply with a stronger lead is better. Use only cables made for this very supply.",
		tooFew: () =>
			"Plan a supply with enough graphics plugs. Processor plugs look alike and must not be used; nor must doublers or drive-plug adapters.",
		leadWeak: () => "Plan a supply with a stronger lead, or a card that takes less. Never use another supply's cable.",
		noLead: () => "Plan a supply with a 12V-2x6 lead. Use only its own cables: others can look alike and do harm.",
	},
	check(facts): Outcome {
		const plugs = facts["graphicsCard.powerPlugs"];
		if (plugs.length === 0) return pass("noPlug");
		if (facts.supply === "open" || facts.supply === "none") return pass("noSupply", { plugs });
		if (facts.supply === "unknown") return cannotTell(["supply"]);
		const [eightPins, leads] = [facts["supply.graphics8Pin"], facts["supply.native12V2x6"]];
		const wide = plugs.filter((plug) => plug === "12V-2x6").length;
		const small = plugs.length - wide;
		if (small > 0 && eightPins !== undefined && eightPins < small)
			return fail("tooFew", { have: eightPins, need: small });
		const missing = [
			...(small > 0 && eightPins === undefined ? ["supply.graphics8Pin"] : []),
			...(wide > 0 && leads === undefined ? ["supply.native12V2x6"] : []),
		];
		if (missing.length > 0) return cannotTell(missing);
		const cardW = facts["graphicsCard.watts"];
		const unfed =
			leads && wide > 0
				? wideSockets(
						wide,
						small,
						leads.map((lead) => lead.watts),
						eightPins,
						cardW,
					)
				: null;
		return unfed ?? allFed(plugs, cardW);
	},
});

/** What is to be said of 12V-2x6 sockets that no lead of the supply feeds in full; null where all are fed. */
function wideSockets(
	wide: number,
	small: number,
	leadsW: readonly number[],
	eightPins: number | undefined,
	cardW: number | undefined,
): Outcome | null {
	const { plugW, sockets, isTight, least, most } = adapterPlugs(wide, leadsW, cardW);
	const leadW = Math.max(0, ...leadsW);
	if (isTight && plugW !== undefined) return planAround("leadTight", { leadW, plugW });
	if (sockets === 0) return null;
	if (eightPins === undefined) return cannotTell(["supply.graphics8Pin"]);
	const have = eightPins - small;
	if (have >= most) return planAround("adapter", { plugs: most, wide: sockets });
	if (have >= least) return cannotTell(["graphicsCard.watts"]);
	return plugW !== undefined && leadsW.length >= wide
		? fail("leadWeak", { leadW, plugW })
		: fail("noLead", { have, need: least });
}

/** Every socket has a plug; a card said to take more than they are meant for was read wrong, or is no ordinary one. */
function allFed(plugs: Plugs, cardW: number | undefined): Outcome {
	const budgetW = graphicsPlugBudgetW(plugs);
	return cardW !== undefined && cardW > budgetW ? goodToKnow("doubtful", { cardW, budgetW }) : pass("fed", { plugs });
}
