import * as z from "zod";
import { amount, count, date, fact, line } from "./fact.ts";

const tests = "A published test with pictures of the stages and their markings.";

const measurement = z.strictObject({
	loadW: fact(amount(1, 2000), { title: "Processor watts during the test", unit: "W", whereToFind: tests }),
	airC: fact(amount(-20, 60), { title: "Room temperature", unit: "degrees C", whereToFind: tests }),
	airflow: fact(z.enum(["still", "case fans", "blown at"]).optional(), {
		title: "How the air moved",
		whereToFind: tests,
	}),
	minutes: fact(amount(0, 10000).optional(), { title: "Minutes of load", unit: "min", whereToFind: tests }),
	stageC: fact(amount(-20, 200), { title: "Hottest power stage, as measured", unit: "degrees C", whereToFind: tests }),
	measuredAt: fact(line(80).optional(), { title: "What was measured", whereToFind: tests }),
	where: fact(line(400).optional(), { title: "Where it was read", whereToFind: tests }),
	date: fact(date().optional(), { title: "Date of the test", whereToFind: tests }),
});

/** The stages on the core rail only; those for graphics, memory or chip-side rails do not feed the cores. */
export const powerDelivery = z.strictObject({
	advertised: fact(line(60).optional(), {
		title: "Phases as advertised",
		whereToFind: 'The maker\'s page, such as "14+2+1"; the first number can count pairs.',
	}),
	coreStages: fact(count(1, 64).optional(), {
		title: "Power stages for the cores, counted",
		whereToFind: `${tests} Count the coils beside the socket if there is none.`,
	}),
	pairing: fact(z.enum(["none", "doubled", "paired"]).optional(), {
		title: "How phases are split",
		whereToFind: tests,
	}),
	controllerPhases: fact(count(1, 64).optional(), { title: "Controller phases", whereToFind: tests }),
	stageKind: fact(z.enum(["integrated", "separate switches"]).optional(), {
		title: "Kind of power stage",
		whereToFind: tests,
	}),
	stageRatingA: fact(amount(5, 300).optional(), { title: "Rating of a power stage", unit: "A", whereToFind: tests }),
	highSwitchMohm: fact(amount(0.1, 50).optional(), {
		title: "High switch resistance",
		unit: "mohm",
		whereToFind: tests,
	}),
	lowSwitchMohm: fact(amount(0.1, 50).optional(), {
		title: "Resistance of one low switch",
		unit: "mohm",
		whereToFind: tests,
	}),
	lowSwitchesPerStage: fact(count(1, 4).optional(), {
		title: "Low switches side by side in one stage",
		whereToFind: `${tests} Two low switches at one coil are one stage, not two.`,
	}),
	efficiencyPercent: fact(amount(50, 99.5).optional(), {
		title: "Efficiency at 60 % of a stage's rating",
		unit: "%",
		whereToFind: "The efficiency curve in the stage's data sheet.",
	}),
	switchingKhz: fact(amount(50, 5000).optional(), { title: "Switching frequency", unit: "kHz", whereToFind: tests }),
	coilMohm: fact(amount(0.01, 20).optional(), { title: "Coil resistance", unit: "mohm", whereToFind: tests }),
	coilNh: fact(amount(10, 5000).optional(), { title: "Coil inductance", unit: "nH", whereToFind: tests }),
	heatSink: fact(z.enum(["none", "one side", "both sides", "both sides with heat pipe", "finned"]).optional(), {
		title: "Heat sink on the power stages",
		whereToFind: "Pictures of the board.",
	}),
	thermalResistanceKPerW: fact(amount(0.05, 100).optional(), {
		title: "Thermal resistance of all stages to air",
		unit: "K/W",
		whereToFind: tests,
	}),
	layers: fact(count(1, 40).optional(), { title: "Layers of the board", whereToFind: "The maker's page or a test." }),
	copperOz: fact(amount(0.25, 8).optional(), {
		title: "Copper in the board",
		unit: "oz",
		whereToFind: "The maker's page or a test.",
	}),
	measurements: fact(z.array(measurement).max(20).optional(), {
		title: "Measured temperatures",
		whereToFind: "A published test that measures how hot the power stages get under load.",
	}),
});
