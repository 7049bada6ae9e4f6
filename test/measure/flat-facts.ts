import type { PartReading, ReadFact } from "../../src/reading/part-reading.ts";

/** A part as a careful person notes it down by hand: flat keys, what is not stated left out. */
export type Flat = Readonly<Record<string, unknown>>;

type Plain = { readonly [key: string]: unknown };

/** The stated facts of a reading, or with `assumed` also those that follow from a standard, in the flat form. */
export function flatFacts(reading: PartReading, { assumed }: { readonly assumed: boolean }): Flat {
	const told = reading.facts.filter(({ standing }) => assumed || standing === "stated");
	const one = (path: string) => told.find(({ fact }) => fact === path);
	const found = (path: string) => one(path)?.value;
	const listOf = (facts: readonly ReadFact[]) => (path: string) =>
		facts
			.filter(({ fact }) => fact.startsWith(`${path}[`) || fact === path)
			.flatMap((one) =>
				one.fact === path && Array.isArray(one.value) ? one.value.map((value) => ({ ...one, value })) : [one],
			);
	const [list, every] = [listOf(told), listOf(reading.facts)];
	const make = { board: flatBoard, processor: flatProcessor, case: flatCase }[reading.kind];
	return Object.fromEntries(
		Object.entries(make(found, list, one, assumed, every)).filter(
			([, value]) => value !== undefined && !isEmptyByLack(value),
		),
	);
}

type Found = (path: string) => unknown;
type List = (path: string) => readonly ReadFact[];
type One = (path: string) => ReadFact | undefined;

const isEmptyByLack = (value: unknown): boolean => Array.isArray(value) && value.length === 0 && !noneIsTold.has(value);
const noneIsTold = new WeakSet<object>();

/** A list that the text gives as empty. */
function none(): readonly unknown[] {
	const empty: unknown[] = [];
	noneIsTold.add(empty);
	return empty;
}

const isNone = (value: unknown): boolean => Array.isArray(value) && value.length === 0;

/** The facts of an entry that are stated, or all. */
function statedOf({ value, assumed }: ReadFact, all: boolean): Plain {
	const entries = Object.entries(value as Plain);
	return Object.fromEntries(entries.filter(([key]) => all || !assumed?.includes(key)));
}

function flatBoard(found: Found, list: List, one: One, all: boolean): Flat {
	const standard = found("wireless.standard") as string | undefined;
	const lights = list("headers.lights").map((fact) => (fact.value as Plain)["volts"]);
	const count = (volts: number) => lights.filter((one) => one === volts).length || undefined;
	const wired = list("wiredGbps").map(({ value }) => value);
	const pictures = found("pictureSockets");
	return {
		socket: found("socket"),
		chipset: found("chipset"),
		formFactor: found("form"),
		widthMm: found("widthMm"),
		depthMm: found("depthMm"),
		memoryType: found("memory.type"),
		memorySlots: found("memory.slots"),
		memoryMaxGB: found("memory.maxGb"),
		memoryMaxMTs: found("memory.highestMtPerS"),
		memoryChannels: found("memory.channels"),
		pcieSlots: list("cardSlots")
			.filter((fact) => (fact.value as Plain)["bus"] !== "PCI")
			.map((fact) =>
				renamed(statedOf(fact, all), {
					generation: "gen",
					lengthLanes: "mechanicalLanes",
					wiredLanes: "electricalLanes",
				}),
			),
		m2Slots: isNone(found("m2Sockets"))
			? none()
			: list("m2Sockets").map((fact) => {
					const told = statedOf(fact, all);
					const widest = told["widestMm"] as number | undefined;
					const lengths = told["lengthsMm"] as number[] | undefined;
					return {
						...renamed(told, { generation: "gen", wiredLanes: "lanes" }),
						...(told["sata"] === true ? { sata: true } : {}),
						...(told["place"] === "riser" ? { via: "card" } : {}),
						// Cards of 25 mm come in the lengths 80 and 110 only.
						...(lengths
							? {
									sizes: lengths
										.flatMap((mm) => (widest === 25 && mm >= 80 ? asPrinted(mm, fact.quote) : [`22${mm}`]))
										.map(Number),
								}
							: {}),
					};
				}),
		sataPorts: list("drivePorts").filter((fact) => (fact.value as Plain)["kind"] === "SATA").length || undefined,
		usbRear: list("rearUsb").map((fact) =>
			renamed(statedOf(fact, all), { gbps: "gbps", plug: "connector", count: "count" }),
		),
		usbHeaders: [
			...header(one("headers.usb2"), 0.48),
			...header(one("headers.usb5"), 5),
			...ovalHeaders(list("headers.typeC")),
		],
		ethernetGbps: wired.length === 1 ? wired[0] : wired,
		wifi: standard?.replace("Wi-Fi ", ""),
		bluetooth: found("wireless.bluetoothVersion"),
		videoOutputs: isNone(pictures) ? none() : list("pictureSockets").map(({ value }) => value),
		cpuPowerConnectors: list("power.processorPlugs").map(({ value }) => String(value).replace("-pin", "")),
		fanHeaders: list("headers.fans").length || undefined,
		argbHeaders: count(5),
		rgbHeaders: count(12),
		audioCodecChannels: found("sound.channels"),
		laneSharing: list("sharing").map(({ quote }) => quote),
	};
}

