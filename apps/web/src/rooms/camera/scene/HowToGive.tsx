import type { PlanOf, WaysOf } from "@captray/notebook/answers";
import { readTime } from "@captray/science/notation";
import { Button } from "../../../kit/Button.tsx";
import { Field } from "../../../kit/Field.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { honestDigits } from "../../../kit/honestDigits.ts";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { useSettled } from "../../../kit/useSettled.ts";
import { Word } from "../../../kit/Word.tsx";
import { HandOfScene } from "../capPractice/HandOfScene.tsx";
import { figuresOf, rangeWords } from "../readingNow/barWords.ts";
import { isWideDoubt } from "../wideDoubt.ts";
import type { ScenePageState } from "./useScenePage.ts";
import { Levers, Ways } from "./Ways.tsx";
import { leversTooLong, leversTooShort, waysInWords } from "./waysWords.ts";

export interface HowToGiveProps {
  readonly sceneId: string;
  readonly page: Extract<ScenePageState, { kind: "scene" }>;
  readonly plan: Extract<PlanOf, { kind: "plan" }>;
  readonly ways: WaysOf;
}

/** How the time is given by hand, what it asks of the subject, and the person's own sum beside the ledger's. */
export function HowToGive({ sceneId, page, plan, ways }: HowToGiveProps) {
  const [still, setStill] = useSettled(page.stillText, page.onStill);
  const [said, setSaid] = useSettled(page.saidText, page.onSaid);
  const { plusMinus } = honestDigits({ value: 0, sd: plan.answer.timeStops.sd, of: "stops" });
  const isWide = isWideDoubt({ sdStops: plan.answer.timeStops.sd });
  return (
    <Section number={4} head="How to give it" aside={`${rangeWords(page.rangeS)} would not surprise`}>
      {isWide && (
        <ProblemNote
          head="A step test first would tell"
          ways={<Button onPress={() => goTo({ path: `/camera/step/${sceneId}` })}>Plan a step test</Button>}
        >
          Give or take {plusMinus} stops is more than this paper forgives. One sheet of strips, of an even board, finds
          the time; one opening stays open to whoever wants the picture now.
        </ProblemNote>
      )}
      {ways.byHand.kind === "tooShort" ? (
        <ProblemNote head="Too short for a cap">
          The shortest honest time for a hand is about {figures(ways.byHand.shortestS)}. Each of these alone would bring
          it:
          <Levers levers={leversTooShort(ways.byHand, plan.answer.optics.fNumber)} />
        </ProblemNote>
      ) : (
        <Ways ways={waysInWords(ways.byHand)} />
      )}
      {!isWide && <Word to={`/camera/step/${sceneId}`}>Step test</Word>}
      <HandOfScene sceneId={sceneId} />
      <Field
        label="The subject keeps still for"
        text={still}
        onText={setStill}
        read={(text) => readTime({ text })}
        kind="time"
        after="s"
        signs={12}
        hint="as long as needed"
      />
      {ways.still?.kind === "tooLong" && (
        <ProblemNote head="Longer than your subject keeps still">
          {figures(page.inHandS)} against {page.stillText}. Each of these alone would do:
          <Levers levers={leversTooLong(ways.still, plan.answer.optics.fNumber)} />
        </ProblemNote>
      )}
      <Field
        label="I worked it out as"
        text={said}
        onText={setSaid}
        read={(text) => readTime({ text })}
        kind="time"
        after="s"
        signs={6}
        aside={page.view.said}
      />
    </Section>
  );
}

function figures(timeS: number): string {
  const { figures: shown, unit } = figuresOf(timeS);
  return unit === "" ? shown : `${shown} ${unit}`;
}
