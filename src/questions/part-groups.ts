import type { PcCase } from "../parts/case.ts";
import type { Cooler } from "../parts/cooler.ts";
import type { Drive } from "../parts/drive.ts";
import type { MemoryKit } from "../parts/memory-kit.ts";
import type { AnyPart } from "../parts/part-kinds.ts";
import type { Processor } from "../parts/processor.ts";
import { boardForms } from "../parts/vocabulary.ts";
import type { Option } from "./define-question.ts";
import type { PickedKind } from "./part-summary.ts";

/** Heading under which a part stands in a long list, so that a person need not read all of it; none where lists are short. */
export function partGroup(kind: PickedKind, part: AnyPart): string | undefined {
	return groups[kind]?.(part as never);
}

const groups: { readonly [K in PickedKind]?: (part: never) => string } = {
	processor: ({ socket }: Processor) => (socket ? `Socket ${socket}` : "Socket not known"),
	case: ({ boardForms: forms }: PcCase) => {
		const largest = forms && boardForms.findLast((form) => forms.includes(form));
		return largest ? `Takes boards up to ${largest}` : "Board sizes not known";
	},
	memory: ({ type }: MemoryKit) => type ?? "Type not known",
	cooler: ({ kind }: Cooler) =>
		kind === "liquid" ? "Liquid: a pump and hoses" : kind === "air" ? "Air: metal and a fan" : "Kind not known",
	drive: ({ shape }: Drive) => (shape === "M.2" ? "Sticks (M.2)" : shape ? `Drives of ${shape}` : "Shape not known"),
};

/** Lines put together by heading, headings in the order they first appear. */
export function byGroup(options: readonly Option[]): readonly Option[] {
	const names = [...new Set(options.map(({ group }) => group))];
	return names.flatMap((name) => options.filter(({ group }) => group === name));
}
