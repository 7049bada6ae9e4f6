import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, type Outcome, pass, planAround } from "../outcome.ts";
import { isThinEnough, listsLength, radiatorPlacesFor } from "../radiator-places.ts";

/** A liquid cooler's radiator needs a place in the case that takes its length and its thickness with fans. */
export const radiatorInCase = defineRule({
	id: "build/radiator-in-case",
	scope: "build",
	label: "Radiator in the case",
	wayOut: "another cooler or another case",
	asks: "Does the case have a place for the cooler's radiator?",
	why: "The radiator is screwed to the case with its fans. Case makers list the lengths that each place takes.",
	source: "common-practice",
	severity: "stops",
	reads: ["cooler.kind", "case"],
	mayRead: ["cooler.radiatorMm", "cooler.radiatorThicknessMm", "case.radiatorPlaces"],
	messages: {
		air: () => "An air cooler has no radiator to place.",
		noCase: () => "There is no case yet: choose one that lists the radiator's length.",
		hasPlace: ({ radiatorMm, places }: { radiatorMm: number; places: readonly string[] }) =>
			`The ${radiatorMm} mm radiator has a place in the case: ${places.join(" or ")}.`,
		longerListed: ({ radiatorMm, places }: { radiatorMm: number; places: readonly string[] }) =>
			`The case lists longer radiators for the ${places.join(" or ")}; their screw slots mostly fit your ${radiatorMm} mm one too.`,
		noPlaces: () => "A liquid cooler needs a place for its radiator, and the case has none.",
		noLength: ({ radiatorMm, lengths }: { radiatorMm: number; lengths: readonly string[] }) =>
			`The radiator is ${radiatorMm} mm long; the case takes only ${lengths.join(" or ")} mm.`,
		tooThick: ({ thicknessMm, maxMm }: { thicknessMm: number; maxMm: number }) =>
			`Radiator and fans are ${thicknessMm} mm thick; the case has room for ${maxMm} mm at most.`,
	},
	advice: {
		longerListed: () => "Ask the case's maker before you buy, or take a radiator of a listed length.",
		noPlaces: () => "Take an air cooler or another case.",
		noLength: () => "Take a cooler with a listed length, or another case.",
		tooThick: () => "Take another radiator or another case.",
	},
	check(facts): Outcome {
		if (facts["cooler.kind"] === "air") return pass("air");
		if (facts.case === "open" || facts.case === "none") return pass("noCase");
		if (facts.case === "unknown") return cannotTell(["case"]);
		const { "cooler.radiatorMm": radiatorMm, "case.radiatorPlaces": places } = facts;
		if (places?.every(({ lengthsMm }) => lengthsMm.length === 0)) return fail("noPlaces");
		if (radiatorMm === undefined || places === undefined)
			return cannotTell([
				...(radiatorMm === undefined ? ["cooler.radiatorMm"] : []),
				...(places === undefined ? ["case.radiatorPlaces"] : []),
			]);
		const long = radiatorPlacesFor(places, radiatorMm);
		if (long.length === 0)
			return fail("noLength", { radiatorMm, lengths: lengthsOf(places.map((one) => one.lengthsMm)) });
		const thicknessMm = facts["cooler.radiatorThicknessMm"];
		const roomy = long.filter((place) => isThinEnough(place, thicknessMm));
		if (roomy.length === 0) {
			if (thicknessMm === undefined) return cannotTell(["cooler.radiatorThicknessMm"]);
			return fail("tooThick", { thicknessMm, maxMm: Math.max(...long.map((place) => place.maxThicknessMm ?? 0)) });
		}
		const listed = roomy.filter((place) => listsLength(place, radiatorMm));
		return listed.length > 0
			? pass("hasPlace", { radiatorMm, places: namesOf(listed) })
			: planAround("longerListed", { radiatorMm, places: namesOf(roomy) });
	},
});

function lengthsOf(lists: readonly (readonly number[])[]): readonly string[] {
	return [...new Set(lists.flat())].toSorted((a, b) => a - b).map(String);
}

function namesOf(places: readonly { readonly place: string }[]): readonly string[] {
	return [...new Set(places.map(({ place }) => place))];
}
