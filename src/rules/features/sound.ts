import { kleeneAnd, kleeneOr, type ThreeValued } from "../../maths/kleene.ts";
import type { FactsUnder } from "../../parts/fact-path.ts";
import type { SoundUse } from "../../parts/wants.ts";
import { defineRule } from "../define-rule.ts";
import { cannotTell, type Outcome, pass, planAround } from "../outcome.ts";

const useWords = {
	headphones: "headphones",
	microphone: "a microphone",
	speakers: "speakers",
	surround: "surround speakers",
	optical: "an optical cable",
	"own-device": "a USB sound box or headset",
} as const satisfies Record<SoundUse, string>;

const mayRead = [
	"soundUses",
	"board.sound.channels",
	"board.sound.rearSockets",
	"board.sound.optical",
	"board.headers.frontAudio",
] as const;
type Facts = FactsUnder<never, (typeof mayRead)[number]>;

/**
 * Sound sockets for what will be plugged in. Surround speakers want five sockets at the back, or three that change their
 * use with six channels. A device of one's own hangs on USB and needs nothing. Common practice, no source.
 */
export const sound = defineRule({
	id: "features/sound",
	scope: "board",
	label: "Sound sockets",
	wayOut: "a small USB sound box",
	asks: "Does the board have the sound sockets you will use?",
	why: "Boards save on sound sockets first: optical and surround are often missing.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead,
	messages: {
		notAsked: () => "You have not said how sound comes out.",
		has: () => "It has the sound sockets you will use.",
		lacks: ({ uses }: { uses: readonly string[] }) => `It has no sound socket for: ${uses.join(", ")}.`,
		need: ({ uses }: { uses: readonly string[] }) => `Sound sockets for: ${uses.join(", ")}.`,
	},
	advice: { lacks: () => "A small USB sound box brings the socket: count its price and one USB socket." },
	check(facts): Outcome {
		const uses = [...new Set(facts.soundUses ?? [])];
		if (uses.length === 0) return pass("notAsked");
		const lacking = uses.filter((use) => serves(use, facts) === "no");
		if (lacking.length > 0) return planAround("lacks", { uses: lacking.map((use) => useWords[use]) });
		const unknown = uses.filter((use) => serves(use, facts) === "unknown");
		const missing = unknown.flatMap((use) => pathsFor[use]).filter((path) => facts[path] === undefined);
		return unknown.length > 0 ? cannotTell([...new Set(missing)]) : pass("has");
	},
	needs({ soundUses = [] }) {
		const uses = [...new Set(soundUses)].filter((use) => use !== "own-device");
		return uses.length === 0 ? null : { messageId: "need", data: { uses: uses.map((use) => useWords[use]) } };
	},
});

const pathsFor = {
	headphones: ["board.headers.frontAudio", "board.sound.rearSockets"],
	microphone: ["board.headers.frontAudio", "board.sound.rearSockets"],
	speakers: ["board.sound.rearSockets"],
	surround: ["board.sound.rearSockets", "board.sound.channels"],
	optical: ["board.sound.optical"],
	"own-device": [],
} as const satisfies Record<SoundUse, readonly (typeof mayRead)[number][]>;

function serves(use: SoundUse, facts: Facts): ThreeValued {
	const [sockets, channels] = [facts["board.sound.rearSockets"], facts["board.sound.channels"]];
	switch (use) {
		case "headphones":
			return kleeneOr(known(facts["board.headers.frontAudio"]), atLeast(sockets, 1));
		// At the back the first socket is for listening; the next ones take a microphone or another device.
		case "microphone":
			return kleeneOr(known(facts["board.headers.frontAudio"]), atLeast(sockets, 2));
		case "speakers":
			return atLeast(sockets, 1);
		case "surround":
			return kleeneOr(atLeast(sockets, 5), kleeneAnd(atLeast(sockets, 3), atLeast(channels, 6)));
		case "optical":
			return known(facts["board.sound.optical"]);
		case "own-device":
			return "yes";
	}
}

function known(fact: boolean | undefined): ThreeValued {
	return fact === undefined ? "unknown" : fact ? "yes" : "no";
}

function atLeast(count: number | undefined, least: number): ThreeValued {
	return known(count === undefined ? undefined : count >= least);
}
