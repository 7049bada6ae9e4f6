import type { PictureSocket } from "../parts/vocabulary.ts";

/**
 * How a picture gets from a socket to a screen with another plug: "plain" with a simple cable or adapter, "active" with
 * one that has a chip to change the signal. Common practice, no source.
 */
export type PictureAdapter = "plain" | "active";

/** By the socket it comes from, then by the plug of the screen. What is not named cannot be done with what shops sell. */
const adapters: Readonly<Record<PictureSocket, Readonly<Partial<Record<PictureSocket, PictureAdapter>>>>> = {
	HDMI: { DVI: "plain", DisplayPort: "active", VGA: "active" },
	DisplayPort: { HDMI: "plain", DVI: "plain", VGA: "active" },
	"USB-C": { HDMI: "plain", DisplayPort: "plain", DVI: "plain", VGA: "active" },
	// Most newer DVI sockets no longer carry the signal of VGA.
	DVI: { HDMI: "plain" },
	VGA: {},
};

/** "direct" where socket and screen have the same plug; null where no adapter helps. */
export function pictureWay(socket: PictureSocket, screen: PictureSocket): "direct" | PictureAdapter | null {
	return socket === screen ? "direct" : (adapters[socket][screen] ?? null);
}
