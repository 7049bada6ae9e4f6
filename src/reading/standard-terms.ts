import { once } from "../maths/once.ts";

/**
 * Words of other languages and glued notations, each with the standard term that pages in English print for it. Only
 * what stands beside figures and standard terms on pages; all from memory. A quote keeps the words of the page.
 */
const terms = once((): readonly (readonly [RegExp, string])[] => [
	// Units and counts.
	[/(?<=\d\s?)(?:Гб[іи]т|Gbit)\s?\/\s?(?:с|s|сек)(?!\p{L})/giu, "Gb/s"],
	[/(?<=\d\s?)Gb\/giây/giu, "Gb/s"],
	[/(?<=\d\s?)(?:ГБ|Go|Гб)(?![\p{L}/])/gu, "GB"],
	[/(?<=\d\s?)(?:ТБ|To)(?![\p{L}/])/gu, "TB"],
	[/(?<=\d\s?)МГц/giu, "MHz"],
	[/(?<=\d\s?)(?:мм)(?!\p{L})/giu, "mm"],
	[/(?<=\d\s?)(?:см)(?!\p{L})/giu, "cm"],
	[/(?<=\d)\s?(?:шт\.?|pcs\.?|pieces|stk\.?|stück|szt\.?|ks|uds?\.?|pezzi|adet)(?!\p{L})/giu, ""],
	[
		/(?<=\d[\s-]?)(?:broches?|pines|pinos?|pin[oó]w|pinov\p{L}*|pinů|kontakt\p{L}*|контакт\p{L}*|pins?\sconector\p{L}*|polige?r?|pol(?:ig)?|pinli)(?!\p{L})/giu,
		"pin",
	],
	[/(?<=\d[\s-]?)пін\p{L}*|(?<=\d[\s-]?)пин\p{L}*/giu, "pin"],
	// Things.
	[
		/(?<!\p{L})(?:carte\sm[eè]re|placa\s(?:base|madre|m[aã]e)|placa-m[aã]e|płyta\sgłówna|scheda\smadre|moederbord|základní\sdeska|материнск\p{L}+\sплат\p{L}+|anakart)(?!\p{L})/giu,
		"motherboard",
	],
	[
		/(?<!\p{L})(?:connecteurs?|conector(?:es)?|conettor\p{L}*|connettor[ei]|złącz[ae]?|konektor\p{L}*|aansluiting(?:en)?|розніми?|коннектор\p{L}*|разъ[её]м\p{L}*|роз['’ʼ]?[єe]м\p{L}*|đầu\snối|đầu\scắm|bağlantı\p{L}*)(?!\p{L})/giu,
		"connectors",
	],
	[
		/(?<!\p{L})(?:ventilateurs?|ventilador(?:es)?|ventol[ae]|wentylator\p{L}*|ventilátor\p{L}*|ventilatoren|ventilator|вентилятор\p{L}*|lüfter\p{L}*|quạt)(?!\p{L})/giu,
		"fan",
	],
	[/(?<!\p{L})(?:pompe|bomba|pomp[ay]|pumpe)(?!\p{L})/giu, "pump"],
	[
		/(?<!\p{L})(?:adr?essables?|direccionables?|indirizzabil[ei]|adresowaln\p{L}*|adresovateln\p{L}*|adresseerbaar|endereç[aá]ve(?:l|is)|adressierbar\p{L}*|адресн\p{L}*|addressierbar\p{L}*)(?!\p{L})/giu,
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
	[/(?<!\p{L})(?:skříň|kasa|chasis|châssis|behuizing|obudowy?|telaio)(?!\p{L})/giu, "chassis"],
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
		/(?<!\p{L})(?:arri[eè]res?|traser[oa]s?|posterior[ei]?s?|tyln[aeyi]\p{L}*|zadní\p{L}*|zewnętrzn\p{L}*|na\szadním\spanelu|traseir[oa]s?|achterzijde|achteraan|задн\p{L}+|зовнішн\p{L}+|внешн\p{L}+|(?:ở\s)?mặt\ssau|phía\ssau|arka)(?!\p{L})/giu,
		"rear",
	],
	[
		/(?<!\p{L})(?:intern|intern[oaei]s?|na\sdesce|intérieurs?|wewnętrzn\p{L}*|vnitřní\p{L}*|interne[snr]?|внутрішн\p{L}+|внутренн\p{L}+|nội\sbộ|dahili)(?!\p{L})/giu,
		"internal",
	],
	[
		/(?<!\p{L})(?:frontal(?:es|e|i)?|avant|frontaux|przedni\p{L}*|přední\p{L}*|передн\p{L}+|phía\strước)(?!\p{L})/giu,
		"front",
	],
	[/(?<!\p{L})(?:có\ssẵn\s)?thông\squa\s(?:đầu\scắm|connectors)(?:\susb)?\s?(?:bên\strong)?/giu, "by front header"],
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
	[/(?<![\p{L}\d.])(\d{1,2})\s?x(?=\p{Lu}[\p{L}.]|usb|pci|m\.2|sata|hdmi|dp\b)/gu, "$1 x "],
	[/(?<=usb\s?\d\.\d)(?=type)/giu, " "],
]);

/** The text with standard terms for words of other languages. */
export function inStandardTerms(text: string): string {
	// The dotted capital I has no small letter of one character, so that no pattern would match it.
	return terms().reduce((told, [pattern, term]) => told.replace(pattern, term), text.replaceAll("İ", "i"));
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
};

const things =
	"m\\.2|sata|hdmi|display\\s?port|usb|rj-?45|lan\\b|dvi|vga|thunderbolt|u\\.2|pci[\\s-]?e|headers?\\b|fan\\b|sockets?\\b|slots?\\b|ports?\\b|\\d{1,2}[\\s-]?pin";
const figureWord = new RegExp(
	`(?<![\\p{L}\\d-]|\\bincluding\\s|\\bof\\swhich\\s)(${Object.keys(figures).join("|")})\\s(?!channel|link|band|rail|core|kanal|bios)(?=(?:[\\p{L}\\d.]+\\s){0,3}?(?:${things}))`,
	"giu",
);

/** "Dual", "two" and the like before a thing that is counted, as "2 x ". */
export function withFigures(text: string): string {
	return text.replace(figureWord, (_, word: string) => `${figures[word.toLowerCase()] ?? 1} x `);
}
