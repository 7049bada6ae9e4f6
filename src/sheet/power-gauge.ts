import type { Interval } from "../maths/interval.ts";
import type { SteadyPower } from "../power/steady-power.ts";
import { comfortableC, holdingBackC } from "../reference/activity-loads.ts";
import { celsiusWords } from "./power-words.ts";

/** A range on a gauge, as far as it lies on the scale. In degrees C. */
export interface GaugeBar extends Interval {
	readonly name: string;
	/** The whole range in words. */
	readonly words: string;
	/** Whether it goes on past the end of the scale; both ends lie at the end where all of it does. */
	readonly goesOn: boolean;
}

/** What a gauge of the stages shows, however it is drawn. In degrees C. */
export interface PowerGauge {
	readonly from: number;
	readonly to: number;
	readonly lines: readonly { readonly at: number; readonly words: string }[];
	readonly bars: readonly GaugeBar[];
}

/** Ends of the scale are whole fives; it ends this far past the last line, in K (own convention). */
const [step, pastLastLine] = [5, 15];

/** The gauge of a board's stages: from the air around them to a bit past the line where boards hold back. */
export function powerGaugeOf({ airC, hotSpotC }: Pick<SteadyPower, "airC" | "hotSpotC">): PowerGauge {
	const from = Math.floor(Math.min(airC.low, hotSpotC.low) / step) * step;
	const to = holdingBackC + pastLastLine;
	const bar = (name: string, range: Interval): GaugeBar => ({
		name,
		words: celsiusWords(range),
		low: Math.min(to, range.low),
		high: Math.min(to, range.high),
		goesOn: range.high > to,
	});
	return {
		from,
		to,
		lines: [
			{ at: comfortableC, words: "at ease for years up to here" },
			{ at: holdingBackC, words: "boards hold the processor back" },
		],
		bars: [bar("air", airC), bar("hottest stage", hotSpotC)],
	};
}

/** Columns of the names at the left, with the space behind them. */
const nameColumns = 14;

/**
 * A gauge as text: what stands on the scale, the scale, and its figures under it.
 *
 * @param width most columns of a line; 40 at least
 * @returns lines of plain ASCII
 */
export function powerGauge(steady: Pick<SteadyPower, "airC" | "hotSpotC">, width = 60): readonly string[] {
	const gauge = powerGaugeOf(steady);
	const { from, to, lines, bars } = gauge;
	const last = width - nameColumns - 1;
	const columnOf = (celsius: number) => Math.round(((celsius - from) / (to - from)) * last);
	const marked = (signs: string[], sign: string) => {
		for (const { at } of lines) if (signs[columnOf(at)] === " " || sign === "+") signs[columnOf(at)] = sign;
		return signs.join("");
	};
	const row = (bar: GaugeBar) => {
		const [low, high] = [columnOf(bar.low), columnOf(bar.high)];
		const signs = Array.from({ length: last + 1 }, (_, at): string => (at < low || at > high ? " " : "="));
		if (bar.goesOn) signs[last] = ">";
		return `${bar.name.padEnd(nameColumns)}${marked(signs, ":")}`.trimEnd();
	};
	const scale = Array.from({ length: last + 1 }, () => "-");
	return [
		...bars.map(row),
		`${" ".repeat(nameColumns)}${marked(scale, "+")}`,
		`${" ".repeat(nameColumns)}${figuresUnder([from, ...lines.map(({ at }) => at), to], columnOf, last)}`,
		...bars.map(({ name, words }) => `${name}: ${words}`),
		...lines.map(({ at, words }) => `${at} degrees C: ${words}`),
	];
}

/** Each figure centred under its place, the last one ending with the scale; one that would touch another is left out. */
function figuresUnder(figures: readonly number[], columnOf: (celsius: number) => number, last: number): string {
	return figures.reduce((line, celsius) => {
		const text = String(celsius);
		const start = Math.min(last + 1 - text.length, Math.max(0, columnOf(celsius) - Math.floor(text.length / 2)));
		return line !== "" && start <= line.length ? line : `${line.padEnd(start)}${text}`;
	}, "");
}
