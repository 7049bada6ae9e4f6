import { lockWalk, type WalkLock } from "../files/walk-lock.ts";
import { UnwritableFile, writeFile } from "../files/write-file.ts";
import { ownCommand } from "./own-command.ts";

/** Keeps the answers in one file, held against other programs; a failure is told once, and the walk goes on. */
export class AnswersKeeper {
	private path: string | null;
	private lock: WalkLock | null = null;
	private failed = false;
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

	/** Writes the walk; returns what to say if it could not be kept, once. */
	save(walk: object): string | null {
		const isNew = this.path === null;
		const file = this.path ?? this.newFile();
		if (file === null) return this.fail("there is no home folder to put them in");
		if (isNew && this.hold(file) !== null) return this.fail(`another window has just taken ${file}`);
		try {
			writeFile(file, `${JSON.stringify(walk, null, "\t")}\n`, {
				// Another program may have taken the name just now.
				replace: !isNew,
				ownerOnly: true,
				makeFolder: true,
			});
			this.saved = true;
			return null;
		} catch (error) {
			if (!(error instanceof UnwritableFile)) throw error;
			if (isNew) this.beginNew();
			return this.fail(`${error.path}: ${error.reason}`);
		}
	}

	private fail(reason: string): string | null {
		if (this.failed) return null;
		this.failed = true;
		return `Your answers cannot be kept (${reason}). The walk goes on; write the sheet before you leave.`;
	}

	/** Whether anything was written so far. */
	isKept(): boolean {
		return this.saved;
	}

	/** @param flags with which the walk was begun and has to be gone on, such as " --with-demo" */
	farewell(flags = ""): string {
		if (!this.saved || this.path === null) return "";
		const again = ownCommand(process.argv, process.env, process.cwd());
		return `Your answers are kept in ${this.path}\nTo go on: ${again} --answers ${quoted(this.path)}${flags}\n`;
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
