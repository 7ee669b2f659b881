import { lightTestDrawing } from "@captray/drawings/trays";
import { lightTestAnswer, lightTestSteps } from "@captray/notebook/answers";
import type { Json, Test } from "@captray/notebook/records";
import { readLength } from "@captray/science/notation";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { Caution } from "../../../kit/Caution.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Drawing } from "../../../kit/Drawing.tsx";
import { Field } from "../../../kit/Field.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { Section } from "../../../kit/Section.tsx";
import { levelsAgain } from "../../../kit/timedLevels.ts";
import { Word } from "../../../kit/Word.tsx";
import { LightResult } from "./LightResult.tsx";
import { lightPlans, planOfTest } from "./lightRecords.ts";
import { bandWords, dayOf, lightName } from "./lightWords.ts";
import { useLightTests } from "./useLightTests.ts";
import "./Light.css";

/** One test of a light: planned, masked, given, and after the trays what it says. */
export default function LightTestPage({ id }: { readonly id: string }) {
  const { tests } = useLightTests();
  const test = tests.find((one) => one.id === id);
  if (test === undefined) {
    return (
      <Page title="Light test" closeTo="/trays/light">
        <NothingYet way={<Word to="/trays/light">All light tests</Word>}>This test is not in the notebook.</NothingYet>
      </Page>
    );
  }
  return <Planned key={test.id} test={test} />;
}

function Planned({ test }: { readonly test: Test }) {
  const { paperOf, change } = useLightTests();
  const isGiven = test.doneAt !== undefined;
  const answer = lightTestAnswer({ test });
  return (
    <Page title={lightName(test)} closeTo="/trays/light">
      <div className="Trays-Light">
        {isGiven && (
          <p className="say">
            {[`Given ${test.doneAt && dayOf(test.doneAt)}`, paperOf(test)].filter(Boolean).join(", ")}.
          </p>
        )}
        {isGiven && <LightResult test={test} answer={answer} />}
        {!isGiven && <What test={test} />}
        <Mask test={test} />
        {!isGiven && <Give test={test} />}
        {isGiven && (
          <Button onPress={() => goTo({ path: `/trays/light/give/${test.id}` })}>
            Look at its times, or give it again
          </Button>
        )}
        <Word
          onPress={() => {
            change([{ id: test.id, kind: "test", set: { removedAt: { ...momentNow() } } }], "Light test put away");
            goTo({ path: "/trays/light" });
          }}
        >
          Put this test away
        </Word>
      </div>
    </Page>
  );
}

function What({ test }: { readonly test: Test }) {
  const { notebook, boxes, change } = useLightTests();
  const [name, setName] = useState(test.lightName ?? "");
  const held = test.distanceMm?.text ?? (test.distanceMm === undefined ? "" : String(test.distanceMm.value));
  const [distance, setDistance] = useState(held);
  const reading = readLength({ text: distance });
  const isScreen = test.light === "screen";
  const set = (fields: Readonly<Record<string, Json>>, note: string) =>
    change([{ id: test.id, kind: "test", set: fields }], note);
  const waits = (reading.kind === "read" && distance !== held) || (!isScreen && name.trim() !== (test.lightName ?? ""));
  return (
    <Section head="What is tried">
      <p className="say">
        {isScreen
          ? "The whole screen turns red, at its least brightness: about ten times the light of a run, so what is safe here is safe there. A picture of the screen cannot tell; only paper can."
          : "The safelight as it hangs, where the sheet in the trays gets most of it. A phone that lights the paper meanwhile spoils the test: it lies face down and calls."}
      </p>
      {!isScreen && (
        <PlainField label="What you call it" text={name} onText={setName} hint="lamp over the trays" most={60} />
      )}
      <Field
        label={isScreen ? "From the screen to the paper" : "From the lamp to the paper"}
        text={distance}
        onText={setDistance}
        read={(text) => readLength({ text })}
        kind="mm"
        after="mm"
        signs={8}
        hint={isScreen ? "50 cm" : "1.2 m"}
      />
      {waits && (
        <Button
          onPress={() =>
            set(
              {
                lightName: name.trim() === "" ? null : name.trim(),
                ...(reading.kind === "read" && {
                  distanceMm: { value: reading.value, text: distance.trim().slice(0, 60) },
                }),
              },
              "Light named",
            )
          }
        >
          Keep it
        </Button>
      )}
      {boxes.length > 0 ? (
        <Choice
          label="On which paper"
          value={test.paperBoxId as string | undefined}
          onChoose={(paperBoxId) => set({ paperBoxId }, "Paper of the light test")}
          options={boxes
            .slice(-7)
            .map((box) => ({ value: box.id as string, name: box.name === "" ? "Box without a name" : box.name }))}
        />
      ) : (
        <NothingYet way={<Word to="/shelf/box/new">Put a box of paper on the shelf</Word>}>
          A light is safe for one paper, not for all: note which.
        </NothingYet>
      )}
      <Choice
        label="Developed as"
        value={test.result ?? "negative"}
        onChoose={(result) => set({ result }, "How the light test is developed")}
        options={[
          { value: "negative", name: "paper negative", detail: "light darkens it: the surest" },
          { value: "positive", name: "direct positive", detail: "light costs black" },
        ]}
      />
      <Choice
        label="Light for"
        value={planOfTest(test)}
        onChoose={(value) => {
          const plan = lightPlans.find((one) => one.value === value);
          if (plan) set(levelsAgain(test, plan.timesS, notebook.newId, momentNow()), "Steps of the light test");
        }}
        options={lightPlans.map(({ value, name: words }) => ({ value, name: words }))}
      />
    </Section>
  );
}

