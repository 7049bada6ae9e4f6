import { describe, expect, test } from "vitest";
import * as z from "zod";
import { boardSubjects } from "../../src/choose/findings-of-market.ts";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import { type BuildFacts, type BuildPartKind, emptyBuildFacts } from "../../src/parts/build.ts";
import { lookUpFact } from "../../src/parts/fact-path.ts";
import { type PartKind, type PartOf, partKinds } from "../../src/parts/part-kinds.ts";
import type { Wants } from "../../src/parts/wants.ts";
import { headerPlanOf } from "../../src/plan/header-plan.ts";
import { planFactsOf } from "../../src/plan/plan-facts.ts";
import { loadFactsOf } from "../../src/power/load-facts.ts";
import { powerFactsOf } from "../../src/power/power-facts.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { needOf, type RuleSubject, runRule } from "../../src/rules/run-rule.ts";
import { demoContext, scenarios, wholeDemo } from "../choose/demo.ts";

/** The board with its chipset row, and kinds of which a build has a part: of fans, lighting and screens it has answers. */
const judgedKinds = [
	"board",
	"platform",
	"processor",
	"case",
	"cooler",
	"memory",
	"graphicsCard",
	"supply",
	"drive",
	"addInCard",
] as const satisfies readonly PartKind[];

type Json = z.core.JSONSchema.BaseSchema;

/** Facts that hold a value, inside lists too: "board.m2Sockets[].cooled". A list of plain values is one fact. */
function valueFacts(schema: Json, path: string): readonly string[] {
	if (schema.properties)
		return Object.entries(schema.properties).flatMap(([key, inner]) => valueFacts(inner as Json, `${path}.${key}`));
	const items = schema.items as Json | undefined;
	return items?.properties ? valueFacts(items, `${path}[]`) : [path];
}

const allFacts = judgedKinds.flatMap((kind) => valueFacts(z.toJSONSchema(partKinds[kind].schema) as Json, kind));

// ---- Who reads what, written down while all rules, criteria and plans run over the invented market.

const read = new Set<string>();
const recorders = new WeakMap<object, object>();

/**
 * The same object, which writes down each fact that is looked at. Copying an object whole, as a spread or JSON does, is
 * no reading: nothing is made of the single facts by that.
 */
function recorded<T>(value: T, path: string): T {
	if (typeof value !== "object" || value === null) return value;
	const known = recorders.get(value);
	if (known) return known as T;
	let copying: (string | symbol)[] = [];
	const made = new Proxy(value as object, {
		ownKeys(target) {
			const keys = Reflect.ownKeys(target);
			copying = Array.isArray(target) ? [] : [...keys];
			return keys;
		},
		get(target, key, receiver) {
			const inner: unknown = Reflect.get(target, key, receiver);
			if (typeof key === "symbol" || key === "toJSON" || !Object.hasOwn(target, key)) {
				if (typeof key === "string" && key !== "toJSON" && !Array.isArray(target)) read.add(`${path}.${key}`);
				return inner;
			}
			if (Array.isArray(target)) return recorded(inner, `${path}[]`);
			if (copying[0] === key) copying.shift();
			else {
				copying = [];
				read.add(`${path}.${key}`);
			}
			return recorded(inner, `${path}.${key}`);
		},
	});
	recorders.set(value as object, made);
	return made as T;
}

const parts = wholeDemo.parts;
const buildKinds = [
	"processor",
	"case",
	"cooler",
	"memory",
	"graphicsCard",
	"supply",
] as const satisfies BuildPartKind[];

/** All wishes and plans at once, so that whoever looks only where something is wished looks. */
const wants: Partial<Wants> = {
	asOf: demoContext.asOf,
	priceCap: { minor: 20_000, currency: "EUR" },
	moneyInAll: { minor: 150_000, currency: "EUR" },
	memoryGb: 64,
	olderSataDrives: 1,
	screens: ["HDMI", "DVI"],
	oldThings: ["serial device", "IDE drive", "PCI card", "installed system"],
	rearDevices: 6,
	routerGbps: 2.5,
	clockPlan: "done-before",
	rescueMusts: ["fault-display", "flash-without-processor", "reset-at-back"],
	caseFans: 3,
	lights: ["5 V three-pin", "12 V four-pin", "maker's own"],
	soundUses: ["headphones", "surround", "optical"],
	colourTaste: "dark",
	laterThings: ["M.2 drive", "SATA drive", "memory", "card", "fan", "USB thing"],
	yearsKept: 6,
};
const wishes = Object.fromEntries(
	allRules
		.flatMap(({ reads, mayRead }) => [...reads, ...mayRead])
		.filter((path) => path.startsWith("wish."))
		.map((path) => [path.slice("wish.".length), "must" as const]),
);

