import type { Supply } from "../../parts/supply.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass, planAround } from "../outcome.ts";
import { roundToTenth } from "../round-to-tenth.ts";

type Form = NonNullable<Supply["form"]>;

/** The supply's form and length against the place the case has for it. */
export const supplyInCase = defineRule({
	id: "build/supply-in-case",
	scope: "build",
	label: "Supply in the case",
	wayOut: "another power supply or another case",
	asks: "Does the power supply fit into the case?",
	why: "Supplies come in fixed shapes with fixed screw holes, and long ones meet drives, cables or the card.",
	source: "common-practice",
	severity: "stops",
	reads: ["supply.form", "case.supplyForms"],
	mayRead: ["supply.lengthMm", "case.supplyMaxLengthMm"],
	messages: {
		fits: ({ form, lengthMm, maxMm }: { form: string; lengthMm: number; maxMm: number }) =>
			`The case takes ${form} supplies up to ${maxMm} mm long; yours is ${lengthMm} mm.`,
		withBracket: ({ form }: { form: string }) =>
			`Your ${form} supply is smaller than the ATX place of the case; it needs a bracket between them.`,
		longerKind: ({ form, lengthMm, maxMm }: { form: string; lengthMm: number; maxMm: number }) =>
			`The case names the shorter SFX, not ${form}, but has room for ${maxMm} mm; your supply is ${lengthMm} mm long.`,
		otherForm: ({ form, forms }: { form: string; forms: readonly string[] }) =>
			forms.length === 0
				? `The case has no place for a supply of any shape; yours is ${form}.`
				: `The case takes ${forms.join(" or ")} supplies; yours is ${form}.`,
		tooLong: ({ lengthMm, maxMm, overMm }: { lengthMm: number; maxMm: number; overMm: number }) =>
			`The supply is ${lengthMm} mm long, ${overMm} mm more than the ${maxMm} mm the case has room for.`,
	},
	advice: {
		withBracket: () =>
			"See whether a bracket comes with the supply, else buy one. Its cables are short: measure the way to the board.",
		longerKind: () => "The screw holes are the same. Leave room for its plugs behind it, and ask the case's maker.",
		otherForm: () => "Take a supply of a shape the case names, or another case. Never open a supply to make it fit.",
		tooLong: () => "Take a shorter supply or another case. Never open a supply to make it fit.",
	},
	check(facts): Outcome {
		const { "supply.form": form, "case.supplyForms": forms } = facts;
		const way = wayInto(forms, form);
		if (!way) return fail("otherForm", { form, forms });
		const { "supply.lengthMm": lengthMm, "case.supplyMaxLengthMm": maxMm } = facts;
		if (lengthMm === undefined || maxMm === undefined)
			return cannotTell([
				...(lengthMm === undefined ? ["supply.lengthMm"] : []),
				...(maxMm === undefined ? ["case.supplyMaxLengthMm"] : []),
			]);
		if (lengthMm > maxMm) return fail("tooLong", { lengthMm, maxMm, overMm: roundToTenth(lengthMm - maxMm) });
		if (way === "bracket") return planAround("withBracket", { form });
		return way === "longer"
			? planAround("longerKind", { form, lengthMm, maxMm })
			: pass("fits", { form, lengthMm, maxMm });
	},
});

/** How a supply gets into a place for other forms; null where it does not. SFX and SFX-L differ in length alone. */
function wayInto(forms: readonly Form[], form: Form): "same" | "longer" | "bracket" | null {
	if (forms.includes(form) || (form === "SFX" && forms.includes("SFX-L"))) return "same";
	if (form === "SFX-L" && forms.includes("SFX")) return "longer";
	return (form === "SFX" || form === "SFX-L") && forms.includes("ATX") ? "bracket" : null;
}
