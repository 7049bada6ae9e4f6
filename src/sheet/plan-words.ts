import { type Device, isCard } from "../plan/device.ts";
import type { PlanMeasure } from "../plan/measure-plan.ts";
import type { ConnectorEnd, PlacedDevice } from "../plan/plan.ts";
import type { Blocking } from "../plan/what-blocks.ts";
import type { Going, WayToFit } from "../plan/who-must-go.ts";
import { roundToHundredth } from "../rules/round-to-hundredth.ts";
import { headersUnknownWords, headersWithoutWords, headerWords } from "./header-words.ts";
import { capital, listed, withCounts, withRuns } from "./listed.ts";

export interface PlanSection {
	readonly heading: string;
	readonly lines: readonly string[];
}

/** What a plan leaves out, so that nobody takes it for all there is to plug in. */
export const notInThePlan =
	"Not in this plan: the plugs of the power supply and the small pins of the power button. The board's manual shows them.";

/** A plan in words: under each heading its sentences. Empty parts are left out. */
export function planWords(measure: PlanMeasure): readonly PlanSection[] {
	const { plan, headers } = measure;
	return [
		{ heading: "What goes where", lines: [...plan.placed.map(placedWords), ...memoryWords(measure)] },
		{ heading: "On the headers", lines: headerWords(headers) },
		{
			heading: "No place is left for",
			lines: [
				...blockedAlike(measure).map(({ names, why }) => `${capital(listed(withRuns(withCounts(names))))}: ${why}`),
				...wayToFitWords(measure.waysToFit),
				...headersWithoutWords(headers),
			],
		},
		{ heading: "Not known", lines: [...unsureWords(measure), ...headersUnknownWords(headers)] },
		{ heading: "Cannot be used now", lines: lostWords(plan.ends, measure) },
		{ heading: "Still free", lines: freeWords(plan.ends) },
		{
			heading: "Good to know",
			lines: [
				...backWords(measure),
				...narrowingWords(plan.ends),
				...eitherWords(measure),
				...sataWords(measure),
				...buriedWords(plan.placed),
				...uplinkWords(measure),
				...laterWords(measure),
			],
		},
	].filter(({ lines }) => lines.length > 0);
}

/** "Dart in M2_1: 4 lanes of PCI Express 4, 7 GB/s, all it can use." */
function placedWords(placed: PlacedDevice): string {
	const { device, connector, link, extra } = placed;
	const width =
		link.lanes === null
			? ""
			: `${lanesWords(link.lanes, device.lanes)}${link.generation === null ? "" : ` of PCI Express ${link.generation}`}`;
	const speed =
		link.gbytesPerS === null || (device.gbytesPerS ?? 1) < littleGbytesPerS
			? ""
			: device.gbytesPerS === null || roundToHundredth(device.gbytesPerS) === roundToHundredth(link.gbytesPerS)
				? `${roundToHundredth(link.gbytesPerS)} GB/s, all it can use`
				: `${roundToHundredth(link.gbytesPerS)} of the ${roundToHundredth(device.gbytesPerS)} GB/s it can use`;
	const told = [width, speed].filter(Boolean);
	return [
		`${capital(called(device.name))} in ${connector.name}${told.length > 0 ? `: ${told.join(", ")}` : ""}.`,
		narrowedWords(placed),
		extra === null ? "" : `It needs ${article(extra)}, bought besides.`,
	]
		.filter(Boolean)
		.join(" ");
}

/** A thing that moves less than this, in GB/s, is slowed by no place (PCI Express 1.0 x1 carries 0.25). */
const littleGbytesPerS = 0.1;

/** "4 lanes", "8 of its 16 lanes". */
function lanesWords(lanes: number, of: number | null): string {
	if (of !== null && lanes < of) return `${lanes} of its ${of} lanes`;
	return `${lanes} ${lanes === 1 ? "lane" : "lanes"}`;
}

/** Why a thing has fewer lanes than its connector could give it; empty where it has all it can use. */
function narrowedWords({ device, connector, link, lanes, narrowedBy }: PlacedDevice): string {
	if (link.lanes === null || device.lanes === null || link.lanes >= device.lanes) return "";
	if (narrowedBy.length > 0)
		return `${capital(listed(narrowedBy.map(called)))} ${narrowedBy.length > 1 ? "take" : "takes"} the other lanes.`;
	return lanes < (connector.wiredLanes ?? 0)
		? "This processor gives the slot no more."
		: connector.wiredLanes === null
			? ""
			: `This ${connector.kind === "M.2 socket" ? "socket" : "slot"} has no more.`;
}

