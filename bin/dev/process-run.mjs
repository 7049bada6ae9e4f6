import { readFileSync } from "node:fs";

/**
 * One run of a process. Process ids come round again, after a restart of a container even at once, so the time of birth
 * is kept beside it where the system tells it.
 *
 * @typedef {{ pid: number, birth?: string }} ProcessRun
 */

/**
 * @param {number} pid of a process that is running now
 * @returns {ProcessRun}
 */
export function runOf(pid) {
	const birth = look(pid)?.birth;
	return birth === undefined ? { pid } : { pid, birth };
}

/**
 * Whether that very run goes on. One that has ended but that its parent has not yet taken note of (a zombie, as
 * containers without an init collect them) does not.
 *
 * @param {ProcessRun} run
 */
export function isRunning({ pid, birth }) {
	const now = look(pid);
	if (now) return !now.isZombie && (birth === undefined || birth === now.birth);
	try {
		process.kill(pid, 0);
		return true;
	} catch (error) {
		// Not ours to signal, but there.
		return error instanceof Error && "code" in error && error.code === "EPERM";
	}
}

/**
 * @param {number} pid
 * @returns {{ birth: string, isZombie: boolean } | undefined} nothing where the system has no /proc, or no such process
 */
function look(pid) {
	try {
		const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
		// The second field is the program's name in brackets, which may hold blanks; the state follows as field 3.
		const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
		const boot = readFileSync("/proc/sys/kernel/random/boot_id", "utf8").trim();
		return { birth: `${boot} ${fields[22 - 3]}`, isZombie: fields[0] === "Z" || fields[0] === "X" };
	} catch {
		return undefined;
	}
}
