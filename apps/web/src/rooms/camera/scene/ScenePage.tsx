import { readTime } from "@captray/science/notation";
import { useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { ExposureBar } from "../../../kit/ExposureBar.tsx";
import { Field } from "../../../kit/Field.tsx";
import { LedgerOfPlan } from "../../../kit/ledgerOfPlan/LedgerOfPlan.tsx";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { useSettled } from "../../../kit/useSettled.ts";
import { Word } from "../../../kit/Word.tsx";
import { FlashLine } from "../flash/FlashLine.tsx";
import { figuresOf, rangeWords } from "../readingNow/barWords.ts";
import { AboutScene } from "./AboutScene.tsx";
import { Areas, ReadAgainField } from "./Areas.tsx";
import { SetUp } from "./FocusSetUp.tsx";
import { Sharp } from "./Sharp.tsx";
import type { SceneView } from "./sceneView.ts";
import { useScenePage } from "./useScenePage.ts";
import { Levers, Ways } from "./Ways.tsx";
import { leversTooLong, leversTooShort, waysInWords } from "./waysWords.ts";
import "./ScenePage.css";

/** A scene: its readings, the ledger line by line, how to give the time, and the way to the cap. */
export default function ScenePage({ id }: { readonly id: string }) {
  const page = useScenePage({ sceneId: id });
  const [still, setStill] = useSettled(page.kind === "scene" ? page.stillText : "", page.onStill);
  const [said, setSaid] = useSettled(page.kind === "scene" ? page.saidText : "", page.onSaid);
  if (page.kind === "absent") {
    return (
      <Page title="Camera">
        <NothingYet way={<Word to="/camera/now">I have a reading now</Word>}>
          This scene is not in the notebook. Begin with a reading.
        </NothingYet>
      </Page>
    );
  }
  const { view, ways, title, lengthUnit } = page;
  const isFresh = view.areas.length === 0;
  const { plan } = view;
  return (
    <Page title={title} aside={<Word to={`/camera/now`}>Another reading</Word>}>
      <div className="Camera-Scene">
        <div>
          {isFresh && <SetUp sceneId={id} />}
          <Section number={1} head="Readings" aside={view.frame}>
            <Areas sceneId={id} areas={view.areas} />
            {view.range !== undefined && <p className="small">{view.range}</p>}
            {view.problem !== undefined && <ProblemNote head={view.problem.head}>{view.problem.say}</ProblemNote>}
          </Section>
          {!isFresh && <SetUp sceneId={id} />}
          <AboutScene sceneId={id} />
        </div>
        <div>
          {plan.kind === "plan" && (
            <Section number={2} head="Ledger" aside={page.placedWords}>
              <LedgerOfPlan
                ledger={plan.answer.ledger}
                timeS={plan.answer.timeS}
                timeStops={plan.answer.timeStops}
                lengthUnit={lengthUnit}
                firstOpen
              />
              <Sharp sceneId={id} />
            </Section>
          )}
        </div>
        <div>
          {plan.kind === "plan" && ways !== undefined && (
            <Section
              number={3}
              head="How to give it"
              aside={`${rangeWords(plan.answer.timeIntervalS)} would not surprise`}
            >
              {ways.byHand.kind === "tooShort" ? (
                <ProblemNote head="Too short for a cap">
                  The shortest honest time for a hand is about {figures(ways.byHand.shortestS)}. Each of these alone
                  would bring it:
                  <Levers levers={leversTooShort(ways.byHand, plan.answer.optics.fNumber)} />
                </ProblemNote>
              ) : (
                <Ways ways={waysInWords(ways.byHand)} />
              )}
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
                  {figures(plan.answer.timeS)} against {page.stillText}. Each of these alone would do:
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
                aside={view.said}
              />
            </Section>
          )}
          <FlashLine id={id} />
        </div>
      </div>
      <Bar sceneId={id} view={view} onCap={page.toTheCap} />
    </Page>
  );
}

function Bar(props: { readonly sceneId: string; readonly view: SceneView; readonly onCap: () => void }) {
  const { view } = props;
  const [reading, setReading] = useState(false);
  const time = view.plan.kind === "plan" ? figuresOf(view.plan.answer.timeS) : undefined;
  return (
    <ExposureBar
      time={time?.figures}
      {...(time === undefined ? {} : { unit: time.unit })}
      action={
        <Button main onPress={props.onCap} waits={time === undefined ? "a time" : undefined}>
          To the cap
        </Button>
      }
    >
      {reading ? (
        <ReadAgainField sceneId={props.sceneId} onTaken={() => setReading(false)} />
      ) : (
        <>
          {view.plan.kind === "plan" && <b>nine in ten: {rangeWords(view.plan.answer.timeIntervalS)}</b>}
          <span>
            {view.askAgain ? `${view.age}: the light may have moved.` : view.age}{" "}
            <Word inline onPress={() => setReading(true)}>
              Read again
            </Word>
          </span>
        </>
      )}
    </ExposureBar>
  );
}

function figures(timeS: number): string {
  const { figures: shown, unit } = figuresOf(timeS);
  return unit === "" ? shown : `${shown} ${unit}`;
}
