import { readLength } from "@captray/science/notation";
import { useState } from "react";
import { Choice } from "../../../kit/Choice.tsx";
import { Field } from "../../../kit/Field.tsx";
import { ProblemNote } from "../../../kit/ProblemNote.tsx";
import { useSettled } from "../../../kit/useSettled.ts";
import {
  type FocusRow,
  type FocusTexts,
  type FocusWay,
  focusFrom,
  focusRows,
  focusTexts,
  focusWays,
  readMagnification,
} from "./focusForm.ts";
import { focusProblem } from "./focusWords.ts";
import type { SetUpState } from "./useSetUp.ts";

const labels: Readonly<Record<FocusWay, string>> = {
  extension: "Board to ground glass",
  travel: "Racked out past infinity",
  magnification: "Magnification",
  imageSize: "Size of the image",
  subjectDistance: "Subject to lens",
  totalDistance: "Subject to paper",
  distant: "Distant",
};

/** Where the camera stands, said in one way; all other ways follow, each with its doubt. */
export function Focus({ setUp }: { readonly setUp: SetUpState }) {
  const { scene, camera, lens, focus, lengthUnit, onFocus } = setUp;
  const [way, setWay] = useState<FocusWay>(scene.focus?.by ?? "extension");
  const isPinhole = lens?.sort === "pinhole";
  const ways = isPinhole ? focusWays.filter(({ value }) => value === "extension") : focusWays;
  const problem = focusProblem({ focus, camera, lengthUnit });
  const format = camera?.format ?? scene.format;
  return (
    <>
      {ways.length > 1 && (
        <Choice
          label="The camera stands, by"
          value={way}
          onChoose={(chosen) => {
            setWay(chosen);
            if (chosen === "distant") onFocus({ by: "distant" });
          }}
          options={ways}
        />
      )}
      <WayFields key={way} way={isPinhole ? "extension" : way} setUp={setUp} />
      {problem !== undefined && <ProblemNote head={problem.head}>{problem.say}</ProblemNote>}
      {focus.kind === "focus" && scene.focus !== undefined && (
        <Rows rows={focusRows({ found: focus, format, lengthUnit })} />
      )}
    </>
  );
}

function WayFields({ way, setUp }: { readonly way: FocusWay; readonly setUp: SetUpState }) {
  const stored = focusTexts(setUp.scene.focus, way);
  const [first, onFirst] = useSettled(stored.first, (text) => keep({ first: text, second }));
  const [second, onSecond] = useSettled(stored.second, (text) => keep({ first, second: text }));
  if (way === "distant") return <p className="small soft">The board stands where a far view is sharp.</p>;
  const reader = way === "magnification" ? readMagnification : (text: string) => readLength({ text });
  const shared = { kind: way === "magnification" ? "number" : "mm", signs: 7, read: reader } as const;
  const after = way === "magnification" ? {} : { after: "mm" };
  return (
    <div className="Camera-ReadingFields-figures">
      <Field
        {...shared}
        {...after}
        label={labels[way]}
        text={first}
        onText={onFirst}
        hint={hints[way]}
        below={way === "imageSize"}
      />
      {way === "imageSize" && (
        <Field {...shared} {...after} label="Size of the subject" text={second} onText={onSecond} hint="50 cm" below />
      )}
    </div>
  );

  function keep(texts: FocusTexts): void {
    const focus = focusFrom(way, texts);
    if (focus !== undefined) setUp.onFocus(focus);
  }
}

const hints: Readonly<Record<FocusWay, string>> = {
  extension: "248",
  travel: "38",
  magnification: "1:5",
  imageSize: "90",
  subjectDistance: "1.4 m",
  totalDistance: "1.6 m",
  distant: "",
};

function Rows({ rows }: { readonly rows: readonly FocusRow[] }) {
  return (
    <table className="Camera-FocusRows">
      <caption className="unseen">The same, said in the other ways</caption>
      <tbody>
        {rows.map((row) => (
          <tr key={row.way}>
            <th scope="row">{row.name}</th>
            <td>
              <b>{row.value}</b>
              {row.plusMinus !== undefined && (
                <>
                  {" "}
                  <span aria-hidden="true">±{row.plusMinus}</span>
                  <span className="unseen">give or take {row.plusMinus}</span>
                </>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
