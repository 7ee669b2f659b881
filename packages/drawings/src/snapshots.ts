import { bathDrawing } from "./baths/bathDrawing.ts";
import { bathLabel } from "./baths/bathLabel.ts";
import { bathCases, labelCases } from "./baths/testing.ts";
import { sheetDrawing } from "./faults/sheetDrawing.ts";
import { sheetCases } from "./faults/testing.ts";
import { patchesDrawing } from "./recipes/patchesDrawing.ts";
import { recipeStrip } from "./recipes/recipeStrip.ts";
import { patchCases, stripCases } from "./recipes/testing.ts";
import { dayDrawing } from "./scene/dayDrawing.ts";
import { distanceScale } from "./scene/distanceScale.ts";
import { dayCases, distanceCases } from "./scene/testing.ts";
import { svgOf } from "./shapes/svgOf.ts";
import { lensSection } from "./shelf/lensSection.ts";
import { sheetStrokes } from "./shelf/sheetStrokes.ts";
import { lensCases, strokeCases, washerCases } from "./shelf/testing.ts";
import { washers } from "./shelf/washers.ts";
import { toneCases } from "./tone/testing.ts";
import { toneDrawing } from "./tone/toneDrawing.ts";
import { benchDrawing } from "./trays/benchDrawing.ts";
import { lightTestDrawing } from "./trays/lightTestDrawing.ts";
import { benchCases, lightTestCases } from "./trays/testing.ts";
import { trueScaleCases } from "./trueScale/testing.ts";

/** Every picture that is kept beside the sources, by its file name without the ending. */
export function snapshots(): ReadonlyMap<string, string> {
  return new Map([
    ...Object.entries(bathCases).map(([name, input]) => [name, svgOf({ drawing: bathDrawing(input) })] as const),
    ...Object.entries(labelCases).map(([name, input]) => [name, svgOf({ drawing: bathLabel(input) })] as const),
    ...Object.entries(sheetCases).map(([name, input]) => [name, svgOf({ drawing: sheetDrawing(input) })] as const),
    ...Object.entries(distanceCases).map(([name, input]) => [name, svgOf({ drawing: distanceScale(input) })] as const),
    ...Object.entries(dayCases).map(([name, input]) => [name, svgOf({ drawing: dayDrawing(input) })] as const),
    ...Object.entries(stripCases).map(([name, input]) => [name, svgOf({ drawing: recipeStrip(input) })] as const),
    ...Object.entries(patchCases).map(([name, input]) => [name, svgOf({ drawing: patchesDrawing(input) })] as const),
    ...Object.entries(lensCases).map(([name, input]) => [name, svgOf({ drawing: lensSection(input) })] as const),
    ...Object.entries(strokeCases).map(([name, input]) => [name, svgOf({ drawing: sheetStrokes(input) })] as const),
    ...Object.entries(washerCases).map(([name, input]) => [name, svgOf({ drawing: washers(input) })] as const),
    ...Object.entries(toneCases).map(([name, input]) => [name, svgOf({ drawing: toneDrawing(input) })] as const),
    ...Object.entries(benchCases).map(([name, input]) => [name, svgOf({ drawing: benchDrawing(input) })] as const),
    ...Object.entries(lightTestCases).map(
      ([name, input]) => [name, svgOf({ drawing: lightTestDrawing(input) })] as const,
    ),
    ...Object.entries(trueScaleCases).map(([name, drawing]) => [name, svgOf({ drawing })] as const),
  ]);
}
