import { type LightTestAnswer, lightTestSteps } from "@captray/notebook/answers";
import type { Json, Test } from "@captray/notebook/records";
import { useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { readDensity } from "./lightForms.ts";
import { saidSets } from "./lightRecords.ts";
import { answerWords, bandWords } from "./lightWords.ts";
import { useLightTests } from "./useLightTests.ts";

const halves = [
  { key: "seenAfter", label: "On the left: grey first, then light" },
  { key: "seenBefore", label: "On the right: light first, then grey" },
  { key: "seenAlone", label: "On the strip between: light alone" },
] as const;

/** What shows on the dry sheet, and what that says of the light. */
export function LightResult({ test, answer }: { readonly test: Test; readonly answer: LightTestAnswer }) {
  const { change } = useLightTests();
  const [measuring, setMeasuring] = useState(
    test.levels.some(({ densityAfter, densityBefore }) => densityAfter !== undefined || densityBefore !== undefined),
  );
  const lit = lightTestSteps({ test }).filter(({ timeS }) => timeS > 0);
  const say = (set: Readonly<Record<string, Json>>, note: string) => change(saidSets(test, set), note);
  return (
    <Section head="What shows?" aside="dry, in good light">
      <Verdict test={test} answer={answer} />
      <p className="say">
        On each half: the first band from the top that can be told from the covered one above it
        {test.result === "positive" ? ", lighter in a positive." : ", a little darker."}
      </p>
      {halves.map(({ key, label }) => (
        <Choice
          key={key}
          label={label}
          value={test[key] === undefined ? "" : String(test[key])}
          onChoose={(chosen) => say({ [key]: chosen === "" ? null : Number(chosen) }, "What the light did")}
          options={[
            { value: "0", name: "no change" },
            ...lit.map(({ plannedS }, place) => ({ value: String(place + 1), name: `from ${bandWords(plannedS)} on` })),
            { value: "", name: "not looked at" },
          ]}
        />
      ))}
      {measuring ? (
        <Densities test={test} />
      ) : (
        <Word onPress={() => setMeasuring(true)}>I have measured densities</Word>
      )}
    </Section>
  );
}

function Verdict({ test, answer }: { readonly test: Test; readonly answer: LightTestAnswer }) {
  if (answer.kind === "open") return null;
  const { head, say } = answerWords(test, answer);
  if (answer.kind === "notSafe") return <ProblemNote head={head}>{say}</ProblemNote>;
  return (
    <div className="Trays-Light-answer" role="status">
      <p className="Trays-Light-safe">{head}</p>
      <p className="say">{say}</p>
    </div>
  );
}

function Densities({ test }: { readonly test: Test }) {
  const { change } = useLightTests();
  const steps = lightTestSteps({ test });
  return (
    <div className="Trays-Light-densities">
      {steps.flatMap(({ id, plannedS, densityAfter, densityBefore }) => [
        <Density
          key={`${id} left`}
          label={`Left, ${plannedS === 0 ? "covered" : bandWords(plannedS)}, density`}
          density={densityAfter}
          onDensity={(value) => change(saidSets(test, { [`levels.${id}.densityAfter`]: value }), "Density of a band")}
        />,
        <Density
          key={`${id} right`}
          label={`Right, ${plannedS === 0 ? "covered" : bandWords(plannedS)}, density`}
          density={densityBefore}
          onDensity={(value) => change(saidSets(test, { [`levels.${id}.densityBefore`]: value }), "Density of a band")}
        />,
      ])}
      <p className="small soft">
        The covered band and at least one other on a half; then the eye is not asked for that half.
      </p>
    </div>
  );
}

function Density({
  label,
  density,
  onDensity,
}: {
  readonly label: string;
  readonly density: number | undefined;
  readonly onDensity: (value: number | null) => void;
}) {
  const [text, setText] = useState(density === undefined ? "" : String(density));
  const reading = readDensity(text);
  const waits = reading.kind === "read" ? reading.value !== density : reading.kind === "empty" && density !== undefined;
  return (
    <div className="Trays-Light-typed">
      <Field label={label} text={text} onText={setText} read={readDensity} kind="number" before="D" signs={6} quiet />
      {waits && (
        <Button onPress={() => onDensity(reading.kind === "read" ? reading.value : null)}>
          {reading.kind === "read" ? "Keep it" : "Take it off"}
        </Button>
      )}
    </div>
  );
}
