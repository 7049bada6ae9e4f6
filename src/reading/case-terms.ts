import { once } from "../maths/once.ts";
import { inStandardTerms } from "./standard-terms.ts";

type Term = readonly [RegExp, string];

/** A whole word or phrase, whatever letters it is written in. */
const word = (phrases: string): RegExp => new RegExp(`(?<!\\p{L})(?:${phrases})(?!\\p{L})`, "giu");

/** The same, only where `ahead` follows. */
const wordBefore = (phrases: string, ahead: string): RegExp =>
	new RegExp(`(?<!\\p{L})(?:${phrases})(?!\\p{L})${ahead}`, "giu");

const formAhead = "(?=\\s(?:ssi|e-?atx|atx|m-?atx|micro|mini|µ))";
const linking = "(?:\\s(?:de|del|di|da|do|du|dla|для|la|le|l['’]|per|pour|para|pro|voor|за|na|той|van))?";

/** Hundreds of patterns, which no start of the program has to wait for. What a case's page prints, in the words of other languages; longer phrases first. All from memory. */
const things = once((): readonly Term[] => [
	[
		word("lüfter(?:steuerung|hub|regel)\\p{L}*|contrôleur\\sde\\sventilateurs|kontroler\\swentylator\\p{L}+"),
		"fan hub",
	],
	[
		word(
			"cartes?[\\s-]m[eè]res?|placas?[\\s-](?:base|madre|m[aã]e)|płyt\\p{L}*\\sgłówn\\p{L}+|sched[ae]\\smadr[ei]|moederbord\\p{L}*|základní\\p{L}*\\sdes\\p{L}+|материнськ\\p{L}+\\sплат\\p{L}*|материнск\\p{L}+\\sплат\\p{L}*|anakart\\p{L}*|moderkort\\p{L}*|bundkort|hovedkort|emolev\\p{L}*|alaplap\\p{L}*|bo\\smạch\\schủ",
		),
		"motherboard",
	],
	[word(`(?:placas|cartes|płyt\\p{L}*|schede|desk\\p{L}*|плат\\p{L}*|platen|kart(?:lar)?)${formAhead}`), "motherboard"],
	[/主板|マザーボード|メインボード/g, " motherboard "],
	[
		word(
			"cartes?\\sgraphiques?|tarjetas?\\s(?:gráficas?|de\\svídeo|de\\svideo)|sched[ae]\\s(?:video|grafic\\p{L}+)|kart\\p{L}{0,3}\\sgraficzn\\p{L}+|відеокарт\\p{L}*|видеокарт\\p{L}*|відеоадаптер\\p{L}*|grafick\\p{L}+\\s(?:kart\\p{L}*|adaptér\\p{L}*)|placas?\\s(?:de\\svídeo|de\\svideo|gráficas?)|videokaart\\p{L}*|grafische\\skaart\\p{L}*|ekran\\skart\\p{L}+|grafikkort\\p{L}*|näytönohja\\p{L}+|videokárty\\p{L}+|card\\sđồ\\shọa|vga",
		),
		"graphics card",
	],
	[/显卡|グラフィックボード|グラフィックスカード|ビデオカード/g, " graphics card "],
	[
		word(
			"refroidissement\\s(?:liquide|par\\seau|à\\seau)|water-?cooling|refrigeración\\slíquida|raffreddamento\\s(?:a\\s)?liquido|chłodzeni\\p{L}+\\s(?:wodn\\p{L}+|ciecz\\p{L}+)|водян\\p{L}+\\s(?:охолоджен|охлажден)\\p{L}+|с[жврp]о|vodní\\p{L}*\\schlazení|vodních\\schladičů|water\\s?coolers?|refrigeração\\slíquida|waterkoeling\\p{L}*|(?:sıvı|su)\\ssoğutma\\p{L}*|vattenkylning|tản\\snhiệt\\snước",
		),
		"water cooling",
	],
	[
		word(
			"radiateurs?|radiador(?:es)?|radiator[ei]|chłodnic\\p{L}*|радіатор\\p{L}*|радиатор\\p{L}*|radiátor\\p{L}*|výměník\\p{L}*|radyatör(?!süz|lü)\\p{L}*|radiatoren|(?<!cpu[\\s-])kylare|radiatorplats\\p{L}*",
		),
		"radiator",
	],
	[/冷排|水冷|ラジエーター?/g, " radiator "],
	[word("radyatörsüz"), "without radiator"],
	[word("radyatörlü"), "with radiator"],
	[
		word(
			`(?:ventirads?|(?:refroidisseurs?|dissipateurs?|refroidissement)${linking}\\s(?:cpu|processeur)|disipador(?:es)?(?:${linking}\\s(?:cpu|procesador))?|(?:refrigeración|refrigerador)${linking}\\s(?:cpu|procesador)|dissipator[ei](?:${linking}\\s(?:cpu|processore))?|(?:chłodzeni\\p{L}+|cooler\\p{L}*)\\s(?:cpu|procesora)|chłodzeni[ae]\\sprocesora|(?:процесорн\\p{L}+\\s|процессорн\\p{L}+\\s)?кулера?у?(?:\\s(?:цп|cpu|процес+ора))?|(?:охолоджен|охлажден)\\p{L}+\\s(?:цп|cpu|процес+ора)|chladič[e]?(?:\\s(?:cpu|procesoru))?|cpu\\schladič\\p{L}*|(?:(?:cpu|processor)[\\s-]?)?koelers?(?:hoogte)?|(?:air\\s)?coolers?${linking}\\s(?:cpu|processador)|(?:işlemci|cpu)\\ssoğutucu\\p{L}*|processorkylare|cpu-kylare|tản\\snhiệt\\s(?:cpu|khí))`,
		),
		"CPU cooler",
	],
	[/(?:cpu)?(?:散热器|クーラー)/gi, " CPU cooler "],
	[word("кулер(?:и|ы|ів|ов)"), "fan"],
	[
		word(
			"blocs?\\sd['’]alimentation|alimentations?|fuentes?(?:\\sde\\s(?:alimentación|poder))?|alimentator[ei]|zasilacz\\p{L}*|блок\\p{L}{0,2}\\s(?:живлення|питания)|бп|бж|zdroj\\p{L}*|fontes?(?:\\sde\\salimentação)?|voeding(?:en)?|güç\\skaynağ\\p{L}*|nätaggregat|strømforsyning|stromversorgung|tápegység\\p{L}*|virtalähde\\p{L}*|nguồn",
		),
		"power supply",
	],
	[/电源|電源(?:ユニット)?/g, " power supply "],
	[
		word(
			"(?:emplacements?|slots?|ports?|fentes?|équerres?)\\s(?:d['’]extension|pci(?:[\\s-]e(?:xpress)?)?)|(?:ranuras?|slots?)\\s(?:de|para)\\s(?:tarjetas\\sde\\s)?expansión|(?:ranuras?|slots?)\\spci(?:e|[\\s-]express)?|slot\\s(?:di|d['’])\\s?espansione|(?:slot\\p{L}*|gniazd\\p{L}*|miejsc\\p{L}*\\sna\\skarty)\\srozszerze\\p{L}+|слот\\p{L}*\\s(?:розширен|расширен)\\p{L}+|rozšiřujíc\\p{L}+\\sslot\\p{L}*|slot\\p{L}*\\s(?:pro|na)\\s(?:rozšiřující|přídavné)?\\s?kart\\p{L}*|pozic\\p{L}*\\spro\\s(?:rozšiřující\\s|přídavné\\s)?(?:karty|sloty)|(?:slots?|baias?)\\sde\\sexpansão|uitbreidings(?:slots?|sleuven|sleuf|sloten|kaarten)|genişleme\\s(?:yuva|slot)\\p{L}*|kortplatser|expansionsplatser|bővítőhely\\p{L}*|khe\\s(?:cắm\\s)?mở\\srộng",
		),
		"expansion slots",
	],
	[/扩展(?:插)?槽|拡張スロット/g, " expansion slots "],
	[
		word(
			"baies?|emplacements?(?=\\s(?:[235][.,]|pour\\sdisques?|disques?|hdd|ssd))|bahías?|alloggiament\\p{L}+|van[io](?=\\s(?:[235][.,]|unità|per))|zatok\\p{L}*|kiesze(?:ni|ń)\\p{L}*|(?:miejsc\\p{L}+|mocowani\\p{L}+)\\sna\\s(?:dysk\\p{L}*|hdd|ssd)|відсік\\p{L}*|отсек\\p{L}*|посадков\\p{L}+\\sм[іе]ст\\p{L}*|(?:interní\\p{L}*\\s)?(?:pozic\\p{L}*|šacht\\p{L}*)(?=\\s(?:[235][.,]|pro\\s(?:disk|hdd|ssd|[235])))|baias?|schijfplaats\\p{L}*|stationsruimt\\p{L}+|schijven|(?:sürücü|disk)\\s(?:yuva|bölme|yatağ)\\p{L}*|diskplatser|hårddiskplatser|khay\\s(?:ổ\\scứng)?",
		),
		"bays",
	],
	[/硬盘位|ドライブベイ/g, " drive bays "],
	[
		/(?<=[235][.,]2?5\s?-?)(?:pouces?|pulgadas?|pollici|cal[ei]\p{L}*|дюйм\p{L}*|palc\p{L}*|polegadas?|inç|tum|tommer|"|″|”)(?!\p{L})/giu,
		'"',
	],
	[/风扇|ファン/g, " fan "],
	[word("ventoinhas?|fläkt(?:ar)?|blæsere?|vifter?|tuulet\\p{L}+|wiatrak\\p{L}*"), "fan"],
	[word("erweiterungs(?:slots?|steckpl[aä]tze?|pl[aä]tze?)"), "expansion slots"],
	[word("(?:laufwerks|einbau|festplatten)(?:pl[aä]tze?|sch[aä]chte?)"), "bays"],
	[/、/g, ", "],
	[/または|もしくは/g, " or "],
	[/インチ|英寸/g, '" '],
	[/ヘッド[ホフ]ォ?ン|耳机/g, " headphone "],
	[/マイク(?!ロ)|麦克风/g, " microphone "],
	[/最大|最长|最高/g, " max "],
	// Sockets at the front.
	[
		word(
			"écouteurs?|casques?(?!\\smicro)|auriculares?|cuffi[ae]|słuchawk\\p{L}+|słuchawek|навушник\\p{L}*|наушник\\p{L}*|sluchát\\p{L}+|(?:fones?(?:\\sde\\souvido)?|auscultador(?:es)?)|hoofdtelefoon\\p{L}*|koptelefoon\\p{L}*|kulaklık\\p{L}*|hörlurar|kopfhörer\\p{L}*|earphones?|headphones|tai\\snghe",
		),
		"headphone",
	],
	[
		word(
			"micro(?!\\s?[,/]\\s?(?:mini|m-|m?atx|itx|e-))(?=$|\\s?[,;)/|x×\\d])|micrófonos?|microfon[oie]|mikrofon\\p{L}*|мікрофон\\p{L}*|микрофон\\p{L}*|microfones?|microfoon\\p{L}*|mic[\\s-]?in|mikrophon\\p{L}*",
		),
		"microphone",
	],
	[word("аудіо\\p{L}*|аудио\\p{L}*|áudio|zvuk\\p{L}*|dźwięk\\p{L}*|geluid"), "audio"],
	[word("panneaux?|painel|painéis|pannell[oi]|paneel|панел\\p{L}+|panel[uy]|paneli|bảng"), "panel"],
	// Conditions.
	[
		word(
			"(?:koszyk|klatk|klatek)\\p{L}*(?:\\s(?:na\\s)?(?:dysk|hdd)\\p{L}*)?|(?:cages?|paniers?)(?:\\s(?:à|de|des)\\s(?:disques?|hdd)(?:\\sdurs)?)|jaulas?(?:\\sde\\s(?:discos?|hdd)(?:\\sduros?)?)?|gabbi[ae](?:\\s(?:dei\\s|per\\s)?(?:dischi|hdd|unità))?|cestell[oi](?:\\s(?:dei\\s|per\\s)?(?:dischi|hdd|unità))?|(?:кошик|корзин|клітк|клетк)\\p{L}*(?:\\s(?:для\\s)?(?:диск|накопичувач|накопител|hdd)\\p{L}*)?|(?:košík|klec|koš)\\p{L}*(?:\\s(?:na\\s|pro\\s)?(?:disk|hdd)\\p{L}*)?|gaiolas?(?:\\s(?:de|dos|do)\\s(?:discos?|hdd))?|(?:schijf|hdd)?-?kooi\\p{L}*|disk\\skafesi\\p{L}*|(?:hdd|disk)\\skafes\\p{L}*",
		),
		"drive cage",
	],
]);

/** The same of further languages. */
const more = once((): readonly Term[] => [
	[
		word(
			"pl[aă]c[aăi]\\p{L}*\\sde\\sbaz[aă]|matičn\\p{L}+\\sploč\\p{L}*|дънн\\p{L}+\\sплатк\\p{L}+|základn\\p{L}+\\s(?:des|dos)\\p{L}+|emolevy\\p{L}*|motherboards?",
		),
		"motherboard",
	],
	[
		word(
			"pl[aă]c[aăi]\\p{L}*\\s(?:video|grafic[aăe])|grafičk\\p{L}+\\skartic\\p{L}*|skjermkort\\p{L}*|grafick\\p{L}+\\skar[it]\\p{L}+|κάρτ\\p{L}+\\sγραφικών",
		),
		"graphics card",
	],
	[
		word(
			"cooler\\p{L}*\\sprocesor|(?:cpu|processor)[\\s-]?kø[lj]+er\\p{L}*|cpu-kjøler\\p{L}*|(?:processzor|cpu-?)\\s?hűtő\\p{L}*|(?:prosessori|cpu-)jäähdyt\\p{L}+|hladnjak\\p{L}*(?:\\sprocesora)?|охладител\\p{L}*",
		),
		"CPU cooler",
	],
	[word("surs[aăe]\\p{L}{0,2}|virtalähte\\p{L}+|napajanj\\p{L}+|захранван\\p{L}+"), "power supply"],
	[
		word(
			"slotur\\p{L}+\\sde\\s(?:expansiune|extensie)|udvidelses(?:pladser|porte|slots)|utvidelsesspor|laajennuspai\\p{L}+|utori\\sza\\sproširenje|слотов\\p{L}*\\sза\\sразширен\\p{L}+|expansionsplats\\p{L}*",
		),
		"expansion slots",
	],
	[word('loca[sșş]ur\\p{L}+|(?<=[235][.,]2?5["″”]\\s)(?:pladser|helyek|paikat|plasser|platser)'), "bays"],
	[word("fläktplats\\p{L}*"), "fan"],
	[
		word(
			"c[aă][sșş]ti|hovedtelefon\\p{L}*|fejhallgat\\p{L}+|kuulok\\p{L}+|hodetelefon\\p{L}*|slušalic\\p{L}+|слушалк\\p{L}+",
		),
		"headphone",
	],
	[word("ljud|lyd|ääni|hang"), "audio"],
	[
		word("tilslutning\\p{L}*|csatlakoz\\p{L}+|liitän\\p{L}+|anslutning\\p{L}*|tilkobling\\p{L}*|priključ\\p{L}+"),
		"connectors",
	],
	[
		word(
			"lungime\\p{L}*|længde\\p{L}*|lengde|hossz\\p{L}*|(?:enimmäis)?pituus|dĺžk\\p{L}+|duljin\\p{L}+|дължин\\p{L}+",
		),
		"length",
	],
	[
		word("[iî]n[aă]l[tț]ime\\p{L}*|højde|høyde|magass\\p{L}+|(?:enimmäis)?korkeus|visin\\p{L}+|височин\\p{L}+"),
		"height",
	],
	[word("maxim[aăe]"), "max"],
	[/(?<=\s)(?:sau|vagy|tai|ili|или|alebo)(?=\s\d)/giu, "or"],
	[/，/g, ", "],
	[/；/g, "; "],
	[/（/g, " ("],
	[/）/g, ") "],
]);

const boundNear =
	"(?=\\s(?:\\p{L}+\\s){0,1}?(?:radiators?|water\\scooling|aios?|drive\\scage|cages?|hdds?|fans?)(?!\\p{L}))";
const bound = "(?=[^,;()|:\\d]{0,30}?\\b(?:radiators?|water\\scooling|aios?|drive\\scage|cages?|hdds?|fans?))";
const supplyAhead = "(?=\\s(?:power\\ssupply|psu))";
const numberBehind = "(?=\\s(?:de\\s|a\\s|zu\\s|to\\s)?(?:\\d|\\(|ssi|e-?atx|atx|micro|mini))";

const phrases = once((): readonly Term[] => [
	[
		wordBefore(
			`po\\s(?:wyjęciu|demontażu|usunięciu|zdjęciu|vyjmutí|demontáži)|після\\s(?:зняття|демонтажу|видалення)|после\\s(?:снятия|демонтажа)|(?:al\\s)?(?:quitar|retirar|sin)|en\\sretirant|rimuovendo|senza|sans|bez|без|sem|zonder|uten|utan`,
			bound,
		),
		"without",
	],
	[wordBefore("avec|con|com|z|ze|s|se|с|со|з|із|met|med", boundNear), "with"],
	[wordBefore("sans|sin|senza|bez|без|sem|zonder|utan|uten", supplyAhead), "without"],
	[
		word(
			"(?:non|pas)\\s(?:fourni|inclus|compris)\\p{L}*|no\\s(?:incluid|incluye)\\p{L}*|non\\s(?:inclus|in\\sdotazione)\\p{L}*|brak(?:\\sw\\szestawie)?|nie\\s(?:dołączon|zawiera|ma)\\p{L}*|немає|не\\sвходить\\p{L}*|відсутн\\p{L}*|нет|не\\sвходит|отсутств\\p{L}*|není(?:\\ssoučástí(?:\\sbalení)?)?|não\\s(?:inclu\\p{L}+|acompanha)|niet\\s(?:inbegrepen|meegeleverd)|geen|dahil\\sdeğil|yok|nicht\\sinkl\\p{L}*|ingår\\s(?:ej|inte)|không\\s(?:kèm|bao\\sgồm)",
		),
		"not included",
	],
	[
		word(
			"fournis?|fournies?|inclus(?:es?)?|pré-?installée?s?|installée?s?|incluid[oa]s?|preinstalad[oa]s?|instalad[oa]s?|(?:ya\\s)?montad[oa]s?|inclus[oaie]|preinstallat[oaie]|installat[oaie]|zainstalowan\\p{L}*|zamontowan\\p{L}*|w\\szestawie|dołączon\\p{L}*|(?:попередньо\\s)?встановлен\\p{L}*|у\\sкомплекті|в\\sкомплекті|комплектн\\p{L}+|пред?установлен\\p{L}*|установлен\\p{L}*|в\\sкомплекте|předinstalovan\\p{L}*|osazen\\p{L}*|součástí\\sbalení|(?:pré-)?instalad[oa]s?|incluíd[oa]s?|inclusos?|meegeleverd\\p{L}*|inbegrepen|(?:voor)?geïnstalleerd\\p{L}*|dahil|takılı|(?:ön)?yüklü|inkluderade|förinstallerade?|ingår|lắp\\ssẵn|kèm\\stheo",
		),
		"included",
	],
	[
		word(
			"verticau?x|verticales?|verticali|verticais|verticaa?le?|pionow\\p{L}*|вертикальн\\p{L}*|vertikáln\\p{L}*|dikey|vertikala?",
		),
		"vertical",
	],
	[
		word(
			"horizontau?x|horizontales?|orizzontal[ei]|horizontais|horizonta(?:al|le)|poziom(?:e|ych|a|y|o)|горизонтальн\\p{L}*|horizontáln\\p{L}*|yatay",
		),
		"horizontal",
	],
	[
		word(
			"longueurs?|longitud|lunghezza|długoś\\p{L}+|довжин\\p{L}*|длин\\p{L}{1,2}|délk\\p{L}+|comprimento|lengte|uzunlu\\p{L}+|längd|profondeur|chiều\\sdài",
		),
		"length",
	],
	[
		word(
			"hauteurs?|altura|altezza|wysokoś\\p{L}+|висот\\p{L}*|высот\\p{L}{1,2}|výšk\\p{L}+|hoogte|yüksekli\\p{L}+|höjd|chiều\\scao",
		),
		"height",
	],
	[
		word(
			"épaisseur|grosor|espesor|spessore|gruboś\\p{L}+|товщин\\p{L}+|толщин\\p{L}+|tloušť\\p{L}+|espessura|dikte|kalınlı\\p{L}+",
		),
		"thickness",
	],
	[
		word("largeur|anchura|ancho|larghezza|szerokoś\\p{L}+|ширин\\p{L}+|šířk\\p{L}+|largura|breedte|genişli\\p{L}+"),
		"width",
	],
	[/(?:长度|限长)/g, " length "],
	[/(?:高度|限高)/g, " height "],
	[
		word(
			"max(?:imal\\p{L}*|imum|imo|ima|ima[al])|máxim[oa]|massim[oa]|maks(?:ymaln\\p{L}+|imum)?|макс(?:имальн\\p{L}+)?|maximáln\\p{L}+|azami|en\\sfazla|tối\\sđa|máx",
		),
		"max",
	],
	[
		wordBefore(
			"jusqu['’](?:à|au|en)|hasta|fino\\sa(?:d|l|lla)?|até(?:\\s(?:a|o))?|tot|do|до|až(?:\\sdo)?|upp\\still|lên\\sđến",
			numberBehind,
		),
		"up to",
	],
	[/(?<=\d\s?(?:mm|cm))['’]?(?:y?[ea])?\s?kadar/giu, ""],
	[/^(?:colore?s?|couleurs?|kolor|barva|цвет|кол[іi]р|cor|kleur|renk|färg|màu)$/giu, "colour"],
]);

/** Places of a case. Short words that mean much else count only where they stand alone. */
const places = once((): readonly Term[] => [
	[
		word(
			"(?:en|la|à\\sl['’])\\s?(?:façade|avant)|façade|à\\sl['’]avant|avant|frontaux|frontais|frontal(?:es|i|e)?|delanter[oa]s?|(?:en\\s(?:la|el)\\s)?(?:parte\\s)?(?:frontal|delantera)|anterior[ei]?|davanti|frente|dianteir[oa]|delante|devant|voorin|(?:z\\s|na\\s)?prz(?:ó|o)d(?:u|zie)?|przedn\\p{L}+|спереду|спереди|фронтальн\\p{L}+|передн\\p{L}+|vpředu|předek|přední\\p{L}*|voor(?:aan|kant|zijde|paneel)|ön\\s(?:panel|taraf|kısım)|ön(?:de)?|fram(?:sida|till)?|(?:în\\s)?fa[tțţ][aă]|foran|forside|elülső|elöl|előlap\\p{L}*|edessä|etupaneeli\\p{L}*|predn\\p{L}+|vpredu|prednj\\p{L}+|naprijed|отпред|mặt\\strước|phía\\strước|vorn|frontseite|gehäusefront",
		),
		"front",
	],
	[
		word(
			"(?:sur\\s)?(?:le|au)\\s?dessus|dessus|en\\shaut|(?:le|du)\\shaut|supérieure?s?|superior(?:es|e|i)?|(?:en\\sel\\s)?techo|arriba|in\\salto|sopra|tetto|topo|em\\scima|encima|bovenin|(?:na\\s|z\\s|od\\s)?gór[aęzy]e?|górn\\p{L}+|зверху|згори|сверху|верхн\\p{L}+|nahoře|horní\\p{L}*|stropu?|vršku?|boven(?:aan|kant|zijde)?|üst\\s(?:panel|taraf|kısım)|üst(?:te)?|ovansida|topp(?:en)?|toppen|sus|felső|felül|ylhäällä|katto|horn[áéýo]\\p{L}*|hore|gornj\\p{L}+|отгоре|mặt\\strên|phía\\strên|nóc|oberteil|gehäusedeckel",
		),
		"top",
	],
	[
		word(
			"(?:à\\sl['’])?arrière|arrières|traser[oa]s?|posterior(?:es|e|i)?|retro|dietro|detrás|derrière|achterin|traseir[oa]s?|(?:z\\s|na\\s)?ty[łl](?:u|e)?|tyln\\p{L}+|ззаду|сзади|задн\\p{L}+|vzadu|zadní\\p{L}*|achter(?:aan|kant|zijde)|arka(?:da)?(?:\\s(?:panel|taraf|kısım))?|bak(?:sida|till|på|side)|spate|bagpå|bagside|hátsó|hátul|takana|zadn[áéý]\\p{L}*|vzadu|stražnj\\p{L}+|отзад|mặt\\ssau|phía\\ssau",
		),
		"rear",
	],
	[
		word(
			"(?:le|au|du|en)\\s(?:bas|dessous)|dessous|inférieure?s?|inferior(?:es|e|i)?|abajo|suelo|fondo|debajo|onderin|in\\sbasso|sotto|(?:em|na\\sparte\\sde)\\sbaixo|(?:na\\s)?(?:dole|spodzie)|dół|doln\\p{L}+|spód|знизу|снизу|нижн\\p{L}+|дно|dole|spodní\\p{L}*|onder(?:aan|kant|zijde)|bodem|alt\\s(?:panel|taraf|kısım)|undersida|botten|bunden|jos|alsó|alul|alhaalla|pohja|spodn[áéý]\\p{L}*|donj\\p{L}+|отдолу|mặt\\sdưới|phía\\sdưới|đáy",
		),
		"bottom",
	],
	[
		word(
			"(?:sur\\s(?:le\\s)?)?côtés?|latérale?s?|latéraux|lateral(?:es|e|i)?|laterais|lato|bok(?:u|i)?|boczn\\p{L}+|збоку|бічн\\p{L}+|боков\\p{L}+|сбоку|boční\\p{L}*|zij(?:kant|paneel|wand)|yan(?:\\s(?:panel|taraf|kısım))?|sida(?:n)?|mặt\\sbên",
		),
		"side",
	],
	[/^(?:voor)$/iu, "front"],
	[/^(?:boven|haut|góra|topo?)$/iu, "top"],
	[/^(?:achter|bak)$/iu, "rear"],
	[/^(?:onder|bas|alt|base|spód|dół)$/iu, "bottom"],
	[/^(?:zij)$/iu, "side"],
	[/(?<=\b(?:fans?|radiators?)\s)(?:voor|ön|fram)$/iu, "front"],
	[/(?<=\b(?:fans?|radiators?)\s)(?:boven|haut|üst|topp)$/iu, "top"],
	[/(?<=\b(?:fans?|radiators?)\s)(?:achter|arka|bak)$/iu, "rear"],
	[/(?<=\b(?:fans?|radiators?)\s)(?:onder|bas|alt)$/iu, "bottom"],
	[/前(?:面|部|置|パネル)?/g, " front "],
	[/(?:顶部|上部|上面|天面|トップ)/g, " top "],
	[/(?:后部|后置|背面|リア)/g, " rear "],
	[/(?:底部|底面)/g, " bottom "],
	[/(?:侧面|側面|侧部)/g, " side "],
	[/\bpanel\s(?:\p{L}{1,4}\s)?front\b/giu, "front panel"],
	[
		/\b(?:connectors|ports|sockets|interfaces?)\s(?:\p{L}{1,4}['’]?\s?){0,2}(?:front(?:\spanel)?|panel)\b/giu,
		"front ports",
	],
]);

const numbers: readonly (readonly [number, string])[] = [
	[1, "one|single|eine?n?|une?|un[oa]|jed(?:en|na|no)|один|одн[аеу]|uma?|een|één|bir"],
	[2, "two|dual|zwei|deux|dos|due|dois|duas|dw(?:a|ie|óch)|два|дв[іе]|двох|dv[aě]|twee|iki|två"],
	[3, "three|triple|drei|trois|tres|tre|três|trzy|trzech|три|трьох|tři|drie|üç"],
	[4, "four|vier|quatre|cuatro|quattro|quatro|cztery|чотири|четыре|čtyři|dört|fyra"],
	[5, "five|fünf|cinq|cinco|cinque|pięć|п['’ʼ]ять|пять|pět|vijf|beş"],
	[6, "six|sechs|seis|sei|sześć|шість|шесть|šest|zes|altı"],
	[7, "seven|sieben|sept|siete|sette|sete|siedem|сім|семь|sedm|zeven|yedi"],
	[8, "eight|acht|huit|ocho|otto|oito|osiem|вісім|восемь|osm|sekiz"],
];
const countedThing =
	'(?:(?:80|92|120|140|160|180|200|12|14|20)\\s?-?(?:mm|cm)(?!\\sradiator)|fans?\\b|usb|type-?c|(?:expansion\\s)?slots?\\b|(?:drive\\s)?bays?\\b|[23][.,]5\\s?["″”iz]|audio|headphone|microphone)';
const numberWords = once(() =>
	numbers.map(
		([figure, names]): Term => [
			new RegExp(`(?<![\\p{L}\\d.-])(?:${names})\\s(?=(?:[\\p{L}-]+\\s){0,2}?${countedThing})`, "giu"),
			`${figure} `,
		],
	),
);

/** "A" is a count only before what is counted by size or name; elsewhere it may be another language's "and". */
const article =
	/(?<![\p{L}\d.-])an?\s(?=(?:[\p{L}-]+\s){0,2}?(?:(?:80|92|120|140|200)\s?-?mm(?!\sradiator)|fans?\b|usb|type-?c))/giu;

const ofWord = "(?:of|de|da|di|do|à|von|mit|van|met|po|по|na|на|o|s|с|z|à)";
const countOfSize = new RegExp(`(?<![\\d.,])(\\d{1,2})\\s(?:${ofWord}\\s|d['’])(\\d{2,3})\\s?(mm|cm)`, "giu");
const shapes = once((): readonly Term[] => [
	[article, "1 "],
	[/(?<!\p{L})(?:no|na|nos|nas)\s(?=(?:front|top|rear|bottom|side|inside)\b)/giu, "at "],
	[
		/(?<=[\d\p{L}"”)]\s)(?:a|e|y|et|i|en|ve|og|och|și|és|ja|та|і|й|и)(?=\s(?:\p{L}+\s){0,3}?(?:headphone|microphone|audio)(?!\p{L}))/giu,
		"and",
	],
	[
		/(?<=\s)(?:ou|oppure|o|lub|albo|або|или|чи|nebo|anebo|of|veya|ya\sda|eller|hoặc|又は|または|或)(?=\s(?:\d|2[.,]5|3[.,]5|sfx|atx|e-?atx|micro|mini))/giu,
		"or",
	],
	[
		/(?<=[\d\p{L}"”)]\s)(?:et|y|e|i|oraz|та|і|й|и|ve|och|und)(?=\s(?:\d|usb|e-?atx|atx|micro|mini|on\b|in\b|at\b|(?:\p{L}+\s){0,2}(?:audio|headphone|microphone)|(?:\p{L}{1,4}\s){0,3}(?:front|top|rear|bottom|side)))/giu,
		"and",
	],
	[/(?<=[\d\p{L}"”)]\s)en(?=\s(?:\d|usb|e-?atx|atx|micro-?|mini-?))/giu, "and"],
	[
		new RegExp(
			`(?<![\\d.,])(\\d{1,2})\\s(?:x\\s)?(?:[\\p{L}-]+\\s)?fans?\\s(?:${ofWord}\\s|d['’])?(\\d{2,3})\\s?(mm|cm)`,
			"giu",
		),
		"$1 x $2 $3 fan",
	],
]);

const replaced = (text: string, terms: readonly Term[]): string =>
	terms.reduce((told, [pattern, term]) => told.replace(pattern, term), text);

/** "3 fans of 120 mm or 2 of 140 mm": fans are counted by their size, radiators are not. */
function withSizes(text: string): string {
	return text.replace(countOfSize, (match: string, count: string, size: string, unit: string, at: number) => {
		const before = text.slice(Math.max(0, at - 120), at).toLowerCase();
		return before.lastIndexOf("fan") > before.lastIndexOf("radiator") ? `${count} x ${size} ${unit}` : match;
	});
}

/** The text of a case's page with the words that are read here, in English where it can; quotes stay as printed. */
export function inCaseTerms(text: string): string {
	if (!/\p{L}/u.test(text)) return text;
	const even = text.replace(/İ/g, "I");
	const told = replaced(inStandardTerms(replaced(even, [...more(), ...things(), ...phrases()])), places());
	return withSizes(replaced(told, [...numberWords(), ...shapes()]));
}
