import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from "react";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { lazyPart } from "../../../kit/lazyPart.ts";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { AddStep } from "./AddStep.tsx";
import { CautionList } from "./CautionList.tsx";
import { Findings } from "./Findings.tsx";
import { bathTime } from "./recipeLineWords.ts";
import { readRounds } from "./recipeReaders.ts";
import type { RoundDraft, StepDraft } from "./recipeTypes.ts";
import { roundWords, stepWords } from "./recipeWords.ts";
import type { RecipePageView } from "./useRecipePage.ts";

const StepForm = lazyPart(() => import("./StepForm.tsx").then((part) => part.StepForm));

/** The steps in their order: each line opens what is known of it; rounds stand under one bracket. */
export function StepsPart({ view }: { readonly view: RecipePageView }) {
  const { draft, read, findings, on } = view;
  const [openId, setOpenId] = useState<string | undefined>(undefined);
  const [said, setSaid] = useState("");
  const list = useRef<HTMLOListElement>(null);
  const focusId = useRef<string | undefined>(undefined);
  // A line that changed its place keeps the focus: moving it in the page would lose it.
  useEffect(() => {
    if (focusId.current === undefined) return;
    const place = list.current?.querySelector<HTMLElement>(`[data-focus="${focusId.current}"]`);
    focusId.current = undefined;
    place?.focus();
  });
  const move = (step: StepDraft, by: -1 | 1, focus: string) => {
    focusId.current = focus;
    on({ kind: "moved", stepId: step.id, by });
    setSaid(`${step.name} moved ${by < 0 ? "earlier" : "later"}`);
  };
  const opened = (stepId: string) => {
    focusId.current = stepId;
    setOpenId(stepId);
  };
  const whole = findings.filter(({ stepId }) => stepId === undefined);
  const first = (place: number) => {
    const { roundId } = draft.steps[place] ?? { roundId: "" };
    return roundId !== "" && draft.steps[place - 1]?.roundId !== roundId ? roundId : undefined;
  };
  return (
    <div className="Shelf-Recipe-steps">
      <Section
        head="Steps"
        aside={draft.steps.length === 0 ? "none yet" : "from touching one bath to touching the next"}
      >
        <Findings findings={whole} view={view} />
        <p className="unseen" aria-live="polite">
          {said}
        </p>
        <ol ref={list} className="Shelf-Steps">
          {draft.steps.flatMap((step, place): ReactNode[] => {
            const kept = read.steps[place];
            const round = draft.rounds.find(({ id }) => id === first(place));
            const isLast = draft.steps[place + 1]?.roundId !== step.roundId;
            return [
              ...(round === undefined ? [] : [<RoundHead key={`round ${round.id}`} round={round} view={view} />]),
              <li
                key={step.id}
                className="Shelf-Step"
                data-round={step.roundId === "" ? undefined : isLast ? "last" : "in"}
                data-open={openId === step.id || undefined}
              >
                <button
                  type="button"
                  className="Shelf-Step-line"
                  data-focus={step.id}
                  aria-expanded={openId === step.id}
                  aria-keyshortcuts="Alt+ArrowUp Alt+ArrowDown"
                  onClick={() => setOpenId(openId === step.id ? undefined : step.id)}
                  onKeyDown={(event: KeyboardEvent) => {
                    if (!event.altKey || (event.key !== "ArrowUp" && event.key !== "ArrowDown")) return;
                    event.preventDefault();
                    move(step, event.key === "ArrowUp" ? -1 : 1, step.id);
                  }}
                >
                  <span className="Shelf-Step-number">{place + 1}</span>
                  <span>
                    <b>{step.name.trim() || "a step without a name"}</b>
                    <span className="small soft">{kept && stepWords(kept, view.unit)}</span>
                  </span>
                  <span className="Shelf-Step-time">
                    {read.problems.some(({ stepId }) => stepId === step.id) ? "?" : kept && bathTime(kept.timeS.aim)}
                  </span>
                </button>
                {read.problems
                  .filter(({ stepId }) => stepId === step.id)
                  .map(({ head, words }) => (
                    <ProblemNote key={head} head={head}>
                      {words}
                    </ProblemNote>
                  ))}
                <Findings findings={findings.filter(({ stepId }) => stepId === step.id)} view={view} />
                {openId === step.id && (
                  <StepForm
                    step={step}
                    view={view}
                    cautions={
                      <CautionList cautions={view.cautions.at.get(step.id) ?? []} checkedOn={view.cautions.checkedOn} />
                    }
                    onAdded={opened}
                    onMove={(by) => move(step, by, `${step.id} ${by}`)}
                    isFirst={place === 0 && step.roundId === ""}
                    isLast={place === draft.steps.length - 1 && step.roundId === ""}
                  />
                )}
              </li>,
            ];
          })}
        </ol>
        <div className="Shelf-Form-acts">
          <AddStep view={view} afterId={draft.steps.at(-1)?.id} onAdded={opened} />
        </div>
      </Section>
    </div>
  );
}

function RoundHead({ round, view }: { readonly round: RoundDraft; readonly view: RecipePageView }) {
  const { draft, on, read } = view;
  const [isOpen, setOpen] = useState(false);
  const isBleach = draft.steps.some(({ does, roundId }) => does === "bleach" && roundId === round.id);
  const roundId = round.id;
  return (
    <li className="Shelf-Round">
      <button type="button" className="Shelf-Round-line" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        <b>{roundWords(round, draft)}</b>
      </button>
      {read.problems
        .filter((problem) => problem.roundId === roundId)
        .map(({ head, words }) => (
          <ProblemNote key={head} head={head}>
            {words}
          </ProblemNote>
        ))}
      {isOpen && (
        <div className="Shelf-Step-form">
          <Choice
            label="It ends"
            value={round.byEye ? "eye" : "all"}
            onChoose={(how) => on({ kind: "roundByEye", roundId, byEye: how === "eye" })}
            options={[
              { value: "eye", name: "when no dark silver is left", detail: "looked at after each round" },
              { value: "all", name: "when all are done", detail: "nobody looks" },
            ]}
          />
          <fieldset className="Shelf-Step-figures">
            <legend>How often</legend>
            <RoundField
              label="At least"
              text={round.least}
              onText={(text) => on({ kind: "roundSaid", roundId, key: "least", text })}
            />
            {isBleach && (
              <RoundField
                label="As a rule"
                text={draft.usual}
                onText={(text) => on({ kind: "said", key: "usual", text })}
              />
            )}
            <RoundField
              label="At most"
              text={round.most}
              onText={(text) => on({ kind: "roundSaid", roundId, key: "most", text })}
            />
          </fieldset>
          <div className="Shelf-Ways">
            <Word onPress={() => on({ kind: "roundEnded", roundId })}>Go through these steps once</Word>
          </div>
        </div>
      )}
    </li>
  );
}

function RoundField(props: { readonly label: string; readonly text: string; readonly onText: (text: string) => void }) {
  return <Field {...props} read={readRounds} kind="number" below />;
}
