import type { Question } from "../define-question.ts";

const most = 30;

export const rearDevices: Question = {
	id: "features/rear-devices",
	tier: "features",
	kind: "number",
	ask: "How many USB things will be plugged in at the back?",
	hint: "Count keyboard, mouse, printer, headset, drives; a number such as 5",
	label: "USB things at the back",
	why: "Sockets at the back cannot be added later without a hub or a card.",
	whereToFind: "Count the cables at the computer you use now, and add what you plan to buy.",
	changes: "How many sockets stay free counts in the score, up to four spare ones. No board is taken out.",
	notSure: "Spare sockets are left out of the score.",
	howToFindOut: "Count the cables at the computer you use now.",
	applies: () => true,
	options: () => [],
	read: (text) => {
		const match = /^\s*(\d{1,3})\s*$/.exec(text);
		const count = Number(match?.[1]);
		return match && count <= most
			? { value: count }
			: { problem: `Type how many, as a whole number from 0 to ${most}.` };
	},
	expected: (value) =>
		typeof value === "number" && Number.isInteger(value) && value >= 0 && value <= most
			? null
			: `a whole number from 0 to ${most}`,
	sets: (facts, value) => ({ ...facts, rearDevices: value as number }),
	says: (value) => String(value),
};
