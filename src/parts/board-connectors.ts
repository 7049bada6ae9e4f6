import * as z from "zod";
import { amount, count, fact, line } from "./fact.ts";
import { linkGenerations, pictureSockets, processorPlugs, wirelessStandards } from "./vocabulary.ts";

const page = "The board maker's page, specifications";
const manual = "The manual's drawing of the board";

const connectorName = fact(line(40), {
	title: "Name on the board",
	whereToFind: `${manual}, or printed beside it on the board.`,
});
const lanes = (title: string, whereToFind: string) => fact(count(0, 16).optional(), { title, whereToFind });
const generation = fact(count(linkGenerations.least, linkGenerations.most).optional(), {
	title: "PCI Express generation",
	whereToFind: `${page}, "expansion slots" or "storage": 4.0, 5.0.`,
});
const comesFrom = fact(z.enum(["processor", "chipset"]).optional(), {
	title: "Where its lanes come from",
	whereToFind: `${page}: from the processor or from the chipset.`,
});

const cardSlot = z.strictObject({
	name: connectorName,
	bus: fact(z.enum(["PCI Express", "PCI"]).optional(), { title: "Kind of slot", whereToFind: page }),
	row: fact(count(1, 8).optional(), {
		title: "Row, 1 nearest the processor",
		whereToFind: `${manual}; rows are 20.32 mm apart.`,
	}),
	lengthLanes: lanes("Length of the slot", `${page}: the slot is as long as an x16, x4 or x1 card.`),
	wiredLanes: lanes("Lanes wired", `${page}: "x16 (x4 mode)" is wired for four.`),
	generation,
	from: comesFrom,
	reinforced: fact(z.boolean().optional(), { title: "Metal around the slot", whereToFind: "Pictures." }),
});

const m2Socket = z.strictObject({
	name: connectorName,
	key: fact(z.enum(["B", "M", "E"]).optional(), {
		title: "Key (notch)",
		whereToFind: `${page}; E is for wireless cards.`,
	}),
	lengthsMm: fact(z.array(count(16, 110)).max(8).optional(), {
		title: "Drive lengths it can hold",
		unit: "mm",
		whereToFind: `${page}: 2280 is 80 mm long, 22110 is 110 mm.`,
	}),
	widestMm: fact(count(12, 30).optional(), {
		title: "Widest drive it can hold",
		unit: "mm",
		whereToFind: `${page}: 2280 is 22 mm wide, 25110 is 25 mm.`,
	}),
	wiredLanes: lanes("Lanes wired", page),
	generation,
	sata: fact(z.boolean().optional(), {
		title: "Takes SATA drives too",
		whereToFind: `${page}: said at each socket; never taken for granted.`,
	}),
	cooled: fact(z.boolean().optional(), { title: "Has a heat sink", whereToFind: "Pictures." }),
	place: fact(z.enum(["front", "back", "riser"]).optional(), {
		title: "Side of the board",
		whereToFind: manual,
	}),
	row: fact(count(1, 8).optional(), {
		title: "Card row it lies under",
		whereToFind: `${manual}; a card in that row covers it.`,
	}),
	from: comesFrom,
});

const drivePort = z.strictObject({
	name: connectorName,
	kind: fact(z.enum(["SATA", "U.2", "SlimSAS", "IDE"]), { title: "Kind of drive port", whereToFind: page }),
	upright: fact(z.boolean().optional(), { title: "Points up from the board", whereToFind: "Pictures." }),
	row: fact(count(1, 8).optional(), { title: "Card row it lies under", whereToFind: manual }),
});

const rearUsb = z.strictObject({
	plug: fact(z.enum(["A", "C"]), {
		title: "Shape of the plug",
		whereToFind: "Pictures of the back: A is flat, C is small and oval.",
	}),
	gbps: fact(amount(0.012, 200).optional(), {
		title: "Rate",
		unit: "Gb/s",
		whereToFind: `${page}, "back panel": USB 2.0 is 0.48; USB 5Gbps, 10Gbps, 20Gbps say it.`,
	}),
	count: fact(count(1, 20), { title: "How many", whereToFind: `${page}, "back panel".` }),
	modes: fact(z.array(line(60)).max(12).optional(), {
		title: "What it can also do",
		whereToFind: `${page}: picture (DisplayPort), charging watts, USB4.`,
	}),
});

const fanHeader = z.strictObject({
	name: connectorName,
	use: fact(z.enum(["processor", "pump", "case"]), { title: "Meant for", whereToFind: manual }),
	amps: fact(amount(0.1, 10).optional(), {
		title: "Current",
		unit: "A",
		whereToFind: "The manual's page on fan headers; count on 1 A where it is silent.",
	}),
	control: fact(
		z
			.array(z.enum(["4-pin PWM", "3-pin voltage"]))
			.max(2)
			.optional(),
		{
			title: "Ways to slow a fan",
			whereToFind: "The manual's page on fan headers.",
		},
	),
});

const lightHeader = z.strictObject({
	name: connectorName,
	volts: fact(z.union([z.literal(5), z.literal(12)]), {
		title: "Voltage",
		unit: "V",
		whereToFind: "The manual: 5 V addressable has three pins, 12 V plain has four. They must never be mixed.",
	}),
	amps: fact(amount(0.1, 20).optional(), { title: "Current", unit: "A", whereToFind: "The manual." }),
	mostLights: fact(count(1, 10000).optional(), { title: "Most lights", whereToFind: "The manual." }),
});

