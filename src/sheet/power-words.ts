import { exactly, type Interval } from "../maths/interval.ts";
import type { Board } from "../parts/board.ts";
import type { BuildFacts, Have, World } from "../parts/build.ts";
import { canonicalSocket } from "../parts/canonical-name.ts";
import type { Processor } from "../parts/processor.ts";
import { isTold } from "../parts/told-evidence.ts";
import { type Activity, type SessionLength, type Wants, wantTitles } from "../parts/wants.ts";
import type { Boost } from "../power/boost-of-processor.ts";
import { fullLoadWatts, type UseOfProcessor } from "../power/counted-watts.ts";
import { powerFactsOf, powerOfBuild } from "../power/power-facts.ts";
import type { StageLosses } from "../power/settled-stage.ts";
import type { Assumption } from "../power/stage-range.ts";
import type { PowerInputs, SteadyPower } from "../power/steady-power.ts";
import {
	activityLoad,
	clockRaise,
	comfortableC,
	holdingBackC,
	hottestToldC,
	sessionWords,
} from "../reference/activity-loads.ts";
import { cautions } from "../reference/cautions.ts";
import { type SourceId, sourceById } from "../reference/sources.ts";
import { roundToTenth } from "../rules/round-to-tenth.ts";
import { howToFindOut } from "./how-to-find-out.ts";
import { capital } from "./listed.ts";

/** All that is told of the power and heat of a board, in words, as a gauge and as JSON. */
export interface PowerTold {
	readonly inputs: PowerInputs;
	/** Null where nothing is known of the processor's watts. */
	readonly steady: SteadyPower | null;
	/** Facts that would narrow the temperature, the one that narrows it most first. */
	readonly narrowing: readonly string[];
	readonly processor: Have<Processor>;
	/** Where several processors are in question: with each of them, in a sentence. */
	readonly candidates: readonly { readonly name: string; readonly sentence: string }[];
}

export interface PowerSection {
	readonly heading: string;
	readonly lines: readonly string[];
}

/** What there is to tell of a board's power and heat for a build. @param worlds every way its open answers may turn out */
export function powerToldOf(board: Board, facts: BuildFacts, worlds: readonly World[] = []): PowerTold {
	const { steady, narrowing } = powerFactsOf(board, facts);
	return {
		inputs: { delivery: board.powerDelivery ?? {}, ...powerOfBuild(facts) },
		steady: steady ?? null,
		narrowing,
		processor: facts.processor,
		candidates: facts.processor.state === "have" ? [] : candidatesOf(board, worlds),
	};
}

/** Each processor that the open answers leave, with what the board makes of it; the first of several alike worlds. */
function candidatesOf(board: Board, worlds: readonly World[]): PowerTold["candidates"] {
	const byId = new Map<string, { readonly name: string; readonly sentence: string }>();
	for (const { facts } of worlds) {
		if (facts.processor.state !== "have" || byId.has(facts.processor.part.id)) continue;
		const { id, name, socket } = facts.processor.part;
		const isOther =
			socket !== undefined && board.socket !== undefined && canonicalSocket(socket) !== canonicalSocket(board.socket);
		const { steady } = powerFactsOf(board, facts);
		const sentence = isOther
			? "it does not go into this board's socket."
			: steady
				? powerSentence(steady, facts.sessionLength)
				: "how many watts it takes is not known.";
		byId.set(id, { name, sentence });
	}
	return [...byId.values()];
}

