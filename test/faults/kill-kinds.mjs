// What is killed: the walk in both faces, a setting that is changed, a part of one's own that is changed. Each kind goes
// on after a kill with what lies on the disk, as a person would.

import { execFile, spawn } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { promisify } from "node:util";
import { inTerminal, overPipe } from "./scripted-faces.mjs";

/** @typedef {import("./scripted-faces.mjs").Face} Face */
/** @typedef {{ [id: string]: unknown }} Answers */

/**
 * What one kill left.
 *
 * @typedef {object} Left
 * @property {boolean} opened whether the program opened before this kill; false where it was killed on its way
 * @property {number} lost lines that were sent and not kept; those whose next screen had come are never among them
 * @property {number} strays half-written files that lie about
 * @property {readonly string[]} faults in words
 *
 * @typedef {object} Kind
 * @property {string} name
 * @property {(random: () => number) => Promise<Left>} killOnce
 * @property {() => Promise<Left>} openAtLast starts once more, undisturbed, and looks at what is left
 * @property {() => void} remove
 */

const pause = (/** @type {number} */ ms) => new Promise((resolve) => setTimeout(resolve, ms));
const newHome = () => mkdtempSync(join(tmpdir(), "kills-"));
const strayNames = /\.tmp$|\.tmp-[0-9a-f]+$|\.lock\.\d+$|\.turn$/;
const damagedWords = /damaged|cannot be kept|in another window|fault of its own|cannot be read/;

