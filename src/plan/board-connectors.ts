import type { Board } from "../parts/board.ts";
import type { M2Socket } from "../reference/m2-fit.ts";
import type { CardSlot, Connector, DrivePort, Leaning } from "./connector.ts";
import { type ProcessorOfPlan, withProcessorLimits } from "./processor-limits.ts";

export type BoardConnectors = Pick<Board, "cardSlots" | "m2Sockets" | "drivePorts" | "conditions">;

/** Every slot, socket and port of a board as it is with this processor, in the board's order: sockets, slots, ports. */
export function connectorsOf(
	board: BoardConnectors,
	processor: ProcessorOfPlan,
	leaning: Leaning,
): readonly Connector[] {
	const all = [
		// Sockets first: of two drives alike the first named has the socket, and the other the adapter in a slot.
		// Key E is for wireless modules; no drive and no card goes in.
		...(board.m2Sockets ?? []).filter(({ key }) => key !== "E").map(socketConnector),
		...(board.cardSlots ?? []).map((slot) => slotConnector(slot, leaning)),
		...(board.drivePorts ?? []).map(portConnector),
	];
	return all.map((connector) =>
		ownLimits(withProcessorLimits(connector, board.conditions ?? [], processor, leaning), processor),
	);
}

function slotConnector(slot: CardSlot, leaning: Leaning): Connector {
	const sizeLanes = slot.lengthLanes ?? (leaning === "best" ? 16 : (slot.wiredLanes ?? 1));
	return {
		kind: "card slot",
		name: slot.name,
		// Common practice, no source: pages say it loudly where a slot is of the old kind.
		bus: slot.bus ?? "PCI Express",
		sizeLanes,
		row: slot.row ?? null,
		lanes: slot.wiredLanes ?? (leaning === "best" ? sizeLanes : 1),
		wiredLanes: slot.wiredLanes ?? null,
		generation: slot.generation ?? null,
		from: slot.from ?? null,
		isDead: false,
	};
}

function socketConnector(socket: M2Socket): Connector {
	return {
		kind: "M.2 socket",
		name: socket.name,
		socket,
		row: socket.row ?? null,
		// Common practice, no source: a socket of key M of which no width is given has four lanes, one of key B two.
		lanes: socket.wiredLanes ?? (socket.key === "B" ? 2 : 4),
		wiredLanes: socket.wiredLanes ?? null,
		generation: socket.generation ?? null,
		from: socket.from ?? null,
		isDead: false,
	};
}

function portConnector(port: DrivePort): Connector {
	return {
		kind: "drive port",
		name: port.name,
		port,
		row: port.row ?? null,
		// Common practice, no source: a port for U.2 drives has four lanes.
		lanes: port.kind === "U.2" || port.kind === "SlimSAS" ? 4 : 1,
		wiredLanes: null,
		generation: null,
		// Common practice, no source: drive ports hang on the chipset.
		from: "chipset",
		isDead: false,
	};
}

/** What the processor gives is the most that what hangs on it can have. */
function ownLimits(connector: Connector, { graphicsLanes, linkGeneration }: ProcessorOfPlan): Connector {
	if (connector.from !== "processor") return connector;
	const lanes =
		connector.kind === "card slot" && graphicsLanes !== undefined
			? Math.min(connector.lanes, graphicsLanes)
			: connector.lanes;
	const { generation } = connector;
	return {
		...connector,
		lanes,
		isDead: connector.isDead || lanes === 0,
		generation: generation === null || linkGeneration === undefined ? generation : Math.min(generation, linkGeneration),
	};
}
