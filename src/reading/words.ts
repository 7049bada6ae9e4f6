/**
 * Words of spec pages by what they tell, as stems. English and German are whole; of other languages the words that
 * pages most often print. All from memory and common usage, no source.
 */
export const words = {
	processor:
		/\b(?:cpus?|processors?|prozessor\w*|processador\w*|procesador\w*|processeurs?|processore|procesor\w*|işlemci\w*)\b|процес+ор|bộ\s(?:vi\s)?xử\slý/iu,
	chipset: /\bchip\s?sets?\b|\bchips[aä]tz\w*|\bpch\b|ч[иі]псет|bộ\schip|chipové|čipová\ssada|yonga\sseti/iu,
	socket: /\bsockets?\b|\bsockel\b|сокет|soquete|zócalo|gniazdo\sprocesora|\bpatice\b|[iİ]şlemci\ssoketi|soketi?\b/iu,
	memory:
		/geheugen|pamět|bellek|\bmemory\b|\bram\b|\bspeicher\b|arbeitsspeicher|\bmem[oó]ri[ae]\b|\bmémoire\b|\bgeheugen\b|pami[eęć]\w*|пам['’ʼ]?ят|памят|bộ\snhớ|\bbellek\b|\bd?imms?\b|\bpaměť\b|\bdual[\s-]channel|двоканальн|двухканальн|kênh\sđôi/iu,
	memorySlots:
		/slots?\b|sockets?\b|steckpl[aä]tz\w*|bänke|ranuras?\b|emplacements?\b|gniazd\w*|роз['’ʼ]?[єe]м|разъ[её]м|слот|khe\scắm|zócalos?\b|yuva\w*/iu,
	most: /\bmax\w*|en\sfazla|\blimit\b|maximaal|nejvýše|najwięcej|\blargest\b|\bgreatest\b|\bin\sall\b|\bbis\szu\b|up\sto|höchst\w*|máx\w*|макс\w*|tối\sđa|lên\sđến|capacit\w*|kapazität/iu,
	rate: /speeds?\b|\bfastest\b|clock|frequen\w*|takt\w*|частот|velocidade?s?\b|fréquence|tốc\sđộ|data\srate|taktowani\w*/iu,
	slots:
		/\bexpansion\b|genişleme|rozszerze\p{L}*|rozšiř\p{L}*|uitbreiding\p{L}*|espansione|\bslots?\b|erweiterung\w*|steckpl[aä]tz\w*|expans[aã]o|expansión|extension|khe\scắm\smở\srộng|слоти|слоты|gniazda\srozszerze|\bpci[\s-]?e(?:xpress)?\b/iu,
	storage:
		/\bstorage\b|depolama|napęd\p{L}*|úložišt\p{L}*|opslag|\bdisk\p{L}*|\bm\.?2\b|\bsata\b|laufwerk\w*|massenspeicher|datenträger|armazenamento|almacenamiento|stockage|lưu\strữ|накопич|накопит|dysk\w*|\bdrives?\b/iu,
	usb: /\busb\b/iu,
	back: /\brear\b|\bback\b|back[\s-]?panel|\bhinten\b|rückseit\w*|rückwand|externe?n?\s(?:anschl|schnittst)\w*|i\/o[\s-]?(?:panel|blende|shield)|anschlussfeld|phía\ssau|mặt\ssau|зовн[іi]шн|внешн|задн|traser[ao]s?|arrière|tylny|panel\stylny|painel\straseiro|external\s(?:i\/o|ports?|connect)/iu,
	internal:
		/\binternal\b|\binterne?\w*\b|on-?board\sconnect|\bconnectors?\b|\bheaders?\b|\bpin\sheaders?\b|stiftleisten?|nội\sbộ|внутр|колод|kết\snối\si\/o\snội|internos?\b|internas?\b|wewnętrzn\w*|інші\sконнект/iu,
	front:
		/\bfront\b|vorne?\b|frontal\w*|phía\strước|bên\strong|передн|headers?\b|stiftleist\w*|\binternal\b|\bintern\w*\b/iu,
	picture:
		/görüntü|beeldaansl\w*|grafické|graficzn\w*|\bgraphics?\b|\bvideo\b|\bdisplays?\b|grafik|bildausg\w*|monitor\w*|gráficos?|graphique|відео|видео|đồ\s?h[oọ]ạ?|wyjścia\swideo/iu,
	network:
		/\blan\b|\bsíť\b|\bred\b(?=$|[^\p{L}])|netwerk|\bağ\b|ethernet|netzwerk|\bnetwork\w*|\brede\b|réseau|мереж|сет[еьи]|rj-?45|\bgbe\b/iu,
	wireless:
		/wi-?fi|wlan|wireless|bluetooth|bezdrátov\p{L}*|bezprzewodow\p{L}*|бездротов\p{L}*|kablosuz|inalámbric\p{L}*|sem\sfio|sans\sfil|draadloos|drahtlos/iu,
	sound:
		/\baudio\b|\bzvuk\b|^ses(?=$|\s)|geluid|\bsound\b|\bton\b|аудіо|аудио|âm\sthanh|\báudio\b|\bdźwięk|codec|звук/iu,
	size: /^form$|standard\spłyty|\bboard\s(?:type|size)\b|form[\s-]?fa[ck]t[oö]r|factor\sde\sforma|розмір|размер|boyut|afmeting\w*|rozměr\w*|formfaktor|\bformat\b|dimension\w*|abmessung\w*|maße\b|\bsize\b|größe|форм-?фактор|kích\sthước|formato|tamanho|wymiar\w*/iu,
	accessories:
		/accessor\w*|zubehör|lieferumfang|package\scontent|in\sthe\sbox|verpackung|bundled?\b|комплект|acess[oó]rios|accesorios|phụ\skiện/iu,
	overview:
		/key\sfeatures?|highlights?|features?\b|überblick|overview|besonderheit\w*|eigenschaften|merkmale|описание/iu,
	none: /^(?:n\/?a\.?|none|no|kein\w*|nicht\svorhanden|not\savailable|without|без(?:\s.*)?|немає|нет|không(?:\scó)?|não|ninguno|aucune?|-|–|—)$/iu,
	yes: /^(?:yes|ja|так|да|sim|sí|oui|tak|có|✓|✔)\b/iu,
} as const;
