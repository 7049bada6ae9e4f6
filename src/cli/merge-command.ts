import { keepWalkAt } from "../files/walk-copies.ts";
import { answersFile, mostSuggestions } from "../parts/answers-file.ts";
import { checkJson } from "../parts/check-json.ts";
import { mergeWords } from "../sheet/merge-words.ts";
import { marketOf } from "../walk/market-of.ts";
import { mergeWalks } from "../walk/merged-walks.ts";
import type { Arguments } from "./arguments.ts";
import { boardText } from "./board-command.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { faultsMessage } from "./fault-words.ts";
import { loadWalk, reading } from "./load.ts";
import type { Streams } from "./streams.ts";
import { twoWalks } from "./two-walks.ts";
import { endingOf } from "./write-sheet.ts";

const example = "boardwalk merge mine.json mias.json --to both.json";

/**
 * `merge A B --to FILE`: one walk of two, with what came from where and what is to be decided told on standard output.
 * `--from START` names the walk that both came from. The two files stay as they are unless --to names one of them and
 * --replace is given.
 *
 * @throws CommandError: 64 without two files or --to, 65 and 66 for files that cannot be used, 73 where the file is there
 */
export function merge(args: Arguments, streams: Streams): void {
	const { to } = args;
	if (to === undefined || args.operands.length < 2)
		throw new CommandError(exitCodes.usage, `Which two files, and where to write? Such as: ${example}`);
	if (endingOf(to) !== ".json")
		throw new CommandError(exitCodes.usage, "A walk is written as .json; the file's name behind --to must end so.");
	const { walks, names, market } = twoWalks(args, streams, example, args.from);
	const start = args.from === undefined ? null : loadWalk(args.from, { market }, { ...streams, err: () => {} }).file;
	const merged = mergeWalks(walks.one, walks.other, start);
	const suggestions = merged.walk.suggestions?.length ?? 0;
	if (suggestions > mostSuggestions)
		throw new CommandError(
			exitCodes.badData,
			`Merged, the two have ${suggestions} suggestions, and a walk holds ${mostSuggestions} at most. Nothing was written.`,
		);
	const { faults } = checkJson(answersFile, JSON.parse(JSON.stringify(merged.walk)));
	if (faults.length > 0)
		throw new CommandError(
			exitCodes.badData,
			`Merged, the two would make a walk that no file may hold. Nothing was written. ${faultsMessage(to, faults)}`,
		);
	const path = reading(() => keepWalkAt(to, merged.walk, args.replace));
	if (path === null)
		throw new CommandError(
			exitCodes.cannotCreate,
			`${to} is there already and was kept. Take another name, or add --replace.`,
		);
	const context = { market: marketOf(market, merged.walk.parts), asOf: merged.walk.asOf };
	const hasOpen = merged.walk.suggestions?.some(({ state }) => state === "open") ?? false;
	streams.out(
		boardText({
			title: `${names.one} and ${names.other}, merged`,
			stopped: [],
			shows: "",
			picture: [],
			sections: mergeWords(merged, names, context),
			last: hasOpen ? "What is open is shown in the walk under Suggestions, where you decide." : "",
		}),
	);
	streams.err(`Written: ${path}\n`);
}
