import type { ShortlistEntry } from "../choose/advise.ts";
import type { Suggestion } from "../parts/answers-file.ts";
import type { Money } from "../parts/money.ts";
import type { PlanSection } from "./plan-words.ts";

/** A message about one board in two languages. */
export interface ShopMessage {
	readonly boardName: string;
	readonly english: string;
	readonly german: string;
}

/** A requirement: what to look for, and why. */
export interface SheetNeed {
	readonly ruleId: string;
	readonly label: string;
	readonly text: string;
	readonly why: string;
}

export interface SheetBoard {
	readonly boardId: string;
	readonly name: string;
	readonly invented: boolean;
	readonly role: ShortlistEntry["role"];
	readonly roleWords: string;
	readonly verdictWords: string;
	/** Whole points of 100. */
	readonly score: { readonly low: number; readonly mid: number; readonly high: number };
	readonly scoreWords: string;
	/** Where its points come from, in whole points that add up to the score. */
	readonly pointsWords: string;
	/** How it stands to the first of the list; empty for that one. */
	readonly behind: readonly string[];
	readonly priceWords: string;
	/** What is asked for it; null where nobody knows. */
	readonly price: Money | null;
	/** What it makes its buyer pay for besides, a sentence each. */
	readonly forced: readonly string[];
	/** By which one knows it in the shop: maker, size, socket, memory. */
	readonly facts: string;
	/** Power and heat as a sentence; null where nothing is known of the processor's watts. */
	readonly power: string | null;
	/** What its buyer has to plan around so that it goes together and starts. */
	readonly mind: readonly string[];
	/** Reasons that do not hold for every board of the list alike; those stand in `ofAll`. */
	readonly for: readonly string[];
	readonly against: readonly string[];
	readonly unknown: readonly string[];
}

/** Reasons that hold for every board of the shortlist, and so decide nothing between them. */
export interface SheetOfAll {
	readonly for: readonly string[];
	readonly against: readonly string[];
	readonly unknown: readonly string[];
}

/** A picture of one board with what it says in words. */
export interface SheetPlan {
	readonly boardName: string;
	/** Lines of ASCII, 60 columns at most. */
	readonly picture: readonly string[];
	/** The same as an SVG that stands alone and says itself in words; null where there is no picture. */
	readonly svg: string | null;
	readonly sections: readonly PlanSection[];
}

/** A fact or an answer still open, and how to find it out. */
export interface SheetOpen {
	readonly what: string;
	readonly how: string;
	/** What it could change; empty where nothing is known of that. */
	readonly changes: string;
}

/** One thing to do on the day of building. */
export interface SheetStep {
	readonly label: string;
	readonly text: string;
	/** Why: its source in a few words. */
	readonly ground: string;
}

/** An answer that somebody proposes, and what became of it. */
export interface SheetSuggestion {
	readonly label: string;
	readonly text: string;
	readonly by: string;
	readonly state: Suggestion["state"];
}

/** A fact of a board that somebody said, such as the shop. */
export interface SheetTold {
	readonly boardName: string;
	/** "Memory slots: 4 (told by the shop on 2026-11-28)". */
	readonly text: string;
	/** The board is on the shortlist. */
	readonly isListed: boolean;
}

export interface SheetAnswer {
	readonly questionId: string;
	readonly label: string;
	readonly value: string;
	readonly by: string;
}

/**
 * The requirement sheet as data: one view model from which every form is written, so that all carry the same words and
 * figures. All texts are plain and unescaped.
 */
export interface Sheet {
	readonly title: string;
	readonly asOf: string;
	readonly market: string;
	readonly hasInventedParts: boolean;
	/** For whom, what for, around which parts. */
	readonly forWhom: readonly { readonly label: string; readonly text: string }[];
	readonly inShort: readonly string[];
	/** What the parts say of each other, whatever the board; `isStopped`: they do not go together, however open answers turn out. */
	readonly partsDisagree: readonly {
		readonly text: string;
		readonly isStopped: boolean;
		readonly advice: string | null;
	}[];
	/** What to check whichever board it is. */
	readonly beforeYouPay: readonly string[];
	/** What to plan around, with the boards of the shortlist that it is about. */
	readonly planAround: readonly { readonly boardNames: readonly string[]; readonly text: string }[];
	readonly mustHave: readonly SheetNeed[];
	readonly niceToHave: readonly SheetNeed[];
	readonly shortlist: readonly SheetBoard[];
	/** How sure it is that the first board leads, why, and what that rests on; empty without a board. */
	readonly lead: readonly string[];
	readonly ofAll: SheetOfAll;
	readonly nothingFits: readonly string[];
	/** What plugs in where on the first board of the shortlist; null where there is none. */
	readonly plan: SheetPlan | null;
	/** How warm its power stages get, in the same shape. */
	readonly power: SheetPlan | null;
	/** Building and first start, in order, on the first board of the shortlist or on any. */
	readonly steps: readonly SheetStep[];
	/** What no step carries. */
	readonly cautions: readonly { readonly text: string; readonly ground: string }[];
	readonly open: readonly SheetOpen[];
	/** One message a board, to send to the shop or to read out. */
	readonly askTheShop: readonly ShopMessage[];
	readonly answers: readonly SheetAnswer[];
	readonly suggestions: readonly SheetSuggestion[];
	readonly told: readonly SheetTold[];
	readonly sources: readonly string[];
}
