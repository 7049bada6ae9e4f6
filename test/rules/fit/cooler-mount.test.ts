import type { Cooler } from "../../../src/parts/cooler.ts";
import { coolerMount } from "../../../src/rules/fit/cooler-mount.ts";
import { partNames } from "../rule-subject.ts";
import { testRule } from "../test-rule.ts";

type Kits = NonNullable<Cooler["kits"]>;
const kits: Kits = [
	{ socket: "Kettle 7", how: "in the box" },
	{ socket: "Harbour 2", how: "on request" },
	{ socket: "Harbour 3", how: "bought" },
];
const board = (socket: string, ownBackPlate?: boolean) => ({
	socket,
	...(ownBackPlate === undefined ? {} : { layout: { ownBackPlate } }),
});
const cooler = partNames.cooler;

testRule(coolerMount, {
	fits: {
		"a kit in the box": [{ board: board("Kettle 7"), cooler: { kits } }, "kit", { cooler, socket: "Kettle 7" }],
		"another spelling": [
			{ board: board("Socket KETTLE-7"), cooler: { kits } },
			"kit",
			{ cooler, socket: "Socket KETTLE-7" },
		],
		"in the box and sold apart": [
			{ board: board("Kettle 7"), cooler: { kits: [{ socket: "Kettle 7", how: "bought" }, ...kits] } },
			"kit",
			{ cooler, socket: "Kettle 7" },
		],
		"the board has the back plate it needs": [
			{ board: board("Kettle 7", true), cooler: { kits, needsBoardBackPlate: true } },
			"kit",
			{ cooler, socket: "Kettle 7" },
		],
		"no back plate, and it brings its own": [
			{ board: board("Kettle 7", false), cooler: { kits, needsBoardBackPlate: false } },
			"kit",
			{ cooler, socket: "Kettle 7" },
		],
		"the one in the processor's box": [{ board: board("Kettle 7"), cooler: "none" }, "none", { part: "cooler" }],
		"to be bought to suit": [{ board: board("Kettle 7"), cooler: "open" }, "open", { part: "cooler" }],
	},
	cautions: {
		"a kit on request": [
			{ board: board("Harbour 2"), cooler: { kits } },
			"plan-around",
			"onRequest",
			{ cooler, socket: "Harbour 2" },
		],
		"a kit sold apart": [
			{ board: board("Harbour 3"), cooler: { kits } },
			"plan-around",
			"bought",
			{ cooler, socket: "Harbour 3" },
		],
		"no back plate, and nobody knows whether it brings one": [
			{ board: board("Kettle 7", false), cooler: { kits } },
			"good-to-know",
			"mayNeedBackPlate",
			{ cooler },
		],
	},
	fails: {
		"a socket that is not listed": [
			{ board: board("Harbour 4"), cooler: { kits } },
			"noKit",
			{ cooler, socket: "Harbour 4" },
		],
		"no kits at all": [{ board: board("Kettle 7"), cooler: { kits: [] } }, "noKit", { cooler, socket: "Kettle 7" }],
		"it needs the board's back plate, and there is none": [
			{ board: board("Kettle 7", false), cooler: { kits, needsBoardBackPlate: true } },
			"noBackPlate",
			{ cooler },
		],
	},
	cannotTell: {
		"the cooler's list is not known": [{ board: board("Kettle 7"), cooler: {} }, ["cooler.kits"]],
		"the board's socket is not known": [{ board: {}, cooler: { kits } }, ["board.socket"]],
		"nobody has said which cooler": [{ board: board("Kettle 7") }, ["cooler"]],
		"it needs the board's back plate, and nobody knows of one": [
			{ board: board("Kettle 7"), cooler: { kits, needsBoardBackPlate: true } },
			["board.layout.ownBackPlate"],
			"backPlateUnknown",
			{ cooler },
		],
	},
	needs: {
		"a cooler that screws into the board's back plate": [
			{ cooler: { kits, needsBoardBackPlate: true }, processor: { socket: "Kettle 7" } },
			"Its own back plate behind the socket, because your cooler screws into it.",
		],
		"the processor's socket is a line of its own": [{ cooler: { kits }, processor: { socket: "Kettle 7" } }, null],
		"the processor is not known": [
			{ cooler: { kits } },
			"A socket your cooler has a kit for: Kettle 7, Harbour 2, Harbour 3.",
		],
		"many sockets": [
			{ cooler: { kits: [1, 2, 3, 4, 5, 6].map((number) => ({ socket: `Bay ${number}`, how: "in the box" })) } },
			"A socket your cooler has a kit for: Bay 1, Bay 2, Bay 3, Bay 4, Bay 5, or another on its maker's list.",
		],
		"to be bought to suit": [{ cooler: "open" }, null],
	},
});
