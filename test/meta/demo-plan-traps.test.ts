import { describe, expect, test } from "vitest";
import { demoMarket } from "../../src/cli/demo-market.ts";
import type { Board } from "../../src/parts/board.ts";
import { type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
import type { PartKind, PartOf } from "../../src/parts/part-kinds.ts";
import { measurePlan, type PlanMeasure } from "../../src/plan/measure-plan.ts";
import { pictureShape, planPicture } from "../../src/sheet/plan-picture.ts";
import { planPictureSvg } from "../../src/sheet/plan-picture-svg.ts";
import { planWords } from "../../src/sheet/plan-words.ts";

/**
 * Every trap of the connector plan can be met in the demonstration market: it is measured, drawn, and told in one
 * sentence; and a build that walks round it is told nothing of the kind.
 */

const { parts } = demoMarket();
const one = <K extends PartKind>(kind: K, id: string): PartOf<K> => {
	const found = (parts[kind] as readonly PartOf<K>[]).find((part) => part.id === id);
	if (!found) throw new Error(`no ${kind} has the id ${id}`);
	return found;
};

/** Parts by their ids; drives and other cards without their maker, since each kind has but one. */
interface Brought {
	readonly graphicsCard: string;
	/** In mm, where the same card is to be shorter than it is. */
	readonly lengthMm?: number;
	readonly processor: string;
	readonly drives?: readonly string[];
	readonly olderDrives?: number;
	readonly cards?: readonly string[];
}

function factsOf({ graphicsCard, lengthMm, processor, drives = [], olderDrives = 0, cards = [] }: Brought): BuildFacts {
	const card = one("graphicsCard", graphicsCard);
	return {
		...emptyBuildFacts,
		processor: { state: "have", ownership: "bought", part: one("processor", processor) },
		graphicsCard: {
			state: "have",
			ownership: "bought",
			part: lengthMm === undefined ? card : { ...card, lengthMm },
		},
		drives: drives.map((id) => one("drive", `pantryshelf-${id}`)),
		olderSataDrives: olderDrives,
		addInCards: cards.map((id) => one("addInCard", `bellfoundry-${id}`)),
		boughtLists: ["drives", "addInCards"],
	};
}

const measured = (boardId: string, brought: Brought) => measurePlan(one("board", boardId), factsOf(brought));
const sentences = (measure: PlanMeasure) => planWords(measure).flatMap(({ lines }) => lines);
const endOf = ({ plan }: PlanMeasure, name: string) => plan.ends.find(({ connector }) => connector.name === name);
const placedIn = ({ plan }: PlanMeasure, name: string) => plan.placed.find(({ connector }) => connector.name === name);

/** What a picture says of each connector, without frame and gaps: "5 [==] SLOT_5 free". */
const pictured = (measure: PlanMeasure, board: Board, width: number) =>
	planPicture(measure.plan, pictureShape(board, measure), width).flatMap((line) =>
		line.replace(/\s+/g, " ").split("; "),
	);
/** Columns of a picture in which every name stands whole, and of the one that the command prints. */
const [wide, usual] = [100, 60];

/** What an SVG writes, piece by piece, and what it says to whoever hears it read. */
function svgOf(measure: PlanMeasure, board: Board): { readonly written: readonly string[]; readonly heard: string } {
	const svg = planPictureSvg(measure.plan, board.name, pictureShape(board, measure));
	return {
		written: [...svg.matchAll(/<text [^>]*>([^<]*)</g)]
			.map(([, text = ""]) => text)
			.flatMap((text) => text.split("; ")),
		heard: /<desc>([^<]*)</.exec(svg)?.[1] ?? "",
	};
}

const carousel = "dapplegate-carousel";
const helterSkelter = "dapplegate-helter-skelter";
const crayon = "smudgeworth-crayon";
const bosun = "tallowfinch-bosun";
const deckhand = "tallowfinch-deckhand";
const muralist = "tallowfinch-muralist";
const honeyJar = "mumblethwaite-honey-jar";
const scrumper = "wimblecombe-scrumper";

interface Trap {
	readonly board: string;
	readonly brought: Brought;
	/** Connectors that are caught, in the board's order. */
	readonly connectors: readonly string[];
	/** What the picture calls them, where ports in a run are one. */
	readonly drawnAs?: readonly string[];
	readonly drawn: string;
	readonly says: string;
	/** What to bring instead so that nothing is caught. */
	readonly instead: Partial<Brought>;
}

const fourFast = ["honeycomb", "marmalade", "dart", "shortbread"];

const off: readonly Trap[] = [
	{
		board: "pennywhistle-mazurka",
		brought: {
			graphicsCard: carousel,
			processor: deckhand,
			drives: ["marmalade", "dart", "shortbread"],
			olderDrives: 2,
		},
		connectors: ["SATA_5", "SATA_6"],
		drawnAs: ["SATA_5-6"],
		drawn: "off (Pantryshelf Shortbread)",
		says: "SATA_5 and SATA_6 do not work while Pantryshelf Shortbread is in M2_3.",
		instead: { drives: ["marmalade", "dart"] },
	},
	{
		board: "brindlecroft-teasel",
		brought: {
			graphicsCard: carousel,
			processor: bosun,
			drives: ["dart", "pickle"],
			olderDrives: 4,
		},
		connectors: ["SATA_5", "SATA_6"],
		drawnAs: ["SATA_5-6"],
		drawn: "off (Pantryshelf Pickle)",
		says: "SATA_5 and SATA_6 do not work while Pantryshelf Pickle is in M2_2.",
		instead: { drives: ["dart"], olderDrives: 5 },
	},
	{
		board: "brindlecroft-hollyhock",
		brought: { graphicsCard: carousel, processor: honeyJar, drives: ["dart", "shortbread"] },
		connectors: ["SATA_5", "SATA_6"],
		drawnAs: ["SATA_5-6"],
		drawn: "off (Pantryshelf Shortbread)",
		says: "SATA_5 and SATA_6 do not work while Pantryshelf Shortbread is in M2_2.",
		instead: { drives: ["dart", "loaf"] },
	},
	{
		board: "pennywhistle-quadrille",
		brought: { graphicsCard: carousel, processor: deckhand, drives: fourFast },
		connectors: ["SLOT_5"],
		drawn: "off (Pantryshelf Shortbread)",
		says: "SLOT_5 does not work while Pantryshelf Shortbread is in M2_4.",
		instead: { drives: fourFast.slice(0, 3) },
	},
	{
		board: "fernquill-masquerade",
		brought: { graphicsCard: carousel, processor: scrumper, drives: fourFast },
		connectors: ["SLOT_5"],
		drawn: "off (Pantryshelf Shortbread)",
		says: "SLOT_5 does not work while Pantryshelf Shortbread is in M2_4.",
		instead: { drives: fourFast.slice(0, 3) },
	},
	{
		board: "pennywhistle-quadrille",
		brought: {
			graphicsCard: carousel,
			processor: deckhand,
			drives: fourFast.slice(0, 3),
			cards: ["town-crier"],
		},
		connectors: ["M2_4"],
		drawn: "off (Bellfoundry Town Crier)",
		says: "M2_4 does not work while Bellfoundry Town Crier is in SLOT_5.",
		instead: { cards: [] },
	},
	{
		board: "moorhen-curlew",
		brought: { graphicsCard: carousel, processor: deckhand, drives: ["dart", "teatray"] },
		connectors: ["SLOT_7"],
		drawn: "off (Pantryshelf Teatray)",
		says: "SLOT_7 does not work while Pantryshelf Teatray is in U2_1.",
		instead: { drives: ["dart", "loaf"] },
	},
];

const covered: readonly Trap[] = [
	{
		board: "cobblestoat-bannock",
		brought: { graphicsCard: helterSkelter, processor: bosun, drives: ["dart"], cards: ["chime"] },
		connectors: ["SLOT_3"],
		drawn: "covered (Dapplegate Helter Skelter)",
		says: "SLOT_3 is covered by Dapplegate Helter Skelter.",
		instead: { graphicsCard: carousel },
	},
	{
		board: "moorhen-bittern",
		brought: { graphicsCard: carousel, processor: scrumper, drives: ["dart"], cards: ["pigeon"] },
		connectors: ["SLOT_2"],
		drawn: "covered (Dapplegate Carousel)",
		says: "SLOT_2 is covered by Dapplegate Carousel.",
		instead: { graphicsCard: crayon },
	},
	{
		board: "pennywhistle-quadrille",
		brought: { graphicsCard: helterSkelter, processor: deckhand, drives: ["honeycomb"], olderDrives: 3 },
		connectors: ["SATA_3"],
		drawn: "covered (Dapplegate Helter Skelter)",
		says: "No plug goes into SATA_3: Dapplegate Helter Skelter lies over it.",
		instead: { lengthMm: 199 },
	},
	{
		board: "cobblestoat-gingerbread",
		brought: { graphicsCard: helterSkelter, processor: deckhand, drives: ["honeycomb"], olderDrives: 5 },
		connectors: ["SATA_5"],
		drawn: "covered (Dapplegate Helter Skelter)",
		says: "No plug goes into SATA_5: Dapplegate Helter Skelter lies over it.",
		instead: { lengthMm: 199 },
	},
	{
		board: "cobblestoat-treacle-tart",
		brought: { graphicsCard: helterSkelter, processor: scrumper, drives: ["honeycomb"], olderDrives: 4 },
		connectors: ["SATA_5", "SATA_6"],
		drawnAs: ["SATA_5-6"],
		drawn: "covered (Dapplegate Helter Skelter)",
		says: "No plug goes into SATA_5 and SATA_6: Dapplegate Helter Skelter lies over them.",
		instead: { lengthMm: 199 },
	},
];

const dead: readonly Trap[] = [
	{
		board: "cobblestoat-gingerbread",
		brought: { graphicsCard: carousel, processor: muralist, drives: ["honeycomb", "dart"] },
		connectors: ["M2_2"],
		drawn: "dead",
		says: "M2_2 does not work with Tallowfinch Muralist.",
		instead: { processor: deckhand },
	},
	{
		board: "brindlecroft-honesty",
		brought: { graphicsCard: carousel, processor: muralist, drives: ["honeycomb"] },
		connectors: ["SLOT_5", "M2_2"],
		drawn: "dead",
		says: "M2_2 and SLOT_5 do not work with Tallowfinch Muralist.",
		instead: { processor: deckhand },
	},
	{
		board: "dovetail-rocking-chair",
		brought: { graphicsCard: carousel, processor: "mumblethwaite-eggcup", drives: ["dart"] },
		connectors: ["M2_1"],
		drawn: "dead",
		says: "M2_1 does not work with Mumblethwaite Eggcup.",
		instead: { processor: honeyJar },
	},
	{
		board: "brindlecroft-sunflower",
		brought: { graphicsCard: carousel, processor: "mumblethwaite-journeyman", drives: ["honeycomb"] },
		connectors: ["SLOT_7"],
		drawn: "dead",
		says: "SLOT_7 does not work with Mumblethwaite Journeyman.",
		instead: { processor: "mumblethwaite-wheelwright" },
	},
];

const narrows: readonly Trap[] = [
	{
		board: "brindlecroft-honesty",
		brought: { graphicsCard: carousel, processor: deckhand, drives: ["honeycomb"] },
		connectors: ["SLOT_5"],
		drawn: "narrows (Dapplegate Carousel)",
		says: "Whatever goes into SLOT_5 takes lanes from Dapplegate Carousel.",
		instead: { processor: muralist },
	},
	{
		board: "tarradiddle-gale",
		brought: { graphicsCard: carousel, processor: honeyJar, drives: ["dart"] },
		connectors: ["SLOT_4"],
		drawn: "narrows (Dapplegate Carousel)",
		says: "Whatever goes into SLOT_4 takes lanes from Dapplegate Carousel.",
		instead: { processor: "mumblethwaite-sugarlump" },
	},
];

const buried: readonly Trap[] = [
	{
		board: "cobblestoat-bannock",
		brought: { graphicsCard: carousel, processor: bosun, drives: ["dart"] },
		connectors: ["M2_1"],
		drawn: "Pantryshelf Dart, buried",
		says: "Pantryshelf Dart in M2_1 lies under Dapplegate Carousel. It works, only warmer; to reach it the card must come out.",
		instead: { graphicsCard: crayon },
	},
	{
		board: "pennywhistle-gavotte",
		brought: { graphicsCard: carousel, processor: deckhand, drives: ["honeycomb", "marmalade", "dart"] },
		connectors: ["M2_2"],
		drawn: "Pantryshelf Dart, buried",
		says: "Pantryshelf Dart in M2_2 lies under Dapplegate Carousel. It works, only warmer; to reach it the card must come out.",
		instead: { graphicsCard: crayon },
	},
	{
		board: "pennywhistle-quadrille",
		brought: {
			graphicsCard: crayon,
			processor: deckhand,
			drives: fourFast.slice(0, 3),
			cards: ["town-crier"],
		},
		connectors: ["M2_3"],
		drawn: "Pantryshelf Dart, buried",
		says: "Pantryshelf Dart in M2_3 lies under Bellfoundry Town Crier. It works, only warmer; to reach it the card must come out.",
		instead: { cards: ["letterbox"] },
	},
];

const traps = Object.entries({ off, covered, dead, narrows, buried }).flatMap(([state, all]) =>
	all.map((trap) => ({ state: state as keyof typeof telling, ...trap })),
);

/** Words by which any sentence of this kind is known. */
const telling = {
	off: /do(es)? not work while/,
	covered: /covered by|lies? over/,
	dead: /do(es)? not work with/,
	narrows: /takes lanes from/,
	buried: /lies under/,
} as const;

describe.each(traps)("$state: $connectors on $board", (trap) => {
	const { state, connectors, drawnAs = connectors, drawn, says } = trap;
	const board = one("board", trap.board);
	const measure = measured(trap.board, trap.brought);
	const round = measured(trap.board, { ...trap.brought, ...trap.instead });

	test("is measured, and not with what is brought instead", () => {
		const states = (of: PlanMeasure) =>
			connectors.map((name) => (placedIn(of, name)?.isBuried ? "buried" : endOf(of, name)?.state));
		expect(states(measure)).toEqual(connectors.map(() => state));
		expect(states(round)).not.toContain(state);
	});

	test.each(drawnAs)("%s is drawn so", (name) => {
		const ofIt = (of: PlanMeasure, columns: number) =>
			pictured(of, board, columns).filter((piece) => ` ${piece}`.includes(` ${name} `));
		expect(ofIt(measure, wide).filter((piece) => piece.includes(`${name} ${drawn}`))).toHaveLength(1);
		for (const line of planPicture(measure.plan, pictureShape(board, measure), usual))
			expect(line.length).toBeLessThanOrEqual(usual);
		// In the usual picture a name may be cut, the state never.
		expect(ofIt(measure, usual).filter((piece) => piece.includes(state))).toHaveLength(1);
		expect(ofIt(round, wide).filter((piece) => piece.includes(state))).toEqual([]);
	});

	test.each(drawnAs)("%s is so in the SVG", (name) => {
		const { written, heard } = svgOf(measure, board);
		const after = written.flatMap((piece, index) => {
			if (piece === name) return [written[index + 1] ?? ""];
			return piece.startsWith(`${name}: `) ? [piece] : [];
		});
		expect(after.map((piece) => piece.includes(state))).toEqual([true]);
		expect(heard).toContain(`${name}: ${drawn}`);
		expect(svgOf(round, board).heard).not.toContain(`${name}: ${drawn}`);
	});

	test("is told in one sentence", () => {
		expect(sentences(measure).filter((line) => line === says)).toEqual([says]);
		const alike = (line: string) => telling[state].test(line) && connectors.every((name) => line.includes(name));
		expect(sentences(measure).filter(alike)).toEqual([says]);
		expect(sentences(round).filter(alike)).toEqual([]);
	});
});

test("a card that finds its only slot covered is told so where the places are missing", () => {
	const brought = { graphicsCard: carousel, processor: honeyJar, cards: ["chime"] };
	const measure = measured("brindlecroft-primrose", brought);
	expect(measure.plan.unplaced.map(({ name }) => name)).toEqual(["Bellfoundry Chime"]);
	expect(endOf(measure, "SLOT_2")).toMatchObject({ state: "covered", by: ["Dapplegate Carousel"] });
	expect(sentences(measure)).toContain(
		"Bellfoundry Chime: 2 cards want such a card slot, and 1 can be used. SLOT_2 is covered by Dapplegate Carousel.",
	);
	const round = measured("brindlecroft-primrose", { ...brought, graphicsCard: crayon });
	expect(placedIn(round, "SLOT_2")?.device.name).toBe("Bellfoundry Chime");
});

test("a drive that finds the last port covered is told so where the places are missing", () => {
	const brought = { graphicsCard: helterSkelter, processor: deckhand, olderDrives: 4 };
	const measure = measured("pennywhistle-quadrille", brought);
	expect(sentences(measure)).toContain(
		"Older drive 4: 4 drives want such a port, and 3 can be used. No plug goes into SATA_3: Dapplegate Helter Skelter lies over it.",
	);
	expect(measured("pennywhistle-quadrille", { ...brought, lengthMm: 199 }).plan.unplaced).toEqual([]);
});

/**
 * The graphics card's slot, and the cards beside it; without the last of them it has all its lanes. Then what it is left
 * with in GB/s: eight lanes of PCI Express 5 carry 31.51, of generation 3 7.88 (32 and 8 GT/s a lane, 128b/130b; PCI
 * Express Base 5.0 and 3.0, from memory).
 */
const halved: readonly (readonly [
	board: string,
	slot: string,
	processor: string,
	cards: readonly string[],
	says: string,
])[] = [
	[
		"brindlecroft-honesty",
		"SLOT_2",
		deckhand,
		["town-crier"],
		"8 of its 16 lanes of PCI Express 5, 31.51 of the 63.02 GB/s it can use. Bellfoundry Town Crier takes the other lanes.",
	],
	[
		"fernquill-fireworks",
		"SLOT_2",
		deckhand,
		["turnstile"],
		"8 of its 16 lanes of PCI Express 5, 31.51 of the 63.02 GB/s it can use. Bellfoundry Turnstile takes the other lanes.",
	],
	[
		"tarradiddle-gale",
		"SLOT_1",
		honeyJar,
		["town-crier", "larder-door"],
		"8 of its 16 lanes of PCI Express 3, 7.88 of the 63.02 GB/s it can use. Bellfoundry Larder Door takes the other lanes.",
	],
	[
		"moorhen-godwit",
		"SLOT_1",
		scrumper,
		["town-crier", "turnstile", "larder-door"],
		"8 of its 16 lanes of PCI Express 5, 31.51 of the 63.02 GB/s it can use. Bellfoundry Larder Door takes the other lanes.",
	],
];

describe.each(halved)("on %s the graphics card in %s", (boardId, slot, processor, cards, says) => {
	const board = one("board", boardId);
	const brought = { graphicsCard: carousel, processor, cards };
	const measure = measured(boardId, brought);
	const round = measured(boardId, { ...brought, cards: cards.slice(0, -1) });

	test("has eight of sixteen lanes beside the last card, and all without it", () => {
		expect([measure, round].map((of) => placedIn(of, slot)?.device.name)).toEqual(Array(2).fill("Dapplegate Carousel"));
		expect([measure, round].map((of) => placedIn(of, slot)?.link.lanes)).toEqual([8, 16]);
		expect([measure, round].map((of) => endOf(of, slot)?.lanes)).toEqual([8, 16]);
		expect(measure.plan.unplaced).toEqual([]);
	});

	test("is drawn where it sits, and told in one sentence", () => {
		expect(pictured(measure, board, wide).join("\n")).toContain(`${slot} Dapplegate Carousel, 8 of 16 lanes`);
		const { written, heard } = svgOf(measure, board);
		expect(heard).toContain(`${slot}: Dapplegate Carousel, 8 of 16 lanes`);
		expect(written[written.indexOf(slot) + 1]).toMatch(/^Dapplegate.*, 8 of 16 lanes$/);
		// In the usual picture the name is cut, the lanes never.
		const lacking = (of: PlanMeasure) => pictured(of, board, usual).filter((line) => line.includes("8 of 16 lanes"));
		expect(lacking(measure).map((line) => line.includes(` ${slot} D`))).toEqual([true]);
		expect(lacking(round)).toEqual([]);
		expect(svgOf(round, board).heard).not.toContain("of 16 lanes");
		const alike = (line: string) => line.includes("of its 16 lanes");
		expect(sentences(measure).filter(alike)).toEqual([`Dapplegate Carousel in ${slot}: ${says}`]);
		expect(sentences(round).filter(alike)).toEqual([]);
	});
});

test("a processor with eight lanes halves the slot too", () => {
	const brought = { graphicsCard: carousel, processor: muralist };
	const board = one("board", "cobblestoat-flapjack");
	const told = (of: Brought) => sentences(measured(board.id, of)).filter((line) => /8 of its 16/.test(line));
	expect(told(brought)).toEqual([
		"Dapplegate Carousel in SLOT_1: 8 of its 16 lanes of PCI Express 4, 15.75 of the 63.02 GB/s it can use. This processor gives the slot no more.",
	]);
	expect(pictured(measured(board.id, brought), board, usual).join("\n")).toMatch(/SLOT_1 D\S*, 8 of 16 lanes/);
	expect(told({ ...brought, processor: deckhand })).toEqual([]);
});

/**
 * In GB/s: what the drives move where they lie, the first from the processor; and what the link carries. Four lanes of
 * generation 4 carry 7.88, of generation 3 3.94 (16 and 8 GT/s a lane, 128b/130b; PCI Express Base 4.0 and 3.0, from
 * memory).
 */
const uplink: readonly (readonly [
	board: string,
	processor: string,
	drives: readonly string[],
	wanted: number,
	carried: number,
	onChipset: readonly string[],
])[] = [
	["pennywhistle-mazurka", deckhand, ["marmalade", "dart", "shortbread"], 8.7, 7.88, ["M2_2", "M2_3"]],
	["pennywhistle-gavotte", deckhand, ["honeycomb", "marmalade", "dart"], 14.3, 7.88, ["M2_2", "M2_3"]],
	["cobblestoat-bannock", bosun, ["marmalade", "dart", "shortbread"], 5.64, 3.94, ["M2_2", "M2_3"]],
];

describe.each(uplink)(
	"the link of the chipset on %s beside %s with %j",
	(boardId, processor, drives, wanted, carried, onChipset) => {
		const brought = { graphicsCard: carousel, processor, drives };
		const measure = measured(boardId, brought);

		test("is wanted for more than it carries", () => {
			expect(measure.uplink.wantedGbytesPerS).toBeCloseTo(wanted, 2);
			expect(measure.uplink.carriesGbytesPerS).toBeCloseTo(carried, 2);
			expect(measure.uplink.devices.map(({ connector }) => connector.name).sort()).toEqual(onChipset);
		});

		test("is told of in one sentence, and not where the first two drives go in alone", () => {
			const alike = (line: string) => line.includes("chipset's link");
			const told = sentences(measure).filter(alike);
			expect(told).toHaveLength(1);
			// Named in the board's order, whichever drive lies where.
			expect(told[0]).toBe(
				`${onChipset.join(" and ")} share the chipset's link to the processor, ${carried} GB/s. All at once they could move ${wanted} GB/s, so they would slow each other down.`,
			);
			const drawn = planPicture(measure.plan, pictureShape({}, measure));
			const line = drawn.find((one) => one.includes("[ chipset ]"));
			expect(line).toContain(`[ chipset ] link ${carried} GB/s, ${wanted} wanted: too much`);
			expect(planPictureSvg(measure.plan, "a plan", pictureShape({}, measure))).toContain(
				`>chipset: link ${carried} GB/s, ${wanted} wanted: too much<`,
			);
			const round = measured(boardId, { ...brought, drives: drives.slice(0, 2) });
			expect(sentences(round).filter((line) => line.includes("slow each other"))).toEqual([]);
		});
	},
);

test("what the chipset's link carries all at once is told so, and one thing alone is not told of", () => {
	const told = (board: string, brought: Brought) =>
		sentences(measured(board, brought)).filter((line) => line.includes("chipset's link"));
	const eased = { graphicsCard: crayon, processor: deckhand, drives: fourFast.slice(0, 3), cards: ["town-crier"] };
	expect(told("pennywhistle-quadrille", eased)).toEqual([
		"M2_3 and SLOT_5 share the chipset's link to the processor, 15.75 GB/s. All at once they could move 8.25 GB/s, and the link carries that.",
	]);
	// One alone that is no faster than the link is no matter.
	expect(told("pennywhistle-quadrille", { ...eased, cards: [] })).toEqual([]);
});

test("an M.2 drive without a socket goes on an adapter card: drawn, and told with what is to be bought", () => {
	const board = one("board", "pennywhistle-gavotte");
	const brought = { graphicsCard: carousel, processor: deckhand, drives: fourFast };
	const measure = measured(board.id, brought);
	const needs = (of: Brought) => sentences(measured(board.id, of)).filter((line) => line.includes("adapter"));
	expect(placedIn(measure, "SLOT_5")).toMatchObject({ extra: "adapter card", device: { kind: "M.2 drive" } });
	expect(needs(brought)).toEqual([
		"Pantryshelf Shortbread in SLOT_5: 2 lanes of PCI Express 3, 1.7 GB/s, all it can use. It needs an adapter card, bought besides.",
	]);
	expect(pictured(measure, board, wide).join("\n")).toContain("SLOT_5 Pantryshelf Shortbread, on a card");
	const inUsual = pictured(measure, board, usual).filter((line) => line.includes("on a card"));
	expect(inUsual.map((line) => / SLOT_5 Pantryshelf\b.*, on a card/.test(line))).toEqual([true]);
	expect(svgOf(measure, board).heard).toContain("SLOT_5: Pantryshelf Shortbread, on a card");
	const round = { ...brought, drives: fourFast.slice(0, 3) };
	expect(needs(round)).toEqual([]);
	expect(svgOf(measured(board.id, round), board).heard).not.toContain("on a card");
});

test("every build here has a processor that the board's chipset serves, and each M.2 drive lies in a socket", () => {
	const builds = [
		...traps.flatMap(({ board, brought, instead }) => [
			[board, brought] as const,
			[board, { ...brought, ...instead }] as const,
		]),
		...halved.map(([board, , processor, cards]) => [board, { graphicsCard: carousel, processor, cards }] as const),
		...[muralist, deckhand].map(
			(processor) => ["cobblestoat-flapjack", { graphicsCard: carousel, processor }] as const,
		),
		...uplink.map(([board, processor, drives]) => [board, { graphicsCard: carousel, processor, drives }] as const),
	];
	for (const [boardId, brought] of builds) {
		const { socket, chipset } = one("board", boardId);
		const { generation, socket: processorSocket } = one("processor", brought.processor);
		const row = parts.platform.find((platform) => platform.socket === socket && platform.chipset === chipset);
		expect([boardId, processorSocket]).toEqual([boardId, socket]);
		const served = row?.generations.find((one) => one.generation === generation)?.served;
		expect([boardId, served !== undefined && served !== "no"]).toEqual([boardId, true]);
		const { placed, unplaced } = measured(boardId, brought).plan;
		expect([boardId, unplaced.map(({ name }) => name)]).toEqual([boardId, []]);
		const sticks = placed.filter(({ device }) => device.kind === "M.2 drive");
		expect([boardId, ...sticks.map(({ connector }) => connector.kind)]).toEqual([
			boardId,
			...sticks.map(() => "M.2 socket"),
		]);
	}
});
