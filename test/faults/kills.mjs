import { ownPartsKind, settingsKind, walkKind } from "./kill-kinds.mjs";
import { pty } from "./scripted-faces.mjs";

/**
 * Kills the program at random moments, and looks each time at what is left and whether the next start opens.
 *
 * @param {object} options
 * @param {number} options.kills how many
 * @param {number} options.seed the same seed draws the same moments; when they come hangs on the machine all the same
 * @param {string} options.program the built program
 */
export async function runKills({ kills, seed, program }) {
	const began = performance.now();
	const random = drawer(seed);
	const kinds = await Promise.all([
		walkKind(program, "plain", "file"),
		walkKind(program, "plain", "home"),
		...(pty ? [walkKind(program, "drawn", "home"), walkKind(program, "drawn", "file")] : []),
		settingsKind(program),
		ownPartsKind(program),
	]);
	/** @type {string[]} */
	const faults = [];
	const byKind = kinds.map(({ name }) => ({ name, kills: 0, opened: 0, lost: 0 }));
	let [mostLost, mostStrays, straysLeft] = [0, 0, 0];
	/** Kills after which no start was left alone until it opened. */
	const waiting = kinds.map(() => 0);
	try {
		for (let kill = 0; kill < kills; kill++) {
			// The walk line by line counts twice.
			const turn = kill % (kinds.length + 2);
			const index = turn < kinds.length ? turn : turn - kinds.length;
			await once(index, (kind) => kind.killOnce(random), true);
		}
		for (const [index] of kinds.entries()) straysLeft += (await once(index, (kind) => kind.openAtLast(), false)).strays;
	} finally {
		for (const kind of kinds) kind.remove();
	}
	const opened = byKind.reduce((sum, one) => sum + one.opened, 0);
	return {
		seed,
		kills,
		opened,
		linesLost: byKind.reduce((sum, one) => sum + one.lost, 0),
		answersLostAtMost: mostLost,
		mostStrays,
		straysLeft,
		secondsTaken: Math.round((performance.now() - began) / 1000),
		byKind,
		faults,
		isWell: faults.length === 0 && opened === kills && mostLost <= 1 && straysLeft === 0,
	};

	/**
	 * @param {number} index
	 * @param {(kind: import("./kill-kinds.mjs").Kind) => Promise<import("./kill-kinds.mjs").Left>} work
	 * @param {boolean} isKill
	 */
	async function once(index, work, isKill) {
		const [kind, figures] = [kinds[index], byKind[index]];
		if (!kind || !figures) throw new Error("no such kind");
		const left = await work(kind);
		if (left.opened) {
			figures.opened += waiting[index] ?? 0;
			waiting[index] = 0;
		}
		if (isKill) {
			waiting[index] = (waiting[index] ?? 0) + 1;
			figures.kills++;
			figures.lost += left.lost;
			mostLost = Math.max(mostLost, left.lost);
			mostStrays = Math.max(mostStrays, left.strays);
		}
		faults.push(...left.faults.map((words) => `${kind.name}: ${words}`));
		return left;
	}
}

/** Even draws from 0 to 1, the same for the same seed (a generator of 32 bits by addition and mixing). @param {number} seed */
function drawer(seed) {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x9e3779b9) >>> 0;
		let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
		mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
		return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
	};
}
