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
	return { out: (text) => process.stdout.write(text), err: (text) => process.stderr.write(text) };
}
