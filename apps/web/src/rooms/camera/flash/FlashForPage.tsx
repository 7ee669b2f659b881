import { flashOf, flashStripAnswer } from "@captray/notebook/answers";
import type { SheetCard } from "@captray/notebook/journal";
import { type Json, nextSheetCode, type Scene, type Sheet } from "@captray/notebook/records";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useCards } from "../../../kit/notebook/useCards.ts";
import { useRecord } from "../../../kit/notebook/useRecord.ts";
import { Page } from "../../../kit/Page.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { secondsWords } from "../capPage/capWords.ts";
import { FlashCautions } from "./FlashCautions.tsx";
import { readFlashTime } from "./flashForms.ts";
import { dayOf, type FlashWhen, lampName, secondsRange, two, whenSteps, whens, whenWords } from "./flashWords.ts";
import { useFlashNotebook } from "./useFlashNotebook.ts";
import "./Flash.css";

/** The flash of one sheet, or of a scene before there is one: which lamp, when, and how many seconds. */
export default function FlashForPage({ id }: { readonly id: string }) {
  const record = useRecord(id);
  const sceneId = typeof record === "object" && record.kind === "sheet" ? (record.sceneId ?? "") : "";
  const itsScene = useRecord(sceneId);
  const cards = useCards();
  if (record === "loading" || itsScene === "loading") return <p role="status">Opening</p>;
  if (typeof record === "object" && record.kind === "sheet") {
    return (
      <FlashFor
        sheet={record}
        scene={typeof itsScene === "object" && itsScene.kind === "scene" ? itsScene : undefined}
      />
    );
  }
  if (typeof record === "object" && record.kind === "scene") {
    const waiting = cards.find((card) => card.links.sceneId === record.id && isUnexposed(card));
    return <FlashForScene scene={record} waitingId={waiting?.id ?? ""} />;
  }
  return (
    <Page title="Flash" closeTo="/camera/flash">
      <NothingYet way={<Word to="/camera/flash">To the flash</Word>}>
        There is no sheet and no scene of that address.
      </NothingYet>
    </Page>
  );
}

function FlashForScene({ scene, waitingId }: { readonly scene: Scene; readonly waitingId: string }) {
  const waiting = useRecord(waitingId);
  if (waiting === "loading") return <p role="status">Opening</p>;
  return (
    <FlashFor scene={scene} sheet={typeof waiting === "object" && waiting.kind === "sheet" ? waiting : undefined} />
  );
}

function FlashFor({ scene, sheet }: { readonly scene: Scene | undefined; readonly sheet: Sheet | undefined }) {
  const { lamps } = useFlashNotebook();
  const tested = lamps.filter(({ rate }) => rate !== undefined);
  const title = sheet?.code === undefined ? `Flash for ${scene?.subject || "this scene"}` : `Flash for ${sheet.code}`;
  const closeTo = sheet === undefined ? `/camera/${scene?.id ?? ""}` : `/logbook/${sheet.id}`;
  const untested = lamps.at(-1);
  return (
    <Page title={title} closeTo={closeTo}>
      <div className="Camera-Flash-page">
        {sheet?.flashedAt !== undefined ? (
          <AlreadyGiven sheet={sheet} />
        ) : sheet?.inProcessAt !== undefined ? (
          <ProblemNote head="It is past the first bath" ways={<Word to={closeTo}>Its page</Word>}>
            Flash acts on paper that was not developed yet. If it was given, its page takes the date.
          </ProblemNote>
        ) : tested.length === 0 ? (
          <Section head="Make a flash strip first">
            <NothingYet
              way={
                <Button
                  main
                  onPress={() =>
                    goTo({ path: untested === undefined ? "/camera/flash/new" : `/camera/flash/${untested.id}` })
                  }
                >
                  {untested === undefined ? "Set up a lamp for flash" : `Make a flash strip: ${lampName(untested)}`}
                </Button>
              }
            >
              No lamp has been tested as it stands, so there are no seconds to give: what a lamp does to this paper only
              a strip tells. It takes one sheet, or a piece of one.
            </NothingYet>
          </Section>
        ) : (
          <PlanFlash key={sheet?.id ?? scene?.id} scene={scene} sheet={sheet} />
        )}
      </div>
    </Page>
  );
}

