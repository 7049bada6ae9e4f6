import type { Drive } from "../../src/parts/drive.ts";
import type { BuildAround } from "../../src/plan/problem.ts";
import { bareBuild, card, stick, withGraphics } from "../plan/made-up-problem.ts";

const onCable = (name: string, shape: NonNullable<Drive["shape"]>): Drive => ({ id: name, name, shape, link: "SATA" });

/**
 * A full first computer, invented: a graphics card three rows thick, two M.2 drives, three drives on cables and two
 * cards. One card is long enough to lie over M.2 sockets. The case has seven openings and none for an upright card.
 */
export const eightDevices: BuildAround = {
	...bareBuild,
	case: { cardSlots: 7, uprightSlots: 0 },
	graphicsCard: withGraphics({ thicknessMm: 50, lengthMm: 304, bracketSlots: 2, generation: 4 }),
	drives: [
		stick("Hoopla", { generation: 4, readMBytesPerS: 7000 }),
		stick("Toffee Apple", { generation: 3, readMBytesPerS: 3400 }),
		onCable("Tombola", "2.5 inch"),
		onCable("Skittle", "3.5 inch"),
		onCable("Coconut", "3.5 inch"),
	],
	addInCards: [
		card("Ghost Train", { lanes: 4, leastLanes: 4, generation: 2, lengthMm: 150, gbytesPerS: 1.5 }),
		card("Brass Band", { lanes: 1, generation: 2, lengthMm: 82, gbytesPerS: 0.31 }),
	],
};
