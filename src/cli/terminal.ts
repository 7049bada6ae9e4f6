import { isTooSmall } from "../screens/arrange.ts";

/** What is known of the terminal before anything is drawn. */
export interface TerminalFacts {
	/** Where the walk is drawn, or null where it cannot be. */
	readonly stream: NodeJS.WriteStream | null;
	readonly colour: boolean;
	readonly ascii: boolean;
}

export interface TerminalWishes {
	readonly noColour: boolean;
	readonly ascii: boolean;
}

/**
 * Looks at the streams and the environment. The walk is drawn on standard output, or on standard error where the
 * result goes into a file; not where input is no terminal, the terminal is dumb, or its size is unknown or too small.
 */
export function terminalFacts(wishes: TerminalWishes, environment: NodeJS.ProcessEnv): TerminalFacts {
	const stream = [process.stdout, process.stderr].find(({ isTTY }) => isTTY) ?? null;
	const drawable =
		process.stdin.isTTY &&
		stream !== null &&
		environment["TERM"] !== "dumb" &&
		!isTooSmall({ columns: stream.columns ?? 0, rows: stream.rows ?? 0 });
	return {
		stream: drawable ? stream : null,
		colour: hasColour(wishes, environment),
		ascii: wishes.ascii || !isUtf8(environment),
	};
}

/** The flag first, then NO_COLOR (no-color.org: set and not empty), then FORCE_COLOR, then the kind of terminal. */
function hasColour({ noColour }: TerminalWishes, environment: NodeJS.ProcessEnv): boolean {
	if (noColour || (environment["NO_COLOR"] ?? "") !== "") return false;
	const forced = environment["FORCE_COLOR"];
	if (forced !== undefined && forced !== "") return forced !== "0" && forced !== "false";
	return environment["TERM"] !== "dumb";
}

/** By the first locale variable that is set, as POSIX orders them; a console of Linux's own lacks many signs. */
export function isUtf8(environment: NodeJS.ProcessEnv): boolean {
	if (environment["TERM"] === "linux") return false;
	if (process.platform === "win32") return Boolean(environment["WT_SESSION"]);
	const locale = [environment["LC_ALL"], environment["LC_CTYPE"], environment["LANG"]].find(Boolean) ?? "";
	return /utf-?8/i.test(locale);
}

/**
 * Sets the environment for the drawing library before it is loaded: it reads these once, draws nothing until the end
 * where CI is set, and does not know NO_COLOR. Where CI is set at all it would also use no colour, so that the level is
 * said: 1, the sixteen named colours.
 */
export function prepareForDrawing({ colour }: TerminalFacts, environment: NodeJS.ProcessEnv): void {
	environment["CI"] = "false";
	delete environment["CONTINUOUS_INTEGRATION"];
	environment["FORCE_COLOR"] = colour ? "1" : "0";
}
