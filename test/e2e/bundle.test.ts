import { execFile, spawn } from "node:child_process";
import {
	existsSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	symlinkSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { promisify } from "node:util";
import type { Metafile } from "esbuild";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { bundle } from "../../bin/dev/bundle.mjs";
import { packageFolders } from "../../bin/dev/licence-notices.mjs";
import { publishFiles } from "../../bin/dev/publish-files.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
const run = promisify(execFile);

let folder = "";
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), "bundle-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The packages that a program has in hand once `main.js` is loaded, without any `import()`. */
function packagesLoadedAtOnce(metafile: Metafile): string[] {
	const [entry] = Object.keys(metafile.outputs).filter((file) => file.endsWith("main.js"));
	const seen = new Set<string>();
	const visit = (file: string): void => {
		if (seen.has(file)) return;
		seen.add(file);
		for (const { path, kind } of metafile.outputs[file]?.imports ?? []) {
			if (kind === "import-statement" && path in metafile.outputs) visit(path);
		}
	};
	visit(entry ?? "no main.js");
	const outputs = Object.fromEntries(Object.entries(metafile.outputs).filter(([file]) => seen.has(file)));
	return namesOf(packageFolders({ inputs: metafile.inputs, outputs }));
}

const namesOf = (folders: string[]) => folders.map((path) => path.replace(/^.*node_modules\//, ""));

/** What the bundler put in, by package, and the JavaScript that came out. */
function contentsOf(outdir: string, metafile: Metafile) {
	const code = readdirSync(outdir)
		.filter((file) => file.endsWith(".js"))
		.map((file) => readFileSync(join(outdir, file), "utf8"));
	const inputs = Object.values(metafile.outputs).flatMap(({ inputs }) =>
		Object.entries(inputs).flatMap(([input, { bytesInOutput }]) => (bytesInOutput > 0 ? [input] : [])),
	);
	return { code: code.join("\n"), inputs, packages: namesOf(packageFolders(metafile)) };
}

function expectProductionOnly(outdir: string, metafile: Metafile): void {
	const { code, inputs, packages } = contentsOf(outdir, metafile);
	// Development React keeps a performance entry for every repaint.
	expect(code).not.toContain("performance.measure");
	expect(inputs.filter((input) => /\.development\.js$/.test(input))).toEqual([]);
	expect(packages).not.toContain("ws");
	expect(packages).not.toContain("react-devtools-core");
}

describe("the program's bundle", () => {
	let outdir = "";
	let metafile: Metafile;
	beforeAll(async () => {
		outdir = join(folder, "program");
		({ metafile } = await bundle({ outdir }));
	});

	test("loads neither Ink nor React before they are needed", () => {
		const atOnce = packagesLoadedAtOnce(metafile);
		for (const late of ["ink", "ink-select-input", "react", "yoga-layout"]) expect(atOnce).not.toContain(late);
	});

	test("holds production code only", () => expectProductionOnly(outdir, metafile));

	test("comes with the licence of each package in it, and of no other", () => {
		const notices = readFileSync(join(outdir, "NOTICES.txt"), "utf8");
		const named = [...notices.matchAll(/^(\S+) (\d+\.\d+\.\d+\S*)\nLicence: (.+)$/gm)].map(([, name]) => name);
		expect(named).toContain("zod");
		expect([...new Set(named)].sort()).toEqual([...new Set(contentsOf(outdir, metafile).packages)].sort());
		expect(notices).not.toContain("Licence: not stated");
		expect(notices).toMatch(/^zod .+\nLicence: MIT\n\nMIT License\n\nCopyright /m);
	});

	test("is one main.js, chunks and notices", () => {
		const others = readdirSync(outdir).filter((file) => !/^(main\.js|chunk-[A-Z0-9]+\.js|NOTICES\.txt)$/.test(file));
		expect(others).toEqual([]);
		expect(existsSync(join(outdir, "main.js"))).toBe(true);
	});
});

describe("a small program with a drawn part", () => {
	let program = "";
	let metafile: Metafile;
	beforeAll(async () => {
		program = join(folder, "sample");
		mkdirSync(program);
		symlinkSync(join(root, "node_modules"), join(program, "node_modules"));
		writeFileSync(join(program, "package.json"), '{ "type": "module" }');
		writeFileSync(
			join(program, "main.ts"),
			`import * as z from "zod";
			import facts from "./facts.json" with { type: "json" };
			const name = z.string().parse(facts.name);
			if (process.argv[2] === "draw") (await import("./drawn.tsx")).draw(name);
			else console.log("plain", name);`,
		);
		writeFileSync(join(program, "facts.json"), '{ "name": "Ada" }');
		writeFileSync(
			join(program, "drawn.tsx"),
			`import Conf from "conf";
			import { renderToString, Text } from "ink";
			import SelectInput from "ink-select-input";
			import { createElement } from "react";
			export function draw(name: string): void {
				const menu = createElement(SelectInput, { items: [{ label: name, value: 1 }], isFocused: false });
				console.log(renderToString(createElement(Text, null, "drawn ")), renderToString(menu), typeof Conf);
			}`,
		);
		({ metafile } = await bundle({ root: program, entry: "main.ts" }));
	});

	const start = (...words: string[]) =>
		run(process.execPath, [join(program, "dist/main.js"), ...words], { env: { ...process.env, DEV: "true" } });

	test("runs, also with DEV=true, which makes Ink look for its devtools", async () => {
		expect(await start()).toEqual({ stdout: "plain Ada\n", stderr: "" });
		const { stdout, stderr } = await start("draw");
		expect(stdout).toMatch(/drawn.*Ada.*function/s);
		expect(stderr).toBe("");
	});

	test("keeps the drawn part in a chunk that is loaded late", () => {
		expect(packagesLoadedAtOnce(metafile)).toEqual(["zod"]);
		expect(contentsOf(join(program, "dist"), metafile).packages).toEqual(expect.arrayContaining(["ink", "conf"]));
	});

	test("holds production code only", () => expectProductionOnly(join(program, "dist"), metafile));
});

describe("putting a build in place", () => {
	const file = (name: string, text = name) => ({ name, contents: Buffer.from(text) });
	const dist = (name: string) => join(folder, name);

	test("keeps what a running program may still load for an hour, then removes it", () => {
		const place = dist("stale");
		publishFiles(place, { files: [file("main.js"), file("chunk-old.js")], last: "main.js" });
		publishFiles(place, { files: [file("main.js"), file("chunk-new.js")], last: "main.js" });
		expect(existsSync(join(place, "chunk-old.js"))).toBe(true);

		const hourAgo = Date.now() - 3_600_001;
		writeFileSync(join(place, ".stale.json"), JSON.stringify({ "chunk-old.js": hourAgo }));
		publishFiles(place, { files: [file("main.js"), file("chunk-new.js")], last: "main.js" });
		expect(readdirSync(place).sort()).toEqual(["chunk-new.js", "main.js"]);
	});

	test("counts a chunk that comes back into use as new when it falls out again", () => {
		const place = dist("back");
		const build = (chunk: string) => publishFiles(place, { files: [file("main.js"), file(chunk)], last: "main.js" });
		build("chunk-a.js");
		writeFileSync(join(place, ".stale.json"), JSON.stringify({ "chunk-a.js": 1 }));
		build("chunk-a.js");
		build("chunk-b.js");
		expect(readdirSync(place).sort()).toEqual([".stale.json", "chunk-a.js", "chunk-b.js", "main.js"]);
	});

	test("leaves nothing of earlier builds where nothing is to be kept", () => {
		const place = dist("packing");
		publishFiles(place, { files: [file("main.js"), file("chunk-old.js")], last: "main.js" });
		publishFiles(place, { files: [file("main.js"), file("chunk-new.js")], last: "main.js", keepStaleMs: 0 });
		expect(readdirSync(place).sort()).toEqual(["chunk-new.js", "main.js"]);
	});

	test("shows a whole build at every moment while two others go on", async () => {
		const place = dist("busy");
		const published = pathToFileURL(join(root, "bin/dev/publish-files.mjs")).href;
		const builder = `
			import { publishFiles } from ${JSON.stringify(published)};
			const filler = "x".repeat(200_000);
			for (let round = 0; round < 60; round++) {
				const chunk = "chunk-" + process.argv[1] + (round % 3) + ".js";
				const files = [["main.js", chunk + filler + "END"], [chunk, filler + "END"]];
				publishFiles(process.argv[2], {
					files: files.map(([name, text]) => ({ name, contents: Buffer.from(text) })), last: "main.js",
				});
			}`;
		const ends = ["a", "b"].map((name) => {
			const child = spawn(process.execPath, ["--input-type=module", "-e", builder, name, place], { stdio: "inherit" });
			return new Promise((resolve) => child.once("close", resolve));
		});
		let running = true;
		const bothEnded = Promise.all(ends).finally(() => {
			running = false;
		});
		const seen = new Set<string>();
		const torn: string[] = [];
		while (running) {
			await new Promise((resolve) => setImmediate(resolve));
			if (!existsSync(join(place, "main.js"))) continue;
			const main = readFileSync(join(place, "main.js"), "utf8");
			const chunk = /^chunk-\w+\.js/.exec(main)?.[0] ?? "none";
			seen.add(chunk);
			if (!main.endsWith("END")) torn.push("main.js");
			if (!readFileSync(join(place, chunk), "utf8").endsWith("END")) torn.push(chunk);
		}
		expect(await bothEnded).toEqual([0, 0]);
		expect(torn).toEqual([]);
		expect(seen.size).toBeGreaterThan(1);
		expect(readdirSync(place).filter((name) => name.endsWith(".new"))).toEqual([]);
	});
});
