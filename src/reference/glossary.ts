/** A word of the trade that the screens use as it is, and what it means. */
export interface Term {
	readonly word: string;
	/** Other words for which the same explanation stands, plurals among them where they do not just add an s. */
	readonly forms?: readonly string[];
	/** One to three short sentences: what it is, then why it matters when choosing a board. */
	readonly means: string;
	/** Everyday enough that it is not marked where it stands; it is in the list all the same. */
	readonly isEveryday?: true;
}

/**
 * Every word that the screens mark, in the order of the alphabet; at most forty entries, so that a person can read all
 * of them. The explanations are our own words for common knowledge of the trade; figures in them stand in the standards that
 * `boardwalk sources` names.
 */
export const glossary: readonly Term[] = [
	{
		word: "ATX",
		forms: ["microATX", "Mini-ITX", "E-ATX", "Mini-DTX"],
		means:
			"Names of board sizes. ATX is the large one, microATX is shorter, Mini-ITX is the smallest. The size also says where the screws go.",
	},
	{
		word: "back plate",
		means:
			"Two things are called so. One is the metal frame round the sockets at the back of the case. The other sits behind the board and holds a cooler.",
	},
	{
		word: "Bluetooth",
		means: "A radio for short distances: keyboards, mice, headphones. It mostly comes with Wi-Fi, on one chip.",
	},
	{
		word: "chipset",
		means:
			"A helper chip on the board. Its name tells how many ports a board can have, and whether the processor may run faster than usual.",
	},
	{
		word: "DDR5",
		forms: ["DDR3", "DDR4"],
		means:
			"Kinds of memory. The notch sits in another place on each, so memory of one kind never fits a board made for another.",
	},
	{
		word: "DIMM",
		forms: ["SO-DIMM"],
		means: "The long strip that memory comes on. SO-DIMM is the short one, for laptops and a few very small boards.",
	},
	{
		word: "ECC",
		means:
			"Memory that finds and mends its own errors. It works only if processor and board both say that they support it.",
	},
	{
		word: "EPS",
		forms: ["processor plug", "processor power plug"],
		means:
			"The plug that brings power to the processor, near the top edge of the board. It has 8 pins, or 4. Never force another plug into it.",
	},
	{
		word: "firmware",
		forms: ["BIOS", "UEFI"],
		means:
			"The small program on the board that starts the computer; also called BIOS. An old version may not know a new processor.",
	},
	{
		word: "Gb/s",
		forms: ["Gbps", "5Gbps", "10Gbps", "20Gbps", "40Gbps"],
		means:
			"How much data passes in a second. At 5 Gb/s a film of 5 GB takes 8 seconds, since a byte (B) is eight bits (b).",
	},
	{
		word: "graphics card",
		means:
			"A card with its own chip for pictures, for games and the like. Many processors can drive a screen without one.",
		isEveryday: true,
	},
	{
		word: "HDMI",
		forms: ["DisplayPort", "DVI", "VGA"],
		means: "Kinds of sockets for a screen. Those on the board give a picture only if the processor can make one.",
	},
	{
		word: "header",
		means:
			"A small row of pins on the board. Cables from inside the case go there: fans, lights, the sockets at the front.",
	},
	{
		word: "heat sink",
		means:
			"A block of metal that leads heat away from a chip into the air. The chip below stays cooler and lasts longer.",
	},
	{
		word: "key E",
		means: "The shape of M.2 socket made for a wireless card. No drive goes in there.",
	},
	{
		word: "lane",
		means:
			"One path for data in a slot or to a drive. A slot with 16 of them (x16) passes more in a second than one with 4 (x4).",
	},
	{
		word: "M.2",
		means: "A flat socket on the board. A small drive without cables lies in it, held by a screw or a catch.",
	},
	{
		word: "memory",
		means: "What the computer works with at the moment; it is empty after switching off. Not the same as a drive.",
		isEveryday: true,
	},
	{
		word: "memory channel",
		forms: ["channel"],
		means: "A way from the processor to its memory. Most have two, so two equal strips of memory work faster than one.",
	},
	{
		word: "memory profile",
		means:
			"Settings for a faster rate that come with the memory. They are switched on in the firmware, and are not promised to work everywhere.",
	},
	{
		word: "MT/s",
		means: "Millions of transfers a second: how fast memory passes data on.",
	},
	{
		word: "NVMe",
		means: "The way in which fast drives in an M.2 socket talk to the computer. It is many times faster than SATA.",
	},
	{
		word: "PCI Express",
		forms: ["PCIe"],
		means:
			"How cards and fast drives talk to the processor. Each version is twice as fast as the one before, and all go together. The old PCI is something else.",
	},
	{
		word: "phase",
		means:
			"One of several equal circuits that share the work of feeding the processor. Makers count them in different ways, so a number alone says little.",
	},
	{
		word: "power stage",
		means:
			"A chip on the board that makes the low voltage for the processor out of 12 volts. That makes it warm. More of them, or stronger ones, stay cooler.",
	},
	{
		word: "power supply",
		means: "The box in the case that makes 12, 5 and 3.3 volts out of the mains. Never open one: it can kill.",
		isEveryday: true,
	},
	{
		word: "processor",
		forms: ["CPU"],
		means: "The chip that does the computing. It decides which boards come into question at all.",
		isEveryday: true,
	},
	{
		word: "processor list",
		forms: ["support list"],
		means:
			"The board maker's list of processors that run on a board, and from which firmware on. It has the last word.",
	},
	{
		word: "PS/2",
		means: "A round socket for old keyboards and mice.",
	},
	{
		word: "radiator",
		means:
			"The part of a liquid cooler where fans blow the heat away. It is screwed into the case, and takes room there.",
	},
	{
		word: "registered",
		means: "Memory for servers. Boards for home computers do not start with it.",
	},
	{
		word: "SATA",
		means: "The cable connection for hard disks, disc drives and older fast drives. Each needs a port on the board.",
	},
	{
		word: "socket",
		means:
			"A place where something plugs in. The one for the processor has a name, and the processor must be made for that very name.",
	},
	{
		word: "standoff",
		means:
			"A short metal post in the case that a board is screwed to. One where the board has no hole can cause a short circuit.",
	},
	{
		word: "USB-C",
		forms: ["USB-A"],
		means:
			"Shapes of USB plugs. USB-C is small and oval and goes in either way round; USB-A is flat and wide. The shape does not tell the speed.",
	},
	{
		word: "warranty",
		forms: ["guarantee"],
		means: "The maker's word to mend or replace what breaks. Running a processor faster than meant can end it.",
		isEveryday: true,
	},
	{
		word: "watt",
		means: "How much electric power something takes. A lamp takes 10 watts (10 W), a strong graphics card 300.",
	},
	{
		word: "Wi-Fi",
		forms: ["wireless"],
		means: "A network by radio. A board without it can mostly be given a card or a stick for it.",
	},
	{
		word: "12V-2x6",
		means:
			"The small plug with 16 pins that powers strong graphics cards. It must be pushed in all the way, or it can burn.",
	},
	{
		word: "5 V lights",
		forms: ["12 V lights"],
		means: "Two kinds of lighting that do not mix: 5 V with 3 pins, 12 V with 4. A 5 V strip plugged into 12 V breaks.",
	},
];
