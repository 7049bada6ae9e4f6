import type { SourceId } from "./sources.ts";

/** A warning, when it matters, and on what ground. */
export interface Caution {
	readonly id: string;
	readonly when: "at the shop" | "at the bench" | "firmware";
	readonly text: string;
	readonly source: SourceId;
}

/** Cautions for a first build. Local rules and licensed practice come before all of them. */
export const cautions: readonly Caution[] = [
	{
		id: "mains",
		when: "at the bench",
		text: "Pull the mains plug before you open the case or touch a part. Never open a power supply: it stays charged. Wall sockets and circuits are work for a licensed electrician, by the rules where you live.",
		source: "common-practice",
	},
	{
		id: "cables",
		when: "at the bench",
		text: "Use only the cables that came with that very supply. Cables of another one can look the same, put 12 V where 5 V belongs, and destroy your drives.",
		source: "common-practice",
	},
	{
		id: "static",
		when: "at the bench",
		text: "Touch bare metal of the case before you touch a part, or wear a wrist strap made for it. Hold boards by the edge.",
		source: "common-practice",
	},
	{
		id: "contacts",
		when: "at the bench",
		text: "Never touch the contacts in the processor's socket. Photograph them before the processor goes in, and keep the socket's cover: returns ask for it.",
		source: "common-practice",
	},
	{
		id: "standoffs",
		when: "at the bench",
		text: "Take out every standoff in the case that lies under no hole of the board: it can touch bare board and short it.",
		source: "microatx-1.2",
	},
	{
		id: "dark-first-start",
		when: "at the bench",
		text: "At the first start the screen can stay dark for minutes, while the board tries out the memory. Switch off at once if it smells or smokes, or if no fan of the cooler turns. Else wait 15 minutes.",
		source: "common-practice",
	},
	{
		id: "update",
		when: "firmware",
		text: "While firmware is being updated the power must not go: a stopped update can leave the board dead. Take the file for this very board and revision.",
		source: "common-practice",
	},
	{
		id: "reset",
		when: "firmware",
		text: "If it no longer starts after a setting was changed, reset the settings: by the button at the back if there is one. The last resort is a jumper, a small cap on two pins: pull the mains plug, then follow the manual.",
		source: "common-practice",
	},
	{
		id: "cell",
		when: "at the bench",
		text: "Keep the button cell away from small children. If one is swallowed, burns can come within two hours: get medical help at once.",
		source: "button-cell-warning",
	},
	{
		id: "lights",
		when: "at the bench",
		text: "Lights of 5 V (three pins) and of 12 V (four pins) must never be swapped: the wrong socket destroys them.",
		source: "common-practice",
	},
];
