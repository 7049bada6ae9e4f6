import { isTooSmall } from "../screens/arrange.ts";
import type { WalkSettings } from "../walk/saved-settings.ts";

/** What is known of the terminal before anything is drawn. */
export interface TerminalFacts {
	/** Where the walk is drawn, or null where it cannot be. */
	readonly stream: NodeJS.WriteStream | null;
	readonly colour: boolean;
	readonly ascii: boolean;
	/** Why each is so, in words that stand behind a colon. */
	readonly because: { readonly stream: string; readonly colour: string; readonly ascii: string };
}

/** What this person wants in this run. */
export interface TerminalWishes {
	readonly noColour: boolean;
	readonly ascii: boolean;
}

type Decided<T> = readonly [value: T, because: string];

/**
 * Looks at the streams and the environment. The walk is drawn on standard output, or on standard error where the
 * result goes into a file; not where input is no terminal, the terminal is dumb, or its size is unknown or too small.
 *
 * @param settings what the person has set for all runs
 */
export function terminalFacts(
	wishes: TerminalWishes,
	settings: Pick<WalkSettings, "colour" | "characters">,
	environment: NodeJS.ProcessEnv,
): TerminalFacts {
	const [stream, whyStream] = drawnOn(environment);
	const [colour, whyColour] = hasColour(wishes, settings, environment);
	const [ascii, whyAscii] = onlyAscii(wishes, settings, environment);
	return { stream, colour, ascii, because: { stream: whyStream, colour: whyColour, ascii: whyAscii } };
}

function drawnOn(environment: NodeJS.ProcessEnv): Decided<NodeJS.WriteStream | null> {
	const stream = [process.stdout, process.stderr].find(({ isTTY }) => isTTY) ?? null;
	if (!process.stdin.isTTY) return [null, "standard input is no terminal"];
	if (stream === null) return [null, "neither standard output nor standard error is a terminal"];
	if (environment["TERM"] === "dumb") return [null, "TERM is dumb"];
	const size = { columns: stream.columns ?? 0, rows: stream.rows ?? 0 };
	if (size.columns === 0 || size.rows === 0) return [null, "the terminal tells no size"];
	if (isTooSmall(size))
		return [null, `the terminal has ${size.columns} columns and ${size.rows} rows, which is too few`];
	return [stream, `standard ${stream === process.stdout ? "output" : "error"} is a terminal that can be drawn on`];
}

/** The flag first, then the setting, then NO_COLOR (no-color.org: set and not empty), FORCE_COLOR, the kind of terminal. */
function hasColour(
	{ noColour }: TerminalWishes,
	{ colour }: Pick<WalkSettings, "colour">,
	environment: NodeJS.ProcessEnv,
): Decided<boolean> {
	if (noColour) return [false, "the flag --no-color"];
	if (colour === "never") return [false, "your settings say so"];
	if ((environment["NO_COLOR"] ?? "") !== "") return [false, "NO_COLOR is set"];
	const forced = environment["FORCE_COLOR"];
	if (forced !== undefined && forced !== "")
		return [forced !== "0" && forced !== "false", `FORCE_COLOR is ${forced.slice(0, 20)}`];
	return environment["TERM"] === "dumb" ? [false, "TERM is dumb"] : [true, "nothing speaks against it"];
}

function onlyAscii(
	{ ascii }: TerminalWishes,
	{ characters }: Pick<WalkSettings, "characters">,
	environment: NodeJS.ProcessEnv,
): Decided<boolean> {
	if (ascii) return [true, "the flag --ascii"];
	if (characters === "ascii") return [true, "your settings say so"];
	const [utf8, because] = utf8Of(environment);
	return [!utf8, because];
}

/** Whether the terminal takes UTF-8. */
export function isUtf8(environment: NodeJS.ProcessEnv): boolean {
	return utf8Of(environment)[0];
}

/** By the first locale variable that is set, as POSIX orders them; a console of Linux's own lacks many signs. */
function utf8Of(environment: NodeJS.ProcessEnv): Decided<boolean> {
	if (environment["TERM"] === "linux") return [false, "TERM is linux, a console that lacks many signs"];
	if (process.platform === "win32") {
		const isNewer = Boolean(environment["WT_SESSION"]);
		return [isNewer, `WT_SESSION is ${isNewer ? "set, so the console is of the newer kind" : "not set"}`];
	}
	const name = ["LC_ALL", "LC_CTYPE", "LANG"].find((one) => environment[one]);
	const locale = (name && environment[name]) ?? "";
	return [/utf-?8/i.test(locale), name ? `${name} is ${locale.slice(0, 40)}` : "none of LC_ALL, LC_CTYPE, LANG is set"];
}

/**
 * Sets the environment for the drawing library before it is loaded: it reads these once, draws nothing until the end
 * where CI is set, and does not know NO_COLOR. Where CI is set at all it would also use no colour, so that the level is
 * said: 1, the sixteen named colours.
 */
export function prepareForDrawing({ colour }: Pick<TerminalFacts, "colour">, environment: NodeJS.ProcessEnv): void {
	environment["CI"] = "false";
	delete environment["CONTINUOUS_INTEGRATION"];
	environment["FORCE_COLOR"] = colour ? "1" : "0";
}
