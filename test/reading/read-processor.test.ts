import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { processor } from "../../src/parts/processor.ts";
import { readProcessor } from "../../src/reading/read-processor.ts";
import { textLines, textOfLines } from "../../src/reading/text-lines.ts";
import { specLikeText } from "./spec-like-text.ts";

/** Facts by path; those that are only assumed have a question mark. */
const facts = (text: string): Record<string, unknown> =>
	Object.fromEntries(
		readProcessor(text).facts.map(({ fact, value, standing }) => [standing === "assumed" ? `${fact}?` : fact, value]),
	);
const doubts = (text: string) => readProcessor(text).doubts.map(({ fact, might }) => [fact, ...might]);

describe("one line gives one fact", () => {
	test.each([
		["Socket: FCLGA1432", { socket: "LGA1432" }],
		["Socket: FCLGA1432, FCBGA1432", { socket: "LGA1432" }],
		["Sockel: Lantern 4 (LGA1432)", { socket: "Lantern 4" }],
		["CPU-Sockel\tLT5", { socket: "LT5" }],
		["Socket: LGA 1432\nPackage: FC-LGA1432", { socket: "LGA1432" }],
		["Package: FCBGA1432", {}],
		["Sockets supported: 1S only", {}],
		["Package size: 45 mm x 37.5 mm", {}],
		["Total Cores: 24", { cores: 24 }],
		["Cores: 8P+16E", { cores: 24 }],
		["Cores: 24 (8P + 16E)", { cores: 24 }],
		["# of cores : 20 (8 P-cores + 12 E-cores)", { cores: 20 }],
		["# of Performance-cores : 8\n# of Efficient-cores : 16", { cores: 24 }],
		["# of Performance-cores\n8\n# of Efficient-cores\n16\nTotal Cores\n24", { cores: 24 }],
		["Kerne / Threads: 8 / 16", { cores: 8, threads: 16 }],
		["Cores: 8 (16 threads)", { cores: 8, threads: 16 }],
		["Prozessorkerne: Quad-Core", { cores: 4 }],
		["Core voltage: 1.2 V", {}],
		["Base clock: 3,8 GHz", { baseGhz: 3.8 }],
		["Basistakt: 3.800 MHz", { baseGhz: 3.8 }],
		["Base clock (BCLK): 100 MHz", {}],
		["Base clock: 100 MHz", {}],
		["Max. Boost Clock: Up to 5.7GHz", { boostGhz: 5.7 }],
		["Taktfrequenz: 3,6 GHz (Turbo bis zu 4,2 GHz)", { baseGhz: 3.6, boostGhz: 4.2 }],
		["Base clock: 3.0 GHz (P-core), 2.2 GHz (E-core)", { baseGhz: 3 }],
		["Efficient-core Base Frequency: 2.2 GHz\nPerformance-core Base Frequency: 3.0 GHz", { baseGhz: 3 }],
		["Max Turbo Frequency: 5.8 GHz\nPerformance-core Max Turbo Frequency: 5.4 GHz", { boostGhz: 5.8 }],
		["Graphics: Weald\nGraphics Frequency: 1.65 GHz\nMax Turbo Frequency: 1.5 GHz", { graphics: true, boostGhz: 1.5 }],
		["Memory clock: 5600 MHz", {}],
		["Default TDP: 65W", { baseW: 65 }],
		["Thermal Design Power\t95 Watt", { baseW: 95 }],
		["Verlustleistung (TDP): 65 W", { baseW: 65 }],
		["TDP: 120 W (PPT 162 W)", { baseW: 120, peakW: 162 }],
		["PL1: 125 W\nPL2: 253 W", { baseW: 125, peakW: 253 }],
		["Base / Max Turbo Power: 125 W / 253 W", { baseW: 125, peakW: 253 }],
		["Power: 125 W (base), 253 W (max. turbo)", { baseW: 125, peakW: 253 }],
		["cTDP: 45-65 W\nConfigurable TDP: 45 W\nMinimum assured power: 55 W", {}],
		["TDP 65 W", { baseW: 65 }],
		["Cadmor 5 1300 65 W TDP 88 W PPT", { baseW: 65, peakW: 88 }],
		["8 Cores 16 Threads 4.2 GHz base 5.1 GHz boost", { cores: 8, threads: 16, baseGhz: 4.2, boostGhz: 5.1 }],
		["Cache: 32 MB; Cores: 8; Threads: 16; TDP: 65 W", { cores: 8, threads: 16, baseW: 65 }],
		["TJUNCTION : 100°C", { hottestC: 100 }],
		["Max. Operating Temperature (Tjmax): 95 °C", { hottestC: 95 }],
		["Storage temperature: -25 to 85 °C", {}],
		["Tau: 56 s", { averagingS: 56 }],
		["Unlocked for overclocking: Yes", { unlocked: true }],
		["Freier Multiplikator\tnein", { unlocked: false }],
		["Memory overclocking: Yes", {}],
		["Graphics model: Weald 610", { graphics: true }],
		["Integrated graphics: No", { graphics: false }],
		["Processor graphics: Discrete graphics card required", { graphics: false }],
		["Grafikkarte: nicht enthalten", {}],
		["Thermal Solution (PIB): Gust Silent", { coolerInBox: true }],
		["Kühler im Lieferumfang: Nein", { coolerInBox: false }],
		["Thermal Solution Specification: ST-2", {}],
		["Recommended cooler: liquid", {}],
		["Series: Crew 3", { series: "Crew 3" }],
		["Codename: Bramley", { generation: "Bramley" }],
		["Codename: Bramley\nGeneration: 4th", { generation: "4th" }],
		["Memory channels: 2", { "memory.channels": 2 }],
		["Max Memory Size (dependent on memory type) : 128 GB", { "memory.maxGb": 128 }],
		["Max. memory: 6 TB", { "memory.maxGb": 6144 }],
		["Max Memory Bandwidth : 89.6 GB/s", {}],
		["ECC Memory Supported: Yes (requires board support)", { "memory.errorCorrection": true }],
		["Cache: 36 MB ECC\nL2 Cache: 32 MB", {}],
		["PCI Express Revision : 5.0 and 4.0", { "lanes.generation": 5 }],
		["Chipset link: PCIe 4.0 x8", { "lanes.uplink": 8 }],
		["Direct Media Interface (DMI) Revision : 4.0", {}],
		["PCI Express Configurations : Up to 1x16+4, 2x8+4", { "lanes.graphics": 16, "lanes.storage?": 4 }],
		["PCIe configurations: x4, x8, x16\nPCIe lanes: 64", {}],
		["Number of graphics lanes: 16", { "lanes.graphics": 16 }],
		["Clock: 3,8 GHz (5,5 GHz boost)", { baseGhz: 3.8, boostGhz: 5.5 }],
		["Base / boost clock (GHz): 3.8 / 5.2", { baseGhz: 3.8, boostGhz: 5.2 }],
		["Base frequency: 3.6 GHz (P) / 2.6 GHz (E)", { baseGhz: 3.6 }],
		["Clock: 3.8 GHz\nBoost clock: 5.2 GHz", { baseGhz: 3.8, boostGhz: 5.2 }],
		["All-core turbo: 4.8 GHz\nMax turbo: 5.2 GHz", { boostGhz: 5.2 }],
		["Core count 8 / Thread count 16", { cores: 8, threads: 16 }],
		["It runs at 3.8 GHz base and boosts to 5.2 GHz.", { baseGhz: 3.8, boostGhz: 5.2 }],
		["Processor power, base to max turbo: 105 to 162 W", { baseW: 105, peakW: 162 }],
		["PPT / TDP: 88 W / 65 W", { baseW: 65, peakW: 88 }],
		["Base power: 65 W\nMax. power: 92 W", { baseW: 65, peakW: 92 }],
		["TDP (W): 65", { baseW: 65 }],
		["TDP: 65 W (max. 88 W)", { baseW: 65, peakW: 88 }],
		["- 105W TDP (cooler sold separately)", { baseW: 105 }],
		["Встроенное графическое ядро: нет", { graphics: false }],
		["Integrated graphics cores: 4", {}],
		["Cadmor 5 1300 | 6C/12T | Socket BG6 | 65W | Tray", { cores: 6, threads: 12, socket: "BG6", baseW: 65 }],
		["In the box: processor, cooler (up to 95 W TDP), guide", { coolerInBox: true }],
		["In the box: processor, guide", {}],
		["Graphics: requires a graphics card", { graphics: false }],
		["DDR4 support: No", {}],
		["Home / Parts / Processors / Socket LT5\nCadmor 5 1300, boxed", { socket: "LT5" }],
		["Socket compatibility: LT4 boards, not LT5", {}],
		["It has 8 cores, four more than its predecessor, which had 65 W TDP, 12 threads.", { cores: 8 }],
		['Cores: 8\n"Runs at 5.5 GHz, 12 cores in fact"', { cores: 8 }],
	])("%j", (text, found) => {
		expect(facts(text)).toEqual(found);
		expect(doubts(text)).toEqual([]);
	});
});

