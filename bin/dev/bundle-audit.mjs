import { readFileSync } from "node:fs";
import { join } from "node:path";

/** Licences that let us pass a package on with its notice alone. */
const allowedLicences = ["MIT", "ISC", "BSD-2-Clause", "BSD-3-Clause", "0BSD", "Apache-2.0"];

/**
 * @typedef {object} Packed
 * @property {string} name
 * @property {string} version
 * @property {string} licence
 * @property {number} bytes in the bundle
 * @property {readonly string[]} broughtBy the shortest way of imports from ours to it: "src/ui", then packages
 * @property {string | null} reason why it is in the bundle
 */

/**
 * The packages that may be in the bundle.
 *
 * @typedef {object} Reasons
 * @property {Readonly<Record<string, string>>} reasons why, for those that our source imports
 * @property {Readonly<Record<string, readonly string[]>>} comeWith for those, which others they bring
 */

/**
 * What a bundle holds, from esbuild's account of it.
 *
 * @param {import("esbuild").Metafile} metafile
 * @param {string} root the folder that the account's paths start from
 * @param {Reasons} allowed as `bundle-reasons.json`
 * @returns {{ packages: readonly Packed[], ownBytes: number, faults: readonly string[] }}
 */
export function auditOf(metafile, root, allowed) {
	const reasons = reasonsOf(allowed);
	/** @type {Map<string, number>} */
	const bytesOf = new Map();
	for (const { inputs } of Object.values(metafile.outputs))
		for (const [input, { bytesInOutput }] of Object.entries(inputs)) {
			const owner = ownerOf(input);
			bytesOf.set(owner, (bytesOf.get(owner) ?? 0) + bytesInOutput);
		}
	const ways = waysTo(metafile);
	const packages = [...bytesOf]
		.filter(([owner, bytes]) => owner.startsWith("node_modules/") && bytes > 0)
		.map(([folder, bytes]) => {
			const { name, version, license } = JSON.parse(readFileSync(join(root, folder, "package.json"), "utf8"));
			const broughtBy = (ways.get(folder) ?? []).map((one) => one.replace(/^.*node_modules\//, ""));
			return { name, version, licence: license ?? "not stated", bytes, broughtBy, reason: reasons.get(name) ?? null };
		})
		.toSorted((one, other) => other.bytes - one.bytes);
	const inBundle = new Set(packages.map(({ name }) => name));
	const faults = [
		...packages
			.filter(({ reason }) => reason === null)
			.map(
				({ name, broughtBy }) => `${name} (brought by ${broughtBy.join(" > ")}) has no reason in bundle-reasons.json.`,
			),
		...packages
			.filter(({ licence }) => !allowedLicences.includes(licence))
			.map(({ name, licence }) => `${name} has the licence ${licence}, which nobody has looked at.`),
		...[...reasons.keys()]
			.filter((name) => !inBundle.has(name))
			.map((name) => `${name} has a reason in bundle-reasons.json and is not in the bundle.`),
	];
	const ownBytes = [...bytesOf].reduce(
		(sum, [owner, bytes]) => (owner.startsWith("node_modules/") ? sum : sum + bytes),
		0,
	);
	return { packages, ownBytes, faults };
}

/** @param {Reasons} allowed @returns {ReadonlyMap<string, string>} */
function reasonsOf({ reasons, comeWith }) {
	const brought = Object.entries(comeWith).flatMap(([name, others]) =>
		others.map((other) => /** @type {[string, string]} */ ([other, `comes with ${name}`])),
	);
	return new Map([...brought, ...Object.entries(reasons)]);
}

/** The package's folder that a file is from, or the folder of ours, such as "src/ui". @param {string} input */
function ownerOf(input) {
	const own = /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input)?.[0];
	return own ?? input.split("/").slice(0, 2).join("/");
}

/**
 * For each package the owners on the shortest way to it from the entry.
 *
 * @param {import("esbuild").Metafile} metafile
 */
function waysTo(metafile) {
	// What is imported with import() counts as an entry of its own for esbuild, and not here.
	const entries = Object.entries(metafile.outputs).flatMap(([output, { entryPoint }]) =>
		entryPoint && output.endsWith("main.js") ? [entryPoint] : [],
	);
	/** @type {Map<string, readonly string[]>} */
	const ways = new Map();
	/** @type {Map<string, readonly string[]>} */
	const seen = new Map(entries.map((entry) => [entry, []]));
	// A map hands out what is put in while it is gone through: this goes through the files breadth first.
	for (const [file, way] of seen) {
		const owner = ownerOf(file);
		if (!ways.has(owner)) ways.set(owner, way);
		const next =
			way.at(-1) === owner ? way : [...(way.length === 0 || owner.startsWith("node_modules/") ? way : []), owner];
		for (const { path } of metafile.inputs[file]?.imports ?? [])
			if (path in metafile.inputs && !seen.has(path)) seen.set(path, ownerOf(path) === owner ? way : next);
	}
	return ways;
}
