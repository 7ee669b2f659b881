import type { Bath, FieldSet } from "@captray/notebook/records";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { whenWords } from "../../../kit/baths/bathWords.ts";
import { capital } from "../../../kit/baths/capital.ts";
import { heldIn } from "../../../kit/baths/heldIn.ts";
import { Cautions } from "../../../kit/cautions/Cautions.tsx";
import { useCautions } from "../../../kit/cautions/useCautions.ts";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { discardSet, vesselName, vesselsFor } from "./bathPageState.ts";

export interface DiscardProps {
  readonly bath: Bath;
  readonly onDiscard: (set: FieldSet, note: string) => void;
}

/** The end of a bath: into which of two vessels, never one. */
export function Discard({ bath, onDiscard }: DiscardProps) {
  const [refusal, setRefusal] = useState<string | undefined>(undefined);
  const { cautions, checkedOn } = useCautions({ held: heldIn(bath), act: "discard", beside: [] });
  if (bath.discardedAt !== undefined) {
    return (
      <Section head="Discarded">
        <p className="say">
          {capital(whenWords(bath.discardedAt, momentNow().at))}, {vesselName(bath.discardedInto)}. It is offered to no
          run any more.
        </p>
      </Section>
    );
  }
  return (
    <Section head="Discard it" aside="into which vessel?">
      <div className="Trays-Bath-vessels">
        {vesselsFor(bath).map(({ vessel, name, detail, refusal: reason }) => (
          <Button
            key={vessel}
            wide
            aside={detail}
            onPress={() => {
              if (reason === undefined) onDiscard(discardSet(vessel, momentNow()), `discarded ${vesselName(vessel)}`);
              setRefusal(reason);
            }}
          >
            {name}
          </Button>
        ))}
      </div>
      {refusal !== undefined && <ProblemNote head="Not into that one">{refusal}</ProblemNote>}
      <Cautions cautions={cautions} checkedOn={checkedOn} />
    </Section>
  );
}
