import { homedir } from "node:os";
import { describe, expect, test } from "vitest";
import { dataFolder, settingsFolder, walksFolder } from "../../src/files/own-folders.ts";

describe("own folders", () => {
	test.each<[string, NodeJS.ProcessEnv, string, string]>([
		["below home", { HOME: "/home/a" }, "/home/a/.local/state/boardwalk/walks", "/home/a/.config/boardwalk"],
		[
			"where XDG says",
			{ HOME: "/home/a", XDG_STATE_HOME: "/s", XDG_CONFIG_HOME: "/c" },
			"/s/boardwalk/walks",
			"/c/boardwalk",
		],
		[
			"below home where XDG is relative, as its specification asks",
			{ HOME: "/home/a", XDG_STATE_HOME: "s", XDG_CONFIG_HOME: "./c" },
			"/home/a/.local/state/boardwalk/walks",
			"/home/a/.config/boardwalk",
		],
		[
			"below home where XDG is empty",
			{ HOME: "/home/a", XDG_STATE_HOME: "", XDG_CONFIG_HOME: "" },
			"/home/a/.local/state/boardwalk/walks",
			"/home/a/.config/boardwalk",
		],
	])("%s", (_, environment, walks, settings) => {
		expect(walksFolder(environment, "linux")).toBe(walks);
		expect(settingsFolder(environment, "darwin")).toBe(settings);
	});

	test("of own parts lies where XDG has data", () => {
		expect(dataFolder({ HOME: "/home/a" }, "linux")).toBe("/home/a/.local/share/boardwalk");
		expect(dataFolder({ HOME: "/home/a", XDG_DATA_HOME: "/d" }, "linux")).toBe("/d/boardwalk");
		expect(dataFolder({ HOME: "/home/a", XDG_DATA_HOME: "d" }, "linux")).toBe("/home/a/.local/share/boardwalk");
		expect(dataFolder({ LOCALAPPDATA: "/appdata", XDG_DATA_HOME: "/d" }, "win32")).toBe("/appdata/boardwalk");
	});

	test("on Windows below LOCALAPPDATA, and XDG does not count there", () => {
		const environment = { LOCALAPPDATA: "/appdata", HOME: "/home/a", XDG_STATE_HOME: "/s" };
		expect(walksFolder(environment, "win32")).toBe("/appdata/boardwalk/walks");
		expect(settingsFolder(environment, "win32")).toBe("/appdata/boardwalk");
	});

	test("below the home that the system knows, where the environment has none", () => {
		expect(walksFolder({}, "linux")).toBe(`${homedir()}/.local/state/boardwalk/walks`);
		expect(walksFolder({ HOME: "relative" }, "linux")).toBe(`${homedir()}/.local/state/boardwalk/walks`);
	});
});
