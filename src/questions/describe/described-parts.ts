import type { AnswerValue } from "../../parts/answers-file.ts";
import type { BuildPartKind } from "../../parts/build.ts";
import { cleanLine } from "../../parts/clean-text.ts";
import type { PartKind } from "../../parts/part-kinds.ts";
import { boardForms, memoryTypes, type ProcessorPlug, pictureSockets } from "../../parts/vocabulary.ts";
import type { QuestionContext } from "../define-question.ts";
import { plugsInWords } from "../part-summary.ts";
import { readMoney } from "../read-money.ts";
import { readLine, readMillimetres, readWhole } from "./readers.ts";
import { type PartDraft, putAt, type TypedFact, type TypedReading } from "./typed-fact.ts";

/** What a typed-in part may refer to: the currency prices are in, and the processor the person has settled. */
export interface DescribeContext extends QuestionContext {
	readonly currency: string;
	readonly processorName: string | null;
}

export type DescribedKind = "board" | "drive" | "addInCard" | BuildPartKind;

/** The facts asked of a part that is typed in from its page: what matters most first, fifteen at most. */
export function typedFacts(kind: PartKind, context: DescribeContext): readonly TypedFact[] {
	return isDescribed(kind) ? lists[kind](context) : [];
}

export function isDescribed(kind: PartKind): kind is DescribedKind {
	return Object.hasOwn(lists, kind);
}

const words = (path: string, ask: string, example: string, most = 120): TypedFact => ({
	path,
	ask,
	example,
	read: readLine(most),
});
const whole = (path: string, ask: string, least: number, most: number, unit = ""): TypedFact => ({
	path,
	ask,
	read: readWhole(least, most, unit),
});
const yesOrNo = (path: string, ask: string): TypedFact => ({
	path,
	ask,
	choices: [
		{ value: true, label: "Yes" },
		{ value: false, label: "No" },
	],
});
const pick = (path: string, ask: string, values: readonly string[]): TypedFact => ({
	path,
	ask,
	choices: values.map((value) => ({ value, label: value })),
});
const plugs = (path: string, ask: string, kinds: readonly (readonly ProcessorPlug[])[]): TypedFact => ({
	path,
	ask,
	choices: kinds.map((value) => ({ value, label: plugsInWords(value) })),
});
/** Several of a list, typed with commas. */
const several = (path: string, ask: string, values: readonly string[], none?: string): TypedFact => ({
	path,
	ask,
	example: `${values.slice(0, 2).join(", ")}${none ? `; or ${none}` : ""}`,
	read: (text) => readSeveral(text, values, none),
});

function readSeveral(text: string, values: readonly string[], none: string | undefined): TypedReading {
	const plain = (word: string) => word.toLowerCase().replace(/[^a-z0-9]/g, "");
	const typed = text
		.split(/[,;/]|\band\b/i)
		.map(plain)
		.filter((word) => word !== "");
	if (none && typed.length === 1 && typed[0] === plain(none)) return { value: [] };
	const found = typed.map((word) => values.find((value) => plain(value) === (shortForms[word] ?? word)));
	return typed.length > 0 && found.every((value) => value !== undefined)
		? { value: [...new Set(found)] }
		: { problem: `Type one or more of ${values.join(", ")}, with commas${none ? `; or ${none}` : ""}.` };
}

/** Short forms in use for standard names. */
const shortForms: Readonly<Record<string, string>> = {
	itx: "miniitx",
	matx: "microatx",
	dp: "displayport",
	typec: "usbc",
};

const usbRows = (draft: PartDraft, plug: "A" | "C", count: unknown): PartDraft => {
	const others = ((draft["rearUsb"] as { plug: string }[] | undefined) ?? []).filter((row) => row.plug !== plug);
	return { ...draft, rearUsb: Number(count) > 0 ? [...others, { plug, count }] : others };
};

/** So many connectors, named by number as boards print them. */
const numbered = (name: string, count: unknown, facts: object) =>
	Array.from({ length: Number(count) }, (_, index) => ({ name: `${name}_${index + 1}`, ...facts }));

