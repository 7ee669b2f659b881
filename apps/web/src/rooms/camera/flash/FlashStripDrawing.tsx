import { flashSteps } from "@captray/notebook/answers";
import type { Test } from "@captray/notebook/records";
import { figureOf } from "../capPage/capWords.ts";

/** The strip as it lies: the bare step at its edge, and the seconds of each, in the order the card takes. A sketch, not to scale. */
export function FlashStripDrawing({ test }: { readonly test: Test }) {
  const edge = test.firstEdge ?? "left";
  const steps = flashSteps({ test });
  const upright = edge === "top" || edge === "bottom";
  return (
    <ol
      className="Camera-Flash-strip"
      data-edge={edge}
      data-upright={upright || undefined}
      aria-label={`From the ${edge} edge on`}
    >
      {steps.map(({ id, timeS, plannedS, takenAsPlanned }) => (
        <li key={id} data-bare={plannedS === 0 || undefined}>
          <b>{plannedS === 0 ? "bare" : figureOf(timeS)}</b>
          <small>{plannedS === 0 ? "no flash" : takenAsPlanned ? "s, as planned" : "s"}</small>
        </li>
      ))}
    </ol>
  );
}