function memoryWords({ memory }: PlanMeasure): readonly string[] {
	if (!memory) return [];
	const { modules, slots } = memory;
	const module = modules === 1 ? "1 module" : `${modules} modules`;
	if (!slots) return [`Memory, ${module}: the board's manual says which slots to fill.`];
	const empty = slots.empty?.length
		? `; ${listed(slots.empty)} ${slots.empty.length === 1 ? "stays" : "stay"} empty`
		: "";
	return [`Memory, ${module}: in ${listed(slots.fill)}${empty}.`];
}

/** Things without a place, those of one cause together. */
function blockedAlike(measure: PlanMeasure): readonly { readonly names: string[]; readonly why: string }[] {
	const byCause: { readonly names: string[]; readonly why: string }[] = [];
	for (const blocking of measure.blocking) {
		const why = blockingWords(blocking, measure);
		const known = byCause.find((one) => one.why === why);
		if (known) known.names.push(called(blocking.device.name));
		else byCause.push({ names: [called(blocking.device.name)], why });
	}
	return byCause;
}

/** "6 drives want such a port, and 4 can be used. S5 and S6 do not work while Dart is in M1." */
function blockingWords({ device, wanted, ends }: Blocking, measure: PlanMeasure): string {
	const { many, noun } = nounsOf(device.kind);
	if (ends.length === 0) return noPlaceWords(device, noun);
	const free = ends.filter(({ state }) => state === "free").map(({ connector }) => connector.name);
	const usable = ends.filter(({ state }) => state === "used").length + free.length;
	const count = `${wanted} ${wanted === 1 ? many.one : many.several} such ${article(noun)}, and ${
		usable === 0 ? "none can be used" : `${usable} can be used`
	}`;
	const closed =
		free.length > 0 && isCard(device)
			? `${listed(free)} ${free.length > 1 ? "are" : "is"} free, but the case has no opening there, or the lanes are too few.`
			: "";
	return [`${count}.`, ...lostWords(ends, measure), closed].filter(Boolean).join(" ");
}

/** Why no connector of the board takes it, even with nothing else there. */
function noPlaceWords(device: Device, noun: string): string {
	if ("bus" in device && device.bus === "PCI") return "it needs a slot of the old kind (PCI), and the board has none.";
	if (device.kind === "drive" && device.drive.link === "IDE")
		return "it has an old plug (IDE), and the board has no port for it.";
	if (device.kind === "M.2 drive" && device.drive.link === "SATA")
		return "no M.2 socket here is known to take SATA drives.";
	return `the board has no ${noun} that it goes into.`;
}

/** More ways than this, and ways of more kinds of things, are counted and not told. */
const [mostWaysTold, mostKindsTold] = [4, 2];

/** "Without Chime all the rest fits." A line a way. */
function wayToFitWords(ways: readonly WayToFit[]): readonly string[] {
	const short = ways.filter(({ without }) => without.length <= mostKindsTold);
	const told = short.slice(0, mostWaysTold);
	const more = ways.length - told.length;
	const fewest = Math.min(...ways.map(({ without }) => without.reduce((sum, { count }) => sum + count, 0)));
	if (ways.length > 0 && told.length === 0)
		return [`At least ${fewest} things would have to go so that the rest fits.`];
	return [
		...told.map(({ without, extras }) => {
			const besides = extras.length > 0 ? ` That needs ${listed(extras.map(article))} besides.` : "";
			return `Without ${without.map(goingWords).join(" and without ")} all the rest fits.${besides}`;
		}),
		...(more > 0 ? [`There ${more === 1 ? "is 1 more way" : `are ${more} more ways`} to make the rest fit.`] : []),
	];
}

/** "Dart and Mouse", "one of Dart and Mouse", "one of the 5 older drives". */
function goingWords({ alike, count }: Going): string {
	const names = alike.map(({ name }) => called(name));
	if (count === names.length) return listed(names);
	const stems = new Set(names.map((name) => name.replace(/ \d+$/, "")));
	const [stem] = stems;
	const all = stems.size === 1 && stem !== names[0] ? `the ${names.length} ${stem}s` : listed(names);
	return `${count === 1 ? "one" : count} of ${all}`;
}

