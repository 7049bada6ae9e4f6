import type { AddInCard } from "./add-in-card.ts";
import type { Drive } from "./drive.ts";
import type { Money } from "./money.ts";
import type { PictureSocket } from "./vocabulary.ts";

/** What the computer will be used for. */
export const activities = [
	"writing",
	"films",
	"games",
	"pictures",
	"building",
	"sound-recording",
	"always-on",
] as const;
export type Activity = (typeof activities)[number];

/** How long heavy work usually lasts without a break. */
export const sessionLengths = ["minutes", "an-hour", "all-day"] as const;
export type SessionLength = (typeof sessionLengths)[number];

/** The room on the hottest evening of the summer. */
export const summerRooms = ["cool", "warm", "fan-on"] as const;
export type SummerRoom = (typeof summerRooms)[number];

/** Things a person may bring along: plugs that few new boards have, and a system installed elsewhere. */
export const oldThings = [
	"PS/2 keyboard or mouse",
	"serial device",
	"parallel printer",
	"IDE drive",
	"PCI card",
	"installed system",
] as const;
export type OldThing = (typeof oldThings)[number];

/** Whether the processor's clock will be raised above what its maker set. */
export const clockPlans = ["no", "maybe", "done-before"] as const;
export type ClockPlan = (typeof clockPlans)[number];

/** Helps of a board for the day it does not start. */
export const rescueAids = ["fault-display", "flash-without-processor", "reset-at-back"] as const;
export type RescueAid = (typeof rescueAids)[number];

/** Lights that will be plugged into the board, by their plug. */
export const lightPlugs = ["5 V three-pin", "12 V four-pin", "maker's own"] as const;
export type LightPlug = (typeof lightPlugs)[number];

/** How sound leaves or enters the computer. */
export const soundUses = ["headphones", "microphone", "speakers", "surround", "optical", "own-device"] as const;
export type SoundUse = (typeof soundUses)[number];

export const colourTastes = ["dark", "light", "plain"] as const;
export type ColourTaste = (typeof colourTastes)[number];

/** What may be added in a few years; the same one more than once means several. */
export const laterThings = ["M.2 drive", "SATA drive", "memory", "card", "fan", "USB thing"] as const;
export type LaterThing = (typeof laterThings)[number];

/** How much will be asked: what decides most, or everything. */
export const walkLengths = ["short", "whole"] as const;
export type WalkLength = (typeof walkLengths)[number];

/** Who gives the answers. */
export const answerers = ["builder", "builder with a helper", "helper for the builder"] as const;
export type Answerer = (typeof answerers)[number];

/** Parts of which there may be several, as one thing to have bought or not. */
export const boughtLists = ["drives", "addInCards"] as const;
export type BoughtList = (typeof boughtLists)[number];

/** What a person has told of themselves, their money and their plans; null where nobody has said. */
export interface Wants {
	readonly walkLength: WalkLength | null;
	readonly answerer: Answerer | null;
	/** Most the board may cost. */
	readonly priceCap: Money | null;
	/** All the money for the computer, and how much of it is gone already. */
	readonly moneyInAll: Money | null;
	readonly moneySpent: Money | null;
	/** What the parts picked and not yet paid cost; worked out from the answers, never asked. */
	readonly moneyPlanned: Money | null;
	/** Lists of parts that are paid for already. */
	readonly boughtLists: readonly BoughtList[] | null;
	readonly activities: readonly Activity[] | null;
	readonly sessionLength: SessionLength | null;
	readonly summerRoom: SummerRoom | null;
	/** Drives that will go in, and how many older SATA drives besides. */
	readonly drives: readonly Drive[] | null;
	readonly olderSataDrives: number | null;
	/** Cards other than the graphics card. */
	readonly addInCards: readonly AddInCard[] | null;
	/** Memory wanted in the end, in GB. */
	readonly memoryGb: number | null;
	/** Plugs of the screens, one a screen. */
	readonly screens: readonly PictureSocket[] | null;
	readonly oldThings: readonly OldThing[] | null;
	/** Last day on which what can go back may go back, as an ISO date. */
	readonly returnableUntil: string | null;
	/** Things that will be plugged in at the back over USB, counted. */
	readonly rearDevices: number | null;
	/** The fastest the wired network outside the computer gets: of router and line, in Gb/s. */
	readonly routerGbps: number | null;
	readonly clockPlan: ClockPlan | null;
	/** Aids the board must have. */
	readonly rescueMusts: readonly RescueAid[] | null;
	/** Fans beside the one on the processor. */
	readonly caseFans: number | null;
	readonly lights: readonly LightPlug[] | null;
	readonly soundUses: readonly SoundUse[] | null;
	readonly colourTaste: ColourTaste | null;
	readonly laterThings: readonly LaterThing[] | null;
	readonly yearsKept: number | null;
	/** The day on which all this is judged, as an ISO date; from the clock outside, never asked. */
	readonly asOf: string | null;
}

export const noWants: Wants = {
	walkLength: null,
	answerer: null,
	priceCap: null,
	moneyInAll: null,
	moneySpent: null,
	moneyPlanned: null,
	boughtLists: null,
	activities: null,
	sessionLength: null,
	summerRoom: null,
	drives: null,
	olderSataDrives: null,
	addInCards: null,
	memoryGb: null,
	screens: null,
	oldThings: null,
	returnableUntil: null,
	rearDevices: null,
	routerGbps: null,
	clockPlan: null,
	rescueMusts: null,
	caseFans: null,
	lights: null,
	soundUses: null,
	colourTaste: null,
	laterThings: null,
	yearsKept: null,
	asOf: null,
};

/** What each want is called where facts are listed. */
export const wantTitles: Readonly<Record<keyof Wants, string>> = {
	walkLength: "length of the walk",
	answerer: "who answers",
	priceCap: "most the board may cost",
	moneyInAll: "money in all",
	moneySpent: "money spent already",
	moneyPlanned: "price of the parts picked and not paid",
	boughtLists: "lists of parts paid for",
	activities: "what the computer is for",
	sessionLength: "longest stretch of heavy work",
	summerRoom: "room on a hot evening",
	drives: "drives",
	olderSataDrives: "older drives brought along",
	addInCards: "other cards",
	memoryGb: "memory in the end, GB",
	screens: "plugs of the screens",
	oldThings: "old things brought along",
	returnableUntil: "day until which parts can go back",
	rearDevices: "USB things at the back",
	routerGbps: "speed of the wired network, Gb/s",
	clockPlan: "plan to raise the processor's clock",
	rescueMusts: "aids the board must have",
	caseFans: "fans in the case",
	lights: "lights by their plug",
	soundUses: "ways to listen and record",
	colourTaste: "colour wished",
	laterThings: "things to be added later",
	yearsKept: "years to keep the board",
	asOf: "day of looking",
};

export const wantNames = Object.keys(noWants) as (keyof Wants)[];
