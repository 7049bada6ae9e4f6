import { type AnyPart, type PartKind, partKindNames } from "../../src/parts/part-kinds.ts";
import type { ReadDoubt, ReadFact } from "../../src/reading/part-reading.ts";
import { formOfPart, formOfReading, newForm } from "../../src/walk/part-form.ts";
import type { WalkState } from "../../src/walk/walk-state.ts";
import { demo, walkAt } from "./walk-in-demo.ts";

/** The page of an invented board, in the manner of such pages. */
export const boardPage = [
	"Copperbeech Ladder 4",
	"",
	"Specifications",
	"Socket\tLantern 4",
	"Form Factor\tATX, 305mm x 244mm",
	"Memory\t4 x DIMM, DDR5, Max. 192GB, Dual Channel",
	"Storage\t4 x SATA 6Gb/s ports",
	"Back Panel\t1 x HDMI port",
	"Wobble engine\tturbo fine",
].join("\n");

const fact = (path: string, value: unknown, line: number, quote: string): ReadFact => ({
	fact: path,
	value,
	standing: "stated",
	line,
	quote,
});

/** What a page leaves open: a figure, a choice, an entry of a list. */
export const doubts: readonly ReadDoubt[] = [
	{
		fact: "memory.maxGb",
		might: [128, 192],
		line: 6,
		quote: "Max. 128GB / 192GB",
		why: "The text gives more than one value.",
	},
	{
		fact: "form",
		might: ["ATX", "microATX"],
		line: 5,
		quote: "ATX / mATX",
		why: "The text gives more than one value.",
	},
	{
		fact: "m2Sockets[1]",
		might: [{ name: "M2_2", key: "M", lengthsMm: [80] }],
		line: 9,
		quote: "M2_2 (Key M or E), type 2280",
		why: "It is not clear what this socket is for.",
	},
];

const readPart = {
	id: "copperbeech-ladder-4",
	name: "Copperbeech Ladder 4",
	socket: "Lantern 4",
	memory: { type: "DDR5", slots: 4 },
	m2Sockets: [{ name: "M2_1", key: "M", lengthsMm: [60, 80] }],
	rearUsb: [{ plug: "A", gbps: 10, count: 4 }],
	evidence: {
		socket: { standing: "stated", quote: "Socket Lantern 4" },
		"memory.slots": { standing: "stated", quote: "4 x DIMM" },
		m2Sockets: { standing: "assumed", quote: "M2_1 (Key M)" },
	},
} as const;

/** A board's page was read, and some of it is not clear. */
export const pageRead: WalkState = walkAt(
	{ at: "part-form" },
	{
		form: formOfReading(
			{
				kind: "board",
				part: readPart as never,
				facts: [
					fact("socket", "Lantern 4", 4, "Socket Lantern 4"),
					fact("memory.slots", 4, 6, "4 x DIMM"),
					fact("m2Sockets[0]", readPart.m2Sockets[0], 8, "M2_1 (Key M)"),
				],
				doubts,
				unread: [{ line: 9, text: "Wobble engine turbo fine" }],
			},
			null,
		),
	},
);

/** An empty form of each kind, asked fact by fact. */
export const emptyForms = partKindNames.map((kind) => ({
	name: `someone who fills in a form: ${kind}`,
	state: walkAt({ at: "fact-form", path: ["name"] }, { form: newForm(kind, null) }),
}));

/** A part of each kind of the demonstration, being changed, with all own parts in the list. */
export const changedForms = partKindNames.flatMap((kind) => {
	const part = demo.market.parts[kind][0] as AnyPart | undefined;
	return part ? [{ name: `someone who changes a part: ${kind}`, state: changing(kind, part) }] : [];
});

function changing(kind: PartKind, part: AnyPart): WalkState {
	const own = { ...part, id: `own-${part.id}`.slice(0, 80), name: `My ${part.name}` } as AnyPart;
	return walkAt(
		{ at: "part-form" },
		{ form: formOfPart(kind, own), ownParts: [{ kind, part: own } as WalkState["ownParts"][number]] },
	);
}
