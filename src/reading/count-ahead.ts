import type { BoardTopic } from "./board-topics.ts";

const countedThing =
	/\bpci|m\.?2|sata|usb|hdmi|display|dvi|vga|d-sub|(?<![a-z])fan|argb|rgb|header|connector|pin|rj-?45|\blan\b|(?<![a-z])pump|thunderbolt/i;
const otherNoun = /^(?:ports?|headers?|sockets?|slots?|connectors?)\b/i;

/** A value with its count in front; `isOfLabel`: what is counted is the label itself. */
export interface CountedValue {
	readonly value: string;
	readonly isOfLabel: boolean;
}

/**
 * What is counted with its count in front: "HDMI: 1", "PCI Express 3.0 x16: 1 (x4 mode)", "HDMI x 1", "HDMI - 1" and
 * "1 HDMI" are all "1 x HDMI".
 */
export function countAhead(value: string, label: string, topic: BoardTopic | undefined): CountedValue {
	const plain = { value, isOfLabel: false };
	const isFan = /(?<!\p{L})(?:fan|pump)(?!\p{L})/iu.test(label);
	if ((topic === "memory" || topic === "processor" || topic === "size") && !isFan) return plain;
	const counted = (text: string): CountedValue => ({ value: text, isOfLabel: false });
	const ofLabel = (text: string): CountedValue => ({ value: text, isOfLabel: true });
	const [, thing, figure, rest] = /^(\D.{0,70}?)\s?[x×]\s?(\d{1,2})(\s?\([^)]*\))?$/u.exec(value) ?? [];
	// "PCIe 3.0 x4" and "Gen4 x4" are lanes, no counts.
	const isLanes = /\d\s?[x×]\s|\bpci|gen\s?\d$|\bm\.?2|(?<!(?:hdmi|displayport|dp|usb)\s)\d\.\d$/i.test(thing ?? "");
	if (thing !== undefined && countedThing.test(`${label} ${thing}`) && !isLanes)
		return counted(`${figure} x ${thing.trim()}${rest ?? ""}`);
	const dash = /^(\D.{0,70}?)\s[-–]\s(\d{1,2})$/u.exec(value);
	if (dash && countedThing.test(`${label} ${dash[1]}`)) return counted(`${dash[2]} x ${dash[1]?.trim()}`);
	// The name of a place or of a group is no thing.
	const isGroup = /\binternal\b|\bi\/o\b|\be\/s\b|on-?board|^(?:rear|back|front|connectors?|headers?)$/iu.test(label);
	const isThing =
		label !== "" && !isGroup && countedThing.test(label) && !/\bversion|\brev|\bgen(?:eration)?$/i.test(label);
	const told = /^(\d{1,2})(?:\s?[x×])?(?:\s?ports?)?(\s?(?:\(|,\s).*)?$/iu.exec(value);
	if (told && isThing && Number(told[1]) <= 24) return ofLabel(`${told[1]} x ${label}${told[2] ?? ""}`);
	const noun = /^(\d{1,2})(?:\s?[x×])?\s(.*)$/u.exec(value);
	const behind = noun?.[2] ?? "";
	if (
		noun &&
		isThing &&
		otherNoun.test(behind) &&
		!countedThing.test(behind.replace(otherNoun, "").replace(/header/gi, ""))
	)
		return ofLabel(`${noun[1]} x ${label} ${behind}`);
	const bare = /^(\d{1,2})\s(?=\p{L})(?!pin\b|x\s|ports?\b|phase|channel|ch\b|in\s)(.*)$/iu.exec(value);
	if (bare && topic !== undefined && topic !== "overview" && countedThing.test(bare[2] ?? ""))
		return counted(`${bare[1]} x ${bare[2]}`);
	return plain;
}
