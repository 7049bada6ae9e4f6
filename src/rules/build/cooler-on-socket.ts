import { canonicalSocket } from "../../parts/canonical-name.ts";
import { defineRule } from "../define-rule.ts";
import { fail, type Outcome, pass, planAround } from "../outcome.ts";

/** A cooler is screwed down around the socket, so it needs a mounting kit made for that socket. */
export const coolerOnSocket = defineRule({
	id: "build/cooler-on-socket",
	scope: "build",
	label: "Cooler on the socket",
	wayOut: "another cooler",
	asks: "Does the cooler have a mounting kit for the processor's socket?",
	why: "Each socket has its own screw holes. A cooler without the right brackets and screws cannot be fixed.",
	source: "common-practice",
	severity: "stops",
	reads: ["cooler.kits", "processor.socket"],
	mayRead: [],
	messages: {
		inBox: ({ socket }: { socket: string }) => `The cooler comes with the mounting kit for ${socket}.`,
		onRequest: ({ socket }: { socket: string }) =>
			`The cooler fits ${socket}, but its mounting kit must be asked for from the maker.`,
		bought: ({ socket }: { socket: string }) => `The cooler fits ${socket}, but its mounting kit is sold on its own.`,
		noKit: ({ socket, sockets }: { socket: string; sockets: readonly string[] }) =>
			sockets.length === 0
				? `The cooler's page names no mounting kit for any socket, so none for ${socket}.`
				: `The cooler fits ${listed(sockets)} only; the processor's socket is ${socket}.`,
	},
	advice: {
		onRequest: () =>
			"Ask for the kit before you build; makers often want a photo of the bill, and the post takes days.",
		bought: () => "Buy the kit along with the cooler, and add it to the price.",
		noKit: () => "Take a cooler that lists your socket. Never fix one with screws made for another socket.",
	},
	check({ "cooler.kits": kits, "processor.socket": socket }): Outcome {
		const ways = kits.filter((kit) => canonicalSocket(kit.socket) === canonicalSocket(socket)).map(({ how }) => how);
		if (ways.includes("in the box")) return pass("inBox", { socket });
		if (ways.includes("on request")) return planAround("onRequest", { socket });
		if (ways.includes("bought")) return planAround("bought", { socket });
		return fail("noKit", { socket, sockets: [...new Set(kits.map((kit) => kit.socket))] });
	},
});

/** Pages list a dozen sockets; three are enough to see that the wanted one is missing. */
function listed(sockets: readonly string[]): string {
	const [first, ...more] = sockets.slice(0, 3);
	const rest = sockets.length > 3 ? [`${sockets.length - 3} more`] : [];
	const others = [...more, ...rest];
	return others.length === 0 ? String(first) : `${[first, ...others.slice(0, -1)].join(", ")} and ${others.at(-1)}`;
}
