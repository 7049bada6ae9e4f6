import type { Highs } from "highs";
import type { Connector } from "../../src/plan/connector.ts";
import { type CardDevice, type Device, isCard } from "../../src/plan/device.ts";
import { type Goal, goalsFor, isUseful } from "../../src/plan/goals.ts";
import { type Way, wayIn } from "../../src/plan/goes-in.ts";
import { comparedMbytesPerS } from "../../src/plan/link-speed.ts";
import { caseLeaves, mayStandUpright, type PlanProblem } from "../../src/plan/problem.ts";

type Term = readonly [factor: number, variable: string];

/** One device in one connector with so many lanes: 1 where the plan does so. */
interface Choice {
	readonly variable: string;
	readonly device: Device;
	readonly connector: Connector;
	readonly at: number;
	readonly lanes: number;
	readonly isUpright: boolean;
	readonly way: Way;
}

interface Model {
	readonly rows: readonly string[];
	readonly choices: readonly Choice[];
	readonly off: readonly string[];
	readonly buried: readonly string[];
	readonly inAir: readonly string[];
	readonly binaries: readonly string[];
}

/**
 * The best value of each goal but "order", one after the other, by a mixed-integer solver: HiGHS (npm highs 1.15.3).
 * What goes in where, and what a place is worth, is taken from the plan's own small functions; modes, covers and the
 * search for the best are written anew.
 */
export function valuesByHighs(highs: Highs, problem: PlanProblem): readonly number[] {
	const model = modelOf(problem);
	const fixed: string[] = [];
	return goalsFor(problem)
		.filter(({ goal }) => goal !== "order")
		.map((goal) => {
			const terms = termsOf(goal, model);
			if (terms.length === 0) return 0;
			// A gap of nothing: the usual one of a ten-thousandth of the value is more than 1 MB/s of a fast drive.
			// Without presolving, which ends a few of these models (seed 143) with an error and no answer.
			const options = { mip_rel_gap: 0, presolve: "off" } as const;
			const solution = highs.solve(textOf(terms, [...model.rows, ...fixed], model.binaries), options);
			if (solution.Status !== "Optimal") throw new Error(`${goal.goal}: ${solution.Status}`);
			const best = Math.round(solution.ObjectiveValue);
			// All values are whole numbers, so half of one is room for the solver's rounding and for nothing else.
			fixed.push(`${sum(terms)} >= ${best - 0.5}`);
			return best + 0;
		});
}

