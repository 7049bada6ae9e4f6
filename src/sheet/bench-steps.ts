import type { BuildFinding } from "../choose/judge.ts";
import type { Board } from "../parts/board.ts";
import type { BuildFacts } from "../parts/build.ts";
import { measurePlan, type PlanMeasure } from "../plan/measure-plan.ts";
import { type Caution, cautions } from "../reference/cautions.ts";
import { type SourceId, sourceById } from "../reference/sources.ts";
import { boardPictureSockets } from "../rules/board-picture-sockets.ts";
import { findingAdvice, findingWords } from "../rules/finding-words.ts";
import type { Finding } from "../rules/outcome.ts";
import { capital, listed, withCounts } from "./listed.ts";
import type { SheetStep } from "./sheet.ts";
import { groundWords } from "./source-words.ts";

/** What is known on the day of building: the board where one leads, what was found of it, and of the parts. */
export interface BenchFacts {
	readonly board: Board | null;
	readonly findings: readonly Finding[];
	readonly buildFindings: readonly BuildFinding[];
	readonly facts: BuildFacts;
}

/** A step, and the cautions it carries, which then stand nowhere else on the page. */
interface Step {
	readonly label: string;
	readonly text: string;
	readonly carries?: readonly Caution["id"][];
	/** Where its ground is another one than common practice. */
	readonly source?: SourceId;
}

/** The steps of building and of the first start, in order; and the cautions that no step carries. */
export function benchSteps(bench: BenchFacts): {
	readonly steps: readonly SheetStep[];
	readonly otherCautions: readonly Caution[];
} {
	const measure = bench.board ? measurePlan(bench.board, bench.facts) : null;
	const isStopped = bench.buildFindings.some(({ certain, finding }) => certain && finding.verdict === "does-not-fit");
	const firmware = firmwareSteps(bench.findings);
	const steps: readonly Step[] = [
		...(isStopped
			? [
					{
						label: "Not yet",
						text: "Your parts disagree, as the first page says. Build nothing before that is settled.",
					},
				]
			: []),
		{
			label: "Safe hands",
			text: "Mains plug out before the case is opened. Touch bare metal of the case before each part; hold boards by the edge. Never open a power supply: it stays charged. Wall sockets are work for a licensed electrician.",
			carries: ["static", "mains"],
		},
		{
			label: "Processor",
			text: "Touch no contacts. Lay it in mark on mark, without force. Keep the socket's cover.",
			carries: ["contacts"],
		},
		{ label: "Memory", text: memoryText(measure) },
		{
			label: "Into the case",
			text: `A loose shield first. A standoff under every hole and nowhere else: it can short the board.${standoffText(bench.findings)}`,
			carries: ["standoffs"],
			source: "microatx-1.2",
		},
		{ label: "Cooler", text: coolerText(measure) },
		{
			label: "Supply cables",
			text: `${powerText(bench.board)} Graphics plugs look alike and are wired otherwise. Only cables of this very supply: others can destroy drives.${plugAdvice(bench.findings)}`,
			carries: ["cables"],
		},
		{
			label: "Front pins",
			text: "Button and lamps, as the manual draws them. A lamp turned round only stays dark.",
		},
		...lightSteps(measure),
		{
			label: "Drives, cards",
			text: "As drawn. Each M.2 stick under its screw; a card until its latch clicks, then its own power plugs.",
		},
		{ label: "Screen cable", text: screenText(bench) },
		{
			label: "On a stick",
			text: "Network driver and firmware file: a fresh system may find no network.",
		},
		...firmware,
		{
			label: "First start",
			text: firstStartText(bench.buildFindings, firmware.length > 0),
			carries: ["dark-first-start"],
		},
		{
			label: "Then",
			text: "If setup shows all memory and drives, switch on the memory profile, not before.",
		},
		{
			label: "If it stays dark later",
			text: "Reset the settings: its button if it has one, or, mains plug out, the manual's jumper.",
			carries: ["reset"],
		},
	];
	const carried = new Set(steps.flatMap(({ carries = [] }) => carries));
	return {
		steps: steps.map(({ label, text, source = "common-practice" }) => ({
			label,
			text,
			ground: groundWords(sourceById(source)),
		})),
		otherCautions: cautions.filter(
			({ id }) => !carried.has(id) && !(id === "lights" && bench.facts.lights?.length === 0),
		),
	};
}

/** "Press the 2 modules into A2 and B2 until both ends click." */
function memoryText(measure: PlanMeasure | null): string {
	const memory = measure?.memory ?? null;
	const slots = memory?.slots?.fill ?? [];
	if (memory === null || slots.length === 0)
		return "Press the modules in until both ends click, in the slots that the manual's drawing names.";
	const modules = memory.modules === 1 ? "module" : `${memory.modules} modules`;
	return `Press the ${modules} into ${listed(slots)} until both ends click.`;
}

/** Which standoffs of the case must come out first for this board, where that is known. */
function standoffText(findings: readonly Finding[]): string {
	const found = findings.find(({ ruleId, severity }) => ruleId === "fit/standoffs" && severity);
	return found ? ` ${findingWords(found)}` : "";
}

