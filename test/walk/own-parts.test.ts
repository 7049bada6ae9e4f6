import { describe, expect, test } from "vitest";
import type { OwnPart } from "../../src/parts/answers-file.ts";
import { type AnyPart, partKinds } from "../../src/parts/part-kinds.ts";
import { mostPasted } from "../../src/walk/own-places.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { startWalk, type WalkState } from "../../src/walk/walk-state.ts";
import { demo, quietAnswers, walkAt, walkThrough, walkWith } from "./walk-in-demo.ts";
import { boardPage, changedForms, doubts, pageRead } from "./walks-with-forms.ts";

const text = (words: string): WalkEvent => ({ type: "text", text: words });
const read = (page: string): readonly WalkEvent[] => [{ type: "paste", text: page }, { type: "read" }];
const keep: WalkEvent = { type: "keep" };

function kept(effects: ReturnType<typeof walkThrough>["effects"]): readonly AnyPart[] {
	return effects.flatMap((effect) => (effect.type === "keep-part" ? [effect.own.part] : []));
}

describe("a pasted page", () => {
	test("becomes a board with quotes, place, date and person, and its verdict is shown", () => {
		const { state, effects } = walkThrough([{ type: "paste-part", what: "board" }, ...read(boardPage), keep]);
		const [part] = kept(effects);
		expect(part).toMatchObject({ name: "Copperbeech Ladder 4", socket: "Lantern 4", memory: { slots: 4 } });
		expect(part?.evidence?.["socket"]).toEqual({
			standing: "stated",
			quote: expect.stringContaining("Lantern 4"),
			where: "pasted page",
			date: demo.asOf,
			by: "builder",
		});
		expect(state.place).toEqual({ at: "board", boardId: part?.id });
		expect(state.ownParts).toEqual([{ kind: "board", part }]);
		expect([state.form, state.pasted]).toEqual([null, null]);
		expect(effects.map(({ type }) => type)).toEqual(["keep-part", "save"]);
	});

	test("answers the part question it came from", () => {
		const at = walkAt({ at: "question", id: "fit/case" }, walkWith(quietAnswers));
		const page = "Name: Larkspur Crate\nMotherboard support: ATX, microATX\nGPU clearance: 360 mm";
		const { state, effects } = walkThrough(
			[{ type: "describe" }, { type: "paste-part", what: "case" }, ...read(page), keep],
			at,
		);
		const [part] = kept(effects);
		expect(part).toMatchObject({ boardForms: ["ATX", "microATX"] });
		expect(state.answers["fit/case"]?.value).toEqual({ part: part?.id });
		expect(state.place.at).toBe("question");
		expect(state.place).not.toEqual({ at: "question", id: "fit/case" });
	});

	test("may come in pieces; what is too much is refused, and nothing taken before is lost", () => {
		const at = walkAt({ at: "read-part", what: "board", questionId: null });
		const once = walkThrough([{ type: "paste", text: "Socket: Lantern 4" }], at).state;
		const huge = walkThrough([{ type: "paste", text: "x".repeat(mostPasted) }], once).state;
		expect(huge.problem).toMatch(/too much text.*still here/);
		expect(huge.pasted).toEqual(once.pasted);
		const twice = walkThrough([{ type: "paste", text: "Memory slots: 4\r\n\r\nForm: ATX\r\n" }], huge).state;
		expect(twice.pasted?.lines).toBe(3);
		expect(walkThrough([{ type: "read" }], twice).state.form?.draft).toMatchObject({ socket: "Lantern 4" });
	});

	test("typed line by line is read by a dot, or by Enter twice", () => {
		const at = walkAt({ at: "read-part", what: "board", questionId: null });
		const dotted = walkThrough([text("Socket: Lantern 4"), text(".")], at).state;
		expect(dotted.place).toEqual({ at: "part-form" });
		const one = walkThrough([text("Socket: Lantern 4"), text("")], at).state;
		expect([one.place.at, one.notice]).toEqual(["read-part", "Press Enter once more to read it."]);
		expect(walkThrough([text("")], one).state.place).toEqual({ at: "part-form" });
	});

	test("of which nothing is understood says so and stays for more", () => {
		const at = walkAt({ at: "read-part", what: "board", questionId: null });
		const { state } = walkThrough(read("The cat sat on the mat."), at);
		expect(state.problem).toMatch(/Nothing in this text/);
		expect(state.pasted?.lines).toBe(1);
		expect(walkThrough([{ type: "read" }], at).state.problem).toMatch(/no text yet/);
	});

	test("with hostile bytes leaves none in what is shown or kept", () => {
		const page = "Name: Evil\u001b]52;c;aGk=\u0007Rook\nSocket: \u202eLantern\u0000 4\n";
		const { effects, state } = walkThrough([{ type: "paste-part", what: "board" }, ...read(page), keep]);
		expect(kept(effects)).toHaveLength(1);
		expect(JSON.stringify([effects, state])).not.toMatch(/\\u001b|\\u0000|\\u0007|\u202e/);
	});
});

