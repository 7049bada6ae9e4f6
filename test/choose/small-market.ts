import { allCriteria } from "../../src/criteria/all-criteria.ts";
import type { Board } from "../../src/parts/board.ts";
import type { Build, BuildFacts, World } from "../../src/parts/build.ts";
import { makeMarket } from "../../src/parts/make-market.ts";
import type { Market } from "../../src/parts/market.ts";
import type { Platform } from "../../src/parts/platform.ts";
import { buildFacts, type GivenBuild } from "../rules/rule-subject.ts";

/** A market of these boards, with ids board-1, board-2 ... and names of their own where none is given. */
export function smallMarket(boards: readonly Partial<Board>[], platforms: readonly Platform[] = []): Market {
	const named = boards.map(
		(facts, index): Board => ({ id: `board-${index + 1}`, name: `Board ${index + 1}`, ...facts }),
	);
	return makeMarket("a small market", [{ schema: "boardwalk/parts@1", boards: named, platforms: [...platforms] }])
		.market;
}

/** A build in which nothing is open, or one that may turn out in several ways, each what is known and some more. */
export function buildOf(known: GivenBuild, ways: Readonly<Record<string, GivenBuild>> = {}): Build {
	const facts = buildFacts(known);
	const worlds = Object.entries(ways).map(
		([labels, more]): World => ({
			facts: buildFacts({ ...known, ...more }),
			choices: labels.split(", ").map((label, index) => ({ questionId: `question/${index + 1}`, label })),
		}),
	);
	return { facts, worlds: worlds.length > 0 ? worlds : [{ facts, choices: [] }] };
}

/** A board to which no rule objects in the build below. */
export const goodBoard: Partial<Board> = {
	socket: "Kettle 7",
	form: "ATX",
	supportList: { rows: [{ processor: "Piccolo" }] },
	memory: { type: "DDR5", slots: 2, channels: 2 },
	power: { processorPlugs: ["8-pin"] },
	pictureSockets: ["HDMI"],
	headers: { fans: [{ name: "FAN_1", use: "processor" }] },
	rearUsb: [{ plug: "A", count: 6 }],
	price: { minor: 15_000, currency: "EUR" },
};

/** Everything a rule asks for. */
export const goodBuild: GivenBuild = {
	processor: {
		socket: "Kettle 7",
		graphics: true,
		baseW: 60,
		peakW: 90,
		memory: { types: ["DDR4", "DDR5"], channels: 2, rates: [{ modulesPerChannel: 1, mtPerS: 4800 }] },
	},
	case: { boardForms: ["ATX"], standoffs: ["A", "C", "F", "G", "H", "J", "K", "L", "M"], frontPlugs: [] },
	graphicsCard: "none",
	memory: { type: "DDR5", modules: 2, gbPerModule: 16, mtPerS: 4800 },
	cooler: "none",
	supply: { processorPlugs: ["8-pin"] },
	priceCap: { minor: 18_000, currency: "EUR" },
	wishes: { "features/rear-usb-c": "dont-mind", "features/wireless": "dont-mind" },
};

/** Importance under which every criterion but these counts for nothing; how much these count is still to be said. */
export function countingOnly(...criterionIds: readonly string[]): BuildFacts["importance"] {
	const others = allCriteria.filter(({ id }) => !criterionIds.includes(id));
	return Object.fromEntries(others.map(({ id }) => [id, "not-at-all"]));
}
