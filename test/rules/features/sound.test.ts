import { sound } from "../../../src/rules/features/sound.ts";
import { testRule } from "../test-rule.ts";

const full = { sound: { channels: 8, rearSockets: 5, optical: true }, headers: { frontAudio: true } };

testRule(sound, {
	fits: {
		"nobody has said": [{ board: { sound: { rearSockets: 0 } } }, "notAsked"],
		"a device of one's own needs nothing": [{ board: {}, soundUses: ["own-device"] }, "has"],
		"all of them": [{ board: full, soundUses: ["headphones", "speakers", "surround", "optical", "own-device"] }, "has"],
		"surround through three sockets that change their use": [
			{ board: { sound: { channels: 6, rearSockets: 3 } }, soundUses: ["surround"] },
			"has",
		],
		"surround through five, channels not known": [
			{ board: { sound: { rearSockets: 5 } }, soundUses: ["surround"] },
			"has",
		],
		"headphones at the back": [
			{ board: { sound: { rearSockets: 1 }, headers: { frontAudio: false } }, soundUses: ["headphones"] },
			"has",
		],
		"headphones at the front, the back not known": [
			{ board: { headers: { frontAudio: true } }, soundUses: ["headphones"] },
			"has",
		],
	},
	cautions: {
		"no optical socket": [
			{ board: { sound: { optical: false } }, soundUses: ["optical"] },
			"plan-around",
			"lacks",
			{ uses: ["an optical cable"] },
		],
		"surround: five channels through three sockets": [
			{ board: { sound: { channels: 5, rearSockets: 3 } }, soundUses: ["surround", "speakers"] },
			"plan-around",
			"lacks",
			{ uses: ["surround speakers"] },
		],
		"surround: two sockets, channels not known": [
			{ board: { sound: { rearSockets: 2 } }, soundUses: ["surround"] },
			"plan-around",
			"lacks",
			{ uses: ["surround speakers"] },
		],
		"no sound socket at all": [
			{
				board: { sound: { rearSockets: 0 }, headers: { frontAudio: false } },
				soundUses: ["headphones", "speakers", "headphones"],
			},
			"plan-around",
			"lacks",
			{ uses: ["headphones", "speakers"] },
		],
	},
	cannotTell: {
		"the page is silent": [
			{ board: {}, soundUses: ["headphones", "surround", "optical"] },
			["board.headers.frontAudio", "board.sound.rearSockets", "board.sound.channels", "board.sound.optical"],
		],
		"surround through three sockets, channels not known": [
			{ board: { sound: { rearSockets: 3 } }, soundUses: ["surround"] },
			["board.sound.channels"],
		],
		"no front header, and nobody knows of the back": [
			{ board: { headers: { frontAudio: false } }, soundUses: ["headphones"] },
			["board.sound.rearSockets"],
		],
	},
	needs: {
		"two uses": [{ soundUses: ["headphones", "optical"] }, "Sound sockets for: headphones, an optical cable."],
		"a device of one's own": [{ soundUses: ["own-device"] }, null],
		"nobody has said": [{}, null],
	},
});
