import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass } from "../outcome.ts";
import { isThinEnough, radiatorPlacesFor } from "../radiator-places.ts";
import { roundToTenth } from "../round-to-tenth.ts";

/** The graphics card must not be longer than the case has room for, less where a radiator sits in front of it. */
export const cardInCase = defineRule({
	id: "build/card-in-case",
	scope: "build",
	label: "Graphics card in the case",
	wayOut: "another card or another case",
	asks: "Is the graphics card short enough for the case?",
	why: "A card that meets the drive cage, the front fans or a radiator cannot be plugged in.",
	source: "common-practice",
	severity: "stops",
	reads: ["graphicsCard.lengthMm", "case.cardMaxLengthMm"],
	mayRead: [
		"graphicsCard.name",
		"case.name",
		"case.cardMaxLengthWithRadiatorMm",
		"case.radiatorPlaces",
		"cooler.kind",
		"cooler.radiatorMm",
		"cooler.radiatorThicknessMm",
	],
	messages: {
		short: ({ lengthMm, maxMm }: { lengthMm: number; maxMm: number }) =>
			`The card is ${lengthMm} mm long; the case has room for ${maxMm} mm.`,
		shortWithRadiator: ({ lengthMm, maxMm }: { lengthMm: number; maxMm: number }) =>
			`The card is ${lengthMm} mm long; even with a radiator in front the case has room for ${maxMm} mm.`,
		radiatorElsewhere: ({ lengthMm, maxMm }: { lengthMm: number; maxMm: number }) =>
			`A radiator in front would leave ${maxMm} mm for the ${lengthMm} mm card; your case has another place for it.`,
		tooLong: ({ overMm, lengthMm, maxMm }: { overMm: number; lengthMm: number; maxMm: number }) =>
			`The card is ${lengthMm} mm long, ${overMm} mm more than the ${maxMm} mm the case has room for.`,
		tooLongWithRadiator: ({ overMm, lengthMm, maxMm }: { overMm: number; lengthMm: number; maxMm: number }) =>
			`Your radiator only fits in front, which leaves ${maxMm} mm; the card is ${lengthMm} mm long, ${overMm} mm too much.`,
		radiatorPlaceUnknown: () => "A radiator in front takes length from the card; where yours can go is not known.",
		radiatorRoomUnknown: () => "Your radiator only fits in front; how long a card may be then is not known.",
	},
	advice: {
		radiatorElsewhere: () => "Mount the radiator at the other place, not in front of the card.",
		tooLong: () =>
			"Change the card or the case. Some cases win room when a drive cage is taken out: see the case maker's page.",
		tooLongWithRadiator: () => "Take an air cooler, a shorter card, or a case with another place for the radiator.",
		radiatorRoomUnknown: () =>
			"See the case maker's page. A radiator with its fans often takes 50 to 60 mm off the length.",
	},
	check(facts): Outcome {
		const { "graphicsCard.lengthMm": lengthMm, "case.cardMaxLengthMm": maxMm } = facts;
		if (lengthMm > maxMm) return fail("tooLong", { lengthMm, maxMm, overMm: roundToTenth(lengthMm - maxMm) });
		if (facts["cooler.kind"] !== "liquid") return pass("short", { lengthMm, maxMm });
		const withRadiatorMm = facts["case.cardMaxLengthWithRadiatorMm"];
		if (withRadiatorMm !== undefined && lengthMm <= withRadiatorMm)
			return pass("shortWithRadiator", { lengthMm, maxMm: withRadiatorMm });
		const { "case.radiatorPlaces": places, "cooler.radiatorMm": radiatorMm } = facts;
		if (places === undefined || radiatorMm === undefined)
			return cannotTell(
				[
					...(places === undefined ? ["case.radiatorPlaces"] : []),
					...(radiatorMm === undefined ? ["cooler.radiatorMm"] : []),
				],
				"radiatorPlaceUnknown",
			);
		const roomy = radiatorPlacesFor(places, radiatorMm).map((place) => ({
			inFront: place.place === "front",
			thinEnough: isThinEnough(place, facts["cooler.radiatorThicknessMm"]),
		}));
		if (!roomy.some(({ inFront, thinEnough }) => inFront && thinEnough !== false)) {
			// It does not go in front, so it takes no length; whether it goes anywhere is another rule's question.
			return pass("short", { lengthMm, maxMm });
		}
		if (roomy.some(({ inFront, thinEnough }) => !inFront && thinEnough))
			return withRadiatorMm === undefined
				? pass("short", { lengthMm, maxMm })
				: goodToKnow("radiatorElsewhere", { lengthMm, maxMm: withRadiatorMm });
		// Thin enough for another place, or too thick for the front: either would do.
		if (roomy.some(({ thinEnough }) => thinEnough === undefined))
			return cannotTell(["cooler.radiatorThicknessMm"], "radiatorPlaceUnknown");
		if (withRadiatorMm === undefined) return cannotTell(["case.cardMaxLengthWithRadiatorMm"], "radiatorRoomUnknown");
		return fail("tooLongWithRadiator", {
			lengthMm,
			maxMm: withRadiatorMm,
			overMm: roundToTenth(lengthMm - withRadiatorMm),
		});
	},
});
