import { annexPage, madeWords } from "./annex-page.ts";
import { benchPage } from "./bench-page.ts";
import type { DocumentBlock } from "./document-block.ts";
import { paragraph } from "./document-blocks.ts";
import type { Sheet } from "./sheet.ts";
import { shopPage } from "./shop-page.ts";

export type { DocumentBlock };

/** All that the sheet says: at the shop first, then at the bench, the record last. Empty sections are left out. */
export function sheetDocument(sheet: Sheet): readonly DocumentBlock[] {
	return [paragraph(madeWords(sheet)), ...shopPage(sheet), ...benchPage(sheet), ...annexPage(sheet)];
}
