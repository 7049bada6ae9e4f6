import type { Board } from "../../parts/board.ts";
import { type Money, moneyText } from "../../parts/money.ts";
import { defineRule } from "../define-rule.ts";
import { goodToKnow, type MessageData, type Outcome, pass, planAround } from "../outcome.ts";

type Offer = NonNullable<Board["offers"]>[number];

/** With less than a twentieth saved the risk is not worth it, and nothing is said: own convention. */
const leastShareSaved = 0.05;

/** What every message about an offer says. */
interface OfferWords extends MessageData {
	/** "used" or "opened". */
	readonly condition: string;
	readonly price: string;
	/** Last day to give it back, as an ISO date; empty where nobody has told. */
	readonly back: string;
}

const backWords = ({ back }: OfferWords) => (back ? ` It can go back until ${back}.` : "");

/** A board that somebody else had before: what it saves, and what to look at before paying. */
export const usedOffer = defineRule({
	id: "quality/used-offer",
	scope: "board",
	label: "Used or opened boards",
	wayOut: "a new board",
	asks: "Is the board offered used or opened, and is that worth it?",
	why: "A used board costs less. Bent contacts, missing parts or a warranty that stays behind can cost more than it saves.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead: ["board.offers", "board.price"],
	saysNothing: ["little", "otherCurrency"],
	messages: {
		notAsked: () => "No used or opened one is noted.",
		otherCurrency: ({ price }: { price: string }) =>
			`Used or opened it costs ${price}; its new price is in another currency, and none is converted here.`,
		little: ({ price, fresh }: { price: string; fresh: string }) =>
			`Used or opened it costs ${price} and new ${fresh}: that saves little or nothing.`,
		saves: (words: OfferWords & { readonly saved: string }) =>
			`${oneWords(words)} costs ${words.price}, ${words.saved} less than a new one.${backWords(words)}`,
		onlyUsed: (words: OfferWords) => `No new one is noted. ${oneWords(words)} costs ${words.price}.${backWords(words)}`,
	},
	advice: { saves: (words: OfferWords) => checklist(words), onlyUsed: (words: OfferWords) => checklist(words) },
	check({ "board.offers": offers = [], "board.price": price }): Outcome {
		const others = offers.filter(({ condition }) => condition !== "new");
		const fresh = [...(price ? [price] : []), ...offers.filter((one) => !others.includes(one)).map((one) => one.price)];
		// Two currencies cannot be compared: the first that can be held against something counts.
		const first = others.find((other) => fresh.length === 0 || fresh.some(isIn(other.price.currency)));
		if (!first) return others[0] ? pass("otherCurrency", wordsOf(others[0])) : pass("notAsked");
		const cheapest = others
			.filter((other) => isIn(first.price.currency)(other.price))
			.reduce((best, other) => (other.price.minor < best.price.minor ? other : best), first);
		const words = wordsOf(cheapest);
		const freshMinor = Math.min(...fresh.filter(isIn(first.price.currency)).map(({ minor }) => minor));
		if (!Number.isFinite(freshMinor)) return planAround("onlyUsed", words);
		const { currency } = first.price;
		const savedMinor = freshMinor - cheapest.price.minor;
		return savedMinor > 0 && savedMinor >= leastShareSaved * freshMinor
			? goodToKnow("saves", { ...words, saved: moneyText({ minor: savedMinor, currency }) })
			: pass("little", { price: words.price, fresh: moneyText({ minor: freshMinor, currency }) });
	},
});

const isIn =
	(currency: string) =>
	(money: Money): boolean =>
		money.currency === currency;

function wordsOf({ condition, price, returnableUntil }: Offer): OfferWords {
	return { condition, price: moneyText(price), back: returnableUntil ?? "" };
}

function oneWords({ condition }: OfferWords): string {
	return condition === "opened" ? "An opened one (sent back by somebody)" : "A used one";
}

function checklist({ back }: OfferWords): string {
	return [
		"Ask for a photo of it running with the serial number in view, and compare that number when it arrives.",
		"Look at the contacts of the socket through a magnifier: do not touch them, and send it back if one is bent.",
		"The shield of the back sockets must be in the box, and the aerials if it has wireless.",
		"Compare the revision printed on the board with the maker's page.",
		`Ask whether the warranty moves on to you${back ? "" : ", and until when it can go back"}.`,
	].join(" ");
}
