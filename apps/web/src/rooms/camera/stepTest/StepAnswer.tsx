import { kitOf, stepStrips, stepTestIndex } from "@captray/notebook/answers";
import type { Test } from "@captray/notebook/records";
import { messageOf } from "@captray/science/errors";
import type { PlanInput } from "@captray/science/exposure";
import { useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Estimate } from "../../../kit/Estimate.tsx";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { useRecord } from "../../../kit/notebook/useRecord.ts";
import { useSettings } from "../../../kit/notebook/useSettings.ts";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { figureOf, secondsWords, stopsWords } from "../capPage/capWords.ts";
import { findsIn, useShelfView } from "../useShelfView.ts";
import { StripsDrawn } from "./StripsDrawn.tsx";
import { indexFoundSets, stripCalledRight } from "./stepRecords.ts";

const below = "below";
const beyond = "beyond";

/** After the trays: which strip prints the board mid grey, and the exposure index that follows. */
export function StepAnswer({ test }: { readonly test: Test }) {
  const notebook = useNotebook();
  const shelf = useShelfView();
  const { lengthUnit } = useSettings();
  const before = stripCalledRight({ test });
  const [right, setRight] = useState(before === undefined ? "" : String(Math.floor(before)));
  const [between, setBetween] = useState(before !== undefined && !Number.isInteger(before));
  const strips = stepStrips({ test });
  const sheetId = test.sheetIds?.[0];
  const sheet = useRecord(sheetId ?? "");
  const scene = shelf.scenes.find(({ id }) => id === test.sceneId);
  const isGiven = strips.some(({ given }) => given);
  const positive = test.result === "positive";
  const chosen = /^\d+$/.test(right) ? Number(right) : undefined;
  const strip = chosen === undefined ? undefined : chosen + (between && chosen < strips.length ? 0.5 : 0);
  const kit = scene === undefined ? undefined : kitOf({ notebook: findsIn(shelf), scene });
  const index = shelf.indexes.find(({ id }) => id === test.exposureIndexId) ?? kit?.exposureIndex;
  // The index goes to what the test was made with, also where the scene has moved on to another box.
  const answer =
    strip === undefined || kit === undefined || index === undefined
      ? undefined
      : stepTestIndex({ kit: { ...kit, exposureIndex: index }, test, strip, planned: plannedOf(sheet) });
  const again = scene === undefined ? undefined : <Word to={`/camera/step/${scene.id}`}>Plan another step test</Word>;
  const putOnBox = () => {
    if (answer?.kind !== "found" || index === undefined || strip === undefined) return;
    notebook
      .change(indexFoundSets({ test, index, answer, strip }), "Exposure index from the step test")
      .kept.catch(() => undefined);
  };
  const isOnBox =
    answer?.kind === "found" &&
    before === strip &&
    index?.value !== undefined &&
    index.value.value === answer.value.value;
  return (
    <div className="Camera-Step">
      <StripsDrawn
        strips={strips.map(({ timeS }, place) => ({ timeS, isRight: chosen === place + 1 }))}
        firstEdge={test.firstEdge ?? "left"}
      />
      {!isGiven && (
        <ProblemNote
          head="Not given yet"
          ways={sheetId !== undefined && <Word to={`/camera/cap/${sheetId}`}>To the cap</Word>}
        >
          These are the seconds planned. What is given at the cap takes their place.
        </ProblemNote>
      )}
      <Section head="Which strip prints the board mid grey" aside="dry, in daylight, beside a grey card">
        <Choice
          label="That strip"
          labelUnseen
          value={right}
          onChoose={setRight}
          options={strips.map(({ timeS }, place) => ({
            value: String(place + 1),
            name: `strip ${place + 1}`,
            detail: `${figureOf(timeS)} s`,
          }))}
        />
        <Choice
          label="or none"
          labelUnseen
          value={right}
          onChoose={setRight}
          options={[
            { value: below, name: positive ? "all are lighter" : "all are darker" },
            { value: beyond, name: positive ? "all are darker" : "all are lighter" },
          ]}
        />
        {chosen !== undefined && chosen < strips.length && (
          <Choice
            label="How near"
            value={between ? "between" : "that"}
            onChoose={(said) => setBetween(said === "between")}
            options={[
              { value: "that", name: "that one" },
              { value: "between", name: `between it and strip ${chosen + 1}` },
            ]}
          />
        )}
      </Section>
      {(right === below || right === beyond) && (
        <ProblemNote head="The right time lies outside this test" ways={again}>
          {right === below
            ? `It is shorter than ${secondsWords(strips[0]?.timeS ?? 0)}: plan the next one around half of that.`
            : `It is longer than ${secondsWords(strips.at(-1)?.timeS ?? 0)}: plan the next one around twice that.`}
        </ProblemNote>
      )}
      {answer?.kind === "refused" && (
        <ProblemNote head="This gives no exposure index">
          {messageOf({ ...answer.fault, lengthUnit }).message}
        </ProblemNote>
      )}
      {(answer?.kind === "missing" || (strip !== undefined && answer === undefined)) && (
        <ProblemNote head="This gives no exposure index" ways={again}>
          Its scene or its paper’s index is no longer in the notebook. Bring them back on the Shelf, and it can be
          worked out.
        </ProblemNote>
      )}
      {answer?.kind === "found" && (
        <Section head="What this paper wants" aside={secondsWords(answer.timeS)}>
          <p className="say">
            EI{" "}
            <Estimate value={answer.value.value} sd={answer.value.value * Math.LN2 * answer.value.sdStops} of="other" />
            .{" "}
            {Math.abs(answer.fasterStops) < 0.05
              ? "That is what the ledger was told."
              : `The paper is ${stopsWords(answer.fasterStops)} ${answer.fasterStops > 0 ? "faster" : "slower"} than the ledger was told.`}{" "}
            Light, lens and meter of this test are in it: only a change from them is charged from now on.
          </p>
          {isOnBox ? (
            <p className="say">It is on the box, and every plan with this paper uses it.</p>
          ) : (
            <Button main onPress={putOnBox}>
              Put it on the box
            </Button>
          )}
        </Section>
      )}
      {again}
    </div>
  );
}

/** The question as it went to the cap with the sheet. */
function plannedOf(sheet: ReturnType<typeof useRecord>): PlanInput | undefined {
  return typeof sheet === "object" && sheet.kind === "sheet"
    ? (sheet.planned?.input as PlanInput | undefined)
    : undefined;
}
