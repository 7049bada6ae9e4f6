import { describe, expect, test } from "vitest";
import { inCaseTerms } from "../../src/reading/case-terms.ts";
import { readCase } from "../../src/reading/read-case.ts";

const partOf = (text: string) => readCase(text).part;
const asked = (text: string) => readCase(text).doubts.map(({ fact }) => fact);

describe("pages in other languages", () => {
	const expected = {
		boardForms: ["ATX", "microATX", "Mini-ITX"],
		cardMaxLengthMm: 355,
		coolerMaxHeightMm: 164,
		supplyMaxLengthMm: 175,
		cardSlots: 7,
		driveBays: { inch35: 2, inch25: 3 },
		fanPlaces: [
			{ place: "front", sizeMm: 120, count: 3 },
			{ place: "front", sizeMm: 140, count: 2 },
			{ place: "rear", sizeMm: 120, count: 1, fitted: 1 },
		],
		radiatorPlaces: [{ place: "front", lengthsMm: [360] }],
		frontSockets: ["USB 3.0", "USB 3.0", "headphone", "microphone"],
	};
	test.each([
		[
			"Czech",
			'Podporované základní desky: ATX, Micro-ATX, Mini-ITX\nMax. délka grafické karty: 355 mm\nMax. výška chladiče CPU: 164 mm\nMax. délka zdroje: 17,5 cm\nRozšiřující sloty: 7\nPozice 3,5": 2\nPozice 2,5": 3\nPřední ventilátory: 3x 120 mm nebo 2x 140 mm\nZadní ventilátor: 1x 120 mm (součástí balení)\nRadiátor vpředu: 360 mm\nPřední konektory: 2x USB 3.0, sluchátka, mikrofon',
		],
		[
			"Portuguese, with tabs",
			'Placas-mãe\tATX, Micro-ATX, Mini-ITX\nComprimento da placa de vídeo\taté 355 mm\nAltura do cooler da CPU\taté 164 mm\nComprimento da fonte\taté 175 mm\nSlots de expansão\t7\nBaias 3,5"\t2\nBaias 2,5"\t3\nVentoinhas frontais\t3 x 120 mm ou 2 x 140 mm\nVentoinha traseira\t1 x 120 mm (inclusa)\nRadiador frontal\taté 360 mm\nPortas frontais\t2 x USB 3.0, 1 x fone de ouvido, 1 x microfone',
		],
		[
			"Russian prose",
			'Корпус принимает материнские платы ATX, microATX и Mini-ITX, видеокарты длиной до 355 мм, кулер высотой до 164 мм и блок питания до 175 мм. Есть 7 слотов расширения, два отсека 3.5" и три отсека 2.5". Спереди встают три вентилятора по 120 мм или два по 140 мм, сзади один 120 мм, уже установлен. Радиатор 360 мм встаёт спереди. На передней панели два порта USB 3.0, наушники и микрофон.',
		],
		[
			"Italian, a label line and a value line",
			'Schede madri supportate\nATX, micro ATX, mini ITX\nLunghezza massima scheda video\n355 mm\nAltezza massima dissipatore CPU\n164 mm\nLunghezza massima alimentatore\n175 mm\nSlot di espansione\n7\nAlloggiamenti 3,5"\n2\nAlloggiamenti 2,5"\n3\nVentole anteriori\n3 x 120 mm oppure 2 x 140 mm\nVentola posteriore\n1 x 120 mm (inclusa)\nRadiatore anteriore\n360 mm\nPorte frontali\n2 x USB 3.0\n1 x cuffie\n1 x microfono',
		],
		[
			"keys and values",
			'mainboards=ATX,mATX,ITX\ngpu_length_mm=355\ncpu_cooler_height_mm=164\npsu_length_mm=175\nexpansion_slots=7\ndrive_bays=2 x 3.5", 3 x 2.5"\nfans_front=3x120mm/2x140mm\nfans_rear=1x120mm (included)\nradiator_front=360mm\nfront_io=2x USB 3.0, 1x headphone, 1x microphone',
		],
	])("%s", (_, text) => {
		expect(partOf(text)).toMatchObject(expected);
		expect(asked(text)).toEqual([]);
	});
});

test("columns of a table that are places", () => {
	const text =
		"| Cooling | Front | Top | Rear |\n|---|---|---|---|\n| 120 mm fans | 3 | 2 | 1 |\n| Radiators | 360, 280 | 240 | none |\n";
	expect(partOf(text)).toMatchObject({
		fanPlaces: [
			{ place: "front", sizeMm: 120, count: 3 },
			{ place: "top", sizeMm: 120, count: 2 },
			{ place: "rear", sizeMm: 120, count: 1 },
		],
		radiatorPlaces: [
			{ place: "front", lengthsMm: [280, 360] },
			{ place: "top", lengthsMm: [240] },
		],
	});
});

test("other articles and questions below the page tell nothing of the case", () => {
	const text =
		"GPU length: 350 mm\nPSU length: 180 mm\n\nCustomers also bought\nGraphics card, length 290 mm\n\nQuestions\nDoes a GPU of 370 mm fit?\nPower supply, length 150 mm, 60.00 €";
	expect(partOf(text)).toMatchObject({ cardMaxLengthMm: 350, supplyMaxLengthMm: 180 });
	expect(asked(text)).toEqual([]);
});

test("a row with the drive cage in and one without: as sold, it is in", () => {
	const text = "GPU length | 300 mm | drive cage fitted\nGPU length | 460 mm | drive cage taken out\n";
	expect(partOf(text).cardMaxLengthMm).toBe(300);
	expect(asked("GPU length | 460 mm | drive cage taken out\n")).toEqual(["cardMaxLengthMm"]);
});

test("a place at the start of a sentence holds for what follows", () => {
	const text = "Graphics cards up to 340 mm. At the front, three 120 mm fans; at the rear, one 120 mm fan.";
	expect(partOf(text).fanPlaces).toEqual([
		{ place: "front", sizeMm: 120, count: 3 },
		{ place: "rear", sizeMm: 120, count: 1 },
	]);
});

test("drives of either size are counted for 3.5 inch, and asked for 2.5 inch", () => {
	const reading = readCase('Drive bays: 2 x 3.5" or 2.5", 1 x 2.5"');
	expect(reading.part.driveBays).toEqual({ inch35: 2 });
	expect(reading.doubts.map(({ fact, might }) => [fact, might])).toEqual([["driveBays.inch25", [1, 3]]]);
});

test("one socket for headphones and microphone is one socket", () => {
	expect(partOf("Front I/O: 1 x USB 3.0, 1 x audio/mic combo").frontSockets).toEqual(["USB 3.0", "sound"]);
	expect(partOf("Front I/O: 1 x USB 3.0, headphone, microphone").frontSockets).toEqual([
		"USB 3.0",
		"headphone",
		"microphone",
	]);
});

test("a quote stands as the page has it", () => {
	const text = "gpu_length_mm=355\ncpu_cooler_height_mm=164\npsu_length_mm=175\nexpansion_slots=7\n";
	for (const { quote } of readCase(text).facts) expect(text.split("\n")).toContain(quote);
});

test("short words of other languages do not change English", () => {
	const text = "Cards can be tall, do not block the top; an alternative is 3 x 120 mm at the front";
	expect(inCaseTerms(text)).toBe(text);
});
