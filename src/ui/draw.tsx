import { type Instance, render } from "ink";
import stringWidth from "string-width";
import { arrange, type ScreenSize } from "../screens/arrange.ts";
import type { Face, PageSize } from "../screens/face.ts";
import { withWordsMarked } from "../screens/marked-words.ts";
import type { Screen } from "../screens/screen.ts";
import { App } from "./app.tsx";
import { asciiSigns, unicodeSigns } from "./signs.ts";

export interface DrawOptions {
	readonly stream: NodeJS.WriteStream;
	readonly size: () => ScreenSize;
}

/** Something that draws screens on a terminal until it is stopped. */
interface Drawing {
	/** Draws; tells how far page keys scroll on what is now on screen. `busy` stands in place of the keys. */
	readonly show: (screen: Screen, face: Face, ascii: boolean, busy?: string) => PageSize;
	readonly stop: () => void;
}

/**
 * Starts drawing with Ink. Ink hears no key here, and does not end the program; 60 frames a second, so that a held key
 * is followed row by row.
 */
export function startDrawing({ stream, size }: DrawOptions): Drawing {
	let instance: Instance | null = null;
	return {
		show(screen, face, ascii, busy) {
			const laidOut = arrange(withWordsMarked(screen), face, size(), stringWidth);
			// As many rows as before, so that nothing moves for the moment it takes.
			const arranged = busy ? { ...laidOut, footer: laidOut.footer.map((_, row) => (row === 0 ? busy : "")) } : laidOut;
			const app = (
				<App
					screenId={screen.id}
					isMenu={screen.isMenu}
					arranged={arranged}
					signs={ascii ? asciiSigns : unicodeSigns}
				/>
			);
			if (instance) instance.rerender(app);
			else instance = render(app, { stdout: stream, exitOnCtrlC: false, patchConsole: false, maxFps: 60 });
			const { text, lastScroll, sourcesFrom } = arranged;
			return { textRows: text.lines.length, lastScroll, sourcesFrom };
		},
		stop() {
			instance?.unmount();
			instance = null;
		},
	};
}
