import { coolerOnSocket } from "../../../src/rules/build/cooler-on-socket.ts";
import { testRule } from "../test-rule.ts";

const build = (...kits: { socket: string; how: "in the box" | "on request" | "bought" }[]) => ({
	cooler: { kits },
	processor: { socket: "Kettle 7" },
});
const others = ["Harbour 2", "Harbour 1", "Lantern 4", "Lantern 3", "Candle 2"];
const noKit = (...sockets: string[]) => ({ socket: "Kettle 7", sockets });

testRule(coolerOnSocket, {
	fits: {
		"its kit is in the box": [build({ socket: "Kettle 7", how: "in the box" }), "inBox", { socket: "Kettle 7" }],
		"spelled another way": [build({ socket: "Socket KETTLE-7", how: "in the box" }), "inBox", { socket: "Kettle 7" }],
		"in the box and sold besides": [
			build({ socket: "Kettle 7", how: "bought" }, { socket: "kettle7", how: "in the box" }),
			"inBox",
			{ socket: "Kettle 7" },
		],
		"to be bought to suit": [{ cooler: "open", processor: { socket: "Kettle 7" } }, "open", { part: "cooler" }],
		"the one from the box": [{ cooler: "none", processor: { socket: "Kettle 7" } }, "none", { part: "cooler" }],
	},
	cautions: {
		"sent on request": [
			build({ socket: "Kettle 7", how: "on request" }, { socket: "Kettle 7", how: "bought" }),
			"plan-around",
			"onRequest",
			{ socket: "Kettle 7" },
		],
		"sold on its own": [build({ socket: "Kettle 7", how: "bought" }), "plan-around", "bought", { socket: "Kettle 7" }],
	},
	fails: {
		"another socket": [build({ socket: "Harbour 2", how: "in the box" }), "noKit", noKit("Harbour 2")],
		"a socket whose name only begins alike": [
			build({ socket: "Kettle 70", how: "in the box" }, { socket: "Kettle 7+", how: "in the box" }),
			"noKit",
			noKit("Kettle 70", "Kettle 7+"),
		],
		"many other sockets, one of them twice": [
			build(...[...others, "Harbour 2"].map((socket) => ({ socket, how: "in the box" as const }))),
			"noKit",
			noKit(...others),
		],
		"no socket at all": [build(), "noKit", noKit()],
	},
	cannotTell: {
		"the cooler's page is silent": [{ cooler: {}, processor: { socket: "Kettle 7" } }, ["cooler.kits"]],
		"the processor's page is silent": [
			{ cooler: { kits: [{ socket: "Kettle 7", how: "in the box" }] }, processor: {} },
			["processor.socket"],
		],
		"nobody has said anything": [{}, ["cooler", "processor"]],
	},
});
