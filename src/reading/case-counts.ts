import { evenRun } from "./quantities.ts";

export interface SlotsRead {
	readonly cardSlots?: number;
	readonly uprightSlots?: number;
	/** The second figure of "7+2" is not named; such slots are upright by usage. */
	readonly isUprightUnnamed?: true;
	readonly might: readonly number[];
}

const uprightWord = /\bvertical\w*|\bvertikal\w*|\bupright\b|\bsenkrecht\w*/i;

/** Card slots of a case: "7", "7 + 2 vertical", "7 (horizontal), 3 (vertical)". */
export function caseSlotsIn(text: string, label: string): SlotsRead {
	const run = withoutRemark(evenRun(text))
		// "7 (vertical mounting possible)" counts nothing more.
		.replace(
			/\([^\d()]*\b(?:support\w*|optional|possible|kits?|riser|möglich\w*|mount\w*|install\w*)\b[^\d()]*\)/gi,
			" ",
		)
		.replace(/\bpci[\s-]?e?(?:xpress)?(?:\s?x?\d+(?:\.\d)?)?\b/gi, " ");
	if (/\d\s?-\s?slot/i.test(run)) return { might: [] };
	if (uprightWord.test(label)) {
		const all = [...run.matchAll(/(?<![\d.,])(\d{1,2})(?![\d.,]|\s?mm)/g)].map(([digits]) => Number(digits));
		return all.length === 1 ? { uprightSlots: all[0] as number, might: [] } : { might: [] };
	}
	const plus = /^\D{0,12}(\d{1,2})\s?(?:x\s?)?(?:horizontal\w*\s)?\+\s?(\d)(?![\d.,])\s?x?([^\d]*)$/i.exec(run);
	if (plus) {
		const [, first, second, rest = ""] = plus;
		const named = uprightWord.test(rest);
		return {
			cardSlots: Number(first),
			uprightSlots: Number(second),
			...(!named && { isUprightUnnamed: true as const }),
			might: [],
		};
	}
	const found = [...run.matchAll(/(?<![\d.,])(\d{1,2})(?![\d.,]|\s?mm)\s?x?([^\d]{0,40})/g)].map(
		([all, digits = "", behind = "", ...rest]) => ({ count: Number(digits), behind, all, rest }),
	);
	// "Vertical: 2" names its figure before, "2 vertical" behind.
	const parts = found.map(({ count, behind }, index) => {
		const before = index === 0 ? run.slice(0, run.search(/\d/)) : "";
		return { count, isUpright: uprightWord.test(index === 0 ? `${before} ${behind}` : behind) };
	});
	// "8 (5 horizontal + 3 vertical)": a whole and its parts.
	const [whole, ...shares] = parts;
	if (shares.length === 2 && whole?.count === shares.reduce((sum, { count }) => sum + count, 0)) parts.shift();
	const [straight, ...more] = parts.filter(({ isUpright }) => !isUpright);
	const upright = parts.filter(({ isUpright }) => isUpright);
	if (parts.length === 0) return { might: [] };
	if (more.length > 0 || upright.length > 1 || /:/.test(run)) return { might: parts.map(({ count }) => count) };
	// "7 (vertical possible)" is no second figure.
	if (!straight) return { might: parts.map(({ count }) => count) };
	return {
		cardSlots: straight.count,
		...(upright[0] && { uprightSlots: upright[0].count }),
		might: [],
	};
}

/** "8 | on sleds": a row's remark that counts nothing. */
const withoutRemark = (run: string): string => run.replace(/^(\W*\d{1,2}\s?x?)\s?\|\D*$/, "$1");

export interface BaysRead {
	readonly inch35?: number;
	readonly inch25?: number;
	/** Sizes of which the count is open, with the counts it may have. */
	readonly open: readonly { readonly size: "inch35" | "inch25"; readonly might: readonly number[] }[];
	/** Places that take a drive of either size are among them, so that the count for 2.5 inch is open. */
	readonly isCombined?: true;
}