describe("memory rates", () => {
	const row = (modulesPerChannel: number, mtPerS: number, ranks?: number, type = "DDR5") => ({
		type,
		modulesPerChannel,
		...(ranks ? { ranks } : {}),
		mtPerS,
	});
	test("a plain rate holds, as an assumption, with one module a channel", () => {
		expect(facts("Memory Types :\nUp to DDR5 5600 MT/s\nUp to DDR4 3200 MT/s")).toEqual({
			"memory.types": ["DDR5", "DDR4"],
			"memory.rates[0]?": row(1, 5600),
			"memory.rates[1]?": row(1, 3200, undefined, "DDR4"),
		});
	});
	test("a table by modules needs the channels", () => {
		const table = "Max Memory Speed: 2x1R DDR5-5200, 2x2R DDR5-5000, 4x1R DDR5-3600";
		// Without them the fewest modules tell what one a channel reach at least.
		expect(facts(table)).toEqual({ "memory.types": ["DDR5"], "memory.rates[0]?": row(1, 5200) });
		expect(facts(`${table}\nMemory channels: 2`)).toEqual({
			"memory.channels": 2,
			"memory.types": ["DDR5"],
			"memory.rates[0]": row(1, 5200, 1),
			"memory.rates[1]": row(1, 5000, 2),
			"memory.rates[2]": row(2, 3600, 1),
		});
	});
	test("modules a channel", () => {
		expect(facts("Memory: DDR5-5600 (1DPC), DDR5-4400 (2DPC)")).toMatchObject({
			"memory.rates[0]": row(1, 5600),
			"memory.rates[1]": row(2, 4400),
		});
	});
	test("an overclocked rate is none", () => {
		expect(facts("Memory: DDR5-8000 (OC)")).toEqual({ "memory.types": ["DDR5"] });
	});
});

