import { cardInCase } from "./build/card-in-case.ts";
import { memoryWithProcessor } from "./build/memory-with-processor.ts";
import { pictureAtAll } from "./build/picture-at-all.ts";
import type { Rule } from "./define-rule.ts";
import { rearUsbC } from "./features/rear-usb-c.ts";
import { wireless } from "./features/wireless.ts";
import { boardForm } from "./fit/board-form.ts";
import { generation } from "./fit/generation.ts";
import { memoryModules } from "./fit/memory-modules.ts";
import { picture } from "./fit/picture.ts";
import { powerPlugs } from "./fit/power-plugs.ts";
import { priceCap } from "./fit/price-cap.ts";
import { socket } from "./fit/socket.ts";

/** Every rule, in the order a builder would check them; a board that fails several is shown with the first. */
export const allRules: readonly Rule[] = [
	socket,
	generation,
	boardForm,
	memoryModules,
	powerPlugs,
	picture,
	rearUsbC,
	wireless,
	priceCap,
	cardInCase,
	memoryWithProcessor,
	pictureAtAll,
];

const byId = new Map(allRules.flatMap((rule) => [rule.id, ...(rule.formerly ?? [])].map((id) => [id, rule] as const)));

/** The rule with this id, also by an id it formerly had; undefined when there is none. */
export function ruleById(id: string): Rule | undefined {
	return byId.get(id);
}