function modelOf(problem: PlanProblem): Model {
	const { connectors, devices, groups } = problem;
	const rows: string[] = [];
	const binaries: string[] = [];
	const binary = (name: string) => {
		binaries.push(name);
		return name;
	};
	const row = (terms: readonly Term[], bound: string) => {
		if (terms.length > 0) rows.push(`${sum(terms)} ${bound}`);
	};
	const each = (names: readonly string[], factor = 1): readonly Term[] => names.map((name) => [factor, name]);

	const modeNames = groups.map(({ modes }, group) => modes.map((_, mode) => binary(`mode_${group}_${mode}`)));
	for (const names of modeNames) row(each(names), "= 1");

	const levels = connectors.map((connector, at) => {
		const own = connector.isDead ? 0 : connector.lanes;
		const shared = groups.flatMap(({ members, modes }, group) =>
			members.includes(at)
				? [modes.map((mode, nth) => [mode.get(at) ?? 0, modeNames[group]?.[nth] as string] as const)]
				: [],
		);
		const widths = [...new Set([own, ...shared.flat().map(([lanes]) => lanes)])].filter((lanes) => lanes <= own);
		const names = new Map(widths.map((lanes) => [lanes, binary(`wide_${at}_${lanes}`)]));
		row(each([...names.values()]), "= 1");
		for (const [lanes, name] of names) {
			// Every group gives at least so much, and one of them, or the connector itself, no more.
			for (const modes of shared) {
				const enough = modes.filter(([given]) => given >= lanes).map(([, mode]) => mode);
				row([[1, name], ...each(enough, -1)], "<= 0");
			}
			const exactly = shared.flat().filter(([given]) => given === lanes);
			if (lanes !== own)
				row(
					[
						[1, name],
						...each(
							exactly.map(([, mode]) => mode),
							-1,
						),
					],
					"<= 0",
				);
		}
		return names;
	});

	const choices = devices.flatMap((device, nth) =>
		connectors.flatMap((connector, at): Choice[] => {
			const way = wayIn(device, connector, problem.leaning, problem.mayAdapt);
			if (!way) return [];
			const isFlat = !isCard(device) || caseLeaves(problem, device, connector.row);
			const isUprightToo = isCard(device) && mayStandUpright(problem, device);
			return [...(levels[at] ?? [])].flatMap(([lanes, width]) =>
				lanes < Math.max(1, way.leastLanes)
					? []
					: [...(isFlat ? [false] : []), ...(isUprightToo ? [true] : [])].map((isUpright) => {
							const variable = binary(`in_${nth}_${at}_${lanes}${isUpright ? "_up" : ""}`);
							row(
								[
									[1, variable],
									[-1, width],
								],
								"<= 0",
							);
							return { variable, device, connector, at, lanes, isUpright, way };
						}),
			);
		}),
	);
	const named = (keep: (choice: Choice) => boolean) => choices.filter(keep).map(({ variable }) => variable);
	for (const device of devices) row(each(named((choice) => choice.device === device)), "<= 1");
	// A way that holds only without a SATA drive in these sockets.
	groups.forEach(({ withoutSata }, group) => {
		const barred = named(({ device, at }) => {
			const link = device.kind === "M.2 drive" ? device.drive.link : "PCI Express";
			const isSata = link === "SATA" || (link === undefined && problem.leaning === "worst");
			return withoutSata?.sockets.includes(at) === true && isSata;
		});
		const name = modeNames[group]?.[withoutSata?.mode ?? -1];
		if (name !== undefined) for (const one of barred) row(each([one, name]), "<= 1");
	});
	connectors.forEach((_, at) => {
		row(each(named((choice) => choice.at === at)), "<= 1");
	});

	const cards = devices.filter(isCard);
	const upright = named(({ isUpright }) => isUpright);
	for (const card of cards) {
		if (card.kind !== "graphics card" && !card.isLow && upright.length > 0)
			row(each([...named(({ device }) => device === card), ...upright]), "<= 1");
		connectors.forEach((connector, at) => {
			const above = named(
				(choice) => choice.device === card && !choice.isUpright && covers(card, choice.connector, connector),
			);
			const others = named(({ device, at: place }) => device !== card && place === at);
			if (above.length > 0 && others.length > 0) row(each([...above, ...others]), "<= 1");
		});
	}

	const isNowAt = (at: number) => named((choice) => choice.at === at && choice.device.standing !== "later");
	const flagged = (flag: string, reaches: (card: CardDevice, seat: Connector, other: Connector) => boolean) =>
		connectors.flatMap((connector, at): string[] => {
			const name = `${flag}_${at}`;
			const pressing = cards
				.map((card) =>
					named((choice) => choice.device === card && !choice.isUpright && reaches(card, choice.connector, connector)),
				)
				.filter((above) => above.length > 0);
			const inside = isNowAt(at);
			if (pressing.length === 0 || inside.length === 0) return [];
			for (const above of pressing) row([...each([...above, ...inside]), [-1, name]], "<= 1");
			return [binary(name)];
		});
	const buried = flagged("buried", buries);
	const inAir = flagged("air", takesAir);
	const used = groups.map(({ members }, group) => {
		const name = binary(`used_${group}`);
		for (const at of members) {
			const inside = isNowAt(at);
			if (inside.length > 0) row([...each(inside), [-1, name]], "<= 0");
		}
		return name;
	});
	// A group of which nothing of now is used switches nothing off.
	const off = connectors.flatMap(({ isDead, lanes }, at): string[] => {
		const name = `off_${at}`;
		const ways = groups.flatMap(({ members, modes }, group) =>
			members.includes(at) && !isDead && lanes > 0
				? [{ group, without: modes.flatMap((on, mode) => (on.get(at) ? [] : [modeNames[group]?.[mode] as string])) }]
				: [],
		);
		if (ways.length === 0) return [];
		for (const { group, without } of ways)
			if (without.length > 0) row([...each(without), [1, used[group] as string], [-1, name]], "<= 1");
		return [binary(name)];
	});
	return { rows, choices, off, buried, inAir, binaries };
}

