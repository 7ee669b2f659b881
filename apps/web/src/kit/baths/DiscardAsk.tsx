import type { BathOnHand } from "@captray/notebook/answers";
import type { Bath } from "@captray/notebook/records";
import { Button } from "../Button.tsx";
import { goTo } from "../goTo.ts";
import { ProblemNote } from "../ProblemNote.tsx";
import { bathName, whenWords } from "./bathWords.ts";

export interface DiscardAskProps {
  readonly onHand: readonly BathOnHand[];
  readonly nowMs: number;
  /** The sitting of a bath is over: peroxide goes now, whatever hours it has left. */
  readonly sittingOver: (bath: Bath) => boolean;
}

/** Asks that mixed peroxide be discarded: at the end of the sitting, and once its last hour is over. */
export function DiscardAsk({ onHand, nowMs, sittingOver }: DiscardAskProps) {
  const due = onHand.filter(
    ({ bath, wear, endsWithSitting }) => endsWithSitting && (wear.verdict === "over" || sittingOver(bath)),
  );
  const [first] = due;
  if (first === undefined) return null;
  return (
    <ProblemNote
      head="Peroxide still stands there: discard it"
      ways={due.map(({ bath }) => (
        <Button key={bath.id} onPress={() => goTo({ path: `/trays/bath/${bath.id}` })}>
          Discard {due.length === 1 ? "it" : bathName(bath)}
        </Button>
      ))}
    >
      {first.bath.mixedAt === undefined ? "A" : `Mixed ${whenWords(first.bath.mixedAt, nowMs)}; a`} mixed bleach has a
      last hour, not a last day. Open, into the vessel for used bleach, never stoppered; it is offered to no further
      run.
    </ProblemNote>
  );
}
