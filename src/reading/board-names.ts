import type { BoardLine } from "./board-lines.ts";
import { eachOnce } from "./quantities.ts";
import { words } from "./words.ts";

/** Letters, then figures: the shape that names of sockets have, such as LGA with a count of contacts. */
const socketShape = "(?:FC)?(s?[A-Z][A-Za-z]{0,4}[\\s-]?\\d{1,4}(?:-?[A-Za-z]\\d?|\\+)?)";
const besideWord = new RegExp(
	`(?:(?<!\\p{L})(?:[Ss](?:ocket|ockel|oquete|oket)|SOCKET|[Zz]ócalo|[Сс]окет)\\s)${socketShape}(?![\\w+])|\\b${socketShape}\\s(?:[Ss]ocket|[Ss]ockel|[Ss]oket)\\b`,
	"gu",
);
const contacts = /(?<![A-Za-z])(?:FC)?(LGA[\s-]?\d{3,4}(?:-?[A-Za-z0-9]{1,2})?)(?!\w)/gi;
const notSockets =
	/^(?:m\.?2|ddr\d|usb\d?|gen\d|type\d?|pcie?\w*|key\d?|x\d+|dimm\d?|sata\d?|u\.?2|bga\d*|fcbga\d*|atx\d*|cpu\d?|fan\d?)$/i;

/** Names of the processor's socket that a line gives. */
export function socketNames(line: BoardLine): readonly string[] {
	if (line.isHead && line.value !== "" && !words.socket.test(line.value)) return [];
	const isLabelled = /procesor|processor|prozessor|[iİ]şlemci|\bcpu\b/iu.test(line.label);
	if (
		line.isNote ||
		line.topic === "accessories" ||
		(line.topic === "slots" && !isLabelled) ||
		line.topic === "storage"
	)
		return [];
	const isLabel =
		/^(?:(?:cpu|processor|prozessor|[iİ]şlemci)[\s-]?)?(?:socket|sockel|сокет|soquete|zócalo|gniazdo|patice|soketi?|slots)(?:\s?(?:type|typ|cpu|procesora|procesoru|processore?))?$/iu.test(
			line.label.trim(),
		);
	const text = line.value.replace(/\bcooler.*$|\bkühler.*$/i, "");
	const found = [
		...[...text.matchAll(contacts)].map(([, name]) => name),
		...[...text.matchAll(besideWord)].map(([, one, other]) => one ?? other),
	]
		.filter((name) => name !== undefined)
		.map((name) => name.replace(/^(LGA)[\s-]/i, "$1"))
		.filter((name) => !notSockets.test(name.replace(/\s/g, "")));
	// "Socket P4 (LGA4310)" has two names; the one by its contacts is what processors print.
	const byContacts = eachOnce(found.filter((name) => /^LGA\d/i.test(name)));
	if (found.length > 0) return byContacts.length === 1 ? byContacts : eachOnce(found);
	if (!isLabel || /^\d{1,2}\s?[x×]\s|dimm/i.test(text)) return [];
	const value = text
		.replace(/\([^)]*\)/g, "")
		.replace(/^(?:socket|sockel)\s/i, "")
		.trim();
	// The maker's name stands before it.
	const behindMaker = new RegExp(`^(?:\\p{Lu}\\p{L}+\\s){1,2}${socketShape}$`, "u").exec(value)?.[1];
	if (behindMaker !== undefined) return [behindMaker];
	return /^[\p{L}\d][\p{L}\d\s.+-]{0,38}$/u.test(value) ? [value] : [];
}

const code = /(?<![\w.])([A-Z]{1,3}\d{2,4}[A-Z]?)(?![\w.])/g;

/** The chipset's name that a line gives: its code where there is just one, else the words. */
export function chipsetName(line: BoardLine): string | undefined {
	if (line.isNote || line.topic === "accessories") return undefined;
	if (/^\d{1,2}\s?[x×]\s/i.test(line.value)) return undefined;
	// A system on a chip has none.
	if (words.none.test(line.value) || /^(?:soc|system[\s-]on[\s-](?:a[\s-])?chip)\b/i.test(line.value)) return undefined;
	// "Integrated in the chipset" stands over things that come from it.
	if (/\bint[eé]gr|\bfrom\b/i.test(line.label) && !/chipset\sint/i.test(line.label)) return undefined;
	if (words.picture.test(line.label) || words.sound.test(line.label) || words.network.test(line.label))
		return undefined;
	const isLabel =
		words.chipset.test(line.label) &&
		(line.topic === "chipset" ||
			((line.topic === undefined || line.topic === "processor") && /^chip\s?(?:set|satz)s?$/i.test(line.label)));
	const isSection = line.topic === "chipset";
	const isHead = line.from === "chipset" && line.isHead && words.chipset.test(line.value) && line.value.length < 60;
	const alone =
		/^\W{0,3}(?:\p{L}+\s){0,2}([A-Z]{1,3}\d{2,4}[A-Z]?)\s(?:[Ee]xpress\s)?(?:[Cc]hipset|[Cc]hipsatz)$/u.exec(
			line.value,
		)?.[1];
	if (alone !== undefined) return alone;
	const plain = line.value.replaceAll("*", "");
	const beside =
		/\bchip\s?set:?\s(?:\p{Lu}\p{L}+\s)?([A-Z]{1,3}\d{2,4}[A-Z]?)(?![\w.])/u.exec(plain) ??
		/(?<![\w.])(?!LGA)([A-Z]{1,3}\d{2,4}[A-Z]?)[\s-](?:[Cc]hipset|[Cc]hipsatz|[Cc]hipsätze)(?!\p{L})/u.exec(plain);
	if (beside && !line.isHead && line.topic !== "slots" && line.topic !== "storage") return beside[1];
	if (!isLabel && !isSection && !isHead) return undefined;
	const codes = eachOnce([...line.value.matchAll(code)].map(([, name = ""]) => name));
	if (codes.length === 1) return codes[0];
	if (codes.length > 1 || !isLabel || line.isHead) return undefined;
	const value = line.value
		.replace(/\b(?:express\s)?(?:chipset|chipsatz)\b/gi, "")
		.replace(/\s+/g, " ")
		.trim();
	return value !== "" && value.length <= 60 && !words.none.test(value) ? value : undefined;
}