describe("what the page leaves open", () => {
	test("is asked; the value picked has the quote, the value typed has the person", () => {
		const { state } = walkThrough(
			[
				{ type: "doubt", index: 0 },
				{ type: "fact", value: 192 },
				text("E-ATX"),
				{ type: "fact", value: doubts[2]?.might[0] },
			],
			pageRead,
		);
		expect(state.place).toEqual({ at: "part-form" });
		expect(state.form?.doubts).toEqual([]);
		expect(state.form?.draft).toMatchObject({ form: "E-ATX", memory: { maxGb: 192 } });
		expect(state.form?.draft["m2Sockets"]).toHaveLength(2);
		const [part] = kept(walkThrough([keep], state).effects);
		expect(part?.evidence?.["memory.maxGb"]).toMatchObject({ quote: "Max. 128GB / 192GB", where: "pasted page" });
		expect(part?.evidence?.["form"]).toEqual({ standing: "stated", by: "builder", date: demo.asOf });
	});

	test("stays unknown when it is left open, and when nobody looks at it", () => {
		const left = walkThrough([{ type: "doubt", index: 0 }, { type: "not-on-page" }, keep], pageRead);
		const [part] = kept(left.effects);
		expect(part).not.toHaveProperty("memory.maxGb");
		expect(part).not.toHaveProperty("form");
		expect((part as { m2Sockets?: unknown[] }).m2Sockets).toHaveLength(1);
	});

	test("takes no value the fact cannot have", () => {
		const { state } = walkThrough(
			[
				{ type: "doubt", index: 1 },
				{ type: "fact", value: "Huge" },
			],
			pageRead,
		);
		expect(state.form?.doubts).toHaveLength(3);
		expect(state.problem).toMatch(/cannot have/);
		expect(walkThrough([text("Huge")], state).state.problem).toMatch(/^Type Mini-ITX/);
	});
});

