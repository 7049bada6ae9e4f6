/** What the program ends with. Numbers from 64 on as in sysexits.h; above 128 the number of the signal is added. */
export const exitCodes = {
	/** Finished; also when nothing fits, and after help. */
	ok: 0,
	/** Left before a shortlist was seen; answers are saved. */
	leftEarly: 1,
	/** Wrong command, flag or argument. */
	usage: 64,
	/** A file of answers or parts holds something that cannot be. */
	badData: 65,
	/** A file to read is missing or unreadable. */
	noInput: 66,
	/** Our own fault. */
	software: 70,
	/** The file to write exists already or cannot be made. */
	cannotCreate: 73,
	/** Reading or writing failed half-way. */
	io: 74,
	/** Not set up: Node.js too old, not built yet, or a folder of ours cannot be used. */
	notSetUp: 78,
	hungUp: 129,
	interrupted: 130,
	terminated: 143,
} as const;
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

/** What a person is told of the codes they may meet; README.md has the same words. */
export const exitCodeWords: Readonly<Partial<Record<ExitCode, string>>> = {
	0: "finished; also when nothing fits",
	1: "left before a shortlist was seen; the answers are kept",
	64: "wrong command or flag",
	65: "bad data in a file of answers or parts; nothing was changed",
	66: "a file to read is missing or unreadable",
	70: "a fault of the program itself",
	73: "the file to write is there already, or cannot be made",
	78: "not set up: Node.js too old, not built yet, or a folder of ours cannot be used",
	130: "stopped with Ctrl-C; the answers are kept",
};

/** Ends a command with a code and one message on standard error. */
export class CommandError extends Error {
	readonly code: ExitCode;

	constructor(code: ExitCode, message: string) {
		super(message);
		this.code = code;
	}
}
