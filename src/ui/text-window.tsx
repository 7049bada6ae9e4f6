import { Box, Text } from "ink";
import type { Window } from "../screens/arrange.ts";
import { lines } from "./header.tsx";

/** A window of text; the row below it says where more stands. */
export function TextWindow({ text }: { readonly text: Window<string> }) {
	return (
		<Box flexDirection="column" flexShrink={0}>
			{lines(text.lines).map(({ key, line }) => (
				<Text key={key}>{line}</Text>
			))}
		</Box>
	);
}
