import { reasonOf } from "../files/read-text.ts";
import { exitCodes } from "./exit-codes.ts";

/** Where a command prints. A reader that goes away early (`| head`), or a terminal that is closed, ends it quietly. */
export interface Streams {
	readonly out: (text: string) => void;
	readonly err: (text: string) => void;
}

export function processStreams(): Streams {
	for (const [stream, name] of [
		[process.stdout, "output"],
		[process.stderr, "error"],
	] as const)
		stream.on("error", (error: NodeJS.ErrnoException) => {
			if (error.code === "EPIPE" || error.code === "EIO") process.exit(process.exitCode ?? 0);
			// Such as a full disk behind a file that a shell prints into.
			if (name === "output") process.stderr.write(`Standard output cannot be written: ${reasonOf(error)}.\n`);
			process.exit(exitCodes.io);
		});
	return {
		out: (text) => process.stdout.write(harmless(text)),
		err: (text) => process.stderr.write(harmless(text)),
	};
}

/**
 * What comes out of a file is cleaned where it is read; words of the command line are repeated as they were given. No
 * control character of theirs, and none that turns text round, may reach the terminal. The drawn walk writes by itself.
 */
export function harmless(text: string): string {
	return text.replace(controls, "\ufffd");
}

const controls =
	// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the very characters to be taken out
	/\r(?!\n)|[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;
