import fc from "fast-check";

const pieces = [
	..."1 2 3 4 5 8 10 16 20 64 128 0.5 305 244 24,4 2280 22110 6400 6.400 99".split(" "),
	..."x × * ( ) , ; : / + - ~ & | \n \t".split(" "),
	..."USB USB4 v2 2.0 3.1 3.2 Gen Gen1 2x2 Gbps Gb/s Type-A Typ-C port ports header rear hinten vorne by".split(" "),
	..."PCIe PCI Express 4.0 x16 x4 mode elektrisch slot M.2 M2_1 M.2_1,2 Key M E SATA kein screws including if".split(
		" ",
	),
	..."DDR4 DDR5 DIMM SO-DIMM GB TB MHz MT/s OC max. bis zu per dual channel mm cm in Zoll ATX mATX Mini-ITX".split(" "),
	...["4 x USB 2.0 ", "2 x USB 3.2 Gen 2 ", "(2 rear, 2 front)", "(3 hinten, 1 vorne)", "(1 x Type-A + 1 x Type-C)"],
	...["1 x PCIe 4.0 x16 ", "(x4 mode)", "2 x M.2 ", "(M2_1, M2_2)", "305 x 244 mm", "max. 128 GB", "4 x DIMM "],
];

/** Text out of the words of specification pages in any order, and any text at all. */
export const specLikeText: fc.Arbitrary<string> = fc.oneof(
	{
		weight: 4,
		arbitrary: fc
			.array(fc.tuple(fc.constantFrom(...pieces), fc.constantFrom(" ", "", " ")), { maxLength: 30 })
			.map((words) => words.map(([word, gap]) => word + gap).join("")),
	},
	{ weight: 1, arbitrary: fc.string({ unit: "binary", maxLength: 200 }) },
);

/** Texts that make a careless pattern slow. */
export const heavyTexts: readonly string[] = [
	"1 x ",
	"((",
	"M2_1,",
	"USB ",
	"DDR5/6400",
	"12 x 9 ",
	"a ",
	"1",
	"-",
].map((piece) => piece.repeat(20_000));

/** Whether the figure's digits stand in the text, with or without a point in them. */
export function standsIn(text: string, value: number): boolean {
	const digits = String(value);
	return text.includes(digits) || text.replace(/[.,]/g, "").includes(digits.replace(".", ""));
}
