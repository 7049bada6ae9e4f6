import type { BoardForm, HoleLetter } from "../../parts/vocabulary.ts";
import { boardForms } from "../../reference/board-forms.ts";
import { type BoardReach, fromRearEdgeMm, fromRightEdgeMm, isHoleWithin } from "../../reference/board-holes.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass } from "../outcome.ts";

/** Where places that go by letter are, for people who have no drawing: with the back sockets at the top, from above. */
function whereIs(letters: Letters): string {
	const places = letters.map(
		(letter) =>
			`${letter}: ${Math.round(fromRearEdgeMm(letter))} mm below the board's top edge, ${Math.round(fromRightEdgeMm(letter))} mm from its right one.`,
	);
	return `Lay the case flat, open side up, its back away from you: the back sockets are then at the top right. ${places.join(" ")}`;
}

/** Half of a standoff from corner to corner, in mm (from memory): so far beyond an edge it still touches the board. */
const standoffRadiusMm = 3.5;

/** The specification leaves hole S of a microATX board to its maker, so nothing is said of it. */
const optionalHoles: Partial<Record<BoardForm, HoleLetter>> = { microATX: "S" };

type Letters = readonly HoleLetter[];

const comeOutWords = ({ posts }: { posts: Letters }) =>
	`${standoffsAt(posts)}: the board has no hole there. ${posts.length === 1 ? "It" : "They"} must come out first.`;
const comeOutAdvice = ({ posts }: { posts: Letters }) =>
	`Do it before the board goes in: a standoff left there can short it. ${whereIs(posts)}`;

/**
 * Holes of the board against the standoffs somebody found in the case. Where nobody looked, the case's list of forms
 * settles it (fit/board-form): a case has what the forms it lists need, and ATX cases nearly always what microATX needs
 * too (common practice, no source). Only a standoff that stays under the board stops it: the specification wants those
 * that could harm traces removable (p. 10), and in nearly all cases they are (common practice).
 */
export const standoffs = defineRule({
	id: "fit/standoffs",
	scope: "board",
	label: "Standoffs under the board",
	wayOut: "another case",
	asks: "Does every standoff of the case lie under a hole of the board?",
	why: "A standoff is a metal post. Under a hole it holds the board; anywhere else it can short it.",
	source: "microatx-1.2",
	severity: "stops",
	reads: [],
	mayRead: ["board.form", "board.holes", "board.widthMm", "board.depthMm", "case.standoffs", "case.standoffsRemovable"],
	saysNothing: ["notLooked", "held"],
	messages: {
		notLooked: () => "Nobody has noted where the case has standoffs; its list of board sizes decides.",
		held: () => "Every screw hole of the board has a standoff, and no other standoff lies under it.",
		fixed: ({ posts }: { posts: Letters }) =>
			`${standoffsAt(posts)}: the board has no hole there, and ${itOrThey(posts)} cannot be unscrewed.`,
		takeOut: comeOutWords,
		leftOver: comeOutWords,
		bareHoles: ({ holes }: { holes: Letters }) =>
			`${holes.length === 1 ? "Hole" : "Holes"} ${holes.join(", ")}: no standoff in the case, so the board is not held there.`,
		holesUnknown: () => "Which screw holes the board has is not known.",
	},
	advice: {
		fixed: ({ posts }: { posts: Letters }) =>
			`Do not put this board in: a standoff that touches it can short it. Ask the case's maker, or take another case. ${whereIs(posts)}`,
		takeOut: comeOutAdvice,
		leftOver: comeOutAdvice,
		bareHoles: ({ holes }: { holes: Letters }) =>
			`Screw in a standoff there if the case has a thread for it. If it has none, push cables in gently near that place. ${whereIs(holes)}`,
		holesUnknown: () =>
			"With no cable connected, hold the board above the standoffs. Note each that meets no hole, then take it out.",
	},
	check(facts): Outcome {
		const posts = facts["case.standoffs"];
		if (!posts) return pass("notLooked");
		const { "board.form": form, "board.holes": stated } = facts;
		if (!stated || !form)
			return facts["case.standoffsRemovable"] === false
				? cannotTell(["board.holes"], "holesUnknown")
				: goodToKnow("holesUnknown");
		const size = boardForms[form];
		const reach = {
			widthMm: facts["board.widthMm"] ?? size.widthMm,
			depthMm: facts["board.depthMm"] ?? size.depthMm,
		};
		const isSettled = (letter: HoleLetter) => letter !== optionalHoles[form];
		// Holes assumed from the form are those of a full-size board; a smaller one has none past its edge.
		const holes = stated.filter((hole) => isSettled(hole) && isHoleWithin(hole, reach));
		const leftOver = posts.filter(
			(post) => isSettled(post) && !holes.includes(post) && isHoleWithin(post, beyond(reach, standoffRadiusMm)),
		);
		if (leftOver.length > 0) return leftOverIn(facts["case.standoffsRemovable"], leftOver);
		const bare = holes.filter((hole) => !posts.includes(hole));
		return bare.length > 0 ? goodToKnow("bareHoles", { holes: bare }) : pass("held");
	},
});

/** Standoffs that can be unscrewed are a step of every build and no fault of the board. */
function leftOverIn(isRemovable: boolean | undefined, posts: Letters): Outcome {
	if (isRemovable === undefined) return goodToKnow("leftOver", { posts });
	return isRemovable ? pass("takeOut", { posts }) : fail("fixed", { posts });
}

function beyond({ widthMm, depthMm }: BoardReach, mm: number): BoardReach {
	return { widthMm: widthMm + mm, depthMm: depthMm + mm };
}

function standoffsAt(posts: Letters): string {
	return `${posts.length === 1 ? "Standoff at place" : "Standoffs at places"} ${posts.join(", ")}`;
}

function itOrThey(posts: Letters): string {
	return posts.length === 1 ? "it" : "they";
}
