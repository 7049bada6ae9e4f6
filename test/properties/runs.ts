/** How often a property is tried; RUNS asks for so many times more, as for a long search, or for a part of it. */
export const runs = (usual: number): { readonly numRuns: number } => ({
	numRuns: Math.ceil(usual * Number(process.env["RUNS"] ?? 1)),
});
