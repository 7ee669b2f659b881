import type { ToneArea, ToneDrawingInput } from "./toneTypes.ts";

/** The drawing's numbers in sentences. */
export function saysOf({ kind, of, areas, wanted, dimensions }: ToneDrawingInput): string {
  const sentences = [
    kind === "positive" ? `Curve of ${of}, lighter upward.` : `Curve of ${of}, a negative, denser upward.`,
    ...areas.map((area) => areaWords(area, kind)),
    ...wanted.map(({ words }) => `${capital(words)}.`),
    ...dimensions.map(({ words }) => `${capital(words)}.`),
  ];
  return sentences.join(" ");
}

function areaWords({ name, density, low, high }: ToneArea, kind: ToneDrawingInput["kind"]): string {
  const verb = kind === "positive" ? "prints at" : "comes to";
  const doubt =
    high - low > 0.6
      ? `anywhere from ${low.toFixed(1)} to ${high.toFixed(1)}`
      : `give or take ${((high - low) / 2).toFixed(2)}`;
  return `${capital(name)} ${verb} ${density.toFixed(2)}, ${doubt}.`;
}

function capital(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
