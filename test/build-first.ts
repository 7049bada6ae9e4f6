import { bundle } from "../bin/dev/bundle.mjs";

/** Builds once before all tests, since the end-to-end tests run the built program. */
export async function setup(): Promise<void> {
	await bundle();
}
