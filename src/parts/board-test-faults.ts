import type { Board } from "./board.ts";
import type { Fault } from "./check-json.ts";

/** Tests that cannot be right: a power stage under load is warmer than its room. */
export function boardTestFaults(board: Board, path: string): readonly Fault[] {
	return (board.powerDelivery?.measurements ?? []).flatMap(({ stageC, airC }, index) =>
		stageC > airC
			? []
			: [
					{
						path: `${path}.powerDelivery.measurements[${index}].stageC`,
						expected: `more than the ${airC} degrees C of the room, since a stage under load is warmer; it is ${stageC}`,
					},
				],
	);
}
