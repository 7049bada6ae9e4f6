import type { WalkSettings } from "../walk/saved-settings.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Choice, heading, pairs, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** Settings for all walks. Each line turns one of them over. */
export function settingsScreen(view: WalkView): Screen {
	const { settings, files } = view.state;
	const turn = (label: string, detail: string, setting: Partial<WalkSettings>): Choice => ({
		label,
		detail,
		event: { type: "set", setting },
	});
	return plainScreen(view, {
		id: "settings",
		title: "Settings",
		body: [
			text("They hold for all walks on this machine. Choose a line to change it."),
			...(files.length > 0 ? [heading("Where your files are"), pairs(files)] : []),
			text("Nothing is ever sent anywhere."),
		],
		choices: [
			turn(`Colour: ${settings.colour === "never" ? "never" : "as the terminal has it"}`, "Holds from the next start", {
				colour: settings.colour === "never" ? "auto" : "never",
			}),
			turn(
				`Characters: ${settings.characters === "ascii" ? "plain ASCII only" : "as the terminal has them"}`,
				"Plain ASCII if you see odd signs",
				{ characters: settings.characters === "ascii" ? "auto" : "ascii" },
			),
			turn(
				`Way of asking: ${settings.face === "line-by-line" ? "line by line" : "as drawn screens, where the terminal can"}`,
				"Line by line suits screen readers; holds from the next start",
				{ face: settings.face === "line-by-line" ? "auto" : "line-by-line" },
			),
			turn(
				`Lengths: ${settings.lengths === "with-inches" ? "millimetres, with inches behind them" : "millimetres"}`,
				"On screens and in the sheet; pictures stay in millimetres",
				{ lengths: settings.lengths === "with-inches" ? "mm" : "with-inches" },
			),
			{ label: "Back", apart: true, event: { type: "back" } },
		],
		enter: { words: "back", event: { type: "back" } },
	});
}
