import { useState } from "react";
import { Button } from "../../../kit/Button.tsx";
import { Caution } from "../../../kit/Caution.tsx";
import { goTo } from "../../../kit/goTo.ts";
import { NothingYet } from "../../../kit/NothingYet.tsx";
import { Page } from "../../../kit/Page.tsx";
import { Word } from "../../../kit/Word.tsx";
import { useChecklist } from "./useChecklist.ts";
import "./Checklist.css";

/** Before the cap comes off: what the hands do, ticked off for this once. Ticks are not kept. */
export default function ChecklistPage({ id }: { readonly id: string }) {
  const list = useChecklist({ sceneId: id });
  const [done, setDone] = useState<ReadonlySet<string>>(new Set());
  if (list === undefined) {
    return (
      <Page title="Checklist">
        <NothingYet way={<Word to="/camera">To the camera</Word>}>This scene is not in the notebook.</NothingYet>
      </Page>
    );
  }
  const left = list.steps.filter((step) => !done.has(step.key)).length;
  const turn = (key: string) =>
    setDone((now) => {
      const next = new Set(now);
      if (!next.delete(key)) next.add(key);
      return next;
    });
  return (
    <Page title="Before the cap comes off" closeTo={`/camera/${id}`}>
      <div className="Camera-Checklist">
        <p className="small soft" role="status">
          {left === 0 ? "All done." : `${left} to do, in this order. Ticks are for this once; nothing of them is kept.`}
        </p>
        <ol>
          {list.steps.map((step) => (
            <li key={step.key}>
              <label>
                <input type="checkbox" checked={done.has(step.key)} onChange={() => turn(step.key)} />
                <span>
                  <b>{step.say}</b>
                  {step.why !== undefined && <span className="soft small">{step.why}</span>}
                </span>
              </label>
            </li>
          ))}
        </ol>
        <Caution stuff="The sun.">
          Never look at it through a lens or on the bare ground glass, and cap a long lens before you walk away: it is a
          burning glass.
        </Caution>
        <div className="Camera-Words">
          <Button main onPress={() => goTo({ path: `/camera/${id}` })}>
            {left === 0 ? "Back to the scene, and to the cap" : "Back to the scene"}
          </Button>
          {done.size > 0 && <Button onPress={() => setDone(new Set())}>Begin again</Button>}
        </div>
      </div>
    </Page>
  );
}
