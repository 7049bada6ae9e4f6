import { EventEmitter } from "node:events";
import headless from "@xterm/headless";
import type { ScreenSize } from "../../src/screens/arrange.ts";
import { startDrawing } from "../../src/ui/draw.tsx";

/** One cell of the screen that holds something: what, how many columns it takes, and how it looks. */
export interface DrawnCell {
	readonly sign: string;
	readonly columns: number;
	readonly bold: boolean;
	readonly dim: boolean;
	readonly underline: boolean;
	/** Number of a named colour, from 0 to 15, or null for the terminal's own. */
	readonly colour: number | null;
}

/** A terminal of any size to draw on, without a program: what is written to it is shown as a terminal shows it. */
export class DrawnTerminal {
	/** Everything that was written, as it was written. */
	written = "";
	readonly drawing: ReturnType<typeof startDrawing>;
	private readonly screen: InstanceType<typeof headless.Terminal>;

	constructor({ columns, rows }: ScreenSize) {
		this.screen = new headless.Terminal({ cols: columns, rows, allowProposedApi: true, scrollback: 1000 });
		const stream = Object.assign(new EventEmitter(), {
			columns,
			rows,
			isTTY: true,
			write: (text: string) => this.write(text),
		});
		this.drawing = startDrawing({
			stream: stream as unknown as NodeJS.WriteStream,
			size: () => ({ columns, rows }),
		});
	}

	/** Writes to the screen, as what draws on it does. */
	write(text: string): true {
		this.written += text;
		// A terminal turns a line feed into carriage return and line feed.
		this.screen.write(text.replaceAll("\n", "\r\n"));
		return true;
	}

	/** The rows on screen, once all that was written so far is shown. */
	async rows(): Promise<string[]> {
		await new Promise<void>((resolve) => this.screen.write("", resolve));
		const { active } = this.screen.buffer;
		return Array.from(
			{ length: this.screen.rows },
			(_, row) => active.getLine(active.viewportY + row)?.translateToString(true) ?? "",
		);
	}

	/** The cells of each row, once all that was written so far is shown; a wide sign is one cell of two columns. */
	async cells(): Promise<readonly (readonly DrawnCell[])[]> {
		await this.rows();
		const { active } = this.screen.buffer;
		return Array.from({ length: this.screen.rows }, (_, row) => {
			const line = active.getLine(active.viewportY + row);
			return Array.from({ length: this.screen.cols }, (_, column) => line?.getCell(column)).flatMap((cell) => {
				if (!cell || cell.getWidth() === 0) return [];
				return {
					sign: cell.getChars() || " ",
					columns: cell.getWidth(),
					bold: cell.isBold() !== 0,
					dim: cell.isDim() !== 0,
					underline: cell.isUnderline() !== 0,
					colour: cell.isFgPalette() ? cell.getFgColor() : null,
				};
			});
		});
	}

	/** Waits until the rows are as wanted, or end so; gives them as they are after a second. */
	async settled(wanted: readonly string[], where: "all" | "end" = "all"): Promise<string[]> {
		const giveUpAt = Date.now() + 1000;
		const compared = (rows: string[]) => (where === "all" ? rows : rows.slice(-wanted.length)).join("\n");
		let rows = await this.rows();
		while (compared(rows) !== wanted.join("\n") && Date.now() < giveUpAt) {
			await new Promise((resolve) => setTimeout(resolve, 5));
			rows = await this.rows();
		}
		return rows;
	}

	/** Rows that were scrolled out of the screen. */
	scrolledOut(): number {
		return this.screen.buffer.active.baseY;
	}

	cursor(): { readonly x: number; readonly y: number } {
		return { x: this.screen.buffer.active.cursorX, y: this.screen.buffer.active.cursorY };
	}
}
