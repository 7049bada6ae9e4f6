import { graphicsSlot, wideAdapterPlugs, wideAdapterPlugsFor } from "../reference/graphics-plug-budget.ts";
import { graphicsPlugs } from "../reference/power-plugs.ts";

/** What adapters for a card's 12V-2x6 sockets take of a supply. */
export interface AdapterPlugs {
	/** What each socket has to carry, in W; undefined where the card's watts are not known. */
	readonly plugW: number | undefined;
	/** Sockets that an adapter must feed, since no lead of the supply does; where it is not certain, the most there may be. */
	readonly sockets: number;
	/** Leads alone feed all sockets, one or more of them only because the slot adds the rest. */
	readonly isTight: boolean;
	/** 8-pin plugs of the supply that the adapters take, at least and at most. */
	readonly least: number;
	readonly most: number;
}

/**
 * What adapters take of a supply, for as many 12V-2x6 sockets of one card. With the card's watts unknown every lead may do
 * and the smallest adapter, or none below the plug's full watts and only the largest.
 *
 * @param leadsW what each 12V-2x6 lead of the supply is made for, in W
 * @param cardW watts of the card
 */
export function adapterPlugs(wide: number, leadsW: readonly number[], cardW: number | undefined): AdapterPlugs {
	const fullW = graphicsPlugs["12V-2x6"].watts;
	const lacking = (watts: number) => Math.max(0, wide - leadsW.filter((leadW) => leadW >= watts).length);
	if (cardW === undefined) {
		const sockets = lacking(fullW);
		const least = lacking(0) * wideAdapterPlugs.fewest;
		return { plugW: undefined, sockets, isTight: false, least, most: sockets * wideAdapterPlugs.most };
	}
	const plugW = Math.min(fullW, Math.ceil(cardW / wide));
	const sockets = lacking(plugW);
	// The slot helps a lead that is a little too weak, so no adapter is bought for it.
	if (sockets > 0 && lacking(plugW - graphicsSlot.watts) === 0)
		return { plugW, sockets: 0, isTight: true, least: 0, most: 0 };
	const plugs = sockets * wideAdapterPlugsFor(plugW);
	return { plugW, sockets, isTight: false, least: plugs, most: plugs };
}
