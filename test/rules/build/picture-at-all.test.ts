import { pictureAtAll } from "../../../src/rules/build/picture-at-all.ts";
import { testRule } from "../test-rule.ts";

testRule(pictureAtAll, {
	fits: {
		"a card": [{ graphicsCard: {}, processor: { graphics: false } }, "card"],
		"a card not chosen yet": [{ graphicsCard: "open" }, "card"],
		"graphics in the processor": [{ graphicsCard: "none", processor: { graphics: true } }, "processor"],
		"graphics in the processor, whether or not there will be a card": [{ processor: { graphics: true } }, "processor"],
	},
	fails: {
		neither: [{ graphicsCard: "none", processor: { name: "Bosun", graphics: false } }, "none", { processor: "Bosun" }],
	},
	cannotTell: {
		"the processor's page is silent": [{ graphicsCard: "none", processor: {} }, ["processor.graphics"], "unknown"],
		"nobody has said which processor": [{ graphicsCard: "none" }, ["processor.graphics"], "unknown"],
		"nobody has said whether there will be a card": [{ processor: { graphics: false } }, ["graphicsCard"], "unknown"],
		"nobody has said anything": [{}, ["graphicsCard"], "unknown"],
	},
});
