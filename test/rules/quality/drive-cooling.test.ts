import { driveCooling } from "../../../src/rules/quality/drive-cooling.ts";
import { m2, slot, stick } from "../../plan/made-up-problem.ts";
import { testRule } from "../test-rule.ts";

const dart = stick("Dart");
const chimney = stick("Chimney Dart", { ownCooler: true });
const slow = stick("Mouse", { generation: 3 });
const board = (...m2Sockets: ReturnType<typeof m2>[]) => ({ cardSlots: [], m2Sockets, sharing: [] });
const [plated, bare] = [m2("M1", { cooled: true }), m2("M2", { cooled: false })];
const build = (...drives: ReturnType<typeof stick>[]) => ({ graphicsCard: "none" as const, drives });

// Generation 4 and the plate are common practice; 3.94 GB/s is what four lanes of generation 3 carry.
testRule(driveCooling, {
	fits: {
		"nobody has said": [{ board: board(bare) }, "notAsked"],
		"one without a place is told elsewhere": [{ board: board(), ...build(dart) }, "notAsked"],
		"generation 3 in a bare socket": [{ board: board(bare), ...build(slow) }, "notAsked"],
		"a slow drive in a socket nobody has looked at": [{ board: board(m2("M1")), ...build(slow) }, "notAsked"],
		"generation 4 in a bare socket of generation 3": [
			{ board: board(m2("M2", { cooled: false, generation: 3 })), ...build(dart) },
			"notAsked",
		],
		"a SATA stick in a bare socket": [
			{
				board: board(m2("M2", { cooled: false, sata: true })),
				...build(stick("Pickle", { link: "SATA", generation: undefined, lanes: undefined, readMBytesPerS: 540 })),
			},
			"notAsked",
		],
		"only its speed is told, and generation 3 carries it": [
			{ board: board(bare), ...build(stick("Dart", { generation: undefined, readMBytesPerS: 3900 })) },
			"notAsked",
		],
		"neither generation nor speed is told": [
			{ board: board(bare), ...build(stick("Dart", { generation: undefined })) },
			"notAsked",
		],
		"on an adapter card no plate is in the way": [
			{ board: { m2Sockets: [], cardSlots: [slot("X4", 4, 4)], sharing: [] }, ...build(chimney) },
			"notAsked",
		],
		"a fast drive under a plate": [{ board: board(plated), ...build(dart) }, "cool", { drives: ["Dart in M1"] }],
		"the plan takes the socket with a plate": [
			{ board: board(bare, plated), ...build(dart) },
			"cool",
			{ drives: ["Dart in M1"] },
		],
		"a cooler of its own in a bare socket": [
			{ board: board(bare), ...build(chimney) },
			"cool",
			{ drives: ["Chimney Dart in M2"] },
		],
	},
	cautions: {
		"a cooler of its own under a plate": [
			{ board: board(plated), ...build(chimney) },
			"good-to-know",
			"underPlate",
			{ plated: ["Chimney Dart in M1"] },
		],
		"a slow drive with a cooler of its own under a plate": [
			{ board: board(plated), ...build(stick("Mouse", { generation: 3, ownCooler: true })) },
			"good-to-know",
			"underPlate",
			{ plated: ["Mouse in M1"] },
		],
		"just generation 4 in a bare socket": [
			{ board: board(bare), ...build(dart) },
			"good-to-know",
			"bare",
			{ bare: ["Dart in M2"] },
		],
		"generation 5 in a bare socket of generation 4": [
			{ board: board(bare), ...build(stick("Dart", { generation: 5, ownCooler: false })) },
			"good-to-know",
			"bare",
			{ bare: ["Dart in M2"] },
		],
		"only its speed is told, and it is more than generation 3 carries": [
			{ board: board(bare), ...build(stick("Dart", { generation: undefined, readMBytesPerS: 4000 })) },
			"good-to-know",
			"bare",
			{ bare: ["Dart in M2"] },
		],
		"of two, the one in the bare socket": [
			{ board: board(plated, bare), ...build(dart, stick("Mouse")) },
			"good-to-know",
			"bare",
			{ bare: ["Mouse in M2"] },
		],
		"a bare one, and one whose socket nobody has looked at": [
			{ board: board(bare, m2("M3", { generation: 5 })), ...build(stick("Swift", { generation: 5 }), dart) },
			"good-to-know",
			"bare",
			{ bare: ["Dart in M2"] },
		],
		"one of each": [
			{
				board: board(plated, m2("M2", { cooled: false, lengthsMm: [110] })),
				...build(chimney, stick("Dart", { lengthMm: 110 })),
			},
			"good-to-know",
			"both",
			{ plated: ["Chimney Dart in M1"], bare: ["Dart in M2"] },
		],
	},
	cannotTell: {
		"a cooler of its own, and nobody has looked for a plate": [
			{ board: board(m2("M1")), ...build(chimney) },
			["board.m2Sockets"],
			"unsure",
			{ drives: ["Chimney Dart in M1"] },
		],
		"a fast drive, and nobody has looked for a plate": [
			{ board: board(m2("M1")), ...build(dart, slow) },
			["board.m2Sockets"],
			"unsure",
			{ drives: ["Dart in M1"] },
		],
	},
	needs: {
		"one fast drive": [
			build(dart, slow),
			"A metal plate (heat sink) over an M.2 socket for your fast drive, if it costs little.",
		],
		"two fast drives": [
			build(dart, stick("Swift", { generation: 5 })),
			"A metal plate (heat sink) over 2 M.2 sockets for your fast drives, if it costs little.",
		],
		"a cooler of its own": [build(chimney), null],
		"a slow drive": [build(slow), null],
		"nobody has said": [{}, null],
	},
});
