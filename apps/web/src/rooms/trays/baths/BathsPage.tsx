import type { Bath } from "@captray/notebook/records";
import { useId, useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { BathLine } from "../../../kit/baths/BathLine.tsx";
import { bathName, whenWords } from "../../../kit/baths/bathWords.ts";
import { heldIn } from "../../../kit/baths/heldIn.ts";
import { useBaths } from "../../../kit/baths/useBaths.ts";
import { Cautions } from "../../../kit/cautions/Cautions.tsx";
import { useCautions } from "../../../kit/cautions/useCautions.ts";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { Bottles } from "./Bottles.tsx";
import { vesselName } from "./bathPageState.ts";
import "./Baths.css";

/** The baths that stand there, each over the scale that ends it. */
export default function BathsPage() {
  const { onHand, all, nowMs, sheetM2 } = useBaths();
  const gone = all.filter(({ discardedAt }) => discardedAt !== undefined).toReversed();
  const { cautions, checkedOn } = useCautions({ held: onHand.flatMap(({ bath }) => heldIn(bath)), act: "store" });
  return (
    <Page title="Baths" closeTo="/trays">
      <div className="Trays-Baths">
        <div>
          <Section head="On hand" aside={onHand.length === 0 ? undefined : `${onHand.length} mixed`}>
            {onHand.length === 0 ? (
              <NothingYet>
                A bath stands here from the moment it is mixed: how old it is, what went through it, how worn it
                probably is, and when it is to go.
              </NothingYet>
            ) : (
              onHand.map((one) => <BathLine key={one.bath.id} onHand={one} nowMs={nowMs} sheetM2={sheetM2} />)
            )}
            <div className="Trays-Bath-acts">
              <Button main onPress={() => goTo({ path: "/trays/mixing" })}>
                Mix a bath
              </Button>
            </div>
          </Section>
        </div>
        <div>
          {onHand.length > 0 && <Cautions cautions={cautions} checkedOn={checkedOn} />}
          <Bottles />
          {gone.length > 0 && <Gone baths={gone} nowMs={nowMs} />}
        </div>
      </div>
    </Page>
  );
}

const mostGone = 40;

function Gone({ baths, nowMs }: { readonly baths: readonly Bath[]; readonly nowMs: number }) {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  return (
    <section className="Kit-Section" aria-labelledby={id}>
      <h2>
        <button
          id={id}
          type="button"
          className="Trays-Baths-fold"
          aria-expanded={isOpen}
          onClick={() => setOpen(!isOpen)}
        >
          <span>Discarded</span>
          <span className="small soft">{baths.length}</span>
        </button>
      </h2>
      {isOpen && (
        <ul className="Trays-Baths-gone">
          {baths.slice(0, mostGone).map((bath) => (
            <li key={bath.id}>
              <Word to={`/trays/bath/${bath.id}`}>{bathName(bath)}</Word>
              <span className="small soft">
                {bath.discardedAt && whenWords(bath.discardedAt, nowMs)}, {vesselName(bath.discardedInto)}
              </span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