/** Builds of the invented parts: each part stands in one, beside all wishes; and the builds of the invented people. */
function builds(): readonly BuildFacts[] {
	const most = Math.max(...buildKinds.map((kind) => parts[kind].length));
	const at = <K extends PartKind>(kind: K, index: number) => {
		const list = parts[kind] as readonly PartOf<K>[];
		return list[index % list.length] as PartOf<K>;
	};
	const made = Array.from({ length: most }, (_, index): BuildFacts => {
		const haves = buildKinds.map((kind) => [
			kind,
			{ state: "have", ownership: "planned", part: recorded(at(kind, index), kind) },
		]);
		return {
			...emptyBuildFacts,
			...Object.fromEntries(haves),
			...wants,
			drives: [0, 1, 2].map((nth) => recorded(at("drive", index + nth), "drive")),
			addInCards: [0, 1].map((nth) => recorded(at("addInCard", index + nth), "addInCard")),
			wishes,
		};
	});
	const people = scenarios.map(({ file }) => recordedBuild(foldAnswers(file.answers, demoContext).facts));
	return [...made, ...people];
}

function recordedBuild(facts: BuildFacts): BuildFacts {
	const haves = buildKinds.map((kind) => {
		const have = facts[kind];
		return [kind, have.state === "have" ? { ...have, part: recorded(have.part, kind) } : have];
	});
	return {
		...facts,
		...Object.fromEntries(haves),
		drives: facts.drives?.map((one) => recorded(one, "drive")) ?? null,
		addInCards: facts.addInCards?.map((one) => recorded(one, "addInCard")) ?? null,
	};
}

/** Looks at all that is measured: each figure is worked out only when it is asked for. */
function lookAtAll(measured: object | undefined): void {
	for (const key of Object.keys(measured ?? {})) void (measured as Record<string, unknown>)[key];
}

/** Every board with a few of the builds, and every build with a few of the boards. */
function runAll(): void {
	const all = builds();
	for (const [index, { board: plain, platform, assumed }] of boardSubjects(wholeDemo).entries())
		for (const nth of [0, 1, 2]) {
			const facts = all[(index + nth * 13) % all.length] as BuildFacts;
			const board = recorded(plain, "board");
			const plan = planFactsOf(board, facts);
			const headers = headerPlanOf(board, facts);
			const power = powerFactsOf(board, facts);
			const load = loadFactsOf(facts);
			for (const measured of [plan, headers, power, power.steady, load]) lookAtAll(measured);
			const subject: RuleSubject = {
				board,
				assumed,
				facts,
				measures: { plan: () => plan, headers: () => headers, power: () => power, load: () => load },
				...(platform ? { platform: recorded(platform, "platform") } : {}),
			};
			for (const rule of allRules) {
				runRule(rule, subject);
				needOf(rule, subject);
			}
			for (const { measure, reads } of allCriteria)
				measure(
					Object.fromEntries(
						reads.flatMap((path) => {
							const found = lookUpFact(subject, path);
							return found.known ? [[path, found.value]] : [];
						}),
					),
				);
		}
}

runAll();
/** A rule that names a fact reads it, though this board or that build may keep it from looking. */
const named = [
	...allRules.flatMap(({ reads, mayRead }) => [...reads, ...mayRead]),
	...allCriteria.flatMap(({ reads }) => reads),
];
const unread = allFacts.filter((fact) => !read.has(fact) && !named.includes(fact));

// ---- Facts that are read by none of them, each with its reason.

/** Facts that every kind has, and that nothing judges. */
const shownOnly: Readonly<Record<string, string>> = {
	id: "tells parts apart in files",
	maker: "is shown; no maker is better than another here",
	revision: "is shown; two revisions are two boards of the market",
	invented: "marks the demonstration's parts where they are shown",
	checkedOn: "says how old a price is where the price is printed",
	lit: "is shown; what lights plug in is asked as a want",
	evidence: "says where the other facts were read, and stands beside them",
};
const soldOnly: Readonly<Record<string, string>> = {
	"offers[].seller": "is shown beside the offer",
	"offers[].seenOn": "says how old the offer is; becomes the day of the price where an offer is the price",
};
/** Of parts that are not the board. */
const notTheBoard: Readonly<Record<string, string>> = {
	"price.minor": "adds up to the money planned while answers are folded",
	"price.currency": "adds up to the money planned while answers are folded",
	"offers[].price.minor": "only a board is chosen here",
	"offers[].price.currency": "only a board is chosen here",
	"offers[].condition": "only a board is chosen here",
	"offers[].returnableUntil": "the day is asked, for all that can go back",
	warrantyYears: "only a board is chosen here",
	colour: "only a board is chosen here; the taste is asked",
};

const rowReasons: Readonly<Record<string, string>> = {
	"platform.id": shownOnly["id"] as string,
	"platform.name": "is shown, never judged",
	"platform.invented": shownOnly["invented"] as string,
	"platform.evidence": shownOnly["evidence"] as string,
	"platform.socket": "finds the row that belongs to a board",
	"platform.raises.processorClock": "fills in the board's own fact where its page is silent (reference/assumed-facts)",
	"platform.raises.memoryRate": "fills in the board's own fact where its page is silent (reference/assumed-facts)",
	"platform.chipset": "finds the row that belongs to a board",
};

