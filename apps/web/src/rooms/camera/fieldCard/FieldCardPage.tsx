import { fieldCard, type PaperName, trueScalePage } from "@captray/drawings/trueScale";
import { useMemo, useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { Page } from "../../../kit/Page.tsx";
import { Section } from "../../../kit/Section.tsx";
import { TrueScale } from "../../../kit/TrueScale.tsx";
import { Word } from "../../../kit/Word.tsx";
import { useLight } from "../../../look/light.ts";
import { cardWords } from "./cardWords.ts";
import { TypedBackRow } from "./TypedBackRow.tsx";
import { useFieldCard } from "./useFieldCard.ts";
import "./FieldCardPage.css";

const papers = [
  { value: "a6", name: "A6", detail: "the card itself" },
  { value: "a4", name: "A4", detail: "cut it out" },
  { value: "letter", name: "Letter", detail: "cut it out" },
] as const;

const steps = [
  { value: "whole", name: "whole stops", detail: "1 s to 1/500" },
  { value: "half", name: "half stops", detail: "near the reading" },
] as const;

const days = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric" });

/** The field card of a scene: seen as it will be printed, printed true to size, and typed back when the day is over. */
export default function FieldCardPage({ id }: { readonly id: string }) {
  const [paper, setPaper] = useState<PaperName>("a6");
  const [step, setStep] = useState<"whole" | "half">("whole");
  const state = useFieldCard({ sceneId: id, step });
  const { lengthUnit } = useSettings();
  const isRed = useLight() === "red";
  const madeOn = useMemo(() => days.format(momentNow().at), []);
  if (state.kind === "absent") {
    return (
      <Page title="Field card" closeTo="/camera">
        <NothingYet way={<Word to="/camera">To the scenes</Word>}>This scene is not in the notebook.</NothingYet>
      </Page>
    );
  }
  if (state.kind === "notYet") {
    return (
      <Page title="Field card" closeTo={`/camera/${id}`}>
        <NothingYet way={<Word to={`/camera/${id}`}>To the scene</Word>}>
          A card of cap times for a day without the phone: the meter’s reading down, the bed mark across. It still needs{" "}
          {state.why}.
        </NothingYet>
      </Page>
    );
  }
  const words = cardWords({ card: state.card, kit: state.kit, lengthUnit, madeOn });
  const page = trueScalePage({ paper, piece: fieldCard(words), isCut: paper !== "a6" });
  return (
    <Page title="Field card" closeTo={`/camera/${id}`}>
      <div className="Camera-FieldCard">
        <div className="Camera-FieldCard-page">
          <TrueScale page={page} paper={paper} />
        </div>
        <div>
          <Section head="Print it">
            <div className="Camera-FieldCard-print">
              <p className="say">
                For a day without the phone: this lens, stop, box, recipe and light. Find the reading at the left and
                the mark at the top; the time stands where they meet.
              </p>
              <Choice label="Meter’s readings in" value={step} onChoose={setStep} options={steps} />
              <Choice label="Paper" value={paper} onChoose={setPaper} options={papers} />
              <p className="small soft">
                In the printer’s own window choose this paper, 100 % and no fitting. Then measure the line: it is 100
                mm.
              </p>
              <Button
                main
                onPress={() => print()}
                waits={isRed ? "daylight; the printer’s window is white" : undefined}
              >
                Print the card
              </Button>
            </div>
          </Section>
          <TypedBackRow state={state} />
        </div>
      </div>
    </Page>
  );
}
