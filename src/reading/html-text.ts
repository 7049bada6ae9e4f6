/** The text of HTML, and which of its lines (from 1) are headings or names of columns. */
export interface HtmlText {
	readonly text: string;
	readonly kinds: ReadonlyMap<number, "head" | "columns">;
}

const words = (list: string): ReadonlySet<string> => new Set(list.split(" "));

/** Elements that begin and end a line. */
const blocks = words(
	"address article aside blockquote body caption center dd details dialog div dl dt fieldset figcaption figure footer " +
		"form h1 h2 h3 h4 h5 h6 header hr html legend li main nav ol p pre section summary table tbody tfoot thead tr ul",
);
const heads = words("caption h1 h2 h3 h4 h5 h6 legend summary");
/** Elements whose content is no text of the page. */
const unseen = words("canvas iframe noscript object script style svg template title");
/** Elements within a line. Any other name between angle brackets is text, as in "<none>". */
const inline = words(
	"a abbr area audio b base bdi bdo big br button cite code col colgroup data del em embed font head i img input ins kbd " +
		"label link map mark meta nobr optgroup option output param picture q s samp select small source span strike strong " +
		"sub sup td textarea th time tt u var video wbr",
);
/** Elements that pages set apart by style alone, so that their texts would be glued. */
const setApart = words("a b button label span strong");
/** Above this many block elements a line, line ends are only layout of the source; own convention. */
const blocksPerLine = 0.25;
const longestName = 40;
/** Longer rows are broken, and no further line of a cell begins with more tabs; own conventions, for rubbish. */
const longestRow = 20_000;
const mostBorders = 20;

const raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const lowered = "₀₁₂₃₄₅₆₇₈₉";

/**
 * The text of HTML by its block elements: a row of a table is a line with tabs between its cells, a further line of a
 * cell begins with the tabs before it. Raised digits stay raised, so that a footnote's mark joins no number.
 *
 * Nothing if there is no element in it. Where elements are few among many lines, the lines stay as they are.
 */
export function textOfHtml(source: string): HtmlText | undefined {
	const tags = source.match(/<\/?[a-z][a-z0-9]{0,9}(?=[\s/>])/gi) ?? [];
	const names = tags.map((tag) => tag.replace(/^<\/?/, "").toLowerCase());
	const count = names.filter((name) => blocks.has(name) || name === "td" || name === "th").length;
	if (count === 0 && !names.some((name) => inline.has(name) || unseen.has(name))) return undefined;
	if (!source.includes(">")) return undefined;
	const filled = source.match(/^[^\S\n]*\S/gm)?.length ?? 0;
	return writeText(source, count < filled * blocksPerLine);
}

interface Tag {
	readonly name: string;
	readonly closes: boolean;
	/** Place behind the tag. */
	readonly end: number;
}

