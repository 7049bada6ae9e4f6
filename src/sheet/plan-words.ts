import type { PlanMeasure } from "../plan/measure-plan.ts";
import type { ConnectorEnd, PlacedDevice } from "../plan/plan.ts";
import type { Blocking } from "../plan/what-blocks.ts";
import type { Going } from "../plan/who-must-go.ts";

/** A plan in words: under each heading its sentences. Empty parts are left out. */
export function planWords(
	measure: PlanMeasure,
): readonly { readonly heading: string; readonly lines: readonly string[] }[] {
	const { plan } = measure;
	return [
		{ heading: "What goes where", lines: plan.placed.map(placedWords) },
		{
			heading: "No place is left for",
			lines: [...measure.blocking.map(blockingWords), ...goingWords(measure.goings)],
		},
		{ heading: "Not known", lines: unsureWords(measure) },
		{ heading: "What is given up for it", lines: givenUpWords(plan.ends) },
		{ heading: "Still free", lines: freeWords(plan.ends) },
		{
			heading: "Good to know",
			lines: [...eitherWords(measure), ...buriedWords(plan.placed), ...uplinkWords(measure), ...laterWords(measure)],
		},
	].filter(({ lines }) => lines.length > 0);
}

/** "Dart in M2_1: 4 lanes of generation 4, 7 of the 7 GB/s it can use." */
function placedWords({ device, connector, link, extra }: PlacedDevice): string {
	const width =
		link.lanes === null
			? ""
			: `${link.lanes} ${link.lanes === 1 ? "lane" : "lanes"}${link.generation === null ? "" : ` of generation ${link.generation}`}`;
	const speed =
		link.gbytesPerS === null
			? ""
			: device.gbytesPerS === null || rounded(device.gbytesPerS) === rounded(link.gbytesPerS)
				? `${rounded(link.gbytesPerS)} GB/s, all it can use`
				: `${rounded(link.gbytesPerS)} of the ${rounded(device.gbytesPerS)} GB/s it can use`;
	const details = [width, speed, extra === null ? "" : `with ${article(extra)}, bought besides`].filter(Boolean);
	return `${device.name} in ${connector.name}${details.length > 0 ? `: ${details.join(", ")}` : ""}.`;
}

/** "older drive 5: 6 drive ports would suit. S5 and S6 are off because of fast 2." */
function blockingWords({ device, wanted, ends }: Blocking): string {
	const noun = nounOf(device.kind);
	if (ends.length === 0) return `${device.name}: the board has no ${noun} that it goes into.`;
	const usable = ends.filter(({ state }) => state === "used" || state === "free").length;
	const things = wanted === 1 ? "1 thing wants" : `${wanted} things want`;
	const count = `${things} ${usable} usable ${usable === 1 ? noun : `${noun}s`}`;
	const lost = givenUpWords(ends.filter(({ state }) => state !== "used" && state !== "free"));
	return `${device.name}: ${count}. ${lost.join(" ")}`.trim();
}

function goingWords(goings: readonly (readonly Going[])[]): readonly string[] {
	if (goings.length === 0) return [];
	const one = (going: readonly Going[]) =>
		going
			.map(({ alike, count }) =>
				alike.length === count
					? alike.map(({ name }) => name).join(" and ")
					: `${count} of ${alike.map(({ name }) => name).join(", ")}`,
			)
			.join(" and ");
	return [`Everything else fits without ${goings.map(one).join("; or without ")}.`];
}

function unsureWords({ mayLackPlace, missing }: PlanMeasure): readonly string[] {
	if (mayLackPlace.length === 0) return [];
	const footnotes = missing.includes("board.sharing")
		? " Look on the board's page for the footnotes about shared lanes."
		: "";
	return [`Whether every place holds is not known for: ${mayLackPlace.join(", ")}.${footnotes}`];
}

/** "S5 and S6 are off because of Dart." One sentence for all that have one cause. */
function givenUpWords(ends: readonly ConnectorEnd[]): readonly string[] {
	const because: Readonly<Partial<Record<ConnectorEnd["state"], (by: string) => string>>> = {
		off: (by) => `off because of ${by}`,
		covered: (by) => `covered by ${by}`,
		narrows: (by) => `still usable, but would take lanes from ${by}`,
		dead: () => "of no use with this processor",
	};
	const byCause = new Map<string, string[]>();
	for (const { state, by, connector } of ends) {
		const words = because[state]?.([...new Set(by)].join(" and "));
		if (words) byCause.set(words, [...(byCause.get(words) ?? []), connector.name]);
	}
	return [
		...[...byCause].map(([words, names]) => `${listed(names)} ${names.length === 1 ? "is" : "are"} ${words}.`),
		...ends
			.filter(isNarrowed)
			.map(({ connector, lanes }) => `${connector.name} has ${lanes} of its ${connector.wiredLanes} lanes.`),
	];
}

function isNarrowed({ state, connector, lanes }: ConnectorEnd): boolean {
	return (state === "used" || state === "free") && lanes > 0 && lanes < (connector.wiredLanes ?? 0);
}

function freeWords(ends: readonly ConnectorEnd[]): readonly string[] {
	const free = ends.filter(({ state }) => state === "free").map(({ connector }) => connector.name);
	return free.length > 0 ? [`${listed(free)}.`] : [];
}

/** Free connectors of a group of which nothing is used yet: taking one costs the others. */
function eitherWords({ problem: { groups, connectors }, plan: { ends } }: PlanMeasure): readonly string[] {
	return groups.flatMap(({ members, modes }): readonly string[] => {
		const isUntouched = members.every((member) => ends[member]?.state === "free");
		const isAllOn = modes.some((on) => members.every((member) => on.has(member)));
		if (!isUntouched || isAllOn) return [];
		const ways = modes.map((on) => listed([...on.keys()].map((member) => connectors[member]?.name ?? "")));
		return [`Free, but not all at once: either ${ways.join(" or ")}.`];
	});
}

function buriedWords(placed: readonly PlacedDevice[]): readonly string[] {
	return placed
		.filter(({ isBuried }) => isBuried)
		.map(
			({ device, connector }) =>
				`${device.name} in ${connector.name} lies under a card: it works, but to reach it the card must come out, and it runs warmer.`,
		);
}

function uplinkWords({ uplink: { wantedGbytesPerS, carriesGbytesPerS, devices } }: PlanMeasure): readonly string[] {
	if (devices.length === 0) return [];
	const wanted = `What hangs on the chipset could move ${rounded(wantedGbytesPerS)} GB/s all at once`;
	if (carriesGbytesPerS === null) return [`${wanted}; what its link carries is not known.`];
	return [
		wantedGbytesPerS > carriesGbytesPerS
			? `${wanted}; its link carries ${rounded(carriesGbytesPerS)}. Things at work at one time would wait for each other.`
			: `${wanted}; its link carries ${rounded(carriesGbytesPerS)}, which is enough.`,
	];
}

function laterWords({ later: { wanted, placed } }: PlanMeasure): readonly string[] {
	return wanted === 0 ? [] : [`Of ${wanted} things named for later ${placed} would find a place.`];
}

function nounOf(kind: Blocking["device"]["kind"]): string {
	return kind === "M.2 drive" ? "M.2 socket" : kind === "drive" ? "drive port" : "card slot";
}

function article(extra: string): string {
	return `${/^[aeiou]/.test(extra) ? "an" : "a"} ${extra}`;
}

function listed(names: readonly string[]): string {
	return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

function rounded(gbytesPerS: number): string {
	return String(Math.round(gbytesPerS * 100) / 100);
}
