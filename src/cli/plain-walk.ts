import { createInterface } from "node:readline";
import { runPlainWalk } from "../plain/run-plain-walk.ts";
import type { Arguments } from "./arguments.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import type { Streams } from "./streams.ts";
import { type Helper, openSession } from "./walk-session.ts";

/** Lines wider than this are hard to read, whatever the terminal. */
const widest = 78;

/** The walk, line by line. */
export async function plainWalk(
	args: Arguments,
	streams: Streams,
	today: string,
	helper: Helper | null = null,
): Promise<ExitCode> {
	const session = openSession(args, streams, today, helper);
	// With --json the result alone goes to standard output.
	const asking = args.json ? process.stderr : process.stdout;
	const write = args.json ? streams.err : streams.out;
	const lines = lineReader(write, asking);
	try {
		await runPlainWalk({
			screen: session.screen,
			dispatch: session.dispatch,
			write,
			readLine: lines.next,
			moreComes: lines.moreComes,
			width: Math.min(widest, asking.columns || widest),
		});
	} finally {
		lines.close();
		session.close();
	}
	if (args.json) streams.out(session.result(widest));
	streams.err(session.farewell());
	return lines.interrupted() ? exitCodes.interrupted : session.exitCode();
}

/** So long a terminal may pause while it hands over a paste (own convention). */
const pasteMs = 150;

/** Lines from standard input, one at a time; Ctrl-C ends the input and is remembered. */
function lineReader(out: Streams["out"], output: NodeJS.WriteStream) {
	const reader = createInterface({
		input: process.stdin,
		output,
		terminal: Boolean(process.stdin.isTTY && output.isTTY),
	});
	const waiting: string[] = [];
	let wanted: ((line: string | null) => void) | null = null;
	let ended = false;
	let interrupted = false;
	const give = (line: string | null) => {
		const take = wanted;
		wanted = null;
		take?.(line);
	};
	reader.on("line", (line) => (wanted ? give(line) : waiting.push(line)));
	reader.on("close", () => {
		ended = true;
		give(null);
	});
	reader.on("SIGINT", () => {
		interrupted = true;
		out("\n");
		reader.close();
	});
	return {
		next: (prompt: string): Promise<string | null> => {
			if (reader.terminal && !ended) {
				// The prompt's last line is readline's own, so that editing the line redraws no more than that.
				const [, head = "", last = prompt] = /^([\s\S]*\n)(.*)$/.exec(prompt) ?? [];
				out(head);
				reader.setPrompt(last);
				reader.prompt();
			} else out(prompt);
			const line = waiting.shift();
			if (line !== undefined) return Promise.resolve(line);
			if (ended) return Promise.resolve(null);
			return new Promise((resolve) => {
				wanted = resolve;
			});
		},
		/** Only a terminal hands over a paste; from a pipe everything comes by itself. */
		moreComes: (): Promise<boolean> =>
			reader.terminal && !ended
				? new Promise((resolve) => {
						setTimeout(() => resolve(waiting.length > 0), waiting.length > 0 ? 0 : pasteMs);
					})
				: Promise.resolve(false),
		close: () => reader.close(),
		interrupted: () => interrupted,
	};
}