/** The verdict as one sentence or two. @param sessionLength how long heavy work lasts; unknown counts as all day */
export function powerSentence(steady: SteadyPower, sessionLength?: SessionLength | null): string {
	const { verdict, spareK, hotSpotC, beyondRating } = steady;
	const feeding = `${wattsWords(steady.watts)} ${sessionWords[sessionLength ?? "all-day"]}`;
	const isFar = hotSpotC.high > hottestToldC;
	const peak =
		beyondRating === "at the peak" ? " At the processor's peak each stage would carry more than its rating." : "";
	switch (verdict) {
		case "ample":
		case "enough":
			return `Feeds the ${wattsWords(steady.watts)} that count ${sessionWords[sessionLength ?? "all-day"]}, with ${spareDegrees(spareK)} to spare.`;
		case "tight": {
			if (hotSpotC.high <= comfortableC) return `Feeds ${feeding}, with ${spareDegrees(spareK)} to spare.${peak}`;
			if (hotSpotC.low <= comfortableC)
				return `Feeds ${feeding} without holding the processor back, but may get hot. It may have ${spareDegrees(exactly(spareK.high))} to spare or lack ${bareDegrees(-spareK.low)}.${peak}`;
			const past = spareK.high > -1 ? "" : `at least ${spareDegrees(exactly(-spareK.high))} `;
			const far = hotSpotC.high >= holdingBackC ? " It may hold the processor back." : "";
			return `Gets hot feeding ${feeding}: ${past}past the comfortable line.${far}${peak}`;
		}
		case "not enough": {
			const rating = beyondRating === "steadily" ? "Each stage would carry more than it is rated for." : "";
			const hot = hotSpotC.low >= holdingBackC ? `Cannot feed ${feeding}: it would hold the processor back.` : "";
			return [hot, rating].filter(Boolean).join(" ");
		}
		case "cannot tell": {
			const lack = isFar ? "be far past the comfortable line" : `lack ${bareDegrees(-spareK.low)}`;
			const may = `it may have ${spareDegrees(exactly(spareK.high))} to spare or ${lack}`;
			return isCounted(steady)
				? `Feeding ${feeding}, ${may}. Nobody can tell which.${peak}`
				: `Nobody has counted its stages, so the range is wide. ${capital(may)}.${peak}`;
		}
	}
}

/** Degrees to spare, rounded down: what is promised is there. */
function spareDegrees({ low, high }: Interval): string {
	return degreesWords({ low: Math.floor(low), high: Math.floor(high) });
}

function isCounted({ assumptions }: SteadyPower): boolean {
	return !assumptions.some(({ fact }) => fact === "board.powerDelivery.coreStages");
}

/** Power and heat in words: under each heading its sentences, the short parts first. Empty parts are left out. */
export function powerWords(told: PowerTold): readonly PowerSection[] {
	const { steady, inputs, narrowing } = told;
	if (!steady) return unknownWords(told);
	return [
		{ heading: "In short", lines: [powerSentence(steady, inputs.use.sessionLength), stageWords] },
		{ heading: "How warm it gets", lines: warmWords(steady, inputs.use) },
		{ heading: "What would tell more", lines: narrowing.flatMap(narrowingWords) },
		{ heading: "What counts", lines: countedWords(steady, inputs.use) },
		{
			heading: isTold(steady.measured?.test.where) ? "A measurement that was told" : "A published test",
			lines: measuredWords(steady, inputs),
		},
		{ heading: "What to look for in a published test", lines: testWords(steady) },
		{ heading: "What was assumed", lines: assumedWords(steady.assumptions) },
		{ heading: "One stage, term by term", lines: termWords(steady) },
		{ heading: "Keep in mind", lines: cautionWords },
	].filter(({ lines }) => lines.length > 0);
}

/** Headings of what a sheet of paper carries; the terms and assumptions behind it fill a page of their own. */
const headingsInShort = new Set([
	"In short",
	"How warm it gets",
	"What would tell more",
	"A published test",
	"A measurement that was told",
	"What to look for in a published test",
]);

/** The parts of powerWords that a person needs at the shop, and where the rest stands. */
export function powerWordsInShort(told: PowerTold, boardId: string): readonly PowerSection[] {
	const rest = `An estimate for choosing, no design calculation. What was assumed, term by term: boardwalk power ${boardId}`;
	return [
		...powerWords(told).filter(({ heading }) => headingsInShort.has(heading)),
		...(told.steady || told.candidates.length > 0 ? [{ heading: "How this was worked out", lines: [rest] }] : []),
	];
}

