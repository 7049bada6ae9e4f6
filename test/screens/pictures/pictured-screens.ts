import quietDesk from "../../../data/scenarios/quiet-desk.json" with { type: "json" };
import showpiece from "../../../data/scenarios/showpiece.json" with { type: "json" };
import workbench from "../../../data/scenarios/workbench.json" with { type: "json" };
import { demoMarket } from "../../../src/cli/demo-market.ts";
import type { AnswersFile } from "../../../src/parts/answers-file.ts";
import type { ScreenSize } from "../../../src/screens/arrange.ts";
import { type Face, faceFor } from "../../../src/screens/face.ts";
import type { Screen } from "../../../src/screens/screen.ts";
import { screenOf } from "../../../src/screens/screen-of.ts";
import { takeUpWalk } from "../../../src/walk/saved-walk.ts";
import type { Place, WalkContext, WalkState } from "../../../src/walk/walk-state.ts";

/** What screens are designed for, and pictured at. */
export const pictureSize: ScreenSize = { columns: 80, rows: 24 };

/** A screen that is shown in README.md. */
export interface PicturedScreen {
	/** The picture's file, without its ending. */
	readonly name: string;
	/** For who cannot see it; the screen's whole text stands in the picture itself. */
	readonly title: string;
	readonly screen: Screen;
	readonly face: Face;
	/** Words without which the picture would not show what it is for. */
	readonly inSight: readonly string[];
}

/** A made-up person's walk, on the day that its file names: today's date changes nothing. */
function walkOf(file: unknown, leaving: readonly string[] = []): { context: WalkContext; state: WalkState } {
	const { answers, ...rest } = file as AnswersFile;
	const kept = Object.fromEntries(Object.entries(answers).filter(([id]) => !leaving.includes(id)));
	const context = { market: demoMarket(), asOf: rest.asOf };
	return { context, state: takeUpWalk(context, { ...rest, answers: kept }).state };
}

function screenAt({ context, state }: ReturnType<typeof walkOf>, place: Place): Screen {
	const screen = screenOf(context, { ...state, place });
	if (!screen) throw new Error(`no screen at ${place.at}`);
	return screen;
}

/** The board that leads on a walk's shortlist. */
function leaderOf(walk: ReturnType<typeof walkOf>): string {
	const [boardId] = screenAt(walk, { at: "shortlist" }).choices.flatMap(({ event }) =>
		event.type === "board" ? [event.boardId] : [],
	);
	if (boardId === undefined) throw new Error("a shortlist without a board");
	return boardId;
}

/** The screens in the order of a walk: made when asked for, since each judges a market. */
export function picturedScreens(): readonly PicturedScreen[] {
	const usbC: Place = { at: "question", id: "features/rear-usb-c" };
	const question = screenAt(walkOf(quietDesk, [usbC.id]), usbC);
	const shortlist = screenAt(walkOf(quietDesk), { at: "shortlist" });
	const priceLine = screenAt(walkOf(workbench), { at: "price-line" });
	const plan = screenAt(walkOf(showpiece), { at: "board", boardId: leaderOf(walkOf(showpiece)), page: "plan" });
	const power = screenAt(walkOf(workbench), { at: "board", boardId: leaderOf(walkOf(workbench)), page: "power" });
	return [
		{
			name: "question",
			title: "A question: what each answer leaves of the boards, and beside it how many are left now",
			screen: question,
			face: { ...faceFor(question), row: 1 },
			inSight: ["boards left", "Not sure", "Must have"],
		},
		{
			name: "help",
			title: 'The same question after "?": why we ask, where to find it, what "not sure" does',
			screen: question,
			face: { ...faceFor(question), helpOpen: true },
			inSight: ["Why we ask", "Where to find it", "If you are not sure"],
		},
		{
			name: "shortlist",
			title: "The shortlist: which board leads, how sure that is, and what would turn it",
			screen: shortlist,
			face: { ...faceFor(shortlist), row: 1 },
			inSight: ["How sure", "Closest to your answers"],
		},
		{
			name: "plan",
			title: "What plugs in where on one board, as a picture: slots, drives, headers, and what is free",
			screen: plan,
			face: faceFor(plan),
			inSight: ["[ processor ]", "free", "memory:"],
		},
		{
			name: "power",
			title: "How warm the chips that feed the processor get on one board, on a scale with its two limits",
			screen: power,
			face: faceFor(power),
			inSight: ["hottest stage", "90 degrees C", "In short"],
		},
		{
			name: "price-line",
			title: "What more money buys: each letter is a board, dearer to the right, more points up",
			screen: priceLine,
			face: { ...faceFor(priceLine), scroll: 2 },
			inSight: ["EUR", "+---"],
		},
	];
}
