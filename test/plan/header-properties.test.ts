import fc from "fast-check";
import { expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import type { BoardHeader } from "../../src/plan/board-headers.ts";
import { type HeaderPlan, headerPlanOf } from "../../src/plan/header-plan.ts";
import type { HeaderBuild, HeaderWish } from "../../src/plan/header-wish.ts";

type Headers = NonNullable<Board["headers"]>;
const upTo = (max: number) => fc.integer({ min: 0, max });
const rate = fc.constantFrom({}, { gbps: 5 }, { gbps: 10 }, { gbps: 20 });
const amps = fc.constantFrom({}, { amps: 1 }, { amps: 2 }, { amps: 3 });
const named = <T extends object>(letter: string, many: fc.Arbitrary<T>, maxLength: number) =>
	fc.array(many, { maxLength }).map((all) => all.map((one, index) => ({ name: `${letter}${index + 1}`, ...one })));

const fanHeaders = named(
	"F",
	fc.tuple(fc.constantFrom("processor" as const, "pump" as const, "case" as const), amps).map(([use, rest]) => ({
		use,
		...rest,
	})),
	6,
);
const lightHeaders = named(
	"L",
	fc.tuple(fc.constantFrom(5 as const, 12 as const), amps).map(([volts, rest]) => ({ volts, ...rest })),
	3,
);
const allHeaders: fc.Arbitrary<Headers> = fc.record({
	usb2: upTo(3),
	usb5: upTo(2),
	typeC: fc.array(rate, { maxLength: 3 }),
	frontAudio: fc.boolean(),
	fans: fanHeaders,
	lights: lightHeaders,
});
/** Some facts are not known. */
const someHeaders = fc
	.tuple(allHeaders, fc.subarray(["usb2", "usb5", "typeC", "frontAudio", "fans", "lights"] as const))
	.map(([headers, kept]): Headers => Object.fromEntries(kept.map((key) => [key, headers[key]])));

const builds: fc.Arbitrary<HeaderBuild> = fc
	.record({
		pump: upTo(2),
		fan: upTo(4),
		usb2: upTo(2),
		lights5V: upTo(1),
		lights12V: upTo(1),
		caseFans: upTo(5),
		later: upTo(2),
		lights: fc.array(fc.constantFrom("5 V three-pin" as const, "12 V four-pin" as const, "maker's own" as const), {
			maxLength: 4,
		}),
		frontPlugs: fc.array(
			fc
				.tuple(
					fc.constantFrom("USB 9-pin" as const, "USB 19-pin" as const, "USB-C 20-pin" as const, "sound" as const),
					rate,
					fc.integer({ min: 1, max: 2 }),
				)
				.map(([plug, gbps, count]) => ({ plug, count, ...gbps })),
			{ maxLength: 4 },
		),
	})
	.map(({ caseFans, later, lights, frontPlugs, ...headersUsed }) => ({
		case: { state: "have", ownership: "bought", part: { id: "bandbox", name: "Bandbox", frontPlugs } },
		cooler: { state: "have", ownership: "bought", part: { id: "chimney", name: "Chimney", headersUsed } },
		addInCards: null,
		caseFans,
		lights,
		laterThings: Array.from({ length: later }, () => "fan" as const),
	}));

const headerOf = ({ headers }: HeaderPlan, name: string) => headers.find((one) => one.name === name) as BoardHeader;
/** Wishes of a kind with a header of their own, by what that header is meant for. */
function counts(plan: HeaderPlan): Readonly<Record<string, number>> {
	const all: Record<string, number> = {};
	for (const { wish, header } of plan.placed) {
		const key = `${wish.isLater ? "later " : ""}${wish.kind} on ${headerOf(plan, header).use}`;
		all[key] = (all[key] ?? 0) + 1;
	}
	return all;
}

test("every wish ends in one place, every header is taken once or free", () => {
	fc.assert(
		fc.property(someHeaders, builds, (headers, build) => {
			const plan = headerPlanOf({ headers }, build);
			const { placed, sharing, without, unknown, free, wishes } = plan;
			const ended = [...placed, ...sharing, ...unknown].map(({ wish }) => wish.id).concat(without.map(({ id }) => id));
			expect([...ended].sort()).toEqual(wishes.map(({ id }) => id).sort());
			expect(new Set(ended).size).toBe(wishes.length);
			const taken = placed.map(({ header }) => header);
			expect([...taken, ...free].sort()).toEqual(plan.headers.map(({ name }) => name).sort());
			// Only what something is on already can be shared.
			for (const { header } of sharing) expect(taken).toContain(header);
		}),
	);
});

test("nothing is on a header that is not for it, alone or shared; 5 V and 12 V never mix", () => {
	const fits = ({ kind }: HeaderWish, header: BoardHeader) => {
		if (kind === "pump" || kind === "cooler fan") return header.kind === "fan";
		if (kind === "case fan") return header.kind === "fan" && header.use !== "processor";
		return header.kind === kind;
	};
	fc.assert(
		fc.property(someHeaders, builds, (headers, build) => {
			const plan = headerPlanOf({ headers }, build);
			for (const { wish, header } of [...plan.placed, ...plan.sharing])
				expect(fits(wish, headerOf(plan, header))).toBe(true);
			for (const { wish } of plan.sharing) expect(wish.kind).toMatch(/fan|lights/);
		}),
	);
});

test("what is not known is neither placed nor said to be without", () => {
	fc.assert(
		fc.property(someHeaders, builds, (headers, build) => {
			const { unknown, headers: given } = headerPlanOf({ headers }, build);
			for (const { fact } of unknown) expect(headers).not.toHaveProperty(fact.replace("board.headers.", ""));
			const known = headerPlanOf(
				{ headers: { usb2: 0, usb5: 0, typeC: [], frontAudio: false, fans: [], lights: [], ...headers } },
				build,
			);
			expect(known.unknown).toEqual([]);
			expect(known.headers).toEqual(given);
		}),
	);
});

/** Counted by hand, one after the other, without weighing anything. */
function countedByHand(headers: Headers, build: HeaderBuild): Readonly<Record<string, number>> {
	const left = { processor: 0, pump: 0, case: 0 };
	for (const { use } of headers.fans ?? []) left[use]++;
	const all: Record<string, number> = {};
	const take = (what: string, want: number, use: keyof typeof left, most = left[use]) => {
		const taken = Math.max(0, Math.min(want, most, left[use]));
		left[use] -= taken;
		if (taken > 0) all[`${what} on ${use}`] = (all[`${what} on ${use}`] ?? 0) + taken;
		return want - taken;
	};
	const used = build.cooler.state === "have" ? build.cooler.part.headersUsed : undefined;
	let pumps = take("pump", used?.pump ?? 0, "pump");
	let fans = used?.fan ?? 0;
	// The first fan has a processor header, unless a pump would stay without for it.
	if (fans > 0 && left.processor + left.case > pumps) fans = fans - 1 + take("cooler fan", 1, "processor");
	pumps = take("pump", take("pump", pumps, "processor"), "case");
	fans = take("cooler fan", take("cooler fan", take("cooler fan", fans, "processor"), "case"), "pump");
	take("case fan", take("case fan", build.caseFans ?? 0, "case"), "pump");
	take("later case fan", take("later case fan", build.laterThings?.length ?? 0, "case"), "pump");
	return all;
}

test("fans and pumps are on the headers that counting them one after the other gives", () => {
	fc.assert(
		fc.property(fanHeaders, builds, (fans, build) => {
			const plan = headerPlanOf({ headers: { fans } }, build);
			expect(counts(plan)).toEqual(countedByHand({ fans }, build));
		}),
		{ numRuns: 1000 },
	);
});

test("plugs of one kind and lights of one voltage are served up to the number of their headers", () => {
	fc.assert(
		fc.property(allHeaders, builds, (headers, build) => {
			const { placed, wishes, headers: given } = headerPlanOf({ headers }, build);
			for (const kind of ["USB 9-pin", "USB 19-pin", "USB-C 20-pin", "front sound", "5 V lights", "12 V lights"]) {
				const wanted = wishes.filter((wish) => wish.kind === kind).length;
				const there = given.filter((header) => header.kind === kind).length;
				expect(placed.filter(({ wish }) => wish.kind === kind).length).toBe(Math.min(wanted, there));
			}
		}),
	);
});

test("a header more never leaves more without a header, or without any", () => {
	const more = fc.constantFrom<(headers: Headers) => Headers>(
		(headers) => ({ ...headers, usb2: (headers.usb2 ?? 0) + 1 }),
		(headers) => ({ ...headers, usb5: (headers.usb5 ?? 0) + 1 }),
		(headers) => ({ ...headers, typeC: [{ gbps: 10 }, ...(headers.typeC ?? [])] }),
		(headers) => ({ ...headers, frontAudio: true }),
		...(["processor", "pump", "case"] as const).map((use) => (headers: Headers) => ({
			...headers,
			fans: [{ name: "more", use }, ...(headers.fans ?? [])],
		})),
		...([5, 12] as const).map((volts) => (headers: Headers) => ({
			...headers,
			lights: [...(headers.lights ?? []), { name: "more", volts }],
		})),
	);
	fc.assert(
		fc.property(allHeaders, builds, more, (headers, build, add) => {
			const [before, after] = [headers, add(headers)].map((all) => headerPlanOf({ headers: all }, build));
			expect(after?.without.length).toBeLessThanOrEqual(before?.without.length ?? 0);
			expect(after?.placed.length).toBeGreaterThanOrEqual(before?.placed.length ?? 0);
		}),
		{ numRuns: 1000 },
	);
});

test("the order of the board's headers changes only ties", () => {
	const shuffled = allHeaders.chain((headers) =>
		fc.record({
			headers: fc.constant(headers),
			fans: fc.shuffledSubarray(headers.fans ?? [], { minLength: headers.fans?.length ?? 0 }),
			lights: fc.shuffledSubarray(headers.lights ?? [], { minLength: headers.lights?.length ?? 0 }),
			typeC: fc.shuffledSubarray(headers.typeC ?? [], { minLength: headers.typeC?.length ?? 0 }),
		}),
	);
	fc.assert(
		fc.property(shuffled, builds, ({ headers, ...order }, build) => {
			const before = headerPlanOf({ headers }, build);
			const after = headerPlanOf({ headers: { ...headers, ...order } }, build);
			expect(counts(after)).toEqual(counts(before));
			// Each front cable has a header as fast as before.
			const rates = ({ placed }: HeaderPlan) => placed.map(({ wish, headerGbps }) => [wish.id, headerGbps]);
			const usb = (plan: HeaderPlan) =>
				rates({ ...plan, placed: plan.placed.filter(({ wish }) => wish.kind.startsWith("USB")) });
			expect(usb(after)).toEqual(usb(before));
			expect(after.without.map(({ id }) => id)).toEqual(before.without.map(({ id }) => id));
			expect(after.sharing.map(({ wish }) => wish.id)).toEqual(before.sharing.map(({ wish }) => wish.id));
		}),
	);
});

test("the fastest of cables whose rates are known are on the fastest headers", () => {
	const rates = fc.array(fc.constantFrom(5, 10, 20), { minLength: 1, maxLength: 4 });
	fc.assert(
		fc.property(rates, rates, (cables, rated) => {
			const build: HeaderBuild = {
				case: {
					state: "have",
					ownership: "bought",
					part: {
						id: "bandbox",
						name: "Bandbox",
						frontPlugs: cables.map((gbps) => ({ plug: "USB-C 20-pin", count: 1, gbps })),
					},
				},
				cooler: { state: "unknown" },
				addInCards: null,
				lights: null,
				caseFans: null,
				laterThings: null,
			};
			const { placed } = headerPlanOf({ headers: { typeC: rated.map((gbps) => ({ gbps })) } }, build);
			const down = (all: readonly number[]) => [...all].sort((one, other) => other - one);
			const paired = placed
				.map(({ wish, headerGbps }) => [wish.gbps ?? 0, headerGbps ?? 0] as const)
				.sort(([one, oneHeader], [other, otherHeader]) => other - one || otherHeader - oneHeader);
			const count = Math.min(cables.length, rated.length);
			expect(paired).toEqual(
				down(cables)
					.slice(0, count)
					.map((cable, index) => [cable, down(rated)[index]]),
			);
		}),
	);
});

test("the same facts always give the same plan", () => {
	fc.assert(
		fc.property(someHeaders, builds, (headers, build) => {
			expect(headerPlanOf({ headers }, build)).toEqual(headerPlanOf({ headers }, build));
		}),
	);
});
