import { once } from "../maths/once.ts";

/**
 * Words of other languages and glued notations, each with the standard term that pages in English print for it. Only
 * what stands beside figures and standard terms on pages; all from memory. A quote keeps the words of the page.
 */
const terms = once((): readonly (readonly [RegExp, string])[] => [
	// Signs of Chinese and Japanese pages, and their words for what stands beside figures.
	[/(?:可扩展|扩展出|可擴充)\s?(\d{1,2})\s?[个個]?\s?(?:接口|介面)/gu, " for $1 ports"],
	[/または|もしくは/gu, " or "],
	[/シリーズ/gu, " Series "],
	[/、|，/gu, ", "],
	[/；/gu, "; "],
	[/。/gu, ". "],
	[/（/gu, " ("],
	[/）/gu, ") "],
	[/[\u3040-\u30ff\u4e00-\u9fff]+/gu, " $& "],
	[/(?:最大支持|最高支持|最大|最高)/gu, "max. "],
	[/单条|單條/gu, "single DIMM "],
	[/スロット|插槽|插座/gu, " slots "],
	[/ヘッダー?|插针|排针|排針|針座/gu, " header "],
	[/接口|介面/gu, " interface "],
	[/コネクター?|接頭|连接器|連接器/gu, " connectors "],
	[/网口|網口|網路埠/gu, " LAN ports "],
	[/ポート|端口|連接埠/gu, " ports "],
	[/ファン|风扇|風扇/gu, " fan "],
	[/ポンプ|水泵/gu, " pump "],
	[/シャーシ|ケース|机箱|機殼/gu, " chassis "],
	[/システム|系统|系統/gu, " system "],
	[/ピン(?=\s|\P{L})|针(?!座)/gu, " pin "],
	[/供电|供電|電源|电源/gu, " power "],
	[/背面|后置|後置|背板/gu, " rear "],
	[/前面|前置/gu, " front "],
	[/内部|內部|板载|板載/gu, " internal "],
	[/合計|总计|總計|共计/gu, " total "],
	[/デュアルチャン?ネル|双通道|雙通道/gu, " dual channel "],
	[/アドレサブル|可编程|可寻址/gu, " addressable "],
	[/チップセット|芯片组|晶片組/gu, " chipset "],
	[/イーサネット|以太网|乙太網路/gu, " Ethernet "],
	[/モード|模式/gu, " mode "],
	[/オーディオ|音频|音效/gu, " audio "],
	[/サラウンド|声道|聲道|チャンネル/gu, " channel "],
	[/可扩展|扩展出|追加の/gu, " for "],
	[/インチ|英寸|吋/gu, "in "],
	[/(?<=for\s{1,3}\d{1,2})\s?[个個]/gu, " "],
	[/(?<=\d)\s?[个個](?!\p{L}*芯片)/gu, " x "],
	[/一[个個]/gu, "1 x "],
	[/[两兩二][个個]/gu, "2 x "],
	[/三[个個]/gu, "3 x "],
	[/支持|支援/gu, " supports "],
	[/内置|內置|内建/gu, " internal "],
	[/网卡|網卡|网络接口/gu, " LAN "],
	[/蓝牙|藍牙/gu, " Bluetooth "],
	[/\s{2,}/gu, " "],
	// Units and counts.
	[/(?<![\d.,])(\d)[ \u00a0\u202f](\d{3})(?=\s?(?:mhz|mt\/s|мгц))/giu, "$1$2"],
	[
		/(?<=\d\s?)(?:pol\.?|polegadas?|pouces?|pulgadas?|pulg\.?|pollici|cal[ei]?|дюйм\p{L}*|tum)(?=\s?[x×(]\s?\d)/giu,
		"in",
	],
	[
		/(?<=\din\.?\s?[x×]\s?\d{1,2}(?:[.,]\d+)?\s?|\d\sin\.?\s?[x×]\s?\d{1,2}(?:[.,]\d+)?\s?)(?:pol\.?|polegadas?|pouces?|pulgadas?|pulg\.?|pollici|cal[ei]?|дюйм\p{L}*|tum)(?!\p{L})/giu,
		"in",
	],
	[/(?<=\d\s?)(?:Гб[іи]т|Gbit)\s?\/\s?(?:с|s|сек)(?!\p{L})/giu, "Gb/s"],
	[/(?<=\d\s?)Gb\/giây/giu, "Gb/s"],
	[/(?<=\d\s?)(?:ГБ|Go|Гб)(?![\p{L}/])/gu, "GB"],
	[/(?<=\d\s?)(?:ТБ|To)(?![\p{L}/])/gu, "TB"],
	[/(?<=\d\s?)МГц/giu, "MHz"],
	[/(?<=\d\s?)[ВB](?=[\s,;)]|$)/gu, "V"],
	[/(?<!\p{L})(?:дополнительн\p{L}*|додатков\p{L}*)/giu, "additional"],
	[/(?<!\p{L})(?:гигабитн\p{L}*|гігабітн\p{L}*)/giu, "Gigabit"],
	[/(?<!\p{L})(?:помп\p{L}*)/giu, "pump"],
	[/(?<!\p{L})(?:корпусн\p{L}*)/giu, "chassis"],
	[/(?<=\d\s?)(?:мм)(?!\p{L})/giu, "mm"],
	[/(?<=\d\s?)(?:см)(?!\p{L})/giu, "cm"],
	[/(?<=\d)\s?(?:шт\.?|pcs\.?|pieces|stk\.?|stück|szt\.?|ks|uds?\.?|pezzi|adet|buah|st|kpl|個|个)(?!\p{L})/giu, ""],
	[
		/(?<=\d[\s-]?)(?:broches?|pines|pinos?|pin[oó]w|pinov\p{L}*|pinů|kontakt\p{L}*|контакт\p{L}*|pins?\sconector\p{L}*|polige?r?|pol(?:ig)?|pinli)(?!\p{L})/giu,
		"pin",
	],
	[/(?<=\d[\s-]?)пін\p{L}*|(?<=\d[\s-]?)пин\p{L}*/giu, "pin"],
	[/(?<=^|[\s,(])([1-9])\s(?=(?:4|6|8|20|24)[\s-]?pin)/giu, "$1 x "],
	[/(?<=\d)\s?db(?!\p{L})/gu, ""],
	[
		/(?<=^\W{0,3}|[(:,]\s?)(?<!gen\s|usb\s|type\s|\d\.)([1-9]\d?)\s(?=(?:SATA\s(?:6|3|7|III|ports?|connectors?)|RJ-?45|D-Sub|Type-[AC]\s?\(|M-?key|headers?\s\(|MCIO|(?:USB|HDMI|DisplayPort)\s?\d))/giu,
		"$1 x ",
	],
	// "3 (ATX 12V, 8-pin)"
	[/(?<=^|,\s)([1-9])\s\(([^(),]{2,20}),\s([48]|24)[\s-]?pin\)/giu, "$1 x $2 $3-pin"],
	// "PCIe 4.0 x4 -connectors: 2 x M.2"
	[/^(.{2,40}?)\s?-\s?connectors:\s?(\d{1,2}\s?x\s)(.*)$/giu, "$2$3, $1"],
	[/serial\sata/giu, "SATA"],
	// Things.
	[
		/(?<!\p{L})(?:carte\sm[eè]re|placa\s(?:base|madre|m[aã]e)|placa-m[aã]e|płyta\sgłówna|scheda\smadre|moederbord|základní\sdeska|материнск\p{L}+\sплат\p{L}+|anakart)(?!\p{L})/giu,
		"motherboard",
	],
	[
		/(?<!\p{L})(?:connecteurs?|conector(?:es)?|conettor\p{L}*|connettor[ei]|złącz[ae]?|konektor\p{L}*|aansluiting(?:en)?|розніми?|коннектор\p{L}*|разъ[её]м\p{L}*|роз['’ʼ]?[єe]м\p{L}*|đầu\snối|đầu\scắm|bağlantı\p{L}*|csatlakoz\p{L}*|konektor(?:y|ů)?|kontakter?|liitin|liittimet)(?!\p{L})/giu,
		"connectors",
	],
	[
		/(?<!\p{L})(?:ventilateurs?|ventilador(?:es)?|ventol[ae]|wentylator\p{L}*|ventilátor\p{L}*|ventilatoren|ventilator|вентилятор\p{L}*|lüfter\p{L}*|quạt)(?!\p{L})/giu,
		"fan",
	],
	[/(?<!\p{L})(?:pompe|bomba|pomp[ay]|pumpe|pumpa|pumppu)(?!\p{L})/giu, "pump"],
	[/(?<!\p{L})(?:sistema?|systém\p{L}*|sistemi|systemow\p{L}*|rendszer|систем\p{L}*|system)(?!\p{L})/giu, "system"],
	[
		/(?<!\p{L})(?:adr?essables?|direccionables?|indirizzabil[ei]|adresowaln\p{L}*|adresovateln\p{L}*|adresseerbaar|endereç[aá]ve(?:l|is)|adressierbar\p{L}*|адрес(?:н|уем|ован)\p{L}*|addressierbar\p{L}*)(?!\p{L})/giu,
		"addressable",
	],
	[/(?<!\p{L})(?:puertos?|portas?|porte|porty|portů|poorten|порти?і?в?|порт[ыа]?|cổng)(?!\p{L})/giu, "ports"],
	[
		/(?<!\p{L})(?:ranuras?|emplacements?|gniazd[ao]?|sloty|slotů|slotów|слот[иыаів]*|sleuven|fentes?|khe\scắm|yuva\p{L}*|steckplätze|zócalos?(?=\s(?:pci|m\.2|dimm|de\smem)))(?!\p{L})/giu,
		"slots",
	],
	[/(?<!\p{L})(?:steckplatz|ranura|slot\sde)(?!\p{L})/giu, "slot"],
	[/(?<!\p{L})(?:bluetooth|wi-?fi)\s(?:versi[oó]n|wersja|версія)\s/giu, "Bluetooth "],
	[/(?<!\p{L})(?:čerpadlo|pompa|pompka|pompki)(?!\p{L})/giu, "pump"],
	[
		/(?<!\p{L})(?:skříň|ház|kotelo|chassi|gabinete|kasa|caja|carcasa|gabinete|boîtier|chasis|châssis|behuizing|obudowy?|telaio)(?!\p{L})/giu,
		"chassis",
	],
	[/(?<!\p{L})(?:başlığı|başlıkları|cabezal(?:es)?|cabeçalhos?|embases?|nagłów\p{L}+)(?!\p{L})/giu, "header"],
	[/(?<!\p{L})(?:typu|tipo|typen?|tür)[\s-]([ac])(?![\p{L}\d])/giu, "Type-$1"],
	[
		/(?<=[78][\s-])(?:canali|canales|canais|canaux|kanálov\p{L}*|kanałow\p{L}*|kanal\p{L}*|каналь?н?\p{L}*)(?!\p{L})/giu,
		"channel",
	],
	[
		/(?<!\p{L})(?:double|doble|duplo|doppio|dubbel|çift|podwójny|dvoukanálov\p{L}*|doppel)\s?(?:canale?|kanaal|kanal|kanał)(?!\p{L})/giu,
		"dual channel",
	],
	[/(?<!\p{L})(?:canale?|kanał|kanaal)\s(?:doppio|doble|duplo|podwójny|double|dubbel)(?!\p{L})/giu, "dual channel"],
	[
		/(?<!\p{L})(?:zasilania|napájení|alimentation|alimentación|alimentazione|alimentação|живлення|питание|voeding|güç|stromversorgung)(?!\p{L})/giu,
		"power",
	],
	[/(?<!\p{L})fan(?:ı|ları|larının|y|ų)(?!\p{L})/giu, "fan"],
	[/(?<!\p{L})pompa(?:sı|ları)(?!\p{L})/giu, "pump"],
	[/(?<=\d\s?)х(?=\s?\d)|(?<=\d\s?)х(?=\s\p{L})/giu, "x"],
	[/(?<=\d)\s?\*\s?(?=\p{Lu}|\d|usb|hdmi|sata)/gu, " x "],
	// Places.
	[/(?<!\p{L})ön(?!\p{L})/giu, "front"],
	[
		/(?<!\p{L})(?:arri[eè]res?|traser[oa]s?|posterior[ei]?s?|tyln[aeyi]\p{L}*|zadní\p{L}*|zewnętrzn\p{L}*|na\szadním\spanelu|traseir[oa]s?|achterzijde|achteraan|задн\p{L}+|зовнішн\p{L}+|внешн\p{L}+|(?:ở\s)?mặt\ssau|phía\ssau|arka|hátlap\p{L}*|hátsó|bakpanel\p{L}*|belakang)(?!\p{L})/giu,
		"rear",
	],
	[
		/(?<!\p{L})(?:intern|intern[oaei]s?|na\sdesce|interní\p{L}*|belső\p{L}*|interna|intérieurs?|wewnętrzn\p{L}*|vnitřní\p{L}*|interne[snr]?|внутрішн\p{L}+|внутренн\p{L}+|nội\sbộ|dahili)(?!\p{L})/giu,
		"internal",
	],
	[
		/(?<!\p{L})(?:frontal(?:es|e|i)?|avant|frontaux|przedni\p{L}*|přední\p{L}*|передн\p{L}+|phía\strước|mặt\strước)(?!\p{L})/giu,
		"front",
	],
	[/(?<!\p{L})(?:có\ssẵn\s)?thông\squa\s(?:đầu\scắm|connectors)(?:\susb)?\s?(?:bên\strong)?/giu, "by front header"],
	[
		/(?<!\p{L})(?:suportam?|soportan?|supportan?o?|obsług\p{L}*|podporuj\p{L}*|mendukung|admiten?|destekle\p{L}*|поддерж\p{L}*|підтрим\p{L}*|hỗ\strợ)(?!\p{L})/giu,
		"supports",
	],
	// What runs how.
	[
		/(?<!\p{L})(?:câblée?s?\sen|fonctionne\sen|cableado\s(?:a|en)|funciona\s(?:a|en)|działa\sw\strybie|tryb|v\srežimu|modalità|modo|режим|chạy\sở)(?!\p{L})/giu,
		"runs at",
	],
	// "16x" behind a generation is a width.
	[/(?<=(?:\d\.\d|gen\s?\d|express|pcie|pci-e|runs\sat|@|\bat|\bmit)\s?)(16|8|4|2|1)\s?x(?=$|\s?[(,;)+/])/giu, "x$1"],
	// Glued notations: "1 x HDMI2 x USB 2.04 x USB 3.2 Gen 21 x RJ45" has a count behind each thing.
	[
		/(?<=\p{L}{3}|[\p{L})]-[ac]|\p{Ll}{2}\)|\S\))(?<!usb|ddr|sata|gen|pcie|rev|ver|slot|dimm|port_)(?=\d{1,2}\s[x×]\s\p{L})/giu,
		" ",
	],
	[/(?<=(?:usb|hdmi|displayport|dp|bluetooth)\s?\d\.\d)(?=\d\s[x×]\s\p{L})/giu, " "],
	[/(?<=gen\s?[12])(?=\d\s[x×]\s\p{L})/giu, " "],
	[/(?<=gen)\.\s?(?=\d)/giu, " "],
	[/(?<=gen\s?\d)(?=type)/giu, " "],
	[/(?<![\p{L}\d.])(\d{1,2})\s?[x×](?=\p{Lu}[\p{L}.]|usb|pci|m\.2|sata|hdmi|dp\b)/gu, "$1 x "],
	[/(?<=usb\s?\d\.\d)(?=type)/giu, " "],
	[/(?<=\))(?=M\.?2_\d)/giu, " "],
]);

/** The text with standard terms for words of other languages. */
export function inStandardTerms(whole: string): string {
	// The dotted capital I has no small letter of one character, so that no pattern would match it.
	const told = terms().reduce((text, [pattern, term]) => text.replace(pattern, term), whole.replaceAll("İ", "i"));
	// Words that no spaces divide got some at their ends too.
	return whole.startsWith(" ") ? told : told.trimStart();
}

const figures: Readonly<Record<string, number>> = {
	a: 1,
	an: 1,
	one: 1,
	ein: 1,
	eine: 1,
	einen: 1,
	single: 1,
	two: 2,
	dual: 2,
	zwei: 2,
	three: 3,
	triple: 3,
	drei: 3,
	four: 4,
	quad: 4,
	vier: 4,
	five: 5,
	fünf: 5,
	six: 6,
	sechs: 6,
	eight: 8,
	acht: 8,
	één: 1,
	een: 1,
	twee: 2,
	vijf: 5,
	zes: 6,
	un: 1,
	une: 1,
	deux: 2,
	trois: 3,
	quatre: 4,
	cinq: 5,
	huit: 8,
	una: 1,
	tres: 3,
	cuatro: 4,
	cinco: 5,
	seis: 6,
	ocho: 8,
	tre: 3,
	quattro: 4,
	otto: 8,
	uma: 1,
	dois: 2,
	duas: 2,
	três: 3,
	quatro: 4,
	oito: 8,
	jeden: 1,
	dwa: 2,
	trzy: 3,
	cztery: 4,
	sześć: 6,
};

const things =
	"m\\.2|sata|(?:\\d{3}[\\s-]?pin\\s)?(?:so-?)?dimm|hdmi|display\\s?port|usb|rj-?45|lan\\b|dvi|vga|thunderbolt|u\\.2|pci[\\s-]?e|headers?\\b|fan\\b|sockets?\\b|slots?\\b|ports?\\b|\\d{1,2}[\\s-]?pin";
const figureWord = new RegExp(
	`(?<![\\p{L}\\d-]|\\bincluding\\s|\\bof\\swhich\\s)(${Object.keys(figures).join("|")})\\s(?!channel|link|band|rail|core|kanal|bios)(?=(?:[\\p{L}\\d.]+\\s){0,3}?(?:${things}))`,
	"giu",
);

/** "Dual", "two" and the like before a thing that is counted, as "2 x ". */
export function withFigures(text: string): string {
	return text.replace(figureWord, (_, word: string) => `${figures[word.toLowerCase()] ?? 1} x `);
}
