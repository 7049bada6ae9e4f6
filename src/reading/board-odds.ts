import type { BoardLine } from "./board-lines.ts";
import type { FactCollector } from "./fact-collector.ts";
import { words } from "./words.ts";

type Told = readonly (readonly [fact: string, value: unknown, standing?: "assumed"])[];

const countOf = (text: string): number => Number(/(?<![\w.])(\d{1,2})\s?(?:x|×)\s/i.exec(text)?.[1] ?? 1);

const warrantyWord =
	/(?<!\p{L})(?:warranty|(?:hersteller)?garantie|gwarancj\p{L}*|garanzia|garant[ií]a|záruk\p{L}*|гаранті\p{L}*|гаранти\p{L}*|bảo\shành|garanti)(?!\p{L})|保修|质保|保証/iu;
const yearsWord =
	/(?<![\d.,])(\d{1,2})[\s-]{0,2}(?:years?|yrs?|jahre?n?|ans?|lat[a]?|años?|anni|anno|roky?|let|год\p{L}*|лет|рок\p{L}*|năm|yıl|år|年)(?!\p{L})/iu;
const monthsWord =
	/(?<![\d.,])(\d{1,3})[\s-]{0,2}(?:months?|monate?n?|mois|miesi\p{L}*|mies|mesi|mese|meses|měsíc\p{L}*|мес\p{L}*|міс\p{L}*|tháng|ay|个月)(?!\p{L})/iu;
/** No maker of boards gives more; own convention. */
const mostYears = 12;

/** Years of warranty; a page that tells of "3 years (2 in the shop)" tells two things, and nothing is taken. */
function warrantyOf(text: string): number | undefined {
	if (!warrantyWord.test(text) || /\bextended\b|\boptional\b|\brefurb|\bused\b|battery|fans?\b/i.test(text))
		return undefined;
	const years = [
		...[...text.matchAll(new RegExp(yearsWord, "giu"))].map(([, figure]) => Number(figure)),
		...[...text.matchAll(new RegExp(monthsWord, "giu"))].map(([, figure]) => Number(figure) / 12),
	];
	const [one] = years;
	const isOne = one !== undefined && years.every((other) => other === one);
	return isOne && Number.isInteger(one) && one > 0 && one <= mostYears ? one : undefined;
}

/** Single facts that one line gives: what helps in trouble, old sockets, the main plug, phases, sound sockets. */
function toldBy(line: BoardLine): Told {
	const { value, topic, place } = line;
	const text = `${line.label} ${value}`;
	const isBack = topic === "back" || place === "back";
	const isHeader = /header|connector|stiftleiste|anschluss|stecker/i.test(value) || place === "header";
	const told: (readonly [string, unknown, "assumed"?])[] = [];
	const warranty = warrantyOf(text);
	if (warranty !== undefined) told.push(["warrantyYears", warranty]);
	if (/\b24[\s-]?(?:pin|pol)/i.test(value) && /atx|main|power|strom|eatx/i.test(text))
		told.push(["power.mainPlug", "24-pin"]);
	if (
		/\bcom\b|serial|seriell/i.test(value) &&
		isHeader &&
		!isBack &&
		/header|stiftleiste|com\sport|connector/i.test(value) &&
		countOf(value) <= 4
	)
		told.push(["headers.serial", countOf(value)]);
	if (
		/\btpm\b|trusted\splatform/i.test(value) &&
		/header|connector|stiftleiste|anschluss|module/i.test(value) &&
		!/firmware|ftpm|onboard/i.test(value)
	)
		told.push(["headers.trustedModule", true]);
	if (
		/front[\s-](?:panel[\s-])?(?:hd[\s-]?)?audio|frontaudio|\b[fa]_?audio\b|\baafp\b/i.test(value) &&
		isHeader &&
		!/require/i.test(value)
	)
		told.push(["headers.frontAudio", true]);
	if (isBack && /ps\s?\/\s?2/i.test(value)) told.push(["rearOld", ["PS/2"]]);
	if (
		/clear\s?cmos|reset[\s-]cmos|cmos\s?(?:clear|reset)/i.test(value) &&
		/button|switch|taste|knopf/i.test(value) &&
		isBack
	)
		told.push(["recovery.resetAtBack", true]);
	if (
		/(?:bios|uefi|firmware)[\s-]?(?:update|flash\w*|recovery)[\s-]?(?:button|switch|taste|knopf)|flash[\s-]?(?:bios)?[\s-]?(?:button|taste)/i.test(
			value,
		)
	)
		told.push(["recovery.flashWithoutProcessor", true, "assumed"]);
	if (
		!isBack &&
		/\b(?:power|start)[\s-]?(?:button|switch)\b|einschalttaste|starttaste/i.test(value) &&
		/\d\s?x|button|switch/i.test(value) &&
		place === "header" &&
		!/header|led\sheader/i.test(value)
	)
		told.push(["recovery.startButton", true]);
	if (/debug|post[\s-]?code|diagnos/i.test(value)) {
		if (/digit|7[\s-]?seg|hex|code\sled|anzeige|display/i.test(value)) told.push(["recovery.faultDisplay", "digits"]);
		else if (/\bleds?\b|light|leucht/i.test(value)) told.push(["recovery.faultDisplay", "lights"]);
	}
	const phases =
		/(?<![\d.])(\d{1,2}(?:\s?\+\s?\d{1,2}){1,3})[\s-]*(?:duet|dual|twin|direct|digital|power|vrm)?[\s-]*(?:rail\s)?(?:power\s)?(?:phases?\b|stages?\b|phasen|vrm\b)/i.exec(
			value,
		)?.[1];
	const plainPhases = /(?<![\d.+])(\d{1,2})[\s-]+(?:power[\s-])?(?:phases?\b|phasen)/i.exec(value)?.[1];
	const advertised = phases?.replace(/\s/g, "") ?? plainPhases;
	if (advertised !== undefined && topic !== "accessories") told.push(["powerDelivery.advertised", advertised]);
	if (
		isBack &&
		!isHeader &&
		/audio\s(?:jacks?|ports?)|audio-?(?:buchsen|anschl)|klinke/i.test(value) &&
		/\d\s?x/i.test(value) &&
		countOf(value) <= 8
	)
		told.push(["sound.rearSockets", countOf(value)]);
	if (
		(isBack || topic === "sound") &&
		/(?:optical|optisch\w*)[\s-]+s\s?\/?\s?pdif|s\s?\/?\s?pdif\s?(?:out\s)?\(?optical|toslink|optical\sout/i.test(
			value,
		) &&
		!/header/i.test(value)
	)
		told.push(["sound.optical", true]);
	return told;
}

/** Gives the lines that told something. */
export function boardOdds(lines: readonly BoardLine[], collector: FactCollector): ReadonlySet<number> {
	const used = new Set<number>();
	for (const line of lines) {
		if (line.isHead || line.isNote || line.topic === "accessories" || words.none.test(line.value)) continue;
		for (const [fact, value, standing] of toldBy(line)) {
			collector.found(fact, value, { line: line.line, quote: line.quote }, standing ?? "stated");
			used.add(line.line);
		}
	}
	return used;
}
