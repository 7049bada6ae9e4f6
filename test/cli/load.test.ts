import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readArguments } from "../../src/cli/arguments.ts";
import { demoMarket } from "../../src/cli/demo-market.ts";
import { CommandError } from "../../src/cli/exit-codes.ts";
import { loadAnswersOf, loadMarket } from "../../src/cli/load.ts";
import { scenarioFile } from "../e2e/program.ts";
import { ownFolder } from "../files/own-folder.ts";

const { path, write } = ownFolder();

const schema = "boardwalk/parts@1";
const ownCase = { id: "my-case", name: "My case" };
const ownBoard = { id: "my-board", name: "My board" };
const keep = (lists: object) => write("data/parts.json", JSON.stringify({ schema, ...lists }));

function load(...words: readonly string[]) {
	const told: string[] = [];
	const streams = { out: () => {}, err: (text: string) => told.push(text) };
	const market = loadMarket(readArguments(words), streams, path("data"));
	return { market, told, boards: market.parts.board.map(({ id }) => id) };
}

describe("the market", () => {
	test("is the demonstration where there are no own parts, and without a home", () => {
		expect(load().market).toEqual(demoMarket());
		keep({});
		expect(load().market).toEqual(demoMarket());
		expect(loadMarket(readArguments([]), { out: () => {}, err: () => {} }, null)).toEqual(demoMarket());
	});

	test("has own parts first, beside the demonstration while there is no own board", () => {
		keep({ cases: [ownCase] });
		const { market, boards } = load();
		expect(market.version).toBe("your own parts and the demonstration market (invented)");
		expect(market.parts.case[0]).toEqual(ownCase);
		expect(boards).toEqual(demoMarket().parts.board.map(({ id }) => id));
	});

	test("leaves all that is invented out once there is an own board", () => {
		keep({ boards: [ownBoard], cases: [ownCase] });
		const { market, boards } = load();
		expect(market.version).toBe("your own parts");
		expect(boards).toEqual(["my-board"]);
		expect(market.parts.case).toEqual([ownCase]);
		expect(market.parts.processor).toEqual([]);
	});

	test("has the demonstration beside own boards where that is asked for", () => {
		keep({ boards: [ownBoard] });
		const { market, boards } = load("--with-demo");
		expect(market.version).toBe("your own parts and the demonstration market (invented)");
		expect(boards).toEqual(["my-board", ...demoMarket().parts.board.map(({ id }) => id)]);
	});

	test("keeps the invented parts that answers name, which make it no other market", () => {
		keep({ boards: [ownBoard] });
		const [plain, named] = [load(), load("--answers", scenarioFile("quiet-desk"))];
		const answers = JSON.parse(readFileSync(scenarioFile("quiet-desk"), "utf8")).answers;
		expect(named.market.parts.processor.map(({ id }) => id)).toEqual([answers["fit/processor"].value.part]);
		expect(named.market.parts.drive.map(({ id }) => id).sort()).toEqual([...answers["fit/drives"].value].sort());
		expect(named.boards).toEqual(["my-board"]);
		expect(named.market.fingerprint).toBe(plain.market.fingerprint);
		expect(load("--answers", path("none.json")).boards).toEqual(["my-board"]);
	});

	test("is what --parts names alone", () => {
		keep({ boards: [ownBoard] });
		write("shop/a.json", JSON.stringify({ schema, boards: [{ id: "shop-board", name: "S" }] }));
		expect(load("--parts", path("shop")).boards).toEqual(["shop-board"]);
		expect(load("--parts", path("shop"), "--with-demo").boards).not.toContain("my-board");
	});
});

describe("faulty parts", () => {
	const faulty = { boards: [ownBoard, { id: "B", name: "B" }] };

	test("are refused with the way out", () => {
		keep(faulty);
		write("shop/a.json", JSON.stringify({ schema, ...faulty }));
		for (const words of [[], ["--parts", path("shop")]]) {
			expect(() => load(...words)).toThrow(CommandError);
			expect(() => load(...words)).toThrow(/boards\[1\]\.id: .* add --sound-only to go on with its sound parts\.$/);
		}
	});

	test("are left out, and told, with --sound-only", () => {
		keep(faulty);
		write("shop/a.json", JSON.stringify({ schema, ...faulty }));
		for (const words of [["--sound-only"], ["--sound-only", "--parts", path("shop")]]) {
			const { boards, told } = load(...words);
			expect(boards).toEqual(["my-board"]);
			expect(told).toEqual([expect.stringMatching(/^Left out: .*boards\[1\]\.id: expected/)]);
		}
	});
});

test("answers go by what an own part is now, not by the copy that travels with them; --parts stands alone", () => {
	const walk = write(
		"walk.json",
		JSON.stringify({
			schema: "boardwalk/answers@1",
			asOf: "2026-11-25",
			market: { version: "your own parts", fingerprint: "0" },
			answers: {},
			parts: [{ kind: "board", part: { ...ownBoard, socket: "Lantern 3" } }],
		}),
	);
	keep({ boards: [{ ...ownBoard, socket: "Lantern 4" }] });
	const streams = { out: () => {}, err: () => {} };
	const sockets = (...words: readonly string[]) => {
		const args = readArguments(["shortlist", "--answers", walk, ...words]);
		const { state } = loadAnswersOf(args, loadMarket(args, streams, path("data")), streams);
		return state.ownParts.map(({ part }) => (part as { socket?: string }).socket);
	};
	expect(sockets()).toEqual(["Lantern 4"]);
	expect(sockets("--parts", path("data/parts.json"))).toEqual(["Lantern 3"]);
});
