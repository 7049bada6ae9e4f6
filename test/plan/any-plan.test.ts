import { describe, expect, test } from "vitest";
import { compareGains } from "../../src/maths/best-assignment.ts";
import type { Drive } from "../../src/parts/drive.ts";
import { type BestPlan, bestPlan } from "../../src/plan/best-plan.ts";
import { isCard } from "../../src/plan/device.ts";
import { planFor } from "../../src/plan/plan.ts";
import { type PlanProblem, problemOf } from "../../src/plan/problem.ts";
import { bareBuild, m2, ports, slot, stick } from "./made-up-problem.ts";
import { randomProblem } from "./random-problems.ts";

const seeds = Array.from({ length: 150 }, (_, index) => 5001 + index);
const timeout = 300_000;
/** The graphics card, owned things, all things. */
const firstGoals = ({ gains }: BestPlan) => [0, 1, 2].map((goal) => gains[goal] ?? 0);

/** What is wrong with a plan, told from the facts alone. */
function slipsOf({ connectors, devices, groups }: PlanProblem, { placements, settings }: BestPlan): readonly string[] {
	const placed = devices.flatMap((device, index) => {
		const placement = placements[index];
		return placement ? [{ device, ...placement }] : [];
	});
	return placed.flatMap(({ device, connector: at, standing }) => {
		const connector = connectors[at];
		const givenBy = groups.flatMap(({ members, modes: all }, group) =>
			members.includes(at) ? [all[settings[group]?.mode ?? -1]?.get(at) ?? 0] : [],
		);
		const lanes = Math.min(connector?.lanes ?? 0, ...givenBy);
		const others = placed.filter((other) => other.device !== device);
		const slips = {
			"shares its connector": others.some((other) => other.connector === at),
			"is a SATA drive where its group has none": groups.some(
				({ withoutSata: way }, group) =>
					way?.mode === settings[group]?.mode &&
					way?.sockets.includes(at) === true &&
					device.kind === "M.2 drive" &&
					device.drive.link === "SATA",
			),
			"is in a dead connector": connector?.isDead !== false,
			"is in a connector that is off": lanes < 1,
			"is said to have other lanes": standing.lanes !== lanes,
			"is covered": others.some(({ device: card, connector: seat, standing: { isUpright } }) => {
				if (!isCard(card) || isUpright) return false;
				const down = (connector?.row ?? Number.NaN) - (connectors[seat]?.row ?? Number.NaN);
				if (!(down < card.rows)) return false;
				if (connector?.kind === "card slot") return down > 0;
				return connector?.kind === "drive port" && connector.port.upright === true && card.reachesEdge && down >= 0;
			}),
			"is too high to lie under an upright graphics card":
				isCard(device) && !device.isLow && others.some((other) => other.standing.isUpright),
		};
		return Object.entries(slips).flatMap(([slip, is]) => (is ? [`${device.id} ${slip}`] : []));
	});
}

test("nothing stands where nothing can", { timeout }, () => {
	const slips = seeds.flatMap((seed) => {
		const problem = randomProblem(seed);
		return slipsOf(problem, bestPlan(problem)).map((slip) => `seed ${seed}: ${slip}`);
	});
	expect(slips).toEqual([]);
});

test("a sharing group less never places fewer", { timeout }, () => {
	for (const seed of seeds) {
		const problem = randomProblem(seed);
		const before = firstGoals(bestPlan(problem));
		problem.groups.forEach((_, group) => {
			const after = firstGoals(bestPlan({ ...problem, groups: problem.groups.filter((_, index) => index !== group) }));
			expect(compareGains(after, before), `seed ${seed} without group ${group}`).toBeGreaterThanOrEqual(0);
		});
	}
});

// Only one that is still to be bought: for an owned one, two others may have to stay out, as it comes before them.
test("a planned device more never lets fewer be placed, and at most one more", { timeout }, () => {
	for (const seed of seeds) {
		const problem = randomProblem(seed);
		const last = problem.devices.findLast(({ kind, standing }) => kind !== "graphics card" && standing !== "later");
		if (!last) continue;
		const [graphics, owned, placed = 0] = firstGoals(bestPlan(problem));
		const devices = [...problem.devices, { ...last, id: "one-more", standing: "planned" as const }];
		const after = firstGoals(bestPlan({ ...problem, devices }));
		expect(
			[
				[graphics, owned, placed],
				[graphics, owned, placed + 1],
			],
			`seed ${seed}`,
		).toContainEqual(after);
	}
});

