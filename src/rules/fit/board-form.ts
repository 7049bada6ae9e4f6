import type { BoardForm } from "../../parts/vocabulary.ts";
import { boardForms } from "../../reference/board-forms.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass } from "../outcome.ts";

interface Sizes {
	readonly depthMm: number | undefined;
	readonly maxDepthMm: number | undefined;
	readonly widthMm: number | undefined;
	readonly maxWidthMm: number | undefined;
}

/**
 * The forms a case lists decide. A smaller board goes into a larger case, never the other way round; its standoffs are
 * fit/standoffs'. Sizes from the microATX and ATX specifications settle what the list leaves open.
 */
export const boardForm = defineRule({
	id: "fit/board-form",
	scope: "board",
	label: "Board size",
	wayOut: "another case",
	asks: "Does the board fit the case?",
	why: "A board too large cannot be screwed in at all; a smaller one only looks sparse.",
	source: "microatx-1.2",
	severity: "stops",
	reads: ["board.form", "case.boardForms"],
	mayRead: ["board.widthMm", "board.depthMm", "case.boardMaxWidthMm", "case.boardMaxDepthMm"],
	messages: {
		listed: ({ form }: { form: string }) => `The case lists ${form} boards.`,
		smaller: ({ form, forms }: { form: string; forms: readonly string[] }) =>
			`The case lists ${forms.join(", ")}; a smaller ${form} board goes in as well.`,
		tooLarge: ({ form, forms }: { form: string; forms: readonly string[] }) =>
			`The board is ${form}; the case takes ${forms.join(", ")} only.`,
		tooDeep: ({ depthMm, maxDepthMm }: { depthMm: number; maxDepthMm: number }) =>
			`The board is ${depthMm} mm deep; the case has room for ${maxDepthMm} mm.`,
		tooWide: ({ widthMm, maxWidthMm }: { widthMm: number; maxWidthMm: number }) =>
			`The board is ${widthMm} mm wide; the case has room for ${maxWidthMm} mm.`,
		bySize: ({ form, depthMm, maxDepthMm }: { form: string; depthMm: number; maxDepthMm: number }) =>
			`The case does not list ${form}, but has room for ${maxDepthMm} mm and the board is ${depthMm} mm deep.`,
		depthUnknown: ({ form }: { form: string }) => `${form} is no fixed size, and the board's depth in mm is not known.`,
		caseDepthUnknown: ({ form }: { form: string }) =>
			`The case lists ${form}, which is no fixed size, and its room in mm is not known.`,
		need: ({ forms }: { forms: readonly string[] }) =>
			`${forms.join(", ")}: the sizes your case takes, and nothing larger.`,
	},
	advice: {
		depthUnknown: () => "Ask the seller for the board's depth in mm and hold it against the case maker's page.",
		caseDepthUnknown: () => "Look on the case maker's page for the deepest board in mm.",
	},
	check(facts): Outcome {
		const sizes = {
			depthMm: facts["board.depthMm"],
			maxDepthMm: facts["case.boardMaxDepthMm"],
			widthMm: facts["board.widthMm"],
			maxWidthMm: facts["case.boardMaxWidthMm"],
		};
		return withinSizes(sizes) ?? byList(facts["board.form"], facts["case.boardForms"], sizes);
	},
	needs: ({ "case.boardForms": forms }) => (forms ? { messageId: "need", data: { forms } } : null),
});

/** A stated limit in mm binds whatever the list says. */
function withinSizes({ depthMm, maxDepthMm, widthMm, maxWidthMm }: Sizes): Outcome | null {
	if (depthMm !== undefined && maxDepthMm !== undefined && depthMm > maxDepthMm)
		return fail("tooDeep", { depthMm, maxDepthMm });
	if (widthMm !== undefined && maxWidthMm !== undefined && widthMm > maxWidthMm)
		return fail("tooWide", { widthMm, maxWidthMm });
	return null;
}

function byList(form: BoardForm, forms: readonly BoardForm[], { depthMm, maxDepthMm }: Sizes): Outcome {
	if (forms.includes(form)) {
		if (form === "E-ATX" && depthMm === undefined && maxDepthMm !== undefined)
			return cannotTell(["board.depthMm"], "depthUnknown", { form });
		if (form === "E-ATX" && maxDepthMm === undefined && (depthMm ?? boardForms[form].depthMm) > boardForms.ATX.depthMm)
			return cannotTell(["case.boardMaxDepthMm"], "caseDepthUnknown", { form });
		return pass("listed", { form });
	}
	if (forms.some((listed) => isWithin(form, listed))) return pass("smaller", { form, forms });
	if (form === "E-ATX" && maxDepthMm !== undefined)
		return depthMm === undefined
			? cannotTell(["board.depthMm"], "depthUnknown", { form })
			: pass("bySize", { form, depthMm, maxDepthMm });
	return fail("tooLarge", { form, forms });
}

/** Whether a board of one form is no larger than one of the other in both directions. */
function isWithin(form: BoardForm, other: BoardForm): boolean {
	const [inner, outer] = [boardForms[form], boardForms[other]];
	return inner.widthMm <= outer.widthMm && inner.depthMm <= outer.depthMm;
}
