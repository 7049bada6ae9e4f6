import { largestMatching } from "../../maths/bipartite-matching.ts";
import type { Board } from "../../parts/board.ts";
import type { Drive } from "../../parts/drive.ts";
import { isM2Drive, isSataDrive } from "../../reference/m2-fit.ts";
import { defineRule } from "../define-rule.ts";
import { m2PlacesOf } from "../m2-places.ts";
import { cannotTell, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

type Sharing = NonNullable<Board["sharing"]>;

/** More ways than any board has; past them only the ports that share with nothing are counted. */
const mostWays = 256;

/** Common practice, no source: where a page is silent, an M.2 drive switches off two ports at the most. */
const portsPerM2AtWorst = 2;

/**
 * SATA ports against the drives that hang on a cable. An M.2 socket in use can switch ports off: every way of using the
 * sharing groups that leaves the M.2 drives their sockets is gone through, and the ports left are counted.
 *
 * Card slots in the same groups are not looked at, nor limits by processor: that is a matter of the whole plan.
 */
export const drivePorts = defineRule({
	id: "fit/drive-ports",
	scope: "board",
	label: "Drive ports",
	wayOut: "fewer drives with a cable",
	asks: "Are there enough SATA ports for your drives?",
	why: "Each drive with a thin flat cable needs a SATA port. An M.2 drive in the wrong socket can switch ports off.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead: ["drives", "olderSataDrives", "board.drivePorts", "board.m2Sockets", "board.sharing"],
	messages: {
		notAsked: () => "You have named no drive that needs a SATA port.",
		enough: ({ drives, ports }: PortWords) => `${drivesNeed(drives)}; the board has ${portWords(ports)}.`,
		enoughBeside: ({ drives, ports }: PortWords) =>
			`${drivesNeed(drives)}; beside your M.2 drives ${portWords(ports)} ${ports === 1 ? "works" : "work"}.`,
		rightSocket: ({ drives, ports, fewest }: PortWords & { fewest: number }) =>
			`${drivesNeed(drives)}; between ${fewest} and ${ports} work, depending on the sockets your M.2 drives take.`,
		enoughUnlessShared: ({ drives, ports }: PortWords) =>
			`${drivesNeed(drives)}; the board has ${portWords(ports)}. Whether an M.2 drive switches some off is not known.`,
		tooFew: ({ drives, ports }: PortWords) =>
			`${drivesNeed(drives)}; the board has ${ports === 0 ? "" : "only "}${portWords(ports)}.`,
		tooFewBeside: ({ drives, ports }: PortWords) =>
			`${drivesNeed(drives)}; beside your M.2 drives only ${portWords(ports)} can be counted on.`,
		need: ({ drives }: { drives: number }) =>
			`At least ${drives} SATA ${drives === 1 ? "port" : "ports"} that your M.2 drives do not switch off.`,
	},
	advice: {
		rightSocket: () =>
			"Read the footnotes on the board's page, and put the M.2 drives into sockets that share nothing.",
		enoughUnlessShared: () => "Read the footnotes below the storage rows on the board's page.",
		tooFew: () =>
			"A card with drive ports adds some, or one larger drive takes the place of two. Fit a card only with the mains plug out.",
		tooFewBeside: () =>
			"A card with drive ports adds some, or one larger drive takes the place of two. Fit a card only with the mains plug out.",
	},
	check(facts): Outcome {
		const drives = cableDrives(facts.drives, facts.olderSataDrives);
		if (drives === 0) return pass("notAsked");
		const known = facts["board.drivePorts"];
		if (!known) return cannotTell(["board.drivePorts"]);
		const ports = known.filter(({ kind }) => kind === "SATA").map(({ name }) => name);
		if (ports.length < drives) return planAround("tooFew", { drives, ports: ports.length });
		const sticks = (facts.drives ?? []).filter(isM2Drive);
		const sharing = facts["board.sharing"];
		if (!sharing && ports.length - portsPerM2AtWorst * sticks.length < drives)
			return goodToKnow("enoughUnlessShared", { drives, ports: ports.length });
		if (!sharing) return pass("enough", { drives, ports: ports.length });
		const { most, fewest } = portsBeside(sticks, facts["board.m2Sockets"] ?? [], ports, sharing);
		if (most < drives) return planAround("tooFewBeside", { drives, ports: most });
		if (fewest < drives) return goodToKnow("rightSocket", { drives, ports: most, fewest });
		return most === ports.length
			? pass("enough", { drives, ports: most })
			: pass("enoughBeside", { drives, ports: most });
	},
	needs({ drives, olderSataDrives }) {
		const count = cableDrives(drives, olderSataDrives);
		return count === 0 ? null : { messageId: "need", data: { drives: count } };
	},
});

interface PortWords {
	readonly drives: number;
	readonly ports: number;
}

function drivesNeed(drives: number): string {
	return drives === 1 ? "One drive needs a SATA port" : `${drives} drives need a SATA port each`;
}

function portWords(ports: number): string {
	return ports === 0 ? "no SATA port" : `${ports} SATA ${ports === 1 ? "port" : "ports"}`;
}

function cableDrives(drives: readonly Drive[] | undefined, older: number | undefined): number {
	return (drives ?? []).filter(isSataDrive).length + (older ?? 0);
}

/**
 * The most and the fewest ports that work, over all ways that place as many M.2 drives as can be. For the fewest, only
 * M.2 drives switch ports off, each at most one group's.
 */
function portsBeside(
	sticks: readonly Drive[],
	sockets: NonNullable<Board["m2Sockets"]>,
	ports: readonly string[],
	sharing: Sharing,
): { readonly most: number; readonly fewest: number } {
	const ways = waysOfSharing(sharing);
	if (!ways) {
		const shared = new Set(sharing.flatMap(({ members }) => members));
		const alone = ports.filter((name) => !shared.has(name)).length;
		return { most: alone, fewest: alone };
	}
	const outcomes = ways.map((groups) => {
		const off = new Set(groups.flatMap((group) => group.off));
		const on = sockets.filter(({ name }) => !off.has(name));
		const losing = groups.filter((group) => ports.some((name) => group.off.includes(name)));
		const forSticks = losing.filter((group) => sockets.some(({ name }) => group.on.includes(name)));
		return {
			placed: largestMatching(sticks.map((drive) => m2PlacesOf(drive, on, "best"))).filter(Boolean).length,
			left: ports.filter((name) => !off.has(name)).length,
			isOfSticks: losing.length === forSticks.length && forSticks.length <= sticks.length,
		};
	});
	const mostPlaced = Math.max(...outcomes.map(({ placed }) => placed));
	const asPlaced = outcomes.filter(({ placed }) => placed === mostPlaced);
	const most = Math.max(...asPlaced.map(({ left }) => left));
	return { most, fewest: Math.min(most, ...asPlaced.filter(({ isOfSticks }) => isOfSticks).map(({ left }) => left)) };
}

interface GroupInUse {
	readonly on: readonly string[];
	readonly off: readonly string[];
}

/** Every way of using all groups together; null where there are too many. */
function waysOfSharing(sharing: Sharing): readonly (readonly GroupInUse[])[] | null {
	let ways: readonly (readonly GroupInUse[])[] = [[]];
	for (const { members, modes } of sharing) {
		if (ways.length * modes.length > mostWays) return null;
		const inUse = modes.map(({ on }) => ({
			on: members.filter((name) => Object.hasOwn(on, name)),
			off: members.filter((name) => !Object.hasOwn(on, name)),
		}));
		ways = ways.flatMap((way) => inUse.map((group) => [...way, group]));
	}
	return ways;
}
