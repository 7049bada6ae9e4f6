import { EventEmitter } from "node:events";
import headless from "@xterm/headless";
import type { ScreenSize } from "../../src/screens/arrange.ts";
import { startDrawing } from "../../src/ui/draw.tsx";

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
			write: (text: string) => {
				this.written += text;
				// A terminal turns a line feed into carriage return and line feed.
				this.screen.write(text.replaceAll("\n", "\r\n"));
				return true;
			},
		});
		this.drawing = startDrawing({
			stream: stream as unknown as NodeJS.WriteStream,
			size: () => ({ columns, rows }),
		});
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
