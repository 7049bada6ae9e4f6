import { canonicalSocket } from "../parts/canonical-name.ts";
import type { FactsUnder } from "../parts/fact-path.ts";
import type { Extra } from "../plan/device.ts";
import { type OldPlug, oldPlugsWithout } from "./old-things-on-board.ts";
import { adaptedScreens, countedOnce, screensOnBoard } from "./screens-on-board.ts";

/** All that tells what a board makes its buyer pay for besides. */
export const extrasRead = [
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
] as const;
export type ExtrasFacts = FactsUnder<never, (typeof extrasRead)[number]>;

/** Something that has to be bought because of a board. */
export interface ForcedExtra {
	/** "an adapter for wireless": as it stands in a list. */
	readonly words: string;
	/** What an add-in card must be for to do the same; null where no add-in card does. */
	readonly cardUse: "wireless network" | null;
}

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

/** All that a board surely makes its buyer buy besides, each once. */
export function extrasOf(facts: ExtrasFacts): readonly ForcedExtra[] {
	const without = new Set((facts["headers.without"] ?? []).filter(({ isLater }) => !isLater).map(({ kind }) => kind));
	const placed = (facts["plan.things"] ?? []).flatMap(({ best }) => best?.extra ?? []);
	const kits = facts["cooler.kits"]?.filter(
		({ socket }) => canonicalSocket(socket) === canonicalSocket(facts["board.socket"] ?? ""),
	);
	return [
		...[...new Set(placed.map((extra) => extraWords[extra]))].map(plain),
		...wirelessExtras(facts),
		...pictureExtras(facts).map(plain),
		...oldPlugsWithout(facts).map((thing) => plain(oldThingWords[thing])),
		...(without.has("USB 9-pin") ? [plain("a hub for USB inside")] : []),
		...(without.has("case fan")
			? [
					plain(
						facts["case.hubUsesUsb2"]
							? "a hub for the fans (see first whether your case's hub takes them)"
							: "a hub for the fans",
					),
				]
			: []),
		...(without.has("5 V lights") || without.has("12 V lights") ? [plain("a controller for the lights")] : []),
		...(kits && kits.length > 0 && kits.every(({ how }) => how === "bought")
			? [plain("the cooler's mounting kit")]
			: []),
	];
}

const plain = (words: string): ForcedExtra => ({ words, cardUse: null });

function wirelessExtras(facts: ExtrasFacts): readonly ForcedExtra[] {
	const isOwn = facts.addInCards?.some(({ use }) => use === "wireless network");
	if (facts["wish.features/wireless"] !== "must" || facts["board.wireless.builtIn"] !== false || isOwn) return [];
	return [
		{
			words:
				facts["board.wireless.moduleSocket"] === "ordinary"
					? "a module or an adapter for wireless"
					: "an adapter for wireless",
			cardUse: "wireless network",
		},
	];
}

/** One adapter a screen, where adapters are all that it takes. */
function pictureExtras(facts: ExtrasFacts): readonly string[] {
	const fed = screensOnBoard(facts);
	// With sockets not known, or a screen left dark, something else may be bought in their place.
	if (!fed || !facts["board.pictureSockets"] || fed.some(({ way }) => way === null)) return [];
	const adapters = adaptedScreens(fed).map(
		({ socket, screen, isActive }) => `${isActive ? "active adapter" : "adapter"} from ${socket} to ${screen}`,
	);
	return countedOnce(adapters, "an ");
}
