import { defineRule } from "../define-rule.ts";
import { cannotTell, fail, goodToKnow, type Outcome, pass } from "../outcome.ts";

/** Type, form, number and size of the memory modules against the board's slots. */
export const memoryModules = defineRule({
	id: "fit/memory-modules",
	scope: "board",
	label: "Memory",
	wayOut: "other memory",
	asks: "Do your memory modules go into this board?",
	why: "Each type of memory has its notch in another place, so it goes into no other type's slots. A module needs a slot of its own.",
	source: "board-manual-notches",
	severity: "stops",
	reads: ["board.memory.type", "memory.type"],
	mayRead: [
		"board.memory.slots",
		"memory.modules",
		"board.memory.maxGb",
		"memory.gbPerModule",
		"board.memory.maxGbPerModule",
		"processor.memory.types",
		"board.memory.form",
		"memory.form",
		"board.memory.registered",
		"memory.registered",
		"board.memory.errorCorrection",
		"memory.errorCorrection",
	],
	messages: {
		goesIn: ({ type }: { type: string }) => `Both are ${type}, and the modules find slots.`,
		otherType: ({ board, memory }: { board: string; memory: string }) =>
			`The board takes ${board}; your memory is ${memory}. One does not go into the other's slots.`,
		otherForm: ({ board, memory }: { board: string; memory: string }) =>
			`The board takes ${board} modules; yours are ${memory}.`,
		unusualForm: ({ form }: { form: string }) =>
			`Your modules are ${form}${form === "SO-DIMM" ? ", made for laptops" : ""}. A desktop board takes long ones (DIMM), and this board's page names no others.`,
		registered: () => "Your modules are registered, as servers use; an ordinary board does not take those.",
		maybeRegistered: () =>
			"Your modules correct errors (ECC). Whether they are registered ones, as servers use, is not known.",
		checksUnused: () => "Your modules correct errors (ECC). This board does not use that; they run as ordinary memory.",
		tooMany: ({ modules, slots }: { modules: number; slots: number }) =>
			`You have ${modules} modules; the board has ${slots} ${slots === 1 ? "slot" : "slots"}.`,
		tooLarge: ({ gb, maxGb }: { gb: number; maxGb: number }) =>
			`You have ${gb} GB; the board takes at most ${maxGb} GB.`,
		moduleTooLarge: ({ gbPerModule, mostGb }: { gbPerModule: number; mostGb: number }) =>
			`Your modules have ${gbPerModule} GB each; the board takes modules of at most ${mostGb} GB.`,
		needOpen: ({ types }: { types: readonly string[] }) =>
			`${types.join(" or ")}: what your processor works with. Buy memory of the type that the board takes.`,
		needEither: () => "DDR4 or DDR5: your memory must match what the board's page says.",
		need: ({ type, slots, gb }: { type: string; slots: number; gb: number }) =>
			[
				type,
				...(slots > 0 ? [`with at least ${slots} memory ${slots === 1 ? "slot" : "slots"}`] : []),
				...(gb > 0 ? [`for modules of ${gb} GB`] : []),
			]
				.join(", ")
				.concat("."),
	},
	advice: {
		otherType: otherMemory,
		otherForm: otherMemory,
		unusualForm: otherMemory,
		registered: otherMemory,
		maybeRegistered: () =>
			"Ask the seller, or read the label: RDIMM means registered, UDIMM means not. An ordinary board takes UDIMM only.",
		checksUnused: () => "If you want errors corrected, take a board and a processor whose pages say they do it.",
		tooMany: () => "Take a board with more memory slots, or fewer and larger modules.",
	},
	check(facts): Outcome {
		const [board, memory] = [facts["board.memory.type"], facts["memory.type"]];
		if (board !== memory) return fail("otherType", { board, memory });
		const [boardForm, form] = [facts["board.memory.form"], facts["memory.form"]];
		if (boardForm && form && boardForm !== form) return fail("otherForm", { board: boardForm, memory: form });
		// Common practice, no source: modules and slots of a desktop computer are DIMM where nothing else is said, and a
		// board that takes registered modules says so loudly.
		if (!boardForm && form && form !== "DIMM") return fail("unusualForm", { form });
		if (boardForm && boardForm !== "DIMM" && !form) return cannotTell(["memory.form"]);
		if (facts["memory.registered"] && !facts["board.memory.registered"]) return fail("registered");
		// Modules with error correction are sold both ways, so nothing can be taken for granted of them.
		const isChecking = facts["memory.errorCorrection"] === "full";
		const isOpen = facts["memory.registered"] === undefined && !facts["board.memory.registered"];
		const [slots, modules] = [facts["board.memory.slots"], facts["memory.modules"]];
		if (slots !== undefined && modules !== undefined && modules > slots) return fail("tooMany", { modules, slots });
		const [maxGb, gbPerModule] = [facts["board.memory.maxGb"], facts["memory.gbPerModule"]];
		const gb = (modules ?? 1) * (gbPerModule ?? 0);
		if (maxGb !== undefined && gb > maxGb) return fail("tooLarge", { gb, maxGb });
		const mostGb = facts["board.memory.maxGbPerModule"];
		if (mostGb !== undefined && gbPerModule !== undefined && gbPerModule > mostGb)
			return fail("moduleTooLarge", { gbPerModule, mostGb });
		if (slots === undefined || modules === undefined)
			return cannotTell([
				...(slots === undefined ? ["board.memory.slots"] : []),
				...(modules === undefined ? ["memory.modules"] : []),
			]);
		if (isChecking && isOpen) return cannotTell(["memory.registered"], "maybeRegistered");
		if (isChecking && facts["board.memory.errorCorrection"] === false) return goodToKnow("checksUnused");
		return pass("goesIn", { type: board });
	},
	needs: ({
		"memory.type": type,
		"memory.modules": modules,
		"memory.gbPerModule": gb,
		"processor.memory.types": types,
	}) => {
		// Memory that the processor cannot use has to go, so no board is looked for that takes it.
		if (type && (types === undefined || types.includes(type)))
			return { messageId: "need", data: { type, slots: modules ?? 0, gb: gb ?? 0 } };
		return types
			? { messageId: "needOpen", data: { types }, standsFor: ["need", "needOpen"] }
			: { messageId: "needEither", data: {}, standsFor: ["need"] };
	},
});

function otherMemory(): string {
	return "Take another board or other memory. Never force a module in: the notch must meet the slot.";
}
