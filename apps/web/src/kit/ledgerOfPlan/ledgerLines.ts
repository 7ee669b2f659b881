import type { LedgerLineWithFacts } from "@captray/science/exposure";

/** The lines worth a row: placing on mid and filters only where there are any. */
export function shownLines(ledger: readonly LedgerLineWithFacts[]): LedgerLineWithFacts[] {
  return ledger.filter(
    (line) => (line.line !== "place" && line.line !== "filters") || line.stops.value !== 0 || line.stops.sd !== 0,
  );
}

/** Whether the line is already in an exposure index of one's own sheets, so that nothing is charged and nothing doubted. */
export function inTheIndex(line: LedgerLineWithFacts): boolean {
  return (
    (line.line === "transmission" && line.facts.inIndex) ||
    (line.line === "colourOfLight" && line.facts.inIndex && line.stops.sd === 0) ||
    (line.line === "colourOfLight" && line.facts.ownSheets && line.facts.source === null)
  );
}

/** A source key with its words, as a reader wants it: “iso-2720: meter constants” stays; “none: a guess” says that there is none. */
export function sourceWords(source: string): string {
  return source.replaceAll(/\bnone: /g, "no outside source, ");
}