/** @param {string} folder */
function filesIn(folder) {
	if (!existsSync(folder)) return [];
	return readdirSync(folder, { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => join(entry.parentPath, entry.name));
}

/** @param {string} folder */
const strays = (folder) => filesIn(folder).filter((file) => strayNames.test(file)).length;

/** @param {string} folder */
const setAside = (folder) =>
	filesIn(folder)
		.filter((file) => file.includes(".damaged"))
		.map((file) => `set aside: ${file}`);

/** What is typed at a question; all others are not sure. */
const lines = [
	["How much time do you have", "2"],
	["Who gives the answers?", "1"],
	["What will you do with this computer?", "1, 3"],
	["How much money is there", "900"],
	["How much may the board cost", "200"],
	["Which processor will you use?", "deckhand"],
	["Which case will the board go into?", "wardrobe"],
];

/** What is pressed, from the start to the first question about parts. */
const presses = [
	["Find the right board", "\r"],
	["How much time do you have", "\r"],
	["Who gives the answers?", "\r"],
	["What will you do with this computer?", " \r"],
	["How much money is there", "900\r"],
	["How much may the board cost", "180\r"],
];
const lastDrawn = "Which processor";

/** @param {string} screen */
function lineFor(screen) {
	if (screen.includes("Find the right board")) return "1";
	const asked = lines.find(([words = ""]) => screen.includes(words));
	return asked?.[1] ?? (screen.includes("Not sure\n") ? "not sure" : "");
}

/** @param {string} screen */
function keysFor(screen) {
	if (screen.includes(lastDrawn)) return null;
	return presses.find(([words = ""]) => screen.includes(words))?.[1] ?? null;
}

const faces = {
	plain: {
		/** @param {import("./scripted-faces.mjs").Start} start */
		open: (start) => overPipe({ ...start, words: ["--plain", ...start.words] }),
		/** @param {string} screen */
		reply: (screen) => (screen.includes("Your shortlist") ? null : lineFor(screen)),
	},
	drawn: {
		/** @param {import("./scripted-faces.mjs").Start} start */
		open: (start) => inTerminal({ ...start, titles: [...presses.map(([title = ""]) => title), lastDrawn] }),
		reply: keysFor,
	},
};

/** @param {Answers} answers */
const inOrder = (answers) =>
	JSON.stringify(Object.entries(answers).toSorted(([one], [other]) => (one < other ? -1 : 1)));

/**
 * The answers that each reply gives, from a walk that nothing disturbs; and how long that takes.
 *
 * @param {string} program
 * @param {keyof typeof faces} name
 */
function learn(program, name) {
	const known = learnt.get(name);
	if (known) return known;
	const now = learnNow(program, name);
	learnt.set(name, now);
	return now;
}

/** @type {Map<string, ReturnType<typeof learnNow>>} */
const learnt = new Map();

/** @param {string} program @param {keyof typeof faces} name */
async function learnNow(program, name) {
	const home = newHome();
	const file = join(home, "walk.json");
	const began = performance.now();
	const face = faces[name].open({ program, home, words: ["--answers", file] });
	/** @type {Map<string, Answers>} */
	const gives = new Map();
	/** @type {Answers} */
	let before = {};
	let slowestMs = 0;
	let screen = await face.next();
	const openMs = performance.now() - began;
	while (screen !== null) {
		const reply = faces[name].reply(screen);
		if (reply === null) break;
		const sent = performance.now();
		face.send(reply);
		const after = await face.next();
		slowestMs = Math.max(slowestMs, performance.now() - sent);
		/** @type {Answers} */
		const now = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")).answers : {};
		gives.set(
			titleOf(screen),
			Object.fromEntries(
				Object.entries(now).filter(([id, value]) => inOrder({ id: before[id] }) !== inOrder({ id: value })),
			),
		);
		before = now;
		screen = after;
	}
	await face.kill();
	rmSync(home, { recursive: true, force: true });
	return { gives, openMs, wholeMs: performance.now() - began, slowestMs, answers: Object.keys(before).length };
}

/** A screen without what counts on it. @param {string} screen */
function titleOf(screen) {
	const known = presses.find(([words = ""]) => screen.includes(words));
	if (known) return known[0] ?? "";
	return /question \d+ of.*\n(.+)/.exec(screen)?.[1] ?? screen.replace(/\d+/g, "").trim().slice(-300);
}

/**
 * A walk that goes on after every kill, and begins anew when it has come to its end.
 *
 * @param {string} program
 * @param {keyof typeof faces} face
 * @param {"file" | "home"} place whether --answers names its file, or it is kept where walks are kept
 * @returns {Promise<Kind>}
 */
export async function walkKind(program, face, place) {
	const learnt = await learn(program, face);
	// Who goes on after each kill comes through the whole walk in several runs.
	const oneRunMs = learnt.openMs + learnt.wholeMs / 5;
	let home = newHome();
	/** @type {Answers} */
	let kept = {};
	const folder = () => (place === "file" ? home : join(home, ".local", "state", "boardwalk", "walks"));
	const words = () => (place === "file" ? ["--answers", join(home, "walk.json")] : []);
	const onDisk = () => {
		const [file, ...more] = filesIn(folder()).filter((name) => name.endsWith(".json"));
		if (more.length > 0) throw new Error(`one walk became several: ${[file, ...more]}`);
		/** @type {Answers} */
		const answers = file ? JSON.parse(readFileSync(file, "utf8")).answers : {};
		return answers;
	};

	/** @param {Face} program @param {{ screens: string[], sent: string[] }} log @param {number} most lines to send */
	async function work(program, log, most) {
		for (;;) {
			const screen = await program.next();
			if (screen === null) return;
			log.screens.push(screen);
			const reply = log.sent.length < most ? faces[face].reply(screen) : null;
			if (reply === null) return;
			log.sent.push(titleOf(screen));
			program.send(reply);
		}
	}

	/** @param {{ screens: string[], sent: string[] }} log @returns {Left} */
	function look(log) {
		const faults = [...log.screens.filter((screen) => damagedWords.test(screen)), ...setAside(home)];
		/** @type {Answers} */
		let now = {};
		try {
			now = onDisk();
		} catch (error) {
			faults.push(String(error));
		}
		const seen = Math.max(0, log.screens.length - 1);
		let kept_ = kept;
		let found = -1;
		for (let count = 0; count <= log.sent.length; count++) {
			if (count > 0) kept_ = { ...kept_, ...learnt.gives.get(log.sent[count - 1] ?? "") };
			if (count >= Math.min(seen, log.sent.length) && inOrder(kept_) === inOrder(now)) found = count;
		}
		if (found < 0)
			faults.push(
				`after ${seen} confirmed of ${log.sent.length} sent (${log.sent.at(-1)}): ${inOrder(now)}, was ${inOrder(kept)}`,
			);
		const isOver = log.screens.some((screen) => faces[face].reply(screen) === null);
		const left = strays(home);
		if (left > 1) faults.push(`${left} strays: ${filesIn(home)}`);
		kept = now;
		if (isOver) {
			rmSync(home, { recursive: true, force: true });
			home = newHome();
			kept = {};
		}
		return { opened: log.screens.length > 0, lost: found < 0 ? 0 : log.sent.length - found, strays: left, faults };
	}

	return {
		name: `${face} walk, ${place === "file" ? "--answers" : "kept at home"}`,
		killOnce: async (random) => {
			const log = { screens: [], sent: [] };
			const running = faces[face].open({ program, home, words: words() });
			// Half the kills come at any time, half while a line is taken in and written.
			if (random() < 0.5) {
				const whole = work(running, log, 1000);
				await Promise.race([pause(random() * oneRunMs), whole]);
			} else {
				await work(running, log, 0);
				await nextLines(running, log, 1 + Math.floor(random() * 4));
				await pause(random() * learnt.slowestMs * 1.1);
			}
			await running.kill();
			await pause(5);
			return look(log);
		},
		openAtLast: async () => {
			const log = { screens: [], sent: [] };
			const running = faces[face].open({ program, home, words: words() });
			await work(running, log, 1);
			await running.kill();
			return look(log);
		},
		remove: () => rmSync(home, { recursive: true, force: true }),
	};

	/** Sends some lines, and does not wait for what the last one leads to. @param {Face} program @param {{ screens: string[], sent: string[] }} log @param {number} count */
	async function nextLines(program, log, count) {
		for (let done = 0; done < count; done++) {
			const screen = done === 0 ? log.screens.at(-1) : await program.next();
			if (screen === undefined || screen === null) return;
			if (done > 0) log.screens.push(screen);
			const reply = faces[face].reply(screen);
			if (reply === null) return;
			log.sent.push(titleOf(screen));
			program.send(reply);
		}
	}
}

/**
 * A setting that is turned there and back, in a walk line by line.
 *
 * @param {string} program
 * @returns {Promise<Kind>}
 */
export async function settingsKind(program) {
	const home = newHome();
	const folder = join(home, ".config", "boardwalk");
	const file = join(folder, "settings.json");
	let before = "mm";
	/** @param {number} turns @param {(face: Face) => Promise<void>} end @returns {Promise<Left>} */
	async function turn(turns, end) {
		const face = overPipe({ program, home, words: ["--plain"] });
		/** @type {string[]} */
		const screens = [];
		const take = async () => {
			const screen = await face.next();
			if (screen !== null) screens.push(screen);
			return screen;
		};
		const start = await take();
		let turned = 0;
		if (start !== null) {
			face.send(/(\d+) {2}Settings/.exec(start)?.[1] ?? "");
			for (; turned < turns; turned++) {
				const screen = await take();
				face.send(/(\d+) {2}Lengths/.exec(screen ?? "")?.[1] ?? "");
			}
		}
		await end(face);
		const faults = [...screens.filter((screen) => damagedWords.test(screen)), ...setAside(home)];
		// Each screen of settings shows what the turn before it has led to.
		const confirmed = Math.max(0, screens.length - 2);
		const after = (/** @type {number} */ count) => ((before === "mm") === (count % 2 === 0) ? "mm" : "with-inches");
		let now = before;
		try {
			now = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")).lengths : "mm";
		} catch (error) {
			faults.push(String(error));
		}
		if (![after(confirmed), after(turned)].includes(now)) faults.push(`${now} after ${turned} turns from ${before}`);
		const lost = now === after(turned) ? 0 : 1;
		before = now;
		const left = strays(folder);
		if (left > 1) faults.push(`${left} strays: ${filesIn(folder)}`);
		return { opened: start !== null, lost, strays: left, faults };
	}
	return {
		name: "a setting",
		killOnce: (random) =>
			turn(1 + Math.floor(random() * 3), async (face) => {
				await pause(random() * 40);
				await face.kill();
			}),
		openAtLast: () =>
			turn(1, async (face) => {
				await face.next();
				await face.kill();
			}),
		remove: () => rmSync(home, { recursive: true, force: true }),
	};
}

/**
 * A part of one's own of which one fact is set, again and again.
 *
 * @param {string} program
 * @returns {Promise<Kind>}
 */
export async function ownPartsKind(program) {
	const home = newHome();
	const file = join(home, ".local", "share", "boardwalk", "parts.json");
	mkdirSync(dirname(file), { recursive: true });
	const boards = [{ id: "old-one", name: "Old One", maker: "Wobblestone", socket: "Harbour 2" }];
	writeFileSync(file, JSON.stringify({ schema: "boardwalk/parts@1", boards }));
	const env = { PATH: process.env["PATH"], HOME: home };
	const whole = await timed(() =>
		promisify(execFile)(process.execPath, [program, "own", "set", "old-one", "name", "Round 0"], { env }),
	);
	let before = "Round 0";
	let round = 0;
	/** @param {number | null} killMs @returns {Promise<Left>} */
	async function set(killMs) {
		round++;
		const name = `Round ${round}`;
		const child = spawn(process.execPath, [program, "own", "set", "old-one", "name", name], { env });
		let said = "";
		for (const stream of [child.stdout, child.stderr])
			stream.on("data", (text) => {
				said += text;
			});
		const over = new Promise((resolve) => child.once("close", resolve));
		if (killMs !== null) {
			await Promise.race([pause(killMs), over]);
			child.kill("SIGKILL");
		}
		await over;
		const isSaid = said.includes(name);
		/** @type {string[]} */
		const faults = damagedWords.test(said) ? [said] : [];
		let now = before;
		try {
			const found = JSON.parse(readFileSync(file, "utf8")).boards;
			now = found[0].name;
			if (found.length !== 1 || found[0].socket !== "Harbour 2") faults.push(JSON.stringify(found));
		} catch (error) {
			faults.push(String(error));
		}
		if (now !== name && (isSaid || killMs === null || now !== before)) faults.push(`${now} after ${name}: ${said}`);
		before = now;
		const left = strays(dirname(file));
		if (left > 1) faults.push(`${left} strays: ${filesIn(dirname(file))}`);
		return { opened: killMs === null || isSaid, lost: now === name ? 0 : 1, strays: left, faults };
	}
	return {
		name: "a part of one's own",
		// What is written is written at the end.
		killOnce: (random) => set(whole * (0.4 + random() * 0.8)),
		openAtLast: () => set(null),
		remove: () => rmSync(home, { recursive: true, force: true }),
	};
}

/** @param {() => Promise<unknown>} work @returns {Promise<number>} in milliseconds */
async function timed(work) {
	const began = performance.now();
	await work();
	return performance.now() - began;
}