describe("a fact of the form", () => {
	test("changed by a person loses its quote; marked wrong it is gone", () => {
		const at: WalkEvent = { type: "fact-form", path: ["memory", "slots"] };
		const changed = walkThrough([at, text("2"), keep], pageRead);
		expect(kept(changed.effects)[0]).toMatchObject({
			memory: { slots: 2 },
			evidence: { "memory.slots": { standing: "stated", by: "builder", date: demo.asOf } },
		});
		expect(kept(changed.effects)[0]?.evidence?.["memory.slots"]).not.toHaveProperty("quote");
		const wrong = kept(walkThrough([at, { type: "not-on-page" }, keep], pageRead).effects)[0];
		expect(wrong).not.toHaveProperty("memory.slots");
		expect(wrong?.evidence).not.toHaveProperty(["memory.slots"]);
	});

	test("a price gets the day it was seen", () => {
		const { state } = walkThrough([{ type: "fact-form", path: ["price"] }, text("EUR 149.90")], pageRead);
		expect(state.form?.draft).toMatchObject({ price: { minor: 14990, currency: "EUR" }, checkedOn: demo.asOf });
	});

	test("entries of a list are asked fact by fact, named by number, copied and removed", () => {
		const { state } = walkThrough(
			[
				{ type: "fact-form", path: ["m2Sockets"] },
				{ type: "add-entry" },
				{ type: "fact", value: "M" },
				text("80; 110"),
			],
			pageRead,
		);
		expect(state.place).toMatchObject({ at: "fact-form", path: ["m2Sockets", 1, expect.any(String)], guided: true });
		const more = walkThrough(
			[
				{ type: "fact-form", path: ["m2Sockets"] },
				{ type: "add-entry", like: true },
			],
			state,
		).state;
		expect(more.form?.draft["m2Sockets"]).toEqual([
			{ name: "M2_1", key: "M", lengthsMm: [60, 80] },
			{ name: "M2_2", key: "M", lengthsMm: [80, 110] },
			{ name: "M2_3", key: "M", lengthsMm: [80, 110] },
		]);
		const less = walkThrough([{ type: "fact-form", path: ["m2Sockets", 0] }, { type: "remove-entry" }], more).state;
		expect(less.form?.draft["m2Sockets"]).toHaveLength(2);
	});

	test("an entry that cannot be told without a fact goes with it, and that is said", () => {
		const { state } = walkThrough(
			[{ type: "fact-form", path: ["rearUsb"] }, { type: "add-entry" }, { type: "not-on-page" }],
			pageRead,
		);
		expect(state.form?.draft["rearUsb"]).toHaveLength(1);
		expect(state.notice).toMatch(/left out/);
	});

	test("two connectors of one name are not kept; the words say where", () => {
		const { state, effects } = walkThrough(
			[
				{ type: "fact-form", path: ["m2Sockets"] },
				{ type: "add-entry", like: true },
				{ type: "fact-form", path: ["m2Sockets", 1, "name"] },
				text("M2_1"),
				keep,
			],
			pageRead,
		);
		expect(effects).toEqual([]);
		expect(state.problem).toMatch(/^This cannot be kept yet\. M\.2 sockets, number 2/);
	});
});

test("a form asks what matters most, one after the other, and gives a sound part of any kind", () => {
	const values: Readonly<Record<string, string>> = { name: "Kettle", socket: "Lantern 4", chipset: "Wick 20" };
	for (const [kind, { schema }] of Object.entries(partKinds)) {
		if (kind === "platform") continue;
		const events: WalkEvent[] = [{ type: "new-part", kind: kind as never }, text(values["name"] ?? "")];
		const { state } = walkThrough(events, walkAt({ at: "new-part" }));
		let at: WalkState = state;
		let asked = 1;
		while (at.place.at === "fact-form" && asked < 60) {
			at = walkThrough([{ type: "not-on-page" }], at).state;
			asked++;
		}
		expect(at.place, kind).toEqual({ at: "part-form" });
		expect(asked, kind).toBeGreaterThan(4);
		const { effects } = walkThrough([keep], at);
		expect(schema.safeParse(kept(effects)[0]), kind).toMatchObject({ success: true, data: { name: "Kettle" } });
	}
});

