/** A batch takes at least so long, in ms: the grain of processor time is far below that on Linux and macOS. */
const batchMs = 20;

/**
 * Processor time of this process so far, in ms; that of compiling and tidying up memory is in it. By the clock on the
 * wall, a busy machine would hold up long runs more than short ones.
 */
export function processorMs(): number {
	const { user, system } = process.cpuUsage();
	return (user + system) / 1000;
}

/** How often to run something so that one batch is well above the grain of the time measured. */
export function runsOfBatch(run: () => void): number {
	for (let runs = 1; ; runs *= 2) if (msOf(runs, run) >= batchMs) return runs;
}

/** The ms that one run takes, as the mean of a batch. */
export function msEach(runs: number, run: () => void): number {
	return msOf(runs, run) / runs;
}

function msOf(runs: number, run: () => void): number {
	const start = processorMs();
	for (let done = 0; done < runs; done++) run();
	return processorMs() - start;
}

/** What the heap holds once it is tidied up, in MB; the runtime must have been started with --expose-gc. */
export function heapMb(): number {
	if (!globalThis.gc) throw new Error("run with --expose-gc");
	globalThis.gc();
	return process.memoryUsage().heapUsed / 1e6;
}

export function pause(ms: number): Promise<void> {
	return new Promise((resolve) => setTimeout(resolve, ms));
}

/** The value in the middle; of two in the middle their mean. */
export function median(values: readonly number[]): number {
	const sorted = [...values].sort((one, other) => one - other);
	const middle = sorted.length / 2;
	const [low, high] = [sorted[Math.ceil(middle) - 1], sorted[Math.floor(middle)]];
	return low === undefined || high === undefined ? Number.NaN : (low + high) / 2;
}

/** The least value that so large a share of all does not exceed (nearest rank). */
export function percentile(values: readonly number[], share: number): number {
	const sorted = [...values].sort((one, other) => one - other);
	return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}
