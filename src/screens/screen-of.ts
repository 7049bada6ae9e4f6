import { withInches } from "../sheet/inches.ts";
import { answersTried } from "../walk/update.ts";
import type { WalkContext, WalkState } from "../walk/walk-state.ts";
import { askShopScreen, theyAnsweredScreen } from "./ask-shop-screen.ts";
import { boardFactsScreen } from "./board-facts-screen.ts";
import { boardPlanScreen } from "./board-plan-screen.ts";
import { boardPowerScreen } from "./board-power-screen.ts";
import { boardScreen } from "./board-screen.ts";
import { coachMenuScreen, coachNameScreen, coachQuestionScreen, coachScreen, coachWhyScreen } from "./coach-screen.ts";
import { describeScreen } from "./describe-screen.ts";
import { examplePlace } from "./example-choice.ts";
import { factFormScreen } from "./fact-form-screen.ts";
import { fellOutScreen } from "./fell-out-screen.ts";
import { findOutScreen } from "./find-out-screen.ts";
import { glossaryScreen } from "./glossary-screen.ts";
import { likeScreen } from "./like-screen.ts";
import { mapWords } from "./map-words.ts";
import { menuScreen } from "./menu-screen.ts";
import { newPartScreen, ownPartScreen, ownPartsScreen } from "./own-parts-screen.ts";
import { doubtScreen, leaveFormScreen, partFormScreen, unreadScreen } from "./part-form-screen.ts";
import { partsDisagreeScreen } from "./parts-disagree-screen.ts";
import { priceLineScreen } from "./price-line-screen.ts";
import { questionScreen } from "./question-screen.ts";
import { readPartScreen } from "./read-part-screen.ts";
import { reviewScreen } from "./review-screen.ts";
import { keptWalkScreen, nameWalkScreen, savedWalksScreen, takeWalkScreen } from "./saved-walks-screen.ts";
import type { Screen } from "./screen.ts";
import { settingsScreen } from "./settings-screen.ts";
import { sheetPageScreen } from "./sheet-page-screen.ts";
import { sheetScreen } from "./sheet-screen.ts";
import { shortlistScreen } from "./shortlist-screen.ts";
import { sourceBlocks } from "./source-blocks.ts";
import { startScreen } from "./start-screen.ts";
import { suggestionScreen, suggestionsScreen } from "./suggestions-screen.ts";
import { tierEndScreen } from "./tier-end-screen.ts";
import { viewWalk, type WalkView } from "./walk-view.ts";
import { whatIfAnswerScreen, whatIfQuestionScreen, whatIfScreen } from "./what-if-screen.ts";

/** The screen for where a walk is, or null when it has been left. */
export function screenOf(context: WalkContext, state: WalkState): Screen | null {
	const view = viewWalk(context, state);
	const made = screenFor(context, view);
	const screen = made && state.isExample ? { ...made, place: examplePlace(made.place) } : made;
	const whole = screen && state.showsSources ? { ...screen, sources: sourceBlocks(view) } : screen;
	return whole && state.settings.lengths === "with-inches" ? mapWords(whole, withInches) : whole;
}

function screenFor(context: WalkContext, view: WalkView): Screen | null {
	const { state } = view;
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
		case "ask-shop":
			return askShopScreen(view, place, (ownParts) => viewWalk(context, { ...state, ownParts }));
		case "they-answered":
			return theyAnsweredScreen(view, place);
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
			return place.page === "all" ? sheetPageScreen(view) : sheetScreen(view);
		case "menu":
			return state.coaching ? coachMenuScreen(view) : menuScreen(view);
		case "saved-walks":
			return savedWalksScreen(view);
		case "kept-walk":
			return keptWalkScreen(view, place);
		case "name-walk":
			return nameWalkScreen(view, place);
		case "take-walk":
			return takeWalkScreen(view);
		case "settings":
			return settingsScreen(view);
		case "glossary":
			return glossaryScreen(view);
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
		case "coach":
			return coachScreen(view);
		case "coach-name":
			return coachNameScreen(view);
		case "coach-question":
			return coachQuestionScreen(view, place, (other) => viewWalk(context, other));
		case "coach-why":
			return coachWhyScreen(view, place);
		case "suggestions":
			return suggestionsScreen(view, place);
		case "suggestion":
			return suggestionScreen(view, place);
		case "left":
			return null;
	}
}
