import { cleanLine } from "../parts/clean-text.ts";
import { mostOfName, type WalksChange } from "./kept-walk-places.ts";
import type { WalkEffect, WalkEvent } from "./walk-event.ts";
import type { Place, WalkState } from "./walk-state.ts";

interface Ways {
	readonly visit: (state: WalkState, place: Place) => WalkState;
	readonly comeBack: (state: WalkState) => WalkState;
}

type Step = readonly [WalkState, readonly WalkEffect[]];

/** What an event does about kept walks, or null where it is about something else. */
export function updateKeptWalks(state: WalkState, event: WalkEvent, { visit, comeBack }: Ways): Step | null {
	const { place } = state;
	switch (event.type) {
		case "saved-walks":
		case "take-walk":
			return [visit(state, { at: event.type }), []];
		case "kept-walk":
			return [visit(state, { at: "kept-walk", file: event.file }), []];
		case "name-walk":
			return [visit(state, { at: "name-walk", file: event.file ?? null }), []];
		case "copy-walk":
			return place.at === "kept-walk" ? [state, [changing({ does: "copy", file: place.file })]] : [state, []];
		case "remove-walk":
			// Whether it goes is told by the outside: somebody may have it open.
			return place.at === "kept-walk"
				? [comeBack(state), [changing({ does: "remove", file: place.file })]]
				: [state, []];
		case "bring-walk-back":
			return [state, [changing({ does: "bring-back" })]];
		case "walks-changed":
			return [{ ...state, saved: event.saved, canBringBack: event.canBringBack, notice: event.words }, []];
		case "text":
			if (place.at === "name-walk") return named(state, place.file, event.text, comeBack);
			if (place.at === "take-walk") return taken(state, event.text, comeBack);
			return null;
		default:
			return null;
	}
}

function named(state: WalkState, file: string | null, text: string, comeBack: Ways["comeBack"]): Step {
	const name = cleanLine(text);
	if (name === "") return [{ ...state, problem: "Type a name, such as for whom the computer is." }, []];
	if (name.length > mostOfName)
		return [{ ...state, problem: `A name has at most ${mostOfName} letters; this one has ${name.length}.` }, []];
	if (file !== null) return [comeBack(state), [changing({ does: "name", file, name })]];
	return [{ ...comeBack({ ...state, name }), notice: `This walk is now called ${name}.` }, [{ type: "save" }]];
}

function taken(state: WalkState, text: string, comeBack: Ways["comeBack"]): Step {
	const path = text.trim();
	if (path === "") return [{ ...state, problem: "Type where the file is, such as mia.json." }, []];
	return [comeBack(state), [changing({ does: "take", path })]];
}

function changing(change: WalksChange): WalkEffect {
	return { type: "change-walks", change };
}
