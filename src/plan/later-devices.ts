import type { CardDevice, Device } from "./device.ts";
import type { BuildOfPlan } from "./devices.ts";
import { driveDevice } from "./devices.ts";

/** A later drive as one would buy it: PCI Express 3.0 x4 is plenty for any use at home (common practice, no source). */
const laterStick = {
	id: "later-stick",
	name: "a later M.2 drive",
	shape: "M.2",
	link: "PCI Express",
	key: "M",
	lengthMm: 80,
	lanes: 4,
	generation: 3,
} as const;
const laterBox = { id: "later-box", name: "a later drive on a cable", shape: "3.5 inch", link: "SATA" } as const;

const laterCard = {
	kind: "card",
	standing: "later",
	bus: "PCI Express",
	generation: 3,
	isLong: false,
	reachesEdge: false,
	isLow: false,
} as const satisfies Partial<CardDevice>;

/** What a person named to be added later, as far as it wants a slot, socket or port. */
export function laterDevicesOf({ laterThings, wishes }: BuildOfPlan): readonly Device[] {
	const count = (thing: string) => (laterThings ?? []).filter((one) => one === thing).length;
	const several = <D>(many: number, make: (index: number) => D) =>
		Array.from({ length: many }, (_, index) => make(index + 1));
	return [
		...(wishes["features/second-card"] === "would-like" ? [secondHeavyCard] : []),
		...several(count("M.2 drive"), (nth) => driveDevice(laterStick, `later-m2-${nth}`, "later")),
		...several(count("SATA drive"), (nth) => driveDevice(laterBox, `later-sata-${nth}`, "later")),
		...several(
			count("card"),
			(nth): CardDevice => ({
				...laterCard,
				id: `later-card-${nth}`,
				name: "a later card",
				sizeLanes: 1,
				leastLanes: 1,
				lanes: 1,
				gbytesPerS: 0.985,
				rows: 1,
				bracketRows: 1,
				exactRows: 1,
			}),
		),
	];
}

/** Two rows, and at least eight lanes: fewer hold a heavy card back (common practice, no source). */
export const secondHeavyCard: CardDevice = {
	...laterCard,
	id: "later-heavy-card",
	name: "a second heavy card",
	sizeLanes: 16,
	leastLanes: 8,
	lanes: 16,
	gbytesPerS: null,
	rows: 2,
	bracketRows: 2,
	exactRows: 2,
	isLong: true,
};
