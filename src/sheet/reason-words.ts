import { criterionWords, type Reason, type ShortlistEntry } from "../choose/advise.ts";
import type { Depending } from "../choose/judge.ts";
import type { Role } from "../choose/shortlist-roles.ts";
import { criterionById } from "../criteria/all-criteria.ts";
import { partWords } from "../parts/part-words.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import { questionById } from "../questions/all-questions.ts";
import { ruleById } from "../rules/all-rules.ts";
import { findingWords } from "../rules/finding-words.ts";
import type { Finding } from "../rules/outcome.ts";
import { howToFindOut } from "./how-to-find-out.ts";
import { capital, listed } from "./listed.ts";

/** A reason as a sentence. */
export function reasonWords(reason: Reason): string {
	if (reason.kind === "finding") return findingReasonWords(reason.finding, reason.certain);
	if (reason.kind === "depends") return dependingWords(reason.depending);
	if (reason.kind === "also-unknown") return alsoUnknownWords(reason);
	const { value, measure } = reason.part;
	const words = sentence(criterionWords(reason.part));
	const wide = measure.missing.length > 0 && value.high - value.low > 0.2;
	if (!wide || /not known\.$/.test(words)) return words;
	return `${words.slice(0, -1)}; not all facts are known.`;
}

/** "Board size: depends on your case. It fits with: a case for ATX and smaller. Not with: a case for Mini-ITX only." */
export function dependingWords({ ruleId, questionId, fitsWith, notWith }: Depending): string {
	const label = inSentence(questionById(questionId)?.label) ?? questionId;
	return `${ruleById(ruleId)?.label ?? ruleId}: depends on your ${label}. It fits with: ${few(fitsWith)}. Not with: ${few(notWith)}.`;
}

/** At most three of a list, and how many more there are. */
function few(words: readonly string[]): string {
	return words.length > 4 ? `${words.slice(0, 3).join(", ")} and ${words.length - 3} more` : words.join(", ");
}

/** "Of less weight: front plugs, lights." Stands under what is not known. */
function alsoUnknownWords({ ruleIds, criterionIds }: Extract<Reason, { kind: "also-unknown" }>): string {
	const rules = ruleIds.map((id) => inSentence(ruleById(id)?.label) ?? id);
	return `Of less weight: ${few([...rules, ...criterionIds.map((id) => criterionById(id)?.name ?? id)])}.`;
}

/** A board that is left can fail a rule only if an open answer turns out so. */
function findingReasonWords(finding: Finding, certain: boolean): string {
	const missing = missingWords(finding);
	if (missing !== null) return `${ruleById(finding.ruleId)?.label ?? finding.ruleId}: ${missing}`;
	if (finding.verdict === "cannot-tell") return findingWords(finding);
	return certain && finding.verdict !== "does-not-fit"
		? findingWords(finding)
		: `One way it can turn out: ${findingWords(finding)}`;
}

/** "not known: ...", with the missing facts named; null where the finding says it in its own words. */
export function missingWords({ messageId, missing }: Pick<Finding, "messageId" | "missing">): string | null {
	if (messageId !== "missing") return null;
	const facts = missing.map((path) => inSentence(howToFindOut(path)?.what) ?? `your ${partWords[path] ?? path}`);
	return `not known: ${facts.join(", ")}.`;
}

/** First letter large, a full stop at the end. */
export function sentence(words: string): string {
	return `${capital(words)}${/[.!?]$/.test(words) ? "" : "."}`;
}

const roles: Readonly<Record<Role, string>> = {
	"best-match": "Closest to your answers",
	"lowest-price": "Lowest price that fits",
	"step-between": "A step between the two",
	"most-room": "Most room for later",
	"also-good": "Also good",
	"check-first": "May fit: find out first",
};

/** The role in words; a board of which it is not known whether it fits is never said to. */
export function roleWords({
	role,
	also = [],
	verdict,
}: Pick<ShortlistEntry, "role" | "verdict"> & Partial<Pick<ShortlistEntry, "also">>): string {
	const words = [role, ...also].map((one) =>
		one === "lowest-price" && verdict !== "fits" ? "Lowest price still possible" : roles[one],
	);
	return listed(words.map((one, index) => (index === 0 ? one : titleInSentence(one))));
}

/** Whole points; a range only where something unknown makes one, and how often it fits where that is open. */
export function scoreWords({
	score: { low, mid, high },
	ways,
	dependsOn,
	planAround,
}: Pick<ShortlistEntry, "score" | "ways" | "dependsOn" | "planAround">): string {
	const [from, middle, to] = [low, mid, high].map(Math.round);
	const range = from === to ? "" : ` (between ${from} and ${to}: not all facts are known)`;
	const often = ways.fit === ways.all ? "" : `. ${oftenWords(ways, dependsOn)}`;
	const besides = planAround ? ". What is to be planned around is not in these points" : "";
	return `${middle} points of 100${range}${often}${besides}`;
}

/** In how many of the ways that are still open a board fits; plainly, where only the processor is open. */
function oftenWords({ fit, all }: ShortlistEntry["ways"], dependsOn: readonly string[]): string {
	return dependsOn.length === 1 && dependsOn[0] === "fit/candidates"
		? `It suits ${fit} of your ${all} processors`
		: `It fits in ${fit} of the ${all} ways your open answers can turn out`;
}

/** The verdict of a board that is left, with what it hangs on. */
export function verdictWords({
	verdict,
	dependsOn,
	planAround,
}: Pick<ShortlistEntry, "verdict" | "dependsOn"> & { readonly planAround?: boolean }): string {
	if (verdict === "fits") return planAround ? "Fits, with something to plan around" : "Fits";
	if (dependsOn.length === 1 && dependsOn[0] === "fit/candidates") return "Depends on which processor you take";
	const labels = dependsOn.map((id) => inSentence(questionById(id)?.label) ?? id);
	return labels.length > 0 ? `Can't tell: depends on your ${labels.join(" and your ")}` : "Can't tell yet";
}

function inSentence(title: string | undefined): string | undefined {
	return title === undefined ? undefined : titleInSentence(title);
}
