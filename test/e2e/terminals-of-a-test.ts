import { afterEach, beforeEach } from "vitest";
import { type Home, newHome, RealTerminal, type StartOptions } from "./real-terminal.ts";

/** A home and terminals for each test of a file; whatever a test leaves running is ended after it. */
export interface TestTerminals {
	/** The home of the test that is running. */
	readonly home: () => Home;
	readonly start: (options?: Omit<StartOptions, "home">) => RealTerminal;
}

export function terminalsOfATest(): TestTerminals {
	let home: Home;
	const running: RealTerminal[] = [];
	beforeEach(() => {
		home = newHome();
	});
	afterEach(async () => {
		for (const terminal of running.splice(0)) await terminal.kill();
		home.remove();
	});
	return {
		home: () => home,
		start: (options = {}) => {
			const terminal = new RealTerminal({ home, ...options });
			running.push(terminal);
			return terminal;
		},
	};
}
