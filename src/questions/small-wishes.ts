import type { BuildFacts } from "../parts/build.ts";

/** The wishes that cost no board its place, in words: those that the criterion of small wishes counts. */
export function smallWishes({ wishes, routerGbps, soundUses, colourTaste, clockPlan }: BuildFacts): readonly string[] {
	const isWished = (id: string) => wishes[id] === "would-like" || wishes[id] === "must";
	return [
		...(isWished("features/wireless") ? ["wireless"] : []),
		...(routerGbps ? [`a wired network of ${routerGbps} Gb/s`] : []),
		...(soundUses?.includes("optical") ? ["a light cable for sound"] : []),
		...(soundUses?.includes("surround") ? ["sockets for five speakers"] : []),
		...(colourTaste === "dark" || colourTaste === "light" ? [`a ${colourTaste} board`] : []),
		...(isWished("features/error-correction") ? ["memory that finds its errors"] : []),
		...(clockPlan === "maybe" ? ["raising the processor's speed one day"] : []),
	];
}
