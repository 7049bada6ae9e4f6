import ts from "typescript";

/** A place where code reaches for something that makes its result depend on more than its arguments. */
export type ImpurePlace = { line: number; reachesFor: string };

const globals = new Set([
	"clearTimeout",
	"console",
	"crypto",
	"fetch",
	"globalThis",
	"performance",
	"process",
	"Promise",
	"queueMicrotask",
	"require",
	"setImmediate",
	"setInterval",
	"setTimeout",
]);
const properties = new Set(["Date.now", "Math.random"]);

/**
 * Lists where a source text reaches for the clock, chance, the process, the console or a later moment. Words in
 * comments, in strings and after a dot do not count.
 *
 * @param file its name, for the kind of syntax it is in
 * @param text the source
 */
export function impurePlaces(file: string, text: string): ImpurePlace[] {
	const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
	const places: ImpurePlace[] = [];
	const visit = (node: ts.Node): void => {
		const reachesFor = impurityOf(node);
		if (reachesFor) {
			places.push({ line: source.getLineAndCharacterOfPosition(node.getStart()).line + 1, reachesFor });
		}
		ts.forEachChild(node, visit);
	};
	visit(source);
	return places;
}

function impurityOf(node: ts.Node): string | undefined {
	if (node.kind === ts.SyntaxKind.AsyncKeyword) return "async";
	if (ts.isAwaitExpression(node) || (ts.isForOfStatement(node) && node.awaitModifier)) return "await";
	if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) return "import()";
	if (ts.isPropertyAccessExpression(node) && properties.has(node.getText())) return node.getText();
	if (isDateOfNow(node)) return "the date of now";
	if (ts.isIdentifier(node) && globals.has(node.text) && !isNameOfMember(node)) return node.text;
	return undefined;
}

/** `new Date()`, and `Date()` whatever is passed to it. */
function isDateOfNow(node: ts.Node): boolean {
	if (ts.isNewExpression(node)) return node.expression.getText() === "Date" && !node.arguments?.length;
	return ts.isCallExpression(node) && node.expression.getText() === "Date";
}

/** `process` in `step.process`, `{ process: 1 }` and `type Step = { process: string }`. */
function isNameOfMember(node: ts.Identifier): boolean {
	const { parent } = node;
	if (ts.isQualifiedName(parent)) return parent.right === node;
	return "name" in parent && parent.name === node && !ts.isShorthandPropertyAssignment(parent);
}
