import packageFacts from "../../package.json" with { type: "json" };
import { type Arguments, readArguments } from "./arguments.ts";
import { CommandError, type ExitCode, exitCodes } from "./exit-codes.ts";
import { commandHelp, helpText } from "./help.ts";
import { processStreams, type Streams } from "./streams.ts";
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
		const about = args.command === "help" ? args.operands[0] : args.command;
		streams.out(about === undefined || about === null ? helpText() : commandHelp(about));
		return exitCodes.ok;
	}
	if (args.version) {
		streams.out(`${packageFacts.version}\n`);
		return exitCodes.ok;
	}
	return args.command === null ? walk(args, streams) : command(args, streams);
}

/** What is printed, with inches behind the millimetres; where that stands already, nothing changes. */
async function withInchesOut(streams: Streams): Promise<Streams> {
	const { withInches } = await import("../sheet/inches.ts");
	return { ...streams, out: (text) => streams.out(withInches(text)) };
}

/** Carries out one command. */
export async function command(args: Arguments, processed: Streams): Promise<ExitCode> {
	const streams = args.inches && !args.json ? await withInchesOut(processed) : processed;
	// Each loads only what it needs: a shell waits for its completion, a person for --help.
	switch (args.command) {
		case "completion":
			streams.out((await import("./completion.ts")).completion(args));
			break;
		case "shortlist":
			(await import("./commands.ts")).shortlist(args, streams);
			break;
		case "sheet":
			(await import("./commands.ts")).sheet(args, streams);
			break;
		case "price-line":
			(await import("./price-line-command.ts")).priceLineOfWalk(args, streams);
			break;
		case "plan":
			(await import("./plan-command.ts")).plan(args, streams);
			break;
		case "power":
			(await import("./power-command.ts")).power(args, streams);
			break;
		case "what-if":
			(await import("./what-if-command.ts")).whatIf(args, streams);
			break;
		case "like":
			(await import("./like-command.ts")).like(args, streams);
			break;
		case "ask":
			(await import("./ask-command.ts")).ask(args, streams);
			break;
		case "told":
			(await import("./ask-command.ts")).told(args, streams, today());
			break;
		case "merge":
			(await import("./merge-command.ts")).merge(args, streams);
			break;
		case "compare":
			(await import("./compare-command.ts")).compare(args, streams);
			break;
		case "walks":
			(await import("./walks-command.ts")).walks(args, streams, today());
			break;
		case "coach":
			return (await import("./coach-command.ts")).coach(args, (its, helper) => walk(its, streams, helper));
		case "read":
			await (await import("./read-command.ts")).read(args, streams, today());
			break;
		case "own":
			(await import("./own-parts-command.ts")).own(args, streams, today());
			break;
		case "replay":
			(await import("./replay-command.ts")).replay(args, streams);
			break;
		case "words":
			(await import("./words-command.ts")).words(args, streams);
			break;
		case "doctor":
			return (await import("./doctor-command.ts")).doctor(args, streams);
		case "check":
			(await import("./commands.ts")).check(args, streams);
			break;
		case "schema":
			(await import("./commands.ts")).schema(args, streams);
			break;
		case "why":
			(await import("./commands.ts")).why(args, streams);
			break;
		case "sources":
			(await import("./commands.ts")).sources(args, streams);
			break;
	}
	return exitCodes.ok;
}

/**
 * The walk: drawn where there is a terminal for it, else line by line; without any terminal to ask in, a sample.
 */
export async function walk(args: Arguments, streams: Streams, helper: Helper | null = null): Promise<ExitCode> {
	// Loaded only now, as all that follows, so that --help stays quick.
	const { walkFace } = await import("./walk-face.ts");
	const { keptSettings } = await import("./kept-settings.ts");
	const chosen = walkFace(args, () => keptSettings().settings, process.env);
	if (chosen.face === "page") {
		if (helper) return (await import("./coach-command.ts")).coachPage(args, streams, today(), helper);
		if (args.noInput && args.answers === undefined)
			throw new CommandError(exitCodes.usage, "Without asking, this needs --answers FILE: the file that a walk wrote.");
		const commands = await import("./commands.ts");
		if (args.answers !== undefined || args.parts !== undefined) commands.shortlist(args, streams);
		else commands.sampleShortlist(streams);
		return exitCodes.ok;
	}
	if (chosen.face === "line-by-line") {
		const { plainWalk } = await import("./plain-walk.ts");
		return plainWalk(args, streams, today(), helper);
	}
	const { prepareForDrawing } = await import("./terminal.ts");
	prepareForDrawing(chosen.terminal, process.env);
	const { drawnWalk } = await import("./drawn-walk.ts");
	return drawnWalk(args, streams, today(), chosen.terminal, helper);
}

/** Today where this person is, as an ISO date; the only place that looks at the clock. */
function today(): string {
	const now = new Date();
	return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, "0")}-${String(now.getDate()).padStart(2, "0")}`;
}