function Mask({ test }: { readonly test: Test }) {
  const bands = lightTestSteps({ test }).map(({ plannedS }) => bandWords(plannedS));
  const stages = [
    { stage: "greyLeft", words: "Dark: grey on the left" },
    { stage: "light", words: "Light on: the card moves down" },
    { stage: "greyRight", words: "Dark: grey on the right" },
  ] as const;
  return (
    <Section head="How to mask the sheet" aside="a sketch">
      <ol className="Trays-Light-masks">
        {stages.map(({ stage, words }) => (
          <li key={stage}>
            <Drawing drawing={lightTestDrawing({ widthPx: 168, letterPx: 15, stage, bands })} />
            <span>{words}</span>
          </li>
        ))}
      </ol>
      <p className="say">
        The light grey is D 0.25 to 0.50, a shade the eye tells from paper at once: by a dimmed lamp or the flash lamp,
        for the time a step strip of this paper says. Both halves get the same. The strip between gets none: it shows
        plain fog.
      </p>
    </Section>
  );
}

function Give({ test }: { readonly test: Test }) {
  const isScreen = test.light === "screen";
  const known = test.distanceMm !== undefined;
  return (
    <Section head="In the dark">
      <ol className="Trays-Light-hands">
        <li>One sheet, its code in pencil on the back; two cards; the lamp for the grey within reach of the hand.</li>
        <li>All lights out. Card over the right half and the strip: grey on the left.</li>
        <li>
          Card over the uppermost band, right across. {isScreen ? "The screen turns red" : "The safelight comes on"}; at
          each call the card moves down over the next band, at the last the light is off.
        </li>
        <li>Dark. Card over the left half and the strip: the same grey on the right.</li>
        <li>
          {test.result === "positive"
            ? "Through all its baths without any light until the bleach is done. Look at it dry, in good light."
            : "Develop, stop and fix without any light. Look at it dry, in good light."}
        </li>
      </ol>
      {test.result !== "positive" && (
        <p className="say soft">
          For direct positives make another sheet through all their baths: there light costs black, best seen on the
          strip.
        </p>
      )}
      <Caution stuff="Mains and wet hands:">
        dry hands at switch and plug; lamp, lead and switch out of reach of trays and taps, on a circuit with a
        residual-current breaker. Local rules for electrical work come first.
      </Caution>
      <Button
        main
        wide
        big
        waits={known ? undefined : "the distance to the paper, for the answer holds at this one only"}
        onPress={() => goTo({ path: `/trays/light/give/${test.id}` })}
      >
        Lights out, begin
      </Button>
    </Section>
  );
}
