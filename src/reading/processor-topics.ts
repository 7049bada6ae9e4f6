import { inProcessorTerms } from "./processor-terms.ts";

/** What a label of a processor's page is about. "other": it is known to be about something that is no fact here. */
export type ProcessorTopic =
	| "name"
	| "series"
	| "generation"
	| "codeName"
	| "socket"
	| "package"
	| "cores"
	| "fastCores"
	| "smallCores"
	| "threads"
	| "coresAndThreads"
	| "baseClock"
	| "boostClock"
	| "clock"
	| "baseBoostClock"
	| "unlocked"
	| "graphics"
	| "graphicsDetail"
	| "graphicsLanes"
	| "cooler"
	| "coolerInBox"
	| "contents"
	| "basePower"
	| "peakPower"
	| "basePeakPower"
	| "power"
	| "mostPower"
	| "hottest"
	| "averaging"
	| "memory"
	| "memoryChannels"
	| "memoryMost"
	| "memoryCorrection"
	| "uplink"
	| "lanes"
	| "laneSetup"
	| "laneGeneration"
	| "other";

/** Small letters, signs of brands and footnotes gone, one space between words. Letters keep their places in no way. */
export function plainLabel(label: string): string {
	return label
		.slice(0, 120)
		.toLowerCase()
		.replace(/\((?:r|tm|c)\)|[®™©‡†*#:：]/g, " ")
		.replace(/[()[\]_,;]/g, " ")
		.replace(/\s+/g, " ")
		.trim();
}

const graphicsWords = /graphi|grafi[kc]|gráfic|\bi?gpu|\bigp\b|\bvideo\b|đồ họa|график|граф\. /;
const memoryWords = /memor|\bram\b|speicher|mémoire|bộ nhớ|памят|pamięć|paměť|\bddr\d?/;
const smallWords =
	/effici|effizi|\be-?(?:core|kern)|\b(?:lp-?)?e[ -](?:core|kern)|low[ -]power.{0,20}(?:core|kern)|\blpe\b|dense core/;
const fastWords = /performance|leistungs-?kern|\bp-?(?:core|kern)|\bp[ -](?:core|kern)/;
const tellsClock =
	/frequen|fréquen|frecuen|taktung|takt\b|takt(?:rate|frequenz)|clock|speed|geschwindigkeit|ghz|mhz|tốc độ|частота|częstotliwość/;
const tellsBoost = /turbo|boost|\bmax|maximal|höchst|burst|peak|tối đa|máxim|massim|макс|maks/;
const tellsBase = /\bbas(?:e|is)|basis|grund|nominal|nenn|cơ bản|базов|bazow|regular|standard/;

/** The processor's small cores, or things that are not its own cores at all. */
export const isOfSmallCores = (words: string): boolean => smallWords.test(words.toLowerCase());
export const isOfGraphics = (words: string): boolean => graphicsWords.test(words.toLowerCase());
export const isOfMemory = (words: string): boolean => memoryWords.test(words.toLowerCase());

const nameLabel =
	/^(?:cpu |processor |prozessor |product |produkt|item |artikel|article )?-?(?:model|name|modell|modelo|modèle|modellname|bezeichnung|produktname|title|titel|product)(?: name| number)?$|^(?:processor|prozessor)(?: number|nummer|-nummer)$|^(?:cpu|processor|prozessor|processeur|procesador|processore|procesor|процессор)$/;
const seriesLabel =
	/^(?:cpu|processor|prozessor|product|produkt)?[ -]?(?:series|serie|family|familie|line|linie|collection|baureihe|gruppe|produktreihe|produktfamilie)(?: (?:of |de |du |del |di |do )?(?:the )?processor)?$|^produkt(?:reihe|familie|linie|serie)$|^prozessor(?:familie|serie|reihe)$/;
const noneOfThese =
	/cache|\bl[1-4]\b|transistor|\bdie\b|lithogra|\bnm\b|fertigung|technology for|process(?:or)? technology|process(?:or)? size|warranty|garantie|weight|gewicht|launch|release|erschein|bandwidth|bandbreite|\bbus\b|\bfsb\b|\bbclk\b|voltage|spannung|package size|dimension|abmessung|power supply|netzteil|connector|anschluss|recommended|empfohlen|geeignet|eignung|(?<!memory )compatible(?! memory)|kompatib(?!.*(?:speicher|memory))|instruction|befehlssatz|virtuali|\btops\b|\bnpu\b|\bai\b|neural|multi-?threading|hyper-?threading|\bsmt\b|scalab|max cpu|operating system|betriebssystem|stepping|storage temp|lagertemp|ambient|umgebung|t ?case|\bprice|preis|\brating|bewertung|benchmark|score|points|punkte|\bean\b|article number|artikelnummer|part number|ordering|idle|leerlauf|minimum|assured|mindest|\bmin\b|c-?tdp|configurable|konfigurierbar|tdp[ -]?(?:up|down)|\beco\b/;

/** What labels are about that were asked for; emptied when full, so that it cannot grow. */
const known = new Map<string, { readonly topic: ProcessorTopic | undefined }>();
const mostKnown = 2000;

/** What a label is about; undefined where nobody can tell. */
export function topicOf(label: string): ProcessorTopic | undefined {
	if (label.length > 120) return undefined;
	const before = known.get(label);
	if (before) return before.topic;
	const topic = topicOfWords(label);
	if (known.size >= mostKnown) known.clear();
	known.set(label, { topic });
	return topic;
}

function topicOfWords(label: string): ProcessorTopic | undefined {
	const text = plainLabel(inProcessorTerms(label));
	if (text === "" || text.split(" ").length > 10) return undefined;
	if (isOfGraphics(text)) return graphicsTopic(text);
	if (/\bdmi\b|direct media|chipset|chipsatz|uplink/.test(text))
		return /lane|link|uplink|anbindung|interface/.test(text) && !/revision|version/.test(text) ? "uplink" : "other";
	if (/\becc\b|error.correct|fehlerkorrektur/.test(text) && !/cache/.test(text)) return "memoryCorrection";
	if (/\btau\b|pl ?1 time|averaging time|turbo time/.test(text)) return "averaging";
	if (
		/lieferumfang|scope of delivery|packing list|^(?:\S+ )?contents?(?: |$)|^(?:in the |what.s in the |in )?box(?: contents?)?$/.test(
			text,
		)
	)
		return /cooler|kühler|fan\b/.test(text) ? "coolerInBox" : "contents";
	if (noneOfThese.test(text)) return "other";
	if (nameLabel.test(text)) return "name";
	if (seriesLabel.test(text)) return "series";
	if (/code ?name|codebezeichnung|^core name$/.test(text)) return "codeName";
	if (/^(?:cpu|processor|prozessor|product)?[ -]?generation$/.test(text)) return "generation";
	if (/socket|sockel|\bsocle\b|zócalo|zoccolo|gniazdo|\bsoket|сокет|patice/.test(text))
		return /count|anzahl|number of|\bmax|cooler|kühler|compat|kompat/.test(text) ? "other" : "socket";
	if (/^(?:cpu |processor )?package(?: type)?$/.test(text)) return "package";
	if (/\bpci ?-?e\b|pcie|pci[ -]?express/.test(text)) return laneTopic(text);
	if (isOfMemory(text)) return memoryTopic(text);
	// Rows of a table "so many modules run at this rate".
	if (/^\d ?x ?[1248]r$|^[12] ?dpc$|^[12] (?:dimms?|modules?) per channel$/.test(text)) return "memory";
	if (/channels?\b|kan[aä]le?\b/.test(text)) return "memoryChannels";
	if (/tj ?-?max|t ?-?junction|\btj\b|temp/.test(text)) return "hottest";
	if (/overclock|übertakt|multipli[ek]|unlocked|freigeschaltet/.test(text)) return "unlocked";
	if (/cooler|kühler|thermal solution|heat ?sink|cooling|kühlung|\bfan\b|lüfter/.test(text)) return coolerTopic(text);
	const power = powerTopic(text);
	if (power) return power;
	if (tellsClock.test(text) || /^(?:\S+ )?(?:boost|turbo|base|basis)$|^(?:\S+ )?turbo mode$/.test(text))
		return clockTopic(text);
	return coreTopic(text);
}

function graphicsTopic(text: string): ProcessorTopic | undefined {
	if (/graphics cards?|grafikkarten?\b|video cards?/.test(text)) return "other";
	if (/lanes?\b/.test(text)) return "graphicsLanes";
	if (
		/\b(?:frequen|clock|takt|unit|shader|memory|speicher|base|basis|boost|max|turbo|output|display|resolution)/.test(
			text,
		)
	)
		return "graphicsDetail";
	if (/\bcores?\b/.test(text) && !/integr/.test(text)) return "graphicsDetail";
	if (text.split(" ").every((word) => graphicsLabelWords.has(word))) return "graphics";
	return /tích hợp|integr/.test(text) ? "graphics" : "graphicsDetail";
}

/** Words of which a label that asks for the graphics themselves is made. */
const graphicsLabelWords = new Set(
	(
		"processor processors cpu integrated on-board onboard built-in internal on-chip has with discrete integrierte integrierter " +
		"integriertes interne internes eingebaute graphic graphics grafik grafikeinheit grafikchip grafikprozessor " +
		"grafiklösung grafikmodell prozessorgrafik gpu igpu igp video graphics/igpu model modell name type typ chip engine " +
		"solution unit chipset included coprocessor card controller adapter de du da do dell' of in"
	).split(" "),
);

function laneTopic(text: string): ProcessorTopic {
	if (/config|konfig/.test(text)) return "laneSetup";
	return /lane|bahnen/.test(text) ? "lanes" : "laneGeneration";
}

function memoryTopic(text: string): ProcessorTopic {
	if (/channel|kan[aä]l/.test(text)) return "memoryChannels";
	const figure = /speed|rate|takt|frequen|type|typ\b|clock|support|unterstütz|hỗ trợ|interface/;
	const most = /\bmax|maximal|size|capacity|größe|kapazität|most|höchst/;
	return most.test(text) && !figure.test(text.replace(/depend.*$/, "")) ? "memoryMost" : "memory";
}

function coolerTopic(text: string): ProcessorTopic {
	if (/specification|spec\b|size|speed|height|höhe|support/.test(text)) return "other";
	return /\bpib\b|inclu|in (?:the )?box|bundle|lieferumfang|mitgeliefert|inkl|boxed|enthalten/.test(text)
		? "coolerInBox"
		: "cooler";
}

const tellsPeak =
	/tối đa|\bppt\b|\bpl ?2\b|\bmtp\b|peak|turbo|boost|\bmax|maximal|höchst|spitzen|package power tracking/;
const tellsLabel = /\btdp\b|\bthermal\b|\bbase|basis|grundleistung|\bpl ?1\b|\bpbp\b|verlustleistung|default|nenn/;

function powerTopic(text: string): ProcessorTopic | undefined {
	const isPower =
		/\btdp\b|thermal design|power|leistung|watt|verbrauch|consum|\bpl ?[12]\b|\bppt\b|\bpbp\b|\bmtp\b|công suất|tiêu thụ|мощность|\bmoc\b/;
	if (!isPower.test(text) || fastWords.test(text) || tellsClock.test(text)) return undefined;
	const [isLabel, isPeak] = [tellsLabel.test(text), tellsPeak.test(text)];
	if (isLabel && isPeak) return /[/&+–-]|\b(?:und|and|to|bis)\b/.test(text) ? "basePeakPower" : "power";
	if (isLabel) return "basePower";
	if (!isPeak) return "power";
	return /turbo|boost|\bppt\b|pl ?2|\bmtp\b|peak|spitzen|package power/.test(text) ? "peakPower" : "mostPower";
}

function clockTopic(text: string): ProcessorTopic {
	if (smallWords.test(text)) return "other";
	const [isBase, isBoost] = [tellsBase.test(text), tellsBoost.test(text)];
	if (isBase && isBoost) return "baseBoostClock";
	if (isBase === isBoost) return "clock";
	return isBase ? "baseClock" : "boostClock";
}

function coreTopic(text: string): ProcessorTopic | undefined {
	const hasThreads =
		/threads?\b|\bhilos\b|luồng|поток|wątk|log(?:ical|ische) (?:processors|prozessoren|cores|kerne)/.test(text);
	const hasCores =
		/cores?\b|kern(?:e|en|anzahl|zahl)?\b|núcleos|c(?:oe|œ)urs|rdzeni|ядер|jader|số nhân|kernanzahl/.test(
			text.replace(/logical cores|logische kerne/g, ""),
		);
	if (hasThreads && hasCores) return "coresAndThreads";
	if (hasThreads) return "threads";
	if (!hasCores) return undefined;
	if (smallWords.test(text)) return "smallCores";
	if (fastWords.test(text)) return "fastCores";
	return "cores";
}

/** Which of a processor's powers words beside a figure name; "other" for limits that are neither. */
export function powerNamed(words: string): "base" | "peak" | "other" | undefined {
	const text = words.toLowerCase();
	if (/c-?tdp|config|konfig|eco|\bmin|assured|tdp[ -]?(?:up|down)|idle|leerlauf/.test(text)) return "other";
	const [isLabel, isPeak] = [tellsLabel.test(text), tellsPeak.test(text)];
	if (isLabel === isPeak) return undefined;
	return isLabel ? "base" : "peak";
}

/** Which of a processor's clocks words beside a figure name; "other" for small cores, graphics and memory. */
export function clockNamed(words: string): "base" | "boost" | "other" | undefined {
	const text = words.toLowerCase();
	if (smallWords.test(text) || graphicsWords.test(text) || memoryWords.test(text)) return "other";
	const isBase = tellsBase.test(text);
	const isBoost = tellsBoost.test(text) || /up to|bis\b|jusqu|hasta|fino a/.test(text);
	if (isBase && isBoost) {
		// "3.8 GHz base clock and boosts up to 5.3 GHz": the word next to the figure counts.
		const lastOf = (pattern: RegExp) => [...text.matchAll(new RegExp(pattern.source, "g"))].at(-1)?.index ?? -1;
		return lastOf(tellsBase) > lastOf(tellsBoost) ? undefined : "boost";
	}
	if (isBase === isBoost) return undefined;
	return isBase ? "base" : "boost";
}
