import { readStrength } from "@captray/science/chemistry";
import type { FieldSet, Json } from "../records/index.ts";
import type { StockAsked } from "./mixingTypes.ts";

/** What is kept of a jar or bottle, so that it need not be said again; its label stays as it was written. */
export function stockKept({ what, name, label = "", formula }: StockAsked): FieldSet {
  const text = label.trim().slice(0, 60);
  const read = text === "" ? undefined : readStrength({ text, what });
  const strength = (value: number, basis: string): Json => ({ value, basis, text });
  return {
    name: name.trim().slice(0, 120),
    what,
    ...(read?.kind === "strength" && read.value > 0 && { strength: strength(read.value, read.basis) }),
    // A bare figure is only mixed from where the two kinds of per cent hardly differ.
    ...(read?.kind === "askBasis" &&
      (read.readings[0]?.value ?? 0) > 0 && { strength: strength(read.readings[0]?.value ?? 0, "percentWv") }),
    ...(read?.kind === "ratio" && { parts: { value: read.parts, text } }),
    ...(formula !== undefined && text === "" && { formula: formula.slice(0, 60) }),
  };
}
