import { BathLine } from "../../../kit/baths/BathLine.tsx";
import { DiscardAsk } from "../../../kit/baths/DiscardAsk.tsx";
import { useBaths } from "../../../kit/baths/useBaths.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";

/** The baths on hand with their state, and the way to mix one. */
export function BathsPart() {
  const baths = useBaths();
  const { onHand, nowMs, sheetM2, sittingOver } = baths;
  return (
    <Section head="Baths" aside={onHand.length === 0 ? undefined : `${onHand.length} mixed`}>
      <DiscardAsk onHand={onHand} nowMs={nowMs} sittingOver={sittingOver} />
      {onHand.length === 0 ? (
        <NothingYet way={<Word to="/trays/mixing">Mix a bath</Word>}>
          What to weigh and pour for this tray, from what you have; then how worn each bath is, and when it is to go.
        </NothingYet>
      ) : (
        <>
          {onHand.map((one) => (
            <BathLine key={one.bath.id} onHand={one} nowMs={nowMs} sheetM2={sheetM2} />
          ))}
          <div className="Trays-Home-ways">
            <Word to="/trays/mixing">Mix a bath</Word>
            <Word to="/trays/baths">All baths and bottles</Word>
          </div>
        </>
      )}
    </Section>
  );
}