describe("what could mean two things is a doubt", () => {
	test.each([
		["Socket: LGA1432, LGA1555", [["socket", "LGA1432", "LGA1555"]]],
		["Socket: 1432", [["socket", "LGA1432", "1432"]]],
		[
			"Power consumption: from 60 W to 89 W",
			[
				["baseW", 60],
				["peakW", 89],
			],
		],
		["Wattage: 65 W", [["baseW", 65]]],
		["TDP: 65 W\nTDP: 95 W", [["baseW", 65, 95]]],
		["Clock speed: 4.7 GHz", [["baseGhz", 4.7]]],
		["Base clock: 3.0 GHz / 2.2 GHz", [["baseGhz", 3, 2.2]]],
		["GPU cores: 12", [["graphics", true]]],
		["Graphics: -", [["graphics", false]]],
		["ECC: depends on the board", [["memory.errorCorrection", true, false]]],
		[
			"Base clock: 5 GHz\nBoost clock: 4 GHz",
			[
				["baseGhz", 5],
				["boostGhz", 4],
			],
		],
		[
			"Cores: 8\nThreads: 4",
			[
				["cores", 8],
				["threads", 4],
			],
		],
		[
			"Cores\t6\t8\nBoost clock\t5.0 GHz\t5.3 GHz",
			[
				["cores", 6, 8],
				["boostGhz", 5, 5.3],
			],
		],
		["# of Performance-cores: 8", [["cores"]]],
		["Cadmor 5 1300, 8 threads\nThreads: 4", [["threads", 8, 4]]],
		["Max. boost clock: 5.0 GHz\nTurbo clock: 5.2 GHz", [["boostGhz", 5, 5.2]]],
		["Max. power: 92 W", [["peakW", 92]]],
		["Cores: 900", [["cores"]]],
	])("%j", (text, open) => {
		expect(doubts(text)).toEqual(open);
		expect(facts(text)).toEqual({});
	});
	test("a bare figure that another line names is none", () => {
		expect(doubts("Cadmor 7 2400, 65W, 4.7 GHz\nTDP: 65 W\nBoost clock: 4.7 GHz")).toEqual([]);
	});
});

