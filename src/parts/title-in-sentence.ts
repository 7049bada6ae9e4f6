/** A title inside a sentence: "Socket" becomes "socket", while "USB-C at the back" and "M.2 drives" stay. */
export function titleInSentence(title: string): string {
	return title.replace(/^[A-Z](?=[a-z ])/, (letter) => letter.toLowerCase());
}
