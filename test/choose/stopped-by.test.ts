import { expect, test } from "vitest";
import { stoppedBy } from "../../src/choose/stopped-by.ts";
import { subjectOf } from "../rules/rule-subject.ts";

test("what stops a board is told by its labels, in the order of the rules", () => {
	const subject = subjectOf({
		board: { socket: "Kettle 7", form: "ATX" },
		processor: { socket: "Harbour 2" },
		case: { boardForms: ["Mini-ITX"] },
	});
	expect(stoppedBy(subject)).toEqual(["socket", "board size"]);
});

test("what cannot be told stops nothing, and neither does what can be planned around", () => {
	expect(stoppedBy(subjectOf({ board: {}, processor: { socket: "Harbour 2" } }))).toEqual([]);
	expect(stoppedBy(subjectOf({ board: { drivePorts: [] }, olderSataDrives: 2 }))).toEqual([]);
});
