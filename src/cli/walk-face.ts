import type { WalkSettings } from "../walk/saved-settings.ts";
import type { Arguments } from "./arguments.ts";
import { type TerminalFacts, terminalFacts } from "./terminal.ts";

/** The face a walk has, and why: drawn, line by line, or no walk but a page, where nothing can be asked. */
export type WalkFace =
	| {
			readonly face: "drawn";
			readonly because: string;
			readonly terminal: TerminalFacts & { stream: NodeJS.WriteStream };
	  }
	| { readonly face: "line-by-line"; readonly because: string }
	| { readonly face: "page"; readonly because: string };

/**
 * Decides how the walk meets this person. Flags come first, then the environment, then the settings, then what the
 * terminal can do.
 *
 * @param settings read only where they can make a difference
 */
export function walkFace(
	args: Pick<Arguments, "plain" | "noInput" | "noColour" | "ascii">,
	settings: () => WalkSettings,
	environment: NodeJS.ProcessEnv,
): WalkFace {
	if (args.noInput) return { face: "page", because: "the flag --no-input" };
	const plain = wishesPlain(args, environment);
	if (plain !== null) return { face: "line-by-line", because: plain };
	if (!process.stdin.isTTY) return { face: "page", because: "standard input is no terminal to ask in" };
	const kept = settings();
	if (kept.face === "line-by-line") return { face: "line-by-line", because: "your settings say so" };
	const terminal = terminalFacts(args, kept, environment);
	const { stream, because } = terminal;
	return stream === null
		? { face: "line-by-line", because: because.stream }
		: { face: "drawn", because: because.stream, terminal: { ...terminal, stream } };
}

function wishesPlain({ plain }: Pick<Arguments, "plain">, environment: NodeJS.ProcessEnv): string | null {
	if (plain) return "the flag --plain";
	if (isOn(environment["ACCESSIBLE"])) return "ACCESSIBLE is set";
	return environment["INK_SCREEN_READER"] === "true" ? "INK_SCREEN_READER is true" : null;
}

function isOn(value: string | undefined): boolean {
	return value !== undefined && value !== "" && value !== "0" && value !== "false";
}
