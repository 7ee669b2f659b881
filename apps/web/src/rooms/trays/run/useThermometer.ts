import type { RecipeStep, Run, RunEvent } from "@captray/notebook/records";
import { useState } from "react";
import { temperatureStep, temperatureWords } from "../temperature.ts";

type Bath = NonNullable<RecipeStep["bath"]>;

/** The thermometer of the bath in hand, where its time follows: a press by half a degree, kept when it is said. */
export function useThermometer({
  run,
  step,
  unit,
  onKeep,
}: {
  readonly run: Run;
  readonly step: RecipeStep | undefined;
  readonly unit: "celsius" | "fahrenheit";
  readonly onKeep: (bath: Bath, bathC: number) => void;
}) {
  const [moved, setMoved] = useState<{ readonly bath: Bath; readonly bathC: number }>();
  const bath = step?.bath;
  if (step === undefined || bath === undefined || step.tempC === undefined) return null;
  if (!["develop", "firstDevelop", "redevelop"].includes(step.does)) return null;
  const last = run.readings
    .flatMap(({ reading }) => (reading?.bath === bath ? [reading] : []))
    .reduce<RunReading | undefined>(
      (latest, one) => (latest !== undefined && latest.sinceStartMs > one.sinceStartMs ? latest : one),
      undefined,
    );
  const heldC = last?.bathC ?? step.tempC.aim;
  const bathC = moved?.bath === bath ? moved.bathC : heldC;
  return {
    bath: step.name,
    words: temperatureWords({ celsius: bathC, unit }),
    changed: bathC !== heldC,
    step: (by: 1 | -1) => setMoved({ bath, bathC: temperatureStep({ celsius: bathC, by, unit }) }),
    keep: () => {
      setMoved(undefined);
      onKeep(bath, bathC);
    },
  };
}

type RunReading = { readonly bathC: number; readonly sinceStartMs: RunEvent["sinceStartMs"] };
