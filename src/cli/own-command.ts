import { basename, relative } from "node:path";

/** How a person would call this program again, the way they called it now. */
export function ownCommand(argv: readonly string[], environment: NodeJS.ProcessEnv, folder: string): string {
	if (environment["npm_lifecycle_event"] === "start") return "npm start --";
	const script = argv[1] ?? "boardwalk";
	if (basename(script) === "boardwalk") return "boardwalk";
	const near = relative(folder, script);
	return `node ${near.startsWith("..") ? script : near}`;
}