/** Of the two widths of a length those that the line prints. */
function asPrinted(mm: number, quote: string): readonly string[] {
	const both = [`22${mm}`, `25${mm}`];
	const printed = both.filter((size) => quote.includes(size));
	return printed.length > 0 ? printed : both;
}

function header(fact: ReadFact | undefined, gbps: number): readonly Plain[] {
	if (!fact) return [];
	return [
		{
			gbps,
			...(fact.standing === "stated" ? { headers: fact.value } : {}),
			...(fact.ports === undefined ? {} : { ports: fact.ports }),
		},
	];
}

function ovalHeaders(all: readonly ReadFact[]): readonly Plain[] {
	const [first] = all;
	if (!first) return [];
	const ports = all.every((one) => one.ports !== undefined) ? all.length : undefined;
	const isStated = all.every(({ standing }) => standing === "stated");
	return [
		{
			...(first.value as Plain),
			connector: "C",
			...(isStated ? { headers: all.length } : {}),
			// A header of this sort gives one socket: that is noted where the headers are not.
			...(ports === undefined || isStated ? {} : { ports }),
		},
	];
}

function flatProcessor(found: Found, list: List, _one: One, _all: boolean, every: List): Flat {
	// For how many modules a rate holds is not asked here, and that alone is what follows from a standard.
	const rates = every("memory.rates").map(({ value }) => value as Plain);
	const types = list("memory.types").map(({ value }) => String(value));
	return {
		socket: found("socket"),
		cores: found("cores"),
		threads: found("threads"),
		basePowerW: found("baseW"),
		maxPowerW: found("peakW"),
		memoryTypes: types.map((type) => {
			const best = Math.max(...rates.filter((rate) => rate["type"] === type).map((rate) => Number(rate["mtPerS"])));
			return Number.isFinite(best) ? `${type}-${best}` : type;
		}),
		integratedGraphics: found("graphics"),
		pcieGen: found("lanes.generation"),
		baseGHz: found("baseGhz"),
		boostGHz: found("boostGhz"),
	};
}

function flatCase(found: Found, list: List, _one: One, _all: boolean, every: List): Flat {
	const slots = found("cardSlots");
	// "5+2": that the second figure is of upright slots is not asked here.
	const upright = every("uprightSlots")[0]?.value;
	return {
		boardSizes: list("boardForms").map(({ value }) => value),
		gpuMaxMm: found("cardMaxLengthMm"),
		coolerMaxMm: found("coolerMaxHeightMm"),
		psuMaxMm: found("supplyMaxLengthMm"),
		expansionSlots:
			slots === undefined ? undefined : upright === undefined ? slots : `${String(slots)}+${String(upright)}`,
		fanMounts: list("fanPlaces").map(({ value }) => {
			const { place, count, sizeMm } = value as Plain;
			return { place: place === "inside" ? "other" : place, count, mm: sizeMm };
		}),
		frontPorts: list("frontSockets").map(({ value }) =>
			/type-?c|usb-?c/i.test(String(value)) ? "USB-C" : value === "sound" ? "audio" : value,
		),
		radiatorSizes: [
			...new Set(list("radiatorPlaces").flatMap(({ value }) => (value as Plain)["lengthsMm"] as number[])),
		],
		drive35: found("driveBays.inch35"),
		drive25: found("driveBays.inch25"),
	};
}

function renamed(value: Plain, names: Readonly<Record<string, string>>): Plain {
	return Object.fromEntries(
		Object.entries(names).flatMap(([from, to]) => (value[from] === undefined ? [] : [[to, value[from]]])),
	);
}
