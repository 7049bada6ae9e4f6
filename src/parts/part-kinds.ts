import type * as z from "zod";
import { addInCard } from "./add-in-card.ts";
import { board } from "./board.ts";
import { pcCase } from "./case.ts";
import { cooler } from "./cooler.ts";
import { drive } from "./drive.ts";
import { fanSet } from "./fan-set.ts";
import { graphicsCard } from "./graphics-card.ts";
import { lighting } from "./lighting.ts";
import { memoryKit } from "./memory-kit.ts";
import { monitor } from "./monitor.ts";
import { platform } from "./platform.ts";
import { processor } from "./processor.ts";
import { supply } from "./supply.ts";

/** Every kind of part, with its schema, the key its list has in a parts file, and its name in a sentence. */
export const partKinds = {
	board: { schema: board, list: "boards", noun: "board" },
	processor: { schema: processor, list: "processors", noun: "processor" },
	case: { schema: pcCase, list: "cases", noun: "case" },
	graphicsCard: { schema: graphicsCard, list: "graphicsCards", noun: "graphics card" },
	memory: { schema: memoryKit, list: "memory", noun: "memory kit" },
	drive: { schema: drive, list: "drives", noun: "drive" },
	addInCard: { schema: addInCard, list: "addInCards", noun: "add-in card" },
	cooler: { schema: cooler, list: "coolers", noun: "cooler" },
	supply: { schema: supply, list: "supplies", noun: "power supply" },
	fans: { schema: fanSet, list: "fans", noun: "fan set" },
	lighting: { schema: lighting, list: "lighting", noun: "lighting" },
	monitor: { schema: monitor, list: "monitors", noun: "screen" },
	platform: { schema: platform, list: "platforms", noun: "chipset row" },
} as const;

export type PartKind = keyof typeof partKinds;
/** The part of each kind. */
export type PartOf<K extends PartKind> = z.infer<(typeof partKinds)[K]["schema"]>;
export type AnyPart = { [K in PartKind]: PartOf<K> }[PartKind];

export const partKindNames = Object.keys(partKinds) as PartKind[];
