import packageFacts from "../../package.json" with { type: "json" };
import {
	type FolderLook,
	lookAtFolder,
	lookAtOwnParts,
	lookAtSettings,
	lookAtWalks,
	type WalksLook,
} from "../files/look-at-own.ts";
import { dataFolder, settingsFolder, walksFolder } from "../files/own-folders.ts";
import { ownPartsPath } from "../files/own-parts-file.ts";
import { cleanLine } from "../parts/clean-text.ts";
import { wrapText } from "../sheet/wrap-text.ts";
import type { Arguments } from "./arguments.ts";
import { demoMarket } from "./demo-market.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import type { Streams } from "./streams.ts";
import { type TerminalFacts, terminalFacts } from "./terminal.ts";
import { type WalkFace, walkFace } from "./walk-face.ts";

const width = 78;

/** A folder of ours: what it holds, where it is, and how it is. */
interface Place {
	readonly holds: "settings" | "walks" | "own parts";
	/** Null: there is no home folder to put it in. */
	readonly path: string | null;
	readonly look: FolderLook | null;
}

interface Report {
	readonly terminal: readonly StreamLook[];
	readonly term: string;
	readonly face: WalkFace;
	readonly facts: TerminalFacts;
	readonly places: readonly Place[];
	readonly walks: WalksLook;
	readonly ownParts: { readonly parts: number; readonly wrong: string | null };
	readonly settingsDamaged: boolean;
	readonly demoBoards: number;
}

interface StreamLook {
	readonly name: string;
	readonly isTerminal: boolean;
	readonly columns: number | null;
	readonly rows: number | null;
}

/** Something to know or to do; `isBroken`: without it boardwalk cannot keep what it should. */
interface Advice {
	readonly words: string;
	readonly isBroken: boolean;
}

/**
 * `doctor`: what boardwalk finds on this machine and what it decides by that, in words or with --json as doctor@1.
 * Nothing is made, mended or changed.
 *
 * @returns 78 where something is broken, with what to do among the words
 */
export function doctor(args: Arguments, { out }: Streams): ExitCode {
	const report = lookRound(args, process.env, process.platform);
	const advice = adviceFor(report);
	out(args.json ? `${JSON.stringify(reportJson(report, advice), null, "\t")}\n` : reportText(report, advice));
	return advice.some(({ isBroken }) => isBroken) ? exitCodes.notSetUp : exitCodes.ok;
}

function lookRound(args: Arguments, environment: NodeJS.ProcessEnv, platform: string): Report {
	const settingsAt = settingsFolder(environment, platform);
	const walksAt = walksFolder(environment, platform);
	const partsAt = dataFolder(environment, platform);
	const { settings, isDamaged } = lookAtSettings(settingsAt);
	const place = (holds: Place["holds"], path: string | null): Place => ({
		holds,
		path,
		look: path === null ? null : lookAtFolder(path, platform),
	});
	return {
		terminal: [
			streamLook("standard input", process.stdin),
			streamLook("standard output", process.stdout),
			streamLook("standard error", process.stderr),
		],
		term: cleanLine(environment["TERM"] ?? "").slice(0, 40),
		face: walkFace(args, () => settings, environment),
		facts: terminalFacts(args, settings, environment),
		places: [place("settings", settingsAt), place("walks", walksAt), place("own parts", partsAt)],
		walks: walksAt === null ? { sound: 0, damaged: 0, newer: 0, unreadable: 0 } : lookAtWalks(walksAt),
		ownParts: partsAt === null ? { parts: 0, wrong: null } : lookAtOwnParts(partsAt),
		settingsDamaged: isDamaged,
		demoBoards: demoMarket().parts.board.length,
	};
}

function streamLook(
	name: string,
	stream: { readonly isTTY?: boolean; readonly columns?: number; readonly rows?: number },
): StreamLook {
	return {
		name,
		isTerminal: stream.isTTY === true,
		columns: stream.columns ?? null,
		rows: stream.rows ?? null,
	};
}

function adviceFor({ places, walks, ownParts, settingsDamaged }: Report): readonly Advice[] {
	const ofPlaces = places.flatMap(({ holds, path, look }): readonly Advice[] => {
		if (path === null || look === null) return [];
		if (look.state === "no-folder")
			return [
				{ words: `A file stands where the folder for ${holds} should be: ${path}. Move it away.`, isBroken: true },
			];
		if (!look.canWrite) {
			const made = look.state === "there" ? "cannot be written" : "cannot be made";
			return [{ words: `The folder for ${holds} ${made}: ${path}. Make it, and make it yours.`, isBroken: true }];
		}
		const [open, ...more] = look.openToOthers ?? [];
		const others = more.length > 0 ? `, and ${more.length} more beside it` : "";
		return open
			? [{ words: `Others on this machine can read ${open}${others}. To close it: chmod 600.`, isBroken: false }]
			: [];
	});
	const partsAt = places.find(({ holds }) => holds === "own parts")?.path ?? null;
	return [
		...(places.some(({ path }) => path === null)
			? [{ words: "There is no home folder, so nothing can be kept. Set HOME to a folder of yours.", isBroken: true }]
			: []),
		...ofPlaces,
		...(ownParts.wrong !== null && partsAt !== null
			? [
					{
						words: `The file of your own parts has something wrong: ${ownParts.wrong}. To see it: boardwalk check ${ownPartsPath(partsAt)}. To go on with the sound parts: --sound-only.`,
						isBroken: true,
					},
				]
			: []),
		...(settingsDamaged
			? [
					{
						words: "The settings are damaged. The next walk sets the file aside, and the usual settings hold.",
						isBroken: false,
					},
				]
			: []),
		...(walks.damaged > 0
			? [{ words: "Damaged walks are set aside at the next start. They are kept under another name.", isBroken: false }]
			: []),
		...(walks.newer > 0
			? [{ words: "A newer boardwalk wrote some of your walks. They are left as they are.", isBroken: false }]
			: []),
	];
}

