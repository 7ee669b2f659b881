import { flashStripAnswer } from "@captray/notebook/answers";
import type { FlashLamp } from "@captray/notebook/records";
import { readLength } from "@captray/science/notation";
import { useState } from "react";
import { momentNow } from "../../../devices/momentNow.ts";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { useShelf } from "../../../kit/notebook/useShelf.ts";
import { Page } from "../../../kit/Page.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import { FlashCautions } from "./FlashCautions.tsx";
import { type LampTexts, lampSet, lampTexts, movesLight, readLux } from "./flashForms.ts";
import { lampName, rateWords, stripWords } from "./flashWords.ts";
import { newStrip } from "./newStrip.ts";
import { useFlashNotebook } from "./useFlashNotebook.ts";
import "./Flash.css";

/** A set-up that flashes paper: the lamp as it stands, and what its strips say. */
export default function FlashLampPage({ id }: { readonly id: string }) {
  const { lamps } = useFlashNotebook();
  const lamp = lamps.find((one) => one.id === id);
  if (lamp === undefined && id !== "new") {
    return (
      <Page title="Flash" closeTo="/camera/flash">
        <NothingYet way={<Word to="/camera/flash">All set-ups</Word>}>This set-up is not in the notebook.</NothingYet>
      </Page>
    );
  }
  return (
    <Page title={lamp === undefined ? "A lamp for flash" : lampName(lamp)} closeTo="/camera/flash">
      <div className="Camera-Flash-page">
        <LampForm lamp={lamp} />
        {lamp !== undefined && <Strips lamp={lamp} />}
      </div>
    </Page>
  );
}

function LampForm({ lamp }: { readonly lamp: FlashLamp | undefined }) {
  const { notebook, change } = useFlashNotebook();
  const shelfLamps = useShelf("lamp");
  const stored = lampTexts(lamp);
  const [typed, setTyped] = useState<Partial<LampTexts>>({});
  const texts: LampTexts = { ...stored, ...typed };
  const on = (key: keyof LampTexts) => (text: string) => setTyped((now) => ({ ...now, [key]: text }));
  const changed = Object.keys(typed).some((key) => texts[key as keyof LampTexts] !== stored[key as keyof LampTexts]);
  const asAnother = () => {
    const id = notebook.newId();
    const name = texts.name.trim() === (lamp?.name ?? "") ? `${texts.name.trim()}, again` : texts.name;
    change(
      [{ id, kind: "flashLamp", set: { ...lampSet({ ...texts, name }), createdAt: { ...momentNow() } } }],
      "Another set-up for flash",
    );
    goTo({ path: `/camera/flash/${id}` });
  };
  const keep = () => {
    if (lamp === undefined) {
      const id = notebook.newId();
      change(
        [{ id, kind: "flashLamp", set: { ...lampSet(texts), createdAt: { ...momentNow() } } }],
        "Set-up for flash kept",
      );
      return goTo({ path: `/camera/flash/${id}`, replace: true });
    }
    change([{ id: lamp.id, kind: "flashLamp", set: lampSet(texts) }], "Set-up changed");
    setTyped({});
  };
  const moved = lamp?.rate !== undefined && movesLight(stored, texts);
  return (
    <Section head="The lamp as it stands" aside={lamp === undefined ? "a name is enough" : undefined}>
      <PlainField label="What you call it" text={texts.name} onText={on("name")} hint="night light on the shelf" />
      {shelfLamps.length > 0 && (
        <Choice
          label="Which lamp"
          value={texts.lampId}
          onChoose={on("lampId")}
          options={[
            ...shelfLamps.map(({ id, name }) => ({ value: id as string, name: name === "" ? "a lamp" : name })),
            { value: "", name: "none of the Shelf’s" },
          ]}
        />
      )}
      <PlainField
        label="How it is dimmed"
        text={texts.dimming}
        onText={on("dimming")}
        hint="two sheets of paper"
        most={60}
      />
      <Field
        label="From the lamp to the paper"
        text={texts.distance}
        onText={on("distance")}
        read={(text) => readLength({ text })}
        kind="mm"
        after="mm"
        signs={8}
        hint="1500"
      />
      <PlainField
        label="Through what diffuser"
        text={texts.diffuser}
        onText={on("diffuser")}
        hint="tracing paper"
        most={60}
      />
      <PlainField label="Where" text={texts.where} onText={on("where")} hint="over the dry bench" most={60} />
      <Field
        label="A meter at the paper says, if it reads so low"
        text={texts.meterLx}
        onText={on("meterLx")}
        read={readLux}
        kind="number"
        after="lx"
        signs={6}
        aside="only to begin the first strip well; without it a guess does"
      />
      {moved ? (
        <ProblemNote
          head="Then it is another set-up"
          ways={
            <>
              <Button main onPress={asAnother}>
                Keep it as another set-up
              </Button>
              <Button onPress={keep}>It stood so all along</Button>
            </>
          }
        >
          Its strip holds for the lamp as it stood. Moved, dimmed or covered otherwise it gives other light, and needs a
          strip of its own.
        </ProblemNote>
      ) : (
        <div className="Camera-Flash-acts">
          {(lamp === undefined || changed) && (
            <Button main onPress={keep} waits={texts.name.trim() === "" ? "a name" : undefined}>
              {lamp === undefined ? "Keep the set-up" : "Keep it so"}
            </Button>
          )}
          {lamp !== undefined && !changed && <Button onPress={asAnother}>Copy, to move or dim it</Button>}
          {lamp !== undefined && (
            <Word
              onPress={() => {
                change([{ id: lamp.id, kind: "flashLamp", set: { removedAt: { ...momentNow() } } }], "Set-up put away");
                goTo({ path: "/camera/flash" });
              }}
            >
              Put it away
            </Word>
          )}
        </div>
      )}
    </Section>
  );
}

function Strips({ lamp }: { readonly lamp: FlashLamp }) {
  const { notebook, finds, strips, change } = useFlashNotebook();
  const own = strips.filter(({ flashLampId }) => flashLampId === lamp.id);
  const plan = () => {
    const set = newStrip({ notebook, finds, lamp, strips });
    change([set], "Flash strip planned");
    goTo({ path: `/camera/flash/strip/${set.id}` });
  };
  return (
    <Section head="What it gives the paper">
      <p className={lamp.rate === undefined ? "say" : "Camera-Flash-rate"}>
        {lamp.rate === undefined ? "No seconds yet: make a flash strip first." : rateWords(lamp)}
      </p>
      {lamp.rate !== undefined && (
        <p className="say soft">
          Nine in ten. It is light as this paper sees it: for the lamp as it stands, and for paper of the same sort.
        </p>
      )}
      <ul className="Camera-Flash-list">
        {own.toReversed().map((strip) => (
          <li key={strip.id}>
            <Word to={`/camera/flash/strip/${strip.id}`}>
              {strip.doneAt === undefined ? "The strip that is planned" : strip.name || "Flash strip"}
            </Word>
            <span className="small soft">{stripWords(strip, flashStripAnswer({ notebook: finds, test: strip }))}</span>
          </li>
        ))}
      </ul>
      <div className="Camera-Flash-acts">
        <Button main={lamp.rate === undefined} onPress={plan}>
          {own.length === 0 ? "Make a flash strip" : "Another flash strip"}
        </Button>
      </div>
      <FlashCautions />
    </Section>
  );
}