const ownReasons: Readonly<Record<string, string>> = {
	"board.rearUsb[].gbps": "sockets are counted; no rule asks for fast ones yet",
	"board.wireless.bluetooth": "comes with the wireless; no wish asks for it yet",
	"board.sound.codec": "is shown; a codec's name tells little of the sound",
	"board.headers.typeC[].charging": "the plug it needs is judged as an extra power plug; no wish for charging yet",
	"board.headers.trustedModule": "no question asks for such a module yet",
	"board.powerDelivery.pairing": "stages are counted one by one, however they are split",
	"board.powerDelivery.measurements[].date": "is shown beside the test",
	"board.recovery.startButton": "is shown; of little help once the board is in the case",
	"board.firmware.releases[].note": "is shown; words that nobody can judge by rule",
	"board.m2Sockets[].widestMm": "is shown; ordinary drives are 22 mm wide, which every socket holds",
	"board.wireless.bluetoothVersion": "is shown; what is asked is whether there is any",
	"board.supportList.rows[].note": "is shown; notes are words for a person",
	"board.supportList.readOn": "no rule on a list read long ago yet",
	"board.inTheBox": "no rule on missing cables, screws and aerials yet",
	"processor.baseGhz": "is shown; the watts decide, not the clock",
	"processor.boostGhz": "is shown; the watts decide, not the clock",
	"processor.cores": "is shown; the watts decide, not the cores",
	"processor.threads": "is shown; the watts decide, not the threads",
	"processor.hottestC": "no rule holds the cooler's heat against it yet",
	"processor.lanes.storage": "the board's sockets say what is wired; no rule holds the two against each other yet",
	"processor.lanes.uplink": "the board's own uplink is judged",
	"case.supplyIncludedW": "a supply is asked by itself; no rule knows the one in the case yet",
	"case.frontSockets": "is shown; the plugs of their cables are held against the headers",
	"case.fanPlaces[].place": "fans are asked by their number; no rule holds them against the places yet",
	"case.fanPlaces[].sizeMm": "fans are asked by their number; no rule holds them against the places yet",
	"case.fanPlaces[].count": "fans are asked by their number; no rule holds them against the places yet",
	"case.fanPlaces[].fitted": "fans are asked by their number; no rule holds them against the places yet",
	"memory.name": "is shown, never judged",
	"memory.standardMtPerS": "no rule says yet what the memory does without its profile",
	"supply.name": "is shown, never judged",
	"drive.gb": "is shown; how much room somebody needs is not asked",
};

const partsOfBuilds = judgedKinds.filter((kind) => kind !== "platform");
const underEach = (kinds: readonly PartKind[], reasons: Readonly<Record<string, string>>) =>
	Object.fromEntries(
		kinds.flatMap((kind) => Object.entries(reasons).map(([fact, reason]) => [`${kind}.${fact}`, reason])),
	);
const reasons: Readonly<Record<string, string>> = {
	...underEach(partsOfBuilds, { ...shownOnly, ...soldOnly }),
	...underEach(
		partsOfBuilds.filter((kind) => kind !== "board"),
		notTheBoard,
	),
	...rowReasons,
	...ownReasons,
};

test("every fact is read by a rule, a criterion, the plan, the headers or the power estimate, or says why not", () => {
	expect(unread.filter((fact) => !Object.hasOwn(reasons, fact))).toEqual([]);
});

test("no fact with such a reason is read after all, and each is a fact", () => {
	expect(Object.keys(reasons).filter((fact) => !unread.includes(fact))).toEqual([]);
});

test("each reason is said in words", () => {
	for (const reason of Object.values(reasons)) expect(reason).toMatch(/^[a-z].*[^.]$/);
});

test("lists are looked into, and most facts are read", () => {
	expect(allFacts).toEqual(expect.arrayContaining(["board.m2Sockets[].cooled", "board.price.minor", "drive.key"]));
	expect(read).toContain("board.m2Sockets[].cooled");
	expect(unread.length).toBeLessThan(allFacts.length / 2);
});

describe("writing down what is read", () => {
	const socket = { name: "M2_1", key: "M", lengthsMm: [80] };
	const made = recorded({ form: "ATX", headers: { usb2: 1 }, m2Sockets: [socket] }, "made");
	const madeReads = () => [...read].filter((path) => path.startsWith("made")).sort();

	test("a copy reads nothing of what it copies", () => {
		void { ...made };
		void JSON.stringify(made);
		expect(madeReads()).toEqual([]);
	});

	test("a look at one fact reads it and no other, inside lists too", () => {
		void made.m2Sockets.map(({ key }) => key);
		void { ...made }.headers.usb2;
		expect(madeReads()).toEqual(["made.headers.usb2", "made.m2Sockets", "made.m2Sockets[].key"]);
	});
});
