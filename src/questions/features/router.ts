import type { Question } from "../define-question.ts";

const rates = [
	{ value: "0", rateGbps: 0, label: "No cable will be used", explanation: "The wired network is then not counted" },
	{ value: "1", rateGbps: 1, label: "1 Gb/s", explanation: "Most routers and lines; any board keeps up" },
	{ value: "2.5", rateGbps: 2.5, label: "2.5 Gb/s", explanation: "Newer routers; lines above 1 Gb/s" },
	{ value: "5", rateGbps: 5, label: "5 Gb/s", explanation: "Some new routers and lines" },
	{ value: "10", rateGbps: 10, label: "10 Gb/s", explanation: "Own servers and very fast lines" },
] as const;
const rateOf = (value: unknown) => rates.find((rate) => rate.value === value);

export const router: Question = {
	id: "features/router",
	tier: "features",
	kind: "one",
	ask: "How fast is the socket your network cable goes into?",
	hint: "On the router: 1G or Gigabit is 1 Gb/s; 2.5G is 2.5 Gb/s",
	label: "Speed of the wired network",
	why: "The slowest piece sets the pace. A board faster than router and line brings nothing.",
	whereToFind: "On the router's label or page, beside LAN. Your contract says how fast the line is.",
	changes: "A board slower than your network is marked, and how well it keeps up counts in the score.",
	notSure: "No board is marked for its wired network.",
	howToFindOut: "Read the label of the router.",
	applies: ({ wishes }) => wishes["features/wireless"] !== "must",
	options: () => rates.map(({ value, label, explanation }) => ({ value, label, explanation })),
	expected: (value) => (rateOf(value) ? null : "one of 0, 1, 2.5, 5, 10"),
	sets: (facts, value) => ({ ...facts, routerGbps: rateOf(value)?.rateGbps ?? null }),
	says: (value) => rateOf(value)?.label ?? String(value),
};
