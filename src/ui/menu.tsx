import { Text } from "ink";
import SelectInput from "ink-select-input";
import type { DrawnChoice, Window } from "../screens/arrange.ts";
import type { Signs } from "./signs.ts";

interface MenuProps {
	readonly id: string;
	readonly choices: Window<DrawnChoice>;
	readonly signs: Signs;
}

/**
 * A menu, where nothing can be answered wrongly. The list component only draws: it hears no key, and since it takes
 * its mark from outside only when it is made anew, its key names menu, window and mark.
 */
export function Menu({ id, choices, signs }: MenuProps) {
	const marked = Math.max(
		0,
		choices.lines.findIndex((choice) => choice.marked),
	);
	const first = choices.lines[0]?.lines[0] ?? "";
	const items = choices.lines.map(({ lines }, index) => ({
		key: String(index),
		label: lines.join("\n"),
		value: String(index),
	}));
	return (
		<SelectInput
			key={`${id}:${first}:${items.length}:${marked}`}
			items={items}
			initialIndex={marked}
			isFocused={false}
			indicatorComponent={({ isSelected = false }) => <Text>{isSelected ? `${signs.mark} ` : "  "}</Text>}
			itemComponent={({ label, isSelected = false }) => (
				<Text bold={isSelected} {...(isSelected ? { color: "cyan" } : {})}>
					{label}
				</Text>
			)}
		/>
	);
}