const boardFacts = ({ currency, processorName }: DescribeContext): readonly TypedFact[] => [
	words("name", "What is the board called?", "Copperbeech Bench 2"),
	words("socket", "Which socket does it have?", "Lantern 4", 40),
	{
		path: "supportList",
		ask: `Does the board's processor list name ${processorName ? `the ${processorName}` : "your processor"}?`,
		choices: [
			{ value: "yes", label: "Yes, I read it there" },
			{ value: "no", label: "I read the list, and it is not there" },
		],
		example: "or type the firmware version the list names for it",
		read: (text) =>
			/\d/.test(text) ? readLine(40)(text) : { problem: "Type the firmware version as the list prints it." },
		put: (draft, value) => ({
			...draft,
			supportList: {
				// Read for this processor only; "no" is noted as a whole list without it.
				...(value === "no" ? {} : { partial: true }),
				rows:
					value === "no" || !processorName
						? []
						: [{ processor: processorName, ...(value === "yes" ? {} : { fromVersion: value }) }],
			},
		}),
	},
	pick("form", "Which size (form factor) is the board?", boardForms),
	pick("memory.type", "Which memory does it take?", memoryTypes),
	whole("memory.slots", "How many memory slots does it have?", 1, 16),
	whole("memory.maxGb", "How much memory does it take at most?", 1, 16384, "GB"),
	plugs("power.processorPlugs", "Which processor power plugs does it have?", [
		["4-pin"],
		["8-pin"],
		["8-pin", "4-pin"],
		["8-pin", "8-pin"],
	]),
	several("pictureSockets", "Which picture sockets are at the back?", pictureSockets, "none"),
	{
		...whole("rearUsb", "How many flat USB sockets (USB-A) are at the back?", 0, 20),
		put: (draft, value) => usbRows(draft, "A", value),
	},
	{
		...whole("rearUsb", "How many small oval USB sockets (USB-C) are at the back?", 0, 20),
		// Where the flat ones are not known the list would not be whole, and a list that stands counts as whole.
		put: (draft, value) => (draft["rearUsb"] === undefined ? draft : usbRows(draft, "C", value)),
	},
	{
		...whole("m2Sockets", "How many M.2 sockets take a drive of 80 mm (2280)?", 0, 12),
		put: (draft, value) => ({ ...draft, m2Sockets: numbered("M2", value, { key: "M", lengthsMm: [80] }) }),
	},
	{
		...whole("drivePorts", "How many SATA ports for drives does it have?", 0, 24),
		put: (draft, value) => ({ ...draft, drivePorts: numbered("SATA", value, { kind: "SATA" }) }),
	},
	yesOrNo("wireless.builtIn", "Is wireless (Wi-Fi) built in?"),
	{
		path: "price",
		ask: "What does it cost?",
		example: `189 or ${currency} 189`,
		read: (text) => {
			const value = readMoney(text, currency);
			return value ? { value } : { problem: `Type the price as a number, such as 189 or ${currency} 189.` };
		},
	},
];

