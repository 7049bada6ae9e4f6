import { once } from "../maths/once.ts";

/**
 * Words of other languages, each with the word that pages in English print for it; only what stands on processors'
 * pages, all from memory. Written without accents; a star stands for any ending. German is mostly read as it is.
 */
const dictionary: Readonly<Record<string, string>> = {
	cores:
		"coeur coeurs cœur cœurs nucleo nucleos nuclei rdzen* jadro jadra jader jadry jadrovy jadrove jadrovym ядро ядра ядер ядрами ядерн* kernen cekirdek* karnor karna magok magja* ytimet kjerner",
	threads:
		"hilo hilos subproces* fils watek watki watkow watkami watkow* поток поток* потік потоки потоків vlakno vlakna vlaken vlakny parcacig* parcacik* tradar trader szalak szal saikeet",
	frequency:
		"frequence frequences frecuencia* frequenza frequenze frequencia* frequentie* czestotliw* frekven* frekans* частот*",
	clock: "taktowan* horloge cadence reloj тактов* klok kloksnelheid",
	"base clock": "basiskloks* basisklok",
	"boost clock": "boostkloks* turbokloks* boostklok turboklok",
	"base frequency": "basisfreq* basisfrek* basfrekven* alapfrekven* alaporajel* basklock*",
	"boost frequency": "boostfreq* turbofreq* turbofrek* maxfrekven*",
	speed: "velocidad* velocita vitesse vitesses predkosc* szybkosc* швидк* скорост* rychlost* snelheid hiz hizi hizlari",
	base: "basico basica базов* bazow* zakladni* temel taban basis",
	turbo: "турбо",
	boost: "буст boosta",
	max: "maxima maximas maximo maximos massim* maksym* maksim* максим* макс maks maximaln* maximaal maximum maximale maximal najwyzsz* найвищ* наивысш* azami yuksek",
	peak: "picco pico pointe szczyt* піков* пиков* spickov* piekvermogen piek tepe",
	power:
		"puissance* potencia* potenza potenze moc mocy потужн* мощност* prikon* vykon vermogen guc gucu effekt teljesitmeny*",
	consumption:
		"consommation consumo consumi verbruik tuketim* spotreb* pobor споживан* потребл* энергопотреб* енергоспожив* zuzyci* stroomverbruik fogyasztas* stromforbruk* effektforbruk* spotreba",
	thermal: "thermique* termica termico termiczn* cieplna ciepln* теплов* термічн* термическ* tepeln* isil thermisch*",
	tdp: "тепловиділ* тепловыдел* термопакет* теплопакет* tdp-wert",
	memory:
		"memoire* memoria memorias memorie pamiec pamieci пам'ят* памят* pamet pameti* geheugen* bellek bellegi bellekler ram-geheugen озу озп minne minnet minnestyp* memori memoriatipus* muisti",
	cache: "кеш* кэш* onbellek onbellegi podreczn* vyrovnavac* mezipamet*",
	graphics:
		"graphique* grafico grafica graficos graficas grafici grafiche graficzn* graficky graficka graficke grafickeho grafisch* графік* графіч* графич* графика* відео видео відеочіп* видеочип* grafigi grafikler grafikleri",
	"graphics card": "відеокарт* видеокарт*",
	"graphics core": "відеоядр* видеоядр* grafikkern*",
	integrated:
		"integre integree integres integrees integrado* integrada* integrato integrata integrati zintegrowan* integrovan* geintegreerd* вбудован* встроен* интегрир* інтегров* tumlesik dahili entegre wbudowan* vestaven* incorporad* integrierte integrierter integriertes inbygg* integralt* terintegrasi",
	card: "tarjeta scheda karta karty karte karti kaart карта карти карты",
	controller: "controleur controlador controllore kontroler* контролер* контроллер* denetleyici* radic* uklad",
	socket:
		"socle zocalo zoccolo gniazdo soket* сокет* patice patici soquete роз'єм* разъем* yuva yuvasi processorvoet cpu-voet sockel sockeln foglalat* kanta",
	processor: "processeur* procesador* processore processori procesor* процесор* процессор* processador* islemci*",
	type: "tipo typ typy тип типи типы turu tur tipi",
	channels: "canal canaux canales canali canais kanal kanaly kanalow kanale kanaal kanalen канал* kanali kanalu kanaly",
	"dual channel": "двоканальн* двухканальн* dwukanalow* dvoukanal* tweekanaal* cift-kanal",
	"quad channel": "чотириканальн* четырехканальн* czterokanalow* ctyrkanal*",
	cooler:
		"ventirad refroidisseur* disipador* dissipatore* dissipador* кулер* chladic* chladice chlodzeni* koeler* sogutuc* вентилятор* ventilateur* ventilador* ventola wentylator*",
	cooling: "raffreddamento refrigeracion* refroidissement chlazeni охлажд* охолодж* koeling",
	included:
		"inclus incluse incluses incluido* incluida* inclusa incluso compreso fourni fournie zalacz* dolacz* inbegrepen meegeleverd dahil pribalen* fornecid*",
	includes: "incluye incluyen inclut comprend comprende zawiera містить содержит obsahuje bevat icerir inclui",
	box: "zestaw* baleni комплект* комплекта* kutu kutuda kutusu caja boite doos scatola caixa pudelk*",
	contents: "contenu contenido contenuto zawartosc obsah conteudo inhoud icerigi вміст содержимое",
	performance:
		"performant* rendimiento* prestazion* wydajn* производительн* продуктивн* vykonn* prestatie* performans* desempenho",
	efficient:
		"econome* eficien* efficiente efficienti енергоефект* ефективн* энергоэффект* эффективн* efektivn* energooszczedn* oszczedn* verimli* usporn* zuinige* efficientie* efficaces efficace",
	lanes: "lignes lineas linee linhas linii ліній лінії линий линии linek linky lijnen pasy",
	series: "seria serii серия серія серії серии gamme gama reeks serisi",
	family: "famille familia famiglia rodzina семейств* сімейств* ailesi",
	generation: "generacion geracao generazione generacja поколени* покоління generatie nesil",
	temperature: "температур* teplota teploty sicaklig* sicaklik* temperatuur temperatura temperaturas",
	unlocked: "desbloque* debloque* sbloccat* odblokowan* odemcen* odemknut* разблок* розблок* ontgrendel* kilitsiz",
	locked: "zablok* заблок* bloquead* bloccat* verrouille* uzamcen* vergrendeld kilitli",
	multiplier: "multiplicador moltiplicatore mnoznik* множник* множит* nasobic* carpan* multiplicateur vermenigvuldig*",
	free: "libre libero wolny volny свободн* вільн* livre vrij",
	recommended:
		"recommande* recomien* recomend* raccomand* consiglia* conseil* zalec* poleca* рекоменд* doporuc* aanbevolen onerilen onerilir aanrader",
	predecessor:
		"prédécesseur predecesseur antecesor predecesor predecessore poprzednik* попередни* предшествен* predchudc* antecessor voorganger* selefi onceki",
	more: "mas plus piu wiecej більше больше vice mais meer daha",
	minimum: "minima minimo minimale minimaln* мінім* миним* minimaal minimalna asgari",
	configurable: "konfigurow* konfigurovat* configurabil* instelbare настраив* налаштов* yapilandir*",
	bandwidth: "banda bande пропускн* przepustow* pasma propustnost bandbreedte bant",
	warranty: "gwarancja гаранті* гаранти* zaruka garanzia garantia",
	lithography: "gravure litograf* техпроц* technologiczny fabrication",
	capacity:
		"capacite capacidad* capacita pojemn* об'єм об'єму объем* kapacit* capaciteit kapasite* taille tamano wielkosc ilosc rozmiar velikost",
	supported:
		"soportad* supportat* suportad* obslugiwan* підтрим* поддерж* podporovan* podpora ondersteun* desteklenen destegi soporte compatibilita",
	compatible: "kompatybiln* compatibles compatibili compativ* сумісн* совместим* kompatibiln* uyumlu",
	without: "sin sans senza bez без sem zonder olmadan",
	with: "con avec com met",
	no: "nee geen ні hayir nao ne niet не нет немає відсутн* отсутств* brak yok aucun aucune nessun nessuna nessuno ninguno ninguna nenhum nenhuma zadna zadny zadne nincs nej ingen inget ei",
	yes: "sim так да ano evet oui є есть var igen",
	required:
		"requis requise requerid* richiest* wymagan* потрібн* требуется необхідн* vyzadov* vereist* gerekli* gerekir necesari* necessari* necessaire*",
	needs: "necesita nécessite necessite requiere richiede wymaga потребує требует vyzaduje vereist necessita requer",
	"memory channels": "geheugenkanal* speicherkan*",
	"memory speed": "geheugensnelheid geheugenkloks*",
	"up to": "hasta jusqu'a fino jusque до ate",
	and: "oraz",
	version: "wersja версія версия verze versie surum surumu version",
	W: "watios vatios watow watty вт ватт ват вата watt watts",
	GHz: "ггц гигагерц",
	MHz: "мгц",
	GB: "гб",
	TB: "тб",
};