function writeText(source: string, keepLineEnds: boolean): HtmlText {
	const lines: string[] = [];
	const kinds = new Map<number, "head" | "columns">();
	const readTag = tagReader(source);
	const closers = new Map<string, boolean>();
	let line = "";
	let headDepth = 0;
	let lineIsHead = false;
	/** Whether there is text behind the last border, and whether the next text begins a line. */
	let written = false;
	let breakDue = false;
	/** Cells of the row so far, one count a table, and how many of the row are header cells. */
	const rows: { cells: number; headers: number }[] = [];
	let term = false;
	let preformatted = 0;
	let script = "";
	let behindInline = false;
	let quietBreak = false;

	const endLine = () => {
		const shown = line.trimEnd();
		if (shown.trim() !== "" || keepLineEnds) {
			lines.push(shown);
			if (lineIsHead) kinds.set(lines.length, "head");
		}
		line = "";
		written = false;
		breakDue = false;
		lineIsHead = false;
	};
	const blockBorder = () => {
		if (written) breakDue = true;
		behindInline = false;
	};
	const cellsBefore = () => {
		const row = rows.at(-1);
		if (row) return Math.min(mostBorders, Math.max(0, row.cells - 1));
		return term ? 1 : 0;
	};
	const say = (text: string) => {
		let shown = decodeEntities(text);
		if (script !== "") shown = shown.replace(/[0-9]/g, (digit) => script[Number(digit)] ?? digit);
		const parts = keepLineEnds || preformatted > 0 ? shown.split("\n") : [shown.replace(/\s+/g, " ")];
		parts.forEach((part, index) => {
			if (index > 0) {
				endLine();
				if (!keepLineEnds) line = "\t".repeat(cellsBefore());
			}
			if (part.trim() === "") {
				if (part !== "" && written && !breakDue) line += " ";
				else if (part !== "" && keepLineEnds && line === "") line = part;
				return;
			}
			if (breakDue) {
				endLine();
				line = "\t".repeat(cellsBefore());
			}
			if (headDepth > 0) lineIsHead = true;
			const layout = keepLineEnds || preformatted > 0 || written;
			line += layout ? part : part.trimStart();
			written = true;
		});
	};
	const border = () => {
		if (line.length > longestRow) endLine();
		line = line.endsWith(" ") ? `${line.slice(0, -1)}\t` : `${line}\t`;
		written = false;
		breakDue = false;
	};
	const endRow = () => {
		const row = rows.at(-1);
		if (!row) return;
		if (line.trim() !== "") {
			const allHeaders = row.cells > 0 && row.headers === row.cells;
			endLine();
			if (allHeaders) kinds.set(lines.length, row.cells === 1 ? "head" : "columns");
		} else if (!keepLineEnds) line = "";
		row.cells = 0;
		row.headers = 0;
	};
	const tagMet = ({ name, closes }: Tag) => {
		if (name === "br") {
			if (headDepth > 0 || quietBreak) say(" ");
			else if (written) breakDue = true;
			return;
		}
		if (name === "sup" || name === "sub") {
			script = closes ? "" : name === "sup" ? raised : lowered;
			return;
		}
		if (name === "table") {
			blockBorder();
			if (closes) {
				endRow();
				rows.pop();
			} else if (rows.length < 50) rows.push({ cells: 0, headers: 0 });
			return;
		}
		// Rows may be pasted without their table.
		if (rows.length === 0 && !closes && (name === "tr" || name === "td")) rows.push({ cells: 0, headers: 0 });
		if (name === "tr") {
			if (rows.length > 1 && !closes && !written) return;
			endRow();
			blockBorder();
			return;
		}
		if (name === "td" || name === "th") {
			quietBreak = name === "th" && !closes;
			const row = rows.at(-1);
			if (closes || !row) {
				if (!row) blockBorder();
				return;
			}
			if (row.cells > 0) border();
			row.cells++;
			if (name === "th") row.headers++;
			return;
		}
		if (name === "dt" || name === "dd") {
			quietBreak = name === "dt" && !closes;
			if (closes) return blockBorder();
			if (name === "dd" && term && written && !line.includes("\t")) return border();
			blockBorder();
			term = true;
			if (name === "dt" && line !== "") endLine();
			return;
		}
		if (name === "dl") term = false;
		if (name === "pre") preformatted = Math.max(0, preformatted + (closes ? -1 : 1));
		if (blocks.has(name)) {
			blockBorder();
			if (heads.has(name)) {
				if (breakDue) endLine();
				headDepth = Math.max(0, headDepth + (closes ? -1 : 1));
			}
			if (name === "li" && !closes) {
				say("- ");
				written = false;
			}
			return;
		}
		if (setApart.has(name)) {
			if (!closes && behindInline && written && !line.endsWith(" ")) line += " ";
			behindInline = closes;
		}
	};

	let at = 0;
	while (at < source.length) {
		const next = source.indexOf("<", at);
		const stop = next < 0 ? source.length : next;
		if (stop > at) {
			say(source.slice(at, stop));
			behindInline = false;
		}
		if (next < 0) break;
		const aside = behindAside(source, next, closers);
		if (aside !== undefined) {
			at = aside;
			continue;
		}
		const tag = readTag(next);
		if (tag === undefined) {
			say("<");
			at = next + 1;
			continue;
		}
		at = tag.end;
		if (unseen.has(tag.name)) {
			if (!tag.closes) at = behindCloser(source, at, `</${tag.name}`, closers) ?? at;
		} else tagMet(tag);
	}
	if (line.trim() !== "") endLine();
	return { text: lines.join("\n"), kinds };
}

/** Place behind a comment, a declaration or a processing instruction, if one begins here. */
function behindAside(source: string, start: number, closers: Map<string, boolean>): number | undefined {
	const next = source[start + 1];
	if (source.startsWith("<!--", start)) return behindCloser(source, start + 4, "-->", closers) ?? start + 4;
	if (next !== "!" && next !== "?") return undefined;
	return behindCloser(source, start + 2, ">", closers);
}

