/** Escape sequences that carry a payload (OSC, DCS, APC, PM, SOS) with all of it, up to their terminator. */
const payloadSequences =
	// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the very characters to be taken out
	/(?:\u001b[\]PX^_]|[\u0090\u0098\u009d\u009e\u009f])[\s\S]*?(?:\u0007|\u001b\\|\u009c|$)/g;
/** Control sequences (CSI) and two-character escapes. */
const plainSequences =
	// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the very characters to be taken out
	/(?:\u001b\[|\u009b)[0-?]*[ -/]*[@-~]?|\u001b[ -/]*[0-~]?/g;
/**
 * Remaining control characters but tab and line feed, and characters that turn text or hide in it: directions, zero
 * width, soft hyphen, fillers, tags, halves of a character. Joiners and variation selectors stay: words and emoji need
 * them.
 */
const controlsAndDirections =
	// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the very characters to be taken out
	/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u00ad\u061c\u115f\u1160\u180e\u200b\u200e\u200f\u2028\u2029\u202a-\u202e\u2060-\u206f\u3164\ud800-\udfff\ufeff\uffa0\ufff9-\ufffb\u{e0000}-\u{e007f}]|\u034f/gu;

/**
 * Text from outside made harmless for a terminal and for paper: no escape sequence, no control character, no character
 * that changes direction or hides, in the composed normal form (NFC). Tabs and line feeds stay; CR LF becomes LF.
 */
export function cleanText(text: string): string {
	return text
		.replace(/\r\n?/g, "\n")
		.replace(payloadSequences, "")
		.replace(plainSequences, "")
		.replace(controlsAndDirections, "")
		.normalize("NFC");
}

/** As cleanText, on one line: runs of white space become one space. For names and labels. */
export function cleanLine(text: string): string {
	return cleanText(text).replace(/\s+/g, " ").trim();
}

/**
 * A parsed JSON value with every text in it cleaned, keys too. Keys that could reach an object's prototype get
 * another name, so that they are told as unknown. Depth is bounded so that a nested bomb cannot exhaust the stack.
 *
 * @throws RangeError when nested more than 40 deep; no sound file is.
 */
export function cleanJson(value: unknown, depth = 0): unknown {
	if (depth > 40) throw new RangeError("nested more than 40 deep");
	if (typeof value === "string") return cleanText(value);
	if (Array.isArray(value)) return value.map((item) => cleanJson(item, depth + 1));
	if (value !== null && typeof value === "object") {
		const cleaned: Record<string, unknown> = {};
		for (const [key, item] of Object.entries(value)) {
			const name = cleanLine(key);
			// Under another name it reaches no prototype, and who checks the file tells of it.
			const isHostile = name === "__proto__" || name === "constructor" || name === "prototype";
			cleaned[isHostile ? `${name} (a key that no file may have)` : name] = cleanJson(item, depth + 1);
		}
		return cleaned;
	}
	return value;
}
