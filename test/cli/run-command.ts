import { afterEach, beforeEach, vi } from "vitest";
import { type Arguments, readArguments } from "../../src/cli/arguments.ts";
import { CommandError } from "../../src/cli/exit-codes.ts";
import type { Streams } from "../../src/cli/streams.ts";
import { ownFolder } from "../files/own-folder.ts";

type Command = (args: Arguments, streams: Streams) => void;

/** A command for the tests of the file that calls this: each has a folder of its own, and nobody's own parts. */
export function commandRuns(
	name: string,
	command: Command,
): {
	/** A path in the test's own folder. */
	readonly path: (...names: string[]) => string;
	/** What the command prints for these words behind its name. */
	readonly run: (...argv: readonly string[]) => { readonly out: string; readonly err: string };
	/** With what it refuses them; throws where it does not. */
	readonly refusal: (...argv: readonly string[]) => CommandError;
} {
	const { path } = ownFolder();
	beforeEach(() => {
		// Whoever runs the tests may have parts of their own.
		for (const place of ["XDG_DATA_HOME", "LOCALAPPDATA"]) vi.stubEnv(place, path("data"));
	});
	afterEach(() => {
		vi.unstubAllEnvs();
	});
	const run = (...argv: readonly string[]) => {
		let [out, err] = ["", ""];
		command(readArguments([name, ...argv]), {
			out: (text) => {
				out += text;
			},
			err: (text) => {
				err += text;
			},
		});
		return { out, err };
	};
	const refusal = (...argv: readonly string[]) => {
		try {
			run(...argv);
		} catch (error) {
			if (error instanceof CommandError) return error;
			throw error;
		}
		throw new Error(`${argv.join(" ")} was taken`);
	};
	return { path, run, refusal };
}

/** Printed text without its line breaks, so that a sentence is found wherever it is wrapped. */
export const flat = (text: string): string => text.replace(/\s+/g, " ");
