import { Box, Text } from "ink";
import type { Window } from "../screens/arrange.ts";
import { lines } from "./header.tsx";

/** A window of text; where more stands above or below, its edge says so. */
export function TextWindow({ text }: { readonly text: Window<string> }) {
	const shown = [...text.lines];
	if (text.above && shown.length > 1) shown[0] = "... more above (Page Up)";
	if (text.below && shown.length > 2) shown[shown.length - 1] = "... more below (Page Down)";
	return (
		<Box flexDirection="column" flexShrink={0}>
			{lines(shown).map(({ key, line }) => (
				<Text key={key}>{line}</Text>
			))}
		</Box>
	);
}
