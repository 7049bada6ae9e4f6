import { defineCriterion, type Measure } from "./define-criterion.ts";

/** USB sockets at the back beyond what will be plugged in. */
export const spareSockets = defineCriterion({
	id: "spare-sockets",
	name: "spare USB sockets at the back",
	asks: "How much would running out of USB sockets bother you?",
	why: "Sockets at the back cannot be added later without a hub or a card.",
	ends: { worst: "every socket is taken from the first day", best: "four sockets are still free" },
	unit: "spare sockets",
	scale: [
		[-2, 0],
		[0, 0.5],
		[2, 0.9],
		[4, 1],
	],
	source: "own-convention",
	grounds: "None spare is half the value, two nearly all, four all; more is not worth money.",
	reads: ["board.rearUsb", "rearDevices", "laterThings", "wish.features/rear-usb-c"],
	measure({
		"board.rearUsb": sockets,
		rearDevices,
		laterThings = [],
		"wish.features/rear-usb-c": usbC,
	}): Measure | null {
		if (rearDevices === undefined) return null;
		const wanted = rearDevices + laterThings.filter((thing) => thing === "USB thing").length;
		// A wished oval socket that is not there wants a hub or an adapter, which takes the use of a flat one.
		const wishesC = usbC === "would-like" || usbC === "must";
		// Common practice, no source: boards carry 4 to 10 USB sockets at the back.
		if (!sockets) return { low: 4 - wanted - (wishesC ? 2 : 0), high: 10 - wanted, missing: ["board.rearUsb"] };
		const lacksC = wishesC && !sockets.some(({ plug }) => plug === "C");
		const count = sockets.reduce((sum, socket) => sum + socket.count, 0) - (lacksC ? 2 : 0);
		return { low: count - wanted, high: count - wanted, missing: [] };
	},
	says: ({ low, high }) => {
		if (low !== high) return "how many USB sockets stay free at the back is not known";
		if (low < 0) return `${-low} of your things ${low === -1 ? "finds" : "find"} no USB socket at the back`;
		return low === 1
			? "1 USB socket stays free at the back"
			: `${low === 0 ? "no" : low} USB sockets stay free at the back`;
	},
});
