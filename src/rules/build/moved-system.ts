import { defineRule } from "../define-rule.ts";
import { fail, type Outcome, pass } from "../outcome.ts";

/** A drive that brings its installed system along. All that helps must be done while the old computer still runs. */
export const movedSystem = defineRule({
	id: "build/moved-system",
	scope: "build",
	label: "System moved over",
	wayOut: "a fresh installation on an empty drive",
	asks: "Does a drive bring an installed system from another computer?",
	why: "A system moved to another board can ask for keys or not start. You can look things up only while the old computer still runs.",
	source: "common-practice",
	severity: "plan-around",
	reads: [],
	mayRead: ["drives", "oldThings"],
	messages: {
		notAsked: () => "You have named no drive with an installed system to be moved over.",
		moves: ({ drives }: { drives: readonly string[] }) =>
			`An installed system is to be moved over from another computer, on: ${drives.join(", ")}.`,
		movesOne: () => "An installed system is to be moved over from another computer.",
	},
	advice: { moves: before, movesOne: before },
	check({ drives = [], oldThings = [] }): Outcome {
		const moved = [...new Set(drives.filter(({ system }) => system).map(({ name }) => name))];
		if (moved.length > 0) return fail("moves", { drives: moved });
		return oldThings.includes("installed system") ? fail("movesOne") : pass("notAsked");
	},
});

function before(): string {
	return [
		"Before you take the old computer apart, copy your files to another drive and open some from there.",
		"If the drive is encrypted (locked with a key), write down its recovery key: a new board makes it ask.",
		"Look up how your system shows its start mode: UEFI, or the older BIOS (legacy). Many new boards know UEFI only: ask how to convert it first.",
		"The system's licence may ask to be confirmed anew: note its key or account.",
		"A small fresh installation is often cleaner.",
	].join(" ");
}