const stageWords =
	"Power stages are the small chips beside the socket that feed the processor. Here the hottest of them counts.";

const cautionWords: readonly string[] = [
	"All this is an estimate for choosing a board. It is no design calculation.",
	"Raising the clock can void the warranty and shorten the life of the parts.",
	...cautions.filter(({ id }) => id === "mains").map(({ text }) => text),
];

/** Where no watts are known: what is missing, and where to find it. */
function unknownWords({ processor, candidates }: PowerTold): readonly PowerSection[] {
	if (candidates.length > 0)
		return [
			{
				heading: "In short",
				lines: [...candidates.map(({ name, sentence }) => `With ${name}: ${sentence}`), stageWords],
			},
			{
				heading: "What would tell more",
				lines: ["Settle on one processor: then every figure can be told."],
			},
			{ heading: "Keep in mind", lines: cautionWords },
		];
	const has = processor.state === "have";
	const lines = has
		? ["processor.baseW", "processor.peakW", "processor.sustainedW"].flatMap(narrowingWords)
		: ["Answer the question about your processor: one processor, not several."];
	return [
		{
			heading: "In short",
			lines: [
				has
					? `How many watts ${processor.part.name} takes is not known. So nobody can tell how warm this board gets.`
					: "It is not settled which processor this board will feed. So nobody can tell how warm it gets.",
				stageWords,
			],
		},
		{ heading: "What would tell more", lines },
		{ heading: "Keep in mind", lines: cautionWords },
	];
}

function warmWords(steady: SteadyPower, { sessionLength }: UseOfProcessor): readonly string[] {
	const { airC, hotSpotC, spareK, watts } = steady;
	const duration = capital(sessionWords[sessionLength ?? "all-day"]);
	return [
		`Air at the stages, on a hot evening under load: ${celsiusWords(airC)}.`,
		`Hottest stage, feeding ${wattsWords(watts)}: ${celsiusWords(hotSpotC)}.`,
		`Up to ${comfortableC} degrees C a stage is at ease for years (common practice, no source).`,
		`At ${holdingBackC} degrees C boards hold the processor back (common practice, no source).`,
		...(hotSpotC.high >= holdingBackC
			? ["From there on boards slow the processor down, to protect themselves (common practice, no source)."]
			: []),
		`Up to the ${comfortableC} degrees: ${spareWords(spareK, hotSpotC)}.`,
		...holdWords(steady, duration),
	];
}

/** A range whose ends lie further apart than this tells a person nothing (own convention). */
const mostSpread = 6;

/** "For hours it surely feeds 94 W below 90 degrees": what holds whatever is not known; what may hold reads like a promise. */
function holdWords({ comfortableW, holdingBackW, ratedW }: SteadyPower, duration: string): readonly string[] {
	const rated = (range: Interval): Interval => ({
		low: Math.min(range.low, ratedW?.low ?? Number.POSITIVE_INFINITY),
		high: Math.min(range.high, ratedW?.high ?? Number.POSITIVE_INFINITY),
	});
	const [below, back] = [rated(comfortableW), rated(holdingBackW)];
	if (below.high > mostSpread * below.low)
		return [`${duration} it surely feeds ${Math.floor(below.low)} W. How much more is not known.`];
	const isCapped = ratedW !== null && ratedW.high < holdingBackW.high;
	return [
		`${duration} it surely feeds ${Math.floor(below.low)} W below ${comfortableC} degrees, and ${Math.floor(back.low)} W below ${holdingBackC}.`,
		...(isCapped ? ["More is past what its stages are rated for."] : []),
	];
}

function spareWords({ low, high }: Interval, hotSpotC: Interval): string {
	const isFar = hotSpotC.high > hottestToldC;
	if (low >= 0) return `${spareDegrees({ low, high })} to spare`;
	if (hotSpotC.low > hottestToldC) return "none to spare, and far past them";
	if (high < 0)
		return high > -1 ? "none to spare" : `none to spare, and ${spareDegrees(exactly(-high))} past them at least`;
	return `from ${spareDegrees(exactly(high))} to spare to ${isFar ? "far" : degreesWords(exactly(Math.ceil(-low)))} past them`;
}

