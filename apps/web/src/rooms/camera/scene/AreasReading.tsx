import { readFNumber, readIso } from "@captray/science/notation";
import { useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { Word } from "../../../kit/Word.tsx";
import { figureReader, type ReadingTexts, readingOf, type WayWord, wayNames } from "./areasReading.ts";

const afters: Readonly<Record<WayWord, string>> = {
  time: "s",
  incidentTime: "s",
  ev: "EV",
  incidentEv: "EV",
  luminance: "cd/m²",
  illuminance: "lx",
};
const ways = Object.entries(wayNames).map(([value, said]) => ({ value: value as WayWord, ...said }));

export interface ReadingFieldsProps {
  readonly label: string;
  readonly start: ReadingTexts;
  /** The presses that take what was read; they say what is lacking while something is. */
  readonly acts: readonly {
    readonly name: string;
    readonly main?: boolean;
    readonly onTake: (read: NonNullable<Taken>) => void;
  }[];
}
type Taken = Extract<ReturnType<typeof readingOf>, { reading: unknown }>["reading"];

/** One reading of the meter: one figure as it was read last, or in another way with all that belongs to it. */
export function ReadingFields({ label, start, acts }: ReadingFieldsProps) {
  const [texts, setTexts] = useState(start);
  const dialed = texts.way === "time" || texts.way === "incidentTime";
  const needsIso = dialed || texts.way === "ev" || texts.way === "incidentEv";
  const [open, setOpen] = useState((dialed && start.fNumber === "") || (needsIso && start.iso === ""));
  const on = (key: keyof ReadingTexts) => (text: string) => setTexts((now) => ({ ...now, [key]: text }));
  const read = readingOf(texts);
  return (
    <div className="Camera-ReadingFields">
      {open && (
        <Choice
          label="The meter was"
          value={texts.way}
          onChoose={(way) => setTexts((now) => ({ ...now, way }))}
          options={ways}
        />
      )}
      <div className="Camera-ReadingFields-figures">
        <Field
          label={label}
          text={texts.figure}
          onText={on("figure")}
          read={figureReader(texts.way)}
          kind={dialed ? "time" : texts.way === "luminance" || texts.way === "illuminance" ? "number" : "ev"}
          after={afters[texts.way]}
          signs={6}
        />
        {open && dialed && (
          <Field
            label="at f/"
            text={texts.fNumber}
            onText={on("fNumber")}
            read={(text) => readFNumber({ text })}
            kind="fNumber"
            before="f/"
            signs={5}
            hint="8"
            quiet
          />
        )}
        {open && needsIso && (
          <Field
            label="at ISO"
            text={texts.iso}
            onText={on("iso")}
            read={(text) => readIso({ text })}
            kind="number"
            signs={5}
            hint="100"
            quiet
          />
        )}
      </div>
      {!open && <Word onPress={() => setOpen(true)}>{frameWords(texts)}read in another way</Word>}
      <div className="Camera-ReadingFields-acts">
        {acts.map((act) => (
          <Button
            key={act.name}
            main={act.main === true}
            waits={"lacks" in read ? read.lacks : undefined}
            onPress={() => {
              if (!("reading" in read)) return;
              act.onTake(read.reading);
              setTexts((now) => ({ ...now, figure: "" }));
            }}
          >
            {act.name}
          </Button>
        ))}
      </div>
    </div>
  );
}

function frameWords({ way, fNumber, iso }: ReadingTexts): string {
  if (way === "time" || way === "incidentTime") return `f/${fNumber}, ISO ${iso}; `;
  return way === "ev" || way === "incidentEv" ? `ISO ${iso}; ` : "";
}
