import type { ShortlistEntry } from "../choose/advise.ts";
import type { PlanSection } from "./plan-words.ts";

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
	/** By which one knows it in the shop: maker, size, socket, memory. */
	readonly facts: string;
	/** Power and heat as a sentence; null where nothing is known of the processor's watts. */
	readonly power: string | null;
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
	readonly sections: readonly PlanSection[];
}

/** A fact or an answer still open, and how to find it out. */
export interface SheetOpen {
	readonly what: string;
	readonly how: string;
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
	readonly inShort: readonly string[];
	/** What the parts say of each other, whatever the board; `isStopped`: they do not go together. */
	readonly partsDisagree: readonly {
		readonly text: string;
		readonly isStopped: boolean;
		readonly advice: string | null;
	}[];
	readonly beforeYouPay: readonly string[];
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
	readonly open: readonly SheetOpen[];
	readonly answers: readonly SheetAnswer[];
	readonly cautions: readonly { readonly text: string; readonly ground: string }[];
	readonly sources: readonly string[];
}