describe("an own part", () => {
	const own = { kind: "case", part: { id: "my-case", name: "Crate", boardForms: ["ATX"] } } as OwnPart;
	const answers = { "fit/case": { status: "answered", value: { part: "my-case" } } } as const;
	const at = walkAt({ at: "own-part", kind: "case", id: "my-case" }, { ...startWalk(), ownParts: [own], answers });

	test("is copied under a name and an id of its own", () => {
		const { state, effects } = walkThrough([{ type: "copy-part" }], at);
		expect(kept(effects)).toEqual([{ id: "crate-copy", name: "Crate (copy)", boardForms: ["ATX"] }]);
		expect(state.place).toEqual({ at: "own-part", kind: "case", id: "crate-copy" });
	});

	test("is removed with the answers that name it, and brought back with them", () => {
		const gone = walkThrough([{ type: "remove-part" }], at);
		expect(gone.effects[0]).toEqual({ type: "remove-part", kind: "case", id: "my-case" });
		expect([gone.state.ownParts, gone.state.answers]).toEqual([[], {}]);
		const back = walkThrough([{ type: "bring-back" }], gone.state);
		expect([back.state.ownParts, back.state.answers]).toEqual([[own], answers]);
		expect(kept(back.effects)).toEqual([own.part]);
	});

	test("an offer begun and gone back from leaves nothing in the list of offers", () => {
		const begun = walkThrough([{ type: "add-offer" }], at);
		expect(begun.state.place).toMatchObject({ at: "fact-form", path: ["offers", 0, "price"] });
		const { state } = walkThrough([{ type: "back" }], begun.state);
		expect(state.place).toEqual({ at: "fact-form", path: ["offers"] });
		expect(state.form?.draft["offers"] ?? []).toEqual([]);
	});

	test("gets an offer with the day it was seen", () => {
		const { effects } = walkThrough(
			[
				{ type: "add-offer" },
				text("89,90"),
				{ type: "fact", value: "used" },
				text("A neighbour"),
				{ type: "next" },
				keep,
			],
			at,
		);
		expect(kept(effects)[0]).toMatchObject({
			id: "my-case",
			offers: [
				{
					price: { minor: 8990, currency: "EUR" },
					condition: "used",
					seller: "A neighbour",
					seenOn: demo.asOf,
				},
			],
		});
	});

	test("of any kind opens as a form and is kept unchanged", () => {
		for (const { name, state } of changedForms) {
			const [before] = state.ownParts;
			const { effects, state: after } = walkThrough([keep], state);
			expect(after.problem, name).toBeNull();
			const { invented: _, ...part } = { ...before?.part, invented: false };
			expect(kept(effects), name).toEqual([part]);
		}
	});
});

describe("a form that is not kept", () => {
	test("asks once when one goes back, and then stays at hand", () => {
		const asked = walkThrough([{ type: "back" }], pageRead).state;
		expect(asked.place).toEqual({ at: "leave-form", leaving: false });
		const away = walkThrough([{ type: "back" }], asked).state;
		expect(away.place.at).not.toBe("leave-form");
		expect(walkThrough([{ type: "own-parts" }, { type: "part-form" }], away).state.form).toEqual(pageRead.form);
		expect(walkThrough([{ type: "drop-form" }], asked).state.form).toBeNull();
	});

	test("asks once when one leaves the walk", () => {
		const asked = walkThrough([{ type: "leave" }], pageRead);
		expect([asked.state.place, asked.effects]).toEqual([{ at: "leave-form", leaving: true }, []]);
		expect(walkThrough([{ type: "leave" }], asked.state).state.place).toEqual({ at: "left" });
		expect(walkThrough([{ type: "drop-form" }], asked.state).state.place).toEqual({ at: "left" });
	});

	test("gives way to no other form", () => {
		for (const event of [
			{ type: "new-part", kind: "case" },
			{ type: "paste-part", what: "board" },
		] as const) {
			const { state } = walkThrough([event], { ...pageRead, place: { at: "own-parts" } });
			expect(state.form).toEqual(pageRead.form);
			expect(state.notice).toMatch(/not kept yet/);
		}
	});
});

test("a pasted list of processors becomes the board's", () => {
	const list = "CPU\tBIOS\nBramble 9100\tF3\nBramble 6100\tF1\n";
	const { state, effects } = walkThrough([{ type: "paste-part", what: "support-list" }, ...read(list), keep], pageRead);
	expect(state.problem).toBeNull();
	expect(kept(effects)[0]).toMatchObject({
		supportList: {
			readOn: demo.asOf,
			rows: [
				{ processor: "Bramble 9100", fromVersion: "F3" },
				{ processor: "Bramble 6100", fromVersion: "F1" },
			],
		},
	});
});
