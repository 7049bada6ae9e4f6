/** Faces wrap their lines as the sheet does. */
export { wrapText } from "../sheet/wrap-text.ts";
