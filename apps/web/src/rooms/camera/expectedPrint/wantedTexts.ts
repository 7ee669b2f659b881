import { parseNumber, type ReadAnswer } from "@captray/science/notation";

/** Densities that any print can have. */
const most = 3;

/** Reads a wanted density. */
export function readWanted(text: string): ReadAnswer {
  if (text.trim() === "") return { kind: "empty" };
  try {
    const value = parseNumber({ text });
    if (value > 0 && value <= most) return { kind: "read", value, understood: "" };
  } catch {
    // What cannot be read and what does not fit are answered alike.
  }
  return { kind: "unreadable", text, at: 0, message: "A density between 0 and 3: 0.3 is a light grey, 1.75 a black." };
}

export type WantedAnswer =
  | { readonly kind: "own"; readonly highlightDensity: number; readonly shadowDensity: number }
  /** Both left empty: the paper's own. */
  | { readonly kind: "starting" }
  | { readonly kind: "waits"; readonly say: string };

/** The two typed densities as one wish, or what it waits for. */
export function wantedAnswer({
  highlight,
  shadow,
  isNegative,
}: {
  readonly highlight: string;
  readonly shadow: string;
  readonly isNegative: boolean;
}): WantedAnswer {
  const [high, low] = [readWanted(highlight), readWanted(shadow)];
  if (high.kind === "empty" && low.kind === "empty") return { kind: "starting" };
  if (high.kind !== "read" || low.kind !== "read") return { kind: "waits", say: "both densities" };
  const apart = isNegative ? high.value - low.value : low.value - high.value;
  if (apart < 0.05) {
    const say = isNegative ? "a dense end above the thin one" : "a white lighter than the black";
    return { kind: "waits", say };
  }
  return { kind: "own", highlightDensity: high.value, shadowDensity: low.value };
}
