import { canonicalSocket } from "../../parts/canonical-name.ts";
import type { FactsUnder } from "../../parts/fact-path.ts";
import { type Money, moneyText } from "../../parts/money.ts";
import type { Extra } from "../../plan/device.ts";
import { defineRule } from "../define-rule.ts";
import { moneyLeft } from "../money-left.ts";
import { type OldPlug, oldPlugsWithout } from "../old-things-on-board.ts";
import { fail, goodToKnow, type Outcome, pass } from "../outcome.ts";
import { adaptedScreens, countedOnce, screensOnBoard } from "../screens-on-board.ts";

/** Less than this part of the board's price for each extra is a tight reserve (own convention). */
const reserveAnExtra = 0.1;

const mayRead = [
	"wish.features/wireless",
	"board.wireless.builtIn",
	"board.wireless.moduleSocket",
	"addInCards",
	"graphicsCard",
	"processor.graphics",
	"screens",
	"board.pictureSockets",
	"board.rearUsb",
	"oldThings",
	"board.rearOld",
	"board.headers.serial",
	"board.cardSlots",
	"board.drivePorts",
	"board.socket",
	"cooler.kits",
	"case.hubUsesUsb2",
	"plan.things",
	"headers.without",
	"board.price",
	"priceCap",
	"moneyInAll",
	"moneySpent",
	"moneyPlanned",
] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

interface Words {
	readonly extras: readonly string[];
	readonly price: string;
	readonly reserve: string;
}

/**
 * What a board makes its buyer pay besides its own price, where another board would not. What such things cost is on no
 * page of the board, so the reserve below the limit is told beside them and no sum is made up.
 */
export const forcedExtras = defineRule({
	id: "fit/forced-extras",
	scope: "board",
	label: "What must be bought besides",
	wayOut: "a board that has more on it",
	asks: "What does this board make you buy besides, and is money left for it?",
	why: "A cheap board can turn out the dearer one, once adapters and hubs are added.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead,
	saysNothing: ["none"],
	messages: {
		none: () => "Nothing known has to be bought besides.",
		noLimit: ({ extras }: { extras: readonly string[] }) =>
			`Its price is not all you pay. To be bought besides: ${extras.join(", ")}.`,
		covered: ({ extras, price, reserve }: Words) =>
			`It costs ${price}, which leaves ${reserve}. To be bought besides: ${extras.join(", ")}.`,
		tight: ({ extras, price, reserve }: Words) =>
			`It costs ${price}, so only ${reserve} of your limit is left. You must also buy: ${extras.join(", ")}.`,
	},
	advice: {
		tight: () => "Ask what they cost before you decide.",
	},
	check(facts): Outcome {
		const extras = extrasOf(facts);
		if (extras.length === 0) return pass("none");
		const [price, limit] = [facts["board.price"], limitOf(facts)];
		if (!price || !limit || limit.currency !== price.currency || limit.minor < price.minor)
			return goodToKnow("noLimit", { extras });
		const reserveMinor = limit.minor - price.minor;
		const reserve = moneyText({ minor: reserveMinor, currency: price.currency });
		const words = { extras, price: moneyText(price), reserve };
		return reserveMinor < reserveAnExtra * extras.length * price.minor
			? fail("tight", words)
			: goodToKnow("covered", words);
	},
});

const extraWords = {
	"riser cable": "a riser cable",
	"adapter card": "an adapter card",
	"adapter frame": "an adapter frame",
} as const satisfies Record<Extra, string>;

/** What is bought in place of a socket that the board lacks. Common practice, no source. */
const oldThingWords = {
	"PS/2 keyboard or mouse": "an active PS/2 to USB adapter",
	"serial device": "a USB to serial adapter",
	"parallel printer": "a USB to parallel cable",
	"IDE drive": "a USB to IDE adapter with a supply of its own",
	"PCI card": "a newer card in place of your PCI card",
} as const satisfies Record<OldPlug, string>;

function extrasOf(facts: Facts): readonly string[] {
	const without = new Set((facts["headers.without"] ?? []).filter(({ isLater }) => !isLater).map(({ kind }) => kind));
	const placed = (facts["plan.things"] ?? []).flatMap(({ best }) => best?.extra ?? []);
	const kits = facts["cooler.kits"]?.filter(
		({ socket }) => canonicalSocket(socket) === canonicalSocket(facts["board.socket"] ?? ""),
	);
	return [
		...new Set<string>(placed.map((extra) => extraWords[extra])),
		...wirelessExtras(facts),
		...pictureExtras(facts),
		...oldPlugsWithout(facts).map((thing) => oldThingWords[thing]),
		...(without.has("USB 9-pin") ? ["a hub for USB inside"] : []),
		...(without.has("case fan")
			? [
					facts["case.hubUsesUsb2"]
						? "a hub for the fans (see first whether your case's hub takes them)"
						: "a hub for the fans",
				]
			: []),
		...(without.has("5 V lights") || without.has("12 V lights") ? ["a controller for the lights"] : []),
		...(kits && kits.length > 0 && kits.every(({ how }) => how === "bought") ? ["the cooler's mounting kit"] : []),
	];
}

function wirelessExtras(facts: Facts): readonly string[] {
	const isOwn = facts.addInCards?.some(({ use }) => use === "wireless network");
	if (facts["wish.features/wireless"] !== "must" || facts["board.wireless.builtIn"] !== false || isOwn) return [];
	return facts["board.wireless.moduleSocket"] === "ordinary"
		? ["a module or an adapter for wireless"]
		: ["an adapter for wireless"];
}

/** One adapter a screen, where adapters are all that it takes. */
function pictureExtras(facts: Facts): readonly string[] {
	const fed = screensOnBoard(facts);
	// With sockets not known, or a screen left dark, something else may be bought in their place.
	if (!fed || !facts["board.pictureSockets"] || fed.some(({ way }) => way === null)) return [];
	const adapters = adaptedScreens(fed).map(
		({ socket, screen, isActive }) => `${isActive ? "active adapter" : "adapter"} from ${socket} to ${screen}`,
	);
	return countedOnce(adapters, "an ");
}

/** The stricter of the board's own limit and the money left; two currencies bind nothing here. */
function limitOf({ priceCap, moneyInAll, moneySpent, moneyPlanned }: Facts): Money | null {
	const left = moneyLeft(moneyInAll, moneySpent, moneyPlanned);
	if (!priceCap || !left) return priceCap ?? left;
	return left.currency === priceCap.currency && left.minor < priceCap.minor ? left : priceCap;
}
