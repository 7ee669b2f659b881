import type { ToneDrawingInput } from "@captray/drawings/tone";
import type { ExpectedPrint, Kit } from "@captray/notebook/answers";

/** What the drawing is given, but for the room it has. */
export type PrintDrawing = Omit<ToneDrawingInput, "widthPx" | "letterPx" | "perDensityPx">;

/** The answer as the tone drawing takes it: areas on the curve, what is wanted, what spans how much. */
export function printDrawing({ print, of }: { readonly print: ExpectedPrint; readonly of: string }): PrintDrawing {
  const { areas, curve, process, ring, wanted } = print;
  const isPositive = process === "reversal";
  const at = areas.map(({ fromPlacedStops }) => fromPlacedStops);
  return {
    kind: isPositive ? "positive" : "negative",
    of,
    curve,
    areas: areas.map((area) => ({
      name: capital(area.name),
      stops: area.atStops,
      density: area.density.value,
      ...area.interval,
      ...(ring !== null && area.ring !== null && { other: { stops: area.ring.atStops, density: area.ring.density } }),
    })),
    // As the scene was metered, so that the axis stays while the marks glide.
    fromStops: Math.max(curve[0]?.stops ?? -5, Math.min(-5, ...at.map((stops) => stops - 0.75))),
    toStops: Math.min(curve.at(-1)?.stops ?? 4, Math.max(4, ...at.map((stops) => stops + 0.75))),
    wanted: isPositive
      ? [
          { words: `wanted white ${wanted.highlight.density.toFixed(2)}`, density: wanted.highlight.density },
          { words: `wanted black ${wanted.shadow.density.toFixed(2)}`, density: wanted.shadow.density },
        ]
      : [
          { words: `dense end wanted ${wanted.highlight.density.toFixed(2)}`, density: wanted.highlight.density },
          { words: `thin end wanted ${wanted.shadow.density.toFixed(2)}`, density: wanted.shadow.density },
        ],
    dimensions: dimensionsOf(print),
  };
}

function dimensionsOf({ areas, scene, paper, flash, time }: ExpectedPrint): ToneDrawingInput["dimensions"] {
  const span = scene.stops < 0.05 ? [] : [sceneSpan()];
  if (paper === null) return span;
  const { stops, fromStops, toStops } = paper;
  return [...span, { words: `this paper: ${stops.toFixed(1)} stops`, from: fromStops, to: toStops }];

  function sceneSpan() {
    if (flash.countedS > 0) {
      const words = `scene with flash: ${scene.onPaperStops.toFixed(1)} stops`;
      return { words, from: scene.fromStops, to: scene.toStops };
    }
    // As metered, without the flare that lifts the darkest mark a little.
    const metered = areas.map(({ fromPlacedStops }) => fromPlacedStops + time.slidStops);
    return {
      words: `the scene: ${scene.stops.toFixed(1)} stops`,
      from: Math.min(...metered),
      to: Math.max(...metered),
    };
  }
}

/** Areas from the most light to the least, as the strip for the eye shows them. */
export function eyeTones({ areas }: ExpectedPrint) {
  return [...areas]
    .sort((one, other) => other.fromPlacedStops - one.fromPlacedStops)
    .map(({ name, density, interval, contactPrint }) => ({
      name: capital(name),
      density: density.value,
      ...interval,
      ...(contactPrint !== null && { printed: contactPrint.density }),
    }));
}

/** “box C with recipe 4”. */
export function printOfWords({ paperBox, recipe }: Kit): string {
  const box = paperBox?.name ? lower(paperBox.name) : "this paper";
  return recipe?.name ? `${box} with ${recipe.name}` : box;
}

/** How a figure is read, for its caption. */
export function captionWords({ print, kit }: { readonly print: ExpectedPrint; readonly kit: Kit }): string {
  const { ring, process, basis } = print;
  const index = kit.exposureIndex;
  return [
    "Hatching: the doubt, nine prints in ten.",
    ring === "withoutFlash" ? "Ring: without flash." : ring === "atTheLedgersTime" ? "Ring: at the ledger’s time." : "",
    process === "negative" ? "Greys as the eye sees the dry negative." : "Greys as the eye sees the dry print.",
    basis === "assumed"
      ? `Assumed: no print of ${printOfWords(kit)} has been measured; only EI ${index?.text ?? index?.value?.value ?? ""} places the curve.`
      : "",
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

export function capital(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}

function lower(words: string): string {
  return words.slice(0, 1).toLowerCase() + words.slice(1);
}
