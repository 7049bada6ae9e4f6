import { canonicalSocket } from "../../parts/canonical-name.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass, planAround } from "../outcome.ts";

/** Sockets that are named in the line to look for; a cooler may list forty. */
const mostNamed = 5;

/**
 * A cooler is screwed on around the socket, with a kit made for it, and some hold on to the board's own back plate. The
 * cooler maker's list decides: a socket that is not on it has no kit.
 */
export const coolerMount = defineRule({
	id: "fit/cooler-mount",
	scope: "board",
	label: "Cooler on the board",
	wayOut: "another cooler",
	asks: "Can your cooler be screwed on around this board's socket?",
	why: "The holes around each socket lie in other places. Without its own kit a cooler does not hold.",
	source: "common-practice",
	severity: "stops",
	reads: ["board.socket", "cooler.kits"],
	mayRead: ["cooler.name", "cooler.needsBoardBackPlate", "board.layout.ownBackPlate", "processor.socket"],
	messages: {
		kit: ({ cooler, socket }: { cooler: string; socket: string }) =>
			`The ${cooler} has a kit for ${socket} in its box.`,
		noKit: ({ cooler, socket }: { cooler: string; socket: string }) =>
			`The board has socket ${socket}; the ${cooler} has no mounting kit for it.`,
		onRequest: ({ cooler, socket }: { cooler: string; socket: string }) =>
			`The ${cooler} goes on ${socket} with a kit that its maker sends on request.`,
		bought: ({ cooler, socket }: { cooler: string; socket: string }) =>
			`The ${cooler} goes on ${socket} with a kit that is sold apart.`,
		noBackPlate: ({ cooler }: { cooler: string }) =>
			`The ${cooler} screws into the board's own back plate, and this board comes without one.`,
		backPlateUnknown: ({ cooler }: { cooler: string }) =>
			`The ${cooler} screws into the board's own back plate; whether this board has one is not known.`,
		mayNeedBackPlate: ({ cooler }: { cooler: string }) =>
			`This board has no back plate of its own; whether the ${cooler} brings one is not known.`,
		needBackPlate: () => "Its own back plate behind the socket, because your cooler screws into it.",
		need: ({ sockets, more }: { sockets: readonly string[]; more: boolean }) =>
			`A socket your cooler has a kit for: ${sockets.join(", ")}${more ? ", or another on its maker's list" : ""}.`,
	},
	advice: {
		onRequest: () =>
			"Ask the cooler's maker for the kit now: it can take weeks, and without it the computer cannot run.",
		bought: () => "Add the price of the kit, and buy it together with the board.",
		backPlateUnknown: () => "Look at pictures of the board's back: a metal or plastic frame sits behind the socket.",
		mayNeedBackPlate: () => "Look into the cooler's box or manual for a back plate.",
	},
	check(facts): Outcome {
		const socket = facts["board.socket"];
		const words = { cooler: facts["cooler.name"] ?? "cooler", socket };
		const ways = facts["cooler.kits"]
			.filter((kit) => canonicalSocket(kit.socket) === canonicalSocket(socket))
			.map(({ how }) => how);
		if (ways.length === 0) return fail("noKit", words);
		const [needed, has] = [facts["cooler.needsBoardBackPlate"], facts["board.layout.ownBackPlate"]];
		if (needed && has === false) return fail("noBackPlate", { cooler: words.cooler });
		if (needed && has === undefined)
			return cannotTell(["board.layout.ownBackPlate"], "backPlateUnknown", { cooler: words.cooler });
		if (!ways.includes("in the box"))
			return ways.includes("on request") ? planAround("onRequest", words) : planAround("bought", words);
		return needed === undefined && has === false
			? goodToKnow("mayNeedBackPlate", { cooler: words.cooler })
			: pass("kit", words);
	},
	needs({ "cooler.kits": kits, "cooler.needsBoardBackPlate": needed, "processor.socket": known }) {
		if (needed) return { messageId: "needBackPlate", data: {} };
		// With the processor settled its socket is a line of its own.
		if (!kits || kits.length === 0 || known) return null;
		const sockets = [...new Set(kits.map(({ socket }) => socket))];
		return {
			messageId: "need",
			data: { sockets: sockets.slice(0, mostNamed), more: sockets.length > mostNamed },
		};
	},
});