function AlreadyGiven({ sheet }: { readonly sheet: Sheet }) {
  const { change } = useFlashNotebook();
  const { flashedAt, flashGivenS, flashPlanned } = sheet;
  return (
    <Section head="Given" aside={flashedAt && dayOf(flashedAt)}>
      <p className="Camera-Flash-rate">
        {flashGivenS === undefined ? "seconds not noted" : secondsWords(flashGivenS)}
        {flashPlanned && `, ${whenWords(flashPlanned.when)}`}
      </p>
      <div className="Camera-Flash-acts">
        {flashPlanned !== undefined && (
          <Button onPress={() => goTo({ path: `/camera/flash/give/${sheet.id}` })}>Put the seconds right</Button>
        )}
        <Word
          onPress={() =>
            change([{ id: sheet.id, kind: "sheet", set: { flashedAt: null, flashGivenS: null } }], "Flash not given")
          }
        >
          It was not given after all
        </Word>
      </div>
    </Section>
  );
}

function PlanFlash({ scene, sheet }: { readonly scene: Scene | undefined; readonly sheet: Sheet | undefined }) {
  const { notebook, finds, lamps, change } = useFlashNotebook();
  const tested = lamps.filter(({ rate }) => rate !== undefined);
  const wished = sheet?.flashPlanned ?? scene?.flash;
  const isExposed = sheet?.exposedAt !== undefined;
  const [lampId, setLampId] = useState<string | undefined>(wished?.flashLampId);
  const [when, setWhen] = useState<FlashWhen>(isExposed ? "afterExposure" : (wished?.when ?? "beforeLoading"));
  const lamp = tested.find(({ id }) => id === lampId) ?? tested.at(-1);
  const strip = lamp?.rate?.testId === undefined ? undefined : finds.peek(lamp.rate.testId);
  const answer = strip?.kind === "test" ? flashStripAnswer({ notebook: finds, test: strip }) : undefined;
  const justUnder = answer?.kind === "seen" ? answer.lastUnseenS : undefined;
  const start = wished !== undefined && wished.timeS > 0 ? wished.timeS : justUnder;
  const [text, setText] = useState(start === undefined ? "" : two(start));
  const reading = readFlashTime(text);
  const timeS = reading.kind === "read" ? reading.value : undefined;
  const paperBoxId = sheet?.paperBoxId ?? scene?.paperBoxId;
  const exposureIndexId = sheet?.exposureIndexId ?? scene?.exposureIndexId;
  const asked = { flashLamp: lamp, paperBoxId, exposureIndexId };
  const flash = timeS === undefined ? undefined : flashOf({ ...asked, ask: { timeS } });
  const giveable = isExposed ? when === "afterExposure" : when !== "afterExposure";
  const waits = timeS === undefined ? "seconds" : undefined;

  const keep = (): string | undefined => {
    if (timeS === undefined || lamp === undefined) return undefined;
    const flashPlanned = { timeS, flashLampId: lamp.id, when };
    // At the cap a sheet takes over what its scene wishes: both say the same until it is exposed.
    const ofScene =
      scene === undefined || isExposed ? [] : [{ id: scene.id, kind: "scene" as const, set: { flash: flashPlanned } }];
    const ofSheet = sheet === undefined ? [] : [{ id: sheet.id, kind: "sheet" as const, set: { flashPlanned } }];
    change(
      [...ofSheet, ...ofScene],
      sheet?.code === undefined ? "Flash for the scene" : `${sheet.code}: flash planned`,
    );
    return sheet?.id;
  };
  const give = () => {
    if (timeS === undefined || lamp === undefined) return;
    const planned = { timeS, flashLampId: lamp.id, when };
    const sheetId = keep() ?? notebook.newId();
    if (sheet === undefined && scene !== undefined) {
      const code = nextSheetCode({ codes: notebook.cards().map((card) => card.code) });
      const set = { code, flashPlanned: planned, createdAt: { ...momentNow() }, ...linksOf(scene) };
      change([{ id: sheetId, kind: "sheet", set }], "Sheet for the flash");
    }
    goTo({ path: `/camera/flash/give/${sheetId}` });
  };

  return (
    <>
      <Section head="Which lamp, as it stands">
        <Choice
          label="Which lamp, as it stands"
          labelUnseen
          value={lamp?.id as string | undefined}
          onChoose={setLampId}
          options={tested.map((one) => ({
            value: one.id as string,
            name: lampName(one),
            detail: one.rate?.foundAt ? `strip of ${dayOf(one.rate.foundAt)}` : "",
          }))}
        />
        <Word to="/camera/flash">Another set-up, or another strip</Word>
      </Section>
      <Section head="When">
        {isExposed ? (
          <p className="say">It is exposed: before the first bath.</p>
        ) : (
          <Choice label="When" labelUnseen value={when} onChoose={setWhen} options={whens} />
        )}
        <ol className="Camera-Flash-hands">
          {whenSteps[when].map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      </Section>
      <Section head="How many seconds">
        <Field
          label="Seconds of flash"
          text={text}
          onText={setText}
          read={readFlashTime}
          kind="time"
          after="s"
          signs={6}
          hint={justUnder === undefined ? "6" : two(justUnder)}
        />
        {flash?.kind === "tested" && (
          <p className="say" role="status">
            <b>{secondsWords(flash.timeS)}</b>; for the same light {secondsRange(flash.rangeS)} would not surprise.{" "}
            {flash.samePaper
              ? "The strip was of this very box and index. "
              : "The strip was of other paper, which the range counts. "}
            It gives about {two(flash.lightLxS)} lx·s, {two(flash.lightRangeLxS[0])} to {two(flash.lightRangeLxS[1])}.
          </p>
        )}
        {answer?.kind === "seen" && (
          <p className="say soft">
            On the strip flash alone first showed between {two(answer.lastUnseenS)} and {two(answer.firstSeenS)} s. Just
            under that is where most begin: common practice.
          </p>
        )}
        {when === "inCamera" && (
          <ProblemNote head="Only for a strip made in the camera">
            The light that counts comes through lens and diffuser. If {lampName(lamp)} was tested otherwise, make a
            set-up and a strip of its own for this.
          </ProblemNote>
        )}
        <FlashCautions />
        {giveable ? (
          <Button main wide big onPress={give} waits={waits}>
            Give it now
          </Button>
        ) : (
          <Button
            main
            wide
            waits={waits}
            onPress={() => {
              keep();
              goTo({ path: sheet === undefined ? `/camera/${scene?.id ?? ""}` : `/logbook/${sheet.id}` });
            }}
          >
            Keep it for after the exposure
          </Button>
        )}
        {giveable && (
          <Word
            onPress={() => {
              keep();
              goTo({ path: sheet === undefined ? `/camera/${scene?.id ?? ""}` : `/logbook/${sheet.id}` });
            }}
          >
            Keep it for later
          </Word>
        )}
      </Section>
    </>
  );
}

function linksOf(scene: Scene): Record<string, Json> {
  return {
    sceneId: scene.id,
    ...(scene.paperBoxId && { paperBoxId: scene.paperBoxId }),
    ...(scene.exposureIndexId && { exposureIndexId: scene.exposureIndexId }),
    ...(scene.recipeId && { recipeId: scene.recipeId }),
    ...(scene.result && { result: scene.result }),
  };
}

function isUnexposed(card: SheetCard): boolean {
  return card.givenS === undefined && card.dates.exposedAt === undefined;
}
