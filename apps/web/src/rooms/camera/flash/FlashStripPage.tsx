import {
  type FlashPaper,
  type FlashStripAnswer,
  flashSteps,
  flashStripAnswer,
  flashStripPlan,
  flashTimes,
} from "@captray/notebook/answers";
import { type Json, nextSheetCode, type Test } from "@captray/notebook/records";
import { messageOf } from "@captray/science/errors";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Page } from "../../../kit/Page.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { levelsAgain } from "../../../kit/timedLevels.ts";
import { Word } from "../../../kit/Word.tsx";
import { secondsWords } from "../capPage/capWords.ts";
import { FlashCautions } from "./FlashCautions.tsx";
import { FlashStripDrawing } from "./FlashStripDrawing.tsx";
import { readDensity, readFlashTime } from "./flashForms.ts";
import { lampOf, paperSet, rateSets, rateWithout, testWith } from "./flashRecords.ts";
import { basisWords, dayOf, lampName, lightRange, two, verdictWords } from "./flashWords.ts";
import { newStrip, paperOf } from "./newStrip.ts";
import { useFlashNotebook } from "./useFlashNotebook.ts";
import "./Flash.css";

const factors = [
  { value: "1.26", name: "a third of a stop", factor: 2 ** (1 / 3) },
  { value: "1.41", name: "half a stop", factor: Math.SQRT2 },
  { value: "2", name: "a whole stop", factor: 2 },
];
const edges = [
  { value: "left", name: "left" },
  { value: "right", name: "right" },
  { value: "top", name: "top" },
  { value: "bottom", name: "bottom" },
] as const;

/** A flash strip: planned, given, and after the trays what it says. */
export default function FlashStripPage({ id }: { readonly id: string }) {
  const { strips } = useFlashNotebook();
  const strip = strips.find((one) => one.id === id);
  if (strip === undefined) {
    return (
      <Page title="Flash strip" closeTo="/camera/flash">
        <NothingYet way={<Word to="/camera/flash">All strips</Word>}>This strip is not in the notebook.</NothingYet>
      </Page>
    );
  }
  return <Strip strip={strip} />;
}

function Strip({ strip }: { readonly strip: Test }) {
  const { finds, strips, change } = useFlashNotebook();
  const lamp = lampOf(finds, strip.flashLampId);
  const isGiven = strip.doneAt !== undefined;
  return (
    <Page
      title={strip.name === "" ? "Flash strip" : strip.name}
      closeTo={lamp === undefined ? "/camera/flash" : `/camera/flash/${lamp.id}`}
    >
      <div className="Camera-Flash-page">
        <p className="say">
          {lampName(lamp)}
          {strip.doneAt && `, given ${dayOf(strip.doneAt)}`}.
        </p>
        {isGiven ? (
          <>
            <WhatShows strip={strip} />
            <Given strip={strip} />
          </>
        ) : (
          <>
            <PlanOfStrip strip={strip} />
            <GiveStrip strip={strip} />
          </>
        )}
        <Word
          onPress={() => {
            change(
              [
                { id: strip.id, kind: "test", set: { removedAt: { ...momentNow() } } },
                ...rateWithout({ notebook: finds, strip, strips, now: momentNow() }),
              ],
              "Flash strip put away",
            );
            goTo({ path: "/camera/flash" });
          }}
        >
          Put this strip away
        </Word>
      </div>
    </Page>
  );
}

