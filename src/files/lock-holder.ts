import { existsSync, readFileSync, readlinkSync } from "node:fs";
import { basename } from "node:path";

/** The process that a lock file names, or null where there is no such file or it names none. */
export function holderOf(lock: string): number | null {
	try {
		const pid = Number(readFileSync(lock, "utf8"));
		return Number.isInteger(pid) && pid > 0 ? pid : null;
	} catch {
		return null;
	}
}

/** Whether a process is still there and may be one of this program; one of another user is. */
export function isAlive(pid: number): boolean {
	try {
		process.kill(pid, 0);
	} catch (error) {
		return (error as { code?: string }).code === "EPERM";
	}
	return process.platform !== "linux" || runsNode(pid);
}

/**
 * After a power cut another program soon has the number of the one that was open, and a killed one that nobody buries
 * keeps its number. Neither runs Node.
 */
function runsNode(pid: number): boolean {
	try {
		const name = basename(readlinkSync(`/proc/${pid}/exe`));
		return name.startsWith("node") || name.startsWith(basename(process.execPath));
	} catch (error) {
		const isGone = (error as { code?: string }).code === "ENOENT" && existsSync("/proc/self");
		return !isGone;
	}
}
