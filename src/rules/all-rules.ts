import { cardHeight } from "./build/card-height.ts";
import { cardInCase } from "./build/card-in-case.ts";
import { cardSlotsInCase } from "./build/card-slots-in-case.ts";
import { clockLocked } from "./build/clock-locked.ts";
import { coolerHeat } from "./build/cooler-heat.ts";
import { coolerHeight } from "./build/cooler-height.ts";
import { coolerMissing } from "./build/cooler-missing.ts";
import { coolerOnSocket } from "./build/cooler-on-socket.ts";
import { drivePower } from "./build/drive-power.ts";
import { drivesInCase } from "./build/drives-in-case.ts";
import { errorCorrection as errorCorrectionOfParts } from "./build/error-correction.ts";
import { firstStart } from "./build/first-start.ts";
import { heavyCooler } from "./build/heavy-cooler.ts";
import { litFans } from "./build/lit-fans.ts";
import { memoryPairs } from "./build/memory-pairs.ts";
import { memoryUnderCooler } from "./build/memory-under-cooler.ts";
import { memoryWithProcessor } from "./build/memory-with-processor.ts";
import { movedSystem } from "./build/moved-system.ts";
import { pictureAtAll } from "./build/picture-at-all.ts";
import { radiatorInCase } from "./build/radiator-in-case.ts";
import { screensOnCard } from "./build/screens-on-card.ts";
import { supplyGraphicsPlugs } from "./build/supply-graphics-plugs.ts";
import { supplyInCase } from "./build/supply-in-case.ts";
import { supplyWatts } from "./build/supply-watts.ts";
import type { Rule } from "./define-rule.ts";
import { buriedDrives } from "./features/buried-drives.ts";
import { caseFans } from "./features/case-fans.ts";
import { chipsetLink } from "./features/chipset-link.ts";
import { colour } from "./features/colour.ts";
import { driveSpeed } from "./features/drive-speed.ts";
import { errorCorrection } from "./features/error-correction.ts";
import { fanControl } from "./features/fan-control.ts";
import { graphicsLanes } from "./features/graphics-lanes.ts";
import { lighting } from "./features/lighting.ts";
import { memoryLater } from "./features/memory-later.ts";
import { memoryRate } from "./features/memory-rate.ts";
import { oldConnectors } from "./features/old-connectors.ts";
import { raiseClock } from "./features/raise-clock.ts";
import { rearUsbC } from "./features/rear-usb-c.ts";
import { rescueMusts } from "./features/rescue-musts.ts";
import { secondCard } from "./features/second-card.ts";
import { sound } from "./features/sound.ts";
import { sparePicture } from "./features/spare-picture.ts";
import { wiredSpeed } from "./features/wired-speed.ts";
import { wireless } from "./features/wireless.ts";
import { backPlugs } from "./fit/back-plugs.ts";
import { boardForm } from "./fit/board-form.ts";
import { cardSlots } from "./fit/card-slots.ts";
import { cardWeight } from "./fit/card-weight.ts";
import { coolerHeaders } from "./fit/cooler-headers.ts";
import { coolerMount } from "./fit/cooler-mount.ts";
import { coolerOverMemory } from "./fit/cooler-over-memory.ts";
import { coolerOverSlot } from "./fit/cooler-over-slot.ts";
import { deepBoard } from "./fit/deep-board.ts";
import { drivePorts } from "./fit/drive-ports.ts";
import { extraPower } from "./fit/extra-power.ts";
import { forcedExtras } from "./fit/forced-extras.ts";
import { freeEdge } from "./fit/free-edge.ts";
import { frontPlugs } from "./fit/front-plugs.ts";
import { generation } from "./fit/generation.ts";
import { m2Drives } from "./fit/m2-drives.ts";
import { memoryFirmware } from "./fit/memory-firmware.ts";
import { memoryModules } from "./fit/memory-modules.ts";
import { memoryOfProcessor } from "./fit/memory-of-processor.ts";
import { memorySize } from "./fit/memory-size.ts";
import { picture } from "./fit/picture.ts";
import { portsUnderCard } from "./fit/ports-under-card.ts";
import { powerPlugs } from "./fit/power-plugs.ts";
import { priceCap } from "./fit/price-cap.ts";
import { radiatorAboveBoard } from "./fit/radiator-above-board.ts";
import { socket } from "./fit/socket.ts";
import { standoffs } from "./fit/standoffs.ts";
import { driveCooling } from "./quality/drive-cooling.ts";
import { firmwareCare } from "./quality/firmware-care.ts";
import { listsPublished } from "./quality/lists-published.ts";
import { steadyPower } from "./quality/steady-power.ts";
import { tested } from "./quality/tested.ts";
import { usedOffer } from "./quality/used-offer.ts";
import { warranty } from "./quality/warranty.ts";

/** Every rule, in the order a builder would check them; a board that fails several is shown with the first. */
export const allRules: readonly Rule[] = [
	socket,
	generation,
	boardForm,
	backPlugs,
	deepBoard,
	standoffs,
	freeEdge,
	coolerMount,
	coolerOverMemory,
	coolerOverSlot,
	radiatorAboveBoard,
	memoryOfProcessor,
	memoryModules,
	memorySize,
	memoryFirmware,
	powerPlugs,
	extraPower,
	picture,
	m2Drives,
	drivePorts,
	portsUnderCard,
	cardSlots,
	cardWeight,
	frontPlugs,
	coolerHeaders,
	rearUsbC,
	wireless,
	wiredSpeed,
	secondCard,
	graphicsLanes,
	driveSpeed,
	chipsetLink,
	sparePicture,
	buriedDrives,
	driveCooling,
	memoryRate,
	memoryLater,
	raiseClock,
	errorCorrection,
	rescueMusts,
	caseFans,
	fanControl,
	lighting,
	sound,
	oldConnectors,
	colour,
	steadyPower,
	tested,
	warranty,
	listsPublished,
	firmwareCare,
	usedOffer,
	priceCap,
	forcedExtras,
	cardHeight,
	cardInCase,
	cardSlotsInCase,
	clockLocked,
	coolerHeat,
	coolerHeight,
	coolerMissing,
	coolerOnSocket,
	drivePower,
	drivesInCase,
	errorCorrectionOfParts,
	heavyCooler,
	litFans,
	memoryUnderCooler,
	memoryWithProcessor,
	memoryPairs,
	firstStart,
	movedSystem,
	pictureAtAll,
	radiatorInCase,
	screensOnCard,
	supplyGraphicsPlugs,
	supplyInCase,
	supplyWatts,
];

const byId = new Map(allRules.flatMap((rule) => [rule.id, ...(rule.formerly ?? [])].map((id) => [id, rule] as const)));

/** The rule with this id, also by an id it formerly had; undefined when there is none. */
export function ruleById(id: string): Rule | undefined {
	return byId.get(id);
}
