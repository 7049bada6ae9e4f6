import { firmwareCare } from "../../../src/rules/quality/firmware-care.ts";
import { testRule } from "../test-rule.ts";

const asOf = "2026-11-28";
const releasedOn = (...dates: string[]) => ({
	firmware: { releases: dates.map((date, index) => ({ version: `F${index + 1}`, date })) },
});

testRule(firmwareCare, {
	fits: {
		"two years ago to the day": [
			{ board: releasedOn("2023-01-02", "2024-11-28"), asOf },
			"cared",
			{ date: "2024-11-28" },
		],
		"newest first": [{ board: releasedOn("2026-10-01", "2021-01-02"), asOf }, "cared", { date: "2026-10-01" }],
		"nobody looked": [{ board: {}, asOf }, "notLooked"],
		"versions without dates": [{ board: { firmware: { releases: [{ version: "F1" }] } }, asOf }, "notLooked"],
		"no day to count from": [{ board: releasedOn("2019-01-02") }, "notLooked"],
	},
	cautions: {
		"a day longer": [
			{ board: releasedOn("2024-11-27", "2024-01-27"), asOf },
			"good-to-know",
			"old",
			{ date: "2024-11-27", years: 2 },
		],
		"the 29th of February of two years before": [
			{ board: releasedOn("2022-02-28"), asOf: "2024-02-29" },
			"good-to-know",
			"old",
			{ date: "2022-02-28", years: 2 },
		],
	},
	without: { cannotTell: "it counts against a board only where somebody looked and found old firmware" },
});
