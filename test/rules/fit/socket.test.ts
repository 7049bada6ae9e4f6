import { socket } from "../../../src/rules/fit/socket.ts";
import { testRule } from "../test-rule.ts";

testRule(socket, {
	fits: {
		"one name": [{ board: { socket: "Kettle 7" }, processor: { socket: "Kettle 7" } }, "same", { socket: "Kettle 7" }],
		"one socket in two spellings": [
			{ board: { socket: "Socket LGA1700" }, processor: { socket: "FCLGA1700" } },
			"same",
			{ socket: "LGA1700" },
		],
		"one socket with and without a space": [
			{ board: { socket: "LGA 1700" }, processor: { socket: "lga-1700" } },
			"same",
			{ socket: "LGA 1700" },
		],
		"no processor bought yet": [{ board: { socket: "Kettle 7" }, processor: "open" }, "open", { part: "processor" }],
		"no processor bought yet, and no socket on the page": [
			{ board: {}, processor: "open" },
			"open",
			{ part: "processor" },
		],
		"no processor at all": [{ board: { socket: "Kettle 7" }, processor: "none" }, "none", { part: "processor" }],
	},
	fails: {
		"another socket": [
			{ board: { socket: "Kettle 7" }, processor: { socket: "Harbour 2" } },
			"other",
			{ board: "Kettle 7", processor: "Harbour 2" },
		],
		"names that differ in the last digit": [
			{ board: { socket: "Socket Kettle 7" }, processor: { socket: "Kettle 8" } },
			"other",
			{ board: "Kettle 7", processor: "Kettle 8" },
		],
		"names of which one goes on": [
			{ board: { socket: "Kettle 7" }, processor: { socket: "Kettle 7-3" } },
			"other",
			{ board: "Kettle 7", processor: "Kettle 7-3" },
		],
		"a name and the same with a plus": [
			{ board: { socket: "Kettle 7" }, processor: { socket: "Kettle 7+" } },
			"other",
			{ board: "Kettle 7", processor: "Kettle 7+" },
		],
	},
	cannotTell: {
		"no socket on the board's page": [{ board: {}, processor: { socket: "Kettle 7" } }, ["board.socket"]],
		"no socket on the processor's page": [{ board: { socket: "Kettle 7" }, processor: {} }, ["processor.socket"]],
		"neither known": [{ board: {}, processor: {} }, ["board.socket", "processor.socket"]],
		"nobody has said which processor": [{ board: { socket: "Kettle 7" } }, ["processor"]],
	},
	needs: {
		"a processor with a name": [
			{ processor: { name: "Deckhand", socket: "Kettle 7" } },
			"Kettle 7, because the Deckhand goes into no other.",
		],
		"the word socket is not said twice": [
			{ processor: { name: "Deckhand", socket: "Socket Kettle 7" } },
			"Kettle 7, because the Deckhand goes into no other.",
		],
		"no socket known": [{ processor: { name: "Deckhand" } }, null],
		"no processor bought yet": [{ processor: "open" }, null],
		"nobody has said": [{}, null],
	},
});
