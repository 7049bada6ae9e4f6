import type { Board } from "../parts/board.ts";
import type { PictureSocket } from "../parts/vocabulary.ts";

/** Words of a page for a USB-C socket that carries a picture ("picture", "DisplayPort", "DP Alt Mode"). */
const pictureWords = /picture|display|\bdp(\b|\d)/i;
const notWords = /\b(no|not|without)\b/i;

/** How many USB-C sockets at the back are known to give a picture, and whether there may be more than known. */
export function pictureOverUsbC(rearUsb: Board["rearUsb"]): { readonly sockets: number; readonly mayBeMore: boolean } {
	const oval = (rearUsb ?? []).filter(({ plug }) => plug === "C");
	const giving = oval.filter(({ modes = [] }) => modes.some((one) => pictureWords.test(one) && !notWords.test(one)));
	return {
		sockets: giving.reduce((sum, { count }) => sum + count, 0),
		mayBeMore: !rearUsb || oval.some(({ modes }) => modes === undefined),
	};
}

/** Pages list such a socket among the picture sockets, among the USB sockets, or in both places: it counts once. */
export function boardPictureSockets(
	listed: Board["pictureSockets"] = [],
	rearUsb?: Board["rearUsb"],
): readonly PictureSocket[] {
	const missing = pictureOverUsbC(rearUsb).sockets - listed.filter((socket) => socket === "USB-C").length;
	return [...listed, ...Array.from({ length: Math.max(0, missing) }, () => "USB-C" as const)];
}
