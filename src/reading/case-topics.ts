import type { casePlaces } from "../parts/vocabulary.ts";

/** What a line of a case's page can be about. */
export type CaseTopic =
	| "front sockets"
	| "cooler"
	| "card"
	| "slots"
	| "bays"
	| "supply"
	| "board"
	| "radiator"
	| "fan"
	| "colour";
export type CasePlace = (typeof casePlaces)[number];

/** Words in English and German, and the terms other languages use; what an earlier one matches is taken away. */
const topicWords: readonly (readonly [CaseTopic | undefined, RegExp])[] = [
	[
		undefined,
		/\b(?:gpu|vga|graphics?)(?:\scards?)?\s(?:support\s)?(?:brackets?|holders?|stands?|braces?|sag)\b|grafikkartenhalt\w*|\briser\scables?\b|\bfan\s?(?:hubs?|controll?ers?|speed|control|headers?|noise|bearing|airflow)\b|lüfter(?:steuerung|hub)\w*|\b(?:psu|power\ssupply)\s?(?:shroud|cover)s?\b|netzteil(?:abdeckung|kammer|tunnel)\w*|\bcable\s(?:management|routing)\b|\bdust\s?filters?\b|staubfilter\w*|\b(?:motherboard|mainboard|board)[\s-]?(?:tray|side|schlitten|standoffs?)\b|\bwater\s?pumps?\b|\breservoirs?\b/gi,
	],
	[
		"front sockets",
		/\bi\s?\/\s?o(?:[\s-]*(?:ports?|panel|connect\w+|anschl[\wüä]+|interface))?(?![\w/])|\b(?:usb|type)\b(?:[\s-]*(?:ports?|type|anschl[\wüä]+))?|\busb(?=[\d-])|\b(?:front|top)(?:[\s-]?panel)?[\s-]?(?:ports?|connect\w+|interfaces?|anschl[\wüä]+|sockets?|schnittstellen)\b|\b(?:connectors?|ports?|sockets?|anschlüsse)\s(?:at|on|an|in)\s(?:the\s|der\s)?front\b|frontanschl[\wüä]+|\bexternal\s(?:ports?|connect\w+)\b|\b(?:externe\s)?anschlüsse\b|\bconnectique\b|\bconectores\b|\bporte\sfrontali\b|\bconnectors?\s(?:on\s)?(?:front\s)?panel\b|^\W*(?:hd[\s-])?(?:audio|head(?:phone|set)s?|mic(?:rophone)?)\b[^,;]{0,20}$|(?<=\d\s?[x×]?\s?(?:3[.,]5\s?mm\s)?)(?:hd[\s-])?\b(?:audio|head(?:phone|set)s?|mic(?:rophone)?s?)\b(?:[\s-](?:jacks?|ports?|connectors?|out(?:put)?|in(?:put)?))?/gi,
	],
	[
		"cooler",
		/\b(?:cpu|processor|prozessor)[\s-]*(?:air[\s-]*|tower[\s-]*)?(?:coolers?|cooling|heat[\s-]?sinks?|kühler\w*|fans?|lüfter\w*|clearance|height|höhe)|\b(?:tower|air)[\s-]?(?:coolers?|kühler)\b|prozessorkühler\w*|\bkühlerhöhe\b|\bturmkühler\w*|\bheat[\s-]?sinks?\b|\bcoolers?\b(?=[^,;]{0,12}(?:height|clearance|\d))|\bmax(?:imum|imal\w*|\.)?\s(?:air\s)?coolers?\b|\bheight\W{0,3}(?:max\W{0,3})?cpu\b|\bcpu\W{0,3}(?:max\W{0,3})?height\b|\bcpu\b(?=[^,;a-z]{0,6}\d{2,3}\s?mm)|\bventirad\b|\bdisipador\w*|\bdissipatore\w*/gi,
	],
	[
		"card",
		/\b(?:gpus?|vga|graphics?|video|display)(?:[\s-]*cards?\b|\b)|\bgrafik\w*|\bcartes?\sgraphiques?\b|\btarjetas?\s(?:gráficas?|de\svídeo)\b|\bscheda\svideo\b|\b(?:add-?in|pci-?e?|expansion)[\s-]cards?\b|\b(?:longest\s)?cards?\b(?=[^,;]{0,14}\b(?:length|clearance|long\b|\d{3}\s?mm))|\blongest\scards?\b|\blength\W{0,3}cards?\b/gi,
	],
	[
		"slots",
		/\b(?:expansion|pci(?:[\s-]?e(?:xpress)?)?|card|erweiterungs|vertical|upright)[\s-]?(?:slots?|steckpl[\wä]+)\b|\berweiterungs(?:slots?|(?:steck)?pl[\wä]+)|\bslotblenden\b|^\W*(?:slots?|expansion|erweiterung)\W*$|(?<=^\W*\d\s?x?\s)slots?\W*$|^\W*slots?\s(?=\d)|(?<=\b\d\s)slots\b(?!\s?(?:thick|wide|high|gpu|card|tall))|\bslots?\sd['’]extension\b|\branuras\sde\sexpansión\b/gi,
	],
	[
		"bays",
		/\b(?:drive|storage|hdd|ssd|disk)[\s/-]*(?:\w+\s)?(?:bays?|trays?|mounts?|support|slots?|cages?|places?)\b|\b(?:bays?|baies)\b|^\W*(?:drives?|disks?|platten)\W*$|laufwerk\w*|\b(?:storage|festplatten\w*|einbauschächte|hdds?|ssds?)\b|(?<![\d.,])(?:[23][.,]5|5[.,]25)\s?-?(?:["″”'’]|in(?:ch)?\b|zoll)/gi,
	],
	[
		"supply",
		/\bpsus?\b|\bpower[\s-]?suppl(?:y|ies)\b|\bnetzteil\w*|\balimentation\b|\bfuentes?\b|\balimentator[ei]\b|\bstromversorgung\b/gi,
	],
	[
		"board",
		/\b(?:mother|main)[\s-]?boards?\w*|\bm\/b\b|\bmobo\b|\bmb\s(?:support|type|size|form)|\bhauptplatine\w*|\bform[\s-]?(?:factors?|faktor\w*)\b|\bformfaktor\w*|\bcartes?\smères?\b|^\W*boards?\W*$|^\W*mb\W*$|\bboards?\b(?=[^,;]{0,14}\b(?:e-?|micro-?|mini-?|m-?)?[ai]tx)|(?<=[ai]tx\s)boards?\b|\b(?:supported|compatible)\sboards?\b|\bboard\s(?:sizes?|support|formats?|types?|form)\b/gi,
	],
	[
		"radiator",
		/\bradiator\w*|\brads?\b|\b(?:water|liquid)[\s-]?cool\w*|\bwasserkühl\w*|\bwakü\b|\baios?\b|\bradiateurs?\b|\bradiadores\b/gi,
	],
	[
		"fan",
		/\bfans?\b|\bair\scooling\b|\bluftkühlung\b|\blüfter\w*|\bgehäuselüfter\w*|\bventilat\w+|\bventol[ae]\b|\bventilad\w+/gi,
	],
	["colour", /^\W*(?:colou?rs?|(?:gehäuse)?farben?|couleur|colore)\W*$/gi],
];

export interface Mention<T> {
	readonly what: T;
	readonly from: number;
	readonly to: number;
}

/** Topics that a text mentions, in its order. */
export function topicsIn(text: string): readonly Mention<CaseTopic>[] {
	let left = text;
	const found: Mention<CaseTopic>[] = [];
	for (const [topic, words] of topicWords) {
		left = left.replace(words, (match: string, ...rest: unknown[]) => {
			const from = rest.find((one) => typeof one === "number") as number;
			if (topic) found.push({ what: topic, from, to: from + match.length });
			return "_".repeat(match.length);
		});
	}
	return found.toSorted((one, other) => one.from - other.from);
}

const placeWords: readonly (readonly [CasePlace, RegExp])[] = [
	[
		"inside",
		/\b(?:psu|power\ssupply)[\s-]?(?:shroud|cover)s?\b|\bsupply\s(?:cover|shroud)\b|netzteilabdeckung\w*|\binside\b|\binnen\b|\binner\b|\binternal\b|\bpartition\b|\bdivider\b|\bclapboard\b|\bzwischenwand\b|\btrennwand\b|\bmid[\s-]?(?:plate|wall)\b/gi,
	],
	[
		"side",
		/\b(?:motherboard|mainboard|m\/?b)[\s-]side\b|\bside(?:[\s-]?(?:panel|wall))?\b(?<!front[\s-]side)|\bseitlich\w*|\bseitenwand\b|\bseitenteil\b|(?<!\w)seite\b/gi,
	],
	[
		"front",
		/\bfront(?:al\w*)?(?:[\s-]?(?:panel|side|blende|seite))?\b|\bvorne?\b|\bvorderseite\b|\bavant\b|\banteriore\b/gi,
	],
	[
		"top",
		/\btop(?:[\s-]?(?:panel|side|cover))?\b|\boben\b|\bdeckel\b|\boberseite\b|\broof\b|\bdach\b|\bdessus\b|\bsuperior\w*\b/gi,
	],
	[
		"rear",
		/\brear(?:[\s-]?(?:panel|side))?\b|\bback(?:[\s-]?(?:panel|side))?\b|\bhinten\b|\brückseite\b|\bheck\b|\barrière\b|\btraser[ao]\b|\bposteriore\b/gi,
	],
	[
		"bottom",
		/\bbottom(?:[\s-]?(?:panel|side))?\b|\bunten\b|\bboden\b|\bunterseite\b|\bfloor\b|\bbase\b|\binferior\w*\b/gi,
	],
];

/** Places of the case that a text mentions, in its order. */
export function placesIn(text: string): readonly Mention<CasePlace>[] {
	let left = text;
	const found: Mention<CasePlace>[] = [];
	for (const [place, words] of placeWords) {
		left = left.replace(words, (match: string, ...rest: unknown[]) => {
			const from = rest.find((one) => typeof one === "number") as number;
			found.push({ what: place, from, to: from + match.length });
			return "_".repeat(match.length);
		});
	}
	return found.toSorted((one, other) => one.from - other.from);
}

/** A run of text with the places that it tells about. */
export interface PlacedRun {
	readonly places: readonly CasePlace[];
	readonly text: string;
	/** The text does not let it be seen which place is meant. */
	readonly isUnclear?: true;
}

/** More places than this no line names (own convention). */
const mostPlaces = 30;
const joint = /^\s{0,3}(?:[/&+,]|and|und|or|oder)\s{0,3}(?:the\s)?$/i;
const figure = /\d{2,3}/;

/** Cuts a run at the places it names: "Front: A; Top: B" as well as "A (front), B (top)". */
export function runsByPlace(text: string, around: readonly CasePlace[]): readonly PlacedRun[] {
	const groups: { places: CasePlace[]; from: number; to: number }[] = [];
	for (const { what, from, to } of placesIn(text).slice(0, mostPlaces)) {
		const last = groups.at(-1);
		if (last && joint.test(text.slice(last.to, from))) {
			last.places.push(what);
			last.to = to;
		} else groups.push({ places: [what], from, to });
	}
	const [first] = groups;
	if (!first) return [{ places: around, text }];
	if (figure.test(text.slice(0, first.from))) {
		// "Front: A (front panel)" tells the same place twice; another place than the label's may go with what is behind it.
		const isSame = around.length > 0 && groups.every(({ places }) => places.every((place) => around.includes(place)));
		if (isSame) return [{ places: around, text }];
		const runs = placeBehind(text, groups);
		return around.length > 0 ? runs.map((run) => ({ ...run, isUnclear: true })) : runs;
	}
	const runs: PlacedRun[] = groups.map(({ places, from }, index) => {
		const end = groups[index + 1]?.from ?? text.length;
		return { places: [...new Set(places)], text: text.slice(from, end) };
	});
	// "Top: A, B rear": B stands before its place, though A stands behind.
	const isMixed = groups.some(({ from, to }, index) => {
		const before =
			text
				.slice(groups[index - 1]?.to ?? 0, from)
				.split(/[,;|(]/)
				.at(-1) ?? "";
		const behind = text.slice(to, groups[index + 1]?.from);
		return index > 0 && figure.test(before) && !figure.test(behind) && !/^\s?[:=]/.test(behind);
	});
	return isMixed ? runs.map((run) => ({ ...run, isUnclear: true })) : runs;
}

function placeBehind(
	text: string,
	groups: readonly { readonly places: readonly CasePlace[]; readonly from: number; readonly to: number }[],
): readonly PlacedRun[] {
	let start = 0;
	const runs = groups.map(({ places, to }, index): PlacedRun => {
		const next = groups[index + 1]?.from ?? text.length;
		// What belongs to the place goes on to the end of its bracket or its item.
		const rest = text.slice(to, next);
		const end =
			index === groups.length - 1
				? text.length
				: to + (/^[^()]{0,40}\)|^[^,;|+()]{0,20}(?=[,;|+])/.exec(rest)?.[0].length ?? 0);
		const run = { places: [...new Set(places)], text: text.slice(start, end) };
		start = end;
		const hasFigure = figure.test(run.text);
		return hasFigure ? run : { ...run, isUnclear: true };
	});
	return runs;
}
