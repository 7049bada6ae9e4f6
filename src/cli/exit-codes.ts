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
	hungUp: 129,
	interrupted: 130,
	terminated: 143,
} as const;
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

/** Ends a command with a code and one message on standard error. */
export class CommandError extends Error {
	readonly code: ExitCode;

	constructor(code: ExitCode, message: string) {
		super(message);
		this.code = code;
	}
}
