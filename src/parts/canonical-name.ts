/**
 * One spelling for a socket's many: "LGA 1700", "Socket LGA1700" and "FCLGA1700" are one. The package prefix "FC" in
 * front of LGA, PGA and BGA says how the chip is mounted, not which socket it goes into.
 */
export function canonicalSocket(name: string): string {
	return canonicalName(name.replace(/\bsocket\b/gi, " "))
		.replace(/^socket/, "")
		.replace(/^fc(?=[lpb]ga\d)/, "");
}

/**
 * Letters and digits only, small: so that spaces, hyphens and case make no difference between two spellings. A plus
 * sign stays: it tells a newer socket or processor from the one it follows. Signs of trade marks go before they are turned
 * into the letters they are made of.
 */
export function canonicalName(name: string): string {
	return name
		.replace(/[™℠®©]/g, "")
		.normalize("NFKC")
		.toLowerCase()
		.replace(/[^\p{L}\p{N}+]+/gu, "");
}
