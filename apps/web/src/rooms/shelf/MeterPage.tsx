import { readIso } from "@captray/science/notation";
import { Button } from "../../kit/Button.tsx";
import { Choice } from "../../kit/Choice.tsx";
import { Field } from "../../kit/Field.tsx";
import { NothingYet } from "../../kit/NothingYet.tsx";
import { useShelf } from "../../kit/notebook/useShelf.ts";
import { Page } from "../../kit/Page.tsx";
import { PlainField } from "../../kit/PlainField.tsx";
import { Section } from "../../kit/Section.tsx";
import { Word } from "../../kit/Word.tsx";
import { meterSet, meterTexts } from "./forms.ts";
import { readOffset } from "./readPlain.ts";
import { useForm } from "./useForm.ts";
import "./Shelf.css";

/** A light meter: where its dial begins, its clicks, and how much it is known to be off. */
export default function MeterPage({ id }: { readonly id: string }) {
  const meter = useShelf("meter").find((one) => one.id === id);
  const form = useForm({ id, kind: "meter", stored: meterTexts(meter) });
  if (meter === undefined && !form.isNew) {
    return (
      <Page title="Shelf">
        <NothingYet way={<Word to="/shelf">To the shelf</Word>}>This meter is not on the shelf.</NothingYet>
      </Page>
    );
  }
  const { texts, on } = form;
  const keep = () =>
    form.keep(
      [{ id: form.recordId, kind: "meter", set: meterSet(texts, form.isNew) }],
      form.isNew ? "Meter put on the shelf" : "Meter changed",
    );
  return (
    <Page title={meter === undefined ? "A meter for the shelf" : meter.name || "Meter"} closeTo="/shelf">
      <div className="Shelf-Form">
        <Section head="The meter">
          <PlainField label="What you call it" text={texts.name ?? ""} onText={on("name")} hint="the grey one" />
          <Field
            label="The lowest ISO on its dial"
            text={texts.lowestIso ?? ""}
            onText={on("lowestIso")}
            read={(text) => readIso({ text })}
            kind="number"
            before="ISO"
            signs={6}
            hint="25"
          />
          <Choice
            label="A click of its dial is"
            value={texts.clickStops}
            onChoose={on("clickStops")}
            options={[
              { value: "full", name: "a whole stop" },
              { value: "half", name: "half a stop" },
              { value: "third", name: "a third of a stop" },
            ]}
          />
          <Field
            label="It shows too much light by"
            text={texts.offset ?? ""}
            onText={on("offset")}
            read={readOffset}
            kind="ev"
            after="stops"
            signs={6}
            hint="0"
            aside="against a meter you trust; minus: too little. It is counted as more time, or less."
          />
        </Section>
        <div className="Shelf-Form-acts">
          <Button main onPress={keep}>
            {form.isNew ? "Put it on the shelf" : "Keep it so"}
          </Button>
          {!form.isNew && <Button onPress={() => form.putAway("Meter put away")}>Put it away</Button>}
        </div>
      </div>
    </Page>
  );
}
