import { type LaneDone, type StayDone, stayEditSets } from "@captray/notebook/answers";
import type { Run } from "@captray/notebook/records";
import { readTime } from "@captray/science/notation";
import { useState } from "react";
import { momentNow } from "../../devices/momentNow.ts";
import { useLight } from "../../look/light.ts";
import { Button } from "../Button.tsx";
import { Field } from "../Field.tsx";
import { useNotebook } from "../notebook/useNotebook.ts";
import { useSettings } from "../notebook/useSettings.ts";
import { clockWords, runDoneView, type StayRow } from "./runDoneView.ts";
import "./RunDone.css";

/** Longer than this nobody leaves a sheet in a bath: a wash overnight. */
const longestS = 86_400;

/** What a lane went through, as planned and as done; a press on a line puts its time right. */
export function RunDone({ run, lane }: { readonly run: Run; readonly lane: LaneDone }) {
  const notebook = useNotebook();
  const { temperatureUnit } = useSettings();
  const [open, setOpen] = useState<string>();
  const { rows, development, more } = runDoneView({ lane, unit: temperatureUnit });
  const put = ({ stay, name }: StayRow, actualS: number | null) => {
    const sets = stayEditSets({ run, stay, actualS, now: momentNow(), newId: () => notebook.newId() });
    if (sets.length === 0) return;
    const words = actualS === null ? "as pressed again" : actualS === 0 ? "left out" : clockWords(actualS);
    notebook.change(sets, `${lane.code}, ${name.toLowerCase()}: ${words}`).kept.catch(() => undefined);
    setOpen(undefined);
  };
  return (
    <>
      {development.length > 0 && (
        <p className="say Kit-RunDone-development">
          {development.map((sentence) => (
            <span key={sentence}>{sentence} </span>
          ))}
        </p>
      )}
      {more.map((sentence) => (
        <p key={sentence} className="say">
          {sentence}
        </p>
      ))}
      <table className="Kit-RunDone">
        <caption className="unseen">{lane.code}: the steps as planned and as done</caption>
        <thead>
          <tr>
            <th scope="col">step</th>
            <th scope="col">planned</th>
            <th scope="col">done</th>
          </tr>
        </thead>
        {rows.map((row) => (
          <tbody key={row.key} data-lasting={row.isLasting || undefined}>
            <tr>
              <th scope="row">
                <button
                  type="button"
                  aria-expanded={open === row.key}
                  onClick={() => setOpen(open === row.key ? undefined : row.key)}
                >
                  <b>{row.name}</b>
                </button>
                <span>{[row.how, row.warmth].filter(Boolean).join("; ")}</span>
              </th>
              <td>{row.planned}</td>
              <td>
                <b>{row.done}</b>
              </td>
            </tr>
            {row.deviation !== "" && (
              <tr>
                <td colSpan={3} className="Kit-RunDone-deviation small">
                  {row.deviation}
                </td>
              </tr>
            )}
            {open === row.key && (
              <tr>
                <td colSpan={3}>
                  <StayForm row={row} onPut={(actualS) => put(row, actualS)} />
                </td>
              </tr>
            )}
          </tbody>
        ))}
      </table>
    </>
  );
}

/** How long it really was: by presses of a second and of ten, in daylight also typed. */
function StayForm({ row, onPut }: { readonly row: StayRow; readonly onPut: (actualS: number | null) => void }) {
  const { stay, name } = row;
  const [seconds, setSeconds] = useState(() => startOf(stay));
  const [text, setText] = useState("");
  const red = useLight() === "red";
  const read = readTime({ text });
  const typed = read.kind === "read" && read.value <= longestS ? read.value : undefined;
  const chosen = typed ?? seconds;
  const by = (step: number) => {
    setText("");
    setSeconds(Math.min(longestS, Math.max(0, Math.round(chosen + step))));
  };
  return (
    <div className="Kit-RunDone-form">
      <div className="Kit-RunDone-by">
        <Button big onPress={() => by(-1)} spoken={`${name}: one second less`}>
          −
        </Button>
        <b className="Kit-RunDone-time" role="status">
          {clockWords(chosen)}
        </b>
        <Button big onPress={() => by(1)} spoken={`${name}: one second more`}>
          +
        </Button>
        <Button big onPress={() => by(-10)} spoken={`${name}: ten seconds less`}>
          −10
        </Button>
        <span />
        <Button big onPress={() => by(10)} spoken={`${name}: ten seconds more`}>
          +10
        </Button>
      </div>
      {!red && (
        <Field
          label={`${name}: how long it really was`}
          text={text}
          onText={setText}
          read={(words) => readTime({ text: words })}
          kind="time"
          signs={8}
          hint="2:05"
        />
      )}
      <div className="Kit-RunDone-acts">
        <Button main onPress={() => onPut(chosen)}>
          {chosen > 0 ? `It was ${clockWords(chosen)}` : "It was left out"}
        </Button>
        {stay.editId !== undefined && (
          <Button onPress={() => onPut(null)}>
            As pressed: {stay.pressedS > 0 ? clockWords(stay.pressedS) : "left out"}
          </Button>
        )}
      </div>
      <p className="small soft">What was pressed stays in the record beside it.</p>
    </div>
  );
}

function startOf({ actualS, plannedS, how }: StayDone): number {
  return Math.round(how === "skipped" ? plannedS : actualS.value);
}
