import type { BoardLine } from "./board-lines.ts";

const socketLine = /^\W{0,3}(?:\d{1,2}\s?[x×]\s)?(?:\S+\s){0,2}?M\.?2(?:[_A-Z]|\b)/i;
const socketName = /\bM\.?2(?:_[A-Z]?\d{1,2}|[A-Z]\d?)(?:_[A-Z]{2,8})?(?!\w)/i;
/** "Supports type 2260/2280", "Interface: PCIe 4.0 x4", "9000 series processors support PCIe 5.0 x4 mode". */
const goesOn =
	/^[\W_]*(?:[\p{L}\d®™&,./\s-]{0,70}\s)?(?:supports?|supported|unterstützt|unterstützen|types?|typ|interface|form\sfactor|key|lengths?)\b/iu;
const tellsSocket =
	/\bpci[\s-]?e(?:xpress)?\s?(?:gen\.?\s?)?\d|\bnvme\b|(?<!\d)(?:16|22|25)(?:30|42|60|80|110)(?!\d)|\bsata\b.*\b(?:ssd|modes?)\b/i;
/** A line further below belongs to something else; own convention. */
const nearest = 4;

/**
 * Lines in which what a line tells of an M.2 socket goes on in those below it. Of a socket with a name each of these
 * is a line on this socket, so that the best of several processors can be taken; else they are joined to it.
 */
export function continuedLines(lines: readonly BoardLine[]): readonly BoardLine[] {
	const found: BoardLine[] = [];
	let socket: number | undefined;
	for (const line of lines) {
		const above = socket === undefined ? undefined : found[socket];
		if (above && socket !== undefined && isContinuation(line, above)) {
			const name = socketName.exec(above.value)?.[0] ?? socketName.exec(above.label)?.[0];
			const told = line.value.replace(/\bM\.2\s(?=types?\b|ssd|form)/gi, "");
			if (name !== undefined) found.push({ ...line, value: `${name} slot (${told})` });
			else {
				found[socket] = { ...above, value: `${above.value.replace(/[:：]\s*$/, "")}, ${told}` };
				// It is read with the line above.
				found.push({ ...line, isHead: true });
			}
			continue;
		}
		if (isSocket(line)) socket = found.length;
		else if (!line.isHead) socket = undefined;
		found.push(line);
	}
	return found;
}

function isSocket({ label, value, isHead, isNote, topic }: BoardLine): boolean {
	if (isHead || isNote || topic === "accessories" || topic === "overview") return false;
	return socketLine.test(value) || (/^M\.?2(?:[_A-Z]|\b)/i.test(label) && socketLine.test(`${label} ${value}`));
}

function isContinuation(line: BoardLine, above: BoardLine): boolean {
	return (
		!line.isHead &&
		!line.isNote &&
		line.topic === above.topic &&
		line.block === above.block &&
		line.line > above.line &&
		line.line - above.line <= nearest &&
		!/^\W{0,3}\d{1,2}\s?[x×]\s/i.test(line.value) &&
		!socketName.test(line.value) &&
		goesOn.test(line.value) &&
		tellsSocket.test(line.value)
	);
}
