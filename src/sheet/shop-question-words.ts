import { factAt } from "../parts/fact-list.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";

/** One question to a shop, in both languages. */
interface QuestionWords {
	readonly english: string;
	readonly german: string;
}

const asked = (english: string, german: string): QuestionWords => ({ english, german });

/**
 * How each fact of a board is asked of somebody who has it in the hand or its page before them: in plain words, to be
 * answered in a word, a number or a yes. Measures of length may be read off a ruler.
 */
const ownWords: Readonly<Record<string, QuestionWords>> = {
	revision: asked(
		"Which revision is printed on the box or on the board?",
		"Welche Revision steht auf dem Karton oder auf der Platine?",
	),
	price: asked("What does it cost today, with postage?", "Was kostet sie heute, mit Versand?"),
	offers: asked(
		"Until which day could I send it back if I bought it today?",
		"Bis zu welchem Tag könnte ich sie zurückgeben, wenn ich sie heute kaufte?",
	),
	warrantyYears: asked("How many years of warranty does it have?", "Wie viele Jahre Garantie hat sie?"),
	colour: asked("What colour is the board?", "Welche Farbe hat die Platine?"),
	lit: asked("Does the board have lights of its own?", "Hat die Platine eigene Leuchten?"),
	socket: asked("Which processor socket does it have?", "Welchen Prozessorsockel hat sie?"),
	chipset: asked("Which chipset does it have?", "Welchen Chipsatz hat sie?"),
	"raises.processorClock": asked(
		"Can the processor's clock be raised on it?",
		"Lässt sich darauf der Takt des Prozessors erhöhen?",
	),
	"raises.memoryRate": asked(
		"Does it run memory above the standard rate, with a memory profile?",
		"Betreibt sie Arbeitsspeicher über dem Standardtakt, mit einem Speicherprofil?",
	),
	form: asked(
		"Which size is it: ATX, microATX, Mini-ITX or another one?",
		"Welches Format hat sie: ATX, microATX, Mini-ITX oder ein anderes?",
	),
	widthMm: asked(
		"How many millimetres does it measure along the edge with the sockets?",
		"Wie viele Millimeter misst sie an der Kante mit den Anschlüssen?",
	),
	depthMm: asked(
		"How many millimetres deep is it, from the edge with the sockets to the opposite one?",
		"Wie viele Millimeter tief ist sie, von der Kante mit den Anschlüssen bis zur gegenüberliegenden?",
	),
	holes: asked(
		"Which screw holes does it have, by the letters in its manual's drawing?",
		"Welche Schraublöcher hat sie, nach den Buchstaben der Zeichnung im Handbuch?",
	),
	connectorsOnBack: asked(
		"Are the power and fan plugs on the back of the board?",
		"Sitzen die Anschlüsse für Strom und Lüfter auf der Rückseite der Platine?",
	),
	connectorsOnBackPattern: asked(
		"What does its maker call the layout of the plugs on the back?",
		"Wie nennt der Hersteller die Anordnung der Anschlüsse auf der Rückseite?",
	),
	"layout.memoryFromSocketMm": asked(
		"How many millimetres is it from the middle of the processor socket to the first memory slot?",
		"Wie viele Millimeter sind es von der Mitte des Prozessorsockels zum ersten Speichersteckplatz?",
	),
	"layout.firstSlotFromSocketMm": asked(
		"How many millimetres is it from the middle of the processor socket to the first card slot?",
		"Wie viele Millimeter sind es von der Mitte des Prozessorsockels zum ersten Kartensteckplatz?",
	),
	"layout.ownBackPlate": asked(
		"Does it come with its own back plate or brackets for the processor cooler?",
		"Liegt ihr eine eigene Rückplatte oder Halterung für den Prozessorkühler bei?",
	),
	memory: asked(
		"Which type of memory does it take, and how many slots has it?",
		"Welchen Speichertyp nimmt sie auf, und wie viele Speichersteckplätze hat sie?",
	),
	"memory.type": asked("Does it take DDR4 or DDR5 memory?", "Nimmt sie DDR4- oder DDR5-Speicher auf?"),
	"memory.form": asked(
		"Are its memory slots for DIMM or for SO-DIMM modules?",
		"Sind ihre Speichersteckplätze für DIMM- oder für SO-DIMM-Module?",
	),
	"memory.slots": asked("How many memory slots does it have?", "Wie viele Speichersteckplätze hat sie?"),
	"memory.channels": asked("How many memory channels does it have?", "Wie viele Speicherkanäle hat sie?"),
	"memory.maxGb": asked(
		"How many GB of memory can it hold in all?",
		"Wie viele GB Arbeitsspeicher fasst sie insgesamt?",
	),
	"memory.maxGbPerModule": asked(
		"How many GB may one memory module have at most?",
		"Wie viele GB darf ein Speichermodul höchstens haben?",
	),
	"memory.rates": asked(
		"At which rate does memory run with all slots filled, in MT/s?",
		"Mit wie vielen MT/s läuft der Speicher, wenn alle Plätze belegt sind?",
	),
	"memory.highestMtPerS": asked(
		"What is the highest memory rate its page names, in MT/s?",
		"Welcher höchste Speichertakt ist angegeben, in MT/s?",
	),
	"memory.errorCorrection": asked(
		"Does error-correcting memory (ECC) work on it, with the correction?",
		"Funktioniert fehlerkorrigierender Speicher (ECC) darauf, samt der Korrektur?",
	),
	"memory.registered": asked("Does it take registered modules (RDIMM)?", "Nimmt sie registrierte Module (RDIMM) auf?"),
	"memory.slotOrder": asked(
		"Which slots does its manual name for two memory modules?",
		"Welche Plätze nennt das Handbuch für zwei Speichermodule?",
	),
	cardSlots: asked(
		"Which card slots does it have, and with how many lanes each?",
		"Welche Kartensteckplätze hat sie, und mit wie vielen Lanes jeweils?",
	),
	m2Sockets: asked(
		"How many M.2 sockets for drives does it have, and of which PCI Express generation?",
		"Wie viele M.2-Steckplätze für Laufwerke hat sie, und welcher PCI-Express-Generation?",
	),
	m2WithoutTools: asked(
		"How many of its M.2 sockets need no screwdriver?",
		"Wie viele ihrer M.2-Steckplätze kommen ohne Schraubendreher aus?",
	),
	drivePorts: asked("How many SATA ports does it have?", "Wie viele SATA-Anschlüsse hat sie?"),
	sharing: asked(
		"Which sockets or slots are switched off when another one is in use?",
		"Welche Steckplätze oder Anschlüsse werden abgeschaltet, wenn ein anderer belegt ist?",
	),
	conditions: asked(
		"Which sockets or slots do not work with some processors?",
		"Welche Steckplätze oder Anschlüsse arbeiten mit manchen Prozessoren nicht?",
	),
	rearUsb: asked(
		"Which USB sockets are at the back, how many of each, and how fast?",
		"Welche USB-Anschlüsse sind hinten, wie viele davon jeweils und wie schnell?",
	),
	rearOld: asked(
		"Does it have a PS/2, serial or parallel socket at the back?",
		"Hat sie hinten einen PS/2-, seriellen oder parallelen Anschluss?",
	),
	pictureSockets: asked(
		"Which sockets for a screen does it have at the back?",
		"Welche Bildschirmanschlüsse hat sie hinten?",
	),
	wiredGbps: asked(
		"How many network sockets does it have, and how fast is each in Gb/s?",
		"Wie viele Netzwerkanschlüsse hat sie, und wie schnell ist jeder in Gb/s?",
	),
	wireless: asked("Does it have Wi-Fi built in?", "Ist WLAN eingebaut?"),
	"wireless.builtIn": asked("Does it have Wi-Fi built in?", "Ist WLAN eingebaut?"),
	"wireless.standard": asked(
		"Which Wi-Fi standard does it have, such as Wi-Fi 6E?",
		"Welchen WLAN-Standard hat sie, etwa Wi-Fi 6E?",
	),
	"wireless.bluetooth": asked("Does it have Bluetooth?", "Hat sie Bluetooth?"),
	"wireless.moduleSocket": asked(
		"Which Wi-Fi card can be put in later: any (M.2 key E), just one kind, or none?",
		"Welche WLAN-Karte passt später hinein: jede (M.2 Key E), nur eine Sorte oder keine?",
	),
	"sound.channels": asked("How many sound channels does it have?", "Wie viele Tonkanäle hat sie?"),
	"sound.rearSockets": asked(
		"How many sound sockets does it have at the back?",
		"Wie viele Tonbuchsen hat sie hinten?",
	),
	"sound.optical": asked(
		"Does it have an optical sound socket at the back?",
		"Hat sie hinten einen optischen Tonausgang?",
	),
	"headers.fans": asked(
		"How many plugs for fans and pumps does it have, and what is each for?",
		"Wie viele Anschlüsse für Lüfter und Pumpen hat sie, und wofür ist jeder?",
	),
	"headers.lights": asked(
		"How many plugs for light strips does it have, and of how many volts?",
		"Wie viele Anschlüsse für Lichtbänder hat sie, und mit wie viel Volt?",
	),
	"headers.usb2": asked(
		"How many 9-pin USB 2.0 plugs for the front does it have?",
		"Wie viele 9-polige USB-2.0-Anschlüsse für vorn hat sie?",
	),
	"headers.usb5": asked(
		"How many 19-pin USB plugs for the front does it have?",
		"Wie viele 19-polige USB-Anschlüsse für vorn hat sie?",
	),
	"headers.typeC": asked(
		"Does it have a plug for USB-C at the front of the case, and how fast?",
		"Hat sie einen Anschluss für USB-C an der Gehäusefront, und wie schnell?",
	),
	"headers.frontAudio": asked(
		"Does it have a plug for the sound sockets at the front of the case?",
		"Hat sie einen Anschluss für die Tonbuchsen an der Gehäusefront?",
	),
	"headers.serial": asked(
		"How many serial plugs does it have on the board?",
		"Wie viele serielle Anschlüsse hat sie auf der Platine?",
	),
	"headers.trustedModule": asked(
		"Does it have a plug for a security module (TPM)?",
		"Hat sie einen Anschluss für ein Sicherheitsmodul (TPM)?",
	),
	"power.mainPlug": asked(
		"Which main power plug does it take: 24-pin or another?",
		"Welchen Hauptstecker hat sie: 24-polig oder einen anderen?",
	),
	"power.processorPlugs": asked(
		"Which power plugs for the processor does it have: 8-pin, 4-pin, and how many?",
		"Welche Stromanschlüsse für den Prozessor hat sie: 8-polig, 4-polig, und wie viele?",
	),
	"power.extraPlugs": asked(
		"Must a further power plug be connected, and which?",
		"Muss ein weiterer Stromstecker angeschlossen werden, und welcher?",
	),
	"powerDelivery.coreStages": asked(
		"How many power stages feed the processor's cores?",
		"Wie viele Spannungswandler-Stufen versorgen die Kerne des Prozessors?",
	),
	"powerDelivery.stageKind": asked(
		"Are these power stages integrated, or made of separate switches?",
		"Sind diese Spannungswandler-Stufen integriert oder aus einzelnen Schaltern aufgebaut?",
	),
	"powerDelivery.stageRatingA": asked(
		"How many amperes is each of these power stages made for?",
		"Für wie viele Ampere ist jede dieser Spannungswandler-Stufen ausgelegt?",
	),
	"powerDelivery.heatSink": asked(
		"Do the power stages beside the processor have a heat sink: none, on one side, or on both?",
		"Haben die Spannungswandler-Stufen neben dem Prozessor einen Kühlkörper: keinen, auf einer Seite oder auf beiden?",
	),
	"powerDelivery.measurements": asked(
		"Has anybody measured how hot its power stages get, at how many watts, in how warm a room?",
		"Hat jemand gemessen, wie heiß die Spannungswandler-Stufen werden, bei wie viel Watt und welcher Raumtemperatur?",
	),
	"recovery.flashWithoutProcessor": asked(
		"Can it update its firmware without a processor?",
		"Kann sie ihre Firmware ohne Prozessor aktualisieren?",
	),
	"recovery.faultDisplay": asked(
		"Does it show what stops a start, by lights or by digits?",
		"Zeigt sie an, was den Start verhindert, mit Leuchten oder mit Ziffern?",
	),
	"recovery.resetAtBack": asked(
		"Does it have a button at the back that resets the settings?",
		"Hat sie hinten eine Taste, die die Einstellungen zurücksetzt?",
	),
	"recovery.startButton": asked(
		"Does it have a start button on the board?",
		"Hat sie eine Starttaste auf der Platine?",
	),
	"recovery.secondFirmware": asked("Does it have a second firmware chip?", "Hat sie einen zweiten Firmware-Baustein?"),
	"recovery.backPlateFixed": asked(
		"Is the shield for the sockets at the back already fitted?",
		"Ist die Blende für die hinteren Anschlüsse schon fest montiert?",
	),
	inTheBox: asked(
		"What else is in the box: drive cables, screws for M.2 drives, aerials?",
		"Was liegt noch im Karton: Laufwerkskabel, Schrauben für M.2-Laufwerke, Antennen?",
	),
	chipsetFan: asked("Does it have a small fan on the chipset?", "Hat sie einen kleinen Lüfter auf dem Chipsatz?"),
	"firmware.oldestInShops": asked(
		"Which firmware (BIOS) version is on the board in the box?",
		"Welche Firmware (BIOS-Version) ist auf der Platine im Karton?",
	),
	"firmware.releases": asked(
		"Which is the newest firmware for it, and of which day?",
		"Welche ist die neueste Firmware für sie, und von welchem Tag?",
	),
	"listsPublished.processors": asked(
		"Does its maker publish a list of the processors that run on it?",
		"Veröffentlicht der Hersteller eine Liste der Prozessoren, die darauf laufen?",
	),
	"listsPublished.memory": asked(
		"Does its maker publish a list of memory that was tried on it?",
		"Veröffentlicht der Hersteller eine Liste von Speicher, der darauf erprobt ist?",
	),
};

