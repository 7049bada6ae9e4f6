import type { AnswersFile } from "../parts/answers-file.ts";
import { sheetFileSchemaName } from "../parts/sheet-file.ts";
import type { Sheet } from "./sheet.ts";

/** The sheet as JSON text (boardwalk/sheet@1), with the answers it was made of: all of the view model, as it is. */
export function sheetJson(sheet: Sheet, kept: AnswersFile | null): string {
	return `${JSON.stringify({ schema: sheetFileSchemaName, ...sheet, answersFile: kept }, null, "\t")}\n`;
}