/** More names than this are counted. */
const mostNamesTold = 4;

function unsureWords({ mayLackPlace, missing }: PlanMeasure): readonly string[] {
	if (mayLackPlace.length === 0) return [];
	const names = withRuns(mayLackPlace.map(({ name }) => called(name)));
	const footnotes = missing.includes("board.sharing")
		? " Look on the board's page for the footnotes about shared lanes."
		: "";
	return [
		names.length > mostNamesTold
			? `Whether all find a place is not known for ${mayLackPlace.length} things, ${names[0]} among them.${footnotes}`
			: `Whether there is a place is not known for: ${listed(names)}.${footnotes}`,
	];
}

/** What cannot be used now, one sentence for all that have one cause. */
function lostWords(ends: readonly ConnectorEnd[], { plan, processorName }: PlanMeasure): readonly string[] {
	const byCause = new Map<string, { readonly end: ConnectorEnd; readonly names: string[] }>();
	for (const end of ends) {
		if (end.state !== "off" && end.state !== "covered" && end.state !== "dead") continue;
		const key = JSON.stringify([end.state, end.by, end.connector.kind === "drive port"]);
		const known = byCause.get(key);
		if (known) known.names.push(end.connector.name);
		else byCause.set(key, { end, names: [end.connector.name] });
	}
	return [...byCause.values()].map(({ end: { state, by, connector }, names }) => {
		const several = names.length > 1;
		const causes = [...new Set(by)].map(called);
		if (state === "dead")
			return `${listed(withRuns(names))} ${several ? "do" : "does"} not work with ${processorName ?? "this processor"}.`;
		if (state === "covered")
			return connector.kind === "drive port"
				? `No plug goes into ${listed(withRuns(names))}: ${listed(causes)} ${causes.length > 1 ? "lie" : "lies"} over ${several ? "them" : "it"}.`
				: `${listed(withRuns(names))} ${several ? "are" : "is"} covered by ${listed(causes)}.`;
		const where = causes.map((name) => {
			const [at, ...others] = plan.placed.filter(({ device }) => called(device.name) === name);
			// Of two alike the plan tells which by their places only, so no place is named that may be the other's.
			if (others.length > 0) return `the ${name} that shares its lanes is plugged in`;
			return at === undefined ? name : `${name} is in ${at.connector.name}`;
		});
		return `${listed(withRuns(names))} ${several ? "do" : "does"} not work while ${listed(where)}.`;
	});
}

const kindHeadings = { "card slot": "Card slots", "M.2 socket": "M.2 sockets", "drive port": "Drive ports" } as const;

/** "Card slots: X4 and X5.", a line a kind. */
function freeWords(ends: readonly ConnectorEnd[]): readonly string[] {
	return (["card slot", "M.2 socket", "drive port"] as const).flatMap((kind): readonly string[] => {
		const free = ends.filter(({ state, connector }) => state === "free" && connector.kind === kind);
		const names = free.map(({ connector, lanes }) => {
			const isNarrower = kind !== "drive port" && lanes < (connector.wiredLanes ?? 0);
			if (connector.kind === "card slot" && connector.bus === "PCI") return `${connector.name} (of the old kind, PCI)`;
			return isNarrower ? `${connector.name} (${lanes} of ${connector.wiredLanes} lanes)` : connector.name;
		});
		return names.length > 0 ? [`${kindHeadings[kind]}: ${listed(withRuns(names))}.`] : [];
	});
}

function backWords({ hasPlugsOnBack }: PlanMeasure): readonly string[] {
	return hasPlugsOnBack
		? ["The cable plugs are on the other side of this board. Lay the cables, screw it in, then plug them from behind."]
		: [];
}

/** What can still be used, and would take lanes from what is used. */
function narrowingWords(ends: readonly ConnectorEnd[]): readonly string[] {
	return ends
		.filter(({ state }) => state === "narrows")
		.map(
			({ connector, by }) =>
				`Whatever goes into ${connector.name} takes lanes from ${listed([...new Set(by)].map(called))}.`,
		);
}

