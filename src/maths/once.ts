/** Work that is done when it is first asked for, and then kept. */
export function once<T>(work: () => T): () => T {
	let known: { readonly value: T } | null = null;
	return () => {
		known ??= { value: work() };
		return known.value;
	};
}
