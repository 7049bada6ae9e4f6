import { answersTried } from "../walk/update.ts";
import type { WalkContext, WalkState } from "../walk/walk-state.ts";
import { boardFactsScreen } from "./board-facts-screen.ts";
import { boardPlanScreen } from "./board-plan-screen.ts";
import { boardPowerScreen } from "./board-power-screen.ts";
import { boardScreen } from "./board-screen.ts";
import { describeScreen } from "./describe-screen.ts";
import { factFormScreen } from "./fact-form-screen.ts";
import { fellOutScreen } from "./fell-out-screen.ts";
import { findOutScreen } from "./find-out-screen.ts";
import { likeScreen } from "./like-screen.ts";
import { menuScreen } from "./menu-screen.ts";
import { newPartScreen, ownPartScreen, ownPartsScreen } from "./own-parts-screen.ts";
import { doubtScreen, leaveFormScreen, partFormScreen, unreadScreen } from "./part-form-screen.ts";
import { partsDisagreeScreen } from "./parts-disagree-screen.ts";
import { priceLineScreen } from "./price-line-screen.ts";
import { questionScreen } from "./question-screen.ts";
import { readPartScreen } from "./read-part-screen.ts";
import { reviewScreen } from "./review-screen.ts";
import { savedWalksScreen } from "./saved-walks-screen.ts";
import type { Screen } from "./screen.ts";
import { settingsScreen } from "./settings-screen.ts";
import { sheetScreen } from "./sheet-screen.ts";
import { shortlistScreen } from "./shortlist-screen.ts";
import { startScreen } from "./start-screen.ts";
import { tierEndScreen } from "./tier-end-screen.ts";
import { viewWalk } from "./walk-view.ts";
import { whatIfAnswerScreen, whatIfQuestionScreen, whatIfScreen } from "./what-if-screen.ts";

/** The screen for where a walk is, or null when it has been left. */
export function screenOf(context: WalkContext, state: WalkState): Screen | null {
	const view = viewWalk(context, state);
	const { place } = state;
	switch (place.at) {
		case "start":
			return startScreen(view);
		case "question":
			return questionScreen(view, place.id);
		case "describe":
			return describeScreen(context, view, place);
		case "parts-disagree":
			return partsDisagreeScreen(view);
		case "tier-end":
			return tierEndScreen(view, place.tier);
		case "review":
			return reviewScreen(view);
		case "fell-out":
			return fellOutScreen(view);
		case "shortlist":
			return shortlistScreen(view);
		case "find-out":
			return findOutScreen(view);
		case "price-line":
			return priceLineScreen(view);
		case "board":
			if (place.page === "plan") return boardPlanScreen(view, place.boardId);
			if (place.page === "power") return boardPowerScreen(view, place.boardId);
			return place.page === "facts" ? boardFactsScreen(view, place.boardId) : boardScreen(view, place.boardId);
		case "what-if":
			return whatIfScreen(view);
		case "what-if-question": {
			const answers = answersTried(state.answers, place.id, place.tried);
			return whatIfQuestionScreen(viewWalk(context, { ...state, answers, answersBefore: state.answers }), place);
		}
		case "what-if-answer":
			return whatIfAnswerScreen(view, place);
		case "like":
			return likeScreen(view, place);
		case "sheet":
			return sheetScreen(view);
		case "menu":
			return menuScreen(view);
		case "saved-walks":
			return savedWalksScreen(view);
		case "settings":
			return settingsScreen(view);
		case "own-parts":
			return ownPartsScreen(view);
		case "new-part":
			return newPartScreen(view);
		case "own-part":
			return ownPartScreen(view, place);
		case "read-part":
			return readPartScreen(view, place);
		case "part-form":
			return partFormScreen(view, place);
		case "fact-form":
			return factFormScreen(view, place);
		case "doubt":
			return doubtScreen(view, place);
		case "unread":
			return unreadScreen(view);
		case "leave-form":
			return leaveFormScreen(view);
		case "left":
			return null;
	}
}
