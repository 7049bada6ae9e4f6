import type { Drive } from "../../parts/drive.ts";
import { isM2Drive, isSataDrive } from "../../reference/m2-fit.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

const addSome =
	"A card with drive ports adds some, or one larger drive takes the place of two. Fit a card only with the mains plug out.";

/**
 * Ports against the drives that hang on a cable, as they are left in the plan: an M.2 drive in use can switch ports off.
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
	mayRead: ["drives", "olderSataDrives", "board.drivePorts", "plan.things", "plan.ends", "plan.missing"],
	messages: {
		notAsked: () => "You have named no drive on a cable.",
		enough: ({ drives, ports }: PortWords) => `${drivesNeed(drives)}; the board has ${portWords(ports)}.`,
		enoughBeside: ({ drives, ports }: PortWords) =>
			`${drivesNeed(drives)}; beside your other parts ${portWords(ports)} ${ports === 1 ? "works" : "work"}.`,
		rightSocket: ({ drives, ports, sockets }: PortWords & { sockets: readonly string[] }) =>
			`${drivesNeed(drives)}, and ${portWords(ports)} ${ports === 1 ? "works" : "work"} as long as nothing goes into ${sockets.join(" and ")}.`,
		tooFew: ({ drives, ports }: PortWords) =>
			`${drivesNeed(drives)}; the board has ${ports === 0 ? "" : "only "}${portWords(ports)}.`,
		tooFewBeside: ({ drives, ports, off }: PortWords & { off: readonly string[] }) =>
			`${drivesNeed(drives)}; ${ports === 0 ? "none" : `only ${portWords(ports)}`} can be counted on.${
				off.length > 0 ? ` Off because of your other parts: ${off.join(", ")}.` : ""
			}`,
		noSuchPort: ({ left }: { left: readonly string[] }) =>
			`The board has no port of the right kind for: ${left.join(", ")}.`,
		unsure: ({ left }: { left: readonly string[] }) =>
			`Whether a port works for each drive is not known: ${left.join(", ")}.`,
		unsureShared: ({ left }: { left: readonly string[] }) =>
			`Whether shared lanes leave a port for each drive is not known: ${left.join(", ")}.`,
		need: ({ drives }: { drives: number }) =>
			`At least ${drives} SATA ${drives === 1 ? "port" : "ports"} that your M.2 drives do not switch off.`,
	},
	advice: {
		rightSocket: () => 'Put the M.2 drives where the page "What plugs in where" says.',
		tooFew: () => addSome,
		tooFewBeside: () => addSome,
		noSuchPort: () => "An adapter card may have such a port. Count its price, and fit it only with the mains plug out.",
		unsureShared: () => "Look on the board's page for the footnotes about shared lanes.",
	},
	check(facts): Outcome {
		const cabled = (facts["plan.things"] ?? []).filter(({ device }) => device.kind === "drive");
		const drives = cabled.length;
		if (drives === 0) return pass("notAsked");
		if (!facts["board.drivePorts"]) return cannotTell(["board.drivePorts"]);
		const kinds = new Set(cabled.flatMap(({ device }) => ("drive" in device ? portKindsFor(device.drive) : [])));
		const ends = (facts["plan.ends"] ?? []).filter(
			({ connector }) => connector.kind === "drive port" && kinds.has(connector.port.kind),
		);
		const without = cabled.filter(({ hasPlace }) => hasPlace === "no");
		const noSuch = without.filter(({ lacks }) => lacks === "connector");
		if (noSuch.length > 0 && facts["board.drivePorts"].length > 0)
			return planAround("noSuchPort", { left: namesOf(noSuch) });
		const ports = ends.filter(({ state }) => state === "used" || state === "free").length;
		const off = ends.filter(({ state }) => state === "off" || state === "covered");
		if (without.length > 0)
			return ends.length < drives
				? planAround("tooFew", { drives, ports: ends.length })
				: planAround("tooFewBeside", { drives, ports, off: off.map(({ connector }) => connector.name) });
		const unsure = cabled.filter(({ hasPlace }) => hasPlace === "unknown");
		const missing = facts["plan.missing"] ?? [];
		if (unsure.length > 0)
			return cannotTell(missing, missing.includes("board.sharing") ? "unsureShared" : "unsure", {
				left: namesOf(unsure),
			});
		const hasSticks = facts.drives?.some(isM2Drive) === true;
		// A socket that stands off for the sake of a port in use: a drive moved there later costs the port.
		const traps = (facts["plan.ends"] ?? []).filter(
			(end) =>
				end.connector.kind === "M.2 socket" && end.state === "off" && end.by.some((by) => namesOf(cabled).includes(by)),
		);
		if (hasSticks && traps.length > 0)
			return goodToKnow("rightSocket", { drives, ports, sockets: traps.map(({ connector }) => connector.name) });
		return off.length === 0 ? pass("enough", { drives, ports }) : pass("enoughBeside", { drives, ports });
	},
	needs({ drives, olderSataDrives }) {
		const count = cableDrives(drives, olderSataDrives);
		return count === 0 ? null : { messageId: "need", data: { drives: count } };
	},
});

/** Kinds of port that a drive on a cable may go into. */
function portKindsFor({ link = "SATA" }: Drive): readonly string[] {
	return link === "U.2" ? ["U.2", "SlimSAS"] : [link];
}

interface PortWords {
	readonly drives: number;
	readonly ports: number;
}

function namesOf(things: readonly { readonly device: { readonly name: string } }[]): readonly string[] {
	return things.map(({ device }) => device.name);
}

function drivesNeed(drives: number): string {
	return drives === 1 ? "One drive needs a port" : `${drives} drives need a port each`;
}

function portWords(ports: number): string {
	return ports === 0 ? "no port" : `${ports} ${ports === 1 ? "port" : "ports"}`;
}

function cableDrives(drives: readonly Drive[] | undefined, older: number | undefined): number {
	return (drives ?? []).filter(isSataDrive).length + (older ?? 0);
}
