import type { Board } from "../parts/board.ts";
import { withoutMarks } from "../parts/support-rows.ts";
import type { ReadAt, UnreadLine } from "./part-reading.ts";
import { supportTables, type TableRow } from "./support-table.ts";
import { textLines } from "./text-lines.ts";

/** One processor of a board maker's list. */
export interface SupportRow extends ReadAt {
	/** As the list prints it; of two columns the family stands before the model. */
	readonly processor: string;
	/** As the list prints it; no key where it says "all" or "first", and where the place is empty. */
	readonly fromVersion?: string;
	readonly note?: string;
	/** The list has a column of versions, and this row's place in it is empty or could not be told. */
	readonly versionOpen?: true;
}

export interface SupportListReading {
	readonly rows: readonly SupportRow[];
	/** Lines that gave no row: titles, groups, and processors that the list says do not run. */
	readonly unread: readonly UnreadLine[];
	/** Not all of the list is here: rows could not be told apart, or the page says that there are more. */
	readonly partial: boolean;
}

/** As many rows as a part's file holds. */
const mostRows = 5000;
const everyVersion = /^(?:all|alle|any|every|initial|first|erste|original|factory|ab werk)\b|^alle /i;
const empty = /^(?:|[-–—/.]+|n\/?a|tbd|\?)$/i;
const refused =
	/^(?:not supported|unsupported|no support|nicht unterstützt|no|nein|x|✗|✘|not compatible|coming soon|tba)$/i;
/** "1-50 of 312 entries", "page 1 of 7". */
const morePages =
	/(?<!\d)(\d{1,6})\s?(?:-|–|to|bis)\s?(\d{1,6})\s(?:of|von|\/)\s(\d{1,6})|(?:page|seite)\s(\d{1,6})\s(?:of|von|\/)\s(\d{1,6})|load more|show more|mehr (?:anzeigen|laden)/i;

/**
 * Rows of a pasted processor support list. Columns stand in any order and are found by their heads; a list without
 * heads gives no rows, since its watts might pass for versions. Time is linear in the length. Never throws.
 */
export function readSupportList(text: string): SupportListReading {
	const { lines, leftOut } = textLines(text);
	const { tableRows, unread, lost } = supportTables(lines);
	const rows: SupportRow[] = [];
	const others: UnreadLine[] = [...unread];
	for (const row of tableRows) {
		const listed = rowOf(row);
		if (listed) rows.push(listed);
		else others.push({ line: row.line, text: row.quote });
	}
	others.sort((one, other) => one.line - other.line);
	return {
		rows,
		unread: others,
		partial: leftOut > 0 || lost > 0 || others.some(({ text: other }) => tellsOfMore(other)),
	};
}

function rowOf({ processor, versions, hasVersions, note, line, quote }: TableRow): SupportRow | undefined {
	const name = withoutMarks(processor).slice(0, 120).trim();
	if (name === "" || !/\d/.test(name) || !/[\p{L}\d]{3}/u.test(name)) return undefined;
	if (versions.some((version) => refused.test(version.trim()))) return undefined;
	const told = [...new Set(versions.map((version) => version.trim()).filter((version) => !empty.test(version)))];
	const [version] = told;
	const isEvery = version !== undefined && everyVersion.test(version);
	// Two versions, or words where a version should be: a person has to look.
	const isVersion = told.length === 1 && version !== undefined && /\d/.test(version) && version.length <= 40;
	const words = [note, ...(isVersion || isEvery ? [] : told)].filter((one) => one !== undefined && one !== "");
	return {
		processor: name,
		...(isVersion && !isEvery ? { fromVersion: version } : {}),
		...(words.length > 0 ? { note: words.join("; ") } : {}),
		...(hasVersions && !isVersion && !isEvery ? { versionOpen: true as const } : {}),
		line,
		quote,
	};
}

function tellsOfMore(text: string): boolean {
	const found = morePages.exec(text);
	if (!found) return false;
	const [, from, to, all, page, pages] = found;
	if (all !== undefined) return Number(from) > 1 || Number(to) < Number(all);
	return pages === undefined || Number(page) !== 1 || Number(pages) > 1;
}

/** The rows of a list as a board's part holds them. "partial" where the list is not whole, so that an absence is none. */
export function supportListOf(reading: SupportListReading, date: string): NonNullable<Board["supportList"]> {
	const isCut = reading.rows.length > mostRows;
	return {
		readOn: date,
		...(reading.partial || isCut ? { partial: true } : {}),
		rows: reading.rows.slice(0, mostRows).map(({ processor, fromVersion, versionOpen, note }) => ({
			processor,
			...(fromVersion === undefined ? {} : { fromVersion }),
			...(note === undefined ? {} : { note: note.slice(0, 200) }),
			...(versionOpen ? { versionOpen } : {}),
		})),
	};
}
