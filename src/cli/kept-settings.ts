import { settingsFolder } from "../files/own-folders.ts";
import { type KeptSettings, openSettings } from "../files/settings.ts";

/** The settings of this person on this machine. */
export function keptSettings(): KeptSettings {
	return openSettings(settingsFolder(process.env, process.platform));
}