/** Free connectors of a group of which nothing is used yet: taking one costs the others. */
function eitherWords({ problem: { groups, connectors }, plan: { ends } }: PlanMeasure): readonly string[] {
	return groups.flatMap(({ members, modes }): readonly string[] => {
		const isUntouched = members.every((member) => ends[member]?.state === "free");
		const isAllOn = modes.some((on) => members.every((member) => on.has(member)));
		if (!isUntouched || isAllOn) return [];
		const ways = modes.map((on) => listed(withRuns([...on.keys()].map((member) => connectors[member]?.name ?? ""))));
		return [`Free, but not all at once: either ${ways.join(" or ")}.`];
	});
}

/** Free M.2 sockets that switch others off only while a SATA drive is in them. */
function sataWords({ problem: { groups, connectors }, plan: { ends } }: PlanMeasure): readonly string[] {
	return groups.flatMap(({ members, withoutSata }): readonly string[] => {
		const sockets = withoutSata?.sockets.filter((socket) => ends[socket]?.state === "free") ?? [];
		const others = members.filter((member) => !withoutSata?.sockets.includes(member) && ends[member]?.state === "free");
		if (sockets.length === 0 || others.length === 0) return [];
		const named = (places: readonly number[]) => listed(withRuns(places.map((place) => connectors[place]?.name ?? "")));
		return [`A SATA drive in ${named(sockets)} would switch ${named(others)} off; a faster one would not.`];
	});
}

function buriedWords(placed: readonly PlacedDevice[]): readonly string[] {
	return placed
		.filter(({ isBuried }) => isBuried)
		.map(
			({ device, connector, buriedBy }) =>
				`${capital(device.name)} in ${connector.name} lies under ${listed(buriedBy.map(called))}. It works, only warmer; to reach it the card must come out.`,
		);
}

/** What hangs on the chipset against its link, as numbers. */
function uplinkWords({ uplink, problem }: PlanMeasure): readonly string[] {
	const { wantedGbytesPerS: wanted, carriesGbytesPerS: carries, devices, unrated } = uplink;
	if (devices.length === 0) return [];
	const places = problem.connectors.filter((one) => devices.some(({ connector }) => connector === one));
	const names = withRuns(places.map(({ name }) => name));
	const who = names.length > mostNamesTold ? `${places.length} things on the chipset` : listed(names);
	const isAlone = devices.length === 1;
	// One thing that is carried, or of which nobody can tell, needs no words.
	if (isAlone && (carries === null || wanted <= carries)) return [];
	const link = `the chipset's link to the processor${carries === null ? "" : `, ${roundToHundredth(carries)} GB/s`}`;
	const use = `${who} ${isAlone ? "uses" : "share"} ${link}.`;
	if (wanted === 0) return [`${use} How much they move is not known.`];
	const atOnce = isAlone ? "It could move" : "All at once they could move";
	const count = `${atOnce} ${unrated.length > 0 ? "at least " : ""}${roundToHundredth(wanted)} GB/s`;
	if (carries === null) return [`${use} ${count}; what the link carries is not known.`];
	if (wanted > carries)
		return [`${use} ${count}, so ${isAlone ? "it would be slowed" : "they would slow each other down"}.`];
	return [`${use} ${count}${unrated.length > 0 ? "" : ", and the link carries that"}.`];
}

function laterWords({ later: { wanted, fewest, most } }: PlanMeasure): readonly string[] {
	if (wanted === 0) return [];
	if (wanted === 1) {
		if (fewest !== most) return ["Whether the one thing named for later finds a place is not known."];
		return [`The one thing named for later ${most === 1 ? "finds a place" : "would find no place"}.`];
	}
	const count = fewest === most ? String(most) : `between ${fewest} and ${most}`;
	return [`Of ${wanted} drives and cards named for later ${count} would find a place.`];
}

function nounsOf(kind: Blocking["device"]["kind"]) {
	if (kind === "M.2 drive") return { noun: "M.2 socket", many: { one: "M.2 drive wants", several: "M.2 drives want" } };
	return kind === "drive"
		? { noun: "port", many: { one: "drive wants", several: "drives want" } }
		: { noun: "card slot", many: { one: "card wants", several: "cards want" } };
}

/** What has no name of its own yet wants an article. */
function called(name: string): string {
	return name === "graphics card" ? `the ${name}` : name;
}

function article(extra: string): string {
	return `${/^([aeiou]|M\.)/.test(extra) ? "an" : "a"} ${extra}`;
}
