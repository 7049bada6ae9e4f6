import type { PlacedDevice } from "../../plan/plan.ts";
import { gbytesPerSecond } from "../../reference/link-bandwidth.ts";
import { isM2Drive } from "../../reference/m2-fit.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass } from "../outcome.ts";

/** From this PCI Express generation on drives grow hot at work: common practice, no source. */
const hotGeneration = 4;
/** Where only the speed is told: more than four lanes of the generation before can carry, in GB/s. */
const hotFromGbytesPerS = gbytesPerSecond(3, 4);

/** A drive's own cooler against the board's metal plate, and a fast drive without either, in the sockets of the plan. */
export const driveCooling = defineRule({
	id: "quality/drive-cooling",
	scope: "board",
	label: "Drive cooling",
	wayOut: "a slower drive, or one with another cooler",
	asks: "Does every fast M.2 drive stay cool, and does its cooler go into the socket?",
	why: "A metal plate (heat sink) takes heat off an M.2 drive. A fast drive without it slows down in long copying.",
	source: "common-practice",
	severity: "good-to-know",
	reads: [],
	mayRead: ["drives", "plan.things"],
	messages: {
		notAsked: () => "You have named no M.2 drive whose cooling matters here.",
		cool: ({ drives }: { drives: readonly string[] }) => `Cooled well enough: ${drives.join(", ")}.`,
		underPlate: ({ plated }: { plated: readonly string[] }) =>
			`No room under the metal plate for the drive's own cooler: ${plated.join(", ")}.`,
		bare: ({ bare }: { bare: readonly string[] }) =>
			`No metal plate (heat sink) over a fast drive, PCI Express ${hotGeneration}.0 or later: ${bare.join(", ")}.`,
		both: ({ plated, bare }: { plated: readonly string[]; bare: readonly string[] }) =>
			`No room under the metal plate for the drive's own cooler: ${plated.join(", ")}. No plate over a fast drive: ${bare.join(", ")}.`,
		unsure: ({ drives }: { drives: readonly string[] }) =>
			`Whether the socket has a metal plate (heat sink) is not known for: ${drives.join(", ")}.`,
		need: ({ drives }: { drives: number }) =>
			`A metal plate (heat sink) over ${drives === 1 ? "an M.2 socket" : `${drives} M.2 sockets`} for your fast ${drives === 1 ? "drive" : "drives"}, if it costs little.`,
	},
	advice: {
		underPlate: () => plateAdvice,
		bare: () => bareAdvice,
		both: () => `${plateAdvice} ${bareAdvice}`,
	},
	check(facts): Outcome {
		const seats = (facts["plan.things"] ?? []).flatMap(({ best }) => seatOf(best) ?? []);
		if (seats.length === 0) return pass("notAsked");
		const named = (some: readonly Seat[]) => some.map(({ name }) => name);
		const plated = named(seats.filter(({ ownCooler, cooled }) => ownCooler && cooled === true));
		const bare = named(seats.filter(({ ownCooler, cooled }) => !ownCooler && cooled === false));
		if (plated.length > 0 && bare.length > 0) return goodToKnow("both", { plated, bare });
		if (plated.length > 0) return goodToKnow("underPlate", { plated });
		if (bare.length > 0) return goodToKnow("bare", { bare });
		const unsure = named(seats.filter(({ cooled }) => cooled === undefined));
		return unsure.length > 0
			? cannotTell(["board.m2Sockets"], "unsure", { drives: unsure })
			: pass("cool", { drives: named(seats) });
	},
	needs({ drives }) {
		const hot = (drives ?? []).filter(
			(drive) =>
				isM2Drive(drive) && !drive.ownCooler && growsHot(drive.generation ?? null, (drive.readMBytesPerS ?? 0) / 1000),
		);
		return hot.length === 0 ? null : { messageId: "need", data: { drives: hot.length } };
	},
});

const plateAdvice =
	"With the mains plug out, take that plate off and keep it with its screws, or use a socket without one. Leave the drive's own cooler on. Look at its height where a card lies above.";
const bareAdvice =
	"It works, only slower when hot. A small stick-on heat sink helps; it must be low where a card lies above.";

/** A drive in a socket where a plate would matter. A drive of which no cooler is told counts as one without. */
interface Seat {
	readonly name: string;
	readonly ownCooler: boolean;
	readonly cooled: boolean | undefined;
}

function seatOf(placed: PlacedDevice | null): Seat | null {
	if (placed?.device.kind !== "M.2 drive" || placed.connector.kind !== "M.2 socket") return null;
	const { device, connector, link } = placed;
	const ownCooler = device.drive.ownCooler === true;
	// In a socket of an older generation it moves less, and stays cooler.
	const generation = device.generation && Math.min(device.generation, connector.generation ?? device.generation);
	const gbytesPerS = Math.min(device.gbytesPerS ?? 0, link.gbytesPerS ?? Number.POSITIVE_INFINITY);
	return ownCooler || growsHot(generation, gbytesPerS)
		? { name: `${device.name} in ${connector.name}`, ownCooler, cooled: connector.socket.cooled }
		: null;
}

function growsHot(generation: number | null, gbytesPerS: number): boolean {
	return generation === null ? gbytesPerS > hotFromGbytesPerS : generation >= hotGeneration;
}