const inch = "(?:\\s?-?\\s?(?:[\"″”“'’]{1,2}|in(?:ch(?:es)?)?\\b\\.?|zoll\\b))?";
const bothSizes = new RegExp(
	`3[.,]5${inch}\\s?(?:/|or|oder|&)\\s?2[.,]5|2[.,]5${inch}\\s?(?:/|or|oder|&)\\s?3[.,]5|\\bcombo\\b|\\bkombi\\w*`,
	"i",
);
const countBefore = new RegExp(
	`(?<![\\d.,])(\\d{1,2})\\s?(?:x\\s?|\\s(?=[23][.,]5)|\\s(?=[a-z][a-zäöü\\s-]{2,40}[23][.,]5))(?:[a-zäöü-]+\\s){0,4}?([23])[.,]5(?!\\d)${inch}`,
	"gi",
);
const countBehind = new RegExp(
	`(?<![\\d.,])([23])[.,]5(?!\\d)${inch}(?:\\s?(?:[a-zäöü]+[\\s-]?){0,3})?\\s?(?:x|:|=|\\|)\\s?(\\d{1,2})(?!\\d|[.,]\\d|\\s?x|\\s?\\+\\s?\\d{1,2}(?!\\d|\\s?x|[.,]5))`,
	"gi",
);

const size35 = `3[.,]5${inch}`;
const size25 = `2[.,]5${inch}`;
const joint = "\\s?(?:/|or|oder|&)\\s?(?!\\d{1,2}\\s?x)";
const eitherSize = new RegExp(
	`(?:(?<![\\d.,])(\\d{1,2})\\s?(?:x\\s?)?(?:[a-zäöü-]+\\s){0,4}?)?(?<![\\d.,])(?:${size35}${joint}${size25}|${size25}${joint}${size35})(?:\\s?(?:[a-zäöü-]+\\s?){0,2}(?:x|:|=)\\s?(\\d{1,2})(?![\\d.,]))?`,
	"gi",
);
/** Places for drives that can be taken out and are not asked for here. */
const wideBays = new RegExp(
	`(?:(?<![\\d.,])\\d{1,2}\\s?x?\\s?(?:[a-zäöü]+\\s){0,2}?)?(?<![\\d.,])5[.,]25${inch}(?:\\s?(?:x|:|=)\\s?\\d{1,2}(?![\\d.,]|\\s?x))?`,
	"gi",
);
/** "Up to 10 (6 of them in the trays)" tells where some of them go. */
const someOf =
	/\([^()]*\b(?:of\s(?:them|which|these)|davon|dont|di\scui|z\stego|из\sних|з\sних|shared|in\sthe)\b[^()]*\)/gi;