test("the same problem always has the same plan", { timeout }, () => {
	for (const seed of seeds) expect(bestPlan(randomProblem(seed))).toEqual(bestPlan(randomProblem(seed)));
});

/** Which things stand where, and how; two that are the same in all but their number are one as good as the other. */
function standsOf({ devices }: PlanProblem, { placements }: BestPlan): readonly string[] {
	return devices.map((device, index) => JSON.stringify([{ ...device, id: "" }, placements[index]])).sort();
}

test("the order in which things are named changes nothing", { timeout }, () => {
	for (const seed of seeds) {
		const problem = randomProblem(seed);
		const before = bestPlan(problem);
		const { devices } = problem;
		const turned = devices.map((_, index) => devices[(index + seed) % devices.length] as (typeof devices)[number]);
		for (const others of [[...devices].reverse(), turned]) {
			const changed = { ...problem, devices: others };
			const after = bestPlan(changed);
			expect([standsOf(changed, after), after.settings, after.gains], `seed ${seed}`).toEqual([
				standsOf(problem, before),
				before.settings,
				before.gains,
			]);
		}
	}
});

describe("of things that are as well off either way, the first place has", () => {
	const board = { m2Sockets: [m2("M1"), m2("M2")], cardSlots: [], drivePorts: ports(2), conditions: [], sharing: [] };
	const first = (drives: readonly Drive[], olderSataDrives = 0) =>
		planFor(problemOf(board, { ...bareBuild, drives, olderSataDrives }, { leaning: "best" }))
			.placed.filter(({ connector }) => ["M1", "S1"].includes(connector.name))
			.map(({ device }) => device.name);
	const box: Drive = { id: "box", name: "Box", shape: "3.5 inch", link: "SATA" };
	const [dart, mouse] = [stick("Dart"), stick("Mouse")];
	const [second, tenth] = [stick("Dart 2"), stick("Dart 10")];
	const [early, late] = [stick("Dart", { lengthMm: 60 }), stick("Dart", { lengthMm: 80 })];
	test.each([
		["the one whose name comes first", [mouse, dart], "Dart"],
		["numbers in names counted as numbers", [tenth, second], "Dart 2"],
	] as const)("%s", (_, drives, name) => {
		expect(first(drives)).toEqual([name]);
		expect(first([...drives].reverse())).toEqual([name]);
	});
	test("what is owned before what is planned", () => {
		expect(first([box], 1)).toEqual(["older drive"]);
	});
	test("of one name, something else that tells them apart", () => {
		const lengthsAtFirst = [
			[early, late],
			[late, early],
		].map((drives) => {
			const { placed } = planFor(problemOf(board, { ...bareBuild, drives }, { leaning: "best" }));
			const { device } = placed.find(({ connector }) => connector.name === "M1") ?? {};
			return device && "drive" in device ? device.drive.lengthMm : null;
		});
		expect(lengthsAtFirst[0]).toBe(lengthsAtFirst[1]);
	});
	test("and they are shown in the order they are named", () => {
		const shown = [mouse, dart];
		const { placed } = planFor(problemOf(board, { ...bareBuild, drives: shown }, { leaning: "best" }));
		expect(placed.map(({ device, connector }) => [device.name, connector.name])).toEqual([
			["Mouse", "M2"],
			["Dart", "M1"],
		]);
	});
});

test("a board with more sharing groups than any known one is still planned, and nothing stands where nothing can", {
	timeout,
}, () => {
	const many = 12;
	const each = <T>(make: (nth: number) => T) => Array.from({ length: many }, (_, index) => make(index + 1));
	const board = {
		cardSlots: [slot("X16", 1, 16)],
		m2Sockets: each((nth) => m2(`M${nth}`)),
		drivePorts: ports(2 * many),
		conditions: [],
		sharing: each((nth) => ({
			members: [`M${nth}`, `S${2 * nth - 1}`, `S${2 * nth}`],
			modes: [{ on: { [`M${nth}`]: 4 } }, { on: { [`S${2 * nth - 1}`]: 1, [`S${2 * nth}`]: 1 } }],
		})),
	};
	const build = { ...bareBuild, drives: [stick("Dart"), stick("Mouse")], olderSataDrives: 4 };
	const problem = problemOf(board, build, { leaning: "best" });
	const plan = bestPlan(problem);
	expect(slipsOf(problem, plan)).toEqual([]);
	expect(plan.placements).not.toContain(null);
});
