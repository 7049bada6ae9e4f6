import type { BuildFacts } from "../parts/build.ts";

/** The wishes that cost no board its place, in words: those that the criterion of small wishes counts. */
export function smallWishes({ wishes, addInCards, soundUses, colourTaste, clockPlan }: BuildFacts): readonly string[] {
	const wireless = wishes["features/wireless"];
	const hasCard = addInCards?.some(({ use }) => use === "wireless network") ?? false;
	return [
		...((wireless === "would-like" || wireless === "must") && !hasCard ? ["wireless"] : []),
		...(soundUses?.includes("optical") ? ["an optical cable for sound"] : []),
		...(soundUses?.includes("surround") ? ["sockets for five speakers"] : []),
		...(colourTaste === "dark" || colourTaste === "light" ? [`a ${colourTaste} board`] : []),
		...(wishes["features/error-correction"] === "would-like" ? ["error-correcting memory"] : []),
		...(clockPlan === "maybe" ? ["raising the processor's clock one day"] : []),
	];
}
