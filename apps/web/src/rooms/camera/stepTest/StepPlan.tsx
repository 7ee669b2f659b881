import { kitOf, planOf, type StepManner, sheetForCap, stepTestPlan } from "@captray/notebook/answers";
import type { Scene } from "@captray/notebook/records";
import { messageOf } from "@captray/science/errors";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { wishToPersist } from "../../../devices/storagePersist.ts";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { figureOf, plusMinusStops, secondsWords, stopsWords } from "../capPage/capWords.ts";
import { findsIn, useShelfView } from "../useShelfView.ts";
import { StripsDrawn } from "./StripsDrawn.tsx";
import { type FirstEdge, stepTestSets } from "./stepRecords.ts";

const counts = [
  { value: "3", name: "3 strips" },
  { value: "5", name: "5 strips" },
  { value: "7", name: "7 strips" },
] as const;
const distances = [
  { value: "0.5", name: "half a stop" },
  { value: "1", name: "a whole stop" },
] as const;
const manners = [
  { value: "openings", name: "cap on between strips", detail: "surer; takes longer" },
  { value: "cardMoved", name: "card moved while it is off", detail: "at the ticks" },
] as const;
const edges = [
  { value: "top", name: "top" },
  { value: "bottom", name: "bottom" },
  { value: "left", name: "left" },
  { value: "right", name: "right" },
] as const;

/** A step test planned from a scene: strips around the advised time, and what each gets. */
export function StepPlan({ scene }: { readonly scene: Scene }) {
  const notebook = useNotebook();
  const shelf = useShelfView();
  const { lengthUnit } = useSettings();
  const [steps, setSteps] = useState<(typeof counts)[number]["value"]>("5");
  const [apart, setApart] = useState<(typeof distances)[number]["value"]>("1");
  const [manner, setManner] = useState<StepManner>("openings");
  const [firstEdge, setFirstEdge] = useState<FirstEdge>("left");
  const kit = kitOf({ notebook: findsIn(shelf), scene });
  const plan = planOf(kit);
  const test = stepTestPlan({ kit, steps: Number(steps), stopsApart: Number(apart), manner });
  if (test.kind === "refused") {
    return (
      <ProblemNote head="This cannot be planned so" ways={<Word to={`/camera/${scene.id}`}>To the scene</Word>}>
        {messageOf({ ...test.fault, lengthUnit }).message}
      </ProblemNote>
    );
  }
  if (plan.kind !== "plan" || test.kind !== "plan") {
    return (
      <NothingYet way={<Word to={`/camera/${scene.id}`}>To the scene</Word>}>
        A step test lies around the time that the ledger gives. This scene has none yet: read the light first.
      </NothingYet>
    );
  }
  const which = sheetForCap({
    holders: notebook.shelf("holder"),
    cards: notebook.cards(),
    sceneId: scene.id,
    paperBoxId: kit.paperBox?.id,
  });
  const toTheCap = () => {
    const { sheetId, sets } = stepTestSets({
      kit,
      plan,
      strips: test.strips,
      manner,
      firstEdge,
      cards: notebook.cards(),
      chosen: which.kind === "this" ? which.sheet : "new",
      newId: () => notebook.newId(),
      now: momentNow(),
    });
    notebook.change(sets, "Step test ready for the cap").kept.catch(() => undefined);
    void wishToPersist();
    goTo({ path: `/camera/cap/${sheetId}` });
  };
  return (
    <div className="Camera-Step">
      <p className="say">
        One sheet, several exposures. Point at an even board that fills the frame, and read the meter on it. The strip
        that prints it mid grey says what this paper really wants.
      </p>
      <Section head="The strips" aside={`${secondsWords(test.timeS)} advised, ${plusMinusStops(test.sdStops)}`}>
        <div className="Camera-Step-choices">
          <Choice label="How many" value={steps} onChoose={setSteps} options={counts} />
          <Choice label="How far apart" value={apart} onChoose={setApart} options={distances} />
          <Choice label="How they are given" value={manner} onChoose={setManner} options={manners} />
          <Choice
            label="The least lies at this edge of the ground glass"
            value={firstEdge}
            onChoose={setFirstEdge}
            options={edges}
          />
        </div>
        <StripsDrawn strips={test.strips.map(({ totalS }) => ({ timeS: totalS }))} firstEdge={firstEdge} />
        <table className="Camera-Step-table">
          <thead>
            <tr>
              <th scope="col">strip</th>
              <th scope="col">{manner === "openings" ? "this opening" : "until the move"}</th>
              <th scope="col">in all</th>
              <th scope="col">stops</th>
              <th scope="col">nine in ten</th>
            </tr>
          </thead>
          <tbody>
            {test.strips.map(({ countS, totalS, stops, sdStops }, place) => (
              <tr key={totalS}>
                <th scope="row">{place + 1}</th>
                <td>{figureOf(countS)} s</td>
                <td>{figureOf(totalS)} s</td>
                <td>{Math.abs(stops) < 0.005 ? "0" : `${stops > 0 ? "+" : "−"}${stopsWords(stops)}`}</td>
                <td>{plusMinusStops(sdStops)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {test.tooShort && (
          <ProblemNote head="The shortest strips are too short for a hand">
            Whole ticks or the hand put a strip more than a third of a stop out. A grey filter or a smaller stop makes
            them longer; or take fewer strips.
          </ProblemNote>
        )}
        <p className="small soft">
          The image stands on its head on the ground glass: the edge named here is the one seen there. The card covers
          the strips that have had enough, close before the paper or in the slide’s place.
        </p>
      </Section>
      <Button main onPress={toTheCap}>
        To the cap
      </Button>
    </div>
  );
}
