import type { Arguments } from "./arguments.ts";
import { nearWords } from "./arguments.ts";
import {
	type CommandEntry,
	commandNames,
	commandTable,
	flagWords,
	type Operand,
	type Usage,
	walkEntry,
} from "./command-table.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { type FlagName, flags, flagsForAll } from "./flags.ts";

const shells = ["bash"] as const;

/**
 * `completion bash`: a script that completes commands, their words, flags and file names.
 *
 * @throws CommandError with code 64 without a shell, or for one that there is no script for
 */
export function completion({ operands: [shell] }: Arguments): string {
	if (shell === undefined)
		throw new CommandError(exitCodes.usage, "For which shell? Such as: boardwalk completion bash");
	if (shell !== "bash")
		throw new CommandError(
			exitCodes.usage,
			`There is completion for ${shells.join(", ")} only, and not for "${shell}".${nearWords(shell, shells).replace(/^ See: .*/, "")}`,
		);
	return script();
}

/**
 * Bash finds the command among the words typed so far, then offers what can stand where the cursor is. Bash cuts a word at
 * "=", so that --to=FILE comes as three.
 */
function script(): string {
	return `# Completion of boardwalk for bash. To use it in this bash:
#     source <(boardwalk completion bash)
# To have it always, put that line into your own ~/.bashrc. This script changes no file, and starts no program.
# It completes the word boardwalk; if you start it otherwise, give it that name: alias boardwalk="node bin/boardwalk.js"

_boardwalk_offer() {
	local one
	while IFS= read -r one; do
		COMPREPLY+=("$one")
	done < <(compgen "$@")
}

_boardwalk_files() {
	compopt -o filenames 2>/dev/null
	_boardwalk_offer -f -- "$1"
}

_boardwalk() {
	local current=\${COMP_WORDS[COMP_CWORD]} previous="" command="" word="" place=0 flag="" isFlag=1 index one
	COMPREPLY=()
	for ((index = 1; index < COMP_CWORD; index++)); do
		one=\${COMP_WORDS[index]}
		if [[ -n $flag ]]; then
			[[ $one == "=" ]] || flag=""
			continue
		fi
		if [[ $isFlag == 1 && $one == -- ]]; then
			isFlag=0
		elif [[ $isFlag == 1 && $one == -* ]]; then
			case $one in
				${valueFlags.map((name) => `--${name}`).join(" | ")}) flag=$one ;;
			esac
		elif [[ -z $command ]]; then
			command=$one
		else
			[[ $place == 0 ]] && word=$one
			place=$((place + 1))
		fi
	done
	[[ -n $flag && $current == "=" ]] && current=""
	case $flag in
${flagCases()}
		?*) return ;;
	esac
	if [[ $isFlag == 1 && $current == -* ]]; then
		case $command/$word in
${caseLines(flagChoices)}
			*) _boardwalk_offer -W "${names(flagsForAll)}" -- "$current" ;;
		esac
		return
	fi
	case $command/$word/$place in
${caseLines(wordChoices)}
	esac
}

complete -F _boardwalk boardwalk
`;
}

const flagNames = Object.keys(flags) as readonly FlagName[];
const valueFlags = flagNames.filter((name) => flags[name].value !== null);

function names(list: readonly FlagName[]): string {
	return list.map((name) => `--${name}`).join(" ");
}

/** What stands behind a flag: a file, one of a few words, or nothing that could be known. */
function flagCases(): string {
	const files = valueFlags.filter((name) => ["FILE", "FOLDER", "START"].includes(flags[name].value ?? ""));
	const worded = valueFlags.flatMap((name) => {
		const words = flagWords[name];
		return words ? [`\t\t--${name}) _boardwalk_offer -W "${words.join(" ")}" -- "$current"; return ;;`] : [];
	});
	return [
		...worded,
		`\t\t${files.map((name) => `--${name}`).join(" | ")}) _boardwalk_files "$current"; return ;;`,
	].join("\n");
}

type Choice = readonly [pattern: string, offer: string];

function caseLines(choices: readonly Choice[]): string {
	return choices.map(([pattern, offer]) => `\t\t\t${pattern}) ${offer} ;;`).join("\n");
}

function offerWords(words: readonly string[]): string {
	return `_boardwalk_offer -W "${words.join(" ")}" -- "$current"`;
}

/** The flags that each command reads, by "command/word". */
const flagChoices: readonly Choice[] = [
	["/", offerFlags([usageOf(walkEntry)])],
	...commandNames.flatMap((name): readonly Choice[] => {
		const { usage } = commandTable[name];
		if (!("words" in usage)) return [[`${name}/*`, offerFlags([usage])]];
		const words = Object.entries(usage.words).map(([word, one]): Choice => [`${name}/${word}`, offerFlags([one])]);
		return [...words, [`${name}/*`, offerFlags(Object.values(usage.words))]];
	}),
];

function offerFlags(usages: readonly Usage[]): string {
	const read = new Set<FlagName>([...usages.flatMap((one) => one.flags), ...flagsForAll]);
	return `_boardwalk_offer -W "${names(flagNames.filter((flag) => read.has(flag)))}" -- "$current"`;
}

function usageOf({ usage }: CommandEntry): Usage {
	return "words" in usage ? { operands: [], flags: [] } : usage;
}

/** What can stand in each place behind a command, by "command/word/place". */
const wordChoices: readonly Choice[] = [
	["//0", offerWords(commandNames)],
	["help//0", offerWords(commandNames)],
	...commandNames.flatMap((name): readonly Choice[] => {
		const { usage } = commandTable[name];
		if (!("words" in usage)) return placesOf(usage.operands, (place) => `${name}/*/${place}`);
		return [
			[`${name}//0`, offerWords(Object.keys(usage.words))],
			...Object.entries(usage.words).flatMap(([word, { operands }]) =>
				placesOf(operands, (place) => `${name}/${word}/${place + 1}`),
			),
		];
	}),
];

function placesOf(operands: readonly Operand[], pattern: (place: number) => string): readonly Choice[] {
	return operands.flatMap(({ words, isFile }, place): readonly Choice[] => {
		if (words) return [[pattern(place), offerWords(words)]];
		return isFile ? [[pattern(place), '_boardwalk_files "$current"']] : [];
	});
}
