import { type ReactNode, useId, useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { useNotebook } from "../../../kit/notebook/useNotebook.ts";
import { Page } from "../../../kit/Page.tsx";
import { PlainField } from "../../../kit/PlainField.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { Section } from "../../../kit/Section.tsx";
import { Word } from "../../../kit/Word.tsx";
import type { FormField, FormPart, FormWay, Texts } from "./formTypes.ts";
import { waitsFor } from "./fromTexts.ts";
import "../Shelf.css";

export interface ThingFormProps {
  readonly title: string;
  readonly closeTo?: string;
  readonly parts: readonly FormPart[];
  readonly texts: Texts;
  readonly onPut: (texts: Texts) => void;
  /** The one press that keeps it. */
  readonly keeps: string;
  readonly onKeep: () => void;
  /** What is still missing, beyond what cannot be read. */
  readonly waits?: string | undefined;
  readonly onPutAway?: (() => void) | undefined;
  /** What is taken for granted until it is said better. */
  readonly granted?: readonly string[];
  /** Before the fields: what is to be done, a caution. */
  readonly first?: ReactNode;
  /** Between the fields and the press: what came out, a drawing. */
  readonly children?: ReactNode;
  /** Further presses. */
  readonly more?: ReactNode;
}

/** The page of one thing of the shelf: parts with fields, what follows from them, and one press that keeps it all. */
export function ThingForm(props: ThingFormProps) {
  const { title, closeTo = "/shelf", parts, texts, onPut, granted = [] } = props;
  const waits = waitsFor({ parts, texts }) ?? props.waits;
  return (
    <Page title={title} closeTo={closeTo}>
      <div className="Shelf-Form">
        {props.first}
        {parts.map((part) => (
          <Part key={part.head} part={part} texts={texts} onPut={onPut} />
        ))}
        {granted.length > 0 && (
          <Section head="Taken for granted" aside="until you say better">
            <ul className="Shelf-Granted">
              {granted.map((one) => (
                <li key={one}>{one}</li>
              ))}
            </ul>
          </Section>
        )}
        {props.children}
        <div className="Shelf-Form-acts">
          <Button main onPress={props.onKeep} waits={waits}>
            {props.keeps}
          </Button>
          {props.more}
          {props.onPutAway && <Button onPress={props.onPutAway}>Put it away</Button>}
        </div>
      </div>
    </Page>
  );
}

interface PartProps {
  readonly part: FormPart;
  readonly texts: Texts;
  readonly onPut: (texts: Texts) => void;
}

function Part({ part, texts, onPut }: PartProps) {
  const spoken = part.fields.some((field) => (texts[field.key] ?? "") !== "");
  const [isOpen, setOpen] = useState(part.folded !== true || spoken);
  const id = useId();
  if (part.folded !== true) {
    return (
      <Section head={part.head} aside={part.aside}>
        <Inside part={part} texts={texts} onPut={onPut} />
      </Section>
    );
  }
  return (
    <section className="Kit-Section" aria-labelledby={id}>
      <h2>
        <button id={id} type="button" className="Shelf-Fold" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          <span>{part.head}</span>
          {part.aside !== undefined && <span className="small soft">{part.aside}</span>}
        </button>
      </h2>
      {isOpen && <Inside part={part} texts={texts} onPut={onPut} />}
    </section>
  );
}

function Inside({ part, texts, onPut }: PartProps) {
  const { fields, says = [], problem, ways = [] } = part;
  return (
    <>
      {fields.map((field) => (
        <OneField key={field.key} field={field} text={texts[field.key] ?? ""} onPut={onPut} />
      ))}
      {problem && <ProblemNote head={problem.head}>{problem.words}</ProblemNote>}
      {says.length > 0 && (
        <div className="Shelf-Says" aria-live="polite">
          {says.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      )}
      {ways.length > 0 && (
        <div className="Shelf-Ways">
          {ways.map((way) => (
            <Way key={way.word} way={way} onPut={onPut} />
          ))}
        </div>
      )}
    </>
  );
}

function Way({ way, onPut }: { readonly way: FormWay; readonly onPut: (texts: Texts) => void }) {
  const notebook = useNotebook();
  if ("to" in way) return <Word to={way.to}>{way.word}</Word>;
  return <Word onPress={() => onPut(way.puts(() => notebook.newId()))}>{way.word}</Word>;
}

function OneField(props: { readonly field: FormField; readonly text: string; readonly onPut: (texts: Texts) => void }) {
  const { field, text, onPut } = props;
  const on = (next: string) => onPut({ [field.key]: next });
  switch (field.kind) {
    case "words":
      return (
        <PlainField
          label={field.label}
          text={text}
          onText={on}
          {...(field.hint === undefined ? {} : { hint: field.hint })}
          {...(field.most === undefined ? {} : { most: field.most })}
        />
      );
    case "choice":
      return <Choice label={field.label} value={text} onChoose={on} options={field.options} />;
    case "figure":
      return (
        <Field
          label={field.label}
          text={text}
          onText={on}
          read={field.read}
          kind={field.board}
          signs={7}
          {...(field.before === undefined ? {} : { before: field.before })}
          {...(field.after === undefined ? {} : { after: field.after })}
          {...(field.hint === undefined ? {} : { hint: field.hint })}
          {...(field.aside === undefined ? {} : { aside: field.aside })}
        />
      );
  }
}
