import { lockWalk, type WalkLock } from "../files/walk-lock.ts";
import { UnwritableFile, writeFile } from "../files/write-file.ts";
import { ownCommand } from "./own-command.ts";

/** So many names are tried for a new walk while other programs take them. */
const mostNames = 20;

/** Keeps the answers in one file, held against other programs; a failure is told once, and the walk goes on. */
export class AnswersKeeper {
	private path: string | null;
	private lock: WalkLock | null = null;
	/** Why the last answers could not be written; null: they were. */
	private problem: string | null = null;
	private saved = false;
	private readonly newFile: () => string | null;

	/** @param newFile a name that no file has yet, for answers that have no file; null where there is no place for them */
	constructor(path: string | null, newFile: () => string | null) {
		this.path = path;
		this.newFile = newFile;
	}

	/** Takes a file; if another program has it, answers go into a new file. Returns that program's process number. */
	hold(path: string): number | null {
		this.close();
		const lock = lockWalk(path);
		if (typeof lock === "number") {
			this.path = null;
			return lock;
		}
		this.path = path;
		this.lock = lock;
		return null;
	}

	/** Lets go of the file; answers go into a new one from now on. */
	beginNew(): void {
		this.close();
		this.path = null;
		this.saved = false;
	}

	/** The file that answers go into; null before there is one. */
	file(): string | null {
		return this.path;
	}

	/** Writes the walk; returns what to say if it could not be kept, once for each reason. */
	save(walk: object): string | null {
		const text = `${JSON.stringify(walk, null, "\t")}\n`;
		for (let attempt = 1; ; attempt++) {
			const isNew = this.path === null;
			const file = this.path ?? this.newFile();
			if (file === null) return this.fail("there is no home folder to put them in");
			if (isNew && this.hold(file) !== null) {
				// Two new walks began at the same moment: the other has this name, and the next is free.
				if (attempt < mostNames) continue;
				return this.fail(`another window has just taken ${file}`);
			}
			try {
				// Another program may have taken a new name just now.
				writeFile(file, text, { replace: !isNew, ownerOnly: true, makeFolder: true });
				this.saved = true;
				this.problem = null;
				return null;
			} catch (error) {
				if (!(error instanceof UnwritableFile)) throw error;
				if (isNew) this.beginNew();
				if (isNew && error.exists && attempt < mostNames) continue;
				return this.fail(`${error.path}: ${error.reason}`);
			}
		}
	}

	private fail(reason: string): string | null {
		const isTold = this.problem === reason;
		this.problem = reason;
		return isTold
			? null
			: `Your answers cannot be kept (${reason}). The walk goes on; write the sheet before you leave.`;
	}

	/** Whether anything was written so far. */
	isKept(): boolean {
		return this.saved;
	}

	/** @param flags with which the walk was begun and has to be gone on, such as " --with-demo" */
	farewell(flags = ""): string {
		if (!this.saved || this.path === null) return "";
		const again = ownCommand(process.argv, process.env, process.cwd());
		const last = this.problem === null ? "" : `Your last answers are not kept (${this.problem}).\n`;
		return `${last}Your answers${last ? " before them" : ""} are kept in ${this.path}\nTo go on: ${again} --answers ${quoted(this.path)}${flags}\n`;
	}

	close(): void {
		this.lock?.release();
		this.lock = null;
	}
}

/** A path that a shell takes as one word. */
export function quoted(path: string): string {
	return /^[\w./~-]+$/.test(path) ? path : `'${path.replaceAll("'", "'\\''")}'`;
}
