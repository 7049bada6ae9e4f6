import type { Plan } from "../plan/plan.ts";
import { markupSafe } from "./markup-safe.ts";
import {
	type BesideConnectors,
	type DrawnConnector,
	type DrawnPlan,
	drawnPlan,
	endWords,
	legend,
	memoryItems,
	packed,
	shortened,
} from "./plan-picture.ts";

/** Sizes in units of the viewBox; one line of text is as high as a line. */
const wide = 640;
/** Close, so that a whole board and the list of steps go onto one sheet of paper. */
const lineHigh = 18;
const margin = 10;
/** Where a line's parts begin, from the left. */
const [shapeLeft, nameLeft, endLeft] = [62, 240, 370];
const slotLong = 160;
/** Columns of text that go in, at 7.5 units a character. */
const [nameRoom, endRoom, belowRoom] = [16, 33, 78];

/** Nothing can go in. */
const closedStates: readonly DrawnConnector["state"][] = ["off", "covered", "dead"];

/** What the shapes stand for, in words, since a legend of shapes would need a picture of its own. */
const legendSigns = {
	slot: "long box = card slot, as long as its edge",
	oldSlot: "half-long box = slot of the old kind (PCI)",
	socket: "round box = M.2 socket",
	filled: "grey bar = rows that one thick card fills",
} as const;

/**
 * A plan as an SVG that stands alone: the board from above, its back edge at the left. Drawn in the colour of the text
 * around it, so that it works on light and dark.
 *
 * @param title what the picture is of, for whoever hears it read.
 */
export function planPictureSvg(plan: Plan, title: string, beside: BesideConnectors = {}): string {
	const drawn = drawnPlan(plan, beside);
	const parts: string[] = [];
	let top = margin + lineHigh;
	if (drawn.screenCable !== null) {
		parts.push(textAt(margin + 10, top, shortened(`screen cable: ${drawn.screenCable}`, belowRoom)));
		top += lineHigh;
	}
	const bands = drawn.rows.map(({ row, connectors, filledBy }) => {
		const band = { top, filledBy, high: Math.max(1, connectors.length) * lineHigh };
		parts.push(textAt(margin + 10, top, String(row)));
		connectors.forEach((one, index) => {
			parts.push(...connectorParts(one, top + index * lineHigh));
		});
		top += band.high;
		return band;
	});
	parts.push(...cardParts(bands));
	const below = drawn.below.map((one) => shortened(`${one.name}: ${endWords(one, 40)}`, belowRoom));
	for (const line of packed(below, belowRoom)) {
		parts.push(textAt(margin + 10, top, line));
		top += lineHigh;
	}
	if (drawn.chipset !== null) {
		parts.push(textAt(margin + 10, top, shortened(`chipset: ${drawn.chipset}`, belowRoom)));
		top += lineHigh;
	}
	const high = top + margin;
	const isShut = [...drawn.rows.flatMap(({ connectors }) => connectors)].some(({ state }) =>
		closedStates.includes(state),
	);
	const signs = [...legend(drawn, legendSigns), ...(isShut ? ["dashed = nothing can go in"] : [])];
	const words = packed(signs, belowRoom);
	const plugs = drawn.processorPlugs === null ? "" : `, plugs ${drawn.processorPlugs}`;
	const memory = drawn.memory ? `, ${memoryItems(drawn.memory).join("; ")}` : "";
	return [
		`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${wide} ${high + margin + words.length * lineHigh}" role="img" fill="none" stroke="currentColor" font-family="monospace" font-size="12">`,
		`<title>${markupSafe(title)}</title>`,
		`<desc>${markupSafe(inWords(drawn))}</desc>`,
		`<rect x="${margin}" y="${margin}" width="${wide - 2 * margin}" height="${high - margin}" rx="4"/>`,
		textAt(margin + 10, margin, shortened(`processor${plugs}${memory}`, belowRoom)),
		...parts,
		...words.map((line, index) => textAt(margin, high + index * lineHigh, line)),
		"</svg>",
	].join("\n");
}

/** A slot as a box as long as its edge, a socket as a small round one; dashed where nothing can go in. */
function connectorParts(one: DrawnConnector, top: number): readonly string[] {
	const long =
		one.shape === "slot" && one.sizeLanes === 0
			? slotLong / 2
			: one.shape === "slot"
				? 24 + (Math.min(16, one.sizeLanes) / 16) * (slotLong - 24)
				: 44;
	const left = one.shape === "slot" ? shapeLeft : shapeLeft + 24;
	const dashes = closedStates.includes(one.state) ? ' stroke-dasharray="3 3"' : "";
	return [
		`<rect x="${left}" y="${top + 4}" width="${long}" height="10" rx="${one.shape === "slot" ? 1 : 5}"${dashes}/>`,
		textAt(nameLeft, top, shortened(one.name, nameRoom)),
		textAt(endLeft, top, endWords(one, endRoom)),
	];
}

/** A bar down all the rows that a thick card fills. */
function cardParts(
	bands: readonly { readonly top: number; readonly high: number; readonly filledBy: string | null }[],
): readonly string[] {
	return bands.flatMap(({ top, high, filledBy }, index) => {
		if (filledBy === null || bands[index - 1]?.filledBy === filledBy) return [];
		const after = bands.slice(index).findIndex((band) => band.filledBy !== filledBy);
		const last = bands.at(after < 0 ? -1 : index + after - 1) ?? { top, high };
		return [
			`<rect x="42" y="${top + 3}" width="10" height="${last.top + last.high - top - 6}" fill="currentColor" fill-opacity="0.4"/>`,
		];
	});
}

function textAt(left: number, top: number, words: string): string {
	return `<text x="${left}" y="${top + 13}" fill="currentColor" stroke="none">${markupSafe(words)}</text>`;
}

/** "Row 1: X16: Carousel. Row 2, filled by Carousel." */
function inWords({ rows, below, memory, chipset, processorPlugs, screenCable }: DrawnPlan): string {
	const one = (connector: DrawnConnector) => `${connector.name}: ${endWords(connector, Number.POSITIVE_INFINITY)}`;
	return [
		"The board from above, its back edge at the left, the processor at the top.",
		...(processorPlugs === null ? [] : [`The processor's own plugs: ${processorPlugs}.`]),
		...(screenCable === null ? [] : [`The screen's cable goes ${screenCable}.`]),
		...(memory ? [`Beside it ${memoryItems(memory).join("; ")}.`] : []),
		...rows.map(({ row, connectors, filledBy }) => {
			const filled = filledBy === null ? "" : `, filled by ${filledBy}`;
			return `Row ${row}${filled}${connectors.length > 0 ? `: ${connectors.map(one).join("; ")}` : ""}.`;
		}),
		...(chipset === null ? [] : [`The chipset: ${chipset}.`]),
		...(below.length > 0 ? [`Elsewhere: ${below.map(one).join("; ")}.`] : []),
	].join(" ");
}
