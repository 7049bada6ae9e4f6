/** Waits until something holds; gives up after some seconds, and says what it waited for. */
export async function waitUntil(holds: () => boolean): Promise<void> {
	const giveUpAt = Date.now() + 10_000;
	while (!holds()) {
		if (Date.now() > giveUpAt) throw new Error(`Waited in vain for: ${holds}`);
		await new Promise((resolve) => setTimeout(resolve, 2));
	}
}