describe("a whole page", () => {
	const wanted = { cores: 6, threads: 12, baseGhz: 4.2, boostGhz: 5.1, baseW: 65, socket: "LT5", graphics: true };
	test.each([
		[
			"a run-on title",
			"Cadmor 5 1300, 6C/12T, base 4.20 GHz, turbo 5.10 GHz, TDP 65W, Socket LT5, integrated graphics",
		],
		[
			"labels in German",
			"Cadmor 5 1300\nAnzahl der Kerne: 6\nAnzahl Threads: 12\nGrundtakt: 4,2 GHz\nMaximaltakt: 5,1 GHz\nTDP: 65 Watt\nSockel: LT5\nIntegrierte Grafik: Ja",
		],
		[
			"columns",
			"Model\tCores\tThreads\tBase Clock\tBoost Clock\tTDP\tSocket\tGraphics\nCadmor 5 1300\t6\t12\t4.2 GHz\t5.1 GHz\t65 W\tLT5\tWeald",
		],
		[
			"pairs in a row",
			"Cadmor 5 1300\nCores\t6\tThreads\t12\nBase clock\t4.2 GHz\tBoost clock\t5.1 GHz\nTDP\t65 W\tSocket\tLT5\nIntegrated graphics\tWeald",
		],
		[
			"HTML",
			"<h1>Cadmor 5 1300</h1><table><tr><td>Cores</td><td>6</td></tr><tr><td>Threads</td><td>12</td></tr><tr><td>Base clock</td><td>4.2 GHz</td></tr><tr><td>Boost clock</td><td>5.1 GHz</td></tr><tr><td>TDP</td><td>65 W</td></tr><tr><td>Socket</td><td>LT5</td></tr><tr><td>Graphics model</td><td>Weald</td></tr></table>",
		],
		[
			"a line for each label and value",
			"Cadmor 5 1300\nNumber of cores\n6\nNumber of threads\n12\nBase frequency\n4.2 GHz\nMax. turbo frequency\n5.1 GHz\nTDP\n65 W\nSocket\nLT5\nIntegrated graphics\nWeald",
		],
		[
			"labels parted by spaces",
			"Cadmor 5 1300\nNumber of cores 6\nNumber of threads 12\nBase clock 4.2 GHz\nTurbo clock 5.1 GHz\nTDP 65 W\nSocket LT5\nIntegrated graphics Yes",
		],
		[
			"sentences",
			"Cadmor 5 1300\nIt has 6 cores and 12 threads and integrated graphics. Boosts up to 5.1 GHz.\nThe previous model had 4 cores.\nBase clock: 4.2 GHz\nSocket LT5, TDP 65 W",
		],
	])("as %s", (_name, text) => {
		const reading = readProcessor(text);
		expect(facts(text)).toEqual(wanted);
		expect(reading.doubts).toEqual([]);
		expect(reading.part.name).toBe("Cadmor 5 1300");
	});
	test.each([
		[
			"French",
			"Cadmor 5 1300\nSupport du processeur\nLT5\nNombre de cœurs\n6\nNombre de threads\n12\nFréquence de base\n4,2 GHz\nFréquence turbo maximale\n5,1 GHz\nPuissance de base\n65 W\nContrôleur graphique intégré\nWeald",
		],
		[
			"Spanish",
			"Cadmor 5 1300\nEl procesador para el zócalo LT5 reúne 6 núcleos y 12 hilos, dos núcleos más que su antecesor. Trabaja a una frecuencia base de 4,2 GHz y alcanza 5,1 GHz en modo turbo. Su TDP es de 65 W. Incluye gráficos integrados Weald.",
		],
		[
			"Italian",
			"Cadmor 5 1300\nSocket processore\tLT5\nNumero di core\t6\nNumero di thread\t12\nFrequenza di base\t4,2 GHz\nFrequenza massima turbo\t5,1 GHz\nTDP\t65 W\nGrafica integrata\tSì, Weald\nFrequenza grafica\t2,2 GHz",
		],
		[
			"Polish",
			"Cadmor 5 1300\nGniazdo procesora: Socket LT5\nRdzenie / wątki: 6 / 12\nTaktowanie: 4,2 GHz (5,1 GHz w trybie boost)\nMoc bazowa: 65 W\nZintegrowany układ graficzny: Weald",
		],
		[
			"Ukrainian",
			"Cadmor 5 1300\nСокет | LT5\nКількість ядер | 6\nКількість потоків | 12\nБазова частота | 4,2 ГГц\nМаксимальна частота | 5,1 ГГц\nTDP | 65 Вт\nЧастота графічного ядра | 1,4 ГГц\nВбудована графіка | є",
		],
		[
			"Czech",
			"Cadmor 5 1300\nPatice: LT5\nPočet jader: 6\nPočet vláken: 12\nZákladní frekvence: 4,2 GHz\nMaximální frekvence (boost): 5,1 GHz\nTDP: 65 W\nIntegrovaná grafika: Ano",
		],
		[
			"Portuguese",
			"Cadmor 5 1300\nSoquete\nLT5\nNúcleos\n6\nThreads\n12\nClock base\n4.2 GHz\nClock máximo (turbo)\n5.1 GHz\nConsumo (TDP)\n65 W\nGráficos integrados\nSim",
		],
		[
			"Dutch",
			"Cadmor 5 1300\nSocket : LT5\nAantal kernen : 6\nAantal threads : 12\nBasiskloksnelheid : 4,2 GHz\nMaximale turbofrequentie : 5,1 GHz\nStroomverbruik (TDP) : 65 W\nGeïntegreerde graphics : Ja",
		],
		[
			"Turkish",
			"Cadmor 5 1300\nİşlemci Soketi: LT5\nÇekirdek Sayısı: 6\nİş Parçacığı Sayısı: 12\nTemel Frekans: 4.2 GHz\nMaksimum Turbo Frekansı: 5.1 GHz'e kadar\nTDP: 65 W\nDahili Grafik: Var",
		],
	])("in %s", (_name, text) => {
		expect(facts(text)).toEqual(wanted);
		expect(readProcessor(text).doubts).toEqual([]);
		expect(readProcessor(text).part.name).toBe("Cadmor 5 1300");
	});
	test("the rate may stand above the type, or several in a row", () => {
		const rate = { type: "DDR5", modulesPerChannel: 1, mtPerS: 5600 };
		for (const text of ["Memory speed: 5600 MT/s\nMemory type: DDR5", "Memory types: DDR5-5200, DDR5-5600"])
			expect(facts(text)).toEqual({ "memory.types": ["DDR5"], "memory.rates[0]?": rate });
	});
	test("what has a price below the facts, or stands under other goods, does not count", () => {
		const page = "Socket: LT5\nCores: 6\nThreads: 12\n";
		const own = { socket: "LT5", cores: 6, threads: 12 };
		expect(facts(`${page}Gust cooler for socket LT7 and LT9, 34.90 €\nMemory kit DDR4-3600, € 79`)).toEqual(own);
		expect(facts(`${page}Passend dazu\nCadmor 9 2950, 16C/32T, Sockel LT7`)).toEqual(own);
		expect(facts(`${page}Reviews (12)\nMy 16-core one does 6 GHz boost with 8 threads`)).toEqual(own);
	});
	test("printed twice is read once", () => {
		const page = "Cores: 6\nTDP: 65 W\n";
		expect(facts(page + page)).toEqual({ cores: 6, baseW: 65 });
	});
	test("other products below do not count", () => {
		const text = "Cores: 6\nSimilar products\nCadmor 9 2950X, 16C/32T, TDP 170 W, 5.7 GHz boost";
		expect(facts(text)).toEqual({ cores: 6 });
		expect(readProcessor(text).unread).toHaveLength(2);
	});
	test.each([
		["Model: Cadmor 5 1300\nCores: 6", "Cadmor 5 1300"],
		["Cadmor 5 1300 | LGA1432, Box\nModel: 1300", "Cadmor 5 1300"],
		["Cores: 6", "A processor read from its page"],
	])("%j has a name", (text, name) => {
		expect(readProcessor(text).part.name).toBe(name);
	});
	test("what is not understood is told", () => {
		expect(readProcessor("Cores: 6\nA fine thing, indeed.\nWarp: on").unread).toEqual([
			{ line: 2, text: "A fine thing, indeed." },
			{ line: 3, text: "Warp: on" },
		]);
	});
});