/** A fact that would tell more, and where to find it. */
function narrowingWords(path: string): readonly string[] {
	const found = howToFindOut(path);
	if (found) return [`${found.what}: ${found.how}`];
	return Object.hasOwn(wantTitles, path)
		? [`${capital(wantTitles[path as keyof Wants])}: the long walk asks for it.`]
		: [];
}

const activityWords: Readonly<Record<Activity, string>> = {
	writing: "writing and the web",
	films: "films and music",
	games: "games",
	pictures: "editing photos or videos",
	building: "compiling, simulating or rendering",
	"sound-recording": "recording sound",
	"always-on": "staying on day and night",
};

const policyWords: Readonly<Record<NonNullable<UseOfProcessor["limitPolicy"]>, string>> = {
	fixed: "Its power limit is fixed: what it may take once, it may take without end.",
	"timed-boost": "Its power limit is timed: it may take its most for a short while only.",
	"lifted-by-board": "Boards often lift its power limit, so it may take its most without end.",
	"enforced-by-firmware": "Older firmware lets it take its most without end. Newer firmware may hold it back.",
};

function countedWords({ watts, boost }: SteadyPower, use: UseOfProcessor): readonly string[] {
	const { sustainedW, raisesClock, sessionLength } = use;
	return [
		`${wattsWords(watts)} count: what your processor takes ${sessionWords[sessionLength ?? "all-day"]} in your heaviest use.`,
		...(sessionLength ? [] : ["How long heavy work lasts is not known, so many hours count."]),
		...activityShareWords(use),
		...(sustainedW === undefined
			? []
			: [`Published for hours of full load: ${Math.round(sustainedW)} W. It counts more than the label.`]),
		...(raisesClock ? raisedWords : limitWords(use, boost)),
	];
}

const raisedWords: readonly string[] = [
	`You plan to raise its clock. That takes ${Math.round(100 * clockRaise.low)} to ${Math.round(100 * clockRaise.high)} W where it took 100 (from memory).`,
	"With its clock raised it holds what it takes without end.",
];

/** How the power limit behaves, and the boost at the start of heavy work. */
function limitWords({ sustainedW, limitPolicy }: UseOfProcessor, boost: Boost | null): readonly string[] {
	// Beside a figure for hours, a peak that is held without end would contradict it.
	const tellsBoost = boost !== null && (sustainedW === undefined || boost.seconds !== null);
	if (limitPolicy) return [policyWords[limitPolicy], ...(tellsBoost ? [boostWords(boost)] : [])];
	return sustainedW === undefined
		? ["How its power limit behaves is not known. So all from its label to its most counts."]
		: [];
}

/** What the named uses make of full load. */
function activityShareWords(use: UseOfProcessor): readonly string[] {
	const { activities } = use;
	if (!activities) return ["Nobody has said what the computer is for, so full load counts."];
	const [heaviest] = [...activities].sort((one, other) => activityLoad[other] - activityLoad[one]);
	const share = Math.max(activityLoad.writing, heaviest ? activityLoad[heaviest] : 0);
	const what = heaviest ? `The heaviest use you named: ${activityWords[heaviest]}.` : "You named no heavy use.";
	const full = fullLoadWatts(use);
	if (share >= 1 || !full) return [`${what} It counts as full load.`];
	const of = `about ${Math.round(100 * share)} of every 100 W of full load (from memory)`;
	return [`${what} It takes ${of}.`, `Full load would be ${wattsWords(full)}.`];
}

/** "It may take 253 W for the first 30 to 50 seconds, then it falls back to 125 W." */
function boostWords({ peakW, seconds, thenW, after }: Boost): string {
	const peak = `It may take ${Math.round(peakW)} W`;
	if (seconds === null || thenW === null) return `${peak} and hold that without end.`;
	const time = countWords(seconds, "second");
	const then = `${Math.round(thenW)} W`;
	return after === "falls back"
		? `${peak} for the first ${time}, then it falls back to ${then}.`
		: `${peak}. With newer firmware it may fall back to ${then} after ${time}.`;
}

