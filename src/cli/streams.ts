/** Where a command prints. A reader that goes away early (`| head`), or a terminal that is closed, ends it quietly. */
export interface Streams {
	readonly out: (text: string) => void;
	readonly err: (text: string) => void;
}

export function processStreams(): Streams {
	for (const stream of [process.stdout, process.stderr])
		stream.on("error", (error: NodeJS.ErrnoException) => {
			if (error.code === "EPIPE" || error.code === "EIO") process.exit(process.exitCode ?? 0);
			throw error;
		});
	return { out: (text) => process.stdout.write(text), err: (text) => process.stderr.write(text) };
}
