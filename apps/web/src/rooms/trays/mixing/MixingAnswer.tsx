import type { Mixing } from "@captray/notebook/answers";
import { Button } from "../../../kit/Button.tsx";
import { Cautions } from "../../../kit/cautions/Cautions.tsx";
import { useCautions } from "../../../kit/cautions/useCautions.ts";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import type { MixingTexts, MixingView } from "./mixingState.ts";
import {
  adviceSentences,
  amountWords,
  pourName,
  problemOf,
  reachedWords,
  readingWords,
  stepSentence,
  warningSentences,
} from "./mixingWords.ts";

export interface MixingAnswerProps {
  readonly view: MixingView;
  readonly put: (texts: MixingTexts) => void;
  readonly onMixed: () => void;
}

/** What to weigh and pour, in which order, what to mind; or what is still to be said, asked or refused. */
export function MixingAnswer({ view, put, onMixed }: MixingAnswerProps) {
  const { mixing, volumeMl } = view;
  if (mixing === undefined) {
    return (
      <Section head="Weigh and pour">
        <p className="say">
          {volumeMl === undefined ? "Say how much bath there is to be." : "Choose a bath that is mixed."}
        </p>
      </Section>
    );
  }
  if (mixing.kind !== "mix") return <NotYet mixing={mixing} put={put} />;
  return <Amounts view={view} mixing={mixing} onMixed={onMixed} />;
}

function NotYet({
  mixing,
  put,
}: {
  readonly mixing: Exclude<Mixing, { readonly kind: "mix" }>;
  readonly put: (texts: MixingTexts) => void;
}) {
  const { head, words } = problemOf(mixing);
  const ways =
    mixing.kind !== "ask"
      ? undefined
      : mixing.readings.map((reading) => (
          <Button
            key={reading.label}
            wide
            onPress={() => put({ [`stock.${mixing.what}`]: "new", [`label.${mixing.what}`]: reading.label })}
          >
            {readingWords(reading)}
          </Button>
        ));
  return (
    <Section head="Weigh and pour">
      {mixing.kind === "needs" ? (
        <p className="say">{words} Then the amounts stand here, in the order of working.</p>
      ) : (
        <ProblemNote head={head} ways={ways}>
          {words}
        </ProblemNote>
      )}
    </Section>
  );
}

interface AmountsProps {
  readonly view: MixingView;
  readonly mixing: Extract<Mixing, { readonly kind: "mix" }>;
  readonly onMixed: () => void;
}

function Amounts({ view, mixing, onMixed }: AmountsProps) {
  const { pours, steps, reached, cautions } = mixing;
  const { checkedOn } = useCautions({ held: [], act: "mix" });
  const said = new Set(steps.flatMap((step) => step.cautions.map(({ id }) => id)));
  const isForBleach = view.isBleach;
  return (
    <Section head="Weigh and pour" aside={view.volumeMl === undefined ? undefined : `${Math.round(view.volumeMl)} ml`}>
      <table className="Trays-Mixing-pours">
        <caption className="unseen">What to weigh and pour</caption>
        <tbody>
          {pours.map((pour) => (
            <tr key={pour.what}>
              <th scope="row">{pourName(pour, isForBleach)}</th>
              <td>{amountWords(pour)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <ol className="Trays-Mixing-steps">
        {steps.map((step) => (
          <li key={`${step.does} ${"what" in step ? step.what : ""}`}>
            <p>{stepSentence(step)}</p>
            <Cautions cautions={step.cautions} checkedOn={checkedOn} isPart />
          </li>
        ))}
      </ol>
      <div className="Trays-Mixing-says small soft">
        {reached.map((one) => (
          <p key={one.what}>
            <b>{one.name}</b> in the bath: {reachedWords(one)}.
          </p>
        ))}
        {[...warningSentences(mixing), ...adviceSentences(view)].map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <Cautions cautions={cautions.filter(({ id }) => !said.has(id))} checkedOn={checkedOn} alsoPuts={[...said]} />
      <div className="Trays-Mixing-acts">
        <Button main onPress={onMixed}>
          Mixed now
        </Button>
      </div>
    </Section>
  );
}