function PlanOfStrip({ strip }: { readonly strip: Test }) {
  const { notebook, finds, strips, change } = useFlashNotebook();
  const boxes = useShelf("paperBox");
  const recipes = useShelf("recipe");
  const indexes = useShelf("exposureIndex");
  const [first, setFirst] = useState("");
  const lamp = lampOf(finds, strip.flashLampId);
  const lit = flashSteps({ test: strip }).filter(({ plannedS }) => plannedS > 0);
  const others = strips.filter(({ id }) => id !== strip.id);
  const plan = flashStripPlan({ notebook: finds, paper: strip, flashLamp: lamp, strips: others, steps: lit.length });
  const verdict = plan.kind === "plan" ? verdictWords(plan) : null;
  const [shortest, next] = [lit[0]?.plannedS ?? 2, lit[lit.length - 1]?.plannedS ?? 4];
  const ratio = (next / shortest) ** (1 / Math.max(1, lit.length - 1));
  const nearest = factors.reduce((best, one) =>
    Math.abs(Math.log(one.factor / ratio)) < Math.abs(Math.log(best.factor / ratio)) ? one : best,
  );

  const write = (timesS: readonly number[], more: Readonly<Record<string, Json>> = {}, note = "Strip planned anew") =>
    change(
      [{ id: strip.id, kind: "test", set: { ...more, ...levelsAgain(strip, timesS, notebook.newId, momentNow()) } }],
      note,
    );
  const writePaper = (paper: FlashPaper) => {
    const anew = flashStripPlan({ notebook: finds, paper, flashLamp: lamp, strips: others, steps: lit.length });
    const cleared = { exposureIndexId: null, recipeId: null };
    write(anew.kind === "plan" ? anew.timesS : lit.map(({ plannedS }) => plannedS), { ...cleared, ...paperSet(paper) });
  };
  const box = boxes.find(({ id }) => id === strip.paperBoxId);
  const recipe = recipes.find(({ id }) => id === strip.recipeId);
  const result = strip.result ?? "positive";
  const own = (firstS: number, factor: number, steps: number) =>
    write(flashTimes({ firstS, factor, steps }), {}, "Steps of one’s own");
  const typed = readFlashTime(first);

  return (
    <>
      <Section head="The paper">
        {boxes.length === 0 ? (
          <NothingYet way={<Word to="/shelf/box/new">Put a box of paper on the shelf</Word>}>
            Without a box the strip is planned for paper nobody has measured.
          </NothingYet>
        ) : (
          <Choice
            label="From which box"
            value={strip.paperBoxId as string | undefined}
            onChoose={(boxId) =>
              writePaper(paperOf({ box: boxes.find(({ id }) => id === boxId), recipe, result, indexes }))
            }
            options={boxes.map(({ id, name }) => ({
              value: id as string,
              name: name === "" ? "Box without a name" : name,
            }))}
          />
        )}
        <Choice
          label="What it becomes"
          value={result}
          onChoose={(chosen) => writePaper(paperOf({ box, recipe, result: chosen, indexes }))}
          options={[
            { value: "positive", name: "direct positive", detail: "flash lightens its black" },
            { value: "negative", name: "paper negative", detail: "flash raises its thin end" },
          ]}
        />
        {recipes.length > 0 && (
          <Choice
            label="In which baths"
            value={(strip.recipeId as string | undefined) ?? ""}
            onChoose={(recipeId) =>
              writePaper(paperOf({ box, recipe: recipes.find(({ id }) => id === recipeId), result, indexes }))
            }
            options={[
              ...recipes.map(({ id, name }) => ({ value: id as string, name: name === "" ? "a recipe" : name })),
              { value: "", name: "as usual" },
            ]}
          />
        )}
      </Section>
      <Section head="The steps" aside={`${lit.length} and a bare one`}>
        {plan.kind === "refused" ? (
          <ProblemNote head="This paper does not fit together">
            {messageOf({ code: plan.fault.code, facts: plan.fault.facts, key: plan.fault.key }).message}
          </ProblemNote>
        ) : (
          <p className="say">{basisWords(plan)}</p>
        )}
        {verdict !== null && <ProblemNote head={verdict.head}>{verdict.say}</ProblemNote>}
        <FlashStripDrawing test={strip} />
        <Choice
          label="How many steps"
          value={String(lit.length)}
          onChoose={(steps) => own(shortest, nearest.factor, Number(steps))}
          options={["4", "5", "7", "9"].map((steps) => ({ value: steps, name: `${steps} steps` }))}
        />
        <Choice
          label="Each longer by"
          value={nearest.value}
          onChoose={(value) => own(shortest, factors.find((one) => one.value === value)?.factor ?? 2, lit.length)}
          options={factors}
        />
        <div className="Camera-Flash-typed">
          <Field
            label="The shortest step"
            text={first}
            onText={setFirst}
            read={readFlashTime}
            kind="time"
            after="s"
            signs={6}
            hint={two(shortest)}
          />
          {typed.kind === "read" && (
            <Button
              onPress={() => {
                own(typed.value, nearest.factor, lit.length);
                setFirst("");
              }}
            >
              From {secondsWords(typed.value)} on
            </Button>
          )}
        </div>
        <Choice
          label="The bare step lies at this edge"
          value={strip.firstEdge ?? "left"}
          onChoose={(firstEdge) =>
            change([{ id: strip.id, kind: "test", set: { firstEdge } }], "Edge of the bare step")
          }
          options={edges}
        />
      </Section>
    </>
  );
}