/** Cooler and pump by the names of their headers. */
function coolerText(measure: PlanMeasure | null): string {
	const plugs = (measure?.headers.placed ?? []).filter(
		({ wish }) => !wish.isLater && (wish.kind === "pump" || wish.kind === "cooler fan"),
	);
	const film = "Film off its plate first. Heat paste on the processor, unless the plate has it.";
	if (plugs.length === 0)
		return `${film} Plug its fan into the header marked for the processor; a pump has one of its own.`;
	return `${film} ${plugs.map(({ wish, header }) => `${capital(wish.name)} on ${header}.`).join(" ")}`;
}

/** The board's own power plugs. */
function powerText(board: Board | null): string {
	const plugs = withCounts(board?.power?.processorPlugs ?? []);
	return plugs.length > 0
		? `The 24-pin plug, and for the processor ${listed(plugs)}.`
		: "The 24-pin plug, and the processor plug near the socket.";
}

/** What the board's plugs ask of a supply that has others. */
function plugAdvice(findings: readonly Finding[]): string {
	return findings
		.filter(({ ruleId, verdict, severity }) => ruleId === "fit/power-plugs" && verdict === "fits" && severity)
		.map((finding) => ` ${[findingWords(finding), findingAdvice(finding) ?? ""].join(" ").trim()}`)
		.join("");
}

function lightSteps(measure: PlanMeasure | null): readonly Step[] {
	const { placed = [], sharing = [], without = [], unknown = [] } = measure?.headers ?? {};
	const wishes = [...placed, ...sharing, ...unknown].map(({ wish }) => wish).concat(without);
	if (!wishes.some(({ kind, isLater }) => kind.endsWith("lights") && !isLater)) return [];
	return [
		{
			label: "Lights",
			text: "Three pins are 5 V, four pins are 12 V. In the wrong header lights are destroyed.",
			carries: ["lights"],
		},
	];
}

/** Into which socket the screen's cable goes, by name, and where a plain one does not do. */
function screenText(bench: BenchFacts): string {
	const {
		board,
		facts: { graphicsCard },
	} = bench;
	if (graphicsCard.state === "have")
		return `Into the ${graphicsCard.part.name}, not into the board: the board's own sockets stay dark.${activeWords(ofCard(bench))}`;
	const sockets = boardPictureSockets(board?.pictureSockets, board?.rearUsb);
	const onBoard =
		sockets.length > 0
			? `Into ${[...new Set(sockets)].join(" or ")} at the back of the board.`
			: "Into the board's back.";
	if (graphicsCard.state === "none") return `${onBoard}${activeWords(ofBoard(bench))}`;
	return "With a graphics card into the card, not into the board. Without one into the board's back.";
}

/** From which socket of the card to which plug of a screen only an active adapter brings a picture, as the plan says. */
function ofCard({ buildFindings }: BenchFacts): readonly string[] {
	const found = buildFindings.find(({ finding }) => finding.ruleId === "build/screens-on-card")?.finding;
	return found?.messageId === "active" ? namesIn(found, "adapters") : [];
}

/** The same of the board's own sockets. */
function ofBoard({ findings }: BenchFacts): readonly string[] {
	const found = findings.find(({ ruleId }) => ruleId === "fit/picture");
	if (found?.messageId === "vga") return namesIn(found, "socket").map((socket) => `${socket} to VGA`);
	return found?.messageId === "otherShape" ? namesIn(found, "active") : [];
}

function namesIn({ data }: Finding, key: string): readonly string[] {
	const value = data[key];
	return Array.isArray(value) ? value.map(String) : value === undefined ? [] : [String(value)];
}

function activeWords(adapters: readonly string[]): string {
	return adapters.length === 0 ? "" : ` Use an active adapter for ${listed(adapters)}: with a plain one it stays dark.`;
}

/**
 * Firmware first, where the processor needs a newer one to start or to be safe. An update takes power, so the mains come on
 * before it, with nobody's hands inside.
 */
function firmwareSteps(findings: readonly Finding[]): readonly Step[] {
	const steps = updatesIn(findings);
	return steps.length === 0
		? []
		: [
				{
					label: "Mains on",
					text: "Hands out of the case. Mains plug in, the supply's switch to I. Before hands go in again: switch to 0, mains plug out.",
				},
				...steps,
			];
}

function updatesIn(findings: readonly Finding[]): readonly Step[] {
	return findings
		.filter(({ ruleId, verdict, severity }) => ruleId === "fit/generation" && verdict === "fits" && severity)
		.flatMap((finding): Step[] => {
			const advice = findingAdvice(finding);
			return advice ? [{ label: "Firmware", text: `${findingWords(finding)} ${advice}`, carries: ["update"] }] : [];
		});
}

/** How long the screen may stay dark with this memory; plain, before any memory profile. */
function firstStartText(buildFindings: readonly BuildFinding[], hasMains: boolean): string {
	const found = buildFindings.find(({ finding, certain }) => certain && finding.ruleId === "build/first-start");
	const on = hasMains
		? "With the mains on as before, the power button."
		: "Hands out of the case. Mains plug in, the supply's switch to I, then the power button.";
	// Where the mains are on since the update, that was said there.
	const off = hasMains ? "" : "Before hands go in again: switch to 0, mains plug out. ";
	const plain =
		"No memory profile yet. Switch off at once if it smells, smokes, sparks or leaks, or if no fan of the cooler turns.";
	return found
		? `${on} ${findingWords(found.finding)} Wait 15 minutes before you think it broken. ${off}${plain}`
		: `${on} The screen can stay dark for minutes, while the board tries out the memory: wait 15 minutes. ${off}${plain}`;
}
