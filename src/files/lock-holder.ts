import { readFileSync } from "node:fs";

/** The process that a lock file names, or null where there is no such file or it names none. */
export function holderOf(lock: string): number | null {
	try {
		const pid = Number(readFileSync(lock, "utf8"));
		return Number.isInteger(pid) && pid > 0 ? pid : null;
	} catch {
		return null;
	}
}

/** Whether a process is still there; one of another user is. */
export function isAlive(pid: number): boolean {
	try {
		process.kill(pid, 0);
		return true;
	} catch (error) {
		return (error as { code?: string }).code === "EPERM";
	}
}