function GiveStrip({ strip }: { readonly strip: Test }) {
  const { notebook, change } = useFlashNotebook();
  const edge = strip.firstEdge ?? "left";
  const toTheLamp = () => {
    const held = strip.sheetIds?.at(-1);
    if (held === undefined) {
      const id = notebook.newId();
      const code = nextSheetCode({ codes: notebook.cards().map((card) => card.code) });
      change(
        [
          {
            id,
            kind: "sheet",
            set: { code, ...paperSet(strip), testId: strip.id, label: strip.name, createdAt: { ...momentNow() } },
          },
          { id: strip.id, kind: "test", set: { sheetIds: [id] } },
        ],
        "Sheet for the flash strip",
      );
    }
    goTo({ path: `/camera/flash/run/${strip.id}` });
  };
  return (
    <Section head="Give it">
      <ol className="Camera-Flash-hands">
        <li>A sheet, or a strip cut from one, flat where the sheets will lie; pencil its code on the back.</li>
        <li>A card over the bare step, at the {edge} edge. It stays covered throughout.</li>
        <li>The lamp comes on. At each call the card moves on over the next step, away from the {edge} edge.</li>
        <li>At the last call the lamp goes off. Each step has had its whole time since the lamp came on.</li>
      </ol>
      <FlashCautions />
      <Button main wide big onPress={toTheLamp}>
        To the lamp
      </Button>
    </Section>
  );
}

function WhatShows({ strip }: { readonly strip: Test }) {
  const { notebook, finds, lamps, strips, change } = useFlashNotebook();
  const [measuring, setMeasuring] = useState(strip.levels.some(({ density }) => density !== undefined));
  const steps = flashSteps({ test: strip });
  const lit = steps.filter(({ timeS }) => timeS > 0);
  const answer = flashStripAnswer({ notebook: finds, test: strip });
  const isPositive = strip.result !== "negative";
  const write = (set: Readonly<Record<string, Json>>, note: string) =>
    change(
      [
        { id: strip.id, kind: "test", set },
        ...rateSets({ notebook: finds, test: testWith(strip, set), now: momentNow() }),
      ],
      note,
    );
  const lamp = lamps.find(({ id }) => id === strip.flashLampId);
  return (
    <Section head="Which step shows?" aside="dry, in good light">
      <p className="say">
        After the trays: the first step that can be told from the bare one where they touch
        {isPositive ? ", a black a little lighter" : ", a white a little darker"}.
      </p>
      <Choice
        label="The first step that shows"
        labelUnseen
        value={strip.leastSeen === undefined ? "" : String(Math.min(strip.leastSeen, lit.length))}
        onChoose={(chosen) =>
          write(
            { leastSeen: chosen === "" ? null : Number(chosen) },
            chosen === "" ? "Not looked at yet" : "What shows",
          )
        }
        options={[
          ...lit.map(({ id, timeS }, place) => ({
            id,
            value: String(place + 1),
            name: `from ${secondsWords(timeS)} on`,
          })),
          { value: "0", name: "none of them" },
          { value: "", name: "not looked at yet" },
        ]}
      />
      <Answer answer={answer} />
      {(answer.kind === "allShow" || answer.kind === "noneShow") && lamp !== undefined && (
        <Button
          main
          onPress={() => {
            const set = newStrip({ notebook, finds, lamp, strips });
            change([set], "Flash strip planned");
            goTo({ path: `/camera/flash/strip/${set.id}` });
          }}
        >
          Another strip, beyond this one
        </Button>
      )}
      {measuring ? (
        <div className="Camera-Flash-densities">
          {steps.map(({ id, timeS, density }) => (
            <DensityField
              key={id}
              label={timeS === 0 ? "Bare step, density" : `${secondsWords(timeS)}, density`}
              density={density}
              onDensity={(value) => write({ [`levels.${id}.density`]: value }, "Density of a step")}
            />
          ))}
          <p className="small soft">The bare one and at least one step that differs; then the eye is not asked.</p>
        </div>
      ) : (
        <Word onPress={() => setMeasuring(true)}>I have measured densities</Word>
      )}
    </Section>
  );
}

