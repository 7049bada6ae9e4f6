import { Box, Text } from "ink";
import type { Arrangement } from "../screens/arrange.ts";

/** Where one is, the question, and a word about what was just done or typed. */
export function Header({ place, title, message, air }: Pick<Arrangement, "place" | "title" | "message" | "air">) {
	return (
		<Box flexDirection="column" flexShrink={0}>
			<Text dimColor>{place}</Text>
			{lines(title).map(({ key, line }) => (
				<Text key={key} bold>
					{line}
				</Text>
			))}
			{lines(message).map(({ key, line }) => (
				<Text key={key} color="yellow">
					{line}
				</Text>
			))}
			{air > 0 ? <Text> </Text> : null}
		</Box>
	);
}

/** Lines with a key each; lines of one text never change places. An empty line still takes a row. */
export function lines(texts: readonly string[]): { readonly key: string; readonly line: string }[] {
	return texts.map((line, index) => ({ key: String(index), line: line === "" ? " " : line }));
}
