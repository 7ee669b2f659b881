import type { Result } from "@captray/notebook/records";
import { readExposureIndex } from "@captray/science/notation";
import { useState } from "react";
import { Button } from "../../kit/Button.tsx";
import { Choice } from "../../kit/Choice.tsx";
import { Field } from "../../kit/Field.tsx";
import { NothingYet } from "../../kit/NothingYet.tsx";
import { useNotebook } from "../../kit/notebook/useNotebook.ts";
import { useShelf } from "../../kit/notebook/useShelf.ts";
import { Page } from "../../kit/Page.tsx";
import { PlainField } from "../../kit/PlainField.tsx";
import { Section } from "../../kit/Section.tsx";
import { Word } from "../../kit/Word.tsx";
import { boxSet, boxTexts, indexSet } from "./forms.ts";
import { readCount, readExponent } from "./readPlain.ts";
import { offeredClasses } from "./shelfWords.ts";
import { useForm } from "./useForm.ts";
import "./Shelf.css";

const found = [
  { value: "guessed", name: "a guess", detail: "±1.15 stop" },
  { value: "told", name: "told by somebody", detail: "±0.82 stop" },
  { value: "stepTest", name: "own step test", detail: "±0.49 stop" },
  { value: "threeSheets", name: "three own sheets", detail: "±0.25 stop" },
];

/** A box of paper by your own name for it, with an exposure index for each thing it becomes. */
export default function BoxPage({ id }: { readonly id: string }) {
  const box = useShelf("paperBox").find((one) => one.id === id);
  const indexes = useShelf("exposureIndex");
  const form = useForm({ id, kind: "paperBox", stored: boxTexts(box, indexes) });
  const [freshNegative, freshPositive] = useFreshIndexIds();
  if (box === undefined && !form.isNew) {
    return (
      <Page title="Shelf">
        <NothingYet way={<Word to="/shelf">To the shelf</Word>}>This box is not on the shelf.</NothingYet>
      </Page>
    );
  }
  const { texts, on } = form;
  const keep = () => {
    const indexSets = (["negative", "positive"] as const).flatMap((result) => {
      const set = indexSet(texts, result, form.recordId);
      const known = indexes.find((one) => one.paperBoxId === form.recordId && one.result === result);
      const freshId = result === "negative" ? freshNegative : freshPositive;
      return set === undefined ? [] : [{ id: known?.id ?? freshId, kind: "exposureIndex" as const, set }];
    });
    form.keep(
      [{ id: form.recordId, kind: "paperBox", set: boxSet(texts, form.isNew) }, ...indexSets],
      form.isNew ? "Box put on the shelf" : "Box changed",
    );
  };
  return (
    <Page title={box === undefined ? "A box for the shelf" : box.name || "Box"} closeTo="/shelf">
      <div className="Shelf-Form">
        <Section head="The box">
          <PlainField label="Your own name for it" text={texts.name ?? ""} onText={on("name")} hint="box C" />
          <Field
            label="Sheets left"
            text={texts.sheetsLeft ?? ""}
            onText={on("sheetsLeft")}
            read={readCount}
            kind="number"
            signs={5}
            hint="25"
          />
          <PlainField
            label="Grade, as printed on it"
            text={texts.grade ?? ""}
            onText={on("grade")}
            hint="2"
            most={60}
          />
          <Choice
            label="What it sees"
            value={texts.sensitivity}
            onChoose={on("sensitivity")}
            options={offeredClasses}
          />
        </Section>
        <Index result="negative" head="As a paper negative" guess="2" texts={texts} on={on} />
        <Index result="positive" head="As a direct positive" guess="0.7" texts={texts} on={on} />
        <Section head="Long exposures" aside="reciprocity">
          <Field
            label="Exponent from a test"
            text={texts.exponent ?? ""}
            onText={on("exponent")}
            read={readExponent}
            kind="number"
            signs={6}
            aside="without one none is counted, and the doubt grows from 1 s"
          />
        </Section>
        <div className="Shelf-Form-acts">
          <Button main onPress={keep}>
            {form.isNew ? "Put it on the shelf" : "Keep it so"}
          </Button>
          {!form.isNew && <Button onPress={() => form.putAway("Box put away")}>Put it away</Button>}
        </div>
      </div>
    </Page>
  );
}

function Index(props: {
  readonly result: Result;
  readonly head: string;
  readonly guess: string;
  readonly texts: Readonly<Record<string, string>>;
  readonly on: (key: string) => (text: string) => void;
}) {
  const { result, head, guess, texts, on } = props;
  return (
    <Section head={head}>
      <Field
        label={`Exposure index, ${result}`}
        text={texts[result] ?? ""}
        onText={on(result)}
        read={(text) => readExposureIndex({ text })}
        kind="number"
        before="EI"
        signs={6}
        hint={guess}
      />
      <Choice
        label={`How the ${result}’s index was found`}
        value={texts[`${result}Found`]}
        onChoose={on(`${result}Found`)}
        options={found}
      />
    </Section>
  );
}

function useFreshIndexIds(): readonly [string, string] {
  const notebook = useNotebook();
  const [ids] = useState(() => [notebook.newId(), notebook.newId()] as const);
  return ids;
}