const airWords = {
	still: "in still air",
	"case fans": "with case fans",
	"blown at": "with a fan blowing at the board",
} as const;

function measuredWords({ measured, hotSpotC }: SteadyPower, { delivery }: PowerInputs): readonly string[] {
	if (!measured) return [];
	const { test, estimateC, agrees } = measured;
	const others = (delivery.measurements?.length ?? 1) - 1;
	const wasTold = isTold(test.where);
	const [noun, nouns] = wasTold ? ["measurement", "measurements"] : ["test", "tests"];
	const long =
		test.minutes === undefined
			? "How long it ran is not told"
			: `It ran for ${countWords(exactly(test.minutes), "minute")}`;
	const air = test.airflow ? `, ${airWords[test.airflow]}` : "";
	const read = [test.where, test.date].filter((words) => words !== undefined);
	return [
		`${wasTold ? "The power stages had" : "It saw"} ${roundToTenth(test.stageC)} degrees C at ${roundToTenth(test.loadW)} W${test.measuredAt ? ` (${test.measuredAt})` : ""}.`,
		`${long}, in a room of ${roundToTenth(test.airC)} degrees C${air}.`,
		...(read.length === 0 ? [] : [wasTold ? `${capital(read.join(" on "))}.` : `Read in: ${read.join(", ")}.`]),
		...(others > 0
			? [
					`${others} more ${others === 1 ? `${noun} is` : `${nouns} are`} noted. This one is nearest to what counts here.`,
				]
			: []),
		`Without any ${noun} the estimate for your build is ${celsiusWords(estimateC)}. With it: ${celsiusWords(hotSpotC)}.`,
		agrees
			? `A ${noun} counts before the estimate. Here both can be right.`
			: `A ${noun} counts before the estimate. Here the two disagree, so the ${noun} is taken as right.`,
	];
}

/** Minutes after which stages and heat sinks are nearly as warm as they get (common practice, no source). */
const longTestMinutes = 30;

function testWords({ watts }: SteadyPower): readonly string[] {
	return [
		`A load of at least ${Math.round(watts.high)} W: that is the most that counts here.`,
		`At least ${longTestMinutes} minutes of load, since heat sinks warm up slowly.`,
		"The temperature of the room.",
		"Where the thermometer sat: on top of a stage is best. The back of the board reads lower.",
		"The air: still, moved by case fans, or blown right at the board.",
		"A picture with the heat sinks off, on which the marks on the stages can be read.",
	];
}

function assumedWords(assumptions: readonly Assumption[]): readonly string[] {
	if (assumptions.length === 0) return [];
	return [
		"No page gave these figures. Each lies somewhere in its range.",
		...assumptions.map(({ what, low, high, unit, because, source }) => {
			const range = unit === "" ? "either one" : `${figureRange({ low, high }, 3)}${unitWords[unit] ?? ` ${unit}`}`;
			return `${capital(what)}: ${range}. ${capital(because)} (${groundOf(source)}).`;
		}),
	];
}

/** Units that need more words than a table gives them. */
const unitWords: Readonly<Record<string, string>> = {
	"K/W a stage, bare, in still air": " degrees a watt, for one bare stage in still air",
	"of 200 ft/min, in the exponent": ", where 0 is still air and 1 is air at 1 m/s",
	"large sinks of a data sheet": " times the large heat sink that a data sheet shows",
	"low switches a stage": "",
};

/** What kind of ground a figure stands on. */
function groundOf(id: SourceId): string {
	const { kind, number, title } = sourceById(id);
	if (id === "own-convention") return "own convention";
	if (kind === "common practice") return "common practice, no source";
	return kind === "from memory" ? "from memory" : `data sheet ${number ?? title}`;
}