const lists: { readonly [K in DescribedKind]: (context: DescribeContext) => readonly TypedFact[] } = {
	board: (context) =>
		// Without a processor there is nothing to look for in the support list.
		boardFacts(context).filter(({ path }) => path !== "supportList" || context.processorName !== null),
	processor: () => [
		words("name", "What is the processor called?", "Bramble Nine"),
		words("socket", "Which socket does it need?", "Lantern 4", 40),
		yesOrNo("graphics", "Does it make a picture by itself?"),
		whole("baseW", "How many watts are on the label (base power)?", 1, 1000, "W"),
		whole("peakW", "How many watts does it take at most?", 1, 2000, "W"),
		words("generation", "Which processor generation or series is it?", "Hedgerow", 60),
	],
	case: () => [
		words("name", "What is the case called?", "Gatepost"),
		several("boardForms", "Which board sizes does its page list?", boardForms),
		{
			path: "cardMaxLengthMm",
			ask: "How long may a graphics card be?",
			example: "360 mm",
			read: readMillimetres(50, 800),
		},
	],
	graphicsCard: () => [
		words("name", "What is the card called?", "Carousel"),
		{ path: "lengthMm", ask: "How long is it?", example: "304 mm", read: readMillimetres(50, 600) },
	],
	memory: () => [
		pick("type", "Which type is it?", memoryTypes),
		whole("modules", "How many modules?", 1, 16),
		whole("gbPerModule", "How many GB does one module have?", 1, 512, "GB"),
		words("name", "What is it called?", "Mittens 32"),
	],
	cooler: () => [
		words("name", "What is the cooler called?", "Chimney"),
		pick("kind", "Which kind is it?", ["air", "liquid"]),
		{ path: "heightMm", ask: "How high is it?", example: "158 mm", read: readMillimetres(15, 400) },
		{
			path: "kits",
			ask: "Which sockets does its page list?",
			example: "Lantern 4, Candle 2",
			read: (text) => {
				const sockets = text.split(/[,;]/).map(cleanLine);
				return sockets.every((socket) => socket !== "" && socket.length <= 40)
					? { value: sockets.map((socket) => ({ socket, how: "in the box" })) }
					: { problem: "Type the sockets as the page lists them, with commas." };
			},
		},
		whole("publishedW", "How many watts does its maker say it cools?", 5, 1500, "W"),
		{ ...whole("radiatorMm", "How long is its radiator?", 80, 600, "mm"), when: ({ kind }) => kind !== "air" },
	],
	drive: () => [
		words("name", "What is the drive called?", "Snail 500"),
		{
			path: "shape",
			ask: "Which shape does it have?",
			choices: [
				{ value: "M.2", label: "A flat stick (M.2)" },
				{ value: "2.5 inch", label: "A flat box of 7 by 10 cm (2.5 inch)" },
				{ value: "3.5 inch", label: "A brick of 10 by 15 cm (3.5 inch)" },
			],
		},
		{
			path: "link",
			ask: "How is it connected?",
			choices: [
				{ value: "PCI Express", label: "NVMe or PCIe on its label" },
				{ value: "SATA", label: "SATA on its label, or a thin flat cable" },
				{ value: "IDE", label: "A flat cable 5 cm wide (IDE)" },
			],
		},
		{ ...whole("lengthMm", "How long is the stick?", 16, 110, "mm"), when: ({ shape }) => shape === "M.2" },
	],
	addInCard: () => [
		words("name", "What is the card called?", "Fiddle"),
		{
			path: "use",
			ask: "What does it do?",
			choices: ["sound", "wired network", "wireless network", "video capture", "drives", "USB sockets", "other"].map(
				(value) => ({ value, label: value }),
			),
		},
		{
			path: "bus",
			ask: "Which slot does it need?",
			choices: [
				{ value: "PCI Express", label: "PCI Express, as on all cards of today" },
				{ value: "PCI", label: "PCI, on cards from before about 2010" },
			],
		},
		{
			...whole("leastLanes", "With how many lanes does it work (x4 is 4)?", 1, 16),
			when: ({ bus }) => bus !== "PCI",
		},
	],
	supply: () => [
		words("name", "What is the supply called?", "Bonfire 650"),
		plugs("processorPlugs", "Which plugs marked CPU does it have?", [
			["4-pin"],
			["8-pin"],
			["8-pin", "4-pin"],
			["8-pin", "8-pin"],
		]),
		whole("watts", "How many watts are on the label?", 20, 3000, "W"),
	],
};

/** The value of a typed fact put into the draft. */
export function putFact(fact: TypedFact, draft: PartDraft, value: unknown): PartDraft {
	return fact.put ? fact.put(draft, value) : putAt(draft, fact.path, value);
}

/** The answer that a described part gives to its question. */
export function answerFor(partId: string): AnswerValue {
	return { part: partId };
}
