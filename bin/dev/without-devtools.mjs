/**
 * Leaves out what Ink loads only when DEV=true is set: React's devtools, and the web socket package they need.
 *
 * @type {import("esbuild").Plugin}
 */
export const withoutDevtools = {
	name: "without-devtools",
	setup(build) {
		const nothing = { contents: "export default {};", loader: /** @type {const} */ ("js") };
		build.onLoad({ filter: /[\\/]node_modules[\\/]ink[\\/]build[\\/]devtools\.js$/ }, () => nothing);
		build.onResolve({ filter: /^react-devtools-core$/ }, ({ path }) => ({ path, namespace: "left-out" }));
		build.onLoad({ filter: /.*/, namespace: "left-out" }, () => nothing);
	},
};
