import { choiceQuestion } from "../choice-question.ts";

export const summerRoom = choiceQuestion({
	id: "about/summer-room",
	tier: "about",
	want: "summerRoom",
	ask: "How warm is your room on the hottest evening of summer?",
	hint: "The room where the computer will stand",
	label: "Room on a hot evening",
	why: "All heat leaves into the room's air. The warmer that air, the hotter every part gets.",
	whereToFind: "Think of last summer, or look at a thermometer on a hot evening.",
	changes: "In a warm room each board has fewer degrees to spare, and the weak ones may have none.",
	notSure: "Anything from a cool to a hot room is counted, so it is less sure how hot each board gets.",
	howToFindOut: "Ask at home how hot the room gets.",
	choices: {
		cool: { label: "Cool", explanation: "About 25 degrees C (77 F) or less" },
		warm: { label: "Warm, but fine", explanation: "About 30 degrees C (86 F)" },
		"fan-on": { label: "Hot: a fan runs or windows stay open", explanation: "About 35 degrees C (95 F)" },
	},
});