function termWords(steady: SteadyPower): readonly string[] {
	const { coolest, hottest, heatW, lossW, efficiency, kelvinPerWatt, measured, airC } = steady;
	const estimateC = measured?.estimateC ?? steady.hotSpotC;
	const hundred = ({ low, high }: Interval) => figureRange({ low: 100 * low, high: 100 * high });
	const isFar = estimateC.high > hottestToldC;
	const rests = !Number.isInteger(coolest.working) || (!isFar && !Number.isInteger(hottest.working));
	const ends = (range: Interval) => (isFar ? `${figure(range.low)} W or more` : `${figureRange(range)} W`);
	return [
		...(measured ? ["These terms are of the estimate alone, without the test."] : []),
		...oneStageWords("At the cool end", coolest),
		...(isFar
			? ["At the hot end it would be past every limit, so its terms tell nothing."]
			: oneStageWords("At the hot end", hottest)),
		...(rests ? ["Boards let some stages rest while little is asked for."] : []),
		`Heat in all stages: ${ends(heatW)}. Lost from the plug to the processor: ${ends(lossW)}.`,
		...(isFar ? [] : [`Of every 100 W that go in, ${hundred(efficiency)} W come out.`]),
		...rippleWords(steady.ripple),
		`Each watt of heat makes the stages ${figureRange(kelvinPerWatt)} degrees warmer than the air of ${celsiusWords(airC)}.`,
	];
}

/** The phases of the controller matter for what ripple is left, and for nothing else. */
function rippleWords({ coilA, leftAtOutput }: SteadyPower["ripple"]): readonly string[] {
	const coil = `The current in one coil goes up and down by ${figureRange(coilA)} A.`;
	if (leftAtOutput === null) return [coil];
	return [`${coil} At the output at most ${figure(Math.max(1, 100 * leftAtOutput.high))} per cent of that is left.`];
}

function oneStageWords(end: string, { amps, working, watts }: StageLosses): readonly string[] {
	const many = figure(working) === "1" ? "1 stage works" : `${figure(working)} stages work`;
	return [
		`${end} ${many}${Number.isInteger(working) ? "" : " on average"}, with ${figure(amps)} A in each.`,
		`Watts each loses there: ${watts.map(({ name, watts: lost }) => `${name} ${figure(lost)}`).join("; ")}.`,
	];
}

/** "140 W", "120 to 160 W". */
function wattsWords({ low, high }: Interval): string {
	return `${wholeRange(low, high)} W`;
}

/** "53 to 78 degrees C", "97 to far past 150 degrees C". */
export function celsiusWords({ low, high }: Interval): string {
	if (low > hottestToldC) return `far past ${hottestToldC} degrees C`;
	if (high > hottestToldC) return `${Math.round(low)} to far past ${hottestToldC} degrees C`;
	return `${wholeRange(low, high)} degrees C`;
}

/** "25 to 45 degrees", "1 degree", "less than 1 degree": differences of temperature, none of them negative. */
function degreesWords(range: Interval): string {
	return countWords(range, "degree");
}

/** What lacks, rounded up. */
function bareDegrees(value: number): string {
	return String(Math.max(1, Math.ceil(value)));
}

/** "30 to 50 seconds", "1 second", "less than 1 second". */
function countWords({ low, high }: Interval, noun: string): string {
	const [from, to] = [Math.round(low), Math.round(high)];
	if (to < 1) return `less than 1 ${noun}`;
	if (from === to) return `${to} ${noun}${to === 1 ? "" : "s"}`;
	return from < 1 ? `up to ${to} ${noun}${to === 1 ? "" : "s"}` : `${from} to ${to} ${noun}s`;
}

function wholeRange(low: number, high: number): string {
	const [from, to] = [Math.round(low), Math.round(high)];
	return from === to ? String(to) : `${from} to ${to}`;
}

function figureRange({ low, high }: Interval, digits = 2): string {
	const [from, to] = [figure(low, digits), figure(high, digits)];
	return from === to ? to : `${from} to ${to}`;
}

/** A result is no surer than two digits. */
function figure(value: number, digits = 2): string {
	return String(Number(value.toPrecision(digits)));
}
