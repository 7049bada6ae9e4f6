import { markupSafe } from "./markup-safe.ts";

/**
 * One HTML file that stands alone: no script, no address outside, and a content policy that forbids both.
 *
 * @param head further lines of the head
 */
export function htmlPage(title: string, style: string, body: readonly string[], head: readonly string[] = []): string {
	return [
		"<!doctype html>",
		'<html lang="en">',
		"<head>",
		'<meta charset="utf-8">',
		`<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'">`,
		'<meta name="viewport" content="width=device-width, initial-scale=1">',
		...head,
		`<title>${markupSafe(title)}</title>`,
		`<style>${style}</style>`,
		"</head>",
		"<body>",
		...body,
		"</body>",
		"</html>",
		"",
	].join("\n");
}
