import { defineRule } from "../define-rule.ts";
import { cannotTell, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

/** The fastest wired socket against the fastest the network outside gets; a slower one works, only slower. */
export const wiredSpeed = defineRule({
	id: "features/wired-speed",
	scope: "board",
	label: "Wired network",
	wayOut: "a slower wired network",
	asks: "Is the wired socket as fast as your network?",
	why: "The slowest of line, router, cable and board sets the speed. A faster socket than the rest is paid for in vain.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead: ["routerGbps", "board.wiredGbps"],
	messages: {
		notAsked: () => "You have not said how fast your network is.",
		asFast: ({ boardGbps, routerGbps }: Rates) =>
			`Its wired socket does ${boardGbps} Gb/s; your network does ${routerGbps} Gb/s.`,
		slower: ({ boardGbps, routerGbps }: Rates) =>
			`Its wired socket does ${boardGbps} Gb/s; your network could do ${routerGbps} Gb/s.`,
		noSocket: () => "It has no socket for a network cable.",
		need: ({ routerGbps }: { routerGbps: number }) =>
			`A wired network socket of ${routerGbps} Gb/s: more is of no use.`,
	},
	advice: {
		slower: () =>
			"It works at the slower rate. That matters for large copies inside the house, seldom for the internet.",
		noSocket: () => "A network adapter in a USB socket or a card slot brings one: count its price.",
	},
	check({ routerGbps, "board.wiredGbps": sockets }): Outcome {
		if (routerGbps === undefined || routerGbps === 0) return pass("notAsked");
		if (!sockets) return cannotTell(["board.wiredGbps"]);
		if (sockets.length === 0) return planAround("noSocket");
		const boardGbps = Math.max(...sockets);
		return boardGbps < routerGbps
			? goodToKnow("slower", { boardGbps, routerGbps })
			: pass("asFast", { boardGbps, routerGbps });
	},
	needs: ({ routerGbps }) => (routerGbps ? { messageId: "need", data: { routerGbps } } : null),
});

interface Rates {
	readonly boardGbps: number;
	readonly routerGbps: number;
}
