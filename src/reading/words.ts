import { once } from "../maths/once.ts";

const stems = {
	processor:
		/\b(?:cpus?|processors?|prozessor\w*|processador\w*|procesador\w*|processeurs?|processore|procesor\w*|işlemci\w*)\b|процес+ор|bộ\s(?:vi\s)?xử\slý|processz\w*|procesor\w*|\bprosesor\w*|处理器|處理器|プロセッサ|процесс?ор/iu,
	chipset:
		/\bchip\s?sets?\b|chips[aä]tz\w*|\bpch\b|ч[иі]псет|bộ\schip|chipové|čipová\ssada|yonga\sseti|lapkakészlet|čipset|芯片组|晶片組|チップセット|układ\slogiczny|\bset\schip|piirisarja/iu,
	socket:
		/\bsockets?\b|\bsockel\b|сокет|soquete|zócalo|gniazdo\sprocesora|\bpatice\b|[iİ]şlemci\ssoketi|soketi?\b|foglalat(?!ok)|插槽类型|ソケット|\bpodstawk\w*|kanta\b|\bsockeln?\b/iu,
	memory:
		/geheugen|pamět|paměť|bellek|\bmemory\b|\bram\b|\bspeicher(?!laufwerk|medi|kart|schnittstell|controller)\w*|arbeits?speicher|\bmem[oó]ri[ae]\b|\bmémoire\b|\bgeheugen\b|pami[eęć]\w*|пам['’ʼ]?ят|памят|bộ\snhớ|\bbellek\b|\bd?imms?\b|\bpaměť\b|\bdual[\s-]channel|двоканальн|двухканальн|kênh\sđôi|memori\w*|内存|記憶體|メモリ|\bminne\w*|\bmuisti\w*|operační|pamäť|pamięc\w*/iu,
	memorySlots:
		/slots?\b|sockets?\b|steckpl[aä]tz\w*|bänke|ranuras?\b|emplacements?\b|gniazd\w*|роз['’ʼ]?[єe]м|разъ[её]м|слот|khe\scắm|zócalos?\b|yuva\w*|foglalatok|slotů|slotów|slotů|插槽|スロット|\bplatser\b|\bkpl\b/iu,
	most: /\bmax\w*|en\sfazla|\blimit\b|maximaal|nejvýše|najwięcej|\blargest\b|\bgreatest\b|\bin\sall\b|\bbis\szu\b|up\sto|höchst\w*|máx\w*|макс\w*|tối\sđa|lên\sđến|capacit\w*|kapazität|legfeljebb|maksim\w*|максимал\w*|最大|\bhögst\w*|nejvyšší|tối\sđa|maximál\w*/iu,
	rate: /speeds?\b|\bfastest\b|clock|frequen\w*|takt\w*|частот|velocidade?s?\b|fréquence|tốc\sđộ|data\srate|taktowani\w*|sebesség|órajel|rychlost|频率|速度|クロック|hastighet|\bhız\w*|kecepatan|prędko\w*|frekvenc\w*/iu,
	slots:
		/\bexpansion\b|genişleme|rozszerze\p{L}*|rozšiř\p{L}*|uitbreiding\p{L}*|espansione|\bslots?\b|erweiterung\w*|steckpl[aä]tz\w*|expans[aã]o|expansión|extension|khe\scắm\smở\srộng|слоти|слоты|gniazda\srozszerze|\bpci[\s-]?e(?:xpress)?\b|bővítő\w*|扩展|擴充|拡張|rozšiř\w*|rozszerz\w*|ekspansi|\bexpansionsplats\w*|genişleme\s?yuva\w*/iu,
	storage:
		/\bstorage\b|depolama|napęd\p{L}*|úložišt\p{L}*|opslag|\bdisk\p{L}*|\bm\.?2\b|\bsata\b|laufwerk\w*|massenspeicher|datenträger|armazenamento|almacenamiento|stockage|lưu\strữ|накопич|накопит|dysk\w*|\bdrives?\b|tárol\w*|háttértár\w*|存储|儲存|ストレージ|\blagring\w*|penyimpanan|depolama|\búložišt\w*/iu,
	usb: /\busb\b/iu,
	back: /\brear\b|\bback\b|back[\s-]?panel|\bhinten\b|rückseit\w*|rückwand|externe?n?\s(?:anschl|schnittst)\w*|i\/o[\s-]?(?:panel|blende|shield)|anschlussfeld|phía\ssau|mặt\ssau|зовн[іi]шн|внешн|задн|traser[ao]s?|arrière|tylny|panel\stylny|painel\straseiro|external\s(?:i\/o|ports?|connect)|hátlap\w*|hátsó|背板|后置|後置|背面|リア|\bbakpanel\w*|\bbaksida\w*|\bbelakang|arka\spanel|zadní|zadný|tylny/iu,
	internal:
		/\binternal\b|\binterne?\w*\b|on-?board\sconnect|\bconnectors?\b|\bheaders?\b|\bpin\sheaders?\b|stiftleisten?|nội\sbộ|внутр|колод|kết\snối\si\/o\snội|internos?\b|internas?\b|wewnętrzn\w*|інші\sконнект|belső|\binterní\w*|内部|内置接口|内接|dahili|\binterna\s?kontakt\w*|wewnętrzn\w*|vnútorn\w*/iu,
	front:
		/\bfront\b|vorne?\b|frontal\w*|phía\strước|bên\strong|передн|headers?\b|stiftleist\w*|\binternal\b|\bintern\w*\b|előlap\w*|\bfrämre|\bfram\b|\bdepan\b|前面|前置|フロント|\bön\spanel/iu,
	picture:
		/görüntü|beeldaansl\w*|grafické|graficzn\w*|\bgraphics?\b|\bvideo\b|\bdisplays?\b|grafik|bildausg\w*|monitor\w*|gráficos?|graphique|відео|видео|đồ\s?h[oọ]ạ?|wyjścia\swideo|megjelenít\w*|\bvideokimenet\w*|显示|顯示|グラフィック|映像|\bgrafik\w*|\bskärm\w*|grafick\w*/iu,
	network:
		/\blan\b|\bsíť\b|\bred\b(?=$|[^\p{L}])|netwerk|\bağ\b|ethernet|netzwerk|\bnetwork\w*|\brede\b|réseau|мереж|сет[еьи]|rj-?45|\bgbe\b|hálózat\w*|网络|網路|ネットワーク|\bnätverk\w*|\bjaringan|síťov\w*|sieć|сетев\w*|мережев\w*/iu,
	wireless:
		/wi-?fi|wlan|wireless|bluetooth|bezdrátov\p{L}*|bezprzewodow\p{L}*|бездротов\p{L}*|kablosuz|inalámbric\p{L}*|sem\sfio|sans\sfil|draadloos|drahtlos|无线|無線|ワイヤレス|vezeték\s?nélküli|\btrådlös\w*|\bnirkabel|bezdrôt\w*/iu,
	sound:
		/\baudio\b|\bzvuk\b|^ses(?=$|\s)|geluid|\bsound\b|\bton\b|аудіо|аудио|âm\sthanh|\báudio\b|\bdźwięk|codec|звук|\bzvuk\w*|\bhang\w*|音频|音效|オーディオ|サウンド|\bljud\w*|\báudio|звуков\w*|\bses\b|ses\skart\w*/iu,
	size: /^form$|standard\spłyty|\bboard\s(?:type|size)\b|form[\s-]?fa[ck]t[oö]r|factor\sde\sforma|розмір|размер|boyut|afmeting\w*|rozměr\w*|formfaktor|\bformat\b|dimension\w*|abmessung\w*|maße\b|\bsize\b|größe|форм-?фактор|kích\sthước|formato|tamanho|wymiar\w*|méret\w*|formátum\w*|\bformát\w*|rozmer\w*|尺寸|规格|サイズ|寸法|フォームファクター|板型|\bmått\b|\bukuran|\bboyut\w*|\bformfaktor\w*|fator\sde\sforma|\bpcb\sinfo/iu,
	accessories:
		/accessor\w*|zubehör|lieferumfang|package\scontent|in\sthe\sbox|verpackung|bundled?\b|комплект|acess[oó]rios|accesorios|phụ\skiện|akcesor\w*|příslušenství|conteúdo\sda\s(?:embalagem|caixa)|contenido\sde\sla\scaja|contenu\sd\w*|obsah\sbalení|zawartość|tartozék\w*|csomag\w*|附件|包装|付属品|同梱|\bmedföljer|\binnehåll|kutu\siçeriği|\bpaket|isi\skemasan|kelengkapan|doboz\w*|parts\slist|in\sde\sdoos|inhoud|cables\sincluded/iu,
	overview:
		/key\sfeatures?|highlights?|features?\b|überblick|overview|besonderheit\w*|eigenschaften|merkmale|описание/iu,
	none: /^(?:n\/?a\.?|none|no|kein\w*|nicht\svorhanden|not\savailable|without|без(?:\s.*)?|немає|нет(?:\s.*)?|nincs(?:en)?|nein|ne|brak|nee|nej|ingen|inga|yok|tidak(?:\sada)?|无|無|なし|nie|ei|không(?:\scó)?|não|ninguno|aucune?|-|–|—)$/iu,
	yes: /^(?:yes|ja|так|да|sim|sí|oui|tak|có|✓|✔)\b/iu,
} as const;

/** Says whether a text has one of the words. */
export interface WordTest {
	test(text: string): boolean;
}

/**
 * \b and \w as they are meant: a letter with an accent, or of another alphabet, is a letter too. What looks for those
 * takes far longer, so that a text without any is held against the plain pattern.
 */
function withLetters(pattern: RegExp): WordTest {
	const letter = "[\\p{L}\\p{N}_]";
	const wide = once(() => {
		// Before a word it must not go on to the left, behind one not to the right.
		const source = pattern.source
			.replace(/\\b(?=$|[|)]|\(\?[=!])/g, `(?!${letter})`)
			.replaceAll("\\b", `(?<!${letter})`)
			.replaceAll("\\w", letter);
		return new RegExp(source, "iu");
	});
	const plain = once(
		() => new RegExp(pattern.source.replaceAll("[^\\p{L}]", "[^a-z]").replaceAll("\\p{L}", "[a-z]"), "i"),
	);
	return { test: (text) => (isPlain(text) ? plain() : wide()).test(text) };
}

/** No letters but those without accents; signs such as "×", "®" and dashes are no letters. */
function isPlain(text: string): boolean {
	for (let at = 0; at < text.length; at++) {
		const code = text.charCodeAt(at);
		const isSign = code < 0xc0 || code === 0xd7 || code === 0xf7 || (code >= 0x2000 && code < 0x2c00);
		if (!isSign) return false;
	}
	return true;
}

/**
 * Words of spec pages by what they tell, as stems. English and German are whole; of other languages the words that
 * pages most often print. All from memory and common usage, no source.
 */
export const words = Object.fromEntries(
	Object.entries(stems).map(([topic, pattern]) => [topic, withLetters(pattern)]),
) as { readonly [Topic in keyof typeof stems]: WordTest };