/** Places for drives: `2 x 3.5"`, `3.5" x 2`, or a count alone under a label that names the size. */
export function driveBaysIn(text: string, label: string): BaysRead {
	const run = withoutRemark(evenRun(text).replace(someOf, " ").replace(wideBays, " "));
	const sizesOfLabel = [
		...new Set([...label.matchAll(/(?<![\d.,])([23])[.,]5(?!\d)/g)].map(([, digit]) => keyOf(digit))),
	];
	const isOther = /\bexternal\b|\bextern\w*|5[.,]25/i.test(`${label} ${run}`);
	let shared = 0;
	let isOpen = false;
	const own = run.replace(eitherSize, (_, before: string | undefined, behind: string | undefined) => {
		const count = before ?? behind;
		if (count === undefined) isOpen = true;
		else shared += Number(count);
		return " _ ";
	});
	const isShared = shared > 0 && !isOpen;
	const counted = countedIn(isShared ? own : run);
	if (counted.length === 0 && !isShared) return aloneUnder(label, run, sizesOfLabel, isOther);
	const rest = isShared ? own : run;
	const isAlternative = /[\s(](?:or|oder|otherwise|alternativ\w*)\s|\d\s?[x"″”]?\s?\/\s?\d{1,2}\s?x/i.test(rest);
	if (isOther || isAlternative) return { open: openOf(counted) };
	const total = (size: "inch35" | "inch25") =>
		counted.filter((one) => one.size === size).reduce((sum, { count }) => sum + count, 0);
	if (isShared) {
		const small = total("inch25");
		return {
			inch35: total("inch35") + shared,
			open: [{ size: "inch25", might: [small, small + shared] }],
			isCombined: true,
		};
	}
	if (bothSizes.test(run)) {
		const [first] = counted;
		// One count and the word "combo": the places take either.
		if (counted.length === 1 && first && !isOpen) return combined(first.count);
		return { open: openOf(counted), isCombined: true };
	}
	const result: { inch35?: number; inch25?: number } = {};
	const open: { size: "inch35" | "inch25"; might: readonly number[] }[] = [];
	for (const size of ["inch35", "inch25"] as const) {
		const same = counted.filter((one) => one.size === size);
		if (same.length === 0) continue;
		// Two counts of one size add up only where a plus stands.
		if (same.length > 1 && !/\+|\b(?:and|und|plus)\b/i.test(run))
			open.push({ size, might: [...new Set([total(size), ...same.map(({ count }) => count)])] });
		else result[size] = total(size);
	}
	return { ...result, open };
}

type Counted = { readonly size: "inch35" | "inch25"; readonly count: number };

function countedIn(run: string): readonly Counted[] {
	const before = [...run.matchAll(countBefore)].map(([, count, digit]) => ({
		size: keyOf(digit),
		count: Number(count),
	}));
	const behind = [...run.matchAll(countBehind)].map(([, digit, count]) => ({
		size: keyOf(digit),
		count: Number(count),
	}));
	return before.length >= behind.length ? before : behind;
}

function openOf(some: readonly Counted[]): BaysRead["open"] {
	return [...new Set(some.map(({ size }) => size))].map((size) => ({
		size,
		might: [...new Set(some.filter((one) => one.size === size).map(({ count }) => count))],
	}));
}

/** A count alone, or "none", under a label that names the size. */
function aloneUnder(label: string, run: string, sizes: readonly ("inch35" | "inch25")[], isOther: boolean): BaysRead {
	const alone = /^\W*(?:max\.?|up\sto|bis(?:\szu)?)?\W*(\d{1,2})\s?(?:x|pcs|stück)?\W*(?:\([^\d]*\))?\W*$/i.exec(
		run,
	)?.[1];
	const none = /^\W*(?:none|no|not\sincluded|n\/a|kein\w*)\W*$/i.test(run) ? 0 : undefined;
	const sum = /^\W*\d{1,2}(?:\s?\+\s?\d{1,2}){1,2}\W*$/.test(run)
		? [...run.matchAll(/\d+/g)].reduce((total, [digits]) => total + Number(digits), 0)
		: undefined;
	const both = /^\W*(\d{1,2})\s?\/\s?(\d{1,2})\W*$/.exec(run);
	if (both && sizes.length === 2 && sizes[0] && sizes[1] && !isOther)
		return { [sizes[0]]: Number(both[1]), [sizes[1]]: Number(both[2]), open: [] };
	const count = none ?? sum ?? (alone === undefined ? undefined : Number(alone));
	const [size, ...more] = sizes;
	if (count === undefined || size === undefined || isOther) return { open: [] };
	if (more.length > 0 || bothSizes.test(label)) return combined(count);
	return { [size]: count, open: [] };
}

/** Places for either size: so many 3.5 inch drives go in for certain; how many places are left for 2.5 is not told. */
function combined(count: number): BaysRead {
	return { inch35: count, open: [{ size: "inch25", might: [0, count] }], isCombined: true };
}

function keyOf(digit: string | undefined): "inch35" | "inch25" {
	return digit === "3" ? "inch35" : "inch25";
}
