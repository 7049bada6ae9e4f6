import { existsSync, readdirSync, readFileSync } from "node:fs";

const folder = "test/fuzz/seeds";

/** Texts that a parser once failed with, each as a JSON string, so that every sign of it is seen. */
export function seedsOf(parser: string): readonly { readonly file: string; readonly text: string }[] {
	const inside = `${folder}/${parser}`;
	if (!existsSync(inside)) return [];
	return readdirSync(inside)
		.filter((name) => name.endsWith(".txt"))
		.sort()
		.map((name) => ({ file: name, text: JSON.parse(readFileSync(`${inside}/${name}`, "utf8")) as string }));
}