function DensityField({
  label,
  density,
  onDensity,
}: {
  readonly label: string;
  readonly density: number | undefined;
  readonly onDensity: (value: number | null) => void;
}) {
  const stored = density === undefined ? "" : String(density);
  const [text, setText] = useState(stored);
  const reading = readDensity(text);
  const waits = reading.kind === "read" ? reading.value !== density : reading.kind === "empty" && density !== undefined;
  return (
    <div className="Camera-Flash-typed">
      <Field label={label} text={text} onText={setText} read={readDensity} kind="number" before="D" signs={6} quiet />
      {waits && (
        <Button onPress={() => onDensity(reading.kind === "read" ? reading.value : null)}>
          {reading.kind === "read" ? "Keep it" : "Take it off"}
        </Button>
      )}
    </div>
  );
}

function Answer({ answer }: { readonly answer: FlashStripAnswer }) {
  switch (answer.kind) {
    case "open":
      return null;
    case "seen":
    case "measured":
      return (
        <div className="Camera-Flash-answer" role="status">
          <p className="Camera-Flash-rate">{lightRange(answer.rateLx, answer.sdLn)}</p>
          <p className="say">
            {answer.kind === "seen"
              ? `It first shows between ${two(answer.lastUnseenS)} and ${two(answer.firstSeenS)} s. The paper’s curve says how much light that is; how fine the eye sees and where the curve lies are in the range, nine in ten.`
              : `From the densities of ${answer.used} ${answer.used === 1 ? "step" : "steps"} and the paper’s curve, nine in ten.`}{" "}
            Seconds on this paper are surer than that, ±{Math.round((Math.exp(1.645 * answer.stripSdLn) - 1) * 100)} %:
            strip and plan move together with its curve.
          </p>
        </div>
      );
    case "allShow":
      return (
        <ProblemNote head="The lamp is brighter than this strip can tell">
          Even {secondsWords(answer.firstS)} show: at least {two(answer.atLeastLx)} lx·s a second. Make another with
          shorter steps, or dim the lamp and make one for that set-up.
        </ProblemNote>
      );
    case "noneShow":
      return (
        <ProblemNote head="The lamp is dimmer than this strip can tell">
          Not even {secondsWords(answer.lastS)} show: at most {two(answer.atMostLx)} lx·s a second. Make another with
          longer steps, or bring the lamp nearer and make one for that set-up.
        </ProblemNote>
      );
    case "refused": {
      const { message, hint } = messageOf({
        code: answer.fault.code,
        facts: answer.fault.facts,
        key: answer.fault.key,
      });
      return (
        <ProblemNote head="What was measured does not fit together">
          {answer.fault.code === "tooFew"
            ? "No step differs from the bare one as flash would have it: in a direct positive it is lighter, in a negative darker. Are the densities those of the right steps?"
            : `${message} ${hint}`}
        </ProblemNote>
      );
    }
  }
}

function Given({ strip }: { readonly strip: Test }) {
  const assumed = flashSteps({ test: strip }).some(({ takenAsPlanned }) => takenAsPlanned);
  const sheetId = strip.sheetIds?.at(-1);
  return (
    <Section head="What was given">
      <FlashStripDrawing test={strip} />
      {assumed && <p className="say soft">Where nobody pressed, the planned time stands.</p>}
      <div className="Camera-Flash-acts">
        <Button onPress={() => goTo({ path: `/camera/flash/run/${strip.id}` })}>Put the times right</Button>
        {sheetId !== undefined && <Word to={`/logbook/${sheetId}`}>The page of its sheet</Word>}
      </div>
    </Section>
  );
}