const sendsNothing = "Nothing is ever sent anywhere: the program reads and writes files on this machine only.";

function reportText(report: Report, advice: readonly Advice[]): string {
	const { terminal, term, face, facts, places, demoBoards } = report;
	const sections: readonly (readonly [string, readonly string[]])[] = [
		[
			"Terminal",
			[
				...terminal.map(streamWords),
				`TERM: ${term === "" ? "not set" : term}`,
				`The walk: ${faceWords[face.face]} (${face.because})`,
				`Colour: ${facts.colour ? "yes" : "no"} (${facts.because.colour})`,
				`Characters: ${facts.ascii ? "ASCII only" : "Unicode"} (${facts.because.ascii})`,
			],
		],
		["Files on this machine", places.flatMap((place) => placeWords(place, report))],
		["Boards to choose from", [`The demonstration has ${demoBoards} boards, all of them invented.`]],
		advice.length > 0
			? ["What to know", advice.map(({ words }) => words)]
			: ["All is well", ["Nothing was found that needs you."]],
	];
	const lines = sections.flatMap(([heading, words]) => [
		"",
		heading,
		...words.flatMap((line) => wrapText(`  ${line}`, width, { indent: "    " })),
	]);
	return `${[versionWords, ...lines, "", ...wrapText(sendsNothing, width)].join("\n")}\n`;
}

const versionWords = `boardwalk ${packageFacts.version}, Node.js ${process.versions.node}, ${process.platform} ${process.arch}`;

const faceWords: Readonly<Record<WalkFace["face"], string>> = {
	drawn: "drawn, one screen at a time",
	"line-by-line": "line by line",
	page: "none; the shortlist of --answers is printed, or a sample",
};

function streamWords({ name, isTerminal, columns, rows }: StreamLook): string {
	const shown = name.replace(/^s/, "S");
	if (!isTerminal) return `${shown}: no terminal`;
	return `${shown}: a terminal${columns && rows ? `, ${columns} columns and ${rows} rows` : ""}`;
}

function placeWords({ holds, path, look }: Place, { walks, ownParts }: Report): readonly string[] {
	if (path === null || look === null) return [`No place for ${holds}.`];
	const name = holds.replace(/^./, (letter) => letter.toUpperCase());
	if (look.state !== "there")
		return [`${name}: ${path}`, look.canWrite ? "  Not there yet; made when something is kept." : "  Not there."];
	const readers =
		look.openToOthers === null
			? ""
			: look.openToOthers.length > 0
				? ", and others can read it"
				: ", and only you can read what lies there";
	const held =
		holds === "walks"
			? ` ${walksWords(walks)}`
			: holds === "own parts"
				? ` ${countWords(ownParts.parts, "part", "parts")} of your own.`
				: "";
	return [`${name}: ${path}`, `  ${look.canWrite ? "It can be written" : "It cannot be written"}${readers}.${held}`];
}

function walksWords({ sound, damaged, newer, unreadable }: WalksLook): string {
	const others = [
		...(damaged > 0 ? [`${damaged} damaged`] : []),
		...(newer > 0 ? [`${newer} of a newer boardwalk`] : []),
		...(unreadable > 0 ? [`${unreadable} that cannot be read`] : []),
	];
	return `${[countWords(sound, "walk", "walks"), ...others].join(", ")}.`;
}

function countWords(count: number, one: string, many: string): string {
	return count === 0 ? `No ${many}` : `${count} ${count === 1 ? one : many}`;
}

/** The report for other programs. Keys are stable; `because` and `words` are for people and may change. */
function reportJson(report: Report, advice: readonly Advice[]): object {
	const { terminal, term, face, facts, places, walks, ownParts, settingsDamaged, demoBoards } = report;
	return {
		schema: "boardwalk/doctor@1",
		versions: { boardwalk: packageFacts.version, node: process.versions.node },
		platform: { system: process.platform, processor: process.arch },
		terminal: { streams: terminal, term },
		face: { is: face.face, because: face.because },
		colour: { is: facts.colour, because: facts.because.colour },
		ascii: { is: facts.ascii, because: facts.because.ascii },
		places: places.map(({ holds, path, look }) => ({ holds, path, ...look })),
		walks,
		ownParts,
		settingsDamaged,
		demonstration: { boards: demoBoards },
		sends: "nothing",
		advice,
	};
}
