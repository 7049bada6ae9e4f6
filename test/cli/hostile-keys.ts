/** Every form in which terminals send function keys, each with all of Shift, Alt, Ctrl. */
export function functionKeys(): string[] {
	const modifiers = Array.from({ length: 15 }, (_, index) => index + 2);
	const letters = ["P", "Q", "R", "S", "E", "M", "I", "O"];
	const numbers = [2, 7, 8, 11, 12, 13, 14, 15, 17, 18, 19, 20, 21, 23, 24, 25, 26, 28, 29, 31, 32, 33, 34];
	return [
		...modifiers.flatMap((modifier) => [
			...letters.map((letter) => `\u001b[1;${modifier}${letter}`),
			...letters.slice(0, 4).map((letter) => `\u001bO${modifier}${letter}`),
			...numbers.map((number) => `\u001b[${number};${modifier}~`),
			`\u001b[27;${modifier};97~`,
			`\u001b[97;${modifier}u`,
			`\u001b[57399;${modifier}:3u`,
		]),
		...numbers.flatMap((number) => [`\u001b[${number}$`, `\u001b[${number}^`, `\u001b[${number}@`]),
	];
}

/** What a terminal may send of itself; none of it is a key. */
export const reports: readonly (readonly [string, string])[] = [
	["mouse, SGR", "\u001b[<0;10;5M\u001b[<0;10;5m\u001b[<65;123;45M"],
	["mouse, X10", "\u001b[M #!\u001b[M qq"],
	["mouse, urxvt", "\u001b[32;10;5M\u001b[35;120;45M"],
	["focus", "\u001b[I\u001b[O"],
	["cursor", "\u001b[24;80R\u001b[1;1R\u001b[?12;34R"],
	["terminal attributes", "\u001b[?64;1;2;6;22c\u001b[>41;354;0c\u001b[=1c"],
	["modes", "\u001b[?2026;2$y\u001b[?1u"],
	["colours", "\u001b]11;rgb:ffff/ffff/dddd\u0007\u001b]10;rgb:0000/0000/0000\u001b\\"],
	["a name of the terminal", "\u001bP>|xterm(390)\u001b\\\u001bP1+r436f=323536\u001b\\"],
	["window size", "\u001b[8;24;80t\u001b[4;600;800t"],
	[
		"controls",
		"\u0000\u0002\u0006\u0007\u000e\u000f\u0010\u0011\u0012\u0013\u0014\u0016\u0018\u0019\u001c\u001d\u001e\u001f",
	],
];