/** Everything that is plugged in or screwed on: slots, sockets, ports, headers, plugs. */
export const boardConnectors = {
	cardSlots: fact(z.array(cardSlot).max(12).optional(), {
		title: "Card slots",
		whereToFind: `${page}, "expansion slots".`,
	}),
	m2Sockets: fact(z.array(m2Socket).max(12).optional(), { title: "M.2 sockets", whereToFind: `${page}, "storage".` }),
	drivePorts: fact(z.array(drivePort).max(24).optional(), { title: "Drive ports", whereToFind: `${page}, "storage".` }),
	rearUsb: fact(z.array(rearUsb).max(20).optional(), {
		title: "USB sockets at the back",
		whereToFind: `${page}, "back panel" or "rear I/O".`,
	}),
	rearOld: fact(
		z
			.array(z.enum(["PS/2", "serial", "parallel"]))
			.max(6)
			.optional(),
		{
			title: "Old sockets at the back",
			whereToFind: `${page}, "back panel".`,
		},
	),
	pictureSockets: fact(z.array(z.enum(pictureSockets)).max(8).optional(), {
		title: "Picture sockets at the back",
		whereToFind: `${page}, "back panel": HDMI, DisplayPort. They need graphics in the processor.`,
	}),
	wiredGbps: fact(z.array(amount(0.01, 400)).max(8).optional(), {
		title: "Wired network sockets",
		unit: "Gb/s",
		whereToFind: `${page}, "LAN": 1, 2.5, 5 or 10 Gb/s, one figure a socket.`,
	}),
	wireless: fact(
		z
			.strictObject({
				builtIn: fact(z.boolean(), { title: "Wireless built in", whereToFind: `${page}, "wireless".` }),
				standard: fact(z.enum(wirelessStandards).optional(), { title: "Wireless standard", whereToFind: page }),
				bluetooth: fact(z.boolean().optional(), { title: "Bluetooth", whereToFind: page }),
				bluetoothVersion: fact(line(10).optional(), { title: "Bluetooth version", whereToFind: page }),
				moduleSocket: fact(z.enum(["none", "ordinary", "one-family-only"]).optional(), {
					title: "Socket for a wireless module",
					whereToFind: `${page}: M.2 key E; some take modules of one processor family only.`,
				}),
			})
			.optional(),
		{ title: "Wireless", whereToFind: `${page}, "wireless" or "Wi-Fi".` },
	),
	sound: fact(
		z
			.strictObject({
				channels: fact(count(0, 16).optional(), {
					title: "Sound channels",
					whereToFind: `${page}, "audio": 7.1 is 8.`,
				}),
				rearSockets: fact(count(0, 8).optional(), { title: "Sound sockets at the back", whereToFind: page }),
				optical: fact(z.boolean().optional(), { title: "Optical sound socket", whereToFind: `${page}, "S/PDIF".` }),
				codec: fact(line(60).optional(), { title: "Sound chip", whereToFind: page }),
			})
			.optional(),
		{ title: "Sound", whereToFind: `${page}, "audio".` },
	),
	headers: fact(
		z
			.strictObject({
				usb2: fact(count(0, 8).optional(), {
					title: "USB 2.0 headers (9-pin)",
					whereToFind: `${page}, "internal connectors"; one header gives two ports.`,
				}),
				usb5: fact(count(0, 4).optional(), {
					title: "USB 5Gbps headers (19-pin)",
					whereToFind: `${page}, "internal connectors".`,
				}),
				typeC: fact(
					z
						.array(
							z.strictObject({
								gbps: fact(amount(5, 80).optional(), { title: "Rate", unit: "Gb/s", whereToFind: page }),
								charging: fact(z.boolean().optional(), {
									title: "Fast charging (needs an extra plug)",
									whereToFind: page,
								}),
							}),
						)
						.max(4)
						.optional(),
					{
						title: "Front USB-C headers (20-pin)",
						whereToFind: `${page}, "internal connectors": front Type-C.`,
					},
				),
				frontAudio: fact(z.boolean().optional(), { title: "Front sound header", whereToFind: page }),
				fans: fact(z.array(fanHeader).max(16).optional(), {
					title: "Fan and pump headers",
					whereToFind: `${page}, "internal connectors".`,
				}),
				lights: fact(z.array(lightHeader).max(12).optional(), {
					title: "Lighting headers",
					whereToFind: `${page}, "internal connectors".`,
				}),
				serial: fact(count(0, 4).optional(), { title: "Serial headers", whereToFind: page }),
				trustedModule: fact(z.boolean().optional(), { title: "Security module header", whereToFind: page }),
			})
			.optional(),
		{ title: "Headers", whereToFind: `${page}, "internal connectors".` },
	),
	power: fact(
		z
			.strictObject({
				mainPlug: fact(z.enum(["24-pin", "20-pin", "10-pin 12 V only"]).optional(), {
					title: "Main plug",
					whereToFind: `${page}, "internal connectors"; 24-pin on nearly every board.`,
				}),
				processorPlugs: fact(z.array(z.enum(processorPlugs)).max(4).optional(), {
					title: "Processor power plugs",
					whereToFind: `${page}, "internal connectors": 8-pin, 4-pin, "EPS 12V"; the first one named first.`,
				}),
				extraPlugs: fact(
					z
						.array(
							z.strictObject({
								plug: fact(z.enum(["6-pin graphics", "8-pin graphics", "4-pin drive", "SATA power"]), {
									title: "Plug",
									whereToFind: page,
								}),
								for: fact(line(80).optional(), { title: "What it feeds", whereToFind: "The manual." }),
							}),
						)
						.max(4)
						.optional(),
					{
						title: "Extra power plugs",
						whereToFind: `${page}; such as one for fast charging at the front.`,
					},
				),
			})
			.optional(),
		{ title: "Power plugs", whereToFind: `${page}, "internal connectors".` },
	),
};
