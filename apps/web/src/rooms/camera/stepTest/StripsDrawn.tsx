import { figureOf } from "../capPage/capWords.ts";
import type { FirstEdge } from "./stepRecords.ts";

interface StripDrawn {
  readonly timeS: number;
  readonly isRight?: boolean;
}

/** The sheet with its strips, the least exposure at the edge that was chosen. A sketch, not to scale. */
export function StripsDrawn({
  strips,
  firstEdge,
}: {
  readonly strips: readonly StripDrawn[];
  readonly firstEdge: FirstEdge;
}) {
  const said = strips.map(({ timeS }, place) => `strip ${place + 1}, ${figureOf(timeS)} s`).join("; ");
  return (
    <ol
      className="Camera-Step-sheet"
      data-edge={firstEdge}
      aria-label={`The sheet, from the ${firstEdge} edge on: ${said}`}
    >
      {strips.map(({ timeS, isRight }, place) => (
        // Strips have no other name than their place.
        // biome-ignore lint/suspicious/noArrayIndexKey: a strip is its place
        <li key={place} data-right={isRight || undefined}>
          <b>{figureOf(timeS)}</b>
          <small>strip {place + 1}</small>
        </li>
      ))}
    </ol>
  );
}
