import { seededDraws } from "../../src/maths/seeded-draws.ts";

/** Signs and words on which parsers turn. */
const tokens: readonly string[] = [
	..."1 2 4 8 16 0 -1 0.5 305 244 24,4 2280 6.400 1e9 9999999999999999999999 NaN x × * + - / : ; , . | ( ) [ ] { } < > & # % @ = ~ ' \" \\".split(
		" ",
	),
	..." \n|\r\n|\t|  |\u00a0|\u2009|\u2028|\ufeff|\u0000|\u0007|\u001b[31m|\u001b]0;t\u0007|\u009b2J|\u202e|\u200b|\ud800|\u{1f5a5}".split(
		"|",
	),
	..."USB 3.2 Gen 2x2 Gbps Type-C rear header PCIe 5.0 x16 x4 mode slot M.2 M2_1 Key M SATA DDR5 DIMM GB MHz MT/s".split(
		" ",
	),
	..."ATX mATX Mini-ITX mm cm Zoll W Socket Chipset Watt TDP GHz cores Kerne fan radiator front top if when and or bis zu".split(
		" ",
	),
	...'true false null {} [] "schema" "boardwalk/answers@2" "boardwalk/parts@1" "__proto__": "constructor" "part" "value"'.split(
		" ",
	),
	..."<table> <tr> <td> </td> <script> <!-- --> &nbsp; &#x41; &#999999999; <template <br>".split(" "),
	..."EUR USD JPY $ € yes no none ja nein --to --json -h -- =1+1 sep=; 2026-12-24 24.12.2026".split(" "),
];

/** Pieces that, said again and again, make a careless pattern slow. */
export const heavyPieces: readonly string[] = [
	...' |\t|1|12 |a|a |x |1 x |(|)|((|[|{|<|&|"|\'|,|;|:|.|-|--|/|\\|M.2_|M2_1,|USB |DDR5/6400 |12 x 9 |\n|\r\n|1.|1,|<a |</|&#|&amp;|\u001b[|\u0301|{"a":|[[|\u00a0|Gen 2x2 |(x4) |1 x USB (2 rear, |PCIe 4.0 x16 |if |and '.split(
		"|",
	),
	"|",
	"| ",
	"a|",
	": ",
	"a: ",
	"a: b\n",
	"a\tb\n",
	"1 2 3 4 ",
	"<td>",
	"<!--",
	"\u001b]",
];

export interface Draws {
	readonly below: (bound: number) => number;
	readonly oneOf: <T>(values: readonly T[]) => T;
}

export function drawsOf(seed: number): Draws {
	const draw = seededDraws(seed);
	const below = (bound: number) => Math.floor(draw() * bound);
	return { below, oneOf: (values) => values[below(values.length)] as never };
}

const longestText = 100_000;

/** A text to be read: a sample with a few things changed, words of the trade in any order, or one thing many times. */
export function drawText(draws: Draws, samples: readonly string[]): string {
	const way = draws.below(40);
	if (way === 0) return heavyText(draws.oneOf(heavyPieces), longestText / 4);
	if (way === 1) return `${draws.oneOf(samples)}${heavyText(draws.oneOf(heavyPieces), 10_000)}${draws.oneOf(tokens)}`;
	if (way < 12) return words(draws, 1 + draws.below(60));
	let text = draws.oneOf(samples);
	// Of a long page a piece is enough as often as not, so that more can be tried.
	if (text.length > 2000 && draws.below(4) > 0) {
		const from = draws.below(text.length - 1000);
		text = text.slice(from, from + 1000);
	}
	for (let steps = 1 + draws.below(6); steps > 0; steps--) text = changed(draws, text, samples);
	return text.slice(0, longestText);
}

export const heavyText = (piece: string, length: number): string =>
	piece.repeat(Math.ceil(length / piece.length)).slice(0, length);

function words(draws: Draws, count: number): string {
	return Array.from({ length: count }, () => draws.oneOf(tokens) + draws.oneOf(["", " ", " ", "\n", ", "])).join("");
}

function changed(draws: Draws, text: string, samples: readonly string[]): string {
	const at = draws.below(text.length + 1);
	const to = Math.min(text.length, at + draws.below(40));
	switch (draws.below(8)) {
		case 0:
			return text.slice(0, at) + text.slice(to);
		case 1:
			return text.slice(0, at) + draws.oneOf(tokens) + text.slice(at);
		case 2:
			return text.slice(0, at) + draws.oneOf(tokens) + text.slice(to);
		case 3:
			return text.slice(0, to) + text.slice(at, to).repeat(1 + draws.below(8)) + text.slice(to);
		case 4:
			return (
				text.slice(0, at) + String.fromCharCode(draws.below(draws.below(2) === 0 ? 256 : 65_536)) + text.slice(at + 1)
			);
		case 5: {
			const other = draws.oneOf(samples);
			const from = draws.below(other.length + 1);
			return text.slice(0, at) + other.slice(from, from + 200) + text.slice(to);
		}
		case 6:
			return text.replace(/\d+/, () => draws.oneOf(["0", "-1", "1e308", "99999999999", "0.1", "007"]));
		default:
			return text.slice(0, at) + words(draws, 1 + draws.below(5)) + text.slice(at);
	}
}
