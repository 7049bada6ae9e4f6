/** The parts of a build as words in a sentence. */
export const partWords: Readonly<Record<string, string>> = {
	processor: "processor",
	case: "case",
	graphicsCard: "graphics card",
	memory: "memory",
	cooler: "cooler",
	supply: "power supply",
};