/** Letters without accents, small; those that have no simpler form stay. */
function simple(word: string): string {
	const low = word.toLowerCase();
	if (/^[a-z'-]*$/.test(low)) return low;
	return low
		.normalize("NFD")
		.replace(/\p{M}/gu, "")
		.replaceAll("ł", "l")
		.replaceAll("ı", "i")
		.replaceAll("œ", "oe")
		.replaceAll("đ", "d")
		.replace(/[’ʼ`]/g, "'");
}

const whole = new Map<string, string>();
/** By the first three letters, so that a word is held against few stems. */
const stems = new Map<string, [stem: string, term: string][]>();
for (const [term, words] of Object.entries(dictionary)) {
	for (const word of words.split(" ")) {
		const plain = simple(word.replace("*", ""));
		if (!word.endsWith("*")) whole.set(plain, term);
		else stems.set(plain.slice(0, 3), [...(stems.get(plain.slice(0, 3)) ?? []), [plain, term]]);
	}
}

// The longest stem tells most.
for (const list of stems.values()) list.sort(([one], [other]) => other.length - one.length);

function termOf(word: string): string | undefined {
	if (word.length > 24) return undefined;
	const plain = simple(word);
	const bare = plain.replace(/^(?:[dlmnst]|qu|dell|all|nell)'(?=.)/, "");
	const found = whole.get(plain) ?? whole.get(bare);
	if (found !== undefined) return found;
	const [, term] = (stems.get(bare.slice(0, 3)) ?? []).find(([stem]) => bare.startsWith(stem)) ?? [];
	return term;
}

const numberWords = new Map<string, number>();
for (const [number, words] of Object.entries({
	2: "two dual zwei deux dos due dwa два dva dois twee iki",
	4: "four quad vier quatre cuatro quattro cztery чотири четыре ctyri quatro dort",
	6: "six hexa sechs seis sei szesc шість шесть sest zes alti",
	8: "eight octa acht huit ocho otto osiem вісім восемь osm oito sekiz",
	10: "ten deca zehn dix diez dieci dziesiec десять deset dez tien",
	12: "twelve zwolf douze doce dodici dwanascie дванадцять двенадцать dvanact doze twaalf",
	14: "fourteen vierzehn quatorze catorce quattordici czternascie ctrnact veertien",
	16: "sixteen sechzehn seize dieciseis sedici szesnascie шістнадцять шестнадцать sestnact dezesseis zestien",
	20: "twenty zwanzig vingt veinte venti dwadziescia двадцять двадцать dvacet vinte twintig",
	24: "twenty-four vierundzwanzig vingt-quatre veinticuatro ventiquattro",
	32: "thirty-two zweiunddreissig trente-deux",
}))
	for (const word of words.split(" ")) numberWords.set(simple(word), Number(number));

/** Notations of more than one word, after the words are in English; each is tried only where its key stands. */
const phrases = once((): readonly (readonly [key: string, pattern: RegExp, term: string])[] => [
	["support", /\bsupport (?:du |de |pour )?processor/gi, "socket"],
	["graphics", /\b(?:carte|plac[ae]|ekran card|karta|card) (?:graphics|de video)/gi, "graphics card"],
	["ekran", /\bekran card\p{L}{0,2}/giu, "graphics card"],
	["integrated", /\bgraphics (?:\p{L}{1,8} )?integrated\b/giu, "integrated graphics"],
	["mère", /\bcarte mère/gi, "motherboard"],
	["base", /\bplaca base/gi, "motherboard"],
	["główna", /\bpłyta główna/gi, "motherboard"],
	["madre", /\b(?:card|placa|scheda) madre/gi, "motherboard"],
	["плат", /(?:основн|материнск)\p{L}{1,3} плат\p{L}{1,3}/giu, "motherboard"],
	["thermal", /\benveloppe thermal/gi, "tdp"],
	["channel", /(?<!\p{L})(?:double|doble|doppio|duplo|dubbel|çift|podwójny) channels?/giu, "dual channel"],
	["do ", /\bdo (?=\d)/gi, "up to "],
	["tot ", /\btot (?=\d)/gi, "up to "],
	["up to a", /\bup to a (?=\d)/gi, "up to "],
	["kadar", /(?<![\d.,])(\d{1,5}(?:[.,]\d{1,3})?\s?(?:[gm]hz|mt\/s|[gt]b))(?:['’]\p{L}{1,3})? kadar/giu, "up to $1"],
]);

/** Words of Chinese and Japanese pages, which no spaces divide; longer ones first. From memory. */
const characters = once((): readonly (readonly [RegExp, string])[] => [
	[/：/g, ": "],
	[/（/g, " ("],
	[/）/g, ") "],
	[/、|，/g, ", "],
	[/コア数|核心数|核心數|内核数|內核數/g, " cores "],
	[/スレッド数?|线程数?|執行緒數?/g, " threads "],
	[
		/(?:最大)?(?:ターボ|ブースト)(?:クロック|周波数)|最大睿频|最高睿频|加速频率|最大加速頻率|超頻時脈/g,
		" boost clock ",
	],
	[/ベース(?:クロック|周波数)|基础频率|基本频率|基礎頻率|基準時脈|主频/g, " base clock "],
	[/最大ターボパワー|最大睿频功耗|最大渦輪功率/g, " maximum turbo power "],
	[/ベースパワー|基础功耗|基本功耗|基礎功率/g, " base power "],
	[/热设计功耗|熱設計功耗|設計功耗/g, " tdp "],
	[/内蔵グラフィックス|集成显卡|核芯显卡|核显|內建顯示|集成显示/g, " integrated graphics "],
	[/メモリ|内存|記憶體/g, " memory "],
	[/チャンネル|チャネル|通道/g, " channels "],
	[/ソケット|插槽|脚位|腳位/g, " socket "],
	[/キャッシュ|缓存|快取/g, " cache "],
	[/クーラー|散热器|散熱器/g, " cooler "],
	[/最大|最高/g, " max "],
	[/コア|核心/g, " core "],
	[/なし|无(?!线)|無(?!線)|不支持/g, " no "],
	[/あり|付属|有$/g, " yes "],
]);

/** Phrases of Vietnamese pages, longer ones first. From memory. */
const vietnamese = once((): readonly (readonly [RegExp, string])[] => [
	[/tổng\ssố\s(?:lõi|nhân)|số\s(?:lõi|nhân)/giu, "cores"],
	[/tổng\ssố\sluồng|số\sluồng/giu, "threads"],
	[/tần\ssố\sturbo(?:\stối\sđa)?|tốc\sđộ\stối\sđa/giu, "boost frequency"],
	[/tần\ssố\scơ\s(?:sở|bản)|tốc\sđộ\scơ\sbản/giu, "base frequency"],
	[/công\ssuất\sturbo\stối\sđa/giu, "maximum turbo power"],
	[/công\ssuất\scơ\s(?:bản|sở)/giu, "base power"],
	[/bộ\snhớ\sđệm/giu, "cache"],
	[/đồ\shọa\stích\shợp/giu, "integrated graphics"],
]);

function withoutCharacters(whole: string): string {
	const text = /[ạ-ỹđơư]/iu.test(whole)
		? vietnamese().reduce((told, [pattern, term]) => told.replace(pattern, term), whole)
		: whole;
	if (!/[\u3000-\u9fff\uff00-\uffef]/.test(text)) return text;
	return characters().reduce((told, [pattern, term]) => told.replace(pattern, term), text);
}

/** A label told a hundred times is turned into terms once. Emptied when full, so that it cannot grow. */
const known = new Map<string, string>();
const mostKnown = 2000;

/** The text with English words of the trade for those of other languages. Time is linear in its length. */
export function inProcessorTerms(text: string): string {
	if (text.length > 80) return translated(text.slice(0, 3000));
	const before = known.get(text);
	if (before !== undefined) return before;
	const told = translated(text);
	if (known.size >= mostKnown) known.clear();
	known.set(text, told);
	return told;
}

function translated(text: string): string {
	const plain = withoutCharacters(text).replace(
		/(?<![\d.,])(\d)[ \u00a0\u202f](\d{3})(?=\s?(?:mhz|mt\/s|мгц))/giu,
		"$1$2",
	);
	let told = plain.replace(/\p{L}[\p{L}\p{M}'’ʼ]*(?:-(?=wert|voet|kanal)\p{L}+)?/gu, (word) => termOf(word) ?? word);
	const small = told.toLowerCase();
	for (const [key, pattern, term] of phrases()) if (small.includes(key)) told = told.replace(pattern, term);
	// "5,0 GHz'e": an ending of Turkish.
	if (/['’]/.test(told)) told = told.replace(/(?<=hz|\dw|\d w|gb)['’]\p{L}{1,5}/giu, "");
	if (!/core|thread|kern/.test(small)) return told;
	return told.replace(
		/(?<!\p{L})(\p{L}{3,12}(?:-\p{L}{4,6})?)([\s-]?)(?=(?:cores?|threads?|kern(?:e|en|er)?)(?!\p{L}))/giu,
		(all, word: string, gap: string) => {
			const number = numberWords.get(simple(word));
			return number === undefined ? all : `${number}${gap === "" ? " " : gap}`;
		},
	);
}
