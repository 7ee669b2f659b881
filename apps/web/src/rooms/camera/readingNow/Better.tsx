import type { Result } from "@captray/notebook/records";
import { readEv, readExposureIndex, readLength } from "@captray/science/notation";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { Word } from "../../../kit/Word.tsx";
import type { HowFound, SaidBetter } from "./draft.ts";
import { readExponent } from "./readTexts.ts";
import { type GrantedSubject, offeredLights } from "./takenForGranted.ts";

export interface BetterProps {
  readonly subject: GrantedSubject;
  readonly result: Result;
  readonly better: SaidBetter;
  readonly onBetter: (said: Partial<SaidBetter>) => void;
}

const howFound: readonly { readonly value: HowFound; readonly name: string; readonly detail: string }[] = [
  { value: "guessed", name: "a guess", detail: "±1.15 stop" },
  { value: "told", name: "told by somebody", detail: "±0.82 stop" },
  { value: "stepTest", name: "own step test", detail: "±0.49 stop" },
  { value: "threeSheets", name: "three own sheets", detail: "±0.25 stop" },
];

const glasses = [
  { value: "0.9", name: "as the meter supposes", detail: "passes 0.90" },
  { value: "0.83", name: "four bare surfaces", detail: "passes 0.83" },
  { value: "0.75", name: "six bare surfaces", detail: "passes 0.75" },
  { value: "0.68", name: "eight bare surfaces", detail: "passes 0.68" },
] as const;

/** The fields in which one thing taken for granted is said better. */
export function Better({ subject, result, better, onBetter }: BetterProps) {
  switch (subject) {
    case "exposureIndex":
      return (
        <>
          <Field
            label="Exposure index"
            text={better.exposureIndex[result] ?? ""}
            onText={(text) => onBetter({ exposureIndex: { [result]: text } })}
            read={(text) => readExposureIndex({ text })}
            kind="number"
            before="EI"
            signs={6}
          />
          <Choice
            label="How it was found"
            value={better.howFound[result]}
            onChoose={(how) => onBetter({ howFound: { [result]: how } })}
            options={howFound}
          />
        </>
      );
    case "place":
      return (
        <Field
          label="Stops above mid grey (minus: below)"
          text={better.placeStops ?? ""}
          onText={(placeStops) => onBetter({ placeStops })}
          read={(text) => readEv({ text })}
          kind="ev"
          after="stops"
          signs={6}
          hint="0"
          quiet
        />
      );
    case "meter":
      return (
        <Field
          label="It shows too much light by"
          text={better.meterOffset ?? ""}
          onText={(meterOffset) => onBetter({ meterOffset })}
          read={(text) => readEv({ text })}
          kind="ev"
          after="stops"
          signs={6}
          hint="0"
          aside="against a meter you trust; minus: too little"
        />
      );
    case "light":
      return (
        <Choice
          label="The light on the subject"
          value={better.light}
          onChoose={(light) => onBetter({ light })}
          options={offeredLights.map(({ source, name }) => ({ value: source, name }))}
        />
      );
    case "glass":
      return (
        <Choice
          label="The glass"
          value={better.transmission}
          onChoose={(transmission) => onBetter({ transmission })}
          options={glasses}
        />
      );
    case "infinity":
      return (
        <Field
          label="Board to ground glass with a distant subject"
          text={better.infinityExtension ?? ""}
          onText={(infinityExtension) => onBetter({ infinityExtension })}
          read={(text) => readLength({ text })}
          kind="mm"
          after="mm"
          signs={7}
          aside="then only what you rack out beyond it counts"
        />
      );
    case "longExposure":
      return (
        <Field
          label="Exponent of this paper, from a test"
          text={better.exponent ?? ""}
          onText={(exponent) => onBetter({ exponent })}
          read={readExponent}
          kind="number"
          signs={6}
          aside="above 0.5, up to 1; 1 means that none is needed"
        />
      );
    case "aperture":
      return <p>Measured it? Type it as cut: “7.7 as cut”. Half a millimetre in 20 is 0.07 stop.</p>;
    case "hand":
      return (
        <>
          <p>A hand that was never practised is taken to be out by a tenth of a second, and a twentieth of the time.</p>
          <Word to="/camera/practice">Practise with the cap</Word>
        </>
      );
  }
}
