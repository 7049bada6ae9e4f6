import type { Board } from "./board.ts";
import type { Fault } from "./check-json.ts";
import type { BoardForm } from "./vocabulary.ts";

/**
 * Card rows of the forms whose number is fixed: microATX 1.2 has 4, ATX 7 and Mini-ITX 1 (the last two read in a
 * secondary text). Larger and rarer forms are not held against a number.
 */
const rowsOfForm: Readonly<Partial<Record<BoardForm, number>>> = { ATX: 7, microATX: 4, "Mini-ITX": 1 };

/** Names used twice, groups and limits that name no connector of the board, and slots in rows the board does not have. */
export function boardConnectorFaults(board: Board, path: string): readonly Fault[] {
	const lists = {
		cardSlots: board.cardSlots ?? [],
		m2Sockets: board.m2Sockets ?? [],
		drivePorts: board.drivePorts ?? [],
	};
	const named = Object.entries(lists).flatMap(([list, connectors]) =>
		connectors.map(({ name }, index) => ({ name, path: `${path}.${list}[${index}].name` })),
	);
	const names = new Set(named.map(({ name }) => name));
	const headers = (["fans", "lights"] as const).flatMap((list) =>
		(board.headers?.[list] ?? []).map(({ name }, index) => ({
			name,
			path: `${path}.headers.${list}[${index}].name`,
		})),
	);
	const all = [...named, ...headers];
	const twice = all.filter(({ name }, index) => all.findIndex((one) => one.name === name) < index);
	const known = `a connector of this board: ${[...names].join(", ") || "it names none"}`;
	const unknown = (name: string, at: string): readonly Fault[] =>
		names.has(name) ? [] : [{ path: at, expected: `${known}; "${name}" is none of them` }];
	const mostRows = board.form && rowsOfForm[board.form];
	return [
		...twice.map(({ name, path: at }): Fault => ({ path: at, expected: `a name of its own; "${name}" is used twice` })),
		...(board.sharing ?? []).flatMap(({ members, modes, onlyWithSata = [] }, group) => [
			...onlyWithSata.flatMap((name, index): readonly Fault[] =>
				members.includes(name) && lists.m2Sockets.some((socket) => socket.name === name)
					? []
					: [
							{
								path: `${path}.sharing[${group}].onlyWithSata[${index}]`,
								expected: `an M.2 socket among the group's members: ${members.join(", ")}`,
							},
						],
			),
			...members.flatMap((name, member) => unknown(name, `${path}.sharing[${group}].members[${member}]`)),
			...modes.flatMap(({ on }, mode) =>
				Object.keys(on).flatMap((name): readonly Fault[] => {
					const at = `${path}.sharing[${group}].modes[${mode}].on.${name}`;
					return members.includes(name)
						? unknown(name, at)
						: [{ path: at, expected: `one of the group's members: ${members.join(", ")}` }];
				}),
			),
		]),
		...(board.conditions ?? []).flatMap(({ connector }, index) =>
			unknown(connector, `${path}.conditions[${index}].connector`),
		),
		...lists.cardSlots.flatMap(({ row }, index): Fault[] =>
			row !== undefined && mostRows !== undefined && row > mostRows
				? [
						{
							path: `${path}.cardSlots[${index}].row`,
							expected: `a row from 1 to ${mostRows}, as many as a board of the form ${board.form} has; it is ${row}`,
						},
					]
				: [],
		),
	];
}
