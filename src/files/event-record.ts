import { closeSync, openSync, writeSync } from "node:fs";
import { reasonOf } from "./read-text.ts";
import { UnwritableFile, writeFile } from "./write-file.ts";

/** A file that grows by one line of JSON at a time. Nothing here throws: a walk goes on without its record. */
export interface EventRecord {
	/** Begins the record, or begins anew in it, with what is to be known before the lines that follow. */
	readonly begin: (head: object) => void;
	readonly add: (event: object) => void;
	/** Why nothing more is written, in a phrase; null: all is well. */
	readonly problem: () => string | null;
	readonly close: () => void;
}

/** A record that is made when it begins, readable by the owner only. */
export function eventRecord(path: string, { replace }: { readonly replace: boolean }): EventRecord {
	let file: number | null = null;
	let problem: string | null = null;
	let isClosed = false;
	const add = (line: object) => {
		if (isClosed || problem !== null) return;
		const text = `${JSON.stringify(line)}\n`;
		try {
			if (file === null) {
				writeFile(path, text, { replace, ownerOnly: true });
				file = openSync(path, "a");
			} else writeSync(file, text);
		} catch (error) {
			problem = error instanceof UnwritableFile ? error.reason : reasonOf(error);
		}
	};
	return {
		begin: add,
		add,
		problem: () => problem,
		close: () => {
			if (file !== null) closeSync(file);
			file = null;
			isClosed = true;
		},
	};
}
