import type { Cooler } from "../parts/cooler.ts";
import type { HeaderBuild, HeaderWish, HeaderWishKind } from "./header-wish.ts";

/** How a plug of the case's front is called, and the kind of header it wants. */
const frontWords = {
	"USB 9-pin": { id: "front-9-pin", words: "slow front USB", kind: "USB 9-pin" },
	"USB 19-pin": { id: "front-19-pin", words: "fast front USB", kind: "USB 19-pin" },
	"USB-C 20-pin": { id: "front-usb-c", words: "front USB-C", kind: "USB-C 20-pin" },
	sound: { id: "front-sound", words: "front sound", kind: "front sound" },
} as const;
const frontKinds = Object.keys(frontWords) as (keyof typeof frontWords)[];

/**
 * Everything of a build that has a plug for a header of the board, in the order in which it is served where all else is
 * alike. A fact that nobody knows wants nothing, but for the cooler: some cooler there will be, and it has a fan.
 */
export function headerWishesOf(build: HeaderBuild): readonly HeaderWish[] {
	const later = (build.laterThings ?? []).filter((thing) => thing === "fan").length;
	return [
		...frontWishes(build.case),
		...coolerWishes(build.cooler),
		...cardWishes(build.addInCards),
		...alike(build.caseFans ?? 0, "case-fan", "case fan", { kind: "case fan", whose: "case fans" }),
		...lightWishes(build.lights),
		...alike(later, "later-fan", "later case fan", { kind: "case fan", whose: "case fans", isLater: true }),
	];
}

type Rest = Pick<HeaderWish, "kind" | "whose"> & Partial<Pick<HeaderWish, "gbps" | "isLater">> & { owner?: string };

/** So many wishes that are alike, numbered in their names where there are several. */
function alike(count: number, id: string, words: string, rest: Rest): readonly HeaderWish[] {
	return Array.from({ length: count }, (_, index) => wish(id, words, index + 1, count, rest));
}

function wish(
	id: string,
	words: string,
	nth: number,
	of: number,
	{ kind, whose, gbps = null, isLater = false, owner }: Rest,
): HeaderWish {
	const numbered = of === 1 ? words : `${words} ${nth}`;
	const name = owner === undefined ? numbered : `${numbered} of ${owner}`;
	return { id: `${id}-${nth}`, name, kind, whose, gbps, isLater };
}

function frontWishes(pcCase: HeaderBuild["case"]): readonly HeaderWish[] {
	if (pcCase.state !== "have") return [];
	const { name: owner, frontPlugs = [], hubUsesUsb2 } = pcCase.part;
	const plugs = frontKinds.flatMap((plug) => {
		const { id, words, kind } = frontWords[plug];
		// Several lines of one kind are told apart by their rates.
		const cables = frontPlugs
			.filter((one) => one.plug === plug)
			.flatMap(({ count, gbps = null }) => Array.from({ length: count }, () => gbps));
		return cables.map((gbps, index) => wish(id, words, index + 1, cables.length, { kind, whose: "case", gbps, owner }));
	});
	return [
		...plugs,
		...alike(hubUsesUsb2 ? 1 : 0, "case-hub", "fan or lighting hub", { kind: "USB 9-pin", whose: "case", owner }),
	];
}

/** Common practice, no source: the cooler in the processor's box, or one nobody has named yet, has one fan. */
const fansWhereUnknown = 1;

function coolerWishes(cooler: HeaderBuild["cooler"]): readonly HeaderWish[] {
	const part: Pick<Cooler, "name" | "kind" | "headersUsed" | "fans"> =
		cooler.state === "have"
			? cooler.part
			: { name: cooler.state === "none" ? "the cooler in the processor's box" : "the cooler" };
	const { usb2, pump, fan, lights5V, lights12V } = part.headersUsed ?? {};
	const many = (count: number | undefined, id: string, words: string, kind: HeaderWishKind) =>
		alike(count ?? 0, id, words, { kind, whose: "cooler", owner: part.name });
	return [
		...many(usb2, "cooler-usb", "USB plug", "USB 9-pin"),
		...many(pump ?? (part.kind === "liquid" ? 1 : 0), "pump", "pump", "pump"),
		// Several fans on one plug, as most radiators have them.
		...many(fan ?? fansWhereUnknown, "cooler-fan", fan === 1 && (part.fans ?? 1) > 1 ? "fans" : "fan", "cooler fan"),
		...many(lights5V, "cooler-lights-5v", "5 V lights", "5 V lights"),
		...many(lights12V, "cooler-lights-12v", "12 V lights", "12 V lights"),
	];
}

function cardWishes(cards: HeaderBuild["addInCards"]): readonly HeaderWish[] {
	return (cards ?? []).flatMap(({ name, use, usesUsb2 }, index): readonly HeaderWish[] => {
		if (!usesUsb2) return [];
		const words = use === "wireless network" ? "Bluetooth" : "USB plug";
		return [wish("card-usb", words, index + 1, 1, { kind: "USB 9-pin", whose: "card", owner: name })];
	});
}

function lightWishes(lights: HeaderBuild["lights"]): readonly HeaderWish[] {
	const count = (plug: string) => (lights ?? []).filter((one) => one === plug).length;
	// Common practice, no source: one controller drives all lights of its maker.
	const controllers = Math.min(1, count("maker's own"));
	return [
		...alike(count("5 V three-pin"), "lights-5v", "5 V lights", { kind: "5 V lights", whose: "lights" }),
		...alike(count("12 V four-pin"), "lights-12v", "12 V lights", { kind: "12 V lights", whose: "lights" }),
		...alike(controllers, "lights-controller", "controller of the lights", { kind: "USB 9-pin", whose: "lights" }),
	];
}