const pieces = [
	..."Cores Threads TDP Socket LT5 FCLGA1432 8P+16E 24 4C/8T GHz MHz 4,3 5.10 65W W DDR5-5600 GB ECC PCIe 5.0 1x16+4".split(
		" ",
	),
	...["Base clock", "Boost clock", "Graphics", "Memory", "Max", "Efficient-cores", "Yes", "No", "ohne Kühler", "TjMax"],
	...[": ", "\t", " | ", ", ", "\n", "\n", "(", ")", " - ", "/", "# ", "95 °C", "PL2", "unlocked", "128 GB"],
];

test("any text gives a sound part, with quotes that stand in it", () => {
	const text = fc.oneof(
		fc.array(fc.constantFrom(...pieces), { maxLength: 60 }).map((words) => words.join(" ")),
		fc.array(fc.constantFrom(...pieces), { maxLength: 60 }).map((words) => words.join("")),
		specLikeText,
	);
	fc.assert(
		fc.property(text, (pasted) => {
			const { part, facts: read } = readProcessor(pasted);
			expect(processor.safeParse(part).success).toBe(true);
			const shown = textOfLines(textLines(pasted).lines).replace(/\s+/g, " ");
			for (const { quote } of read)
				for (const words of quote.split(" / ")) expect(shown).toContain(words.replace(/\s+/g, " "));
		}),
		{ numRuns: 1000 },
	);
});

test("lines in any order never make a figure that no line has", () => {
	const lines = [
		..."Cores: 6|Threads: 12|TDP: 65 W|PPT: 88 W|Boost clock: 5.1 GHz|Base clock: 4.2 GHz|Socket: LT5|GPU".split("|"),
		..."Memory channels: 2|Max memory: 128 GB|Graphics|Frequency: 2.2 GHz|Efficient-core clock: 2 GHz||L3 Cache: 32 MB".split(
			"|",
		),
	];
	const right: Record<string, unknown> = { cores: 6, threads: 12, baseW: 65, peakW: 88, boostGhz: 5.1, socket: "LT5" };
	fc.assert(
		fc.property(fc.shuffledSubarray(lines), (some) => {
			const read = facts(some.join("\n"));
			for (const [fact, value] of Object.entries(right)) {
				if (fact in read) expect(read[fact]).toBe(value);
			}
		}),
		{ numRuns: 500 },
	);
});
