import { existsSync, mkdirSync } from "node:fs";
import { dirname, resolve } from "node:path";

/**
 * Makes a folder and those above it that are missing. Node's own way to do so tries for ever, and hears no Ctrl+C, where
 * a folder is there that can hold no other, such as /proc.
 *
 * @param mode who may enter the folders that are made
 * @throws the system's error
 */
export function makeFolder(folder: string, mode: number): void {
	const missing: string[] = [];
	for (let at = resolve(folder); !existsSync(at) && dirname(at) !== at; at = dirname(at)) missing.unshift(at);
	for (const one of missing) {
		try {
			mkdirSync(one, { mode });
		} catch (error) {
			// Another program may have made it just now.
			if ((error as { code?: string }).code !== "EEXIST") throw error;
		}
	}
}
