import { kinds, list, number, object, orNull, text, word } from "../declare/fields.ts";

const reach = object(
  {
    lightest: number("", "Lightest density that this paper prints in these baths."),
    darkest: number("", "Darkest."),
  },
  { description: "Where nothing more is developed, and where all is." },
);

/** The answer of `expect`. */
export const expectOutput = object({
  areas: list(
    object({
      area: text("Name of the area."),
      density: object({ value: number("", "Density expected."), sd: number("", "One standard deviation.") }),
      interval: object({ low: number("", "Nine in ten: from."), high: number("", "To.") }),
      sdStops: orNull(number("stops", "The doubt as one of exposure; null where the curve is flat.")),
      lightness: number("", "L* of the density expected."),
    }),
    "The areas, in the order given.",
  ),
  covariance: list(list(number("", "Covariance of two densities."), "One row."), "Of the densities of the areas."),
  reach,
  recommendation: orNull(
    kinds("kind", [
      object({
        kind: word(["sceneLongerThanPaper", "sceneShorterThanPaper"], "Which of them is longer."),
        exposureFactor: number("", "On the exposure as given."),
        exposureStops: number("stops", "The same in stops."),
        flashLxS: number("lx·s", "Flash."),
        flashS: number("s", "Its seconds; below 0 no flash can do it."),
        sceneRange: number("log10", "Range of the scene, with flare."),
        paperRange: number("log10", "Range of exposure between the densities wanted."),
        byStops: number("stops", "By how much."),
      }),
      object({ kind: word(["toneOutOfReach"], "A tone wanted that this paper does not print."), reach }),
    ]),
  ),
  warnings: list(
    kinds("kind", [
      object({
        kind: word(["beyondPaper"], "A tone within 0.02 of an end of reach."),
        area: text("Name of the area."),
        side: word(["white", "black"], "Which end."),
      }),
      object({ kind: word(["flatShadow"], "The flash takes more than half of the contrast of the shadow.") }),
      object({ kind: word(["shortSecondDevelopment"], "So short a second development comes out uneven.") }),
    ]),
    "What to look out for.",
  ),
  basis: word(["priors", "curve", "fit"], "What the curve was made from."),
});
