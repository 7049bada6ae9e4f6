/** A page taken apart: its tags in order, each with its attributes, and the text between them, decoded. */
export interface ReadHtml {
	readonly tags: readonly string[];
	readonly texts: readonly string[];
	/** What no page of ours has: a tag of another form, a sign left bare, an entity that none of ours is. */
	readonly faults: readonly string[];
}

const tagForm = /^<(?:!doctype html|\/?[a-z][a-z0-9]*(?: [a-zA-Z:-]+(?:="[^"<>]*")?)*(?: ?\/)?)>$/;
const entity = /&(?:#(\d+)|#x([0-9a-f]+)|(amp|lt|gt|quot));/gi;
const named: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"' };

/**
 * Reads a page far more strictly than a browser does, so that whatever it takes means the same to all. What stands in a
 * style counts as one text; the answers in a template are text like any other, for they are to hold no sign of HTML.
 */
export function readHtml(html: string): ReadHtml {
	const tags: string[] = [];
	const texts: string[] = [];
	const faults: string[] = [];
	for (const piece of html.split(/(<style>[^<]*<\/style>|<[^>]*>)/)) {
		if (piece.startsWith("<style>")) texts.push(piece);
		else if (piece.startsWith("<")) {
			if (!tagForm.test(piece)) faults.push(`a tag of another form: ${piece}`);
			tags.push(decoded(piece));
		} else {
			if (/[<>]/.test(piece)) faults.push(`a bare sign: ${piece}`);
			if (/&/.test(piece.replace(entity, ""))) faults.push(`an odd entity: ${piece}`);
			if (piece.trim() !== "") texts.push(decoded(piece).trim());
		}
	}
	return { tags, texts, faults };
}

function decoded(text: string): string {
	return text.replace(entity, (_, decimal?: string, hexadecimal?: string, name?: string) => {
		if (name !== undefined) return named[name.toLowerCase()] ?? "";
		return String.fromCodePoint(decimal === undefined ? Number.parseInt(hexadecimal ?? "", 16) : Number(decimal));
	});
}
