// Remakes every generated page: the reviewed sheets in test/golden, the rule book, the screen and the pictures in README.md. CI fails when one lags.
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { bundle } from "./bundle.mjs";

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const scenarios = join(root, "data", "scenarios");
const golden = join(root, "test", "golden");
const pictures = "test/screens/pictures";

await bundle();
mkdirSync(golden, { recursive: true });
for (const file of readdirSync(scenarios).sort()) {
	const answers = join("data", "scenarios", file);
	const name = basename(file, ".json");
	for (const ending of ["md", "txt"])
		boardwalk(["sheet", "--answers", answers, "--to", join("test", "golden", `${name}.${ending}`), "--replace"]);
	writeFileSync(
		join(golden, `${name}.shortlist.json`),
		boardwalk(["shortlist", "--answers", answers, "--json"]).stdout,
	);
}
// A market without any board: the sheet then says what to look for.
writeFileSync(
	join(golden, "no-market.txt"),
	boardwalk(["sheet", "--answers", "data/scenarios/before-any-board.json", "--parts", "test/golden/no-parts.json"])
		.stdout,
);
writeFileSync(join(root, "src", "rules", "README.md"), boardwalk(["why", "all"]).stdout);
const home = mkdtempSync(join(tmpdir(), "boardwalk-docs-"));
try {
	writeReadme(home, await drawPictures());
} finally {
	rmSync(home, { recursive: true });
}

/** @param {string[]} args @param {string} [input] @param {Record<string, string>} [env] */
function boardwalk(args, input = "", env = {}) {
	const result = spawnSync(process.execPath, [join("bin", "boardwalk.js"), ...args], {
		cwd: root,
		encoding: "utf8",
		input,
		env: { ...process.env, ...env },
	});
	if (result.status === null || result.status > 1) throw new Error(`boardwalk ${args.join(" ")}: ${result.stderr}`);
	return result;
}

/**
 * Draws the screens that README.md shows, each from a real frame; pictures of no such screen go.
 *
 * @returns {Promise<{ name: string, title: string }[]>}
 */
async function drawPictures() {
	const { outputFiles } = await build({
		absWorkingDir: root,
		entryPoints: [`${pictures}/make.ts`],
		bundle: true,
		packages: "external",
		format: "esm",
		platform: "node",
		target: "node20",
		write: false,
	});
	const { status, stdout, stderr } = spawnSync(process.execPath, ["--input-type=module", "-", pictures], {
		cwd: root,
		encoding: "utf8",
		input: outputFiles[0]?.contents ?? "",
		// Only what is needed: with CI set Ink draws nothing until it ends. Colours are the sixteen with names.
		env: { PATH: process.env["PATH"] ?? "", NODE_ENV: "production", FORCE_COLOR: "1" },
	});
	if (status !== 0) throw new Error(`${pictures}/make.ts: ${stderr}`);
	/** @type {{ name: string, title: string }[]} */
	const made = JSON.parse(stdout);
	const files = made.map(({ name }) => `${name}.svg`);
	for (const file of readdirSync(join(root, pictures)))
		if (file.endsWith(".svg") && !files.includes(file)) rmSync(join(root, pictures, file));
	return made;
}

/**
 * Puts a screen of a real walk and the pictures between their marks in README.md.
 *
 * @param {string} home
 * @param {{ name: string, title: string }[]} made
 */
function writeReadme(home, made) {
	// A made-up person's walk, taken up where one wish is still open.
	const person = JSON.parse(readFileSync(join(root, "data", "scenarios", "quiet-desk.json"), "utf8"));
	delete person.answers["features/rear-usb-c"];
	const answers = join(home, "answers.json");
	writeFileSync(answers, JSON.stringify(person));
	const { stdout } = boardwalk(["--plain", "--answers", answers], "1\n", {
		HOME: home,
		XDG_STATE_HOME: join(home, "state"),
	});
	// The screen starts with the boards left, above the line that names the question.
	const start = stdout.lastIndexOf("\n> \n", stdout.indexOf("Features, question")) + 4;
	if (start < 4 || !stdout.includes("Features, question"))
		throw new Error("README.md: the screen to show was not reached");
	const path = join(root, "README.md");
	const keys = /^Keys in the walk\n([\s\S]*?)\n\n/m.exec(boardwalk(["--help"]).stdout)?.[1];
	if (!keys) throw new Error("--help has lost its keys");
	const shown = made.map(({ name, title }) => `![${title}](${pictures}/${name}.svg)`).join("\n\n");
	const withPictures = between(readFileSync(path, "utf8"), "pictures", `\n${shown}\n\n`);
	const withScreen = between(withPictures, "screen", fenced(stdout.slice(start).trim()));
	writeFileSync(path, between(withScreen, "keys", fenced(keys)));
}

/** @param {string} text */
function fenced(text) {
	return `\`\`\`text\n${text}\n\`\`\`\n`;
}

/** Markdown put between two marks of README.md. @param {string} readme @param {string} name @param {string} markdown */
function between(readme, name, markdown) {
	const marks = new RegExp(`(<!-- ${name}: made by npm run docs -->\\n)[\\s\\S]*?(<!-- end of ${name} -->)`);
	if (!marks.test(readme)) throw new Error(`README.md has lost the marks around its ${name}`);
	return readme.replace(marks, (_, before, after) => `${before}${markdown}${after}`);
}
