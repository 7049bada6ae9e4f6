import type { SteadyPower } from "../power/steady-power.ts";
import { markupSafe } from "./markup-safe.ts";
import { type GaugeBar, type PowerGauge, powerGaugeOf } from "./power-gauge.ts";

/** Sizes in units of the viewBox. */
const [wide, margin, lineHigh] = [640, 10, 26];
/** Where the scale begins and ends, from the left. */
const [scaleLeft, scaleRight] = [130, 610];
const barHigh = 10;

/**
 * The gauge of a board's stages as an SVG that stands alone. Drawn in the colour of the text around it, so that it works
 * on light and dark.
 *
 * @param steady null where nothing is known of the processor's watts; then it says so
 * @param title what the picture is of, for whoever hears it read
 */
export function powerGaugeSvg(steady: Pick<SteadyPower, "airC" | "hotSpotC"> | null, title: string): string {
	if (!steady) {
		const words = "Not known: how many watts the processor takes.";
		return svgOf(title, words, lineHigh + 2 * margin, [textAt(margin, margin, words)]);
	}
	const gauge = powerGaugeOf(steady);
	const { from, to, lines, bars } = gauge;
	const xOf = (celsius: number) => tenth(scaleLeft + ((celsius - from) / (to - from)) * (scaleRight - scaleLeft));
	const scaleTop = margin + bars.length * lineHigh;
	const figuresTop = scaleTop + 4;
	const wordsTop = figuresTop + lineHigh;
	const words = [
		...bars.map(({ name, words: range }) => `${name}: ${range}`),
		...lines.map(({ at, words: meaning }) => `${at} degrees C: ${meaning}`),
	];
	return svgOf(title, inWords(gauge), wordsTop + words.length * lineHigh + margin, [
		...bars.flatMap((bar, index) => barParts(bar, margin + index * lineHigh, xOf)),
		`<path d="M${scaleLeft} ${scaleTop}H${scaleRight}"/>`,
		...lines.map(({ at }) => `<path d="M${xOf(at)} ${margin}V${scaleTop + 4}" stroke-dasharray="4 3"/>`),
		...[from, ...lines.map(({ at }) => at), to].map((celsius) =>
			textAt(xOf(celsius), figuresTop, String(celsius), ' text-anchor="middle"'),
		),
		...words.map((line, index) => textAt(margin, wordsTop + index * lineHigh, line)),
	]);
}

/** A bar with its name at the left; an arrow where it goes on past the scale. */
function barParts(bar: GaugeBar, top: number, xOf: (celsius: number) => number): readonly string[] {
	const [left, right, middle] = [xOf(bar.low), xOf(bar.high), top + lineHigh / 2];
	// A range that is one figure is still a mark to be seen.
	const long = tenth(Math.max(2, right - left));
	const arrow = `<path d="M${scaleRight} ${middle - 8}L${scaleRight + 14} ${middle}L${scaleRight} ${middle + 8}Z" fill="currentColor"/>`;
	return [
		textAt(margin, top, bar.name),
		`<rect x="${left}" y="${middle - barHigh / 2}" width="${long}" height="${barHigh}" fill="currentColor" fill-opacity="0.4"/>`,
		...(bar.goesOn ? [arrow] : []),
	];
}

function inWords({ from, to, lines, bars }: PowerGauge): string {
	return [
		`A scale from ${from} to ${to} degrees C.`,
		...bars.map(({ name, words, goesOn }) => `The ${name}: ${words}${goesOn ? ", past the end of the scale" : ""}.`),
		...lines.map(({ at, words }) => `A line at ${at} degrees C: ${words}.`),
	].join(" ");
}

function svgOf(title: string, description: string, high: number, parts: readonly string[]): string {
	return [
		`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${wide} ${high}" role="img" fill="none" stroke="currentColor" font-family="monospace" font-size="12">`,
		`<title>${markupSafe(title)}</title>`,
		`<desc>${markupSafe(description)}</desc>`,
		...parts,
		"</svg>",
	].join("\n");
}

function textAt(left: number, top: number, words: string, more = ""): string {
	return `<text x="${left}" y="${top + 17}" fill="currentColor" stroke="none"${more}>${markupSafe(words)}</text>`;
}

function tenth(value: number): number {
	return Math.round(value * 10) / 10;
}
