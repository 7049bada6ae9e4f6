import type { PictureSocket } from "../parts/vocabulary.ts";
import { type PictureAdapter, pictureWay } from "../reference/picture-adapters.ts";

/** A screen by its plug, and the socket that feeds it; null where none is left that could. */
export interface FedScreen {
	readonly screen: PictureSocket;
	readonly socket: PictureSocket | null;
	readonly way: "direct" | PictureAdapter | null;
}

/** A screen left dark outweighs any number of adapters, and one active adapter outweighs two plain ones. */
const costOf = { direct: 0, plain: 1, active: 3, dark: 1000 } as const;

/** Feeds as many screens as can be, and those with the fewest and plainest adapters. The order of screens stays. */
export function screensOnSockets(
	screens: readonly PictureSocket[],
	sockets: readonly PictureSocket[],
): readonly FedScreen[] {
	// How screens from here on are best fed depends only on what sockets are left, whatever fed those before.
	const known = new Map<string, Plan>();
	return best(0, sockets.toSorted()).fed;

	function best(index: number, left: readonly PictureSocket[]): Plan {
		const screen = screens[index];
		if (screen === undefined) return { cost: 0, fed: [] };
		const key = `${index} ${left.join()}`;
		const found = known.get(key) ?? leastOf(plansFor(screen, index, left));
		known.set(key, found);
		return found;
	}

	function plansFor(screen: PictureSocket, index: number, left: readonly PictureSocket[]): readonly Plan[] {
		const fed = [...new Set(left)].flatMap((socket) => {
			const way = pictureWay(socket, screen);
			if (!way) return [];
			const rest = best(index + 1, left.toSpliced(left.indexOf(socket), 1));
			return [{ cost: costOf[way] + rest.cost, fed: [{ screen, socket, way }, ...rest.fed] }];
		});
		const rest = best(index + 1, left);
		return [...fed, { cost: costOf.dark + rest.cost, fed: [{ screen, socket: null, way: null }, ...rest.fed] }];
	}
}

interface Plan {
	readonly cost: number;
	readonly fed: readonly FedScreen[];
}

function leastOf(plans: readonly Plan[]): Plan {
	return plans.reduce((least, plan) => (plan.cost < least.cost ? plan : least));
}
