import { list, notNegative, number, object, positive, preset, text } from "../declare/fields.ts";

function measured(description: string) {
  return object({ value: number("", "Density."), sd: notNegative("", "Its standard deviation.") }, { description });
}

/** The input of `effects`. */
export const effectsInput = object({
  areas: list(
    object({
      area: text("Name of the area."),
      pairs: list(
        object({ before: measured("Before the change."), after: measured("After it.") }),
        "Pairs of prints that differ in this one thing.",
        { leastItems: 1 },
      ),
      stopSlope: preset(0, number("", "Change of its density with a stop of exposure.")),
    }),
    "The areas.",
    { leastItems: 1 },
  ),
  margin: preset(0.03, positive("", "Smallest difference of density that matters.")),
  patchSd: preset(0.02, notNegative("", "Unevenness of a patch, in density.")),
  sigmaTimeStops: preset(0.15, notNegative("stops", "Doubt of the light of a sheet.")),
});
