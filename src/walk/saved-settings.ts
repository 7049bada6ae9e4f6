/** What a person can set for all walks. "auto" goes by the terminal. */
export interface WalkSettings {
	readonly colour: "auto" | "never";
	readonly characters: "auto" | "ascii";
	readonly face: "auto" | "line-by-line";
	/** Millimetres alone, or with inches behind them. */
	readonly lengths: "mm" | "with-inches";
	/** The name under which this person helps others. */
	readonly helperName?: string;
}

export const defaultSettings: WalkSettings = { colour: "auto", characters: "auto", face: "auto", lengths: "mm" };
