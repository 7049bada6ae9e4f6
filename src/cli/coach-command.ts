import { blockLines } from "../screens/block-lines.ts";
import { wrapText } from "../sheet/wrap-text.ts";
import { helperNamed } from "../walk/helper-name.ts";
import type { Arguments } from "./arguments.ts";
import { CommandError, type ExitCode, exitCodes } from "./exit-codes.ts";
import { keptSettings } from "./kept-settings.ts";
import { loadWalkFile } from "./load.ts";
import type { Streams } from "./streams.ts";
import { type Helper, openSession } from "./walk-session.ts";

const width = 78;

/**
 * `coach FILE`: somebody else's walk, for a helper, drawn or line by line as any walk.
 *
 * @param walk the walk with these arguments
 * @throws CommandError without a file, for one that cannot be used, and for a name that stands for the builder
 */
export function coach(
	args: Arguments,
	walk: (args: Arguments, helper: Helper) => Promise<ExitCode>,
): Promise<ExitCode> {
	const file = args.operands[0] ?? args.answers;
	if (file === undefined)
		throw new CommandError(exitCodes.usage, "Whose walk? Name its file, such as: boardwalk coach their-walk.json");
	// Told now, before anything is drawn.
	loadWalkFile(file);
	return walk({ ...args, answers: file }, { name: nameOf(args) });
}

/** The name that --name gives, or the one used before; null: it is to be asked. */
function nameOf({ name }: Arguments): string | null {
	if (name === undefined) {
		const kept = helperNamed(keptSettings().settings.helperName ?? "");
		return "name" in kept ? kept.name : null;
	}
	const given = helperNamed(name);
	if ("problem" in given) throw new CommandError(exitCodes.usage, `--name: ${given.problem}`);
	return given.name;
}

/** Without a terminal to ask in: what a helper would check, as text. */
export function coachPage(args: Arguments, streams: Streams, today: string, { name }: Helper): ExitCode {
	const session = openSession(args, streams, today, { name: name ?? "helper" });
	const screen = session.screen();
	session.close();
	if (screen)
		streams.out(
			`${[...wrapText(screen.title, width), "", ...blockLines(screen.body, width)].join("\n").replace(/\n{3,}/g, "\n\n")}\n`,
		);
	return exitCodes.ok;
}
