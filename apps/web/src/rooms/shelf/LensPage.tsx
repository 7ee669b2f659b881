import { type ReadAnswer, readFNumber, readLength } from "@captray/science/notation";
import { Button } from "../../kit/Button.tsx";
import { Choice } from "../../kit/Choice.tsx";
import { Field } from "../../kit/Field.tsx";
import { NothingYet } from "../../kit/NothingYet.tsx";
import { useShelf } from "../../kit/notebook/useShelf.ts";
import { Page } from "../../kit/Page.tsx";
import { PlainField } from "../../kit/PlainField.tsx";
import { Section } from "../../kit/Section.tsx";
import { Word } from "../../kit/Word.tsx";
import { lensSet, lensTexts } from "./forms.ts";
import { lensName } from "./shelfWords.ts";
import { useForm } from "./useForm.ts";
import "./Shelf.css";

const glasses = [
  { value: "", name: "not known", detail: "as the meter supposes" },
  { value: "0.83", name: "four bare surfaces", detail: "passes 0.83" },
  { value: "0.75", name: "six bare surfaces", detail: "passes 0.75" },
  { value: "0.68", name: "eight bare surfaces", detail: "passes 0.68" },
];

/** A lens: what is engraved on it, and what was measured, which goes before. */
export default function LensPage({ id }: { readonly id: string }) {
  const lens = useShelf("lens").find((one) => one.id === id);
  const form = useForm({ id, kind: "lens", stored: lensTexts(lens) });
  if (lens === undefined && !form.isNew) return <Absent />;
  const { texts, on } = form;
  const length = (text: string): ReadAnswer => readLength({ text });
  const fNumber = (text: string): ReadAnswer => readFNumber({ text });
  const ready =
    length(texts.focalLength ?? "").kind === "read" || length(texts.measuredFocalLength ?? "").kind === "read";
  const keep = () =>
    form.keep(
      [{ id: form.recordId, kind: "lens", set: lensSet(texts, lens, form.freshStopId) }],
      form.isNew ? "Lens put on the shelf" : "Lens changed",
    );
  return (
    <Page title={lens === undefined ? "A lens for the shelf" : lensName(lens, "mm")} closeTo="/shelf">
      <div className="Shelf-Form">
        <Section head="What is engraved on it">
          <Field
            label="Focal length"
            text={texts.focalLength ?? ""}
            onText={on("focalLength")}
            read={length}
            kind="mm"
            after="mm"
            signs={7}
            hint="210"
          />
          <Field
            label="f-number"
            text={texts.fNumber ?? ""}
            onText={on("fNumber")}
            read={fNumber}
            kind="fNumber"
            before="f/"
            signs={6}
            hint="11"
          />
          <PlainField label="What you call it" text={texts.name ?? ""} onText={on("name")} hint="the shed door lens" />
        </Section>
        <Section head="What you measured" aside="goes before what is engraved">
          <Field
            label="f-number as measured"
            text={texts.measuredFNumber ?? ""}
            onText={on("measuredFNumber")}
            read={fNumber}
            kind="fNumber"
            before="f/"
            signs={6}
            aside="a measured 11 is 11, no mark"
          />
          <Field
            label="Diameter of the pupil, seen from the front"
            text={texts.diameter ?? ""}
            onText={on("diameter")}
            read={length}
            kind="mm"
            after="mm"
            signs={7}
            aside="half a millimetre in 20 is 0.07 stop"
          />
          <Field
            label="Focal length as measured"
            text={texts.measuredFocalLength ?? ""}
            onText={on("measuredFocalLength")}
            read={length}
            kind="mm"
            after="mm"
            signs={7}
          />
          <Field
            label="Board to ground glass with a distant subject"
            text={texts.infinityExtension ?? ""}
            onText={on("infinityExtension")}
            read={length}
            kind="mm"
            after="mm"
            signs={7}
            aside="then only what you rack out beyond it counts"
          />
          <Choice label="The glass" value={texts.transmission ?? ""} onChoose={on("transmission")} options={glasses} />
        </Section>
        <div className="Shelf-Form-acts">
          <Button main onPress={keep} waits={ready ? undefined : "a focal length"}>
            {form.isNew ? "Put it on the shelf" : "Keep it so"}
          </Button>
          {!form.isNew && <Button onPress={() => form.putAway("Lens put away")}>Put it away</Button>}
        </div>
      </div>
    </Page>
  );
}

function Absent() {
  return (
    <Page title="Shelf">
      <NothingYet way={<Word to="/shelf">To the shelf</Word>}>This lens is not on the shelf.</NothingYet>
    </Page>
  );
}
