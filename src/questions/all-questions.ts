import { budget } from "./about/budget.ts";
import type { Question } from "./define-question.ts";
import { rearDevices } from "./features/rear-devices.ts";
import { rearUsbC } from "./features/rear-usb-c.ts";
import { spareSockets } from "./features/spare-sockets.ts";
import { wireless } from "./features/wireless.ts";
import { pcCase } from "./fit/case.ts";
import { graphicsCard } from "./fit/graphics-card.ts";
import { memory } from "./fit/memory.ts";
import { processor } from "./fit/processor.ts";
import { supply } from "./fit/supply.ts";
import { rescue } from "./quality/rescue.ts";
import { stageLoad } from "./quality/stage-load.ts";

/** Every question, in the order it is asked: tier by tier, what narrows most first. */
export const allQuestions: readonly Question[] = [
	budget,
	processor,
	pcCase,
	graphicsCard,
	memory,
	supply,
	wireless,
	rearUsbC,
	rearDevices,
	spareSockets,
	stageLoad,
	rescue,
];

const byId = new Map(
	allQuestions.flatMap((question) => [question.id, ...(question.formerly ?? [])].map((id) => [id, question] as const)),
);

/** The question with this id, also by an id it formerly had; undefined when there is none. */
export function questionById(id: string): Question | undefined {
	return byId.get(id);
}
