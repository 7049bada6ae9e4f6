import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, pass } from "../outcome.ts";

/** The wish for a USB-C socket at the back. */
export const rearUsbC = defineRule({
	id: "features/rear-usb-c",
	scope: "board",
	label: "USB-C at the back",
	wayOut: "no USB-C at the back",
	asks: "Does the board have a USB-C socket at the back, as you wished?",
	why: "A plug of the small oval kind goes into no other socket without an adapter.",
	source: "common-practice",
	severity: "stops",
	reads: [],
	mayRead: ["wish.features/rear-usb-c", "board.rearUsb"],
	messages: {
		notAsked: () => "You have not asked for USB-C at the back.",
		has: ({ count }: { count: number }) => `It has ${count} USB-C ${count === 1 ? "socket" : "sockets"} at the back.`,
		lacks: () => "It has no USB-C socket at the back, which you must have.",
		silent: () => "Whether it has a USB-C socket at the back, which you would like, is not known.",
		wouldLike: () => "It has no USB-C socket at the back, which you would like.",
		need: ({ must }: { must: boolean }) =>
			must ? "At least one USB-C socket at the back." : "A USB-C socket at the back, if it costs little.",
	},
	check({ "wish.features/rear-usb-c": wish, "board.rearUsb": sockets }) {
		if (!wish || wish === "dont-mind") return pass("notAsked");
		if (!sockets) return wish === "must" ? cannotTell(["board.rearUsb"]) : goodToKnow("silent");
		const count = sockets.filter(({ plug }) => plug === "C").reduce((sum, socket) => sum + socket.count, 0);
		if (count > 0) return pass("has", { count });
		return wish === "must" ? fail("lacks") : goodToKnow("wouldLike");
	},
	needs: ({ "wish.features/rear-usb-c": wish }) =>
		wish && wish !== "dont-mind" ? { messageId: "need", data: { must: wish === "must" } } : null,
});
