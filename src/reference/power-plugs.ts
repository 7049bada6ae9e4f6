import type { SourceId } from "./sources.ts";
import { stagesPassOn } from "./supply-budget.ts";

/** A plug that feeds an add-in graphics card. */
export type GraphicsPlug = {
	/** Sustained: averaged over any one second. */
	readonly watts: number;
	/** At 12 V, the most root-mean-square current over one second. */
	readonly ampsMax: number;
	readonly source: SourceId;
	readonly note?: string;
};

export type GraphicsPlugName = "6-pin" | "8-pin" | "12V-2x6";

/** Which plug a graphics card takes is a fact of the card; it cannot be told from its watts. */
export const graphicsPlugs: Readonly<Record<GraphicsPlugName, GraphicsPlug>> = {
	"6-pin": { watts: 75, ampsMax: 6.75, source: "atx-3.0-guide-2.01" },
	"8-pin": { watts: 150, ampsMax: 13.5, source: "atx-3.0-guide-2.01" },
	"12V-2x6": {
		watts: 600,
		ampsMax: 55,
		source: "atx-3.0-guide-2.01",
		note: "as 12VHPWR; its sense contacts announce 600, 450, 300 or 150 W (same guide, rev. 2.1a)",
	},
};

/** The six 12 V contacts of a 12V-2x6 plug, each good for this much with all of them carrying current (30 K rise). */
export const wideGraphicsPlugContacts = {
	liveContacts: 6,
	ampsPerContact: 9.2,
	source: "atx-3.0-guide-2.01",
} as const satisfies { liveContacts: number; ampsPerContact: number; source: SourceId };

/** A plug that feeds the processor through the board. */
export type ProcessorPlug = { readonly liveContacts: number; readonly source: SourceId };

export type ProcessorPlugName = "4-pin" | "8-pin";

/** Half the contacts carry 12 V, the others lead back. */
export const processorPlugs: Readonly<Record<ProcessorPlugName, ProcessorPlug>> = {
	"4-pin": { liveContacts: 2, source: "atx-3.0-guide-2.01" },
	"8-pin": { liveContacts: 4, source: "atx-3.0-guide-2.01" },
};

/** What a processor plug carries at 12 V with this much current on each live contact. */
export function processorPlugWatts(plug: ProcessorPlugName, ampsPerContact: number): number {
	return processorPlugs[plug].liveContacts * ampsPerContact * 12;
}

/**
 * What this project counts on from one processor plug. The wire, 18 AWG, is normally used for 6 to 8 A per contact
 * (ATX 3.0 guide, rev. 2.01, p. 18); counting on the low end, 6 A x 4 x 12 V = 288 W, is common practice of the bench,
 * and many boards with a second plug run well on the first alone.
 */
export const processorPlugBudget = {
	ampsPerContact: 6,
	/** The upper end of what the wire is normally used for. */
	mostAmpsPerContact: 8,
	wireSource: "atx-3.0-guide-2.01",
	source: "common-practice",
} as const satisfies { ampsPerContact: number; mostAmpsPerContact: number; wireSource: SourceId; source: SourceId };

/** What processor plugs carry together: what is counted on, and the most the wire is normally used for. */
export function processorPlugsCarry(plugs: readonly ProcessorPlugName[]): {
	readonly budgetW: number;
	readonly mostW: number;
} {
	const { ampsPerContact, mostAmpsPerContact } = processorPlugBudget;
	const at = (amps: number) => plugs.reduce((sum, plug) => sum + processorPlugWatts(plug, amps), 0);
	return { budgetW: at(ampsPerContact), mostW: at(mostAmpsPerContact) };
}

/**
 * What a processor draws through its plugs: its own watts and the losses of the board's stages on top.
 *
 * @returns W, whole, rounded up
 */
export function atProcessorPlugs(processorW: number): number {
	return Math.ceil(Math.round((100 * processorW) / stagesPassOn.share) / 100);
}

/** How many contacts of the board's main plug carry each voltage. */
export type MainPlug = {
	readonly contactsAt3V3: number;
	readonly contactsAt5V: number;
	readonly contactsAt12V: number;
	readonly source: SourceId;
};

export type MainPlugName = "20-pin" | "24-pin";

export const mainPlugs: Readonly<Record<MainPlugName, MainPlug>> = {
	"20-pin": { contactsAt3V3: 3, contactsAt5V: 4, contactsAt12V: 1, source: "upgrading-and-repairing-pcs" },
	"24-pin": { contactsAt3V3: 4, contactsAt5V: 5, contactsAt12V: 2, source: "upgrading-and-repairing-pcs" },
};

/** Current a contact of the main plug is good for; high-current ones have been required since March 2005. */
export const mainPlugContactAmps = {
	standard: 6,
	highCurrent: 9,
	source: "upgrading-and-repairing-pcs",
} as const satisfies { standard: number; highCurrent: number; source: SourceId };

/** What the main plug carries over all its voltages with this much current on each live contact. */
export function mainPlugWatts(plug: MainPlugName, ampsPerContact: number): number {
	const { contactsAt3V3, contactsAt5V, contactsAt12V } = mainPlugs[plug];
	return ampsPerContact * (contactsAt3V3 * 3.3 + contactsAt5V * 5 + contactsAt12V * 12);
}
