import { useState, useSyncExternalStore } from "react";
import { Button } from "../../../kit/Button.tsx";
import { ExposureBar } from "../../../kit/ExposureBar.tsx";
import { lazyPart } from "../../../kit/lazyPart.ts";
import { LedgerOfPlan } from "../../../kit/ledgerOfPlan/LedgerOfPlan.tsx";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { AreaBeyond, AreaDensity, AreaPatch } from "../expectedPrint/AreaTone.tsx";
import { newPrintShown, type PrintShown } from "../expectedPrint/printShown.ts";
import { figuresOf, rangeWords } from "../readingNow/barWords.ts";
import { Areas } from "./Areas.tsx";
import { flashWords, handWords } from "./barParts.ts";
import { type ScenePageState, useScenePage } from "./useScenePage.ts";
import "./ScenePage.css";

type Scene = Extract<ScenePageState, { kind: "scene" }>;

const ExpectedPrint = lazyPart(
  () => import("../expectedPrint/ExpectedPrint.tsx").then((part) => part.default),
  <div className="Camera-Scene-place" />,
);
// What is not asked for at first sight is fetched by itself.
const HowToGive = lazyPart(() => import("./HowToGive.tsx").then((part) => part.HowToGive));
const FlashLine = lazyPart(() => import("../flash/FlashLine.tsx").then((part) => part.FlashLine));
const AboutScene = lazyPart(() => import("./AboutScene.tsx").then((part) => part.AboutScene));
const SetUp = lazyPart(() => import("./FocusSetUp.tsx").then((part) => part.SetUp));
const Sharp = lazyPart(() => import("./Sharp.tsx").then((part) => part.Sharp));
const ReadAgainField = lazyPart(() => import("./AreaEdit.tsx").then((part) => part.ReadAgainField));
const PrintNotes = lazyPart(() => import("../expectedPrint/PrintNotes.tsx").then((part) => part.PrintNotes));

/** A scene: its readings, the ledger line by line, the print to be expected, how to give the time, and the way to the cap. */
export default function ScenePage({ id }: { readonly id: string }) {
  const page = useScenePage({ sceneId: id });
  const [shown] = useState(newPrintShown);
  const [printOf] = useState(() => (areaId: string) => ({
    patch: <AreaPatch shown={shown} areaId={areaId} />,
    chipWords: <AreaBeyond shown={shown} areaId={areaId} />,
    words: <AreaDensity shown={shown} areaId={areaId} />,
  }));
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
        <div className="Camera-Scene-pair">
          <div className="Camera-Scene-readings">
            {isFresh && <SetUp sceneId={id} />}
            <Section number={1} head="Readings" aside={view.frame}>
              <Areas sceneId={id} areas={view.areas} printOf={plan.kind === "plan" ? printOf : undefined} />
              {view.range !== undefined && <p className="small">{view.range}</p>}
              {view.problem !== undefined && <ProblemNote head={view.problem.head}>{view.problem.say}</ProblemNote>}
              {plan.kind === "plan" && <PrintNotes shown={shown} sceneId={id} />}
            </Section>
            {!isFresh && <SetUp sceneId={id} />}
            <AboutScene sceneId={id} />
          </div>
          <div className="Camera-Scene-ledger">
            {plan.kind === "plan" && (
              <Section number={2} head="Ledger" aside={page.placedWords}>
                <LedgerOfPlan
                  ledger={plan.answer.ledger}
                  timeS={plan.answer.timeS}
                  timeStops={plan.answer.timeStops}
                  lengthUnit={lengthUnit}
                  lightTo={`/camera/light/${id}`}
                  firstOpen
                />
                <Sharp sceneId={id} />
              </Section>
            )}
          </div>
        </div>
        <div className="Camera-Scene-pair">
          <div className="Camera-Scene-print">
            {plan.kind === "plan" && <ExpectedPrint kit={page.kit} plan={plan} shown={shown} />}
          </div>
          <div className="Camera-Scene-exposure">
            {plan.kind === "plan" && ways !== undefined && (
              <HowToGive sceneId={id} page={page} plan={plan} ways={ways} />
            )}
            <FlashLine id={id} />
          </div>
        </div>
      </div>
      <Bar sceneId={id} page={page} shown={shown} />
    </Page>
  );
}

function Bar({ sceneId, page, shown }: { readonly sceneId: string; readonly page: Scene; readonly shown: PrintShown }) {
  const { view } = page;
  const [reading, setReading] = useState(false);
  const { plan } = view;
  const hand = page.ways === undefined ? undefined : handWords(page.ways.byHand);
  const flash = flashWords(page.kit);
  return (
    <ExposureBar
      time={plan.kind === "plan" ? <BarTime page={page} shown={shown} /> : undefined}
      parts={reading || hand === undefined ? undefined : [hand, flash]}
      action={
        <Button main onPress={page.toTheCap} waits={plan.kind === "plan" ? undefined : "a time"}>
          To the cap
        </Button>
      }
    >
      {reading ? (
        <ReadAgainField sceneId={sceneId} onLeft={() => setReading(false)} />
      ) : (
        <>
          {plan.kind === "plan" && <BarRange page={page} shown={shown} />}
          <span>
            {view.askAgain ? `${view.age}: the light may have moved.` : view.age}{" "}
            {view.age !== "" && (
              <Word inline onPress={() => setReading(true)}>
                Read again
              </Word>
            )}
          </span>
        </>
      )}
    </ExposureBar>
  );
}

/** The time in hand: while a finger slides it follows, and the page round it waits. */
function useTimeInHand({ page, shown }: { readonly page: Scene; readonly shown: PrintShown }): number {
  return useSyncExternalStore(shown.follow, shown.now)?.time.inHandS ?? page.inHandS;
}

function BarTime(props: { readonly page: Scene; readonly shown: PrintShown }) {
  const { figures: shown, unit } = figuresOf(useTimeInHand(props));
  return (
    <>
      {shown}
      <small> {unit}</small>
    </>
  );
}

function BarRange(props: { readonly page: Scene; readonly shown: PrintShown }) {
  const by = useTimeInHand(props) / props.page.inHandS;
  return <b>nine in ten: {rangeWords(scaled(props.page.rangeS, by))}</b>;
}

function scaled({ low, high }: { readonly low: number; readonly high: number }, by: number) {
  return { low: low * by, high: high * by };
}
