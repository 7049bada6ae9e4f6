import type { PartReading, ReadKind } from "../reading/part-reading.ts";
import { readBoard } from "../reading/read-board.ts";
import { readCase } from "../reading/read-case.ts";
import { readProcessor } from "../reading/read-processor.ts";

const readers: { readonly [K in ReadKind]: (text: string) => PartReading<K> } = {
	board: readBoard,
	processor: readProcessor,
	case: readCase,
};

/** What the text of a part's page tells. Never throws. */
export function readPage(kind: ReadKind, text: string): PartReading {
	return readers[kind](text);
}
