import { Box, Text, useCursor } from "ink";
import type { Arrangement } from "../screens/arrange.ts";
import { ChoiceList } from "./choice-list.tsx";
import { Header, lines } from "./header.tsx";
import { Menu } from "./menu.tsx";
import type { Signs } from "./signs.ts";
import { TextWindow } from "./text-window.tsx";

/** A screen as it is drawn: nothing here decides anything or hears a key. */
export interface AppProps {
	readonly screenId: string;
	readonly isMenu: boolean;
	readonly arranged: Arrangement;
	readonly signs: Signs;
}

/** Draws one arranged screen; the real cursor stands on the marked line or in the field, for braille and magnifiers. */
export function App({ screenId, isMenu, arranged, signs }: AppProps) {
	const { setCursorPosition } = useCursor();
	setCursorPosition(arranged.cursor);
	const { place, title, message, text, between, choices, field, side, footer } = arranged;
	const { mainColumns, sideColumns, air, filler } = arranged;
	return (
		<Box flexDirection="column">
			<Box flexDirection="row" columnGap={2}>
				<Box flexDirection="column" width={mainColumns} flexShrink={0}>
					<Header place={place} title={title} message={message} air={air} />
					<TextWindow text={text} />
					{between === null ? null : <Text dimColor>{between === "" ? " " : between}</Text>}
					{field ? (
						<Text>
							{field.prompt}
							{field.text === "" ? " " : field.text}
						</Text>
					) : null}
					{isMenu ? (
						<Menu id={screenId} choices={choices} signs={signs} />
					) : (
						<ChoiceList choices={choices} signs={signs} />
					)}
				</Box>
				{side ? (
					<Box flexDirection="column" width={sideColumns} flexShrink={0}>
						{lines(side).map(({ key, line }) => (
							<Text key={key}>{line}</Text>
						))}
					</Box>
				) : null}
			</Box>
			<Box height={filler + air} flexShrink={0} />
			{lines(footer).map(({ key, line }) => (
				<Text key={key} dimColor>
					{line}
				</Text>
			))}
		</Box>
	);
}
