import type { FactsUnder } from "../parts/fact-path.ts";
import { defineCriterion, type Measure, type SmallScale } from "./define-criterion.ts";
import { type MeasuredPart, pointsScale, sumOfScales } from "./sum-of-scales.ts";

const spareSockets: SmallScale = {
	name: "USB sockets at the back that stay free",
	unit: "spare sockets",
	weight: 70,
	scale: [
		[-2, 0],
		[0, 0.5],
		[2, 0.9],
		[4, 1],
	],
};
const wired: SmallScale = {
	name: "wired network",
	unit: "Gb/s",
	weight: 30,
	scale: [
		[0, 0],
		[1, 0.7],
		[2.5, 1],
	],
};
/** For a network faster than 5 Gb/s. */
const fasterWired: SmallScale = {
	...wired,
	name: "wired network, where yours is faster than 5 Gb/s",
	scale: [
		[0, 0],
		[1, 0.4],
		[2.5, 0.7],
		[5, 0.9],
		[10, 1],
	],
};
/** For a network of 5 Gb/s: 10 are worth no more. */
const fiveWired: SmallScale = {
	...wired,
	name: "wired network, where yours does 5 Gb/s",
	scale: [
		[0, 0],
		[1, 0.4],
		[2.5, 0.7],
		[5, 1],
	],
};

/** Common practice, no source: boards carry 4 to 10 USB sockets at the back, and a wired socket of 1 to 10 Gb/s. */
const usual = { sockets: { least: 4, most: 10 }, wiredGbps: { least: 1, most: 10 } };

const reads = [
	"board.rearUsb",
	"board.wiredGbps",
	"rearDevices",
	"laterThings",
	"routerGbps",
	"wish.features/rear-usb-c",
	"wish.features/wireless",
] as const;
type Facts = FactsUnder<never, (typeof reads)[number]>;

/**
 * What can be plugged in at the back beyond what will be: USB sockets and the wired network. Plugs for the front of the
 * case are left to the rules: a front plug that finds no header is told there, and a header more than the case has serves
 * nobody.
 */
export const connections = defineCriterion({
	id: "connections",
	formerly: ["spare-sockets"],
	name: "spare sockets and network",
	asks: "How much would a missing socket or a slow network bother you?",
	why: "Sockets at the back cannot be added later without a hub, a card or an adapter.",
	ends: {
		worst: "no USB socket is left over, and the network is slow",
		best: "four USB sockets stay free, and the network is fast",
	},
	unit: "points",
	scale: pointsScale,
	madeOf: [spareSockets, wired, fiveWired, fasterWired],
	source: "own-convention",
	grounds:
		"No spare socket is half the value, two nearly all, four all. A wired socket of 1 Gb/s serves most, 2.5 all but those with faster gear. Sockets count 70 of 100, since they are missed more often.",
	reads,
	measure(facts): Measure | null {
		// Who has said neither what to plug in nor how fast the network is has given nothing to weigh.
		const [sockets, network] = [socketsOf(facts), networkOf(facts)];
		if (!sockets && !((facts.routerGbps ?? 0) > 0)) return null;
		const parts = [sockets, network].filter((part) => part !== null);
		return { ...sumOfScales(parts), note: parts.map(({ words }) => words).join(", and ") };
	},
	says: ({ low, high, note }) =>
		note ??
		(low < high
			? "how well its sockets and network meet your needs depends on what is not known"
			: "its sockets and network meet your needs in part"),
});

type SaidPart = MeasuredPart & { readonly words: string };

/** Null while nobody has counted what will be plugged in. */
function socketsOf(facts: Facts): SaidPart | null {
	const { "board.rearUsb": sockets, rearDevices, laterThings = [], "wish.features/rear-usb-c": usbC } = facts;
	if (rearDevices === undefined) return null;
	const wanted = rearDevices + laterThings.filter((thing) => thing === "USB thing").length;
	// A wished oval socket that is not there wants a hub or an adapter, which takes the use of a flat one.
	const wishesC = usbC === "would-like" || usbC === "must";
	if (!sockets)
		return {
			of: spareSockets,
			low: usual.sockets.least - wanted - (wishesC ? 2 : 0),
			high: usual.sockets.most - wanted,
			missing: ["board.rearUsb"],
			words: "how many USB sockets stay free at the back is not known",
		};
	const lacksC = wishesC && !sockets.some(({ plug }) => plug === "C");
	const spare = sockets.reduce((sum, socket) => sum + socket.count, 0) - (lacksC ? 2 : 0) - wanted;
	return { of: spareSockets, low: spare, high: spare, missing: [], words: spareWords(spare) };
}

function spareWords(spare: number): string {
	if (spare < 0) return `${-spare} of your things ${spare === -1 ? "finds" : "find"} no USB socket at the back`;
	return spare === 1
		? "1 USB socket stays free at the back"
		: `${spare === 0 ? "no" : spare} USB sockets stay free at the back`;
}

/** Null where no cable will be used. Who must have wireless is not asked about a cable, and counts as using none. */
function networkOf(facts: Facts): SaidPart | null {
	const { "board.wiredGbps": sockets, routerGbps, "wish.features/wireless": wireless } = facts;
	if (routerGbps === 0 || (routerGbps === undefined && wireless === "must")) return null;
	const own = routerGbps ?? 0;
	const of = own > 5 ? fasterWired : own > 2.5 ? fiveWired : wired;
	if (!sockets)
		return {
			of,
			low: usual.wiredGbps.least,
			high: usual.wiredGbps.most,
			missing: ["board.wiredGbps"],
			words: "how fast its wired network is, is not known",
		};
	const fastest = Math.max(0, ...sockets);
	const words = fastest === 0 ? "it has no socket for a network cable" : `its wired network does ${fastest} Gb/s`;
	return { of, low: fastest, high: fastest, missing: [], words };
}