/** Place behind the closing text. Where there is none ahead this is remembered, so that the search is made once. */
function behindCloser(
	source: string,
	start: number,
	closer: string,
	closers: Map<string, boolean>,
): number | undefined {
	if (closers.get(closer) === false) return undefined;
	const search = new RegExp(closer, "gi");
	search.lastIndex = start;
	const found = search.exec(source);
	if (!found) {
		closers.set(closer, false);
		return undefined;
	}
	const end = found.index + closer.length;
	if (closer.endsWith(">")) return end;
	const bracket = source.indexOf(">", end);
	return bracket < 0 ? source.length : bracket + 1;
}

/** Reads tags from left to right. Time is linear in all: scans that came to nothing have one common allowance. */
function tagReader(source: string): (start: number) => Tag | undefined {
	let patience = source.length;
	const last = source.lastIndexOf(">");
	const head = /<(\/?)([a-z][a-z0-9:-]*)(?=[\s/>])/iy;
	return (start) => {
		if (start > last) return undefined;
		head.lastIndex = start;
		const found = head.exec(source);
		const name = found?.[2]?.toLowerCase();
		if (!found || name === undefined || name.length > longestName) return undefined;
		if (!blocks.has(name) && !inline.has(name) && !unseen.has(name) && !/[:-]/.test(name)) return undefined;
		const from = head.lastIndex;
		let end = -1;
		if (patience > 0) {
			let at = from;
			let quote = "";
			for (; at < source.length; at++) {
				const letter = source[at];
				if (quote !== "") {
					if (letter === quote) quote = "";
				} else if (letter === '"' || letter === "'") quote = letter;
				else if (letter === ">") {
					end = at;
					break;
				} else if (letter === "<") break;
			}
			if (end < 0) patience -= at - from;
		}
		if (end < 0) end = source.indexOf(">", from);
		return { name, closes: found[1] === "/", end: end + 1 };
	};
}

/** From memory: names of characters in HTML that specification pages use. Letters with an accent are put together. */
const named: Readonly<Record<string, string>> = {
	amp: "&",
	apos: "'",
	bdquo: "„",
	bull: "•",
	copy: "©",
	deg: "°",
	emsp: " ",
	ensp: " ",
	euro: "€",
	frac12: "½",
	frac14: "¼",
	frac34: "¾",
	ge: "≥",
	gt: ">",
	hellip: "…",
	laquo: "«",
	ldquo: "“",
	le: "≤",
	lrm: "",
	lsquo: "‘",
	lt: "<",
	mdash: "—",
	micro: "µ",
	middot: "·",
	minus: "−",
	nbsp: " ",
	ndash: "–",
	ohm: "Ω",
	plusmn: "±",
	Prime: "″",
	prime: "′",
	quot: '"',
	raquo: "»",
	rdquo: "”",
	reg: "®",
	rlm: "",
	rsquo: "’",
	sbquo: "‚",
	shy: "",
	sup1: "¹",
	sup2: "²",
	sup3: "³",
	szlig: "ß",
	thinsp: " ",
	times: "×",
	trade: "™",
	zwj: "",
	zwnj: "",
	aelig: "æ",
	AElig: "Æ",
	oslash: "ø",
	Oslash: "Ø",
	oelig: "œ",
	OElig: "Œ",
};
const accents: Readonly<Record<string, string>> = {
	acute: "\u0301",
	caron: "\u030c",
	cedil: "\u0327",
	circ: "\u0302",
	grave: "\u0300",
	ring: "\u030a",
	tilde: "\u0303",
	uml: "\u0308",
};

/** Entities with their semicolon as characters, once. An unknown one stays as it is; line ends and tabs become spaces. */
export function decodeEntities(text: string): string {
	return text.replace(
		/&(?:#(\d{1,7})|#[xX]([0-9a-fA-F]{1,6})|([A-Za-z][A-Za-z0-9]{1,9}));/g,
		(whole, ten, hex, name) => {
			if (name !== undefined) {
				const plain = Object.hasOwn(named, name) ? named[name] : undefined;
				if (plain !== undefined) return plain;
				const accent = Object.hasOwn(accents, name.slice(1)) ? accents[name.slice(1)] : undefined;
				return accent === undefined ? whole : `${name[0]}${accent}`.normalize("NFC");
			}
			const code = ten !== undefined ? Number(ten) : Number.parseInt(hex, 16);
			if (code < 32 || (code >= 0x7f && code < 0xa0) || code > 0x10ffff || (code >= 0xd800 && code <= 0xdfff))
				return " ";
			return code === 0x2028 || code === 0x2029 ? " " : String.fromCodePoint(code);
		},
	);
}
