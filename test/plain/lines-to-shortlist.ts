/** Every question, from the start to the shortlist, as a person with the demonstration's parts types it. */
export const linesToShortlist: readonly string[] = [
	"1",
	"200",
	"deckhand",
	"wardrobe",
	"no card",
	"mittens",
	"bonfire",
	"",
	"would be nice",
	"1",
	"5",
	"3",
	"",
	"not sure",
	"a lot",
	"",
];