/** A flat card takes the slots of the rows below its own, and the ports that stand up in any of its rows. */
function covers(card: CardDevice, seat: Connector, other: Connector): boolean {
	const down = rowsDown(seat, other);
	if (other.kind === "card slot") return down >= 1 && down <= card.rows - 1;
	return other.kind === "drive port" && !!other.port.upright && card.reachesEdge && down >= 0 && down <= card.rows - 1;
}

/** A long card hides the sockets on the front of the board in any of its rows. */
function buries(card: CardDevice, seat: Connector, other: Connector): boolean {
	if (other.kind !== "M.2 socket" || (other.socket.place !== undefined && other.socket.place !== "front")) return false;
	const down = rowsDown(seat, other);
	return card.isLong && down >= 0 && down <= card.rows - 1;
}

function takesAir(card: CardDevice, seat: Connector, other: Connector): boolean {
	return card.kind === "graphics card" && other.kind === "card slot" && rowsDown(seat, other) === card.rows;
}

/** Never true of anything where a row is not given. */
function rowsDown({ row: from }: Connector, { row: to }: Connector): number {
	return from === null || to === null ? Number.NaN : to - from;
}

function termsOf(goal: Goal, { choices, off, buried, inAir }: Model): readonly Term[] {
	if (goal.goal === "kept on") return off.map((name) => [-1, name]);
	if (goal.goal === "not buried") return buried.map((name) => [-1, name]);
	if (goal.goal === "air") return inAir.map((name) => [-1, name]);
	return choices.map((choice): Term => [worth(goal, choice), choice.variable]).filter(([factor]) => factor !== 0);
}

function worth(goal: Goal, { device, connector, at, lanes, isUpright, way }: Choice): number {
	const isLater = device.standing === "later";
	if (goal.goal === "later") return isLater ? 1 : 0;
	if (goal.goal === "later speed") return isLater && isUseful(device, connector, lanes) ? 1 : 0;
	if (isLater) return 0;
	const isGraphics = device.kind === "graphics card";
	switch (goal.goal) {
		case "graphics card":
			return isGraphics ? (lanes >= goal.enoughLanes ? 2 : 1) : 0;
		case "owned":
			return device.standing === "owned" ? 1 : 0;
		case "placed":
			return 1;
		case "no extras":
			return way.extra || isUpright ? -1 : 0;
		case "graphics lanes":
			return isGraphics ? Math.min(lanes, device.lanes ?? 16) : 0;
		case "graphics speed":
			return isGraphics ? comparedMbytesPerS(device, connector, lanes) : 0;
		case "first slot":
			return isGraphics ? 100 - (connector.row ?? at) : 0;
		case "speed":
			return device.id === goal.deviceId ? comparedMbytesPerS(device, connector, lanes) : 0;
		case "from processor":
			return device.id === goal.deviceId && connector.from === "processor" ? 1 : 0;
		case "no adapter":
			return device.id === goal.deviceId && !way.extra ? 1 : 0;
		case "cooled": {
			const isHot = device.kind === "M.2 drive" && (device.generation ?? 0) >= 4 && !device.drive.ownCooler;
			return isHot && connector.kind === "M.2 socket" && connector.socket.cooled ? 1 : 0;
		}
		default:
			throw new Error(`no worth of a place for ${goal.goal}`);
	}
}

function sum(terms: readonly Term[]): string {
	return terms.map(([factor, name]) => `${factor < 0 ? "-" : "+"} ${Math.abs(factor)} ${name}`).join("\n ");
}

function textOf(goal: readonly Term[], rows: readonly string[], binaries: readonly string[]): string {
	const numbered = rows.map((row, index) => `r${index}: ${row}`);
	return ["Maximize", `goal: ${sum(goal)}`, "Subject To", ...numbered, "Binary", ...binaries, "End", ""].join("\n");
}
