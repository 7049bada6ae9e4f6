import packageFacts from "../../package.json" with { type: "json" };
import { type Arguments, readArguments } from "./arguments.ts";
import { CommandError, type ExitCode, exitCodes } from "./exit-codes.ts";
import { helpText } from "./help.ts";
import { processStreams, type Streams } from "./streams.ts";
import { prepareForDrawing, terminalFacts } from "./terminal.ts";
import type { Helper } from "./walk-session.ts";

/**
 * Runs the program: reads the command line, does what it says, sets process.exitCode. Never throws; a fault of ours
 * ends with 70 and one line.
 */
export async function main(argv: readonly string[]): Promise<void> {
	const streams = processStreams();
	try {
		process.exitCode = await run(argv, streams);
	} catch (error) {
		if (error instanceof CommandError) {
			streams.err(`${error.message}\n`);
			process.exitCode = error.code;
			return;
		}
		streams.err(
			`boardwalk stopped by a fault of its own: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
		);
		process.exitCode = exitCodes.software;
	}
}

async function run(argv: readonly string[], streams: Streams): Promise<ExitCode> {
	const args = readArguments(argv);
	if (args.help || args.command === "help") {
		streams.out(helpText());
		return exitCodes.ok;
	}
	if (args.version) {
		streams.out(`${packageFacts.version}\n`);
		return exitCodes.ok;
	}
	return args.command === null ? walk(args, streams) : command(args, streams);
}

async function command(args: Arguments, streams: Streams): Promise<ExitCode> {
	// Loaded only now, so that --help stays quick.
	const commands = await import("./commands.ts");
	switch (args.command) {
		case "shortlist":
			commands.shortlist(args, streams);
			break;
		case "sheet":
			commands.sheet(args, streams);
			break;
		case "price-line":
			(await import("./price-line-command.ts")).priceLineOfWalk(args, streams);
			return exitCodes.ok;
		case "plan":
			(await import("./plan-command.ts")).plan(args, streams);
			return exitCodes.ok;
		case "power":
			(await import("./power-command.ts")).power(args, streams);
			return exitCodes.ok;
		case "what-if":
			(await import("./what-if-command.ts")).whatIf(args, streams);
			return exitCodes.ok;
		case "like":
			(await import("./like-command.ts")).like(args, streams);
			return exitCodes.ok;
		case "ask":
			(await import("./ask-command.ts")).ask(args, streams);
			return exitCodes.ok;
		case "told":
			(await import("./ask-command.ts")).told(args, streams, today());
			return exitCodes.ok;
		case "merge":
			(await import("./merge-command.ts")).merge(args, streams);
			return exitCodes.ok;
		case "compare":
			(await import("./compare-command.ts")).compare(args, streams);
			return exitCodes.ok;
		case "walks":
			(await import("./walks-command.ts")).walks(args, streams, today());
			return exitCodes.ok;
		case "coach":
			return (await import("./coach-command.ts")).coach(args, (its, helper) => walk(its, streams, helper));
		case "read":
			await (await import("./read-command.ts")).read(args, streams, today());
			return exitCodes.ok;
		case "own":
			(await import("./own-parts-command.ts")).own(args, streams, today());
			return exitCodes.ok;
		case "check":
			commands.check(args, streams);
			break;
		case "schema":
			commands.schema(args, streams);
			break;
		case "why":
			commands.why(args, streams);
			break;
		case "sources":
			commands.sources(args, streams);
			break;
	}
	return exitCodes.ok;
}

/**
 * The walk: drawn where there is a terminal for it, else line by line; without any terminal to ask in, a sample.
 */
async function walk(args: Arguments, streams: Streams, helper: Helper | null = null): Promise<ExitCode> {
	const wishesPlain = args.plain || isOn(process.env["ACCESSIBLE"]) || process.env["INK_SCREEN_READER"] === "true";
	if (!wishesPlain && !process.stdin.isTTY) {
		if (helper) return (await import("./coach-command.ts")).coachPage(args, streams, today(), helper);
		const commands = await import("./commands.ts");
		if (args.answers !== undefined || args.parts !== undefined) commands.shortlist(args, streams);
		else commands.sampleShortlist(streams);
		return exitCodes.ok;
	}
	const { keptSettings } = await import("./kept-settings.ts");
	const { settings } = keptSettings();
	const facts = terminalFacts(
		{ noColour: args.noColour || settings.colour === "never", ascii: args.ascii || settings.characters === "ascii" },
		process.env,
	);
	if (wishesPlain || settings.face === "line-by-line" || facts.stream === null) {
		const { plainWalk } = await import("./plain-walk.ts");
		return plainWalk(args, streams, today(), helper);
	}
	prepareForDrawing(facts, process.env);
	const { drawnWalk } = await import("./drawn-walk.ts");
	return drawnWalk(args, streams, today(), { stream: facts.stream, ascii: facts.ascii }, helper);
}

function isOn(value: string | undefined): boolean {
	return value !== undefined && value !== "" && value !== "0" && value !== "false";
}

/** Today where this person is, as an ISO date; the only place that looks at the clock. */
function today(): string {
	const now = new Date();
	return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, "0")}-${String(now.getDate()).padStart(2, "0")}`;
}
