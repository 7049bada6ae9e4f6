import type { Market } from "../../src/parts/market.ts";

/**
 * The demonstration's boards that tests of single steps stand on: few enough to be counted by hand, and to be judged
 * thousands of times. What must hold for all boards is tested on the whole market (test/meta, test/e2e).
 */
const firstBoardIds: ReadonlySet<string> = new Set([
	"oddment-button",
	"oddment-thimble",
	"brindlecroft-hollyhock",
	"pennywhistle-jig",
	"pennywhistle-polka",
	"brindlecroft-marigold",
	"fernquill-riddle",
	"pennywhistle-mazurka",
	"pennywhistle-mazurka-aerial",
	"brindlecroft-snowdrop",
	"fernquill-peacock",
	"fernquill-lighthouse",
]);

/** A market with all parts and only those boards, in its order; its name and fingerprint stay, so that walks are at home. */
export function withFirstBoards(market: Market): Market {
	return {
		...market,
		parts: { ...market.parts, board: market.parts.board.filter(({ id }) => firstBoardIds.has(id)) },
	};
}
