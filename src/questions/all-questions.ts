import { activities } from "./about/activities.ts";
import { budget } from "./about/budget.ts";
import { moneyInAll } from "./about/money-in-all.ts";
import { moneySpent } from "./about/money-spent.ts";
import { quiet } from "./about/quiet.ts";
import { sessionLength } from "./about/session-length.ts";
import { summerRoom } from "./about/summer-room.ts";
import { walkLength } from "./about/walk-length.ts";
import { who } from "./about/who.ts";
import type { Question } from "./define-question.ts";
import { caseFans } from "./features/case-fans.ts";
import { colour } from "./features/colour.ts";
import { errorCorrection } from "./features/error-correction.ts";
import { fullSpeed } from "./features/full-speed.ts";
import { later } from "./features/later.ts";
import { lighting } from "./features/lighting.ts";
import { raiseClock } from "./features/raise-clock.ts";
import { rearDevices } from "./features/rear-devices.ts";
import { rearUsbC } from "./features/rear-usb-c.ts";
import { rescueMusts } from "./features/rescue-musts.ts";
import { room } from "./features/room.ts";
import { router } from "./features/router.ts";
import { secondCard } from "./features/second-card.ts";
import { sound } from "./features/sound.ts";
import { spareSockets } from "./features/spare-sockets.ts";
import { wireless } from "./features/wireless.ts";
import { wishes } from "./features/wishes.ts";
import { bought } from "./fit/bought.ts";
import { candidates } from "./fit/candidates.ts";
import { cards } from "./fit/cards.ts";
import { pcCase } from "./fit/case.ts";
import { caseFront } from "./fit/case-front.ts";
import { cooler } from "./fit/cooler.ts";
import { drives } from "./fit/drives.ts";
import { frontPlugs } from "./fit/front-plugs.ts";
import { graphicsCard } from "./fit/graphics-card.ts";
import { memory } from "./fit/memory.ts";
import { memorySize } from "./fit/memory-size.ts";
import { oldThings } from "./fit/old-things.ts";
import { olderDrives } from "./fit/older-drives.ts";
import { processor } from "./fit/processor.ts";
import { returnUntil } from "./fit/return-until.ts";
import { returnable } from "./fit/returnable.ts";
import { screens } from "./fit/screens.ts";
import { supply } from "./fit/supply.ts";
import { backing } from "./quality/backing.ts";
import { rescue } from "./quality/rescue.ts";
import { stageLoad } from "./quality/stage-load.ts";
import { tested } from "./quality/tested.ts";
import { warranty } from "./quality/warranty.ts";
import { years } from "./quality/years.ts";

/** Every question, in the order it is asked: tier by tier, what narrows most first. */
export const allQuestions: readonly Question[] = [
	walkLength,
	who,
	activities,
	sessionLength,
	moneyInAll,
	moneySpent,
	budget,
	summerRoom,
	quiet,
	processor,
	candidates,
	pcCase,
	caseFront,
	frontPlugs,
	graphicsCard,
	screens,
	memory,
	memorySize,
	cooler,
	supply,
	drives,
	olderDrives,
	cards,
	oldThings,
	bought,
	returnable,
	returnUntil,
	fullSpeed,
	rearDevices,
	rearUsbC,
	wireless,
	router,
	spareSockets,
	later,
	room,
	secondCard,
	raiseClock,
	errorCorrection,
	caseFans,
	lighting,
	sound,
	colour,
	rescueMusts,
	wishes,
	stageLoad,
	rescue,
	tested,
	years,
	warranty,
	backing,
];

const byId = new Map(
	allQuestions.flatMap((question) => [question.id, ...(question.formerly ?? [])].map((id) => [id, question] as const)),
);

/** The question with this id, also by an id it formerly had; undefined when there is none. */
export function questionById(id: string): Question | undefined {
	return byId.get(id);
}
