import { lampMoved, type PlanOf } from "@captray/notebook/answers";
import { readLength } from "@captray/science/notation";
import { movedWords } from "./lightWords.ts";

/** What moving the lamp does, from what is typed; what is lacking while something is. */
export function lampWords({
  from,
  to,
  radius,
  plan,
  lengthUnit,
}: {
  readonly from: string;
  readonly to: string;
  readonly radius: string;
  readonly plan: PlanOf;
  readonly lengthUnit: "mm" | "inch";
}): string {
  const [fromMm, toMm] = [mm(from), mm(to)];
  if (fromMm === undefined || toMm === undefined)
    return "Type where it stands and where it should stand: twice as far is two stops more.";
  return movedWords(lampMoved({ fromMm, toMm, radiusMm: mm(radius) ?? 0, plan }), lengthUnit);
}

function mm(text: string): number | undefined {
  const read = readLength({ text });
  return read.kind === "read" && read.value > 0 ? read.value : undefined;
}
