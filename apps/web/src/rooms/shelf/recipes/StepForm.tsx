import type { BathSubstance, StepDoes } from "@captray/notebook/records";
import { type ReactNode, useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { Word } from "../../../kit/Word.tsx";
import { AddStep } from "./AddStep.tsx";
import { hasUsualTimes } from "./recipeDraft.ts";
import { readBathTemperature, readDrain, readLeastTime, readStepTime, readStrength } from "./recipeReaders.ts";
import type { StepDraft, StepText } from "./recipeTypes.ts";
import { bathHolds, bathWords, doesFor, doesWords, hasStrength, lightWords, substanceWords } from "./recipeWords.ts";
import type { RecipePageView } from "./useRecipePage.ts";

export interface StepFormProps {
  readonly step: StepDraft;
  readonly view: RecipePageView;
  readonly cautions: ReactNode;
  readonly onAdded: (stepId: string) => void;
  readonly onMove: (by: -1 | 1) => void;
  readonly isFirst: boolean;
  readonly isLast: boolean;
}

/** Everything that can be said of one step. */
export function StepForm({ step, view, cautions, onAdded, onMove, isFirst, isLast }: StepFormProps) {
  const { draft, on, unit } = view;
  const stepId = step.id;
  const say = (key: StepText) => (text: string) => on({ kind: "stepSaid", stepId, key, text });
  const warm = (text: string) => readBathTemperature(text, unit);
  const sign = unit === "celsius" ? "°C" : "°F";
  const baths = [...new Set([...doesWords[step.does].baths, step.bath])];
  return (
    <div className="Shelf-Step-form">
      {cautions}
      <div className="Shelf-Form-acts">
        <Move by={-1} step={step} onMove={onMove} waits={isFirst ? "it is the first" : undefined} />
        <Move by={1} step={step} onMove={onMove} waits={isLast ? "it is the last" : undefined} />
        <Button onPress={() => on({ kind: "removed", stepId })} spoken={`Take ${step.name} out`}>
          Take it out
        </Button>
      </div>
      <fieldset className="Shelf-Step-figures">
        <legend>How long, drain included</legend>
        <Field label="At least" text={step.least} onText={say("least")} read={readLeastTime} kind="time" below quiet />
        <Field label="As a rule" text={step.aim} onText={say("aim")} read={readStepTime} kind="time" below quiet />
        <Field label="At most" text={step.most} onText={say("most")} read={readStepTime} kind="time" below quiet />
      </fieldset>
      {(draft.untested || hasUsualTimes(step)) && <p className="small soft">Common practice: test first.</p>}
      {step.bath !== "" && (
        <fieldset className="Shelf-Step-figures">
          <legend>How warm</legend>
          <Field
            label="Coolest"
            text={step.coolest}
            onText={say("coolest")}
            read={warm}
            kind="number"
            after={sign}
            below
          />
          <Field
            label="Mixed to"
            text={step.warmth}
            onText={say("warmth")}
            read={warm}
            kind="number"
            after={sign}
            below
          />
          <Field
            label="Warmest"
            text={step.warmest}
            onText={say("warmest")}
            read={warm}
            kind="number"
            after={sign}
            below
          />
        </fieldset>
      )}
      <PlainField label="Movement" text={step.agitation} onText={say("agitation")} hint="rock all the time" />
      <Field
        label="Drain before it leaves"
        text={step.drain}
        onText={say("drain")}
        read={readDrain}
        kind="time"
        signs={5}
      />
      <Choice
        label="Which light may be on"
        value={step.light}
        onChoose={(light) => on({ kind: "stepLight", stepId, light })}
        options={(["dark", "safelight", "whiteAllowed", "whiteRequired"] as const).map((value) => ({
          value,
          name: value === "whiteRequired" ? "white light needed" : lightWords[value],
        }))}
      />
      <Choice
        label="When another sheet needs the hands"
        value={step.leaves}
        onChoose={(leaves) => on({ kind: "stepLeaves", stepId, leaves })}
        options={[
          { value: "onTime", name: "it must leave on time", detail: "goes first" },
          { value: "either", name: "some seconds do no harm" },
          { value: "mayWait", name: "it may wait", detail: "up to its longest" },
        ]}
      />
      <Does step={step} view={view} />
      <PlainField label="What you call it" text={step.name} onText={say("name")} />
      {baths.length > 1 && (
        <Choice
          label="In which bath"
          value={step.bath === "" ? "none" : step.bath}
          onChoose={(bath) => on({ kind: "stepBath", stepId, bath: bath === "none" ? "" : bath })}
          options={baths.map((bath) => ({ value: bath === "" ? ("none" as const) : bath, name: bathWords[bath] }))}
        />
      )}
      <Holds step={step} view={view} />
      <div className="Shelf-Ways">
        {step.roundId === "" && (
          <Word onPress={() => on({ kind: "roundBegun", stepId })} spoken={`Go through ${step.name} more than once`}>
            Go through it more than once
          </Word>
        )}
        <AddStep view={view} afterId={stepId} after={step.name} onAdded={onAdded} />
      </div>
    </div>
  );
}

// The kit's press has no place for a name of our own; the focus has to come back to it after the move.
function Move(props: {
  readonly by: -1 | 1;
  readonly step: StepDraft;
  readonly onMove: (by: -1 | 1) => void;
  readonly waits: string | undefined;
}) {
  const { by, step, onMove, waits } = props;
  const word = by < 0 ? "Earlier" : "Later";
  return (
    <button
      type="button"
      className="Kit-Button"
      data-focus={`${step.id} ${by}`}
      data-waits={waits === undefined ? undefined : true}
      aria-disabled={waits !== undefined}
      aria-label={`${step.name}: ${word.toLowerCase()}${waits === undefined ? "" : `, waits: ${waits}`}`}
      onClick={() => waits === undefined && onMove(by)}
    >
      <span>{word}</span>
    </button>
  );
}

/** What it does; the kinds that fit the recipe's result first, the others on request. */
function Does({ step, view }: { readonly step: StepDraft; readonly view: RecipePageView }) {
  const [all, setAll] = useState(false);
  const kinds = doesFor(view.draft.result);
  const shown = all ? kinds : kinds.filter((does, place) => place < 6 || does === step.does);
  return (
    <div>
      <Choice<StepDoes>
        label="What it does"
        value={step.does}
        onChoose={(does) => view.on({ kind: "stepDoes", stepId: step.id, does })}
        options={shown.map((value) => ({ value, name: doesWords[value].name }))}
      />
      {shown.length < kinds.length && <Word onPress={() => setAll(true)}>{`${kinds.length - shown.length} more`}</Word>}
    </div>
  );
}

/** What is in the bath, as far as the cautions ask. */
function Holds({ step, view }: { readonly step: StepDraft; readonly view: RecipePageView }) {
  const substances = [
    ...new Set([...bathHolds[step.bath], ...(Object.keys(step.holds) as BathSubstance[])]),
    ...(step.does === "bleach"
      ? (["permanganate", "dichromate"] as const).filter((what) => !(what in step.holds))
      : []),
  ];
  if (substances.length === 0) return null;
  const put = (what: BathSubstance, text: string | undefined) =>
    view.on({ kind: "stepHolds", stepId: step.id, what, text });
  return (
    <div>
      <p className="Shelf-Step-label">What is in it</p>
      <ul className="Shelf-Recipe-toggles" aria-label={`What is in ${bathWords[step.bath]}`}>
        {substances.map((what) => (
          <li key={what}>
            <button
              type="button"
              aria-pressed={what in step.holds}
              onClick={() => put(what, what in step.holds ? undefined : "")}
            >
              <b>{substanceWords[what]}</b>
            </button>
          </li>
        ))}
      </ul>
      {substances
        .filter((what) => what in step.holds && hasStrength.has(what))
        .map((what) => (
          <Field
            key={what}
            label={`Strength of the ${substanceWords[what]}, as used`}
            text={step.holds[what] ?? ""}
            onText={(text) => put(what, text)}
            read={readStrength}
            kind="number"
            after="g in 100 ml"
            signs={6}
            quiet
          />
        ))}
    </div>
  );
}
