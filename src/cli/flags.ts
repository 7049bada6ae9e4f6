/** The flags, the value each takes, and what it does; help and checks derive from this. */
export const flags = {
	answers: { value: "FILE", help: "take answers from this file; the walk goes on in it" },
	parts: {
		value: "FOLDER",
		help: "boards and parts from this folder or file alone, instead of your own and the demonstration",
	},
	"with-demo": { value: null, help: "the demonstration's parts too, beside your own or those of --parts" },
	"sound-only": { value: null, help: "of a faulty parts file or table take the sound parts, and tell the others" },
	to: {
		value: "FILE",
		help: "write to this file: .txt, .json; a sheet also .html, .md, .csv; pictures .svg; - prints it",
	},
	replace: { value: null, help: "replace the file if it is there; with own import and told, also what is stated" },
	name: { value: "NAME", help: "with read: the part; with read list: the processor to look for; with coach: yours" },
	board: { value: "ID", help: "with read list --keep: your board whose list it is; with sheet: the board drawn" },
	paper: { value: "SIZE", help: "with sheet --to FILE.html: a board at true size on sheets of a4 or letter" },
	keep: { value: null, help: "with read: keep what was read among your own parts" },
	kind: { value: "KIND", help: "with own: the kind of part, such as board" },
	map: { value: '"COLUMN=FACT,..."', help: "with own import: the fact a column gives; COLUMN= leaves it out" },
	yes: { value: null, help: "with own import: take the table as it was understood" },
	price: { value: "PRICE", help: 'with own offer: what is asked, such as "129.90 EUR"' },
	condition: { value: "WORD", help: "with own offer: new, opened or used; new if not said" },
	seen: { value: "DATE", help: "with own offer: the day it was seen, today if not said" },
	seller: { value: "NAME", help: "with own offer: who sells it" },
	until: { value: "DATE", help: "with own offer: the last day it can go back" },
	from: { value: "START", help: "with merge: the walk that both came from" },
	width: { value: "COLUMNS", help: "with price-line: how wide the picture is, 60 if not said" },
	by: { value: "WHO", help: "with told: who said it" },
	quote: { value: '"..."', help: "with told: the answer as it came" },
	language: { value: "en|de", help: "with ask: the language of the message, en if not said" },
	record: { value: "FILE", help: "with the walk: write every step into this file, for boardwalk replay" },
	json: { value: null, help: "print JSON" },
	plain: { value: null, help: "ask line by line; for screen readers and simple terminals" },
	"no-input": { value: null, help: "ask nothing; what is missing is named" },
	"no-color": { value: null, help: "use no colour" },
	ascii: { value: null, help: "use ASCII characters only" },
	inches: { value: null, help: "lengths in inches too, beside the millimetres" },
	help: { value: null, help: "print this help; behind a command, what that command takes" },
	version: { value: null, help: "print the version" },
} as const;
export type FlagName = keyof typeof flags;

/**
 * How the program is to behave towards a person. Every command takes these, so that they can stand in an alias; a command
 * that asks nothing and uses no colour obeys them as it is.
 */
export const flagsForAll = [
	"plain",
	"no-input",
	"no-color",
	"ascii",
	"inches",
	"help",
	"version",
] as const satisfies readonly FlagName[];
