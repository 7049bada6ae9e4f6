import { Box, Text } from "ink";
import type { DrawnChoice, Window } from "../screens/arrange.ts";
import type { Signs } from "./signs.ts";

/** The lines to choose from. Pure: the mark belongs to the state, so that no key can meet a stale one. */
export function ChoiceList({ choices, signs }: { readonly choices: Window<DrawnChoice>; readonly signs: Signs }) {
	return (
		<Box flexDirection="column" flexShrink={0}>
			{choices.lines.flatMap(({ lines, headingLines, labelLines, marked }, entry) =>
				lines.map((line, index) => {
					const key = `${entry}.${index}`;
					if (index < headingLines)
						return (
							<Text key={key} underline>
								{line}
							</Text>
						);
					const mark = index === headingLines && marked ? `${signs.mark} ` : "  ";
					const words = mark + line;
					if (index >= headingLines + labelLines)
						return (
							<Text key={key} dimColor>
								{words}
							</Text>
						);
					return marked ? (
						<Text key={key} bold color="cyan">
							{words}
						</Text>
					) : (
						<Text key={key}>{words}</Text>
					);
				}),
			)}
		</Box>
	);
}
