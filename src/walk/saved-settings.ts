/** What a person can set for all walks. "auto" goes by the terminal. */
export interface WalkSettings {
	readonly colour: "auto" | "never";
	readonly characters: "auto" | "ascii";
	readonly face: "auto" | "line-by-line";
}

export const defaultSettings: WalkSettings = { colour: "auto", characters: "auto", face: "auto" };
