/**
 * How the sheet looks as a page. The letters are of a family that nearly every system has, or one of the same widths, so
 * that what fits on a sheet of paper here fits elsewhere. Printed, the two pages to take along have letters of 11 points,
 * the annex of 10.
 */
export const htmlStyle = `
:root {
	color-scheme: light dark;
	--paper: #fcfbf7;
	--ink: #1c1d1f;
	--soft: #55565a;
	--rule: #8b8a84;
}
@media screen and (prefers-color-scheme: dark) {
	:root {
		--paper: #17191b;
		--ink: #e6e4de;
		--soft: #b1b0aa;
		--rule: #74746f;
	}
}
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body {
	margin: 0;
	background: var(--paper);
	color: var(--ink);
	font: 1rem/1.5 Arial, Helvetica, "Liberation Sans", sans-serif;
	overflow-wrap: anywhere;
}
main { max-width: 46rem; margin: 0 auto; padding: 1.5rem 1rem 4rem; }
h1, h2, h3, h4 { line-height: 1.25; text-wrap: balance; }
h1 { margin: 0 0 0.75rem; font-size: 1.75rem; font-weight: 700; }
h2 { margin: 3rem 0 1rem; padding-top: 0.5rem; border-top: 3px solid var(--ink); font-size: 1.375rem; }
h3 { margin: 1.75rem 0 0.5rem; font-size: 1.0625rem; }
h4 { margin: 1.25rem 0 0.25rem; font-size: 1rem; }
p { margin: 0 0 0.5rem; }
p:not([lang]) + p[lang] { margin-top: 1rem; }
ul { margin: 0 0 0.75rem; padding: 0; list-style: none; }
li { margin: 0 0 0.375rem; padding-left: 1.5rem; position: relative; }
li:not([class])::before { content: "\\2013"; position: absolute; left: 0.375rem; color: var(--soft); }
.labelled { padding-left: 0; }
.why { color: var(--soft); }
.box { padding-left: 0; }
.box label { display: block; padding-left: 1.5rem; }
.box input {
	appearance: none;
	position: absolute;
	left: 0;
	top: 0.25em;
	width: 1em;
	height: 1em;
	margin: 0;
	border: 1.5px solid var(--ink);
	border-radius: 0;
	background: none;
}
.box input:checked::before {
	content: "";
	position: absolute;
	left: 0.25em;
	top: 0;
	width: 0.3em;
	height: 0.6em;
	border: solid var(--ink);
	border-width: 0 2px 2px 0;
	transform: rotate(40deg);
}
:focus-visible { outline: 2px solid var(--ink); outline-offset: 2px; }
.wide { margin: 0.75rem 0 1rem; overflow-x: auto; }
.wide svg { display: block; width: 100%; min-width: 36rem; height: auto; font: 14px Arial, Helvetica, "Liberation Sans", sans-serif; }
pre { margin: 0; font: 0.875rem/1.35 "Liberation Mono", "Courier New", monospace; }
table { width: 100%; min-width: 28rem; border-collapse: collapse; }
th, td { padding: 0.25rem 0.75rem 0.25rem 0; border-bottom: 1px solid var(--rule); text-align: left; vertical-align: top; }
thead th { border-bottom: 2px solid var(--ink); }
tbody th { font-weight: 400; }

@page {
	margin: 12mm;
	@bottom-right { content: counter(page) " of " counter(pages); font: 8pt Arial, Helvetica, "Liberation Sans", sans-serif; }
}
@media print {
	:root { --paper: #fff; --ink: #000; --soft: #333; --rule: #777; }
	body { background: none; font-size: 11pt; line-height: 1.2; }
	main { max-width: none; padding: 0; }
	.page + .page { break-before: page; }
	.annex { font-size: 10pt; }
	h1 { margin: 0 0 1mm; font-size: 15pt; }
	h2 { margin: 2mm 0 1mm; padding-top: 1mm; border-top-width: 0.6mm; font-size: 12.5pt; }
	.page + .page h2 { margin-top: 0; }
	h3 { margin: 2mm 0 0.5mm; font-size: 1em; }
	h4 { margin: 1.2mm 0 0.3mm; font-size: 1em; }
	.annex h3 { margin-top: 3.5mm; }
	.annex h4 { margin-top: 2mm; }
	h1, h2, h3, h4 { break-after: avoid; }
	p, li { margin: 0 0 0.4mm; break-inside: avoid; orphans: 2; widows: 2; }
	p:not([lang]) + p[lang] { margin-top: 1.5mm; }
	ul { margin: 0; }
	li, .box label { padding-left: 5mm; }
	.box, .labelled { padding-left: 0; }
	li:not([class])::before { left: 1mm; }
	.box input { top: 0.15em; width: 0.85em; height: 0.85em; border-width: 0.3mm; }
	.wide { margin: 1mm 0; overflow: visible; break-inside: avoid; }
	.wide svg { width: 100%; min-width: 0; max-height: 66mm; }
	pre { font-size: 8.5pt; white-space: pre; }
	table { min-width: 0; }
	thead { display: table-header-group; }
	tr { break-inside: avoid; }
	th, td { padding: 0.4mm 2mm 0.4mm 0; border-bottom-width: 0.15mm; }
}
`;