/** Whether a fact has words of its own; the others are asked by their title. */
export function hasOwnWords(path: string): boolean {
	return isSupport(path) || Object.hasOwn(ownWords, path);
}

/**
 * A fact as a question to a shop, or null where a board has no such fact.
 *
 * @param path inside the board, such as "memory.slots"
 * @param processor name of the person's processor; null where it is not settled
 */
export function shopQuestionWords(path: string, processor: string | null): QuestionWords | null {
	if (isSupport(path)) return supportWords(processor);
	const own = Object.hasOwn(ownWords, path) ? ownWords[path] : undefined;
	if (own) return own;
	const fact = factAt("board", path);
	if (!fact) return null;
	const unit = fact.unit ? ` (${fact.unit})` : "";
	return asked(
		`What can you tell me about this: ${titleInSentence(fact.title)}${unit}?`,
		`Können Sie mir bitte diese Angabe nennen: „${fact.title}“${unit}?`,
	);
}

/** The list is one question, whichever of its facts is missing. */
function isSupport(path: string): boolean {
	return path === "supportList" || path.startsWith("supportList.");
}

function supportWords(processor: string | null): QuestionWords {
	return processor === null
		? asked(
				"Which processors run on it, and from which firmware (BIOS) version on?",
				"Welche Prozessoren laufen darauf, und ab welcher Firmware (BIOS-Version)?",
			)
		: asked(
				`Does my processor run on it (${processor}), and from which firmware (BIOS) version on?`,
				`Läuft mein Prozessor darauf (${processor}), und ab welcher Firmware (BIOS-Version)?`,
			);
}
