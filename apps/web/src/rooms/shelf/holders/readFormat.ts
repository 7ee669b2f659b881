import { type ReadAnswer, readLength } from "@captray/science/notation";
import { type Format, formatWords } from "./formatWords.ts";

/** Reads a format as it is said: 13 × 18, 13x18 cm, 130 × 180 mm, 5x7 in. Bare numbers below 60 are centimetres. */
export function readFormat({ text }: { readonly text: string }): ReadAnswer & { readonly format?: Format } {
  const said = text.trim();
  if (said === "") return { kind: "empty" };
  const [, width = "", height = "", unit = ""] =
    /^([\d.,/ ]+?)\s*[x×*]\s*([\d.,/ ]+?)\s*(mm|cm|in|″|"|inch)?$/i.exec(said) ?? [];
  const [widthMm, heightMm] = [lengthMm(width, unit), lengthMm(height, unit)];
  if (widthMm === undefined || heightMm === undefined) {
    return { kind: "unreadable", text, at: 0, message: "Two sides with an × between them: 13 × 18 cm, 5 × 7 in." };
  }
  if (Math.min(widthMm, heightMm) < 10 || Math.max(widthMm, heightMm) > 2000) {
    return { kind: "unreadable", text, at: 0, message: "A format lies between 1 cm and 2 m." };
  }
  const format = { widthMm, heightMm };
  return { kind: "read", value: widthMm, understood: formatWords({ format }), format };
}

function lengthMm(figure: string, unit: string): number | undefined {
  const bare = Number(figure.replace(",", "."));
  const said = unit === "" ? (bare < 60 ? "cm" : "mm") : unit;
  const answer = readLength({ text: `${figure} ${said}` });
  return answer.kind === "read" && answer.value > 0 ? Math.round(answer.value * 10) / 10 : undefined;
}
