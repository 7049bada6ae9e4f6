import { defineRule } from "../define-rule.ts";
import { fail, type Outcome, pass, planAround } from "../outcome.ts";
import { type FedScreen, screensOnSockets } from "../screens-on-sockets.ts";

const counted = (count: number, what: string) => `${count === 0 ? "no" : count} ${what}${count === 1 ? "" : "s"}`;

/** The plugs of the screens against the picture sockets of the graphics card, with adapters where they help. */
export const screensOnCard = defineRule({
	id: "build/screens-on-card",
	scope: "build",
	label: "Screens on the card",
	wayOut: "another card or fewer screens",
	asks: "Can every screen be plugged into the graphics card?",
	why: "Screens and cards have different picture sockets. Some can be joined by an adapter, and some cannot.",
	source: "common-practice",
	severity: "plan-around",
	reads: ["screens", "graphicsCard.pictureSockets"],
	mayRead: [],
	messages: {
		noScreen: () => "There is no screen to plug in yet.",
		direct: ({ screens }: { screens: readonly string[] }) =>
			screens.length === 1
				? `The screen plugs straight into the card (${screens.join()}).`
				: `All ${screens.length} screens plug straight into the card (${screens.join(", ")}).`,
		plain: ({ adapters }: { adapters: readonly string[] }) =>
			`The card has other sockets than your screens; plain cables or adapters help: ${adapters.join(", ")}.`,
		active: ({ adapters }: { adapters: readonly string[] }) =>
			`The card has other sockets than your screens; you need adapters with a chip inside ("active"): ${adapters.join(", ")}.`,
		tooMany: ({ screens, sockets }: { screens: number; sockets: number }) =>
			`You plan ${counted(screens, "screen")}; the card has ${counted(sockets, "picture socket")}.`,
		noWay: ({ screens }: { screens: readonly string[] }) =>
			`No free socket of the card can feed a screen whose plug is ${screens.join(" or ")}.`,
	},
	advice: {
		plain: () => "Such cables work one way: from the card to the screen. The first name is the card's end.",
		active: () => "Plain adapters stay dark here. Buy one that says active and names both ends in this order.",
		tooMany: () => "Take a card with more sockets, or plan fewer screens.",
		noWay: () => "Look at the back of the screen: many have a second kind of socket. Else take another card.",
	},
	check({ screens, "graphicsCard.pictureSockets": sockets }): Outcome {
		if (screens.length === 0) return pass("noScreen");
		if (screens.length > sockets.length) return fail("tooMany", { screens: screens.length, sockets: sockets.length });
		const fed = screensOnSockets(screens, sockets);
		const dark = fed.filter(({ way }) => way === null);
		if (dark.length > 0) return fail("noWay", { screens: [...new Set(dark.map(({ screen }) => screen))] });
		const adapters = fed.filter(({ way }) => way !== "direct");
		if (adapters.length === 0) return pass("direct", { screens });
		const active = adapters.filter(({ way }) => way === "active");
		return active.length > 0
			? planAround("active", { adapters: namesOf(active) })
			: planAround("plain", { adapters: namesOf(adapters) });
	},
});

function namesOf(fed: readonly FedScreen[]): readonly string[] {
	return [...new Set(fed.map(({ socket, screen }) => `${socket} to ${screen}`))];
}
